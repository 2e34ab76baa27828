"""How readings are had from a gauge: asking for them, or listening."""

from __future__ import annotations

from drivers.clock import NS_PER_S, seconds
from drivers.framing.fields import ReplyFormat
from drivers.outbox import Outbox
from drivers.spec import Poll, Stream, Zeroing
from drivers.talk import Heard, Request


class Polling:
    """Asks a gauge at fixed times; times that were missed are skipped, never made up for in a burst."""

    silence_s = None
    complaint = ""

    def __init__(self, poll: Poll, reply: ReplyFormat, outbox: Outbox, zeroing: Zeroing | None = None) -> None:
        """Nothing is asked before `begin`."""
        self.skipped = 0
        self._poll = poll
        self._reply = reply
        self._outbox = outbox
        self._zeroing = zeroing
        self._request = Request(poll.query, poll.timeout_s)
        self._period_ns = round(NS_PER_S / poll.rate_hz)
        self._next_ns = 0
        self._zero_wanted = False

    def want_zero(self) -> bool:
        """Ask the gauge to zero itself before the next poll; false when it cannot."""
        self._zero_wanted = self._zeroing is not None
        return self._zero_wanted

    def begin(self, now_ns: int, *, anew: bool) -> None:
        """Poll at once."""
        self._next_ns = now_ns

    def lost(self) -> None:
        """Forget the wish to zero: by the time the gauge is back there may be pressure on it."""
        self._zero_wanted = False

    def next_request(self, now_ns: int) -> Request | None:
        """Return the poll when its time has come."""
        if self._zero_wanted and self._zeroing is not None:
            self._zero_wanted = False
            self._skip_to(now_ns + seconds(self._zeroing.wait_s))
            return Request(self._zeroing.command)
        if now_ns < self._next_ns:
            return None
        late = (now_ns - self._next_ns) // self._period_ns
        self.skipped += late
        self._next_ns += (late + 1) * self._period_ns
        return self._request

    def urgent(self, now_ns: int) -> bytes | None:
        """Nothing is urgent."""
        return None

    def understands(self, line: str) -> bool:
        """Tell whether a line is the reply to a poll."""
        return self._reply.values(line) is not None

    def heard(self, heard: Heard) -> bool:
        """Take the reply to a poll; its moment is the middle of request and reply."""
        values = self._reply.values(heard.line) if heard.request is not None else None
        if values is None:
            return False
        round_trip_s = (heard.now_ns - heard.sent_ns) / NS_PER_S
        self._outbox.put(values, (heard.sent_ns + heard.now_ns) // 2, round_trip_s)
        return True

    def due_ns(self, now_ns: int) -> int:
        """Return the time of the next poll."""
        return now_ns if self._zero_wanted else self._next_ns

    def _skip_to(self, time_ns: int) -> None:
        """Leave out the polls before a time."""
        if time_ns > self._next_ns:
            self._next_ns += -(-(time_ns - self._next_ns) // self._period_ns) * self._period_ns


class Listening:
    """Takes the lines of a free-running gauge."""

    complaint = ""
    skipped = 0
    LOOK_AHEAD = 0.25
    """Share of the period before the next line at which to begin to look for it."""

    def __init__(self, stream: Stream, reply: ReplyFormat, outbox: Outbox, byte_s: float = 0.0) -> None:
        """Nothing is heard before `begin`. `byte_s` is what a byte takes on the wire: the reading is older than it."""
        self._byte_s = byte_s
        self._silence_s = stream.silence_s
        self._reply = reply
        self._outbox = outbox
        self._period_ns = round(NS_PER_S / stream.rate_hz)
        self._newest_ns = -1
        self._look_ns = 0

    @property
    def silence_s(self) -> float | None:
        """How long the gauge may be silent."""
        return self._silence_s

    def begin(self, now_ns: int, *, anew: bool) -> None:
        """Listen at once."""
        self._look_ns = now_ns

    def lost(self) -> None:
        """Forget nothing: readings that were taken stay."""

    def next_request(self, now_ns: int) -> Request | None:
        """Ask nothing."""
        return None

    def urgent(self, now_ns: int) -> bytes | None:
        """Nothing is urgent."""
        return None

    def understands(self, line: str) -> bool:
        """Tell whether a line is one of the gauge's."""
        return self._reply.values(line) is not None

    def heard(self, heard: Heard) -> bool:
        """Take a line; of several that were read at once the earlier ones came a period before each other."""
        values = self._reply.values(heard.line)
        if values is None:
            return False
        on_wire_ns = seconds(self._byte_s * (len(heard.line) + 1))
        stamp_ns = max(heard.now_ns - heard.behind * self._period_ns - on_wire_ns, self._newest_ns + 1)
        self._newest_ns = stamp_ns
        self._look_ns = stamp_ns + round((1.0 - self.LOOK_AHEAD) * self._period_ns)
        self._outbox.put(values, stamp_ns, 0.0)
        return True

    def due_ns(self, now_ns: int) -> int:
        """Return when to look for the next line."""
        return self._look_ns
