"""What the running step works with: the rig, the buffer, the controller and what is known so far."""

from __future__ import annotations

from collections import Counter
from dataclasses import dataclass, field

from acquisition.control import STANDARD_PRESSURE_PA, Plant, PressureController
from acquisition.fitted import RESTING_PA
from acquisition.leakline import TYPICAL_EXPONENT, LeakLine
from acquisition.live import LiveBuffer
from acquisition.openrig import OpenRig
from acquisition.progress import TestProgress
from acquisition.rig import FAN_FLOWS, RigSpec, Role
from acquisition.snapshot import HeldView, PointState
from acquisition.steadiness import WINDOW_S, Trend, trend
from acquisition.steps import Wish
from acquisition.vigil import Vigil
from analysis.air import moist_air_density
from analysis.flow import element_flow_m3_h
from analysis.records import Air, Direction

SMOOTHING_S = 0.5
DEFAULT_VOLUME_M3 = 400.0
"""Only for the controller's first guess where no volume is known yet."""


@dataclass(frozen=True, slots=True)
class RangeAsked:
    """A question about the flow range: what was noticed (its id), which range would be fitted, which was before."""

    about: str
    fitted: str
    before: str = ""


@dataclass(slots=True)
class Bench:
    """State of the test that the step executors share. Lives in the engine's loop only."""

    rig: OpenRig
    live: LiveBuffer
    progress: TestProgress
    controller: PressureController
    direction: Direction | None = None
    zero_pa: float | None = None
    resting_m3_h: float = 0.0
    """What moved through the fan at rest while the zero-flow pressure was read: wind does that."""
    target_pa: float | None = None
    targets_pa: tuple[float, ...] = ()
    dt_s: float = 0.1
    slack_s: float = 0.0
    """What the clock may lose on a busy machine."""
    retakes: int = 0
    """How often the present point was begun anew."""
    line: LeakLine = field(default_factory=LeakLine)
    """The leakage line as far as the points have shown it."""
    vigil: Vigil = field(default_factory=Vigil)
    spoilt: bool = False
    """Whether something was noticed that spoils the point being averaged."""
    declined: set[str] = field(default_factory=set)
    """Findings of which somebody said that nothing was wrong: they are not asked about again."""
    asked: Counter[str] = field(default_factory=Counter)
    """How often somebody was asked about a finding in this direction."""
    range_asked: RangeAsked | None = None
    """What somebody is asked about the flow range at present."""
    unwatched: bool = False
    """Whether the test stood still since the vigil last looked: that it saw nothing meanwhile is no gap."""

    again_pa: list[float] = field(default_factory=list)
    """Targets (magnitudes) that somebody wants once more, until the procedure listens."""

    hand_lag_s: float = 3.0
    """How long the pressure rises on after a person at the knob is told to stop, as far as it was seen."""
    hand_pa_s: float | None = None
    """By how much a second of turning moves the pressure, None before it was seen."""
    running: int = 1
    """How many fans ran at the last tick."""
    wish: Wish | None = None
    """What somebody wants of the pressure that is held, until it is followed."""
    held: HeldView | None = None
    _leak: tuple[int, tuple[float | None, float]] | None = None

    @property
    def hold_pa(self) -> float | None:
        """The target (with its sign) that a hold has or is about to get, None in any other test."""
        plan = self.progress.plan
        if not plan.hold:
            return None
        if self.wish is not None and self.wish.target_pa is not None:
            return self.wish.target_pa
        first_pa = plan.directions[0].sign * plan.allowed_targets_pa[0]
        return self.targets_pa[-1] if self.targets_pa else first_pa

    def take_wish(self) -> Wish | None:
        """Return what is wanted of the pressure that is held, once."""
        wish, self.wish = self.wish, None
        return wish

    @property
    def sign(self) -> int:
        """Sign of the induced pressure of the run."""
        return self.direction.sign if self.direction is not None else 1

    def induced(self, envelope_pa: float) -> float:
        """Return the induced pressure in the direction of the run (positive when all is well)."""
        return self.sign * (envelope_pa - (self.zero_pa or 0.0))

    def induced_now(self, now_ns: int) -> float | None:
        """Return the induced pressure smoothed over half a second, None without readings."""
        mean = self.live.mean(Role.ENVELOPE, SMOOTHING_S, now_ns)
        return None if mean is None else self.induced(mean)

    def flow_now(self, now_ns: int, seconds: float = SMOOTHING_S) -> float | None:
        """Return the flow through the fan in m3/h as mean of the last seconds, None without readings."""
        return live_flow_m3_h(self.live, self.rig.spec, self.progress.plan.air, self.direction, now_ns, seconds)

    def leak_flow_now(self, now_ns: int) -> tuple[float | None, float]:
        """Return the flow that leaks (m3/h, None without readings), and the fan's flow as a share of the range's top.

        While the pressure still rises in a tight house most of the fan's flow goes into its air.
        """
        # Controller and guard ask at the same moment: worked out once.
        if self._leak is None or self._leak[0] != now_ns:
            self._leak = (now_ns, self._leak_flow(now_ns))
        return self._leak[1]

    def _leak_flow(self, now_ns: int) -> tuple[float | None, float]:
        flow, now = self.flow_now(now_ns), self.induced_trend(now_ns, 1.0)
        if flow is None or now is None:
            return None, 0.0
        stored = self.controller.plant.storage_m3_h(now.slope_pa_s)
        ranges = self.rig.spec.fitted_ranges.now
        top = sum(item.coefficient_m3_h_pa_n * item.max_pa**item.exponent for item in ranges)
        return flow - max(stored, 0.0), flow / top

    def leakage_at_target(self, now_ns: int) -> float | None:
        """Return the flow of the second before `now_ns` brought to the target pressure (m3/h), None without readings.

        What the air of the building stores is taken off, so that a change of pressure alone is no change of leakage.
        """
        now = self.induced_trend(now_ns, 1.0)
        flow = self.flow_now(now_ns, 1.0)
        if now is None or flow is None or now.mean_pa < 1.0 or self.target_pa is None:
            return None
        leak = flow - self.controller.plant.storage_m3_h(now.slope_pa_s)
        return leak * (abs(self.target_pa) / now.mean_pa) ** TYPICAL_EXPONENT if leak > 0 else None

    def induced_trend(self, now_ns: int, seconds: float = WINDOW_S) -> Trend | None:
        """Return mean and slope of the induced pressure over the last seconds."""
        times, values = self.live.window(Role.ENVELOPE, seconds, now_ns)
        return trend(times, self.sign * (values - (self.zero_pa or 0.0)))

    def learn_line(self) -> None:
        """Know the leakage line out of the points that the running direction has, and what the vigil holds it to be."""
        self.line.clear()
        for view in self.progress.current.views if self.progress.current is not None else ():
            if view.state is PointState.TAKEN and view.envelope_pa is not None and view.flow_m3_h is not None:
                self.line.add(self.induced(view.envelope_pa), view.flow_m3_h)
        self.vigil.recall(self.line)
        self.vigil.fan.clear()

    def expected_pa(self, leak_flow_m3_h: float) -> float | None:
        """Return the pressure that the leakage line so far gives for a flow, None before the first point."""
        return self.line.pressure_pa(leak_flow_m3_h)


def new_bench(rig: OpenRig, live: LiveBuffer, progress: TestProgress, slack_s: float) -> Bench:
    """Return the state at the beginning of a test: all fans of the rig at rest, nothing known but the building."""
    plant = Plant(progress.plan.building.volume_m3 or DEFAULT_VOLUME_M3)
    controller = PressureController(plant, 1 + len(rig.spec.further))
    return Bench(rig, live, progress, controller, slack_s=slack_s)


def live_flow_m3_h(
    live: LiveBuffer,
    spec: RigSpec,
    air: Air | None,
    direction: Direction | None,
    now_ns: int,
    seconds: float = SMOOTHING_S,
) -> float | None:
    """Return the flow through the fans over the last seconds (m3/h), None without readings of each.

    Without air data the reference density of a flow range stands in for the density in the fan.
    """
    density = fan_density(air, direction)
    total = 0.0
    for fan, ((flow, element), fitted) in enumerate(zip(FAN_FLOWS, spec.fitted_ranges.now, strict=False)):
        direct, element_pa = live.mean(flow, seconds, now_ns), live.mean(element, seconds, now_ns)
        if fan and direct is None and element_pa is not None and element_pa < RESTING_PA:
            continue
        if direct is not None:
            total += direct
        elif element_pa is not None:
            total += float(element_flow_m3_h(max(element_pa, 0.0), fitted, density or fitted.reference_density_kg_m3))
        else:
            return None
    return total


def fan_density(air: Air | None, direction: Direction | None) -> float | None:
    """Return the density of the air in the fans (kg/m3), None without air data."""
    if air is None:
        return None
    celsius = air.outdoor_c if direction is Direction.PRESSURIZE else air.indoor_c
    return moist_air_density(celsius, None, air.barometric_pa or STANDARD_PRESSURE_PA)
