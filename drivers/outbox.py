"""Raw values of a gauge to numbered readings in SI units, kept until somebody takes them."""

from __future__ import annotations

import math
from collections import deque
from collections.abc import Callable, Mapping, Sequence

from drivers.clock import NS_PER_S, Clock, seconds
from drivers.framing.fields import Over, RawValue
from drivers.reading import Quality, Reading
from drivers.spec import ChannelSpec

MOST_WAITING = 100_000
"""Readings kept for a reader that does not come; older ones are dropped, which their numbers then show."""
MOST_WATCHED = 1_000


class Outbox:
    """One thread puts, another takes."""

    def __init__(
        self, instrument: str, channels: Sequence[ChannelSpec], clock: Clock, averaging_s: float = 0.0
    ) -> None:
        """Begin to count at 0. What a gauge gives as the mean of `averaging_s` stands for the middle of that time."""
        self._older_ns = seconds(averaging_s / 2.0)
        self._channels = {channel.name: (f"{instrument}.{channel.name}", channel) for channel in channels}
        self._counts = dict.fromkeys(self._channels, 0)
        self._newest = {channel.name: channel.high for channel in channels}
        self._clock = clock
        self._waiting: deque[Reading] = deque(maxlen=MOST_WAITING)
        self._watched: list[deque[Reading]] = []

    def put(self, raw: Mapping[str, RawValue], stamp_ns: int, round_trip_s: float) -> None:
        """Add the values of one moment; NaN (nothing connected) makes no reading.

        A value at or beyond the end of the range comes out as that end, marked over range. An instrument that only
        says "over" is believed to be at the end that its last value was nearer to.
        """
        stamp_ns -= self._older_ns
        utc_ns = round(self._clock.utc().timestamp() * NS_PER_S) - (self._clock.now_ns() - stamp_ns)
        for name, value in raw.items():
            if value is not Over.RANGE and math.isnan(value):
                continue
            full_name, channel = self._channels[name]
            si = self._end_of(channel) if value is Over.RANGE else value * channel.factor + channel.offset
            quality = Quality.GOOD if channel.low < si < channel.high else Quality.OVER_RANGE
            si = min(max(si, channel.low), channel.high)
            count = self._counts[name]
            self._counts[name] = count + 1
            self._newest[name] = si
            reading = Reading(full_name, si, stamp_ns, utc_ns, round_trip_s, quality, count)
            self._waiting.append(reading)
            for queue in self._watched:
                queue.append(reading)

    def take(self) -> list[Reading]:
        """Return what has come since the last call, oldest first."""
        return _emptied(self._waiting)

    def watch(self) -> Callable[[], list[Reading]]:
        """Return another `take`, for a second reader that must not depend on the first; called before the link opens.

        It keeps the newest thousand readings only.
        """
        queue: deque[Reading] = deque(maxlen=MOST_WATCHED)
        self._watched.append(queue)
        return lambda: _emptied(queue)

    def _end_of(self, channel: ChannelSpec) -> float:
        nearer_low = self._newest[channel.name] < (channel.low + channel.high) / 2
        return channel.low if nearer_low else channel.high


def _emptied(queue: deque[Reading]) -> list[Reading]:
    taken: list[Reading] = []
    while queue:
        taken.append(queue.popleft())
    return taken
