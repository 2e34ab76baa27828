"""The plots of the window: keys, zoom, what is drawn once, saved pictures."""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from tests.gui.conftest import Stage


def test_residuals_are_one_key_away(stage: Stage) -> None:
    window = stage.program.window
    window.setFocus()
    QTest.keyClick(window, Qt.Key.Key_R)
    assert window.test.plots.currentWidget() is window.test.residuals
    QTest.keyClick(window, Qt.Key.Key_R)
    assert window.test.plots.currentWidget() is window.test.flow


@pytest.mark.parametrize(("kind", "head"), [("png", b"\x89PNG"), ("svg", b"<?xml"), ("csv", b"direction,")])
def test_plots_are_saved(stage: Stage, tested: Path, tmp_path: Path, kind: str, head: bytes) -> None:
    stage.open_copy(tested)
    path = tmp_path / f"plot.{kind}"
    stage.program.intents.files.write_plot(stage.program.window.test.flow, kind, path)
    assert path.read_bytes().startswith(head)


def test_live_curves_are_made_once_and_thinned_out(stage: Stage) -> None:
    stage.connect()
    trace = stage.program.window.test.trace
    items = list(trace.item.items)
    stage.pass_time(30.0)
    assert list(trace.item.items) == items
    assert trace.curve.opts["autoDownsample"] is True
    assert trace.curve.opts["downsampleMethod"] == "peak"
    assert trace.curve.opts["clipToView"] is True
    assert len(trace.curve.getData()[0]) > 100


def test_a_zoomed_plot_stays_until_all_is_shown_again(stage: Stage) -> None:
    stage.connect()
    trace = stage.program.window.test.trace
    trace.box.scaleBy((0.5, 0.5))
    trace.touched = True
    zoomed = trace.box.viewRange()
    stage.pass_time(10.0)
    assert trace.box.viewRange() == zoomed
    stage.program.window.setFocus()
    QTest.keyClick(stage.program.window, Qt.Key.Key_A)
    assert trace.box.viewRange()[0] == pytest.approx([-180.0, 4.0])


def test_no_plot_can_be_zoomed_to_where_it_locks_up(stage: Stage) -> None:
    for plot in (stage.program.window.test.flow, stage.program.window.test.residuals, stage.program.window.test.trace):
        for factor in (1e9, 1e-9):
            plot.box.scaleBy((factor, factor))
            (x_low, x_high), (y_low, y_high) = plot.box.viewRange()
            assert 0 < x_high - x_low < 1e6
            assert 0 < y_high - y_low < 1e6
        plot.show_all()


def test_the_menu_of_a_plot_offers_to_save_it(stage: Stage) -> None:
    menu = stage.program.window.test.flow.menu()
    assert [item.text() for item in menu.actions() if item.text()] == [
        "Save as PNG…", "Save as SVG…", "Save the numbers as CSV…", "Show all",
    ]  # fmt: skip
    menu.deleteLater()
