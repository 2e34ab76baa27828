"""Commands of the office: issuing reports."""

from __future__ import annotations

import argparse

from acquisition.commands.printing import display_of, show, write
from acquisition.commands.status import VALID
from acquisition.issuing import Setting, Wish
from acquisition.issuing import issue as issue_report
from acquisition.job import Job
from acquisition.office import load_office, office_path
from acquisition.register import register_path
from acquisition.register.store import load_register
from acquisition.testfile import chosen
from acquisition.told.issued import issued_table
from analysis.errors import InvalidInput
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
            )
            setting = Setting(office, office_path(), load_register(register_path()), display_of(options.units))
            made = issue_report(job, wish, setting, clock.utc())
            if options.output is not None:
                write(options.output, job.issues.pdf(made.id), "the report")
            show(issued_table((made,)))
    finally:
        job.close()
    return VALID
