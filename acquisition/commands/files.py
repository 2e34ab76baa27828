"""Commands that work on files: a result, a report, an export, a proof."""

from __future__ import annotations

import argparse
import json
from pathlib import Path

from acquisition.commands.language import wanted_language
from acquisition.commands.printing import display_of, limits_of, show, write
from acquisition.commands.status import NOT_VALID, VALID
from acquisition.job import Job
from acquisition.job.export import write_csv
from acquisition.job.hpxml import hpxml_fragment
from acquisition.languages import ENGLISH, Language
from acquisition.summary import summary_lines
from acquisition.testfile import chosen, is_job, load_stored_test
from acquisition.told import budget_table, correction_tables, quantity_table
from analysis.errors import InvalidInput
from analysis.records import Test, TestResult
from analysis.resultjson import result_document
from analysis.testjson import write_test
from drivers.clock import WallClock


def analyse(options: argparse.Namespace) -> int:
    """Work out a test that is in a file."""
    stored = load_stored_test(options.file, WallClock(), options.test)
    result = stored.result(options.method, options.fit, limits_of(options.limit))
    status = show_result(options, stored.test, result)
    display = display_of(options.units)
    if not options.json:
        for sentence in stored.regimes(result, display):
            print(sentence)
    if options.all and not options.json:
        show(budget_table(result, display))
        show(quantity_table(result, stored.test.building, display, options.at))
        for table in correction_tables(stored.test, result, display):
            show(table)
    return status


def report(options: argparse.Namespace) -> int:
    """Write the report of a test as PDF."""
    if is_job(options.file):
        job = Job.open(options.file, WallClock(), read_only=True)
        try:
            write_report(job, chosen(job, options.test), options.output, options.units, wanted_language(options))
        finally:
            job.close()
    else:
        from acquisition.report import content_of_test, report_pdf

        stored = load_stored_test(options.file, WallClock(), options.test)
        content = content_of_test(stored.test, stored.result(), wanted_language(options) or ENGLISH)
        write(options.output, report_pdf(content, display_of(options.units)), "the report")
    print(options.output)
    return VALID


def export(options: argparse.Namespace) -> int:
    """Write a job for spreadsheets or a test for other programs."""
    if options.json is None and options.csv is None and options.hpxml is None:
        raise InvalidInput("export", None, "--csv DIR, --json FILE or --hpxml FILE is needed", shown="without a target")
    if options.hpxml is not None:
        clock = WallClock()
        stored = load_stored_test(options.file, clock, options.test)
        write(options.hpxml, hpxml_fragment(stored.test, stored.result(), clock.utc()), "the fragment")
        print(options.hpxml)
    if options.json is not None:
        document = write_test(load_stored_test(options.file, WallClock(), options.test).test)
        write(options.json, (json.dumps(document, indent=1, ensure_ascii=False) + "\n").encode(), "the test")
        print(options.json)
    if options.csv is not None:
        job = Job.open(options.file, WallClock(), read_only=True)
        try:
            print(*write_csv(job, options.csv), sep="\n")
        finally:
            job.close()
    return VALID


def verify(options: argparse.Namespace) -> int:
    """Hold a job against its own digests and results."""
    job = Job.open(options.file, WallClock(), read_only=True)
    try:
        found = job.verify()
    finally:
        job.close()
    words = {True: "holds", False: "FAILS", None: "open"}
    for item in found:
        print(f"{words[item.ok]:<6} {item.subject}: {item.sentence}")
    return NOT_VALID if any(item.ok is False for item in found) else VALID


def show_result(options: argparse.Namespace, test: Test, result: TestResult) -> int:
    """Print a result and return its exit status."""
    if options.json:
        print(json.dumps(result_document(result), ensure_ascii=False, indent=1))
    else:
        print(*summary_lines(test, result, display_of(options.units)), sep="\n")
    return VALID if result.valid else NOT_VALID


def write_report(job: Job, number: int, path: Path, units: str, language: Language | None = None) -> None:
    """Write the report of a test of a job, in the language of the job if none is named."""
    from acquisition.office import letterhead, load_office, office_path
    from acquisition.register import load_register, register_path
    from acquisition.report import content_of, report_pdf

    office, register = letterhead(load_office(office_path())), load_register(register_path())
    content = content_of(job, number, office=office, register=register, language=language)
    write(path, report_pdf(content, display_of(units)), "the report")
