"""A gauge's own calibration: what it makes of a pressure, what it refuses, and a whole test made with one."""

from __future__ import annotations

import math
from collections.abc import Iterator
from contextlib import closing
from datetime import date
from pathlib import Path

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from acquisition.correction import Correction, check_correction
from acquisition.job import Job
from acquisition.job.export import write_csv
from acquisition.register import Calibration, Equipment, RangeEntry, Register, load_register, save_register
from acquisition.register.curves import PowerLaw
from acquisition.report.content import content_of
from acquisition.report.facts import fact_groups
from acquisition.report.remarks import deviations
from acquisition.rig import Role
from analysis.errors import InvalidInput
from analysis.units import Display
from drivers.clock import VirtualClock
from tests.acquisition.scenes import Scene, a_scene

# Every certificate here is our own invention.
DAY = date(2026, 3, 2)
TABLE = Correction("", DAY, ((0.0, 0.0), (25.0, 25.3), (60.0, 61.2)))
POLYNOMIAL = Correction("p2", DAY, polynomial=(0.2, 1.01, -1e-5))


@pytest.fixture
def made(clock: VirtualClock, tmp_path: Path) -> Iterator[Scene]:
    with a_scene(clock, tmp_path) as built:
        yield built


@given(st.floats(-60.0, 60.0))
def test_a_table_of_one_sign_holds_for_both(shown: float) -> None:
    # numpy's own interpolation is the other opinion.
    expected = math.copysign(np.interp(abs(shown), *np.array(TABLE.table).T), shown)
    assert TABLE.true_pa(shown) == pytest.approx(expected, abs=1e-12)
    assert TABLE.true_pa(-shown) == -TABLE.true_pa(shown)


@given(st.floats(-300.0, 300.0))
def test_a_polynomial_is_of_the_pressure_with_its_sign(shown: float) -> None:
    assert POLYNOMIAL.true_pa(shown) == pytest.approx(np.polyval(POLYNOMIAL.polynomial[::-1], shown), abs=1e-9)


def test_beyond_the_ends_the_last_difference_goes_on() -> None:
    assert TABLE.true_pa(100.0) == pytest.approx(101.2)
    signed = Correction("", DAY, ((-50.0, -50.5), (0.0, 0.1), (50.0, 50.3)))
    assert signed.true_pa(-80.0) == pytest.approx(-80.5)
    assert signed.true_pa(-25.0) == pytest.approx(-25.2)
    assert signed.true_pa(0.0) == pytest.approx(0.1)
    raised = Correction("", DAY, ((10.0, 10.2), (50.0, 50.2)))
    assert raised.true_pa(5.0) == pytest.approx(5.1)
    assert raised.true_pa(-5.0) == pytest.approx(-5.1)
    assert math.isnan(TABLE.true_pa(math.nan))


@pytest.mark.parametrize(
    ("item", "words"),
    [
        (Correction("", DAY), "exactly one of the two"),
        (Correction("", DAY, ((0.0, 0.0),)), "at least two points"),
        (Correction("", DAY, ((0.0, 0.0), (50.0, 49.0), (40.0, 41.0))), "both rise"),
        (Correction("", DAY, ((0.0, 0.4), (50.0, 50.0))), "gives 0 at 0"),
        (Correction("", DAY, ((0.0, 0.0), (50.0, 500.0))), "within 15 Pa"),
        (Correction("", DAY, polynomial=(0.0, 2.0)), "a true pressure within"),
        (Correction("", DAY, polynomial=(0.0, -1.0)), "both rise"),
    ],
)
def test_what_is_no_calibration_of_a_gauge_is_refused(item: Correction, words: str) -> None:
    with pytest.raises(InvalidInput, match=words):
        check_correction(item, "correction")


def register_of(made: Scene) -> Register:
    """Return a register with the gauge of the house, its fan, and a term of three years that one scheme cuts short."""
    fitted = made.rig.spec.fitted_range
    curve = PowerLaw(fitted.coefficient_m3_h_pa_n, fitted.exponent)
    ranges = (RangeEntry(fitted.name, curve, fitted.min_pa, fitted.max_pa, fitted.reference_density_kg_m3),)
    gauge, fan = made.rig.spec.instruments[:2]
    calibration = Calibration(date(2025, 1, 31), months=36, schemes=(("North scheme (invented)", 12),))
    return Register(
        (
            Equipment("gauge-1", "gauge", "Blue gauge", gauge.serial, "scpi-gauge", calibration, corrections=(TABLE,)),
            Equipment("fan-1", "fan", "Fan", fan.serial, "scpi-fan", Calibration(date(2026, 2, 2)), ranges),
        )
    )


def test_a_test_with_a_corrected_gauge_comes_out_of_the_file_to_the_digit(made: Scene, tmp_path: Path) -> None:
    path = tmp_path / "register.toml"
    save_register(register_of(made), path)
    made.rig.equip(load_register(path))
    spec = made.rig.spec
    assert [item.channel for item in spec.corrections] == ["gauge.p1", "gauge.p2"]
    made.begin()
    final = made.to_the_end()
    assert final.result is not None
    recorded = made.job.load(1)
    assert recorded.record.rig == spec
    assert recorded.test() == final.test

    # Independently: what the file keeps is what the gauge showed; numpy corrects it and takes the mean.
    run = recorded.runs[0]
    rows = made.job.readings(run.record.id)
    window = next(item for item in run.windows if item.target_pa is not None)
    shown = [row.value for row in rows if row.role is Role.ENVELOPE and window.start_ns <= row.t_ns < window.end_ns]
    true = -np.interp(-np.array(shown, np.float64), *np.array(TABLE.table).T)
    point = recorded.test().runs[0].points[0]
    assert point.envelope_pa == pytest.approx(float(true.mean()), abs=1e-9)
    assert abs(point.envelope_pa - float(np.mean(np.array(shown, np.float64)))) > 0.5

    assert all(item.ok is not False for item in made.job.verify())
    samples = next(file for file in write_csv(made.job, tmp_path / "csv") if "samples" in file.name)
    assert repr(TABLE.true_pa(float(shown[0] or 0.0))) in samples.read_text(encoding="utf-8")


def test_the_report_says_how_the_gauge_is_off_and_that_it_ran_out(made: Scene) -> None:
    made.rig.equip(register_of(made))
    made.begin()
    made.to_the_end()
    path = made.job.path
    made.job.close()
    with closing(Job.open(path, made.clock)) as job:
        content = content_of(job, 1)
    rows = {str(name): cell for name, cell in fact_groups(content, Display())[1]["rows"]}  # type: ignore[attr-defined]
    assert "calibrated 2025-01-31, due 2028-01-31, 2026-01-31 by North scheme (invented)" in rows["Gauge"]
    assert "p1, p2 corrected by certificate of 2026-03-02: table of 3 points, +0 Pa at 0 Pa to +1.2 Pa" in rows["Gauge"]
    assert "calibrated 2026-02-02, due 2027-02-02" in rows["Flow range"]
    lines = {line.what: (line.calibrated, line.due, line.status) for line in content.file.equipment}
    assert lines["gauge"] == ("2025-01-31", "2026-01-31", "overdue by North scheme (invented)")
    late = [line for line in deviations(content, Display()) if "overdue" in line]
    assert late == ["Gauge: calibration overdue by North scheme (invented) since 2026-01-31, 93 days."]
