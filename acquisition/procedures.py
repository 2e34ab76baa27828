"""Which procedure runs a plan: every method's own sequence, or a pressure that is held."""

from __future__ import annotations

from acquisition.holding import holding
from acquisition.multipoint import multipoint
from acquisition.plan import TestPlan
from acquisition.rig import RigSpec
from acquisition.steps import Procedure


def procedure_of(plan: TestPlan, spec: RigSpec, *, turns: bool) -> Procedure:
    """Return the steps of a plan on a rig; `turns` says that its fan changes direction by itself."""
    if plan.hold:
        return holding(plan, shutter=spec.shutter, turns=turns)
    return multipoint(plan, shutter=spec.shutter, turns=turns, flow_range=spec.fitted_range)
