"""What stands below the points: tabs, and the part that was chosen."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QButtonGroup, QStackedWidget, QWidget

from gui.theme import GAP_4, GAP_8
from gui.viewmodels.details import Choices, Detail, DetailPicture
from gui.views.check_list import CheckList
from gui.views.choices import Choice
from gui.views.parts import Panel, button, column, row
from gui.views.tables_view import TablesView
from gui.words import say


class DetailPanel(Panel):
    """The panel. `chosen` carries the part; `method_chosen` and `fit_chosen` an id, empty for the planned one."""

    chosen = Signal(object)
    method_chosen = Signal(str)
    fit_chosen = Signal(str)

    def __init__(self) -> None:
        """Make it empty."""
        super().__init__()
        self.title.hide()
        self.note.hide()
        self.tabs = QButtonGroup(self)
        self.head.setSpacing(GAP_4)
        for at, detail in enumerate(Detail):
            tab = button(detail.word, "tab")
            tab.setCheckable(True)
            self.tabs.addButton(tab, at)
            self.head.insertWidget(at, tab)
        self.head.addStretch(1)
        self.tabs.idClicked.connect(self._tab_clicked)
        self.checks = CheckList()
        self.tables = TablesView(say("Numbers in detail"), titled=False)
        self.method, self.fit = Choice(), Choice()
        self.method.setAccessibleName(say("Method to look at the result by"))
        self.fit.setAccessibleName(say("Fit to look at the result by"))
        for choice, signal in ((self.method, self.method_chosen), (self.fit, self.fit_chosen)):
            choice.setProperty("role", "slim")
            choice.setMinimumContentsLength(8)
            choice.setSizeAdjustPolicy(Choice.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
            choice.activated.connect(lambda at, choice=choice, signal=signal: signal.emit(str(choice.itemData(at))))
        self._choices = QWidget()
        beside = row(self.method, self.fit, gap=GAP_8)
        self._choices.setLayout(beside)
        page = QWidget()
        lines = column(GAP_8)
        lines.addWidget(self._choices)
        lines.addWidget(self.tables, 1)
        page.setLayout(lines)
        self.stack = QStackedWidget()
        self.stack.addWidget(self.checks)
        self.stack.addWidget(page)
        self.body.addWidget(self.stack, 1)

    def set_folded(self, folded: bool) -> None:
        """Show the tabs only."""
        self.fold(folded, (self.stack,))

    def show_picture(self, picture: DetailPicture) -> None:
        """Show a moment."""
        for at, (detail, text) in enumerate(zip(Detail, picture.tabs, strict=True)):
            tab = self.tabs.button(at)
            tab.setChecked(detail is picture.chosen)
            if tab.text() != text:
                tab.setText(text)
        self.checks.show_picture(picture.checks)
        self.stack.setCurrentIndex(0 if picture.chosen is Detail.CHECKS else 1)
        self.tables.show_tables(picture.tables)
        self._choices.setVisible(picture.methods is not None)
        if picture.methods is not None and picture.fits is not None:
            _show_choices(self.method, picture.methods)
            _show_choices(self.fit, picture.fits)

    def _tab_clicked(self, at: int) -> None:
        self.chosen.emit(list(Detail)[at])


def _show_choices(view: Choice, choices: Choices) -> None:
    shown = tuple((view.itemData(at), view.itemText(at)) for at in range(view.count()))
    if shown != choices.options:
        view.clear()
        for value, words in choices.options:
            view.addItem(words, value)
    view.setCurrentIndex(max(view.findData(choices.chosen), 0))
    view.setToolTip(view.currentText())
