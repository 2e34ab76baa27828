"""What can happen during a test, as actions on a plant: for an `Event` that says from when to when.

An action is told how far it has come, 0 to 1: a door that opens, a seal that a person takes two minutes for. Those that
have no halfway happen as soon as the event begins.
"""

from __future__ import annotations

from collections.abc import Sequence

from simulators.hoses import Hose
from simulators.house import WALLS, Facade
from simulators.plant import Action, Plant

DOOR_OPEN = 50.0
"""An open garage door lets through so many times what the closed garage does."""
ENVELOPE, ELEMENT = 0, 1


def opened(facade: Facade, area_m2: float) -> Action:
    """Open a window or a door in a wall; an area of 0 shuts it. Roof and floor have none: `ValueError`."""
    if facade not in WALLS:
        raise ValueError(f"facade is {facade.value!r}: a wall is needed, one of: {', '.join(WALLS)}")

    def act(plant: Plant, fraction: float) -> None:
        plant.leaks.open(facade, area_m2 * fraction)
        plant.interior.breathe()

    return act


def sealed(share: float, leaks: Sequence[str] = ()) -> Action:
    """Seal a share of the named leaks, of all of them when none is named; raises `ValueError` for an unknown name."""

    def act(plant: Plant, fraction: float) -> None:
        plant.leaks.multiply(1.0 - share * fraction, leaks)
        plant.interior.breathe()

    return act


def zone_opened(name: str, times: float = DOOR_OPEN) -> Action:
    """Open the door of a zone all the way, `times` 1 shuts it; raises `ValueError` when the house has no such zone."""

    def act(plant: Plant, fraction: float) -> None:
        plant.interior.zones.open(name, 1.0 + (times - 1.0) * fraction)

    return act


def hose(channel: int, state: Hose) -> Action:
    """Let the envelope hose (0) or the flow element's (1) slip off, kink, get wet, freeze, or be sound again."""
    return lambda plant, fraction: plant.hoses.become(channel, state)


def fan_obstructed(share: float) -> Action:
    """Block a share of the fan's intake; 0 clears it."""
    return lambda plant, fraction: plant.element.obstruct(1.0 - share * fraction)


def range_changed(name: str) -> Action:
    """Fit another flow range without telling anybody."""
    return lambda plant, fraction: plant.element.fit([name] * len(plant.houses))
