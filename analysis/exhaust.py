"""Exhaust fans: how far they lower the pressure of a house of known leakage, held against what appliances bear.

An estimate for planning. Whether an appliance is safe is told by a test at the appliance, made by somebody licensed.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from functools import cache

from analysis.bounds import above_zero, within
from analysis.datafile import read_entries, refuse_doubles, shipped_text, take_provenance
from analysis.fields import Fields
from analysis.powerlaw import is_outside, log_estimate
from analysis.provenance import Provenance
from analysis.records import Estimate, PowerLaw
from analysis.uncertain import Measured, check_measured
from analysis.verdict import conformity, probability_within

CAUTION = (
    "This is an estimate from the leakage line, far below the pressures of the test, for closed windows and still air. "
    "It does not show that an appliance is safe: wind, cold flues, closed doors and blocked supply air are not in it. "
    "The local code and the instructions of the appliance govern. Have the worst case tested at every appliance by "
    "somebody licensed for it, again after every day of sealing, and resolve a possible backdraught before anything "
    "else is sealed."
)
"""Has to stand beside every estimate (after public guidance on enclosure leakage tests, basc.pnnl.gov)."""

_REFERENCE_PA = 50.0
_EXPONENTS = (0.3, 1.5)
"""Exponents between which a line may be carried to low pressures at all (our choice, wider than the methods allow)."""


@dataclass(frozen=True, slots=True)
class Appliance:
    """A kind of combustion appliance and how far the pressure around it may fall, as one document has it."""

    id: str
    title: str
    limit_pa: float
    place: str
    provenance: Provenance


@dataclass(frozen=True, slots=True)
class Borne:
    """An appliance held against a depressurization: how probable it is that it stays within the limit."""

    appliance: Appliance
    probability: float
    verdict: str


@dataclass(frozen=True, slots=True)
class Depressurization:
    """How far exhaust fans lower the pressure (a magnitude, Pa). `caution` has to stand beside it."""

    pressure_pa: Estimate
    borne: tuple[Borne, ...]
    caution: str = CAUTION


def depressurization(line: PowerLaw, exhaust: Measured, field: str = "exhaust_m3_h") -> Depressurization:
    """Return how far fans that exhaust so much (m3/h, supply taken off) lower the pressure of a house.

    dp = 50 (Q_exhaust/Q50)**(1/n), which is (Q_exhaust/C)**(1/n) (power law turned round; quantities as in the public
    guidance on depressurization analysis, basc.pnnl.gov). First-order propagation with the covariance of C and n (JCGM
    100). Raises `InvalidInput` for an exhaust that is not above 0, or an exponent that no leak has.
    """
    check_measured(exhaust, field)
    within(line.n, *_EXPONENTS, "n")
    ln_pressure = (math.log(exhaust.value) - line.ln_c) / line.n
    variance = line.var_ln_c + 2.0 * ln_pressure * line.cov_ln_c_n + ln_pressure**2 * line.var_n
    variance += (exhaust.u / exhaust.value) ** 2
    pressure = log_estimate(
        math.exp(ln_pressure),
        max(variance, 0.0) / line.n**2,
        line.dof,
        extrapolated=is_outside(line, math.exp(ln_pressure)),
    )
    return Depressurization(pressure, borne(pressure, line.dof))


def borne(pressure: Estimate, dof: float = math.inf) -> tuple[Borne, ...]:
    """Return every kind of appliance held against a depressurization (a magnitude, Pa)."""
    return tuple(_borne(pressure, dof, item) for item in appliances())


def tightest_q50_m3_h(exhaust_m3_h: float, limit_pa: float, n: float) -> float:
    """Return the flow at 50 Pa (m3/h) below which fans would lower the pressure by more than a limit.

    Q50 = Q_exhaust (50/dp)**n (power law).
    """
    above_zero(exhaust_m3_h, "exhaust_m3_h")
    above_zero(limit_pa, "limit_pa")
    return exhaust_m3_h * float((_REFERENCE_PA / limit_pa) ** above_zero(n, "n"))


@cache
def appliances() -> tuple[Appliance, ...]:
    """Return the kinds of appliances that come with the program."""
    return read_appliances(shipped_text("analysis", "exhaust.toml"), "exhaust.toml")


def read_appliances(text: str, name: str) -> tuple[Appliance, ...]:
    """Return the kinds of appliances of a file; raises `InvalidInput`."""
    read = tuple(_appliance(fields) for fields in read_entries(text, name, "appliance")["appliance"])
    refuse_doubles([item.id for item in read], name)
    return read


def _appliance(fields: Fields) -> Appliance:
    read = Appliance(
        id=fields.text("id"),
        title=fields.text("title"),
        limit_pa=above_zero(fields.number("limit_pa"), fields.path("limit_pa")),
        place=fields.text("place"),
        provenance=take_provenance(fields),
    )
    fields.finish()
    return read


def _borne(pressure: Estimate, dof: float, appliance: Appliance) -> Borne:
    probability = probability_within(pressure, appliance.limit_pa, dof)
    return Borne(appliance, probability, conformity(probability))
