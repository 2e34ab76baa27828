"""What goes into other hands: a document for each trade with photos and pins, and what was done on a day."""

from __future__ import annotations

import io
from datetime import UTC, date, datetime
from pathlib import Path
from typing import Any

import pytest
from PIL import Image
from pypdf import PdfReader

import airseam
from acquisition.job import Job, SealingMark, SealingMarkKind
from acquisition.report.handout import done_handout, trade_handouts
from acquisition.sealing.leaks import Drop, Leak, LeakStatus, Pin
from acquisition.told.sealing import leak_table
from acquisition.told.texts import plus_minus
from analysis.errors import InvalidInput
from analysis.records import Estimate
from analysis.sealing.change import Sureness
from analysis.units import Display, Quantity
from drivers.clock import VirtualClock

START = datetime(2026, 5, 4, 9, 0, tzinfo=UTC)
LONG = "behind the stair on the way to the upper floor, near the old chimney, " * 5
SI = Display()


@pytest.fixture(scope="module")
def path(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Return a job with four leaks of two trades, photos and a plan with pins; nobody changes it."""
    clock = VirtualClock(START)
    where = tmp_path_factory.mktemp("handout") / "a.airseam"
    job = Job.create(where, clock, "Mill Row 8")
    picture = io.BytesIO()
    Image.new("RGB", (300, 200), (120, 140, 160)).save(picture, "PNG")
    photo = job.edit_house().add_photo("leak 1", "hatch.png", picture.getvalue(), clock.utc())
    plan = job.edit_house().add_photo("plan", "ground floor.png", picture.getvalue(), clock.utc())
    pins = (Pin(photo.id, 0.5, 0.5), Pin(plan.id, 0.2, 0.8))
    register = job.edit_leaks()
    for leak in (
        Leak("attic-access", room="landing", trade="Carpenter", photos=(photo.id,), pins=pins, status=LeakStatus.SEALED,
             minutes=12.0, material="strip"),
        Leak("pipe", room="bathroom", trade="Plumber #*[x]_$", note=LONG),
        Leak("rim-joist", trade="Carpenter", size_guess_m3_h=60.0, status=LeakStatus.SEALED, minutes=30.0),
        Leak("window"),
    ):  # fmt: skip
        register.add(leak, clock.utc())
    for number, change in ((1, -38.0), (3, -1.0)):
        register.mark(SealingMark(clock.utc(), clock.now_ns(), SealingMarkKind.STARTS, number))
        register.mark(SealingMark(clock.utc(), clock.now_ns() + 1, SealingMarkKind.DONE, number))
        sure = Sureness.SURE if change < -5 else Sureness.NOT_SURE
        drop = Drop(500.0, 500.0 + change, Estimate(change, change - 6.0, change + 6.0), 9.0, sure)
        register.measured(number, drop, clock.utc())
    job.close()
    return where


@pytest.fixture
def job(path: Path) -> Job:
    return Job.open(path, VirtualClock(START), read_only=True)


def text_of(pdf: bytes) -> str:
    words = " ".join(page.extract_text() for page in PdfReader(io.BytesIO(pdf)).pages)
    return " ".join(words.replace("\u200b", "").split())


def test_each_trade_gets_its_own_leaks_with_photos_and_pins(job: Job) -> None:
    made = {item.stem: item for item in trade_handouts(job, SI, START)}
    assert sorted(made) == ["leaks-carpenter", "leaks-nobody-yet", "leaks-plumber-x"]
    carpenter = made["leaks-carpenter"]
    text = text_of(carpenter.pdf())
    assert "landing: attic hatch or stair" in text
    assert "bathroom" not in text
    assert "0 to seal, 2 sealed or left" in text
    assert sorted(carpenter.pictures) == ["photo-1.svg", "photo-2.svg"]
    pages: Any = carpenter.document["pages"]
    (page,) = pages
    first = page["leaks"][0]["photos"][0]
    # The picture is 3 to 2 and 78 mm wide; its pin stands in the middle.
    assert (first["width"], first["height"]) == (pytest.approx(78.0), pytest.approx(52.0))
    assert (first["pins"][0]["x"], first["pins"][0]["y"]) == (pytest.approx(39.0), pytest.approx(26.0))
    assert page["plans"][0]["pins"][0]["words"] == "1"
    plumber = text_of(made["leaks-plumber-x"].pdf())
    # What people typed is printed, never obeyed.
    assert "Plumber #*[x]_$" in plumber
    assert "near the old chimney" in plumber
    assert carpenter.pdf() == carpenter.pdf()


def test_what_was_done_agrees_with_the_register_to_the_digit(job: Job) -> None:
    text = text_of(done_handout(job, date(2026, 5, 4), SI, START).pdf())
    assert "2 leaks sealed in 42 minutes of work" in text
    assert "strip, 12 min of work" in text
    assert "Material: strip" in text
    register = job.leaks
    for number in (1, 3):
        brought = plus_minus(register.drops[number].difference_m3_h, Quantity.FLOW, SI)
        assert brought in text
        (row,) = [item for item in leak_table(register.leaks, register.drops, SI).rows if item.cells[0] == str(number)]
        assert row.cells[4].startswith(brought)
    # The sum of independent intervals adds in quadrature (JCGM 100, 5.1): 6 * 2**0.5 = 8.5.
    assert "−39 ± 8" in text or "−39.0 ± 8.5" in text
    with pytest.raises(InvalidInput, match="nothing was marked as sealed"):
        done_handout(job, date(2026, 5, 5), SI, START)


def test_the_command_writes_and_says_where(path: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert airseam.main(["handout", str(path), "--to", str(tmp_path / "out")]) == 0
    assert [Path(line).name for line in capsys.readouterr().out.split()] == [
        "leaks-carpenter.pdf",
        "leaks-plumber-x.pdf",
        "leaks-nobody-yet.pdf",
    ]
    assert airseam.main(["handout", str(path), "--to", str(tmp_path), "--done", "2026-05-04"]) == 0
    assert (tmp_path / "done-2026-05-04.pdf").read_bytes().startswith(b"%PDF")
    assert airseam.main(["handout", str(path), "--to", str(tmp_path), "--done", "soon"]) == 2
    assert "a day is needed" in capsys.readouterr().err
