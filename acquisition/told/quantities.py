"""All quantities of a result: what leaks, by every measure in use, in each direction and in the mean."""

from __future__ import annotations

from collections.abc import Sequence

from acquisition.told.table import Row, Table
from acquisition.told.texts import extrapolated, interval, percent, plus_minus, with_unit
from analysis.asymmetry import asymmetry
from analysis.effective import QUANTITIES, EffectiveQuantity, effective, flow_at_pressure
from analysis.errors import InvalidInput
from analysis.infiltration.credit import normalized_leakage
from analysis.records import Building, Estimate, PowerLaw, RunResult, TestResult
from analysis.units import Display, Quantity, unit_symbol

_OF_A_RUN: tuple[tuple[str, str, Quantity], ...] = (
    ("Effective leakage area at 4 Pa, Cd 1", "ela4_cm2", Quantity.LEAKAGE_AREA),
    ("Equivalent leakage area at 10 Pa, Cd 0.611", "eqla10_cm2", Quantity.LEAKAGE_AREA),
    ("Leakage coefficient, air of the test", "c_env_m3_h_pa_n", Quantity.FLOW_COEFFICIENT),
    ("Leakage coefficient, reference air", "c_l_m3_h_pa_n", Quantity.FLOW_COEFFICIENT),
    ("Flow exponent", "n", Quantity.EXPONENT),
)


def quantity_table(
    result: TestResult, building: Building, display: Display, pressures_pa: Sequence[float] = ()
) -> Table:
    """Return the quantities of a result, with the flow at further pressures where some are given.

    A quantity whose measure of the building is not known is left out. Raises `InvalidInput` for a pressure that is not
    above 0.
    """
    wanted = [*(flow_at_pressure(pressure) for pressure in pressures_pa), *QUANTITIES.values()]
    both = len(result.runs) > 1
    rows = [row for item in wanted if (row := _effective_row(item, result, building, display)) is not None]
    rows += [_own_row(title, name, kind, result.runs, display) for title, name, kind in _OF_A_RUN]
    normalised = _normalised(result, building, display)
    rows += [] if normalised is None else [normalised]
    words = [run.direction.capitalize() for run in result.runs]
    heads = ("", *words, "Mean") if both else ("", *words, "95 % interval")
    notes = [text for text in (_directions(result), _missing(building)) if text]
    return Table("Quantities", heads, tuple(rows), tuple(notes))


def _directions(result: TestResult) -> str:
    """Return how both directions differ and what that looks like."""
    found = asymmetry(result.runs)
    if found is None:
        return ""
    return f"Pressurizing leaks {percent(found.ratio - 1.0)} against depressurizing. {found.cause.words}"


def _effective_row(quantity: EffectiveQuantity, result: TestResult, building: Building, display: Display) -> Row | None:
    lines = [line for run in result.runs if (line := run.reference_line) is not None]
    if len(lines) < len(result.runs) or not lines:
        return None
    try:
        each = [_estimate([line], building, quantity) for line in lines]
        mean = _estimate(lines, building, quantity)
    except InvalidInput:
        return None
    title = with_unit(f"{quantity.symbol}, {quantity.title}", unit_symbol(quantity.kind, display))
    shown = [*each, mean] if len(each) > 1 else each
    cells = [plus_minus(item, quantity.kind, display) for item in shown]
    if len(each) == 1:
        cells.append(interval(mean, quantity.kind, display))
    return Row((title, *cells), extrapolated([mean]))


def _own_row(title: str, name: str, kind: Quantity, runs: Sequence[RunResult], display: Display) -> Row:
    estimates: list[Estimate] = [getattr(run, name) for run in runs]
    cells = [plus_minus(item, kind, display) for item in estimates]
    if len(runs) > 1:
        cells.append("")
    else:
        cells.append(interval(estimates[0], kind, display))
    return Row((with_unit(title, unit_symbol(kind, display)), *cells), extrapolated(estimates))


def _normalised(result: TestResult, building: Building, display: Display) -> Row | None:
    if building.floor_area_m2 is None or building.height_m is None:
        return None
    factor = normalized_leakage(1.0, building.floor_area_m2, building.height_m)
    estimates = [run.ela4_cm2.times(factor) for run in result.runs]
    cells = [plus_minus(item, Quantity.EXPONENT, display) for item in estimates]
    cells += [""] if len(cells) > 1 else [interval(estimates[0], Quantity.EXPONENT, display)]
    return Row(("Normalised leakage NL (ASHRAE 62.2)", *cells), extrapolated(estimates))


def _estimate(lines: Sequence[PowerLaw], building: Building, quantity: EffectiveQuantity) -> Estimate:
    return effective(lines, building, quantity, "a quantity").estimate


def _missing(building: Building) -> str:
    names = {"volume_m3": "volume", "envelope_area_m2": "envelope area", "floor_area_m2": "floor area"}
    lacking = [title for field, title in names.items() if getattr(building, field) is None]
    return f"Not stated, so what is counted per it is missing: {', '.join(lacking)}." if lacking else ""
