"""Pictures of the trainer's window, one of each page: for a demonstration without a display, and to look at."""

from __future__ import annotations

import tempfile
from collections.abc import Sequence
from pathlib import Path

from PySide6.QtCore import QCoreApplication

from analysis.units import Display, System
from drivers.clock import WallClock, seconds
from gui.app import application
from gui.classroom.trainer import Trainer
from gui.classroom.window import CLASS, PAGES, ClassWindow
from gui.languages import decimal_mark, put_on
from gui.look import Look
from gui.pictures import DEFAULT_SIZE, THEMES
from gui.theme import Mode
from gui.words import Language
from simulators.classroom import private_addresses

EXERCISE = "attached-garage"
SPEED, PACE = 0.55, 20.0
ROUNDS, ROUND_S = 8, 0.1
"""The fan runs for so long before: a drive that hears nothing stops by itself."""
LATER_S = 300.0


def save_class_pictures(
    folder: Path,
    *,
    modes: Sequence[Mode] = THEMES,
    size: tuple[int, int] = DEFAULT_SIZE,
    system: System = System.SI,
    suffix: str = "",
    language: str = Language.ENGLISH,
) -> tuple[Path, ...]:
    """Save a PNG of each page, and of a covered one, as `class-PAGE-THEME.png`; raises `OSError`.

    `language` is the code of that of the window.
    """
    folder.mkdir(parents=True, exist_ok=True)
    look, trainer, clock = Look(application(), modes[0]), Trainer(WallClock()), WallClock()
    look.put_on()
    put_on(application(), Language(language))
    saved = []
    with tempfile.TemporaryDirectory() as truths:
        window = ClassWindow(look, trainer, Path(truths))
        window.resize(*size)
        window.set_display(Display(system, decimal_mark(Language(language))))
        window.show()
        try:
            trainer.choose(EXERCISE)
            trainer.open_class(private_addresses()[0], 0, 3, shared=False)
            _set_the_scene(trainer)
            for _ in range(ROUNDS):
                _turn(trainer, clock.now_ns())
                clock.wait_until(clock.now_ns() + seconds(ROUND_S))
            for mode in modes:
                look.set_mode(mode)
                for page, name in (*enumerate(PAGES), (CLASS, "covered")):
                    trainer.covered = name == "covered"
                    window.choose_page(page)
                    path = folder / f"class-{name.lower()}-{mode}{suffix}.png"
                    for _ in range(3):
                        _turn(trainer, clock.now_ns())
                        window.tick()
                        QCoreApplication.sendPostedEvents()
                    if not window.grab().save(str(path)):
                        raise OSError(f"{path} cannot be written")
                    saved.append(path)
        finally:
            window.close()
            window.deleteLater()
            put_on(application(), Language.ENGLISH)
            look.take_off()
            look.deleteLater()
    return tuple(saved)


def _set_the_scene(trainer: Trainer) -> None:
    """Let the fan run, and something be so and something be to come."""
    station = trainer.station
    assert station is not None
    leaks = [leak.name for leak in station.rig.house.leaks]
    trainer.resize(leaks[0], 0.0)
    trainer.resize(leaks[1], 2.0)
    faults = trainer.faults()
    trainer.throw(faults[0], 0.0)
    trainer.throw(faults[1], LATER_S)
    trainer.go_at(PACE)


def _turn(trainer: Trainer, now_ns: int) -> None:
    """Tell the drive once more how fast to turn."""
    assert trainer.station is not None
    trainer.station.rig.fan.receive(f"FAN:SPEED {SPEED}\n".encode(), now_ns)
