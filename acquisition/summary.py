"""A result in a few lines of text, for a terminal."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence

from acquisition.told import table_lines, verdict_table
from acquisition.told.headline import in_order, lacking, of_run, official, total_of
from analysis.effective import QUANTITIES
from analysis.numbertext import format_number
from analysis.records import Estimate, RunResult, Test, TestResult
from analysis.units import Display, Quantity, format_estimate, format_with_unit, unit_symbol

OF_A_RUN: tuple[tuple[str, str, Quantity], ...] = (
    ("ELA4 (Cd 1)", "ela4_cm2", Quantity.LEAKAGE_AREA),
    ("EqLA10 (Cd 0.611)", "eqla10_cm2", Quantity.LEAKAGE_AREA),
    ("C at reference air", "c_l_m3_h_pa_n", Quantity.FLOW_COEFFICIENT),
    ("n", "n", Quantity.EXPONENT),
)


def summary_lines(test: Test, result: TestResult, display: Display) -> Iterator[str]:
    """Yield the result of a test: each direction, the mean of two, the checks that are not met, the verdicts."""
    stage = f", {test.stage}" if test.stage else ""
    yield f"{test.building.name or 'Building without a name'}{stage}: {result.method}, fit {result.fit}"
    names, building = in_order(result.method), test.building
    for run in result.runs:
        yield from _run(run, [(name, of_run(run, building, name)) for name in names], display)
    if len(result.runs) > 1:
        yield "Mean of both directions"
        yield from _quantities([(name, official(result, building, name)) for name in names], display)
    totals = [(name, total_of(result, name)) for name in names]
    if any(total is not None for _, total in totals):
        yield "With instruments, zero-flow pressure, wind and measures of the building"
        yield from _quantities(totals, display)
    missing = lacking(result.method, building)
    if missing:
        yield missing
    for run in result.runs:
        yield from _checks(run)
    if result.verdicts:
        yield from table_lines(verdict_table(result, display))


def _run(run: RunResult, quantities: Sequence[tuple[str, Estimate | None]], display: Display) -> Iterator[str]:
    zero = format_with_unit(run.zero_pa, Quantity.PRESSURE, display)
    r2 = format_number(run.r2, 5, display.decimal_mark)
    yield f"{run.direction.capitalize()}: {len(run.induced_pa)} points, zero-flow pressure {zero}, r² {r2}"
    yield from _quantities(quantities, display)
    for name, field, kind in OF_A_RUN:
        yield _line(name, getattr(run, field), kind, display)


def _quantities(known: Iterable[tuple[str, Estimate | None]], display: Display) -> Iterator[str]:
    for name, estimate in known:
        if estimate is not None:
            yield _line(QUANTITIES[name].symbol, estimate, QUANTITIES[name].kind, display)


def _line(name: str, estimate: Estimate, kind: Quantity, display: Display) -> str:
    text = format_estimate(estimate, kind, display)
    interval = f"95 %: {text.low} to {text.high}" if text.low else "no interval: too few points"
    outside = ", extrapolated" if estimate.extrapolated else ""
    return f"  {name:<18} {f'{text.value} {unit_symbol(kind, display)}':<22} {interval}{outside}"


def _checks(run: RunResult) -> Iterator[str]:
    met = sum(check.ok is True for check in run.checks)
    yield f"Checks, {run.direction}: {met} of {len(run.checks)} met"
    for check in run.checks:
        if not check.ok:
            found = "" if check.value is None else f" (found {check.value:g} {check.unit})".replace(" )", ")")
            yield f"  {'not met' if check.ok is False else 'not checked'}: {check.text}{found}"
