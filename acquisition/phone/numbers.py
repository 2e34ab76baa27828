"""From what the engine shows to what the page shows."""

from __future__ import annotations

from acquisition.phone.page import Tell
from acquisition.phone.server import HelperNumbers
from acquisition.sealing.hold import HoldLook
from acquisition.snapshot import Snapshot
from acquisition.told.texts import percent
from analysis.units import Display, Quantity, format_estimate, format_value, unit_symbol


def helper_numbers(shown: Snapshot, display: Display, look: HoldLook | None = None, tell: Tell = str) -> HelperNumbers:
    """Return the numbers of a moment: flow and change only while a pressure is held.

    With a look the flow is that at its reference pressure, and the change comes with its interval and how sure it
    is. `tell` puts the sentences of the test into the language of the page.
    """
    blank = HelperNumbers()
    held, induced_pa = shown.held, None
    if shown.envelope_pa is not None:
        induced_pa = shown.envelope_pa - (shown.zero_pa or 0.0)
    flow_m3_h = None if held is None else held.flow_m3_h
    change = blank.change
    if held is not None and held.change is not None:
        change = percent(held.change).replace(".", display.decimal_mark)
    state = tell(shown.sentence)
    if held is not None and look is not None and look.now_m3_h is not None:
        flow_m3_h = look.now_m3_h.value
        if look.since is not None:
            text = format_estimate(look.since.difference_m3_h, Quantity.FLOW, display)
            change = text.value
            state = f"± {text.plus_minus} (95 %): {tell(look.since.sureness.value)}"
    return HelperNumbers(
        flow=blank.flow if flow_m3_h is None else format_value(flow_m3_h, Quantity.FLOW, display),
        unit=unit_symbol(Quantity.FLOW, display),
        change=change,
        pressure=blank.pressure
        if induced_pa is None
        else f"{format_value(induced_pa, Quantity.PRESSURE, display)} {unit_symbol(Quantity.PRESSURE, display)}",
        state=state,
    )
