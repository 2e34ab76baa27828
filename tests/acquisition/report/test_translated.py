"""The documents in other languages: nothing left in English, numbers and days as the language writes them, sound."""

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

import airseam
from acquisition.issuing import Setting, Wish, issue
from acquisition.job import Entry, Job, JobDetails, PreparationKind, SealingMark, SealingMarkKind
from acquisition.job.issues import IssueMark
from acquisition.languages import TAGS, Language, language_of, languages
from acquisition.register.curves import PowerLaw
from acquisition.register.records import Calibration, Equipment, RangeEntry, Register
from acquisition.report import ReportContent, content_of, report_pdf
from acquisition.report.document import report_document
from acquisition.report.handout import done_handout, trade_handouts
from acquisition.report.notest import no_test_content, no_test_pdf
from acquisition.sealing.leaks import Drop, Leak, LeakStatus
from acquisition.setup import shipped_questions
from acquisition.snapshot import Flag, Severity
from analysis.errors import InvalidInput
from analysis.records import Direction, Estimate, Limit
from analysis.sealing.change import Sureness
from analysis.units import Display
from drivers.clock import VirtualClock
from tests.acquisition.report.cases import IN, OUT, bare, check_margins, content
from tests.acquisition.samples import RIG, START, Rehearsal, plan

FOREIGN = pytest.mark.parametrize("language", languages()[1:], ids=TAGS)
MARK = IssueMark("2026-007", 1, "T. Nobody", START + timedelta(days=1), "Tippfehler, faute de frappe")
TYPED = "über dem Ofen, près du poêle"
PLACE = re.compile(r"\{\w+\}")
ENGLISH_WORDS = re.compile(r"\b(?:the|of|and|from|with|not|were|which|before|after|to|by|it)\b")
"""Words that German and French have not."""


@pytest.fixture(scope="module")
def path(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Return a job that has something on every page; what is typed in it is not English."""
    clock = VirtualClock(START)
    where = tmp_path_factory.mktemp("translated") / "a.airseam"
    job = Job.create(where, clock, "Mühlgasse 8")
    job.edit_details(JobDetails("Mühlgasse 8", "Mühlgasse", "", "T. Nobody", number="J-12", place="US", zone="5"))
    house, leaks = job.edit_house(), job.edit_leaks()
    picture = io.BytesIO()
    Image.new("RGB", (60, 40), (20, 120, 40)).save(picture, "PNG")
    photo = house.add_photo("leak 1", "a.png", picture.getvalue(), clock.utc())
    house.add_photo("windows", "b.png", picture.getvalue(), clock.utc())
    for question in shipped_questions():
        state = "no" if question.id == "sheeting" else "yes"
        house.note(Entry(clock.utc(), PreparationKind.SAFETY, question.id, state, "S. Econd"))
    house.note(Entry(clock.utc(), PreparationKind.OPENING, "windows", "as is"))
    leaks.add(
        Leak("attic-access", trade="Bois", photos=(photo.id,), status=LeakStatus.SEALED, minutes=7.5), clock.utc()
    )
    leaks.add(Leak("pipe", note=TYPED, size_guess_m3_h=40.0), clock.utc())
    leaks.mark(SealingMark(clock.utc(), clock.now_ns(), SealingMarkKind.STARTS, 1))
    leaks.mark(SealingMark(clock.utc(), clock.now_ns() + 1, SealingMarkKind.DONE, 1))
    leaks.measured(1, Drop(1500.0, 1462.0, Estimate(-38.0, -44.0, -32.0), 9.0, Sureness.SURE), clock.utc())
    recorder = job.record(replace(plan(), cap_pa=30.0, hose_check=False, preparation="2", stage="1"), RIG)
    Rehearsal(clock, recorder, zero_s=30).run(Direction.DEPRESSURIZE)
    recorder.strike(4, "taken again")
    text = "The zero-flow pressure moved by +1.4 Pa during the points."
    recorder.flag(Flag("zero-drift", Severity.ATTENTION, text, clock.utc()))
    recorder.end_test("stopped")
    job.close()
    return where


@pytest.fixture
def job(path: Path) -> Iterator[Job]:
    job = Job.open(path, VirtualClock(START), read_only=True)
    yield job
    job.close()


def texts(value: object) -> Iterator[str]:
    """Yield every text of a document; names of files and of tones are none."""
    if isinstance(value, str):
        yield value
    elif isinstance(value, dict):
        for name, item in value.items():
            if name not in ("file", "tone", "logo", "author", "words", "description") or isinstance(item, list):
                yield from texts(item)
    elif isinstance(value, list | tuple):
        for item in value:
            yield from texts(item)


def left_in_english(printed: str, language: Language) -> list[str]:
    """Return the messages, and parts of messages with values, that stand in a text as they are in English.

    A single short word may be one of the other language, too.
    """
    found = ENGLISH_WORDS.findall(printed)
    for message, words in language.messages.items():
        for part in PLACE.split(message):
            bare = part.strip(" .,:;()")
            told = " " in bare or len(bare) > 9
            if (
                told
                and bare in printed
                and bare not in words
                and re.search(rf"(?<!\w){re.escape(bare)}(?!\w)", printed)
            ):
                found.append(bare)
    return found


def full(job: Job, language: Language) -> ReportContent:
    old = Calibration(date(2024, 1, 1))
    middle = RangeEntry("middle", PowerLaw(183.0, 0.498), 8, 250, calibration=old)
    register = Register((Equipment("fan", "fan", "SF", "SF-0003", ranges=(middle,)),))
    return content_of(job, 1, register=register, mark=MARK, language=language)


@FOREIGN
def test_nothing_of_a_report_stays_english(job: Job, language: Language) -> None:
    made = full(job, language)
    printed = "\n".join(texts(report_document(made, Display())))
    assert left_in_english(printed, language) == []
    two = replace(content(OUT, IN, limit=1.601, name="Mühlgasse"), language=language)
    passive = replace(two.result.verdicts[0], limit=Limit("passive-house", "n50_per_h", 0.6))
    two = replace(two, result=replace(two.result, verdicts=(*two.result.verdicts, passive)))
    two = replace(two, test=replace(two.test, stage="1"))
    for other in (two, replace(bare(), language=language)):
        assert left_in_english("\n".join(texts(report_document(other, Display()))), language) == []
    assert TYPED[1:] in printed
    english = report_document(replace(made, language=language_of("en")), Display())
    assert len(left_in_english("\n".join(texts(english)), language)) > 60  # the search does find English


@FOREIGN
def test_a_report_in_another_language_is_as_sound_and_always_the_same(job: Job, language: Language) -> None:
    pdf = report_pdf(full(job, language))
    assert report_pdf(full(job, language)) == pdf
    check_margins(pdf)
    check_margins(report_pdf(replace(content(OUT, IN, count=12, limit=1.601), language=language), "US"))
    reader = PdfReader(io.BytesIO(pdf))
    root: Any = reader.trailer["/Root"]
    # The typesetter makes no file that breaks PDF/A-3a or PDF/UA-1; both ask for the language.
    assert root["/Lang"] == language.tag
    assert root["/MarkInfo"]["/Marked"]
    text = re.sub(r"\s+", " ", " ".join(page.extract_text() for page in reader.pages))
    assert "{" not in text
    assert re.search(r"\d,\d", text)
    assert language.day(START) in text
    assert (
        re.sub(r"\s", " ", language.messages["Page {page} of {pages}"].format(page=1, pages=len(reader.pages))) in text
    )
    assert "?" not in text.replace("? ", "")  # no letter is missing in the typeface


@FOREIGN
def test_the_report_of_no_test_in_another_language(tmp_path: Path, language: Language) -> None:
    clock = VirtualClock(START)
    job = Job.create(tmp_path / "n.airseam", clock, "Mühlgasse 8")
    job.edit_details(replace(job.details, language=language.tag))
    job.edit_house().note(Entry(clock.utc(), PreparationKind.SAFETY, "fires", "no", "S. Econd"))
    made = no_test_content(job, clock.utc())
    pdf = no_test_pdf(made)
    assert no_test_pdf(made) == pdf
    text = re.sub(r"\s+", " ", " ".join(page.extract_text() for page in PdfReader(io.BytesIO(pdf)).pages))
    assert language.messages["No test was possible"] in text
    assert left_in_english(text, language) == []
    job.close()


@FOREIGN
def test_hand_outs_in_another_language(job: Job, language: Language) -> None:
    made = [
        *trade_handouts(job, Display(), START, language),
        done_handout(job, START.date(), Display(), START, language),
    ]
    for item in made:
        printed = "\n".join(texts(item.document))
        assert left_in_english(printed, language) == []
        pdf = item.pdf()
        assert item.pdf() == pdf
        check_margins(pdf)
    last = "\n".join(texts(made[-1].document))
    assert "1\u202f500" in last
    assert "7,5" in last


def test_a_job_keeps_its_language_and_an_issued_report_its_own(path: Path, tmp_path: Path) -> None:
    job = Job.open(_copy(path, tmp_path), VirtualClock(START))
    job.edit_details(replace(job.details, language="de"))
    assert job.edits[-1].field == "language"
    first = issue(job, Wish(1, "T. Nobody"), Setting(), START)
    job.edit_details(replace(job.details, language="fr"))
    second = issue(job, Wish(1, "T. Nobody", "traduit"), Setting(), START)
    third = issue(job, Wish(1, "T. Nobody", "translated", language=language_of("en")), Setting(), START)
    roots: list[Any] = [
        PdfReader(io.BytesIO(job.issues.pdf(item.id))).trailer["/Root"] for item in (first, second, third)
    ]
    assert [root["/Lang"] for root in roots] == ["de", "fr", "en"]
    assert '"language": "de"' in first.document
    assert '"language": ""' in third.document
    job.close()


def test_the_command_line_writes_in_the_language_that_is_asked_for(
    path: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    for arguments in (
        ["report", str(path), "-o", str(tmp_path / "r.pdf")],
        ["handout", str(path), "--to", str(tmp_path)],
    ):
        assert airseam.main([*arguments, "--language", "fr"]) == 0
        assert airseam.main([*arguments, "--language", "xx"]) == 2
        assert "one of en, de, fr is needed" in capsys.readouterr().err
    for name in ("r.pdf", "leaks-bois.pdf"):
        root: Any = PdfReader(tmp_path / name).trailer["/Root"]
        assert root["/Lang"] == "fr"


def test_a_job_with_a_language_that_this_program_lacks_says_so(path: Path, tmp_path: Path) -> None:
    job = Job.open(_copy(path, tmp_path), VirtualClock(START))
    job.edit_details(replace(job.details, language="it"))
    with pytest.raises(InvalidInput, match="language is 'it': one of en, de, fr is needed"):
        content_of(job, 1)
    job.close()


def _copy(path: Path, folder: Path) -> Path:
    copy = folder / "copy.airseam"
    copy.write_bytes(path.read_bytes())
    return copy
