"""Eight channels at 100 Hz over one TCP link, through the whole way of a sample: nothing lost, how old, at what cost.

The gauge stands behind a TCP port in a process of its own. This process reads it as the program does, in real time:
link, framer, rig, engine, live buffer, and a snapshot pulled 30 times a second as the window does. Each sample bears a
number, so that a lost one shows. `drawn` is the age of the newest sample at the moments of drawing, `before` its age
just before the next picture takes its place. A loop that only calls pyserial reads the same gauge for comparison.

With `--soak` a plug is pulled and put back again and again instead; nothing may be left behind.
"""

from __future__ import annotations

import argparse
import json
import multiprocessing
import sys
import tempfile
import time
from dataclasses import asdict, dataclass
from pathlib import Path

import numpy as np
import serial

from acquisition.engine import Engine
from acquisition.openrig import OpenRig
from acquisition.rig import InstrumentSpec, RigSpec, Role
from acquisition.snapshot import Snapshot
from analysis.records import FlowRange
from drivers.clock import NS_PER_S, WallClock, seconds
from drivers.device import Gauge, connect
from drivers.openers import Openers
from drivers.profile import load_profile
from drivers.reading import Reading
from tests.bench._fast_gauge import NUMBERS, TALKS, profile_text, served
from tests.drivers.soaking import DESCRIPTORS, soak

GOAL_MS = 100.0
PICTURES_HZ = 30.0
SHOWN_NS = seconds(5.0)
LINK_LIMIT_S = 10.0
BARE_SHARE = 0.1
"""The loops for comparison run for this share of the time, each."""
ROLES = {
    "p1": Role.ENVELOPE,
    "p2": Role.ENVELOPE_2,
    "p3": Role.ENVELOPE_3,
    "p4": Role.ENVELOPE_4,
    "p5": Role.FLOW_ELEMENT,
    "t1": Role.INDOOR,
    "t2": Role.OUTDOOR,
    "b1": Role.BAROMETER,
}
RANGE = FlowRange("wide", 60.0, 0.5, 5.0, 400.0)
WAYS = ("whole reads", "readline")
CLOCK = WallClock()


@dataclass(frozen=True, slots=True)
class Read:
    """What was measured of the program. Ages in ms, processor use in per cent of one core."""

    talk: str
    seconds: float
    samples: int
    rate_hz: float
    lost: int
    bad_frames: int
    skipped_polls: int
    drawn_p50_ms: float
    drawn_p99_ms: float
    before_p50_ms: float
    before_p99_ms: float
    oldest_ms: float
    cpu_pct: float


@dataclass(frozen=True, slots=True)
class Bare:
    """What was measured of a loop that calls pyserial and nothing else."""

    way: str
    lines: int
    rate_hz: float
    cpu_pct: float


class Counted(OpenRig):
    """The rig, with the numbers of its samples held against each other as they pass."""

    samples = lost = 0
    _before: Reading | None = None

    def take(self) -> list[tuple[Role, Reading]]:
        """Count what passes: a gap in the gauge's own numbers or in those of the readings is a lost sample."""
        batch = super().take()
        for role, reading in batch:
            self.samples += 1
            if role is not Role.BAROMETER:
                continue
            before, self._before = self._before, reading
            if before is not None:
                gauge_gap = (round(reading.value) - round(before.value)) % NUMBERS - 1
                self.lost += max(gauge_gap, reading.sequence - before.sequence - 1)
        return batch


def read(talk: str, rate_hz: float, duration_s: float) -> Read:
    """Read the gauge as the program does."""
    with tempfile.TemporaryDirectory() as folder, served(talk, rate_hz) as url:
        path = Path(folder) / "fast-gauge.toml"
        path.write_text(profile_text(talk, rate_hz), encoding="utf-8")
        gauge = connect("gauge", load_profile(str(path)), Openers(CLOCK).open(url), CLOCK)
        assert isinstance(gauge, Gauge)
        instrument = InstrumentSpec("gauge", str(path), url, tuple(ROLES.items()))
        rig = Counted(RigSpec("bench", (instrument,), "", (RANGE,), RANGE.name), [gauge], ())
        rig.start()
        engine = Engine(rig, CLOCK)
        engine.start()
        try:
            _await_readings(rig)
            return _watched(talk, engine, rig, duration_s)
        finally:
            engine.close()


def _await_readings(rig: Counted) -> None:
    end_ns = CLOCK.now_ns() + seconds(LINK_LIMIT_S)
    while rig.samples < 100:
        if CLOCK.now_ns() > end_ns:
            raise RuntimeError(rig.statuses()[0].sentence)
        CLOCK.wait_until(CLOCK.now_ns() + seconds(0.05))


def _watched(talk: str, engine: Engine, rig: Counted, duration_s: float) -> Read:
    """Pull snapshots as the window does, and note how old what it shows is."""
    drawn_ms: list[float] = []
    before_ms: list[float] = []
    start_ns, start_cpu_s = CLOCK.now_ns(), time.process_time()
    start = (rig.samples, rig.lost, rig.statuses()[0])
    shown: Snapshot | None = None
    stamp_ns = start_ns
    due_ns, end_ns = start_ns, start_ns + seconds(duration_s)
    while due_ns < end_ns:
        CLOCK.wait_until(due_ns)
        now_ns = CLOCK.now_ns()
        snapshot = engine.snapshot()
        if shown is not None:
            before_ms.append((now_ns - stamp_ns) / 1e6)
        if snapshot is not shown:
            # A window draws nothing as long as the snapshot stays the same.
            shown = snapshot
            times, _ = engine.live.since(Role.ENVELOPE, snapshot.now_ns - SHOWN_NS)
            stamp_ns = int(times[-1])
        drawn_ms.append((now_ns - stamp_ns) / 1e6)
        due_ns = max(due_ns + round(NS_PER_S / PICTURES_HZ), now_ns)
        _progress(talk, now_ns - start_ns, seconds(duration_s))
    took_s = (CLOCK.now_ns() - start_ns) / NS_PER_S
    cpu_s = time.process_time() - start_cpu_s
    link = rig.statuses()[0]
    return Read(
        talk=talk,
        seconds=took_s,
        samples=rig.samples - start[0],
        rate_hz=(rig.samples - start[0]) / len(ROLES) / took_s,
        lost=rig.lost - start[1],
        bad_frames=link.bad_frames - start[2].bad_frames,
        skipped_polls=link.skipped_polls - start[2].skipped_polls,
        drawn_p50_ms=float(np.percentile(drawn_ms, 50)),
        drawn_p99_ms=float(np.percentile(drawn_ms, 99)),
        before_p50_ms=float(np.percentile(before_ms, 50)),
        before_p99_ms=float(np.percentile(before_ms, 99)),
        oldest_ms=max(before_ms),
        cpu_pct=100.0 * cpu_s / took_s,
    )


def bare(talk: str, way: str, rate_hz: float, duration_s: float) -> Bare:
    """Read the gauge by a loop that calls pyserial, in a process of its own."""
    with served(talk, rate_hz) as url, multiprocessing.get_context("spawn").Pool(1) as pool:
        lines, took_s, cpu_s = pool.apply(bare_loop, (url, talk, way, rate_hz, duration_s))
    return Bare(way, lines, lines / took_s, 100.0 * cpu_s / took_s)


def bare_loop(url: str, talk: str, way: str, rate_hz: float, duration_s: float) -> tuple[int, float, float]:
    """Ask and read, or read, and throw away; return how many lines, in how long (s), by how much processor time (s)."""
    port = serial.serial_for_url(url, timeout=0.1)
    lines = 0
    try:
        port.write(b"*IDN?\n")
        port.readline()
        start_ns, start_cpu_s = CLOCK.now_ns(), time.process_time()
        due_ns = start_ns
        while due_ns < start_ns + seconds(duration_s):
            CLOCK.wait_until(due_ns)
            if talk == "polled":
                port.write(b"READ?\n")
            lines += port.readline().endswith(b"\n") if way == "readline" else _whole_lines(port)
            due_ns = max(due_ns + round(NS_PER_S / rate_hz), CLOCK.now_ns())
        return lines, (CLOCK.now_ns() - start_ns) / NS_PER_S, time.process_time() - start_cpu_s
    finally:
        port.close()


def _whole_lines(port: serial.SerialBase) -> int:
    """Return how many lines came: wait for a byte, then take all that is there."""
    first = bytes(port.read(1))
    port.timeout = 0
    rest = bytes(port.read(4096))
    port.timeout = 0.1
    return first.count(b"\n") + rest.count(b"\n")


def _progress_of(what: str, done: int, count: int) -> None:
    if sys.stderr.isatty():
        print(f"\r{what}: {done} of {count} ", end="" if done < count else "\n", file=sys.stderr)


def _progress(what: str, done_ns: int, all_ns: int) -> None:
    if sys.stderr.isatty() and done_ns % NS_PER_S < NS_PER_S / PICTURES_HZ:
        print(f"\r{what}: {done_ns / NS_PER_S:.0f} of {all_ns / NS_PER_S:.0f} s ", end="", file=sys.stderr)


def main() -> int:
    """Print the table."""
    parser = argparse.ArgumentParser(prog="run.py bench wires", description=__doc__)
    parser.add_argument("--minutes", type=float, default=10.0, help="how long the program reads (%(default)s)")
    parser.add_argument("--rate", type=float, default=100.0, help="samples a second of each channel (%(default)s)")
    parser.add_argument("--talk", choices=TALKS, default=TALKS[0], help="how the gauge is read (%(default)s)")
    parser.add_argument("--soak", action="store_true", help="instead, pull a plug again and again")
    parser.add_argument("--cycles", type=int, default=200, help="how often with --soak (%(default)s)")
    parser.add_argument("--json", action="store_true", help="one JSON object as the last line")
    options = parser.parse_args()
    return soaked(options) if options.soak else read_fast(options)


def soaked(options: argparse.Namespace) -> int:
    """Pull the plug, and print what was counted."""
    if not DESCRIPTORS.is_dir():
        print("The soak needs a system that lists open descriptors in /proc: Linux.", file=sys.stderr)
        return 2
    with tempfile.TemporaryDirectory() as folder:
        start_ns = CLOCK.now_ns()
        found = soak(options.cycles, Path(folder), lambda done: _progress_of("plugs pulled", done, options.cycles))
        took_s = (CLOCK.now_ns() - start_ns) / NS_PER_S
    print(f"{found.cycles} times unplugged and plugged in again, every second time under another name, {took_s:.1f} s")
    print(f"  links made again {found.reconnects}, cycles that hung {found.stuck}, readings {found.readings}, ", end="")
    print(f"gaps in their numbers {found.gaps}")
    print(f"  threads left behind {found.threads}, descriptors left behind {found.descriptors}")
    if options.json:
        print(json.dumps({"bench": "wires-soak", "seconds": took_s, "clean": found.clean, **asdict(found)}))
    return 0 if found.clean else 1


def read_fast(options: argparse.Namespace) -> int:
    """Read the fast gauge, and print what was measured."""
    duration_s = 60.0 * options.minutes
    found = read(options.talk, options.rate, duration_s)
    loops = [bare(options.talk, way, options.rate, BARE_SHARE * duration_s) for way in WAYS]
    print(f"{len(ROLES)} channels at {options.rate:g} Hz over TCP, {options.talk}, {found.seconds:.0f} s")
    print(
        f"  samples {found.samples}, {found.rate_hz:.2f} Hz each, lost {found.lost}, damaged {found.bad_frames}, ",
        end="",
    )
    print(f"times not asked {found.skipped_polls}")
    print(f"  age of the newest sample when drawn: p50 {found.drawn_p50_ms:.0f} ms, p99 {found.drawn_p99_ms:.0f} ms")
    print(f"  just before the next picture: p50 {found.before_p50_ms:.0f} ms, ", end="")
    print(f"p99 {found.before_p99_ms:.0f} ms (goal {GOAL_MS:.0f} ms), oldest {found.oldest_ms:.0f} ms")
    print(f"  processor: {found.cpu_pct:.1f} % of a core for the program;", end="")
    print(";".join(f" {loop.cpu_pct:.1f} % for a bare loop ({loop.way}, {loop.rate_hz:.1f} Hz)" for loop in loops))
    reached = found.lost == 0 and found.before_p99_ms < GOAL_MS
    if options.json:
        row = {"bench": "wires", "rate_hz_asked": options.rate, "goal_ms": GOAL_MS, "reached": reached}
        print(json.dumps({**row, "program": asdict(found), "bare": [asdict(loop) for loop in loops]}))
    return 0 if reached else 1


if __name__ == "__main__":
    sys.exit(main())
