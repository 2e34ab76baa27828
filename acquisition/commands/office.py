"""Commands of the office: issuing reports, the jobs of a folder, hand-written tests."""

from __future__ import annotations

import argparse
import json
import sys
from dataclasses import asdict
from pathlib import Path

from acquisition.commands.language import wanted_language
from acquisition.commands.printing import display_of, show, write
from acquisition.commands.status import NOT_VALID, VALID
from acquisition.issuing import Setting, Wish
from acquisition.issuing import issue as issue_report
from acquisition.job import Job
from acquisition.job.export import POINT_DIALECT, write_csv
from acquisition.job.results import analyse_record
from acquisition.office import load_office, office_path
from acquisition.office.catalogue import Catalogue, write_table
from acquisition.register import register_path
from acquisition.register.store import load_register
from acquisition.summary import summary_lines
from acquisition.terminal import Bar
from acquisition.testfile import chosen
from acquisition.told.issued import issued_table
from acquisition.told.jobs import jobs_table
from acquisition.typed import TypedRun, keep_typed, moment_of, points_from
from analysis.errors import InvalidInput
from analysis.records import Direction
from analysis.units import Display, System
from drivers.clock import WallClock


def issue(options: argparse.Namespace) -> int:
    """Issue a report, list what was issued, or write one as it was."""
    clock = WallClock()
    job = Job.open(options.file, clock, read_only=options.list or options.show is not None)
    try:
        if options.list:
            show(issued_table(job.issues.all))
        elif options.show is not None:
            if options.output is None:
                raise InvalidInput("--output", None, "say where the file is to be written", shown="missing")
            write(options.output, job.issues.pdf(options.show), "the report")
            print(options.output)
        else:
            office = load_office(office_path())
            wish = Wish(
                test_id=None if options.no_test else chosen(job, options.test),
                signed_by=office.signer if options.signed_by is None else options.signed_by,
                reason=options.reason,
                number=options.number,
                language=wanted_language(options),
            )
            setting = Setting(office, office_path(), load_register(register_path()), display_of(options.units))
            made = issue_report(job, wish, setting, clock.utc())
            if options.output is not None:
                write(options.output, job.issues.pdf(made.id), "the report")
            show(issued_table((made,)))
    finally:
        job.close()
    return VALID


def jobs(options: argparse.Namespace) -> int:
    """List and search the jobs of a folder, and export them together."""
    if not options.folder.is_dir():
        raise InvalidInput("folder", str(options.folder), "a folder with jobs is needed")
    catalogue = Catalogue()
    bar = Bar(sys.stderr)
    catalogue.read(options.folder, lambda at, count: bar.show(at / count, f"job {at} of {count}"))
    bar.clear()
    found = catalogue.search(options.search)
    if options.csv is not None:
        write(options.csv, write_table(found, POINT_DIALECT), "the table")
    if options.tables is not None:
        for path in dict.fromkeys(Path(item.file) for item in found if item.test is not None):
            job = Job.open(path, WallClock(), read_only=True)
            try:
                write_csv(job, options.tables / path.stem)
            finally:
                job.close()
    if options.json:
        print(json.dumps([asdict(item) for item in found], ensure_ascii=False, indent=1))
    else:
        show(jobs_table(found))
    return VALID


def typed(options: argparse.Namespace) -> int:
    """Keep the points of a hand-written record as a test of a job."""
    clock = WallClock()
    direction = Direction(options.direction)
    display = Display(System(options.units), "," if options.comma else ".")
    try:
        text = options.points.read_text("utf-8-sig")
    except (OSError, UnicodeDecodeError) as error:
        raise InvalidInput("points", str(options.points), f"it cannot be read ({error})") from error
    run = TypedRun(
        direction,
        points_from(text, direction, display),
        options.zero_before,
        options.zero_after,
        options.seconds,
    )
    when = clock.utc() if options.on is None else moment_of(options.on, "--on")
    job = Job.open(options.file, clock)
    try:
        number = keep_typed(job, job.draft(), (run,), when)
        loaded = job.load(number)
        result = analyse_record(loaded.record, loaded.test())
        print(f"kept as test {number}, typed from a hand-written record")
        print(*summary_lines(loaded.test(), result, display), sep="\n")
    finally:
        job.close()
    return VALID if result.valid else NOT_VALID
