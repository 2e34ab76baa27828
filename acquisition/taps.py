"""Several outdoor taps as one envelope pressure, for steering and for the eye."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from acquisition.rig import TAPS, Role
from acquisition.series import LONGEST_GAP_NS
from drivers.reading import Reading

FURTHER = TAPS[1:]


class TapsAsOne:
    """Brings the taps of one gauge or of several together. A tap that is silent for long no longer counts."""

    def __init__(self) -> None:
        """Know no tap yet."""
        self._newest: dict[Role, Reading] = {}

    def mean(self, batch: Sequence[tuple[Role, Reading]]) -> list[tuple[Role, Reading]]:
        """Return a batch, oldest first, in which the envelope pressure is the mean of all taps at that moment.

        Taps of the same reply have the same stamp; of another gauge the newest reading stands.
        """
        if not self._newest and all(role not in FURTHER for role, _ in batch):
            return list(batch)
        at_once = {(role, reading.monotonic_ns): reading for role, reading in batch if role in FURTHER}
        joined = []
        for role, reading in batch:
            if role in FURTHER:
                self._newest[role] = reading
            joined.append((role, self._joined(reading, at_once) if role is Role.ENVELOPE else reading))
        return joined

    def _joined(self, first: Reading, at_once: dict[tuple[Role, int], Reading]) -> Reading:
        values = [first.value]
        for role in FURTHER:
            other = at_once.get((role, first.monotonic_ns), self._newest.get(role))
            if other is not None and abs(first.monotonic_ns - other.monotonic_ns) <= LONGEST_GAP_NS:
                values.append(other.value)
        return first if len(values) == 1 else replace(first, value=sum(values) / len(values))
