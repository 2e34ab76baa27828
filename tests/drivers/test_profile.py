"""Profiles: what the shipped ones say, and how each mistake in one is answered."""

from __future__ import annotations

import math
import re
import string
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from drivers.clock import VirtualClock
from drivers.device import Gauge, connect
from drivers.errors import ProfileError
from drivers.framing.fields import Over
from drivers.framing.lines import Checksum
from drivers.profile import load_profile, read_profile, shipped_profiles
from tests.drivers.wires import Wire, run

GAUGE = """format = "airseam-profile-1"
id = "try-gauge"
title = "Gauge of the tests"
kind = "gauge"
protocol = "lines"

[link]
baud = 19200
settle_s = 1.5

[identity]
query = "who"
pattern = "I am (?P<serial>[0-9]+)"

[reply]
layout = "columns"
columns = ["p", "-", "t"]
separator = " "
not_a_number = ["---"]

[poll]
query = "read"
rate_hz = 5
timeout_s = 0.2

[[channel]]
name = "p"
quantity = "pressure"
unit = "inH2O"
sign = "minus"
low = -2.0
high = 1.0
resolution = 0.001

[[channel]]
name = "t"
quantity = "temperature"
unit = "degF"
low = -40
high = 212
resolution = 0.1
accuracy = 0.9
"""

DRIVE = """format = "airseam-profile-1"
id = "try-drive"
title = "Drive of the tests"
kind = "drive"
protocol = "scpi"

[link]

[identity]
query = "*IDN?"
pattern = "(?P<serial>.*)"

[drive]
set = "SPEED {speed:.1f};SPEED?"
full = 100
safe = "SPEED 0;SPEED?"
timeout_s = 0.5
communication_timeout_s = 3.0
"""


def changed(text: str, old: str, new: str) -> str:
    """Return the text with one line of it replaced."""
    assert text.count(old) == 1, f"{old!r} has to be there once"
    return text.replace(old, new)


def test_every_shipped_profile_is_read_and_bears_the_name_of_its_file() -> None:
    assert {"line-gauge", "scpi-fan", "scpi-gauge-8", "modbus-pressure", "by-hand"} <= set(shipped_profiles())
    for name in shipped_profiles():
        profile = load_profile(name)
        assert profile.id == name
        assert profile.title


def test_the_line_gauge_streams_named_fields_with_a_checksum() -> None:
    profile = load_profile("line-gauge")
    assert profile.checksum is Checksum.XOR
    assert profile.stream is not None
    assert profile.poll is None
    assert profile.reply is not None
    assert (profile.link.baud, profile.link.data_bits, profile.link.parity, profile.link.stop_bits) == (
        9600,
        8,
        "none",
        1,
    )
    assert profile.identity.query == b"?\r\n"
    assert [(item.name, item.quantity) for item in profile.channels] == [
        ("p1", "pressure"),
        ("p2", "pressure"),
        ("t1", "temperature"),
        ("t2", "temperature"),
    ]
    assert profile.reply.values("p1=OVER p2=103.40 t1=21.04 t2=11.23") == {
        "p1": Over.RANGE,
        "p2": 103.40,
        "t1": 21.04,
        "t2": 11.23,
    }


def test_the_scpi_gauge_has_eight_columns_and_a_command_to_zero() -> None:
    profile = load_profile("scpi-gauge")
    assert profile.poll is not None
    assert profile.poll.query == b"READ?\n"
    assert profile.zeroing is not None
    assert profile.zeroing.command == b"CAL:ZERO\n"
    assert profile.reply is not None
    found = profile.reply.values(
        "-5.01200E+01,9.90000E+37,-9.90000E+37,9.91000E+37,2.10000E+01,3.00000E+00,1.01325E+05,4.50000E+01"
    )
    assert found is not None
    assert found["p1"] == -50.12
    assert found["p2"] == math.inf
    assert found["p3"] == -math.inf
    assert isinstance(found["p4"], float)
    assert math.isnan(found["p4"])
    humidity = profile.channels[-1]
    assert (humidity.low, humidity.high) == (0.0, 1.0), "relative humidity is a fraction inside the program"


def test_the_fan_drive_says_its_speed_its_rest_and_its_directions() -> None:
    drive = load_profile("scpi-fan").drive
    assert drive is not None
    assert drive.set_message(0.452) == b"FAN:SPEED 0.4520;SPEED?\n"
    assert drive.safe == b"FAN:SPEED 0;SPEED?\n"
    assert drive.communication_timeout_s == 2.0
    assert [(name, item.reply) for name, item in drive.directions] == [("depressurize", "OUT"), ("pressurize", "IN")]
    assert drive.start is not None
    assert drive.start.reply == "2.0"


def test_units_sign_and_limits_become_si() -> None:
    pressure, temperature = read_profile(GAUGE, "try.toml").channels
    # 1 inH2O (conventional, 1000 kg/m3) is 249.0889 Pa: NIST SP 811, appendix B, from memory.
    assert pressure.factor == pytest.approx(-249.0889, abs=1e-4)
    assert pressure.low == pytest.approx(-498.1778, abs=1e-3)
    # 32 and 212 degF are 0 and 100 degC by definition.
    assert 32.0 * temperature.factor + temperature.offset == pytest.approx(0.0, abs=1e-12)
    assert temperature.high == pytest.approx(100.0)
    assert temperature.accuracy == pytest.approx(0.5), "a difference of temperatures has no offset"


def test_a_drive_may_count_its_speed_in_percent() -> None:
    drive = read_profile(DRIVE, "try.toml").drive
    assert drive is not None
    assert drive.set_message(0.452) == b"SPEED 45.2;SPEED?\n"
    assert drive.directions == ()


def test_a_profile_may_come_from_a_file(tmp_path: Path) -> None:
    path = tmp_path / "mine.toml"
    path.write_text(GAUGE, "utf-8")
    assert load_profile(str(path)).id == "try-gauge"


def test_a_gauge_of_a_profile_of_ones_own_is_read(clock: VirtualClock) -> None:
    text = changed(GAUGE, "settle_s = 1.5", 'settle_s = 1.5\nterminator = "\\r"')
    wire = Wire(clock, answer=lambda message: b"I am 12\r" if message == b"who\r" else b"-0.2 9.9 32.0\r")
    gauge = connect("mine", read_profile(text, "mine.toml"), wire, clock)
    assert isinstance(gauge, Gauge)
    gauge.start()
    run(clock, 1.6)
    pressure, temperature = gauge.take()[:2]
    assert (pressure.channel, temperature.channel) == ("mine.p", "mine.t")
    assert pressure.value == pytest.approx(49.817782)
    assert temperature.value == pytest.approx(0.0, abs=1e-9)
    gauge.close()
    assert not wire.mistakes


@pytest.mark.parametrize(
    ("old", "new", "key", "allowed"),
    [
        ('format = "airseam-profile-1"', 'format = "other"', "format", "airseam-profile-1"),
        ('kind = "gauge"', 'kind = "pump"', "kind", "gauge, drive"),
        ('protocol = "lines"', 'protocol = "morse"', "protocol", "lines, scpi"),
        ('title = "Gauge of the tests"', "title = 7", "title", "a text in quotes is needed, not 7"),
        ("baud = 19200", "baud = 19200.5", "link.baud", "a whole number at least 50"),
        ("baud = 19200", "baud = true", "link.baud", "not True"),
        ("settle_s = 1.5", "settle_s = -1", "link.settle_s", "at least 0 and at most 60"),
        ("settle_s = 1.5", "settle_s = nan", "link.settle_s", "a number at least 0"),
        ("settle_s = 1.5", 'settle_s = 1\nterminator = "x"', "link.terminator", "one of these is needed"),
        ("settle_s = 1.5", 'settle_s = 1\nparity = "some"', "link.parity", "none, even, odd"),
        ("settle_s = 1.5", "settle_s = 1\ncolour = 3", "link.colour", "unknown; the keys here are: baud"),
        ('query = "who"', 'query = "wer da, Müller"', "identity.query", "printable ASCII"),
        ('query = "who"', 'query = "two\\nlines"', "identity.query", "printable ASCII"),
        ('query = "who"', "", "identity.query", "it is missing"),
        ('pattern = "I am (?P<serial>[0-9]+)"', 'pattern = "I am ([0-9]+"', "identity.pattern", "regular expression"),
        ('pattern = "I am (?P<serial>[0-9]+)"', 'pattern = "I am me"', "identity.pattern", "(?P<serial>...)"),
        ('layout = "columns"', 'layout = "rows"', "reply.layout", "named, columns, pattern"),
        ('columns = ["p", "-", "t"]', 'columns = ["p", "-"]', "reply.columns", "the channel t has to be there"),
        ('columns = ["p", "-", "t"]', 'columns = ["p", "t", "p"]', "reply.columns", "p has to be there exactly once"),
        ('columns = ["p", "-", "t"]', "columns = []", "reply.columns", "a list of texts"),
        ("rate_hz = 5", "rate_hz = 0", "poll.rate_hz", "greater than 0 and at most 1000"),
        ("rate_hz = 5", "rate_hz = inf", "poll.rate_hz", "a number"),
        ("rate_hz = 5", "rate_hz = 5\naveraging_s = 3", "poll.averaging_s", "at least 0 and at most 1"),
        ('protocol = "lines"', 'protocol = "lines"\nchecksum = "md5"', "checksum", "none, xor, xor-star, sum, crc16"),
        ("timeout_s = 0.2", "", "poll.timeout_s", "it is missing"),
        ('unit = "inH2O"', 'unit = "degC"', "channel.unit", "Pa, hPa"),
        ('quantity = "pressure"', 'quantity = "colour"', "channel.quantity", "pressure, temperature"),
        ('sign = "minus"', 'sign = "-"', "channel.sign", "plus, minus"),
        ('sign = "minus"', "scale = 0", "channel.scale", "greater than 0"),
        ("high = 1.0", "high = -2.0", "channel.high", "greater than low (-2)"),
        ("resolution = 0.001", "", "channel.resolution", "it is missing"),
        ("resolution = 0.001", f"resolution = {'9' * 400}", "channel.resolution", "too long to print"),
        ('name = "t"', 'name = "p"', "channel.name", "only once"),
        ("accuracy = 0.9", "accuracy = -0.9", "channel.accuracy", "at least 0"),
        ("[poll]", "[stream]", "stream.timeout_s", "unknown"),
    ],
)
def test_a_mistake_in_a_gauge_is_answered_with_line_key_and_what_is_allowed(
    old: str, new: str, key: str, allowed: str
) -> None:
    text = changed(GAUGE, old, new)
    if key == "stream.timeout_s":
        text = changed(text, 'query = "read"\n', "")
    with pytest.raises(ProfileError, match=re.escape(allowed)) as caught:
        read_profile(text, "mine.toml")
    assert caught.value.key == key
    assert caught.value.file == "mine.toml"
    assert str(caught.value).startswith(f"mine.toml, line {caught.value.line}: {key}: ")
    assert "\n" not in str(caught.value)
    # A key that is there is named with its own line, a missing one with that of its table.
    line = text.splitlines()[(caught.value.line or 0) - 1].strip("[]")
    assert line.startswith((key.rpartition(".")[2], key.partition(".")[0]))


def test_the_line_named_is_that_of_the_right_channel() -> None:
    text = changed(GAUGE, "high = 212", "high = -41")
    with pytest.raises(ProfileError) as caught:
        read_profile(text, "mine.toml")
    assert text.splitlines()[(caught.value.line or 0) - 1] == "high = -41"


@pytest.mark.parametrize(
    ("old", "new", "key", "allowed"),
    [
        ("{speed:.1f}", "{speed}", "drive.set", "exactly one field"),
        ("{speed:.1f}", "{speed.real:.1f}", "drive.set", "exactly one field"),
        ("{speed:.1f}", "50", "drive.set", "exactly one field"),
        ("{speed:.1f}", "{speed:.1f} {speed:.1f}", "drive.set", "exactly one field"),
        ("{speed:.1f}", "{speed:.1f} {0}", "drive.set", "exactly one field"),
        ("full = 100", "full = 0", "drive.full", "greater than 0"),
        ('safe = "SPEED 0;SPEED?"', "", "drive.safe", "it is missing"),
        ("communication_timeout_s = 3.0", "", "drive.communication_timeout_s", "it is missing"),
    ],
)
def test_a_mistake_in_a_drive_is_answered_too(old: str, new: str, key: str, allowed: str) -> None:
    with pytest.raises(ProfileError, match=re.escape(allowed)) as caught:
        read_profile(changed(DRIVE, old, new), "mine.toml")
    assert caught.value.key == key


def test_a_drive_that_turns_has_to_know_both_ways() -> None:
    one_way = DRIVE + '[drive.direction.depressurize]\nmessage = "OUT"\nreply = "OUT"\n'
    with pytest.raises(ProfileError, match=re.escape("[drive.direction.pressurize]")):
        read_profile(one_way, "mine.toml")


def test_a_gauge_without_channels_or_with_two_ways_to_read_is_refused() -> None:
    without = GAUGE[: GAUGE.index("[[channel]]")]
    with pytest.raises(ProfileError, match=re.escape("at least one [[channel]]")):
        read_profile(without, "mine.toml")
    with pytest.raises(ProfileError, match=re.escape("either a table [poll] or a table [stream]")):
        read_profile(changed(GAUGE, "[poll]", "[stream]\nrate_hz = 5\n\n[poll]"), "mine.toml")


def test_what_is_no_toml_is_told_with_its_line() -> None:
    with pytest.raises(ProfileError) as caught:
        read_profile('format = "airseam-profile-1"\nid = \n', "mine.toml")
    assert (caught.value.key, caught.value.line) == ("TOML", 2)


def test_an_unknown_profile_is_answered_with_those_there_are(tmp_path: Path) -> None:
    for name in ("no-such-gauge", str(tmp_path), "with\0zero", ""):
        with pytest.raises(ProfileError, match=", ".join(shipped_profiles())):
            load_profile(name)


def test_binary_and_huge_files_are_refused(tmp_path: Path) -> None:
    binary, huge = tmp_path / "binary.toml", tmp_path / "huge.toml"
    binary.write_bytes(b"\xff\xfe\x00")
    huge.write_bytes(b"#" * 300_000)
    with pytest.raises(ProfileError, match="UTF-8"):
        load_profile(str(binary))
    with pytest.raises(ProfileError, match="at most 200000 bytes"):
        load_profile(str(huge))


lines = st.sampled_from(range(len(GAUGE.splitlines())))
values = st.one_of(
    st.sampled_from(["true", "[]", "{}", "nan", "-inf", "''", "[[1]]", "1979-05-27", "{a = 1}", "9" * 500]),
    st.integers().map(str),
    st.text(string.ascii_letters, max_size=5).map(lambda text: f'"{text}"'),
)


@given(lines, values)
def test_any_value_in_any_place_is_read_or_answered_never_a_crash(number: int, value: str) -> None:
    rows = GAUGE.splitlines()
    name, mark, _ = rows[number].partition(" = ")
    if mark:
        rows[number] = f"{name} = {value}"
    complaint = ""
    try:
        assert read_profile("\n".join(rows), "mine.toml").kind == "gauge"
    except ProfileError as error:
        complaint = str(error)
    assert "\n" not in complaint
