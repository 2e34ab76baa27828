"""The command on leaks, as it is called at a terminal."""

from __future__ import annotations

import io
import sys
from datetime import UTC, datetime
from pathlib import Path

import pytest

import airseam
from acquisition.job import Job
from acquisition.sealing.leaks import LeakStatus
from analysis.sealing.change import Sureness
from drivers.clock import VirtualClock


@pytest.fixture
def job(tmp_path: Path) -> Path:
    clock = VirtualClock(datetime(2026, 5, 4, 9, 0, tzinfo=UTC))
    path = tmp_path / "a.airseam"
    Job.create(path, clock, "Mill Row 8").close()
    return path


def test_a_leak_is_added_changed_and_listed(job: Path, capsys: pytest.CaptureFixture[str]) -> None:
    added = ["leaks", str(job), "--add", "attic-access", "--room", "landing", "--size", "40", "--trade", "carpenter"]
    assert airseam.main(added) == 0
    assert "landing: attic hatch or stair" in capsys.readouterr().out
    changed = ["leaks", str(job), "--change", "1", "--status", "sealed", "--minutes", "12", "--material", "strip"]
    assert airseam.main(changed) == 0
    said = capsys.readouterr().out
    assert "sealed" in said
    assert "Carpenter, strip, 12 min." in said
    clock = VirtualClock(datetime(2026, 5, 4, 10, 0, tzinfo=UTC))
    kept = Job.open(job, clock, read_only=True)
    leak = kept.leaks.leaks[1]
    kept.close()
    assert (leak.status, leak.minutes, leak.size_guess_m3_h) == (LeakStatus.SEALED, 12.0, 40.0)


def test_marks_are_typed_while_a_pressure_is_held(
    tmp_path: Path, capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    path = tmp_path / "held.airseam"
    typed = "roof\n5 d\n90 l pipe\n100 n wind is up\n110 s 1\n120 d\n130 s\n131 u\n"
    monkeypatch.setattr(sys, "stdin", io.StringIO(typed))
    held = ["test", "--rig", "sim:mill-row", "--job", str(path), "--hold", "-50", "--minutes", "3", "--marks"]
    assert airseam.main(held) == 0
    said = capsys.readouterr().err
    assert "mark is 'roof'" in said
    assert "seal is not begun" in said
    assert "Sealing of leak 1 starts." in said
    assert "Leak 1:" in said
    kept = Job.open(path, VirtualClock(datetime(2026, 5, 4, 10, 0, tzinfo=UTC)), read_only=True)
    register = kept.leaks
    kept.close()
    kinds = [mark.kind.value for mark in register.marks]
    # The seal that was begun by mistake is taken back, and the leak that came with it.
    assert kinds == ["new leak", "note", "sealing starts", "sealing done"]
    assert list(register.leaks) == [1]
    assert register.leaks[1].part == "pipe"
    drop = register.drops[1]
    # Nothing was sealed: what is told is no change, with an interval that holds none.
    assert drop.sureness is not Sureness.SURE
    assert drop.difference_m3_h.low < 0.0 < drop.difference_m3_h.high


@pytest.mark.parametrize(
    ("options", "words"),
    [
        (["--add", "roofing"], "part is 'roofing'"),
        (["--change", "3", "--status", "left"], "there are: none yet"),
        (["--add", "pipe", "--change", "1"], "one of them at a time"),
        (["--target", "800"], "a run in which a pressure was held is needed"),
        (["--size", "-4"], "--size"),
    ],
)
def test_what_cannot_be_is_said_in_one_line(
    job: Path, capsys: pytest.CaptureFixture[str], options: list[str], words: str
) -> None:
    try:
        status = airseam.main(["leaks", str(job), *options])
    except SystemExit as end:
        status = int(end.code or 0)
    assert status == 2
    assert words in capsys.readouterr().err
