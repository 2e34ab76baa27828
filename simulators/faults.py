"""What can happen during a test, as actions on a plant: for an `Event` that says from when to when.

An action is told how far it has come, 0 to 1: a door that opens, a seal that a person takes two minutes for. Those that
have no halfway happen as soon as the event begins. What changes from what it was remembers that for each plant, so
that one action may be used for many.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence
from weakref import WeakKeyDictionary

import numpy as np

from simulators.air import FloatArray
from simulators.element import range_named
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
    return _open(facade, area_m2)


def flue_opened(area_m2: float) -> Action:
    """Open a flue or a fireplace to above the roof; an area of 0 shuts it."""
    return _open(Facade.ROOF, area_m2)


def exhaust_on(flow_m3_h: float) -> Action:
    """Let a kitchen hood or a bath fan of the house run; a flow of 0 switches it off."""
    return lambda plant, fraction: setattr(plant.interior, "exhaust_m3_s", flow_m3_h * fraction / 3600.0)


def _open(facade: Facade, area_m2: float) -> Action:
    def act(plant: Plant, fraction: float) -> None:
        plant.leaks.open(facade, area_m2 * fraction)
        plant.interior.breathe()

    return act


def sealed(share: float, leaks: Sequence[str] = ()) -> Action:
    """Seal a share of the named leaks, of all of them when none is named; raises `ValueError` for an unknown name."""
    return came_off(1.0 - share, leaks)


def came_off(times: float, leaks: Sequence[str] = ()) -> Action:
    """Let tape come off, or a damper open: the named leaks pass so many times what they did as built; 1 mends it.

    All of them when none is named; raises `ValueError` for an unknown name.
    """

    def act(plant: Plant, fraction: float) -> None:
        plant.leaks.multiply(1.0 + (times - 1.0) * fraction, leaks)
        plant.interior.breathe()

    return act


def zone_opened(name: str, times: float = DOOR_OPEN) -> Action:
    """Open the door of a zone all the way, `times` 1 shuts it; raises `ValueError` when the house has no such zone."""

    def act(plant: Plant, fraction: float) -> None:
        plant.interior.zones.open(name, 1.0 + (times - 1.0) * fraction)

    return act


def hose(channel: int | str, state: Hose) -> Action:
    """Let a hose slip off, kink, get wet, freeze, flap in the wind, be on the wrong nipple, or be sound again.

    The channel by its number, 0 envelope and 1 flow element, or by its name, p1 to p8; one not in use: `ValueError`.
    """

    def act(plant: Plant, fraction: float) -> None:
        plant.hoses.become(channel if isinstance(channel, int) else plant.channel(channel), state)

    return act


def hoses_swapped(swapped: bool) -> Action:
    """Put the hoses of envelope and flow element on each other's inputs, or back."""
    return _set(lambda plant: setattr(plant.hoses, "swapped", swapped))


def hose_in_jet(channel: int | str, jet_pa: float) -> Action:
    """Let the end of a hose lie in the jet of a fan that blows out, with this pressure at full speed; 0: beside it."""

    def act(plant: Plant, fraction: float) -> None:
        plant.hoses.jet_pa[channel if isinstance(channel, int) else plant.channel(channel)] = jet_pa * fraction

    return act


def fan_obstructed(share: float) -> Action:
    """Block a share of the fan's intake; 0 clears it."""
    return lambda plant, fraction: plant.element.obstruct(1.0 - share * fraction)


def fan_tripped(tripped: bool) -> Action:
    """Let the drive switch itself off, though it still answers, or come back."""
    return _set(lambda plant: setattr(plant.motor, "tripped", tripped))


def range_changed(name: str) -> Action:
    """Fit another flow range without telling anybody, a plate drawn out or pushed in; an unknown one: `ValueError`."""
    return lambda plant, fraction: plant.element.fit([range_named(name).name] * len(plant.houses), fraction)


def wind_changes(speed_m_s: float, from_deg: float | None = None) -> Action:
    """Let the mean wind become another, and come from elsewhere: the shorter way round."""

    def start(plant: Plant) -> FloatArray:
        return np.array([plant.weather.mean_m_s, plant.weather.from_deg])

    def act(plant: Plant, fraction: float, before: FloatArray) -> None:
        turn_deg = 0.0 if from_deg is None else (from_deg - before[1] + 180.0) % 360.0 - 180.0
        speed = before[0] + (speed_m_s - before[0]) * fraction
        plant.weather.blow(speed, before[1] + turn_deg * fraction)

    return _from(start, act)


def gust(speed_m_s: float) -> Action:
    """Let one gust come and go within the time of the event; so much is added to the speed in its middle."""

    def act(plant: Plant, fraction: float) -> None:
        added = 0.0 if fraction >= 1.0 else speed_m_s * math.sin(math.pi * fraction) ** 2
        plant.weather.gust_m_s = np.full(len(plant.houses), added)

    return act


def outdoors_becomes(celsius: float) -> Action:
    """Let it become warmer or colder outdoors."""

    def act(plant: Plant, fraction: float, before: FloatArray) -> None:
        plant.interior.air.turn(before + (celsius - before) * fraction)
        plant.interior.breathe()

    return _from(lambda plant: plant.interior.air.outdoor_c.copy(), act)


def heated(celsius: float) -> Action:
    """Let walls and air indoors come to another temperature, as after somebody turned the heating on or off."""

    def act(plant: Plant, fraction: float, before: FloatArray) -> None:
        plant.interior.air.walls_c = before + (celsius - before) * fraction

    return _from(lambda plant: plant.interior.air.walls_c.copy(), act)


def gauge_frozen(frozen: bool) -> Action:
    """Let the gauge repeat its last reading to the digit, or go on."""
    return _set(lambda plant: setattr(plant.gauge, "frozen", frozen))


def gauge_zeroes() -> Action:
    """Let the gauge zero itself, as many do from time to time: no pressures for a moment, then a step."""
    done: WeakKeyDictionary[Plant, bool] = WeakKeyDictionary()

    def act(plant: Plant, fraction: float) -> None:
        if not done.get(plant):
            done[plant] = True
            plant.gauge.zero()

    return act


def gauge_drifts(pascal: float, channel: int | str = ENVELOPE) -> Action:
    """Move the zero of a channel by so much over the time of the event."""
    come: WeakKeyDictionary[Plant, float] = WeakKeyDictionary()

    def act(plant: Plant, fraction: float) -> None:
        column = channel if isinstance(channel, int) else plant.channel(channel)
        plant.gauge.drift(column, pascal * (fraction - come.get(plant, 0.0)))
        come[plant] = fraction

    return act


def readings_lost(share: float) -> Action:
    """Let so many readings not come: the one before is shown again."""
    return _set(lambda plant: setattr(plant.gauge, "lost_share", share))


def _set(change: Callable[[Plant], None]) -> Action:
    return lambda plant, fraction: change(plant)


def _from(start: Callable[[Plant], FloatArray], act: Callable[[Plant, float, FloatArray], None]) -> Action:
    """Return an action that is also told what was when it began."""
    begun: WeakKeyDictionary[Plant, FloatArray] = WeakKeyDictionary()

    def action(plant: Plant, fraction: float) -> None:
        if plant not in begun:
            begun[plant] = start(plant)
        act(plant, fraction, begun[plant])

    return action
