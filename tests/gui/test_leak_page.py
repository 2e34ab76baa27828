"""The leaks in the window: described, photographed, pinned, taken back; and what is left to the target."""

from __future__ import annotations

import io

import pytest
from PIL import Image
from PySide6.QtCore import QMimeData, QUrl
from PySide6.QtGui import QGuiApplication, QImage

from acquisition.sealing.leaks import Drop, Leak, LeakStatus
from analysis.records import Estimate
from analysis.sealing.change import Sureness
from gui.viewmodels.hunt import HuntTab
from gui.viewmodels.moment import Place
from gui.views.leak_page import dropped_picture
from tests.gui.boxes import cut_texts, overlaps
from tests.gui.conftest import Stage

LONG = "the corner behind the stair on the way to the upper floor, near the old chimney, seen from the north " * 3


def picture() -> bytes:
    made = io.BytesIO()
    Image.new("RGB", (40, 30), (90, 120, 150)).save(made, "PNG")
    return made.getvalue()


def leak(stage: Stage, number: int) -> Leak:
    assert stage.program.desk.job is not None
    return stage.program.desk.job.leaks.leaks[number]


def test_a_leak_is_described_and_taken_back(stage: Stage) -> None:
    program = stage.program
    intents, page = program.intents.leaks, program.window.hunt.leaks
    intents.new_leak()
    stage.draw()
    assert program.screen.place is Place.HUNT
    assert program.screen.hunt.tab is HuntTab.LEAKS
    for name, text in (
        ("part", "attic-access"), ("room", "landing"), ("trade", "carpenter"), ("size_guess_m3_h", "40"),
        ("minutes", "12,5"), ("cost", "30"), ("status", "sealed"),
    ):  # fmt: skip
        intents.type_field(name, text.replace(",", program.screen.display.decimal_mark))
    described = leak(stage, 1)
    assert (described.place, described.trade) == ("landing: attic hatch or stair", "carpenter")
    assert (described.size_guess_m3_h, described.minutes, described.cost) == (40.0, 12.5, 30.0)
    assert described.status is LeakStatus.SEALED
    # What cannot be is said beside the field, nothing is lost.
    intents.type_field("minutes", "long")
    stage.draw()
    assert "Work is 'long'" in page.fields["minutes"]._message.text()
    assert leak(stage, 1).minutes == 12.5
    intents.type_field("minutes", "13")
    program.intents.undo()
    program.intents.undo()
    assert (leak(stage, 1).minutes, leak(stage, 1).status) == (12.5, LeakStatus.FOUND)
    assert page.list.item(0).text().startswith("1  landing: attic hatch or stair")
    intents.new_leak()
    program.intents.undo()
    assert program.desk.job is not None
    assert list(program.desk.job.leaks.leaks) == [1]


def test_the_report_place_leads_to_the_pages_for_the_trades(stage: Stage, monkeypatch: pytest.MonkeyPatch) -> None:
    program, report = stage.program, stage.program.window.report
    folder = program.intents.files.home / "pages"
    folder.mkdir()
    monkeypatch.setattr(program.intents.files, "ask_folder", lambda _, picked: picked(folder))
    program.screen.go_to(Place.REPORT)
    stage.draw()
    assert not report.trades.isVisibleTo(report)
    program.intents.leaks.new_leak()
    program.intents.leaks.type_field("trade", "carpenter")
    program.screen.go_to(Place.REPORT)
    stage.draw()
    assert report.trades.isVisibleTo(report)
    report.trades.click()
    (page,) = folder.iterdir()
    assert page.read_bytes().startswith(b"%PDF-")
    report.done.click()
    stage.draw()
    assert "nothing was marked as sealed" in " ".join(item.sentence for item in program.window.notices.notices)


def test_photos_and_pins_belong_to_a_leak(stage: Stage) -> None:
    program = stage.program
    intents, page = program.intents.leaks, program.window.hunt.leaks
    intents.take_photo("a.png", picture())
    stage.draw()
    assert "Choose the leak first" in program.window.notices.notices[0].sentence
    intents.new_leak()
    path = intents._files.home / "hatch.png"
    path.write_bytes(picture())
    data = QMimeData()
    data.setUrls([QUrl.fromLocalFile(str(path))])
    found = dropped_picture(data)
    assert found == ("hatch.png", picture())
    page.photo_dropped.emit(*found)
    stage.draw()
    assert leak(stage, 1).photos == (1,)
    page.pins.resize(200, 150)
    page.pinned.emit(1, 0.25, 0.5)
    stage.draw()
    assert [(pin.photo, pin.across, pin.down) for pin in leak(stage, 1).pins] == [(1, 0.25, 0.5)]
    copied = QImage(40, 30, QImage.Format.Format_RGB32)
    copied.fill(0x5A7896)
    QGuiApplication.clipboard().setImage(copied)
    page.paste.click()
    stage.draw()
    assert leak(stage, 1).photos == (1, 2)
    QGuiApplication.clipboard().setText("no picture")
    page.paste.click()
    stage.draw()
    assert any("What was copied is no picture" in item.sentence for item in program.window.notices.notices)
    page.photo_dropped.emit("broken.png", b"no picture")
    stage.draw()
    assert any("PNG or JPEG" in item.sentence for item in program.window.notices.notices)


def test_what_is_left_to_the_target(stage: Stage) -> None:
    program = stage.program
    job = program.desk.job
    assert job is not None
    stage.connect()
    program.screen.hunt.tab = HuntTab.LEFT
    program.screen.go_to(Place.HUNT)
    stage.draw()
    words = program.window.hunt.left._shown[0].notes[0]
    assert "No target" in words or "Hold a pressure" in words
    plan = job.draft()
    assert plan.building.volume_m3 is not None
    program.intents.edit("limit", "1.0")
    register = job.edit_leaks()
    register.add(Leak("pipe", status=LeakStatus.SEALED, minutes=30.0, cost=20.0), stage.clock.utc())
    change = Estimate(-40.0, -46.0, -34.0)
    register.measured(1, Drop(500.0, 460.0, change, 6.0, Sureness.SURE), stage.clock.utc())
    stage.program.screen.touch()
    stage.draw()
    work = program.window.hunt.left._shown[1]
    cells = {row.cells[0]: row.cells[1:] for row in work.rows}
    assert cells["Flow that went with the seals, m³/h"] == ("40", "34 to 46")
    assert cells["Flow that went in an hour of work, m³/h"][0] == "80"
    assert cells["Flow that went for each unit of money, m³/h"][0] == "2.00"


def test_long_names_and_many_leaks_are_whole(stage: Stage) -> None:
    program = stage.program
    job = program.desk.job
    assert job is not None
    register = job.edit_leaks()
    drop = Drop(500.0, 460.0, Estimate(-4.0, -9.0, 1.0), 6.0, Sureness.NOT_SURE)
    for at in range(12):
        register.add(Leak("attic-access", storey=LONG[:90], room=LONG, side="north", note=LONG), stage.clock.utc())
        if at % 2:
            register.measured(at, drop, stage.clock.utc())
    program.screen.hunt.chosen = 1
    for tab in HuntTab:
        for size in ((1024, 700), (1440, 900)):
            program.window.resize(*size)
            program.screen.hunt.tab = tab
            program.screen.go_to(Place.HUNT)
            for _ in range(3):
                program.screen.touch()
                stage.draw()
            assert [*cut_texts(program.window), *overlaps(program.window)] == [], tab
