"""The worst case of exhaust fans, measured: how far each situation lowers the pressure where an appliance stands.

The test fan is off and its opening covered. First the pressure is read with everything off, then in one situation after
another: each exhaust fan on, then all of them, doors inside open and shut (after public guidance on enclosure leakage
tests, basc.pnnl.gov). A pressure read with everything off again begins anew.
"""

from __future__ import annotations

import math
import re
from collections.abc import Iterable
from dataclasses import dataclass
from datetime import datetime

import numpy as np
from numpy.typing import NDArray

from acquisition.job.house import Entry, PreparationKind
from analysis.errors import InvalidInput
from analysis.exhaust import Borne, borne
from analysis.noise import LEAST_PRESSURE_U_PA
from analysis.records import Estimate
from analysis.statistics import mean_error_and_correlation

ALL_OFF = "everything off"
USUAL = ("kitchen hood", "bath fan", "dryer", "all exhaust fans", "all exhaust fans, inside doors shut")
"""What usually is switched on, in this order; any words may stand there."""
LONGEST = 120
READ_S = 20.0
"""What a reading is the mean of."""
LEAST_READINGS = 20
COVERAGE = 1.96
"""Of a normally distributed number, 95 % (a handbook value, from memory)."""
STATE = re.compile(r"(-?\d+\.\d+) Pa, u (\d+\.\d+)")


@dataclass(frozen=True, slots=True)
class Situation:
    """The pressure indoors against outdoors in a situation, with its standard uncertainty (Pa)."""

    utc: datetime
    words: str
    pressure_pa: float
    u_pa: float


@dataclass(frozen=True, slots=True)
class Lowering:
    """How far a situation lowers the pressure against everything off (Pa, positive is lower)."""

    situation: Situation
    lowered_pa: Estimate


@dataclass(frozen=True, slots=True)
class WorstCase:
    """What was read since everything was off last; `worst`, and what appliances bear, once a fan was on."""

    off: Situation | None
    lowerings: tuple[Lowering, ...]
    worst: Lowering | None
    borne: tuple[Borne, ...]


def mean_of(values_pa: NDArray[np.float64]) -> tuple[float, float] | None:
    """Return the mean of readings (Pa, shape (n,)) and its standard uncertainty, None for too few of them."""
    if len(values_pa) < LEAST_READINGS:
        return None
    error_pa, _ = mean_error_and_correlation(values_pa)
    return float(values_pa.mean()), max(error_pa, LEAST_PRESSURE_U_PA)


def situation_entry(words: str, pressure_pa: float, u_pa: float, utc: datetime, who: str = "") -> Entry:
    """Return what is kept of a reading. Raises `InvalidInput` where nobody says what is on."""
    said = " ".join(words.split())
    if not said:
        raise InvalidInput("situation", words, "say which fans are on and which doors are open", shown="empty")
    if len(said) > LONGEST:
        raise InvalidInput("situation", said, f"at most {LONGEST} characters fit", shown=f"{len(said)} long")
    return Entry(utc, PreparationKind.EXHAUST, said, f"{pressure_pa:.3f} Pa, u {u_pa:.3f}", who)


def worst_case(entries: Iterable[Entry]) -> WorstCase:
    """Return what the readings since the last one with everything off tell."""
    off: Situation | None = None
    rows: list[Lowering] = []
    for situation in _situations(entries):
        if situation.words == ALL_OFF:
            off, rows = situation, []
        elif off is not None:
            rows.append(Lowering(situation, _lowered(off, situation)))
    worst = max(rows, key=lambda row: row.lowered_pa.value, default=None)
    return WorstCase(off, tuple(rows), worst, () if worst is None else borne(worst.lowered_pa))


def _situations(entries: Iterable[Entry]) -> Iterable[Situation]:
    for entry in entries:
        read = STATE.fullmatch(entry.state) if entry.kind is PreparationKind.EXHAUST else None
        if read is not None:
            yield Situation(entry.utc, entry.subject, float(read[1]), float(read[2]))


def _lowered(off: Situation, on: Situation) -> Estimate:
    lowered = off.pressure_pa - on.pressure_pa
    half = COVERAGE * math.hypot(off.u_pa, on.u_pa)
    return Estimate(lowered, lowered - half, lowered + half)
