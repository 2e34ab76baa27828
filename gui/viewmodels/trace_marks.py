"""What was noticed, as marks on the trace: when, in two or three words."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import datetime

from acquisition.snapshot import Flag, Severity
from gui.words import mark, say

WORDS = {
    "battery-empty": mark("battery empty"),
    "battery-low": mark("battery low"),
    "computer-slept": mark("computer slept"),
    "fan-link-lost": mark("fan link lost"),
    "fan-not-at-rest": mark("fan still turns"),
    "fan-stopped": mark("fan switched off"),
    "fan-stronger": mark("fan stronger"),
    "fan-weaker": mark("fan weaker"),
    "flow-alone": mark("flow alone moved"),
    "flow-hose-off": mark("flow hose off"),
    "flow-hose-reversed": mark("flow hose reversed"),
    "gauge-frozen": mark("gauge frozen"),
    "gauge-silent": mark("gauge silent"),
    "hose-deaf": mark("hose pinched"),
    "hose-dull": mark("hose dull"),
    "hose-noisy": mark("hose restless"),
    "hoses-swapped": mark("hoses swapped"),
    "knob-moved": mark("knob moved"),
    "lasting-step": mark("lasting step"),
    "leakage-jumped": mark("leakage jumped"),
    "line-noise": mark("noise on the line"),
    "more-flow-than-expected": mark("too much flow"),
    "no-flow": mark("no flow"),
    "still-blowing": mark("fan still blows"),
    "no-pressure": mark("no pressure"),
    "not-settled": mark("not settled"),
    "out-of-range": mark("out of range"),
    "pressure-alone": mark("pressure alone moved"),
    "pressure-collapsed": mark("pressure collapsed"),
    "pressure-too-high": mark("pressure too high"),
    "program-held-up": mark("program held up"),
    "range-changed": mark("other range"),
    "range-doubtful": mark("range doubtful"),
    "range-mixed": mark("range doubtful"),
    "readings-missing": mark("readings missing"),
    "readings-repeated": mark("readings repeated"),
    "time-gap": mark("gap in time"),
    "wrong-sign": mark("wrong sign"),
    "zero-drift": mark("zero moved"),
    "zero-high": mark("zero high"),
}
"""Short words of what the test notices, by the id of its flag; others are not drawn."""
NOTED = ("range-changed",)
"""Notes that belong on the trace too."""
SAME_WITHIN_S = 20.0
"""What is said again so soon stands there once."""


@dataclass(frozen=True, slots=True)
class TraceMark:
    """A mark, in seconds of the trace; `alarm` where the fan was stopped."""

    at_s: float
    words: str
    alarm: bool = False


def marks_of(flags: Iterable[Flag], origin: datetime) -> tuple[TraceMark, ...]:
    """Return the marks of flags, in seconds after `origin`, oldest first."""
    made: list[TraceMark] = []
    for flag in flags:
        if flag.id not in WORDS or (flag.severity is Severity.NOTE and flag.id not in NOTED):
            continue
        new = TraceMark((flag.utc - origin).total_seconds(), say(WORDS[flag.id]), flag.severity is Severity.ALARM)
        if not any(new.at_s - old.at_s < SAME_WITHIN_S and new.words == old.words for old in made[-4:]):
            made.append(new)
    return tuple(made)
