"""Data files: every mistake is named by file, entry and field."""

from __future__ import annotations

import pytest

from analysis.bounds import above_zero, not_negative, within
from analysis.datafile import read_entries, refuse_doubles, take_provenance
from analysis.errors import InvalidInput
from analysis.provenance import Provenance

GOOD = """
[[item]]
id = "a"
source = "from memory"
confidence = "low"
verified = false
"""


def read(text: str) -> list[tuple[str, Provenance, tuple[str, ...]]]:
    """Return what the entries of a file hold."""
    entries = []
    for fields in read_entries(text, "own.toml", "item")["item"]:
        entries.append((fields.text("id"), take_provenance(fields), fields.texts("zones")))
        fields.finish()
    return entries


def refusal(text: str) -> str:
    """Return the sentence that refuses a file."""
    with pytest.raises(InvalidInput) as refused:
        read(text)
    assert "\n" not in str(refused.value)
    return str(refused.value)


def test_entries_are_read_in_order_and_other_tables_are_empty() -> None:
    read = read_entries(GOOD + GOOD.replace('"a"', '"b"'), "own.toml", "item", "other")
    assert [fields.text("id") for fields in read["item"]] == ["a", "b"]
    assert read["other"] == []


def test_what_is_not_toml_is_said_with_its_line() -> None:
    assert refusal("[[item]]\nid = ") == "own.toml is not TOML: Invalid value (at end of document)"


@pytest.mark.parametrize(
    ("text", "sentence"),
    [
        ("[[itme]]", "own.toml: itme is unknown: known tables here are item"),
        ("item = 3", "own.toml: item is no list: a list of tables is needed"),
        (GOOD.replace('id = "a"', ""), "own.toml: item[0].id is missing: a text is needed"),
        (GOOD.replace('"low"', '"sure"'), "own.toml: item[0].confidence is 'sure': one of high, medium, low is needed"),
        (GOOD.replace("false", '"no"'), "own.toml: item[0].verified is 'no': true or false is needed"),
        (GOOD + "zones = [3]", "own.toml: item[0].zones[0] is 3: a text is needed"),
        (GOOD + "zone = 3", "own.toml: item[0].zone is unknown: known fields here are "),
    ],
)
def test_a_mistake_is_named_by_its_place(text: str, sentence: str) -> None:
    assert refusal(text).startswith(sentence)


def test_two_entries_of_one_id_are_refused() -> None:
    with pytest.raises(InvalidInput, match=r"^own.toml: id is 'a' twice: every entry needs an id of its own$"):
        refuse_doubles(["a", "b", "a"], "own.toml")


@pytest.mark.parametrize(
    ("provenance", "words"),
    [
        (Provenance("from memory", "low", verified=False), "from memory, not checked against the document"),
        (Provenance("a trade page", "high", verified=False), "read in a trade page, not checked against the document"),
        (Provenance("ISO 9972:2015, 5.3", "high", verified=True), "checked against the document: ISO 9972:2015, 5.3"),
    ],
)
def test_what_stands_beside_a_figure_says_whether_it_was_checked(provenance: Provenance, words: str) -> None:
    assert provenance.words == words


@pytest.mark.parametrize("value", [0.0, -1.0, float("nan"), float("inf")])
def test_a_number_above_zero_is_asked_for(value: float) -> None:
    with pytest.raises(InvalidInput, match=r"^flow is .*: a number greater than 0"):
        above_zero(value, "flow")


@pytest.mark.parametrize("value", [-1e-9, float("nan"), float("inf")])
def test_a_number_of_at_least_zero_is_asked_for(value: float) -> None:
    with pytest.raises(InvalidInput, match=r"^wind is .*: a number of at least 0"):
        not_negative(value, "wind")


def test_a_number_between_bounds_is_asked_for_with_its_unit() -> None:
    with pytest.raises(InvalidInput, match=r"^angle is 400: a number from 0 to 360 deg is needed$"):
        within(400, 0, 360, "angle", "deg")
    assert within(360, 0, 360, "angle") == 360
