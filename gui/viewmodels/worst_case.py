"""The page of the worst case of exhaust fans: what is read now, what to do next, what the readings tell."""

from __future__ import annotations

from dataclasses import dataclass

from acquisition.told.table import Table
from acquisition.worstcase import ALL_OFF, READ_S, WorstCase
from analysis.units import Display, Quantity, format_value
from gui.words import mark, say

SUGGESTED = (
    mark("everything off"),
    mark("kitchen hood"),
    mark("bath fan"),
    mark("dryer"),
    mark("all exhaust fans"),
    mark("all exhaust fans, inside doors shut"),
)
"""Situations to choose from; any words of one's own may stand there."""


@dataclass(frozen=True, slots=True)
class WorstCasePicture:
    """The page. `live` is the pressure now, `next_words` stands in front of the list until somebody types."""

    live: str
    words: str
    next_words: str
    can_read: bool
    tables: tuple[Table, ...]


def worst_case_picture(
    found: WorstCase, tables: tuple[Table, ...], live_pa: float | None, *, busy: bool, display: Display
) -> WorstCasePicture:
    """Return the page; `live_pa` is the mean that would be read now, None without a gauge that reads."""
    live = "–" if live_pa is None else format_value(live_pa, Quantity.PRESSURE, display)
    seconds = f"{READ_S:.0f}"
    if busy:
        words = say("A test runs or a pressure is held: end it first. Here the test fan is off and covered.")
    elif live_pa is None:
        words = say("Connect the gauge that reads indoors against outdoors, its hose in the room of the appliance.")
    elif found.off is None:
        words = say(
            "Close windows and outside doors, cover the test fan, switch every fan and appliance off. Wait until the "
            "pressure stands, then read: the last {seconds} s count.",
            seconds=seconds,
        )
    else:
        words = say(
            "Switch on, wait until the pressure stands, then read: the last {seconds} s count.", seconds=seconds
        )
    known = {item.situation.words for item in found.lowerings}
    rest = [item for item in SUGGESTED[1:] if item not in known and say(item) not in known]
    return WorstCasePicture(
        live=live,
        words=words,
        next_words=say(ALL_OFF) if found.off is None else say(rest[0]) if rest else "",
        can_read=live_pa is not None and not busy,
        tables=tables,
    )
