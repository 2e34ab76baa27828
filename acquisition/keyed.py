"""What single keys do while a test runs on a terminal: pause, a point once more, strikes, flow ranges."""

from __future__ import annotations

from collections.abc import Callable
from typing import TextIO

from acquisition.engine import Engine
from acquisition.rangefit import suggestions
from acquisition.snapshot import EngineState, PointState, PointView, Snapshot
from acquisition.steps import Ask
from analysis.errors import InvalidInput
from analysis.records import FlowRange

HELP = (
    "Keys: p pause and go on, r take the last point again, a begin this point anew, x strike the last point, "
    "u take the strike back, f another flow range, w which range points were read with, ? this line; "
    "Ctrl+C ends the test."
)
STAY = "Leave the range"


class Keyed:
    """Does what a key asks for. `ask` puts a question, `line` asks for a text; both give None at the end of input."""

    def __init__(
        self,
        engine: Engine,
        ask: Callable[[Ask], str | None],
        line: Callable[[str], str | None],
        out: TextIO,
        ranges: tuple[FlowRange, ...] = (),
    ) -> None:
        """Nothing was struck yet."""
        self._engine = engine
        self._ask = ask
        self._line = line
        self._out = out
        self._ranges = ranges
        self._struck: list[int] = []

    def press(self, key: str, shown: Snapshot) -> None:
        """Do what one key asks for; any other key says which ones there are."""
        match key:
            case "p":
                self._pause(shown)
            case "r":
                self._again(shown)
            case "a":
                self._engine.take_again()
            case "x":
                self._strike(shown)
            case "u":
                self._take_back()
            case "f":
                self._fit()
            case "w":
                self._correct(shown)
            case _ if key.isprintable():
                self._say(HELP)

    def _pause(self, shown: Snapshot) -> None:
        if shown.state is EngineState.PAUSED:
            self._engine.resume()
        else:
            self._engine.pause()

    def _again(self, shown: Snapshot) -> None:
        point = _last_taken(shown)
        if point is None or point.window is None:
            self._say("No point has been taken in this direction yet.")
            return
        self._engine.take_again(point.window)
        self._say(f"The point at {point.target_pa:g} Pa is taken again next; the old one stays in the record.")

    def _strike(self, shown: Snapshot) -> None:
        point = _last_taken(shown)
        if point is None or point.window is None:
            self._say("There is no point to strike.")
            return
        reason = self._line(f"Why is the point at {point.target_pa:g} Pa struck (empty: leave it)? ")
        if reason is None or not reason.strip():
            self._say("The point is left as it is.")
            return
        self._engine.strike(point.window, reason.strip())
        self._struck.append(point.window)
        self._say("Struck; u takes it back.")

    def _take_back(self) -> None:
        if not self._struck:
            self._say("Nothing was struck here.")
            return
        self._engine.restore(self._struck.pop())
        self._say("The point counts again.")

    def _fit(self) -> None:
        if len(self._ranges) < 2:
            self._say("This rig has one flow range.")
            return
        names = [item.name for item in self._ranges]
        name = self._ask(Ask("range", "Which flow range is to be fitted? A running fan is stopped.", (*names, STAY)))
        if name in names:
            try:
                self._engine.fit_range(name)
            except InvalidInput as error:
                self._say(f"{error}.")

    def _correct(self, shown: Snapshot) -> None:
        run = shown.runs[-1] if shown.runs else None
        taken = tuple(point for point in run.points if point.window is not None) if run is not None else ()
        if len(self._ranges) < 2 or run is None or not taken:
            self._say("A point, and a rig with more than one flow range, are needed.")
            return
        names = [item.name for item in self._ranges]
        question = "Which flow range were the points of this direction read with?"
        name = self._ask(Ask("read-with", question, (*names, STAY)))
        if name not in names:
            return
        # Where the line says that only some of them were, those are meant.
        found = suggestions(run.points, run.zero_before_pa or 0.0, self._ranges)
        windows = next((item.windows for item in found if item.name == name), tuple(p.window for p in taken))
        self._engine.correct_range([window for window in windows if window is not None], name)
        self._say(
            f"Worked out anew with range {name}: {len(windows)} points. What had been entered stays in the record."
        )

    def _say(self, sentence: str) -> None:
        print(f"\r\x1b[K{sentence}", file=self._out, flush=True)


def _last_taken(shown: Snapshot) -> PointView | None:
    points = shown.runs[-1].points if shown.runs else ()
    return next((point for point in reversed(points) if point.state is PointState.TAKEN), None)
