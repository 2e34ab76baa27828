"""The houses that come with the program."""

from __future__ import annotations

from pathlib import Path

import pytest

from simulators import houses
from simulators.element import range_named
from simulators.filetable import InvalidFile
from simulators.house import Facade, Zone
from simulators.houses import FORMAT, house_names, load_house, read_house


def test_the_demonstration_house_comes_first() -> None:
    assert house_names()[0] == "mill-row"
    assert "gable-barn" in house_names()


@pytest.mark.parametrize("name", house_names())
def test_every_house_is_whole_and_marked_as_invented(name: str) -> None:
    house = load_house(name)
    assert house.id == name
    assert "nvented" in house.note
    assert sum(leak.share for leak in house.leaks) == pytest.approx(1.0)
    assert all(0.5 <= leak.exponent <= 0.85 for leak in house.leaks)
    assert all(0 <= leak.height_m <= house.height_m for leak in house.leaks)
    assert range_named(house.fitted).name == house.fitted


def test_an_unknown_house_is_answered_with_those_there_are() -> None:
    with pytest.raises(ValueError, match=r"'castle'.*mill-row, brook-end, gable-barn"):
        load_house("castle")


def test_a_path_is_no_house_name() -> None:
    with pytest.raises(ValueError, match="name of a simulated house"):
        load_house("../houses/mill-row")


def test_a_house_may_have_a_garage_as_a_zone() -> None:
    text = (Path(houses.__file__).parent / "mill-row.toml").read_text(encoding="utf-8")
    table = """
[[zone]]
name = "garage"
volume_m3 = 60.0
inner_m3_s_pa_n = 0.01
inner_exponent = 0.62
outer_m3_s_pa_n = 0.02
outer_exponent = 0.65
facade = "east"
"""
    assert read_house("x", text).zones == ()
    assert read_house("x", text + table).zones == (Zone("garage", 60.0, 0.01, 0.62, 0.02, 0.65, Facade.EAST),)


def test_a_file_of_another_format_is_refused() -> None:
    with pytest.raises(ValueError, match=f'"{FORMAT}" is needed'):
        read_house("x", 'format = "something-else"')


@pytest.mark.parametrize(
    ("old", "new", "said"),
    [
        ("volume_m3 = 300.0", "volume_m3 = -3.0", r"x\.toml, line 7: building\.volume_m3: .*at least 10.*not -3\.0"),
        ('fitted = "narrow"', 'fitted = "huge"', r"line 30: rig\.fitted: .*wide, middle, narrow.*not 'huge'"),
        ('facade = "east"', 'facade = "up"', r"line 42: leak\.facade: .*north, east.*not 'up'"),
        ("shelter = 0.5", "shelter = 0.5\nrain = 1", r"line 26: climate\.rain: unknown; the keys here are"),
        ("share = 0.12\nexponent = 0.63", "share = 0.22\nexponent = 0.63", r"leak: the shares.*1\.1000: 1 is needed"),
        ("[envelope]", "[envelope", r"x\.toml: this is no TOML.*line 13"),
    ],
)
def test_every_mistake_is_named_with_its_line(old: str, new: str, said: str) -> None:
    text = (Path(houses.__file__).parent / "mill-row.toml").read_text(encoding="utf-8")
    assert old in text
    with pytest.raises(InvalidFile, match=said):
        read_house("x", text.replace(old, new, 1))
