"""The zero-flow pressure of a held pressure: how old it is, and when it is to be read again."""

from __future__ import annotations

from acquisition.sealing.hold import HoldLook
from analysis.sealing.zeroage import ZeroDoubt, as_flow_m3_h
from analysis.units import Display, Quantity, format_value, unit_symbol
from gui.viewmodels.prompt import Prompt, PromptKind
from gui.words import mark, say

READ_AGAIN, LATER = mark("Read it again"), mark("Later")
LATER_S = 900.0
"""After so long it is asked once more."""
YOUNG_S = 90.0
_REASONS = {
    ZeroDoubt.TEMPERATURE: mark("The temperatures are no longer those at which it was read."),
    ZeroDoubt.WIND: mark("The wind is no longer that in which it was read."),
}


def zero_words(look: HoldLook | None) -> str:
    """Return how old the zero-flow pressure is, empty where none was read."""
    if look is None:
        return ""
    if look.zero.seconds < YOUNG_S:
        return say("zero-flow pressure just read")
    return say("zero-flow pressure {minutes} min old", minutes=f"{look.zero.seconds / 60.0:.0f}")


def zero_prompt(look: HoldLook | None, display: Display) -> Prompt | None:
    """Return the question whether the zero-flow pressure is read again, None while it is good."""
    if look is None or not look.zero.doubts or look.now_m3_h is None:
        return None
    reasons = [_REASONS[doubt] for doubt in look.zero.doubts if doubt in _REASONS]
    flow = as_flow_m3_h(look.zero.drift_pa, look.now_m3_h.value, look.levelling, look.held_pa)
    moved = f"{format_value(look.zero.drift_pa, Quantity.PRESSURE, display)} {unit_symbol(Quantity.PRESSURE, display)}"
    worth = f"{format_value(flow, Quantity.FLOW, display)} {unit_symbol(Quantity.FLOW, display)}"
    age = say("It was read {minutes} min ago.", minutes=f"{look.zero.seconds / 60.0:.0f}")
    return Prompt(
        PromptKind.ZERO,
        "zero-again",
        say("The zero-flow pressure has become old"),
        " ".join(
            [
                age,
                *(say(reason) for reason in reasons),
                say(
                    "It may have moved by {moved}, which looks like {worth}: the intervals carry that.",
                    moved=moved,
                    worth=worth,
                ),
            ]
        ),
        (READ_AGAIN, LATER),
        say("The fan stops for about a minute. Marks and drops stay; by what it has moved the flows are put right."),
    )
