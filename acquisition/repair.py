"""Mending a test that runs: a point once more, another flow range, the steps that are done again."""

from __future__ import annotations

from collections.abc import Sequence

from acquisition.bench import Bench
from acquisition.multipoint import ALL_THE_SAME
from acquisition.progress import TAKEN_AGAIN
from acquisition.rangedoubt import LASTING, OUTSIDE, ask_which_range, correct_before
from acquisition.regimes import AFTER_STEP, BEFORE_STEP
from acquisition.rig import RigSpec
from acquisition.sleep import lasting_words
from acquisition.steps import Approach, Ask, GoTo, MeasureZero, Step, StopFan, WindowKind
from acquisition.vigil.findings import Finding
from drivers.clock import seconds

STAYS, PUT_BACK = "It stays so: strike the points before", "It is put back: strike the points after"
KEEP_ALL, ANEW = "Keep all points", "Begin this direction again"
PUT_RIGHT, IS_RIGHT = "It is put right: go on", "Nothing was wrong: go on"
HOSE_OFF = "flow-hose-off"
MOST_QUESTIONS = 2
"""So often one thing is asked about in a direction; after that it is only said."""
BY_A_PERSON = frozenset({HOSE_OFF, "flow-hose-reversed", "hoses-swapped", "fan-stopped"})
"""Findings that no point can be taken with before somebody has put things right."""
FALLING_PA_S, FALLING_S = 1.0, 2.0
"""A fan that coasts because the pressure ran away moves nothing either: nobody is asked about its hose then."""
LONG_GAP_S = 300.0
"""After so long weather and temperatures may have moved the zero-flow pressure (our choice)."""
NOTICED_AFTER_S = 10.0
"""So long it takes until a step is called lasting: a point that ended since then may hold some of it."""


def steps_again(since_checkpoint: Sequence[Step], bench: Bench | None) -> list[Step]:
    """Return the steps since the last checkpoint, with an approach where the way to their target is not known."""
    steps = list(since_checkpoint)
    goal = next((step for step in steps if isinstance(step, GoTo | Approach)), None)
    if isinstance(goal, GoTo) and (bench is None or not bench.controller.curve.known):
        steps.insert(steps.index(goal), Approach(goal.target_pa))
    return steps


def looking_again(bench: Bench | None, slept_s: float, *, shutter: bool) -> tuple[Step, ...]:
    """Return what comes first after the computer slept: a look round, after long a zero-flow record too."""
    text = (
        f"The computer slept for {lasting_words(slept_s)}. Look again: windows and outside doors closed, seals in "
        "place, hoses where they were."
    )
    look = Ask("set-up-again", text, ("All is as it was",))
    run = bench.progress.current if bench is not None else None
    if not slept_s:
        return ()
    if bench is None or run is None or slept_s <= LONG_GAP_S or not bench.progress.points_taken():
        return (look,)
    zero = MeasureZero(WindowKind.ZERO_AFTER, bench.progress.plan.zero_s)
    if shutter:
        return (look, StopFan(), zero)
    cover = Ask("cover-fan", "Cover the fan: the zero-flow pressure is read once more.", ("The fan is covered",))
    uncover = Ask("uncover-fan", "Take the cover off the fan again for the next points.", ("The fan is open",))
    return (look, StopFan(), cover, zero, uncover)


def question_of(bench: Bench, spec: RigSpec, found: Finding, now_ns: int) -> Ask | None:
    """Return what is asked at once of a person about something that was noticed, None where it is only said."""
    if found.id in bench.declined or bench.asked[found.id] >= MOST_QUESTIONS:
        return None
    question = ask_which_range(bench, spec, found, now_ns)
    if question is None and found.id == LASTING and len(bench.line) and not bench.progress.plan.hold:
        question = ask_lasting(found.sentence, again=bench.asked[found.id] > 0)
    elif question is None and found.id in BY_A_PERSON and not (found.id == HOSE_OFF and _running_down(bench, now_ns)):
        question = ask_to_mend(found.id, found.sentence)
    bench.asked[found.id] += question is not None
    return question


def _running_down(bench: Bench, now_ns: int) -> bool:
    now = bench.induced_trend(now_ns, FALLING_S)
    return now is not None and now.mean_pa > 0.0 and now.slope_pa_s < -FALLING_PA_S


def ask_lasting(sentence: str, *, again: bool = False) -> Ask:
    """Return what is asked when the house stays leakier or tighter than it was; the fan rests meanwhile."""
    if again:
        text = (
            f"{sentence} The fan was stopped. It changed before: a flap or damper that opens with the pressure does "
            "so, and then all points belong to the house."
        )
        return Ask(LASTING, text, (KEEP_ALL, STAYS, PUT_BACK, ANEW))
    text = f"{sentence} The fan was stopped: go and look. What became of it?"
    return Ask(LASTING, text, (STAYS, PUT_BACK, KEEP_ALL, ANEW))


def ask_to_mend(found_id: str, sentence: str) -> Ask:
    """Return what is asked when nothing can be measured before somebody has been there; the fan rests meanwhile."""
    text = f"{sentence} The fan was stopped: put it right; the point is then begun again."
    return Ask(found_id, text, (PUT_RIGHT, IS_RIGHT))


def heed(bench: Bench, ask: Ask, choice: str, now_ns: int) -> bool:
    """Remember what an answer says of a finding: nobody is asked about what was right, or is left as it is.

    Return whether the way to the target is no longer known.
    """
    asked, bench.range_asked = bench.range_asked, None
    if choice == IS_RIGHT:
        bench.declined.add(ask.id)
    elif choice == ALL_THE_SAME:
        bench.declined |= BY_A_PERSON
    elif asked is None or (asked.about == OUTSIDE and choice == ask.choices[0]):
        return False
    elif choice == ask.choices[0]:
        repeat_late(bench, TAKEN_AGAIN, now_ns)
        bench.vigil.recall(bench.line)
    elif asked.before and choice == ask.choices[1]:
        correct_before(bench, asked.before, now_ns)
        return True
    else:
        bench.declined.add(asked.about)
    return False


def settle_lasting(bench: Bench, choice: str, now_ns: int) -> None:
    """Do with the points what was chosen: none is deleted, each strike has its reason."""
    progress = bench.progress
    if choice == STAYS:
        for window in progress.points_until(now_ns):
            target_pa = progress.strike_to_repeat(window, BEFORE_STEP)
            if target_pa is not None:
                bench.again_pa.append(abs(target_pa))
        bench.line.clear()
    elif choice == PUT_BACK:
        repeat_late(bench, AFTER_STEP, now_ns)
        bench.vigil.recall(bench.line)
    progress.mark(LASTING, f"Answered: {choice}.", now_ns)


def repeat_late(bench: Bench, reason: str, now_ns: int) -> None:
    """Have the points that may hold some of what was only just noticed taken once more."""
    for window in bench.progress.points_since(now_ns - seconds(NOTICED_AFTER_S)):
        target_pa = bench.progress.strike_to_repeat(window, reason)
        if target_pa is not None:
            bench.again_pa.append(abs(target_pa))


def take_again(bench: Bench, window: int, now_ns: int) -> None:
    """Strike a point and have its target taken once more; only one of the running direction can be."""
    target_pa = bench.progress.strike_to_repeat(window)
    if target_pa is None:
        bench.progress.mark("not-again", "Only a point of the running direction can be taken again.", now_ns)
    else:
        bench.again_pa.append(abs(target_pa))
