"""How the window looks: every text whole, nothing on top of anything, readable in both themes, at every size."""

from __future__ import annotations

import os
import subprocess
import sys
from dataclasses import replace
from itertools import product
from pathlib import Path

import numpy as np
import pytest
from PySide6.QtCore import QCoreApplication, QPoint, QRect
from PySide6.QtGui import QColor, QImage, QPalette
from PySide6.QtWidgets import QLabel, QScrollArea
from pytestqt.qtbot import QtBot

from acquisition.snapshot import EngineState
from analysis.records import Direction
from analysis.units import Display, System
from gui.pictures import take_pictures
from gui.theme import TEXT_CONTRAST, Mode, contrast
from gui.viewmodels.moment import Place
from gui.viewmodels.over import Over
from gui.viewmodels.rig_place import SourceCard
from gui.views.choices import Choice
from gui.views.rail import LEAST_WORD, RailButton
from gui.views.rig_sources import RigSources
from gui.window import LEAST_HEIGHT, LEAST_WIDTH
from tests.gui.boxes import cut_texts, overlaps
from tests.gui.conftest import Stage

SIZES = ((LEAST_WIDTH, LEAST_HEIGHT), (1280, 800), (1440, 900))
LONG = "The long house behind the old mill at the end of the lane, second stairway, flat on the left, attic included"
ROOT = Path(__file__).parents[2]


def settle(stage: Stage) -> None:
    """Have everything drawn and laid out."""
    for _ in range(3):
        stage.program.screen.touch()
        stage.draw()


def look_everywhere(stage: Stage) -> list[str]:
    """Return what is cut or covered in any place, at any size, in either system of units."""
    program = stage.program
    found = []
    for width, height in SIZES:
        program.window.resize(width, height)
        for system in System:
            program.screen.display = Display(system, ",")
            for place in Place:
                program.screen.go_to(place)
                settle(stage)
                trouble = [*cut_texts(program.window), *overlaps(program.window)]
                found += [f"{place} {width} {system}: {item}" for item in trouble]
    return found


def look_over(stage: Stage) -> list[str]:
    """Return what is cut or covered in any page that lies over the places."""
    found = []
    for width, height in SIZES:
        stage.program.window.resize(width, height)
        for page in Over:
            stage.program.screen.show_over(page)
            settle(stage)
            trouble = [*cut_texts(stage.program.window), *overlaps(stage.program.window)]
            found += [f"{page} {width}: {item}" for item in trouble]
    stage.program.screen.over = None
    return found


def test_what_is_cut_or_covered_would_be_found(stage: Stage) -> None:
    stage.program.window.resize(1440, 900)
    settle(stage)
    panel = stage.program.window.test.details.checks
    words = panel._empty
    words.setMinimumWidth(0)
    words.setFixedHeight(3)
    settle(stage)
    assert any("label" in item and words.text() in item for item in cut_texts(stage.program.window))
    assert overlaps(stage.program.window) == []
    words.setFixedHeight(60)
    settle(stage)
    words.setGeometry(panel.title.geometry())
    assert overlaps(stage.program.window) != []


def test_a_drop_down_that_is_too_narrow_would_be_found_and_says_the_whole_of_its_text(stage: Stage) -> None:
    stage.program.screen.go_to(Place.JOB)
    settle(stage)
    choice = stage.program.window.job.fields["limit_quantity"].choice
    assert isinstance(choice, Choice)
    assert (cut_texts(stage.program.window), choice.cut_text()) == ([], "")
    choice.setFixedWidth(80)
    settle(stage)
    assert any("'Flow at 50 Pa per floor area'" in item for item in cut_texts(stage.program.window))
    assert choice.cut_text() == "Air changes at 50 Pa"
    choice.showPopup()
    widest = max(choice.fontMetrics().horizontalAdvance(choice.itemText(at)) for at in range(choice.count()))
    assert choice.view().width() > widest
    choice.hidePopup()


def test_nothing_is_cut_before_anything_is_connected(stage: Stage) -> None:
    assert look_everywhere(stage) == []


@pytest.mark.parametrize(
    "mode",
    # Themes differ in colours alone; that no other one cuts a text is looked at in the walks.
    [Mode.DARK, *(pytest.param(mode, marks=pytest.mark.walk) for mode in (Mode.LIGHT, Mode.SUNLIGHT))],
)
def test_every_theme_leaves_texts_whole(stage: Stage, tested: Path, mode: Mode) -> None:
    stage.open_copy(tested)
    stage.program.window.look.set_mode(mode)
    assert look_over(stage) == []
    stage.program.window.resize(LEAST_WIDTH, LEAST_HEIGHT)
    for place in Place:
        stage.program.screen.go_to(place)
        settle(stage)
        assert [*cut_texts(stage.program.window), *overlaps(stage.program.window)] == [], place


def test_the_pages_over_the_places_take_the_longest_texts(stage: Stage, tested: Path) -> None:
    stage.open_copy(tested)
    for field, text in (("name", LONG), ("address", "\n".join([LONG] * 5)), ("number_pattern", "{nobody}" + LONG)):
        stage.program.intents.office.keep(field, text)
    stage.program.window.typed.lines[Direction.DEPRESSURIZE].setPlainText(f"-60 {LONG}")
    stage.program.intents.edit("name", LONG)
    stage.program.intents.jobs.find()
    assert look_over(stage) == []


def test_many_simulated_houses_scroll_and_are_not_squeezed(qtbot: QtBot) -> None:
    sources = RigSources()
    qtbot.addWidget(sources)
    sources.resize(410, 420)
    sources.show()
    sources._have([SourceCard(str(at), "Invented house", "300 m³. Invented data.", False) for at in range(12)])
    QCoreApplication.processEvents()
    needs = [inside.minimumSize().height() for card in sources._cards if (inside := card.layout()) is not None]
    assert [card.height() >= need for card, need in zip(sources._cards, needs, strict=True)] == 12 * [True]
    assert sources._list.height() > 150
    assert sources.connect_button.geometry().bottom() < 420


@pytest.mark.walk
def test_nothing_is_cut_once_a_test_is_done(stage: Stage, tested: Path) -> None:
    stage.open_copy(tested)
    stage.connect()
    assert look_everywhere(stage) == []


@pytest.mark.walk
def test_nothing_is_cut_while_a_test_asks_runs_and_pauses(stage: Stage) -> None:
    stage.connect()
    stage.shorten()
    stage.press()
    assert look_everywhere(stage) == []
    stage.program.intents.go_to(Place.TEST)
    stage.draw()
    stage.press()
    stage.until(lambda now: now.result is not None)
    assert look_everywhere(stage) == []
    stage.program.desk.stop_fan()
    stage.until(lambda now: now.state is EngineState.PAUSED)
    assert look_everywhere(stage) == []


def test_nothing_is_cut_by_long_names_errors_and_warnings(stage: Stage, tested: Path) -> None:
    stage.open_copy(tested)
    stage.connect()
    for field, text in (
        ("name", LONG),
        ("stage", LONG),
        ("site", LONG),
        ("volume", "-4"),
        ("floor", "20"),
        ("indoor", "95"),
        ("targets", "60,50,40"),
        ("wind", "9"),
        ("limit_quantity", "qe50_m3_h_m2"),
        ("limit", "zero"),
    ):
        stage.program.intents.edit(field, text)
    rig = stage.program.screen.rig
    rig.add_instrument("scpi-gauge")
    rig.add_instrument("scpi-fan")
    rig.set_name(LONG)
    rig.add_range()
    rig.set_range(0, "exponent", "1.5")
    stage.program.window.rig.choose_page(1)
    assert look_everywhere(stage) == []


def test_long_names_end_in_an_ellipsis_and_are_whole_in_the_tool_tip(stage: Stage) -> None:
    stage.program.intents.edit("name", LONG)
    stage.draw()
    title = stage.program.window.ribbon._title
    assert title.text().endswith("…")
    assert title.toolTip() == LONG
    assert title.full == LONG


def test_the_key_sheet_is_whole(stage: Stage) -> None:
    for width, height in SIZES:
        stage.program.window.resize(width, height)
        stage.program.screen.keys_shown = True
        settle(stage)
        assert cut_texts(stage.program.window) == []


def test_every_label_stands_out_from_what_is_painted_below_it(stage: Stage, tested: Path) -> None:
    stage.open_copy(tested)
    stage.connect()
    checked = 0
    for mode, place in product((Mode.DARK, Mode.LIGHT, Mode.SUNLIGHT), Place):
        stage.program.window.look.set_mode(mode)
        stage.program.screen.go_to(place)
        settle(stage)
        picture = stage.program.window.grab().toImage()
        for item in stage.program.window.findChildren(QLabel):
            if not item.isVisible() or not item.text() or not item.isEnabled() or item.visibleRegion().isEmpty():
                continue
            ink = item.palette().color(QPalette.ColorRole.WindowText)
            ground = ground_of(picture, item)
            assert contrast(ink.name(), ground.name()) >= TEXT_CONTRAST, f"{item.text()!r} in {place}, {mode}"
            checked += 1
    assert checked > 300


def ground_of(picture: QImage, item: QLabel) -> QColor:
    """Return the colour that is painted most often below a label."""
    place = QRect(item.mapTo(item.window(), item.rect().topLeft()), item.size()).intersected(picture.rect())
    part = picture.copy(place).convertToFormat(QImage.Format.Format_RGB32)
    pixels = np.frombuffer(part.constBits(), np.uint32).reshape(part.height(), part.width())[::2, ::2]
    colours, counts = np.unique(pixels, return_counts=True)
    return QColor.fromRgb(int(colours[counts.argmax()]))


@pytest.mark.walk
@pytest.mark.parametrize("size", SIZES)
@pytest.mark.parametrize("system", System)
def test_pictures_of_every_place_in_every_theme_are_saved(
    stage: Stage, tested: Path, tmp_path: Path, size: tuple[int, int], system: System
) -> None:
    stage.open_copy(tested)
    stage.connect()
    modes = (Mode.DARK, Mode.LIGHT, Mode.SUNLIGHT)
    shots = take_pictures(stage.program, tmp_path / "pictures", modes=modes, size=size, system=system)
    names = sorted(f"{place}-{mode}.png" for place in Place for mode in modes)
    assert sorted(shot.path.name for shot in shots) == names
    images = {shot.path.stem: QImage(str(shot.path)) for shot in shots}
    assert {(image.width(), image.height()) for image in images.values()} == {size}
    grounds = {mode: images[f"test-{mode}"].pixelColor(98, 400).lightness() for mode in modes}
    assert grounds[Mode.DARK] < 40
    assert grounds[Mode.LIGHT] > 220
    assert grounds[Mode.SUNLIGHT] > 220
    # No two places look alike in any theme.
    assert len({bytes(image.constBits()) for image in images.values()}) == len(images)


def test_a_report_page_is_shown_on_the_screen(stage: Stage, tested: Path) -> None:
    stage.open_copy(tested)
    stage.program.screen.go_to(Place.REPORT)
    settle(stage)
    page = stage.program.window.report.preview._pages[0]
    assert page.isVisible()
    assert page.pixmap().width() > 400


def test_the_result_is_read_out(stage: Stage, tested: Path) -> None:
    stage.open_copy(tested)
    spoken = stage.program.window.test.result.accessibleName()
    assert spoken.startswith("1.7")
    assert "plus or minus" in spoken


def test_a_ten_minute_trace_is_drawn_in_a_fraction_of_a_frame(stage: Stage) -> None:
    """The work is counted and not timed: as many points reach the painter as there are pixels, not readings."""
    stage.connect()
    stage.pass_time(600.0)
    trace = stage.program.window.test.trace
    assert trace.picture is not None
    assert len(trace.picture.x_s) > 5900
    x, _ = trace.curve.getData()
    assert len(x) <= 6 * trace.box.width()


def test_a_still_moment_is_not_drawn_again(stage: Stage, monkeypatch: pytest.MonkeyPatch) -> None:
    stage.connect()
    drawn: list[object] = []
    monkeypatch.setattr(stage.program.bridge, "draw", drawn.append)
    stage.program.bridge.tick()
    for _ in range(10):
        stage.program.bridge.tick()
    assert len(drawn) <= 1
    stage.clock.wait_until(stage.clock.now_ns() + 150_000_000)
    stage.program.bridge.tick()
    assert len(drawn) >= 1


@pytest.mark.walk
@pytest.mark.parametrize("scale", [2, 3])
def test_nothing_is_cut_at_twice_and_three_times_the_scale(tmp_path: Path, scale: int) -> None:
    code = (
        "import sys; sys.argv = ['airseam']\n"
        "from pathlib import Path\n"
        "from drivers.clock import WallClock\n"
        "from gui.app import application, build, open_first_job\n"
        "from gui.errands import InlineErrands\n"
        "from gui.settings import SettingsFile\n"
        "from gui.pictures import take_pictures\n"
        "from gui.viewmodels.moment import Place\n"
        "from tests.gui.boxes import cut_texts, overlaps\n"
        "from PySide6.QtCore import QCoreApplication\n"
        f"folder = Path({str(tmp_path)!r})\n"
        "app = application()\n"
        "p = build(app, [], folder, WallClock(), errands=InlineErrands(), opener=None, settings=SettingsFile(None))\n"
        "open_first_job(p, None, folder)\n"
        "p.window.resize(1024, 700)\n"
        "p.window.show()\n"
        "found = []\n"
        "for place in Place:\n"
        "    p.screen.go_to(place)\n"
        "    for _ in range(3):\n"
        "        p.screen.touch(); p.bridge.tick(); QCoreApplication.sendPostedEvents()\n"
        "    found += cut_texts(p.window) + overlaps(p.window)\n"
        "shot = p.window.grab()\n"
        "print(shot.width(), shot.height(), found)\n"
        "p.desk.clear(lambda: None); p.window.may_close = True; p.window.close(); p.leave()\n"
    )
    env = {**os.environ, "QT_SCALE_FACTOR": str(scale), "QT_QPA_PLATFORM": "offscreen", "PYTHONPATH": str(ROOT)}
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, env=env, check=False, cwd=ROOT)
    assert done.stdout.strip() == f"{1024 * scale} {700 * scale} []", done.stderr
    assert done.returncode == 0


@pytest.mark.walk
def test_forced_and_system_themes_repaint_everything(stage: Stage) -> None:
    window = stage.program.window
    for mode, dark in ((Mode.LIGHT, False), (Mode.DARK, True)):
        window.look.set_mode(mode)
        settle(stage)
        QCoreApplication.sendPostedEvents()
        image = window.grab().toImage()
        assert (image.pixelColor(98, 400).lightness() < 100) is dark
        assert (QColor(window.look.theme.panel).lightness() < 100) is dark
        background = window.test.flow.plot.backgroundBrush().color()
        assert background.name() == QColor(window.look.theme.panel).name()


def test_a_theme_of_its_own_would_reach_the_plots(stage: Stage) -> None:
    look = stage.program.window.look
    look.theme = replace(look.theme, panel="#123456")
    look.changed.emit()
    assert stage.program.window.test.flow.plot.backgroundBrush().color().name() == "#123456"


def test_a_laptop_at_twice_the_size_scrolls_the_place_and_keeps_bar_and_button(stage: Stage) -> None:
    window = stage.program.window
    # What 1920 by 1080 leaves at 200 %.
    window.resize(960, 540)
    settle(stage)
    assert window.size().toTuple() == (960, 540)
    seen = QRect(QPoint(0, 0), window.size())
    for part in (window.ribbon.stop, window.next_bar.primary, *window.rail.findChildren(RailButton)):
        assert seen.contains(QRect(part.mapTo(window, QPoint(0, 0)), part.size()))
    assert all(view.height() >= LEAST_WORD for view in window.rail.findChildren(RailButton))
    (area,) = (view for view in window.findChildren(QScrollArea) if view.widget() is window.stack)
    assert area.horizontalScrollBar().maximum() == 0
    assert area.verticalScrollBar().maximum() > 0
    assert [*cut_texts(window), *overlaps(window)] == []
    window.resize(LEAST_WIDTH, LEAST_HEIGHT)
    settle(stage)
    assert area.verticalScrollBar().maximum() == 0
