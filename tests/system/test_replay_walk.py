"""A recorded test played back at the real window, in real threads, at sixty times the speed of life."""

from __future__ import annotations

import json
import shutil
from collections.abc import Callable
from pathlib import Path

import pytest
from PySide6.QtCore import QCoreApplication

from acquisition.job import RecordState
from drivers.clock import WallClock, seconds
from drivers.openers import Openers
from gui.app import Program, application, build, open_first_job
from gui.errands import ThreadErrands
from gui.settings import SettingsFile
from gui.viewmodels.moment import RigState
from tests.acquisition.scenes import a_scene
from tests.simulators.rigs import virtual_clock

pytestmark = [pytest.mark.walk, pytest.mark.system, pytest.mark.timeout(120)]
SPEED, LIMIT_S = 60.0, 60.0
WALL = WallClock()


def until(program: Program, condition: Callable[[], bool]) -> None:
    end_ns = WALL.now_ns() + seconds(LIMIT_S)
    while not condition():
        assert WALL.now_ns() < end_ns, program.desk.snapshot()
        program.bridge.tick()
        QCoreApplication.processEvents()
        WALL.wait_until(WALL.now_ns() + seconds(0.03))


def test_the_result_is_that_of_the_record_after_a_pause_too(tmp_path: Path) -> None:
    with a_scene(virtual_clock(), tmp_path, wind_m_s=2.0) as scene:
        scene.begin(scene.plan(both=False, targets_pa=(60.0, 50.0, 40.0, 30.0, 20.0)))
        scene.to_the_end()
        scene.job.flush()
        result = json.loads(scene.job.load(1).record.result_json)
        made = scene.job.path
    path = tmp_path / "record.airseam"
    shutil.copy(made, path)
    program = build(
        application(),
        (),
        tmp_path,
        WALL,
        errands=ThreadErrands(),
        opener=Openers(WALL).open,
        settings=SettingsFile(None),
    )
    open_first_job(program, path, tmp_path)
    program.window.show()
    desk, page = program.desk, program.window.rig.replay
    program.actions.replay.trigger()
    until(program, page.play.isEnabled)
    page.speed.setValue(SPEED)
    page.play.click()
    until(program, lambda: desk.busy)
    desk.pause()
    until(program, lambda: program.window.next_bar.primary.text() == "Go on")
    stood = desk.snapshot()
    end_ns = WALL.now_ns() + seconds(1.0)
    until(program, lambda: WALL.now_ns() > end_ns)
    later = desk.snapshot()
    assert stood is not None
    assert later is not None
    # A second at this speed would be a minute of the record.
    assert later.now_ns - stood.now_ns < seconds(20.0)
    program.window.next_bar.press()
    until(program, lambda: desk.rig().state is RigState.NONE)
    assert desk.job is not None
    again = desk.job.load(1).record
    assert again.state is RecordState.COMPLETE
    assert json.loads(again.result_json) == result
    gone: list[bool] = []
    desk.clear(lambda: gone.append(True))
    until(program, lambda: bool(gone))
    program.leave()
