"""Serial ports by pyserial. The one place where the operating system's many ways to fail become ours.

After an adapter is pulled out, pyserial's calls raise `SerialException`, bare `OSError`, `termios.error` or, when the
port was closed meanwhile, `TypeError`; each of them means that the link is lost.
"""

from __future__ import annotations

import contextlib
import errno
import os
import sys
from pathlib import Path

import serial

from drivers.errors import LinkLost, PortBusy, PortDenied, PortMissing, WriteBlocked
from drivers.profile import LinkSettings

SLICE_S = 0.02
"""The longest that one read blocks: the owner has other things to do."""
WRITE_TIMEOUT_S = 1.0
LARGEST_READ = 4096

_FAILURES: tuple[type[BaseException], ...] = (serial.SerialException, OSError, TypeError, ValueError, AttributeError)
if sys.platform != "win32":
    import termios

    _FAILURES = (*_FAILURES, termios.error)

_PARITIES = {"none": serial.PARITY_NONE, "even": serial.PARITY_EVEN, "odd": serial.PARITY_ODD}


class SerialTransport:
    """A port by its pyserial address: `COM3`, `/dev/ttyUSB0`, `socket://HOST:PORT`, `rfc2217://HOST:PORT`, `loop://`."""

    def __init__(self, url: str, settings: LinkSettings | None = None) -> None:
        """Keep the address; nothing is opened."""
        self._url = url
        self._settings = settings or LinkSettings()
        self._port: serial.SerialBase | None = None

    @property
    def url(self) -> str:
        """The port as the user wrote it."""
        return self._url

    def configure(self, settings: LinkSettings) -> None:
        """Take the link settings of a profile; used at the next `open`."""
        self._settings = settings

    def open(self) -> None:
        """Open the port for this program alone and throw away what is queued in it."""
        settings = self._settings
        try:
            port = serial.serial_for_url(self._url, do_not_open=True)
            port.baudrate = settings.baud
            port.bytesize = settings.data_bits
            port.parity = _PARITIES[settings.parity]
            port.stopbits = settings.stop_bits
            port.timeout = SLICE_S
            port.write_timeout = WRITE_TIMEOUT_S
            port.exclusive = True
            port.dtr = settings.dtr
            port.rts = settings.rts
            port.open()
        except _FAILURES as error:
            raise _refusal(self._url, error) from error
        self._port = port
        # An operating system that keeps old bytes through an open is met by the framer, which skips half a line.
        with contextlib.suppress(*_FAILURES):
            port.reset_input_buffer()

    def close(self) -> None:
        """Close the port, whatever state it is in."""
        port, self._port = self._port, None
        if port is not None:
            with contextlib.suppress(*_FAILURES):
                port.close()

    def read(self, timeout_s: float) -> bytes:
        """Return what has arrived, waiting at most one slice for the first byte."""
        port = self._opened()
        try:
            if timeout_s <= 0 and not port.in_waiting:
                return b""
            data = bytearray(port.read(1))
            while data and len(data) < LARGEST_READ and (waiting := port.in_waiting):
                data += port.read(min(waiting, LARGEST_READ))
        except _FAILURES as error:
            raise LinkLost(f"{self._url} went away while it was read ({_reason(error)}).") from error
        return bytes(data)

    def write(self, data: bytes) -> None:
        """Send all bytes."""
        port = self._opened()
        try:
            port.write(data)
        except serial.SerialTimeoutException as error:
            raise WriteBlocked(f"{self._url} does not take the bytes.") from error
        except _FAILURES as error:
            raise LinkLost(f"{self._url} went away while it was written to ({_reason(error)}).") from error

    def _opened(self) -> serial.SerialBase:
        if self._port is None:
            raise LinkLost(f"{self._url} is not open.")
        return self._port


def open_url(url: str) -> SerialTransport:
    """Return the transport for an address; nothing is opened yet."""
    return SerialTransport(url)


def _refusal(url: str, error: BaseException) -> LinkLost:
    """Say why a port does not open."""
    number = getattr(error, "errno", None)
    text = str(error)
    if number == errno.EACCES or "PermissionError" in text or "Access is denied" in text:
        if sys.platform == "win32":
            return PortBusy(f"{url} is in use by another program, or was only just released.")
        return PortDenied(f"{url} may not be opened by this user{_permission_advice(url)}.")
    if number in (errno.EBUSY, errno.EAGAIN) or "exclusively lock" in text:
        return PortBusy(f"{url} is in use by another program, or was only just released.")
    if number in (errno.ENOENT, errno.ENXIO, errno.ENODEV, errno.ECONNREFUSED) or "FileNotFoundError" in text:
        return PortMissing(f"{url} is not there: adapter unplugged, or another name.")
    if "Could not open port" in text:
        return PortMissing(f"{url} does not answer: nothing listens there, or the address is wrong.")
    return LinkLost(f"{url} does not open ({_reason(error)}).")


def _permission_advice(url: str) -> str:
    """Name the group that may open a device node, and the command that joins it."""
    if sys.platform == "win32":
        return ""
    import grp

    try:
        group = grp.getgrgid(Path(url).stat().st_gid).gr_name
    except (OSError, KeyError):
        return ""
    user = os.environ.get("USER", "$USER")
    return f": it belongs to the group {group}. Run `sudo usermod -aG {group} {user}`, then log out and in"


def _reason(error: BaseException) -> str:
    number = getattr(error, "errno", None)
    return os.strerror(number) if isinstance(number, int) else type(error).__name__
