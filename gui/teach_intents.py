"""What is asked for on the page that teaches a gauge."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QObject

from acquisition.snapshot import Severity
from drivers.errors import ProfileError
from drivers.finding import Found
from drivers.ports import PortInfo, PortList, list_ports
from drivers.teaching.channels import save_profile
from drivers.teaching.linkguess import LinkGuess
from drivers.teaching.registers import RegisterScan
from gui.desk import Desk
from gui.files import Files
from gui.screen import Screen
from gui.viewmodels.errors import error_words, sentence
from gui.views.rig_place import OWN, TEACH
from gui.window import Window
from gui.words import say

FOLDER = "profiles"


class TeachIntents(QObject):
    """Hears the page."""

    def __init__(self, desk: Desk, screen: Screen, window: Window, files: Files) -> None:
        """Listen to it."""
        super().__init__(window)
        self._desk = desk
        self._screen = screen
        self._window = window
        self._files = files
        page = window.rig.teach
        page.listen.clicked.connect(self.listen)
        page.pointed.connect(self._point)
        page.said.connect(self._say)
        page.removed.connect(self._remove)
        page.titled.connect(self._title)
        page.save.clicked.connect(self.save)
        window.rig.page_chosen.connect(self._page_chosen)
        self._connect_scan()

    def _connect_scan(self) -> None:
        page, model = self._window.rig.scan, self._screen.scan
        page.scan.clicked.connect(self.scan)
        page.save.clicked.connect(self.save_scanned)
        page.titled.connect(self._title_scan)
        for signal, call in (
            (page.typed, model.type),
            (page.shown, model.show),
            (page.pointed, model.pick),
            (page.said, model.say),
            (page.removed, model.drop),
        ):
            signal.connect(call)
            signal.connect(self._screen.touch)

    def listen(self) -> None:
        """Try link settings on the port until what comes is regular."""
        page, model = self._window.rig.teach, self._screen.teach
        model.port, model.ask = page.port.currentText().strip(), page.ask.text()
        if not model.port:
            self._desk.tell(Severity.ATTENTION, say("Choose the port of the gauge first."))
            return
        connection = self._desk.connection
        try:
            transport = connection.opener(model.port)
        except ValueError as error:
            self._desk.tell(Severity.ATTENTION, sentence(error))
            return
        probe = f"{model.ask.strip()}\n".encode("ascii", "replace") if model.ask.strip() else b""
        model.listen(LinkGuess(transport, connection.clock, probe=probe))
        self._screen.touch()

    def scan(self) -> None:
        """Read the registers of the instrument on the port."""
        page, model, connection = self._window.rig.scan, self._screen.scan, self._desk.connection
        model.type("port", page.port.currentText())
        settings = model.settings()
        if settings is not None:
            bus, link, first, count = settings
            try:
                transport = connection.opener(model.fields.port)
            except ValueError as error:
                self._desk.tell(Severity.ATTENTION, sentence(error))
            else:
                model.begin(RegisterScan(transport, connection.clock, bus, link, first=first, count=count), bus, link)
        self._screen.touch()

    def save(self) -> None:
        """Save the profile and put the gauge on the sheet of the own rig."""
        model = self._screen.teach
        self._save(lambda: model.taught().text, model.port)

    def save_scanned(self) -> None:
        """Save the profile of the scanned instrument and put it on the sheet of the own rig."""
        model = self._screen.scan
        self._save(lambda: model.taught()[0], model.fields.port)

    def _save(self, text: Callable[[], str], port: str) -> None:
        try:
            path = save_profile(text(), self._files.home / FOLDER)
        except ProfileError as error:
            self._desk.tell(Severity.ATTENTION, say("The profile is not saved: {error}.", error=error_words(error)))
            return
        self._screen.rig.take_found((Found(PortInfo(port, ""), str(path)),))
        self._desk.tell(
            Severity.NOTE, say("The profile is saved as {path}, and the gauge stands in your own rig.", path=path)
        )
        self._window.rig.choose_page(OWN)
        self._screen.touch()

    def _page_chosen(self, page: int) -> None:
        if page == TEACH:
            self._desk.errands.run(list_ports, self._show_ports, lambda _: None)

    def _show_ports(self, ports: PortList) -> None:
        for page in (self._window.rig.teach, self._window.rig.scan):
            page.show_ports(tuple(port.name for port in ports.ports))

    def _point(self, place: int) -> None:
        self._screen.teach.pick(place)
        self._screen.touch()

    def _say(self, at: int, field: str, text: str) -> None:
        self._screen.teach.say(at, field, text)
        self._screen.touch()

    def _remove(self, at: int) -> None:
        self._screen.teach.drop(at)
        self._screen.touch()

    def _title_scan(self, text: str) -> None:
        self._screen.scan.title = " ".join(text.split()) or self._screen.scan.title
        self._screen.touch()

    def _title(self, text: str) -> None:
        self._screen.teach.title = " ".join(text.split()) or self._screen.teach.title
        self._screen.touch()
