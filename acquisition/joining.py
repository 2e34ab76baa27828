"""Joining a class: a name said at the door of the trainer's machine, and the rig and the task that it answers with."""

from __future__ import annotations

import json
from dataclasses import dataclass

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


@dataclass(frozen=True, slots=True)
class ClassTask:
    """What the students of a class are to do, and in how many minutes."""

    title: str
    task: str
    minutes: float


def join_class(place: str, name: str, opener: TransportOpener, clock: Clock) -> RigSpec:
    """Return the rig that a class gives to a name; `place` is HOST:PORT. Raises `InvalidInput`."""
    class_place(place)
    said = " ".join(name.split())
    if not 1 <= len(said) <= LONGEST_NAME:
        raise InvalidInput("name", name, f"your name is needed, with 1 to {LONGEST_NAME} characters")
    text = _asked(place, f"JOIN {said}", opener, clock)
    if text.startswith(REFUSAL):
        raise InvalidInput("class", place, text.removeprefix(REFUSAL).strip(), shown=place)
    if "airseam-rig-1" not in text:
        raise InvalidInput("class", place, "no class answers there; ask the trainer for host and port", shown=place)
    return read_rig(text)


def class_task(place: str, opener: TransportOpener, clock: Clock) -> ClassTask:
    """Return what a class is to do; raises `InvalidInput` where no class answers."""
    text = _asked(place, "TASK", opener, clock)
    try:
        table = json.loads(text)
        return ClassTask(str(table["title"]), str(table["task"]), float(table["minutes"]))
    except (ValueError, TypeError, KeyError) as error:
        raise InvalidInput("class", place, "no class answers there; ask the trainer for host and port") from error


def class_place(text: str) -> tuple[str, int]:
    """Return host and port of a text; raises `InvalidInput`."""
    host, _, port = text.strip().rpartition(":")
    if not host or "/" in host or any(letter.isspace() for letter in host):
        raise InvalidInput("class", text, "host and port are needed, such as 192.168.1.20:4000")
    if not port.isdecimal() or not 1 <= int(port) <= MOST_PORT:
        raise InvalidInput("class", text, f"a port from 1 to {MOST_PORT} is needed behind the host")
    return host, int(port)


def _asked(place: str, line: str, opener: TransportOpener, clock: Clock) -> str:
    host, port = class_place(place)
    transport = opener(f"socket://{host}:{port}")
    try:
        transport.open()
        transport.write(f"{line}\n".encode())
        received = b""
        end_ns = clock.now_ns() + seconds(PATIENCE_S)
        while clock.now_ns() < end_ns and len(received) < LONGEST_BYTES:
            try:
                received += transport.read(0.2)
            except InstrumentError:
                # It hangs up when it has said everything.
                break
        return received.decode("utf-8", errors="replace")
    except InstrumentError as error:
        raise InvalidInput("class", f"{host}:{port}", f"nobody answers there ({error})", shown=place) from error
    finally:
        transport.close()
