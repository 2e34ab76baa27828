"""The uncertainty budget in rows: what makes the result uncertain, and the best estimate beside the official number."""

from __future__ import annotations

import math

from acquisition.languages import ENGLISH, Language
from acquisition.told.headline import in_order
from acquisition.told.table import Row, Table
from acquisition.told.texts import BLANK, interval, percent, plus_minus, sentence, with_unit
from acquisition.told.titles import fit_title
from analysis.effective import QUANTITIES
from analysis.records import QuantityBudget, TestResult
from analysis.units import Display, Quantity, unit_symbol

TITLES = {
    "fit": "Scatter of the points about the line",
    "zero": "Zero-flow pressure, scatter of its records",
    "zero-drift": "Zero-flow pressure, drift between the records",
    "wind": "Wind and stack with the fan running (model error)",
    "method": "What fit and conversion of the method leave out",
    "gauge": "Calibration of the pressure gauge",
    "flow-element": "Calibration of the flow element",
    "temperature": "Temperatures",
    "volume": "Volume",
    "envelope-area": "Envelope area",
    "floor-area": "Floor area",
}
NOTE = (
    "Standard uncertainties, combined in quadrature (JCGM 100); the interval is about twice the whole. Parts of the "
    "readings come anew with every test, those of instruments and of the building stay the same."
)


def budget_table(result: TestResult, display: Display, quantity: str = "", language: Language = ENGLISH) -> Table:
    """Return the budget of a quantity, the first of its method if none is named, with the best estimate below."""
    budget, say = _chosen(result, quantity), language.say
    if budget is None:
        return Table(say("Uncertainty"), ("",), (), (), say("From two points on."))
    whole = math.sqrt(math.fsum(part.ln_u**2 for part in budget.parts))
    rows = [
        Row((say(TITLES.get(part.id, part.id)), _percent(part.ln_u, language), _share(part.ln_u, whole)))
        for part in sorted(budget.parts, key=lambda part: -part.ln_u)
    ]
    known = QUANTITIES[budget.quantity]
    rows.append(Row((say("Together"), _percent(whole, language), "")))
    total = with_unit(say("{symbol} with all of it", symbol=known.symbol), unit_symbol(known.kind, display))
    between = interval(budget.total, known.kind, display, language)
    rows.append(Row((total, plus_minus(budget.total, known.kind, display), between)))
    rows += _best(result, display, language)
    heads = ("", say("Standard"), say("Share"))
    return Table(say("Uncertainty of {symbol}", symbol=known.symbol), heads, tuple(rows), (say(NOTE),))


def _best(result: TestResult, display: Display, language: Language) -> list[Row]:
    best = result.best
    if best is None:
        return []
    flow, say = Quantity.FLOW, language.say
    title = with_unit(say("Best estimate of q50"), unit_symbol(flow, display))
    note = say(
        "{fit}: it {reason}. It lies {percent} off the official number; its interval holds what the readings hold, "
        "without instruments.",
        fit=say(fit_title(best.fit)),
        reason=language.said(best.reason),
        percent=percent(best.difference, 2, language),
    )
    cells = (title, plus_minus(best.q50_m3_h, flow, display), interval(best.q50_m3_h, flow, display, language))
    return [Row(cells, sentence(note))]


def _chosen(result: TestResult, quantity: str) -> QuantityBudget | None:
    known = {item.quantity: item for item in result.budgets}
    for name in (quantity, *in_order(result.method)):
        if name in known:
            return known[name]
    return None


def _percent(ln_u: float, language: Language) -> str:
    return language.number(f"{100 * ln_u:.2f} %") if math.isfinite(ln_u) else BLANK


def _share(ln_u: float, whole: float) -> str:
    return f"{100 * (ln_u / whole) ** 2:.0f} %" if whole > 0 and math.isfinite(whole) else BLANK
