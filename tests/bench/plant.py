"""How fast the simulated house runs, in its rig and many side by side: simulated seconds per second of one core.

python -m tests.bench.plant [--seconds S] [--seed N] [--json]

The first rows are one house behind its wires, read and driven ten times a second as a test does; the others are plants
of different houses by chance, without wires. A house second is one simulated second of one house.
"""

from __future__ import annotations

import argparse
import json
import sys
import time
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from datetime import UTC, datetime

import numpy as np

from drivers.clock import VirtualClock, seconds
from simulators.houses import load_house
from simulators.plant import Plant, PlantInputs
from simulators.random_house import random_houses
from simulators.rig import SimulatedRig
from simulators.rigging import Rigging, TapPlace

COUNTS = (1, 100, 1000)
STEP_S = 0.1
LEAST_ONE, LEAST_BATCH = 500.0, 50_000.0
"""What is asked for: simulated seconds per second of one house in its rig, house seconds per second of 1000."""


@dataclass(frozen=True, slots=True)
class Row:
    """One line of the table."""

    what: str
    houses: int
    simulated_s_per_s: float


def rate(step: Callable[[], object], seconds_real: float) -> float:
    """Return how many simulated seconds of `STEP_S` each pass in a second of processor time."""
    step()
    steps, start_s = 0, time.process_time()
    while time.process_time() - start_s < seconds_real:
        for _ in range(50):
            step()
        steps += 50
    return steps * STEP_S / (time.process_time() - start_s)


def in_the_rig(house: str, taps: int, seed: int) -> Callable[[], object]:
    """Return a step of a house behind its wires: the fan is told its speed, the gauge is read."""
    clock = VirtualClock(datetime(2026, 5, 4, 9, 0, tzinfo=UTC))
    rig = SimulatedRig(load_house(house), seed, clock, wind_m_s=3.0, taps=taps, tap="facade")
    gauge, fan = rig.open("sim:gauge"), rig.open("sim:fan")
    gauge.open()
    fan.open()

    def step() -> None:
        fan.write(b"FAN:SPEED 0.5000;SPEED?\n")
        gauge.write(b"READ?\n")
        clock.wait_until(clock.now_ns() + seconds(STEP_S))
        if not gauge.read(0.0) or not fan.read(0.0):
            raise RuntimeError("an instrument of the simulated rig does not answer")

    return step


def side_by_side(count: int, seed: int) -> Callable[[], object]:
    """Return a step of so many different houses in one plant, with four outdoor taps each."""
    plant = Plant(random_houses(count, seed), seed, 3.0, Rigging(taps=4, tap=TapPlace.FACADE))
    inputs = PlantInputs(np.full(count, 0.5), np.full(count, -1.0))
    return lambda: plant.step(STEP_S, inputs)


def measured(seed: int, seconds_real: float) -> list[Row]:
    """Return all rows."""
    rigs = [
        ("in its rig", "mill-row", 1),
        ("in its rig, 4 taps", "mill-row", 4),
        ("in its rig, 2 zones", "brook-end", 4),
    ]
    rows = [Row(what, 1, rate(in_the_rig(house, taps, seed), seconds_real)) for what, house, taps in rigs]
    return rows + [
        Row("side by side, 4 taps", count, rate(side_by_side(count, seed), seconds_real)) for count in COUNTS
    ]


def main(arguments: Sequence[str] | None = None) -> int:
    """Measure and print; return 1 when it is slower than asked for."""
    parser = argparse.ArgumentParser(description="Speed of the simulated house.")
    parser.add_argument("--seconds", type=float, default=3.0, help="seconds of processor time for each row")
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--json", action="store_true", help="one JSON object as the last line")
    options = parser.parse_args(arguments)
    rows = measured(options.seed, options.seconds)
    print(f"{'':<22} {'houses':>8} {'simulated s per s':>20} {'house seconds per s':>22}")
    for row in rows:
        houses_s = row.houses * row.simulated_s_per_s
        print(f"{row.what:<22} {row.houses:>8} {row.simulated_s_per_s:>20.0f} {houses_s:>22.0f}")
    one, batch = rows[0].simulated_s_per_s, rows[-1].houses * rows[-1].simulated_s_per_s
    print(f"one house in its rig: {one:.0f} of {LEAST_ONE:.0f}; 1000 houses: {batch:.0f} of {LEAST_BATCH:.0f}")
    if options.json:
        table = [
            {"what": row.what, "houses": row.houses, "simulated_s_per_s": round(row.simulated_s_per_s, 1)}
            for row in rows
        ]
        print(json.dumps({"bench": "plant", "seed": options.seed, "rows": table}))
    return 0 if one >= LEAST_ONE and batch >= LEAST_BATCH else 1


if __name__ == "__main__":
    sys.exit(main())
