"""Pictures of the window, one of each place: for a demonstration without a display, and to look at while building."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from pathlib import Path

from PySide6.QtCore import QCoreApplication, QEvent, QSize

from analysis.units import Display, System
from gui.app import Program
from gui.theme import Mode
from gui.viewmodels.moment import Place

DEFAULT_SIZE = (1440, 900)
THEMES = (Mode.DARK, Mode.LIGHT)


@dataclass(frozen=True, slots=True)
class Shot:
    """A picture that was taken."""

    path: Path
    place: Place
    mode: Mode


def take_pictures(
    program: Program,
    folder: Path,
    *,
    places: Sequence[Place] = tuple(Place),
    modes: Sequence[Mode] = THEMES,
    size: tuple[int, int] = DEFAULT_SIZE,
    system: System = System.SI,
    suffix: str = "",
    settle: Callable[[], None] | None = None,
) -> tuple[Shot, ...]:
    """Save a PNG of each place in each theme into `folder` as `PLACE-THEME.png` and return what was saved.

    `settle` is called after each change of place, for what is made beside the window (the pages of the report) to
    arrive. The choices of the user are put back afterwards. Raises `OSError` where a picture cannot be written.
    """
    folder.mkdir(parents=True, exist_ok=True)
    window, screen, look = program.window, program.screen, program.window.look
    before = (look.mode, screen.place, screen.display, window.size())
    screen.display = Display(system, screen.display.decimal_mark)
    window.resize(QSize(*size))
    window.show()
    shots = []
    try:
        for mode in modes:
            look.set_mode(mode)
            for place in places:
                screen.go_to(place)
                path = folder / f"{place}-{mode}{suffix}.png"
                _draw(program, settle)
                if not window.grab().save(str(path)):
                    raise OSError(f"{path} cannot be written")
                shots.append(Shot(path, place, mode))
    finally:
        look.set_mode(before[0])
        screen.display = before[2]
        window.resize(before[3])
        screen.go_to(before[1])
    return tuple(shots)


def _draw(program: Program, settle: Callable[[], None] | None) -> None:
    """Draw the place as it is, then again with what came late and the layout that followed."""
    program.bridge.tick()
    if settle is not None:
        settle()
    for _ in range(2):
        program.screen.touch()
        program.bridge.tick()
        QCoreApplication.sendPostedEvents(None, QEvent.Type.LayoutRequest.value)
