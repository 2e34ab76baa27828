"""What an exercise is: a scenario, the time for it, and what a student gets marks for."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, field
from enum import StrEnum
from typing import Any

from drivers.clock import Clock
from simulators.plant import Event, Plant
from simulators.rig import SimulatedRig
from simulators.scenario import Scenario

TURNS = 0.02
"""A fan above this share of its full speed turns."""
FOREVER_S = float("inf")
TRUTH_FORMAT = "airseam-truth-1"
Json = dict[str, Any]


class Begin(StrEnum):
    """From when the times of the events count."""

    FAN = "fan"
    """From the moment at which the fan first turns: every student meets them at the same point of the work."""
    START = "start"
    """From the moment at which the house is there."""


class Task(StrEnum):
    """What marks are given for."""

    RESULT = "result"
    INTERVAL = "interval"
    ZERO = "zero"
    RANGE = "range"
    DIRECTIONS = "directions"
    WEATHER = "weather"
    NOTICED = "noticed"
    DECISION = "decision"
    NUMBER = "number"
    SAFETY = "safety"
    TIME = "time"


@dataclass(frozen=True, slots=True)
class Mark:
    """What is to be done for so many points.

    `says` is the line on the sheet of the student. `words` are those of which one has to stand in something that the
    student wrote; `event` (counted from 1) is what is to be noticed, 0 for none. `value` and `within` are a number to
    be given and how far it may be off: for a result in percent of the truth, for the weather the wind in m/s from
    which no test is to be given as valid. `answers` are safety questions and the right answers, such as `sheeting=no`.
    """

    what: Task
    says: str
    points: float
    words: tuple[str, ...] = ()
    event: int = 0
    value: float = 0.0
    within: float = 0.0
    answers: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Hidden:
    """Something that happens, as the truth tells it afterwards."""

    what: str
    says: str
    at_s: float
    until_s: float | None


@dataclass(frozen=True, slots=True)
class Span:
    """The truth from a moment on; flows at 50 Pa in reference air, m3/h, with the sucking and with the blowing fan."""

    since_s: float
    depressurize_m3_h: float
    pressurize_m3_h: float
    wind_m_s: float
    fitted: str


@dataclass(frozen=True, slots=True)
class Exercise:
    """A scenario with a task. `minutes` is the time for it, `hidden` what happens, in the order of the file."""

    scenario: Scenario
    minutes: float
    begins: Begin
    hidden: tuple[Hidden, ...]
    marks: tuple[Mark, ...]
    text: str = field(repr=False, default="")
    """The file that it was read from."""

    @property
    def points(self) -> float:
        """All points together."""
        return sum(mark.points for mark in self.marks)

    def rig(self, seed: int, clock: Clock, begun: Callable[[float], None] = lambda _: None) -> SimulatedRig:
        """Return the house with all that is to happen; `begun` is told the time of the plant from which it counts."""
        scenario = self.scenario
        rig = SimulatedRig(scenario.house, seed, clock, protocol=scenario.protocol, rigging=scenario.rigging)
        with rig.world.lock:
            prepare(rig.plant, scenario.events, self.begins, begun)
        return rig

    def spans(self) -> tuple[Span, ...]:
        """Return the truth as it changes by the events alone, from the beginning on."""
        scenario = self.scenario
        plant = Plant([scenario.house], 0, scenario.house.climate.wind_m_s, scenario.rigging)
        spans = [span_of(plant, 0.0)]
        for event in sorted(scenario.events, key=lambda item: item.end_s):
            event.action(plant, 1.0)
            spans.append(span_of(plant, event.end_s if event.start_s > 0.0 else 0.0))
        return tidy(spans)

    def truth(self, spans: tuple[Span, ...] | None = None, hidden: tuple[Hidden, ...] | None = None) -> Json:
        """Return what a job of a student is held against; `spans` and `hidden` of a house in which more happened."""
        return {
            "format": TRUTH_FORMAT,
            "exercise": self.scenario.id,
            "title": self.scenario.title,
            "task": self.scenario.task,
            "house": self.scenario.house.name,
            "minutes": self.minutes,
            "spans": [_document(item) for item in (self.spans() if spans is None else spans)],
            "events": [_document(item) for item in (self.hidden if hidden is None else hidden)],
            "marks": [_document(item) for item in self.marks],
        }


def prepare(
    plant: Plant, events: tuple[Event, ...], begins: Begin, begun: Callable[[float], None] = lambda _: None
) -> None:
    """Lay the events in wait; what is to happen at 0 s is so from the start."""
    first = [event for event in events if event.start_s == 0.0]
    later = [event for event in events if event.start_s > 0.0]
    for event in first:
        plant.schedule(event)

    def let_go(at_s: float) -> None:
        for event in later:
            plant.schedule(Event(at_s + event.start_s, at_s + event.end_s, event.action))
        begun(at_s)

    if begins is Begin.START:
        let_go(plant.time_s)
        return
    gone: list[float] = []

    def wait(waiting: Plant, _: float) -> None:
        if not gone and float(waiting.motor.speed[0]) > TURNS:
            gone.append(waiting.time_s)
            let_go(waiting.time_s)

    # It stays among the events of the plant: an action cannot take itself away.
    plant.schedule(Event(0.0, FOREVER_S, wait))


def span_of(plant: Plant, since_s: float) -> Span:
    """Return the truth as it is now."""
    return Span(
        since_s=since_s,
        depressurize_m3_h=float(plant.true_flow_m3_h(-50.0)[0]),
        pressurize_m3_h=float(plant.true_flow_m3_h(50.0)[0]),
        wind_m_s=float(plant.weather.mean_m_s[0]),
        fitted=plant.element.fitted[0],
    )


def tidy(spans: list[Span]) -> tuple[Span, ...]:
    """Leave out what did not last and what changed nothing."""
    kept: list[Span] = []
    for span in spans:
        if kept and kept[-1].since_s == span.since_s:
            kept.pop()
        if not kept or _values(kept[-1]) != _values(span):
            kept.append(span)
    return tuple(kept)


def _values(span: Span) -> tuple[object, ...]:
    return span.depressurize_m3_h, span.pressurize_m3_h, span.wind_m_s, span.fitted


def _document(item: Span | Hidden | Mark) -> Json:
    return {name: getattr(item, name) for name in item.__slots__}
