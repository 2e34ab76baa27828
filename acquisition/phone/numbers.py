"""From what the engine shows to what the page shows."""

from __future__ import annotations

from acquisition.phone.server import HelperNumbers
from acquisition.snapshot import Snapshot
from acquisition.told.texts import percent
from analysis.units import Display, Quantity, format_value, unit_symbol


def helper_numbers(shown: Snapshot, display: Display) -> HelperNumbers:
    """Return the numbers of a moment: flow and change only while a pressure is held."""
    blank = HelperNumbers()
    held, induced_pa = shown.held, None
    if shown.envelope_pa is not None:
        induced_pa = shown.envelope_pa - (shown.zero_pa or 0.0)
    flow_m3_h = None if held is None else held.flow_m3_h
    return HelperNumbers(
        flow=blank.flow if flow_m3_h is None else format_value(flow_m3_h, Quantity.FLOW, display),
        unit=unit_symbol(Quantity.FLOW, display),
        change=blank.change if held is None or held.change is None else percent(held.change),
        pressure=blank.pressure
        if induced_pa is None
        else f"{format_value(induced_pa, Quantity.PRESSURE, display)} {unit_symbol(Quantity.PRESSURE, display)}",
        state=shown.sentence,
    )
