"""The result so far: one number with its interval, held against the limit."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace

from acquisition.plan import TestPlan
from acquisition.planning.outlook import percent
from acquisition.report.names import KINDS
from acquisition.snapshot import HeldView, Snapshot
from acquisition.told.headline import USUAL, front_of, headline, in_order, lacking, official, total_of
from acquisition.told.texts import limit_text
from acquisition.told.titles import fit_title, method_title
from acquisition.told.verdicts import STAGE, likelihood, limit_title
from analysis.effective import QUANTITIES
from analysis.records import Building, Estimate, Limit, TestResult, Verdict
from analysis.units import Display, Quantity, format_estimate, format_value, to_display, unit_symbol
from analysis.verdict import settling_words
from gui.theme import Tone
from gui.viewmodels.moment import Moment
from gui.viewmodels.retold import retold, retold_part
from gui.words import mark, say

NAMES = {
    "n50_per_h": mark("air changes per hour at 50\u00a0Pa"),
    "q50_m3_h": mark("at 50\u00a0Pa"),
    "qe50_m3_h_m2": mark("at 50 Pa, of envelope"),
    "qf50_m3_h_m2": mark("at 50 Pa, of floor"),
    "qe75_m3_h_m2": mark("at 75 Pa, of envelope"),
    "qe4_m3_h_m2": mark("at 4 Pa, of envelope"),
    "nla10_cm2_m2": mark("at 10 Pa, of envelope"),
    "nlr50_l_s_m2": mark("at 50 Pa, of envelope"),
    "sla4_cm2_m2": mark("at 4 Pa, of floor"),
}
LACKING = mark("{method} puts {symbol} in front; it needs the envelope area, which is not stated.")
"""What `acquisition.told.headline.lacking` says."""
OTHERS = 3
"""Quantities that stand beside the one in front."""


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
    limit = _limit_of(plan)
    result = shown.result if shown is not None else None
    if moment.snapshot is not None and moment.snapshot.held is not None and shown is not None and shown.live:
        return _held(moment.snapshot, moment.snapshot.held, plan, display)
    if result is None:
        why = shown.gap if shown is not None and shown.gap else say("Nothing has been read yet.")
        return _foretold(moment, _nothing(why, plan, display))
    assert plan is not None
    quantity, own = headline(result, plan.building, limit)
    estimate = total_of(result, quantity) or own
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
        why=" ".join(filter(None, (lacking(result.method, plan.building, say), _why(estimate, quantity, verdict)))),
        limit=_limit_words(limit, quantity, display),
        verdict=words,
        tone=tone,
        bar=_bar(result, plan.building, limit, display),
        others=_others(result, plan.building, quantity, limit, display),
        scatter=_scatter(own, estimate, quantity, display),
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


def _held(snapshot: Snapshot, held: HeldView, plan: TestPlan | None, display: Display) -> OutcomePicture:
    """Return what leaks at the pressure that is held, and by how much that has changed."""
    empty = _nothing(say("It takes a few seconds until the flow is known."), plan, display)
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


def _scatter(own: Estimate, shown: Estimate, quantity: str, display: Display) -> str:
    if own is shown or not math.isfinite(own.half_width):
        return ""
    text = format_estimate(own, KINDS[quantity], display)
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


SETTLING = (
    mark("If the value stays, the interval has to shrink to {percent} % of its width"),
    mark("{share}: {ways}."),
    mark("{share}; no single improvement would do."),
    mark("a smaller uncertainty of {part}"),
    mark("the mean of {count} tests like this one"),
)
"""What `settling_words` says with values in it."""


def settled(text: str, **values: str | int) -> str:
    """Say in the language of the window what an analysis says of a verdict."""
    return say(text, **{name: str(value) for name, value in values.items()}) if values else retold(text)


def _why(estimate: Estimate, quantity: str, verdict: Verdict | None) -> str:
    if estimate.extrapolated:
        pressure = f"{QUANTITIES[quantity].pressure_pa:g}"
        return say("Extrapolated: {pressure} Pa lies outside the pressures that were measured.", pressure=pressure)
    if verdict is not None and verdict.settling is not None:
        return settling_words(verdict.settling, settled)
    return ""


def _nothing(why: str, plan: TestPlan | None, display: Display) -> OutcomePicture:
    limit = _limit_of(plan)
    quantity = USUAL[0] if plan is None else front_of(plan.method, plan.building, limit)
    return OutcomePicture(
        title=say("Result so far"),
        figure="–",
        unit=unit_words(quantity, display),
        interval="",
        why=why,
        limit=_limit_words(limit, quantity, display),
        verdict="",
        tone=Tone.QUIET,
        bar=None,
        others="",
        spoken=say("No result. {why}", why=why),
    )


def _limit_of(plan: TestPlan | None) -> Limit | None:
    return next(iter(plan.limits), plan.limit) if plan is not None else None


def _limit_words(limit: Limit | None, front: str, display: Display) -> str:
    """Return the limit; one on another quantity than that in front says on which."""
    if limit is None:
        return say("No limit set for this stage")
    kind = KINDS[limit.quantity]
    title = say("Stage limit") if limit.id == STAGE else limit_title(limit)
    bound = limit_text(limit.value, kind, display)
    if limit.quantity != front:
        return f"{title} {QUANTITIES[limit.quantity].symbol} {bound} {unit_symbol(kind, display)}"
    unit = "" if limit.quantity == "n50_per_h" else f" {unit_words(limit.quantity, display)}"
    return f"{title} {bound}{unit}"


def _bar(result: TestResult, building: Building, limit: Limit | None, display: Display) -> LimitBar | None:
    """Return the quantity that the limit is on against it."""
    if limit is None:
        return None
    kind = KINDS[limit.quantity]
    estimate = total_of(result, limit.quantity) or official(result, building, limit.quantity)
    if estimate is None:
        return None
    value, bound = (to_display(number, kind, display) for number in (estimate.value, limit.value))
    high = to_display(estimate.high, kind, display) if math.isfinite(estimate.high) else value
    low = to_display(estimate.low, kind, display) if math.isfinite(estimate.low) else value
    full = max(bound * 1.1, min(high, 2 * value) * 1.04)
    return LimitBar(*(min(max(number / full, 0.0), 1.0) for number in (value, low, high, bound)))


def _others(result: TestResult, building: Building, front: str, limit: Limit | None, display: Display) -> str:
    """Return the quantities beside the one in front in one line, that of the limit first."""
    first = () if limit is None else (limit.quantity,)
    parts = []
    for name in dict.fromkeys((*first, *in_order(result.method))):
        estimate = official(result, building, name)
        if estimate is None or name == front:
            continue
        text = format_estimate(estimate, KINDS[name], display)
        parts.append(f"{QUANTITIES[name].symbol} {text.value} {text.unit}")
    return " · ".join(parts[:OTHERS])
