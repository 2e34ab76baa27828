"""Opening the trainer's window: beside the normal one, or as a program of its own."""

from __future__ import annotations

from argparse import Namespace
from collections.abc import Callable
from pathlib import Path

import platformdirs

from drivers.clock import WallClock
from gui.app import application
from gui.classroom.trainer import Trainer
from gui.classroom.window import ClassWindow
from gui.look import Look
from gui.settings import SettingsFile


def open_beside(look: Look, folder: Path, join: Callable[[str, str], None]) -> ClassWindow:
    """Return the trainer's window, shown beside the normal one, which `join` lets join the class."""
    made = ClassWindow(look, Trainer(WallClock()), folder, join)
    made.show()
    return made


def run_class(options: Namespace) -> int:
    """Open the trainer's window alone and run until it is closed; return the exit code."""
    app = application()
    path = platformdirs.user_config_path("airseam") / "settings.json"
    look = Look(app, SettingsFile(path).value.mode)
    window = ClassWindow(look, Trainer(WallClock()), platformdirs.user_documents_path() / "Airseam")
    look.put_on()
    window.show()
    code = app.exec()
    look.take_off()
    return code
