"""Asks the person at the terminal for the readings that a test waits for, one at a time."""

from __future__ import annotations

from collections.abc import Callable
from typing import TextIO

from acquisition.engine import Engine
from acquisition.rig import FAN_FLOWS, Role
from acquisition.snapshot import Severity, Snapshot
from acquisition.typedgauge import NAMES
from analysis.errors import InvalidInput
from analysis.units import Display, Quantity, parse_value, unit_symbol
from drivers.clock import Clock, seconds

ARRIVE_S, LOOK_S = 3.0, 0.05
"""How long a value may take to arrive at the engine, and how often to look."""
DIRECT = tuple(direct for direct, _ in FAN_FLOWS)


class Typist:
    """Puts one question for each reading; a value that cannot be used is asked for again with a sentence."""

    def __init__(
        self, engine: Engine, clock: Clock, display: Display, read: Callable[[str], str | None], out: TextIO
    ) -> None:
        """`read` shows a prompt and returns the line that was typed, None when the person ends the test."""
        self._engine = engine
        self._clock = clock
        self._display = display
        self._read = read
        self._out = out
        self._said = ""
        self._flags = 0

    def look(self, shown: Snapshot) -> bool:
        """Ask for the next reading, if one is waited for; return whether the test is to go on."""
        if not shown.typing:
            return True
        role = shown.typing[0]
        task = shown.sentence.partition(":")[0]
        if task != self._said:
            self._said = task
            print(f"\n{shown.sentence}", file=self._out)
        if len(shown.flags) > self._flags:
            for flag in shown.flags[self._flags :]:
                if flag.severity is not Severity.NOTE:
                    print(flag.sentence, file=self._out)
        self._flags = len(shown.flags)
        value = self._value(role)
        if value is None:
            return False
        now = self._engine.snapshot()
        if role not in now.typing or (now.activity, now.target_pa) != (shown.activity, shown.target_pa):
            print("The test has gone on meanwhile: this value was left out.", file=self._out)
            return True
        before_ns = self._engine.live.newest_ns(role)
        self._engine.enter(role, value)
        limit_ns = self._clock.now_ns() + seconds(ARRIVE_S + self._clock.slack_s)
        while self._engine.live.newest_ns(role) == before_ns and self._clock.now_ns() < limit_ns:
            self._clock.wait_until(self._clock.now_ns() + seconds(LOOK_S))
        return True

    def _value(self, role: Role) -> float | None:
        """Return what was typed as a stored value, None at the end of input."""
        quantity = Quantity.FLOW if role in DIRECT else Quantity.PRESSURE
        name = NAMES[role]
        prompt = f"{name[:1].upper()}{name[1:]} ({unit_symbol(quantity, self._display)}): "
        while True:
            line = self._read(prompt)
            if line is None:
                return None
            try:
                return parse_value(line.strip(), quantity, self._display, name.removeprefix("the "))
            except InvalidInput as error:
                print(f"{error}.", file=self._out)
