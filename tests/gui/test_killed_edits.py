"""The program is killed while somebody types: no edit older than a second is lost."""

from __future__ import annotations

import os
import signal
import subprocess
import sys
from pathlib import Path

import pytest

from acquisition.job import Job
from drivers.clock import NS_PER_S, VirtualClock
from tests.acquisition.samples import START

ROOT = Path(__file__).parents[2]

EDITS = 61

TYPE = """
import sys, time
from pathlib import Path
from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QApplication
from drivers.clock import WallClock
from gui.app import application, build
from gui.errands import InlineErrands
from gui.settings import SettingsFile
folder = Path(sys.argv[1])
app = QApplication([])
application()
program = build(app, [], folder, WallClock(), errands=InlineErrands(), opener=open, settings=SettingsFile(folder / "s"))
assert program.desk.new_job(folder / "x.airseam", "Mill Row 8")
program.window.show()
count = 0
def edit():
    global count
    count += 1
    program.intents.edit("client", f"Client {count}")
    if count % 3 == 0:
        program.intents.undo()
        program.intents.redo()
    program.bridge.tick()
    print(count, time.monotonic_ns(), flush=True)
timer = QTimer()
timer.timeout.connect(edit)
timer.start(30)
app.exec()
"""


@pytest.mark.system
def test_a_kill_loses_no_edit_older_than_a_second(tmp_path: Path) -> None:
    child = subprocess.Popen([sys.executable, "-c", TYPE, str(tmp_path)], cwd=ROOT, stdout=subprocess.PIPE, text=True)
    assert child.stdout is not None
    made: dict[int, int] = {}
    with child.stdout:
        for line in child.stdout:
            count, at_ns = map(int, line.split())
            made[count] = at_ns
            if count == EDITS:
                os.kill(child.pid, signal.SIGKILL)
                break
        for line in child.stdout:
            count, at_ns = map(int, line.split())
            made[count] = at_ns
        child.wait()

    job = Job.open(tmp_path / "x.airseam", VirtualClock(START))
    kept = int(job.details.client.removeprefix("Client ") or "0")
    job.close()
    old = [count for count, at_ns in made.items() if at_ns < max(made.values()) - NS_PER_S]
    assert max(old) <= kept <= max(made) + 1
