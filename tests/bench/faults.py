"""What the program notices of a fault within ten seconds, how often it cries wolf, and whether the house stays safe.

Houses by chance (n50 0.3 to 10 1/h, sheltered) are tested in virtual time by the complete program. At a random moment
while points are taken something happens; the true pressure of the house is followed for half a minute. Noticed means a
flag of attention or alarm, or a stop, within ten seconds. Quiet tests, in which nothing happens, count the false flags.
The naive way steers by one loop that believes what it reads, and nobody watches.
"""

from __future__ import annotations

import argparse
import json
import multiprocessing
import os
import sys
import tempfile
from collections.abc import Callable, Sequence
from contextlib import nullcontext
from dataclasses import dataclass, replace
from datetime import UTC, datetime
from pathlib import Path

import numpy as np

from acquisition.engine import Engine
from acquisition.job import Job
from acquisition.openrig import open_rig
from acquisition.plan import TestPlan
from acquisition.rigfile import read_rig
from acquisition.snapshot import EngineState, Severity, Snapshot
from analysis.records import Air, Building, Direction
from drivers.clock import VirtualClock, seconds
from simulators import faults
from simulators.element import RANGES
from simulators.hoses import Hose
from simulators.house import Facade
from simulators.memory import Faults
from simulators.plant import Action
from simulators.random_house import random_houses
from simulators.rig import SimulatedRig
from tests.bench._naive import blind, naive_plan, steering

NOTICED_S, FOLLOWED_S = 10.0, 30.0
HIGHEST_PA, HIGH_S = 100.0, 2.0
"""No house may pass the first, or stay above 80 Pa for longer than the second."""
POINTS_SPAN_S = 120.0
PLATE_S = 3.0
"""So long a person takes to draw a plate out of a fan that runs, at least (common practice, no source)."""
LIMIT_S = 1500.0

Happen = Callable[[SimulatedRig, np.random.Generator], None]


def _does(action: Action, over_s: float = 0.0) -> Happen:
    return lambda rig, rng: rig.happen(action, over_s=over_s)


def _hose(channel: int, state: Hose) -> Happen:
    return _does(faults.hose(channel, state))


def _other_range(rig: SimulatedRig, rng: np.random.Generator) -> None:
    names = [item.name for item in RANGES]
    at = names.index(rig.house.fitted)
    rig.happen(faults.range_changed(names[at - 1] if at else names[1]), over_s=PLATE_S)


def _leak_of_a_wall(rig: SimulatedRig, rng: np.random.Generator) -> None:
    """Let a seal go that adds a quarter of the leakage of the house."""
    leak = max(rig.house.leaks, key=lambda item: item.share)
    rig.happen(faults.came_off(1.0 + 0.25 / leak.share, (leak.name,)))


def _wire(instrument: str, wrong: Faults | None) -> Happen:
    def act(rig: SimulatedRig, rng: np.random.Generator) -> None:
        port = rig.ports[f"sim:{instrument}"]
        if wrong is None:
            port.unplug()
        else:
            port.faults = wrong

    return act


FAULTS: dict[str, Happen] = {
    "window ajar, 0.02 m2": _does(faults.opened(Facade.SOUTH, 0.02), 1.0),
    "door ajar, 0.2 m2": _does(faults.opened(Facade.SOUTH, 0.2), 1.0),
    "door open, 1.6 m2": _does(faults.opened(Facade.SOUTH, 1.6), 1.0),
    "flue open, 0.03 m2": _does(faults.flue_opened(0.03), 1.0),
    "tape off, a quarter more": _leak_of_a_wall,
    "outdoor hose off": _hose(0, Hose.OFF),
    "outdoor hose kinked": _hose(0, Hose.KINKED),
    "outdoor hose wet": _hose(0, Hose.WET),
    "outdoor hose frozen": _hose(0, Hose.FROZEN),
    "outdoor hose on wrong side": _hose(0, Hose.REVERSED),
    "outdoor hose in the wind": _hose(0, Hose.FLAPPING),
    "outdoor hose in the jet": _does(faults.hose_in_jet(0, 25.0)),
    "hose of flow element off": _hose(1, Hose.OFF),
    "hose of flow element reversed": _hose(1, Hose.REVERSED),
    "hoses swapped": _does(faults.hoses_swapped(True)),
    "fan obstructed by 30 %": _does(faults.fan_obstructed(0.3), 1.0),
    "fan switches off": _does(faults.fan_tripped(True)),
    "another range fitted": _other_range,
    "gust of 4 m/s": _does(faults.gust(4.0), 8.0),
    "gauge frozen": _does(faults.gauge_frozen(True)),
    "gauge drifts by 15 Pa": _does(faults.gauge_drifts(15.0), 8.0),
    "half the readings lost": _does(faults.readings_lost(0.5)),
    "gauge unplugged": _wire("gauge", None),
    "fan unplugged": _wire("fan", None),
    "gauge mute": _wire("gauge", Faults(mute=True)),
    "fan mute": _wire("fan", Faults(mute=True)),
    "noise on the line": _wire("gauge", Faults(corrupt_every=150)),
    "slow line, 2 s": _wire("gauge", Faults(delay_s=2.0)),
}
QUIET = "nothing"
OUTWARDS = ("outdoor hose in the jet",)


@dataclass(frozen=True, slots=True)
class Case:
    """One test in which one thing happens."""

    fault: str
    at: int
    count: int
    wind_m_s: float
    seed: int
    naive: bool = False


@dataclass(slots=True)
class Seen:
    """What came of it. `first` is the flag that noticed it; `high_s` how long the house was above 80 Pa."""

    fault: str
    noticed_s: float | None = None
    first: str = ""
    highest_pa: float = 0.0
    high_s: float = 0.0
    flags: int = 0


def measure(case: Case) -> Seen:
    """Run one test to the fault and half a minute on, a quiet one to its end."""
    with steering(naive=case.naive), blind() if case.naive else nullcontext():
        return _measure(case)


def _measure(case: Case) -> Seen:
    house = random_houses(case.count, case.seed, case.wind_m_s)[case.at]
    rng = np.random.default_rng((case.seed, case.at, sum(map(ord, case.fault))))
    clock = VirtualClock(datetime(2026, 5, 4, 9, 0, tzinfo=UTC))
    rig = SimulatedRig(house, case.seed + case.at, clock, wind_m_s=case.wind_m_s)
    spec = read_rig(rig.rig_toml(rig.own_ports))
    engine = Engine(open_rig(spec, clock, rig.open), clock, auto_answer=True)
    building = Building(**rig.building())  # type: ignore[arg-type]  # only the name is a text
    # Blowing in, a fan has no jet outdoors.
    way = Direction.DEPRESSURIZE if case.fault in OUTWARDS or rng.random() < 0.5 else Direction.PRESSURIZE
    plan = TestPlan(building, Air(**rig.air()), directions=(way,), zero_s=30.0, average_s=15.0)
    if case.naive:
        plan = naive_plan(plan)
    seen = Seen(case.fault)
    with tempfile.TemporaryDirectory() as folder:
        job = Job.create(Path(folder) / "bench.airseam", clock, building.name)
        try:
            engine.start()
            clock.wait_until(seconds(3.0))
            engine.begin(plan, job.record(plan, spec))
            if case.fault == QUIET:
                _quietly(engine, clock, seen)
            else:
                _until_points(engine, clock)
                clock.wait_until(clock.now_ns() + seconds(float(rng.uniform(0.0, POINTS_SPAN_S))))
                before = _worrying(engine.snapshot())
                FAULTS[case.fault](rig, rng)
                _follow(engine, clock, rig, before, seen)
        finally:
            engine.close()
            job.close()
    return seen


def _until_points(engine: Engine, clock: VirtualClock) -> None:
    while engine.busy and not any(run.points and run.points[0].window for run in engine.snapshot().runs):
        clock.wait_until(clock.now_ns() + seconds(0.5))
        if clock.now_ns() > seconds(LIMIT_S):
            return


def _quietly(engine: Engine, clock: VirtualClock, seen: Seen) -> None:
    while engine.busy and clock.now_ns() < seconds(LIMIT_S):
        clock.wait_until(clock.now_ns() + seconds(2.0))
    flags = [flag for flag in engine.snapshot().flags if flag.severity is not Severity.NOTE]
    honest = ("zero-high", "zero-drift", "not-settled", "out-of-range", "wind")
    wrong = [flag.id for flag in flags if flag.id not in honest]
    seen.flags, seen.first = len(wrong), " ".join(wrong)


def _worrying(snapshot: Snapshot) -> int:
    return sum(flag.severity is not Severity.NOTE for flag in snapshot.flags)


def _follow(engine: Engine, clock: VirtualClock, rig: SimulatedRig, before: int, seen: Seen) -> None:
    start_ns, high_s = clock.now_ns(), 0.0
    while clock.now_ns() - start_ns < seconds(FOLLOWED_S):
        clock.wait_until(clock.now_ns() + seconds(0.1))
        pressure = abs(float(rig.plant.pressure_pa[0]))
        seen.highest_pa = max(seen.highest_pa, pressure)
        high_s = high_s + 0.1 if pressure > 80.0 else 0.0
        seen.high_s = max(seen.high_s, high_s)
        snapshot = engine.snapshot()
        if seen.noticed_s is None and (_worrying(snapshot) > before or snapshot.state is EngineState.PAUSED):
            seen.noticed_s = (clock.now_ns() - start_ns) / 1e9
            worrying = [flag.id for flag in snapshot.flags if flag.severity is not Severity.NOTE]
            seen.first = worrying[before] if len(worrying) > before else "paused"


def main() -> int:
    """Print the table."""
    parser = argparse.ArgumentParser(prog="run.py bench faults", description=__doc__)
    parser.add_argument("--houses", type=int, default=30, help="houses for each fault (%(default)s)")
    parser.add_argument("--wind", type=float, default=3.0, help="wind in m/s (%(default)s)")
    parser.add_argument("--seed", type=int, default=1, help="decides houses, wind, noise and moment (%(default)s)")
    parser.add_argument("--only", action="append", help="one fault by its name, more than once for more")
    parser.add_argument("--naive", action="store_true", help="the naive way too, in a row below each fault")
    parser.add_argument("--processes", type=int, default=os.cpu_count() or 1, help="side by side (%(default)s)")
    parser.add_argument("--json", action="store_true", help="one JSON object as the last line")
    options = parser.parse_args()
    names = options.only or [*FAULTS, QUIET]
    unknown = [name for name in names if name not in (*FAULTS, QUIET)]
    if unknown:
        parser.error(f"--only {unknown[0]!r}: one of these is needed: {', '.join([*FAULTS, QUIET])}")
    rows: dict[str, dict[str, float]] = {}
    naively: dict[str, dict[str, float]] = {}
    print(f"{options.houses} houses, wind {options.wind:g} m/s; noticed within {NOTICED_S:.0f} s")
    print(f"{'what happened':<30} noticed  after p50   highest  above 80 Pa   first flag")
    with multiprocessing.get_context("spawn").Pool(max(min(options.processes, options.houses), 1)) as pool:
        for name in names:
            cases = [Case(name, at, options.houses, options.wind, options.seed) for at in range(options.houses)]
            rows[name] = _row(name, list(pool.imap_unordered(measure, cases)))
            if options.naive and name != QUIET:
                naive = [replace(case, naive=True) for case in cases]
                naively[name] = _row("    the naive way", list(pool.imap_unordered(measure, naive)))
    noticed = [row["noticed_pct"] for name, row in rows.items() if name != QUIET]
    if noticed:
        high = sum(
            row["highest_pa"] > HIGHEST_PA or row["high_s"] > HIGH_S for name, row in rows.items() if name != QUIET
        )
        print(f"all faults: noticed {np.mean(noticed):.1f} %; kinds that brought a house beyond the limits: {high}")
    if naively:
        high = sum(row["highest_pa"] > HIGHEST_PA or row["high_s"] > HIGH_S for row in naively.values())
        print(f"the naive way: nobody looks, noticed only where the link is lost; beyond the limits: {high}")
    if options.json:
        print(
            json.dumps(
                {"bench": "faults", "seed": options.seed, "wind_m_s": options.wind, "rows": rows, "naive": naively}
            )
        )
    return 0


def _row(name: str, seen: Sequence[Seen]) -> dict[str, float]:
    if name == QUIET:
        per_test = float(np.mean([item.flags for item in seen]))
        print(f"{name:<30} false flags per test: {per_test:.2f}   {' '.join(item.first for item in seen)}", flush=True)
        return {"false_flags_per_test": per_test}
    in_time = [item.noticed_s for item in seen if item.noticed_s is not None and item.noticed_s <= NOTICED_S]
    row = {
        "noticed_pct": 100.0 * len(in_time) / len(seen),
        "after_p50_s": float(np.median(in_time)) if in_time else float("nan"),
        "highest_pa": max(item.highest_pa for item in seen),
        "high_s": max(item.high_s for item in seen),
    }
    firsts = [item.first for item in seen if item.first]
    common = max(set(firsts), key=firsts.count) if firsts else "-"
    print(
        f"{name:<30} {row['noticed_pct']:>5.0f} % {row['after_p50_s']:>8.1f} s {row['highest_pa']:>8.0f} Pa "
        f"{row['high_s']:>9.1f} s    {common}",
        flush=True,
    )
    return row


if __name__ == "__main__":
    sys.exit(main())
