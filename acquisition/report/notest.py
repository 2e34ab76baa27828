"""The report of a visit without a test: why none was possible."""

from __future__ import annotations

import json
from dataclasses import dataclass
from datetime import UTC, datetime

from acquisition.job import Job, JobDetails
from acquisition.job.issues import IssueMark
from acquisition.office import Letterhead
from acquisition.report import wording
from acquisition.report.certificate import utc_words
from acquisition.report.letterhead import head_files, office_words
from acquisition.report.names import BLANK, Json
from acquisition.report.typeface import printable
from acquisition.report.typesetting import template, typeset_pdf
from acquisition.setup import Gate, gate_of
from acquisition.version import PROGRAM_VERSION
from analysis.errors import InvalidInput

TITLE = "Report that no test was possible"
WORD = "No test was possible"


@dataclass(frozen=True, slots=True)
class NoTestContent:
    """What it prints; `mark` is None while it is a draft."""

    details: JobDetails
    stage: str
    gate: Gate
    office: Letterhead | None = None
    mark: IssueMark | None = None

    @property
    def date(self) -> datetime:
        """When the newest answer was given."""
        return max(entry.utc for _, entry in self.gate.answers if entry is not None)


def no_test_content(
    job: Job, now: datetime, *, office: Letterhead | None = None, mark: IssueMark | None = None
) -> NoTestContent:
    """Return the content; raises `InvalidInput` where the safety answers allow a test."""
    gate = gate_of(job.house.entries, now)
    if not gate.forbids:
        raise InvalidInput("safety", None, "a report of no test needs an answer that forbids it", shown="not refused")
    return NoTestContent(job.details, job.draft().stage, gate, office, mark)


def no_test_pdf(content: NoTestContent) -> bytes:
    """Return the report as PDF/A-3; the same content gives the same bytes."""
    return typeset_pdf(_sources(content), content.date)


def _sources(content: NoTestContent) -> dict[str, bytes]:
    return {
        "main.typ": template("notest.typ"),
        "words.typ": template("words.typ"),
        "data.json": json.dumps(_document(content), ensure_ascii=False).encode(),
        **head_files(content.office),
    }


def _document(content: NoTestContent) -> Json:
    details, mark = content.details, content.mark
    building = printable(details.name) or wording.NO_NAME
    number = f" {printable(mark.number)}" if mark is not None and mark.number else ""
    heading = TITLE + number + (f", revision {mark.revision}" if mark is not None and mark.revision else "")
    lines = (details.site, f"Stage: {content.stage}" if content.stage else "", _job(details))
    return {
        "title": TITLE,
        "heading": heading,
        "building": building,
        "footer-name": building,
        "author": printable(details.tester) or wording.PROGRAM,
        "date": list(content.date.astimezone(UTC).timetuple()[:6]),
        "stamps": [wording.DRAFT] if mark is None else [],
        "office": office_words(content.office),
        "lines": [printable(line) for line in lines if line],
        "word": WORD,
        "reasons": [f"Not so: {printable(text)}" for text in content.gate.refusals],
        "answers": {
            "head": "What was asked and answered",
            "heads": ["Question", "Answer", "By", "When, UTC"],
            "rows": [_answer(content, at) for at in range(len(content.gate.answers))],
        },
        "fields": _fields(content),
        "cautions": list(wording.CAUTIONS[1:]),
        "footer": f"{building}  ·  {heading}  ·  {wording.PROGRAM} {PROGRAM_VERSION}",
    }


def _job(details: JobDetails) -> str:
    return f"Job {details.number}" if details.number else ""


def _answer(content: NoTestContent, at: int) -> list[str]:
    question, entry = content.gate.answers[at]
    if entry is None:
        return [printable(question.text), "not asked", BLANK, BLANK]
    note = f" ({printable(entry.note)})" if entry.note else ""
    return [
        f"{printable(question.text)}{note}",
        entry.state,
        printable(entry.who) or BLANK,
        f"{entry.utc:%Y-%m-%d %H:%M}",
    ]


def _fields(content: NoTestContent) -> list[list[str]]:
    details, mark = content.details, content.mark
    fields = [
        ["Client", details.client],
        ["Visited by", details.tester],
        ["On", utc_words(content.date)],
    ]
    if mark is not None:
        fields += [["Signed by", mark.signed_by], ["Issued on", utc_words(mark.utc)]]
        if mark.revision:
            fields.append([f"Revision {mark.revision} because", mark.reason])
    return [[name, printable(text) or wording.NOT_RECORDED] for name, text in fields]
