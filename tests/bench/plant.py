"""How fast the simulated house runs: simulated seconds per real second, for one house and for many side by side.

python -m tests.bench.plant [--seconds S] [--seed N] [--json]
"""

from __future__ import annotations

import argparse
import json
import sys
import time
from collections.abc import Sequence

import numpy as np

from simulators.houses import load_house
from simulators.plant import Plant, PlantInputs

COUNTS = (1, 100, 1000)
STEP_S = 0.1


def rate(count: int, seed: int, seconds: float) -> float:
    """Return simulated seconds per real second of so many houses in one plant."""
    plant = Plant([load_house("mill-row")] * count, seed, wind_m_s=3.0)
    inputs = PlantInputs(np.full(count, 0.5), np.full(count, -1.0))
    plant.step(STEP_S, inputs)
    steps, start_s = 0, time.perf_counter()
    while time.perf_counter() - start_s < seconds:
        for _ in range(50):
            plant.step(STEP_S, inputs)
        steps += 50
    return steps * STEP_S / (time.perf_counter() - start_s)


def main(arguments: Sequence[str] | None = None) -> int:
    """Measure and print."""
    parser = argparse.ArgumentParser(description="Speed of the simulated house.")
    parser.add_argument("--seconds", type=float, default=3.0, help="real seconds for each row")
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--json", action="store_true", help="one JSON object as the last line")
    options = parser.parse_args(arguments)
    rows = [(count, rate(count, options.seed, options.seconds)) for count in COUNTS]
    print(f"{'houses':>8} {'simulated s per s':>20} {'house seconds per s':>22}")
    for count, speed in rows:
        print(f"{count:>8} {speed:>20.0f} {count * speed:>22.0f}")
    if options.json:
        table = [{"houses": count, "simulated_s_per_s": speed} for count, speed in rows]
        print(json.dumps({"bench": "plant", "seed": options.seed, "rows": table}))
    return 0


if __name__ == "__main__":
    sys.exit(main())
