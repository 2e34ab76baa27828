"""The window as a program: builds the parts, joins them, runs until it is closed. All comes from the front door."""

from __future__ import annotations

import gc
import logging
import os
import sys
import threading
import traceback
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from pathlib import Path
from types import TracebackType

import platformdirs
import pyqtgraph as pg
from PySide6.QtCore import QEvent, QObject, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFont, QIcon, QKeyEvent, QPainter, QPen, QPixmap
from PySide6.QtWidgets import QAbstractButton, QApplication, QWidget

from acquisition.job import SUFFIX
from acquisition.office import office_path
from acquisition.office.store import FILE as OFFICE_FILE
from acquisition.openrig import RigSource
from acquisition.register import register_path
from acquisition.register.store import FILE
from acquisition.snapshot import Severity
from drivers.clock import Clock, WallClock
from drivers.openers import Openers
from drivers.transport import TransportOpener
from gui.actions import Actions
from gui.awake import KeepAwake
from gui.beside import Beside
from gui.bridge import Bridge
from gui.desk import SAMPLE_JOB, Desk
from gui.errands import Errands, ThreadErrands
from gui.icons import GRID, program_icon_path
from gui.intents import Intents
from gui.languages import decimal_mark, put_on
from gui.look import Look
from gui.report_pages import ReportPages
from gui.screen import Screen
from gui.settings import SettingsFile, display_of
from gui.single import Doorbell, enter, name_of
from gui.support import keep_log
from gui.theme import DARK
from gui.window import Window
from gui.words import say

SAMPLE = "Sample job"
ICON_SIZES = (16, 32, 64, 128)
CLOSE_LIMIT_S = 10.0
FULL_SCALE = 100

log = logging.getLogger(__name__)


@dataclass(slots=True)
class Program:
    """The parts of a running window."""

    app: QApplication
    desk: Desk
    screen: Screen
    window: Window
    intents: Intents
    bridge: Bridge
    settings: SettingsFile
    errands: Errands
    keys: WideKeys
    actions: Actions
    beside: QWidget | None = None
    """The window of the trainer of a class, where it was opened."""

    def leave(self) -> None:
        """Take everything down once the window is closed: the timer first, the widgets last."""
        self.bridge.stop()
        if self.beside is not None:
            self.beside.close()
            self.beside.deleteLater()
        self.app.removeEventFilter(self.keys)
        self.errands.close(CLOSE_LIMIT_S)
        look = self.window.look
        self.window.deleteLater()
        self.app.sendPostedEvents(None, QEvent.Type.DeferredDelete.value)
        look.take_off()
        look.deleteLater()
        self.app.sendPostedEvents(None, QEvent.Type.DeferredDelete.value)


class WideKeys(QObject):
    """Keys that hold everywhere, in every dialog too: Esc stops the fan, Enter presses the button in focus."""

    def __init__(self, desk: Desk, window: Window) -> None:
        """Hear every key of the program."""
        super().__init__(window)
        self._desk = desk
        self._window = window

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Stop the fan before anybody else sees the key; a dialog or menu may still close by it."""
        if event.type() is not QEvent.Type.KeyPress or not isinstance(watched, QWidget):
            return False
        assert isinstance(event, QKeyEvent)
        if event.key() == Qt.Key.Key_Escape:
            self._desk.stop_fan()
            elsewhere = watched.window() is not self._window or QApplication.activePopupWidget() is not None
            return not elsewhere
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and isinstance(watched, QAbstractButton):
            if watched.isEnabled() and not event.isAutoRepeat():
                watched.click()
            return True
        return False


OpenTrainer = Callable[[Look, Path, Beside], QWidget]
"""Opens the trainer's window beside this one: takes the look, a folder, and what may be asked of this window."""


def run(job_path: Path | None, sources: Sequence[RigSource], trainer: OpenTrainer | None = None) -> int:
    """Open the window as a user starts it: jobs among the documents, settings where the system keeps such files."""
    folder = platformdirs.user_documents_path() / "Airseam"
    settings = platformdirs.user_config_path("airseam") / "settings.json"
    scale = SettingsFile(settings).value.scale
    if scale != FULL_SCALE:
        os.environ.setdefault("QT_SCALE_FACTOR", f"{scale / FULL_SCALE:g}")
    application()
    lock = enter(settings, job_path)
    if lock is None:
        return 0
    try:
        return run_window(
            sources,
            job_path,
            folder,
            WallClock(),
            settings_path=settings,
            register=register_path(),
            office=office_path(),
            trainer=trainer,
            door=name_of(settings),
            logs=platformdirs.user_log_path("airseam", appauthor=False),
        )
    finally:
        lock.unlock()


def run_window(
    sources: Sequence[RigSource],
    job_path: Path | None,
    folder: Path,
    clock: Clock,
    *,
    opener: TransportOpener | None = None,
    settings_path: Path | None = None,
    register: Path | None = None,
    office: Path | None = None,
    trainer: OpenTrainer | None = None,
    door: str = "",
    logs: Path | None = None,
) -> int:
    """Open the window, run until it is closed, and return the exit code.

    `sources` are the simulated houses; `job_path` is the job to open (made when it is not there), with None the last
    one, or a sample job in `folder`. Real instruments run on `clock`, and every address of `drivers.openers` is opened
    unless `opener` does it. Without `settings_path` nothing is remembered.
    `register` is the equipment register and `office` the file of the office, with None those in `folder`.
    `trainer` opens the window of the trainer of a class.
    With a `door` a second start hands its job over to this window; warnings are logged in the folder `logs`.
    """
    app = application()
    program = build(
        app,
        sources,
        folder,
        clock,
        errands=ThreadErrands(),
        opener=opener or Openers(clock).open,
        settings=SettingsFile(settings_path),
    )
    watch_exceptions(program)
    if trainer is not None:
        offer_class(program, trainer, folder)
    if logs is not None:
        program.intents.support.log = keep_log(logs)
    if door:
        answer_door(program, door)
    open_first_job(program, job_path, folder)
    if register is not None:
        program.intents.register.open(register)
    if office is not None:
        program.intents.office.open(office)
    if program.desk.connection.sources:
        program.intents.rig.connect_last()
    show_window(program.window)
    awake = KeepAwake()
    program.bridge.awake = awake.follow
    program.bridge.start()
    code = app.exec()
    awake.follow(busy=False)
    forget_exceptions()
    program.leave()
    return code


def show_window(window: Window) -> None:
    """Show the window as large as it was, or filling a screen that is smaller than that."""
    room = window.screen().availableSize()
    if window.width() > room.width() or window.height() > room.height():
        window.showMaximized()
    else:
        window.show()


def application() -> QApplication:
    """Return the application, with its name, icon and font; made where there is none yet."""
    found = QApplication.instance()
    app = found if isinstance(found, QApplication) else QApplication(sys.argv[:1])
    pg.setConfigOptions(antialias=True)
    app.setApplicationName("Airseam")
    app.setApplicationDisplayName("Airseam")
    app.setDesktopFileName("airseam")
    app.setWindowIcon(program_icon())
    font = QFont(app.font())
    font.setFeature(QFont.Tag("tnum"), 1)
    app.setFont(font)
    return app


def build(
    app: QApplication,
    sources: Sequence[RigSource],
    folder: Path,
    clock: Clock,
    *,
    errands: Errands,
    opener: TransportOpener,
    settings: SettingsFile,
) -> Program:
    """Join the parts; nothing runs yet."""
    put_on(app, settings.value.language)
    look = Look(app, settings.value.mode)
    desk = Desk(sources, clock, opener, errands)
    chosen = settings.value
    screen = Screen(ReportPages(errands), display=display_of(chosen, decimal_mark(chosen.language)))
    window = Window(look)
    window.resize(chosen.width, chosen.height)
    actions = Actions(window)
    intents = Intents(desk, screen, window, actions, settings)
    intents.files.home = folder

    def sign(name: str) -> None:
        """Name the student as tester, where nobody is named yet."""
        if screen.sheet is not None and not screen.sheet.sheet.details.tester:
            intents.edit("tester", name)

    intents.rig.joined.connect(sign)
    intents.register.open(folder / FILE)
    intents.office.open(folder / OFFICE_FILE)
    bridge = Bridge(desk, screen, window, intents)
    keys = WideKeys(desk, window)
    look.put_on()
    app.installEventFilter(keys)
    if settings.notice:
        desk.tell(Severity.ATTENTION, settings.notice)
    return Program(app, desk, screen, window, intents, bridge, settings, errands, keys, actions)


def offer_class(program: Program, trainer: OpenTrainer, folder: Path) -> None:
    """Put the trainer's window into the menu; it goes when this window goes."""
    action = program.actions.trainer
    action.setVisible(True)

    def show() -> None:
        if program.beside is None:
            rig = program.intents.rig
            beside = Beside(rig.join, rig.take_rig, lambda: program.screen.display)
            program.beside = trainer(program.window.look, folder, beside)
        program.beside.show()
        program.beside.raise_()

    def gone() -> None:
        if program.beside is not None:
            program.beside.close()

    action.triggered.connect(show)
    program.intents.gone.connect(gone)


def open_first_job(program: Program, job_path: Path | None, folder: Path) -> None:
    """Open the job that was asked for, or the last one, or a sample job."""
    if job_path is not None:
        if job_path.exists() or not program.desk.new_job(job_path, job_path.stem):
            program.intents.opened(job_path)
        return
    recent = next((Path(text) for text in program.settings.value.recent if Path(text).exists()), None)
    if recent is not None:
        program.intents.opened(recent)
    if program.desk.job is not None:
        return
    sample = folder / f"{SAMPLE}{SUFFIX}"
    if sample.exists():
        program.intents.opened(sample)
        return
    try:
        folder.mkdir(parents=True, exist_ok=True)
    except OSError as error:
        program.desk.tell(
            Severity.ATTENTION,
            say("The folder for jobs cannot be made ({reason}): {folder}.", reason=error.strerror, folder=folder),
        )
        return
    source = next(iter(program.desk.connection.sources), None)
    name = source.building.name if source is not None and source.building is not None else SAMPLE
    if program.desk.new_job(sample, name):
        program.intents.remember(sample)
        program.desk.tell(
            Severity.NOTE,
            say("This is a sample job, kept as {path}. Make one of your own with Ctrl+N.", path=sample),
            SAMPLE_JOB,
        )


def answer_door(program: Program, name: str) -> None:
    """Take the jobs of second starts, and come to the front."""
    bell = Doorbell(name, program.window)

    def rung(job: Path | None) -> None:
        if job is not None:
            program.intents.take_dropped(job)
        program.window.showNormal() if program.window.isMinimized() else program.window.show()
        program.window.raise_()
        program.window.activateWindow()

    bell.rung.connect(rung)


def watch_exceptions(program: Program) -> None:
    """Have every error that nobody caught logged and shown."""

    def caught(kind: type[BaseException], error: BaseException, trace: TracebackType | None) -> None:
        if issubclass(kind, KeyboardInterrupt):
            sys.__excepthook__(kind, error, trace)
            return
        log.error("an error that nobody caught", exc_info=(kind, error, trace))
        words = say(
            "The program made a mistake ({kind}: {error}). What was read is kept.",
            kind=kind.__name__,
            error=error,
        )
        program.intents.failed(words, "".join(traceback.format_exception(kind, error, trace)))

    def caught_in_thread(args: threading.ExceptHookArgs) -> None:
        if args.exc_value is not None:
            caught(args.exc_type, args.exc_value, args.exc_traceback)

    sys.excepthook = caught
    threading.excepthook = caught_in_thread


def forget_exceptions() -> None:
    """Give the hooks back."""
    sys.excepthook = sys.__excepthook__
    threading.excepthook = threading.__excepthook__
    gc.enable()


def program_icon() -> QIcon:
    """Return the icon of the program, drawn in every size."""
    icon = QIcon()
    for size in ICON_SIZES:
        pixmap = QPixmap(QSize(size, size))
        pixmap.fill(Qt.GlobalColor.transparent)
        painter = QPainter(pixmap)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QColor(DARK.panel))
        painter.drawRoundedRect(QRectF(0, 0, size, size), size / 5, size / 5)
        painter.scale(size / GRID, size / GRID)
        pen = QPen(QColor(DARK.primary), 2.2, Qt.PenStyle.SolidLine, Qt.PenCapStyle.RoundCap)
        painter.strokePath(program_icon_path(), pen)
        painter.end()
        icon.addPixmap(pixmap)
    return icon
