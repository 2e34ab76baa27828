"""How sure the points of a run are."""

from __future__ import annotations

import math
from dataclasses import replace

import numpy as np
import pytest

from analysis.errors import InvalidInput
from analysis.noise import (
    LEAST_LN_FLOW_U,
    LEAST_PRESSURE_U_PA,
    UNKNOWN_INDEPENDENCE_S,
    WIND_BIAS_SHARE,
    point_noise,
    seconds_per_independent_reading,
    zero_parts,
)
from analysis.records import Run, ZeroFlow
from analysis.zeroflow import zero_flow
from tests.analysis.samples import ZERO, run_of
from tests.analysis.test_statistics import gusty


def zero_u_pa(run: Run) -> float:
    """Return all parts of the zero-flow pressure of a run together."""
    parts = zero_parts(run)
    assert parts is not None
    return parts.together


def measured(envelope_sd_pa: float = 0.8, flow_sd_m3_h: float = 12.0, seconds: float | None = 20.0) -> Run:
    """Return the sample run with spreads."""
    run = run_of()
    points = tuple(
        replace(point, envelope_sd_pa=envelope_sd_pa, flow_sd_m3_h=flow_sd_m3_h, seconds=seconds)
        for point in run.points
    )
    return replace(run, points=points)


def gusty_zero(tau_s: float, seed: int = 3) -> ZeroFlow:
    """Return a zero-flow record of 60 s at 10 readings a second in gusts of a time constant."""
    return zero_flow((0.4 * gusty(1, 600, 0.1, tau_s, seed)[0]).tolist(), 60.0)


def test_the_zero_records_tell_how_long_readings_hang_together() -> None:
    """An exponential correlation of time constant tau has an integral scale of tau: 2 tau make one reading."""
    found = [
        seconds_per_independent_reading(replace(run_of(), zero_before=gusty_zero(1.0, seed), zero_after=None))
        for seed in range(40)
    ]
    assert np.mean(found) == pytest.approx(2.0, rel=0.25)


def test_the_gustier_of_two_records_counts() -> None:
    calm, gusts = gusty_zero(0.2), gusty_zero(2.0)
    one = seconds_per_independent_reading(replace(run_of(), zero_before=calm, zero_after=gusts))
    assert one == seconds_per_independent_reading(replace(run_of(), zero_before=gusts, zero_after=None))


def test_without_readings_gusts_are_taken_as_long() -> None:
    assert seconds_per_independent_reading(run_of()) == UNKNOWN_INDEPENDENCE_S


def test_a_point_is_as_sure_as_its_spread_and_its_independent_readings_make_it() -> None:
    noise = point_noise(measured(), "runs[0]", "wls")
    independent = 20.0 / UNKNOWN_INDEPENDENCE_S
    assert noise.pressure_u_pa == pytest.approx([0.8 / math.sqrt(independent)] * 10)
    assert noise.ln_flow_u[0] == pytest.approx(12.0 / 1502.1 / math.sqrt(independent))


def test_a_point_of_unknown_duration_is_one_reading() -> None:
    assert point_noise(measured(seconds=None), "runs[0]", "wls").pressure_u_pa == pytest.approx([0.8] * 10)


def test_no_point_is_surer_than_a_gauge_resolves() -> None:
    noise = point_noise(measured(0.0, 0.0), "runs[0]", "wls")
    assert set(noise.pressure_u_pa) == {LEAST_PRESSURE_U_PA}
    assert set(noise.ln_flow_u) == {LEAST_LN_FLOW_U}


@pytest.mark.parametrize("field", ["envelope_sd_pa", "flow_sd_m3_h"])
def test_a_missing_spread_is_named_with_the_fit_that_asks(field: str) -> None:
    run = measured()
    points = (run.points[0], replace(run.points[1], **{field: None}), *run.points[2:])  # type: ignore[arg-type]
    with pytest.raises(InvalidInput) as caught:
        point_noise(replace(run, points=points), "runs[1]", "gls")
    assert str(caught.value) == (
        f"runs[1].points[1].{field} is missing: the fit gls weighs points by the spread of their readings"
    )


def test_the_zero_flow_pressure_is_unsure_by_scatter_drift_and_wind() -> None:
    steady = zero_flow([-1.0] * 100, 10.0)
    later = zero_flow([-1.6] * 100, 10.0)
    expected = math.sqrt(2 * LEAST_PRESSURE_U_PA**2 / 4 + 0.6**2 / 12 + (1.3 * WIND_BIAS_SHARE) ** 2)
    run = replace(measured(), zero_before=steady, zero_after=later)
    assert zero_u_pa(run) == pytest.approx(expected)


def test_scatter_of_gusty_records_makes_the_zero_flow_pressure_unsure() -> None:
    calm = replace(measured(), zero_before=ZERO, zero_after=ZERO)
    gusts = replace(measured(), zero_before=gusty_zero(2.0), zero_after=gusty_zero(2.0, 4))
    assert zero_u_pa(gusts) > 3 * zero_u_pa(calm)


def test_one_record_alone_is_less_sure_than_two() -> None:
    zero = gusty_zero(0.5)
    both, one = (replace(measured(), zero_before=zero, zero_after=after) for after in (zero, None))
    assert zero_u_pa(one) > zero_u_pa(both)


def test_without_a_zero_record_its_uncertainty_is_not_known() -> None:
    run = replace(measured(), zero_before=None, zero_after=None)
    with pytest.raises(
        InvalidInput, match=r"^runs\[0\]\.zero_before is missing: the fit gls needs a zero-flow record$"
    ):
        point_noise(run, "runs[0]", "gls")
    assert zero_parts(run) is None
