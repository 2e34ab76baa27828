"""The page about profiles is true: its example is one, and every key that the reader knows is on it and no other."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

import drivers
from drivers.framing.modbus import Words
from drivers.profile import load_profile, read_profile, shipped_profiles
from drivers.profiletable import Table
from drivers.siunits import UNITS
from drivers.spec import Upkeep

PAGE = (Path(drivers.__file__).parent / "PROFILES.md").read_text("utf-8")
KEYS_IN_ROWS = re.compile(r"^\| ((?:`[a-z_]+`(?:, )?)+) \|", re.MULTILINE)
NAMED_OTHERWISE = {"message", "link", "modbus", "identity", "poll", "stream", "reply", "channel", "zero", "drive"}


def documented() -> set[str]:
    return {key for row in KEYS_IN_ROWS.findall(PAGE) for key in re.findall(r"`([a-z_]+)`", row)} - {"key"}


def example() -> str:
    (text,) = re.findall(r"```toml\n(.*?)```", PAGE, re.DOTALL)
    return str(text)


def test_the_example_is_a_profile() -> None:
    profile = read_profile(example(), "example")
    assert profile.reply is not None
    assert profile.reply.values("dp  -12.5 Pa") == {"p1": -12.5}
    assert profile.identity.pattern.fullmatch("dp  -12.5 Pa")


def test_every_key_that_the_reader_asks_for_is_on_the_page(monkeypatch: pytest.MonkeyPatch) -> None:
    asked: set[str] = set()
    finish = Table.finish

    def noted(table: Table) -> None:
        # The names of channels are keys of [reply.registers], directions are tables of their own.
        if table._header not in ("reply.registers", "drive.direction"):
            asked.update(table._asked)
        finish(table)

    monkeypatch.setattr(Table, "finish", noted)
    for name in shipped_profiles():
        load_profile(name)
    upkeep = '[start]\nmessages = ["GO"]\n[keep_alive]\nmessage = "ON"\nevery_s = 2.0\n'
    profile = read_profile(example().replace("[stream]", upkeep + "[stream]"), "example")
    assert profile.upkeep == Upkeep((b"GO\n",), b"ON\n", 2.0)
    tables = {"start", "keep_alive", "direction", "registers"} | NAMED_OTHERWISE
    assert asked - tables <= documented()
    assert documented() <= asked


def test_units_quantities_and_types_are_on_the_page() -> None:
    for quantity, units in UNITS.items():
        assert f"`{quantity}`" in PAGE
        for unit in units:
            assert f"`{unit}`" in PAGE
    for words in Words:
        assert f"`{words}`" in PAGE
