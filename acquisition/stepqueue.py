"""Which step of a test comes next: the procedure's own, or those since the last checkpoint once more."""

from __future__ import annotations

from collections import deque
from collections.abc import Iterable

from acquisition.bench import Bench
from acquisition.repair import steps_again
from acquisition.steps import Checkpoint, Procedure, Step, StepResult


class StepQueue:
    """Hands out the steps of one procedure after the other."""

    def __init__(self) -> None:
        """There is no procedure yet."""
        self._procedure: Procedure | None = None
        self._since_checkpoint: list[Step] = []
        self._again: deque[Step] = deque()

    def begin(self, procedure: Procedure) -> None:
        """Take a procedure; its first step is what comes after nothing."""
        self.close()
        self._procedure = procedure

    def after(self, result: StepResult) -> Step | None:
        """Return the step after one that ended with a result, None at the end of the procedure."""
        if self._again:
            return self._again.popleft()
        if self._procedure is None:
            return None
        try:
            step = self._procedure.send(result)
            while isinstance(step, Checkpoint):
                self._since_checkpoint.clear()
                step = self._procedure.send(None)
        except StopIteration:
            return None
        self._since_checkpoint.append(step)
        return step

    def repeat(self, bench: Bench | None, first: Iterable[Step] = ()) -> Step:
        """Return the first of the steps since the last checkpoint, which are done again after these."""
        self._again = deque([*first, *steps_again(self._since_checkpoint, bench)])
        return self._again.popleft()

    def close(self) -> None:
        """Let the procedure go."""
        if self._procedure is not None:
            self._procedure.close()
        self._procedure = None
        self._since_checkpoint.clear()
        self._again.clear()
