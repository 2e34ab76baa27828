"""Guesses the link settings of an unknown gauge: one after the other is tried until what comes is regular.

Nothing is sent unless a `probe` is given, for a gauge that only answers. A hosted pump owns the port meanwhile.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

from drivers.clock import NS_PER_S, Clock, seconds
from drivers.device import Configurable
from drivers.spec import LinkSettings
from drivers.teaching.rawstream import RawStream, look_at
from drivers.teaching.study import Study
from drivers.transport import Transport

READ_SLICE_S = 0.02
LOOK_NS = seconds(0.01)
PROBE_AGAIN_NS = seconds(0.3)
SURE = 0.97
SURE_LINES = 4
REGULAR = 0.8
KEPT_BYTES = 65_536
RATES = (9600, 115_200, 19_200, 38_400, 57_600, 4800, 2400, 1200, 230_400)
FORMS = ((8, "none"), (7, "even"), (8, "even"), (7, "odd"))


def usual_settings() -> tuple[LinkSettings, ...]:
    """Return the settings that are tried, the commonest first."""
    return tuple(LinkSettings(baud=rate, data_bits=bits, parity=parity) for bits, parity in FORMS for rate in RATES)


@dataclass(frozen=True, slots=True)
class Trial:
    """What came with one set of link settings."""

    settings: LinkSettings
    data: bytes
    seen: RawStream


@dataclass(frozen=True, slots=True)
class Guess:
    """How far it has come. `sentence` says it in words; `best` is the most regular stream so far, None for silence."""

    trying: LinkSettings | None
    tried: int
    of: int
    best: Trial | None
    done: bool
    sentence: str

    @property
    def settings(self) -> LinkSettings | None:
        """The settings to go on with, once one is regular enough to be believed."""
        regular = self.best is not None and self.best.seen.regularity >= REGULAR
        return self.best.settings if regular and self.best is not None else None


class LinkGuess(Study[Guess]):
    """Tries link settings on a port."""

    def __init__(
        self,
        transport: Transport,
        clock: Clock,
        candidates: Sequence[LinkSettings] = (),
        *,
        dwell_s: float = 1.2,
        probe: bytes = b"",
    ) -> None:
        """Prepare to listen `dwell_s` seconds with each of the candidates (the usual ones when there are none)."""
        self._candidates = tuple(candidates) or usual_settings()
        at_first = Guess(None, 0, len(self._candidates), None, False, f"{transport.url} is not listened to yet.")
        super().__init__(transport, clock, "guess", LOOK_NS, at_first)
        self._dwell_ns = seconds(dwell_s)
        self._probe = probe
        self._at = 0
        self._opened_ns: int | None = None
        self._probe_ns = 0
        self._heard = bytearray()

    def _step(self, now_ns: int) -> None:
        if self._opened_ns is None:
            self._open()
        elif now_ns - self._opened_ns < self._dwell_ns and not self._is_sure(now_ns):
            self._listen(now_ns)
        else:
            self._judge(now_ns)

    def _end(self, sentence: str) -> None:
        self._transport.close()
        self._progress = replace(self._progress, trying=None, done=True, sentence=sentence)

    def _open(self) -> None:
        settings = self._candidates[self._at]
        self._transport.close()
        if isinstance(self._transport, Configurable):
            self._transport.configure(settings)
        self._transport.open()
        self._heard.clear()
        self._opened_ns = self._probe_ns = self._clock.now_ns()
        self._progress = replace(self._progress, trying=settings, sentence=f"Listening at {in_words(settings)}.")

    def _listen(self, now_ns: int) -> None:
        if self._probe and now_ns >= self._probe_ns:
            self._probe_ns = now_ns + PROBE_AGAIN_NS
            self._transport.write(self._probe)
        self._heard += self._transport.read(READ_SLICE_S)
        del self._heard[: max(len(self._heard) - KEPT_BYTES, 0)]

    def _is_sure(self, now_ns: int) -> bool:
        seen = self._seen(now_ns)
        return seen.regularity >= SURE and len(seen.lines) >= SURE_LINES

    def _seen(self, now_ns: int) -> RawStream:
        assert self._opened_ns is not None
        return look_at(bytes(self._heard), (now_ns - self._opened_ns) / NS_PER_S)

    def _judge(self, now_ns: int) -> None:
        """Note how regular it was; end when it is beyond doubt or nothing is left to try."""
        trial = Trial(self._candidates[self._at], bytes(self._heard), self._seen(now_ns))
        best = self._progress.best
        if trial.data and (best is None or trial.seen.regularity > best.seen.regularity):
            best = trial
        self._at += 1
        self._opened_ns = None
        sure = trial.seen.regularity >= SURE
        done = sure or self._at == len(self._candidates)
        self._progress = replace(self._progress, tried=self._at, best=best, done=done)
        if done:
            self._transport.close()
            self._progress = replace(self._progress, trying=None, sentence=self._conclusion())

    def _conclusion(self) -> str:
        best, settings = self._progress.best, self._progress.settings
        if best is None:
            return (
                f"Nothing came from {self._transport.url}. Is it switched on, does it send by itself, "
                "or has it to be asked?"
            )
        if settings is None:
            return (
                f"Bytes came from {self._transport.url}, but nothing regular: it may not speak in lines of text, "
                "or the cable is bad."
            )
        return f"Regular lines at {in_words(settings)}, {best.seen.rate_hz:.3g} a second."


def in_words(settings: LinkSettings) -> str:
    """Return link settings as people write them."""
    return f"{settings.baud} baud, {settings.data_bits}{settings.parity[0].upper()}{settings.stop_bits}"
