"""Steps with gauges that a person reads and types: a point is what was typed while it was taken.

The program cannot watch over such a rig: it asks for each value, and the person has the last word on the fan.
"""

from __future__ import annotations

from collections.abc import Collection

from acquisition.bench import Bench
from acquisition.execution import Done, Executor
from acquisition.executors import Timed, executor_for
from acquisition.fanbyhand import AtOnce, HandAveraging, hand_executor_for
from acquisition.rig import FAN_FLOWS, FLOW_ELEMENTS, FLOWS, Role
from acquisition.sentences import pressure
from acquisition.snapshot import Activity, Severity
from acquisition.steps import Approach, Average, CheckHoses, MeasureZero, Settle, Step, StopFan, WindowKind
from acquisition.watchdog import HIGHEST_PA, WRONG_SIGN_PA

FEWEST_ZEROS = 10
"""So many values of the zero-flow pressure are typed at least: ISO 9972 asks for ten (from memory)."""
LEAST_PA = 5.0
"""What is less was the answer to another question, such as that for the zero-flow pressure."""
ASKED_FOR = frozenset({Role.ENVELOPE, *FLOWS, *FLOW_ELEMENTS})
"""The roles whose readings a test waits for when they are typed; air data counts as it was typed last."""
NAMES = {
    Role.ENVELOPE: "the envelope pressure",
    Role.FLOW: "the flow",
    Role.FLOW_ELEMENT: "the flow-element pressure",
    Role.FLOW_2: "the flow of fan 2",
    Role.FLOW_3: "the flow of fan 3",
    Role.FLOW_4: "the flow of fan 4",
    Role.FLOW_ELEMENT_2: "the flow-element pressure of fan 2",
    Role.FLOW_ELEMENT_3: "the flow-element pressure of fan 3",
    Role.FLOW_ELEMENT_4: "the flow-element pressure of fan 4",
}


class TypedZero(Timed):
    """Waits until the time is over and enough values have been typed."""

    activity = Activity.ZERO
    wanted = (Role.ENVELOPE,)

    def __init__(self, step: MeasureZero) -> None:
        """Keep the step."""
        super().__init__()
        self._step = step
        self.total_s = step.seconds
        self.words = ""

    def tick(self, bench: Bench, now_ns: int) -> Done | None:
        """Count what was typed."""
        bench.controller.rest()
        bench.target_pa = None
        if self._start_ns is None:
            bench.progress.open_window(self._step.kind, now_ns, None)
        passed_s = self.elapsed_s(now_ns)
        assert self._start_ns is not None
        count = _typed(bench, Role.ENVELOPE, self._start_ns)
        left_s = max(self._step.seconds - passed_s, 0.0)
        self.words = (
            f"With the fan off and covered read the gauge every few seconds and type each value: {count} of "
            f"{max(FEWEST_ZEROS, count)} typed, {left_s:.0f} s to go."
        )
        if count < FEWEST_ZEROS or left_s > 0.0:
            return None
        zero = bench.progress.close_zero(self._step.kind, self._start_ns, now_ns)
        if zero is None:
            self._start_ns = None
            return None
        if self._step.kind is WindowKind.ZERO_BEFORE:
            bench.zero_pa = zero.mean_pa
        return Done(zero)


class TypedPoint(Timed):
    """Waits until pressure and flow have been typed; a pressure that cannot be is said, and both are typed again."""

    activity = Activity.AVERAGE

    def __init__(self, roles: tuple[Role, ...]) -> None:
        """`roles` are to be typed."""
        super().__init__()
        self._roles = self.wanted = roles
        self.words = ""

    def tick(self, bench: Bench, now_ns: int) -> Done | None:
        """Take the point as soon as there is a value of each."""
        if self._start_ns is None:
            bench.progress.open_window(WindowKind.POINT, now_ns, bench.target_pa)
        self.elapsed_s(now_ns)
        assert self._start_ns is not None
        wrong = self._wrong(bench, self._start_ns)
        if wrong:
            bench.progress.drop_open_window()
            bench.progress.flag("typed-wrong", Severity.ATTENTION, f"{wrong} Type the values of this point again.")
            self._start_ns, self.wanted = None, self._roles
            return None
        start_ns = self._start_ns
        self.wanted = tuple(role for role in self._roles if not _typed(bench, role, start_ns))
        self.words = (
            f"Set the fan until the gauge shows about {pressure(bench.target_pa or 0.0)}. When it stands, type "
            f"{_listed(self.wanted)}."
        )
        if self.wanted:
            return None
        point = bench.progress.close_point(start_ns, now_ns, bench.target_pa)
        if point is None:
            self._start_ns = None
            return None
        bench.line.add(bench.induced(point.envelope_pa), point.flow_m3_h)
        return Done(point)

    def _wrong(self, bench: Bench, start_ns: int) -> str:
        """Return what is wrong with the newest pressure that was typed, empty for nothing."""
        _, values = bench.live.since(Role.ENVELOPE, start_ns)
        if not len(values):
            return ""
        typed = float(values[-1])
        if abs(typed) > HIGHEST_PA:
            return f"{typed:g} Pa was typed: no test goes beyond {HIGHEST_PA:g} Pa."
        if bench.induced(typed) < -WRONG_SIGN_PA:
            sign = "below" if bench.sign < 0 else "above"
            return f"{typed:g} Pa was typed: indoors minus outdoors has to be {sign} zero in this direction."
        if bench.induced(typed) < LEAST_PA:
            return f"{typed:g} Pa was typed, as good as nothing: the target is {pressure(bench.target_pa or 0.0)}."
        return ""


class TypedFlow(HandAveraging):
    """Averages a pressure that the program reads until the flow has been typed too."""

    def __init__(self, step: Average, roles: tuple[Role, ...]) -> None:
        """`roles` are the flows to be typed."""
        super().__init__(step)
        self._missing = self.wanted = roles
        self.words = f"Hold the fan as it is, and type {_listed(roles)}."

    def _wants_more(self, bench: Bench, elapsed_s: float, now_ns: int) -> bool:
        """Go on for as long as a flow is missing."""
        start_ns = now_ns if self._start_ns is None else self._start_ns
        self.wanted = tuple(role for role in self._missing if not _typed(bench, role, start_ns))
        return bool(self.wanted) or super()._wants_more(bench, elapsed_s, now_ns)


def undriven_executor_for(step: Step, by_hand: Collection[Role]) -> Executor | None:
    """Return the executor of a step where a person turns the fan, and types the readings in the roles `by_hand`."""
    # Where both are typed the flow itself counts, as in the result.
    flows = tuple(next(role for role in pair if role in by_hand) for pair in FAN_FLOWS if set(pair) & set(by_hand))
    if Role.ENVELOPE not in by_hand:
        return TypedFlow(step, flows) if flows and isinstance(step, Average) else hand_executor_for(step)
    match step:
        case Approach() | CheckHoses() | Settle() | StopFan():
            return AtOnce()
        case MeasureZero():
            return TypedZero(step)
        case Average():
            return TypedPoint((Role.ENVELOPE, *flows))
        case _:
            return executor_for(step)


def _typed(bench: Bench, role: Role, start_ns: int) -> int:
    return len(bench.live.since(role, start_ns)[1])


def _listed(roles: tuple[Role, ...]) -> str:
    return " and ".join(NAMES[role] for role in roles)
