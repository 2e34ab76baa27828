"""Which procedure runs a plan: every method's own sequence, or a pressure that is held."""

from __future__ import annotations

from datetime import datetime

from acquisition.holding import holding
from acquisition.multipoint import Outfit, directions, multipoint
from acquisition.openrig import OpenRig
from acquisition.plan import TestPlan
from acquisition.resuming import resuming
from acquisition.rig import RigSpec
from acquisition.standing import Standing
from acquisition.steps import Procedure
from analysis.records import Direction, FlowRange


def procedure_of(plan: TestPlan, spec: RigSpec, *, turns: bool, fits: bool = False) -> Procedure:
    """Return the steps of a plan on a rig.

    `turns` says that its fan changes direction by itself, `fits` that another flow range can be fitted in the middle.
    """
    if plan.hold:
        return holding(plan, shutter=spec.shutter, turns=turns)
    return multipoint(plan, _outfit(spec, turns=turns, fits=fits))


def again_from(plan: TestPlan, direction: Direction, spec: RigSpec, *, turns: bool, fits: bool = False) -> Procedure:
    """Return the steps of a test from the beginning of a direction on."""
    at = plan.directions.index(direction)
    return directions(plan, plan.directions[at:], _outfit(spec, turns=turns, fits=fits))


def rest_of(
    plan: TestPlan, standing: Standing, now: datetime, spec: RigSpec, *, turns: bool, fits: bool = False
) -> Procedure:
    """Return the steps that are left of a test that was cut short."""
    return resuming(plan, standing, now, _outfit(spec, turns=turns, fits=fits))


def steps_on(rig: OpenRig, plan: TestPlan, standing: Standing | None, now: datetime, *, somebody: bool) -> Procedure:
    """Return the steps of a test on a rig, or those that are left of it; a rig with a script knows its own.

    Another flow range is fitted by the rig itself, or where there is `somebody` to do it.
    """
    fits = rig.fitter is not None or somebody
    if rig.script is not None:
        return rig.script()
    if standing is None:
        return procedure_of(plan, rig.spec, turns=rig.turns, fits=fits)
    return rest_of(plan, standing, now, rig.spec, turns=rig.turns, fits=fits)


def _outfit(spec: RigSpec, *, turns: bool, fits: bool) -> Outfit:
    may_fit = fits and not spec.further
    return Outfit(spec.shutter, turns, _fitted(spec), spec.ranges, may_fit, steered=bool(spec.fan))


def _fitted(spec: RigSpec) -> FlowRange | None:
    """Return the flow range of a single fan; of several each has its own, and their flows add up."""
    return None if spec.further else spec.fitted_range
