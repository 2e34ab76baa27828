"""How far a zero-flow pressure may have moved, and flows put right when it is read again."""

from __future__ import annotations

import numpy as np
import pytest

from analysis.records import Direction
from analysis.sealing.levelled import Levelling, Trace
from analysis.sealing.zeroage import (
    FAR_PA,
    OLD_S,
    ZeroAge,
    ZeroDoubt,
    as_flow_m3_h,
    joined,
    put_right,
    roughness_pa,
    stack_pa,
    wind_moved_pa,
)

LEVELLING = Levelling(Direction.DEPRESSURIZE, -0.5, 300.0, exponent=0.65)


def trace_of(flow: np.ndarray, start_s: float = 0.0) -> Trace:
    return Trace(start_s, flow, np.zeros((len(flow), 1)))


def test_the_stack_pressure_is_that_of_the_handbooks() -> None:
    # 0.04 Pa for each metre and kelvin near 20 degrees C (ASHRAE Handbook Fundamentals, infiltration; from memory),
    # at the bottom of a house whose neutral level is half way up: 0.04 * 2.5 m * 20 K.
    assert stack_pa(5.0, 353.0 / 294.15, 353.0 / 274.15) == pytest.approx(0.04 * 2.5 * 20.0, rel=0.1)


@pytest.mark.parametrize(
    ("age", "doubts"),
    [
        (ZeroAge(OLD_S - 1.0, FAR_PA, FAR_PA), ()),
        (ZeroAge(OLD_S + 1.0), (ZeroDoubt.AGE,)),
        (ZeroAge(60.0, 0.6, 0.0), (ZeroDoubt.TEMPERATURE,)),
        (ZeroAge(OLD_S + 1.0, 0.6, 2.0), (ZeroDoubt.WIND, ZeroDoubt.TEMPERATURE, ZeroDoubt.AGE)),
    ],
)
def test_an_old_or_moved_zero_is_doubted(age: ZeroAge, doubts: tuple[ZeroDoubt, ...]) -> None:
    assert age.doubts == doubts


@pytest.mark.parametrize("direction", list(Direction))
def test_flows_are_put_right_by_what_the_pressure_really_was(direction: Direction) -> None:
    # The leaks pass 10 * dp**0.65; the fan keeps 50 Pa by a zero-flow pressure that rises by 2 Pa unseen.
    moved = 2.0 * np.clip((np.arange(100) + 0.5) / 100.0, 0.0, 1.0)
    true_pa = 50.0 - direction.sign * moved
    levelling = Levelling(direction, 0.0, None, exponent=0.65)
    seen = trace_of(10.0 * true_pa**0.65)
    right = put_right(seen, levelling, 50.0, 0.0, 100.0, 2.0)
    assert right.flow_m3_h == pytest.approx(np.full(100, 10.0 * 50.0**0.65), rel=1e-12)
    # The first order of it is what is told of an error that nobody can put right.
    last = abs(seen.flow_m3_h[-1] - right.flow_m3_h[-1])
    assert as_flow_m3_h(2.0, float(right.flow_m3_h[-1]), levelling, 50.0) == pytest.approx(last, rel=0.05)


def test_wind_that_rises_is_seen_in_the_flow() -> None:
    rng = np.random.default_rng(1)
    calm = roughness_pa(trace_of(1000.0 + rng.normal(0.0, 2.0, 300)), LEVELLING)
    windy = roughness_pa(trace_of(1000.0 + np.repeat(rng.normal(0.0, 20.0, 30), 10)), LEVELLING)
    assert calm is not None
    assert windy is not None
    assert windy > 5.0 * calm
    assert wind_moved_pa(calm, windy) > FAR_PA
    assert wind_moved_pa(None, windy) == 0.0
    assert roughness_pa(trace_of(np.full(30, 1000.0)), LEVELLING) is None


def test_a_pause_between_two_traces_holds_nothing() -> None:
    both = joined(trace_of(np.full(5, 1.0), 10.0), trace_of(np.full(3, 2.0), 20.0))
    assert both.start_s == 10.0
    assert both.end_s == 23.0
    assert np.isnan(both.flow_m3_h[5:10]).all()
    assert both.between(0.0, 30.0).tolist() == [1.0] * 5 + [2.0] * 3
    # Where both know a second the newer one counts.
    again = joined(both, trace_of(np.full(4, 3.0), 21.0))
    assert again.between(20.0, 30.0).tolist() == [2.0] + [3.0] * 4
