"""The tables of the report: points, results, checks."""

from __future__ import annotations

from collections.abc import Sequence

from acquisition.languages import Language
from acquisition.report import wording
from acquisition.report.content import PointRow, ReportContent, RunContent
from acquisition.report.names import (
    BLANK,
    KINDS,
    SYMBOLS,
    Json,
    Symbol,
    check_value,
    interval_text,
    share_decimals,
)
from acquisition.report.typeface import printable
from acquisition.told.headline import USUAL, in_order, of_run, official
from acquisition.told.titles import fit_title
from analysis.numbertext import format_number
from analysis.records import Check, Estimate
from analysis.units import Display, Quantity, format_estimate, format_value, unit_symbol

_TONES = {True: "good", False: "bad", None: "open"}


def points_table(run: RunContent, display: Display, language: Language) -> Json:
    """Return the points of a direction, the struck ones with their reason."""
    say, flow = language.say, unit_symbol(Quantity.FLOW, display)
    names = [say(name) for name in ("Target", "Measured", "Induced", "Fan", "Envelope", "Off line")]
    struck = any(row.struck_reason is not None for row in run.rows)
    return {
        "head": say("Points, {direction}", direction=say(run.run.direction.value)),
        "columns": list(zip(names, ("Pa", "Pa", "Pa", flow, flow, "%"), strict=True)),
        "rows": [_point(row, display, language) for row in run.rows],
        "note": say("Points crossed out are not in the result.") if struck else "",
    }


def _point(row: PointRow, display: Display, language: Language) -> Json:
    def text(value: float | None, kind: Quantity, decimals: int) -> str:
        return BLANK if value is None else format_value(value, kind, display, decimals)

    point = row.point
    off_line = BLANK if row.off_line is None else format_number(100 * row.off_line, 1, display.decimal_mark)
    reason = None if row.struck_reason is None else printable(language.said(row.struck_reason, wording.REASONS))
    return {
        "cells": [
            text(row.target_pa, Quantity.PRESSURE, 0),
            text(None if point is None else point.envelope_pa, Quantity.PRESSURE, 1),
            text(row.induced_pa, Quantity.PRESSURE, 1),
            text(None if point is None else point.flow_m3_h, Quantity.FLOW, 0),
            text(row.envelope_flow_m3_h, Quantity.FLOW, 0),
            off_line,
        ],
        "struck": "" if reason is None else language.say("Struck: {reason}", reason=reason),
    }


def results_table(content: ReportContent, display: Display) -> Json:
    """Return all results with their intervals: a side for each direction, and the mean of two."""
    runs, language, say = [run.result for run in content.runs], content.language, content.language.say
    result, building = content.result, content.test.building
    rows = [
        _result(SYMBOLS[name], KINDS[name], values, display, language)
        for name in in_order(result.method)
        for values in [[*(of_run(run, building, name) for run in runs), official(result, building, name)]]
        if name in USUAL or values[-1] is not None
    ]
    single: tuple[tuple[Symbol, Quantity, Sequence[Estimate | None]], ...] = (
        (("n", ""), Quantity.EXPONENT, [run.n for run in runs]),
        (("C", "env"), Quantity.FLOW_COEFFICIENT, [run.c_env_m3_h_pa_n for run in runs]),
        (("C", "L"), Quantity.FLOW_COEFFICIENT, [run.c_l_m3_h_pa_n for run in runs]),
        (("ELA", "4"), Quantity.LEAKAGE_AREA, [run.ela4_cm2 for run in runs]),
        (("EqLA", "10"), Quantity.LEAKAGE_AREA, [run.eqla10_cm2 for run in runs]),
    )
    rows += [_result(symbol, kind, [*values, None], display, language) for symbol, kind, values in single]
    names = [say(wording.DIRECTIONS[run.direction]) for run in runs]
    if len(runs) == 1:
        for row in rows:
            row["cells"] = row["cells"][:1] if isinstance(row["cells"], list) else []
    r2 = say(" and ").join(format_number(run.r2, share_decimals(run.r2), display.decimal_mark) for run in runs)
    return {
        "head": say("Results with 95 % intervals"),
        "columns": [*names, say("Mean")] if len(runs) > 1 else names,
        "rows": rows,
        "notes": [
            say(wording.AREAS),
            say(wording.COEFFICIENTS),
            say("Fit: {fit}, r² {r2}.", fit=say(fit_title(result.fit)), r2=r2),
        ],
    }


def _result(
    symbol: Symbol, kind: Quantity, values: Sequence[Estimate | None], display: Display, language: Language
) -> Json:
    outside = any(value is not None and value.extrapolated for value in values)
    return {
        "symbol": symbol,
        "unit": unit_symbol(kind, display),
        "note": language.say("extrapolated") if outside else "",
        "cells": [_cell(value, kind, display, language) for value in values],
    }


def _cell(estimate: Estimate | None, kind: Quantity, display: Display, language: Language) -> Json | None:
    if estimate is None:
        return None
    text = format_estimate(estimate, kind, display)
    return {"value": text.value, "interval": interval_text(text, language)}


def checks_table(content: ReportContent, display: Display) -> Json:
    """Return one row for each check, with a side for each direction."""
    runs, language, say = content.runs, content.language, content.language.say
    found = [{check.id: check for check in run.result.checks} for run in runs]
    ids = list(dict.fromkeys(check.id for run in runs for check in run.result.checks))
    sources = {check.source for run in runs for check in run.result.checks}
    head = say("Checks of the method")
    if len(sources) == 1:
        head = say("Checks of the method, every requirement {source}", source=printable(language.said(min(sources))))
    return {
        "head": head,
        "sources": len(sources) > 1,
        "columns": [say(wording.DIRECTIONS[run.run.direction]) for run in runs],
        "rows": [_check([checks.get(check_id) for checks in found], display, language) for check_id in ids],
    }


def _check(sides: Sequence[Check | None], display: Display, language: Language) -> Json:
    # Where a check could not be made its text says what is missing: that one is the fuller text.
    first = max((check for check in sides if check is not None), key=lambda check: len(check.text))
    return {
        "text": printable(language.said(first.text)),
        "clause": f"§\u00a0{printable(language.say(first.clause))}" if first.clause else "",
        "sides": [
            {"value": "", "tone": "open"}
            if check is None
            else {"value": check_value(check, display), "tone": _TONES[check.ok]}
            for check in sides
        ],
        "source": printable(language.said(first.source)),
    }
