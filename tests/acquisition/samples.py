"""An invented test, read as an engine would read it: known leakage, small ripples, no chance."""

from __future__ import annotations

import math
from dataclasses import dataclass, field
from datetime import UTC, datetime

from acquisition.job import Recorder
from acquisition.plan import TestPlan
from acquisition.rig import InstrumentSpec, RigSpec, Role
from acquisition.series import WindowRecord
from acquisition.steps import WindowKind
from analysis.records import Air, Building, Direction, FlowRange, Limit
from drivers.clock import Clock, seconds
from drivers.reading import Quality, Reading

START = datetime(2026, 5, 4, 9, 12, tzinfo=UTC)
MIDDLE = FlowRange("middle", 183.0, 0.498, 8.0, 250.0)
BUILDING = Building("Mill Row 8", 300.0, 360.0, 120.0, 5.0, 40.0)
AIR = Air(indoor_c=21.0, outdoor_c=3.0, wind_m_s=1.5)
RIG = RigSpec(
    name="Demo rig",
    instruments=(
        InstrumentSpec(
            "gauge",
            "scpi-gauge",
            "sim:gauge",
            (("p1", Role.ENVELOPE), ("p2", Role.FLOW_ELEMENT), ("t1", Role.INDOOR), ("t2", Role.OUTDOOR)),
            "SG-0012",
        ),
        InstrumentSpec("fan", "scpi-fan", "sim:fan", serial="SF-0003"),
    ),
    fan="fan",
    ranges=(MIDDLE, FlowRange("narrow", 68.0, 0.502, 8.0, 250.0)),
    fitted="middle",
    shutter=True,
    simulated=True,
)
TARGETS_PA = (60.0, 54.0, 48.0, 43.0, 38.0, 33.0, 28.0, 23.0, 18.0, 13.0)
LEAKAGE_M3_H_PA_N = 41.0
EXPONENT = 0.64
ZERO_PA = -1.0


def plan(*directions: Direction, limit: float | None = 2.0) -> TestPlan:
    """Return the plan of the invented test."""
    return TestPlan(
        building=BUILDING,
        air=AIR,
        stage="membrane up",
        limit=None if limit is None else Limit("stage", "n50_per_h", limit),
        directions=directions or (Direction.DEPRESSURIZE,),
        targets_pa=TARGETS_PA,
    )


@dataclass(slots=True)
class Rehearsal:
    """Plays a test into a recorder on a clock."""

    clock: Clock
    recorder: Recorder
    rate_hz: int = 10
    zero_s: float = 6.0
    average_s: float = 4.0
    sequence: int = 0
    windows: list[WindowRecord] = field(default_factory=list)

    def run(self, direction: Direction, targets_pa: tuple[float, ...] = TARGETS_PA) -> None:
        """Record zero, points, zero of one direction."""
        self.begin(direction)
        self.zero(WindowKind.ZERO_BEFORE)
        for target_pa in targets_pa:
            self.point(direction, target_pa)
        self.zero(WindowKind.ZERO_AFTER)
        self.end()

    def begin(self, direction: Direction) -> None:
        """Begin a run."""
        self.recorder.begin_run(direction, AIR, self.clock.now_ns(), self.clock.utc())

    def end(self) -> None:
        """End a run."""
        self.recorder.fan(self.clock.now_ns(), 0.0)
        self.recorder.end_run("complete", self.clock.now_ns(), self.clock.utc())

    def zero(self, kind: WindowKind) -> None:
        """Record a zero-flow pressure."""
        self.recorder.fan(self.clock.now_ns(), 0.0)
        self._window(kind, None, self.zero_s, 0.0, 0.0)

    def point(self, direction: Direction, target_pa: float) -> None:
        """Record a point; the readings ripple about a power law."""
        induced_pa = target_pa * direction.sign
        self.recorder.fan(self.clock.now_ns(), target_pa / 100)
        flow_m3_h = LEAKAGE_M3_H_PA_N * target_pa**EXPONENT * (1 + 0.004 * math.sin(target_pa))
        element_pa = (flow_m3_h / MIDDLE.coefficient_m3_h_pa_n) ** (1 / MIDDLE.exponent)
        self._window(WindowKind.POINT, induced_pa, self.average_s, induced_pa, element_pa)

    def _window(
        self, kind: WindowKind, target_pa: float | None, length_s: float, induced_pa: float, element_pa: float
    ) -> None:
        start_ns = self.clock.now_ns()
        for _ in range(round(length_s * self.rate_hz)):
            self.read(induced_pa, element_pa)
        window = WindowRecord(len(self.windows) + 1, kind, start_ns, self.clock.now_ns(), target_pa)
        self.windows.append(window)
        self.recorder.window(window)

    def read(self, induced_pa: float, element_pa: float) -> None:
        """Record one reading of every channel and wait for the next."""
        ripple = math.sin(self.sequence * 1.7)
        values = {
            Role.ENVELOPE: ("gauge.p1", ZERO_PA + induced_pa + 0.4 * ripple),
            Role.FLOW_ELEMENT: ("gauge.p2", element_pa * (1 + 0.01 * math.cos(self.sequence * 2.3))),
            Role.INDOOR: ("gauge.t1", 21.0 - self.sequence * 1e-4),
            Role.OUTDOOR: ("gauge.t2", 3.0),
        }
        now_ns, utc_ns = self.clock.now_ns(), round(self.clock.utc().timestamp() * 1e6) * 1000
        self.recorder.readings(
            [
                (role, Reading(channel, value, now_ns, utc_ns, 0.004, Quality.GOOD, self.sequence))
                for role, (channel, value) in values.items()
            ]
        )
        self.sequence += 1
        self.clock.wait_until(now_ns + seconds(1 / self.rate_hz))
