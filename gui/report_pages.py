"""The report on show: its pages for the eye, its PDF and tables for the disk. Made beside the window."""

from __future__ import annotations

import json
from collections.abc import Callable
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path

from acquisition.job import Job
from acquisition.job.export import test_json, write_csv
from acquisition.job.hpxml import hpxml_fragment
from acquisition.office import Office, letterhead
from acquisition.register.records import Register
from acquisition.report import content_of, pdf_pages, report_pdf
from acquisition.report.notest import no_test_content, no_test_pdf
from analysis.units import Display
from gui.errands import Errands
from gui.viewmodels.errors import error_words
from gui.viewmodels.issuing import DRAFT
from gui.viewmodels.report_place import PREVIEW_PPI
from gui.words import say

Told = Callable[[str], None]


@dataclass(frozen=True, slots=True)
class Wanted:
    """What the pages depend on. `opened` tells one opened job from another.

    `test` is None for the report that no test was possible, `issue` the id of an issued report or `DRAFT`. `state` is
    whatever else of the job is printed: when it differs, the draft is made anew.
    """

    opened: int
    test: int | None
    issue: int
    display: Display
    office: Office
    register: Register
    state: tuple[object, ...]

    @property
    def report(self) -> tuple[int, int | None, int]:
        """Which report it is, in whatever state."""
        return (self.opened, self.test, self.issue)


class ReportPages:
    """Makes pages when they are wanted, once for each state."""

    def __init__(self, errands: Errands) -> None:
        """Begin without pages."""
        self.pages: tuple[bytes, ...] = ()
        self.trouble = ""
        self.version = 0
        """Counts up when pages are there."""
        self._errands = errands
        self._wanted: Wanted | None = None
        self._saved: Wanted | None = None

    @property
    def saved(self) -> bool:
        """Whether the report as it is now was saved."""
        return self._saved is not None and self._saved == self._wanted

    def want(self, job: Job, wanted: Wanted, now: datetime) -> None:
        """Have the pages made, unless they are there or being made."""
        if wanted == self._wanted:
            return
        if self._wanted is None or wanted.report != self._wanted.report:
            self.pages = ()
        self._wanted = wanted

        def made(pages: tuple[bytes, ...]) -> None:
            if self._wanted == wanted:
                self.pages, self.trouble = pages, ""
                self.version += 1

        def failed(error: Exception) -> None:
            if self._wanted == wanted:
                self.pages, self.trouble = (), say("The report could not be made: {error}", error=error_words(error))
                self.version += 1

        self._errands.run(lambda: tuple(pdf_pages(_pdf(job, wanted, now), PREVIEW_PPI)), made, failed)

    def save_pdf(self, job: Job, path: Path, now: datetime, told: Told, failed: Told) -> None:
        """Write the PDF of what is on show; an existing file is left alone and the next free name taken."""
        wanted = self._wanted
        if wanted is None:
            return

        def write() -> Path:
            return write_new(path, _pdf(job, wanted, now))

        def done(written: Path) -> None:
            self._saved = wanted
            self.version += 1
            told(say("The report is saved as {written}.", written=written))

        self._errands.run(
            write,
            done,
            lambda error: failed(say("The report could not be saved: {reason}.", reason=error_words(error))),
        )

    def save_json(self, job: Job, number: int, path: Path, told: Told, failed: Told) -> None:
        """Write the test as JSON."""

        def write() -> Path:
            text = json.dumps(test_json(job, number), indent=1, ensure_ascii=False) + "\n"
            return write_new(path, text.encode())

        self._errands.run(
            write,
            lambda written: told(say("The test is saved as {written}.", written=written)),
            lambda error: failed(say("The test could not be saved: {reason}.", reason=error_words(error))),
        )

    def save_hpxml(self, job: Job, number: int, path: Path, now: datetime, told: Told, failed: Told) -> None:
        """Write the air infiltration of a test as HPXML."""

        def write() -> Path:
            content = content_of(job, number)
            return write_new(path, hpxml_fragment(content.test, content.result, now))

        self._errands.run(
            write,
            lambda written: told(say("The fragment is saved as {written}.", written=written)),
            lambda error: failed(say("The fragment could not be saved: {reason}.", reason=error_words(error))),
        )

    def save_csv(self, job: Job, folder: Path, told: Told, failed: Told) -> None:
        """Write the tables of the job into a folder."""
        self._errands.run(
            lambda: write_csv(job, folder),
            lambda written: told(say("{count} tables are saved in {folder}.", count=len(written), folder=folder)),
            lambda error: failed(say("The tables could not be saved: {reason}.", reason=error_words(error))),
        )


def _pdf(job: Job, wanted: Wanted, now: datetime) -> bytes:
    if wanted.issue != DRAFT:
        return job.issues.pdf(wanted.issue)
    head = letterhead(wanted.office)
    if wanted.test is None:
        return no_test_pdf(no_test_content(job, now, office=head))
    return report_pdf(content_of(job, wanted.test, office=head, register=wanted.register), wanted.display)


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
