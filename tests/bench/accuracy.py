"""How near the complete program comes to the truth, how sure it is, how long it takes, and how calmly it steers.

Houses by chance (n50 0.3 to 10 1/h, sheltered) are tested in both directions in virtual time by engine, drivers over
simulated wires, controller and analysis; calibration errors are off. Error: the best estimate of the flow at 50 Pa
against what the house leaks there in reference air. Settle times and overshoot are those of the steps of 5 to 6 Pa from
point to point; in brackets what gusts alone do to the same measure while the fan is held, which no controller betters.
"""

from __future__ import annotations

import argparse
import json
import math
import multiprocessing
import os
import sys
import tempfile
from collections.abc import Sequence
from dataclasses import dataclass, field, replace
from datetime import UTC, datetime
from functools import partial
from pathlib import Path

import numpy as np

from acquisition.derive import envelope_pressures
from acquisition.engine import Engine
from acquisition.job import Job, LoadedTest
from acquisition.openrig import open_rig
from acquisition.plan import SCHEDULES, TestPlan
from acquisition.rigfile import read_rig
from acquisition.series import RunData
from acquisition.steps import WindowKind
from analysis.errors import InvalidInput
from analysis.methods import analyse, method_ids
from analysis.records import Air, Building, Direction, Kit
from drivers.clock import VirtualClock, seconds
from simulators.random_house import random_houses
from simulators.rig import SimulatedRig
from tests.bench._naive import naive_estimate, naive_plan, steering
from tests.bench._stepping import Floats, Stepped, small_steps
from tests.bench._told import by_wind

EXACT = Kit(0.0, 0.0, 0.0, 0.0, 0.0, 0.0)
LIMIT_S = 3 * 3600.0


@dataclass(frozen=True, slots=True)
class Case:
    """One test to run."""

    at: int
    count: int
    wind_m_s: float
    taps: int
    schedule: str
    seed: int
    naive: bool = False
    method: str = ""
    """Id of a method whose own sequence is taken instead of the schedule; empty: the schedule."""


@dataclass(slots=True)
class Found:
    """What one test gave. `gap` says why there is no result."""

    error_pct: float = math.nan
    inside: bool = False
    half_width_pct: float = math.nan
    foretold_pct: float = math.nan
    minutes: float = math.nan
    steps: list[Stepped] = field(default_factory=list)
    timeouts: int = 0
    points: int = 0
    gap: str = ""


def measure(case: Case) -> Found:
    """Run one test from the first zero-flow record to the last."""
    house = random_houses(case.count, case.seed, case.wind_m_s)[case.at]
    clock = VirtualClock(datetime(2026, 5, 4, 9, 0, tzinfo=UTC))
    place = "ground" if case.taps == 1 else "facade"
    rig = SimulatedRig(house, case.seed + case.at, clock, wind_m_s=case.wind_m_s, taps=case.taps, tap=place)
    spec = read_rig(rig.rig_toml(rig.own_ports))
    engine = Engine(open_rig(spec, clock, rig.open), clock, auto_answer=True)
    building = Building(**rig.building())  # type: ignore[arg-type]  # only the name is a text
    plan = TestPlan(building, Air(**rig.air()), directions=tuple(Direction), kit=EXACT).on_schedule(case.schedule)
    if case.method:
        plan = plan.by_method(case.method)
    if case.naive:
        plan = naive_plan(plan)
    found = Found()
    with tempfile.TemporaryDirectory() as folder:
        job = Job.create(Path(folder) / "bench.airseam", clock, building.name)
        try:
            job.add_building(building, "by chance")
            engine.start()
            clock.wait_until(seconds(3.0))
            with steering(naive=case.naive):
                engine.begin(plan, job.record(plan, spec))
                while engine.busy and clock.now_ns() < seconds(LIMIT_S):
                    clock.wait_until(clock.now_ns() + seconds(2.0))
                    if engine.snapshot().paused_reason:
                        engine.resume()
            outlook = engine.snapshot().outlook
            if outlook is not None:
                found.foretold_pct = 100.0 * outlook.chosen.half_width
            engine.close()
            _look(job.load(1), found)
            test = job.load(1).test()
            result = analyse(test, case.method or plan.method, kit=EXACT)
            # A method of one or two points has no estimate beside its own.
            best = result.best or result.mean
            truth = (rig.true_q_m3_h(50.0, "depressurize") + rig.true_q_m3_h(50.0, "pressurize")) / 2.0
            if len(test.runs) < len(Direction):
                truth = rig.true_q_m3_h(50.0, test.runs[0].direction.value)
            estimate = naive_estimate(test) if case.naive else best.q50_m3_h
            found.error_pct = 100.0 * (estimate.value / truth - 1.0)
            found.inside = estimate.low <= truth <= estimate.high
            found.half_width_pct = 100.0 * estimate.half_width / estimate.value
        except InvalidInput as reason:
            found.gap = str(reason)
        finally:
            engine.close()
            job.close()
    return found


def _look(loaded: LoadedTest, found: Found) -> None:
    """Take from the record how long everything took and how the pressure went."""
    minutes = []
    for run in loaded.runs:
        windows = [window for window in run.windows if not window.struck]
        points = [window for window in windows if window.kind is WindowKind.POINT]
        if windows:
            minutes.append((max(w.end_ns for w in windows) - run.record.started_ns) / 60e9)
        zeros = [w for w in windows if w.kind is WindowKind.ZERO_BEFORE]
        if not zeros:
            continue
        zero_pa = float(envelope_pressures(run.data, zeros[0].start_ns, zeros[0].end_ns)[1].mean())
        found.points += len(points)
        found.steps += small_steps(windows, zero_pa, partial(_pressures, run.data))
    found.minutes = float(np.mean(minutes)) if minutes else math.nan
    found.timeouts = sum("did not settle" in flag.sentence for flag in loaded.flags)


def _pressures(data: RunData, start_ns: int, end_ns: int) -> Floats:
    return envelope_pressures(data, start_ns, end_ns)[1]


def _well_foretold(found: Found) -> bool:
    """Tell whether the half width that was expected beforehand is within a factor of 1.5 of the one that came."""
    return 1 / 1.5 <= found.foretold_pct / found.half_width_pct <= 1.5


def summary(found: Sequence[Found]) -> dict[str, float]:
    """Return what the table shows."""
    done = [item for item in found if not item.gap]
    errors = np.array([item.error_pct for item in done])
    steps = [step for item in done for step in item.steps]
    points = sum(item.points for item in done)
    return {
        "rms_pct": float(np.sqrt(np.mean(errors**2))),
        "bias_pct": float(errors.mean()),
        "coverage_pct": 100.0 * float(np.mean([item.inside for item in done])),
        "half_width_pct": float(np.median([item.half_width_pct for item in done])),
        "foretold_share_pct": 100.0 * float(np.mean([_well_foretold(item) for item in done])),
        "foretold_ratio": float(np.median([item.foretold_pct / item.half_width_pct for item in done])),
        "minutes": float(np.mean([item.minutes for item in done])),
        "settle_p50_s": _percentile([step.settle_s for step in steps], 50),
        "settle_p90_s": _percentile([step.settle_s for step in steps], 90),
        "overshoot_p90_pa": _percentile([step.overshoot_pa for step in steps], 90),
        "gusts_p90_pa": _percentile([step.gusts_pa for step in steps], 90),
        "timeouts_pct": 100.0 * sum(item.timeouts for item in done) / max(points, 1),
        "n_rms": len(done),
        "no_result": len(found) - len(done),
    }


def _percentile(values: Sequence[float], share: float) -> float:
    return float(np.percentile(values, share)) if values else math.nan


def _line(name: str, row: dict[str, float]) -> str:
    return (
        f"{name:>8} {row['n_rms']:>4.0f} {row['rms_pct']:>6.2f} % {row['bias_pct']:>+6.2f} % "
        f"{row['coverage_pct']:>7.1f} % {row['half_width_pct']:>9.2f} % {row['minutes']:>8.1f} "
        f"{row['settle_p50_s']:>8.1f}/{row['settle_p90_s']:.1f} s "
        f"{row['overshoot_p90_pa']:>9.2f} ({row['gusts_p90_pa']:.2f}) Pa "
        f"{row['timeouts_pct']:>5.1f} % {row['foretold_share_pct']:>7.0f} % (x{row['foretold_ratio']:.2f})"
    )


def main() -> int:
    """Print the table."""
    parser = argparse.ArgumentParser(prog="run.py bench accuracy", description=__doc__)
    parser.add_argument("--tests", type=int, default=60, help="houses for each wind (%(default)s)")
    parser.add_argument("--wind", type=float, action="append", help="wind in m/s, more than once for more (0, 3, 6)")
    parser.add_argument("--outdoor-taps", type=int, choices=(1, 2, 3, 4), default=1, help="outdoor taps (%(default)s)")
    parser.add_argument("--schedule", choices=tuple(SCHEDULES), default="standard", help="(%(default)s)")
    parser.add_argument("--method", choices=method_ids(), default="", help="its own sequence instead")
    parser.add_argument("--naive", action="store_true", help="the naive way too, in a row below each wind")
    parser.add_argument("--seed", type=int, default=1, help="decides houses, wind and noise (%(default)s)")
    parser.add_argument("--processes", type=int, default=os.cpu_count() or 1, help="side by side (%(default)s)")
    parser.add_argument("--json", action="store_true", help="one JSON object as the last line")
    options = parser.parse_args()
    blank = Case(0, options.tests, 0.0, options.outdoor_taps, options.schedule, options.seed, method=options.method)
    tables: dict[str, dict[str, float]] = {}
    shown = options.method or f"{options.schedule} schedule"
    ways = "its own directions" if options.method else "both directions"
    print(f"{shown}, {options.outdoor_taps} outdoor taps, {ways}, best estimate of q50")
    print(
        "  wind  tests     RMS     bias  coverage  half width  minutes  settle p50/p90  overshoot p90 (gusts) "
        " late  foretold"
    )
    with multiprocessing.get_context("spawn").Pool(max(min(options.processes, options.tests), 1)) as pool:
        for wind in options.wind or (0.0, 3.0, 6.0):
            for naive in (False, True) if options.naive else (False,):
                cases = [replace(blank, at=at, wind_m_s=wind, naive=naive) for at in range(options.tests)]
                row = summary(list(pool.imap_unordered(measure, cases)))
                tables[f"{wind:g} naive" if naive else f"{wind:g}"] = row
                print(_line("naive" if naive else f"{wind:.0f} m/s", row), flush=True)
    if options.json:
        print(json.dumps({"bench": "accuracy", "seed": options.seed, "schedule": options.schedule,
                          "outdoor_taps": options.outdoor_taps, **by_wind(tables)}))  # fmt: skip
    return 0


if __name__ == "__main__":
    sys.exit(main())
