"""The sheet of one student: for a terminal, and as PDF."""

from __future__ import annotations

import json
from collections.abc import Callable, Iterator
from datetime import UTC, datetime
from importlib.resources import files

from acquisition.marking.judging import Marking, flows
from acquisition.report.typeface import printable
from acquisition.report.typesetting import typeset_pdf
from acquisition.told.table import Row, Table, Tone, table_lines
from analysis.units import Quantity, unit_symbol

Tell = Callable[[str], str]
"""Takes a finished English text."""
WORDS = {
    "result": "Result and truth",
    "marks": "Marks",
    "legend": "Bar: the interval given. Dot: the value given. Line: the truth.",
}
"""What the layout of the sheet says."""
UNDATED = datetime(2000, 1, 1, tzinfo=UTC)


def marking_lines(marking: Marking) -> Iterator[str]:
    """Yield the sheet for a terminal."""
    rows = tuple(
        Row((line.says, f"{line.points:g} of {line.of:g}"), line.found, _tone(line.points, line.of))
        for line in marking.lines
    )
    head = f"{marking.student}: {marking.title}, {marking.points:g} of {marking.of:g} points"
    yield from table_lines(Table(head, ("", "points"), rows))
    for title, items in _lists(marking):
        yield f"  {title}: {' '.join(items)}"


def sheet_pdf(marking: Marking, tell: Tell = str, tag: str = "en") -> bytes:
    """Return the sheet as PDF/A-3, one page; the same marking gives the same bytes.

    `tell` puts what the program says into the language of the `tag`; what a student or trainer wrote stays.
    """
    date = (marking.date or UNDATED).astimezone(UTC)
    document = {
        "student": printable(marking.student),
        "title": printable(marking.title),
        "lines-head": [tell(words) for words in _head(marking)],
        "date": list(date.timetuple()[:6]),
        "points": f"{marking.points:g}",
        "share": marking.points / marking.of,
        "result": tell(_result_words(marking)),
        "strip": _strip(marking),
        "lines": [
            {
                "says": printable(tell(line.says)),
                "points": f"{line.points:g} / {line.of:g}",
                "found": printable(tell(line.found)),
                "tone": _tone(line.points, line.of).value,
            }
            for line in marking.lines
        ],
        "lists": [
            {"head": tell(head), "items": [printable(tell(item)) for item in items]} for head, items in _lists(marking)
        ],
        "words": {name: tell(words) for name, words in WORDS.items()} | {"of": tell(f" of {marking.of:g}")},
        "lang": tag,
        "note": tell("A simulated house with invented data. Half points for half of what was asked."),
    }
    sources = {
        "main.typ": files(__package__).joinpath("sheet.typ").read_bytes(),
        "data.json": json.dumps(document, ensure_ascii=False).encode(),
    }
    return typeset_pdf(sources, date)


def _head(marking: Marking) -> Iterator[str]:
    yield f"Exercise {printable(marking.exercise)} in {printable(marking.house)}"
    yield f"Job {printable(marking.job)}"
    if marking.date is not None:
        yield f"{marking.date:%Y-%m-%d}"
    if marking.minutes is not None:
        yield f"{marking.minutes:.0f} minutes"


def _lists(marking: Marking) -> Iterator[tuple[str, tuple[str, ...]]]:
    if marking.noticed:
        yield "Noticed", marking.noticed
    if marking.missed:
        yield "Missed", marking.missed
    if marking.wrong:
        yield "Wrong steps", marking.wrong


def _result_words(marking: Marking) -> str:
    if marking.result is None or marking.true_m3_h is None:
        return "There is no result to hold against the truth."
    said, true = marking.result, marking.true_m3_h
    off = f"{100.0 * (said.value / true - 1.0):+.1f}".replace("-", "−")
    value, low, high, truly = flows(marking.display, said.value, said.low, said.high, true)
    unit = unit_symbol(Quantity.FLOW, marking.display)
    return (
        f"Given {value} ({low} to {high}), in truth {truly} {unit} at 50 Pa: {off} %. {marking.direction.capitalize()}."
    )


def _strip(marking: Marking) -> dict[str, float] | None:
    """Return where interval, value and truth lie on a line from 0 to 1."""
    said, true = marking.result, marking.true_m3_h
    if said is None or true is None:
        return None
    left, right = min(said.low, true), max(said.high, true)
    room = 0.25 * (right - left) or 1.0
    low, width = left - room, right - left + 2 * room
    places = {"low": said.low, "high": said.high, "value": said.value, "true": true}
    return {name: (value - low) / width for name, value in places.items()}


def _tone(points: float, of: float) -> Tone:
    if points >= of:
        return Tone.GOOD
    return Tone.OPEN if points > 0 else Tone.BAD
