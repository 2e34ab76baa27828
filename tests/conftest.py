"""What every test stands on: no screen, a virtual clock, examples that are the same each time, and nothing left behind.

A test that leaves a thread, an open port, a window or a running timer behind fails. Qt is looked at only where a test
uses it.
"""

from __future__ import annotations

import os

os.environ["QT_QPA_PLATFORM"] = "offscreen"
os.environ["MPLBACKEND"] = "Agg"
os.environ.setdefault("QT_LOGGING_RULES", "qt.qpa.*=false")

import gc
import signal
import threading
from collections.abc import Callable, Iterator
from datetime import UTC, datetime
from pathlib import Path

import pytest
from hypothesis import HealthCheck, settings

from drivers.clock import VirtualClock

settings.register_profile("airseam", deadline=None, derandomize=True, suppress_health_check=[HealthCheck.too_slow])
settings.load_profile("airseam")

if signal.getsignal(signal.SIGINT) is signal.SIG_IGN:
    # Started in the background of a script: programs that the tests start would inherit that Ctrl+C means nothing.
    signal.signal(signal.SIGINT, signal.default_int_handler)

OPEN_FILES = Path("/proc/self/fd")
PORT_PREFIXES = ("/dev/pts/", "/dev/ptmx", "/dev/tty", "socket:")
GRACE_S = 2.0
"""A thread that was told to end may need a moment on a busy machine."""


def pytest_collection_finish() -> None:
    """Set what every module brought aside, so that the collector looks only at what the tests make."""
    gc.collect()
    gc.freeze()


@pytest.fixture
def clock() -> VirtualClock:
    """Return a virtual clock that starts at a fixed date."""
    return VirtualClock(datetime(2026, 5, 4, 9, 0, tzinfo=UTC))


@pytest.fixture(autouse=True)
def nothing_left_running() -> Iterator[None]:
    """Fail a test that leaves a thread or an open serial port, terminal or socket behind."""
    threads, ports = set(threading.enumerate()), _open_ports()
    yield
    left = _after_grace(lambda: {thread.name for thread in threading.enumerate() if thread not in threads})
    assert not left, f"threads left running: {', '.join(sorted(left))}"
    opened = _after_grace(lambda: {f"{name} ({fd})" for fd, name in (_open_ports() - ports)})
    assert not opened, f"ports left open: {', '.join(sorted(opened))}"


@pytest.fixture(autouse=True)
def nothing_left_on_screen(request: pytest.FixtureRequest) -> Iterator[None]:
    """Fail a test that leaves a window or a running timer behind."""
    if "qapp" not in request.fixturenames:
        yield
        return
    request.getfixturevalue("qapp")
    widgets, timers = _widgets(), _timers()
    yield
    widgets, timers = _widgets() - widgets, _timers() - timers
    assert not widgets, f"windows left open: {', '.join(name for _, name in sorted(widgets))}"
    assert not timers, f"timers left running: {', '.join(name for _, name in sorted(timers))}"


def _after_grace(leaks: Callable[[], set[str]]) -> set[str]:
    """Return what is still there after a while; what was only forgotten to the collector does not count."""
    pause = threading.Event()
    for _ in range(round(GRACE_S / 0.02)):
        if not leaks():
            return set()
        gc.collect()
        pause.wait(0.02)
    return leaks()


def _open_ports() -> set[tuple[int, str]]:
    """Return the open terminals and sockets of this process; empty where the system does not tell."""
    if not OPEN_FILES.is_dir():
        return set()
    found = set()
    for link in OPEN_FILES.iterdir():
        try:
            name = str(link.readlink())
        except OSError:
            continue
        if name.startswith(PORT_PREFIXES):
            found.add((int(link.name), name))
    return found


def _widgets() -> set[tuple[int, str]]:
    """Return the top-level widgets, after those that are due to go have gone."""
    from PySide6.QtCore import QCoreApplication, QEvent
    from PySide6.QtWidgets import QApplication

    gc.collect()
    QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete.value)
    return {(id(widget), type(widget).__name__) for widget in QApplication.topLevelWidgets()}


def _timers() -> set[tuple[int, str]]:
    """Return the running timers that Python knows."""
    from PySide6.QtCore import QTimer
    from shiboken6 import isValid

    return {
        (id(item), repr(item))
        for item in gc.get_objects()
        if issubclass(type(item), QTimer) and isValid(item) and item.isActive()
    }
