"""What happened to the ports between two lists of them, and what to do about it, in sentences. Pure."""

from __future__ import annotations

import re
import sys
from dataclasses import dataclass

from drivers.ports import PortInfo, PortList

SOON_S = 15.0
"""A port that goes so soon after it came was taken by something, or has a bad cable."""


@dataclass(frozen=True, slots=True)
class PortChanges:
    """Ports that came and went, and a sentence about what is odd, empty when nothing is."""

    appeared: tuple[PortInfo, ...]
    gone: tuple[PortInfo, ...]
    sentence: str = ""


def changes(before: PortList, now: PortList, *, younger_s: float | None = None) -> PortChanges:
    """Return what changed; `younger_s`: how long ago the ports that are now gone had come, if that is known."""
    earlier, later = ({port.name: port for port in found.ports} for found in (before, now))
    appeared = tuple(port for name, port in later.items() if name not in earlier)
    gone = tuple(port for name, port in earlier.items() if name not in later)
    moved = [(old, new) for old in gone for new in appeared if old.usb_id and _key(old) == _key(new)]
    sentence = ""
    if len(moved) == 1:
        old, new = moved[0]
        sentence = f"The adapter that was {old.name} is now {new.name}."
    elif gone and younger_s is not None and younger_s < SOON_S:
        sentence = f"{gone[0].name} appeared and vanished again. {vanished_advice(gone[0])}"
    return PortChanges(appeared, gone, sentence)


def vanished_advice(port: PortInfo, platform: str = sys.platform) -> str:
    """Return what may have taken a port away, with the command that shows it."""
    if not platform.startswith("linux"):
        return "Try another cable and another socket, without a hub."
    known = f" for {port.usb_id}" if port.usb_id else ""
    return (
        f"On some systems the service for Braille displays takes the adapter{known}: "
        "`journalctl -k -g brltty` shows it. "
        "Whoever looks after this computer can except the adapter there; people who read Braille need the service. "
        "Else try another cable."
    )


def access_rule(usb_id: str) -> str:
    """Return the line of a udev rule that gives whoever sits at the computer the adapter VVVV:PPPP, on Linux.

    It belongs into a file sorted before 73, such as /etc/udev/rules.d/70-airseam.rules. Raises `ValueError`.
    """
    if not re.fullmatch(r"[0-9A-Fa-f]{4}:[0-9A-Fa-f]{4}", usb_id):
        raise ValueError(f"USB id is {usb_id!r}: four and four hexadecimal digits such as 12AB:34CD are needed")
    vendor, product = usb_id.lower().split(":")
    return f'SUBSYSTEM=="tty", ATTRS{{idVendor}}=="{vendor}", ATTRS{{idProduct}}=="{product}", TAG+="uaccess"'


def _key(port: PortInfo) -> tuple[str, str]:
    return port.usb_id, port.usb_serial
