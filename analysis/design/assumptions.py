"""What designs assume where nobody has measured, and what is usual, as data."""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import dataclass
from functools import cache
from typing import TypeVar

from analysis.bounds import above_zero, not_negative, within
from analysis.datafile import read_entries, refuse_doubles, shipped_text, take_provenance
from analysis.errors import InvalidInput
from analysis.fields import Fields
from analysis.provenance import Provenance


@dataclass(frozen=True, slots=True)
class Construction:
    """A class of construction: effective leakage area at 4 Pa (cm2) for each m2 of exposed surface."""

    id: str
    title: str
    unit_leakage_cm2_m2: float
    provenance: Provenance


@dataclass(frozen=True, slots=True)
class Usual:
    """Usual flow at 4 Pa per floor area (m3/(h m2)) of a kind of building."""

    id: str
    title: str
    low_m3_h_m2: float
    average_m3_h_m2: float
    high_m3_h_m2: float
    provenance: Provenance


@dataclass(frozen=True, slots=True)
class Tightness:
    """A tightness class: coefficient per volume (m3/(s Pa**n) for each m3) and flow exponent."""

    id: str
    title: str
    coefficient_per_s_pa_n: float
    n: float
    provenance: Provenance


@dataclass(frozen=True, slots=True)
class WeatherCoefficients:
    """How an energy program lets the weather change a design flow: times a + b |dT| + c U + d U**2."""

    id: str
    title: str
    constant: float
    per_k: float
    per_m_s: float
    per_m2_s2: float
    provenance: Provenance


@dataclass(frozen=True, slots=True)
class Stock:
    """A stock of houses: normalized leakage that 5, 50 and 95 % of them stay below."""

    id: str
    title: str
    nl_5: float
    nl_50: float
    nl_95: float
    provenance: Provenance


@dataclass(frozen=True, slots=True)
class Assumptions:
    """Everything that is assumed."""

    constructions: tuple[Construction, ...]
    usual: tuple[Usual, ...]
    tightness: tuple[Tightness, ...]
    weather: tuple[WeatherCoefficients, ...]
    stocks: tuple[Stock, ...]


@cache
def shipped_assumptions() -> Assumptions:
    """Return the assumptions that come with the program."""
    return read_assumptions(shipped_text(__package__, "assumptions.toml"), "assumptions.toml")


def read_assumptions(text: str, name: str) -> Assumptions:
    """Return the assumptions of a file; raises `InvalidInput`: file, entry, field, value and what is allowed."""
    tables = read_entries(text, name, "construction", "usual", "tightness", "weather", "stock")
    read = Assumptions(
        constructions=_all(tables["construction"], _construction),
        usual=_all(tables["usual"], _usual),
        tightness=_all(tables["tightness"], _tightness),
        weather=_all(tables["weather"], _weather),
        stocks=_all(tables["stock"], _stock),
    )
    for ids in (
        [item.id for item in read.constructions],
        [item.id for item in read.usual],
        [item.id for item in read.tightness],
        [item.id for item in read.weather],
        [item.id for item in read.stocks],
    ):
        refuse_doubles(ids, name)
    return read


def nearest_construction(ela4_cm2: float, exposed_m2: float) -> Construction:
    """Return the class of construction whose unit leakage is nearest, by ratio, to a measured effective area at 4 Pa.

    `exposed_m2` is the area of the surface that is exposed to outdoor air. Raises `InvalidInput`.
    """
    found = math.log(above_zero(ela4_cm2, "ela4_cm2") / above_zero(exposed_m2, "exposed_m2"))
    classes = shipped_assumptions().constructions
    return min(classes, key=lambda item: abs(math.log(item.unit_leakage_cm2_m2) - found))


def weather_multiplier(set_id: str, temperature_difference_k: float, wind_m_s: float) -> float:
    """Return what an energy program multiplies a design flow by in a weather (Coblenz and Achenbach 1963).

    a + b |dT| + c U + d U**2, by the set of coefficients of an id (EnergyPlus engineering reference). Raises
    `InvalidInput`.
    """
    sets = {item.id: item for item in shipped_assumptions().weather}
    if set_id not in sets:
        raise InvalidInput("weather", set_id, f"one of {', '.join(sets)} is needed")
    a = sets[set_id]
    difference = abs(within(temperature_difference_k, -100.0, 100.0, "temperature_difference_k", "K"))
    wind = within(wind_m_s, 0.0, 100.0, "wind_m_s", "m/s")
    return a.constant + a.per_k * difference + a.per_m_s * wind + a.per_m2_s2 * wind**2


_T = TypeVar("_T")


def _all(entries: list[Fields], read: Callable[[Fields], _T]) -> tuple[_T, ...]:
    items = []
    for fields in entries:
        items.append(read(fields))
        fields.finish()
    return tuple(items)


def _positive(fields: Fields, key: str) -> float:
    return above_zero(fields.number(key), fields.path(key))


def _construction(fields: Fields) -> Construction:
    return Construction(
        fields.text("id"), fields.text("title"), _positive(fields, "unit_leakage_cm2_m2"), take_provenance(fields)
    )


def _usual(fields: Fields) -> Usual:
    return Usual(
        fields.text("id"),
        fields.text("title"),
        _positive(fields, "low_m3_h_m2"),
        _positive(fields, "average_m3_h_m2"),
        _positive(fields, "high_m3_h_m2"),
        take_provenance(fields),
    )


def _tightness(fields: Fields) -> Tightness:
    return Tightness(
        fields.text("id"),
        fields.text("title"),
        _positive(fields, "coefficient_per_s_pa_n"),
        _positive(fields, "n"),
        take_provenance(fields),
    )


def _weather(fields: Fields) -> WeatherCoefficients:
    def number(key: str) -> float:
        return not_negative(fields.number(key), fields.path(key))

    return WeatherCoefficients(
        fields.text("id"),
        fields.text("title"),
        number("constant"),
        number("per_k"),
        number("per_m_s"),
        number("per_m2_s2"),
        take_provenance(fields),
    )


def _stock(fields: Fields) -> Stock:
    return Stock(
        fields.text("id"),
        fields.text("title"),
        _positive(fields, "nl_5"),
        _positive(fields, "nl_50"),
        _positive(fields, "nl_95"),
        take_provenance(fields),
    )
