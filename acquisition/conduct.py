"""Running a test without a window: begin it, hand questions to a person, watch it to its end."""

from __future__ import annotations

import threading
from collections.abc import Callable
from dataclasses import dataclass
from enum import StrEnum

from acquisition.engine import Engine
from acquisition.job.recorder import Recorder
from acquisition.plan import TestPlan
from acquisition.snapshot import EngineState, Snapshot
from acquisition.standing import Standing
from acquisition.steps import Ask
from drivers.clock import NS_PER_S, Clock, seconds
from drivers.instrument import LinkState, LinkStatus

LOOK_S = 0.1
LINK_LIMIT_S = 12.0
"""For every instrument to answer: a link that fails at once is tried again after 0.5, 1, 2 and 4 s."""
LOST_LIMIT_S = 300.0
"""How long a test waits for a lost link where nobody is there to decide: long enough to find a plug."""
LAST_LOOKS = 3
ASK_AGAIN_S = 1.0
"""A test that was told to go on and still stands paused was stopped again at once: the person is asked again."""

GO_ON, END = "Go on with the test", "End the test here"

Asker = Callable[[Ask], str | None]
"""Puts a question to a person and returns the label chosen; None when the person wants to end the test."""


class Conclusion(StrEnum):
    """How a conducted test ended."""

    COMPLETE = "complete"
    STOPPED = "stopped"
    FAULTED = "faulted"


@dataclass(frozen=True, slots=True)
class Outcome:
    """The end of a test. `sentence` says why it was not completed, empty when it was."""

    conclusion: Conclusion
    snapshot: Snapshot
    sentence: str = ""


def await_links(engine: Engine, clock: Clock, cancel: threading.Event, limit_s: float = LINK_LIMIT_S) -> str:
    """Wait until every instrument answers; return a sentence when one does not in time, else an empty text."""
    limit_ns = clock.now_ns() + seconds(limit_s + clock.slack_s)
    while not cancel.is_set():
        waiting = [link for link in engine.snapshot().links if link.state is not LinkState.LINKED]
        if not waiting:
            return ""
        if clock.now_ns() >= limit_ns:
            return _silent(waiting[0])
        clock.wait_until(clock.now_ns() + seconds(LOOK_S), cancel)
    return "The test was ended before it began."


def conduct(
    engine: Engine,
    clock: Clock,
    plan: TestPlan,
    recorder: Recorder,
    ask: Asker | None,
    progress: Callable[[Snapshot], None],
    cancel: threading.Event,
    standing: Standing | None = None,
) -> Outcome:
    """Run a test to its end on an engine that ticks, or what is left of one that had come to `standing`.

    Without `ask` the engine has to answer by itself (`auto_answer`). Setting `cancel` stops the fan and ends the test.
    Raises `InvalidInput` when the rig cannot run the plan.
    """
    engine.begin(plan, recorder, standing)
    supervision = _Supervision(engine, ask)
    while engine.busy and not supervision.ended:
        shown = engine.snapshot()
        progress(shown)
        supervision.look(shown)
        clock.wait_until(clock.now_ns() + seconds(LOOK_S), cancel)
        if cancel.is_set():
            supervision.end(Conclusion.STOPPED, "The test was ended by hand; what was read is kept.")
    if supervision.ended:
        engine.stop_fan()
        engine.abandon()
    # The engine publishes its last snapshot at the end of the round in which the test ends.
    for _ in range(LAST_LOOKS):
        clock.wait_until(clock.now_ns() + seconds(LOOK_S))
    shown = engine.snapshot()
    progress(shown)
    if shown.last_error:
        return Outcome(Conclusion.FAULTED, shown, shown.last_error)
    return Outcome(supervision.conclusion, shown, supervision.sentence)


class _Supervision:
    """Answers what the engine asks while a test runs, and ends one that cannot go on."""

    def __init__(self, engine: Engine, ask: Asker | None) -> None:
        self.conclusion = Conclusion.COMPLETE
        self.sentence = ""
        self.ended = False
        self._engine = engine
        self._ask = ask
        self._answered: Ask | None = None
        self._paused_ns: int | None = None

    def end(self, conclusion: Conclusion, sentence: str) -> None:
        """Note that the test is to end, and why; the first reason counts."""
        if not self.ended:
            self.ended, self.conclusion, self.sentence = True, conclusion, sentence

    def look(self, shown: Snapshot) -> None:
        """Do what the state of the test asks for."""
        if shown.state is not EngineState.PAUSED:
            self._paused_ns = None
        if shown.state is EngineState.ASKING:
            self._put(shown.ask)
        elif shown.state is EngineState.PAUSED:
            self._paused(shown)
        if shown.ask is None:
            self._answered = None

    def _put(self, question: Ask | None) -> None:
        # An answer takes until the engine's next round: the same question may still stand there.
        if question is None or self._ask is None or question is self._answered:
            return
        choice = self._ask(question)
        if choice is None:
            self.end(Conclusion.STOPPED, "The test was ended by hand; what was read is kept.")
            return
        self._answered = question
        self._engine.answer(question.id, choice)

    def _paused(self, shown: Snapshot) -> None:
        since_s = 0.0 if self._paused_ns is None else (shown.now_ns - self._paused_ns) / NS_PER_S
        if self._ask is None:
            self._paused_ns = shown.now_ns if self._paused_ns is None else self._paused_ns
            if since_s > LOST_LIMIT_S:
                self.end(Conclusion.FAULTED, f"{shown.paused_reason} It did not come back within {LOST_LIMIT_S:.0f} s.")
        elif self._paused_ns is None or since_s > ASK_AGAIN_S:
            choice = self._ask(Ask("paused", shown.paused_reason, (GO_ON, END)))
            if choice != GO_ON:
                self.end(Conclusion.STOPPED, shown.paused_reason)
                return
            self._engine.resume()
            self._paused_ns = self._engine.snapshot().now_ns


def _silent(link: LinkStatus) -> str:
    sentence = link.sentence or f"it does not answer (state: {link.state})"
    return f"Instrument {link.name} at {link.port}: {sentence}"
