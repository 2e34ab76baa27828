"""The Tab key goes through every place as one reads: left to right, downwards, column by column, and comes back."""

from __future__ import annotations

from itertools import pairwise
from pathlib import Path

from PySide6.QtCore import QPoint, Qt
from PySide6.QtWidgets import QAbstractScrollArea, QWidget

from gui.viewmodels.moment import Place
from gui.viewmodels.over import Over
from tests.gui.conftest import Stage
from tests.gui.test_looks import settle

NEAR = 14
"""Pixels within which two widgets stand in one row or one column."""


def stops(page: QWidget) -> list[QWidget]:
    """Return what the Tab key stops at within a page, in its order."""
    found: list[QWidget] = []
    widget = page.nextInFocusChain()
    while widget is not None and widget is not page:
        takes = bool(widget.focusPolicy() & Qt.FocusPolicy.TabFocus) and widget.isEnabled() and widget.isVisible()
        scrolls = isinstance(widget, QAbstractScrollArea) and widget.property("role") is None
        if takes and page.isAncestorOf(widget) and widget.focusProxy() is None and not scrolls:
            found.append(widget)
        widget = widget.nextInFocusChain()
    return found


def backwards(order: list[QWidget], page: QWidget) -> list[str]:
    """Return every step that goes against the way one reads: up without going right, or left within a row."""
    wrong = []
    for one, other in pairwise(order):
        here, there = one.mapTo(page, QPoint(0, 0)), other.mapTo(page, QPoint(0, 0))
        across, down = there.x() - here.x(), there.y() - here.y()
        if (down < -NEAR and across <= NEAR) or (abs(down) <= NEAR and across < 0):
            wrong.append(f"from {_name(one)} at {here.toTuple()} to {_name(other)} at {there.toTuple()}")
    return wrong


def _name(widget: QWidget) -> str:
    return f"{type(widget).__name__} {widget.accessibleName() or widget.property('text')!r}"


def test_tab_goes_through_every_place_as_one_reads(stage: Stage, tested: Path) -> None:
    stage.open_copy(tested)
    stage.connect()
    window, seen, wrong = stage.program.window, 0, []
    for place in Place:
        stage.program.screen.go_to(place)
        settle(stage)
        order = stops(window.places[place])
        wrong += [f"{place}: {step}" for step in backwards(order, window.places[place])]
        seen += len(order)
    for over in Over:
        stage.program.screen.show_over(over)
        settle(stage)
        order = stops(window.over[over])
        wrong += [f"{over}: {step}" for step in backwards(order, window.over[over])]
        seen += len(order)
    assert "\n".join(wrong) == ""
    assert seen > 120
