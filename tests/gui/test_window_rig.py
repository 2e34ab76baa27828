"""The rig in the window: its file, its sheet, a port that is missing."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from gui.viewmodels.moment import Place
from tests.gui.conftest import Stage


def test_a_rig_file_is_saved_and_loaded(stage: Stage, tmp_path: Path) -> None:
    rig = stage.program.screen.rig
    rig.add_instrument("scpi-gauge")
    rig.set_instrument(0, "port", "/dev/ttyUSB7")
    rig.add_range()
    for field, text in (("coefficient_m3_h_pa_n", "183"), ("exponent", "0.5"), ("min_pa", "8"), ("max_pa", "250")):
        rig.set_range(0, field, text)
    stage.program.intents.rig.save(tmp_path / "rig.toml")
    saved = rig.spec
    rig.remove_instrument(0)
    stage.program.intents.rig.load(tmp_path / "rig.toml")
    assert rig.spec == saved
    (tmp_path / "bad.toml").write_text("format = 3")
    stage.program.intents.rig.load(tmp_path / "bad.toml")
    stage.draw()
    assert 'Format is 3: "airseam-rig-1" is needed.' in [n.sentence for n in stage.program.window.notices.notices]


def test_a_rig_whose_port_is_missing_is_one_sentence(stage: Stage) -> None:
    stage.program.screen.rig.add_instrument("scpi-gauge")
    stage.program.screen.rig.set_instrument(0, "port", "/dev/ttyUSB7")
    stage.program.desk.connection.connect_spec(stage.program.screen.rig.spec)
    stage.draw()
    sentence = stage.program.window.notices.notices[0].sentence
    assert sentence.startswith("The rig could not be connected: port is '/dev/ttyUSB7'")


def test_the_rig_is_edited_on_the_screen(stage: Stage) -> None:
    window = stage.program.window
    stage.program.intents.go_to(Place.RIG)
    window.rig.choose_page(1)
    stage.draw()
    editor = window.rig.own.editor
    editor.kind.setCurrentIndex(editor.kind.findData("scpi-gauge"))
    editor.add.click()
    stage.draw()
    assert [item.name for item in stage.program.screen.rig.spec.instruments] == ["gauge"]
    port = editor._instruments[0].port
    port.setEditText("/dev/ttyUSB3")
    line = port.lineEdit()
    assert line is not None
    QTest.keyClick(line, Qt.Key.Key_Return)
    stage.draw()
    assert stage.program.screen.rig.spec.instruments[0].port == "/dev/ttyUSB3"
    assert "Flow range is missing" in window.rig.own.problem.text()
