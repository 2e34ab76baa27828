"""Air: limits and directions that need no table. The figures are held against the outside in tests/reference."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from analysis.air import (
    REFERENCE_DENSITY_KG_M3,
    REFERENCE_VISCOSITY_PA_S,
    STANDARD_PRESSURE_PA,
    moist_air_density,
    pressure_at_altitude,
    saturation_pressure_pa,
    viscosity_pa_s,
)

TEMPERATURES = st.floats(-40, 50)


def test_dry_air_at_reference_conditions_has_the_reference_density() -> None:
    assert moist_air_density(20.0, None, STANDARD_PRESSURE_PA) == pytest.approx(REFERENCE_DENSITY_KG_M3, abs=5e-6)


def test_unknown_humidity_is_dry_air() -> None:
    assert moist_air_density(15.0, None, 98_000.0) == moist_air_density(15.0, 0.0, 98_000.0)


@given(TEMPERATURES, st.floats(0.01, 1.0), st.floats(70_000, 105_000))
def test_moist_air_is_lighter_than_dry_air(temperature_c: float, rh: float, pressure_pa: float) -> None:
    assert moist_air_density(temperature_c, rh, pressure_pa) < moist_air_density(temperature_c, None, pressure_pa)


@given(TEMPERATURES, st.floats(0.1, 10.0))
def test_warmer_air_holds_more_vapour_and_is_more_viscous(temperature_c: float, step_k: float) -> None:
    assert saturation_pressure_pa(temperature_c + step_k) > saturation_pressure_pa(temperature_c)
    assert viscosity_pa_s(temperature_c + step_k) > viscosity_pa_s(temperature_c)


def test_reference_viscosity_is_that_of_air_at_20_degrees() -> None:
    assert viscosity_pa_s(20.0) == pytest.approx(REFERENCE_VISCOSITY_PA_S, rel=1e-12)


@given(st.floats(-400, 5000), st.floats(1.0, 500.0))
def test_pressure_falls_with_altitude(altitude_m: float, step_m: float) -> None:
    assert pressure_at_altitude(altitude_m + step_m) < pressure_at_altitude(altitude_m)
