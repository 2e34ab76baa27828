"""What is asked for in the equipment register and in a field check of two gauges."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from pathlib import Path

from PySide6.QtCore import QObject

from acquisition.register import load_register, save_register
from acquisition.register.fieldcheck import verdict
from acquisition.register.store import CERTIFICATES, keep_certificate
from acquisition.snapshot import Severity
from analysis.errors import InvalidInput
from gui.desk import Desk
from gui.files import Files
from gui.screen import Screen
from gui.viewmodels.errors import sentence
from gui.viewmodels.register import named
from gui.views.rig_place import OWN
from gui.window import Window
from gui.words import mark, say

CERTIFICATE_PATTERN = mark("Certificates (*.pdf *.png *.jpg *.jpeg *.txt);;All files (*)")


class RegisterIntents(QObject):
    """Hears the list, the item and the check."""

    def __init__(self, desk: Desk, screen: Screen, window: Window, files: Files) -> None:
        """Listen."""
        super().__init__(window)
        self._desk = desk
        self._screen = screen
        self._window = window
        self._files = files
        self._path = Path()
        desk.connection.register = lambda: screen.register.register
        self._connect()

    def open(self, path: Path) -> None:
        """Use the register that is kept there; its certificates lie beside it."""
        self._path = path
        self._screen.register.load(lambda: load_register(path), lambda register: save_register(register, path))
        self._screen.touch()

    def today(self) -> date:
        """Return the day at this place."""
        return self._desk.connection.clock.utc().astimezone().date()

    def edit(self, key: str, text: str) -> None:
        """Take what was typed into a field of the chosen item."""
        self._screen.register.edit(key, text, self._screen.display.decimal_mark)
        self._screen.touch()

    def keep_certificate(self, path: Path) -> None:
        """Copy a certificate beside the register and note it at the chosen item."""
        try:
            name = keep_certificate(path, self._path)
        except InvalidInput as error:
            self._desk.tell(Severity.ATTENTION, sentence(error))
            return
        self.edit("certificate", name)
        self._desk.tell(
            Severity.NOTE, say("The certificate is kept as {name}.", name=self._path.parent / CERTIFICATES / name)
        )

    def take_into_rig(self) -> None:
        """Put the chosen item on the sheet of the own rig, and show that."""
        item = self._screen.register.item()
        if item is None:
            return
        self._desk.tell(Severity.NOTE, self._screen.rig.take_equipment(item))
        self._window.rig.choose_page(OWN)
        self._screen.touch()

    def keep_check(self) -> None:
        """Keep the field check with the day of today."""
        model, register = self._screen.check, self._screen.register
        try:
            check = model.check(self.today())
        except InvalidInput as error:
            self._desk.tell(Severity.ATTENTION, sentence(error))
            return
        if register.add_check(check):
            titles = {item.id: item.title for item in register.register.equipment}
            severity = Severity.NOTE if check.agree else Severity.ATTENTION
            self._desk.tell(severity, say("Kept in the register. {verdict}", verdict=verdict(named(check, titles))))
            model.clear()
            register.choose(check.first)
            self._window.rig.show_check(on=False)
        self._screen.touch()

    def _ask_certificate(self) -> None:
        self._files.ask_open(say("The calibration certificate"), CERTIFICATE_PATTERN, self.keep_certificate)

    def _take_point(self) -> None:
        snapshot = self._desk.snapshot()
        if snapshot is not None:
            self._screen.check.take(snapshot.now_ns)

    def _channel(self, side: int, role: str) -> None:
        spec = self._desk.rig().spec
        self._screen.check.choose_channel(side, role, spec, self._screen.register.register)
        self._screen.touch()

    def _item(self, side: int, id_: str) -> None:
        self._screen.check.choose_item(side, id_)
        self._screen.touch()

    def _choose(self, id_: str) -> None:
        self._screen.register.choose(id_)
        self._window.rig.show_check(on=False)
        self._screen.touch()

    def _add(self, kind: str) -> None:
        self._screen.register.add(kind)
        self._window.rig.show_check(on=False)
        self._screen.touch()

    def _show_check(self) -> None:
        self._window.rig.show_check(on=True)
        self._screen.touch()

    def _connect(self) -> None:
        rig, model, check = self._window.rig, self._screen.register, self._screen.check
        rig.register.chosen.connect(self._choose)
        rig.register.added.connect(self._add)
        rig.register.check.clicked.connect(self._show_check)
        rig.detail.committed.connect(self.edit)
        rig.detail.certificate.clicked.connect(self._ask_certificate)
        rig.detail.take.clicked.connect(self.take_into_rig)
        rig.check.channel_chosen.connect(self._channel)
        rig.check.item_chosen.connect(self._item)
        rig.check.keep.clicked.connect(self.keep_check)
        done: tuple[tuple[object, Callable[..., None]], ...] = (
            (rig.detail.undo.clicked, model.undo),
            (rig.detail.remove.clicked, model.remove),
            (rig.detail.add_range.clicked, model.add_range),
            (rig.detail.range_removed, model.remove_range),
            (rig.check.take.clicked, self._take_point),
            (rig.check.anew.clicked, check.clear),
        )
        for signal, call in done:
            signal.connect(call)  # type: ignore[attr-defined]  # each is a Signal
            signal.connect(self._screen.touch)  # type: ignore[attr-defined]
