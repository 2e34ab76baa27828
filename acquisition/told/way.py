"""The way to the target in words: what is left, which leaks could bring it, what it cost so far, whether to go on."""

from __future__ import annotations

from collections.abc import Mapping

from acquisition.sealing.leaks import Leak
from acquisition.sealing.way import TARGET_PA, Way
from acquisition.told.table import Row, Table, Tone
from acquisition.told.texts import BLANK, interval
from analysis.hole import hole_cm2_per_m3_h
from analysis.records import Estimate
from analysis.units import Display, Quantity, format_value, unit_symbol

GUESSES = "Sizes that nobody measured are guesses, which may be off by a factor of three."
NOTHING_YET = "No seal has been measured yet: mark one with S and D while a pressure is held."
HOLE = "The area is that of one sharp-edged hole at 50 Pa, discharge coefficient 0.611."


def way_tables(way: Way, leaks: Mapping[int, Leak], display: Display) -> tuple[Table, ...]:
    """Return what is left and what the work brought."""
    return _left(way, leaks, display), _work(way, display)


def verdict(way: Way) -> str:
    """Return whether to go on or stop, in a sentence."""
    left = way.remaining
    if way.target_m3_h is None:
        return "No target at 50 Pa is set for the stage: enter one in Job."
    if left is None:
        return "Hold a pressure: the flow now is needed to say what is left."
    if left.to_go_m3_h.high <= 0.0:
        return "The target is met: stop here. Only a test by the method counts."
    if left.to_go_m3_h.value <= 0.0:
        return "The flow is at the target, but so near that a test by the method may say otherwise: seal a little more."
    if left.chosen_m3_h.low >= left.to_go_m3_h.value:
        return "Go on: the leaks of the list bring it."
    if left.reachable:
        return "Go on: the leaks of the list may bring it, if their sizes are guessed well."
    if left.floor_m3_h.low > (way.target_m3_h or 0.0):
        return "The leaks of the list do not bring it, even if larger than guessed: look for more, or stop here."
    return "The leaks of the list hardly bring it: look for more before you go on."


def _left(way: Way, leaks: Mapping[int, Leak], display: Display) -> Table:
    flow, area = unit_symbol(Quantity.FLOW, display), unit_symbol(Quantity.LEAKAGE_AREA, display)
    heads = ("", f"At 50 Pa, {flow}", "95 % interval", f"Hole, {area}")
    left = way.remaining
    rows = [] if way.flow_m3_h is None else [_row("Flow now", way.flow_m3_h, display)]
    if way.target_m3_h is not None:
        rows.append(_row("Target", Estimate(way.target_m3_h, way.target_m3_h, way.target_m3_h), display))
    if left is not None:
        met = left.to_go_m3_h.value <= 0.0
        names = "; ".join(f"{number} {leaks[number].place}" for number in left.chosen if number in leaks)
        rows += [
            _row("To go to the target", left.to_go_m3_h, display, Tone.GOOD if met else Tone.OPEN),
            _row("All leaks of the list that can be sealed", left.listed_m3_h, display),
            _row(
                "The fewest of them that would do",
                left.chosen_m3_h,
                display,
                Tone.GOOD if left.reachable else Tone.BAD,
                names,
            ),
            _row("What stays when all of the list is sealed", left.floor_m3_h, display),
            _row(
                "Of that, what no sealing reaches",
                left.beyond_sealing_m3_h,
                display,
                note="Windows, flaps and vents of the list, and what is left on purpose.",
            ),
        ]
    notes = [verdict(way), GUESSES, HOLE] if rows else [verdict(way)]
    if way.unsized:
        numbers = ", ".join(map(str, way.unsized))
        notes.insert(1, f"Without a size, and therefore not counted: {numbers}.")
    return Table("What is left", heads, tuple(rows), tuple(notes))


def _work(way: Way, display: Display) -> Table:
    unit = unit_symbol(Quantity.FLOW, display)
    gone = way.gone

    def plain(value: float | None, decimals: int | None = None) -> str:
        return BLANK if value is None else format_value(value, Quantity.FLOW, display, decimals)

    def number(value: float | None) -> str:
        return BLANK if value is None else f"{value:.1f}".replace(".", display.decimal_mark)

    between = interval(gone.drop_m3_h, Quantity.FLOW, display) if gone.drop_m3_h.high > gone.drop_m3_h.low else BLANK
    rows = (
        Row((f"Flow that went with the seals, {unit}", plain(gone.drop_m3_h.value), between)),
        Row(("Work, minutes", number(gone.minutes), "")),
        Row(("Cost", number(gone.cost), "")),
        Row((f"Flow that went in an hour of work, {unit}", plain(gone.drop_per_hour_m3_h), "")),
        Row((f"Flow that went for each unit of money, {unit}", plain(gone.drop_per_cost_m3_h, 2), "")),
        Row(("Hours for the rest, at this pace", number(way.hours_to_go), "")),
        Row(("Cost of the rest, at this price", number(way.cost_to_go), "")),
    )
    if not (gone.minutes or gone.cost or gone.drop_m3_h.value):
        return Table("What the work brought", ("", "Value", "95 % interval"), (), (), NOTHING_YET)
    note = "The best leaks come first: the rest is usually slower and dearer than the pace so far."
    return Table("What the work brought", ("", "Value", "95 % interval"), rows, (note,))


def _row(words: str, value: Estimate, display: Display, tone: Tone = Tone.PLAIN, note: str = "") -> Row:
    flow = format_value(value.value, Quantity.FLOW, display)
    between = interval(value, Quantity.FLOW, display) if value.high > value.low else BLANK
    hole = format_value(value.value * hole_cm2_per_m3_h(TARGET_PA), Quantity.LEAKAGE_AREA, display)
    return Row((words, flow, between, hole), note, tone)
