"""Density and viscosity against property libraries (values generated with CoolProp 8.0.0 and psychrolib 2.5.0)."""

from __future__ import annotations

import numpy as np
import pytest

from simulators.air import REFERENCE_DENSITY_KG_M3, density, viscosity


def density_of(celsius: float, humidity: float, pressure_pa: float) -> float:
    return float(density(np.array(celsius), np.array(humidity), np.array(pressure_pa)))


@pytest.mark.parametrize(
    ("celsius", "humidity", "pressure_pa", "coolprop"),
    [
        (-15, 0.8, 101325, 1.36786),
        (0, 0.0, 101325, 1.29310),
        (0, 0.9, 101325, 1.29045),
        (10, 0.6, 101325, 1.24386),
        (15, 0.5, 95000, 1.14514),
        (20, 0.5, 101325, 1.19936),
        (20, 1.0, 101325, 1.19413),
        (20, 0.5, 84000, 0.99333),
        (25, 0.5, 101325, 1.17736),
        (30, 0.7, 101325, 1.15189),
        (40, 0.3, 90000, 0.99213),
    ],
)
def test_density_is_within_a_thousandth_of_coolprop(
    celsius: float, humidity: float, pressure_pa: float, coolprop: float
) -> None:
    assert density_of(celsius, humidity, pressure_pa) == pytest.approx(coolprop, rel=1e-3)


def test_dry_air_density_has_the_values_of_the_ideal_gas() -> None:
    # Ideal gas with R = 287.055 J/(kg K), by hand.
    assert density_of(20, 0, 101325) == pytest.approx(1.204097, abs=2e-6)
    assert density_of(-5, 0, 101325) == pytest.approx(1.316357, abs=2e-6)
    assert pytest.approx(1.204097, abs=2e-6) == REFERENCE_DENSITY_KG_M3


@pytest.mark.parametrize(("celsius", "coolprop"), [(-15, 1.6454e-5), (0, 1.7218e-5), (20, 1.8206e-5), (25, 1.8359e-5)])
def test_viscosity_is_within_six_thousandths_of_coolprop(celsius: float, coolprop: float) -> None:
    assert float(viscosity(np.array(celsius))) == pytest.approx(coolprop, rel=6e-3)
