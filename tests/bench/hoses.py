"""The check of the hoses in houses by chance: which faults it names, and how often it suspects sound hoses.

Each house gets the small step of the fan that a test begins with, sound and with each fault, in both directions.
`named` counts the sentences that name the fault, `else` those that find something else: for sound hoses all are false.
"""

from __future__ import annotations

import argparse
import json
import sys

from acquisition.hosecheck import HoseFault
from analysis.records import Direction
from simulators.faults import ELEMENT, ENVELOPE, hose, hose_in_jet, hoses_swapped
from simulators.hoses import Hose
from simulators.plant import Action
from simulators.random_house import random_houses
from tests.acquisition.test_hose_check import FOUR_TAPS, checked

FAULTS: dict[str, tuple[Action | None, str]] = {
    "sound": (None, ""),
    "swapped": (hoses_swapped(True), HoseFault.SWAPPED),
    "envelope off": (hose(ENVELOPE, Hose.OFF), "its hose is off"),
    "envelope pinched": (hose(ENVELOPE, Hose.KINKED), HoseFault.PINCHED),
    "envelope reversed": (hose(ENVELOPE, Hose.REVERSED), "the wrong way"),
    "element off": (hose(ELEMENT, Hose.OFF), "its hose is off"),
    "element pinched": (hose(ELEMENT, Hose.KINKED), HoseFault.PINCHED),
    "element reversed": (hose(ELEMENT, Hose.REVERSED), "backwards"),
    "sound, 4 taps": (None, ""),
    "jet, 4 taps": (hose_in_jet("p4", 15.0), HoseFault.JET),
}


def main() -> int:
    """Print the table."""
    parser = argparse.ArgumentParser(prog="run.py bench hoses", description=__doc__)
    parser.add_argument("--houses", type=int, default=30, help="how many (%(default)s)")
    parser.add_argument("--seed", type=int, default=11, help="decides the houses (%(default)s)")
    parser.add_argument("--fault", choices=tuple(FAULTS), action="append", help="these only; more than once")
    parser.add_argument("--json", action="store_true", help="one JSON object as the last line")
    options = parser.parse_args()
    rows: list[dict[str, object]] = []
    print(f"{options.houses} houses    direction     wind      named  else  nothing")
    for fault in options.fault or FAULTS:
        for direction in Direction:
            rows += [_row(fault, direction, wind_m_s, options) for wind_m_s in (0.0, 3.0)]
    if options.json:
        print(json.dumps({"bench": "hoses", "houses": options.houses, "rows": rows}))
    return 0


def _row(fault: str, direction: Direction, wind_m_s: float, options: argparse.Namespace) -> dict[str, object]:
    action, words = FAULTS[fault]
    said = []
    for seed, house in enumerate(random_houses(options.houses, options.seed, wind_m_s)):
        said.append(checked(house, action, wind_m_s, seed, direction, FOUR_TAPS if "taps" in fault else None)[0])
        if sys.stderr.isatty():
            print(f"\r{fault}: {seed + 1} of {options.houses} ", end="", file=sys.stderr)
    named = sum(bool(words) and str(words) in text for text in said)
    other = sum(bool(text) for text in said) - named
    if sys.stderr.isatty():
        print("\r", end="", file=sys.stderr)
    nothing = len(said) - named - other
    print(f"{fault:18} {direction.value:13} {wind_m_s:.0f} m/s {named:8} {other:5} {nothing:8}", flush=True)
    return {
        "fault": fault, "direction": direction.value, "wind_m_s": wind_m_s,
        "named": named, "other": other, "nothing": nothing,
    }  # fmt: skip


if __name__ == "__main__":
    sys.exit(main())
