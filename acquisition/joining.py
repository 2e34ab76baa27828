"""Joining a class: a name said at the door of the trainer's machine, and the rig file that it answers with."""

from __future__ import annotations

from acquisition.rig import RigSpec
from acquisition.rigfile import read_rig
from analysis.errors import InvalidInput
from drivers.clock import Clock, seconds
from drivers.errors import InstrumentError
from drivers.transport import TransportOpener

PATIENCE_S = 5.0
LONGEST_BYTES = 65_536
LONGEST_NAME = 60
REFUSAL = "NO "
MOST_PORT = 65_535


def join_class(place: str, name: str, opener: TransportOpener, clock: Clock) -> RigSpec:
    """Return the rig that a class gives to a name; `place` is HOST:PORT. Raises `InvalidInput`."""
    host, port = class_place(place)
    said = " ".join(name.split())
    if not 1 <= len(said) <= LONGEST_NAME:
        raise InvalidInput("name", name, f"your name is needed, with 1 to {LONGEST_NAME} characters")
    try:
        text = _asked(f"socket://{host}:{port}", said, opener, clock)
    except InstrumentError as error:
        raise InvalidInput("class", f"{host}:{port}", f"nobody answers there ({error})", shown=place) from error
    if text.startswith(REFUSAL):
        raise InvalidInput("class", place, text.removeprefix(REFUSAL).strip(), shown=place)
    if "airseam-rig-1" not in text:
        raise InvalidInput("class", place, "no class answers there; ask the trainer for host and port", shown=place)
    return read_rig(text)


def class_place(text: str) -> tuple[str, int]:
    """Return host and port of a text; raises `InvalidInput`."""
    host, _, port = text.strip().rpartition(":")
    if not host or "/" in host or any(letter.isspace() for letter in host):
        raise InvalidInput("class", text, "host and port are needed, such as 192.168.1.20:4000")
    if not port.isdecimal() or not 1 <= int(port) <= MOST_PORT:
        raise InvalidInput("class", text, f"a port from 1 to {MOST_PORT} is needed behind the host")
    return host, int(port)


def _asked(url: str, name: str, opener: TransportOpener, clock: Clock) -> str:
    transport = opener(url)
    transport.open()
    try:
        transport.write(f"JOIN {name}\n".encode())
        received = b""
        end_ns = clock.now_ns() + seconds(PATIENCE_S)
        while clock.now_ns() < end_ns and len(received) < LONGEST_BYTES:
            try:
                received += transport.read(0.2)
            except InstrumentError:
                # It hangs up when it has said everything.
                break
        return received.decode("utf-8", errors="replace")
    finally:
        transport.close()
