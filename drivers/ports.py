"""The serial ports of this machine. Only when asked: listing can take seconds, and nothing is opened to look."""

from __future__ import annotations

import sys
from dataclasses import dataclass

from serial.tools import list_ports as pyserial_ports


@dataclass(frozen=True, slots=True)
class PortInfo:
    """One port; USB numbers are empty for what is no USB adapter."""

    name: str
    description: str
    usb_id: str = ""
    usb_serial: str = ""


@dataclass(frozen=True, slots=True)
class PortList:
    """The ports, and a sentence when the list may be incomplete."""

    ports: tuple[PortInfo, ...]
    note: str = ""


def list_ports() -> PortList:
    """Return the ports; never raises, since devices come and go while they are listed."""
    try:
        found = list(pyserial_ports.comports())
    except Exception as error:  # noqa: BLE001 - pyserial lets through whatever the operating system throws meanwhile
        return PortList((), f"The ports could not be listed just now ({type(error).__name__}); try again.")
    ports = []
    for port in sorted(found, key=lambda item: str(item.device)):
        # On macOS every port has two names; the tty one waits for a carrier that no gauge sends.
        if sys.platform == "darwin" and str(port.device).startswith("/dev/tty."):
            continue
        usb_id = f"{port.vid:04X}:{port.pid:04X}" if port.vid is not None and port.pid is not None else ""
        ports.append(PortInfo(str(port.device), str(port.description or ""), usb_id, str(port.serial_number or "")))
    return PortList(tuple(ports))
