"""Rig files: what is written reads back, what is wrong is named."""

from __future__ import annotations

from pathlib import Path

import pytest

from acquisition.rig import InstrumentSpec, RigSpec, Role
from acquisition.rigfile import LARGEST_FILE_BYTES, load_rig, read_rig, write_rig
from analysis.errors import InvalidInput
from analysis.records import FlowRange

RIG = RigSpec(
    name='Demo "rig" of our own \\ invention',
    instruments=(
        InstrumentSpec(
            "gauge", "scpi-gauge", "/dev/pts/3", (("p1", Role.ENVELOPE), ("p2", Role.FLOW_ELEMENT)), "SG-0012"
        ),
        InstrumentSpec("fan", "scpi-fan", "socket://localhost:4002"),
    ),
    fan="fan",
    ranges=(FlowRange("middle", 183.0, 0.498, 8.0, 250.0), FlowRange("wide", 500.0, 0.5, 8.0, 250.0)),
    fitted="middle",
    shutter=True,
    simulated=True,
    time_factor=20.0,
)


def test_a_written_rig_reads_back_the_same() -> None:
    assert read_rig(write_rig(RIG)) == RIG


@pytest.mark.parametrize(
    ("old", "new", "names"),
    [
        ('format = "airseam-rig-1"', 'format = "rig-9"', ["format", "rig-9", "airseam-rig-1"]),
        ("simulated = true", "simulated = 1", ["simulated", "1", "true or false"]),
        ("simulated = true", "", ["time_factor", "20", "simulated"]),
        ('fitted = "middle"', 'fitted = "huge"', ["fitted", "huge", "middle, wide"]),
        ('fan = "fan"', 'fan = "drive"', ["fan", "drive", "gauge, fan"]),
        ('"p1" = "envelope-pressure"', '"p1" = "pressure"', ["channels.p1", "pressure", "envelope-pressure"]),
        ('"p1" = "envelope-pressure"', "", ["channels", "envelope-pressure"]),
        ("exponent = 0.498", "exponent = nan", ["range[0].exponent", "nan", "greater than 0"]),
        ("min_pa = 8.0", "min_pa = -8.0", ["range[0].min_pa", "-8", "greater than 0"]),
        ("max_pa = 250.0", "max_pa = 2.0", ["range[0].max_pa", "2", "min_pa"]),
        ('profile = "scpi-gauge"', "profile = 7", ["instrument[0].profile", "7", "text"]),
        ('name = "wide"', 'name = "middle"', ["range.name", "middle", "once"]),
        ('port = "/dev/pts/3"', 'prot = "/dev/pts/3"', ["instrument[0].prot", "port"]),
    ],
)
def test_a_wrong_field_is_named_with_its_value_and_what_is_allowed(old: str, new: str, names: list[str]) -> None:
    text = write_rig(RIG)
    assert old in text
    with pytest.raises(InvalidInput) as caught:
        read_rig(text.replace(old, new, 1))
    for name in names:
        assert name in str(caught.value)
    assert "\n" not in str(caught.value)


def test_a_file_that_is_no_rig_file_is_refused_in_one_sentence(tmp_path: Path) -> None:
    path = tmp_path / "rig.toml"
    contents = {"binary": b"\xff\x00\x81", "empty": b"", "no toml": b"[[[", "huge": b"#" * (LARGEST_FILE_BYTES + 1)}
    for content in contents.values():
        path.write_bytes(content)
        with pytest.raises(InvalidInput):
            load_rig(path)
    with pytest.raises(InvalidInput, match="cannot be read"):
        load_rig(tmp_path / "missing.toml")
