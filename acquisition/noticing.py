"""What the vigil noticed is written down: a flag, a point that is spoilt, a nudge of the fan, a question."""

from __future__ import annotations

from acquisition.bench import Bench
from acquisition.execution import Executor
from acquisition.openrig import OpenRig
from acquisition.repair import question_of
from acquisition.sight import sight_of
from acquisition.steps import Ask
from acquisition.typedgauge import ASKED_FOR
from acquisition.vigil.findings import TIME_GAP

FASTEST_NUDGED = 0.97
"""A fan near its highest speed cannot swing: its pressure would seem deaf."""


def notice(bench: Bench, rig: OpenRig, executor: Executor | None, now_ns: int, *, asks: bool) -> Ask | None:
    """Let the vigil look while a step runs; return what has to be asked at once, where somebody is there to `ask`."""
    if executor is None or bench.progress.current is None or not bench.vigil.due(now_ns):
        return None
    if rig.spec.by_hand & ASKED_FOR or rig.script is not None:
        # A value now and then shows nothing of what happens in between; a record says itself what was noticed.
        return None
    seen = bench.vigil.look(sight_of(bench, executor.activity, executor.elapsed_s(now_ns), now_ns))
    stood, bench.unwatched = bench.unwatched, False
    question: Ask | None = None
    for found in seen:
        if stood and found is TIME_GAP:
            continue
        bench.progress.flag(found.id, found.severity, found.sentence)
        bench.spoilt = bench.spoilt or found.spoils
        if asks and question is None:
            question = question_of(bench, rig.spec, found, now_ns)
    if bench.vigil.hose.suspected and bench.controller.held_speed < FASTEST_NUDGED:
        bench.controller.nudge()
    return question
