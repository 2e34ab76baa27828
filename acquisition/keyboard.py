"""Single keys of a terminal, read without waiting for the end of a line: while a test runs."""

from __future__ import annotations

import os
import select
import sys
from collections.abc import Iterator
from contextlib import contextmanager
from typing import TextIO

_MOST = 32


class Keyboard:
    """Gives the keys that were pressed; nothing where standard input is no terminal of a person."""

    def __init__(self, stream: TextIO) -> None:
        """Change nothing yet."""
        self._stream = stream
        self._there = stream.isatty()
        self._raw = False

    @contextmanager
    def open(self) -> Iterator[None]:
        """Take keys as they are pressed and do not show them; afterwards the terminal is as it was."""
        if not self._there or sys.platform == "win32":
            self._raw = self._there
            yield
            self._raw = False
            return
        import termios
        import tty

        before = termios.tcgetattr(self._stream)
        tty.setcbreak(self._stream, termios.TCSANOW)
        self._raw = True
        try:
            yield
        finally:
            self._raw = False
            termios.tcsetattr(self._stream, termios.TCSANOW, before)

    @contextmanager
    def lines(self) -> Iterator[None]:
        """Let a person type a line with echo for a while."""
        if not self._raw or sys.platform == "win32":
            yield
            return
        import termios
        import tty

        raw = termios.tcgetattr(self._stream)
        usual = termios.tcgetattr(self._stream)
        usual[tty.LFLAG] |= termios.ICANON | termios.ECHO
        termios.tcsetattr(self._stream, termios.TCSANOW, usual)
        try:
            yield
        finally:
            termios.tcsetattr(self._stream, termios.TCSANOW, raw)

    def take(self) -> str:
        """Return the keys since the last call, in small letters."""
        if not self._raw:
            return ""
        if sys.platform == "win32":
            import msvcrt

            found = ""
            while msvcrt.kbhit() and len(found) < _MOST:
                found += msvcrt.getwch()
            return found.lower()
        ready, _, _ = select.select([self._stream], [], [], 0.0)
        return os.read(self._stream.fileno(), _MOST).decode("ascii", "ignore").lower() if ready else ""
