"""What is found out at a port step by step, by a hosted pump that owns the port meanwhile."""

from __future__ import annotations

from abc import ABC, abstractmethod
from typing import Generic, Protocol, TypeVar

from drivers.clock import NS_PER_S, Clock, Hosted
from drivers.errors import InstrumentError
from drivers.transport import Transport


class Progress(Protocol):
    """How far a study has come."""

    @property
    def done(self) -> bool:
        """Whether it has ended."""
        ...


P = TypeVar("P", bound=Progress)


class Study(ABC, Generic[P]):
    """A study of a port; `look` from any thread, `start` and `close` once."""

    def __init__(self, transport: Transport, clock: Clock, name: str, every_ns: int, at_first: P) -> None:
        """Prepare to go a step every so often; `name` is that of its thread."""
        self._transport = transport
        self._clock = clock
        self._name = name
        self._every_ns = every_ns
        self._progress = at_first
        self._hosted: Hosted | None = None

    def start(self) -> None:
        """Begin."""
        if self._hosted is None:
            self._hosted = self._clock.host(self.pump, f"{self._name} {self._transport.url}")

    def look(self) -> P:
        """Return how far it has come."""
        return self._progress

    def close(self) -> None:
        """End it and close the port."""
        hosted, self._hosted = self._hosted, None
        if hosted is not None:
            hosted.stop()
        self._transport.close()

    def pump(self, now_ns: int) -> int:
        """Do what is due and return when to be called again."""
        if self._progress.done:
            return now_ns + NS_PER_S
        try:
            self._step(now_ns)
        except InstrumentError as error:
            self._end(str(error))
        return now_ns + self._every_ns

    @abstractmethod
    def _step(self, now_ns: int) -> None:
        """Go a step; what the port refuses raises an `InstrumentError`."""

    @abstractmethod
    def _end(self, sentence: str) -> None:
        """End it with a sentence that says why."""
