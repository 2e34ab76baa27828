"""The report of a visit without a test: why none was possible."""

from __future__ import annotations

import json
from dataclasses import dataclass
from datetime import UTC, datetime

from acquisition.job import Job, JobDetails
from acquisition.job.issues import IssueMark
from acquisition.languages import ENGLISH, Language, language_of
from acquisition.office import Letterhead
from acquisition.report import wording
from acquisition.report.certificate import issue_fields, utc_words
from acquisition.report.everypage import marked, page_words
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
    language: Language = ENGLISH

    @property
    def date(self) -> datetime:
        """When the newest answer was given."""
        return max(entry.utc for _, entry in self.gate.answers if entry is not None)


def no_test_content(
    job: Job,
    now: datetime,
    *,
    office: Letterhead | None = None,
    mark: IssueMark | None = None,
    language: Language | None = None,
) -> NoTestContent:
    """Return the content, in the language of the job if none is given.

    Raises `InvalidInput` where the safety answers allow a test.
    """
    gate = gate_of(job.house.entries, now)
    if not gate.forbids:
        raise InvalidInput("safety", None, "a report of no test needs an answer that forbids it", shown="not refused")
    spoken = language or language_of(job.details.language)
    return NoTestContent(job.details, job.draft().stage, gate, office, mark, spoken)


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
    details, language, say = content.details, content.language, content.language.say
    building = printable(details.name) or say(wording.NO_NAME)
    heading = marked(say(TITLE), content.mark, language)
    stage = say("Stage: {stage}", stage=content.stage) if content.stage else ""
    job = say("Job {number}", number=details.number) if details.number else ""
    return {
        "language": language.tag,
        "words": page_words(language),
        "title": say(TITLE),
        "heading": heading,
        "building": building,
        "footer-name": building,
        "author": printable(details.tester) or wording.PROGRAM,
        "date": list(content.date.astimezone(UTC).timetuple()[:6]),
        "stamps": [say(wording.DRAFT)] if content.mark is None else [],
        "office": office_words(content.office, language),
        "lines": [printable(line) for line in (details.site, stage, job) if line],
        "word": say(WORD),
        "reasons": [say("Not so: {answer}", answer=printable(say(text))) for text in content.gate.refusals],
        "answers": {
            "head": say("What was asked and answered"),
            "heads": [say(head) for head in ("Question", "Answer", "By", "When, UTC")],
            "rows": [_answer(content, at) for at in range(len(content.gate.answers))],
        },
        "fields": _fields(content),
        "signature": say("Signature"),
        "cautions": [say(words) for words in wording.CAUTIONS[1:]],
        "footer": f"{building}  ·  {heading}  ·  {wording.PROGRAM} {PROGRAM_VERSION}",
    }


def _answer(content: NoTestContent, at: int) -> list[str]:
    language, say = content.language, content.language.say
    question, entry = content.gate.answers[at]
    asked = printable(say(question.text))
    if entry is None:
        return [asked, say("not asked"), BLANK, BLANK]
    note = f" ({printable(entry.note)})" if entry.note else ""
    return [
        f"{asked}{note}",
        say(entry.state),
        printable(entry.who) or BLANK,
        f"{language.short_day(entry.utc)} {entry.utc:%H:%M}",
    ]


def _fields(content: NoTestContent) -> list[list[str]]:
    details, language, say = content.details, content.language, content.language.say
    fields = [
        [say("Client"), printable(details.client)],
        [say("Visited by"), printable(details.tester)],
        [say("On"), utc_words(content.date, language)],
        *issue_fields(content.mark, language),
    ]
    return [[name, text or say(wording.NOT_RECORDED)] for name, text in fields]
