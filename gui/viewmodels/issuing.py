"""Issuing in the Report place: drafts and issued versions of one report, and what the next issue needs."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from acquisition.job import JobDetails
from acquisition.job.issues import Issue
from acquisition.kinds import TestKind
from gui.words import say

DRAFT = 0
"""Stands for the report as it would be issued now."""


@dataclass(frozen=True, slots=True)
class IssuePicture:
    """The panel. `versions` are pairs of an id (`DRAFT` or that of an issued report) and words.

    `note` says how the chosen version stands. With `again` a reason is asked for.
    """

    versions: tuple[tuple[int, str], ...]
    chosen: int
    note: str
    signer: str
    again: bool
    can_issue: bool


def issue_picture(
    issues: Sequence[Issue],
    chosen: int,
    number: str,
    *,
    kind: TestKind,
    signer: str,
    changed: Sequence[str],
    possible: bool,
) -> IssuePicture:
    """Return the panel of a test with these issued reports, oldest first.

    `number` is the one that comes next, `changed` names the fields that were edited since the last issue, `possible`
    says whether there is a report at all.
    """
    shown = next((item for item in issues if item.id == chosen), None)
    return IssuePicture(
        versions=((DRAFT, say("As it is now")), *((item.id, version_words(item)) for item in reversed(issues))),
        chosen=DRAFT if shown is None else shown.id,
        note=_issued_note(shown) if shown is not None else _draft_note(issues, number, kind, changed),
        signer=signer,
        again=bool(issues),
        can_issue=possible and shown is None,
    )


def version_words(issue: Issue) -> str:
    """Return an issued report in a few words."""
    number = issue.mark.number or say("Without a number")
    return (
        say("{number}, revision {revision}", number=number, revision=issue.mark.revision)
        if issue.mark.revision
        else number
    )


def changed_since(issue: Issue | None, then: JobDetails | None, now: JobDetails) -> tuple[str, ...]:
    """Return the fields of the job that were edited since it was issued."""
    if issue is None or then is None:
        return ()
    names = ("name", "site", "client", "tester", "note", "number", "place", "zone", "language")
    return tuple(name for name in names if getattr(then, name) != getattr(now, name))


def _issued_note(issue: Issue) -> str:
    mark = issue.mark
    reason = say(" Issued again: {reason}.", reason=mark.reason) if mark.reason else ""
    return say(
        "Issued {time}, signed by {signed_by}. It never changes.{reason}",
        time=f"{mark.utc.astimezone():%d.%m.%Y %H:%M}",
        signed_by=mark.signed_by,
        reason=reason,
    )


def _draft_note(issues: Sequence[Issue], number: str, kind: TestKind, changed: Sequence[str]) -> str:
    if not issues:
        if not kind.certified:
            return say("A draft. Made to find leaks: it is issued without a number.")
        if not number:
            return say("A draft. It has no number yet.")
        return say("A draft. It would be issued as {number}.", number=number)
    what = (
        say("Edited since the last issue: {changed}.", changed=", ".join(changed))
        if changed
        else say("As it was issued last.")
    )
    return say("{what} Another issue would be revision {count}.", what=what, count=len(issues))
