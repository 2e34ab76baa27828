"""One reading of one channel, as it travels from the wire to the job file, the live buffer and the result."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum


class Quality(StrEnum):
    """What is known about a reading beside its value."""

    GOOD = "good"
    OVER_RANGE = "over range"
    """At or beyond the end of the range that the profile names."""


@dataclass(frozen=True, slots=True)
class Reading:
    """A reading in SI units (Pa, degrees Celsius for temperatures, m3/h for flows, 0..1 for fan speed).

    `channel` is `INSTRUMENT.CHANNEL` with the names of the rig file and the profile. `monotonic_ns` is the middle of
    request and reply for a polled instrument; for a free-running one the arrival of the frame, less its time on the
    wire.
    `sequence` counts the readings of the channel from 0 without gaps, so that a lost one can be proved. `shown` is what
    the instrument showed where its calibration has corrected `value` since, None where nothing has.
    """

    channel: str
    value: float
    monotonic_ns: int
    utc_ns: int
    round_trip_s: float
    quality: Quality
    sequence: int
    shown: float | None = None

    @property
    def as_shown(self) -> float:
        """What the instrument showed."""
        return self.value if self.shown is None else self.shown
