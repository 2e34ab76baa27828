"""Mending a test that runs: a point once more, another flow range, the steps that are done again."""

from __future__ import annotations

from collections.abc import Sequence

from acquisition.bench import Bench
from acquisition.points import FIT_RANGE
from acquisition.regimes import AFTER_STEP, BEFORE_STEP
from acquisition.rig import RigSpec
from acquisition.sleep import lasting_words
from acquisition.steps import Approach, Ask, GoTo, MeasureZero, Step, StopFan, WindowKind
from drivers.clock import seconds

LASTING = "lasting-step"
STAYS, PUT_BACK = "It stays so: strike the points before", "It is put back: strike the points after"
KEEP_ALL, ANEW = "Keep all points", "Begin this direction again"
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


def ask_to_fit(spec: RigSpec, fan: int, name: str) -> Ask:
    """Return what is asked when somebody wants another range while the fan ran; the first choice says that it is in."""
    of_fan = f" on fan {fan + 1}" if spec.further else ""
    old = spec.fitted_ranges.now[fan].name
    text = f"The fan was stopped. Fit flow range {name}{of_fan}; the point is then begun again."
    return Ask(FIT_RANGE, text, (f"Range {name} is fitted", f"Range {old} stays fitted"))


def ask_lasting(sentence: str) -> Ask:
    """Return what is asked when the house stays leakier or tighter than it was; the fan rests meanwhile."""
    text = f"{sentence} The fan was stopped: go and look. What became of it?"
    return Ask(LASTING, text, (STAYS, PUT_BACK, KEEP_ALL, ANEW))


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
        late_ns = now_ns - seconds(NOTICED_AFTER_S)
        for window in progress.points_since(late_ns):
            target_pa = progress.strike_to_repeat(window, AFTER_STEP)
            if target_pa is not None:
                bench.again_pa.append(abs(target_pa))
        bench.vigil.recall(bench.line)
    progress.mark(LASTING, f"Answered: {choice}.", now_ns)


def take_again(bench: Bench, window: int, now_ns: int) -> None:
    """Strike a point and have its target taken once more; only one of the running direction can be."""
    target_pa = bench.progress.strike_to_repeat(window)
    if target_pa is None:
        bench.progress.mark("not-again", "Only a point of the running direction can be taken again.", now_ns)
    else:
        bench.again_pa.append(abs(target_pa))
