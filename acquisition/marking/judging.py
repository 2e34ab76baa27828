"""Marks for what a student did: one judge for each thing that marks are given for, and what went wrong besides."""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import dataclass
from datetime import datetime

from acquisition.job import Job, PreparationKind, RecordState
from acquisition.marking.evidence import Given, Work, directions_of, doubted, element_pa, holds, true_flow_m3_h, work_of
from acquisition.marking.truth import Hidden, Mark, Task, Truth
from acquisition.setup import Answer, shipped_questions
from analysis.numbertext import parse_number
from analysis.records import Direction, Estimate
from analysis.units import Display, Quantity, format_value, unit_symbol

SAME_TRUTH = 0.02
"""Points whose truths differ by more belong to two houses (our choice)."""
NEAR = 2.0
"""Half the points for a result that is off by no more than so many times what is allowed (our choice)."""
STORM_M_S = 6.0
"""Above this wind a test is not given as good without a word; near 6 m/s, 3 Beaufort ends (ISO 9972, from memory)."""
STORM_WORDS = ("wind", "gust", "storm", "not valid", "invalid")
NUMBER = re.compile(r"[-−+]?\d+(?:[.,]\d+)?")
QUIET = ("gust", "wind", "outdoors", "heating", "readings-lost", "gauge-zeroes", "sealing")
"""What belongs to the weather or to the task: nobody is to notice it as a fault."""


@dataclass(frozen=True, slots=True)
class Line:
    """One line of a sheet: what was asked, `points` of `of`, and what was found."""

    says: str
    points: float
    of: float
    found: str


@dataclass(frozen=True, slots=True)
class Marking:
    """The sheet of a student. `wrong` are steps that went wrong, `display` is how its words show numbers."""

    student: str
    job: str
    exercise: str
    title: str
    house: str
    date: datetime | None
    lines: tuple[Line, ...]
    noticed: tuple[str, ...]
    missed: tuple[str, ...]
    wrong: tuple[str, ...]
    result: Estimate | None
    true_m3_h: float | None
    direction: str
    minutes: float | None
    display: Display

    @property
    def points(self) -> float:
        """Points reached."""
        return sum(line.points for line in self.lines)

    @property
    def of(self) -> float:
        """Points that there were."""
        return sum(line.of for line in self.lines)


Verdict = tuple[float, str]
"""The share of the points, 0..1, and what was found."""


def mark_job(job: Job, truth: Truth, display: Display) -> Marking:
    """Return the sheet for a job, its flows as the reader wants them; raises `InvalidInput` for a damaged file."""
    work = work_of(job, display)
    lines = []
    for mark in truth.marks:
        share, found = JUDGES[mark.what](mark, work, truth)
        lines.append(Line(mark.says, round(share * mark.points, 2), mark.points, found))
    told = [event for event in truth.events if event.what not in QUIET]
    seen = {event: _noticed(event, _words_of(event, truth), work) for event in told}
    given = work.given
    return Marking(
        student=work.student,
        job=work.job,
        exercise=truth.exercise,
        title=truth.title,
        house=truth.house,
        date=work.tests[-1].record.ended or work.tests[-1].record.started if work.tests else None,
        lines=tuple(lines),
        noticed=tuple(f"{event.says} “{text}”" for event, text in seen.items() if text),
        missed=tuple(event.says for event, text in seen.items() if not text),
        wrong=_wrong(work, truth),
        result=None if given is None else given.result.mean.q50_m3_h,
        true_m3_h=None if given is None else true_flow_m3_h(truth, given, _result_s(work)),
        direction="" if given is None else directions_of(given),
        minutes=_minutes(work),
        display=display,
    )


def _wrong(work: Work, truth: Truth) -> tuple[str, ...]:
    """Return the steps that went wrong, whether marks are given for them or not."""
    if work.given is None:
        return ()
    probe = Mark(Task.ZERO, "", 1.0, (), 0, STORM_M_S, 0.0, ())
    judged = (_zero(probe, work, truth), _range(probe, work, truth), _weather(probe, work, truth), _mixed(work, truth))
    return tuple(found for share, found in judged if share < 1.0)


def _result(mark: Mark, work: Work, truth: Truth) -> Verdict:
    given = work.given
    if given is None:
        return 0.0, "There is no result."
    share, found = _mixed(work, truth)
    if share < 1.0:
        return 0.0, found
    true, said = true_flow_m3_h(truth, given, _result_s(work)), given.result.mean.q50_m3_h.value
    off_pct = 100.0 * (said / true - 1.0)
    figure, truly, unit = *flows(work.display, said, true), unit_symbol(Quantity.FLOW, work.display)
    text = f"{figure}, in truth {truly} {unit} at 50 Pa: {off_pct:+.1f} %, {mark.within:g} % are allowed."
    if abs(off_pct) <= mark.within:
        return 1.0, text
    return (0.5 if abs(off_pct) <= NEAR * mark.within else 0.0), text


def _interval(mark: Mark, work: Work, truth: Truth) -> Verdict:
    given = work.given
    if given is None:
        return 0.0, "There is no result."
    true, interval = true_flow_m3_h(truth, given, _result_s(work)), _widest(given)
    low, high, truly = flows(work.display, interval.low, interval.high, true)
    text = f"{low} to {high}, in truth {truly} {unit_symbol(Quantity.FLOW, work.display)}."
    return float(interval.low <= true <= interval.high), text


def flows(display: Display, *values_m3_h: float) -> tuple[str, ...]:
    """Return flows as they are shown, without their unit."""
    return tuple(format_value(value, Quantity.FLOW, display) for value in values_m3_h)


def _widest(given: Given) -> Estimate:
    """Return the flow at 50 Pa with everything that makes it uncertain, where that was worked out."""
    totals = (item.total for item in given.result.budgets if item.quantity == "q50_m3_h")
    return next(totals, given.result.mean.q50_m3_h)


def _zero(mark: Mark, work: Work, truth: Truth) -> Verdict:
    given = work.given
    if given is None:
        return 0.0, "There is no result."
    missing = [
        f"{when} the points ({run.direction.value})"
        for run in given.test.runs
        for when, zero in (("before", run.zero_before), ("after", run.zero_after))
        if zero is None
    ]
    if missing:
        share = 1.0 - len(missing) / (2 * len(given.test.runs))
        return share, f"No zero-flow pressure was read {', '.join(missing)}."
    return 1.0, "Zero-flow pressure was read before and after the points."


def _range(mark: Mark, work: Work, truth: Truth) -> Verdict:
    given = work.given
    if given is None:
        return 0.0, "There is no result."
    rig = given.loaded.record.rig
    fitted = truth.span_at(_result_s(work)).fitted
    if rig.fitted != fitted:
        return 0.0, f"The flow range entered was {rig.fitted}, fitted is {fitted}."
    entered = rig.fitted_range
    outside = 0
    for run, window, _ in work.points():
        pressure = element_pa(run, window)
        outside += pressure is not None and not (entered.min_pa or 0.0) <= pressure <= (entered.max_pa or 1e9)
    if outside:
        return 0.5, f"{outside} points lie outside what the flow range {fitted} can measure."
    return 1.0, f"The flow range {fitted} was entered and is fitted; every point lies within it."


def _directions(mark: Mark, work: Work, truth: Truth) -> Verdict:
    if work.given is None:
        return 0.0, "There is no result."
    tested = {run.direction for run in work.given.test.runs}
    text = f"Tested: {directions_of(work.given)}."
    return len(tested) / len(Direction), text


def _weather(mark: Mark, work: Work, truth: Truth) -> Verdict:
    stormy = [
        truth.most_wind_m_s(work.seconds(test.record.started), work.seconds(test.record.ended or test.record.started))
        for test in work.tests
        if test.record.result_json and test.record.state is RecordState.COMPLETE
    ]
    wind_m_s = max(stormy, default=0.0)
    if wind_m_s <= mark.value:
        return 1.0, "No test in too much wind was given as good."
    said = doubted(work, STORM_WORDS)
    if said:
        return 1.0, f"Tested in {wind_m_s:g} m/s, and said so: “{said}”"
    return 0.0, f"A test in {wind_m_s:g} m/s of wind was given as good, without a word about it."


def _words_of(event: Hidden, truth: Truth) -> tuple[str, ...]:
    """Return the words that show that an event was noticed: those of its mark, else those of its own name."""
    number = truth.events.index(event) + 1
    own = tuple(word for word in event.what.split("-") if len(word) > 2)
    return next((mark.words for mark in truth.marks if mark.what is Task.NOTICED and mark.event == number), own)


def _noticed(event: Hidden, words: tuple[str, ...], work: Work) -> str:
    """Return what the student wrote about an event once it had happened, empty where nothing was."""
    for said in work.said:
        late = said.utc is None or event.at_s == 0.0 or work.seconds(said.utc) >= event.at_s
        if late and holds(said.text, words):
            return said.text
    return ""


def _was_noticed(mark: Mark, work: Work, truth: Truth) -> Verdict:
    event = truth.events[mark.event - 1]
    text = _noticed(event, mark.words, work)
    return (1.0, f"“{text}”") if text else (0.0, f"Nothing was written about it: {event.says}")


def _decision(mark: Mark, work: Work, truth: Truth) -> Verdict:
    text = doubted(work, mark.words)
    return (1.0, f"“{text}”") if text else (0.0, "Nothing of the kind was written down.")


def _number(mark: Mark, work: Work, truth: Truth) -> Verdict:
    right = f"right is {mark.value:g}, give or take {mark.within:g}"
    near: list[float] = []
    for said in work.said:
        near += numbers_after(said.text, mark.words)
    if not near:
        return 0.0, f"No number was written beside “{mark.words[0]}”; {right}."
    best = min(near, key=lambda value: abs(value - mark.value))
    return float(abs(best - mark.value) <= mark.within), f"{best:g} was written, {right}."


def numbers_after(text: str, words: tuple[str, ...]) -> list[float]:
    """Return the first number after each of the words."""
    folded = text.casefold()
    found = []
    for word in words:
        at = folded.find(word.casefold())
        number = NUMBER.search(text, at + len(word)) if at >= 0 else None
        if number is not None:
            found.append(parse_number(number.group().replace(",", ".").replace("−", "-"), "number", "."))
    return found


def _safety(mark: Mark, work: Work, truth: Truth) -> Verdict:
    newest: dict[str, str] = {}
    for entry in work.entries:
        if entry.kind is PreparationKind.SAFETY and (work.fan_utc is None or entry.utc <= work.fan_utc):
            newest[entry.subject] = entry.state
    missing = [question.id for question in shipped_questions() if question.id not in newest]
    if missing:
        asked = any(answer.ask_id == "safety" for test in work.tests for answer in test.answers)
        if asked and not mark.answers and len(missing) == len(shipped_questions()):
            return 0.5, "The questions were answered all at once by the test, not each by itself before it."
        share = 0.0 if mark.answers else 0.5 * (1.0 - len(missing) / len(shipped_questions()))
        return share, f"Not answered before the fan turned: {', '.join(missing)}."
    wanted = {item.partition("=")[0]: item.partition("=")[2] for item in mark.answers}
    wrong = [f"{name}: {newest.get(name, 'not answered')}" for name, said in wanted.items() if newest.get(name) != said]
    # A no where everything is in order stops work for nothing.
    wrong += [f"{name}: no" for name, said in newest.items() if said == Answer.NO and name not in wanted]
    if wrong:
        return 0.0, f"Answered otherwise than it is: {', '.join(wrong)}."
    return 1.0, "Every question was answered before the fan turned, as it is."


def _time(mark: Mark, work: Work, truth: Truth) -> Verdict:
    minutes = _minutes(work)
    if minutes is None:
        return 0.0, "There is no test."
    return float(minutes <= truth.minutes), f"{minutes:.0f} minutes, allowed are {truth.minutes:g}."


def _minutes(work: Work) -> float | None:
    """Return the time from the first test's beginning to the last one's end."""
    if not work.tests:
        return None
    ended = [test.record.ended or test.record.started for test in work.tests]
    return (max(ended) - work.tests[0].record.started).total_seconds() / 60.0


def _result_s(work: Work) -> float:
    """Return when the first point of the result was taken."""
    return next((time_s for *_, time_s in work.points()), 0.0)


def _mixed(work: Work, truth: Truth) -> Verdict:
    """Look whether the points of the result belong to one house, and not to it before and after something."""
    flows = [
        truth.span_at(time_s).flow50_m3_h[run.record.direction] / truth.spans[0].flow50_m3_h[run.record.direction]
        for run, _, time_s in work.points()
    ]
    if flows and max(flows) / min(flows) > 1.0 + SAME_TRUTH:
        return 0.0, "The result is made of points from before and after the house changed: it is true of neither."
    return 1.0, ""


JUDGES: dict[Task, Callable[[Mark, Work, Truth], Verdict]] = {
    Task.RESULT: _result,
    Task.INTERVAL: _interval,
    Task.ZERO: _zero,
    Task.RANGE: _range,
    Task.DIRECTIONS: _directions,
    Task.WEATHER: _weather,
    Task.NOTICED: _was_noticed,
    Task.DECISION: _decision,
    Task.NUMBER: _number,
    Task.SAFETY: _safety,
    Task.TIME: _time,
}
