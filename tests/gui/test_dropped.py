"""Files that are dropped on the window, and ports that come and go."""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtCore import QMimeData, QPointF, Qt, QUrl
from PySide6.QtGui import QDropEvent

from acquisition.rigfile import write_rig
from drivers.ports import PortInfo, PortList
from gui.viewmodels.moment import Place
from gui.views.rig_place import OWN
from gui.window import dropped_file
from tests.gui.conftest import Stage
from tests.gui.test_rig_sheet import full


def dragged(*paths: Path) -> QMimeData:
    data = QMimeData()
    data.setUrls([QUrl.fromLocalFile(str(path)) for path in paths])
    return data


def drop(stage: Stage, path: Path) -> None:
    data = dragged(path)
    buttons, keys = Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier
    event = QDropEvent(QPointF(300, 300), Qt.DropAction.CopyAction, data, buttons, keys)
    stage.program.window.dropEvent(event)
    stage.draw()


def test_a_dropped_job_is_opened_and_a_rig_file_put_on_the_sheet(stage: Stage, tested: Path, tmp_path: Path) -> None:
    job = tmp_path / "dropped.airseam"
    job.write_bytes(tested.read_bytes())
    drop(stage, job)
    assert stage.program.desk.job is not None
    assert stage.program.desk.job.path == job
    assert stage.program.settings.value.recent[0] == str(job.resolve())
    rig = tmp_path / "bench.toml"
    rig.write_text(write_rig(full().spec), "utf-8")
    drop(stage, rig)
    assert stage.program.screen.place is Place.RIG
    assert stage.program.window.rig.pages.currentIndex() == OWN
    assert [item.name for item in stage.program.screen.rig.spec.instruments] == ["gauge", "fan"]


def test_only_one_job_or_rig_file_is_welcome(tmp_path: Path) -> None:
    assert dropped_file(dragged(tmp_path / "a.airseam")) == tmp_path / "a.airseam"
    assert dropped_file(dragged(tmp_path / "a.txt")) is None
    assert dropped_file(dragged(tmp_path / "a.airseam", tmp_path / "b.airseam")) is None
    assert dropped_file(QMimeData()) is None


def test_a_port_that_moves_or_vanishes_is_told_with_what_to_do(stage: Stage, monkeypatch: pytest.MonkeyPatch) -> None:
    one = PortInfo("/dev/ttyUSB0", "adapter", "0403:6001", "A1")
    moved = PortInfo("/dev/ttyUSB3", "adapter", "0403:6001", "A1")
    lists = iter((PortList((one,)), PortList((moved,)), PortList((), "There is no serial port on this machine.")))
    monkeypatch.setattr("gui.rig_intents.list_ports", lambda before: next(lists))
    for _ in range(3):
        stage.program.intents.rig.look_for_ports()
        stage.pass_time(2.0)
    said = " ".join(notice.sentence for notice in stage.program.window.notices._notices)
    assert "The adapter that was /dev/ttyUSB0 is now /dev/ttyUSB3." in said
    assert "/dev/ttyUSB3 appeared and vanished again." in said
