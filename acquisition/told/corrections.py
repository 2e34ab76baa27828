"""From what was read to what the line goes through, point by point, with everything that was taken off or added."""

from __future__ import annotations

from acquisition.told.table import Row, Table
from acquisition.told.texts import percent
from analysis.numbertext import format_number
from analysis.records import Building, Run, RunResult, Test, TestResult
from analysis.units import Display, Quantity, format_value, unit_symbol


def correction_tables(test: Test, result: TestResult, display: Display) -> tuple[Table, ...]:
    """Return a table for each direction: pressure read, zero-flow pressure, induced, fan flow, envelope flow, line."""
    return tuple(
        _table(run, outcome, test.building, display) for run, outcome in zip(test.runs, result.runs, strict=True)
    )


def _table(run: Run, result: RunResult, building: Building, display: Display) -> Table:
    flow, mark = unit_symbol(Quantity.FLOW, display), display.decimal_mark
    rows = []
    pairs = zip(run.points, result.induced_pa, result.envelope_flow_m3_h, strict=True)
    for at, (point, induced_pa, envelope_m3_h) in enumerate(pairs, 1):
        line_m3_h = result.c_env_m3_h_pa_n.value * abs(induced_pa) ** result.n.value
        rows.append(
            Row(
                (
                    f"{at}",
                    format_number(point.envelope_pa, 2, mark),
                    format_number(induced_pa, 2, mark),
                    format_value(point.flow_m3_h, Quantity.FLOW, display, 1),
                    format_number(envelope_m3_h / point.flow_m3_h, 5, mark),
                    format_value(envelope_m3_h, Quantity.FLOW, display, 1),
                    format_value(line_m3_h, Quantity.FLOW, display, 1),
                    percent(envelope_m3_h / line_m3_h - 1.0, 2),
                )
            )
        )
    heads = (
        "Point", "Read, Pa", "Induced, Pa", f"Fan, {flow}", "Air factor", f"Envelope, {flow}",
        f"Line, {flow}", "Off the line",
    )  # fmt: skip
    return Table(f"Corrections, {run.direction}", heads, tuple(rows), _notes(run, result, building, display))


def _notes(run: Run, result: RunResult, building: Building, display: Display) -> tuple[str, ...]:
    mark = display.decimal_mark
    zero = format_number(result.zero_pa, 2, mark)
    reference = format_number(result.c_l_m3_h_pa_n.value / result.c_env_m3_h_pa_n.value, 5, mark)
    indoor, outdoor = (
        f"{format_value(value, Quantity.TEMPERATURE, display)} {unit_symbol(Quantity.TEMPERATURE, display)}"
        for value in (run.air.indoor_c, run.air.outdoor_c)
    )
    if run.air.barometric_pa is not None:
        barometer = format_value(run.air.barometric_pa, Quantity.BAROMETRIC_PRESSURE, display)
        air = f"air pressure {barometer} {unit_symbol(Quantity.BAROMETRIC_PRESSURE, display)}"
    else:
        air = f"air pressure by the altitude of {building.altitude_m:g} m"
    airs = f"indoor {indoor}, outdoor {outdoor}, {air}"
    return (
        f"Zero-flow pressure taken off, mean of the records before and after: {zero} Pa.",
        f"Air factor: from fan flow to flow through the envelope, by the densities of both airs ({airs}).",
        f"To reference air (20 °C, 101 325 Pa) the coefficient is multiplied by {reference}.",
    )
