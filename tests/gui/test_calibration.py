"""What the register knows of a rig that is opened in the window: what has run out, what is corrected."""

from __future__ import annotations

from datetime import date

import pytest
from PySide6.QtWidgets import QLabel

from acquisition.correction import Correction
from acquisition.register import Calibration, Equipment
from acquisition.rig import Role
from gui.viewmodels.correction_draft import correction_text, read_corrections
from gui.viewmodels.item_draft import read_item, texts_of
from gui.viewmodels.moment import Place
from gui.viewmodels.register import RegisterModel
from gui.views.rig_place import EQUIPMENT
from tests.gui.boxes import cut_texts, overlaps
from tests.gui.conftest import Stage

DAY = date(2026, 3, 2)
SERIAL = "SG-0012"
"""The gauge of the simulated house."""


def type_gauge(stage: Stage, **texts: str) -> None:
    """Register the gauge of the simulated house by typing."""
    stage.program.screen.go_to(Place.RIG)
    rig = stage.program.window.rig
    rig.choose_page(EQUIPMENT)
    stage.draw()
    rig.register.add.click()
    for key, text in {"title": "Blue gauge", "serial": SERIAL, **texts}.items():
        stage.draw()
        line = rig.detail.fields[key].line
        assert line is not None
        line.setText(text)
        line.editingFinished.emit()
    stage.draw()


def said(stage: Stage) -> list[str]:
    """Return every sentence beside the links."""
    stage.program.screen.touch()
    stage.draw()
    found = stage.program.window.rig.live.findChildren(QLabel)
    return [label.text() for label in found if not label.isHidden() and label.text()]


def test_a_rig_that_is_opened_says_what_has_run_out_by_each_scheme(stage: Stage) -> None:
    type_gauge(stage, calibrated="2025-06-20", schemes="North 6; South 24")
    stage.connect()
    late = "Gauge: calibration overdue by North since 2025-12-20, 135 days."
    assert {f"✗ {late}", "! Gauge: calibration due on 2026-06-20, in 47 days."} <= set(said(stage))
    assert not [text for text in said(stage) if "South" in text]
    assert late in [label.text() for label in stage.program.window.notices.findChildren(QLabel)]


def test_a_rig_whose_calibrations_are_good_says_nothing(stage: Stage) -> None:
    type_gauge(stage, calibrated="2026-03-01")
    stage.connect()
    assert not [text for text in said(stage) if "calibration" in text]


def test_a_correction_that_was_typed_reaches_what_the_window_shows(stage: Stage) -> None:
    type_gauge(stage, calibrated="2026-03-01", corrected_on="2026-03-01", correction="-100 -97; 100 103")
    stage.connect()
    assert any(text.startswith("gauge.p1: corrected by the certificate of 2026-03-01") for text in said(stage))
    stage.pass_time(5.0)
    times, shown = stage.engine().live.since(Role.ENVELOPE, 0)
    # The simulated house stands near zero: without the 3 Pa it would not read like this.
    assert 2.0 < shown[-20:].mean() < 4.0
    assert len(times) > 20


def test_the_page_with_a_correction_is_whole_at_both_sizes(stage: Stage) -> None:
    type_gauge(stage, calibrated="2024-03-01", correction="0 0; 50 50.4", schemes="North")
    for width, height in ((1024, 700), (1440, 900)):
        stage.program.window.resize(width, height)
        for _ in range(3):
            stage.program.screen.touch()
            stage.draw()
        assert [*cut_texts(stage.program.window), *overlaps(stage.program.window)] == []


@pytest.mark.parametrize(
    "corrections",
    [
        (),
        (Correction("", DAY, ((-50.0, -50.4), (0.0, 0.0), (50.0, 50.25))),),
        (Correction("p1", DAY, polynomial=(0.1, 1.002)), Correction("p2", DAY, ((0.0, 0.0), (50.0, 50.4)))),
    ],
)
def test_corrections_read_back_as_they_were_typed(corrections: tuple[Correction, ...]) -> None:
    assert read_corrections(correction_text(corrections), DAY, ".") == corrections
    item = Equipment("g", "gauge", "Gauge", calibration=Calibration(DAY), corrections=corrections)
    assert read_item("g", texts_of(item), ".") == (item, {})


@pytest.mark.parametrize(
    ("key", "text", "words"),
    [
        ("correction", "0 0; 50", "shown and true Pa"),
        ("correction", "0 0; 50 5", "within 15 Pa"),
        ("correction", "p1: 0 0; 50 50 | p1: 0 0; 50 50", "one for each"),
        ("corrected_on", "yesterday", "a day such as"),
        ("schemes", "24", "a name and its months"),
        ("schemes", "North long", "a number is needed"),
    ],
)
def test_what_cannot_be_used_is_said_at_its_field(key: str, text: str, words: str) -> None:
    model = RegisterModel()
    model.add("gauge")
    for field, good in (("calibrated", "2026-03-01"), ("corrected_on", "2026-03-01"), ("correction", "0 0; 50 50,4")):
        model.edit(field, good, ",")
    model.edit(key, text, ",")
    picture = model.picture(DAY, ",").item
    assert picture is not None
    assert words in picture.errors[key]
    kept = model.item()
    assert kept is not None
    assert kept.corrections == (Correction("", date(2026, 3, 1), ((0.0, 0.0), (50.0, 50.4))),)
