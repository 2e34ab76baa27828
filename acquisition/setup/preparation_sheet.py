"""What a client is asked to have ready: plain text, one page."""

from __future__ import annotations

from acquisition.languages import ENGLISH, Language
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


def preparation_sheet(plan: TestPlan, name: str, language: Language = ENGLISH) -> str:
    """Return the sheet for the next stage of a job."""
    say, building = language.say, name
    if plan.stage:
        building = say("{building}, stage: {stage}", building=name, stage=plan.stage)
    title = say("Getting ready for the air-leakage test of {building}", building=building)
    lines = [title, method_title(plan.method), ""]
    lines += [say("Before the day"), *(f"[ ] {say(item)}" for item in BEFORE), "", say("On the day")]
    for opening, state in openings_for(plan):
        line = say("{where}: {what}", where=say(opening.name), what=say(state.value))
        lines.append(f"[ ] {line} {say('(by the tester)')}" if state is OpeningState.SEALED else f"[ ] {line}")
    ready, signature = say("Ready on"), say("Signature")
    lines += ["", f"{ready} ______________   {signature} ______________________", "", say(CLOSING)]
    return "\n".join(lines) + "\n"
