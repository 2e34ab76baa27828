"""The command that plays a recorded test back."""

from __future__ import annotations

import argparse
import sys
from pathlib import Path

from acquisition.commands.printing import display_of, write
from acquisition.commands.status import NOT_VALID, VALID
from acquisition.engine import Engine
from acquisition.job import Job, LoadedTest
from acquisition.replay import PlayedRig, exercise_text, play_clock, same_result
from acquisition.summary import summary_lines
from acquisition.terminal import attend
from acquisition.testfile import chosen
from analysis.errors import InvalidInput
from drivers.clock import Clock, ScaledClock, VirtualClock, WallClock


def replay(options: argparse.Namespace) -> int:
    """Play a test back, or write it down as an exercise."""
    if options.job is None and options.exercise_file is None:
        raise InvalidInput("replay", None, "--job FILE, --exercise-file TOML or both are needed")
    recorded = Job.open(options.file, WallClock(), read_only=True)
    try:
        loaded = recorded.load(chosen(recorded, options.test))
        if options.exercise_file is not None:
            write(options.exercise_file, exercise_text(loaded).encode(), "the exercise")
            print(options.exercise_file)
        return VALID if options.job is None else _played(recorded, loaded, options.job, options)
    finally:
        recorded.close()


def _played(recorded: Job, loaded: LoadedTest, path: Path, options: argparse.Namespace) -> int:
    """Play the test into a new job, print its result, and say whether it is the same."""
    inner: Clock = VirtualClock(loaded.record.started)
    if options.speed is not None:
        inner = ScaledClock(options.speed)
    clock = play_clock(loaded, inner)
    rig = PlayedRig(recorded, loaded, clock)
    engine = Engine(rig, clock, auto_answer=True)
    job = Job.create(path, clock, "Replay")
    plan = loaded.record.plan
    try:
        outcome = attend(engine, clock, plan, lambda: job.record(plan, loaded.record.rig), auto=True)
    finally:
        engine.close()
        job.close()
    shown = outcome.snapshot
    if shown.test is not None and shown.result is not None:
        print(*summary_lines(shown.test, shown.result, display_of(options.units)), sep="\n")
    same = same_result(loaded, shown.result)
    words = "the same to the digit as in the record" if same else "NOT that of the record"
    print(f"airseam: played back into {path}; the result is {words}", file=sys.stderr)
    return VALID if same else NOT_VALID
