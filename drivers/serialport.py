"""Serial ports, and what looks like one over a network, by pyserial. The one place that calls it for bytes."""

from __future__ import annotations

import contextlib
from dataclasses import replace
from pathlib import Path

import serial

from drivers.errors import LinkLost, WriteBlocked
from drivers.portfaults import BLOCKED, FAILURES, reason, refusal
from drivers.spec import LinkSettings

SLICE_S = 0.02
"""The longest that one read waits: the owner has other things to do."""
WRITE_TIMEOUT_S = 0.25
LARGEST_READ = 4096
PSEUDO_TERMINALS = "/dev/pts"

_PARITIES = {"none": serial.PARITY_NONE, "even": serial.PARITY_EVEN, "odd": serial.PARITY_ODD}


class SerialTransport:
    """A port by its pyserial address: `COM3`, `/dev/ttyUSB0`, `socket://HOST:PORT`, `rfc2217://HOST:PORT`, `loop://`."""

    def __init__(self, url: str, settings: LinkSettings | None = None) -> None:
        """Keep the address; nothing is opened."""
        self._url = url
        self._settings = settings or LinkSettings()
        self._port: serial.SerialBase | None = None
        self._cut = False
        self._is_socket = url.lower().startswith("socket:")

    @property
    def url(self) -> str:
        """The port as the user wrote it."""
        return self._url

    def configure(self, settings: LinkSettings) -> None:
        """Take the link settings of a profile; used at the next `open`."""
        self._settings = settings

    def open(self) -> None:
        """Open the port for this program alone and throw away what is queued in it."""
        try:
            port = self._opened_with(self._settings)
        except FAILURES as error:
            raise refusal(self._url, error) from error
        self._port = port
        self._cut = False
        # What a system or an adapter keeps through this is met by the framer, which skips half a line.
        with contextlib.suppress(*FAILURES):
            port.reset_input_buffer()

    def _opened_with(self, settings: LinkSettings) -> serial.SerialBase:
        port = serial.serial_for_url(self._url, do_not_open=True)
        port.baudrate = settings.baud
        port.bytesize = settings.data_bits
        port.parity = _PARITIES[settings.parity]
        port.stopbits = settings.stop_bits
        port.timeout = SLICE_S
        if not self._url.lower().startswith("rfc2217:"):
            # pyserial's client for network ports refuses one, and gives up by itself after a while.
            port.write_timeout = WRITE_TIMEOUT_S
        port.exclusive = True
        port.dtr = settings.dtr
        port.rts = settings.rts
        try:
            port.open()
        except FAILURES:
            plain = replace(settings, data_bits=8, parity="none")
            if settings == plain or not _is_pseudo_terminal(self._url):
                raise
            # It has no parity, and refuses settings of which it can change none: the second opening fails.
            return self._opened_with(plain)
        return port

    def close(self) -> None:
        """Close the port, whatever state it is in."""
        port, self._port = self._port, None
        if port is None:
            return
        connection = getattr(port, "_socket", None)
        with contextlib.suppress(*FAILURES):
            port.close()
        if connection is not None:
            # pyserial forgets a socket without closing it when the other side went first.
            with contextlib.suppress(*FAILURES):
                connection.close()

    def read(self, timeout_s: float) -> bytes:
        """Return what has arrived; with a `timeout_s` above 0 wait one slice at most for the first byte."""
        port = self._opened()
        try:
            if timeout_s <= 0 and not port.in_waiting:
                return b""
            data = bytearray(port.read(1))
        except FAILURES as error:
            raise LinkLost(f"{self._url} went away while it was read{reason(error)}.") from error
        if data:
            # A port that goes away after the first byte says so at the next read: what came is whole until then.
            with contextlib.suppress(*FAILURES):
                self._read_rest(port, data)
        return bytes(data)

    def _read_rest(self, port: serial.SerialBase, data: bytearray) -> None:
        """Add what else is there."""
        if self._is_socket:
            # pyserial does not know how many bytes wait in a socket.
            port.timeout = 0
            try:
                data += port.read(LARGEST_READ)
            finally:
                port.timeout = SLICE_S
            return
        while len(data) < LARGEST_READ and (waiting := port.in_waiting):
            data += port.read(min(waiting, LARGEST_READ))

    def write(self, data: bytes) -> None:
        """Send all bytes; after half a message the next one begins on a line of its own."""
        port = self._opened()
        try:
            port.write(b"\n" + data if self._cut else data)
            self._cut = False
        except BLOCKED as error:
            self._cut = True
            with contextlib.suppress(*FAILURES):
                port.reset_output_buffer()
            raise WriteBlocked(f"{self._url} does not take the bytes.") from error
        except FAILURES as error:
            raise LinkLost(f"{self._url} went away while it was written to{reason(error)}.") from error

    def _opened(self) -> serial.SerialBase:
        if self._port is None:
            raise LinkLost(f"{self._url} is not open.")
        return self._port


def _is_pseudo_terminal(url: str) -> bool:
    return "://" not in url and Path(url).resolve().is_relative_to(PSEUDO_TERMINALS)


def open_url(url: str) -> SerialTransport:
    """Return the transport for an address; nothing is opened yet."""
    return SerialTransport(url)
