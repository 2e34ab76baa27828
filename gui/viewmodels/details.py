"""What stands below the points: the checks, all quantities, the limits, the uncertainty, what it means."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from acquisition.told import (
    Table,
    budget_table,
    correction_tables,
    meaning_table,
    outlook_table,
    quantity_table,
    verdict_table,
)
from acquisition.told.headline import front_of
from acquisition.told.titles import fit_title, method_title
from analysis.estimators import fit_ids
from analysis.meaning import meaning_of
from analysis.methods import method_ids, method_of
from analysis.units import Display
from gui.theme import SIGNS, Tone
from gui.viewmodels.checks import CheckPicture, check_picture
from gui.viewmodels.moment import Moment
from gui.viewmodels.shown import OFFICIAL, ShownTest
from gui.words import mark, say

WORST_FIRST = {"does not meet": Tone.BAD, "cannot tell": Tone.ATTENTION, "meets": Tone.GOOD}
NOTHING_YET = mark("From two points on.")


class Detail(StrEnum):
    """The parts, in the order of their tabs."""

    CHECKS = "checks"
    NUMBERS = "quantities"
    LIMITS = "limits"
    BUDGET = "uncertainty"
    MEANING = "meaning"

    @property
    def word(self) -> str:
        """The name on the tab."""
        return say(_TABS[self])


_TABS = {
    Detail.CHECKS: mark("Checks"),
    Detail.NUMBERS: mark("Quantities"),
    Detail.LIMITS: mark("Limits"),
    Detail.BUDGET: mark("Uncertainty"),
    Detail.MEANING: mark("Meaning"),
}


@dataclass(frozen=True, slots=True)
class Choices:
    """Ids and words to choose from, and what is chosen."""

    options: tuple[tuple[str, str], ...]
    chosen: str


@dataclass(frozen=True, slots=True, eq=False)
class DetailPicture:
    """The panel. `tables` belong to the chosen part; `methods` and `fits` are there with the quantities only."""

    chosen: Detail
    tabs: tuple[str, ...]
    checks: CheckPicture
    tables: tuple[Table, ...]
    methods: Choices | None
    fits: Choices | None


def detail_picture(moment: Moment, chosen: Detail) -> DetailPicture:
    """Return the panel of the test that is shown."""
    checks = check_picture(moment)
    shown = moment.shown
    numbers = chosen is Detail.NUMBERS and shown is not None
    return DetailPicture(
        chosen=chosen,
        tabs=tuple(_tab(item, checks, shown) for item in Detail),
        checks=checks,
        tables=() if chosen is Detail.CHECKS else (_expected(moment, chosen) or _table(shown, chosen, moment.display),),
        methods=_methods(shown) if numbers and shown is not None else None,
        fits=_fits(shown) if numbers and shown is not None else None,
    )


def corrections_picture(moment: Moment) -> tuple[Table, ...]:
    """Return the corrections of the test that is shown, line by line."""
    shown = moment.shown
    if shown is None or shown.test is None or shown.result is None:
        return (Table(say("Corrections"), ("",), (), (), say(NOTHING_YET)),)
    return correction_tables(shown.test, shown.result, moment.display)


def _tab(item: Detail, checks: CheckPicture, shown: ShownTest | None) -> str:
    """Return the word of a tab, with the sign of the worst that is in it."""
    tone = Tone.QUIET
    if item is Detail.CHECKS:
        tone = checks.tone
    elif item is Detail.LIMITS and shown is not None and shown.result is not None:
        found = {verdict.verdict for verdict in shown.result.verdicts}
        tone = next((worst for word, worst in WORST_FIRST.items() if word in found), Tone.QUIET)
    sign = "" if tone is Tone.QUIET else SIGNS.get(tone, "")
    return f"{sign} {item.word}".strip()


def _expected(moment: Moment, chosen: Detail) -> Table | None:
    """Return what is expected of the uncertainty, before there is a result to tell it by."""
    snapshot, shown = moment.snapshot, moment.shown
    if chosen is not Detail.BUDGET or shown is None or not shown.live or shown.result is not None:
        return None
    return outlook_table(snapshot.outlook) if snapshot is not None and snapshot.outlook is not None else None


def _table(shown: ShownTest | None, chosen: Detail, display: Display) -> Table:
    result = shown.result if shown is not None else None
    if shown is None or result is None:
        return Table(chosen.word, ("",), (), (), shown.gap if shown is not None and shown.gap else say(NOTHING_YET))
    building = shown.plan.building
    match chosen:
        case Detail.LIMITS:
            return verdict_table(result, display)
        case Detail.BUDGET:
            front = front_of(result.method, building, next(iter(shown.plan.limits), None))
            return budget_table(result, display, front)
        case Detail.MEANING:
            return meaning_table(meaning_of(result, building, shown.plan.surroundings), display)
        case _:
            return quantity_table(result, building, display)


def _methods(shown: ShownTest) -> Choices:
    own = method_title(shown.plan.method)
    others = tuple((item, method_title(item)) for item in method_ids() if item != shown.plan.method)
    return Choices(((OFFICIAL, own), *others), shown.seen.method)


def _fits(shown: ShownTest) -> Choices:
    official = method_of(shown.seen.method or shown.plan.method).official_fit
    others = tuple((item, fit_title(item)) for item in fit_ids() if item != official)
    return Choices(((OFFICIAL, fit_title(official)), *others), shown.seen.fit)
