"""Several outdoor taps: one envelope pressure for steering and for the official number, gust weights for the best."""

from __future__ import annotations

from pathlib import Path

import numpy as np
import pytest

import airseam
from acquisition.derive import derive_run, envelope_pressures, taps_read
from acquisition.job import Job
from acquisition.rig import Role
from acquisition.series import RunData
from acquisition.taps import TapsAsOne
from acquisition.testfile import load_stored_test
from analysis.resultjson import result_document
from drivers.clock import WallClock, seconds
from drivers.reading import Quality, Reading


def reading(at_s: float, value: float) -> Reading:
    return Reading("gauge.p1", value, seconds(at_s), 0, 0.0, Quality.GOOD, 0)


def filled(count: int = 10) -> RunData:
    data = RunData()
    for at in range(count):
        data.append(reading(at / 10, -50.0), Role.ENVELOPE)
        data.append(reading(at / 10, -54.0), Role.ENVELOPE_2)
    return data


def test_the_envelope_pressure_is_the_mean_of_the_taps_where_all_were_read() -> None:
    data = filled()
    data.append(reading(5.0, -99.0), Role.ENVELOPE)
    times_ns, values = envelope_pressures(data, 0, seconds(10.0))
    assert taps_read(data) == (Role.ENVELOPE, Role.ENVELOPE_2)
    assert len(times_ns) == 10
    assert values.tolist() == [-52.0] * 10
    assert envelope_pressures(data, 0, seconds(10.0), (1.0, 0.0))[1].tolist() == [-50.0] * 10


def test_one_tap_is_taken_as_it_is() -> None:
    data = RunData()
    data.append(reading(0.0, -50.0), Role.ENVELOPE)
    assert envelope_pressures(data, 0, seconds(1.0))[1].tolist() == [-50.0]


def test_what_steers_is_the_mean_of_all_taps() -> None:
    batch = [
        (Role.ENVELOPE, reading(0.0, -50.0)),
        (Role.ENVELOPE_2, reading(0.0, -52.0)),
        (Role.INDOOR, reading(0.0, 21.0)),
        (Role.ENVELOPE, reading(0.1, -40.0)),
    ]
    found = TapsAsOne().mean(batch)
    assert [(role, item.value) for role, item in found] == [
        (Role.ENVELOPE, -51.0), (Role.ENVELOPE_2, -52.0), (Role.INDOOR, 21.0), (Role.ENVELOPE, -46.0),
    ]  # fmt: skip
    assert TapsAsOne().mean(batch[2:3]) == batch[2:3]


def test_a_test_with_four_taps_is_gust_corrected_stored_and_worked_out_again(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    path = tmp_path / "taps.airseam"
    status = airseam.main(["test", "--rig", "sim:mill-row", "--taps", "4", "--wind", "4", "--job", str(path)])
    assert status in (0, 1)
    capsys.readouterr()
    stored = load_stored_test(path, WallClock())
    run = stored.test.runs[0]
    assert run.gust_corrected is not None
    assert run.gust_corrected.zero_before != run.zero_before
    result = stored.result()
    assert result.best is not None
    assert "several taps" in result.best.reason
    # True n50 of the house is 1.72 1/h at 300 m3; the wind of 4 m/s leaves less than 2 %.
    assert result.best.q50_m3_h.value == pytest.approx(516.0, rel=0.02)
    job = Job.open(path, WallClock(), read_only=True)
    try:
        assert all(item.ok for item in job.verify())
        loaded = job.load(1)
        again = derive_run(
            run.direction, loaded.runs[0].record.air, loaded.runs[0].data, loaded.runs[0].windows,
            loaded.record.rig.fitted_range, loaded.record.plan.building, run.started,
        )  # fmt: skip
        assert again == run
    finally:
        job.close()
    assert result_document(result)


@pytest.mark.walk
def test_gusts_at_one_tap_leave_the_corrected_record_calmer(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    path = tmp_path / "gusts.airseam"
    airseam.main(["test", "--rig", "sim:mill-row", "--taps", "4", "--wind", "6", "--seed", "5", "--job", str(path)])
    capsys.readouterr()
    run = load_stored_test(path, WallClock()).test.runs[0]
    assert run.gust_corrected is not None
    plain, calm = (np.mean([p.envelope_sd_pa for p in item.points]) for item in (run, run.gust_corrected))
    assert calm < plain
