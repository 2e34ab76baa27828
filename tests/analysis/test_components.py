"""The table of component leakages and lists that are added up."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from analysis.components import Component, component_total, flow_of_area_m3_h, read_components, shipped_components
from analysis.errors import InvalidInput
from analysis.methods.quantities import ELA4, leakage_area_cm2
from analysis.powerlaw import flow_at
from analysis.records import PowerLaw

TABLE = shipped_components()
AMOUNTS = st.dictionaries(st.sampled_from([item.id for item in TABLE.components]), st.floats(0.0, 100.0))


@pytest.mark.parametrize("item", TABLE.components, ids=lambda item: item.id)
def test_every_component_lies_within_its_own_range_and_says_where_it_is_from(item: Component) -> None:
    low, high = item.range_cm2
    assert low <= item.typical_cm2 <= high
    assert item.tight_cm2 is None or item.tight_cm2 < item.typical_cm2
    assert item.provenance.source
    assert not item.provenance.verified


def test_a_list_adds_up_with_its_range() -> None:
    total = component_total(TABLE, {"exterior-door": 2, "recessed-light": 10, "sole-plate": 40.0})
    assert total.typical_cm2 == pytest.approx(2 * 21 + 10 * 10 + 40 * 4)
    assert total.least_cm2 == pytest.approx(2 * 12 + 10 * 1.5 + 40 * 0.8)
    assert total.most_cm2 == pytest.approx(2 * 21 + 10 * 21 + 40 * 4)


@given(AMOUNTS, st.floats(0.0, 10.0))
def test_a_list_taken_several_times_leaks_so_many_times_as_much(amounts: dict[str, float], factor: float) -> None:
    one = component_total(TABLE, amounts)
    more = component_total(TABLE, {key: factor * amount for key, amount in amounts.items()})
    assert more.typical_cm2 == pytest.approx(factor * one.typical_cm2)
    assert one.least_cm2 <= one.typical_cm2 <= one.most_cm2


def test_an_empty_list_leaks_nothing() -> None:
    assert component_total(TABLE, {}).most_cm2 == 0.0


@given(st.floats(1.0, 1e4), st.floats(0.5, 1.0))
def test_a_flow_and_the_area_it_stands_for_belong_together(c: float, n: float) -> None:
    line = PowerLaw(math.log(c), n, 0.0, 0.0, 0.0, math.inf, 1.0, 0.0, 1.0, 100.0)
    area = leakage_area_cm2(line, ELA4).value
    assert flow_of_area_m3_h(area, 50.0, n) == pytest.approx(flow_at(line, 50.0).value, rel=1e-9)


def test_an_unknown_component_or_a_negative_amount_is_named() -> None:
    with pytest.raises(InvalidInput, match=r"^amounts.cat-flap is 'cat-flap': one of attic-hatch, .* is needed$"):
        component_total(TABLE, {"cat-flap": 1})
    with pytest.raises(InvalidInput, match=r"^amounts.chimney is -1: a number of at least 0"):
        component_total(TABLE, {"chimney": -1})


@pytest.mark.parametrize(
    ("change", "sentence"),
    [
        (
            ("typical_cm2 = 3.0", "typical_cm2 = 0"),
            "own.toml: component[0].typical_cm2 is 0.0: a number greater than 0",
        ),
        (('per = "m"', 'per = "ft"'), "own.toml: component[0].per is 'ft': one of each, m, m2 is needed"),
        (('group = "walls"', 'group = "attic"'), "own.toml: component[0].group is 'attic': one of ceiling, walls, "),
    ],
)
def test_a_mistake_in_an_own_table_is_named_by_its_place(change: tuple[str, str], sentence: str) -> None:
    text = (
        '[[component]]\nid = "a"\ntitle = "t"\ngroup = "walls"\nper = "m"\ntypical_cm2 = 3.0\n'
        'source = "s"\nconfidence = "low"\nverified = false\n'
    )
    assert read_components(text, "own.toml").component("a").typical_cm2 == 3.0
    with pytest.raises(InvalidInput) as refused:
        read_components(text.replace(*change), "own.toml")
    assert str(refused.value).startswith(sentence)
