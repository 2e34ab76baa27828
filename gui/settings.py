"""What the window remembers from one start to the next: a small file, never emptied by a crash."""

from __future__ import annotations

import contextlib
import json
import os
from collections.abc import Mapping
from dataclasses import asdict, dataclass, replace
from pathlib import Path

from analysis.units import Display, System
from gui.theme import Mode
from gui.viewmodels.errors import error_words
from gui.words import Language, say

RECENT = 10
SCALES = (100, 125, 150, 175, 200, 250, 300)
"""Per cent."""


@dataclass(frozen=True, slots=True)
class Settings:
    """The choices of the user.

    `units` is the id of a display system, `source` that of the rig last connected. An empty `decimal_mark` is that of
    the language.
    """

    mode: Mode = Mode.SYSTEM
    units: str = "si"
    decimal_mark: str = ""
    other_units: tuple[str, ...] = ()
    """Names of quantities that are shown in the other system."""
    scale: int = 100
    """Per cent, from the next start."""
    recent: tuple[str, ...] = ()
    source: str = ""
    time_factor: float = 1.0
    width: int = 1280
    height: int = 800
    language: Language = Language.SYSTEM
    """Of the window, from the next start."""

    def with_recent(self, path: Path) -> Settings:
        """Put a job at the head of the list of recent ones."""
        text = str(path)
        return replace(self, recent=(text, *(item for item in self.recent if item != text))[:RECENT])


def display_of(settings: Settings, usual_mark: str = ".") -> Display:
    """Return how numbers are shown; `usual_mark` is the decimal mark of the language."""
    mark = settings.decimal_mark or usual_mark
    system = System.US if settings.units == System.US.value else System.SI
    return Display(system, "," if mark == "," else ".", frozenset(settings.other_units))


class SettingsFile:
    """Keeps the settings in a JSON file. An unreadable file gives the defaults and a sentence in `notice`."""

    def __init__(self, path: Path | None) -> None:
        """Read the file; with None nothing is kept."""
        self._path = path
        self.notice = ""
        self.value = Settings()
        if path is not None and path.exists():
            try:
                self.value = _read(json.loads(path.read_text("utf-8")))
            except (OSError, ValueError) as error:
                self.notice = say(
                    "The settings could not be read, the defaults are used ({error}).", error=error_words(error)
                )

    def set(self, value: Settings) -> None:
        """Take new settings and keep them; a disk that refuses is said once in `notice`."""
        if value == self.value:
            return
        self.value = value
        if self._path is None:
            return
        try:
            _write(self._path, json.dumps(asdict(value), indent=1))
        except OSError as error:
            self.notice = say("The settings could not be kept ({reason}).", reason=error.strerror)


def _read(table: object) -> Settings:
    if not isinstance(table, Mapping):
        raise ValueError("a JSON object is needed")
    default = Settings()
    recent, others, scale = table.get("recent"), table.get("other_units"), table.get("scale")
    width, height, factor = table.get("width"), table.get("height"), table.get("time_factor")
    return Settings(
        mode=Mode(table.get("mode", default.mode)),
        language=Language(table.get("language", default.language)),
        units=str(table.get("units", default.units)),
        decimal_mark=str(table.get("decimal_mark", "")),
        other_units=tuple(str(item) for item in others) if isinstance(others, list) else (),
        scale=scale if scale in SCALES else default.scale,
        recent=tuple(str(item) for item in recent) if isinstance(recent, list) else (),
        source=str(table.get("source", "")),
        time_factor=float(factor) if isinstance(factor, int | float) and factor > 0 else default.time_factor,
        width=width if isinstance(width, int) else default.width,
        height=height if isinstance(height, int) else default.height,
    )


def _write(path: Path, text: str) -> None:
    """Write beside the file, bring it to the disk, then put it in the file's place."""
    path.parent.mkdir(parents=True, exist_ok=True)
    beside = path.with_name(path.name + ".new")
    with beside.open("w", encoding="utf-8") as file:
        file.write(text)
        file.flush()
        os.fsync(file.fileno())
    beside.replace(path)
    with contextlib.suppress(OSError):  # Windows has no handle on a folder
        folder = os.open(path.parent, os.O_RDONLY)
        try:
            os.fsync(folder)
        finally:
            os.close(folder)
