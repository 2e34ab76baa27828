"""The Report place: the pages as they will be saved, and what they lack."""

from __future__ import annotations

from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtGui import QImage, QPixmap, QResizeEvent
from PySide6.QtWidgets import (
    QButtonGroup,
    QFrame,
    QHBoxLayout,
    QLabel,
    QPushButton,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from gui.theme import GAP_8, GAP_12, GAP_16, SIGNS, Tone
from gui.viewmodels.issuing import IssuePicture
from gui.viewmodels.report_place import Missing, ReportPicture
from gui.views.choices import Choice, Names
from gui.views.issue_panel import IssuePanel
from gui.views.parts import Panel, button, column, label, row, set_text, wrapped
from gui.views.scrolled import scrolled
from gui.words import say

SIDE_WIDTH = 300 + 2 * GAP_8
"""With room for the scroll bar of a small window."""
MOST_WIDTH = 900
"""A page is not shown wider than this; it would only become harder to take in."""


class Page(QLabel):
    """One page, scaled to the width there is, sharp on any screen."""

    def __init__(self) -> None:
        """Make it empty."""
        super().__init__()
        self._image = QImage()
        self.setAlignment(Qt.AlignmentFlag.AlignHCenter)
        self.setProperty("role", "page")

    def show_page(self, png: bytes, number: int, count: int) -> None:
        """Show a page."""
        self._image = QImage.fromData(png)
        self.setAccessibleName(say("Page {number} of {count} of the report", number=number, count=count))

    def fit(self, width: int) -> None:
        """Scale to a width."""
        if self._image.isNull() or width < 1:
            return
        ratio = self.devicePixelRatioF()
        target = QSize(round(width * ratio), round(width * ratio * self._image.height() / self._image.width()))
        mode = Qt.TransformationMode.SmoothTransformation
        scaled = self._image.scaled(target, Qt.AspectRatioMode.IgnoreAspectRatio, mode)
        scaled.setDevicePixelRatio(ratio)
        self.setPixmap(QPixmap.fromImage(scaled))


class Preview(QScrollArea):
    """All pages, one below the other."""

    def __init__(self) -> None:
        """Make it empty."""
        super().__init__()
        self._pages: list[Page] = []
        self._shown: tuple[bytes, ...] = ()
        self._box = QVBoxLayout()
        self._box.setSpacing(GAP_16)
        self._box.setContentsMargins(0, 0, GAP_8, 0)
        self._box.setAlignment(Qt.AlignmentFlag.AlignTop | Qt.AlignmentFlag.AlignHCenter)
        inside = QWidget()
        inside.setProperty("role", "scrolled")
        inside.setLayout(self._box)
        self.setWidget(inside)
        self.setWidgetResizable(True)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setAccessibleName(say("Report"))

    def show_pages(self, pages: tuple[bytes, ...]) -> None:
        """Show pages as PNG."""
        if pages == self._shown:
            return
        self._shown = pages
        while len(self._pages) < len(pages):
            made = Page()
            self._pages.append(made)
            self._box.addWidget(made)
        for at, page in enumerate(self._pages):
            page.setVisible(at < len(pages))
            if at < len(pages):
                page.show_page(pages[at], at + 1, len(pages))
        self._fit()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Scale the pages."""
        super().resizeEvent(event)
        self._fit()

    def _fit(self) -> None:
        for page in self._pages:
            page.fit(min(self.viewport().width() - GAP_8, MOST_WIDTH))


class MissingList(Panel):
    """What the report lacks; a click leads to the field."""

    jump_asked = Signal(str)

    def __init__(self) -> None:
        """Make it empty."""
        super().__init__(say("What is missing"))
        self._items: tuple[Missing, ...] = ()
        self._rows: list[tuple[QWidget, QLabel, QPushButton]] = []
        self._group = QButtonGroup(self)
        self._group.idClicked.connect(self._clicked)
        self._empty = wrapped("quiet")
        self._box = column(GAP_12)
        lines = column(GAP_8)
        lines.addWidget(self._empty)
        lines.addLayout(self._box)
        lines.addStretch(1)
        self.body.addLayout(lines, 1)

    def show_items(self, items: tuple[Missing, ...], *, report: bool) -> None:
        """Show what is missing; `report` whether there is a report at all."""
        self._items = items
        words = say("Nothing is missing.") if report else say("Once there is a report, what it lacks is listed here.")
        set_text(self._empty, "" if items else words)
        self._empty.setVisible(not items)
        while len(self._rows) < len(items):
            text, jump = wrapped(), button(say("Enter"), "slim")
            self._group.addButton(jump, len(self._rows))
            line = QHBoxLayout()
            line.setSpacing(GAP_8)
            line.addWidget(label(SIGNS[Tone.ATTENTION], "strong", Tone.ATTENTION))
            line.addWidget(text, 1)
            line.addWidget(jump)
            holder = QWidget()
            line.setContentsMargins(0, 0, 0, 0)
            holder.setLayout(line)
            self._box.addWidget(holder)
            self._rows.append((holder, text, jump))
        for at, (holder, text, jump) in enumerate(self._rows):
            holder.setVisible(at < len(items))
            if at < len(items):
                set_text(text, items[at].sentence)
                jump.setVisible(bool(items[at].field))
                jump.setAccessibleName(say("Enter it. {sentence}", sentence=items[at].sentence))

    def _clicked(self, at: int) -> None:
        if at < len(self._items):
            self.jump_asked.emit(self._items[at].field)


class ReportPlace(QWidget):
    """The place."""

    test_asked = Signal(int)
    language_asked = Signal(str)

    def __init__(self) -> None:
        """Lay it out."""
        super().__init__()
        self._shown: ReportPicture | None = None
        self.preview = Preview()
        self._why = wrapped("quiet")
        self._why.setAlignment(Qt.AlignmentFlag.AlignCenter)
        self.tests = Names()
        self.tests.setAccessibleName(say("Test of the report"))
        self.tests.activated.connect(self._test_chosen)
        self.language = Choice()
        self.language.setAccessibleName(say("Language of the report"))
        self.language.activated.connect(lambda at: self.language_asked.emit(str(self.language.itemData(at))))
        self.save = button(say("Save as PDF"))
        self.csv = button(say("CSV"), "slim")
        self.json = button(say("JSON"), "slim")
        self.hpxml = button(say("HPXML"), "slim")
        for view, words in (
            (self.csv, say("the tables as CSV")),
            (self.json, say("the test as JSON")),
            (self.hpxml, say("the air infiltration as HPXML")),
        ):
            view.setAccessibleName(say("Export {words}", words=words))
            view.setToolTip(say("Export {words}", words=words))
        self.trades, self.done = button(say("Leaks by trade…"), "slim"), button(say("Done today…"), "slim")
        for view, words in (
            (self.trades, say("Save a page of leaks for each trade, with photos and pins")),
            (self.done, say("Save what was sealed today, before and after")),
        ):
            view.setAccessibleName(words)
            view.setToolTip(words)
        self.missing = MissingList()
        self.issue = IssuePanel()
        actions = Panel(say("Report"))
        actions.body.addWidget(self.tests)
        written = row(self.language, self.save)
        written.setStretch(0, 1)
        actions.body.addLayout(written)
        actions.body.addLayout(row(self.csv, self.json, self.hpxml))
        actions.body.addLayout(row(self.trades, self.done))
        side = column(GAP_12)
        side.addWidget(actions)
        side.addWidget(self.issue)
        side.addWidget(self.missing, 1)
        beside = scrolled(side, say("Save, issue, and what is missing"))
        beside.setFixedWidth(SIDE_WIDTH)
        paper = Panel(say("As it will be saved"))
        paper.body.addWidget(self._why, 1)
        paper.body.addWidget(self.preview, 1)
        box = QHBoxLayout()
        box.setContentsMargins(GAP_16, GAP_16, GAP_16 + 4, GAP_12)
        box.setSpacing(GAP_12)
        box.addWidget(paper, 1)
        box.addWidget(beside)
        self.setLayout(box)

    def show_picture(self, picture: ReportPicture, issue: IssuePicture) -> None:
        """Show a moment."""
        self.issue.show_picture(issue)
        if picture == self._shown:
            return
        self._shown = picture
        self._show_tests(picture)
        self._show_language(picture)
        self.preview.show_pages(picture.pages)
        self.preview.setVisible(bool(picture.pages))
        making = "" if picture.pages else say("The page is being set…")
        set_text(self._why, picture.why or making)
        self._why.setVisible(not picture.pages)
        self.save.setEnabled(picture.can_save)
        for view in (self.csv, self.json, self.hpxml):
            view.setEnabled(picture.can_export)
        for view in (self.trades, self.done):
            view.setVisible(picture.leaks)
        self.missing.show_items(picture.missing, report=picture.can_save)

    def _show_tests(self, picture: ReportPicture) -> None:
        self.tests.setVisible(bool(picture.tests))
        shown = tuple((self.tests.itemData(at), self.tests.itemText(at)) for at in range(self.tests.count()))
        if shown != picture.tests:
            self.tests.clear()
            for number, text in picture.tests:
                self.tests.addItem(text, number)
        at = self.tests.findData(picture.chosen)
        if at != self.tests.currentIndex():
            self.tests.setCurrentIndex(at)

    def _show_language(self, picture: ReportPicture) -> None:
        self.language.setVisible(bool(picture.languages))
        shown = tuple((self.language.itemData(at), self.language.itemText(at)) for at in range(self.language.count()))
        if shown != picture.languages:
            self.language.clear()
            for tag, name in picture.languages:
                self.language.addItem(name, tag)
        self.language.setCurrentIndex(self.language.findData(picture.language))
        self.language.setEnabled(picture.can_choose)
        free = say("What the report is written in, whatever the language of the window.")
        self.language.setToolTip(free if picture.can_choose else say("An issued report keeps its language."))

    def _test_chosen(self, at: int) -> None:
        self.test_asked.emit(int(self.tests.itemData(at)))
