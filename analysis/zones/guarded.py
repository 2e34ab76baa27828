"""Guarded tests: a second fan holds the neighbouring zone at the same pressure, so that nothing passes between."""

from __future__ import annotations

from analysis.errors import InvalidInput
from analysis.records import Estimate
from analysis.uncertain import Measured, check_measured, gathered, scattered


def interface_flow_m3_h(unguarded_m3_h: Measured, guarded_m3_h: Measured) -> Estimate:
    """Return the flow through the interface at the test pressure: what the guard takes away.

    Common practice, no source. The neighbour is at outdoor pressure without the guard. The interval may reach below 0:
    then nothing is proved.
    Raises `InvalidInput`.
    """
    check_measured(unguarded_m3_h, "unguarded_m3_h")
    check_measured(guarded_m3_h, "guarded_m3_h")
    if guarded_m3_h.value > unguarded_m3_h.value + 2.0 * (guarded_m3_h.u + unguarded_m3_h.u):
        allowed = f"with the guard at most the flow without it, {unguarded_m3_h.value:g}, is possible"
        raise InvalidInput("guarded_m3_h", guarded_m3_h.value, allowed)
    without, with_guard = scattered(unguarded_m3_h, guarded_m3_h)
    return gathered(without - with_guard)
