"""Teaching a Modbus instrument by scanning its registers."""

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
from drivers.framing.modbus import Bus, Wire, Words
from drivers.profile import load_profile
from drivers.spec import LinkSettings
from drivers.teaching.channels import Meaning, save_profile
from drivers.teaching.registers import Candidate, RegisterLesson, RegisterScan, candidates, teach_registers
from simulators.houses import load_house
from simulators.rig import SimulatedRig
from tests.drivers.wires import Wire as TestWire
from tests.drivers.wires import run

RTU = Bus(Wire.RTU, 1)
LINK = LinkSettings(baud=19_200, parity="even")


def virtual() -> VirtualClock:
    return VirtualClock(datetime(2026, 5, 4, 9, 0, tzinfo=UTC))


def rig_on(clock: VirtualClock) -> SimulatedRig:
    return SimulatedRig(load_house("mill-row"), 1, clock, protocol="modbus")


def test_the_modbus_gauge_is_taught_back_from_a_scan_and_what_its_display_shows(tmp_path: Path) -> None:
    clock = virtual()
    rig = rig_on(clock)
    scan = RegisterScan(rig.open("sim:gauge"), clock, RTU, LINK, count=32)
    scan.start()
    run(clock, 30.0)
    scan.close()
    seen = scan.look()
    assert seen.done
    assert seen.share == 1.0
    assert sorted(seen.registers["input"]) == list(range(10))
    assert "10 input registers" in seen.sentence
    shown = {name: rig.world.reading(name) for name in ("p1", "t1", "b1")}
    picks = []
    for name, quantity, unit, digits in (("t1", "temperature", "degC", 1), ("b1", "pressure", "Pa", -1)):
        text = f"{shown[name]:.{max(digits, 0)}f}"
        first, *_ = candidates(seen.registers["input"], "input", text)
        low, high = (None, None) if name == "t1" else (50_000.0, 120_000.0)
        picks.append((first, Meaning(name, quantity, unit, low=low, high=high)))
    assert [(pick.register, pick.words, pick.scale) for pick, _ in picks] == [
        (4, Words.FLOAT32, 1.0),
        (8, Words.FLOAT32, 1.0),
    ]
    text, profile = teach_registers(RegisterLesson("mine", "Mine", RTU, tuple(picks), LINK))
    assert 'query = "read input 4 6"' in text
    gauge = connect("g", load_profile(str(save_profile(text, tmp_path))), rig.open("sim:gauge"), clock)
    assert isinstance(gauge, Gauge)
    gauge.start()
    run(clock, 2.0)
    newest = {item.channel: item.value for item in gauge.take()}
    assert newest["g.t1"] == pytest.approx(shown["t1"], abs=1.0)
    assert newest["g.b1"] == pytest.approx(shown["b1"], abs=100.0)
    assert len(profile.channels) == 2
    gauge.close()


def test_a_scaled_whole_number_is_found_by_what_is_shown() -> None:
    registers = {0: 7, 1: 65_536 - 503, 2: 213, 3: 0}
    first, *_ = candidates(registers, "holding", "-50.3")
    assert (first.register, first.words, first.scale) == (1, Words.INT16, 0.1)
    assert first.value == pytest.approx(-50.3)
    comma, *_ = candidates(registers, "holding", "21,3")
    assert comma.register == 2
    assert candidates(registers, "holding", "77.7") == ()


def test_low_words_first_are_found() -> None:
    # 1.0 as an IEEE 754 single is 3F80 0000.
    first, *_ = candidates({4: 0x0000, 5: 0x3F80}, "input", "1.0")
    assert (first.register, first.words, first.low_first, first.value) == (4, Words.FLOAT32, True, 1.0)


def test_without_a_number_on_a_display_plausible_ones_are_offered() -> None:
    offered = candidates({0: 0x4148, 1: 0x0000, 2: 0}, "input")
    assert any(item.words is Words.FLOAT32 and item.value == 12.5 for item in offered)
    assert all(1e-4 <= abs(item.value) <= 1e6 for item in offered)


def test_nobody_on_the_bus_has_its_sentence() -> None:
    clock = virtual()
    scan = RegisterScan(TestWire(clock, answer=lambda _: None), clock, Bus(Wire.RTU, 9), LINK)
    scan.start()
    run(clock, 5.0)
    assert scan.look().done
    assert "Nobody answers on test:wire as unit 9" in scan.look().sentence
    scan.close()


def test_what_cannot_be_taught_says_why() -> None:
    one = Candidate("input", 0, Words.FLOAT32, False, 1.0, 1.0)
    far = Candidate("input", 300, Words.INT16, False, 1.0, 1.0)
    turned = Candidate("input", 2, Words.FLOAT32, True, 1.0, 1.0)
    held = Candidate("holding", 2, Words.INT16, False, 1.0, 1.0)
    for picks, said in (
        ((), "point at one register"),
        ((one, far), "at most 125 registers"),
        ((one, turned), "in one order"),
        ((one, held), "all holding registers"),
    ):
        named = tuple((pick, Meaning(f"c{n}")) for n, pick in enumerate(picks))
        with pytest.raises(ProfileError, match=said):
            teach_registers(RegisterLesson("a", "A", RTU, named))


words = st.dictionaries(st.integers(0, 50), st.integers(0, 0xFFFF), max_size=12)


@given(words, st.sampled_from(["", "0", "12.5", "x"]))
def test_any_registers_have_finite_candidates(registers: dict[int, int], shown: str) -> None:
    for item in candidates(registers, "input", shown):
        assert math.isfinite(item.value)
