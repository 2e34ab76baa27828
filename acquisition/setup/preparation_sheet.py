"""What a client is asked to have ready: plain text, one page."""

from __future__ import annotations

from acquisition.plan import TestPlan
from acquisition.setup.openings import OpeningState, openings_for
from acquisition.told.titles import method_title

BEFORE = (
    "No fire for 24 hours before the test; ashes cold and taken out.",
    "Heating and hot water can be switched off by you or by us; tell us where.",
    "All outside doors and windows are hung and close; water traps are filled.",
    "Power at the entrance. Nobody goes in or out for one to two hours.",
    "Loose sheeting, ceilings and parts withstand the pressure of a strong wind.",
    "Tell us of asbestos, vermiculite, mould, alarms that call somebody, and people who are ill.",
)
CLOSING = "Local codes and licensed practice decide what is asked of whom; this sheet does not replace them."


def preparation_sheet(plan: TestPlan, name: str) -> str:
    """Return the sheet for the next stage of a job."""
    stage = f", stage: {plan.stage}" if plan.stage else ""
    lines = [f"Getting ready for the air-leakage test of {name}{stage}", method_title(plan.method), ""]
    lines += ["Before the day", *(f"[ ] {item}" for item in BEFORE), "", "On the day"]
    for opening, state in openings_for(plan):
        who = " (by the tester)" if state is OpeningState.SEALED else ""
        lines.append(f"[ ] {opening.name}: {state}{who}")
    lines += ["", "Ready on ______________   Signature ______________________", "", CLOSING]
    return "\n".join(lines) + "\n"
