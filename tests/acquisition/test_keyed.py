"""Keys on the terminal while a test runs, and the command on the points of a recorded one."""

from __future__ import annotations

import io
import os
import sys
from pathlib import Path

import pytest

import airseam
from acquisition.keyboard import Keyboard
from acquisition.keyed import HELP, Keyed
from acquisition.snapshot import Activity, EngineState, PointState, Snapshot
from drivers.clock import VirtualClock
from tests.acquisition.scenes import Scene, a_scene


def counted(shown: Snapshot) -> int:
    return sum(point.state is PointState.TAKEN for run in shown.runs for point in run.points)


def keyed(scene: Scene, out: io.StringIO, *lines: str) -> Keyed:
    texts = list(lines)
    ranges = scene.rig.spec.ranges
    return Keyed(scene.engine, lambda ask: texts.pop(0), lambda prompt: texts.pop(0), out, ranges)


def test_keys_pause_strike_take_back_and_take_again(clock: VirtualClock, tmp_path: Path) -> None:
    out = io.StringIO()
    with a_scene(clock, tmp_path) as scene:
        keys = keyed(scene, out, "", "The dog went out")
        scene.begin()
        shown = scene.until(lambda shown: counted(shown) == 2)
        keys.press("p", shown)
        assert scene.pass_time(0.3).state is EngineState.PAUSED
        keys.press("p", scene.engine.snapshot())
        assert scene.pass_time(0.3).state is EngineState.RUNNING
        keys.press("x", shown)
        assert counted(scene.pass_time(0.3)) == 2
        keys.press("x", shown)
        assert counted(scene.pass_time(0.3)) == 1
        keys.press("u", shown)
        assert counted(scene.pass_time(0.3)) == 2
        keys.press("u", shown)
        keys.press("?", shown)
        keys.press("r", scene.engine.snapshot())
        shown = scene.to_the_end()
        assert [point.target_pa for point in shown.runs[0].points][:4] == [-60.0, -50.0, -40.0, -50.0]
        strikes = scene.job.load(1).strikes
        assert [(item.struck, item.reason) for item in strikes] == [
            (True, "The dog went out"), (False, ""), (True, "taken again"),
        ]  # fmt: skip
    said = out.getvalue()
    assert "Nothing was struck here." in said
    assert HELP in said


def test_a_key_has_another_range_fitted(clock: VirtualClock, tmp_path: Path) -> None:
    with a_scene(clock, tmp_path, wind_m_s=0.0) as scene:
        scene.rig.fitter = scene.house.fit
        other = "middle" if scene.rig.spec.fitted != "middle" else "narrow"
        keys = keyed(scene, io.StringIO(), other)
        scene.begin()
        keys.press("f", scene.until(lambda shown: shown.activity is Activity.AVERAGE))
        shown = scene.until(lambda shown: any(flag.id == "range-changed" for flag in shown.flags))
        assert scene.rig.spec.fitted == other
        assert shown.state is EngineState.RUNNING


@pytest.mark.skipif(sys.platform == "win32", reason="Windows has no pseudo-terminals")
def test_keys_come_without_a_line_end_and_the_terminal_is_left_as_it_was() -> None:
    import termios

    ours, theirs = os.openpty()
    with os.fdopen(theirs, "r+b", buffering=0) as raw, io.TextIOWrapper(raw) as stream:
        before = termios.tcgetattr(stream)
        keyboard = Keyboard(stream)
        assert keyboard.take() == ""
        with keyboard.open():
            os.write(ours, b"pX")
            assert keyboard.take() == "px"
            assert keyboard.take() == ""
            with keyboard.lines():
                os.write(ours, b"a whole line\n")
                assert stream.readline() == "a whole line\n"
        assert termios.tcgetattr(stream) == before
    os.close(ours)
    assert Keyboard(io.StringIO("x")).take() == ""


def test_points_are_listed_struck_and_restored_on_the_command_line(
    clock: VirtualClock, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    with a_scene(clock, tmp_path) as scene:
        scene.begin()
        scene.to_the_end()
    job = str(tmp_path / "scene.airseam")
    assert airseam.main(["points", job]) == 0
    listed = capsys.readouterr().out
    assert "Points, depressurize" in listed
    assert listed.count("Struck") == 0
    assert airseam.main(["points", job, "--strike", "2", "--reason", "A gust"]) == 0
    assert "Struck: A gust." in capsys.readouterr().out
    assert airseam.main(["points", job, "--restore", "2"]) == 0
    assert "Struck" not in capsys.readouterr().out
    assert airseam.main(["verify", job]) == 0
    capsys.readouterr()
    for wrong, words in (
        (["--strike", "2"], "say why the point is struck"),
        (["--strike", "99", "--reason", "x"], "the number of a window is needed"),
        (["--strike", "2", "--restore", "3"], "one of them at a time"),
    ):
        assert airseam.main(["points", job, *wrong]) == 2
        error = capsys.readouterr().err
        assert words in error
        assert error.count("\n") == 1
