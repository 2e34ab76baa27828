"""How to look for leaks at a held pressure: fog, hand, infra-red, by the temperatures and the direction.

What is said here is common practice, no source; local codes and those who look after alarms decide.
"""

from __future__ import annotations

from dataclasses import dataclass

from analysis.records import Direction

GOOD_DIFFERENCE_K, LEAST_DIFFERENCE_K = 10.0, 5.0
"""Between indoors and outdoors, for infra-red (common practice, no source)."""
GENTLE_PA = 25.0
ALARM = "Fire alarm, isolated for fog"
"""Subject on the seal board: what is isolated has to be ticked off before the job is closed."""
CAUTIONS = (
    "Fog sets off smoke alarms and those that call the fire service: have them isolated by somebody who may, tell "
    "whoever looks after them, tick both here. Local codes decide. "
    "Use fog that people may breathe, on nothing that is hot; tell the neighbours before it comes out of the walls. "
    "Depressurizing draws flue gas and dust into the house: no flame burns, ashes are covered, as in Set-up."
)


@dataclass(frozen=True, slots=True)
class Advice:
    """What suits now: infra-red or not, and where to stand."""

    infra_red: str
    fog: str
    usable: bool


def advice(indoor_c: float | None, outdoor_c: float | None, direction: Direction, held_pa: float) -> Advice:
    """Return how to look at these temperatures (degrees C) while `held_pa` is held."""
    inward = direction is Direction.DEPRESSURIZE
    where = (
        "from inside: outdoor air comes in at the leaks"
        if inward
        else "from outside: indoor air comes out at the leaks"
    )
    if inward:
        fog = "Fog or a smoke pen: stand inside and watch where it is blown away from the wall."
    else:
        fog = "Fog: make it inside and look from outside where it comes out."
    if held_pa > GENTLE_PA:
        fog += f" It lasts longer at {GENTLE_PA:g} Pa or less."
    if indoor_c is None or outdoor_c is None:
        return Advice("Infra-red: no temperatures are known, enter them in Job.", fog, usable=False)
    difference = abs(indoor_c - outdoor_c)
    known = f"{difference:.0f} K between indoors and outdoors"
    if difference >= GOOD_DIFFERENCE_K:
        return Advice(f"Infra-red works: {known}. Look {where}.", fog, usable=True)
    if difference >= LEAST_DIFFERENCE_K:
        return Advice(f"Infra-red may show large leaks only: {known}, 10 K are wanted. Look {where}.", fog, usable=True)
    return Advice(
        f"Infra-red shows nothing: {known}. Heat the house first, or use fog and the hand.", fog, usable=False
    )
