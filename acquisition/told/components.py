"""What single components leak, as a table, and lists of them added up."""

from __future__ import annotations

from collections.abc import Mapping

from acquisition.told.table import Row, Table
from acquisition.told.texts import sentence
from analysis.components.table import PER, shipped_components
from analysis.components.total import component_total, flow_of_area_m3_h
from analysis.units import Display, Quantity, format_value, unit_symbol

NOTE = (
    "Effective leakage area at 4 Pa, discharge coefficient 1. Averages over many buildings: "
    "a single component may leak many times as much."
)


def component_list(display: Display) -> Table:
    """Return all components with typical figure and range."""
    area = unit_symbol(Quantity.LEAKAGE_AREA, display)
    rows = []
    for item in shipped_components().components:
        low, high = item.range_cm2
        rows.append(
            Row(
                (
                    item.id,
                    f"{item.title}, {PER[item.per]}",
                    _area(item.typical_cm2, display),
                    f"{_area(low, display)} to {_area(high, display)}",
                ),
                sentence(item.provenance.words),
            )
        )
    return Table(
        "Leakage of components", ("Id", "Component", f"Typical, {area}", "Range"), tuple(rows), (NOTE,), text_columns=2
    )


def component_sum(amounts: Mapping[str, float], display: Display) -> Table:
    """Return what so many of each leak together; raises `InvalidInput` for an unknown component."""
    table = shipped_components()
    total = component_total(table, amounts)
    area, flow = unit_symbol(Quantity.LEAKAGE_AREA, display), unit_symbol(Quantity.FLOW, display)
    rows = [
        Row((f"{amount:g} x {table.component(name).title}", _area(amount * table.component(name).typical_cm2, display)))
        for name, amount in amounts.items()
    ]
    rows.append(Row((f"Together, {area}", _area(total.typical_cm2, display))))
    rows.append(Row((f"All at the lower end, {area}", _area(total.least_cm2, display))))
    rows.append(Row((f"All at the upper end, {area}", _area(total.most_cm2, display))))
    at_50 = format_value(flow_of_area_m3_h(total.typical_cm2), Quantity.FLOW, display)
    rows.append(Row((f"Flow at 50 Pa, {flow}", at_50), "With a flow exponent of 0.65."))
    return Table("Components together", ("", f"Typical, {area}"), tuple(rows), (NOTE,))


def _area(value_cm2: float, display: Display) -> str:
    return format_value(value_cm2, Quantity.LEAKAGE_AREA, display, 2 if value_cm2 < 10 else 1)
