"""What carrying out a step means: an executor is ticked until it says that the step has ended. It never waits."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Protocol

from acquisition.bench import Bench
from acquisition.snapshot import Activity
from acquisition.steps import StepResult


@dataclass(frozen=True, slots=True)
class Done:
    """The step has ended with this result."""

    result: StepResult = None


@dataclass(frozen=True, slots=True)
class Retake:
    """The step was spoiled: go back to the last checkpoint and do it again."""


class Executor(Protocol):
    """One running step."""

    activity: Activity
    total_s: float | None

    def elapsed_s(self, now_ns: int) -> float:
        """Return for how long it has run, an averaging since its window was opened."""
        ...

    def tick(self, bench: Bench, now_ns: int) -> Done | Retake | None:
        """Do what is due; return `Done` when the step has ended, `Retake` when it was spoiled."""
        ...
