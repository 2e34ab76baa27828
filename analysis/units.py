"""Units at the edge: what is stored is SI, what a person sees and types is in the display system of their choice.

Two systems, SI and US customary, for each quantity. Factors come from pint, which is loaded when the first factor other
than 1 is asked for.
"""

from __future__ import annotations

import math
import re
from dataclasses import dataclass
from enum import Enum, StrEnum
from functools import cache
from typing import TYPE_CHECKING

from analysis.errors import InvalidInput
from analysis.numbertext import decimals_for, format_number, parse_number, significant_decimals
from analysis.records import Estimate

if TYPE_CHECKING:
    import pint


class System(StrEnum):
    """A system of display units."""

    SI = "si"
    US = "us"


@dataclass(frozen=True, slots=True)
class Display:
    """How one person wants to see numbers."""

    system: System = System.SI
    decimal_mark: str = "."
    others: frozenset[str] = frozenset()
    """Names of quantities (of `Quantity`) that are shown in the other system."""

    def system_of(self, quantity: Quantity) -> System:
        """Return the system that a quantity is shown in."""
        if quantity.name not in self.others:
            return self.system
        return System.SI if self.system is System.US else System.US


@dataclass(frozen=True, slots=True)
class UnitOption:
    """A unit that a quantity can be shown or typed in; `decimals` for values that carry no uncertainty."""

    symbol: str
    pint_name: str
    decimals: int = 0


@dataclass(frozen=True, slots=True)
class QuantitySpec:
    """The unit a quantity is stored in (as pint calls it), shown in, and further ones it may be typed in."""

    stored: str
    si: UnitOption
    us: UnitOption
    typed: tuple[UnitOption, ...] = ()


def _both(symbol: str, pint_name: str, decimals: int) -> QuantitySpec:
    return QuantitySpec(pint_name, UnitOption(symbol, pint_name, decimals), UnitOption(symbol, pint_name, decimals))


_M3_H, _CFM = "meter**3/hour", "foot**3/minute"


class Quantity(Enum):
    """What a number is of."""

    PRESSURE = _both("Pa", "pascal", 1)
    BAROMETRIC_PRESSURE = QuantitySpec(
        "pascal",
        UnitOption("hPa", "hectopascal", 1),
        UnitOption("inHg", "inch_Hg", 2),
        (
            UnitOption("Pa", "pascal"),
            UnitOption("kPa", "kilopascal"),
            UnitOption("mbar", "millibar"),
            UnitOption("mmHg", "millimeter_Hg"),
        ),
    )
    FLOW = QuantitySpec(
        _M3_H,
        UnitOption("m³/h", _M3_H, 0),
        UnitOption("cfm", _CFM, 0),
        (UnitOption("l/s", "liter/second"), UnitOption("m³/s", "meter**3/second"), UnitOption("ft³/min", _CFM)),
    )
    FLOW_COEFFICIENT = QuantitySpec(_M3_H, UnitOption("m³/(h·Paⁿ)", _M3_H, 1), UnitOption("cfm/Paⁿ", _CFM, 1))
    VOLUME = QuantitySpec("meter**3", UnitOption("m³", "meter**3", 1), UnitOption("ft³", "foot**3", 0))
    AREA = QuantitySpec("meter**2", UnitOption("m²", "meter**2", 1), UnitOption("ft²", "foot**2", 0))
    LENGTH = QuantitySpec("meter", UnitOption("m", "meter", 1), UnitOption("ft", "foot", 1))
    TEMPERATURE = QuantitySpec(
        "degree_Celsius",
        UnitOption("°C", "degree_Celsius", 1),
        UnitOption("°F", "degree_Fahrenheit", 1),
        (UnitOption("C", "degree_Celsius"), UnitOption("F", "degree_Fahrenheit"), UnitOption("K", "kelvin")),
    )
    TEMPERATURE_DIFFERENCE = QuantitySpec(
        "delta_degree_Celsius", UnitOption("K", "kelvin", 1), UnitOption("°F", "delta_degree_Fahrenheit", 1)
    )
    LEAKAGE_AREA = QuantitySpec("centimeter**2", UnitOption("cm²", "centimeter**2", 0), UnitOption("in²", "inch**2", 1))
    AIR_CHANGE = _both("1/h", "1/hour", 2)
    FLOW_PER_AREA = QuantitySpec(
        "meter/hour",
        UnitOption("m³/(h·m²)", "meter/hour", 2),
        UnitOption("cfm/ft²", "foot/minute", 3),
        (UnitOption("l/(s·m²)", "millimeter/second"), UnitOption("m³/h/m²", "meter/hour")),
    )
    NORMALISED_LEAKAGE_AREA = _both("cm²/m²", "centimeter**2/meter**2", 2)
    NORMALISED_LEAKAGE_RATE = _both("l/(s·m²)", "millimeter/second", 2)
    SPEED = QuantitySpec(
        "meter/second",
        UnitOption("m/s", "meter/second", 1),
        UnitOption("mph", "mile/hour", 1),
        (UnitOption("km/h", "kilometer/hour"), UnitOption("kn", "knot")),
    )
    DENSITY = QuantitySpec(
        "kilogram/meter**3", UnitOption("kg/m³", "kilogram/meter**3", 4), UnitOption("lb/ft³", "pound/foot**3", 5)
    )
    RELATIVE_HUMIDITY = QuantitySpec("dimensionless", UnitOption("%", "percent", 0), UnitOption("%", "percent", 0))
    SHARE = QuantitySpec("dimensionless", UnitOption("%", "percent", 1), UnitOption("%", "percent", 1))
    """Stored as a share of 1."""
    DURATION = QuantitySpec(
        "second", UnitOption("s", "second", 0), UnitOption("s", "second", 0), (UnitOption("min", "minute"),)
    )
    EXPONENT = _both("", "dimensionless", 3)


@dataclass(frozen=True, slots=True)
class EstimateText:
    """An estimate as text; `plus_minus`, `low` and `high` are empty without an interval."""

    value: str
    plus_minus: str
    low: str
    high: str
    unit: str


def usual_decimals(quantity: Quantity, display: Display) -> int:
    """Return the decimals of a value of the quantity that carries no uncertainty."""
    return _option(quantity, display).decimals


def unit_symbol(quantity: Quantity, display: Display) -> str:
    """Return the symbol of the unit that the quantity is shown in."""
    return _option(quantity, display).symbol


def to_display(value: float, quantity: Quantity, display: Display) -> float:
    """Return a stored value in the unit that it is shown in."""
    return _converted(value, quantity.value.stored, _option(quantity, display).pint_name)


def from_display(value: float, quantity: Quantity, display: Display) -> float:
    """Return a shown value in the unit that it is stored in."""
    return _converted(value, _option(quantity, display).pint_name, quantity.value.stored)


def format_value(value: float, quantity: Quantity, display: Display, decimals: int | None = None) -> str:
    """Return a stored value as text without its unit, with the usual decimals of the quantity or those given."""
    option = _option(quantity, display)
    shown = to_display(value, quantity, display)
    return format_number(shown, option.decimals if decimals is None else decimals, display.decimal_mark)


def format_with_unit(value: float, quantity: Quantity, display: Display, decimals: int | None = None) -> str:
    """Return a stored value as text with its unit."""
    symbol = unit_symbol(quantity, display)
    text = format_value(value, quantity, display, decimals)
    return f"{text} {symbol}" if symbol else text


def format_estimate(estimate: Estimate, quantity: Quantity, display: Display) -> EstimateText:
    """Return an estimate as text with as many digits as its interval carries, three without one."""
    value, low, high = (to_display(part, quantity, display) for part in (estimate.value, estimate.low, estimate.high))
    decimals = decimals_for((high - low) / 2)
    bounded = math.isfinite(high - low)
    places = decimals if decimals is not None else significant_decimals(value, 3)

    def text(number: float) -> str:
        return format_number(number, places, display.decimal_mark)

    return EstimateText(
        value=text(value),
        plus_minus=text((high - low) / 2) if bounded else "",
        low=text(low) if bounded else "",
        high=text(high) if bounded else "",
        unit=unit_symbol(quantity, display),
    )


def parse_value(text: str, quantity: Quantity, display: Display, field: str) -> float:
    """Return what a person typed as a stored value.

    A number alone is in the display unit; one with a unit may be in any unit of the quantity. Raises `InvalidInput`.
    """
    parts = _NUMBER_AND_UNIT.fullmatch(text.strip())
    if parts is None or not parts["unit"]:
        return from_display(parse_number(text, field, display.decimal_mark), quantity, display)
    options = [_option(quantity, display), quantity.value.si, quantity.value.us, *quantity.value.typed]
    spelled = _plain(parts["unit"])
    option = next((item for item in options if _plain(item.symbol) == spelled), None)
    if option is None:
        names = ", ".join(dict.fromkeys(item.symbol for item in options if item.symbol)) or "none"
        raise InvalidInput(field, text, f"a number is needed, alone or with a unit (allowed: {names})")
    number = parse_number(parts["number"], field, display.decimal_mark)
    return _converted(number, option.pint_name, quantity.value.stored)


_NUMBER_AND_UNIT = re.compile(
    r"(?P<number>[-+\d.,'\s\u2009\u202f\u2019\u2212\u2013]*?(?:e[+-]?\d{1,3})?)\s*"
    r"(?P<unit>(?<=\s)1/h|/h|[^\W\d_].*|[°%].*|)",
    re.IGNORECASE | re.DOTALL,
)


def _plain(symbol: str) -> str:
    """Return a unit's symbol in the spelling that all spellings of it share."""
    flat = symbol.replace("³", "3").replace("²", "2").replace("ⁿ", "n").removeprefix("1/h") or "/h"
    return re.sub(r"[\s()^·*]", "", flat).casefold()


def _option(quantity: Quantity, display: Display) -> UnitOption:
    return quantity.value.us if display.system_of(quantity) is System.US else quantity.value.si


def _converted(value: float, source: str, target: str) -> float:
    if source == target:
        return value
    scale, offset = _conversion(source, target)
    return value * scale + offset


@cache
def _conversion(source: str, target: str) -> tuple[float, float]:
    """Return scale and offset of a conversion. Loads pint."""
    registry = _registry()
    at_zero = float(registry.Quantity(0.0, source).to(target).magnitude)
    at_thousand = float(registry.Quantity(1000.0, source).to(target).magnitude)
    return (at_thousand - at_zero) / 1000.0, at_zero


@cache
def _registry() -> pint.UnitRegistry[float]:
    import pint as loaded  # its import takes longer than that of all else here

    return loaded.UnitRegistry()
