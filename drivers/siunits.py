"""Factors from the units that instruments speak to SI, for profiles only; people's units live elsewhere."""

from __future__ import annotations

INCH_M, FOOT_M = 0.0254, 0.3048
WATER_N_M3 = 9806.65
"""Weight of conventional water: 1000 kg/m3 under standard gravity."""

UNITS: dict[str, dict[str, tuple[float, float]]] = {
    "pressure": {
        "Pa": (1.0, 0.0),
        "hPa": (100.0, 0.0),
        "mbar": (100.0, 0.0),
        "kPa": (1000.0, 0.0),
        "mmH2O": (WATER_N_M3 / 1000.0, 0.0),
        "inH2O": (WATER_N_M3 * INCH_M, 0.0),
    },
    "temperature": {"degC": (1.0, 0.0), "degF": (5.0 / 9.0, -160.0 / 9.0), "K": (1.0, -273.15)},
    "flow": {"m3/h": (1.0, 0.0), "L/s": (3.6, 0.0), "m3/s": (3600.0, 0.0), "cfm": (60.0 * FOOT_M**3, 0.0)},
    "humidity": {"percent": (0.01, 0.0), "fraction": (1.0, 0.0)},
    "battery": {"percent": (0.01, 0.0), "fraction": (1.0, 0.0)},
    "speed": {"percent": (0.01, 0.0), "fraction": (1.0, 0.0)},
}
"""Factor and offset by quantity and unit: `si = value * factor + offset`.

SI means Pa, degrees Celsius, m3/h and fractions, as everywhere in the program. All factors are exact by definition.
"""
