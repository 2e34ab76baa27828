"""The battery of this computer, read from what each system offers; nothing has to be installed for it."""

from __future__ import annotations

import ctypes
import re
import subprocess
import sys
from dataclasses import dataclass
from pathlib import Path

LINUX_SUPPLIES = Path("/sys/class/power_supply")
PATIENCE_S = 1.0
_UNKNOWN = 255


@dataclass(frozen=True, slots=True)
class Battery:
    """Charge 0..1, and whether it is being used up."""

    charge: float
    draining: bool


def read_battery() -> Battery | None:
    """Return the battery of this computer; None without one, and where the system does not tell."""
    try:
        if sys.platform == "win32":
            return _windows()
        if sys.platform == "darwin":
            return parse_macos(_ask_macos())
        return read_linux(LINUX_SUPPLIES)
    except (OSError, ValueError, subprocess.SubprocessError):
        return None


def read_linux(folder: Path) -> Battery | None:
    """Return the emptiest battery of the computer itself (not that of a mouse) below a folder like `LINUX_SUPPLIES`."""
    found = []
    for supply in sorted(folder.glob("*")):
        if _text(supply / "type") == "Battery" and _text(supply / "scope") != "Device":
            capacity = _text(supply / "capacity")
            if capacity.isdecimal():
                found.append(Battery(int(capacity) / 100.0, _text(supply / "status") == "Discharging"))
    return min(found, key=lambda item: item.charge, default=None)


def parse_macos(text: str) -> Battery | None:
    """Return the battery that `pmset -g batt` describes."""
    charge = re.search(r"(\d+)%", text)
    if charge is None:
        return None
    return Battery(int(charge[1]) / 100.0, "Battery Power" in text)


def parse_windows(on_line: int, percent: int) -> Battery | None:
    """Return the battery that two fields of SYSTEM_POWER_STATUS describe: 0 and 1 for off and on line, 255 unknown."""
    return None if percent == _UNKNOWN else Battery(percent / 100.0, on_line == 0)


def _ask_macos() -> str:
    command = ["/usr/bin/pmset", "-g", "batt"]
    # A fixed path of the system, no input of anybody.
    done = subprocess.run(command, capture_output=True, text=True, timeout=PATIENCE_S, check=False)  # noqa: S603
    return done.stdout


def _windows() -> Battery | None:
    fields = (ctypes.c_ubyte * 12)()
    kernel = getattr(ctypes, "windll").kernel32  # noqa: B009 - the name is there on Windows only
    return parse_windows(fields[0], fields[2]) if kernel.GetSystemPowerStatus(ctypes.byref(fields)) else None


def _text(path: Path) -> str:
    try:
        return path.read_text("utf-8").strip()
    except OSError:
        return ""
