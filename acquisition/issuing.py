"""Issuing a report: numbered, signed, frozen in the job; what it said can be shown byte for byte."""

from __future__ import annotations

import json
from dataclasses import asdict, dataclass, field, replace
from datetime import datetime
from pathlib import Path

from acquisition.job import Job, RecordState
from acquisition.job.issues import Issue, IssueMark
from acquisition.kinds import TestKind
from acquisition.languages import ENGLISH, Language, language_of
from acquisition.office import Letterhead, Office, certificate_number, letterhead, save_office
from acquisition.register.records import Register
from acquisition.report import content_of, report_pdf
from acquisition.report.notest import no_test_content, no_test_pdf
from acquisition.version import PROGRAM_VERSION
from analysis.errors import InvalidInput
from analysis.units import Display


@dataclass(frozen=True, slots=True)
class Wish:
    """What is to be issued. `test_id` is None for the report that no test was possible.

    An empty `number` takes the next one of the office, or that of the revision before. `reason` is needed for another
    revision.
    """

    test_id: int | None
    signed_by: str
    reason: str = ""
    number: str = ""
    language: Language | None = None
    """That of the job if none is named."""


@dataclass(frozen=True, slots=True)
class Setting:
    """What a report is made with: the office and where it is kept, the register of equipment, the units."""

    office: Office = field(default_factory=Office)
    office_file: Path | None = None
    register: Register = field(default_factory=Register)
    display: Display = field(default_factory=Display)


def next_number(job: Job, test_id: int | None, office: Office, now: datetime) -> str:
    """Return the number that a report would be issued under; empty for a test that was made to find leaks only."""
    before = job.issues.of_test(test_id)
    if before:
        return before[-1].mark.number
    if not _kind(job, test_id).certified:
        return ""
    return certificate_number(office.number_pattern, office.next_number, now, job.details.number)


def issue(job: Job, wish: Wish, setting: Setting, now: datetime) -> Issue:
    """Issue a report and return it; the job keeps its file and the office counts on.

    Raises `InvalidInput`: no signature, no reason for a revision, a number that is taken, a test that is recording.
    """
    issues = job.edit_issues()
    before = issues.of_test(wish.test_id)
    number = wish.number.strip() or next_number(job, wish.test_id, setting.office, now)
    _check(job, wish, number)
    mark = IssueMark(number, len(before), " ".join(wish.signed_by.split()), now, " ".join(wish.reason.split()))
    head = letterhead(setting.office)
    spoken = wish.language or language_of(job.details.language)
    pdf = _made(job, wish.test_id, mark, head, setting, now, spoken)
    if not before and not wish.number.strip() and number and setting.office_file is not None:
        # Counted before it is used: a number may be lost, but never be given twice.
        save_office(replace(setting.office, next_number=setting.office.next_number + 1), setting.office_file)
    made = issues.add(wish.test_id, mark, PROGRAM_VERSION, _document(job, head, setting, spoken), pdf)
    if not job.flush():
        raise InvalidInput("issued report", number, job.alarm() or "the disk does not take it", shown="not on the disk")
    return made


def _check(job: Job, wish: Wish, number: str) -> None:
    if not wish.signed_by.strip():
        raise InvalidInput("signed by", wish.signed_by, "the name of who signs is needed", shown="empty")
    if job.issues.of_test(wish.test_id) and not wish.reason.strip():
        raise InvalidInput("reason", wish.reason, "say why it is issued again", shown="empty")
    if wish.number.strip() and not _kind(job, wish.test_id).certified:
        raise InvalidInput("number", wish.number, "a test that was made to find leaks has none")
    taken = next((item for item in job.issues.all if number and item.mark.number == number), None)
    if taken is not None and taken.test_id != wish.test_id:
        raise InvalidInput("number", number, "another report of this job has it: choose another one")
    if wish.test_id is not None and _state(job, wish.test_id) is RecordState.RECORDING:
        raise InvalidInput("test", wish.test_id, "it is still being recorded")


def _state(job: Job, test_id: int) -> RecordState:
    found = next((record for record in job.tests() if record.id == test_id), None)
    if found is None:
        known = ", ".join(str(record.id) for record in job.tests()) or "none yet"
        raise InvalidInput("test", test_id, f"the number of a test is needed, there are: {known}")
    return found.state


def _kind(job: Job, test_id: int | None) -> TestKind:
    found = next((record for record in job.tests() if record.id == test_id), None)
    return found.plan.kind if found is not None else TestKind.CODE


def _made(
    job: Job,
    test_id: int | None,
    mark: IssueMark,
    head: Letterhead,
    setting: Setting,
    now: datetime,
    language: Language,
) -> bytes:
    if test_id is None:
        refused = no_test_content(job, now, office=head, mark=mark, language=language)
        return no_test_pdf(refused)
    content = content_of(job, test_id, office=head, register=setting.register, mark=mark, language=language)
    return report_pdf(content, setting.display)


def _document(job: Job, head: Letterhead, setting: Setting, language: Language) -> str:
    """Return what was copied in, as JSON: the office without its logo, the details with the language, the units."""
    details = replace(job.details, language="" if language is ENGLISH else language.tag)
    office = {name: value for name, value in asdict(head).items() if name != "logo"}
    table = {"office": office, "details": asdict(details), "units": str(setting.display.system)}
    return json.dumps(table, sort_keys=True, ensure_ascii=False)
