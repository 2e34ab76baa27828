"""What a report takes out of the job: office, leaks, photos, equipment, edits; and what it says before it is issued."""

from __future__ import annotations

import io
import re
from collections.abc import Iterator
from dataclasses import replace
from datetime import date, timedelta
from pathlib import Path
from typing import Any

import pytest
from PIL import Image
from pypdf import PdfReader

from acquisition.job import Job, JobDetails
from acquisition.job.issues import IssueMark
from acquisition.kinds import TestKind
from acquisition.languages import TAGS, Language, language_of, languages
from acquisition.office import Letterhead
from acquisition.register.curves import PowerLaw
from acquisition.register.records import Calibration, Equipment, RangeEntry, Register
from acquisition.report import content_of, report_pdf
from acquisition.report.photos import MOST_PIXELS, shrunk
from acquisition.sealing.leaks import Leak
from acquisition.worstcase import ALL_OFF, USUAL, situation_entry
from acquisition.zonetest import ZoneQuestion, zone_entry
from analysis.errors import InvalidInput
from analysis.records import Direction
from drivers.clock import VirtualClock
from tests.acquisition.samples import RIG, START, Rehearsal, plan

LITERAL = 'Σπίτι «Дом» #12 $x$ *bold* @ref \\u{41} "q"'
MARK = IssueMark("2026-007", 1, "T. Nobody", START + timedelta(days=1), "the client's name was wrong")


def picture(kind: str = "JPEG", size: tuple[int, int] = (1600, 900), turned: bool = False) -> bytes:
    made = io.BytesIO()
    image = Image.new("RGB", size, (20, 120, 40))
    exif = Image.Exif()
    if turned:
        exif[0x0112] = 6  # to be turned by a quarter (Exif 2.3, orientation)
    exif[0x010F] = "A maker of cameras"
    image.save(made, kind, exif=exif)
    return made.getvalue()


@pytest.fixture
def job(tmp_path: Path) -> Iterator[Job]:
    clock = VirtualClock(START)
    job = Job.create(tmp_path / "x.airseam", clock, "Mill Row 8")
    job.edit_details(JobDetails("Mill Row 8", "Mill Lane 8", LITERAL, "T. Nobody", number="J-12", place="US", zone="5"))
    recorder = job.record(plan(), RIG)
    rehearsal = Rehearsal(clock, recorder, zero_s=30)
    rehearsal.run(Direction.DEPRESSURIZE)
    recorder.end_test("complete")
    yield job
    job.close()


def text_of(pdf: bytes, page: int | None = None) -> str:
    pages = PdfReader(io.BytesIO(pdf)).pages
    chosen = pages if page is None else [pages[page]]
    return re.sub(r"\s+", " ", " ".join(item.extract_text() for item in chosen))


def test_the_annex_holds_uncertainty_equipment_and_edits(job: Job) -> None:
    old, good = Calibration(date(2024, 1, 1)), Calibration(date(2026, 1, 5), laboratory="A lab")
    middle = RangeEntry("middle", PowerLaw(183.0, 0.498), 8, 250, calibration=old)
    fan = Equipment("fan", "fan", "Big fan", "SF-0003", ranges=(middle,))
    gauge = Equipment("g", "gauge", "Blue gauge", "SG-0012", calibration=good)
    text = text_of(report_pdf(content_of(job, 1, register=Register((gauge, fan)))))
    for words in (
        "Uncertainty of n50",
        "Scatter of the points about the line",
        "Gauge: blue gauge SG-0012 2026-01-05, A lab 2027-01-05 good",
        "Flow range middle SF-0003 2024-01-01 2025-01-01 overdue",
        "What was edited in the job",
        f"details, client – {LITERAL}",
        "Draft, not issued",
        "Certificate of an air leakage test",
        "Place of the codes: United States",
        "Job J-12",
    ):
        assert words.lower() in text.lower(), words


def test_an_issued_report_carries_number_revision_signature_and_office(job: Job) -> None:
    logo = picture("PNG", (200, 80))
    office = Letterhead("Office of Nobody", ("Mill Lane 1", LITERAL), "Dear client,", "Kind regards.", logo)
    pdf = report_pdf(content_of(job, 1, office=office, mark=MARK))
    first = text_of(pdf, 0)
    for words in (
        "CERTIFICATE OF AN AIR LEAKAGE TEST 2026-007, REVISION 1",
        "Office of Nobody",
        LITERAL,
        "Dear client,",
        "Kind regards.",
        "Signed by T. Nobody",
        "Issued on 5 May 2026",
        "Revision 1 because the client's name was wrong",
    ):
        assert words in first, words
    assert "Draft" not in text_of(pdf)
    assert report_pdf(content_of(job, 1, office=office, mark=MARK)) == pdf


def test_leaks_come_with_their_photos_and_openings_with_theirs(job: Job) -> None:
    house, leaks = job.edit_house(), job.edit_leaks()
    at_leak = house.add_photo("leak", "a.jpg", picture(), START)
    house.add_photo("bath-fan", "b.jpg", picture(size=(80, 60)), START)
    leaks.add(Leak("attic-access", room="Landing", photos=(at_leak.id,), size_guess_m3_h=40.0), START)
    pdf = report_pdf(content_of(job, 1))
    text = text_of(pdf)
    for words in ("Photos of the leaks", "Leak 1: Landing: ", "Photos of the openings", at_leak.sha256[:16]):
        assert words in text, words
    figures = [item for item in structure(pdf) if item.get("/S") == "/Figure"]
    assert len(figures) == 4  # curve, code, two photos
    assert all(str(item["/Alt"]) for item in figures)


@pytest.mark.parametrize(
    ("tag", "words"),
    [
        ("en", ("kitchen hood", "What appliances bear", "somebody licensed for it")),
        ("de", ("Dunstabzug", "Was Feuerstätten vertragen", "4,00", "zugelassenen Person")),
    ],
)
def test_the_worst_case_of_exhaust_fans_comes_with_its_caution(job: Job, tag: str, words: tuple[str, ...]) -> None:
    assert "What appliances bear" not in text_of(report_pdf(content_of(job, 1)))
    for situation, pressure_pa in ((ALL_OFF, -1.0), (USUAL[0], -5.0)):
        job.edit_house().note(situation_entry(situation, pressure_pa, 0.1, START))
    text = text_of(report_pdf(content_of(job, 1, language=language_of(tag))))
    for piece in words:
        assert piece in text, piece


def test_zones_that_were_kept_are_told_in_the_language_of_the_report(job: Job) -> None:
    read = ZoneQuestion(
        50.0, 20.0, hole="outdoors", zone_after_pa=10.0, flow_before_m3_h=1000.0, flow_after_m3_h=1060.0
    )
    job.edit_house().note(zone_entry("Garage 2", read, START))
    text = text_of(report_pdf(content_of(job, 1, language=language_of("de"))))
    assert "Garage 2: Zonendruck" in text
    assert "Die Zone liegt zwischen innen und außen." in text
    assert "Garage 2: Aufteilung durch das zusätzliche Loch" in text


def test_a_test_to_find_leaks_has_them_before_the_technical_pages_and_no_certificate(tmp_path: Path) -> None:
    clock = VirtualClock(START)
    job = Job.create(tmp_path / "f.airseam", clock, "Mill Row 8")
    job.edit_leaks().add(Leak("attic-access", room="Landing"), START)
    recorder = job.record(replace(plan(), kind=TestKind.FINDING), RIG)
    Rehearsal(clock, recorder).run(Direction.DEPRESSURIZE)
    recorder.end_test("complete")
    pdf = report_pdf(content_of(job, 1, mark=replace(MARK, number="")))
    job.close()
    assert "Made to find leaks: not to be quoted" in text_of(pdf, 0)
    assert "CERTIFICATE" not in text_of(pdf).upper().replace("CERTIFICATE OF COMPLIANCE", "")
    assert "Landing" in text_of(pdf, 1)
    assert "Checks of the method" in text_of(pdf, 2)


def test_photos_are_upright_small_and_say_nothing_of_the_camera() -> None:
    content = shrunk(picture(turned=True))
    made = Image.open(io.BytesIO(content))
    assert made.format == "JPEG"
    assert made.size == (675, MOST_PIXELS)
    assert not made.getexif()
    assert b"maker of cameras" not in content
    assert shrunk(picture(turned=True)) == content
    with pytest.raises(InvalidInput, match="a whole PNG or JPEG picture"):
        shrunk(picture()[:400])


@pytest.mark.parametrize("language", languages(), ids=("en", *TAGS))
def test_the_certificate_stays_one_page_with_the_longest_texts(job: Job, language: Language) -> None:
    long = "A long sentence that the office wants to stand here, whatever it may be worth. "
    office = Letterhead("O" * 120, ("W" * 60,) * 5, (long * 8)[:600], (long * 8)[:600])
    job.edit_details(replace(job.details, name=long * 2, client=long * 2, tester=long * 2))
    mark = replace(MARK, signed_by=long, reason=long * 3)
    reader = PdfReader(io.BytesIO(report_pdf(content_of(job, 1, office=office, mark=mark, language=language))))
    assert language.say("Building and method") in reader.pages[1].extract_text()


def test_tags_attachments_and_standards_are_what_a_general_library_finds(job: Job) -> None:
    reader = PdfReader(io.BytesIO(report_pdf(content_of(job, 1, mark=MARK))))
    kinds = {str(item.get("/S")) for item in structure(report_pdf(content_of(job, 1, mark=MARK)))}
    assert {"/H1", "/H2", "/Table", "/TR", "/TH", "/TD", "/Figure", "/P"} <= kinds
    assert set(reader.attachments) == {"test.json", "result.json"}
    catalog: Any = reader.root_object
    relations = {str(item.get_object()["/AFRelationship"]) for item in catalog["/AF"]}
    assert relations == {"/Data"}
    assert "<pdfaid:part>3</pdfaid:part>" in catalog["/Metadata"].get_object().get_data().decode()
    pages: list[Any] = list(reader.pages)
    for page in pages:
        assert page["/Tabs"] == "/S"
        assert page.extract_text().strip()


def structure(pdf: bytes) -> list[Any]:
    """Return every element of the structure tree."""
    root: Any = PdfReader(io.BytesIO(pdf)).root_object["/StructTreeRoot"]
    found, open_items = [], [root]
    while open_items:
        item = open_items.pop()
        kids = item.get("/K", [])
        for kid in kids if isinstance(kids, list) else [kids]:
            known = kid.get_object() if hasattr(kid, "get_object") else kid
            if isinstance(known, dict) and "/S" in known:
                found.append(known)
                open_items.append(known)
    return found
