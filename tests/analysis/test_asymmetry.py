"""Why both directions differ: alike, a membrane, a flap."""

from __future__ import annotations

import pytest

from analysis.asymmetry import Cause, asymmetry
from analysis.methods import analyse
from analysis.records import Direction, RunResult
from tests.analysis.samples import PRESSURES_PA, run_of, whole_test


def both(out: tuple[float, float], into: tuple[float, float]) -> tuple[RunResult, ...]:
    """Return the runs of a test whose directions have these coefficients and exponents."""
    runs = [
        run_of(flows_m3_h=[c * pressure**n for pressure in PRESSURES_PA], direction=way)
        for way, (c, n) in zip(Direction, (out, into), strict=True)
    ]
    return analyse(whole_test(*runs)).runs


@pytest.mark.parametrize(
    ("out", "into", "cause"),
    [
        ((100.0, 0.65), (101.0, 0.648), Cause.NONE),
        # Pillowing of all leaks by 0.3 in a simulated house: 0.523 one way, 0.734 the other.
        ((120.0, 0.523), (70.0, 0.734), Cause.MEMBRANE),
        ((100.0, 0.65), (130.0, 0.65), Cause.FLAP),
        ((130.0, 0.62), (100.0, 0.62), Cause.FLAP),
    ],
)
def test_the_cause_is_told_from_flows_and_exponents(
    out: tuple[float, float], into: tuple[float, float], cause: Cause
) -> None:
    found = asymmetry(both(out, into))
    assert found is not None
    assert found.cause is cause
    assert found.cause.words.endswith(".")


def test_one_direction_has_no_other_to_differ_from() -> None:
    assert asymmetry(analyse(whole_test()).runs) is None


def test_exponents_that_are_not_sure_name_no_membrane() -> None:
    rough = [1.1, 0.9, 1.15, 0.85, 1.1, 0.9, 1.12, 0.88, 1.1, 0.8]
    runs = [
        run_of(flows_m3_h=[100.0 * p**n * r for p, r in zip(PRESSURES_PA, rough, strict=True)], direction=way)
        for way, n in zip(Direction, (0.66, 0.74), strict=True)
    ]
    found = asymmetry(analyse(whole_test(*runs)).runs)
    assert found is not None
    assert found.cause is not Cause.MEMBRANE
