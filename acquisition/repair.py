"""Mending a test that runs: a point once more, another flow range, the steps that are done again."""

from __future__ import annotations

from collections.abc import Sequence

from acquisition.bench import Bench
from acquisition.points import FIT_RANGE
from acquisition.rig import RigSpec
from acquisition.steps import Approach, Ask, GoTo, Step


def steps_again(since_checkpoint: Sequence[Step], bench: Bench | None) -> list[Step]:
    """Return the steps since the last checkpoint, with an approach where the way to their target is not known."""
    steps = list(since_checkpoint)
    goal = next((step for step in steps if isinstance(step, GoTo | Approach)), None)
    if isinstance(goal, GoTo) and (bench is None or not bench.controller.curve.known):
        steps.insert(steps.index(goal), Approach(goal.target_pa))
    return steps


def ask_to_fit(spec: RigSpec, fan: int, name: str) -> Ask:
    """Return what is asked when somebody wants another range while the fan ran; the first choice says that it is in."""
    of_fan = f" on fan {fan + 1}" if spec.further else ""
    old = spec.fitted_ranges.now[fan].name
    text = f"The fan was stopped. Fit flow range {name}{of_fan}; the point is then begun again."
    return Ask(FIT_RANGE, text, (f"Range {name} is fitted", f"Range {old} stays fitted"))


def take_again(bench: Bench, window: int, now_ns: int) -> None:
    """Strike a point and have its target taken once more; only one of the running direction can be."""
    target_pa = bench.progress.strike_to_repeat(window)
    if target_pa is None:
        bench.progress.mark("not-again", "Only a point of the running direction can be taken again.", now_ns)
    else:
        bench.again_pa.append(abs(target_pa))
