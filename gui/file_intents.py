"""What is asked for about jobs as files: finding one, copying one, hand-written tests, tables for the clipboard."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QObject, Signal
from PySide6.QtWidgets import QApplication

from acquisition.job import Job
from acquisition.job.export import COMMA_DIALECT, POINT_DIALECT, write_csv
from acquisition.office.backup import back_up
from acquisition.office.catalogue import write_table
from acquisition.snapshot import Severity
from acquisition.told import quantity_table
from acquisition.typed import keep_typed, moment_of
from analysis.errors import InvalidInput
from drivers.clock import WallClock
from gui.actions import Actions
from gui.desk import Desk
from gui.files import Files
from gui.office_intents import OfficeIntents
from gui.report_pages import write_new
from gui.screen import Screen
from gui.viewmodels.errors import error_words, sentence
from gui.viewmodels.jobs_page import JobsPicture, jobs_picture
from gui.viewmodels.moment import Place
from gui.viewmodels.over import Over
from gui.window import Window
from gui.words import say


class FileIntents(QObject):
    """Hears the pages about files. `open_asked` carries the path of a job to open."""

    open_asked = Signal(object)

    def __init__(
        self, desk: Desk, screen: Screen, window: Window, actions: Actions, files: Files, office: OfficeIntents
    ) -> None:
        """Listen."""
        super().__init__(window)
        self._desk = desk
        self._screen = screen
        self._window = window
        self._files = files
        self._office = office
        self._progress = ""
        self._read: Path | None = None
        page = window.jobs
        page.searched.connect(self.search)
        page.open_asked.connect(self._open)
        page.choose.clicked.connect(self.choose_folder)
        page.again.clicked.connect(self.read)
        page.export.clicked.connect(self.export_table)
        page.tables.clicked.connect(self.export_tables)
        window.typed.changed.connect(self._typed_changed)
        window.typed.keep.clicked.connect(self.keep_typed)
        window.report.hpxml.clicked.connect(files.export_hpxml)
        for view in (window.settings, window.jobs, window.typed, window.worst_case):
            view.back.clicked.connect(self.leave)
        for action, call in (
            (actions.jobs, self.find),
            (actions.backup, self.back_up),
            (actions.hpxml, files.export_hpxml),
            (actions.copy_points, self.copy_points),
            (actions.copy_results, self.copy_results),
            (actions.settings, self.show_settings),
            (actions.typed, self.type_in),
        ):
            action.triggered.connect(call)
        desk.job_closing = self._closing

    def show_settings(self) -> None:
        """Show the Settings page."""
        self._screen.show_over(Over.SETTINGS)

    def leave(self) -> None:
        """Take the page away that lies over the place."""
        focus = QApplication.focusWidget()
        if focus is not None:
            focus.clearFocus()
        self._screen.over = None
        self._screen.touch()

    def _closing(self, job: Job) -> None:
        self.copy_job(job, told=False)

    # --- jobs of a folder

    @property
    def folder(self) -> Path:
        """Where jobs are looked for."""
        chosen = self._screen.office.jobs
        return Path(chosen) if chosen else self._files.folder

    def find(self) -> None:
        """Show the jobs of the folder."""
        self._screen.show_over(Over.JOBS)
        if self._read != self.folder:
            self.read()
        self._window.jobs.words.setFocus()

    def read(self) -> None:
        """Read the folder; beside the window."""
        folder, catalogue = self.folder, self._screen.catalogue
        self._progress = say("Reading the jobs…")

        def done(_: None) -> None:
            self._progress, self._read = "", folder
            self._screen.touch()

        def failed(error: Exception) -> None:
            self._progress = say("The folder cannot be read: {reason}.", reason=error_words(error))
            self._screen.touch()

        self._desk.errands.run(lambda: catalogue.read(folder), done, failed)
        self._screen.touch()

    def picture(self) -> JobsPicture:
        """Return the page."""
        catalogue, words = self._screen.catalogue, self._window.jobs.words.text()
        mark = self._screen.display.decimal_mark
        found = catalogue.search(words)
        return jobs_picture(str(self.folder), found, len(catalogue.lines), words, self._progress, mark)

    def search(self, _: str) -> None:
        """Show what has the words."""
        self._screen.touch()

    def choose_folder(self) -> None:
        """Ask for the folder of jobs."""
        self._files.ask_folder(say("The folder in which the jobs are kept"), self._chosen)

    def export_table(self) -> None:
        """Ask where, then write the lines on show as CSV."""
        lines = self._screen.catalogue.search(self._window.jobs.words.text())
        dialect = COMMA_DIALECT if self._screen.display.decimal_mark == "," else POINT_DIALECT

        def write(path: Path) -> None:
            self._write(path, write_table(lines, dialect))

        self._files.ask_save(say("Export the table"), self.folder / "jobs.csv", say("CSV (*.csv)"), write)

    def export_tables(self) -> None:
        """Ask for a folder, then write samples, points and results of every job on show."""
        lines = self._screen.catalogue.search(self._window.jobs.words.text())
        paths = tuple(dict.fromkeys(Path(line.file) for line in lines if line.test is not None))

        def write(folder: Path) -> None:
            self._desk.errands.run(
                lambda: sum(len(_tables_of(path, folder)) for path in paths),
                lambda count: self._tell(
                    say(
                        "{count} tables of {jobs} jobs are saved in {folder}.",
                        count=count,
                        jobs=len(paths),
                        folder=folder,
                    )
                ),
                lambda error: self._warn(say("The tables could not be saved: {reason}.", reason=error_words(error))),
            )

        self._files.ask_folder(say("Export all tables into a folder"), write)

    def _chosen(self, folder: Path) -> None:
        self._office.keep("jobs", str(folder))
        self.read()

    def _open(self, path: str) -> None:
        self._screen.over = None
        self.open_asked.emit(Path(path))
        self._screen.touch()

    # --- the job as a file

    def back_up(self) -> None:
        """Copy the job into the backup folder, or ask for one."""
        if self._desk.job is None:
            self._warn(say("Open a job first: it is the one that is copied."))
        elif not self._screen.office.backup:
            self._files.ask_folder(say("A folder for backup copies"), self._backup_chosen)
        else:
            self.copy_job(self._desk.job, told=True)

    def copy_job(self, job: Job, *, told: bool) -> None:
        """Copy a job into the backup folder, if there is one; say so, or only what went wrong."""
        folder = self._screen.office.backup
        if not folder:
            return
        try:
            written = back_up(job, Path(folder))
        except InvalidInput as error:
            self._warn(say("The job was not copied. {sentence}", sentence=sentence(error)))
            return
        if told:
            self._tell(say("The job is copied as {written}.", written=written))

    def _backup_chosen(self, folder: Path) -> None:
        self._office.keep("backup", str(folder))
        self.back_up()

    # --- a hand-written test

    def type_in(self) -> None:
        """Show the page for a hand-written test."""
        if self._desk.job is None:
            self._warn(say("Open a job first: the test is kept in it."))
            return
        self._screen.show_over(Over.TYPED)
        self._window.typed.date.setFocus()

    def keep_typed(self) -> None:
        """Keep what was typed as a test."""
        job, model, display = self._desk.job, self._screen.typed, self._screen.display
        if job is None or self._desk.busy:
            self._warn(say("A test is running: end it before another one is kept."))
            return
        try:
            runs = model.runs(display)
            when = moment_of(model.date, "Day and time on the sheet")
            number = keep_typed(job, job.draft(), runs, when)
        except InvalidInput as error:
            self._warn(sentence(error))
            return
        self._window.typed.clear()
        self._screen.go_to(Place.TEST)
        self._desk.choose_test(number)
        self._tell(say("Kept as test {number}, marked as typed from a hand-written record.", number=number))

    def _typed_changed(self) -> None:
        page, model = self._window.typed, self._screen.typed
        model.date, model.seconds = page.date.text(), page.seconds.text()
        model.lines = {way: view.toPlainText() for way, view in page.lines.items()}
        model.zeros = {key: view.text() for key, view in page.zeros.items()}
        self._screen.touch()

    # --- the clipboard

    def copy_points(self) -> None:
        """Copy the points of the shown direction, with tabs between."""
        picture = self._window.test.points.model.picture
        if picture is None or not picture.rows:
            self._warn(say("There are no points to copy."))
            return
        rows = ["\t".join(picture.headings), *("\t".join((row.sign, *row.cells)) for row in picture.rows)]
        self._copy(rows, say("The points are in the clipboard, ready for a spreadsheet."))

    def copy_results(self) -> None:
        """Copy the results of the shown test, with tabs between."""
        shown = self._desk.showing.test(self._desk.snapshot())
        if shown is None or shown.result is None:
            self._warn(say("There is no result to copy."))
            return
        table = quantity_table(shown.result, shown.plan.building, self._screen.display, ())
        self._copy(
            ["\t".join(table.heads), *("\t".join(row.cells) for row in table.rows)],
            say("The results are in the clipboard, ready for a spreadsheet."),
        )

    def _copy(self, rows: list[str], told: str) -> None:
        QApplication.clipboard().setText("\n".join(rows))
        self._tell(told)

    # --- words

    def _write(self, path: Path, data: bytes) -> None:
        try:
            self._tell(say("Written: {path}.", path=write_new(path, data)))
        except OSError as error:
            self._warn(say("It could not be written: {reason}.", reason=error_words(error)))

    def _tell(self, words: str) -> None:
        self._desk.tell(Severity.NOTE, words)
        self._screen.touch()

    def _warn(self, words: str) -> None:
        self._desk.tell(Severity.ATTENTION, words)
        self._screen.touch()


def _tables_of(path: Path, folder: Path) -> tuple[Path, ...]:
    job = Job.open(path, WallClock(), read_only=True)
    try:
        return write_csv(job, folder / path.stem)
    finally:
        job.close()
