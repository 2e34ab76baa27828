"""Choosing a file. Our own dialog, not the system's: STOP FAN is in it, and Esc stops the fan from here too."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QFileDialog, QGridLayout, QWidget

from gui.views.parts import StopButton
from gui.words import say


class FileDialog(QFileDialog):
    """Asks for one file or folder, without keeping the window from being used. `picked` carries the path."""

    picked = Signal(str)
    stop_asked = Signal()

    def __init__(self, parent: QWidget, title: str, folder: Path) -> None:
        """Begin in a folder."""
        super().__init__(parent, title, str(folder))
        self.setOption(QFileDialog.Option.DontUseNativeDialog)
        self.setOption(QFileDialog.Option.DontConfirmOverwrite)
        self.setModal(False)
        self.stop = StopButton()
        self.stop.clicked.connect(self.stop_asked)
        inside = self.layout()
        if isinstance(inside, QGridLayout):
            inside.addWidget(self.stop, inside.rowCount(), 0, 1, inside.columnCount())
        self.fileSelected.connect(self.picked)
        self.finished.connect(self.deleteLater)

    @classmethod
    def to_open(cls, parent: QWidget, title: str, folder: Path, pattern: str) -> FileDialog:
        """Return a dialog for a file that exists."""
        made = cls(parent, title, folder)
        made.setAcceptMode(QFileDialog.AcceptMode.AcceptOpen)
        made.setFileMode(QFileDialog.FileMode.ExistingFile)
        made.setNameFilter(say(pattern))
        return made

    @classmethod
    def to_save(cls, parent: QWidget, title: str, proposal: Path, pattern: str) -> FileDialog:
        """Return a dialog for a file to write; whoever writes it takes care of one that exists."""
        made = cls(parent, title, proposal.parent)
        made.setAcceptMode(QFileDialog.AcceptMode.AcceptSave)
        made.setNameFilter(say(pattern))
        made.setDefaultSuffix(proposal.suffix.removeprefix("."))
        made.selectFile(proposal.name)
        return made

    @classmethod
    def to_folder(cls, parent: QWidget, title: str, folder: Path) -> FileDialog:
        """Return a dialog for a folder."""
        made = cls(parent, title, folder)
        made.setFileMode(QFileDialog.FileMode.Directory)
        made.setOption(QFileDialog.Option.ShowDirsOnly)
        return made
