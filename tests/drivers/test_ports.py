"""The list of ports, whatever the operating system makes of it."""

from __future__ import annotations

import sys
from collections.abc import Callable

import pytest
from serial.tools import list_ports as pyserial_ports
from serial.tools.list_ports_common import ListPortInfo

from drivers.ports import PortInfo, PortList, list_ports


def found(device: str, **details: object) -> ListPortInfo:
    """Return a port as pyserial lists it."""
    port = ListPortInfo(device, skip_link_detection=True)
    for name, value in details.items():
        setattr(port, name, value)
    return port


def listing(monkeypatch: pytest.MonkeyPatch, comports: Callable[[], list[ListPortInfo]]) -> None:
    monkeypatch.setattr(pyserial_ports, "comports", comports)


def test_a_usb_adapter_is_shown_with_its_numbers(monkeypatch: pytest.MonkeyPatch) -> None:
    adapter = found("/dev/ttyUSB0", description="USB serial", vid=0x0403, pid=0x6001, serial_number="A50285BI")
    listing(monkeypatch, lambda: [adapter, found("/dev/ttyS0")])
    assert list_ports() == PortList(
        (
            PortInfo("/dev/ttyS0", ""),
            PortInfo("/dev/ttyUSB0", "USB serial", usb_id="0403:6001", usb_serial="A50285BI"),
        )
    )


def test_ports_stand_in_the_order_of_their_numbers(monkeypatch: pytest.MonkeyPatch) -> None:
    listing(monkeypatch, lambda: [found(name) for name in ("COM10", "COM9", "COM1", "COM", "/dev/ttyUSB2")])
    assert [port.name for port in list_ports().ports] == ["/dev/ttyUSB2", "COM", "COM1", "COM9", "COM10"]


def test_macos_offers_only_the_names_that_open_at_once(monkeypatch: pytest.MonkeyPatch) -> None:
    """Rule A18: the others wait for a carrier."""
    monkeypatch.setattr(sys, "platform", "darwin")
    listing(monkeypatch, lambda: [found("/dev/tty.usbserial-1"), found("/dev/cu.usbserial-1")])
    assert [port.name for port in list_ports().ports] == ["/dev/cu.usbserial-1"]


@pytest.mark.parametrize("trouble", [OSError(19, "No such device"), TypeError("None"), RuntimeError("gone")])
def test_what_goes_wrong_while_listing_is_a_note_beside_the_last_list(
    monkeypatch: pytest.MonkeyPatch, trouble: Exception
) -> None:
    """Rule A16: whatever the listing raises while devices come and go."""

    def fails() -> list[ListPortInfo]:
        raise trouble

    listing(monkeypatch, fails)
    assert list_ports().ports == ()
    before = PortList((PortInfo("COM3", "adapter"),))
    after = list_ports(before)
    assert after.ports == before.ports
    assert after.note.startswith("The ports could not be listed just now")


def test_the_ports_of_this_machine_can_be_listed() -> None:
    listed = list_ports()
    assert listed.note == ""
    assert all(port.name for port in listed.ports)
