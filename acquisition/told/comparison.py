"""Two tests beside each other: the change with its interval, and everything else in which they differ."""

from __future__ import annotations

from dataclasses import dataclass

from acquisition.told.table import Row, Table, Tone
from acquisition.told.texts import BLANK, interval, percent, plus_minus, sentence
from acquisition.told.verdicts import likelihood
from analysis.comparison import Calibration, Change, assessed_flow, change_between, differences
from analysis.comparison.differences import Value
from analysis.errors import InvalidInput
from analysis.records import PowerLaw, Test, TestResult
from analysis.units import Display, Quantity, unit_symbol

USUAL = Calibration(gauge=0.005, flow_element=0.025)
"""Standard uncertainties of a calibrated gauge and flow element where no certificate says better (our choice)."""


@dataclass(frozen=True, slots=True)
class Side:
    """One of the two tests; `conditions` are what a test does not hold itself, by their title: rig, openings."""

    title: str
    test: Test
    result: TestResult
    conditions: tuple[tuple[str, str], ...] = ()


def comparison_tables(
    before: Side, after: Side, display: Display, *, same_instruments: bool = True
) -> tuple[Table, ...]:
    """Return the change of the flow at 50 Pa and the differences of the set-up. Raises `InvalidInput`.

    With the same instruments their calibration is one error in both and cancels in the change.
    """
    shared = {"gauge": 1.0, "flow-element": 1.0} if same_instruments else {}
    change = change_between(assessed_flow(_lines(before), USUAL), assessed_flow(_lines(after), USUAL), shared)
    return _change(before, after, change, display, same_instruments=same_instruments), _differences(before, after)


def _change(before: Side, after: Side, change: Change, display: Display, *, same_instruments: bool) -> Table:
    flow = Quantity.FLOW
    unit = unit_symbol(flow, display)
    rows = [
        Row(
            (f"{side.title}: q50, {unit}", plus_minus(side.result.mean.q50_m3_h, flow, display),
             interval(side.result.mean.q50_m3_h, flow, display))
        )
        for side in (before, after)
    ]  # fmt: skip
    ratio = change.ratio
    tone = Tone.PLAIN if not change.real else Tone.GOOD if ratio.value < 1 else Tone.BAD
    if change.real:
        word = "It is tighter now." if ratio.value < 1 else "It leaks more now."
    else:
        word = f"No change can be told; the smallest that could be is {100 * change.smallest:.1f} %."
    rows += [
        Row((f"Change, {unit}", plus_minus(change.difference, flow, display),
             interval(change.difference, flow, display))),
        Row(("Change, %", percent(ratio.value - 1), f"{percent(ratio.low - 1)} to {percent(ratio.high - 1)}"),
            f"{word} Probability of a true fall: {likelihood(change.probability_lower)}.", tone),
    ]  # fmt: skip
    note = (
        "Both tests with the same instruments: their calibration is one error in both and cancels in the change."
        if same_instruments
        else "Different instruments: their calibration does not cancel in the change."
    )
    return Table("Change", ("", "Value", "95 % interval"), tuple(rows), (note,))


def _differences(before: Side, after: Side) -> Table:
    found = differences(before.test, after.test, dict(before.conditions), dict(after.conditions))
    rows = tuple(
        Row((item.title, _value(item.before, item.unit), _value(item.after, item.unit)), sentence(item.effect))
        for item in found
    )
    return Table("What else differs", ("", "Before", "After"), rows, (), "Nothing else differs.")


def _value(value: Value, unit: str) -> str:
    if value is None or value == "":
        return BLANK
    return value if isinstance(value, str) else f"{value:g} {unit}".strip()


def _lines(side: Side) -> list[PowerLaw]:
    lines = [line for run in side.result.runs if (line := run.reference_line) is not None]
    if not lines:
        raise InvalidInput(side.title, None, "a test with a leakage line is needed to compare it")
    return lines
