"""What is asked for when help is needed: the key sheet on paper, a bundle for support, the dialog after a mistake."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QObject

from acquisition.report.keysheet import key_sheet_pdf
from acquisition.snapshot import Severity
from analysis.errors import InvalidInput
from gui.actions import Actions
from gui.association import associate, this_machine
from gui.desk import Desk
from gui.files import Files
from gui.report_pages import write_new
from gui.settings import SettingsFile
from gui.support import anonymous, bundle, bundle_parts, job_bytes
from gui.viewmodels.errors import error_words
from gui.viewmodels.keys import CAUTIONS, KEYS, key_words
from gui.views.trouble_dialog import TroubleDialog
from gui.window import Window
from gui.words import mark, say, spoken

ON_DEMAND = mark("What a bundle for support holds stands below. Look at it before you hand it on.")


class SupportIntents(QObject):
    """Hears the help menu. `log` is the file that warnings and errors are written to."""

    def __init__(self, desk: Desk, window: Window, actions: Actions, files: Files, settings: SettingsFile) -> None:
        """Listen."""
        super().__init__(window)
        self._desk = desk
        self._window = window
        self._files = files
        self._settings = settings
        self._trace = ""
        self.log: Path | None = None
        self.dialog: TroubleDialog | None = None
        actions.print_keys.triggered.connect(self.save_keys)
        actions.bundle.triggered.connect(self.ask_bundle)
        actions.associate.triggered.connect(self.associate)

    def save_keys(self) -> None:
        """Ask where, then write the key sheet as PDF."""
        proposal = self._files.folder / "airseam-keys.pdf"
        self._files.ask_save(
            say("Save the key sheet"),
            proposal,
            say("PDF (*.pdf)"),
            lambda path: self._write(path, _key_sheet()),
        )

    def associate(self) -> None:
        """Have the system open job files with this program."""
        try:
            told = associate(this_machine())
        except InvalidInput as error:
            self._desk.tell(Severity.ATTENTION, say("The system cannot be told: {error}.", error=error_words(error)))
        except OSError as error:
            self._desk.tell(Severity.ATTENTION, say("The system cannot be told: {reason}.", reason=error_words(error)))
        else:
            self._desk.tell(Severity.NOTE, say("{told} “airseam associate --remove” takes it back.", told=told))

    def ask_bundle(self) -> None:
        """Show what a bundle would hold."""
        self._show(say(ON_DEMAND), "")

    def show_trouble(self, sentence: str, trace: str) -> None:
        """Show a mistake of the program, once as long as the dialog is open."""
        if self.dialog is None:
            self._show(
                say("{sentence} A running test goes on; you may go on too.", sentence=sentence), anonymous(trace)
            )

    def save_bundle(self, with_job: bool) -> None:
        """Ask where, then write the bundle."""

        def write(path: Path) -> None:
            parts, job = self._parts(), self._desk.job
            if with_job and job is not None:
                parts[job.path.name] = job_bytes(job)
            self._write(path, bundle(parts))

        self._files.ask_save(
            say("Save the bundle"), self._files.folder / "airseam-support.zip", say("ZIP (*.zip)"), write
        )

    def _show(self, lead: str, trace: str) -> None:
        self._trace = trace
        dialog = TroubleDialog(self._window, lead, trace, self._names)
        dialog.save_asked.connect(self.save_bundle)
        dialog.stop_asked.connect(self._desk.stop_fan)
        dialog.destroyed.connect(self._gone)
        dialog.job.setEnabled(self._desk.job is not None)
        self.dialog = dialog
        dialog.show()

    def _gone(self) -> None:
        self.dialog = None

    def _names(self, with_job: bool) -> list[str]:
        job = self._desk.job
        return [*self._parts(), *([job.path.name] if job is not None and with_job else [])]

    def _parts(self) -> dict[str, bytes]:
        return bundle_parts(self._settings.value, self._trace, self.log)

    def _write(self, path: Path, data: bytes) -> None:
        try:
            self._desk.tell(Severity.NOTE, say("Written: {path}.", path=write_new(path, data)))
        except OSError as error:
            self._desk.tell(Severity.ATTENTION, say("It could not be written: {reason}.", reason=error_words(error)))


def _key_sheet() -> bytes:
    groups = [(say(head), [(key_words(key), say(words)) for key, words in keys]) for head, keys in KEYS]
    return key_sheet_pdf(say("Keys of Airseam"), groups, [say(words) for words in CAUTIONS], spoken().value)
