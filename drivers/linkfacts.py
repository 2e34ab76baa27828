"""What is known of a link at this moment: state, counts, rate. Written by its owner, read from any thread."""

from __future__ import annotations

from collections import deque
from dataclasses import dataclass

from drivers.clock import NS_PER_S, seconds
from drivers.instrument import LinkState, LinkStatus

RATE_SAMPLES = 32
RATE_FRESH_NS = seconds(2.0)
DAMAGED_FRAMES = 5
DAMAGED_WITHIN_NS = seconds(5.0)


@dataclass(frozen=True, slots=True)
class _Seen:
    """One moment of a link, swapped in as a whole."""

    state: LinkState
    identity: str
    sentence: str
    first_ns: int
    newest_ns: int | None
    intervals: int
    round_trip_s: float | None
    readings: int
    bad_frames: int
    no_replies: int
    reconnects: int
    skipped: int


class LinkFacts:
    """The ledger of one link."""

    def __init__(self, name: str, port: str) -> None:
        """Nothing has happened yet."""
        self.name = name
        self.port = port
        self.state = LinkState.CLOSED
        self.identity = ""
        self.sentence = ""
        self.round_trip_s: float | None = None
        self.no_replies = 0
        self.links = 0
        self.skipped = 0
        self.newest_ns: int | None = None
        self._readings = 0
        self._bad = 0
        self._stamps: deque[int] = deque(maxlen=RATE_SAMPLES)
        self._damage: deque[int] = deque(maxlen=DAMAGED_FRAMES)
        self._told: tuple[object, ...] = ()
        self._seen = self._look("")

    def good(self, now_ns: int, round_trip_s: float) -> None:
        """Note a frame that made sense."""
        self._readings += 1
        self._stamps.append(now_ns)
        self.newest_ns = now_ns
        self.round_trip_s = round_trip_s

    def bad(self, count: int, now_ns: int) -> None:
        """Note frames that made no sense."""
        self._bad += count
        self._damage.extend([now_ns] * min(count, DAMAGED_FRAMES))

    def linked(self) -> None:
        """Note that the link was made after an opening."""
        self.links += 1
        self._stamps.clear()

    def publish(self, now_ns: int, complaint: str) -> None:
        """Let other threads see how things are; `complaint` is what the instrument does wrong on a good link."""
        if self.state is LinkState.LINKED:
            self.sentence = complaint or self._damage_report(now_ns)
        facts = (self.state, self.sentence, self.identity, self.newest_ns, self._bad)
        told = (*facts, self._readings, self.no_replies, self.links, self.skipped)
        if told != self._told:
            self._told = told
            self._seen = self._look(self.sentence)

    def status(self, now_ns: int) -> LinkStatus:
        """Return what was last published."""
        seen = self._seen
        rate_hz, age_ns = 0.0, None
        if seen.newest_ns is not None:
            age_ns = max(now_ns - seen.newest_ns, 0)
            span_ns = seen.newest_ns - seen.first_ns
            if seen.intervals and span_ns and age_ns < RATE_FRESH_NS:
                rate_hz = seen.intervals * NS_PER_S / span_ns
        return LinkStatus(
            name=self.name,
            port=self.port,
            state=seen.state,
            identity=seen.identity,
            sentence=seen.sentence,
            rate_hz=rate_hz,
            age_s=None if age_ns is None else age_ns / NS_PER_S,
            round_trip_s=seen.round_trip_s,
            readings=seen.readings,
            bad_frames=seen.bad_frames,
            no_replies=seen.no_replies,
            reconnects=seen.reconnects,
            skipped_polls=seen.skipped,
        )

    def _damage_report(self, now_ns: int) -> str:
        if len(self._damage) < DAMAGED_FRAMES or now_ns - self._damage[0] > DAMAGED_WITHIN_NS:
            return ""
        return (
            f"{self.name}: many damaged messages on {self.port}. Look at speed and cable; "
            "or another program reads the same port."
        )

    def _look(self, sentence: str) -> _Seen:
        return _Seen(
            state=self.state,
            identity=self.identity,
            sentence=sentence,
            first_ns=self._stamps[0] if self._stamps else 0,
            newest_ns=self.newest_ns,
            intervals=max(len(self._stamps) - 1, 0),
            round_trip_s=self.round_trip_s,
            readings=self._readings,
            bad_frames=self._bad,
            no_replies=self.no_replies,
            reconnects=max(self.links - 1, 0),
            skipped=self.skipped,
        )
