"""What the method asks for, item by item: met, not met, or still to come."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from acquisition.plan import TestPlan
from acquisition.report.names import check_value
from acquisition.told.titles import method_title
from analysis.methods import method_of
from analysis.records import Check
from analysis.units import Display
from gui.theme import SIGNS, Tone
from gui.viewmodels.moment import Moment
from gui.viewmodels.retold import retold
from gui.words import say


@dataclass(frozen=True, slots=True)
class CheckRow:
    """One requirement."""

    sign: str
    tone: Tone
    text: str
    value: str
    tip: str


@dataclass(frozen=True, slots=True)
class CheckPicture:
    """The list. Failed items come first."""

    title: str
    count: str
    tone: Tone
    rows: tuple[CheckRow, ...]
    empty: str


def check_picture(moment: Moment) -> CheckPicture:
    """Return the list of the test that is shown."""
    shown = moment.shown
    plan = shown.plan if shown is not None else (moment.job.plan if moment.job is not None else None)
    title = " ".join((say("Is this test valid?"), method_title(plan.method) if plan is not None else "")).strip()
    if shown is None or shown.result is None:
        return CheckPicture(title, "", Tone.QUIET, (), _none_yet(plan))
    over = not (moment.busy and shown.live)
    merged = _by_id([run.checks for run in shown.result.runs])
    rows = [_row(checks, moment.display, over=over) for checks in merged]
    rows.sort(key=lambda row: row.tone is not Tone.BAD)
    failed = sum(row.tone is Tone.BAD for row in rows)
    open_items = sum(row.tone in (Tone.QUIET, Tone.ATTENTION) for row in rows)
    count, tone = _count(failed, open_items, len(rows), over=over)
    return CheckPicture(title, count, tone, tuple(rows), "")


def _none_yet(plan: TestPlan | None) -> str:
    if plan is not None and method_of(plan.method).fewest_points == 1:
        return say("The requirements of the method are checked from the first point on.")
    return say("The requirements of the method are checked from two points on.")


def _by_id(lists: Sequence[Sequence[Check]]) -> list[list[Check]]:
    """Return the checks of all directions, those of one requirement together, in the method's order."""
    groups: dict[str, list[Check]] = {}
    for checks in lists:
        for check in checks:
            groups.setdefault(check.id, []).append(check)
    return list(groups.values())


def _row(checks: Sequence[Check], display: Display, *, over: bool) -> CheckRow:
    worst = min(checks, key=lambda check: (check.ok is not False, check.ok is not None))
    unknown = Tone.ATTENTION if over else Tone.QUIET
    tone = {True: Tone.GOOD, False: Tone.BAD, None: unknown}[worst.ok]
    tip = say("{text}. Clause {clause}, {source}.", text=retold(worst.text), clause=worst.clause, source=worst.source)
    return CheckRow(SIGNS[tone], tone, retold(worst.text), _values(checks, display), tip)


def _values(checks: Sequence[Check], display: Display) -> str:
    """Return what each direction gave, with the unit once."""
    texts = [check_value(check, display) for check in checks]
    unit = checks[0].unit
    if len(texts) > 1 and all(texts) and unit:
        texts = [text.removesuffix(unit).strip() for text in texts[:-1]] + texts[-1:]
    return " | ".join(dict.fromkeys(text for text in texts if text)) if len(set(texts)) > 1 else texts[0]


def _count(failed: int, open_items: int, total: int, *, over: bool) -> tuple[str, Tone]:
    if failed:
        return say("{failed} of {total} not met", failed=failed, total=total), Tone.BAD
    if open_items:
        words = say("could not be checked") if over else say("still to come")
        return say(
            "{open_items} of {total} {words}", open_items=open_items, total=total, words=words
        ), Tone.ATTENTION if over else Tone.QUIET
    return say("all {total} met", total=total), Tone.GOOD
