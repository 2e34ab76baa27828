"""Passes what the engine asks of a person at the knob on to somebody who hears it: a simulated person, a voice."""

from __future__ import annotations

from collections.abc import Callable

from acquisition.engine import Engine
from acquisition.fanbyhand import Order
from acquisition.snapshot import EngineState
from drivers.clock import Clock, Hosted, seconds

LOOK_S = 0.2

Hear = Callable[[str, int], None]
"""Takes an order and the time on the clock of the engine."""


def lead(engine: Engine, clock: Clock, hear: Hear) -> Hosted:
    """Begin to pass orders on; `stop` of what is returned ends it."""

    def pump(now_ns: int) -> int:
        shown = engine.snapshot()
        order = shown.hand
        if shown.state in (EngineState.PAUSED, EngineState.IDLE):
            order = Order.OFF.value
        if order:
            hear(order, now_ns)
        return now_ns + seconds(LOOK_S)

    return clock.host(pump, "person at the knob")
