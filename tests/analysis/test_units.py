"""Display units. Factors by definition: 1 ft = 0.3048 m, 1 mile = 1609.344 m, 1 lb = 0.45359237 kg (international)."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from analysis.errors import InvalidInput
from analysis.records import Estimate
from analysis.units import (
    Display,
    Quantity,
    System,
    format_estimate,
    format_value,
    format_with_unit,
    from_display,
    parse_value,
    to_display,
    unit_symbol,
)

SI, US, COMMA = Display(), Display(System.US), Display(decimal_mark=",")


@pytest.mark.parametrize(
    ("quantity", "stored", "shown"),
    [
        (Quantity.PRESSURE, 50.0, 50.0),
        (Quantity.FLOW, 1.699010796, 1.0),
        (Quantity.VOLUME, 0.3048**3, 1.0),
        (Quantity.AREA, 0.3048**2, 1.0),
        (Quantity.LENGTH, 0.3048, 1.0),
        (Quantity.TEMPERATURE, 20.0, 68.0),
        (Quantity.TEMPERATURE, -40.0, -40.0),
        (Quantity.TEMPERATURE_DIFFERENCE, 10.0, 18.0),
        (Quantity.LEAKAGE_AREA, 2.54**2, 1.0),
        (Quantity.FLOW_PER_AREA, 18.288, 1.0),
        (Quantity.SPEED, 0.44704, 1.0),
        (Quantity.DENSITY, 0.45359237 / 0.3048**3, 1.0),
        (Quantity.BAROMETRIC_PRESSURE, 101_325.0, 29.9213),
        (Quantity.AIR_CHANGE, 3.0, 3.0),
        (Quantity.RELATIVE_HUMIDITY, 0.45, 45.0),
    ],
)
def test_us_customary_values(quantity: Quantity, stored: float, shown: float) -> None:
    assert to_display(stored, quantity, US) == pytest.approx(shown, rel=2e-6)


@given(st.sampled_from(Quantity), st.sampled_from(System), st.floats(-1e5, 1e5))
def test_switching_the_system_and_back_changes_nothing(quantity: Quantity, system: System, value: float) -> None:
    display = Display(system)
    assert from_display(to_display(value, quantity, display), quantity, display) == pytest.approx(
        value, rel=1e-12, abs=1e-9
    )


@pytest.mark.parametrize(
    ("text", "quantity", "display", "stored"),
    [
        ("300", Quantity.VOLUME, SI, 300.0),
        ("10600", Quantity.VOLUME, US, 10600 * 0.3048**3),
        ("10 600 ft3", Quantity.VOLUME, SI, 10600 * 0.3048**3),
        ("300 m³", Quantity.VOLUME, US, 300.0),
        ("21,5 °C", Quantity.TEMPERATURE, US, 21.5),
        ("70", Quantity.TEMPERATURE, US, 21.1111111111),
        ("1013 hPa", Quantity.BAROMETRIC_PRESSURE, US, 101_300.0),
        ("1013", Quantity.BAROMETRIC_PRESSURE, SI, 101_300.0),
        ("1.5 1/h", Quantity.AIR_CHANGE, SI, 1.5),
        ("50 %", Quantity.RELATIVE_HUMIDITY, SI, 0.5),
        ("−59.6 Pa", Quantity.PRESSURE, SI, -59.6),
        ("100 CFM", Quantity.FLOW, SI, 169.9010796),
        ("100 l/s", Quantity.FLOW, US, 360.0),
        ("1.2 l/(s m2)", Quantity.FLOW_PER_AREA, SI, 4.32),
        ("10 km/h", Quantity.SPEED, SI, 2.7777777778),
        ("1,234 m", Quantity.LENGTH, COMMA, 1.234),
        ("0,652", Quantity.EXPONENT, SI, 0.652),
        ("2 min", Quantity.DURATION, SI, 120.0),
    ],
)
def test_what_people_type_is_stored_in_si(text: str, quantity: Quantity, display: Display, stored: float) -> None:
    assert parse_value(text, quantity, display, "field") == pytest.approx(stored, rel=1e-9)


def test_a_unit_of_something_else_is_refused_with_those_allowed() -> None:
    with pytest.raises(InvalidInput, match=r"^volume is '12 furlong': a number is needed, .*\(allowed: m³, ft³\)$"):
        parse_value("12 furlong", Quantity.VOLUME, SI, "volume")


@given(st.text(max_size=20), st.sampled_from(Quantity), st.sampled_from([SI, US, COMMA]))
def test_nothing_typed_gives_anything_but_a_number_or_one_sentence(
    text: str, quantity: Quantity, display: Display
) -> None:
    try:
        number = parse_value(text, quantity, display, "field")
    except InvalidInput:
        return
    assert math.isfinite(number)


@given(st.sampled_from(Quantity), st.sampled_from([SI, US, COMMA]), st.floats(-1e5, 1e5))
def test_what_is_shown_with_its_unit_can_be_typed_back(quantity: Quantity, display: Display, value: float) -> None:
    text = format_with_unit(value, quantity, display, 4)
    again = to_display(parse_value(text, quantity, display, "field"), quantity, display)
    assert again == pytest.approx(to_display(value, quantity, display), abs=6e-5, rel=1e-9)


def test_an_estimate_shows_as_many_digits_as_its_interval_carries() -> None:
    flow = format_estimate(Estimate(518.09, 514.03, 522.19), Quantity.FLOW, SI)
    assert (flow.value, flow.plus_minus, flow.low, flow.high, flow.unit) == ("518", "4", "514", "522", "m³/h")
    rate = format_estimate(Estimate(1.727, 1.713, 1.741), Quantity.AIR_CHANGE, COMMA)
    assert (rate.value, rate.plus_minus, rate.unit) == ("1,727", "0,014", "1/h")


def test_an_estimate_without_an_interval_shows_three_digits_and_no_more() -> None:
    text = format_estimate(Estimate(1481.4, 0.0, math.inf), Quantity.FLOW, SI)
    assert (text.value, text.plus_minus, text.low, text.high) == ("1\u2009480", "", "", "")


def test_a_single_value_has_the_usual_decimals_of_its_quantity() -> None:
    assert format_value(-40.34, Quantity.PRESSURE, SI) == "−40.3"
    assert format_with_unit(1481.2, Quantity.FLOW, SI) == "1\u2009481 m³/h"
    assert format_with_unit(0.6515, Quantity.EXPONENT, SI, 2) == "0.65"
    assert unit_symbol(Quantity.FLOW, US) == "cfm"
