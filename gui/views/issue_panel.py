"""The panel where a report is signed and issued, and an issued one is looked at again."""

from __future__ import annotations

from PySide6.QtCore import QSignalBlocker, Qt, Signal
from PySide6.QtWidgets import QLineEdit

from gui.viewmodels.issuing import IssuePicture
from gui.views.choices import Names
from gui.views.parts import Panel, button, label, row, set_text, wrapped
from gui.words import say


class IssuePanel(Panel):
    """The panel. `issue_asked` carries who signs and why it is issued again; `version_chosen` an id."""

    issue_asked = Signal(str, str)
    version_chosen = Signal(int)

    def __init__(self) -> None:
        """Make it empty."""
        super().__init__(say("Issue"))
        self._shown: IssuePicture | None = None
        self.version = Names()
        self.version.setAccessibleName(say("Version of the report"))
        self.version.activated.connect(lambda at: self.version_chosen.emit(int(self.version.itemData(at))))
        self.words = wrapped("small")
        self.signer = QLineEdit()
        self.signer.setAccessibleName(say("Who signs"))
        self.reason = QLineEdit()
        self.reason.setPlaceholderText(say("Why it is issued again"))
        self.reason.setAccessibleName(say("Why it is issued again"))
        self.issue = button(say("Issue"))
        self.issue.setAccessibleName(say("Sign and issue"))
        self.issue.clicked.connect(lambda: self.issue_asked.emit(self.signer.text(), self.reason.text()))
        self._who = label(say("Who signs"), "small")
        self._who.setBuddy(self.signer)
        for view in (self.version, self.words, self.reason, self._who):
            self.body.addWidget(view)
        sign = row(self.signer, self.issue)
        sign.setStretch(0, 1)
        self.body.addLayout(sign)

    def show_picture(self, picture: IssuePicture) -> None:
        """Show a moment; what is being typed is left alone."""
        if picture == self._shown:
            return
        before, self._shown = self._shown, picture
        if before is None or before.versions != picture.versions:
            with QSignalBlocker(self.version):
                self.version.clear()
                for number, words in picture.versions:
                    self.version.addItem(words, number)
                    self.version.setItemData(self.version.count() - 1, words, Qt.ItemDataRole.ToolTipRole)
        self.version.setCurrentIndex(max(self.version.findData(picture.chosen), 0))
        set_text(self.words, picture.note)
        if before is None or before.signer != picture.signer:
            self.signer.setText(picture.signer)
        self.version.setVisible(picture.again)
        self.reason.setVisible(picture.again and picture.can_issue)
        self._who.setVisible(picture.can_issue)
        self.signer.setVisible(picture.can_issue)
        self.issue.setVisible(picture.can_issue)

    def issued(self) -> None:
        """Forget the reason: it was given."""
        self.reason.clear()
