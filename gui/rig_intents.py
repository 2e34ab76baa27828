"""What is asked for in the Rig place."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from pathlib import Path

from PySide6.QtCore import QObject, Signal
from PySide6.QtGui import QGuiApplication

from acquisition.joining import ClassTask, class_task, join_class
from acquisition.rig import RigSpec
from acquisition.rigfile import load_rig, read_rig, write_rig
from acquisition.snapshot import Severity
from analysis.errors import InvalidInput
from drivers.clock import NS_PER_S, WallClock
from drivers.finding import Found, find_instruments
from drivers.portadvice import changes
from drivers.ports import PortInfo, PortList, list_ports
from drivers.profile import load_profile, shipped_profiles
from gui.desk import Desk
from gui.files import Files
from gui.report_pages import write_new
from gui.screen import Screen
from gui.settings import SettingsFile
from gui.viewmodels.errors import error_words, sentence
from gui.viewmodels.moment import RigState
from gui.viewmodels.rig_sheet import same
from gui.views.rig_place import OWN
from gui.window import Window
from gui.words import mark, say

RIG_PATTERN = mark("Rig files (*.toml)")


class RigIntents(QObject):
    """Hears the Rig place. `joined` carries the name under which a class was joined."""

    joined = Signal(str)

    def __init__(self, desk: Desk, screen: Screen, window: Window, settings: SettingsFile, files: Files) -> None:
        """Listen."""
        super().__init__(window)
        self._desk = desk
        self._screen = screen
        self._window = window
        self._settings = settings
        self._files = files
        self._ports: PortList | None = None
        self._came_ns: dict[str, int] = {}
        self._connect()

    def connect_last(self) -> None:
        """Connect the simulated house that was connected last, else the first."""
        sources = self._desk.connection.sources
        known = [source.id for source in sources]
        settings = self._settings.value
        chosen = settings.source if settings.source in known else (known[0] if known else "")
        if chosen:
            self.connect_source(chosen, settings.time_factor)

    def connect_source(self, source_id: str, factor: float) -> None:
        """Connect a simulated house and remember it."""
        self._settings.set(replace(self._settings.value, source=source_id, time_factor=factor))
        self._desk.connection.connect_source(source_id, factor)
        self._screen.touch()

    def connect_own(self) -> None:
        """Connect the rig on the sheet, or part with it."""
        rig = self._desk.rig()
        spec = self._screen.rig.spec
        if rig.state is RigState.CONNECTED and rig.spec is not None and not rig.source and same(rig.spec, spec):
            self._desk.connection.disconnect()
        elif not self._screen.rig.problem():
            self._desk.connection.connect_spec(spec)
        self._screen.touch()

    def join(self, place: str, name: str) -> None:
        """Join a class, connect the house that it gives, and write the name into the job."""
        page = self._window.rig.join

        def ask() -> tuple[RigSpec, ClassTask]:
            opener, clock = self._desk.connection.opener, WallClock()
            return join_class(place, name, opener, clock), class_task(place, opener, clock)

        def joined(found: tuple[RigSpec, ClassTask]) -> None:
            spec, task = found
            page.join_button.setEnabled(True)
            page.show_task(task)
            self._screen.rig.load(spec)
            self._desk.connection.connect_spec(spec)
            self.joined.emit(" ".join(name.split()))
            self._desk.tell(Severity.NOTE, say("You have joined the class at {place}.", place=place.strip()))
            self._screen.touch()

        def failed(error: Exception) -> None:
            page.join_button.setEnabled(True)
            self._desk.tell(Severity.ATTENTION, sentence(error))

        page.join_button.setEnabled(False)
        self._desk.errands.run(ask, joined, failed)

    def take_rig(self, text: str) -> None:
        """Connect the rig of a rig file that was not kept in a file."""
        spec = read_rig(text)
        self._screen.rig.load(spec)
        self._desk.connection.connect_spec(spec)
        self._screen.touch()

    @property
    def ports(self) -> tuple[PortInfo, ...]:
        """The ports as they were listed last."""
        return self._ports.ports if self._ports is not None else ()

    def copy(self, text: str) -> None:
        """Put a command or a rule on the clipboard."""
        QGuiApplication.clipboard().setText(text)
        self._desk.tell(Severity.NOTE, say("Copied: {text}", text=text))

    def look_for_ports(self) -> None:
        """List the ports, beside the window: it can take seconds."""
        before = self._ports

        def found(ports: PortList) -> None:
            self._window.rig.own.editor.show_ports(ports.ports)
            count = len(ports.ports)
            odd = self._port_changes(ports)
            words = ports.note or (
                say("No serial port was found.") if not count else say("{count} ports found.", count=count)
            )
            severity = Severity.ATTENTION if ports.note or odd or not count else Severity.NOTE
            self._desk.tell(severity, f"{words} {odd}".strip())

        self._desk.errands.run(lambda: list_ports(before), found, self._failed)

    def _port_changes(self, now: PortList) -> str:
        """Return what is odd about the ports against the last look, and remember when each came."""
        now_ns = self._desk.connection.clock.now_ns()
        known = {port.name for port in now.ports}
        gone = [came for name, came in self._came_ns.items() if name not in known]
        younger_s = (now_ns - max(gone)) / NS_PER_S if gone else None
        sentence = changes(self._ports, now, younger_s=younger_s).sentence if self._ports is not None else ""
        self._came_ns = {name: self._came_ns.get(name, now_ns) for name in known}
        self._ports = now
        return sentence

    def find_instruments(self) -> None:
        """Ask at every port who is there, beside the window, and put who answers on the sheet."""

        def ask() -> tuple[Found, ...]:
            profiles = [load_profile(name) for name in shipped_profiles()]
            return find_instruments(list_ports().ports, profiles, self._desk.connection.opener, WallClock())

        def found(items: tuple[Found, ...]) -> None:
            self._window.rig.own.identify.setEnabled(True)
            count = self._screen.rig.take_found(items)
            silent = [item for item in items if not item.profile]
            words = (
                say("{count} found.", count=count)
                if count
                else say("No instrument was found.")
                if items
                else say("There is no serial port.")
            )
            said = " ".join(f"{item.port.name}: {item.sentence}" for item in silent)
            self._desk.tell(Severity.NOTE if count else Severity.ATTENTION, f"{words} {said}".strip())
            self._screen.touch()

        self._window.rig.own.identify.setEnabled(False)
        self._desk.errands.run(ask, found, self._not_found)

    def _not_found(self, error: Exception) -> None:
        self._window.rig.own.identify.setEnabled(True)
        self._failed(error)

    def load(self, path: Path) -> None:
        """Put the rig of a file on the sheet."""
        try:
            self._screen.rig.load(load_rig(path))
        except InvalidInput as error:
            self._desk.tell(Severity.ATTENTION, sentence(error))
        self._window.rig.choose_page(OWN)
        self._screen.touch()

    def save(self, path: Path) -> None:
        """Write the rig on the sheet into a file."""
        try:
            written = write_new(path, write_rig(self._screen.rig.spec).encode())
        except OSError as error:
            self._desk.tell(
                Severity.ATTENTION, say("The rig file could not be saved: {reason}.", reason=error_words(error))
            )
            return
        self._desk.tell(Severity.NOTE, say("The rig is saved as {written}.", written=written))

    def _ask_load(self) -> None:
        self._files.ask_open(say("Load a rig file"), RIG_PATTERN, self.load)

    def _ask_save(self) -> None:
        problem = self._screen.rig.problem()
        if problem:
            self._desk.tell(Severity.ATTENTION, problem)
            return
        self._files.ask_save(say("Save the rig"), self._files.folder / "rig.toml", RIG_PATTERN, self.save)

    def _failed(self, error: Exception) -> None:
        self._desk.tell(Severity.ATTENTION, say("The ports could not be listed: {error}.", error=error_words(error)))

    def _connect(self) -> None:
        place, model = self._window.rig, self._screen.rig
        place.sources.connect_asked.connect(self.connect_source)
        place.sources.disconnect_asked.connect(self._desk.connection.disconnect)
        place.sources.selected.connect(self._screen.touch)
        place.live.copy_asked.connect(self.copy)
        place.live.accept_asked.connect(self._desk.connection.accept_identity)
        place.own.connect_button.clicked.connect(self.connect_own)
        place.own.ports.clicked.connect(self.look_for_ports)
        place.own.identify.clicked.connect(self.find_instruments)
        place.own.load.clicked.connect(self._ask_load)
        place.own.save.clicked.connect(self._ask_save)
        place.page_chosen.connect(self._screen.touch)
        place.join.asked.connect(self.join)
        editor = place.own.editor
        edits: tuple[tuple[object, Callable[..., None]], ...] = (
            (editor.named, model.set_name),
            (editor.instrument_added, model.add_instrument),
            (editor.instrument_edited, model.set_instrument),
            (editor.instrument_removed, model.remove_instrument),
            (editor.role_chosen, model.set_role),
            (editor.range_added, model.add_range),
            (editor.range_edited, model.set_range),
            (editor.range_removed, model.remove_range),
            (editor.fitted_chosen, model.set_fitted),
            (editor.fitted_on_chosen, model.set_fitted_on),
            (editor.zone_named, model.set_zone),
            (editor.shutter_chosen, model.set_shutter),
        )
        for signal, edit in edits:
            signal.connect(edit)  # type: ignore[attr-defined]  # each is a Signal
            signal.connect(self._screen.touch)  # type: ignore[attr-defined]
