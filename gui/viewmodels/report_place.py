"""The Report place: which test it is about, what is missing, the pages as they will be saved."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass

from acquisition.job import JobDetails, RecordState, TestRecord
from acquisition.kinds import TestKind
from acquisition.languages import ENGLISH, languages
from gui.viewmodels.moment import Moment
from gui.viewmodels.shown import ShownTest
from gui.words import say

PREVIEW_PPI = 144.0
OF_OFFICE = "office "
"""In front of a field that stands on the Settings page."""
NO_TEST = 0
"""Stands among the tests for the report that none was possible."""


@dataclass(frozen=True, slots=True)
class Missing:
    """Something that the report lacks; `field` is the field of the job sheet that a click leads to, or empty."""

    sentence: str
    field: str = ""


@dataclass(frozen=True, slots=True)
class ReportPicture:
    """The place, but for the pages. `why` says why there is no report yet."""

    tests: tuple[tuple[int, str], ...]
    chosen: int | None
    missing: tuple[Missing, ...]
    why: str
    can_save: bool
    can_export: bool
    pages: tuple[bytes, ...]
    languages: tuple[tuple[str, str], ...] = ()
    """Tags and own names of the languages that the report can be written in; none without a job."""
    language: str = ""
    can_choose: bool = False
    """Whether another language can be chosen: an issued report keeps its own."""
    leaks: bool = False
    """Whether there are leaks to hand out."""


def report_picture(
    moment: Moment,
    tests: Sequence[TestRecord],
    pages: tuple[bytes, ...],
    trouble: str,
    *,
    office: str = "",
    no_test: bool = False,
    issued_in: str | None = None,
    leaks: bool = False,
) -> ReportPicture:
    """Return the place. `trouble` says why the pages could not be made, `office` is the name of the office.

    With `no_test` it shows the report that none was possible; `issued_in` is the language of the issued report on show.
    """
    shown = moment.shown
    why = trouble if no_test else _why(moment, shown) or trouble
    forbidden = moment.job is not None and bool(moment.job.forbidden)
    listed = [(record.id, title_of(record)) for record in tests]
    return ReportPicture(
        tests=(*listed, *([(NO_TEST, say("No test possible"))] if forbidden else [])),
        chosen=NO_TEST if no_test else shown.number if shown is not None else None,
        missing=_missing_of(moment, shown, office, no_test=no_test),
        why=why,
        can_save=not why,
        can_export=shown is not None and not _recording(moment, shown),
        pages=() if why else pages,
        languages=() if moment.job is None else tuple((item.tag, item.name) for item in languages()),
        language=_language(moment, issued_in),
        can_choose=moment.job is not None and issued_in is None,
        leaks=leaks,
    )


def _language(moment: Moment, issued_in: str | None) -> str:
    """Return the tag of the language that the report on show is written in."""
    own = "" if moment.job is None else moment.job.details.language
    return (own if issued_in is None else issued_in) or ENGLISH.tag


def title_of(record: TestRecord) -> str:
    """Return a test in a few words."""
    stage = f", {record.plan.stage}" if record.plan.stage else ""
    state = "" if record.state is RecordState.COMPLETE else f", {record.state}"
    if record.rig.typed:
        state += say(", typed")
    return say(
        "Test {number}, {started}{stage}{state}",
        number=record.id,
        started=f"{record.started.astimezone():%d.%m.%Y %H:%M}",
        stage=stage,
        state=state,
    )


def _missing_of(moment: Moment, shown: ShownTest | None, office: str, *, no_test: bool) -> tuple[Missing, ...]:
    if moment.job is None or (shown is None and not no_test):
        return ()
    details = moment.job.details
    found = tuple(_unnamed(details)) if no_test or shown is None else missing(shown, details)
    nameless = Missing(say("The office has no name to stand on the report."), f"{OF_OFFICE}name")
    return found if office.strip() else (*found, nameless)


def _unnamed(details: JobDetails) -> list[Missing]:
    return [
        Missing(say("The {name} is not named.", name=name), field)
        for field, name, value in (
            ("tester", say("tester"), details.tester),
            ("client", say("client"), details.client),
            ("site", say("site"), details.site),
        )
        if not value.strip()
    ]


def missing(shown: ShownTest, details: JobDetails) -> tuple[Missing, ...]:
    """Return what the report lacks: first what can still be entered, then what belongs to the test itself."""
    items = _unnamed(details)
    building, plan = shown.plan.building, shown.plan
    items += [
        Missing(say("This test has no {name}; entered now, it counts from the next test on.", name=name), field)
        for field, name, value in (
            ("volume", say("volume"), building.volume_m3),
            ("envelope", say("envelope area"), building.envelope_area_m2),
            ("floor", say("floor area"), building.floor_area_m2),
            ("height", say("height"), building.height_m),
            ("wind", say("wind"), plan.air.wind_m_s),
            ("limit", say("limit"), plan.limit),
        )
        if value is None and (field != "limit" or plan.kind is TestKind.CODE)
    ]
    if shown.state not in (RecordState.COMPLETE, RecordState.RECORDING):
        items.append(Missing(say("The test was {state} before its end.", state=say(shown.state))))
    items += [
        Missing(
            say("{direction}: no zero-flow pressure after the points.", direction=say(run.direction.value.capitalize()))
        )
        for run in shown.runs
        if run.zero_after_pa is None
    ]
    return tuple(items)


def file_stem(job_name: str, number: int) -> str:
    """Return a file name without ending that every system takes."""
    plain = re.sub(r"[^\w.-]+", "-", job_name).strip("-.") or "job"
    return f"{plain}-test-{number}"


def _recording(moment: Moment, shown: ShownTest) -> bool:
    return moment.busy and shown.live


def _why(moment: Moment, shown: ShownTest | None) -> str:
    if moment.job is None:
        return say("Open a job: the report is made from it.")
    if shown is None:
        return say("There is no test yet. The report is made from the first one.")
    if _recording(moment, shown):
        return say("The test is still running. The report follows when it has ended.")
    if shown.result is None:
        reason = shown.gap or say("Nothing has been read yet.")
        return say("This test has no result: {reason}", reason=reason)
    return ""
