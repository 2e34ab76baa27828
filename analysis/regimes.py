"""Two regimes in one run: something came off, or closed, between two of its points.

Both parts share the exponent; the level of the line jumps by a step: ln q = a + n ln p + s d, with d = 0 before the
change and 1 after it. Ordinary least squares; the interval of the step holds the scatter about the two lines. It stands
beside the official fit, never in its place.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray
from scipy.special import fdtrc

from analysis.errors import InvalidInput
from analysis.records import Estimate
from analysis.student import t_multiplier

FEWEST_POINTS = 5
"""Three parameters, and something left to judge the scatter by."""
CERTAIN = 0.001
"""Probability, split over all places where the step could be, with which chance alone would look like a step."""
LEAST_STEP = 0.03
"""A smaller jump of the level may be the bend of a line that is no power law (our choice)."""


@dataclass(frozen=True, slots=True)
class TwoRegimes:
    """Two lines with one exponent; flows in m3/h, pressures in Pa.

    The first `changed_at` points belong to the line before. `step_m3_h` is what the line after lies above it at
    `at_pa`. `covariance` is that of (ln_c_before, n, ln_step), `chance` the probability that a single line scatters so.
    """

    changed_at: int
    ln_c_before: float
    ln_step: float
    n: Estimate
    at_pa: float
    step_m3_h: Estimate
    residual_sd: float
    dof: int
    covariance: tuple[tuple[float, ...], ...]
    chance: float

    def flow_m3_h(self, pressure_pa: float, *, after: bool) -> float:
        """Return the flow on one of the two lines."""
        return math.exp(self.ln_c_before + self.n.value * math.log(pressure_pa) + (self.ln_step if after else 0.0))


def two_regimes(
    pressures_pa: Sequence[float], flows_m3_h: Sequence[float], changed_at: int, at_pa: float = 50.0
) -> TwoRegimes:
    """Return the two lines through points in the order in which they were taken.

    `changed_at` is the number of points before the change. Raises `InvalidInput` where there are too few points, a
    part without points, or pressures and the change cannot be told apart.
    """
    count = len(pressures_pa)
    if count < FEWEST_POINTS:
        raise InvalidInput("points", count, f"two regimes need at least {FEWEST_POINTS} points")
    if not 0 < changed_at < count:
        raise InvalidInput("change", changed_at, f"a number of points from 1 to {count - 1} is needed")
    x, y = _logarithms(pressures_pa, flows_m3_h)
    design = np.column_stack([np.ones(count), x, np.arange(count) >= changed_at])
    if np.linalg.matrix_rank(design) < design.shape[1]:
        raise InvalidInput("points", count, "different pressures are needed before or after the change")
    solution, *_ = np.linalg.lstsq(design, y, rcond=None)
    ln_c, n, ln_step = (float(item) for item in solution)
    residual_sum = float(((y - design @ solution) ** 2).sum())
    dof = count - design.shape[1]
    unit = np.linalg.inv(design.T @ design)
    covariance = residual_sum / dof * unit
    level = math.exp(ln_c + n * math.log(at_pa))
    step = level * math.expm1(ln_step)
    # The step is a difference of two flows that share level and exponent.
    slope = np.array([step, step * math.log(at_pa), level * math.exp(ln_step)])
    reach = t_multiplier(float(dof))
    half, half_n = reach * math.sqrt(float(slope @ covariance @ slope)), reach * math.sqrt(float(covariance[1, 1]))
    single = _single_line_sum(x, y)
    ratio = math.inf if residual_sum == 0.0 else (single - residual_sum) / (residual_sum / dof)
    return TwoRegimes(
        changed_at=changed_at,
        ln_c_before=ln_c,
        ln_step=ln_step,
        n=Estimate(n, n - half_n, n + half_n),
        at_pa=at_pa,
        step_m3_h=Estimate(step, step - half, step + half),
        residual_sd=math.sqrt(residual_sum / dof),
        dof=dof,
        covariance=tuple(tuple(float(item) for item in row) for row in covariance),
        chance=float(fdtrc(1, dof, ratio)) if math.isfinite(ratio) else 0.0,
    )


def find_regimes(pressures_pa: Sequence[float], flows_m3_h: Sequence[float], at_pa: float = 50.0) -> TwoRegimes | None:
    """Return the two lines at the likeliest change, None where one line will do.

    The chance of a step that is none is shared out over all places where it could be (Bonferroni).
    """
    found = []
    for at in range(1, len(pressures_pa)):
        try:
            found.append(two_regimes(pressures_pa, flows_m3_h, at, at_pa))
        except InvalidInput:
            continue
    best = min(found, key=lambda item: item.residual_sd, default=None)
    if best is None or best.chance * len(found) > CERTAIN or abs(math.expm1(best.ln_step)) < LEAST_STEP:
        return None
    return best


def _logarithms(pressures_pa: Sequence[float], flows_m3_h: Sequence[float]) -> tuple[NDArray[np.float64], ...]:
    if any(not value > 0.0 for value in (*pressures_pa, *flows_m3_h)):
        raise InvalidInput("points", None, "pressures and flows above 0 are needed", shown="not above 0")
    return np.log(np.array(pressures_pa, np.float64)), np.log(np.array(flows_m3_h, np.float64))


def _single_line_sum(x: NDArray[np.float64], y: NDArray[np.float64]) -> float:
    """Return the sum of the squared residuals about one line."""
    design = np.column_stack([np.ones(len(x)), x])
    solution, *_ = np.linalg.lstsq(design, y, rcond=None)
    return float(((y - design @ solution) ** 2).sum())
