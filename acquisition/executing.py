"""Which executor performs a step on a rig: by its fan drive, or with a person at the knob or the gauge."""

from __future__ import annotations

from acquisition.execution import Executor
from acquisition.executors import executor_for
from acquisition.hosestep import HoseCheck
from acquisition.openrig import OpenRig
from acquisition.steps import CheckHoses, Step
from acquisition.typedgauge import undriven_executor_for


def executor_of(step: Step, rig: OpenRig) -> Executor | None:
    """Return the executor, None for a question."""
    if rig.has_fan:
        return HoseCheck() if isinstance(step, CheckHoses) else executor_for(step)
    return undriven_executor_for(step, rig.spec.by_hand)
