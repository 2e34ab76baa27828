"""Teaching: three unknown formats become profiles that read them; what cannot be taught says why."""

from __future__ import annotations

import math
from datetime import UTC, datetime
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from drivers.clock import VirtualClock
from drivers.device import Gauge, connect
from drivers.errors import ProfileError
from drivers.framing.lines import Checksum
from drivers.framing.scpi import decimal
from drivers.instrument import LinkState
from drivers.profile import load_profile
from drivers.spec import LinkSettings
from drivers.teaching.channels import Meaning, save_profile
from drivers.teaching.lesson import Lesson, number_at, numbers_in, preview, teach
from drivers.teaching.rawstream import look_at
from simulators.houses import load_house
from simulators.rig import SimulatedRig
from tests.drivers.wires import Wire, run

START = datetime(2026, 5, 4, 9, 0, tzinfo=UTC)


def place(line: str, text: str) -> int:
    return line.index(text)


def line_gauge_bytes(seconds: float) -> bytes:
    clock = VirtualClock(START)
    transport = SimulatedRig(load_house("mill-row"), 1, clock, protocol="lines").open("sim:gauge")
    transport.open()
    data = bytearray()
    for _ in range(round(seconds * 20)):
        run(clock, 0.05)
        data += transport.read(0.0)
    transport.close()
    return bytes(data)


def test_the_line_gauge_is_taught_back_from_its_raw_stream(tmp_path: Path) -> None:
    seen = look_at(line_gauge_bytes(5.0), 5.0)
    assert seen.checksum is Checksum.XOR
    assert seen.terminator == "\r\n"
    assert seen.rate_hz == pytest.approx(10.0, rel=0.1)
    assert seen.regularity > 0.97
    sample = seen.lines[0]
    spans = numbers_in(sample)
    assert len(spans) == 4, "the digits of p1, p2, t1, t2 are names"
    meanings = [
        Meaning("p1"),
        Meaning("p2"),
        Meaning("t1", "temperature", "degC"),
        Meaning("t2", "temperature", "degC"),
    ]
    picks = tuple((span.start, meaning) for span, meaning in zip(spans, meanings, strict=True))
    link = LinkSettings(terminator=seen.terminator)
    taught = teach(Lesson("my-gauge", "My gauge", sample, picks, seen.lines, link, seen.checksum, rate_hz=10.0))
    assert taught.read == taught.of == len(seen.lines)
    shipped = load_profile("line-gauge")
    assert preview(taught.profile, seen.lines) == preview(shipped, seen.lines)
    assert [channel.resolution for channel in taught.profile.channels] == [0.01] * 4
    path = save_profile(taught.text, tmp_path)
    assert preview(load_profile(str(path)), seen.lines) == preview(shipped, seen.lines)
    with pytest.raises(ProfileError, match="there already"):
        save_profile(taught.text, tmp_path)


def test_a_taught_profile_reads_the_gauge_over_a_link(tmp_path: Path) -> None:
    seen = look_at(line_gauge_bytes(2.0))
    sample = seen.lines[0]
    picks = tuple((span.start, Meaning(name)) for span, name in zip(numbers_in(sample), ("a", "b"), strict=False))
    lesson = Lesson("two", "Two of four", sample, picks, seen.lines, LinkSettings(), seen.checksum)
    clock = VirtualClock(START)
    rig = SimulatedRig(load_house("mill-row"), 1, clock, protocol="lines")
    gauge = connect("g", teach(lesson).profile, rig.open("sim:gauge"), clock)
    assert isinstance(gauge, Gauge)
    gauge.start()
    run(clock, 3.0)
    readings = gauge.take()
    assert gauge.status().state is LinkState.LINKED
    assert gauge.status().bad_frames == 0
    assert len([item for item in readings if item.channel == "g.a"]) >= 20
    assert {item.channel for item in readings} == {"g.a", "g.b"}
    gauge.close()


def test_a_padded_line_with_words_for_over_range_is_taught() -> None:
    lines = ("CH A =   -12.3 Pa  OK", "CH A =     3.4 Pa  OK", "CH A =    OVER Pa  OK", "CH A =     --- Pa  OK")
    lesson = Lesson("padded", "Padded", lines[0], ((place(lines[0], "12.3"), Meaning("p")),), lines)
    taught = teach(lesson)
    assert taught.sentence == "All 4 lines are read."
    values = [item["p"] for item in preview(taught.profile, lines)]
    assert values[:2] == [-12.3, 3.4]
    assert math.isinf(values[2])
    assert math.isnan(values[3])
    assert preview(taught.profile, ["CH A =   -12.3 Pa", "CH B =   -12.3 Pa  OK"]) == []


def test_columns_with_tabs_time_and_changing_words_are_taught_in_other_units() -> None:
    lines = tuple(
        f"09:00:{n:02d}\t{word}\t{0.1 * n:+.3f}\t{20 + n}"
        for n, word in enumerate(["low", "high", "low", "steady", "low"])
    )
    data = ("half\n" + "\n".join(lines) + "\n09").encode()
    seen = look_at(data)
    sample = seen.lines[0]
    meaning = Meaning("head", "pressure", "inH2O", sign="minus")
    taught = teach(Lesson("cols", "Columns", sample, ((place(sample, "+0.000"), meaning),), seen.lines))
    assert taught.read == 5
    heads = [item["head"] for item in preview(taught.profile, seen.lines)]
    # 1 inH2O conventional is 249.08891 Pa (NIST SP 811, appendix B).
    assert heads[1] == pytest.approx(-0.1 * 249.08891, abs=1e-4)
    assert taught.profile.channels[0].resolution == pytest.approx(0.001 * 249.08891, rel=1e-6)


def test_a_gauge_that_has_to_be_asked_is_taught_and_read() -> None:
    sample = "M 12.50;21.3"
    picks = ((place(sample, "12.50"), Meaning("p")), (place(sample, "21.3"), Meaning("t", "temperature", "degC")))
    lesson = Lesson("asked", "Asked", sample, picks, link=LinkSettings(terminator="\r"), poll="M?", zero="Z")
    taught = teach(lesson)
    clock = VirtualClock(START)
    wire = Wire(clock, answer=lambda sent: b"M -7.25;20.1\r" if sent == b"M?\r" else None)
    gauge = connect("g", taught.profile, wire, clock)
    assert isinstance(gauge, Gauge)
    gauge.start()
    run(clock, 1.0)
    readings = gauge.take()
    assert {(item.channel, item.value) for item in readings} == {("g.p", -7.25), ("g.t", 20.1)}
    assert gauge.zero()
    run(clock, 0.5)
    assert wire.sent(b"Z\r")
    gauge.close()


def test_what_cannot_be_taught_says_why() -> None:
    line = "p1=1.5 x"
    with pytest.raises(ProfileError, match="no number at place 0"):
        teach(Lesson("a", "A", line, ((0, Meaning("p")),)))
    with pytest.raises(ProfileError, match="point at one number"):
        teach(Lesson("a", "A", line, ()))
    with pytest.raises(ProfileError, match=r"1\.5 is p already"):
        teach(Lesson("a", "A", line, ((3, Meaning("p")), (4, Meaning("q")))))
    with pytest.raises(ProfileError, match="letters, digits and _"):
        teach(Lesson("a", "A", line, ((3, Meaning("p 1")),)))
    with pytest.raises(ProfileError, match=r"a\.toml, line \d+: channel\.unit: one of these is needed: Pa"):
        teach(Lesson("a", "A", line, ((3, Meaning("p", unit="psi")),)))
    with pytest.raises(ProfileError, match="letters, digits, - and _"):
        save_profile(teach(Lesson("../a", "A", line, ((3, Meaning("p")),))).text, Path("nowhere"))


def test_a_click_anywhere_in_a_number_means_it() -> None:
    line = "p1=-50.12 p2=1.034E+02"
    assert [span.text for span in numbers_in(line)] == ["-50.12", "1.034E+02"]
    assert {number_at(line, at) for at in range(3, 9)} == {numbers_in(line)[0]}
    assert number_at(line, 1) is None
    assert number_at(line, 9) is None
    assert numbers_in(line)[1].step == pytest.approx(0.1)


@given(st.text(st.characters(min_codepoint=32, max_codepoint=126), max_size=60), st.data())
def test_every_printable_line_with_a_number_can_be_taught_and_reads_itself(line: str, data: st.DataObject) -> None:
    spans = numbers_in(line)
    if not spans:
        return
    span = data.draw(st.sampled_from(spans))
    taught = teach(Lesson("any", "Any", line, ((span.start, Meaning("v", low=-1e99, high=1e99)),)))
    (values,) = preview(taught.profile, [line])
    assert values["v"] == decimal(span.text)
