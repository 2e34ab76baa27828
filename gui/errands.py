"""Work that would make the window wait: done beside it, its outcome handed back to it."""

from __future__ import annotations

import logging
import queue
import sys
import threading
from collections.abc import Callable
from dataclasses import dataclass
from typing import Any, Generic, Protocol, TypeVar

from analysis.errors import InvalidInput

T = TypeVar("T")
WAY_S = 0.001
"""After how long work beside the window gives way to it."""
Outcome = Callable[[], None]
log = logging.getLogger(__name__)


class Errands(Protocol):
    """Does work elsewhere and gives the outcome back to the thread that calls `collect`."""

    def run(self, work: Callable[[], T], done: Callable[[T], None], failed: Callable[[Exception], None]) -> None:
        """Do `work`; then `done` with what it returned, or `failed` with what it raised, come from `collect`."""
        ...

    def collect(self) -> None:
        """Hand over the outcomes that are there."""
        ...

    def close(self, timeout_s: float) -> bool:
        """Finish what was asked for; false when that took too long."""
        ...


@dataclass(frozen=True, slots=True)
class _Errand(Generic[T]):
    work: Callable[[], T]
    done: Callable[[T], None]
    failed: Callable[[Exception], None]

    def go(self) -> Outcome:
        """Do the work and return what is to be called with its outcome."""
        try:
            result = self.work()
        except Exception as error:
            if not isinstance(error, InvalidInput):
                log.exception("work beside the window failed")
            failure = error
            return lambda: self.failed(failure)
        return lambda: self.done(result)


class ThreadErrands:
    """One thread that does errands in their order."""

    def __init__(self) -> None:
        """Start the thread."""
        # The window takes many short turns: after each it would wait this long for a thread that is at its sums.
        sys.setswitchinterval(WAY_S)
        self._asked: queue.SimpleQueue[_Errand[Any] | None] = queue.SimpleQueue()
        self._outcomes: queue.SimpleQueue[Outcome] = queue.SimpleQueue()
        self._thread = threading.Thread(target=self._serve, name="errands", daemon=True)
        self._thread.start()

    def run(self, work: Callable[[], T], done: Callable[[T], None], failed: Callable[[Exception], None]) -> None:
        """Queue the work."""
        self._asked.put(_Errand(work, done, failed))

    def collect(self) -> None:
        """Hand over the outcomes that are there."""
        while True:
            try:
                outcome = self._outcomes.get_nowait()
            except queue.Empty:
                return
            outcome()

    def close(self, timeout_s: float) -> bool:
        """Finish what was asked for and end the thread."""
        self._asked.put(None)
        self._thread.join(timeout_s)
        return not self._thread.is_alive()

    def _serve(self) -> None:
        while (errand := self._asked.get()) is not None:
            self._outcomes.put(errand.go())


class InlineErrands:
    """Does every errand at once, where time itself is virtual."""

    def run(self, work: Callable[[], T], done: Callable[[T], None], failed: Callable[[Exception], None]) -> None:
        """Do the work now."""
        _Errand(work, done, failed).go()()

    def collect(self) -> None:
        """Nothing is ever waiting."""

    def close(self, timeout_s: float) -> bool:
        """Nothing is left to do."""
        return True
