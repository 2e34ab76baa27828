"""What a quiet record teaches of a held house: its answer to the wind, and the unrest that is left.

Learnt twice: by the taps alone, and with what the fan felt besides, which calms more and measures less (`change_in`).
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from analysis.sealing.change import Doubts, Record, best_windows
from analysis.sealing.levelled import Levelling, Trace
from analysis.sealing.unrest import Unrest, unrest_of
from analysis.sealing.windanswer import WindAnswer, calmed_crosswise, wind_answer

QUIETER = 0.8
"""The fan's part is taken off where that leaves at most this share of the unrest (our choice)."""
WINDY_SHARE = 0.0025
"""And only where plain changes wander by more than this share of the flow: in calm a drive that turns a bit otherwise
than it is told is more than what the fan could calm (our choice)."""


@dataclass(frozen=True, slots=True)
class Learnt:
    """An answer to the wind, and the unrest that it leaves."""

    answer: WindAnswer
    unrest: Unrest
    doubts: Doubts

    def record(self, raw: Trace) -> Record:
        """Return a trace as it is with the answer taken off."""
        return Record(self.answer.calmed(raw), self.unrest, self.doubts)


def learnt_from(quiet: Sequence[Trace], levelling: Levelling) -> tuple[Learnt, ...]:
    """Return what quiet stretches teach: the plain way, then the keener one where there is one; empty: too little."""
    plain = _learnt(quiet, levelling, by_fan=False)
    if plain is None:
        return ()
    keen = _learnt(quiet, levelling, by_fan=True) if all(item.fan_pa is not None for item in quiet) else None
    if keen is None or _sd(plain) < WINDY_SHARE * plain.unrest.mean_m3_h or _sd(keen) > QUIETER * _sd(plain):
        return (plain,)
    return (plain, keen)


def _learnt(quiet: Sequence[Trace], levelling: Levelling, *, by_fan: bool) -> Learnt | None:
    unrest = unrest_of(calmed_crosswise(quiet, levelling, by_fan=by_fan))
    if unrest is None:
        return None
    answer = wind_answer(quiet, levelling, by_fan=by_fan)
    share = answer.unsure_share(unrest.mean_m3_h, levelling)
    return Learnt(answer, unrest, Doubts(share, levelling.exponent_unsure))


def _sd(learnt: Learnt) -> float:
    return learnt.unrest.sd_m3_h(best_windows(learnt.unrest))
