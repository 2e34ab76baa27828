"""The list of limits: what it holds, how it is looked up, and what is said of a file that cannot be read."""

from __future__ import annotations

import re

import pytest

from analysis.effective import effective_quantity
from analysis.errors import InvalidInput
from analysis.limits import Catalogue, PublishedLimit, read_limits, shipped_limits
from analysis.methods import analyse
from analysis.units import Display, Quantity, System, to_display
from tests.analysis.samples import whole_test

SHIPPED = shipped_limits()

OWN = """
[[place]]
id = "XX"
title = "Own place"
zones = ["coast", "hills"]

[[limit]]
id = "own-goal"
title = "Own goal"
authority = "Own council"
edition = "2026"
place = "XX"
zones = ["coast"]
kind = "programme"
quantity = "n50_per_h"
value = 2.0
as_printed = "2 1/h at 50 Pa"
source = "the council's leaflet"
confidence = "high"
verified = true
"""


def refusal(text: str, known: Catalogue | None = None) -> str:
    """Return the sentence that refuses a file."""
    with pytest.raises(InvalidInput) as refused:
        read_limits(text, "own.toml", known)
    assert "\n" not in str(refused.value)
    return str(refused.value)


def ids(limits: tuple[PublishedLimit, ...]) -> set[str]:
    """Return the ids of limits."""
    return {item.id for item in limits}


# what is shipped


@pytest.mark.parametrize("item", SHIPPED.limits, ids=lambda item: item.id)
def test_a_test_can_be_held_against_every_shipped_limit(item: PublishedLimit) -> None:
    verdict = analyse(whole_test(), limits=[item.limit]).verdicts[0]
    assert 0.0 <= verdict.probability <= 1.0
    assert verdict.limit.each_direction == item.each_direction


@pytest.mark.parametrize("item", SHIPPED.limits, ids=lambda item: item.id)
def test_no_shipped_limit_claims_to_have_been_checked(item: PublishedLimit) -> None:
    assert item.provenance.words.endswith("not checked against the document")


def printed_number(item: PublishedLimit) -> float:
    """Return the last number before the unit of what a document says, without the 50 of an ACH50."""
    text = re.sub(r"(NLA10|NLR50|n50|Q4Pa-surf)", "", item.as_printed)
    found = re.search(r"(?<![\w.])\d+(\.\d+)?", text)
    assert found is not None
    return float(found[0])


@pytest.mark.parametrize("item", SHIPPED.limits, ids=lambda item: item.id)
def test_the_value_is_the_printed_one_in_the_unit_of_the_quantity(item: PublishedLimit) -> None:
    """1 cfm/ft2 = 18.288 m3/(h m2) by the international foot; 1 l/(s m2) = 3.6 m3/(h m2)."""
    value = item.value
    if "cfm/ft2" in item.as_printed:
        value = to_display(value, Quantity.FLOW_PER_AREA, Display(System.US))
    elif "l/(s m2)" in item.as_printed and item.quantity != "nlr50_l_s_m2":
        value /= 3.6
    assert value == pytest.approx(printed_number(item), rel=1e-5)


@pytest.mark.parametrize("item", SHIPPED.limits, ids=lambda item: item.id)
def test_the_pressure_of_the_quantity_is_the_printed_one(item: PublishedLimit) -> None:
    quantity = effective_quantity(item.quantity)
    at = re.search(r"at (\d+) Pa|ACH(\d+)|n(\d+) |NLA(\d+)|NLR(\d+)|Q(\d+)Pa", item.as_printed)
    assert at is not None
    assert float(next(group for group in at.groups() if group)) == quantity.pressure_pa


def test_the_german_limits_hold_for_each_direction() -> None:
    """§ 26 GEG: over- and under-pressure must each meet the limit."""
    assert {item.each_direction for item in SHIPPED.limits if item.id.startswith("geg-26")} == {True}


# looking up


def test_a_zone_leaves_the_limits_that_hold_there() -> None:
    cold, hot = (ids(SHIPPED.at("US", zone)) for zone in ("6", "1"))
    assert "iecc-2024-z6-8" in cold
    assert "iecc-2024-z0-2" in hot
    assert cold & hot >= {"iecc-2021-max", "iecc-c-2024", "passive-house"}
    assert not {"iecc-2024-z0-2", "iecc-2024-z3-5"} & cold


def test_the_letter_of_a_climate_zone_does_not_count() -> None:
    assert SHIPPED.at("US", "4C") == SHIPPED.at("US", "4") == SHIPPED.at("US", " 4a")


def test_without_a_zone_all_limits_of_the_place_are_given() -> None:
    assert ids(SHIPPED.at("US")) >= ids(SHIPPED.at("US", "4")) | ids(SHIPPED.at("US", "7"))


def test_a_place_within_another_has_the_limits_of_both_its_own_first() -> None:
    found = SHIPPED.at("US-CA")
    assert found[0].id == "title-24-unit"
    assert ids(found) >= ids(SHIPPED.at("US"))
    assert "title-24-unit" not in ids(SHIPPED.at("US"))


def test_limits_of_no_place_hold_everywhere() -> None:
    assert all({"passive-house", "enerphit"} <= ids(SHIPPED.at(place.id)) for place in SHIPPED.places)


def test_an_unknown_place_zone_or_limit_is_refused_with_those_there_are() -> None:
    with pytest.raises(InvalidInput, match=r"^place is 'Mars': one of any, CA, DE, .* is needed$"):
        SHIPPED.at("Mars")
    with pytest.raises(InvalidInput, match=r"^zone is '9': one of 0, 1, 2, 3, 4, 5, 6, 7, 8 is needed$"):
        SHIPPED.at("US", "9")
    with pytest.raises(InvalidInput, match=r"^zone is '1': Germany has no zones here$"):
        SHIPPED.at("DE", "1")
    with pytest.raises(InvalidInput, match=r"^limit is 'none': one of passive-house, "):
        SHIPPED.limit("none")


# own files


def test_an_own_file_is_joined_to_the_shipped_ones() -> None:
    both = read_limits(OWN, "own.toml", SHIPPED)
    own = both.limit("own-goal")
    assert own.provenance.words == "checked against the document: the council's leaflet"
    assert ids(both.at("XX", "coast")) == {"own-goal", "passive-house", "enerphit"}
    assert ids(both.at("XX", "hills")) == {"passive-house", "enerphit"}
    assert len(both.limits) == len(SHIPPED.limits) + 1


def test_an_own_file_may_add_to_a_shipped_place() -> None:
    text = OWN[OWN.index("[[limit]]") :].replace('"XX"', '"US"').replace('["coast"]', '["5"]')
    assert "own-goal" in ids(read_limits(text, "own.toml", SHIPPED).at("US", "5A"))


@pytest.mark.parametrize(
    ("old", "new", "sentence"),
    [
        ("value = 2.0", "value = -2.0", "own.toml: limit[0].value is -2.0: a number greater than 0 (and below 1e9)"),
        ("value = 2.0", 'value = "2"', "own.toml: limit[0].value is '2': a number is needed"),
        ("value = 2.0", "value = nan", "own.toml: limit[0].value is nan: a finite number is needed"),
        ("value = 2.0\n", "", "own.toml: limit[0].value is missing: a number is needed"),
        ('"n50_per_h"', '"n75"', "own.toml: limit[0].quantity is 'n75': one of q50_m3_h, "),
        ('"programme"', '"law"', "own.toml: limit[0].kind is 'law': one of code, programme, recommendation is needed"),
        ('place = "XX"', 'place = "YY"', "own.toml: place of own-goal is 'YY': one of XX is needed"),
        ('["coast"]', '["sea"]', "own.toml: zones of own-goal is 'sea': one of coast, hills is needed"),
        ('title = "Own place"', 'title = "x"\nwithin = "Q"', "own.toml: within of XX is 'Q': one of XX is needed"),
        ("verified = true", "verified = 1", "own.toml: limit[0].verified is 1: true or false is needed"),
        ("edition", "editon", "own.toml: limit[0].edition is missing: a text is needed"),
        (
            "verified = true",
            "verified = true\nyear = 3",
            "own.toml: limit[0].year is unknown: known fields here are id,",
        ),
    ],
)
def test_a_mistake_in_an_own_file_is_named_by_its_place(old: str, new: str, sentence: str) -> None:
    assert refusal(OWN.replace(old, new)).startswith(sentence)


def test_ids_are_given_once() -> None:
    limit = OWN[OWN.index("[[limit]]") :]
    assert refusal(OWN + limit) == "own.toml: id is 'own-goal' twice: every entry needs an id of its own"
    taken = OWN.replace("own-goal", "passive-house")
    assert refusal(taken, SHIPPED) == "own.toml: id is 'passive-house' twice: every entry needs an id of its own"


def test_a_place_is_not_redefined() -> None:
    sentence = refusal(OWN.replace('"XX"', '"DE"'), SHIPPED)
    assert sentence == "own.toml: place is 'DE': it is known already with another title or zones"
