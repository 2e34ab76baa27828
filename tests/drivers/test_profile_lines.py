"""Every key of every shipped profile, spoilt: the sentence names file, line and key, and says what is allowed."""

from __future__ import annotations

import re
from importlib import resources

import pytest

from drivers.errors import ProfileError
from drivers.profile import read_profile, shipped_profiles

TEXTS = {name: (resources.files("drivers.profiles") / f"{name}.toml").read_text("utf-8") for name in shipped_profiles()}
KEY = re.compile(r"(?P<key>[A-Za-z0-9_]+) *= *(?P<value>.+)")
HEADER = re.compile(r"\[\[?(?P<name>[^\]]+)\]\]?")
NONSENSE = '{ nobody = "knows" }'


def keys_of(text: str) -> list[tuple[int, str, str]]:
    """Return line, table and key of everything that a profile says."""
    found, table = [], ""
    for number, row in enumerate(text.splitlines(), start=1):
        header, key = HEADER.match(row), KEY.match(row)
        if header:
            table = header["name"]
        elif key:
            found.append((number, table, key["key"]))
    return found


ALL = [(name, *where) for name, text in TEXTS.items() for where in keys_of(text)]


def with_row(text: str, line: int, row: str) -> str:
    rows = text.splitlines()
    rows[line - 1] = row
    return "\n".join(rows)


def complaint(text: str) -> ProfileError:
    with pytest.raises(ProfileError) as caught:
        read_profile(text, "own.toml")
    assert "\n" not in str(caught.value)
    return caught.value


def test_there_is_something_of_every_protocol_here() -> None:
    said = {(table, key) for _, _, table, key in ALL}
    assert {
        ("modbus", "unit"),
        ("reply.registers", "p1"),
        ("drive", "set"),
        ("stream", "rate_hz"),
        ("", "place"),
    } <= said
    assert len(ALL) > 300


@pytest.mark.parametrize("name", TEXTS)
def test_a_value_of_the_wrong_kind_is_named_with_its_line(name: str) -> None:
    for line, table, key in keys_of(TEXTS[name]):
        error = complaint(with_row(TEXTS[name], line, f"{key} = {NONSENSE}"))
        full = f"{table}.{key}" if table else key
        assert (error.file, error.line, error.key) == ("own.toml", line, full)
        assert str(error).startswith(f"own.toml, line {line}: {full}: ")
        assert "needed" in str(error)


@pytest.mark.parametrize("name", TEXTS)
def test_a_key_that_nobody_knows_is_named_with_its_line_and_those_there_are(name: str) -> None:
    for line, table, key in keys_of(TEXTS[name]):
        row = TEXTS[name].splitlines()[line - 1]
        error = complaint(with_row(TEXTS[name], line, f"{row}\ncolour = 3"))
        assert error.line == line + 1
        assert error.key == (f"{table}.colour" if table else "colour")
        assert key in str(error)


@pytest.mark.parametrize("name", TEXTS)
def test_a_key_that_is_missing_is_named_with_the_line_of_its_table(name: str) -> None:
    """Where leaving it out is allowed the profile is read."""
    complaints = [without(TEXTS[name], where) for where in keys_of(TEXTS[name])]
    assert sum(error is not None for error in complaints) >= 8


def without(text: str, where: tuple[int, str, str]) -> ProfileError | None:
    """Leave a key out and return the complaint, None when the profile does without it."""
    line, table, key = where
    rest = with_row(text, line, "")
    try:
        read_profile(rest, "own.toml")
    except ProfileError as error:
        caught = error
    else:
        return None
    assert key in str(caught)
    if table:
        assert caught.line is not None
        assert rest.splitlines()[caught.line - 1].strip("[]").startswith(table.partition(".")[0])
    return caught


@pytest.mark.parametrize(
    ("rows", "at"),
    [('link = { baud = 9600, parity = "some" }', 0), ('link.baud = 9600\nlink.parity = "some"', 1)],
)
def test_a_table_may_be_written_on_one_line_or_key_by_key(rows: str, at: int) -> None:
    text = TEXTS["line-gauge"]
    start, end = text.index("[link]"), text.index("[identity]")
    error = complaint(text[:start] + rows + "\n" + text[end:])
    assert error.key == "link.parity"
    assert error.line == text[:start].count("\n") + 1 + at


def test_a_channel_in_a_list_has_the_line_of_the_list() -> None:
    text = TEXTS["line-gauge"]
    start = text.index("[link]")
    listed = 'channel = [{ name = "p1", quantity = "colour" }]\n'
    error = complaint(text[:start] + listed + text[start : text.index("[[channel]]")])
    assert error.key == "channel.quantity"
    assert error.line == text[:start].count("\n") + 1
