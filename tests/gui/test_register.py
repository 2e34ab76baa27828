"""The equipment register through the window: what is owned, how its calibration stands, two gauges on one hose."""

from __future__ import annotations

from datetime import date
from pathlib import Path

import pytest
from PySide6.QtWidgets import QLabel

from acquisition.register import Equipment, Register, load_register
from acquisition.register.curves import Polynomial, PowerLaw, Table
from acquisition.register.records import CheckPoint, FieldCheck
from gui.theme import Tone
from gui.viewmodels.item_draft import NUMBERS_WORDS, read_item, texts_of
from gui.viewmodels.moment import Place
from gui.viewmodels.register import RegisterModel
from gui.views.rig_place import EQUIPMENT, OWN
from tests.gui.boxes import cut_texts, overlaps
from tests.gui.conftest import Stage

DAY = date(2026, 5, 4)
FAN_RANGE = {"numbers": "183; 0,498", "min_pa": "8", "max_pa": "250"}


@pytest.fixture
def page(stage: Stage) -> Stage:
    """Return the window with the register open."""
    stage.program.screen.go_to(Place.RIG)
    stage.program.window.rig.choose_page(EQUIPMENT)
    settle(stage)
    return stage


def settle(stage: Stage) -> None:
    for _ in range(3):
        stage.program.screen.touch()
        stage.draw()


def kept(stage: Stage) -> Register:
    return load_register(stage.program.intents.files.home / "register.toml")


def type_into(stage: Stage, **texts: str) -> None:
    """Type into fields of the chosen item as a person does."""
    for key, text in texts.items():
        line = stage.program.window.rig.detail.fields[key].line
        assert line is not None
        line.setText(text)
        line.editingFinished.emit()
        settle(stage)


def add(stage: Stage, kind: str, title: str, **texts: str) -> None:
    page = stage.program.window.rig.register
    page.kind.setCurrentIndex(page.kind.findData(kind))
    page.add.click()
    settle(stage)
    type_into(stage, title=title, **texts)


def test_a_gauge_is_added_dated_and_kept(page: Stage) -> None:
    add(page, "gauge", "Blue gauge", serial="G-7", calibrated="4.6.2025")
    [item] = kept(page).equipment
    assert (item.kind, item.title, item.serial) == ("gauge", "Blue gauge", "G-7")
    assert item.calibration is not None
    assert item.calibration.due_date == date(2026, 6, 4)
    card = page.program.window.rig.register.cards[0]
    assert "due in 31 days" in card.accessibleName()
    assert "good until 2026-06-04" in card.accessibleName()


@pytest.mark.parametrize(
    ("calibrated", "state", "tone"),
    [
        ("2026-03-01", "in date", Tone.GOOD),
        ("2025-05-05", "due in 1 day", Tone.ATTENTION),
        ("2025-05-03", "ran out 1 day ago", Tone.BAD),
        ("2026-08-01", "dated in the future", Tone.ATTENTION),
        ("", "no calibration", Tone.ATTENTION),
    ],
)
def test_the_state_is_said_in_words(calibrated: str, state: str, tone: Tone) -> None:
    model = RegisterModel()
    model.add("gauge")
    model.edit("calibrated", calibrated, ".")
    card = model.picture(DAY, ".").cards[0]
    assert (card.state, card.tone) == (state, tone)


def test_what_cannot_be_used_has_a_sentence_at_its_field_and_is_not_kept(page: Stage) -> None:
    add(page, "gauge", "Blue gauge")
    type_into(page, calibrated="yesterday")
    words = [item.text() for item in page.program.window.rig.detail.findChildren(QLabel) if item.isVisible()]
    assert any("Calibration date is yesterday: a day such as 2026-05-04 is needed" in text for text in words)
    assert any(text.startswith("Not kept yet") for text in words)
    assert kept(page).equipment[0].calibration is None
    assert not page.program.window.rig.detail.take.isEnabled()
    page.program.window.rig.detail.undo.click()
    settle(page)
    line = page.program.window.rig.detail.fields["calibrated"].line
    assert line is not None
    assert line.text() == ""


def test_edits_and_a_removal_are_undone_and_done_again(page: Stage) -> None:
    add(page, "gauge", "Blue gauge", serial="G-7")
    page.program.window.rig.detail.remove.click()
    settle(page)
    assert kept(page).equipment == ()
    page.program.intents.undo()
    assert kept(page).equipment[0].serial == "G-7"
    page.program.intents.redo()
    assert kept(page).equipment == ()
    page.program.intents.undo()
    page.program.intents.undo()
    assert kept(page).equipment[0].serial == ""


def test_a_range_is_kept_once_its_calibration_is_whole_and_taken_into_the_rig(page: Stage) -> None:
    add(page, "fan", "Long fan", calibrated="2026-01-10")
    detail, edit = page.program.window.rig.detail, page.program.intents.register.edit
    detail.add_range.click()
    settle(page)
    assert kept(page).equipment[0].ranges == ()
    for key, text in FAN_RANGE.items():
        edit(f"range.0.{key}", text)
    settle(page)
    [entry] = kept(page).equipment[0].ranges
    assert entry.curve == PowerLaw(183.0, 0.498)
    assert (entry.min_pa, entry.max_pa, entry.reference_density_kg_m3) == (8.0, 250.0, 1.2041)
    edit("profile", "scpi-fan")
    settle(page)
    detail.take.click()
    settle(page)
    spec = page.program.screen.rig.spec
    assert (spec.fan, [item.name for item in spec.ranges], spec.fitted) == ("fan", ["range 1"], "range 1")
    assert page.program.window.rig.pages.currentIndex() == OWN
    page.program.screen.rig.undo()
    assert page.program.screen.rig.spec.ranges == ()


@pytest.mark.parametrize(
    ("curve", "numbers", "expected"),
    [
        ("power", "183; 0.5", PowerLaw(183.0, 0.5)),
        ("polynomial", "20; 12,5; -0.004", Polynomial((20.0, 12.5, -0.004))),
        ("root", "1; 180", Polynomial((1.0, 180.0), of_root=True)),
        ("table", "8 510; 50 1290; 250 2880", Table(((8.0, 510.0), (50.0, 1290.0), (250.0, 2880.0)))),
    ],
)
def test_each_kind_of_curve_is_read_and_written_alike(curve: str, numbers: str, expected: object) -> None:
    model = RegisterModel()
    model.add("fan")
    model.add_range()
    for key, text in (*FAN_RANGE.items(), ("curve", curve), ("numbers", numbers)):
        model.edit(f"range.0.{key}", text, ",")
    item = model.item()
    assert item is not None
    assert item.ranges[0].curve == expected
    assert read_item(item.id, texts_of(item), ".") == (item, {})
    assert curve in NUMBERS_WORDS


@pytest.mark.parametrize(
    ("field", "text", "said"),
    [
        ("numbers", "183", "coefficient; exponent"),
        ("numbers", "-3; 0.5", "coefficient; exponent"),
        ("min_pa", "0", "greater than 0"),
        ("max_pa", "5", "more than 8 Pa is needed"),
        ("density", "dense", "a number is needed"),
    ],
)
def test_a_wrong_calibration_names_what_is_needed(field: str, text: str, said: str) -> None:
    model = RegisterModel()
    model.add("fan")
    model.add_range()
    for key, good in FAN_RANGE.items():
        model.edit(f"range.0.{key}", good, ".")
    model.edit(f"range.0.{field}", text, ".")
    picture = model.picture(DAY, ".").item
    assert picture is not None
    assert said in picture.ranges[0].errors[field]
    assert picture.unkept


def test_the_field_checks_of_a_gauge_are_drawn_over_time(page: Stage) -> None:
    add(page, "gauge", "Blue gauge", calibrated="2026-01-10")
    model = page.program.screen.register
    for month, apart_pa in ((1, 0.1), (3, 0.25), (5, 0.6)):
        points = (CheckPoint(0.0, 0.0, 0.5), CheckPoint(50.0, 50.0 + apart_pa, 0.5))
        assert model.add_check(FieldCheck(date(2026, month, 2), model.chosen, "other", points))
    settle(page)
    drawn = page.program.window.rig.detail.history
    assert not drawn.isHidden()
    assert [mark.share for mark in drawn.marks] == pytest.approx([0.2, 0.5, 1.2])
    assert drawn.accessibleDescription().endswith("2026-05-02: 120% of what is allowed")
    drawn.resize(300, 108)
    picture = drawn.grab().toImage()
    tones = {picture.pixelColor(x, y).name() for x in range(picture.width()) for y in range(picture.height())}
    look = page.program.window.look
    assert {look.colour(Tone.GOOD).name(), look.colour(Tone.BAD).name()} <= tones


def test_a_certificate_is_copied_beside_the_register(page: Stage, tmp_path: Path) -> None:
    add(page, "gauge", "Blue gauge", calibrated="2026-01-10")
    paper = tmp_path / "paper.pdf"
    paper.write_bytes(b"invented certificate")
    page.program.intents.register.keep_certificate(paper)
    settle(page)
    calibration = kept(page).equipment[0].calibration
    assert calibration is not None
    assert calibration.certificate == "paper.pdf"
    assert (tmp_path / "certificates" / "paper.pdf").read_bytes() == b"invented certificate"


def test_a_damaged_register_is_said_and_left_alone(page: Stage, tmp_path: Path) -> None:
    path = tmp_path / "broken" / "register.toml"
    path.parent.mkdir()
    path.write_text("format = 7\n", "utf-8")
    page.program.intents.register.open(path)
    page.program.window.rig.register.add.click()
    settle(page)
    assert path.read_text("utf-8") == "format = 7\n"
    assert "left as it is" in page.program.screen.register.trouble


def test_the_page_is_whole_at_both_sizes(page: Stage) -> None:
    add(page, "gauge", "The gauge with the longest name that anybody would ever give to a gauge", calibrated="x")
    add(page, "fan", "Long fan", calibrated="2024-01-10")
    page.program.window.rig.detail.add_range.click()
    for width, height in ((1024, 700), (1440, 900)):
        page.program.window.resize(width, height)
        settle(page)
        assert [*cut_texts(page.program.window), *overlaps(page.program.window)] == []


def test_equipment_without_a_use_in_a_rig_says_so(page: Stage) -> None:
    sentence = page.program.screen.rig.take_equipment(Equipment("other-1", "other", "Smoke pen"))
    assert sentence == "Smoke pen has neither a profile nor flow ranges: choose its profile first."
