"""The records of a simulated house: what it is made of, where it stands, and how the rig is set up in it."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum


class Facade(StrEnum):
    """A part of the envelope that feels one wind pressure."""

    NORTH = "north"
    EAST = "east"
    SOUTH = "south"
    WEST = "west"
    ROOF = "roof"
    FLOOR = "floor"


FACADES = tuple(Facade)
WALLS = FACADES[:4]


@dataclass(frozen=True, slots=True)
class Leak:
    """A leak path.

    `share` is its part of the flow at 50 Pa. What makes it soft, all 0 for a stiff leak:

    - membrane: `pillowing` is the b of `1 + b tanh(d / 25 Pa)`: by how much it opens when it is blown outwards and
      closes when it is sucked inwards;
    - flap: beyond `flap_opens_pa` (positive: blown outwards, negative: sucked inwards) the leak is larger by the
      factor `1 + flap`;
    - loose sheeting: a pressure above `tears_pa` that lasts tears it, and it leaks `1 + torn` times as much from then
      on.
    """

    name: str
    facade: Facade
    share: float
    exponent: float
    height_m: float
    pillowing: float = 0.0
    flap: float = 0.0
    flap_opens_pa: float = 10.0
    tears_pa: float = 0.0
    torn: float = 0.0


@dataclass(frozen=True, slots=True)
class Climate:
    """Air inside and outside, and wind. Humidity 0..1.

    `wind_m_s` is the undisturbed speed at eaves height, `wind_from_deg` where it comes from (0 north, 90 east);
    `shelter` multiplies the dynamic pressure: 0.5 among other houses, 1 on an open site.
    """

    indoor_c: float
    outdoor_c: float
    indoor_rh: float
    outdoor_rh: float
    barometric_pa: float
    wind_m_s: float
    wind_from_deg: float
    shelter: float


@dataclass(frozen=True, slots=True)
class Zone:
    """An unheated zone such as an attached garage: leaks to the house (inner) and to the outside (outer).

    Leaks are m3/s at 1 Pa in reference air. `inner_height_m` is where the inner leak lies above the floor of the
    house, None at the height of the gauge.
    """

    name: str
    volume_m3: float
    inner_m3_s_pa_n: float
    inner_exponent: float
    outer_m3_s_pa_n: float
    outer_exponent: float
    facade: Facade
    inner_height_m: float | None = None


@dataclass(frozen=True, slots=True)
class House:
    """A simulated house with the fan in one of its doors.

    `n50_per_h` is the mean of both directions in reference air, without wind and stack, of the `leaks` alone: what
    goes by way of the zones comes on top. `air_stiffness` is the kappa
    of the air's storage: 1.0 isothermal, 1.4 adiabatic, 1.2 with some give of the walls. `gauge_height_m` is where
    the gauge stands above the floor; the leak heights are counted from the floor too.
    """

    id: str
    name: str
    note: str
    volume_m3: float
    envelope_area_m2: float
    floor_area_m2: float
    height_m: float
    altitude_m: float
    n50_per_h: float
    air_stiffness: float
    leaks: tuple[Leak, ...]
    climate: Climate
    fan_facade: Facade
    fitted: str
    gauge_height_m: float
    zones: tuple[Zone, ...] = ()
