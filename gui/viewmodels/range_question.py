"""The question with which flow range points were read, and what each answer would make of the line."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from acquisition.rangefit import Line, line_with, suggestions
from acquisition.snapshot import PointState, PointView, RunView
from analysis.numbertext import format_number
from analysis.records import Direction
from analysis.units import Display, Quantity, format_value
from gui.viewmodels.prompt import CORRECT, NOT_CORRECT, Prompt, PromptKind
from gui.viewmodels.shown import ShownTest
from gui.words import say


@dataclass(frozen=True, slots=True)
class Offer:
    """An answer: these points were read with the range `name` on a fan (from 0), as entered where it is empty."""

    label: str
    windows: tuple[int, ...]
    name: str
    fan: int = 0


@dataclass(frozen=True, slots=True)
class Question:
    """What is asked, and what each of its answers means."""

    prompt: Prompt
    offers: tuple[Offer, ...]


def correction_of(
    shown: ShownTest | None, windows: Sequence[int], wanted: Direction | None, display: Display
) -> Question | None:
    """Return the question about the marked points; without any about those that leave the line, or about all.

    None without a test whose rig has a range to choose.
    """
    run = _run(shown, windows, wanted)
    if shown is None or run is None or len(shown.rig.ranges) < 2:
        return None
    taken = tuple(view for view in run.points if view.window is not None)
    marked = tuple(view for view in taken if view.window in windows)
    offers = _marked(shown, run, marked, display) if marked else _suggested(shown, run, display)
    about = marked or taken
    offers = offers or _marked(shown, run, about, display)
    if not offers:
        return None
    text = say("The flow of these points is worked out anew: {targets} Pa.", targets=_targets(about, display))
    if not marked and offers[0].windows != _windows(about):
        text = say("Some points leave the line as a wrong flow range makes them. What was so?")
    prompt = Prompt(
        PromptKind.CORRECT,
        " ".join(map(str, _windows(about))),
        say("With which flow range were they read?"),
        text,
        (CORRECT, NOT_CORRECT),
        say("What had been entered stays in the record, and the report says so. It can be taken back."),
        tuple(item.label for item in offers),
    )
    return Question(prompt, offers)


def _run(shown: ShownTest | None, windows: Sequence[int], wanted: Direction | None) -> RunView | None:
    runs = [run for run in shown.runs if any(view.window is not None for view in run.points)] if shown else []
    with_marked = [run for run in runs if any(view.window in windows for view in run.points)]
    of_wanted = [run for run in runs if run.direction is wanted]
    return next(reversed(with_marked or of_wanted or runs), None)


def _suggested(shown: ShownTest, run: RunView, display: Display) -> tuple[Offer, ...]:
    by_window = {view.window: view for view in run.points}
    return tuple(
        Offer(
            say(
                "{targets} Pa: range {name}; {line}",
                targets=_targets([by_window[window] for window in item.windows], display),
                name=item.name,
                line=_line_words(item.line, display),
            ),
            item.windows,
            item.name,
        )
        for item in suggestions(run.points, run.zero_before_pa or 0.0, shown.rig.ranges)
    )


def _marked(shown: ShownTest, run: RunView, marked: Sequence[PointView], display: Display) -> tuple[Offer, ...]:
    """Return each range that the points were not worked out with, the one with the straightest line first."""
    windows, ranges = _windows(marked), shown.rig.ranges
    if shown.rig.further:
        fans = range(1 + len(shown.rig.further))
        offers = [
            Offer(say("Fan {fan}: range {name}", fan=fan + 1, name=item.name), windows, item.name, fan)
            for fan in fans
            for item in ranges
        ]
    else:
        now = {view.flow_range for view in marked}
        lines = {
            item.name: line_with(run.points, run.zero_before_pa or 0.0, ranges, windows, item.name) for item in ranges
        }
        others = [name for name in lines if now != {name}]
        others.sort(key=lambda name: line.off if (line := lines[name]) is not None else 0.0)
        offers = [Offer(_range_words(name, lines[name], display), windows, name) for name in others]
    corrected = sorted({item.fan for view in marked for item in view.corrected})
    as_entered = say("As it was entered")
    return (
        *offers,
        *(
            Offer(as_entered if not fan else say("Fan {fan}: as it was entered", fan=fan + 1), windows, "", fan)
            for fan in corrected
        ),
    )


def _range_words(name: str, line: Line | None, display: Display) -> str:
    if line is None:
        return say("Range {name}", name=name)
    return say("Range {name}; {line}", name=name, line=_line_words(line, display))


def _line_words(line: Line, display: Display) -> str:
    off, exponent = 100.0 * line.off, line.exponent
    return say(
        "{percent} % off the line, n {exponent}",
        percent=format_number(off, 1 if off < 10.0 else 0, display.decimal_mark),
        exponent=format_number(exponent, 2, display.decimal_mark),
    )


def _targets(points: Sequence[PointView], display: Display) -> str:
    taken = [view for view in points if view.state is not PointState.PENDING]
    return "; ".join(format_value(view.target_pa, Quantity.PRESSURE, display, 0) for view in taken)


def _windows(points: Sequence[PointView]) -> tuple[int, ...]:
    return tuple(view.window for view in points if view.window is not None)
