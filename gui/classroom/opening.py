"""Opening the trainer's window: beside the normal one, or as a program of its own."""

from __future__ import annotations

from argparse import Namespace
from pathlib import Path

import platformdirs

from drivers.clock import WallClock
from gui.app import application
from gui.beside import Beside
from gui.classroom.trainer import Trainer
from gui.classroom.window import ClassWindow
from gui.languages import decimal_mark, put_on
from gui.look import Look
from gui.settings import SettingsFile, display_of


def open_beside(look: Look, folder: Path, beside: Beside) -> ClassWindow:
    """Return the trainer's window, shown beside the normal one, whose units it shares."""
    made = ClassWindow(look, Trainer(WallClock()), folder, beside)
    made.show()
    return made


def run_class(options: Namespace) -> int:
    """Open the trainer's window alone and run until it is closed; return the exit code."""
    app = application()
    settings = SettingsFile(platformdirs.user_config_path("airseam") / "settings.json").value
    put_on(app, settings.language)
    look = Look(app, settings.mode)
    window = ClassWindow(look, Trainer(WallClock()), platformdirs.user_documents_path() / "Airseam")
    window.set_display(display_of(settings, decimal_mark(settings.language)))
    look.put_on()
    window.show()
    code = app.exec()
    look.take_off()
    return code
