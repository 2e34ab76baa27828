"""The limits that a result was held against, each with its probability and what would settle it."""

from __future__ import annotations

import math

from acquisition.languages import ENGLISH, Language
from acquisition.told.table import Row, Table, Tone
from acquisition.told.texts import limit_text
from analysis.effective import QUANTITIES
from analysis.limits import PublishedLimit, shipped_limits
from analysis.records import Limit, TestResult, Verdict
from analysis.units import Display, unit_symbol
from analysis.verdict import settling_words

TONES = {"meets": Tone.GOOD, "does not meet": Tone.BAD, "cannot tell": Tone.OPEN}
CERTAIN = 0.995
STAGE = "stage"
"""Id of the limit that a stage has of its own."""
NO_LIMITS = "No limit was chosen. The Job place and `airseam limits` list those of codes and programmes."


def verdict_table(result: TestResult, display: Display) -> Table:
    """Return every limit with its verdict."""
    rows = tuple(_row(item, display) for item in result.verdicts)
    heads = ("", "At most", "Probability of meeting it", "Verdict")
    notes = ("An adopted edition, amendments and the local authority decide which limit counts.",) if rows else ()
    return Table("Limits", heads, rows, notes, NO_LIMITS)


def limit_title(limit: Limit, language: Language = ENGLISH) -> str:
    """Return what a limit is called: that of the stage, or the title of the published one."""
    published = published_limit(limit.id)
    if published is not None:
        return language.say(published.title)
    return language.say("Limit of this stage") if limit.id == STAGE else limit.id


def published_limit(limit_id: str) -> PublishedLimit | None:
    """Return a limit of the list by its id, None where it is none of them."""
    return next((item for item in shipped_limits().limits if item.id == limit_id), None)


def likelihood(probability: float, language: Language = ENGLISH) -> str:
    """Return a probability in percent that never claims to be certain."""
    if math.isnan(probability):
        return language.say("unknown")
    if probability > CERTAIN:
        return language.say("over 99 %")
    if probability < 1 - CERTAIN:
        return language.say("under 1 %")
    return f"{100 * probability:.0f} %"


def _row(item: Verdict, display: Display) -> Row:
    quantity = QUANTITIES[item.limit.quantity]
    bound = f"{limit_text(item.limit.value, quantity.kind, display)} {unit_symbol(quantity.kind, display)}"
    published = published_limit(item.limit.id)
    notes = [settling_words(item.settling)] if item.settling is not None else []
    if published is not None:
        notes.append(f"{published.authority} {published.edition}, {published.applies}; {published.provenance.words}.")
    title = f"{limit_title(item.limit)} ({quantity.symbol})"
    return Row((title, bound, likelihood(item.probability), item.verdict), " ".join(notes), TONES[item.verdict])
