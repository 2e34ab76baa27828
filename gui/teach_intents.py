"""What is asked for on the page that teaches a gauge."""

from __future__ import annotations

from PySide6.QtCore import QObject

from acquisition.snapshot import Severity
from drivers.errors import ProfileError
from drivers.finding import Found
from drivers.ports import PortInfo, PortList, list_ports
from drivers.teaching.channels import save_profile
from drivers.teaching.linkguess import LinkGuess
from gui.desk import Desk
from gui.files import Files
from gui.screen import Screen
from gui.views.rig_place import OWN, TEACH
from gui.window import Window

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

    def listen(self) -> None:
        """Try link settings on the port until what comes is regular."""
        page, model = self._window.rig.teach, self._screen.teach
        model.port, model.ask = page.port.currentText().strip(), page.ask.text()
        if not model.port:
            self._desk.tell(Severity.ATTENTION, "Choose the port of the gauge first.")
            return
        connection = self._desk.connection
        try:
            transport = connection.opener(model.port)
        except ValueError as error:
            self._desk.tell(Severity.ATTENTION, f"{error}.")
            return
        probe = f"{model.ask.strip()}\n".encode("ascii", "replace") if model.ask.strip() else b""
        model.listen(LinkGuess(transport, connection.clock, probe=probe))
        self._screen.touch()

    def save(self) -> None:
        """Save the profile and put the gauge on the sheet of the own rig."""
        model = self._screen.teach
        try:
            taught = model.taught()
            path = save_profile(taught.text, self._files.home / FOLDER)
        except ProfileError as error:
            self._desk.tell(Severity.ATTENTION, f"The profile is not saved: {error}.")
            return
        self._screen.rig.take_found((Found(PortInfo(model.port, ""), str(path)),))
        self._desk.tell(Severity.NOTE, f"The profile is saved as {path}, and the gauge stands in your own rig.")
        self._window.rig.choose_page(OWN)
        self._screen.touch()

    def _page_chosen(self, page: int) -> None:
        if page == TEACH:
            self._desk.errands.run(list_ports, self._show_ports, lambda _: None)

    def _show_ports(self, ports: PortList) -> None:
        self._window.rig.teach.show_ports(tuple(port.name for port in ports.ports))

    def _point(self, place: int) -> None:
        self._screen.teach.pick(place)
        self._screen.touch()

    def _say(self, at: int, field: str, text: str) -> None:
        self._screen.teach.say(at, field, text)
        self._screen.touch()

    def _remove(self, at: int) -> None:
        self._screen.teach.drop(at)
        self._screen.touch()

    def _title(self, text: str) -> None:
        self._screen.teach.title = " ".join(text.split()) or self._screen.teach.title
        self._screen.touch()
