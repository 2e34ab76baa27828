"""What is said over a link: polling a gauge, listening to one, telling a drive its speed."""

from __future__ import annotations

import math
import threading
from collections import deque
from collections.abc import Sequence

from drivers.clock import NS_PER_S, Clock, seconds
from drivers.framing.lines import named_fields
from drivers.framing.scpi import numbers
from drivers.profile import ChannelSpec, DriveSpec, Lines, Poll
from drivers.reading import Quality, Reading
from drivers.session import Request

MOST_WAITING = 100_000
"""Readings kept for a reader that does not come: hours of them."""


class Outbox:
    """Numbers the readings of an instrument's channels and keeps them until they are taken."""

    def __init__(self, instrument: str, channels: Sequence[ChannelSpec], clock: Clock) -> None:
        """Start to count at 0."""
        self._names = {channel.name: f"{instrument}.{channel.name}" for channel in channels}
        self._channels = {channel.name: channel for channel in channels}
        self._counts = dict.fromkeys(self._channels, 0)
        self._clock = clock
        self._waiting: deque[Reading] = deque(maxlen=MOST_WAITING)

    def put(self, raw: dict[str, float], stamp_ns: int, round_trip_s: float) -> None:
        """Add the raw values of channels; infinite ones are over range, what is no number is left out."""
        utc_ns = round(self._clock.utc().timestamp() * NS_PER_S) - (self._clock.now_ns() - stamp_ns)
        for name, value in raw.items():
            channel = self._channels.get(name)
            if channel is None or math.isnan(value):
                continue
            si = value * channel.factor + channel.offset
            over = not channel.low < si < channel.high
            shown = min(max(si, channel.low), channel.high)
            quality = Quality.OVER_RANGE if over else Quality.GOOD
            count = self._counts[name]
            self._counts[name] = count + 1
            self._waiting.append(Reading(self._names[name], shown, stamp_ns, utc_ns, round_trip_s, quality, count))

    def take(self) -> list[Reading]:
        """Return what has come since the last call."""
        taken: list[Reading] = []
        while self._waiting:
            taken.append(self._waiting.popleft())
        return taken


class Polling:
    """Asks a gauge at fixed times; times that were missed are skipped, never made up for in a burst."""

    def __init__(self, poll: Poll, outbox: Outbox) -> None:
        """Poll for the columns of the profile."""
        self._poll = poll
        self._outbox = outbox
        self._period_ns = round(NS_PER_S / poll.rate_hz)
        self._next_ns = 0
        self._command: bytes | None = None

    def command(self, message: bytes) -> None:
        """Send a message without a reply before the next poll (zeroing)."""
        self._command = message

    def begin(self, now_ns: int) -> None:
        """Poll at once."""
        self._next_ns = now_ns

    def next_request(self, now_ns: int) -> Request | None:
        """Return the poll when its time has come."""
        if self._command is not None:
            message, self._command = self._command, None
            return Request(message)
        if now_ns < self._next_ns:
            return None
        self._next_ns += self._period_ns
        if self._next_ns <= now_ns:
            self._next_ns = now_ns + self._period_ns
        return Request(self._poll.query, self._poll.timeout_s)

    def heard(self, line: str, request: Request | None, sent_ns: int, now_ns: int) -> bool:
        """Take the reply to a poll."""
        if request is None:
            return False
        values = numbers(line, len(self._poll.columns))
        if values is None:
            return False
        raw = dict(zip(self._poll.columns, values, strict=True))
        self._outbox.put(raw, (sent_ns + now_ns) // 2, (now_ns - sent_ns) / NS_PER_S)
        return True

    def due_ns(self, now_ns: int) -> int:
        """Return the time of the next poll."""
        return self._next_ns


class Listening:
    """Takes the lines of a free-running gauge."""

    def __init__(self, lines: Lines, outbox: Outbox) -> None:
        """Listen for the fields of the profile."""
        self._lines = lines
        self._outbox = outbox

    def begin(self, now_ns: int) -> None:
        """Nothing to say."""

    def next_request(self, now_ns: int) -> Request | None:
        """Nothing to ask."""
        return None

    def heard(self, line: str, request: Request | None, sent_ns: int, now_ns: int) -> bool:
        """Take a line of named fields."""
        fields = named_fields(line)
        if fields is None:
            return False
        raw: dict[str, float] = {}
        for name, text in fields.items():
            if self._lines.over_range and text == self._lines.over_range:
                raw[name] = math.inf
                continue
            try:
                raw[name] = float(text)
            except ValueError:
                return False
        self._outbox.put(raw, now_ns, 0.0)
        return True

    def due_ns(self, now_ns: int) -> int:
        """Never anything to send."""
        return now_ns


class Driving:
    """Tells a drive its speed: the newest wish wins, the safe state comes before everything."""

    IDLE_LOOK_S = 0.01

    def __init__(self, drive: DriveSpec) -> None:
        """Nothing is commanded yet."""
        self.commanded = False
        self.readback: float | None = None
        self.safe_confirmed = False
        self._drive = drive
        self._lock = threading.Lock()
        self._safe = False
        self._wish: float | None = None
        self._messages: deque[bytes] = deque()

    def want(self, speed: float) -> None:
        """Ask for a speed 0..1."""
        with self._lock:
            self._wish = min(max(speed, 0.0), 1.0)
            self.commanded = True

    def want_safe(self) -> None:
        """Ask for the safe state; wishes made before it are dropped."""
        with self._lock:
            self._safe, self._wish, self.safe_confirmed = True, None, False

    def want_direction(self, direction: str) -> None:
        """Ask for a direction; a drive takes it at rest only."""
        self._messages.append(dict(self._drive.directions)[direction])

    def begin(self, now_ns: int) -> None:
        """Tell the drive how long it may hear nothing before it stops."""
        if self._drive.start is not None:
            self._messages.appendleft(self._drive.start)

    def next_request(self, now_ns: int) -> Request | None:
        """Return what matters most."""
        with self._lock:
            if self._safe:
                self._safe = False
                return Request(self._drive.safe, self._drive.timeout_s, "safe")
            if self._messages:
                return Request(self._messages.popleft())
            if self._wish is None:
                return None
            speed, self._wish = self._wish, None
        message = self._drive.set_format.format(speed=speed) + self._drive.terminator
        return Request(message.encode("ascii"), self._drive.timeout_s, "set")

    def heard(self, line: str, request: Request | None, sent_ns: int, now_ns: int) -> bool:
        """Take the speed that the drive says it took over."""
        values = numbers(line, 1)
        if request is None or values is None or not 0.0 <= values[0] <= 1.0:
            return False
        self.readback = values[0]
        if request.tag == "safe":
            self.safe_confirmed = values[0] == 0.0
        return True

    def due_ns(self, now_ns: int) -> int:
        """Look for a wish soon."""
        return now_ns + seconds(self.IDLE_LOOK_S)
