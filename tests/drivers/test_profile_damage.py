"""Profiles that were damaged, numbers that lost a byte, and units against the handbook."""

from __future__ import annotations

import math
import re
from pathlib import Path

import pytest
from hypothesis import example, given
from hypothesis import strategies as st

from drivers.errors import ProfileError
from drivers.profile import load_profile, read_profile, shipped_profiles
from drivers.siunits import UNITS

FOLDER = Path(__file__).parents[2] / "drivers" / "profiles"
TEXTS = [(FOLDER / f"{name}.toml").read_text("utf-8") for name in shipped_profiles()]
WHOLE = "-5.01200E+01,1.03400E+02,9.91E37,9.9E37,2.10400E+01,1.12300E+01,1.01325E+05,4.50000E+01"


# --- damaged files ------------------------------------------------------------------------------------------------


@given(st.text(max_size=200))
@example("")
@example("\x00")
@example("[[[")
@example("= 3")
@example("a = " + "[" * 20_000)
@example("a = 1\na = 2")
def test_a_text_that_is_no_profile_is_refused_in_one_line(text: str) -> None:
    with pytest.raises(ProfileError) as caught:
        read_profile(text, "mine.toml")
    assert str(caught.value).startswith("mine.toml")
    assert len(str(caught.value).splitlines()) == 1


@given(st.sampled_from(TEXTS), st.integers(0, 2000), st.integers(0, 30), st.text(max_size=10))
def test_a_damaged_profile_is_read_or_refused_and_nothing_else(text: str, at: int, count: int, put: str) -> None:
    try:
        profile = read_profile(text[:at] + put + text[at + count :], "mine.toml")
    except ProfileError:
        return
    assert profile.kind in ("gauge", "drive")
    assert all(math.isfinite(channel.low) and channel.low < channel.high for channel in profile.channels)


def test_a_byte_order_mark_of_an_editor_is_no_mistake(tmp_path: Path) -> None:
    path = tmp_path / "mine.toml"
    path.write_text(TEXTS[0], "utf-8-sig")
    assert load_profile(str(path)).id == shipped_profiles()[0]


@pytest.mark.parametrize("name", ["", "no-such-profile", "a\0b", "/", "x" * 5000])
def test_an_unknown_name_is_answered_with_the_shipped_ones(name: str) -> None:
    with pytest.raises(ProfileError, match=re.escape(", ".join(shipped_profiles()))):
        load_profile(name)


# --- numbers that lost a byte -------------------------------------------------------------------------------------


@pytest.mark.parametrize("at", range(len(WHOLE)))
def test_of_lost_bytes_only_a_minus_sign_and_a_special_digit_go_unseen(at: int) -> None:
    """What a reply without a checksum can prove: its count of columns and the one form of its numbers.

    Unseen remain a leading minus sign (the watchdog looks for pressures that go the wrong way), and the digit that
    tells "not connected" from "over range".
    """
    reply = load_profile("scpi-gauge").reply
    assert reply is not None
    assert reply.values(WHOLE) is not None
    unseen = at == 0 or (WHOLE[:at].endswith(",9.9") and WHOLE[at] == "1")
    assert (reply.values(WHOLE[:at] + WHOLE[at + 1 :]) is not None) == unseen


# --- units --------------------------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("quantity", "unit", "value", "si", "source"),
    [
        ("pressure", "inH2O", 1.0, 249.0889, "NIST SP 811 (2008) B.8, inch of water, conventional; from memory"),
        ("pressure", "mmH2O", 1.0, 9.80665, "NIST SP 811 (2008) B.8, millimetre of water, conventional; from memory"),
        ("pressure", "mbar", 1.0, 100.0, "1 bar = 100 000 Pa"),
        ("temperature", "degF", 212.0, 100.0, "definition of the degree Fahrenheit"),
        ("temperature", "K", 273.15, 0.0, "definition of the degree Celsius"),
        ("flow", "cfm", 1.0, 3600 * 4.719474e-4, "NIST SP 811 (2008) B.8, cubic foot per minute; from memory"),
        ("flow", "L/s", 1.0, 3.6, "definition of the litre"),
        ("humidity", "percent", 50.0, 0.5, "definition of percent"),
    ],
)
def test_units_agree_with_the_handbook(quantity: str, unit: str, value: float, si: float, source: str) -> None:
    factor, offset = UNITS[quantity][unit]
    assert value * factor + offset == pytest.approx(si, rel=2e-7, abs=1e-9), source
