"""The report as a reader, an archive and a printer see it."""

from __future__ import annotations

import hashlib
import io
import json
import os
import re
import subprocess
import sys
from collections.abc import Callable
from dataclasses import replace
from datetime import timedelta
from pathlib import Path
from typing import Any

import pytest
from pypdf import PdfReader

from acquisition.job import Job, JobDetails
from acquisition.languages import language_of
from acquisition.report import ReportContent, content_of, pdf_pages, report_pdf
from acquisition.report.document import report_document
from acquisition.snapshot import Flag, Severity
from acquisition.steps import WindowKind
from analysis.errors import InvalidInput
from analysis.methods import analyse
from analysis.resultjson import result_document
from analysis.testjson import read_test
from analysis.units import Display, System
from drivers.clock import VirtualClock
from tests.acquisition.report.cases import IN, OUT, bare, check_margins, content
from tests.acquisition.samples import RIG, START, TARGETS_PA, Rehearsal, plan

ROOT = Path(__file__).parents[3]
LITERAL = 'Σπίτι «Дом» #12 $x$ *bold* _it_ @ref \\u{41} "q" <b> // /* ~ -> --'


def text_of(pdf: bytes) -> str:
    """Return all text of a PDF, on one line, with plain spaces."""
    pages = PdfReader(io.BytesIO(pdf)).pages
    return re.sub(r"\s+", " ", " ".join(page.extract_text() for page in pages))


def recorded_job(path: Path) -> Job:
    clock = VirtualClock(START)
    job = Job.create(path, clock, "Mill Row 8")
    job.edit_details(JobDetails("Mill Row 8", "Mill Lane 8", "A. Nobody", "T. Nobody"))
    recorder = job.record(plan(OUT), RIG)
    Rehearsal(clock, recorder, zero_s=30).run(OUT)
    recorder.strike(4, "the front door was opened")
    recorder.end_test("complete")
    return job


def test_one_direction_is_a_certificate_and_a_technical_page() -> None:
    made = content(OUT, limit=2.0)
    reader = PdfReader(io.BytesIO(report_pdf(made)))
    assert len(reader.pages) == 2
    text = text_of(report_pdf(made))
    for words in (
        "Mill Row 8",
        "membrane up, services not yet in",
        "ISO 9972:2015",
        "air changes per hour at 50 Pa",
        "Meets the limit",
        "n50 at most 2.0 1/h",
        "Probability of meeting it: over 99 %",
        "300 m³",
        "21.0 °C",
        "−0.42 (−0.88, 0.31)",
        "EqLA10: equivalent leakage area at 10 Pa with discharge coefficient 0.611",
        "ELA4: leakage area at 4 Pa with discharge coefficient 1",
        "not a certificate of compliance",
        "every requirement from memory",
        "Measured in one direction only",
        "licensed",
        "SHA-256",
        "Airseam 0.1.0",
    ):
        assert words in text, words
    result = made.result.runs[0]
    assert f"{result.n.value:.3f}" in text
    for check in result.checks:
        assert check.text in text
    for point in result.envelope_flow_m3_h:
        assert f"{point:.0f}" in text
    assert "Simulated" not in text


def test_the_certificate_is_the_first_page_and_speaks_plainly() -> None:
    pages = PdfReader(io.BytesIO(report_pdf(content(OUT, IN)))).pages
    first, second = (" ".join(page.extract_text().split()) for page in pages)
    assert "By ISO 9972:2015: a fan drew air out of the building and then blew air into the building" in first
    assert "measured 20 times, at pressure differences from 12 to 60 Pa" in first
    assert "of air pass through the leaks of the building: all its air is exchanged 1.69 times an hour" in first
    assert "Results with 95 % intervals" not in first
    assert "Results with 95 % intervals" in second
    assert "Checks of the method" in second
    assert "Page 2 of 2" in second


def test_a_number_and_its_unit_stay_on_one_line_and_are_found_as_one() -> None:
    pages = PdfReader(io.BytesIO(report_pdf(content(OUT, IN)))).pages
    printed = "\n".join(page.extract_text() for page in pages)
    parted = re.findall(r"\d(?: |\n)(?:Pa|%|°C|m|m²|m³)(?![\w/])", printed)
    assert parted == []
    assert len(re.findall(r"\d\u00a0(?:Pa|%|°C|m|m²|m³)(?!\w)", printed)) > 40
    assert "floor area 120 m²" in text_of(report_pdf(content(OUT, IN)))


@pytest.mark.parametrize(
    ("limit", "words"), [(2.0, "Meets the limit"), (1.0, "Does not meet the limit"), (1.601, "Cannot tell today")]
)
def test_the_verdict_is_a_word(limit: float, words: str) -> None:
    made = content(OUT, limit=limit)
    assert words in text_of(report_pdf(made))
    assert len(pdf_pages(report_pdf(made), 8)) == 2


def test_without_a_limit_the_report_says_so() -> None:
    assert "No limit set for this stage" in text_of(report_pdf(content(OUT, limit=None)))


def test_the_same_content_gives_the_same_bytes_in_every_process() -> None:
    here = hashlib.sha256(report_pdf(content(OUT, IN))).hexdigest()
    assert hashlib.sha256(report_pdf(content(OUT, IN))).hexdigest() == here
    code = (
        "import hashlib\n"
        "from acquisition.report import report_pdf\n"
        "from tests.acquisition.report.cases import IN, OUT, content\n"
        "print(hashlib.sha256(report_pdf(content(OUT, IN))).hexdigest())\n"
    )
    environment = {**os.environ, "PYTHONHASHSEED": "77", "TZ": "Asia/Tokyo"}
    done = subprocess.run(
        [sys.executable, "-c", code], cwd=ROOT, env=environment, capture_output=True, text=True, check=True
    )
    assert done.stdout.strip() == here


def test_the_file_is_archival_tagged_and_accessible() -> None:
    reader = PdfReader(io.BytesIO(report_pdf(content(OUT))))
    catalog: Any = reader.root_object
    xmp = catalog["/Metadata"].get_object().get_data().decode()
    assert "<pdfaid:part>3</pdfaid:part>" in xmp
    assert "<pdfaid:conformance>A</pdfaid:conformance>" in xmp
    assert "<pdfuaid:part>1</pdfuaid:part>" in xmp
    assert catalog["/MarkInfo"]["/Marked"]
    assert catalog["/Lang"] == "en"
    assert "/StructTreeRoot" in catalog
    assert reader.metadata is not None
    assert reader.metadata.title == "Air leakage test: Mill Row 8"
    assert reader.metadata.creation_date == START
    pages: list[Any] = list(reader.pages)
    fonts = {
        font["/BaseFont"].split("+")[1].removesuffix("-Identity-H")
        for page in pages
        for font in (item.get_object() for item in page["/Resources"]["/Font"].values())
    }
    assert fonts <= {"Inter-Regular", "Inter-SemiBold", "Inter-Bold"}


def test_the_attached_test_gives_the_attached_result() -> None:
    made = content(OUT, IN, limit=None)
    pdf = report_pdf(made)
    attached = PdfReader(io.BytesIO(pdf)).attachments
    (test_json,), (result_json,) = attached["test.json"], attached["result.json"]
    assert result_document(analyse(read_test(test_json))) == json.loads(result_json)
    assert hashlib.sha256(test_json).hexdigest() in text_of(pdf)


def test_names_print_as_they_are_written() -> None:
    made = replace(content(OUT, name=LITERAL), details=JobDetails(LITERAL, LITERAL, LITERAL, LITERAL, LITERAL))
    text = text_of(report_pdf(made))
    assert text.count(LITERAL) >= 5


def test_characters_that_the_typeface_lacks_become_question_marks() -> None:
    made = content(OUT, name="東京 \U0001f3e0 \u202e Haus\x00\n\tNord")
    text = text_of(report_pdf(made))
    assert "?? ? ? Haus? Nord" in text
    attached = PdfReader(io.BytesIO(report_pdf(made))).attachments["test.json"][0]
    assert json.loads(attached)["building"]["name"] == "東京 \U0001f3e0 \u202e Haus\x00\n\tNord"


def test_us_units_and_the_decimal_mark_of_the_language() -> None:
    made = content(OUT, limit=2.0)
    us = text_of(report_pdf(made, "US"))
    # 1 cfm is 1.699 m3/h, 300 m3 are 10 594 ft3 (definition of the foot: 0.3048 m).
    assert "10\u2009594 ft³".replace("\u2009", " ") in us
    assert "cfm/ft²" in us
    assert "69.8 °F" in us
    assert f"{made.result.mean.q50_m3_h.value / 1.69901082:.0f}" in us
    # A window that shows commas, as a German one does, makes the same English report.
    english = text_of(report_pdf(made, Display(System.SI, ",")))
    assert "n50 at most 2.0 1/h" in english
    assert "21.0 °C" in english
    assert "21,0 °C" in text_of(report_pdf(replace(made, language=language_of("de"))))


def test_a_report_from_a_job_shows_rig_digest_struck_points_and_that_the_house_is_simulated(tmp_path: Path) -> None:
    job = recorded_job(tmp_path / "x.airseam")
    made = content_of(job, 1)
    pdf = report_pdf(made)
    text = text_of(pdf)
    for words in (
        "Simulated house, invented data",
        "Mill Lane 8",
        "A. Nobody",
        "T. Nobody",
        "scpi-gauge, number SG-0012",
        "middle, 8 to 250 Pa",
        "q = 183",
        "Struck: the front door was opened",
        "Points crossed out are not in the result.",
        "Point struck: −48 Pa, the front door was opened.",
        "Depressurize, struck",
        job.runs(1)[0].digest,
    ):
        assert words in text, words
    assert len(made.runs[0].rows) == len(TARGETS_PA)
    assert len(made.runs[0].result.induced_pa) == len(TARGETS_PA) - 1
    assert report_pdf(content_of(job, 1)) == pdf
    assert len(pdf_pages(report_pdf(made), 8)) == 3
    job.close()
    again = Job.open(tmp_path / "x.airseam", VirtualClock(START + timedelta(days=400)), read_only=True)
    assert report_pdf(content_of(again, 1)) == pdf
    again.close()


def test_the_number_in_front_carries_what_everything_makes_of_it(tmp_path: Path) -> None:
    job = recorded_job(tmp_path / "x.airseam")
    made = content_of(job, 1)
    job.close()
    total = next(item.total for item in made.result.budgets if item.quantity == "n50_per_h")
    line = made.result.mean.n50_per_h
    assert line is not None
    assert total.half_width > 10 * line.half_width
    hero = report_document(made, Display(System.SI))["hero"]
    assert isinstance(hero, dict)
    assert hero["value"] == f"{line.value:.2f}"
    assert hero["interval"] == f"95 % interval {total.low:.2f} to {total.high:.2f} 1/h"
    assert hero["scope"].endswith(f"alone {line.value:.3f} ({line.low:.3f} to {line.high:.3f}).")


def test_a_stopped_test_says_that_it_was_stopped(tmp_path: Path) -> None:
    clock = VirtualClock(START)
    job = Job.create(tmp_path / "x.airseam", clock, "Mill Row 8")
    recorder = job.record(plan(), RIG)
    rehearsal = Rehearsal(clock, recorder)
    rehearsal.begin(OUT)
    rehearsal.zero(WindowKind.ZERO_BEFORE)
    for target_pa in TARGETS_PA[:6]:
        rehearsal.point(OUT, target_pa)
    recorder.end_test("stopped")
    text = text_of(report_pdf(content_of(job, 1)))
    assert "stopped by a person before its end" in text
    assert "Not checked: what is marked with a question mark" in text
    assert "not measured" in text
    job.close()


def test_a_test_without_points_has_no_report(tmp_path: Path) -> None:
    job = Job.create(tmp_path / "x.airseam", VirtualClock(START), "Mill Row 8")
    job.record(plan(), RIG).end_test("stopped")
    with pytest.raises(InvalidInput, match="at least one point that is not struck"):
        content_of(job, 1)
    job.close()


@pytest.mark.parametrize(
    "make",
    [
        lambda: content(OUT),
        lambda: content(OUT, IN, count=12),
        lambda: content(OUT, count=12, name="W" * 60),
        lambda: content(OUT, IN, name="A very long name of a building with a rear wing and a second staircase " * 3),
        lambda: content(OUT, IN, limit=1.601, count=2),
        bare,
    ],
    ids=["plain", "two, 12 points", "one long word", "long name", "two points", "bare"],
)
@pytest.mark.parametrize("units", ["SI", "US"])
def test_nothing_runs_into_the_margin(make: Callable[[], ReportContent], units: str) -> None:
    check_margins(report_pdf(make(), "US" if units == "US" else "SI"))


def test_what_is_not_known_is_named() -> None:
    text = text_of(report_pdf(bare()))
    assert "Building without a name" in text
    assert "Date not recorded" in text
    assert "Not recorded: site, client, tester, volume, envelope area, floor area, height, wind, rig." in text
    assert "q50 in m³/h flow at 50 Pa" in text
    assert "extrapolated" in text


def test_a_full_record_of_one_direction_still_has_one_technical_page(tmp_path: Path) -> None:
    job = recorded_job(tmp_path / "x.airseam")
    note = "Scaffold in front of the north wall; the attic hatch was taped by the owner; rain until noon."
    details = JobDetails("Mill Row 8", "Mill Lane 8, Hollow End", "A. Nobody and daughters", "T. Nobody", note)
    made = content_of(job, 1)
    flags = tuple(
        Flag(
            f"f{i}",
            Severity.ATTENTION,
            f"The zero-flow pressure moved by {1 + i / 10:.1f} Pa during the points.",
            START,
        )
        for i in range(3)
    )
    full = replace(made, details=details, flags=(*flags, *flags))
    assert len(pdf_pages(report_pdf(full), 8)) == 3
    text = text_of(report_pdf(full))
    assert note in text
    assert text.count("Noticed:") == 3
    many = tuple(replace(flags[0], sentence=f"Thing {i} happened.") for i in range(9))
    assert "Noticed: 4 further things" in text_of(report_pdf(replace(made, flags=many)))
    job.close()
