"""An adapter that is plugged in again under another name is followed; what is odd about ports is said."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest

from drivers.clock import WallClock, seconds
from drivers.device import Gauge, connect
from drivers.errors import PortMissing
from drivers.following import FollowingTransport
from drivers.instrument import LinkState
from drivers.portadvice import access_rule, changes, vanished_advice
from drivers.ports import PortInfo, PortList, missing_advice
from drivers.profile import load_profile
from tests.drivers.terminals import Answer, Terminal

CLOCK = WallClock()
ROW = b"-5.01200E+01,1.03400E+02,9.91E37,9.91E37,2.10400E+01,1.12300E+01,1.01325E+05,4.50000E+01\n"


def answers(serial: bytes) -> Answer:
    def answer(line: bytes) -> bytes | None:
        text = line.strip()
        return b"AIRSEAM DEMO,SCPI-GAUGE,%b,1.0\n" % serial if text == b"*IDN?" else ROW if text == b"READ?" else None

    return answer


class Desk:
    """Terminals with made-up adapters behind them."""

    def __init__(self) -> None:
        """No port yet."""
        self.ports: list[PortInfo] = []

    def list(self) -> PortList:
        """Return those that are there."""
        return PortList(tuple(self.ports))


def until(what: Callable[[], bool], limit_s: float = 8.0) -> bool:
    end_ns = CLOCK.now_ns() + seconds(limit_s)
    while CLOCK.now_ns() < end_ns:
        if what():
            return True
        CLOCK.wait_until(CLOCK.now_ns() + seconds(0.02))
    return False


@pytest.fixture
def desk() -> Desk:
    return Desk()


@pytest.mark.parametrize(
    ("serial", "state"), [(b"SG-0012", LinkState.LINKED), (b"SG-0099", LinkState.WRONG_INSTRUMENT)]
)
def test_a_gauge_is_found_again_at_its_adapter_under_another_name(
    desk: Desk, tmp_path: Path, serial: bytes, state: LinkState
) -> None:
    """Rule A17: the adapter is remembered, not the name of its port."""
    first, second = tmp_path / "USB0", tmp_path / "USB1"
    gauge = connect("g", load_profile("scpi-gauge"), FollowingTransport(str(first), desk.list), CLOCK)
    assert isinstance(gauge, Gauge)
    with Terminal(first, answers(b"SG-0012")) as before:
        desk.ports = [PortInfo(str(first), "", "0001:0002", "A7")]
        gauge.start()
        assert until(lambda: gauge.status().state is LinkState.LINKED)
        desk.ports = [PortInfo(str(tmp_path / "other"), "", "0001:0002", "B9")]
        before.unplug()
        assert until(lambda: gauge.status().state is LinkState.LOST)
        with Terminal(second, answers(serial)):
            desk.ports.append(PortInfo(str(second), "", "0001:0002", "A7"))
            assert until(lambda: gauge.status().state is state), gauge.status()
            gauge.close()


def test_an_adapter_that_cannot_be_told_from_another_is_not_followed(desk: Desk, tmp_path: Path) -> None:
    """Rule A17: of two alike none is taken."""
    name = tmp_path / "USB0"
    transport = FollowingTransport(str(name), desk.list)
    with Terminal(name) as terminal:
        desk.ports = [PortInfo(str(name), "", "0001:0002", "")]
        transport.open()
        transport.close()
        terminal.unplug()
        desk.ports = [PortInfo(str(tmp_path / other), "", "0001:0002", "") for other in ("a", "b")]
        with pytest.raises(PortMissing, match="USB0"):
            transport.open()
        assert transport.url == str(name)


def test_what_came_and_went_is_told() -> None:
    old, new = PortInfo("ttyUSB0", "", "0001:0002", "A7"), PortInfo("ttyUSB1", "", "0001:0002", "A7")
    board = PortInfo("ttyS0", "")
    moved = changes(PortList((old, board)), PortList((board, new)))
    assert (moved.appeared, moved.gone) == ((new,), (old,))
    assert moved.sentence == "The adapter that was ttyUSB0 is now ttyUSB1."
    vanished = changes(PortList((old,)), PortList(()), younger_s=2.0)
    assert vanished.sentence.startswith("ttyUSB0 appeared and vanished again.")
    assert changes(PortList((old,)), PortList(()), younger_s=100.0).sentence == ""
    assert changes(PortList((board,)), PortList((board,))) == changes(PortList(()), PortList(()))


def test_advice_names_a_command_where_there_is_one() -> None:
    port = PortInfo("ttyUSB0", "", "0001:0002")
    assert "`journalctl -k -g brltty`" in vanished_advice(port, "linux")
    assert "cable" in vanished_advice(port, "win32")
    assert "`journalctl -k -n 20`" in missing_advice("linux")
    assert "Device Manager" in missing_advice("win32")
    assert "System Report" in missing_advice("darwin")


def test_the_rule_of_access_is_for_one_adapter() -> None:
    rule = access_rule("12AB:34cd")
    assert rule == 'SUBSYSTEM=="tty", ATTRS{idVendor}=="12ab", ATTRS{idProduct}=="34cd", TAG+="uaccess"'
    for bad in ("", "12AB", "12AB:34CDE", 'x"AB:34CD'):
        with pytest.raises(ValueError, match="USB id is"):
            access_rule(bad)
