"""Help: the bundle for support, the dialog after a mistake, the key sheet on paper, a second start."""

from __future__ import annotations

import io
import logging
import subprocess
import sys
import zipfile
from pathlib import Path

import pytest
from pypdf import PdfReader
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from gui.app import forget_exceptions, watch_exceptions
from gui.settings import Settings
from gui.single import Doorbell, enter, hand_over, name_of
from gui.support import LOG, anonymous, bundle, bundle_parts, keep_log
from gui.viewmodels.keys import KEYS
from gui.views.parts import StopButton
from tests.gui.conftest import Stage
from tests.gui.test_office_pages import ask, pick

ROOT = Path(__file__).parents[2]


def test_a_bundle_says_nothing_about_people(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(Path, "home", lambda: Path("/home/nobody"))
    log = tmp_path / LOG
    log.write_text("ERROR: '/home/nobody/Documents/A Client, Mill Lane.airseam' cannot be read\nWARNING: slow\n")
    settings = Settings(recent=("/home/nobody/Documents/A Client.airseam",))
    parts = bundle_parts(settings, "File /home/nobody/x.py\n", log)
    assert set(parts) == {"versions.json", "settings.json", "trouble.txt", LOG}
    everything = b"".join(parts.values())
    for secret in (b"nobody", b"Client", b"Mill Lane"):
        assert secret not in everything
    assert parts[LOG] == b"ERROR: '(a job)' cannot be read\nWARNING: slow\n"
    assert bundle(parts) == bundle(parts)


@pytest.mark.parametrize(
    ("line", "left"),
    [
        ("opened /x/a b.airseam twice /y/c.airseam", "opened /(a job) twice /(a job)"),
        ("(q.airseam) and more", "((a job)) and more"),
        ("nothing here", "nothing here"),
        ("KeyError: 'A Client'", "KeyError: '…'"),
        (
            'analysis.errors.InvalidInput: name is "Mill Lane": too long',
            "analysis.errors.InvalidInput: name is '…': too long",
        ),
        ("    what = table['client']", "    what = table['client']"),
    ],
)
def test_names_of_jobs_are_cut_out(line: str, left: str) -> None:
    assert anonymous(line).replace("/(a", "(a") == left.replace("/(a", "(a")


def test_warnings_are_logged_in_a_file_that_rotates(tmp_path: Path) -> None:
    root = logging.getLogger()
    before = list(root.handlers)
    path = keep_log(tmp_path / "logs")
    assert path is not None
    logging.getLogger("gui.test").warning("the fan is slow")
    (added,) = [handler for handler in root.handlers if handler not in before]
    added.flush()
    assert "the fan is slow" in path.read_text("utf-8")
    root.removeHandler(added)
    added.close()


def test_a_mistake_is_shown_with_a_text_to_copy_and_a_stop_button(stage: Stage, tmp_path: Path) -> None:
    watch_exceptions(stage.program)
    try:
        try:
            raise ArithmeticError("one is not two")
        except ArithmeticError as error:
            sys.excepthook(type(error), error, error.__traceback__)
    finally:
        forget_exceptions()
    stage.draw()
    dialog = stage.program.intents.support.dialog
    assert dialog is not None
    assert not dialog.isModal()
    assert dialog.findChild(StopButton) is not None
    assert "one is not two" in dialog.lead.text()
    dialog.copy.click()
    assert "ArithmeticError: one is not two" in QApplication.clipboard().text()
    dialog.save.click()
    pick(stage, tmp_path / "s.zip")
    with zipfile.ZipFile(tmp_path / "s.zip") as archive:
        assert sorted(archive.namelist()) == ["settings.json", "trouble.txt", "versions.json"]
        assert b"one is not two" in archive.read("trouble.txt")
    dialog.close()


def test_the_job_goes_along_only_when_asked(stage: Stage, tmp_path: Path) -> None:
    ask(stage, "Save a bundle for support…")
    dialog, job = stage.program.intents.support.dialog, stage.program.desk.job
    assert dialog is not None
    assert job is not None
    assert job.path.name not in dialog.inside.text()
    dialog.job.setChecked(True)
    assert job.path.name in dialog.inside.text()
    dialog.save.click()
    pick(stage, tmp_path / "s.zip")
    with zipfile.ZipFile(tmp_path / "s.zip") as archive:
        assert archive.read(job.path.name).startswith(b"SQLite format 3")
    dialog.close()


def test_the_key_sheet_is_one_page_with_every_key(stage: Stage, tmp_path: Path) -> None:
    ask(stage, "Save the key sheet for printing…")
    pick(stage, tmp_path / "keys.pdf")
    reader = PdfReader(io.BytesIO((tmp_path / "keys.pdf").read_bytes()))
    assert len(reader.pages) == 1
    text = " ".join(reader.pages[0].extract_text().split())
    for group, keys in KEYS:
        assert group in text
        for key, words in keys:
            assert key in text
            assert words[:30] in text


def test_a_second_start_hands_its_job_over_and_ends(qtbot: QtBot, tmp_path: Path) -> None:
    name, job = name_of(tmp_path / "settings.json"), tmp_path / "Σ a.airseam"
    assert not hand_over(name, None)
    holder = QApplication.instance()
    assert holder is not None
    bell = Doorbell(name, holder)
    rung: list[Path | None] = []
    bell.rung.connect(rung.append)
    code = (
        "import sys\n"
        "from pathlib import Path\n"
        "from PySide6.QtCore import QCoreApplication\n"
        "from gui.single import hand_over\n"
        "app = QCoreApplication([])\n"
        "jobs = [Path(sys.argv[2]), None]\n"
        "sys.exit(0 if all(hand_over(sys.argv[1], job) for job in jobs) else 1)\n"
    )
    second = subprocess.Popen([sys.executable, "-c", code, name, str(job)], cwd=ROOT)
    try:
        qtbot.waitUntil(lambda: second.poll() is not None, timeout=30_000)
        assert second.returncode == 0
        assert rung == [job, None]
        again = Doorbell(name, holder)
        assert again.listening
        again.close()
        again.deleteLater()
    finally:
        second.kill()
        second.wait()
        bell.close()
        bell.deleteLater()


def test_a_start_while_the_first_window_is_being_opened_waits_for_it(qtbot: QtBot, tmp_path: Path) -> None:
    settings, job = tmp_path / "airseam" / "settings.json", tmp_path / "a.airseam"
    lock = enter(settings, None)
    assert lock is not None
    assert lock.isLocked()
    code = (
        "import sys\n"
        "from pathlib import Path\n"
        "from PySide6.QtCore import QCoreApplication\n"
        "from gui.single import enter\n"
        "app = QCoreApplication([])\n"
        "print('asks', flush=True)\n"
        "sys.exit(0 if enter(Path(sys.argv[1]), Path(sys.argv[2])) is None else 1)\n"
    )
    second = subprocess.Popen([sys.executable, "-c", code, str(settings), str(job)], cwd=ROOT, stdout=subprocess.PIPE)
    holder = QApplication.instance()
    assert holder is not None
    assert second.stdout is not None
    try:
        assert second.stdout.readline() == b"asks\n"
        qtbot.wait(400)
        assert second.poll() is None
        bell = Doorbell(name_of(settings), holder)
        rung: list[Path | None] = []
        bell.rung.connect(rung.append)
        qtbot.waitUntil(lambda: second.poll() is not None, timeout=30_000)
        assert (second.returncode, rung) == (0, [job])
        bell.close()
        bell.deleteLater()
    finally:
        second.kill()
        second.wait()
        second.stdout.close()
        lock.unlock()
    # The lock of a process that is gone, or of a window that was closed, holds nobody up.
    again = enter(settings, None)
    assert again is not None
    assert again.isLocked()
    again.unlock()
