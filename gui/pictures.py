"""Pictures of the window, one of each place: for a demonstration without a display, and to look at while building."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from pathlib import Path

from PySide6.QtCore import QCoreApplication, QSize

from acquisition.job import Job
from acquisition.openrig import RigSource
from analysis.units import Display, System
from drivers.clock import Clock, WallClock, seconds
from drivers.instrument import LinkState
from drivers.openers import Openers
from gui.app import Program, application, build
from gui.desk import Desk
from gui.errands import InlineErrands
from gui.settings import SettingsFile
from gui.theme import Mode
from gui.viewmodels.moment import Place
from gui.words import Language

DEFAULT_SIZE = (1440, 900)
THEMES = (Mode.DARK, Mode.LIGHT)
LINK_LIMIT_S = 5.0
LIVE_S = 1.5
LAYOUT_ROUNDS = 3
"""A label that breaks its lines asks for another height only once it knows its width."""


@dataclass(frozen=True, slots=True)
class Shot:
    """A picture that was taken."""

    path: Path
    place: Place
    mode: Mode


def save_pictures(
    job: Path, folder: Path, sources: Sequence[RigSource], language: str = Language.ENGLISH
) -> tuple[Path, ...]:
    """Save pictures of a job in all places and both themes, with the simulated house connected that it was made on.

    `language` is the code of that of the window. Returns the files. Raises `InvalidInput`
    when the job cannot be opened.
    """
    clock = WallClock()
    settings = SettingsFile(None)
    settings.set(replace(settings.value, language=Language(language)))
    Job.open(job, clock, read_only=True).close()
    program = build(
        application(),
        sources,
        folder,
        clock,
        errands=InlineErrands(),
        opener=Openers(clock).open,
        settings=settings,
    )
    desk = program.desk
    try:
        desk.open_job(job)
        known = desk.job.draft().building.name if desk.job is not None else ""
        names = {source.id: source.building.name for source in sources if source.building is not None}
        chosen = next((source for source, name in names.items() if name == known), next(iter(names), ""))
        if chosen:
            desk.connection.connect_source(chosen, 1.0)
            _await_links(desk, clock)
        shots = take_pictures(program, folder)
    finally:
        desk.clear(lambda: None)
        program.window.may_close = True
        program.window.close()
        program.leave()
    return tuple(shot.path for shot in shots)


def _await_links(desk: Desk, clock: Clock) -> None:
    """Give the simulated instruments time to answer and the trace something to show."""
    end_ns = clock.now_ns() + seconds(LINK_LIMIT_S)
    while clock.now_ns() < end_ns:
        clock.wait_until(clock.now_ns() + seconds(0.1))
        snapshot = desk.snapshot()
        if snapshot is not None and all(link.state is LinkState.LINKED for link in snapshot.links):
            clock.wait_until(clock.now_ns() + seconds(LIVE_S))
            return


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
    for _ in range(LAYOUT_ROUNDS):
        program.screen.touch()
        program.bridge.tick()
        QCoreApplication.sendPostedEvents()
