"""The serial ports of this machine. Only when asked: listing can take seconds, and nothing is opened to look."""

from __future__ import annotations

import re
import sys
from dataclasses import dataclass

from serial.tools import list_ports as pyserial_ports
from serial.tools.list_ports_common import ListPortInfo


@dataclass(frozen=True, slots=True)
class PortInfo:
    """One port; USB numbers are empty for what is no USB adapter."""

    name: str
    description: str
    usb_id: str = ""
    usb_serial: str = ""


@dataclass(frozen=True, slots=True)
class PortList:
    """The ports, and a sentence when there is none or the list may be incomplete."""

    ports: tuple[PortInfo, ...]
    note: str = ""


def list_ports(before: PortList | None = None) -> PortList:
    """Return the ports; never raises, since devices come and go while they are listed.

    When listing fails the ports of `before` come back, with a note that says so.
    """
    try:
        found = [_info(port) for port in pyserial_ports.comports() if _is_offered(str(port.device))]
    except Exception as error:  # noqa: BLE001 - pyserial lets through whatever the operating system throws meanwhile
        known = before.ports if before is not None else ()
        return PortList(known, f"The ports could not be listed just now ({type(error).__name__}); try again.")
    note = "" if found else f"There is no serial port on this machine. {missing_advice()}"
    return PortList(tuple(sorted(found, key=_order)), note)


def missing_advice(platform: str = sys.platform) -> str:
    """Return what to do when an adapter is plugged in and no port appears."""
    if platform.startswith("linux"):
        return "If an adapter is plugged in, `journalctl -k -n 20` tells what the system sees; try another cable."
    if platform == "darwin":
        return "If an adapter is plugged in, look under USB in the System Report; its driver may have to be allowed."
    return (
        "If an adapter is plugged in, the Device Manager shows it with a warning when its driver is missing; "
        "Windows Update fetches it, which needs a network."
    )


def _info(port: ListPortInfo) -> PortInfo:
    usb_id = f"{port.vid:04X}:{port.pid:04X}" if port.vid is not None and port.pid is not None else ""
    # pyserial writes "n/a" where it knows nothing.
    description = "" if port.description in (None, "n/a") else str(port.description)
    return PortInfo(str(port.device), description, usb_id, str(port.serial_number or ""))


def _is_offered(device: str) -> bool:
    """Leave out the second name that macOS gives each port: it waits for a carrier that no gauge sends."""
    return not (sys.platform == "darwin" and device.startswith("/dev/tty."))


def _order(port: PortInfo) -> tuple[str, int, str]:
    """Put COM10 behind COM9."""
    digits = re.search(r"\d+$", port.name)
    return (port.name, -1, "") if digits is None else (port.name[: digits.start()], int(digits.group()), port.name)
