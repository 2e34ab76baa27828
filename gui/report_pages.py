"""The report of the shown test: its pages for the eye, its PDF and tables for the disk. Made beside the window."""

from __future__ import annotations

import json
from collections.abc import Callable
from pathlib import Path

from acquisition.job import Job, JobDetails
from acquisition.job.export import test_json, write_csv
from acquisition.report import content_of, report_pages, report_pdf
from analysis.records import TestResult
from analysis.units import Display
from gui.errands import Errands
from gui.viewmodels.report_place import PREVIEW_PPI
from gui.viewmodels.shown import ShownTest

Key = tuple[int, int, JobDetails, Display]
Told = Callable[[str], None]


class ReportPages:
    """Makes pages when they are wanted, once for each state of the test."""

    def __init__(self, errands: Errands) -> None:
        """Begin without pages."""
        self.pages: tuple[bytes, ...] = ()
        self.trouble = ""
        self.version = 0
        """Counts up when pages are there."""
        self._errands = errands
        self._key: Key | None = None
        self._result: TestResult | None = None
        self._saved: tuple[Key | None, TestResult | None] | None = None

    @property
    def saved(self) -> bool:
        """Whether the report as it is now was saved."""
        return self._saved is not None and self._saved[0] == self._key and self._saved[1] is self._result

    def want(self, job: Job, opened: int, shown: ShownTest, display: Display) -> None:
        """Have the pages made, unless they are there or being made; `opened` tells one opened job from another."""
        key = (opened, shown.number, job.details, display)
        if key == self._key and shown.result is self._result:
            return
        if self._key is None or key[:2] != self._key[:2]:
            self.pages = ()
        self._key, self._result = key, shown.result
        if shown.result is None:
            return

        def made(pages: tuple[bytes, ...]) -> None:
            if self._key == key:
                self.pages, self.trouble = pages, ""
                self.version += 1

        def failed(error: Exception) -> None:
            if self._key == key:
                self.pages, self.trouble = (), f"The report could not be made: {error}"
                self.version += 1

        number = shown.number
        self._errands.run(lambda: tuple(report_pages(content_of(job, number), PREVIEW_PPI, display)), made, failed)

    def save_pdf(self, job: Job, number: int, display: Display, path: Path, told: Told, failed: Told) -> None:
        """Write the PDF; an existing file is left alone and the next free name taken."""
        state = (self._key, self._result)

        def write() -> Path:
            return write_new(path, report_pdf(content_of(job, number), display))

        def done(written: Path) -> None:
            self._saved = state
            self.version += 1
            told(f"The report is saved as {written}.")

        self._errands.run(write, done, lambda error: failed(f"The report could not be saved: {reason(error)}."))

    def save_json(self, job: Job, number: int, path: Path, told: Told, failed: Told) -> None:
        """Write the test as JSON."""

        def write() -> Path:
            text = json.dumps(test_json(job, number), indent=1, ensure_ascii=False) + "\n"
            return write_new(path, text.encode())

        self._errands.run(
            write,
            lambda written: told(f"The test is saved as {written}."),
            lambda error: failed(f"The test could not be saved: {reason(error)}."),
        )

    def save_csv(self, job: Job, folder: Path, told: Told, failed: Told) -> None:
        """Write the tables of the job into a folder."""
        self._errands.run(
            lambda: write_csv(job, folder),
            lambda written: told(f"{len(written)} tables are saved in {folder}."),
            lambda error: failed(f"The tables could not be saved: {reason(error)}."),
        )


def write_new(path: Path, data: bytes) -> Path:
    """Write a file that was not there before: where the name is taken, the next free one is used."""
    for attempt in range(1, 1000):
        candidate = path if attempt == 1 else path.with_name(f"{path.stem}-{attempt}{path.suffix}")
        try:
            with candidate.open("xb") as file:
                file.write(data)
        except FileExistsError:
            continue
        return candidate
    raise FileExistsError(f"{path} and 998 more names like it are taken")


def reason(error: Exception) -> str:
    """Return what went wrong, without the number of the operating system."""
    if isinstance(error, OSError) and error.strerror:
        return f"{error.strerror} ({error.filename})" if error.filename else error.strerror
    return str(error)
