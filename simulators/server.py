"""Puts the instruments of a simulated rig on ports of the operating system, where any program can open them."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from pathlib import Path

from simulators.rig import SimulatedRig
from simulators.tcp import TcpPort
from simulators.wire import WirePort

LOOPBACK = "127.0.0.1"


class WireServer(Mapping[str, str]):
    """The served instruments: a mapping from instrument to the address that a client opens."""

    def __init__(self, ports: Sequence[WirePort]) -> None:
        """Make all ports; raises `OSError` when one cannot be made, and then leaves none behind."""
        self._ports = {port.name: port for port in ports}
        try:
            for port in ports:
                port.start()
        except OSError:
            self.close()
            raise

    def __getitem__(self, name: str) -> str:
        return self._ports[name].address

    def __iter__(self) -> Iterator[str]:
        return iter(self._ports)

    def __len__(self) -> int:
        return len(self._ports)

    def unplug(self, name: str) -> None:
        """Pull an instrument's plug: its port is gone when this returns."""
        self._ports[name].unplug()

    def replug(self, name: str) -> None:
        """Put the plug in again."""
        self._ports[name].replug()

    def close(self) -> None:
        """End all loops and remove all ports."""
        for port in self._ports.values():
            port.close()


def serve_pty(rig: SimulatedRig, folder: Path | None = None) -> WireServer:
    """Serve each instrument on a pseudo-terminal (Linux, macOS); raises `OSError` when there is none to be had.

    With a `folder` the ports are links in it, `gauge` and `fan`, whose names survive a pulled plug.
    """
    # Only here: Windows has no pseudo-terminals.
    from simulators.pseudo_terminal import PseudoTerminal

    links = {name: None if folder is None else folder / name for name in rig.devices}
    return WireServer([PseudoTerminal(name, rig.devices[name], rig.clock, link) for name, link in links.items()])


def serve_tcp(rig: SimulatedRig, host: str = LOOPBACK, port: int = 0) -> WireServer:
    """Serve the gauge on a TCP port and the fan on the next one; port 0 takes two free ones.

    Raises `OSError` when a port is taken. There is no password: other hosts than the loopback are for a safe network.
    """
    return WireServer(
        [
            TcpPort(name, device, rig.clock, host, port + offset if port else 0)
            for offset, (name, device) in enumerate(rig.devices.items())
        ]
    )
