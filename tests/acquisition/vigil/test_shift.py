"""A shift under a held fan: what moved, how far it stands out, and what it can have been."""

from __future__ import annotations

import numpy as np
import pytest

from acquisition.vigil.findings import shifted
from acquisition.vigil.quiet import CLIP_SIGMAS, QuietMoves, Typical
from acquisition.vigil.shift import Move, Shift, move_of, shift_of

SIGMAS = np.array([0.2, 0.008])


@pytest.mark.parametrize(
    ("pressure_pa", "flow_m3_h", "move"),
    [
        (44.0, 1050.0, Move.OPENED),
        (55.0, 950.0, Move.CLOSED),
        (40.0, 900.0, Move.FAN_LESS),
        (58.0, 1100.0, Move.FAN_MORE),
        (44.0, 1001.0, Move.PRESSURE_ALONE),
        (50.1, 700.0, Move.FLOW_ALONE),
    ],
)
def test_the_two_together_tell_what_it_can_have_been(pressure_pa: float, flow_m3_h: float, move: Move) -> None:
    assert move_of(Shift(50.0, pressure_pa, 1000.0, flow_m3_h), SIGMAS) is move


def test_the_last_seconds_are_held_against_those_before() -> None:
    times = np.arange(-100, 1) / 10.0
    pressure = np.where(times < -2.2, 50.0, 40.0)
    flow = np.where(times < -2.2, 1000.0, 1100.0)
    shift = shift_of(times, pressure, times, flow, reach_s=10.0)
    assert shift == Shift(50.0, 40.0, 1000.0, 1100.0)
    assert shift.moved == pytest.approx([-10.0, np.log(1.1)])
    assert shift.pressure_share == pytest.approx(-0.2)


def test_a_flow_that_was_none_before_is_spoken_of_too() -> None:
    """A flow element that is blown at too weakly gives a flow of exactly none."""
    shift = Shift(12.0, 12.0, 0.0, 13.0)
    move = move_of(shift, SIGMAS)
    assert move is Move.FLOW_ALONE
    assert "the flow by +1200 %" in shifted(shift, move).sentence


def test_a_fan_held_for_too_short_a_time_says_nothing() -> None:
    times = np.arange(-100, 1) / 10.0
    assert shift_of(times, times, times, times, reach_s=4.0) is None
    assert shift_of(times[::40], times[::40], times, times, reach_s=10.0) is None


def test_what_is_restless_by_itself_has_to_move_farther() -> None:
    calm, windy = QuietMoves(0.2, 0.01), QuietMoves(0.2, 0.01)
    rng = np.random.default_rng(4)
    for _ in range(60):
        windy.learn(rng.normal(0.0, [0.45, 0.02]))
    moved = np.array([1.5, 0.0])
    assert calm.distance(moved) == pytest.approx(7.5)
    assert windy.distance(moved) < 5.0
    assert windy.sigmas == pytest.approx([0.42, 0.018], rel=0.25)


def test_one_event_that_nobody_noticed_does_not_blind_the_watch() -> None:
    moves = QuietMoves(0.2, 0.01)
    moves.learn(np.array([40.0, 0.5]))
    assert moves.distance(np.array([2.0, 0.0])) > 0.5 * 2.0 / (0.2 * CLIP_SIGMAS)


def test_what_is_typical_is_known_after_some_looks() -> None:
    typical = Typical(keep=5)
    for size in (9.0, 1.0, 2.0, 3.0, 4.0, 5.0):
        assert not typical.known(least=6)
        typical.learn(size)
    assert (typical.median, typical.high, typical.low) == (3.0, 5.0, 1.0)
