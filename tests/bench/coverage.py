"""How often intervals hold the true flow at 50 Pa, over simulated houses by chance at several winds.

Houses of n50 0.3 to 10 1/h on a sheltered site, tested in both directions by the plant and the analysis without wires;
calibration errors are off, so that the whole interval is that of fit, zero-flow pressure and wind. `ols` is the
official interval of ISO 9972 alone, `total` the official number with everything that makes it uncertain, `best` the
best estimate: generalized least squares, with gust weights where there are three taps or more.
"""

from __future__ import annotations

import argparse
import json
import math
import sys
from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from analysis.errors import InvalidInput
from analysis.methods import analyse
from analysis.records import Estimate, Kit, Test
from tests.bench._batch import houses_tested

WINDS_M_S = (0.0, 3.0, 6.0)
LEAST_PCT, MOST_PCT = 93.0, 97.0
SLACK_SD = 2.0
"""A share from so many tests may lie this many of its own standard deviations off."""
EXACT = Kit(0.0, 0.0, 0.0, 0.0, 0.0, 0.0)


@dataclass(frozen=True, slots=True)
class Row:
    """One estimator at one wind; errors and half width of the interval in percent."""

    wind_m_s: float
    estimator: str
    tests: int
    rms_pct: float
    bias_pct: float
    coverage_pct: float
    half_width_pct: float


def rows(tests: Sequence[Test], truth: Sequence[float], wind_m_s: float) -> list[Row]:
    """Return a row for each estimator."""
    found: dict[str, list[tuple[float, bool, float]]] = {"ols": [], "wls": [], "total": [], "best": []}
    for test, true in zip(tests, truth, strict=True):
        try:
            result = analyse(test, kit=EXACT)
        except InvalidInput:  # a gust has blown back through the fan; the program refuses such a point too
            continue
        assert result.best is not None
        total = next(item.total for item in result.budgets if item.quantity == "q50_m3_h")
        estimates = {
            "ols": result.mean.q50_m3_h,
            "wls": analyse(test, fit="wls").mean.q50_m3_h,
            "total": total,
            "best": result.best.q50_m3_h,
        }
        for name, estimate in estimates.items():
            found[name].append(_against(estimate, true))
    return [_row(wind_m_s, name, items) for name, items in found.items()]


def _against(estimate: Estimate, true: float) -> tuple[float, bool, float]:
    error = 100.0 * (estimate.value / true - 1.0)
    return error, estimate.low <= true <= estimate.high, 100.0 * estimate.half_width / estimate.value


def _row(wind_m_s: float, name: str, items: Sequence[tuple[float, bool, float]]) -> Row:
    errors, inside, widths = (np.array(column, dtype=np.float64) for column in zip(*items, strict=True))
    return Row(
        wind_m_s, name, len(items), float(np.sqrt(np.mean(errors**2))), float(errors.mean()),
        float(100.0 * inside.mean()), float(np.median(widths)),
    )  # fmt: skip


def reached(row: Row) -> bool:
    """Tell whether the interval of the best estimate holds the truth as often as it says, chance allowed for."""
    slack = SLACK_SD * 100.0 * math.sqrt(0.95 * 0.05 / row.tests)
    return row.estimator != "best" or LEAST_PCT - slack <= row.coverage_pct <= MOST_PCT + slack


def main() -> int:
    """Print the table."""
    parser = argparse.ArgumentParser(prog="run.py bench coverage", description=__doc__)
    parser.add_argument("--tests", type=int, default=1000, help="houses for each wind (%(default)s)")
    parser.add_argument("--taps", type=int, choices=(1, 2, 3, 4), default=1, help="outdoor taps (%(default)s)")
    parser.add_argument("--seed", type=int, default=1, help="decides houses, wind and noise (%(default)s)")
    parser.add_argument("--json", action="store_true", help="one JSON object as the last line")
    options = parser.parse_args()
    print(f"{'wind':>6} {'estimator':>10} {'tests':>6} {'RMS':>8} {'bias':>8} {'coverage':>9} {'half width':>11}")
    table: list[Row] = []
    for wind in WINDS_M_S:
        tests, truth = houses_tested(options.tests, wind, options.taps, options.seed)
        for row in rows(tests, truth.tolist(), wind):
            table.append(row)
            print(
                f"{row.wind_m_s:>4.0f} m/s {row.estimator:>8} {row.tests:>6} {row.rms_pct:>6.2f} % "
                f"{row.bias_pct:>+6.2f} % {row.coverage_pct:>7.1f} % {row.half_width_pct:>9.2f} %",
                flush=True,
            )
    if options.json:
        records = [{name: getattr(row, name) for name in Row.__slots__} for row in table]
        print(json.dumps({"bench": "coverage", "seed": options.seed, "taps": options.taps, "rows": records}))
    return 0 if all(map(reached, table)) else 1


if __name__ == "__main__":
    sys.exit(main())
