"""The computer stays awake while a test runs, and not longer."""

from __future__ import annotations

import sys

import pytest

from gui.awake import KeepAwake, asking
from tests.gui.conftest import Stage


def test_it_is_asked_once_and_taken_back_once() -> None:
    said: list[str] = []

    def ask() -> object:
        said.append("asked")
        return lambda: said.append("taken back")

    awake = KeepAwake(ask)  # type: ignore[arg-type]  # returns what takes it back
    for busy in (False, True, True, False, False, True):
        awake.follow(busy)
    assert said == ["asked", "taken back", "asked"]


def test_the_window_tells_when_a_test_begins(stage: Stage) -> None:
    told: list[bool] = []
    stage.program.bridge.awake = told.append
    stage.connect()
    assert set(told) == {False}
    stage.program.desk.start_test()
    stage.pass_time(0.5)
    assert told[-1]


def test_a_system_that_cannot_be_asked_is_left_alone(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.delenv("DBUS_SESSION_BUS_ADDRESS", raising=False)
    monkeypatch.setenv("PATH", "")
    assert asking("linux")() is None
    assert asking("darwin")() is None
    if sys.platform != "win32":
        assert asking("win32")() is None
