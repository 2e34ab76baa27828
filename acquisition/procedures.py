"""Which procedure runs a plan: every method's own sequence, or a pressure that is held."""

from __future__ import annotations

from datetime import datetime

from acquisition.holding import holding
from acquisition.multipoint import Outfit, directions, multipoint
from acquisition.plan import TestPlan
from acquisition.resuming import resuming
from acquisition.rig import RigSpec
from acquisition.standing import Standing
from acquisition.steps import Procedure
from analysis.records import Direction


def procedure_of(plan: TestPlan, spec: RigSpec, *, turns: bool, fits: bool = False) -> Procedure:
    """Return the steps of a plan on a rig.

    `turns` says that its fan changes direction by itself, `fits` that another flow range can be fitted in the middle.
    """
    if plan.hold:
        return holding(plan, shutter=spec.shutter, turns=turns)
    may_fit = fits and not spec.further
    fitted = spec.fitted_range
    return multipoint(plan, shutter=spec.shutter, turns=turns, flow_range=fitted, ranges=spec.ranges, fits=may_fit)


def again_from(plan: TestPlan, direction: Direction, spec: RigSpec, *, turns: bool, fits: bool = False) -> Procedure:
    """Return the steps of a test from the beginning of a direction on."""
    at = plan.directions.index(direction)
    outfit = Outfit(spec.shutter, turns, spec.fitted_range, spec.ranges, fits and not spec.further)
    return directions(plan, plan.directions[at:], outfit)


def rest_of(
    plan: TestPlan, standing: Standing, now: datetime, spec: RigSpec, *, turns: bool, fits: bool = False
) -> Procedure:
    """Return the steps that are left of a test that was cut short."""
    may_fit = fits and not spec.further
    return resuming(plan, standing, now, Outfit(spec.shutter, turns, spec.fitted_range, spec.ranges, may_fit))
