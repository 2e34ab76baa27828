"""Several outdoor taps as one envelope pressure, for steering and for the eye."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from acquisition.rig import TAPS, Role
from drivers.reading import Reading


def with_mean_of_taps(batch: Sequence[tuple[Role, Reading]]) -> list[tuple[Role, Reading]]:
    """Return a batch in which the envelope pressure is the mean of all taps that were read at the same moment."""
    if not any(role in TAPS[1:] for role, _ in batch):
        return list(batch)
    at_once: dict[int, list[float]] = {}
    for role, reading in batch:
        if role in TAPS:
            at_once.setdefault(reading.monotonic_ns, []).append(reading.value)
    return [(role, _mean(reading, at_once) if role is Role.ENVELOPE else reading) for role, reading in batch]


def _mean(reading: Reading, at_once: dict[int, list[float]]) -> Reading:
    values = at_once[reading.monotonic_ns]
    return replace(reading, value=sum(values) / len(values))
