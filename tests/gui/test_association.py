"""Job files and the system: what stands in the files that say which program opens them, and who reads them."""

from __future__ import annotations

import os
import re
import subprocess
import sys
from configparser import ConfigParser
from dataclasses import replace
from pathlib import Path

import pytest

import airseam
from acquisition.job import Job
from analysis.errors import InvalidInput
from drivers.clock import VirtualClock
from gui.association import Machine, associate, dissociate, exec_line, linux_files, this_machine, windows_entries
from tests.acquisition.samples import START
from tests.gui.conftest import Stage

ODD = ("/opt/a b/python3", r"C:\x $HOME `y` \"z\" 100%.py")

ASK_QT = """
import sys
from PySide6.QtCore import QMimeDatabase
known = QMimeDatabase()
for name in sys.argv[1:]:
    print(known.mimeTypeForFile(name).name(), known.mimeTypeForFile(name, QMimeDatabase.MatchMode.MatchContent).name())
"""


@pytest.fixture
def machine(tmp_path: Path) -> Machine:
    return Machine("linux", tmp_path / "share", ("/usr/bin/python3", "/opt/airseam.py"))


def test_qt_takes_the_file_for_what_it_is_by_its_ending_and_by_its_content(machine: Machine, tmp_path: Path) -> None:
    """Qt reads the MIME database by itself, as the file managers do (Shared MIME-info specification)."""
    named, unnamed = tmp_path / "x.airseam", tmp_path / "no ending"
    Job.create(named, VirtualClock(START), "Mill Row 8").close()
    unnamed.write_bytes(named.read_bytes())
    associate(machine)
    asked = subprocess.run(
        [sys.executable, "-c", ASK_QT, str(named), str(unnamed)],
        env={**os.environ, "XDG_DATA_HOME": str(machine.data)},
        capture_output=True,
        text=True,
        check=True,
    )
    assert asked.stdout.split() == ["application/x-airseam"] * 4


def test_the_desktop_entry_starts_the_program_with_the_file(machine: Machine) -> None:
    files = linux_files(replace(machine, command=ODD))
    (entry,) = [content.decode() for path, content in files.items() if path.suffix == ".desktop"]
    known = ConfigParser(interpolation=None)
    known.optionxform = str  # type: ignore[assignment,method-assign]  # the keys keep their capitals
    known.read_string(entry)
    said = dict(known["Desktop Entry"])
    assert said["MimeType"] == "application/x-airseam;"
    # Desktop Entry specification: the escapes of a text, then quotes as a shell has them, then the field codes.
    unescaped = re.sub(r"\\\\", lambda _: "\\", said["Exec"])
    asked = subprocess.run(["sh", "-c", f"printf '%s\\n' {unescaped}"], capture_output=True, text=True, check=True)
    *command, file = asked.stdout.splitlines()
    assert tuple(item.replace("%%", "%") for item in command) == ODD
    assert file == "%f"


def test_plain_arguments_are_not_quoted() -> None:
    assert exec_line(("/usr/bin/python3", "/opt/airseam.py")) == "/usr/bin/python3 /opt/airseam.py"


def test_it_is_made_twice_and_taken_back_without_a_trace(machine: Machine) -> None:
    associate(machine)
    assert "opens it with this program" in associate(machine)
    assert all(path.is_file() for path in linux_files(machine))
    dissociate(machine)
    dissociate(machine)
    assert not any(path.exists() for path in linux_files(machine))


def test_windows_is_told_for_this_user_only() -> None:
    entries = windows_entries((r"C:\Program Files\python.exe", r"C:\airseam.py"))
    assert entries[r"Software\Classes\.airseam"] == "Airseam.Job"
    command = entries[r"Software\Classes\Airseam.Job\shell\open\command"]
    assert command == r'"C:\Program Files\python.exe" C:\airseam.py "%1"'


def test_elsewhere_a_sentence_says_where_to_choose(machine: Machine) -> None:
    for change in (associate, dissociate):
        with pytest.raises(InvalidInput, match="system is 'darwin': only Linux and Windows"):
            change(replace(machine, system="darwin"))


def test_this_machine_starts_what_runs_now() -> None:
    python, program = this_machine().command
    assert python == sys.executable
    assert Path(program) == Path(airseam.__file__).resolve()


def test_the_command_makes_it_and_takes_it_back(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.setenv("XDG_DATA_HOME", str(tmp_path / "share"))
    assert airseam.main(["associate"]) == 0
    assert (tmp_path / "share" / "applications" / "airseam.desktop").is_file()
    assert airseam.main(["associate", "--remove"]) == 0
    assert not list((tmp_path / "share").rglob("airseam.*"))
    (tmp_path / "file").write_text("")
    monkeypatch.setenv("XDG_DATA_HOME", str(tmp_path / "file"))
    capsys.readouterr()
    assert airseam.main(["associate"]) == 2
    assert "it cannot be written" in capsys.readouterr().err


def test_the_menu_tells_the_system(stage: Stage, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("XDG_DATA_HOME", str(tmp_path / "share"))
    stage.program.actions.associate.trigger()
    assert (tmp_path / "share" / "applications" / "airseam.desktop").is_file()
    assert "takes it back" in stage.program.desk.notices[-1].sentence
