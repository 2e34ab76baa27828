"""A serial port that is known by its adapter, not by its name: plugged in again elsewhere it is found again.

The adapter is remembered by the USB vendor, product and serial number that it had when the port was first opened. Who
answers there is asked by the session as ever; another instrument is refused.
"""

from __future__ import annotations

from collections.abc import Callable

from drivers.errors import PortMissing
from drivers.ports import PortInfo, PortList, list_ports
from drivers.serialport import SerialTransport
from drivers.spec import LinkSettings


class FollowingTransport:
    """A transport to a local serial port that follows its adapter from name to name."""

    def __init__(self, url: str, lister: Callable[[], PortList] = list_ports) -> None:
        """Keep the name; nothing is opened and nothing listed yet."""
        self._port = SerialTransport(url)
        self._settings: LinkSettings | None = None
        self._lister = lister
        self._adapter: PortInfo | None = None

    @property
    def url(self) -> str:
        """The port's name, the new one once the adapter was found elsewhere."""
        return self._port.url

    def configure(self, settings: LinkSettings) -> None:
        """Take the link settings of a profile; used at the next `open`."""
        self._settings = settings
        self._port.configure(settings)

    def open(self) -> None:
        """Open the port, or the one where its adapter now is."""
        try:
            self._port.open()
        except PortMissing:
            elsewhere = self._elsewhere()
            if elsewhere is None:
                raise
            moved = SerialTransport(elsewhere, self._settings)
            moved.open()
            self._port = moved
        if self._adapter is None:
            self._adapter = next((port for port in self._lister().ports if port.name == self._port.url), None)

    def close(self) -> None:
        """Close the port."""
        self._port.close()

    def read(self, timeout_s: float) -> bytes:
        """Return what has arrived."""
        return self._port.read(timeout_s)

    def write(self, data: bytes) -> None:
        """Send all bytes."""
        self._port.write(data)

    def _elsewhere(self) -> str | None:
        """Return the port where the adapter now is, None when that is not certain."""
        adapter = self._adapter
        if adapter is None or not adapter.usb_id:
            return None
        same = [port.name for port in self._lister().ports if _same_adapter(port, adapter)]
        return same[0] if len(same) == 1 and same[0] != self._port.url else None


def _same_adapter(port: PortInfo, adapter: PortInfo) -> bool:
    """Tell whether these are one adapter; without a serial number all of a kind look alike."""
    return (port.usb_id, port.usb_serial) == (adapter.usb_id, adapter.usb_serial)
