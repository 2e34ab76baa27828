"""Everything that is asked for by a file: reports, tables, plots, rigs, jobs."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import QObject

from acquisition.languages import language_of
from acquisition.office import file_name
from acquisition.setup import preparation_sheet
from acquisition.snapshot import Severity
from gui.desk import Desk
from gui.plots.canvas import PlotPanel
from gui.plots.flow_plot import FlowPlot
from gui.plots.residual_plot import ResidualPlot
from gui.plots.trace_plot import TracePlot
from gui.report_pages import write_new
from gui.screen import Screen
from gui.viewmodels.errors import error_words
from gui.viewmodels.issuing import version_words
from gui.viewmodels.plot_csv import flow_csv, residual_csv, trace_csv
from gui.viewmodels.report_place import file_stem
from gui.views.file_dialog import FileDialog
from gui.window import Window
from gui.words import say

Picked = Callable[[Path], None]


class Files(QObject):
    """Asks for paths, one dialog at a time, and writes."""

    def __init__(self, desk: Desk, screen: Screen, window: Window) -> None:
        """Belong to the window."""
        super().__init__(window)
        self._desk = desk
        self._screen = screen
        self._window = window
        self._picked: Picked | None = None
        self._dialog: FileDialog | None = None
        self.home = Path.home()

    @property
    def folder(self) -> Path:
        """Where files are looked for first: beside the job."""
        return self._desk.job.path.parent if self._desk.job is not None else self.home

    @property
    def dialog(self) -> FileDialog | None:
        """The dialog that is open."""
        return self._dialog

    def ask_open(self, title: str, pattern: str, picked: Picked) -> None:
        """Ask for a file that exists."""
        self._ask(FileDialog.to_open(self._window, title, self.folder, pattern), picked)

    def ask_save(self, title: str, proposal: Path, pattern: str, picked: Picked) -> None:
        """Ask where to write a file."""
        self._ask(FileDialog.to_save(self._window, title, proposal, pattern), picked)

    def ask_folder(self, title: str, picked: Picked) -> None:
        """Ask for a folder."""
        self._ask(FileDialog.to_folder(self._window, title, self.folder), picked)

    def save_report(self) -> None:
        """Ask where, then write the report of the shown test as PDF."""
        number = 0 if self._screen.no_test else self._reportable()
        if number is not None:
            self.ask_save(say("Save the report"), self._proposal(number, ".pdf"), say("PDF (*.pdf)"), self._save_report)

    def export_json(self) -> None:
        """Ask where, then write the shown test as JSON."""
        number = self._reportable()
        if number is not None:
            self.ask_save(
                say("Export the test"), self._proposal(number, ".json"), say("JSON (*.json)"), self._save_json
            )

    def export_hpxml(self) -> None:
        """Ask where, then write the air infiltration of the shown test as HPXML."""
        number = self._reportable()
        if number is not None:
            self.ask_save(
                say("Export as HPXML"), self._proposal(number, ".xml"), say("HPXML (*.xml)"), self._save_hpxml
            )

    def export_csv(self) -> None:
        """Ask for a folder, then write the tables of the job into it."""
        if self._reportable() is not None:
            self._ask(
                FileDialog.to_folder(self._window, say("Export the tables into a folder"), self.folder), self._save_csv
            )

    def save_preparation_sheet(self) -> None:
        """Ask where, then write what the client is asked to have ready."""
        job = self._desk.job
        if job is not None:
            text = preparation_sheet(job.draft(), job.details.name, language_of(job.details.language))
            self._ask_text(say("Preparation sheet"), f"{job.path.stem} preparation", text)

    def _ask_text(self, title: str, stem: str, text: str) -> None:
        def write(path: Path) -> None:
            try:
                self._told(say("Written: {path}.", path=write_new(path, text.encode())))
            except OSError as error:
                self._failed(say("It could not be written: {reason}.", reason=error_words(error)))

        self.ask_save(title, self.folder / f"{stem}.txt", say("Text (*.txt)"), write)

    def save_plot(self, kind: str) -> None:
        """Ask where, then write the plot that was clicked."""
        plot = self.sender()
        if not isinstance(plot, PlotPanel):
            return
        number = self._desk.showing.number() or 0
        stem = "pressure" if isinstance(plot, TracePlot) else "line" if isinstance(plot, FlowPlot) else "residuals"
        name = self._desk.job.details.name if self._desk.job is not None else "airseam"
        proposal = self.folder / f"{file_stem(name, number)}-{stem}.{kind}"

        def write(path: Path) -> None:
            self.write_plot(plot, kind, path)

        self.ask_save(say("Save the plot"), proposal, f"{kind.upper()} (*.{kind})", write)

    def write_plot(self, plot: PlotPanel, kind: str, path: Path) -> None:
        """Write a plot as PNG, SVG or CSV under a name that is free."""
        try:
            written = write_new(path, b"" if kind != "csv" else numbers(plot).encode())
            if kind != "csv":
                plot.save_picture(str(written), kind)
        except OSError as error:
            self._failed(say("The plot could not be saved: {reason}.", reason=error_words(error)))
            return
        self._told(say("The plot is saved as {written}.", written=written))

    def _reportable(self) -> int | None:
        number = self._desk.showing.number()
        if self._desk.job is None or number is None:
            self._failed(say("There is no test yet to make a report of."))
            return None
        if self._desk.busy:
            self._failed(say("The test is still running; the report follows when it has ended."))
            return None
        return number

    def _proposal(self, number: int, suffix: str) -> Path:
        job, office = self._desk.job, self._screen.office
        assert job is not None
        record = next((item for item in job.tests() if item.id == number), None)
        issue = next((item for item in job.issues.all if item.id == self._screen.version_shown), None)
        values = {
            **{name: getattr(job.details, name) for name in ("name", "client", "site")},
            "job": job.details.number,
            "number": "" if issue is None else version_words(issue),
            "stage": "" if record is None else record.plan.stage,
            "test": str(number) if number else "none-possible",
            "date": f"{record.started:%Y-%m-%d}" if record is not None else f"{self._desk.now():%Y-%m-%d}",
        }
        return self.folder / f"{file_name(office.name_pattern, values)}{suffix}"

    def _save_report(self, path: Path) -> None:
        job = self._desk.job
        if job is not None:
            self._screen.pages.save_pdf(job, path, self._desk.now(), self._told, self._failed)

    def _save_json(self, path: Path) -> None:
        job, number = self._desk.job, self._desk.showing.number()
        if job is not None and number is not None:
            self._screen.pages.save_json(job, number, path, self._told, self._failed)

    def _save_hpxml(self, path: Path) -> None:
        job, number = self._desk.job, self._desk.showing.number()
        if job is not None and number is not None:
            self._screen.pages.save_hpxml(job, number, path, self._desk.now(), self._told, self._failed)

    def _save_csv(self, path: Path) -> None:
        if self._desk.job is not None:
            self._screen.pages.save_csv(self._desk.job, path, self._told, self._failed)

    def _ask(self, dialog: FileDialog, picked: Picked) -> None:
        if self._dialog is not None:
            self._dialog.reject()
        self._dialog, self._picked = dialog, picked
        dialog.stop_asked.connect(self._desk.stop_fan)
        dialog.picked.connect(self._was_picked)
        dialog.finished.connect(self._finished)
        dialog.show()

    def _was_picked(self, text: str) -> None:
        picked = self._picked
        if picked is not None and text:
            picked(Path(text))
            self._screen.touch()

    def _finished(self) -> None:
        if self.sender() is self._dialog:
            self._dialog = None

    def _told(self, sentence: str) -> None:
        self._desk.tell(Severity.NOTE, sentence)

    def _failed(self, sentence: str) -> None:
        self._desk.tell(Severity.ATTENTION, sentence)


def numbers(plot: PlotPanel) -> str:
    """Return the numbers that a plot shows."""
    if isinstance(plot, FlowPlot) and plot.picture is not None:
        return flow_csv(plot.picture)
    if isinstance(plot, ResidualPlot) and plot.picture is not None:
        return residual_csv(plot.picture)
    if isinstance(plot, TracePlot) and plot.picture is not None:
        return trace_csv(plot.picture)
    return ""
