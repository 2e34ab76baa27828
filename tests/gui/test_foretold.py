"""What is expected of a test stands in the window before its points; a pressure is held by keys."""

from __future__ import annotations

from PySide6.QtGui import QAction

from acquisition.plan import SCHEDULES
from acquisition.snapshot import Activity, EngineState
from gui.viewmodels.details import Detail, detail_picture
from gui.viewmodels.moment import Place
from gui.viewmodels.next_step import Verb, next_step
from gui.viewmodels.outcome import outcome_picture
from tests.gui.conftest import Stage


def press_key(stage: Stage, words: str) -> None:
    """Trigger the action with these words in the menus."""
    window = stage.program.window
    next(action for action in window.findChildren(QAction) if action.text() == words).trigger()
    stage.pass_time(0.3)


def test_the_window_foretells_the_interval_until_there_is_a_result(stage: Stage) -> None:
    stage.connect()
    stage.press()
    stage.until(lambda now: now.state is EngineState.ASKING)
    stage.press()
    stage.until(lambda now: now.activity is Activity.SETTLE)
    moment = stage.program.bridge.moment(stage.snapshot())
    picture = outcome_picture(moment)
    assert picture.figure == "–"
    assert picture.interval.endswith("expected")
    assert "Expected before the points" in picture.why
    table = detail_picture(moment, Detail.BUDGET).tables[0]
    assert [row.cells[0].split()[0].lower() for row in table.rows] == list(SCHEDULES)
    assert sum("(chosen)" in row.cells[0] for row in table.rows) == 1


def test_a_pressure_is_held_moved_and_ended_by_keys(stage: Stage) -> None:
    stage.connect()
    press_key(stage, "Hold a pressure")
    stage.until(lambda now: now.state is EngineState.ASKING)
    stage.press()
    stage.until(lambda now: now.held is not None and now.held.seconds > 2)
    assert stage.snapshot().target_pa == -50.0
    assert next_step(stage.program.bridge.moment(stage.snapshot())).verb is Verb.SEAL_STARTS
    stage.program.screen.go_to(Place.TEST)
    stage.draw()
    step = next_step(stage.program.bridge.moment(stage.snapshot()))
    assert step.verb is Verb.END_HOLD
    assert "Holding −50 Pa" in step.sentence
    stage.until(lambda now: now.held is not None and now.held.change is not None)
    picture = outcome_picture(stage.program.bridge.moment(stage.snapshot()))
    assert picture.title == "What leaks at −50 Pa"
    assert picture.interval.endswith("% since the beginning")
    press_key(stage, "Hold 5 Pa less")
    stage.until(lambda now: now.target_pa == -45.0 and now.held is not None)
    stage.press()
    stage.until(lambda now: now.state is EngineState.IDLE)
    assert not stage.engine().busy
