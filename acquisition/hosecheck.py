"""Whether the hoses are where they belong, told from what a small step of the fan does. Pure.

Swapped hoses while pressurizing let both pressures rise, as they should. A second, larger step tells them by how the
pressures grow together: see `judge_growth`.

The jet of a fan that blows out is told by another tap that is not in it: see `judge_taps`. With one tap it cannot be
told: it grows with the speed nearly as the pressure of a house does. With 15 Pa of jet at full speed the growth changes
by 0.008 (median of 30 simulated houses), and from house to house it differs by 0.36. There the two directions of the
test part, which `analysis.asymmetry` tells.
"""

from __future__ import annotations

import math
import statistics
from dataclasses import dataclass
from enum import StrEnum

MOVED_PA = 1.5
STILL_PA, STILL_ELEMENT_PA = 0.7, 1.0
AT_REST_PA = 2.0
CREEP_PER_S = 0.10
"""Slope as a share of the rise, seconds after the fan stands. A sound hose has come to rest by then; a pinched one goes
on for half a minute."""
LEAST_CREEP_PA_S = 0.06
PROMPT_S = 2.5
"""A house that is slower than this creeps by itself, and nothing is said of its hose."""
UNREST_SLOPE_S = 0.5
SWAPPED_GROWTH, LEAST_GROWTH = 1.05, 1.2
APART_PA, APART_UNREST = 1.5, 5.0
"""How far a tap may move apart from the others: so much, and so many times what it does with the fan at rest."""
OTHERS_APART = 2.0
"""And so many times as the others differ among each other."""


class HoseFault(StrEnum):
    """What is wrong with a hose."""

    OFF = "off"
    REVERSED = "reversed"
    SWAPPED = "swapped"
    PINCHED = "pinched"
    WET = "wet"
    JET = "in the jet"
    NOTHING = "nothing moves"


@dataclass(frozen=True, slots=True)
class Response:
    """What one channel did in the step: its mean before and at the end (Pa), and its slope at the end (Pa/s)."""

    before_pa: float
    after_pa: float
    slope_pa_s: float

    @property
    def rise_pa(self) -> float:
        """The change."""
        return self.after_pa - self.before_pa


@dataclass(frozen=True, slots=True)
class FanStep:
    """A small step of the fan. Envelope pressures count in the direction of the run: positive is right.

    `further` are those of outdoor taps 2 and on. `element` is None where the flow is measured without one. `unrest_pa`
    is the spread of the zero-flow pressure, `apart_pa` that of the taps about their mean, `lag_s` the time constant of
    the building.
    """

    envelope: Response
    element: Response | None
    further: tuple[tuple[int, Response], ...] = ()
    unrest_pa: float = 0.0
    apart_pa: float = 0.0
    lag_s: float = 1.0


@dataclass(frozen=True, slots=True)
class Doubt:
    """A fault and the sentence that names the hose."""

    fault: HoseFault
    sentence: str


def judge_hoses(step: FanStep) -> Doubt | None:
    """Return the most telling doubt about a hose, None when all of them do what they should."""
    envelope, element = step.envelope, step.element
    if element is not None:
        doubt = _element(envelope, element)
        if doubt is not None:
            return doubt
    still_pa = max(STILL_PA, step.unrest_pa)
    if envelope.rise_pa < -max(MOVED_PA, 2.0 * step.unrest_pa):
        text = "The envelope pressure goes the wrong way: its hose is on the wrong input, or the fan is turned."
        return Doubt(HoseFault.REVERSED, text)
    if abs(envelope.rise_pa) < still_pa and not _creeps(step):
        if element is None or element.rise_pa < MOVED_PA:
            text = "No pressure moves: the fan is covered, or does not turn, or both hoses are off."
            return Doubt(HoseFault.NOTHING, text)
        text = (
            "Air flows and the envelope pressure does not move: its hose is off, blocked or frozen, or a door is open."
        )
        return Doubt(HoseFault.OFF, text)
    if element is not None and element.rise_pa < STILL_ELEMENT_PA:
        text = (
            "The envelope pressure moves and the flow element does not: its hose is off, or the flow range is far too "
            "large."
        )
        return Doubt(HoseFault.OFF, text)
    return _further(step) or _pinched(step)


def judge_growth(first: FanStep, second: FanStep) -> Doubt | None:
    """Return whether the hoses seem to be swapped, by two steps of a fan that pressurizes.

    The flow element grows with the square of the flow, the envelope pressure with its power 1/n. Against the element
    the logarithm of the envelope pressure thus grows by 1/(2n), 0.6 to 1.0; with the hoses swapped by 2n, 1.0 to 1.7.
    In 480 simulated houses at 0 and 3 m/s 93 % of swapped hoses are beyond the bound, and no sound one is.
    """
    if first.element is None or second.element is None:
        return None
    pairs = [(first.envelope.rise_pa, second.envelope.rise_pa), (first.element.rise_pa, second.element.rise_pa)]
    if any(before < MOVED_PA or after < LEAST_GROWTH * before for before, after in pairs):
        return None
    envelope, element = (math.log(after / before) for before, after in pairs)
    if envelope <= SWAPPED_GROWTH * element:
        return None
    text = (
        "With more speed the envelope pressure grows as that of a flow element does, and the flow element grows as a "
        "house does: their hoses seem to be swapped."
    )
    return Doubt(HoseFault.SWAPPED, text)


def judge_taps(step: FanStep) -> Doubt | None:
    """Return whether an outdoor tap lies in the jet of the fan, by a step of a fan that blows out.

    A change of the pressure indoors is the same at every tap. What one tap moves more or less than the others comes
    from outdoors, and the only thing that changed there is the fan. `step.envelope` is the mean of all taps.
    """
    if not step.further:
        return None
    rises = {tap: response.rise_pa for tap, response in step.further}
    rises[1] = (len(rises) + 1) * step.envelope.rise_pa - sum(rises.values())
    middle = statistics.median(rises.values())
    tap = max(rises, key=lambda number: abs(rises[number] - middle))
    rest = [rise for number, rise in rises.items() if number != tap]
    if abs(rises[tap] - middle) < max(APART_PA, APART_UNREST * step.apart_pa, OTHERS_APART * (max(rest) - min(rest))):
        return None
    others = " and ".join(str(rise) for rise in sorted({round(rise) for rise in rest}))
    text = (
        f"With the fan the pressure at outdoor tap {tap} moves by {rises[tap]:.0f} Pa, at the others by {others}: its "
        "hose lies in the jet of the fan. Move it to the side."
    )
    return Doubt(HoseFault.JET, text)


def _element(envelope: Response, element: Response) -> Doubt | None:
    if abs(element.before_pa) > AT_REST_PA:
        text = (
            f"The flow element reads {element.before_pa:.1f} Pa with the fan at rest: water in its hose, or the gauge "
            "wants zeroing."
        )
        return Doubt(HoseFault.WET, text)
    if element.rise_pa > -MOVED_PA:
        return None
    if envelope.rise_pa < -MOVED_PA:
        return Doubt(HoseFault.SWAPPED, "The hoses of envelope pressure and flow element are swapped.")
    text = "The flow element reads backwards: its hose is on the wrong side of the gauge, or the fan is turned."
    return Doubt(HoseFault.REVERSED, text)


def _further(step: FanStep) -> Doubt | None:
    for tap, response in step.further:
        if abs(response.rise_pa) < max(STILL_PA, step.unrest_pa):
            text = f"The pressure at outdoor tap {tap} does not move with the others: its hose is off or blocked."
            return Doubt(HoseFault.OFF, text)
    return None


def _creeps(step: FanStep) -> bool:
    """Tell whether the envelope pressure still moves long after the fan stands."""
    envelope = step.envelope
    return envelope.slope_pa_s > max(CREEP_PER_S * envelope.rise_pa, LEAST_CREEP_PA_S) + UNREST_SLOPE_S * step.unrest_pa


def _pinched(step: FanStep) -> Doubt | None:
    element = step.element
    if element is not None and element.slope_pa_s > CREEP_PER_S * element.rise_pa:
        return Doubt(HoseFault.PINCHED, "The flow element answers too slowly: its hose is pinched, or water is in it.")
    if step.lag_s < PROMPT_S and _creeps(step):
        return Doubt(HoseFault.PINCHED, "The envelope pressure answers too slowly: its hose is pinched, as in a door.")
    return None
