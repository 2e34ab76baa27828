"""Whether a pressure that does not answer a step of the fan is told from one that does, in tight houses too."""

from __future__ import annotations

import numpy as np

from acquisition.vigil.answer import unanswered

TIMES = np.arange(-100, 1) / 10.0
SINCE_S = 4.0
STEPPED = TIMES > -SINCE_S


def asked(pressure_pa: np.ndarray, flow_m3_h: np.ndarray, stored_m3_h: float = 0.0, since_s: float = SINCE_S) -> bool:
    return unanswered(since_s, (TIMES, pressure_pa), (TIMES, flow_m3_h), stored_m3_h, 0.65)


def test_a_pressure_that_stands_while_the_flow_went_is_unanswered() -> None:
    # 10 % less flow is 15 % less pressure at n = 0.65: 0.9^(1/0.65) = 0.850, by hand.
    flow = np.where(STEPPED, 900.0, 1000.0)
    assert asked(np.full(len(TIMES), 50.0), flow)
    assert asked(np.where(STEPPED, 49.0, 50.0), flow)
    assert not asked(np.where(STEPPED, 42.5, 50.0), flow)
    assert not asked(np.where(STEPPED, 0.0, 50.0), 2000.0 - flow), "a hose that fell off is no hose that is pinched"


def test_what_the_air_of_a_tight_house_takes_is_no_answer_owed() -> None:
    flow = np.where(STEPPED, 60.0, 100.0)
    slowly = np.where(STEPPED, 50.0 - 1.0 * (TIMES + SINCE_S), 50.0)
    assert asked(slowly, flow, stored_m3_h=0.0)
    assert not asked(slowly, flow, stored_m3_h=-35.0)


def test_too_early_too_late_too_little_and_what_moved_before_say_nothing() -> None:
    still, flow = np.full(len(TIMES), 50.0), np.where(STEPPED, 900.0, 1000.0)
    assert not asked(still, flow, since_s=2.0)
    assert not asked(still, flow, since_s=9.5)
    assert not asked(still, np.where(STEPPED, 980.0, 1000.0))
    assert not asked(np.where(TIMES < -5.0, 55.0, 50.0), flow)
    assert not asked(still, np.where(STEPPED, 0.0, 1000.0))
    assert not asked(still[:0], flow)
