"""Finding instruments on real pseudo-terminals and network ports, in every protocol."""

from __future__ import annotations

from pathlib import Path

import pytest

import airseam
from drivers.clock import ScaledClock, WallClock
from drivers.finding import NOBODY, Found, find_instruments
from drivers.ports import PortInfo
from drivers.profile import load_profile, shipped_profiles
from drivers.serialport import open_url
from gui.viewmodels.rig_sheet import RigSheetModel
from simulators.houses import load_house
from simulators.rig import SimulatedRig
from simulators.server import serve_pty, serve_tcp
from tests.drivers.terminals import Terminal

PROFILES = [load_profile(name) for name in shipped_profiles()]
SERIALS = {
    "scpi": [("scpi-gauge", "SG-0012"), ("scpi-fan", "SF-0003")],
    "lines": [("line-gauge", "LG-0007"), ("scpi-fan", "SF-0003")],
    "modbus": [("modbus-gauge", "MG-0021"), ("modbus-ec-fan", "MF-0004")],
}


@pytest.mark.parametrize("protocol", list(SERIALS))
def test_who_is_at_a_terminal_is_found_and_goes_on_the_sheet(protocol: str, tmp_path: Path) -> None:
    rig = SimulatedRig(load_house("mill-row"), 1, ScaledClock(5.0), protocol=protocol)
    server = serve_pty(rig, tmp_path)
    heard: list[Found] = []
    try:
        ports = [PortInfo(name, "terminal") for name in server.values()]
        found = find_instruments(ports, PROFILES, open_url, WallClock(), heard.append)
    finally:
        server.close()
    assert [(item.profile, item.serial) for item in found] == SERIALS[protocol]
    assert sorted(item.port.name for item in heard) == sorted(port.name for port in ports)
    sheet = RigSheetModel()
    assert sheet.take_found(found) == 2
    assert [item.port for item in sheet.spec.instruments] == [port.name for port in ports]
    assert sheet.spec.fan == "fan"
    # Plugged in again elsewhere: the same instruments, their ports changed, nothing twice.
    elsewhere = [Found(PortInfo("COM9", ""), item.profile, item.identity, item.serial) for item in found]
    assert sheet.take_found(elsewhere) == 2
    assert [item.port for item in sheet.spec.instruments] == ["COM9", "COM9"]
    sheet.undo()
    assert [item.port for item in sheet.spec.instruments] == [port.name for port in ports]


def test_nobody_a_stranger_and_a_port_that_is_gone_each_have_their_sentence(tmp_path: Path) -> None:
    def strange(_: bytes) -> bytes:
        return b"ACME,THING,7,1\n"

    with Terminal(tmp_path / "silent") as silent, Terminal(tmp_path / "strange", strange) as stranger:
        ports = [PortInfo(name, "") for name in (silent.url, stranger.url, "/dev/ttyNONE")]
        nobody, other, gone = find_instruments(ports, PROFILES[-2:], open_url, WallClock())
    assert nobody.sentence == NOBODY
    assert "ACME,THING,7,1" in other.sentence
    assert "/dev/ttyNONE" in gone.sentence
    assert nobody.profile == other.profile == gone.profile == ""


def test_the_command_line_says_who_is_there(capsys: pytest.CaptureFixture[str]) -> None:
    rig = SimulatedRig(load_house("mill-row"), 1, WallClock())
    server = serve_tcp(rig)
    try:
        arguments = [part for url in server.values() for part in ("--at", url)]
        assert airseam.main(["ports", "--identify", *arguments]) == 0
    finally:
        server.close()
    said = capsys.readouterr().out
    assert "scpi-gauge  AIRSEAM DEMO,SCPI-GAUGE,SG-0012,1.0" in said
    assert "scpi-fan  AIRSEAM DEMO,SCPI-FAN,SF-0003,1.0" in said
