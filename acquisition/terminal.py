"""A test seen from a terminal: a bar for long work, and questions to the person who sits there."""

from __future__ import annotations

import signal
import sys
import threading
from collections.abc import Callable
from contextlib import nullcontext
from types import FrameType
from typing import Self, TextIO

from acquisition.conduct import Conclusion, Outcome, await_links, conduct
from acquisition.engine import Engine
from acquisition.job.recorder import Recorder
from acquisition.keyboard import Keyboard
from acquisition.keyed import Keyed
from acquisition.plan import TestPlan
from acquisition.planning.outlook import Outlook
from acquisition.snapshot import EngineState, PointState, Snapshot
from acquisition.standing import Standing
from acquisition.steps import Ask, WindowKind
from acquisition.typist import Typist
from analysis.records import FlowRange
from analysis.units import Display
from drivers.clock import NS_PER_S, Clock

BAR_CELLS = 24
SETTLING_S = 12.0
"""Typical time between two points; for the bar only."""


class Bar:
    """A line that is drawn over itself, on a terminal only."""

    def __init__(self, stream: TextIO) -> None:
        """Draw on `stream`, or nothing when it is no terminal."""
        self._stream = stream
        self._live = stream.isatty()
        self._drawn = ""

    def show(self, share: float, text: str) -> None:
        """Draw a share 0..1 of the work and what is being done."""
        if not self._live:
            return
        share = min(max(share, 0.0), 1.0)
        full = round(share * BAR_CELLS)
        line = f"[{'#' * full}{'.' * (BAR_CELLS - full)}] {100 * share:3.0f} %  {text}"[:118]
        if line != self._drawn:
            self._stream.write(f"\r\x1b[K{line}")
            self._stream.flush()
            self._drawn = line

    def clear(self) -> None:
        """Take the line away."""
        if self._drawn:
            self._stream.write("\r\x1b[K")
            self._stream.flush()
            self._drawn = ""


def share_done(shown: Snapshot, plan: TestPlan) -> float:
    """Return about how much of a test is done, 0..1, by the time that its parts take."""
    point_s = plan.average_s + SETTLING_S
    whole_s = len(plan.directions) * ((2 + plan.zeros_between) * plan.zero_s + len(plan.targets_pa) * point_s)
    done_s = 0.0
    for run in shown.runs:
        taken = sum(point.state in (PointState.TAKEN, PointState.STRUCK) for point in run.points)
        share = taken / len(run.points) if run.points else 0.0
        done_s += share * len(plan.targets_pa) * point_s
    for window in shown.windows:
        if window.kind is not WindowKind.POINT or window.end_ns is None:
            end_ns = shown.now_ns if window.end_ns is None else window.end_ns
            done_s += (end_ns - window.start_ns) / NS_PER_S
    return min(done_s / whole_s, 1.0) if whole_s > 0 else 1.0


def doing(shown: Snapshot) -> str:
    """Return what the test is doing, in one line."""
    if shown.state is EngineState.ASKING:
        return "A question waits for its answer."
    return shown.sentence


def ask_on(ask: Ask, out: TextIO, answers: TextIO) -> str | None:
    """Put a question and read the number of the choice; None at the end of input.

    An empty line takes the first choice, except where there is a caution: that one is not to be answered by accident.
    """
    default = "" if ask.caution else "1"
    offer = "" if ask.caution else ", Enter for 1"
    print(f"\n{ask.text}", file=out)
    if ask.caution:
        print(ask.caution, file=out)
    for number, choice in enumerate(ask.choices, 1):
        print(f"  {number}  {choice}", file=out)
    while True:
        print(f"Number of the answer (1 to {len(ask.choices)}{offer}): ", end="", file=out, flush=True)
        line = answers.readline()
        if not line:
            return None
        text = line.strip() or default
        if text.isdecimal() and 1 <= int(text) <= len(ask.choices):
            return ask.choices[int(text) - 1]


def line_on(prompt: str, out: TextIO, answers: TextIO) -> str | None:
    """Ask for a line of text; None at the end of input."""
    print(prompt, end="", file=out, flush=True)
    return answers.readline() or None


def say(outlook: Outlook, out: TextIO) -> None:
    """Write what the test can be expected to know."""
    for line in (outlook.sentence, outlook.advice, *outlook.doubts):
        if line:
            print(line, file=out)


class Interrupts:
    """While entered, Ctrl+C and a request to end set `cancel` instead of tearing the program down."""

    def __init__(self, keyboard: Keyboard | None = None) -> None:
        """Change nothing yet; a keyboard lets lines be typed while something is asked."""
        self.cancel = threading.Event()
        self._keyboard = keyboard or Keyboard(sys.stdin)
        self._asking = False
        self._earlier: dict[int, Callable[[int, FrameType | None], object] | int | None] = {}

    def __enter__(self) -> Self:
        """Begin to catch the signals; only the main thread may."""
        if threading.current_thread() is threading.main_thread():
            for name in ("SIGINT", "SIGTERM", "SIGHUP"):
                number = getattr(signal, name, None)
                # What the shell has set to be ignored (nohup, a job in the background) stays so.
                if number is not None and signal.getsignal(number) is not signal.SIG_IGN:
                    self._earlier[number] = signal.signal(number, self._caught)
        return self

    def __exit__(self, *_: object) -> None:
        """Give the signals back."""
        for number, handler in self._earlier.items():
            signal.signal(number, handler)

    def ask(self, question: Ask) -> str | None:
        """Put a question on the terminal; None when the person interrupts it or the input ends."""
        self._asking = True
        try:
            with self._keyboard.lines():
                return ask_on(question, sys.stderr, sys.stdin)
        except KeyboardInterrupt:
            return None
        finally:
            self._asking = False

    def line(self, prompt: str) -> str | None:
        """Ask for a line of text; None when the person interrupts it or the input ends."""
        self._asking = True
        try:
            with self._keyboard.lines():
                return line_on(prompt, sys.stderr, sys.stdin)
        except KeyboardInterrupt:
            return None
        finally:
            self._asking = False

    def _caught(self, number: int, frame: FrameType | None) -> None:
        self.cancel.set()
        if self._asking:
            raise KeyboardInterrupt


def attend(
    engine: Engine,
    clock: Clock,
    plan: TestPlan,
    record: Callable[[], Recorder],
    *,
    auto: bool,
    watch: Callable[[Snapshot], None] = lambda shown: None,
    display: Display | None = None,
    standing: Standing | None = None,
    ranges: tuple[FlowRange, ...] = (),
    keys: bool = True,
) -> Outcome:
    """Run a test on an engine that has not been started yet, with a bar, questions and keys on the terminal.

    `record` begins the record once all instruments answer. With `auto` the engine answers the questions itself, but a
    reading that is typed is always asked for, in the units of `display`. `watch` sees every snapshot. `standing` is
    that of a test that goes on, `ranges` are those of the rig; without `keys` standard input is left
    to somebody else.
    """
    bar = Bar(sys.stderr)
    foretold: list[Outlook | None] = [None]

    def progress(shown: Snapshot) -> None:
        bar.show(share_done(shown, plan), doing(shown))
        if shown.outlook is not None and shown.outlook is not foretold[-1]:
            foretold.append(shown.outlook)
            bar.clear()
            say(shown.outlook, sys.stderr)
        watch(shown)
        for key in keyboard.take():
            bar.clear()
            keyed.press(key, shown)
        if shown.typing:
            bar.clear()
            if not typist.look(shown):
                interrupts.cancel.set()

    keyboard = Keyboard(sys.stdin)
    with Interrupts(keyboard) as interrupts, keyboard.open() if keys else nullcontext():
        keyed = Keyed(engine, interrupts.ask, interrupts.line, sys.stderr, ranges)
        typist = Typist(engine, clock, display or Display(), interrupts.line, sys.stderr)
        engine.start()
        bar.show(0.0, "Waiting for the instruments to answer.")
        try:
            silent = await_links(engine, clock, interrupts.cancel)
            if silent:
                return Outcome(Conclusion.FAULTED, engine.snapshot(), silent)
            ask = None if auto else interrupts.ask
            return conduct(engine, clock, plan, record(), ask, progress, interrupts.cancel, standing)
        finally:
            bar.clear()
