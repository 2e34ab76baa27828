"""The command on hand-outs: a PDF for each trade, and what was done on a day."""

from __future__ import annotations

import argparse
from datetime import date
from pathlib import Path

from acquisition.commands.language import wanted_language
from acquisition.commands.printing import display_of
from acquisition.commands.status import VALID
from acquisition.job import Job
from acquisition.report.handout import Handout, done_handout, trade_handouts
from analysis.errors import InvalidInput
from drivers.clock import WallClock


def handout(options: argparse.Namespace) -> int:
    """Write the leaks of each trade, or what was done on a day, into a folder; print what was written."""
    clock = WallClock()
    job = Job.open(options.file, clock, read_only=True)
    try:
        display, now, language = display_of(options.units), clock.utc(), wanted_language(options)
        if options.done is not None:
            made = [done_handout(job, day_of(options.done, now.astimezone().date()), display, now, language)]
        else:
            made = trade_handouts(job, display, now, language)
        for path in written(made, options.to):
            print(path)
    finally:
        job.close()
    return VALID


def day_of(text: str, today: date) -> date:
    """Return a day as typed, `today` for that word; raises `InvalidInput`."""
    if text == "today":
        return today
    try:
        return date.fromisoformat(text)
    except ValueError as error:
        raise InvalidInput("--done", text, "a day is needed, such as 2026-05-04, or: today") from error


def written(made: list[Handout], folder: Path) -> list[Path]:
    """Write documents into a folder; one of the same name is written anew. Raises `InvalidInput`."""
    paths = []
    try:
        folder.mkdir(parents=True, exist_ok=True)
        for item in made:
            path = folder / f"{item.stem}.pdf"
            path.write_bytes(item.pdf())
            paths.append(path)
    except OSError as error:
        raise InvalidInput("--to", str(folder), f"it cannot be written ({error.strerror})") from error
    return paths
