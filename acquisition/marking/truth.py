"""The truth of an exercise, as the simulator writes it down (`airseam-truth-1`, JSON)."""

from __future__ import annotations

import json
from collections.abc import Mapping
from dataclasses import dataclass
from enum import StrEnum

from analysis.errors import InvalidInput
from analysis.fields import Fields, parse_document
from analysis.records import Direction

FORMAT = "airseam-truth-1"


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
class Span:
    """The truth from `since_s` on; flows at 50 Pa in reference air, m3/h, by direction; `fitted` is the flow range."""

    since_s: float
    flow50_m3_h: Mapping[Direction, float]
    wind_m_s: float
    fitted: str


@dataclass(frozen=True, slots=True)
class Hidden:
    """Something that happened; times count from when the fan first turned, 0 is from the start."""

    what: str
    says: str
    at_s: float


@dataclass(frozen=True, slots=True)
class Mark:
    """What is to be done for so many points; see `simulators/exercises/README.md` for what each field means."""

    what: Task
    says: str
    points: float
    words: tuple[str, ...]
    event: int
    value: float
    within: float
    answers: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Truth:
    """An exercise with its truth."""

    exercise: str
    title: str
    task: str
    house: str
    minutes: float
    spans: tuple[Span, ...]
    events: tuple[Hidden, ...]
    marks: tuple[Mark, ...]

    @property
    def points(self) -> float:
        """All points together."""
        return sum(mark.points for mark in self.marks)

    def span_at(self, time_s: float) -> Span:
        """Return what was so at a time, counted from when the fan first turned."""
        begun = [span for span in self.spans if span.since_s <= max(time_s, 0.0)]
        return begun[-1] if begun else self.spans[0]

    def most_wind_m_s(self, from_s: float, to_s: float) -> float:
        """Return the highest mean wind between two times."""
        within = [span.wind_m_s for span in self.spans if from_s < span.since_s <= to_s]
        return max([self.span_at(from_s).wind_m_s, *within])


def read_truth(content: str | bytes | Mapping[str, object], name: str = "truth") -> Truth:
    """Return a truth; raises `InvalidInput` that names the field, the value and what is allowed."""
    top = parse_document(content if isinstance(content, str | bytes) else json.dumps(content), name)
    if top.text("format") != FORMAT:
        raise InvalidInput(f"{name}: format", None, f'"{FORMAT}" is needed', shown="another one")
    truth = Truth(
        exercise=top.text("exercise"),
        title=top.text("title"),
        task=top.text("task"),
        house=top.text("house"),
        minutes=top.number("minutes"),
        spans=tuple(_span(item) for item in top.records("spans")),
        events=tuple(_hidden(item) for item in top.records("events")),
        marks=tuple(_mark(item) for item in top.records("marks")),
    )
    top.finish()
    if not truth.spans or not truth.marks:
        raise InvalidInput(f"{name}: spans and marks", None, "at least one of each is needed", shown="empty")
    return truth


def _span(item: Fields) -> Span:
    flows = {direction: item.number(f"{direction.value}_m3_h") for direction in Direction}
    span = Span(item.number("since_s"), flows, item.number("wind_m_s"), item.text("fitted"))
    item.finish()
    return span


def _hidden(item: Fields) -> Hidden:
    hidden = Hidden(item.text("what"), item.text("says"), item.number("at_s"))
    item.number_or_none("until_s")
    item.finish()
    return hidden


def _mark(item: Fields) -> Mark:
    mark = Mark(
        what=Task(item.choice("what", tuple(Task))),
        says=item.text("says"),
        points=item.number("points"),
        words=item.texts("words"),
        event=item.count("event"),
        value=item.number("value"),
        within=item.number("within"),
        answers=item.texts("answers"),
    )
    item.finish()
    return mark
