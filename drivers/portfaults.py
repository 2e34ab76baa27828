"""Why a port does not open or does not go on: everything that pyserial and the system throw, said in our errors.

After an adapter is pulled out, pyserial's calls raise `SerialException`, bare `OSError`, `termios.error` or, when the
port was closed meanwhile, `TypeError`; each of them means that the link is lost.
"""

from __future__ import annotations

import errno
import os
import queue
import stat
import sys
from pathlib import Path
from urllib.parse import urlsplit

import serial

from drivers.errors import LinkLost, PortBusy, PortDenied, PortMissing

FAILURES: tuple[type[BaseException], ...] = (
    serial.SerialException,
    OSError,
    TypeError,
    ValueError,
    AttributeError,
    KeyError,
    NotImplementedError,
)
"""All that a call on a port may raise when the port is in trouble, or is of a kind that cannot do what is asked."""
BLOCKED = (serial.SerialTimeoutException, queue.Full)
"""What a write raises when the bytes are not taken."""
if sys.platform != "win32":
    import termios

    FAILURES = (*FAILURES, termios.error)

DENIED = (errno.EACCES, errno.EPERM)
BUSY = (errno.EBUSY, errno.EAGAIN, errno.EWOULDBLOCK)
MISSING = (errno.ENOENT, errno.ENXIO, errno.ENODEV, errno.ENOTDIR, errno.EIO)
NETWORK_SCHEMES = ("socket", "rfc2217")
NO_PORT = (errno.ENOTTY, errno.EISDIR, errno.EINVAL)


def is_address(url: str) -> bool:
    """Tell whether an address of a network port names host and port; other addresses are the system's to judge."""
    try:
        parts = urlsplit(url)
        return parts.scheme.lower() not in NETWORK_SCHEMES or bool(parts.hostname and parts.port)
    except ValueError:
        return False


def refusal(url: str, error: BaseException) -> LinkLost:
    """Return the error that says why a port does not open."""
    number, text = error_number(error), str(error)
    if "PermissionError" in text:
        # Windows says the same whether another program holds the port or has only just let it go.
        return _busy(url)
    if number in DENIED:
        return PortDenied(f"{url} may not be opened by this user{_advice(url)}.")
    if number in BUSY or "exclusively lock" in text:
        return _busy(url)
    if number in MISSING or "FileNotFoundError" in text:
        return PortMissing(f"{url} is not there: adapter unplugged, or another name.")
    if number in NO_PORT or "Could not configure port" in text:
        return PortMissing(f"{url} is no serial port.")
    if isinstance(error, ValueError | KeyError) or not is_address(url):
        return PortMissing(f"{url} is no port address: a name such as COM3 or /dev/ttyUSB0, or socket://HOST:PORT.")
    if "Could not open port" in text:
        return PortMissing(f"{url} does not answer: nothing listens there, or the address is wrong.")
    return LinkLost(f"{url} does not open{reason(error)}.")


def reason(error: BaseException) -> str:
    """Return the system's own short words for an error in brackets, nothing when it has none."""
    number = error_number(error)
    return "" if number is None else f" ({os.strerror(number)})"


def error_number(error: BaseException) -> int | None:
    """Return the system's number of an error, where it has one."""
    candidates = (getattr(error, "errno", None), *error.args[:1])
    return next((item for item in candidates if isinstance(item, int)), None)


def _busy(url: str) -> PortBusy:
    return PortBusy(f"{url} is in use by another program, or was only just released.")


def _advice(url: str) -> str:
    """Name the group that may open a device node, and the command that joins it."""
    if sys.platform == "win32":
        return ""
    import grp

    try:
        status = Path(url).stat()
        group = grp.getgrgid(status.st_gid).gr_name
    except (OSError, KeyError, ValueError):
        return ""
    if status.st_gid == 0 or not status.st_mode & stat.S_IWGRP:
        return f": only its owner may (group {group}); whoever looks after this computer has to allow it"
    user = os.environ.get("USER") or "$USER"
    return f": it belongs to the group {group}. Run `sudo usermod -aG {group} {user}`, then log out and in"
