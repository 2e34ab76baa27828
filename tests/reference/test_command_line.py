"""Two runs of ten points through `airseam analyse --json`, against numbers worked out outside this program.

The first set: formulas of ISO 9972 Annex C (from memory), fit cross-checked with scipy.stats.linregress to 1e-12. The
second: statsmodels OLS on the logarithms. What the fit gives is equal to all printed digits; what goes through the
densities of the air is within 0.05 %.
"""

from __future__ import annotations

import json
import math
from collections.abc import Mapping
from pathlib import Path
from typing import Any

import pytest

import airseam

SET_ONE = {
    12.1: 215, 17.3: 268, 22.2: 322, 27.4: 362, 32.0: 407, 37.5: 446, 42.1: 487, 47.6: 520, 52.3: 560, 57.9: 592,
}  # fmt: skip
SET_TWO = {
    60.2: 1502.1, 54.1: 1401.9, 48.8: 1316.0, 43.6: 1217.5, 38.1: 1116.3, 32.4: 1009.7, 26.9: 884.0, 21.3: 765.2,
    15.8: 627.9, 10.4: 479.8,
}  # fmt: skip


def analysed(
    points: Mapping[float, float], indoor_c: float, outdoor_c: float, folder: Path, capsys: pytest.CaptureFixture[str]
) -> dict[str, Any]:
    """Return the result of a depressurization without wind and stack, as the program prints it."""
    test = {
        "format": "airseam-test-1",
        "building": {"name": "made up", "volume_m3": 300.0, "envelope_area_m2": 360.0, "floor_area_m2": 120.0},
        "runs": [
            {
                "direction": "depressurize",
                "air": {"indoor_c": indoor_c, "outdoor_c": outdoor_c, "barometric_pa": 101_325.0},
                "zero_before": {"readings_pa": [0.0, 0.0, 0.0]},
                "points": [{"envelope_pa": -dp, "flow_m3_h": q} for dp, q in points.items()],
                "zero_after": {"readings_pa": [0.0, 0.0, 0.0]},
            }
        ],
    }
    file = folder / "test.json"
    file.write_text(json.dumps(test), encoding="utf-8")
    assert airseam.main(["analyse", str(file), "--json"]) in (0, 1)
    document: dict[str, Any] = json.loads(capsys.readouterr().out)
    assert document["format"] == "airseam-result-1"
    run: dict[str, Any] = document["runs"][0]
    return run


def within(digits: int) -> float:
    """Return the tolerance of a number printed with so many decimals."""
    return 0.500001 * 10.0**-digits


def test_the_set_worked_out_by_hand(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    run = analysed(SET_ONE, 21.0, 3.0, tmp_path, capsys)
    assert run["n"]["value"] == pytest.approx(0.6515778351, abs=within(10))
    assert (run["n"]["low"], run["n"]["high"]) == pytest.approx((0.639097, 0.664058), abs=within(6))
    assert run["r2"] == pytest.approx(0.9994483502, abs=within(10))
    by_density = {
        "c_env_m3_h_pa_n": 39.66052499, "c_l_m3_h_pa_n": 40.49470317, "q50_m3_h": 518.09502, "n50_per_h": 1.7269834,
        "qe50_m3_h_m2": 1.4391529, "qf50_m3_h_m2": 4.3174585, "ela4_cm2": 107.6889, "eqla10_cm2": 202.5110,
    }  # fmt: skip
    assert {name: run[name]["value"] for name in by_density} == pytest.approx(by_density, rel=5e-4)


def test_the_set_fitted_by_statsmodels(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    run = analysed(SET_TWO, 20.0, 20.0, tmp_path, capsys)
    assert run["n"]["value"] == pytest.approx(0.6516266518, abs=within(10))
    assert (run["n"]["low"], run["n"]["high"]) == pytest.approx((0.64707028, 0.65618302), abs=within(8))
    assert run["r2"] == pytest.approx(0.9999264507, abs=within(10))
    # Equal air on both sides: the flow through the fan is the flow through the envelope.
    c = run["c_env_m3_h_pa_n"]
    assert c["value"] == pytest.approx(104.13938486, abs=within(8))
    assert math.log(c["value"]) == pytest.approx(4.6457302408, abs=within(10))
    assert (c["low"], c["high"]) == pytest.approx((102.503684, 105.801188), abs=within(6))
    q50 = run["q50_m3_h"]
    assert (q50["value"], q50["low"], q50["high"]) == pytest.approx((1332.628642, 1328.245848, 1337.025899), rel=5e-4)
    assert run["ela4_cm2"]["value"] == pytest.approx(276.96005, rel=5e-4)
