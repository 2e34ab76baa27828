"""The command that marks the jobs of a class."""

from __future__ import annotations

import argparse
import re
from pathlib import Path

from acquisition.commands.printing import show, write
from acquisition.commands.status import VALID
from acquisition.job import Job
from acquisition.marking import (
    Marking,
    Tell,
    Truth,
    class_csv,
    class_table,
    mark_job,
    marking_lines,
    read_truth,
    sheet_pdf,
)
from analysis.errors import InvalidInput
from analysis.units import Display
from drivers.clock import WallClock


def truth_in(path: Path) -> Truth:
    """Return the truth out of a file; raises `InvalidInput`."""
    try:
        return read_truth(path.read_bytes(), str(path))
    except OSError as error:
        raise InvalidInput("--truth", str(path), f"it cannot be read ({error.strerror})") from error


def mark_files(options: argparse.Namespace, truth: Truth) -> int:
    """Mark every job, print the sheets and the table, and write what was asked for."""
    markings = [marked(path, truth, Display()) for path in options.files]
    for marking in markings:
        print(*marking_lines(marking), "", sep="\n")
    if len(markings) > 1:
        show(class_table(markings))
    if options.sheets is not None:
        print(*write_sheets(markings, options.sheets), sep="\n")
    if options.csv is not None:
        write(options.csv, class_csv(markings).encode(), "the table of the class")
        print(options.csv)
    return VALID


def marked(path: Path, truth: Truth, display: Display) -> Marking:
    """Return the sheet for a job that was handed in, as `mark_job` does; nothing in the file changes."""
    job = Job.open(path, WallClock(), read_only=True)
    try:
        return mark_job(job, truth, display)
    finally:
        job.close()


def rig_ports(path: Path) -> set[str]:
    """Return where the instruments of a job were connected, in any of its tests; raises `InvalidInput`."""
    job = Job.open(path, WallClock(), read_only=True)
    try:
        return {instrument.port for record in job.tests() for instrument in record.rig.instruments}
    finally:
        job.close()


def write_sheets(markings: list[Marking], folder: Path, tell: Tell = str, tag: str = "en") -> list[Path]:
    """Write a sheet for each student, by the name of the student, as `sheet_pdf` does; raises `InvalidInput`."""
    try:
        folder.mkdir(parents=True, exist_ok=True)
    except OSError as error:
        raise InvalidInput("--sheets", str(folder), f"the folder cannot be made ({error.strerror})") from error
    written: list[Path] = []
    for marking in markings:
        name = re.sub(r"[^\w -]+", "_", marking.student).strip() or "student"
        path = folder / f"{name}.pdf"
        number = 2
        while path in written:
            path = folder / f"{name} {number}.pdf"
            number += 1
        write(path, sheet_pdf(marking, tell, tag), "the sheet")
        written.append(path)
    return written
