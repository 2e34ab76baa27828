"""Every framer, and what makes numbers of its lines, under a fuzzer that looks for the bytes that break them.

The fuzzer is atheris (Linux only, and no dependency of Airseam). Each target of `tests.drivers.damage` runs in a
process of its own for its share of the time; it fails by an exception, by a number that was never sent, by a frame
that was lost and not counted, or by memory beyond a bound.
"""

from __future__ import annotations

import argparse
import importlib.util
import json
import re
import subprocess
import sys
import tempfile
from collections.abc import Sequence
from dataclasses import asdict, dataclass

from tests.drivers.damage import TARGETS

ABSENT = "The fuzzer is not installed. The one command (Linux): .venv/bin/python -m pip install atheris"
MOST_MB = 512
LONGEST_INPUT = 4096
START_S = 60.0


@dataclass(frozen=True, slots=True)
class Fuzzed:
    """What became of one target. `said` is the end of what a failing one said."""

    target: str
    runs: int
    covered: int
    peak_mb: int
    held: bool
    said: str = ""


def fuzz(target: str, duration_s: int, seed: int) -> Fuzzed:
    """Run one target in a process of its own."""
    with tempfile.TemporaryDirectory() as folder:
        command = [sys.executable, "-m", "tests.bench.fuzz", "--run", target]
        command += [f"-max_total_time={duration_s}", f"-seed={seed}", f"-rss_limit_mb={MOST_MB}"]
        command += [f"-max_len={LONGEST_INPUT}", "-print_final_stats=1", f"-artifact_prefix={folder}/", "-timeout=10"]
        limit_s = duration_s + START_S
        done = subprocess.run(command, capture_output=True, text=True, check=False, timeout=limit_s, errors="replace")
    said = done.stdout + done.stderr
    return Fuzzed(
        target=target,
        runs=_last(r"stat::number_of_executed_units: +(\d+)", said) or _last(r"Done (\d+) runs", said),
        covered=_last(r"cov: (\d+)", said),
        peak_mb=_last(r"stat::peak_rss_mb: +(\d+)", said),
        held=done.returncode == 0,
        said="" if done.returncode == 0 else said[-3000:],
    )


def _last(pattern: str, text: str) -> int:
    found = re.findall(pattern, text)
    return int(found[-1]) if found else 0


def run(target: str, arguments: Sequence[str]) -> None:
    """Fuzz a target in this process; does not come back."""
    import atheris

    # Branches of the framers and of the target lead the search; the library of Modbus is taken as it is.
    with atheris.instrument_imports(include=["drivers.framing", "tests.drivers.damage"]):
        for name in [name for name in sys.modules if name.startswith(("drivers", "tests.drivers"))]:
            del sys.modules[name]
        from tests.drivers.damage import TARGETS as INSTRUMENTED
    atheris.Setup([sys.argv[0], *arguments], INSTRUMENTED[target])
    atheris.Fuzz()


def main() -> int:
    """Print the table."""
    if sys.argv[1:2] == ["--run"]:
        run(sys.argv[2], sys.argv[3:])
    parser = argparse.ArgumentParser(prog="run.py bench fuzz", description=__doc__)
    parser.add_argument("--seconds", type=int, default=300, help="for all targets together (%(default)s)")
    parser.add_argument("--target", choices=tuple(TARGETS), action="append", help="only this one; may be repeated")
    parser.add_argument("--seed", type=int, default=1, help="(%(default)s)")
    parser.add_argument("--json", action="store_true", help="one JSON object as the last line")
    options = parser.parse_args()
    if importlib.util.find_spec("atheris") is None:
        print(ABSENT, file=sys.stderr)
        return 2
    targets = options.target or list(TARGETS)
    share_s = max(options.seconds // len(targets), 1)
    print(f"{'target':<14} {'runs':>10} {'a second':>9} {'branches':>9} {'memory':>8}")
    found = []
    for target in targets:
        item = fuzz(target, share_s, options.seed)
        found.append(item)
        end = "held" if item.held else "FAILED"
        rate = item.runs / share_s
        print(f"{target:<14} {item.runs:>10} {rate:>9.0f} {item.covered:>9} {item.peak_mb:>5} MB {end}", flush=True)
        if item.said:
            print(item.said)
    held = all(item.held for item in found)
    if options.json:
        print(json.dumps({"bench": "fuzz", "seed": options.seed, "held": held, "targets": [asdict(i) for i in found]}))
    return 0 if held else 1


if __name__ == "__main__":
    sys.exit(main())
