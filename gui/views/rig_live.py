"""The live side of the Rig place: links in words, channels with what they read now."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QBoxLayout, QButtonGroup, QGridLayout, QLabel, QPushButton, QWidget

from gui.look import Look
from gui.theme import GAP_4, GAP_8, GAP_12, GAP_16, SIGNS, Tone
from gui.viewmodels.rig_place import ChannelRow, LinkRow, RigPicture
from gui.views.parts import ElidedLabel, Lamp, Panel, button, column, label, row, set_text, set_tone, wrapped
from gui.views.scrolled import scrolled
from gui.words import say


class LinkView(QWidget):
    """One link: a lamp, its name and state, what is known about it, and what to copy where a port is refused."""

    copy_asked = Signal(str)

    def __init__(self, look: Look, buttons: QButtonGroup, at: int) -> None:
        """Make it empty; the button lets a person accept the instrument that answers."""
        super().__init__()
        self._lamp = Lamp(look)
        self._name = label(role="strong")
        self._state = label(role="quiet")
        self._words, self._health = wrapped("quiet"), wrapped("small")
        self._warnings: list[QLabel] = []
        self.accept = button(say("Go on with this instrument"), "slim")
        buttons.addButton(self.accept, at)
        head = row(self._lamp, self._name, self._state)
        head.addStretch(1)
        head.addWidget(self.accept)
        box = column(2)
        box.addLayout(head)
        box.addWidget(self._words)
        box.addWidget(self._health)
        self._remedies: list[tuple[QLabel, QPushButton]] = []
        self._remedy_box = column(GAP_4)
        box.addLayout(self._remedy_box)
        self._warning_box = column(2)
        box.addLayout(self._warning_box)
        self.setLayout(box)

    def show_link(self, link: LinkRow) -> None:
        """Show a moment."""
        self._lamp.show_tone(link.tone)
        set_text(self._name, link.name)
        set_text(self._state, link.state)
        set_tone(self._state, link.tone if link.tone is not Tone.GOOD else Tone.QUIET)
        set_text(self._words, link.words)
        self.accept.setVisible(link.acceptable)
        while len(self._remedies) < len(link.remedies):
            self._add_remedy()
        for at, (words, press) in enumerate(self._remedies):
            for part in (words, press):
                part.setVisible(at < len(link.remedies))
            if at < len(link.remedies):
                set_text(words, link.remedies[at].words)
                press.setProperty("copied", link.remedies[at].text)
                press.setAccessibleName(say("Copy: {text}", text=link.remedies[at].text))
        set_text(self._health, link.health)
        self._health.setVisible(bool(link.health))
        show_sentences(self._warnings, self._warning_box, link.warnings)

    def _add_remedy(self) -> None:
        words, press = wrapped("quiet"), button(say("Copy"), "slim")
        press.clicked.connect(lambda: self.copy_asked.emit(str(press.property("copied"))))
        beside = row(words, press)
        beside.setStretch(0, 1)
        self._remedy_box.addLayout(beside)
        self._remedies.append((words, press))


def show_sentences(views: list[QLabel], box: QBoxLayout, said: Sequence[tuple[Tone, str]]) -> None:
    """Show sentences with the sign of their tone, one under the other; labels are made as they are needed."""
    while len(views) < len(said):
        views.append(wrapped())
        box.addWidget(views[-1])
    for at, view in enumerate(views):
        view.setVisible(at < len(said))
        if at < len(said):
            tone, sentence = said[at]
            set_text(view, sentence if tone is Tone.QUIET else f"{SIGNS[tone]} {sentence}")
            set_tone(view, tone)


class ChannelView:
    """One channel in the grid of channels."""

    def __init__(self, grid: QGridLayout, at: int) -> None:
        """Put it into a row of the grid."""
        self._role, self._channel = ElidedLabel(), ElidedLabel("quiet")
        self._value, self._unit = label(role="strong"), label(role="quiet")
        self._value.setAlignment(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
        self._widgets = (self._role, self._channel, self._value, self._unit)
        for column_at, widget in enumerate(self._widgets):
            grid.addWidget(widget, at, column_at)

    def show_channel(self, channel: ChannelRow | None) -> None:
        """Show a moment, or nothing."""
        for widget in self._widgets:
            widget.setVisible(channel is not None)
        if channel is None:
            return
        self._role.show_text(channel.role)
        self._channel.show_text(channel.channel)
        set_text(self._value, channel.value)
        set_tone(self._value, Tone.QUIET if channel.stale else Tone.PLAIN)
        set_text(self._unit, channel.unit)


class RigLive(Panel):
    """What is connected. `accept_asked` carries the name of a link, `copy_asked` a text for the clipboard."""

    accept_asked = Signal(str)
    copy_asked = Signal(str)

    def __init__(self, look: Look) -> None:
        """Make it empty."""
        super().__init__(say("Connected"))
        self._look = look
        self._links: list[LinkView] = []
        self._due: list[QLabel] = []
        self._names: list[str] = []
        self._channels: list[ChannelView] = []
        self._group = QButtonGroup(self)
        self._group.idClicked.connect(self._accepted)
        self._empty = wrapped("quiet")
        self._fitted = wrapped("quiet")
        self._link_box = column(GAP_12)
        self._heading = label(say("What the channels read now"), "title")
        self._grid = QGridLayout()
        self._grid.setHorizontalSpacing(GAP_12)
        self._grid.setVerticalSpacing(GAP_8)
        self._grid.setColumnStretch(0, 3)
        self._grid.setColumnStretch(1, 2)
        box = column(GAP_16)
        box.addWidget(self._empty)
        box.addLayout(self._link_box)
        self._due_box = column(GAP_4)
        box.addLayout(self._due_box)
        box.addWidget(self._heading)
        box.addLayout(self._grid)
        box.addWidget(self._fitted)
        box.addStretch(1)
        self.body.addWidget(scrolled(box, say("Links and channels")), 1)

    def show_picture(self, picture: RigPicture) -> None:
        """Show a moment."""
        self.title.show_text(picture.title)
        set_text(self._empty, picture.empty)
        self._empty.setVisible(bool(picture.empty))
        while len(self._links) < len(picture.links):
            view = LinkView(self._look, self._group, len(self._links))
            view.copy_asked.connect(self.copy_asked)
            self._links.append(view)
            self._link_box.addWidget(view)
        self._names = [link.name for link in picture.links]
        for at, link_view in enumerate(self._links):
            link_view.setVisible(at < len(picture.links))
            if at < len(picture.links):
                link_view.show_link(picture.links[at])
        while len(self._channels) < len(picture.channels):
            self._channels.append(ChannelView(self._grid, len(self._channels)))
        for at, channel_view in enumerate(self._channels):
            channel_view.show_channel(picture.channels[at] if at < len(picture.channels) else None)
        show_sentences(self._due, self._due_box, picture.due)
        self._heading.setVisible(bool(picture.channels))
        set_text(self._fitted, picture.fitted)
        self._fitted.setVisible(bool(picture.fitted))

    def _accepted(self, at: int) -> None:
        if at < len(self._names):
            self.accept_asked.emit(self._names[at])
