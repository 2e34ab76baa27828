"""The words of the command line: commands, options and what they may be. Knows nothing of what they do."""

from __future__ import annotations

import argparse
import math
import sys
from collections.abc import Sequence
from pathlib import Path
from typing import NoReturn

from analysis.errors import InvalidInput

UNUSABLE = 2
LOWEST_HELD_PA, HIGHEST_HELD_PA = 4.0, 75.0
"""Pressures that can be held: the fan is stopped at 80 Pa."""
DESCRIPTION = (
    "Runs fan-pressurization tests of buildings. Without a command it opens the window, on JOB if one is given."
)
STATUS = (
    "Exit status: 0 done and valid; 1 done and not valid by the method's checks, or ended early; "
    "2 unusable input or arguments; 3 rig fault."
)
BUILDING = {
    "volume_m3": ("--volume", "M3", "internal volume"),
    "envelope_area_m2": ("--envelope-area", "M2", "envelope area"),
    "floor_area_m2": ("--floor-area", "M2", "floor area"),
    "height_m": ("--height", "M", "height"),
    "altitude_m": ("--altitude", "M", "altitude of the site"),
}
AIR = {
    "indoor_c": ("--indoor", "C", "indoor temperature"),
    "outdoor_c": ("--outdoor", "C", "outdoor temperature"),
    "barometric_pa": ("--barometer", "PA", "air pressure at the site, not reduced to sea level"),
    "wind_m_s": ("--wind", "M_S", "wind; a built-in house then has this wind too"),
}
"""Option, unit and meaning of each value of a building and of its air, by the names of the records' fields."""


class OneLineParser(argparse.ArgumentParser):
    """Says what is wrong in one line."""

    def error(self, message: str) -> NoReturn:
        """Print the line and end."""
        print(f"{self.prog}: {message}".replace("\n", " "), file=sys.stderr)  # noqa: T201 - to the person at the terminal
        raise SystemExit(UNUSABLE)


def parser(houses: tuple[str, ...]) -> argparse.ArgumentParser:
    """Return the parser of the whole command line."""
    top = OneLineParser(prog="airseam", description=DESCRIPTION, epilog=STATUS, usage="airseam [JOB] | COMMAND ...")
    commands = top.add_subparsers(
        dest="command", prog="airseam", metavar="COMMAND", required=True, parser_class=OneLineParser
    )

    def command(name: str, meaning: str) -> argparse.ArgumentParser:
        return commands.add_parser(name, help=meaning, description=meaning, allow_abbrev=False)

    _test(command("test", "run an automatic test without a window"))
    _analyse(command("analyse", "work out a test that is in a file"))
    _explain(command("explain", "say what the result of a test means for the house"))
    _compare(command("compare", "hold two tests beside each other"))
    _stages(command("stages", "list the tests of a job against their targets, and what lies between two of them"))
    _handout(
        command("handout", "write the leaks of each trade as PDF, with photos and pins, or what was done on a day")
    )
    _leaks(command("leaks", "list the leaks of a job, what sealing brought, what is left; add or change one"))
    _limits(command("limits", "list the limits of codes and programmes"))
    _zone(command("zone", "say what the pressure of a garage, attic or room tells"))
    _components(command("components", "list what single components leak, or add some up"))
    _simulate(command("simulate", "serve a simulated house on ports of this machine until Ctrl+C"), houses)
    _replay(command("replay", "play a recorded test back through the program, or make an exercise of it"))
    command("class", "open the window of the trainer of a class")
    command("exercises", "list the exercises for a class")
    _mark(command("mark", "hold jobs of students against the truth of an exercise"))
    report = _on_a_test(command("report", "write the report of a test as PDF"))
    report.add_argument("-o", "--output", type=Path, required=True, metavar="PDF", help="file to write")
    _units(report)
    _language(report)
    export = _on_a_test(command("export", "write a job for spreadsheets, or a test for other programs"))
    export.add_argument("--csv", type=Path, metavar="DIR", help="folder for samples, points and results of a job")
    export.add_argument("--json", type=Path, metavar="FILE", help="file for the test as JSON")
    export.add_argument("--hpxml", type=Path, metavar="FILE", help="file for its air infiltration in HPXML")
    _typed(command("typed", "keep the points of a hand-written record as a test of a job"))
    _jobs(command("jobs", "list and search the jobs of a folder; export them together"))
    _issue(command("issue", "number, sign and freeze the report of a test; list and show what was issued"))
    _points(_on_a_test(command("points", "list the points of a test; strike one with a reason, or restore it")))
    verify = command("verify", "hold a job against its own digests and results")
    verify.add_argument("file", type=Path, metavar="JOB")
    ports = command("ports", "list the serial ports of this machine")
    ports.add_argument("--identify", action="store_true", help="ask at each port who is there")
    ports.add_argument("--at", action="append", default=[], metavar="PORT", help="this port only, also socket://HOST:N")
    ports.add_argument("--json", action="store_true", help="one JSON document on standard output")
    pictures = command("pictures", "save a picture of each place of the window, in both themes")
    pictures.add_argument("job", type=Path, metavar="JOB")
    pictures.add_argument("--to", type=Path, required=True, metavar="DIR", help="folder for the pictures")
    pictures.add_argument(
        "--language", choices=("en", "de", "fr"), default="en", help="language of the window (default: en)"
    )
    pictures.add_argument("--seed", type=_whole, default=1, metavar="N", help=argparse.SUPPRESS)
    associate = command("associate", "have the system open job files with this program")
    associate.add_argument("--remove", action="store_true", help="take it back")
    window = command("window", "open the window; the same as no command")
    window.add_argument("job", type=Path, nargs="?", metavar="JOB")
    window.add_argument("--seed", type=_whole, default=1, metavar="N", help="decides what the simulated rigs do")
    return top


def _points(points: argparse.ArgumentParser) -> None:
    points.add_argument("--strike", type=_whole, metavar="POINT", help="leave this point out of the result")
    points.add_argument("--reason", metavar="TEXT", help="why it is struck")
    points.add_argument("--restore", type=_whole, metavar="POINT", help="put a struck point back")
    points.add_argument(
        "--range", metavar="NAME", help='work points out anew with the flow range they were read with, or "as-entered"'
    )
    points.add_argument("--of", type=_whole, nargs="+", metavar="POINT", help="those points, with --range")
    points.add_argument("--fan", type=_whole, default=1, metavar="N", help="on this fan, with --range (default: 1)")
    _units(points)


def _typed(typed: argparse.ArgumentParser) -> None:
    typed.add_argument("file", type=Path, metavar="JOB")
    typed.add_argument("points", type=Path, metavar="POINTS", help="text: a pressure in Pa and a flow on each line")
    typed.add_argument("--direction", choices=("depressurize", "pressurize"), default="depressurize")
    typed.add_argument("--on", metavar="DATE", help="day and time on the sheet, such as 2026-05-04T09:12; now else")
    typed.add_argument("--zero-before", type=_number, metavar="PA", help="zero-flow pressure before the points")
    typed.add_argument("--zero-after", type=_number, metavar="PA", help="zero-flow pressure after the points")
    typed.add_argument("--seconds", type=_above_zero, default=1.0, metavar="S", help="how long each was averaged")
    typed.add_argument("--comma", action="store_true", help="numbers have a decimal comma")
    _units(typed)


def _jobs(jobs: argparse.ArgumentParser) -> None:
    jobs.add_argument("folder", type=Path, metavar="FOLDER")
    jobs.add_argument("--search", default="", metavar="WORDS", help="street, client, number, date, stage or file name")
    jobs.add_argument("--csv", type=Path, metavar="FILE", help="write the table, a row for each test")
    jobs.add_argument("--tables", type=Path, metavar="DIR", help="write samples, points and results of each job found")
    jobs.add_argument("--json", action="store_true", help="one JSON document on standard output")


def _issue(issue: argparse.ArgumentParser) -> None:
    issue.add_argument("file", type=Path, metavar="JOB")
    what = issue.add_mutually_exclusive_group()
    what.add_argument("--test", type=_whole, metavar="N", help="number of the test; the newest if not given")
    what.add_argument("--no-test", action="store_true", help="the report that no test was possible")
    what.add_argument("--list", action="store_true", help="list what was issued")
    what.add_argument("--show", type=_whole, metavar="ID", help="write an issued report as it was, to --output")
    issue.add_argument("--signed-by", metavar="NAME", help="who signs; the usual signer of the office if not given")
    issue.add_argument("--number", default="", metavar="TEXT", help="another number than the next one of the office")
    issue.add_argument("--reason", default="", metavar="TEXT", help="why it is issued again")
    issue.add_argument("-o", "--output", type=Path, metavar="PDF", help="write the file too")
    _units(issue)
    _language(issue)


def _test(test: argparse.ArgumentParser) -> None:
    test.add_argument(
        "--rig", required=True, help="a rig file, or sim:NAME for a built-in house or scenario, in virtual time"
    )
    test.add_argument("--job", type=Path, required=True, metavar="FILE", help="job to record in; made if there is none")
    test.add_argument(
        "--method", metavar="ID", help="the method (standard); iso9972 unless the job was prepared otherwise"
    )
    test.add_argument(
        "--direction", choices=("depressurize", "pressurize", "both"), help="depressurize if nothing is said"
    )
    test.add_argument(
        "--schedule",
        choices=("quick", "standard", "precision", "windy"),
        help="how much time it takes (that of the method)",
    )
    test.add_argument(
        "--hold",
        type=_pressure,
        action="append",
        default=[],
        metavar="PA",
        help="hold this pressure instead of testing, negative to depressurize; more than once for one after the other",
    )
    test.add_argument(
        "--minutes", type=_above_zero, default=10.0, metavar="M", help="how long each is held (%(default)g)"
    )
    test.add_argument(
        "--resume", action="store_true", help="go on with the newest test of the job, which was cut short"
    )
    test.add_argument(
        "--kind", choices=("code", "quality", "finding"), help="why it is made; code unless the stage says otherwise"
    )
    test.add_argument("--stage", metavar="TEXT", help="how far the building is; its kind and limits are remembered")
    test.add_argument(
        "--limit",
        action="append",
        default=[],
        metavar="L",
        help="a limit of this stage: id of `airseam limits`, or n50_per_h=1.5",
    )
    test.add_argument("--place", metavar="ID", help="whose codes hold there, such as US or DE")
    test.add_argument("--zone", metavar="Z", help="climate zone of the place")
    test.add_argument(
        "--register", type=Path, metavar="FILE", help="equipment register with the calibrations (that of the user)"
    )
    test.add_argument("--report", type=Path, metavar="PDF", help="write the report too")
    test.add_argument("--language", metavar="TAG", help="language of the reports of this job: en, de or fr")
    test.add_argument("--seed", type=_whole, metavar="N", help="decides what a built-in house does (1)")
    test.add_argument("--taps", type=int, choices=(1, 2, 3, 4), help="outdoor taps of a built-in house (1)")
    test.add_argument("--fans", type=int, choices=range(1, 5), help="fans of a built-in house (1)")
    test.add_argument(
        "--hose-check",
        action=argparse.BooleanOptionalAction,
        help="whether a small step of the fan tells first if every hose answers; so it is unless prepared otherwise",
    )
    test.add_argument("--by-hand", action="store_true", help="a person turns the fan of a built-in house")
    test.add_argument(
        "--marks", action="store_true", help="while a pressure is held: take marks and leaks from standard input"
    )
    test.add_argument(
        "--phone", metavar="ADDRESS", help="show flow and pressure on phones, at this private address of this machine"
    )
    test.add_argument("--real-time", action="store_true", help="run a built-in house as fast as life")
    test.add_argument("--yes", action="store_true", help="answer every question by itself: only where all is prepared")
    test.add_argument("--json", action="store_true", help="one JSON document on standard output")
    _units(test)
    test.add_argument("--name", metavar="TEXT", help="name of the building")
    for field, (option, unit, meaning) in BUILDING.items():
        number = _number if field == "altitude_m" else _above_zero
        test.add_argument(option, dest=field, type=number, metavar=unit, help=meaning)
    for field, (option, unit, meaning) in AIR.items():
        number = _not_negative if field == "wind_m_s" else _number
        test.add_argument(option, dest=field, type=number, metavar=unit, help=meaning)


def _analyse(analyse: argparse.ArgumentParser) -> None:
    _on_a_test(analyse)
    analyse.add_argument("--method", metavar="ID", help="another method than that of the test")
    analyse.add_argument("--fit", metavar="ID", help="another fit than the official one of the method")
    analyse.add_argument(
        "--limit", action="append", default=[], metavar="L", help="a limit: id of `airseam limits`, or n50_per_h=1.5"
    )
    analyse.add_argument("--all", action="store_true", help="every quantity, and the corrections line by line")
    analyse.add_argument(
        "--at", type=_above_zero, action="append", default=[], metavar="PA", help="the flow at this pressure too"
    )
    analyse.add_argument("--json", action="store_true", help="one JSON document on standard output")
    _units(analyse)


def _explain(explain: argparse.ArgumentParser) -> None:
    _on_a_test(explain)
    explain.add_argument("--method", metavar="ID", help="another method than that of the test")
    number = explain.add_argument
    number("--storeys", type=int, choices=(1, 2, 3), help="by the height if not given")
    number(
        "--shelter",
        type=int,
        choices=(1, 2, 3, 4, 5),
        help="1 none, 2 isolated, 3 across a street, 4 larger lots, 5 adjacent buildings",
    )
    number(
        "--temperature-difference",
        dest="temperature_difference_k",
        type=_not_negative,
        metavar="K",
        help="indoor minus outdoor, mean of the season",
    )
    number(
        "--wind", dest="wind_m_s", type=_not_negative, metavar="M_S", help="at a weather station, mean of the season"
    )
    number("--flue", action="store_const", const=True, help="the house has a flue")
    number("--crawl-space", action="store_const", const=True, help="it stands on a crawl space")
    number("--weather-factor", type=_above_zero, metavar="F", help="of ASHRAE 62.2, for the infiltration credit")
    number(
        "--assumed", dest="assumed_per_h", type=_above_zero, metavar="PER_H", help="air change that a design assumed"
    )
    number("--design-difference", dest="design_difference_k", type=_above_zero, metavar="K", help="of the design")
    number("--exhaust", dest="exhaust_m3_h", type=_above_zero, metavar="M3_H", help="exhaust fans together")
    _units(explain)


def _compare(compare: argparse.ArgumentParser) -> None:
    for word in ("before", "after"):
        compare.add_argument(word, type=Path, metavar=word.upper(), help="a job, or a test as JSON")
        compare.add_argument(f"--{word}-test", type=_whole, metavar="N", help="its number in the job; the newest else")
    compare.add_argument("--other-instruments", action="store_true", help="the tests were made with different ones")
    _units(compare)


def _stages(stages: argparse.ArgumentParser) -> None:
    stages.add_argument("file", type=Path, metavar="JOB")
    stages.add_argument("--before", type=_whole, metavar="N", help="the earlier test; the one before the later else")
    stages.add_argument("--after", type=_whole, metavar="N", help="the later test; the newest else")
    stages.add_argument("--note", metavar="TEXT", help="say what changed on site before the later test")
    _units(stages)


def _handout(handout: argparse.ArgumentParser) -> None:
    handout.add_argument("file", type=Path, metavar="JOB")
    handout.add_argument("--to", type=Path, required=True, metavar="DIR", help="the folder for the files")
    handout.add_argument("--done", metavar="DAY", help="what was sealed on this day, such as 2026-05-04, or: today")
    _units(handout)
    _language(handout)


def _leaks(leaks: argparse.ArgumentParser) -> None:
    leaks.add_argument("file", type=Path, metavar="JOB")
    leaks.add_argument("--add", metavar="PART", help="add a leak of this part of the building, such as attic-access")
    leaks.add_argument("--change", type=_whole, metavar="N", help="change the leak of this number")
    for name, words in (
        ("storey", "where it is"),
        ("side", "side of the house"),
        ("room", "room"),
        ("note", "a remark"),
        ("trade", "who should seal it"),
        ("material", "what it was sealed with"),
    ):
        leaks.add_argument(f"--{name}", metavar="TEXT", help=words)
    leaks.add_argument("--minutes", type=_not_negative, metavar="M", help="work that it took")
    leaks.add_argument("--cost", type=_not_negative, metavar="C", help="what it cost")
    leaks.add_argument(
        "--size", dest="size_guess_m3_h", type=_above_zero, metavar="M3_H", help="guess of its flow at 50 Pa"
    )
    leaks.add_argument("--found-by", choices=("hand", "fog", "smoke pen", "infra-red", "sound", "other"), help="how")
    leaks.add_argument("--status", choices=("found", "sealed", "verified", "left"), help="how far it has come")
    leaks.add_argument("--target", type=_above_zero, metavar="M3_H", help="flow at 50 Pa to reach: say what is left")
    _units(leaks)


def _limits(limits: argparse.ArgumentParser) -> None:
    limits.add_argument("--place", metavar="ID", help="such as US or DE; all places if not given")
    limits.add_argument("--zone", metavar="Z", help="climate zone of the place")
    _units(limits)


def _zone(zone: argparse.ArgumentParser) -> None:
    zone.add_argument("--house", type=_above_zero, required=True, metavar="PA", help="house against outdoors")
    zone.add_argument("--zone", type=_not_negative, required=True, metavar="PA", help="zone against outdoors")
    zone.add_argument(
        "--pressure-uncertainty",
        type=_not_negative,
        default=0.3,
        metavar="PA",
        help="standard uncertainty of both (%(default)s)",
    )
    zone.add_argument("--hole", choices=("outdoors", "house"), help="where a hole was added to the zone")
    zone.add_argument("--garage", action="store_true", help="the zone is a garage, its overhead door the hole")
    zone.add_argument("--zone-after", type=_not_negative, metavar="PA", help="zone with the hole")
    zone.add_argument("--flow", type=_above_zero, metavar="M3_H", help="fan flow before")
    zone.add_argument("--flow-after", type=_above_zero, metavar="M3_H", help="fan flow with the hole")
    zone.add_argument(
        "--flow-uncertainty",
        type=_not_negative,
        default=3.0,
        metavar="M3_H",
        help="standard uncertainty of each flow, scatter only (%(default)s)",
    )
    _units(zone)


def _components(components: argparse.ArgumentParser) -> None:
    components.add_argument("amounts", nargs="*", type=_amount, metavar="ID=AMOUNT", help="such as attic-hatch=1")
    _units(components)


def _simulate(simulate: argparse.ArgumentParser, houses: tuple[str, ...]) -> None:
    what = simulate.add_mutually_exclusive_group()
    what.add_argument("--house", choices=houses, help=f"the house ({houses[0]})")
    what.add_argument(
        "--exercise", metavar="NAME", help="an exercise of `airseam exercises`, or a file of one's own ending in .toml"
    )
    simulate.add_argument("--seed", type=_whole, default=1, metavar="N", help="decides wind and noise (%(default)s)")
    protocols = ("scpi", "lines", "modbus")
    simulate.add_argument("--protocol", choices=protocols, help=f"of the instruments ({protocols[0]})")
    where = simulate.add_mutually_exclusive_group(required=True)
    where.add_argument("--pty", action="store_true", help="on pseudo-terminals (Linux, macOS)")
    where.add_argument(
        "--listen", type=_address, metavar="HOST:PORT", help="on this TCP port and the next; 0 takes free ones"
    )
    simulate.add_argument(
        "--time-factor", type=_above_zero, default=1.0, metavar="F", help="run F times faster than life"
    )
    simulate.add_argument("--taps", type=int, choices=(1, 2, 3, 4), help="outdoor taps (1)")
    simulate.add_argument("--fans", type=int, choices=range(1, 5), help="fans (1)")
    simulate.add_argument("--wind", type=_not_negative, metavar="M_S", help="wind speed instead of that of the house")
    simulate.add_argument(
        "--class",
        dest="students",
        type=_whole,
        metavar="N",
        help="a house of the exercise for each of N students, who join at HOST:PORT; 0: one house that all watch",
    )
    simulate.add_argument("--truths", type=Path, metavar="DIR", help="folder for the truth of each house of a class")
    simulate.add_argument(
        "--rig-file", type=Path, metavar="PATH", help="write the rig file to test with; of a class, all into a folder"
    )
    simulate.add_argument("--job-file", type=Path, metavar="FILE", help="make a job with the data of the house")


def _replay(replay: argparse.ArgumentParser) -> None:
    _on_a_test(replay)
    replay.add_argument("--job", type=Path, metavar="FILE", help="new job to record in what is played back")
    replay.add_argument(
        "--speed", type=_above_zero, metavar="F", help="play F times faster than life; as fast as it goes if not given"
    )
    replay.add_argument(
        "--exercise-file", type=Path, metavar="TOML", help="write an exercise with this tightness and weather, nameless"
    )
    _units(replay)


def _mark(mark: argparse.ArgumentParser) -> None:
    mark.add_argument("files", nargs="+", type=Path, metavar="JOB", help="the jobs that were handed in")
    truth = mark.add_mutually_exclusive_group(required=True)
    truth.add_argument("--exercise", metavar="NAME", help="the exercise that everybody had")
    truth.add_argument("--truth", type=Path, metavar="FILE", help="what happened in one served house, as it was kept")
    mark.add_argument("--sheets", type=Path, metavar="DIR", help="folder for a sheet (PDF) of each student")
    mark.add_argument("--csv", type=Path, metavar="FILE", help="write the table of the class")


def _on_a_test(command: argparse.ArgumentParser) -> argparse.ArgumentParser:
    command.add_argument("file", type=Path, metavar="FILE", help="a job, or a test as JSON")
    command.add_argument(
        "--test", type=_whole, metavar="N", help="number of the test in a job; the newest if not given"
    )
    return command


def _units(command: argparse.ArgumentParser) -> None:
    command.add_argument("--units", choices=("si", "us"), default="si", help="units for people (%(default)s)")


def _language(command: argparse.ArgumentParser) -> None:
    command.add_argument("--language", metavar="TAG", help="en, de or fr; that of the job if not given")


def _number(text: str) -> float:
    try:
        value = float(text.replace(",", "."))
    except ValueError:
        value = math.nan
    if not math.isfinite(value):
        raise argparse.ArgumentTypeError(f"'{text}': a number is needed")
    return value


def _pressure(text: str) -> float:
    value = _number(text)
    if not LOWEST_HELD_PA <= abs(value) <= HIGHEST_HELD_PA:
        raise argparse.ArgumentTypeError(
            f"'{text}': {LOWEST_HELD_PA:g} to {HIGHEST_HELD_PA:g} Pa, with its sign, is needed"
        )
    return value


def _above_zero(text: str) -> float:
    value = _number(text)
    if value <= 0:
        raise argparse.ArgumentTypeError(f"'{text}': a number greater than 0 is needed")
    return value


def _not_negative(text: str) -> float:
    value = _number(text)
    if value < 0:
        raise argparse.ArgumentTypeError(f"'{text}': a number not less than 0 is needed")
    return value


def _whole(text: str) -> int:
    if not text.isdecimal():
        raise argparse.ArgumentTypeError(f"'{text}': a whole number not less than 0 is needed")
    return int(text)


def _amount(text: str) -> tuple[str, float]:
    name, sign, number = text.partition("=")
    if not sign:
        raise argparse.ArgumentTypeError(f"'{text}': ID=AMOUNT is needed, such as attic-hatch=1")
    return name.strip(), _not_negative(number)


def _address(text: str) -> tuple[str, int]:
    host, _, port = text.rpartition(":")
    if not host or not port.isdecimal() or int(port) > 65535:
        raise argparse.ArgumentTypeError(f"'{text}': HOST:PORT is needed, such as 127.0.0.1:4001 (port 0 to 65535)")
    return host.strip("[]"), int(port)


def leave_out(options: argparse.Namespace, names: Sequence[str], what: str) -> None:
    """Raise `InvalidInput` for the first of these options that was given: `what` decides about it."""
    for name in names:
        if getattr(options, name) not in (None, False):
            shown = f"--{name.removesuffix('_m_s').replace('_', '-')}"
            raise InvalidInput(shown, getattr(options, name), f"{what} brings this with it: leave it out")
