"""Flow: from the pressure of a flow element to the flow through it, and on to the flow through the envelope."""

from __future__ import annotations

import math
from typing import overload

import numpy as np
from numpy.typing import NDArray

from analysis.records import Direction, FlowRange


@overload
def element_flow_m3_h(element_pa: float, flow_range: FlowRange, density_kg_m3: float) -> float: ...
@overload
def element_flow_m3_h(
    element_pa: NDArray[np.float64], flow_range: FlowRange, density_kg_m3: float
) -> NDArray[np.float64]: ...
def element_flow_m3_h(
    element_pa: float | NDArray[np.float64], flow_range: FlowRange, density_kg_m3: float
) -> float | NDArray[np.float64]:
    """Return the volume flow (m3/h) through the element at the density of the air in it.

    An element of the square-root kind passes `C dp**n` at its reference density and `(rho_ref / rho)**0.5` times that
    at another. A negative pressure gives a negative flow, so that readings about zero average without bias. Works on
    one reading or on an array of any shape.
    """
    factor = flow_range.coefficient_m3_h_pa_n * math.sqrt(flow_range.reference_density_kg_m3 / density_kg_m3)
    if isinstance(element_pa, np.ndarray):
        flows: NDArray[np.float64] = factor * np.sign(element_pa) * np.abs(element_pa) ** flow_range.exponent
        return flows
    return math.copysign(factor * float(abs(element_pa) ** flow_range.exponent), element_pa)


def envelope_factor(direction: Direction, indoor_kg_m3: float, outdoor_kg_m3: float) -> float:
    """Return what turns the flow through the fan into the flow through the leaks: the mass flow is the same.

    Depressurizing, indoor air passes the fan and outdoor air the leaks; pressurizing, the other way round (ISO 9972 and
    ASTM E779, from memory).
    """
    match direction:
        case Direction.DEPRESSURIZE:
            return indoor_kg_m3 / outdoor_kg_m3
        case Direction.PRESSURIZE:
            return outdoor_kg_m3 / indoor_kg_m3


def to_envelope(fan_flow_m3_h: float, direction: Direction, indoor_kg_m3: float, outdoor_kg_m3: float) -> float:
    """Return the volume flow through the envelope (m3/h) at the density of the air that enters the leaks."""
    return fan_flow_m3_h * envelope_factor(direction, indoor_kg_m3, outdoor_kg_m3)
