"""The result so far: one number with its interval, held against the limit."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace

from acquisition.planning.outlook import percent
from acquisition.report.names import KINDS
from acquisition.snapshot import HeldView, Snapshot
from acquisition.told.headline import headline, total_of
from acquisition.told.texts import limit_text
from acquisition.told.titles import fit_title, method_title
from acquisition.told.verdicts import STAGE, likelihood, limit_title
from analysis.records import Estimate, Limit, MeanResult, Verdict
from analysis.units import Display, Quantity, format_estimate, format_value, to_display, unit_symbol
from analysis.verdict import settling_words
from gui.theme import Tone
from gui.viewmodels.moment import Moment
from gui.viewmodels.retold import retold_part
from gui.words import mark, say

NAMES = {
    "n50_per_h": mark("air changes per hour at 50\u00a0Pa"),
    "q50_m3_h": mark("at 50\u00a0Pa"),
    "qe50_m3_h_m2": mark("at 50 Pa, of envelope"),
    "qf50_m3_h_m2": mark("at 50 Pa, of floor"),
}


@dataclass(frozen=True, slots=True)
class LimitBar:
    """Shares 0..1 of the bar's length."""

    value: float
    low: float
    high: float
    limit: float


@dataclass(frozen=True, slots=True)
class OutcomePicture:
    """The panel. `figure` is a dash before there is a result, `why` then says what is missing."""

    title: str
    figure: str
    unit: str
    interval: str
    why: str
    limit: str
    verdict: str
    tone: Tone
    bar: LimitBar | None
    others: str
    spoken: str
    scatter: str = ""
    """What the line alone says, where the interval in front holds more."""


def outcome_picture(moment: Moment) -> OutcomePicture:
    """Return the panel of the test that is shown."""
    display, shown = moment.display, moment.shown
    plan = shown.plan if shown is not None else (moment.job.plan if moment.job is not None else None)
    limit = next(iter(plan.limits), plan.limit) if plan is not None else None
    result = shown.result if shown is not None else None
    if moment.snapshot is not None and moment.snapshot.held is not None and shown is not None and shown.live:
        return _held(moment.snapshot, moment.snapshot.held, limit, display)
    if result is None:
        why = shown.gap if shown is not None and shown.gap else say("Nothing has been read yet.")
        return _foretold(moment, _nothing(why, limit, display))
    quantity, official = headline(result.mean, limit)
    estimate = total_of(result, quantity) or official
    text = format_estimate(estimate, KINDS[quantity], display)
    verdict = next((item for item in result.verdicts if item.limit == limit), None)
    words, tone = verdict_words(verdict)
    unit = unit_words(quantity, display)
    sure = math.isfinite(estimate.half_width)
    return OutcomePicture(
        title=_title(moment),
        figure=text.value,
        unit=unit,
        interval=f"± {text.plus_minus} (95 %)" if sure else say("no interval yet"),
        why=_why(estimate, verdict),
        limit=_limit_words(limit, display),
        verdict=words,
        tone=tone,
        bar=_bar(estimate, limit, KINDS[quantity], display),
        others=_others(result.mean, quantity, display),
        scatter=_scatter(official, estimate, quantity, display),
        spoken=say(
            "{value} {unit}, plus or minus {plus_minus}. {words}",
            value=text.value,
            unit=unit,
            plus_minus=text.plus_minus,
            words=words,
        ),
    )


def _foretold(moment: Moment, picture: OutcomePicture) -> OutcomePicture:
    """Return the empty panel with what is expected of the running test, as soon as that is known."""
    snapshot, shown = moment.snapshot, moment.shown
    if snapshot is None or snapshot.outlook is None or shown is None or not shown.live or not moment.busy:
        return picture
    outlook = snapshot.outlook
    return replace(
        picture,
        interval=say("± {share} expected", share=percent(outlook.chosen.with_kit)),
        why=f"{outlook.sentence} {outlook.advice}".strip(),
        spoken=outlook.sentence,
    )


def _held(snapshot: Snapshot, held: HeldView, limit: Limit | None, display: Display) -> OutcomePicture:
    """Return what leaks at the pressure that is held, and by how much that has changed."""
    empty = _nothing(say("It takes a few seconds until the flow is known."), limit, display)
    title = say("What leaks at {target} Pa", target=f"{snapshot.target_pa or 0.0:.0f}").replace("-", "−")
    if held.flow_m3_h is None:
        return replace(empty, title=title, unit=unit_symbol(Quantity.FLOW, display))
    change = "" if held.change is None else say("{change} % since the beginning", change=f"{100 * held.change:+.1f}")
    figure = format_value(held.flow_m3_h, Quantity.FLOW, display)
    minutes = say("Held for {minutes} min.", minutes=f"{held.seconds / 60:.0f}")
    words = change.replace("-", "−").replace(".", display.decimal_mark)
    unit = unit_symbol(Quantity.FLOW, display)
    return replace(
        empty, title=title, figure=figure, unit=unit, interval=words, why=minutes, spoken=f"{figure} {unit}, {words}"
    )


def unit_words(quantity: str, display: Display) -> str:
    """Return what a quantity is counted in, in words."""
    if quantity == "n50_per_h":
        return say(NAMES[quantity])
    return f"{unit_symbol(KINDS[quantity], display)} {say(NAMES[quantity])}"


def verdict_words(verdict: Verdict | None) -> tuple[str, Tone]:
    """Return the three-way verdict in words."""
    if verdict is None:
        return "", Tone.QUIET
    likely = retold_part(likelihood(verdict.probability))
    match verdict.verdict:
        case "meets":
            return say("{likely} likely to meet it", likely=likely), Tone.GOOD
        case "does not meet":
            return say("does not meet: {likely} likely", likely=likely), Tone.BAD
        case _:
            return say("cannot tell today: {likely} likely", likely=likely), Tone.ATTENTION


def _scatter(official: Estimate, shown: Estimate, quantity: str, display: Display) -> str:
    if official is shown or not math.isfinite(official.half_width):
        return ""
    text = format_estimate(official, KINDS[quantity], display)
    return say("{value} ± {plus_minus} by the scatter of the line alone", value=text.value, plus_minus=text.plus_minus)


def _title(moment: Moment) -> str:
    shown = moment.shown
    if moment.busy and shown is not None and shown.live:
        return say("Result so far")
    if shown is None or shown.result is None or shown.seen.own:
        return say("Result")
    result = shown.result
    return say(
        "By {method}, {fit}: not as this test was planned",
        method=method_title(result.method),
        fit=fit_title(result.fit),
    )


def _why(estimate: Estimate, verdict: Verdict | None) -> str:
    if estimate.extrapolated:
        return say("Extrapolated: 50 Pa lies outside the pressures that were measured.")
    if verdict is not None and verdict.settling is not None:
        return settling_words(verdict.settling)
    return ""


def _nothing(why: str, limit: Limit | None, display: Display) -> OutcomePicture:
    quantity = limit.quantity if limit is not None else "n50_per_h"
    return OutcomePicture(
        title=say("Result so far"),
        figure="–",
        unit=unit_words(quantity, display),
        interval="",
        why=why,
        limit=_limit_words(limit, display),
        verdict="",
        tone=Tone.QUIET,
        bar=None,
        others="",
        spoken=say("No result. {why}", why=why),
    )


def _limit_words(limit: Limit | None, display: Display) -> str:
    if limit is None:
        return say("No limit set for this stage")
    unit = "" if limit.quantity == "n50_per_h" else f" {unit_words(limit.quantity, display)}"
    title = say("Stage limit") if limit.id == STAGE else limit_title(limit)
    return f"{title} {limit_text(limit.value, KINDS[limit.quantity], display)}{unit}"


def _bar(estimate: Estimate, limit: Limit | None, kind: Quantity, display: Display) -> LimitBar | None:
    if limit is None or KINDS[limit.quantity] is not kind:
        return None
    value, bound = (to_display(number, kind, display) for number in (estimate.value, limit.value))
    high = to_display(estimate.high, kind, display) if math.isfinite(estimate.high) else value
    low = to_display(estimate.low, kind, display) if math.isfinite(estimate.low) else value
    full = max(bound * 1.1, min(high, 2 * value) * 1.04)
    return LimitBar(*(min(max(number / full, 0.0), 1.0) for number in (value, low, high, bound)))


def _others(mean: MeanResult, shown: str, display: Display) -> str:
    """Return the other quantities in one line, each with its divisor."""
    parts = []
    for name, symbol in (("n50_per_h", "n50"), ("q50_m3_h", "q50"), ("qe50_m3_h_m2", "qE50"), ("qf50_m3_h_m2", "qF50")):
        estimate: Estimate | None = getattr(mean, name)
        if estimate is None or name == shown:
            continue
        text = format_estimate(estimate, KINDS[name], display)
        parts.append(f"{symbol} {text.value} {text.unit}")
    return " · ".join(parts)
