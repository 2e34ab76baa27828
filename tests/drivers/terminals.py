"""A pseudo-terminal of the tests: a port of the operating system that can be pulled out and put back under one name."""

from __future__ import annotations

import os
import select
import threading
import tty
from collections.abc import Callable
from pathlib import Path
from types import TracebackType

from drivers.clock import WallClock, seconds

Answer = Callable[[bytes], bytes | None]
LOOK_S = 0.002
WALL = WallClock()


class Terminal:
    """A pseudo-terminal behind a symbolic link, answered line by line by a function; a context manager.

    The loop that answers runs in a thread of its own. Unplugging closes both ends, as pulling an adapter does; plugging
    in again makes a new terminal and turns the link to it.
    """

    def __init__(self, link: Path, answer: Answer | None = None) -> None:
        """Plug in. Without `answer` nothing is read and nothing answered: the bytes pile up."""
        self.link = link
        self.answer = answer
        self.heard: list[bytes] = []
        self._ends: tuple[int, int] | None = None
        self._rest = bytearray()
        self._lock = threading.Lock()
        self.plug_in()
        self._hosted = WALL.host(self._pump, "test terminal")

    @property
    def url(self) -> str:
        """The port as a user would write it."""
        return str(self.link)

    @property
    def device(self) -> str:
        """The device node behind the link."""
        return str(self.link.readlink())

    def plug_in(self) -> None:
        """Make a new terminal under the old name."""
        master, slave = os.openpty()
        tty.setraw(slave)
        os.set_blocking(master, False)
        fresh = self.link.with_suffix(".new")
        fresh.symlink_to(os.ttyname(slave))
        fresh.replace(self.link)
        self._rest.clear()
        self._ends = (master, slave)

    def unplug(self) -> None:
        """Pull the plug: whoever has the port open loses it, the name is gone."""
        self.link.unlink(missing_ok=True)
        # Not while the loop waits for the descriptor: its number may be given away at once.
        with self._lock:
            ends, self._ends = self._ends, None
            for end in ends or ():
                os.close(end)

    def say(self, data: bytes) -> None:
        """Send bytes to whoever has the port open."""
        assert self._ends is not None
        os.write(self._ends[0], data)

    def __enter__(self) -> Terminal:
        """Return the terminal."""
        return self

    def __exit__(self, kind: type[BaseException] | None, error: BaseException | None, at: TracebackType | None) -> None:
        """Unplug and end the loop."""
        assert self._hosted.stop()
        self.unplug()

    def _pump(self, now_ns: int) -> int:
        with self._lock:
            if self._ends is not None and self.answer is not None and select.select([self._ends[0]], [], [], LOOK_S)[0]:
                self._take(self._ends[0], self.answer)
        return WALL.now_ns() + seconds(LOOK_S)

    def _take(self, master: int, answer: Answer) -> None:
        self._rest += os.read(master, 4096)
        *messages, rest = bytes(self._rest).split(b"\n")
        self._rest[:] = rest
        for message in messages:
            self.heard.append(message + b"\n")
            reply = answer(message + b"\n")
            if reply:
                os.write(master, reply)


def eventually(condition: Callable[[], object], limit_s: float = 5.0) -> bool:
    """Wait in real time until something is so; false when it is not in time."""
    end_ns = WALL.now_ns() + seconds(limit_s)
    while not condition():
        if WALL.now_ns() > end_ns:
            return False
        WALL.wait_until(WALL.now_ns() + seconds(0.003))
    return True


def pause(duration_s: float) -> None:
    """Let a little real time pass."""
    WALL.wait_until(WALL.now_ns() + seconds(duration_s))
