"""Keeping the computer awake while a test runs: one small call on each system, taken back when the test ends."""

from __future__ import annotations

import ctypes
import os
import shutil
import subprocess
import sys
from collections.abc import Callable
from typing import Any

from PySide6.QtDBus import QDBusConnection, QDBusInterface, QDBusMessage

Release = Callable[[], None]
ES_CONTINUOUS, ES_SYSTEM_REQUIRED, ES_DISPLAY_REQUIRED = 0x8000_0000, 0x1, 0x2
"""Flags of Windows' SetThreadExecutionState (its reference, from memory)."""
SERVICE, PATH = "org.freedesktop.ScreenSaver", "/org/freedesktop/ScreenSaver"
REASON = "a test is running"
CONNECTION = "airseam-awake"


class KeepAwake:
    """Asks once when a test begins and takes it back once when it ends; a system that cannot is left alone."""

    def __init__(self, ask: Callable[[], Release | None] | None = None) -> None:
        """Ask the system by `ask`, by default as this system wants to be asked."""
        self._ask = ask or asking(sys.platform)
        self._release: Release | None = None
        self._busy = False

    def follow(self, busy: bool) -> None:
        """Stay awake while `busy`."""
        if busy == self._busy:
            return
        self._busy = busy
        if busy:
            self._release = self._ask()
        elif self._release is not None:
            release, self._release = self._release, None
            release()


def asking(platform: str) -> Callable[[], Release | None]:
    """Return how a system is asked; each gives what takes it back, None where it could not be asked."""
    return {"win32": _ask_windows, "darwin": _ask_mac}.get(platform, _ask_desktop)


def _ask_windows() -> Release | None:
    kernel: Any = ctypes.WinDLL("kernel32") if sys.platform == "win32" else None  # type: ignore[attr-defined,unused-ignore]
    if kernel is None or not kernel.SetThreadExecutionState(ES_CONTINUOUS | ES_SYSTEM_REQUIRED | ES_DISPLAY_REQUIRED):
        return None

    def release() -> None:
        kernel.SetThreadExecutionState(ES_CONTINUOUS)

    return release


def _ask_mac() -> Release | None:
    command = shutil.which("caffeinate")
    if command is None:
        return None
    # It ends with this program even where the program dies.
    child = subprocess.Popen([command, "-dims", "-w", str(os.getpid())])  # noqa: S603 - a fixed command of the system

    def release() -> None:
        child.terminate()
        child.wait()

    return release


def _ask_desktop() -> Release | None:
    if not os.environ.get("DBUS_SESSION_BUS_ADDRESS"):
        return None
    bus = QDBusConnection.connectToBus(QDBusConnection.BusType.SessionBus, CONNECTION)
    reply = QDBusInterface(SERVICE, PATH, SERVICE, bus).call("Inhibit", "Airseam", REASON)

    def release() -> None:
        # Whoever leaves the bus no longer keeps anything awake.
        QDBusConnection.disconnectFromBus(CONNECTION)

    if reply.type() is not QDBusMessage.MessageType.ReplyMessage:
        release()
        return None
    return release
