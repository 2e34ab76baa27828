"""Which flow range is fitted, and which one points already taken were read with, where what was entered is in doubt."""

from __future__ import annotations

import math
from collections.abc import Sequence

from acquisition.bench import Bench, RangeAsked
from acquisition.planning.reach import flow_of
from acquisition.points import FIT_RANGE
from acquisition.rig import RigSpec, Role
from acquisition.steps import Ask
from acquisition.vigil.findings import Finding, off_the_line

DOUBTFUL, OUTSIDE, LASTING = "range-doubtful", "out-of-range", "lasting-step"
LASTING_S, NEAR_RANGE, FAR_RANGE = 8.0, 0.2, 0.5
"""Over so long, and as logarithm of the flow, it is told whether another range would bring it onto the line."""
TYPICAL_ELEMENT_PA = 60.0
"""Where two ranges are held against each other; their exponents are nearly the same."""


def ask_to_fit(spec: RigSpec, fan: int, name: str) -> Ask:
    """Return what is asked when somebody wants another range while the fan ran; the first choice says that it is in."""
    of_fan = f" on fan {fan + 1}" if spec.further else ""
    old = spec.fitted_ranges.now[fan].name
    text = f"The fan was stopped. Fit flow range {name}{of_fan}; the point is then begun again."
    return Ask(FIT_RANGE, text, (f"Range {name} is fitted", f"Range {old} stays fitted"))


def ask_which_range(bench: Bench, spec: RigSpec, found: Finding, now_ns: int) -> Ask | None:
    """Return the question which range is fitted, or was before, where another one would explain what was noticed.

    Where the flow element leaves the calibration of its range, the one that measures such a flow is asked for.
    """
    if spec.further or DOUBTFUL in bench.declined:
        return None
    if found.id == OUTSIDE and found.flow_range:
        bench.range_asked = RangeAsked(OUTSIDE, found.flow_range)
        return Ask(FIT_RANGE, f"{found.sentence} The fan was stopped.", ask_to_fit(spec, 0, found.flow_range).choices)
    fitting = found.flow_range or _other_range(bench, spec, found, now_ns)
    if not fitting:
        return None
    text = off_the_line(0.0, 50.0, fitting).sentence
    fits, stays = ask_to_fit(spec, 0, fitting).choices
    earlier = _earlier_range(bench, spec, fitting)
    bench.range_asked = RangeAsked(DOUBTFUL, fitting, earlier)
    choices = (fits, f"The points before were read with range {earlier}", stays) if earlier else (fits, stays)
    return Ask(FIT_RANGE, f"{text} The fan was stopped.", choices)


def _other_range(bench: Bench, spec: RigSpec, found: Finding, now_ns: int) -> str:
    """Return the flow range with which the readings would lie on the line of the points before, empty for none."""
    now, flow = bench.induced_trend(now_ns, LASTING_S), bench.flow_now(now_ns, LASTING_S)
    element_pa = bench.live.mean(Role.FLOW_ELEMENT, LASTING_S, now_ns)
    usual = None if now is None else bench.line.flow_m3_h(now.mean_pa)
    fitted = next((item for item in spec.ranges if item.name == spec.fitted), None)
    if found.id != LASTING or not flow or not usual or fitted is None or element_pa is None or element_pa <= 0.0:
        return ""
    # A fan that is steered by a wrong flow swings: only ranges far from each other can be told apart.
    off = {
        item.name: abs(math.log(flow / usual * flow_of(item, element_pa) / flow_of(fitted, element_pa)))
        for item in spec.ranges
    }
    nearest = min(off, key=lambda name: off[name])
    return nearest if off[nearest] < NEAR_RANGE < FAR_RANGE < off[fitted.name] else ""


def _earlier_range(bench: Bench, spec: RigSpec, fitting: str) -> str:
    """Return the range that the points before would have been read with if the fitted one is right, empty for none.

    What is wrong by the same factor the other way explains the step as well.
    """
    run = bench.progress.current
    entered = {view.flow_range for view in run.views if view.flow_range} if run is not None else set()
    flows = {item.name: flow_of(item, TYPICAL_ELEMENT_PA) for item in spec.ranges}
    if len(entered) != 1 or not entered <= set(flows) or spec.fitted not in flows:
        return ""
    (old,) = entered
    wanted = flows[old] * flows[spec.fitted] / flows[fitting]
    off = {name: abs(math.log(flow / wanted)) for name, flow in flows.items() if name != old}
    nearest = min(off, key=lambda name: off[name], default="")
    return nearest if nearest and off[nearest] < NEAR_RANGE else ""


def correct_before(bench: Bench, name: str, now_ns: int) -> None:
    """Work the points so far out anew with a range; what is fitted now came in unsaid, and the fan is learned anew."""
    bench.progress.correct_range(bench.progress.points_until(now_ns), 0, name, now_ns)
    bench.learn_line()
    bench.controller.forget()


def correct_range(bench: Bench, windows: Sequence[int], fan: int, name: str, now_ns: int) -> bool:
    """Work points out anew with another flow range, or as entered without a name; the line is learned anew.

    Return whether that range is what the fan now runs with: the newest of them is the newest point of the running
    direction, and nothing else was entered since. It is then taken as fitted.
    """
    run = bench.progress.current
    points = [view for view in run.views if view.window is not None] if run is not None else []
    newest = points[-1] if points else None
    entered = newest.flow_range if newest is not None else ""
    bench.progress.correct_range(windows, fan, name, now_ns)
    bench.learn_line()
    now = bench.rig.spec.fitted_ranges.now[fan].name
    if not name or newest is None or newest.window not in windows or now != entered or now == name:
        return False
    # The plate stays where it is: what the fan needs for a pressure is known.
    bench.rig.fit(fan, name)
    bench.progress.keep_fitted(bench.rig.spec, now_ns)
    bench.vigil.fit(bench.rig.spec.fitted)
    return True
