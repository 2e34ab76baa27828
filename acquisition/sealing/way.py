"""The way to the target of a stage while leaks are sealed: what is left, what could bring it, whether to go on."""

from __future__ import annotations

from acquisition.plan import TestPlan
from acquisition.sealing.hold import HoldLook
from analysis.effective import QUANTITIES
from analysis.records import Estimate

TARGET_PA = 50.0


def target_flow_m3_h(plan: TestPlan) -> float | None:
    """Return the flow at 50 Pa that the limit of the stage allows, None where it limits something else."""
    limit = plan.limit
    if limit is None or limit.quantity not in QUANTITIES:
        return None
    quantity = QUANTITIES[limit.quantity]
    divisor = 1.0 if quantity.divisor is None else getattr(plan.building, quantity.divisor)
    if quantity.pressure_pa != TARGET_PA or divisor is None:
        return None
    return float(limit.value * divisor / quantity.factor)


def at_50_pa(flow: Estimate, look: HoldLook) -> Estimate:
    """Return a flow at the reference pressure of a hold as one at 50 Pa."""
    factor = (TARGET_PA / look.levelling.reference_pa) ** look.levelling.exponent
    return Estimate(flow.value * factor, flow.low * factor, flow.high * factor, flow.extrapolated or factor != 1.0)
