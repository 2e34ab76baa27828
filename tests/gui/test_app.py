"""The program as it is started: first job, settings, errors that nobody caught, and a clean end."""

from __future__ import annotations

import os
import shutil
import subprocess
import sys
import threading
from pathlib import Path

import pytest
from PySide6.QtWidgets import QApplication

import airseam
import gui.app
import gui.pictures
from acquisition.job import Job
from drivers.answering import AnsweringTransport
from drivers.clock import VirtualClock, WallClock
from drivers.following import FollowingTransport
from drivers.serialport import SerialTransport
from drivers.transport import TransportOpener
from gui.app import SAMPLE, Program, build, forget_exceptions, open_first_job, run_window, watch_exceptions
from gui.desk import Desk
from gui.errands import InlineErrands
from gui.pictures import save_pictures
from gui.settings import SettingsFile
from gui.viewmodels.moment import Place
from tests.gui.conftest import Stage, no_ports

ROOT = Path(__file__).parents[2]
START_AND_CLOSE = """
import sys
from pathlib import Path
from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QApplication
import gui.app as app
from airseam import sources

def close():
    for window in QApplication.topLevelWidgets():
        if isinstance(window, app.Window):
            bar = window.next_bar
            print("connected" if bar.primary.text() == "Start the test" else bar.sentence.text())
            window.close()

shown = app.Window.showEvent
def then_close(window, event):
    QTimer.singleShot(2500, close)
    shown(window, event)
app.Window.showEvent = then_close
folder = Path(sys.argv[1])
code = app.run_window(sources(1), None, folder, app.WallClock(), settings_path=folder / "settings.json")
print("left", code)
sys.exit(code)
"""


def test_the_program_starts_connected_and_leaves_with_zero(tmp_path: Path) -> None:
    env = {**os.environ, "QT_QPA_PLATFORM": "offscreen", "PYTHONPATH": str(ROOT), "PYTHONFAULTHANDLER": "1"}
    done = subprocess.run(
        [sys.executable, "-W", "error", "-c", START_AND_CLOSE, str(tmp_path)],
        capture_output=True,
        text=True,
        env=env,
        check=False,
        cwd=ROOT,
        timeout=60,
    )
    assert done.stdout.splitlines() == ["connected", "left 0"], done.stderr
    assert done.returncode == 0, done.stderr
    assert (tmp_path / f"{SAMPLE}.airseam").exists()
    assert "Traceback" not in done.stderr


def test_a_second_start_hands_its_job_over_as_the_front_door_starts_it(
    qapp: QApplication, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    handed: list[Path | None] = []

    def taken(_: Path, job: Path | None) -> None:
        handed.append(job)

    monkeypatch.setattr(gui.app, "enter", taken)
    job = tmp_path / "a.airseam"
    Job.create(job, WallClock(), "A").close()
    assert airseam.main([str(job)]) == 0
    assert handed == [job]


def test_the_window_opens_files_hands_and_adapters_that_move(
    qapp: QApplication, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    class Built(Exception):
        """The opener is known; no window is needed."""

    openers: list[TransportOpener] = []

    def keep(*_: object, opener: TransportOpener, **__: object) -> Program:
        openers.append(opener)
        raise Built

    monkeypatch.setattr(gui.app, "build", keep)
    monkeypatch.setattr(gui.app, "ThreadErrands", InlineErrands)
    monkeypatch.setattr(gui.pictures, "build", keep)
    with pytest.raises(Built):
        run_window([], None, tmp_path, WallClock())
    Job.create(tmp_path / "a.airseam", WallClock(), "A").close()
    with pytest.raises(Built):
        save_pictures(tmp_path / "a.airseam", tmp_path, [])
    addresses = ("hand:thermometer", "file:readings.csv", "COM3", "socket://localhost:4001")
    kinds = [AnsweringTransport, AnsweringTransport, FollowingTransport, SerialTransport]
    assert [[type(opener(url)) for url in addresses] for opener in openers] == [kinds, kinds]


def test_the_sample_job_is_made_once_and_opened_again(stage: Stage, tmp_path: Path) -> None:
    job = stage.program.desk.job
    assert job is not None
    assert job.path == tmp_path / f"{SAMPLE}.airseam"
    assert job.details.name == "Mill Row 8"
    assert "sample job" in stage.program.window.notices.notices[0].sentence
    assert stage.program.desk.open_job(job.path)
    assert stage.program.desk.job is job
    assert stage.program.desk.new_job(tmp_path / "own.airseam", "A house of one's own")
    stage.draw()
    assert stage.program.window.notices.notices == ()


def test_the_last_job_is_opened_at_the_next_start(stage: Stage, tmp_path: Path, clock: VirtualClock) -> None:
    mine = tmp_path / "mine.airseam"
    Job.create(mine, clock, "My house").close()
    stage.program.intents.opened(mine)
    open_first_job(stage.program, None, tmp_path)
    assert stage.program.desk.job is not None
    assert stage.program.desk.job.path == mine


def test_a_job_that_was_asked_for_is_made_where_there_is_none(stage: Stage, tmp_path: Path) -> None:
    open_first_job(stage.program, tmp_path / "asked.airseam", tmp_path)
    assert stage.program.desk.job is not None
    assert stage.program.desk.job.path.name == "asked.airseam"


def test_an_interrupted_test_is_found_with_its_points(stage: Stage, tmp_path: Path) -> None:
    stage.connect()
    stage.shorten()
    stage.press()
    stage.press()
    stage.until(lambda now: sum(point.window is not None for run in now.runs for point in run.points) == 2)
    job = stage.program.desk.job
    assert job is not None
    job.flush()
    crashed = tmp_path / "crashed.airseam"
    for part in ("", "-wal"):
        shutil.copy(f"{job.path}{part}", f"{crashed}{part}")
    stage.program.desk.end_test()
    stage.pass_time(1.0)
    stage.program.intents.opened(crashed)
    stage.draw()
    words = stage.program.window.next_bar.sentence.text()
    assert words.startswith("Test 1 of ")
    assert words.endswith("was interrupted with 2 points taken; every reading up to then is safe.")
    table = stage.program.window.test.points.model.picture
    assert table is not None
    assert [row.sign for row in table.rows] == ["✓", "✓"]
    assert stage.program.window.test.trace.picture is not None
    assert len(stage.program.window.test.trace.picture.x_s) > 300


def test_errors_that_nobody_caught_are_shown(stage: Stage) -> None:
    watch_exceptions(stage.program)
    try:
        sys.excepthook(ValueError, ValueError("two is not three"), None)

        def broken() -> None:
            raise KeyError("no such thing")

        thread = threading.Thread(target=broken)
        thread.start()
        thread.join()
    finally:
        forget_exceptions()
    stage.draw()
    told = [notice.sentence for notice in stage.program.window.notices.notices]
    assert any("ValueError: two is not three" in item for item in told)
    assert any("KeyError: 'no such thing'" in item for item in told)
    assert sys.excepthook is sys.__excepthook__


def test_unreadable_settings_are_told_in_the_window(qapp: QApplication, clock: VirtualClock, tmp_path: Path) -> None:
    odd = tmp_path / "settings.json"
    odd.write_text("{")
    program = build(qapp, [], tmp_path, clock, errands=InlineErrands(), opener=no_ports, settings=SettingsFile(odd))
    program.bridge.tick()
    assert "could not be read" in program.window.notices.notices[0].sentence
    program.window.may_close = True
    program.leave()


def test_a_house_that_is_not_there_is_one_sentence(stage: Stage) -> None:
    stage.program.desk.connection.connect_source("sim:castle", 1.0)
    stage.draw()
    assert "There is no simulated house sim:castle." in [n.sentence for n in stage.program.window.notices.notices]


def test_a_fan_that_does_not_confirm_is_an_alarm(stage: Stage, monkeypatch: pytest.MonkeyPatch) -> None:
    stage.connect()
    rig = stage.program.desk.connection.rig
    assert rig is not None
    monkeypatch.setattr(type(rig), "stopped_safely", property(lambda _: False))
    stage.program.desk.connection.disconnect()
    stage.draw()
    assert "did not confirm" in stage.program.window.notices.notices[0].sentence
    assert stage.program.window.ribbon._links[0]._words.full == "no rig"


@pytest.mark.walk
def test_a_job_that_is_full_of_tests_lets_one_choose(stage: Stage, tested: Path) -> None:
    stage.open_copy(tested)
    stage.connect()
    stage.shorten()
    stage.press()
    stage.press()
    stage.until(lambda now: now.result is not None)
    stage.program.desk.stop_fan()
    stage.pass_time(1.0)
    stage.program.desk.end_test()
    stage.pass_time(1.0)
    points = stage.program.window.test.points
    assert points.tests.count() == 2
    points.tests.setCurrentIndex(0)
    points.tests.activated.emit(0)
    stage.draw()
    shown = stage.program.desk.showing.test(stage.snapshot())
    assert shown is not None
    assert (shown.number, shown.live) == (1, False)
    stage.program.intents.go_to(Place.REPORT)
    stage.draw()
    assert stage.program.window.report.tests.currentData() == 1


def test_the_desk_knows_no_qt() -> None:
    code = (
        "import sys\n"
        "import gui.desk, gui.screen, gui.settings, gui.viewmodels.rig_place, gui.viewmodels.plot_csv\n"
        "print([name for name in sys.modules if name.startswith(('PySide6', 'pyqtgraph'))])"
    )
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True, cwd=ROOT)
    assert done.stdout.strip() == "[]"
    assert Desk.__module__ == "gui.desk"
