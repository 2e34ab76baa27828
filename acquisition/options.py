"""The words of the command line: commands, options and what they may be. Knows nothing of what they do."""

from __future__ import annotations

import argparse
import math
import sys
from pathlib import Path
from typing import NoReturn

UNUSABLE = 2
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
    _simulate(command("simulate", "serve a simulated house on ports of this machine until Ctrl+C"), houses)
    report = _on_a_test(command("report", "write the report of a test as PDF"))
    report.add_argument("-o", "--output", type=Path, required=True, metavar="PDF", help="file to write")
    _units(report)
    export = _on_a_test(command("export", "write a job for spreadsheets, or a test for other programs"))
    export.add_argument("--csv", type=Path, metavar="DIR", help="folder for samples, points and results of a job")
    export.add_argument("--json", type=Path, metavar="FILE", help="file for the test as JSON")
    verify = command("verify", "hold a job against its own digests and results")
    verify.add_argument("file", type=Path, metavar="JOB")
    ports = command("ports", "list the serial ports of this machine")
    ports.add_argument("--json", action="store_true", help="one JSON document on standard output")
    pictures = command("pictures", "save a picture of each place of the window, in both themes")
    pictures.add_argument("job", type=Path, metavar="JOB")
    pictures.add_argument("--to", type=Path, required=True, metavar="DIR", help="folder for the pictures")
    pictures.add_argument("--seed", type=_whole, default=1, metavar="N", help=argparse.SUPPRESS)
    window = command("window", "open the window; the same as no command")
    window.add_argument("job", type=Path, nargs="?", metavar="JOB")
    window.add_argument("--seed", type=_whole, default=1, metavar="N", help="decides what the simulated rigs do")
    return top


def _test(test: argparse.ArgumentParser) -> None:
    test.add_argument("--rig", required=True, help="a rig file, or sim:NAME for a built-in house in virtual time")
    test.add_argument("--job", type=Path, required=True, metavar="FILE", help="job to record in; made if there is none")
    test.add_argument(
        "--method", metavar="ID", help="the method (standard); iso9972 unless the job was prepared otherwise"
    )
    test.add_argument(
        "--direction", choices=("depressurize", "pressurize", "both"), help="depressurize if nothing is said"
    )
    test.add_argument("--stage", metavar="TEXT", help="state of the building, such as 'membrane up'")
    test.add_argument("--report", type=Path, metavar="PDF", help="write the report too")
    test.add_argument("--seed", type=_whole, metavar="N", help="decides what a built-in house does (1)")
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
    analyse.add_argument("--json", action="store_true", help="one JSON document on standard output")
    _units(analyse)


def _simulate(simulate: argparse.ArgumentParser, houses: tuple[str, ...]) -> None:
    simulate.add_argument("--house", choices=houses, default=houses[0], help="the house (%(default)s)")
    simulate.add_argument("--seed", type=_whole, default=1, metavar="N", help="decides wind and noise (%(default)s)")
    simulate.add_argument("--protocol", choices=("scpi", "lines"), default="scpi", help="of the gauge (%(default)s)")
    where = simulate.add_mutually_exclusive_group(required=True)
    where.add_argument("--pty", action="store_true", help="on pseudo-terminals (Linux, macOS)")
    where.add_argument(
        "--listen", type=_address, metavar="HOST:PORT", help="on this TCP port and the next; 0 takes free ones"
    )
    simulate.add_argument(
        "--time-factor", type=_above_zero, default=1.0, metavar="F", help="run F times faster than life"
    )
    simulate.add_argument("--wind", type=_not_negative, metavar="M_S", help="wind speed instead of that of the house")
    simulate.add_argument("--rig-file", type=Path, metavar="FILE", help="write the rig file to test with")
    simulate.add_argument("--job-file", type=Path, metavar="FILE", help="make a job with the data of the house")


def _on_a_test(command: argparse.ArgumentParser) -> argparse.ArgumentParser:
    command.add_argument("file", type=Path, metavar="FILE", help="a job, or a test as JSON")
    command.add_argument(
        "--test", type=_whole, metavar="N", help="number of the test in a job; the newest if not given"
    )
    return command


def _units(command: argparse.ArgumentParser) -> None:
    command.add_argument("--units", choices=("si", "us"), default="si", help="units for people (%(default)s)")


def _number(text: str) -> float:
    try:
        value = float(text.replace(",", "."))
    except ValueError:
        value = math.nan
    if not math.isfinite(value):
        raise argparse.ArgumentTypeError(f"'{text}': a number is needed")
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


def _address(text: str) -> tuple[str, int]:
    host, _, port = text.rpartition(":")
    if not host or not port.isdecimal() or int(port) > 65535:
        raise argparse.ArgumentTypeError(f"'{text}': HOST:PORT is needed, such as 127.0.0.1:4001 (port 0 to 65535)")
    return host.strip("[]"), int(port)
