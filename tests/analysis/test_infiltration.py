"""Natural air change by models: monotone, scaled, with a wide band, and one sentence for what cannot be."""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from analysis.errors import InvalidInput
from analysis.estimators import estimator
from analysis.estimators.observations import Observations
from analysis.infiltration import (
    Foundation,
    Infiltration,
    Shelter,
    Site,
    Terrain,
    Weather,
    basic_infiltration,
    by_divisor,
    by_facade_pressure,
    by_twenty,
    credit,
    enhanced_infiltration,
    fan_flow_m3_h,
    model_of,
    required_ventilation_m3_h,
    stations,
)
from analysis.infiltration.basic import basic_by_coefficients, stack_coefficient, wind_coefficient
from analysis.infiltration.credit import credit_by_leakage_m3_h, normalized_leakage, weather_factor
from analysis.infiltration.enhanced import LeakSplit, coefficients_of, enhanced_by_coefficients
from analysis.infiltration.model import ESTIMATE_ONLY, widened
from analysis.infiltration.rules import by_design_pressure
from analysis.infiltration.site import eaves_wind_m_s
from analysis.records import Estimate, PowerLaw
from tests.analysis.samples import FLOWS_M3_H, PRESSURES_PA

LINE = estimator("ols").fit(Observations(PRESSURES_PA, FLOWS_M3_H))
ELA4 = Estimate(277.0, 270.0, 284.0, extrapolated=True)
Q50 = Estimate(1333.0, 1328.0, 1337.0)
SITE = Site(2, Shelter.ACROSS_STREET)
WINTER = Weather(25.0, 4.0)

SITES = st.builds(
    Site, st.sampled_from([1, 2, 3]), st.sampled_from(Shelter), st.booleans(), st.sampled_from(Foundation)
)
WEATHERS = st.builds(Weather, st.floats(0.0, 50.0), st.floats(0.1, 12.0))
Of = Callable[[Site, Weather], Infiltration]
BY_SITE: tuple[Of, ...] = (
    lambda site, weather: basic_infiltration(ELA4, site, weather, 300.0),
    lambda site, weather: enhanced_infiltration(LINE, site, weather, 300.0),
)


@pytest.mark.parametrize("model", BY_SITE)
@given(SITES, WEATHERS, st.floats(1.01, 3.0))
def test_more_wind_and_more_temperature_difference_bring_more_air(
    model: Of, site: Site, weather: Weather, factor: float
) -> None:
    base = model(site, weather).flow_m3_h.value
    assert model(site, replace(weather, wind_m_s=factor * weather.wind_m_s)).flow_m3_h.value > base
    colder = replace(weather, temperature_difference_k=factor * weather.temperature_difference_k + 1.0)
    assert model(site, colder).flow_m3_h.value > base


@pytest.mark.parametrize("model", BY_SITE)
@given(SITES, WEATHERS)
def test_better_shelter_brings_less_air(model: Of, site: Site, weather: Weather) -> None:
    flows = [model(replace(site, shelter=shelter), weather).flow_m3_h.value for shelter in Shelter]
    assert flows == sorted(flows, reverse=True)


@pytest.mark.parametrize("model", BY_SITE)
@given(SITES.filter(lambda site: site.storeys < 3), st.floats(5.0, 50.0))
def test_a_taller_house_has_more_stack(model: Of, site: Site, difference: float) -> None:
    cold = Weather(difference, 0.0)
    taller = replace(site, storeys=site.storeys + 1)
    assert model(taller, cold).flow_m3_h.value > model(site, cold).flow_m3_h.value


@given(SITES, WEATHERS, st.floats(0.1, 10.0))
def test_so_many_times_the_leaks_bring_so_many_times_the_air(site: Site, weather: Weather, factor: float) -> None:
    one = basic_infiltration(ELA4, site, weather).flow_m3_h
    other = basic_infiltration(ELA4.times(factor), site, weather).flow_m3_h
    assert (other.value, other.low, other.high) == pytest.approx(
        (factor * one.value, factor * one.low, factor * one.high), rel=1e-9
    )
    larger = replace(LINE, ln_c=LINE.ln_c + math.log(factor))
    assert enhanced_infiltration(larger, site, weather).flow_m3_h.value == pytest.approx(
        factor * enhanced_infiltration(LINE, site, weather).flow_m3_h.value, rel=1e-9
    )


@pytest.mark.parametrize(
    "found",
    [
        basic_infiltration(ELA4, SITE, WINTER, 300.0),
        enhanced_infiltration(LINE, SITE, WINTER, 300.0),
        credit(Q50, 5.0, 0.6, 300.0),
        by_twenty(Q50, 300.0),
        by_divisor(Q50, 300.0, 18.0, 2.0),
        by_design_pressure(Q50, 300.0, 5.0),
        by_facade_pressure(Q50, 50.0, 2.0, 300.0),
    ],
    ids=lambda found: found.model.id,
)
def test_every_model_gives_its_name_a_wide_band_and_the_air_change(found: Infiltration) -> None:
    flow = found.flow_m3_h
    assert found.model.title
    assert found.note == ESTIMATE_ONLY
    assert found.model.provenance.words.endswith("not checked against the document")
    assert flow.high / flow.value >= found.model.factor >= 2.0
    assert flow.value / flow.low >= found.model.factor
    assert found.air_change_per_h is not None
    assert found.air_change_per_h.value == pytest.approx(flow.value / 300.0)


def test_models_agree_with_each_other_within_their_bands() -> None:
    """Same house, same winter day: none lies outside the band of another."""
    found = [basic_infiltration(ELA4, SITE, WINTER), enhanced_infiltration(LINE, SITE, WINTER)]
    assert all(a.flow_m3_h.low < b.flow_m3_h.value < a.flow_m3_h.high for a in found for b in found)


def test_the_band_and_the_interval_of_the_leakage_add_in_quadrature() -> None:
    """In the logarithm: 3 and 4 make 5."""
    wide = widened(Estimate(10.0, 10.0 * math.exp(-0.3), 10.0 * math.exp(0.3)), math.exp(0.4))
    assert (wide.low, wide.high) == pytest.approx((10.0 * math.exp(-0.5), 10.0 * math.exp(0.5)))


def test_without_interval_of_the_leakage_there_is_none_of_the_air_change() -> None:
    two = estimator("ols").fit(Observations(PRESSURES_PA[:2], FLOWS_M3_H[:2]))
    flow = enhanced_infiltration(two, SITE, WINTER).flow_m3_h
    assert math.isfinite(flow.value)
    assert (flow.low, flow.high) == (0.0, math.inf)


def test_the_interval_of_the_line_follows_with_its_covariance() -> None:
    """Against the model at shifted lines: first-order propagation (JCGM 100)."""

    def ln_flow(ln_c: float, n: float) -> float:
        return math.log(enhanced_infiltration(replace(LINE, ln_c=ln_c, n=n), SITE, WINTER).flow_m3_h.value)

    step = 1e-5
    slope = (ln_flow(LINE.ln_c, LINE.n + step) - ln_flow(LINE.ln_c, LINE.n - step)) / (2 * step)
    variance = LINE.var_ln_c + 2 * slope * LINE.cov_ln_c_n + slope**2 * LINE.var_n
    flow = enhanced_infiltration(replace(LINE, dof=math.inf), SITE, WINTER).flow_m3_h
    half = math.log(flow.high / flow.value)
    expected = math.hypot(1.959964 * math.sqrt(variance), math.log(2.0))
    assert half == pytest.approx(expected, rel=1e-6)


def test_wind_at_the_eaves_is_lower_the_rougher_the_terrain() -> None:
    winds = [eaves_wind_m_s(replace(SITE, terrain=terrain), WINTER) for terrain in Terrain]
    assert winds == sorted(winds, reverse=True)
    assert all(wind < 4.0 for wind in winds)
    assert eaves_wind_m_s(replace(SITE, terrain=Terrain.OPEN, eaves_m=10.0), WINTER) == pytest.approx(4.0)
    assert eaves_wind_m_s(SITE, replace(WINTER, eaves_wind_m_s=2.5)) == 2.5


# coefficients of one's own


@given(st.floats(2.0, 10.0), st.floats(0.0, 1.0), st.floats(0.05, 0.95))
def test_stack_is_strongest_with_the_neutral_level_half_way_and_the_leaks_in_floor_and_ceiling(
    height: float, share: float, level: float
) -> None:
    found = stack_coefficient(height, share, level)
    assert found == pytest.approx(stack_coefficient(height, share, 1.0 - level))
    assert found <= stack_coefficient(height, share, 0.5) * (1 + 1e-12)
    assert found <= stack_coefficient(height, 1.0, level) * (1 + 1e-12)
    assert stack_coefficient(2 * height, share, level) == pytest.approx(2 * found)


def test_coefficients_of_one_s_own_take_the_place_of_the_table() -> None:
    stack, wind = stack_coefficient(5.0, 0.5), wind_coefficient(0.5, 0.24, 5.0, (0.85, 0.20))
    own = basic_by_coefficients(ELA4, stack, wind, WINTER).flow_m3_h.value
    assert own == pytest.approx(basic_infiltration(ELA4, SITE, WINTER).flow_m3_h.value, rel=0.1)


@given(st.floats(0.5, 0.8), st.floats(2.5, 8.0))
def test_a_flue_brings_more_stack_and_takes_from_the_wind(n: float, height: float) -> None:
    without, with_flue = (coefficients_of(LeakSplit(flue=share), n, height, 1.2041, 0.7) for share in (0.0, 0.2))
    assert with_flue.stack > without.stack
    assert with_flue.wind < without.wind
    assert with_flue.shelter > without.shelter


def test_equations_and_table_of_the_enhanced_model_belong_to_the_same_house() -> None:
    """Two storeys, no flue, n 0.67: within 15 % of the table."""
    own = coefficients_of(LeakSplit(), 0.67, 5.0, 1.2041, 0.7)
    by_own = enhanced_by_coefficients(LINE, own, SITE, WINTER).flow_m3_h.value
    assert by_own == pytest.approx(enhanced_infiltration(LINE, SITE, WINTER).flow_m3_h.value, rel=0.15)


# the credit


@given(st.floats(10.0, 1000.0), st.floats(0.0, 1000.0), st.floats(0.0, 1.0))
def test_a_balanced_fan_is_credited_at_least_as_much_as_another(required: float, air: float, share: float) -> None:
    balanced = fan_flow_m3_h(required, air, balanced=True, exterior_share=share)
    other = fan_flow_m3_h(required, air, balanced=False, exterior_share=share)
    assert 0.0 <= balanced <= other + 1e-9
    assert other <= required


def test_both_forms_of_the_credit_are_close_to_each_other() -> None:
    """The one from NL, the other from the flow at 50 Pa, at n = 0.65."""
    law = PowerLaw(math.log(1000.0 / 50**0.65), 0.65, 0.0, 0.0, 0.0, math.inf, 1.0, 0.0, 10.0, 60.0)
    ela4 = 1000.0 * (4 / 50) ** 0.65 / 3600.0 / math.sqrt(8 / 1.2041) * 1e4
    by_leakage = credit_by_leakage_m3_h(normalized_leakage(ela4, 120.0, 5.0), 120.0, 0.6)
    by_flow = credit(Estimate(1000.0, 990.0, 1010.0), 5.0, 0.6).flow_m3_h.value
    assert math.exp(law.ln_c) * 50**law.n == pytest.approx(1000.0)
    assert by_leakage == pytest.approx(by_flow, rel=0.01)


def test_stations_are_looked_up_by_their_number() -> None:
    assert weather_factor("725650") == 0.59
    assert all(not item.provenance.verified for item in stations())
    with pytest.raises(InvalidInput, match=r"^station is '0': one of 725090, 722020, .* is needed$"):
        weather_factor("0")


# input that cannot be used


def refusal(call: Callable[[], object]) -> str:
    """Return the sentence with which a call refuses."""
    with pytest.raises(InvalidInput) as refused:
        call()
    assert "\n" not in str(refused.value)
    return str(refused.value)


@pytest.mark.parametrize(
    ("call", "sentence"),
    [
        (
            lambda: basic_infiltration(ELA4, Site(4, Shelter.NONE), WINTER),
            "storeys is 4: 1, 2 or 3 is needed: the models were made for low houses",
        ),
        (lambda: basic_infiltration(ELA4, SITE, Weather(-5.0, 4.0)), "temperature_difference_k is -5.0: a number of"),
        (lambda: basic_infiltration(ELA4, SITE, Weather(5.0, math.nan)), "wind_m_s is nan: a number from 0 to 100 m/s"),
        (
            lambda: basic_infiltration(ELA4, SITE, Weather(0.0, 0.0)),
            "weather is still, with no temperature difference: a temperature difference or a wind above 0 is needed",
        ),
        (lambda: enhanced_infiltration(LINE, SITE, Weather(0.0, 3.0, 0.0)), "weather is still, with no temperature"),
        (lambda: enhanced_infiltration(LINE, SITE, Weather(1.0, 3.0, -1.0)), "eaves_wind_m_s is -1.0: a number from 0"),
        (lambda: enhanced_infiltration(replace(LINE, n=3.0), SITE, WINTER), "n is 3.0: a number from 0.3 to 1.5"),
        (lambda: enhanced_infiltration(LINE, replace(SITE, eaves_m=0.0), WINTER), "eaves_m is 0.0: a number greater"),
        (lambda: basic_infiltration(ELA4, SITE, WINTER, 0.0), "volume_m3 is 0.0: a number greater than 0"),
        (lambda: credit(Q50, 5.0, 60.0), "weather_factor is 60.0: a number from 0.05 to 3 is needed"),
        (lambda: credit(Q50, 0.0, 0.6), "height_m is 0.0: a number greater than 0"),
        (lambda: required_ventilation_m3_h(120.0, -1), "bedrooms is -1: a number of at least 0"),
        (lambda: fan_flow_m3_h(100.0, 20.0, balanced=True, exterior_share=1.5), "exterior_share is 1.5: a number from"),
        (lambda: by_divisor(Q50, 300.0, 18.0, 4.0), "storeys is 4.0: 1, 1.5, 2 or 3 is needed"),
        (lambda: by_divisor(Q50, 300.0, 1.0, 1.0), "climate is 1.0: a number from 10 to 35 is needed"),
        (lambda: by_design_pressure(Q50, 300.0, 0.0), "design_pa is 0.0: a number greater than 0"),
        (
            lambda: coefficients_of(LeakSplit(0.7, 0.5), 0.65, 5.0, 1.2, 0.7),
            "split.floor is 0.5: a number from 0 to 0.",
        ),
        (lambda: stack_coefficient(5.0, 1.2), "horizontal_share is 1.2: a number from 0 to 1 is needed"),
        (lambda: model_of("guess"), "model is 'guess': one of basic, enhanced, credit-62.2, "),
    ],
)
def test_what_cannot_be_is_refused_in_one_sentence(call: Callable[[], object], sentence: str) -> None:
    assert refusal(call).startswith(sentence)
