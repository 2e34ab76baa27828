"""A class from the command line: served until somebody ends it, the truth of each house kept as it comes to be."""

from __future__ import annotations

import json
import re
import sys
import threading
from argparse import Namespace
from pathlib import Path

from drivers.clock import Clock, ScaledClock, WallClock, seconds
from simulators.classroom.server import ClassServer
from simulators.exercise import Exercise

LOOK_S = 0.5
KEEP_EVERY = 20
"""Looks between two times at which the truths are written down."""


def serve(exercise: Exercise, options: Namespace, cancel: threading.Event) -> None:
    """Serve a class until `cancel`; raises `ValueError` for what is not possible, `OSError` for a port."""
    clock: Clock = WallClock() if options.time_factor == 1.0 else ScaledClock(options.time_factor)
    host, port = options.listen
    shared = options.students == 0
    server = ClassServer(
        exercise, clock, students=max(options.students, 1), host=host, port=port, seed=options.seed, shared=shared
    )
    waiting, known = WallClock(), {""}
    looks = 0
    try:
        _say("class {}:{}".format(*server.address))
        for path in write_rig_files(server, options.rig_file):
            _say(f"rig file {path}")
        _say(f"ready: {exercise.scenario.title}, {len(server.stations)} houses; Ctrl+C ends it")
        while waiting.wait_until(waiting.now_ns() + seconds(LOOK_S), cancel):
            for seat in server.seats():
                if seat.student not in known and not shared:
                    known.add(seat.student)
                    _say(f"house {seat.station.number} {seat.student}")
            looks += 1
            if looks % KEEP_EVERY == 0:
                keep_truths(server, options.truths)
            if server.error is not None:
                raise OSError(f"the class ended by a mistake of the program ({server.error})")
    finally:
        keep_truths(server, options.truths)
        server.close()


def keep_truths(server: ClassServer, folder: Path | None) -> list[Path]:
    """Write the truth of each house that has a student; raises `OSError`."""
    if folder is None:
        return []
    folder.mkdir(parents=True, exist_ok=True)
    written = []
    for seat in server.seats():
        if seat.student or server.shared:
            name = "shared" if server.shared else re.sub(r"[^\w -]+", "_", seat.student)
            path = folder / f"{seat.station.number:02d} {name}.json"
            part = path.with_suffix(".part")
            part.write_text(json.dumps(seat.station.truth(), indent=1, ensure_ascii=False) + "\n", encoding="utf-8")
            part.replace(path)
            written.append(path)
    return written


def write_rig_files(server: ClassServer, folder: Path | None) -> list[Path]:
    """Write a rig file for each house, for who is not to type host and port; raises `OSError`."""
    if folder is None:
        return []
    folder.mkdir(parents=True, exist_ok=True)
    written = []
    for name, text in server.rig_files().items():
        path = folder / f"{name}.toml"
        path.write_text(text, encoding="utf-8")
        written.append(path)
    return written


def _say(text: str) -> None:
    sys.stdout.write(f"{text}\n")
    sys.stdout.flush()
