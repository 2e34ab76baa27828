"""The door of a class: who says a name is told by which rig file the house is connected, and is sent off.

A line `JOIN NAME` is answered with a rig file (TOML), or with a line that begins with `NO ` and says why. A line `TASK`
is answered with the task of the exercise (JSON).
"""

from __future__ import annotations

import contextlib
import selectors
import socket
from collections import Counter
from collections.abc import Callable
from dataclasses import dataclass

from drivers.clock import NS_PER_S
from simulators.classroom.sockets import answer

WORD = "JOIN "
TASK = "TASK"
LONGEST_LINE = 200
LONGEST_NAME = 60
MOST_WAITING = 32
"""Where more come, the oldest goes of those from the address that has the most here."""
PATIENCE_S = 5.0
REFUSAL = "NO "


@dataclass(slots=True)
class _Guest:
    """Who stands at the door, and what it has said so far, or has still to be told."""

    peer: str
    since_ns: int
    text: bytes = b""


class Door:
    """Waits for names.

    `admit` returns the rig file for a name and the address that it comes from; raises `ValueError` where there is no
    place.
    """

    def __init__(
        self, listener: socket.socket, selector: selectors.BaseSelector, admit: Callable[[str, str], str], task: str
    ) -> None:
        """Open the door; `task` is what is to be done, as it is sent."""
        self._listener = listener
        self._task = task
        self._selector = selector
        self._admit = admit
        self._waiting: dict[socket.socket, _Guest] = {}
        self._leaving: dict[socket.socket, _Guest] = {}
        selector.register(listener, selectors.EVENT_READ, self._knocked)

    @property
    def port(self) -> int:
        """The number of the port."""
        return int(self._listener.getsockname()[1])

    def _knocked(self, now_ns: int) -> None:
        came = answer(self._listener)
        if came is None:
            return
        connection, peer = came
        if len(self._waiting) + len(self._leaving) >= MOST_WAITING:
            self._make_room()
        self._waiting[connection] = _Guest(peer, now_ns)
        self._selector.register(connection, selectors.EVENT_READ, lambda at_ns: self._heard(connection, at_ns))

    def _make_room(self) -> None:
        guests = self._waiting | self._leaving
        count = Counter(guest.peer for guest in guests.values())
        worst = max(count, key=lambda peer: count[peer])
        self._part(next(connection for connection, guest in guests.items() if guest.peer == worst))

    def _heard(self, connection: socket.socket, now_ns: int) -> None:
        guest = self._waiting[connection]
        try:
            data = connection.recv(LONGEST_LINE + 1)
        except BlockingIOError:
            return
        except OSError:
            data = b""
        guest.text += data
        line, end, _ = guest.text.partition(b"\n")
        if not data or len(line) > LONGEST_LINE:
            self._part(connection)
        elif end:
            del self._waiting[connection]
            self._selector.unregister(connection)
            self._leaving[connection] = _Guest(guest.peer, now_ns, self._reply(line, guest.peer).encode())

    def _reply(self, line: bytes, peer: str) -> str:
        text = line.decode("utf-8", errors="replace").strip()
        if text == TASK:
            return f"{self._task}\n"
        name = " ".join("".join(letter for letter in text.removeprefix(WORD) if letter.isprintable()).split())
        if not text.startswith(WORD) or not name or len(name) > LONGEST_NAME:
            return f"{REFUSAL}a line {WORD}NAME is needed, with a name of 1 to {LONGEST_NAME} characters\n"
        try:
            return self._admit(name, peer)
        except ValueError as error:
            return f"{REFUSAL}{error}\n"

    def tend(self, now_ns: int) -> None:
        """Send the answers, and send away who takes too long."""
        for connection, guest in list(self._leaving.items()):
            guest.text = _sent(connection, guest.text)
            if not guest.text or _late(guest.since_ns, now_ns):
                self._part(connection)
        for connection, guest in list(self._waiting.items()):
            if _late(guest.since_ns, now_ns):
                self._part(connection)

    def _part(self, connection: socket.socket) -> None:
        self._waiting.pop(connection, None)
        self._leaving.pop(connection, None)
        with contextlib.suppress(KeyError, ValueError):
            self._selector.unregister(connection)
        connection.close()

    def close(self) -> None:
        """Shut the door."""
        for connection in (*self._waiting, *self._leaving):
            self._part(connection)
        with contextlib.suppress(KeyError, ValueError):
            self._selector.unregister(self._listener)
        self._listener.close()


def _sent(connection: socket.socket, reply: bytes) -> bytes:
    """Send what is taken; return what is left, nothing where nobody is there any more."""
    try:
        return reply[connection.send(reply) :]
    except BlockingIOError:
        return reply
    except OSError:
        return b""


def _late(since_ns: int, now_ns: int) -> bool:
    return now_ns - since_ns > PATIENCE_S * NS_PER_S
