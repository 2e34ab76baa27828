"""The in-memory wire and its faults."""

from __future__ import annotations

import threading

import pytest

from drivers.clock import Clock, ScaledClock, seconds
from drivers.errors import LinkLost, PortBusy, PortMissing
from drivers.transport import Transport
from simulators.houses import load_house
from simulators.instruments.scpi_fan import ScpiFan
from simulators.memory import BUFFER_BYTES, Faults
from simulators.rig import SimulatedRig
from tests.simulators.rigs import virtual_rig

IDENTITY = b"AIRSEAM DEMO,SCPI-FAN,SF-0003,1.0\n"


@pytest.fixture
def rig() -> SimulatedRig:
    return virtual_rig()


def opened(rig: SimulatedRig, url: str = "sim:fan") -> Transport:
    transport = rig.open(url)
    transport.open()
    return transport


def pause(clock: Clock, duration_s: float) -> None:
    clock.wait_until(clock.now_ns() + seconds(duration_s))


def ask(rig: SimulatedRig, transport: Transport, message: bytes = b"*IDN?\n") -> bytes:
    transport.write(message)
    pause(rig.clock, 0.01)
    return transport.read(0.0)


def test_on_virtual_time_a_read_returns_at_once_what_is_there(rig: SimulatedRig) -> None:
    fan = opened(rig)
    fan.write(b"*IDN?\n")
    assert fan.read(5.0) == b""
    pause(rig.clock, 0.005)
    assert fan.read(5.0) == IDENTITY


def test_split_hands_out_single_bytes(rig: SimulatedRig) -> None:
    rig.ports["sim:fan"].faults = Faults(split=1)
    fan = opened(rig)
    assert ask(rig, fan) == IDENTITY[:1]
    assert b"".join(fan.read(0.0) for _ in range(len(IDENTITY))) == IDENTITY[1:]


def test_delay_makes_the_reply_late(rig: SimulatedRig) -> None:
    rig.ports["sim:fan"].faults = Faults(delay_s=0.3)
    fan = opened(rig)
    assert ask(rig, fan) == b""
    pause(rig.clock, 0.31)
    assert fan.read(0.0) == IDENTITY


def test_drop_loses_each_nth_byte_and_corrupt_turns_a_bit(rig: SimulatedRig) -> None:
    fan = opened(rig)
    rig.ports["sim:fan"].faults = Faults(drop_every=4)
    assert ask(rig, fan) == bytes(byte for i, byte in enumerate(IDENTITY, 1) if i % 4)
    rig.ports["sim:fan"].faults = Faults(corrupt_every=4)
    reply = ask(rig, fan)
    assert [i for i, (a, b) in enumerate(zip(reply, IDENTITY, strict=True), 1) if a != b] == [
        4,
        8,
        12,
        16,
        20,
        24,
        28,
        32,
    ]


def test_deaf_and_mute_wires_carry_nothing(rig: SimulatedRig) -> None:
    fan = opened(rig)
    rig.ports["sim:fan"].faults = Faults(deaf=True)
    assert ask(rig, fan, b"FAN:SPEED 0.5;SPEED?\n") == b""
    assert rig.world.speed == 0.0
    rig.ports["sim:fan"].faults = Faults(mute=True)
    assert ask(rig, fan, b"FAN:SPEED 0.5;SPEED?\n") == b""
    assert rig.world.speed == 0.5


def test_unplugging_loses_the_link_and_replugging_lets_it_be_opened_again(rig: SimulatedRig) -> None:
    fan = opened(rig)
    rig.ports["sim:fan"].unplug()
    with pytest.raises(LinkLost, match="sim:fan is gone"):
        fan.read(0.0)
    with pytest.raises(LinkLost):
        fan.write(b"*IDN?\n")
    fan.close()
    fan.close()
    with pytest.raises(PortMissing):
        fan.open()
    rig.ports["sim:fan"].replug()
    fan.open()
    assert ask(rig, fan) == IDENTITY


def test_a_port_is_used_by_one_at_a_time(rig: SimulatedRig) -> None:
    fan = opened(rig)
    with pytest.raises(PortBusy):
        opened(rig)
    fan.close()
    opened(rig).close()
    rig.ports["sim:fan"].occupy(True)
    with pytest.raises(PortBusy):
        opened(rig)


def test_a_closed_transport_is_a_lost_link(rig: SimulatedRig) -> None:
    with pytest.raises(LinkLost, match="is closed"):
        rig.open("sim:fan").read(0.0)


def test_opening_finds_no_old_bytes() -> None:
    rig = virtual_rig("lines")
    gauge = opened(rig, "sim:gauge")
    pause(rig.clock, 1.0)
    gauge.close()
    pause(rig.clock, 1.0)
    gauge.open()
    assert gauge.read(0.0) == b""
    pause(rig.clock, 0.2)
    assert gauge.read(0.0).count(b"\n") == 2


def test_what_nobody_reads_does_not_grow_for_ever() -> None:
    rig = virtual_rig("lines")
    rig.ports["sim:gauge"].faults = Faults(split=1)
    gauge = opened(rig, "sim:gauge")
    for _ in range(100):
        pause(rig.clock, 2.0)
        gauge.read(0.0)
    rig.ports["sim:gauge"].faults = Faults()
    assert len(gauge.read(0.0)) <= BUFFER_BYTES


def test_a_script_acts_when_its_time_comes(rig: SimulatedRig) -> None:
    port = rig.ports["sim:fan"]
    port.at(2.0, port.replug)
    port.at(1.0, port.unplug)
    fan = opened(rig)
    pause(rig.clock, 0.9)
    assert ask(rig, fan) == IDENTITY
    pause(rig.clock, 0.2)
    with pytest.raises(LinkLost):
        fan.read(0.0)
    pause(rig.clock, 1.0)
    fan.close()
    fan.open()
    assert ask(rig, fan) == IDENTITY


def test_another_identity_can_answer_on_the_same_port(rig: SimulatedRig) -> None:
    fan = opened(rig)
    assert isinstance(rig.fan, ScpiFan)
    rig.fan.identity = "AIRSEAM DEMO,SCPI-FAN,SF-0099,1.0"
    assert b"SF-0099" in ask(rig, fan)


def test_on_real_time_a_read_waits_for_the_reply_and_not_longer_than_it_may() -> None:
    clock = ScaledClock(20.0)
    rig = SimulatedRig(load_house("mill-row"), 1, clock)
    fan = opened(rig)
    start_ns = clock.now_ns()
    assert fan.read(0.02) == b""
    assert clock.now_ns() - start_ns >= seconds(0.02 * 20)
    fan.write(b"*IDN?\n")
    assert fan.read(5.0) == IDENTITY


def test_unplugging_wakes_a_reader() -> None:
    rig = SimulatedRig(load_house("mill-row"), 1, ScaledClock(1.0))
    fan = opened(rig)
    lost: list[LinkLost] = []

    def wait() -> None:
        try:
            fan.read(30.0)
        except LinkLost as error:
            lost.append(error)

    reader = threading.Thread(target=wait)
    reader.start()
    rig.ports["sim:fan"].unplug()
    reader.join(timeout=5.0)
    assert not reader.is_alive()
    assert len(lost) == 1
