"""The Hunt place: what leaks now, what changed, how sure that is, and which seals brought it."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from enum import StrEnum

from acquisition.sealing.held import SealedLook
from acquisition.sealing.hold import HoldLook, seconds_to_learn
from acquisition.sealing.leaks import Leak
from acquisition.sealing.way import at_50_pa, target_flow_m3_h
from acquisition.snapshot import EngineState, Snapshot
from analysis.hole import hole_cm2_per_m3_h
from analysis.records import Direction, Estimate
from analysis.sealing.change import FEWEST_AFTER_S, Change, Sureness
from analysis.units import Display, Quantity, format_estimate, format_value, unit_symbol
from gui.theme import Tone
from gui.viewmodels.hunt_zero import zero_words
from gui.viewmodels.leak_words import place_words
from gui.viewmodels.moment import Moment, RigState
from gui.viewmodels.retold import retold
from gui.words import mark, say

NO_FIGURE = "–"
MINUS = "\u2212"
STALE_S = 2.0
NEAR_SHARE, NEAR_PA = 0.05, 2.0
"""The pressure counts as held as near as this to what is wished for (our choice)."""
MOST_SEALS = 5


class HuntTab(StrEnum):
    """What stands below the figures."""

    TRACE = "trace"
    LEAKS = "leaks"
    LEFT = "left"
    LOOK = "look"
    ZONES = "zones"
    PHONE = "phone"

    @property
    def word(self) -> str:
        """The word on the tab."""
        return say(_TABS[self.value])


_TABS = {
    "trace": mark("Flow"),
    "leaks": mark("Leaks"),
    "left": mark("What is left"),
    "look": mark("How to look"),
    "zones": mark("Zones"),
    "phone": mark("Phone"),
}


@dataclass(slots=True)
class HuntChoices:
    """What the person chose in the place. `chosen` is the number of the leak that the keys are about."""

    tab: HuntTab = HuntTab.TRACE
    afar: bool = False
    target_pa: float = 50.0
    direction: Direction | None = None
    chosen: int | None = None
    timer_end_ns: int | None = None
    """When the timer runs out, on the clock of the readings."""
    zero_later_ns: int = 0
    """Before then it is not asked for the zero-flow pressure once more."""


@dataclass(frozen=True, slots=True)
class Big:
    """A figure to be read from afar, with its unit; `spoken` is its accessible name."""

    caption: str
    value: str
    unit: str
    tone: Tone
    spoken: str

    @property
    def known(self) -> bool:
        """Whether there is a figure; without one a quiet dash keeps its place."""
        return self.value != NO_FIGURE


@dataclass(frozen=True, slots=True)
class SealRow:
    """A seal and what it brought."""

    name: str
    brought: str
    tone: Tone


@dataclass(frozen=True, slots=True)
class HuntPicture:
    """The figures. `holding` tells whether a pressure is held; `idle` says what to do where none is.

    `way` is how much of the way from the beginning to the target is gone (0..1), None without a target.
    """

    under_way: bool
    """Whether a hold is under way, on its way to the pressure or there."""
    holding: bool
    idle: str
    flow: Big
    rate: str
    band: str
    way: float | None
    way_text: str
    pressure: str
    pressure_tone: Tone
    since: Big
    detail: str
    verdict: str
    verdict_tone: Tone
    least: str
    zero: str
    zero_tone: Tone
    seals: tuple[SealRow, ...]
    age: str
    stale: bool


@dataclass(frozen=True, slots=True)
class HuntFacts:
    """What the place is drawn from beside the moment."""

    look: HoldLook | None = None
    leaks: Mapping[int, Leak] = field(default_factory=dict)
    counted_from: str = ""
    """Time of day of the mark from which the change is counted, empty for the beginning."""
    age_s: float | None = None
    """Age of the newest reading."""


def hunt_picture(moment: Moment, facts: HuntFacts) -> HuntPicture:
    """Return the figures of a moment."""
    display, snapshot, look = moment.display, moment.snapshot, facts.look
    holding = snapshot is not None and snapshot.held is not None
    reference = f"{look.levelling.reference_pa:g}" if look is not None else "50"
    now = look.now_m3_h if look is not None and holding else None
    since = look.since if look is not None and holding else None
    pressure, pressure_tone = _pressure(snapshot, display)
    verdict, verdict_tone = _verdict(since, look) if holding else ("", Tone.QUIET)
    stale = facts.age_s is None or facts.age_s > STALE_S
    way, way_text = _way(moment, look, now) if look is not None and now is not None else (None, "")
    return HuntPicture(
        under_way=snapshot is not None and snapshot.hold_pa is not None,
        holding=holding,
        idle="" if holding else _idle(moment),
        flow=_flow(now, reference, display),
        rate=_rate(moment, look, now, display),
        band=_band(now, look, reference, display) if holding else "",
        way=way,
        way_text=way_text,
        pressure=pressure,
        pressure_tone=pressure_tone,
        since=_since(since, facts.counted_from, display),
        detail=_detail(since, look, display),
        verdict=verdict,
        verdict_tone=verdict_tone,
        least=_least(look, display) if holding else "",
        zero=zero_words(look) if holding else "",
        zero_tone=Tone.ATTENTION if look is not None and look.zero.doubts else Tone.QUIET,
        seals=_seals(look, facts.leaks, display) if look is not None else (),
        age=_age(facts.age_s),
        stale=stale and holding,
    )


def _idle(moment: Moment) -> str:
    if moment.rig.state is not RigState.CONNECTED or moment.snapshot is None:
        return say("No rig is connected. Connect one in Rig, then hold a pressure here.")
    if moment.job is None:
        return say("No job is open: marks and leaks need one. Make one with Ctrl+N.")
    if moment.state is EngineState.IDLE:
        return say("No pressure is held. Choose one, then hold it (H).")
    return retold(moment.snapshot.sentence)


def _pressure(snapshot: Snapshot | None, display: Display) -> tuple[str, Tone]:
    if snapshot is None or snapshot.held is None or snapshot.target_pa is None or snapshot.envelope_pa is None:
        return "", Tone.QUIET
    induced = snapshot.envelope_pa - (snapshot.zero_pa or 0.0)
    text = f"{format_value(induced, Quantity.PRESSURE, display)} {unit_symbol(Quantity.PRESSURE, display)}"
    if abs(induced - snapshot.target_pa) <= max(NEAR_SHARE * abs(snapshot.target_pa), NEAR_PA):
        return say("{text} held", text=text), Tone.GOOD
    target = f"{snapshot.target_pa:g}".replace("-", MINUS)
    return say("{text}, wanted {target}", text=text, target=target), Tone.ATTENTION


def _flow(now: Estimate | None, reference: str, display: Display) -> Big:
    unit = unit_symbol(Quantity.FLOW, display)
    caption = say("Leakage flow at {reference} Pa, now", reference=reference)
    if now is None:
        return Big(caption, NO_FIGURE, unit, Tone.QUIET, say("{caption}: no figure yet", caption=caption))
    value = format_value(now.value, Quantity.FLOW, display)
    return Big(caption, value, unit, Tone.FLOW, f"{caption}: {value} {unit}")


def _rate(moment: Moment, look: HoldLook | None, now: Estimate | None, display: Display) -> str:
    volume = moment.job.plan.building.volume_m3 if moment.job is not None else None
    if now is None or look is None or volume is None:
        return ""
    at_50 = at_50_pa(now, look)
    rate = Estimate(at_50.value / volume, at_50.low / volume, at_50.high / volume)
    text = format_estimate(rate, Quantity.AIR_CHANGE, display).value
    far = say(", brought from {held_pa} Pa", held_pa=f"{look.held_pa:g}") if at_50.extrapolated else ""
    return say("{text} air changes per hour at 50 Pa{far}", text=text, far=far)


def _band(now: Estimate | None, look: HoldLook | None, reference: str, display: Display) -> str:
    if now is None:
        wait = seconds_to_learn(look)
        return (
            say("The wind at this house is being learnt: {wait} s to go.", wait=wait)
            if wait
            else say("No reading to show.")
        )
    half = format_estimate(now, Quantity.FLOW, display).plus_minus
    unit = unit_symbol(Quantity.FLOW, display)
    return say(
        "± {half} {unit} (95 %) over the last 10 s, each reading brought to {reference} Pa",
        half=half,
        unit=unit,
        reference=reference,
    )


def _way(moment: Moment, look: HoldLook, now: Estimate) -> tuple[float | None, str]:
    plan = moment.job.plan if moment.job is not None else None
    target = target_flow_m3_h(plan) if plan is not None else None
    first = look.since.before_m3_h if look.since is not None else None
    if target is None or first is None or plan is None:
        return None, say("No target at 50 Pa is set for the stage.") if target is None else ""
    start = at_50_pa(Estimate(first, first, first), look).value
    flow = at_50_pa(now, look)
    unit = unit_symbol(Quantity.FLOW, moment.display)
    goal = f"{format_value(target, Quantity.FLOW, moment.display)} {unit}"
    if flow.value <= target:
        return 1.0, say("At the target of {goal}: only a test by the method counts", goal=goal)
    if start <= target:
        return 0.0, say("Above the target of {goal}", goal=goal)
    share = min(max((start - flow.value) / (start - target), 0.0), 1.0)
    begun = format_value(start, Quantity.FLOW, moment.display)
    return share, say(
        "{share} % of the way from {begun} to the target of {goal}", share=f"{100 * share:.0f}", begun=begun, goal=goal
    )


def _since(since: Change | None, counted_from: str, display: Display) -> Big:
    caption = (
        say("Since the mark at {counted_from}", counted_from=counted_from) if counted_from else say("Since you started")
    )
    unit = unit_symbol(Quantity.FLOW, display)
    if since is None:
        return Big(caption, NO_FIGURE, unit, Tone.QUIET, say("{caption}: no figure yet", caption=caption))
    value = signed(since.difference_m3_h, display)
    sure = since.sureness is Sureness.SURE
    tone = Tone.PLAIN if not sure else Tone.GOOD if since.difference_m3_h.value < 0.0 else Tone.BAD
    return Big(caption, value, unit, tone, f"{caption}: {value} {unit}, {say(since.sureness)}")


def _detail(since: Change | None, look: HoldLook | None, display: Display) -> str:
    if since is None or look is None:
        return ""
    half = format_estimate(since.difference_m3_h, Quantity.FLOW, display).plus_minus
    reference = look.levelling.reference_pa
    factor = hole_cm2_per_m3_h(reference)
    area = abs(since.difference_m3_h.value) * factor
    text = format_value(area, Quantity.LEAKAGE_AREA, display)
    unit = unit_symbol(Quantity.LEAKAGE_AREA, display)
    return say(
        "± {half} (95 %) · a hole of {text} {unit} ({reference} Pa, Cd 0.611)",
        half=half,
        text=text,
        unit=unit,
        reference=f"{reference:g}",
    )


def _verdict(since: Change | None, look: HoldLook | None) -> tuple[str, Tone]:
    if look is None or look.unrest is None or since is None:
        return "", Tone.QUIET
    match since.sureness:
        case Sureness.SURE:
            return say("sure"), Tone.GOOD if since.difference_m3_h.value < 0.0 else Tone.BAD
        case Sureness.NOT_SURE:
            return say("not sure: as small as the wind"), Tone.QUIET
        case Sureness.TOO_WINDY:
            return say("too windy to tell"), Tone.ATTENTION


def _least(look: HoldLook | None, display: Display) -> str:
    if look is None or look.smallest_m3_h is None or look.unrest is None:
        return ""
    text = format_value(look.smallest_m3_h, Quantity.FLOW, display, 1)
    share = 100.0 * look.smallest_m3_h / look.unrest.mean_m3_h
    unit = unit_symbol(Quantity.FLOW, display)
    least = say(
        "Least change told in 30 s now: {text} {unit} ({share} %)",
        text=text,
        unit=unit,
        share=f"{share:.1f}",
    )
    return least.replace(".", display.decimal_mark)


def _seals(look: HoldLook, leaks: Mapping[int, Leak], display: Display) -> tuple[SealRow, ...]:
    rows = [SealRow(leak_name(item.mark.leak, leaks), *brought(item, look, display)) for item in reversed(look.sealed)]
    return tuple(rows[:MOST_SEALS])


def brought(item: SealedLook, look: HoldLook, display: Display) -> tuple[str, Tone]:
    """Return what a seal brought in words, and the tone of it."""
    change = item.change
    if change is None:
        waited = max(look.trace.end_s - item.done_s, 0.0)
        if waited < FEWEST_AFTER_S:
            return say("{waited} s to go", waited=f"{FEWEST_AFTER_S - waited:.0f}"), Tone.QUIET
        return say("nothing quiet before it"), Tone.QUIET
    text = format_estimate(change.difference_m3_h, Quantity.FLOW, display)
    if change.sureness is Sureness.SURE:
        good = change.difference_m3_h.value < 0.0
        return f"{text.value} ± {text.plus_minus}", Tone.GOOD if good else Tone.BAD
    if change.sureness is Sureness.TOO_WINDY:
        return say("too windy to tell"), Tone.ATTENTION
    return say("not told from none (± {plus_minus})", plus_minus=text.plus_minus), Tone.QUIET


def leak_name(number: int | None, leaks: Mapping[int, Leak]) -> str:
    """Return what a leak is called."""
    leak = leaks.get(number) if number is not None else None
    return say("Unnamed") if leak is None else f"{number} {place_words(leak)}"


def signed(difference: Estimate, display: Display) -> str:
    """Return a change with its sign and as many digits as its interval carries."""
    text = format_estimate(difference, Quantity.FLOW, display).value
    return text if text.startswith((MINUS, "0")) or not difference.value > 0.0 else f"+{text}"


def _age(age_s: float | None) -> str:
    if age_s is None:
        return say("no data")
    return say("data {seconds} s old", seconds=f"{age_s:.1f}") if age_s < 100.0 else say("data older than 100 s")
