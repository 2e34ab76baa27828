"""The front door of Airseam: builds the parts and joins them; what they do, they do themselves.

Everything heavy is imported by the command that needs it: `airseam analyse` never loads the window's libraries.
The commands and their options are in `acquisition.options`.
"""

from __future__ import annotations

import argparse
import io
import os
import sys
from collections.abc import Callable, Iterator, Mapping, Sequence
from contextlib import contextmanager
from dataclasses import dataclass
from importlib import import_module
from pathlib import Path
from typing import TYPE_CHECKING

from acquisition import options as words
from acquisition.commands.status import NOT_VALID, RIG_FAULT, UNUSABLE, VALID
from analysis.errors import InvalidInput
from simulators.houses import house_names

if TYPE_CHECKING:
    from PySide6.QtWidgets import QWidget

    from acquisition.job import Job, Recorder
    from acquisition.openrig import OpenRig, RigSource
    from acquisition.plan import TestPlan
    from acquisition.rig import RigSpec
    from acquisition.standing import Standing
    from analysis.records import Air, Building
    from drivers.clock import Clock
    from drivers.transport import TransportOpener
    from gui.beside import Beside
    from gui.look import Look
    from simulators.exercise import Exercise
    from simulators.rig import SimulatedRig

BUILT_IN = "sim:"
SEED = 1


def main(arguments: Sequence[str] | None = None) -> int:
    """Run one command; return its exit status."""
    for stream in (sys.stdout, sys.stderr):
        if isinstance(stream, io.TextIOWrapper):
            stream.reconfigure(encoding="utf-8", errors="replace")
    given = list(sys.argv[1:] if arguments is None else arguments)
    if not given or (given[0] not in COMMANDS and not given[0].startswith("-")):
        given = ["window", *given]
    options = words.parser(house_names()).parse_args(given)
    try:
        return COMMANDS[options.command](options)
    except InvalidInput as error:
        print(f"airseam: {error}".replace("\n", " "), file=sys.stderr)
        return UNUSABLE
    except BrokenPipeError:
        # Whoever read the output has had enough of it; nothing more can be said there.
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        return VALID
    except KeyboardInterrupt:
        return NOT_VALID


# --- the commands -----------------------------------------------------------------------------------------------------


def window(options: argparse.Namespace) -> int:
    """Open the window on the simulated rig, with a job if one is named."""
    job: Path | None = options.job
    if job is not None and not job.exists():
        raise InvalidInput("job", str(job), f"a job file, or a command, is needed; commands: {', '.join(COMMANDS)}")
    from gui.app import run

    return run(job, sources(options.seed), trainer_window)


def trainer_window(look: Look, folder: Path, beside: Beside) -> QWidget:
    """Open the trainer's window, which alone knows the simulator, beside the normal one."""
    from gui.classroom.opening import open_beside

    return open_beside(look, folder, beside)


def pictures(options: argparse.Namespace) -> int:
    """Save a picture of each place of the window, and of each page of the trainer's, in both themes."""
    from gui.classroom.pictures import save_class_pictures
    from gui.pictures import save_pictures

    places = save_pictures(options.job, options.to, sources(options.seed), options.language)
    for path in (*places, *save_class_pictures(options.to, language=options.language)):
        print(path)
    return VALID


def associate(options: argparse.Namespace) -> int:
    """Have the system open job files with this program, or take it back."""
    from gui import association

    machine = association.this_machine()
    try:
        print(association.dissociate(machine) if options.remove else association.associate(machine))
    except OSError as error:
        raise InvalidInput("folder", str(machine.data), f"it cannot be written ({error.strerror})") from error
    return VALID


def test(options: argparse.Namespace) -> int:
    """Run an automatic test without a window."""
    from acquisition.commands.equipment import opened_rig
    from acquisition.commands.phone import phone_page
    from acquisition.commands.printing import display_of
    from acquisition.commands.sealing import marked
    from acquisition.commands.wishes import check_resume
    from acquisition.engine import Engine
    from acquisition.heldinturn import HeldInTurn
    from acquisition.leading import lead
    from acquisition.terminal import attend
    from drivers.battery import read_battery

    check_resume(options)
    site = site_of(options)
    auto = site.spec.simulated or options.yes
    rig = opened_rig(site.spec, site.clock, site.opener, options.register)
    rig.fitter = site.fit
    engine = Engine(rig, site.clock, auto_answer=auto, battery=read_battery)
    led = None if site.hear is None else lead(engine, site.clock, site.hear)
    try:
        with opened_job(options.job, site) as job:
            plan, record, standing = what_to_run(job, options, site, rig.spec)
            turns = HeldInTurn(engine, options.hold, 60.0 * options.minutes)
            with (
                phone_page(options, site.clock, turns.look) as page,
                marked(options, job, engine, site.clock, page) as look,
            ):
                outcome = attend(
                    engine,
                    site.clock,
                    plan,
                    record,
                    auto=auto,
                    watch=look,
                    display=display_of(options.units),
                    standing=standing,
                    ranges=rig.spec.ranges,
                    keys=not options.marks and not rig.spec.by_hand,
                )
            engine.close()
            shown = outcome.snapshot
            if options.report is not None and shown.result is not None:
                from acquisition.commands.files import write_report

                write_report(job, job.tests()[-1].id, options.report, options.units)
    finally:
        if led is not None:
            led.stop()
        engine.close()
    if options.hold:
        for flag in shown.flags:
            if flag.id == "held":
                print(flag.sentence, file=sys.stderr if options.json else sys.stdout)
    for line in (outcome.sentence, "" if options.hold else shown.result_gap):
        if line:
            print(f"airseam: {line}", file=sys.stderr)
    status = NOT_VALID
    if shown.test is not None and shown.result is not None and not options.hold:
        from acquisition.commands.files import show_result

        status = show_result(options, shown.test, shown.result)
    if outcome.conclusion == "faulted":
        return RIG_FAULT
    if options.hold:
        status = VALID
    return status if outcome.conclusion == "complete" else NOT_VALID


def what_to_run(
    job: Job, options: argparse.Namespace, site: Site, spec: RigSpec
) -> tuple[TestPlan, Callable[[], Recorder], Standing | None]:
    """Return the plan of the test that is asked for, what begins its record, and how far one that goes on has come."""
    from acquisition.commands.wishes import wishes_of
    from acquisition.holding import held_plan
    from acquisition.preparation import prepare
    from acquisition.setup import gate_of, obeying
    from acquisition.takeup import cut_short, take_up

    now = site.clock.utc()
    if options.resume:
        again = take_up(job, spec, now)
        return again.plan, lambda: job.resume(again.number), again.standing
    plan = prepare(job, wishes_of(options), spec, site.building, site.air)
    if options.hold:
        plan = held_plan(plan, options.hold[0])
    plan = obeying(plan, gate_of(job.house.entries, now))
    earlier = cut_short(job)
    if earlier is not None:
        text = f"test {earlier.id} was cut short (state: {earlier.state}); --resume would have gone on with it"
        print(f"airseam: {text}", file=sys.stderr)
    return plan, lambda: job.record(plan, spec), None


def simulate(options: argparse.Namespace) -> int:
    """Serve a simulated house on ports of this machine until interrupted."""
    from acquisition.rigfile import write_rig
    from acquisition.terminal import Interrupts
    from drivers.clock import ScaledClock, WallClock, seconds
    from simulators.server import serve_pty, serve_tcp

    if options.students is not None:
        return serve_class(options)
    clock: Clock = WallClock() if options.time_factor == 1.0 else ScaledClock(options.time_factor)
    rig = served_rig(options, clock)
    with Interrupts() as interrupts:
        try:
            server = serve_pty(rig) if options.pty else serve_tcp(rig, *options.listen)
        except (OSError, ImportError) as error:
            where, value = ("--pty", "not to be had") if options.pty else ("--listen", "{}:{}".format(*options.listen))
            raise InvalidInput(where, value, f"these ports cannot be opened here ({error})", shown=value) from error
        try:
            for name, address in server.items():
                print(f"{name} {address}", flush=True)
            if options.rig_file is not None:
                from acquisition.commands.printing import write

                write(options.rig_file, write_rig(spec_of(rig, server)).encode(), "the rig file")
                print(f"rig file {options.rig_file}", flush=True)
            if options.job_file is not None:
                prepare_job(options.job_file, *known(rig))
                print(f"job file {options.job_file}", flush=True)
            print(f"ready: {rig.house.name}, {options.time_factor:g} times real time; Ctrl+C ends it", flush=True)
            waiting = WallClock()
            while waiting.wait_until(waiting.now_ns() + seconds(0.5), interrupts.cancel):
                pass
        finally:
            server.close()
    return VALID


def serve_class(options: argparse.Namespace) -> int:
    """Serve an exercise to a class until interrupted."""
    from acquisition.terminal import Interrupts
    from simulators.classroom.serving import serve

    if options.pty or options.exercise is None:
        raise InvalidInput("--class", options.students, "a class needs --exercise NAME and --listen HOST:PORT")
    with Interrupts() as interrupts:
        try:
            serve(exercise_of(options.exercise), options, interrupts.cancel)
        except (ValueError, OSError) as error:
            raise InvalidInput("--class", options.students, str(error), shown=str(options.students)) from error
    return VALID


def exercises(options: argparse.Namespace) -> int:
    """List the exercises that come with the program."""
    from simulators.exercises import exercise_names

    for name in exercise_names():
        exercise = exercise_of(name)
        print(f"{name:<18}  {exercise.scenario.title}, {exercise.minutes:g} minutes, {exercise.points:g} points")
    return VALID


def mark(options: argparse.Namespace) -> int:
    """Hold jobs of students against the truth of an exercise."""
    from acquisition.commands.marking import mark_files, truth_in
    from acquisition.marking import read_truth

    truth = read_truth(exercise_of(options.exercise).truth()) if options.exercise else truth_in(options.truth)
    return mark_files(options, truth)


# --- joining the parts ------------------------------------------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class Site:
    """Where a test is made: a rig, its clock, how its ports are opened, and what is known of building and air."""

    spec: RigSpec
    clock: Clock
    opener: TransportOpener
    building: Building | None = None
    air: Air | None = None
    fit: Callable[[int, str], None] | None = None
    """Where there is somebody simulated who fits flow ranges: takes the fan, counted from 0, and the range."""
    hear: Callable[[str, int], None] | None = None
    """Where there is a simulated person at the knob of the fan: takes an order and its time."""


def site_of(options: argparse.Namespace) -> Site:
    """Return the site that `--rig` names."""
    from acquisition.rigfile import load_rig
    from drivers.clock import ScaledClock, VirtualClock, WallClock

    if options.rig.startswith(BUILT_IN):
        clock: Clock = WallClock() if options.real_time else VirtualClock(WallClock().utc().replace(microsecond=0))
        seed = SEED if options.seed is None else options.seed
        house = options.rig.removeprefix(BUILT_IN)
        rig = scenario_rig(house, seed, clock, options) or simulated_rig(
            house,
            seed,
            clock,
            wind_m_s=options.wind_m_s,
            taps=options.taps or 1,
            fans=options.fans or 1,
            by_hand=options.by_hand,
        )
        hear = None if rig.hand is None else rig.hand.hear
        return Site(spec_of(rig, rig.own_ports), clock, rig.open, *known(rig), rig.fit, hear)
    only_built_in = (options.seed, options.taps, options.fans)
    if options.real_time or options.by_hand or any(item is not None for item in only_built_in):
        built_in = " or ".join(BUILT_IN + name for name in house_names())
        allowed = f"--seed, --taps, --fans, --by-hand and --real-time are for a built-in house, {built_in}"
        raise InvalidInput("--rig", options.rig, allowed)
    from drivers.openers import Openers

    spec = load_rig(Path(options.rig))
    clock = WallClock() if spec.time_factor == 1.0 else ScaledClock(spec.time_factor)
    return Site(spec, clock, Openers(clock).open)


def simulated_rig(
    house: str,
    seed: int,
    clock: Clock,
    protocol: str = "scpi",
    wind_m_s: float | None = None,
    taps: int = 1,
    fans: int = 1,
    *,
    by_hand: bool = False,
) -> SimulatedRig:
    """Return a simulated rig; raises `InvalidInput` for a house that there is not, or taps that its gauge has not."""
    from simulators.houses import house_names, load_house
    from simulators.rig import SimulatedRig
    from simulators.scenarios import scenario_names

    if house not in house_names():
        allowed = f"the name of a simulated house is needed, one of {', '.join(house_names())}"
        raise InvalidInput("house", house, f"{allowed}, or of a scenario, one of {', '.join(scenario_names())}")
    if taps > 1 and protocol != "scpi":
        allowed = f"the gauge that speaks {protocol} has one envelope pressure: several need scpi"
        raise InvalidInput("--taps", taps, allowed)
    place = "ground" if taps == 1 else "facade"
    return SimulatedRig(
        load_house(house),
        seed,
        clock,
        protocol=protocol,
        wind_m_s=wind_m_s,
        taps=taps,
        tap=place,
        fans=fans,
        by_hand=by_hand,
    )


def scenario_rig(name: str, seed: int, clock: Clock, options: argparse.Namespace) -> SimulatedRig | None:
    """Return the rig of a scenario, with all that happens in it; None where the name is that of no scenario."""
    from simulators.scenarios import load_scenario, scenario_names

    if name not in scenario_names():
        return None
    words.leave_out(options, ("wind_m_s", "taps", "fans", "by_hand"), "a scenario")
    return load_scenario(name).rig(seed, clock)


def served_rig(options: argparse.Namespace, clock: Clock) -> SimulatedRig:
    """Return the rig that `simulate` serves: that of a house, or that of an exercise as it is."""
    if options.exercise is None:
        house, protocol = options.house or house_names()[0], options.protocol or "scpi"
        return simulated_rig(house, options.seed, clock, protocol, options.wind, options.taps or 1, options.fans or 1)
    words.leave_out(options, ("protocol", "wind", "taps", "fans"), "an exercise")
    return exercise_of(options.exercise).rig(options.seed, clock)


def exercise_of(name: str) -> Exercise:
    """Return an exercise by its name or file; raises `InvalidInput`."""
    from simulators.exercises import load_exercise

    try:
        return load_exercise(name)
    except ValueError as error:
        raise InvalidInput("exercise", name, str(error), shown=name) from error


def spec_of(rig: SimulatedRig, addresses: Mapping[str, str]) -> RigSpec:
    """Return a simulated rig as its rig file describes it."""
    from acquisition.rigfile import read_rig

    return read_rig(rig.rig_toml(addresses))


def known(rig: SimulatedRig) -> tuple[Building, Air]:
    """Return what somebody would have written down about a simulated house and its air."""
    from analysis.records import Air, Building

    return Building(**rig.building()), Air(**rig.air())  # type: ignore[arg-type]  # only the name is a text


def sources(seed: int) -> tuple[RigSource, ...]:
    """Return the simulated houses as rigs that the window can connect."""
    from acquisition.openrig import RigSource, open_rig
    from drivers.clock import ScaledClock, WallClock
    from simulators.houses import house_names

    def source(house: str, taps: int = 1, fans: int = 1) -> RigSource:
        def open_house(factor: float) -> tuple[OpenRig, Clock]:
            clock: Clock = WallClock() if factor == 1.0 else ScaledClock(factor)
            rig = simulated_rig(house, seed, clock, taps=taps, fans=fans)
            opened = open_rig(spec_of(rig, rig.own_ports), clock, rig.open)
            opened.fitter = rig.fit
            return opened, clock

        rig = simulated_rig(house, seed, WallClock(), taps=taps, fans=fans)
        place, title = house, rig.house.name
        if taps > 1:
            place, title = f"{house}+{taps}", f"{title}, {taps} outdoor taps"
        if fans > 1:
            place, title = f"{place}+fans", f"{title}, {fans} fans"
        return RigSource(BUILT_IN + place, title, rig.house.note, open_house, *known(rig))

    first, *_ = house_names()
    return (*(source(house) for house in house_names()), source(first, 4), source("gable-barn", fans=2))


@contextmanager
def opened_job(path: Path, site: Site) -> Iterator[Job]:
    """Open a job to record in, or make it; one that was made for nothing is taken away again."""
    from acquisition.job import Job

    fresh = not path.exists()
    name = site.building.name if site.building is not None else path.stem
    job = Job.create(path, site.clock, name) if fresh else Job.open(path, site.clock)
    try:
        yield job
    finally:
        unsaved = job.close()
        if unsaved:
            print(f"airseam: {unsaved}", file=sys.stderr)
        if fresh and not job.tests():
            path.unlink()


def prepare_job(path: Path, building: Building, air: Air) -> None:
    """Make a job with everything filled in that somebody would have written down."""
    from acquisition.job import Job
    from acquisition.plan import TestPlan
    from drivers.clock import WallClock

    job = Job.create(path, WallClock(), building.name)
    job.add_building(building, "simulated house")
    job.set_draft(TestPlan(building, air))
    job.close()


def elsewhere(module: str, name: str, package: str = "acquisition.commands") -> Callable[[argparse.Namespace], int]:
    """Return a command of a package that is loaded when it is asked for."""

    def command(options: argparse.Namespace) -> int:
        run: Callable[[argparse.Namespace], int] = getattr(import_module(f"{package}.{module}"), name)
        return run(options)

    return command


HERE: dict[str, Callable[[argparse.Namespace], int]] = {
    "window": window,
    "pictures": pictures,
    "associate": associate,
    "test": test,
    "simulate": simulate,
    "exercises": exercises,
    "mark": mark,
}
FILES, NUMBERS = ("analyse", "report", "export", "verify"), ("explain", "compare", "limits", "zone", "components")
OFFICE = ("issue", "jobs", "typed")
COMMANDS = {
    **HERE,
    **{name: elsewhere("files", name) for name in FILES},
    **{name: elsewhere("numbers", name) for name in NUMBERS},
    "leaks": elsewhere("sealing", "leaks"),
    "replay": elsewhere("replay", "replay"),
    "class": elsewhere("opening", "run_class", "gui.classroom"),
    "stages": elsewhere("stages", "stages"),
    "handout": elsewhere("handout", "handout"),
    **{name: elsewhere("office", name) for name in OFFICE},
    "ports": elsewhere("ports", "ports"),
    "points": elsewhere("points", "points"),
}

if __name__ == "__main__":
    sys.exit(main())
