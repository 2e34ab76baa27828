"""A long session of sealing in the real window, offscreen, on virtual time: memory, frame time, and what a kill leaves.

A pressure is held at 10 readings a second while marks are set, half of them begin and half end a seal. A process of its
own does it and is killed at the end; what it kept is then read out of the job file. Every few seconds of the session
the frames of one second are drawn as the timer of the window would draw them, painting included. `frame` is the time
that passes, `work` what the thread of the window itself takes of it: on a busy machine they differ.
"""

from __future__ import annotations

import argparse
import gc
import json
import os
import signal
import subprocess
import sys
import tempfile
import time
from datetime import UTC, datetime
from pathlib import Path

GOAL_FRAME_MS, GOAL_GROWTH_MB = 33.0, 40.0
SEAL_S, SEALED_SHARE = 20.0, 0.012
FRAMES_HZ = 30
CALM_S = 90.0
PAGE_BYTES = os.sysconf("SC_PAGE_SIZE") if hasattr(os, "sysconf") else 4096
READY = "ready"


def child(job: Path, seconds: float, marks: int, every_s: float) -> None:
    """Run the session, print what was measured as one line of JSON, then wait to be killed."""
    os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
    from PySide6.QtCore import QCoreApplication

    from acquisition.openrig import OpenRig, RigSource, open_rig
    from acquisition.rigfile import read_rig
    from acquisition.snapshot import EngineState
    from analysis.records import Air, Building
    from drivers.clock import Clock, VirtualClock
    from drivers.clock import seconds as as_ns
    from drivers.instrument import LinkState
    from drivers.openers import Openers
    from gui.app import application, build
    from gui.errands import ThreadErrands
    from gui.settings import SettingsFile
    from gui.viewmodels.moment import Place
    from simulators.faults import sealed
    from simulators.houses import load_house
    from simulators.rig import SimulatedRig

    clock = VirtualClock(datetime(2026, 5, 4, 9, 0, tzinfo=UTC))
    houses: list[SimulatedRig] = []

    def open_house(_: float) -> tuple[OpenRig, Clock]:
        rig = SimulatedRig(load_house("mill-row"), 1, clock)
        houses.append(rig)
        return open_rig(read_rig(rig.rig_toml(rig.own_ports)), clock, rig.open), clock

    known = SimulatedRig(load_house("mill-row"), 1, clock)
    building = Building(**known.building())  # type: ignore[arg-type]  # only the name is a text
    source = RigSource("sim:mill-row", building.name, "Invented data.", open_house, building, Air(**known.air()))
    program = build(
        application(), [source], job.parent, clock, errands=ThreadErrands(), opener=Openers(clock).open,
        settings=SettingsFile(None),
    )  # fmt: skip
    desk, window = program.desk, program.window
    desk.new_job(job, building.name)
    window.resize(1280, 800)
    window.show()
    frames: list[float] = []
    work: list[float] = []

    def frame() -> None:
        begun_work = time.thread_time()
        begun = time.perf_counter()
        program.bridge.tick()
        QCoreApplication.processEvents()
        work.append(1000.0 * (time.thread_time() - begun_work))
        frames.append(1000.0 * (time.perf_counter() - begun))

    def pass_time(time_s: float) -> None:
        clock.wait_until(clock.now_ns() + as_ns(time_s))
        frame()

    program.intents.rig.connect_last()
    pass_time(3.0)
    while (shown := desk.snapshot()) is None or any(link.state is not LinkState.LINKED for link in shown.links):
        pass_time(0.5)
    program.screen.go_to(Place.HUNT)
    program.intents.hunt.begin()
    assert desk.busy
    while (shown := desk.snapshot()) is None or shown.held is None:
        pass_time(0.5)
        if shown is not None and shown.state is EngineState.ASKING and shown.ask is not None:
            desk.answer(shown.ask.id, shown.ask.choices[0])
    gc.disable()
    frames.clear()
    work.clear()
    seals = max(marks // 2, 1)
    apart_s = (seconds - CALM_S) / seals
    begin_at = [CALM_S + at * apart_s for at in range(seals)]
    end_at = [at + min(SEAL_S, apart_s / 2) for at in begin_at]
    memory: list[tuple[float, float]] = [(0.0, resident_mb())]
    held_s, gone = 0.0, 0.0
    while held_s < seconds:
        clock.wait_until(clock.now_ns() + as_ns(every_s - 1.0))
        program.bridge.tick()
        for _ in range(FRAMES_HZ):
            pass_time(1.0 / FRAMES_HZ)
        shown = desk.snapshot()
        held_s = shown.held.seconds if shown is not None and shown.held is not None else held_s
        while begin_at and held_s >= begin_at[0]:
            begin_at.pop(0)
            program.intents.hunt.seal_starts()
            gone += SEALED_SHARE
            houses[-1].happen(sealed(gone), over_s=8.0)
        while end_at and held_s >= end_at[0]:
            end_at.pop(0)
            program.intents.hunt.seal_done()
        gc.collect()
        if held_s >= memory[-1][0] + seconds / 4:
            memory.append((held_s, resident_mb()))
    gc.collect()
    memory.append((held_s, resident_mb()))
    assert desk.job is not None
    desk.job.flush()
    frames.sort()
    work.sort()
    told = {
        "held_s": round(held_s, 1),
        "frames": len(frames),
        "frame_p50_ms": round(frames[len(frames) // 2], 2),
        "frame_p99_ms": round(frames[int(0.99 * len(frames))], 2),
        "work_p99_ms": round(work[int(0.99 * len(work))], 2),
        "frame_max_ms": round(frames[-1], 2),
        "memory_mb": [round(value, 1) for _, value in memory],
        "marks": len(desk.job.leaks.marks),
        "leaks": len(desk.job.leaks.leaks),
        "drops": len(desk.job.leaks.drops),
    }
    print(json.dumps(told), flush=True)
    print(READY, flush=True)
    signal.pause()


def resident_mb() -> float:
    """Return the memory of this process that is in use, in MB; nothing where the system does not tell."""
    try:
        pages = int(Path("/proc/self/statm").read_text().split()[1])
    except OSError:
        return float("nan")
    return pages * PAGE_BYTES / 1e6


def session(seconds: float, marks: int, every_s: float, folder: Path) -> dict[str, object]:
    """Run a session in a process of its own, kill it, and return what was measured and what the file still holds."""
    job = folder / "session.airseam"
    command = [sys.executable, "-m", "tests.bench.session", "--child", str(job)]
    command += ["--seconds", str(seconds), "--marks", str(marks), "--every", str(every_s)]
    root = Path(__file__).parents[2]
    env = {**os.environ, "QT_QPA_PLATFORM": "offscreen"}
    with subprocess.Popen(command, cwd=root, env=env, stdout=subprocess.PIPE, text=True) as running:
        assert running.stdout is not None
        told: dict[str, object] = {}
        for line in running.stdout:
            if line.strip() == READY:
                break
            told = json.loads(line)
        running.send_signal(signal.SIGKILL)
    return told | kept(job)


def kept(path: Path) -> dict[str, object]:
    """Return what a job holds after a kill: state of the test, readings, marks, drops."""
    from acquisition.job import Job
    from acquisition.rig import Role
    from drivers.clock import NS_PER_S, WallClock

    job = Job.open(path, WallClock())
    try:
        loaded = job.load(job.tests()[-1].id)
        run = loaded.runs[-1]
        times, _ = run.data.slice(Role.ENVELOPE, -(2**63), 2**62)
        zero_ns = run.windows[-1].end_ns
        held_s = (int(times[-1]) - zero_ns) / NS_PER_S
        return {
            "kept_state": str(loaded.record.state),
            "kept_after_zero_s": round(held_s, 1),
            "kept_hz": round(float((times > zero_ns).sum()) / held_s, 2),
            "kept_marks": len(job.leaks.marks),
            "kept_leaks": len(job.leaks.leaks),
            "kept_drops": len(job.leaks.drops),
        }
    finally:
        job.close()


def main() -> int:
    """Print the table; return 1 where a goal is missed or something got lost."""
    parser = argparse.ArgumentParser(prog="run.py bench session", description=__doc__)
    parser.add_argument("--seconds", type=float, default=7200.0, help="how long the pressure is held (%(default)s)")
    parser.add_argument("--marks", type=int, default=30, help="marks that are set (%(default)s)")
    parser.add_argument("--every", type=float, default=10.0, help="seconds of which one is drawn (%(default)s)")
    parser.add_argument(
        "--seed", type=int, default=1, help="taken for the sake of all benchmarks; nothing is by chance"
    )
    parser.add_argument("--json", action="store_true", help="one JSON object as the last line")
    parser.add_argument("--child", type=Path, help=argparse.SUPPRESS)
    options = parser.parse_args()
    if options.child is not None:
        child(options.child, options.seconds, options.marks, options.every)
        return 0
    with tempfile.TemporaryDirectory() as folder:
        found = session(options.seconds, options.marks, options.every, Path(folder))
    for name, value in found.items():
        print(f"{name:>20}  {value}")
    memory = found["memory_mb"]
    assert isinstance(memory, list)
    grown = memory[-1] - memory[1]
    same = all(found[name] == found[f"kept_{name}"] for name in ("marks", "leaks", "drops"))
    frame = found["frame_p99_ms"]
    assert isinstance(frame, float)
    good = same and grown <= GOAL_GROWTH_MB and frame <= GOAL_FRAME_MS
    print(f"grown since the first quarter {grown:.1f} MB (at most {GOAL_GROWTH_MB:g}), frame p99 {frame:.1f} ms "
          f"(at most {GOAL_FRAME_MS:g}), everything there after the kill: {'yes' if same else 'no'}")  # fmt: skip
    if options.json:
        print(json.dumps({"bench": "session", "seed": options.seed, "grown_mb": round(grown, 1), **found}))
    return 0 if good else 1


if __name__ == "__main__":
    sys.exit(main())
