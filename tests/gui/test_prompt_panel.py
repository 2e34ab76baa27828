"""The panel that asks: its choices can be read whole."""

from __future__ import annotations

import pytest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from acquisition.repair import ask_lasting
from gui.viewmodels.prompt import Prompt, PromptKind
from gui.views.prompt_panel import PromptPanel


@pytest.mark.parametrize(("width", "across"), [(1600, 4), (700, 2), (420, 1)])
def test_choices_stand_beside_or_below_each_other_and_are_read_whole(qtbot: QtBot, width: int, across: int) -> None:
    panel = PromptPanel()
    qtbot.addWidget(panel)
    ask = ask_lasting("Lasting step.")
    panel.show_prompt(Prompt(PromptKind.ASK, ask.id, "Something came off or closed", ask.text, ask.choices))
    panel.resize(width, 320)
    QApplication.processEvents()
    assert all(view.width() >= view.sizeHint().width() for view in panel.choices)
    assert len({view.x() for view in panel.choices}) == across
