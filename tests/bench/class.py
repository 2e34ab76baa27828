"""A class on one machine: houses served over TCP at 10 Hz, how late the replies come, and what it costs.

The class runs in a process of its own, as on the trainer's machine; this one plays all students: each asks its gauge
ten times a second and speaks to its fan twice a second. A reply is late by the time from asking to its last byte; the
instruments themselves take 5 ms for one. A hostile client can be there too: it floods one further house as fast as its
bytes are taken, and knocks again at once whenever it is sent away.
"""

# ruff: noqa: N999 - it is called by this name

from __future__ import annotations

import argparse
import json
import multiprocessing
import resource
import selectors
import socket
import sys
import time
from dataclasses import asdict, dataclass, field
from multiprocessing.connection import Connection

import numpy as np

from acquisition.joining import join_class
from drivers.clock import NS_PER_S, WallClock, seconds
from drivers.openers import Openers
from simulators.classroom import ClassServer
from simulators.exercises import load_exercise

RATE_HZ = 10.0
FAN_EVERY = 5
GOAL_MS = 50.0
CLOCK = WallClock()


@dataclass(slots=True)
class Pupil:
    """One student: the gauge, the fan, and when it was last asked."""

    gauge: socket.socket
    fan: socket.socket
    due_ns: int
    asked_ns: int | None = None
    rounds: int = 0
    received: bytes = b""
    late_ms: list[float] = field(default_factory=list)
    unanswered: int = 0


class Hostile:
    """Floods a gauge, and comes back at once when it is sent away."""

    def __init__(self, gauge: socket.socket) -> None:
        """Have the connection that its name was given."""
        self._address: tuple[str, int] = gauge.getpeername()
        self._gauge = gauge
        self.sent_away = 0

    def flood(self) -> None:
        """Send what is taken."""
        try:
            self._gauge.send(b"READ?\n" * 200)
        except BlockingIOError:
            return
        except OSError:
            self.sent_away += 1
            self._gauge.close()
            self._gauge = socket.create_connection(self._address, timeout=2.0)
            self._gauge.setblocking(False)

    def close(self) -> None:
        """Give up."""
        self._gauge.close()


@dataclass(frozen=True, slots=True)
class Measured:
    """What was measured. Processor in per cent of one core, memory in MiB."""

    houses: int
    seconds: float
    replies: int
    unanswered: int
    p50_ms: float
    p99_ms: float
    worst_ms: float
    server_cpu_pct: float
    server_memory_mib: float
    students_cpu_pct: float
    sent_away: int = 0
    """How often the hostile client was."""


def serve(houses: int, exercise: str, seed: int, pipe: Connection) -> None:
    """Serve the class in a process of its own until told to end; then say what it took."""
    server = ClassServer(load_exercise(exercise), WallClock(), students=houses, seed=seed)
    pipe.send(server.address)
    pipe.recv()
    start_s, start_cpu_s = time.perf_counter(), time.process_time()
    pipe.recv()
    took_s, cpu_s = time.perf_counter() - start_s, time.process_time() - start_cpu_s
    memory_mib = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024.0
    error = server.error
    server.close()
    pipe.send((100.0 * cpu_s / took_s, memory_mib, "" if error is None else repr(error)))


def run(houses: int, duration_s: float, exercise: str, seed: int, *, hostile: bool) -> Measured:
    """Play the class for a while."""
    ours, theirs = multiprocessing.Pipe()
    process = multiprocessing.get_context("spawn").Process(
        target=serve, args=(houses + hostile, exercise, seed, theirs)
    )
    process.start()
    try:
        host, port = ours.recv()
        pupils = [_pupil(f"{host}:{port}", f"Student {number}") for number in range(houses)]
        first_ns = CLOCK.now_ns() + seconds(0.2)
        for number, pupil in enumerate(pupils):
            pupil.due_ns = first_ns + seconds(number / houses / RATE_HZ)
        bad = Hostile(_pupil(f"{host}:{port}", "Hostile").gauge) if hostile else None
        ours.send("begin")
        start_cpu_s, start_ns = time.process_time(), CLOCK.now_ns()
        _play(pupils, bad, start_ns + seconds(duration_s))
        took_s = (CLOCK.now_ns() - start_ns) / NS_PER_S
        own_cpu = 100.0 * (time.process_time() - start_cpu_s) / took_s
        ours.send("end")
        cpu, memory, error = ours.recv()
    finally:
        process.join(10.0)
    if error:
        raise RuntimeError(error)
    late = np.concatenate([pupil.late_ms for pupil in pupils])
    unanswered = sum(pupil.unanswered for pupil in pupils)
    away = 0 if bad is None else bad.sent_away
    p50, p99 = (float(np.percentile(late, share)) for share in (50, 99))
    return Measured(houses, took_s, len(late), unanswered, p50, p99, float(late.max()), cpu, memory, own_cpu, away)


def _pupil(place: str, name: str) -> Pupil:
    spec = join_class(place, name, Openers(CLOCK).open, CLOCK)
    sockets = {}
    for instrument in spec.instruments:
        host, _, port = instrument.port.removeprefix("socket://").partition(":")
        sockets[instrument.name] = socket.create_connection((host, int(port)))
        sockets[instrument.name].setblocking(False)
        sockets[instrument.name].setsockopt(socket.IPPROTO_TCP, socket.TCP_NODELAY, 1)
    return Pupil(sockets["gauge"], sockets["fan"], CLOCK.now_ns())


def _play(pupils: list[Pupil], bad: Hostile | None, end_ns: int) -> None:
    with selectors.DefaultSelector() as selector:
        for pupil in pupils:
            selector.register(pupil.gauge, selectors.EVENT_READ, pupil)
        while (now_ns := CLOCK.now_ns()) < end_ns:
            for pupil in pupils:
                if pupil.due_ns <= now_ns:
                    _ask(pupil, now_ns)
            if bad is not None:
                bad.flood()
            wait_s = max(min(pupil.due_ns for pupil in pupils) - CLOCK.now_ns(), 0) / NS_PER_S
            for key, _ in selector.select(min(wait_s, 0.05)):
                _hear(key.data)
            if sys.stderr.isatty():
                print(f"\r{(end_ns - now_ns) / NS_PER_S:.0f} s left ", end="", file=sys.stderr)
    if bad is not None:
        bad.close()
    for pupil in pupils:
        pupil.gauge.close()
        pupil.fan.close()


def _ask(pupil: Pupil, now_ns: int) -> None:
    pupil.unanswered += pupil.asked_ns is not None
    pupil.received, pupil.asked_ns = b"", now_ns
    pupil.gauge.send(b"READ?\n")
    if pupil.rounds % FAN_EVERY == 0:
        pupil.fan.send(b"FAN:SPEED 0.4\n")
    pupil.rounds += 1
    pupil.due_ns += seconds(1.0 / RATE_HZ)


def _hear(pupil: Pupil) -> None:
    pupil.received += pupil.gauge.recv(4096)
    if pupil.received.endswith(b"\n") and pupil.asked_ns is not None:
        pupil.late_ms.append((CLOCK.now_ns() - pupil.asked_ns) / 1e6)
        pupil.asked_ns = None


def main() -> int:
    """Print what was measured."""
    parser = argparse.ArgumentParser(prog="run.py bench class", description=__doc__)
    parser.add_argument("--minutes", type=float, default=5.0, help="how long (%(default)s)")
    parser.add_argument("--houses", type=int, default=25, help="how many students (%(default)s)")
    parser.add_argument("--exercise", default="first-test", help="what they do (%(default)s)")
    parser.add_argument("--hostile", action="store_true", help="one more client floods its own house")
    parser.add_argument("--seed", type=int, default=1, help="decides what the houses do (%(default)s)")
    parser.add_argument("--json", action="store_true", help="one JSON object as the last line")
    options = parser.parse_args()
    found = run(options.houses, 60.0 * options.minutes, options.exercise, options.seed, hostile=options.hostile)
    print(f"{found.houses} houses at {RATE_HZ:g} Hz over TCP for {found.seconds:.0f} s")
    print(f"  replies {found.replies}, not there before the next question {found.unanswered}")
    print(f"  late by: p50 {found.p50_ms:.1f} ms, p99 {found.p99_ms:.1f} ms (goal {GOAL_MS:g} ms), ", end="")
    print(f"worst {found.worst_ms:.0f} ms")
    print(f"  the class: {found.server_cpu_pct:.0f} % of a core, {found.server_memory_mib:.0f} MiB; ", end="")
    print(f"all students of this benchmark {found.students_cpu_pct:.0f} % of a core")
    if options.hostile:
        print(f"  a hostile client was sent away {found.sent_away} times")
    reached = found.p99_ms < GOAL_MS
    if options.json:
        print(json.dumps({"bench": "class", "goal_ms": GOAL_MS, "reached": reached, **asdict(found)}))
    return 0 if reached else 1


if __name__ == "__main__":
    sys.exit(main())
