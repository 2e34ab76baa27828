"""What an estimator sees: magnitudes of pressure and flow, and how sure each point is as far as that is known."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Observations:
    """Points of one run, all above 0.

    `pressure_u_pa` and `flow_u_m3_h` are the standard uncertainties of the single points, None where the record does
    not hold them; `zero_u_pa` is the standard uncertainty of the zero-flow pressure that all points share.
    """

    pressure_pa: tuple[float, ...]
    flow_m3_h: tuple[float, ...]
    pressure_u_pa: tuple[float, ...] | None = None
    flow_u_m3_h: tuple[float, ...] | None = None
    zero_u_pa: float | None = None
