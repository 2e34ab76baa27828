"""Air against CoolProp (real gas) and psychrolib (ASHRAE), and against values worked out from the formulas.

The ideal-gas form differs from CoolProp by the compressibility of air: 0.02 to 0.09 %.
"""

from __future__ import annotations

import psychrolib
import pytest
from CoolProp.HumidAirProp import HAPropsSI

from analysis.air import (
    density_at_elevation,
    moist_air_density,
    pressure_at_altitude,
    saturation_pressure_pa,
    sutherland_viscosity_pa_s,
    viscosity_pa_s,
)

STATES = [
    # degC, relative humidity, Pa, density (kg/m3) and viscosity (Pa s) by CoolProp 8.0.0, density by psychrolib 2.5.0
    (-15, 0.8, 101325, 1.36786, 1.6454e-05, 1.36674),
    (0, 0.0, 101325, 1.29310, 1.7218e-05, 1.29232),
    (0, 0.9, 101325, 1.29045, 1.7195e-05, 1.28967),
    (10, 0.6, 101325, 1.24386, 1.7680e-05, 1.24325),
    (15, 0.5, 95000, 1.14514, 1.7914e-05, 1.14468),
    (20, 0.0, 101325, 1.20460, 1.8206e-05, 1.20415),
    (20, 0.5, 101325, 1.19936, 1.8143e-05, 1.19890),
    (20, 1.0, 101325, 1.19413, 1.8080e-05, 1.19364),
    (20, 0.5, 84000, 0.99333, 1.8125e-05, 0.99301),
    (25, 0.5, 101325, 1.17736, 1.8359e-05, 1.17696),
    (30, 0.7, 101325, 1.15189, 1.8513e-05, 1.15152),
    (40, 0.3, 90000, 0.99213, 1.8999e-05, 0.99194),
]


@pytest.fixture(autouse=True)
def _si_units() -> None:
    psychrolib.SetUnitSystem(psychrolib.SI)


@pytest.mark.parametrize(("celsius", "rh", "pa", "coolprop", "viscosity", "ashrae"), STATES)
def test_density_and_viscosity_agree_with_stored_values(
    celsius: float, rh: float, pa: float, coolprop: float, viscosity: float, ashrae: float
) -> None:
    assert moist_air_density(celsius, rh, pa) == pytest.approx(coolprop, rel=1e-3)
    assert moist_air_density(celsius, rh, pa) == pytest.approx(ashrae, rel=1.5e-4)
    assert viscosity_pa_s(celsius) == pytest.approx(viscosity, rel=6e-3)


@pytest.mark.parametrize("celsius", [-15.0, -5.0, 5.0, 18.0, 27.0, 38.0])
@pytest.mark.parametrize("rh", [0.0, 0.35, 0.9])
@pytest.mark.parametrize("pa", [85_000.0, 101_325.0])
def test_density_agrees_with_the_libraries_within_a_thousandth(celsius: float, rh: float, pa: float) -> None:
    ours = moist_air_density(celsius, rh, pa)
    assert ours == pytest.approx(1 / HAPropsSI("Vha", "T", celsius + 273.15, "R", rh, "P", pa), rel=1e-3)
    ratio = psychrolib.GetHumRatioFromRelHum(celsius, rh, pa)
    assert ours == pytest.approx(psychrolib.GetMoistAirDensity(celsius, ratio, pa), rel=1e-3)


@pytest.mark.parametrize(("celsius", "pa"), [(0, 612.06), (10, 1229.08), (20, 2339.25), (30, 4243.05)])
def test_saturation_pressure(celsius: float, pa: float) -> None:
    """Worked out from the formula of ISO 9972 (from memory); psychrolib within 0.2 %."""
    assert saturation_pressure_pa(celsius) == pytest.approx(pa, abs=0.005)
    assert saturation_pressure_pa(celsius) == pytest.approx(psychrolib.GetSatVapPres(celsius + 1e-9), rel=2e-3)


@pytest.mark.parametrize(
    ("celsius", "rh", "pa", "density"),
    [
        (0, 0.5, 101325, 1.29079),
        (20, 0.5, 101325, 1.19884),
        (-10, 0.5, 101325, 1.34065),
        (35, 0.5, 101325, 1.13347),
        (20, 0.5, 84000, 0.99296),
    ],
)
def test_density_by_the_iso_formula(celsius: float, rh: float, pa: float, density: float) -> None:
    """Worked out from the formula of ISO 9972 (from memory)."""
    assert moist_air_density(celsius, rh, pa) == pytest.approx(density, abs=5.1e-6)


@pytest.mark.parametrize(
    ("celsius", "metres", "density"),
    [
        (20, 0, 1.2041),
        (0, 0, 1.29231),
        (-10, 0, 1.34145),
        (30, 0, 1.16436),
        (20, 1000, 1.07019),
        (0, 1600, 1.06877),
    ],
)
def test_density_by_elevation(celsius: float, metres: float, density: float) -> None:
    """Worked out from the formula of ASTM E779 (from memory)."""
    assert density_at_elevation(celsius, metres) == pytest.approx(density, abs=5.1e-6)


@pytest.mark.parametrize(
    ("celsius", "viscosity"), [(-10, 1.66539e-5), (0, 1.71534e-5), (20, 1.81269e-5), (30, 1.86016e-5)]
)
def test_viscosity_by_sutherland(celsius: float, viscosity: float) -> None:
    """Worked out from the formula of ASTM E779 with its rounded 273 K (from memory)."""
    assert sutherland_viscosity_pa_s(celsius + 273.0) == pytest.approx(viscosity, abs=5.1e-11)


@pytest.mark.parametrize("metres", [0.0, 100.0, 500.0, 1600.0, 3000.0])
def test_pressure_at_altitude(metres: float) -> None:
    """psychrolib, standard atmosphere (ASHRAE)."""
    assert pressure_at_altitude(metres) == pytest.approx(psychrolib.GetStandardAtmPressure(metres), rel=1e-4)
