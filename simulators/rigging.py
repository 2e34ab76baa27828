"""How the instruments are set up around a house: where the outdoor hoses end, and how good the instruments are."""

from __future__ import annotations

from dataclasses import dataclass, field
from enum import StrEnum

from simulators.gauge import MOST_FANS, MOST_TAPS, MOST_ZONES, GaugeModel
from simulators.house import WALLS, Facade, House


class TapPlace(StrEnum):
    """Where the far ends of the outdoor hoses lie."""

    FACADE = "facade"
    """Each in front of another wall, the first one beside the fan."""
    GROUND = "ground"
    """On the ground, away from the house."""


@dataclass(frozen=True, slots=True)
class Rigging:
    """The instruments around a house.

    `hose_rise_m` says how far each outdoor hose runs up a wall from the gauge to its tap, `hose_c` how warm the air in
    it is (None: as outdoors). `element_sd` is the standard deviation of the flow element's calibration, 0.01: one per
    cent. Further fans, alike, stand beside the first. Raises `ValueError` for what no gauge has.
    """

    taps: int = 1
    tap: TapPlace = TapPlace.GROUND
    zones: int = 0
    hose_rise_m: tuple[float, ...] = ()
    hose_c: float | None = None
    gauge: GaugeModel = field(default_factory=GaugeModel)
    element_sd: float = 0.0
    fans: int = 1

    def __post_init__(self) -> None:
        """Refuse what the gauge has no channel for."""
        if not 1 <= self.taps <= MOST_TAPS:
            raise ValueError(f"taps is {self.taps}: 1 to {MOST_TAPS} outdoor taps are possible")
        if not 0 <= self.zones <= MOST_ZONES:
            raise ValueError(f"zones is {self.zones}: 0 to {MOST_ZONES} zones can have a hose")
        if not 1 <= self.fans <= MOST_FANS:
            raise ValueError(f"fans is {self.fans}: 1 to {MOST_FANS} fans can stand in the house")
        if len(self.hose_rise_m) not in (0, self.taps):
            raise ValueError(
                f"hose_rise_m has {len(self.hose_rise_m)} numbers: one for each of {self.taps} taps is needed"
            )

    def facades(self, house: House) -> tuple[Facade | None, ...]:
        """Return the wall in front of which each tap lies; None away from the house."""
        if self.tap is TapPlace.GROUND:
            return (None,) * self.taps
        first = WALLS.index(house.fan_facade) if house.fan_facade in WALLS else 0
        return tuple(WALLS[(first + step) % len(WALLS)] for step in range(self.taps))
