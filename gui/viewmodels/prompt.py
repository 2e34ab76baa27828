"""What the window asks in the place where it matters: questions of the test, a pause, the reason for a strike."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from acquisition.multipoint import DO_NOT_TEST, NOT_TODAY
from acquisition.snapshot import EngineState
from drivers.instrument import LinkState
from gui.viewmodels.moment import Moment
from gui.words import mark, say


class PromptKind(StrEnum):
    """What the panel is for."""

    ASK = "ask"
    PAUSED = "paused"
    STRIKE = "strike"
    CLOSE = "close"
    OWED = "owed"
    RESUME = "resume"
    RANGE = "range"
    CORRECT = "correct"
    ZERO = "zero"


GO_ON = mark("Go on")
ACCEPT, END_TEST = mark("Go on with this instrument"), mark("End the test here")
STRIKE, LEAVE = mark("Strike the point"), mark("Leave it")
STRIKE_ALL, LEAVE_ALL = mark("Strike the points"), mark("Leave them")
PUT_BACK, CLOSE_ANYWAY = mark("Put it back first"), mark("Close all the same, with a reason")
RESUME, NOT_RESUME = mark("Go on with it"), mark("Leave it as it is")
CORRECT, NOT_CORRECT = mark("Correct the points"), mark("Leave them")
FIT, NOT_FIT = mark("Fit this range"), mark("Leave the range")
CLOSE, STAY = mark("Stop the fan and close"), mark("Stay")


@dataclass(frozen=True, slots=True)
class Prompt:
    """A question with its choices; the first one is the way on. `reasons` are offered where a text is asked for."""

    kind: PromptKind
    id: str
    title: str
    text: str
    choices: tuple[str, ...]
    caution: str = ""
    reasons: tuple[str, ...] = ()


def running_prompt(moment: Moment) -> Prompt | None:
    """Return the question of the running test, None when it asks nothing."""
    snapshot = moment.snapshot
    if snapshot is None:
        return None
    if snapshot.state is EngineState.IDLE and moment.job is not None and moment.job.interrupted:
        return resume_prompt(moment.job.interrupted)
    if snapshot.state is EngineState.ASKING and snapshot.ask is not None:
        ask = snapshot.ask
        return Prompt(PromptKind.ASK, ask.id, _title(ask.id), ask.text, _with_a_way_out(ask.choices), ask.caution)
    if snapshot.state is not EngineState.PAUSED:
        return None
    stranger = next((link for link in snapshot.links if link.state is LinkState.WRONG_INSTRUMENT), None)
    choices = (GO_ON, END_TEST) if stranger is None else (GO_ON, ACCEPT, END_TEST)
    lost = [link.sentence for link in snapshot.links if link.state is not LinkState.LINKED and link.sentence]
    return Prompt(
        PromptKind.PAUSED,
        f"paused {snapshot.paused_reason}",
        say("The test is paused"),
        snapshot.paused_reason,
        choices,
        " ".join(lost) or say("Nothing is lost: the test goes on from the beginning of the interrupted step."),
    )


def _with_a_way_out(choices: tuple[str, ...]) -> tuple[str, ...]:
    """Return the choices with one that ends the test, where none of them does."""
    return choices if {DO_NOT_TEST, NOT_TODAY} & set(choices) else (*choices, END_TEST)


def strike_prompt(windows: tuple[int, ...], targets: str, reasons: tuple[str, ...]) -> Prompt:
    """Return the question why points are struck."""
    named = " ".join(map(str, windows))
    if len(windows) > 1:
        title = say("Strike {count} points: {targets} Pa", count=len(windows), targets=targets)
        text = say("Why are they left out of the result? They stay in the record and can be restored.")
        return Prompt(PromptKind.STRIKE, named, title, text, (STRIKE_ALL, LEAVE_ALL), reasons=reasons)
    title = say("Strike the point at {target} Pa", target=targets)
    text = say("Why is it left out of the result? It stays in the record and can be restored.")
    return Prompt(PromptKind.STRIKE, named, title, text, (STRIKE, LEAVE), reasons=reasons)


def resume_prompt(interrupted: str) -> Prompt:
    """Return the question whether an interrupted test goes on."""
    return Prompt(
        PromptKind.RESUME,
        "resume",
        say("A test was interrupted"),
        say(
            "{interrupted} It can go on with the points that are still missing; the record says for how long it stood.",
            interrupted=interrupted,
        ),
        (RESUME, NOT_RESUME),
        say("You will be asked to look at the set-up, and at the safety questions where their answers are too old."),
    )


def range_prompt(fitted: str, names: tuple[str, ...]) -> Prompt:
    """Return the question which flow range is to be fitted."""
    return Prompt(
        PromptKind.RANGE,
        "range",
        say("Another flow range"),
        say(
            "Range {fitted} is fitted now. Which one comes in its place? A running fan is stopped first, and "
            "the point is begun again; each reading keeps the range that was fitted when it was made.",
            fitted=fitted,
        ),
        (FIT, NOT_FIT),
        reasons=tuple(name for name in names if name != fitted),
    )


def close_prompt() -> Prompt:
    """Return the question before the window closes during a test."""
    return Prompt(
        PromptKind.CLOSE,
        "close",
        say("A test is running"),
        say("Closing stops the fan and ends the test; what was read so far is kept."),
        (CLOSE, STAY),
    )


def owed_prompt(owed: tuple[str, ...]) -> Prompt:
    """Return the question before the window closes while something is not put back."""
    named = "; ".join(owed[:4]) + (say("; and more") if len(owed) > 4 else "")
    return Prompt(
        PromptKind.OWED,
        "owed",
        say("{count} things are not put back", count=len(owed)),
        f"{named}.",
        (PUT_BACK, CLOSE_ANYWAY),
        say("A water heater left off or an alarm left isolated harms the people who live here. The job stays open."),
        ("", say("Somebody else puts it back"), say("The work goes on another day")),
    )


def _title(ask_id: str) -> str:
    return {
        "safety": say("Safety"),
        "cover-fan": say("Cover the fan"),
        "uncover-fan": say("Open the fan"),
        "turn-fan": say("The other direction"),
        "outlook": say("Is today the day?"),
        "zeros-between": say("Zero-flow records between the points"),
        "fit-range": say("Another flow range"),
        "which-range": say("Which flow range is fitted?"),
        "set-up-again": say("Look at the set-up again"),
        "lasting-step": say("Something came off or closed"),
        "flow-hose-off": say("Nothing can be measured so"),
        "flow-hose-reversed": say("Nothing can be measured so"),
        "hoses-swapped": say("Nothing can be measured so"),
        "fan-stopped": say("Nothing can be measured so"),
        "reach": say("The fan reaches less"),
    }.get(ask_id, say("A question"))
