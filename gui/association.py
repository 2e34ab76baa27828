"""Lets the system open job files with this program, for this user only; nothing here needs Qt or an administrator.

On Linux by the Desktop Entry, Shared MIME-info and Icon Theme specifications of freedesktop.org, on Windows by the
classes of the user in the registry (both from memory).
"""

from __future__ import annotations

import os
import shutil
import subprocess
import sys
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from importlib.resources import files
from pathlib import Path
from xml.sax.saxutils import escape

from acquisition.job.schema import APPLICATION_ID, APPLICATION_ID_AT
from analysis.errors import InvalidInput
from gui.words import say

MIME_TYPE = "application/x-airseam"
WINDOWS_CLASS = "Airseam.Job"
ENDING = ".airseam"
COMMENT = "Job of a fan-pressurization test"
RESERVED = frozenset(" \t\n\"'\\><~|&;$*?#()`")
"""Characters of an argument that has to be quoted in a desktop entry."""


@dataclass(frozen=True, slots=True)
class Machine:
    """Where the association goes: the system, the folder of data of the user, and what starts the program."""

    system: str
    data: Path
    command: tuple[str, ...]


def this_machine() -> Machine:
    """Return this machine."""
    start = Path(__file__).resolve().parents[1] / "airseam.py"
    home = os.environ.get("XDG_DATA_HOME", "")
    data = Path(home) if Path(home).is_absolute() else Path.home() / ".local" / "share"
    return Machine(sys.platform, data, (sys.executable, str(start)))


def associate(machine: Machine) -> str:
    """Have job files opened with this program; return what was done as a sentence.

    Raises `InvalidInput` on a system that takes it from elsewhere, `OSError` where it cannot be written.
    """
    if machine.system == "win32":
        _write_registry(windows_entries(machine.command))
        return say("A double click on a job file (*{ending}) opens it with this program.", ending=ENDING)
    _only_linux(machine)
    for path, content in linux_files(machine).items():
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_bytes(content)
    _refresh(machine)
    return say("A double click on a job file (*{ending}) opens it with this program.", ending=ENDING)


def dissociate(machine: Machine) -> str:
    """Take it back; return what was done as a sentence. Raises as `associate`."""
    if machine.system == "win32":
        _clear_registry(windows_entries(machine.command))
    else:
        _only_linux(machine)
        for path in linux_files(machine):
            path.unlink(missing_ok=True)
        _refresh(machine)
    return say("Job files are no longer opened with this program by a double click.")


def linux_files(machine: Machine) -> Mapping[Path, bytes]:
    """Return the files that make the association on Linux, by their paths."""
    entry = (
        "[Desktop Entry]\nType=Application\nVersion=1.5\nName=Airseam\n"
        f"Comment={COMMENT}\nExec={exec_line(machine.command)} %f\nIcon=airseam\nTerminal=false\n"
        f"Categories=Science;Engineering;\nMimeType={MIME_TYPE};\nStartupWMClass=airseam\n"
    )
    mime = (
        '<?xml version="1.0" encoding="UTF-8"?>\n'
        '<mime-info xmlns="http://www.freedesktop.org/standards/shared-mime-info">\n'
        f'  <mime-type type="{MIME_TYPE}">\n'
        f"    <comment>{escape(COMMENT)}</comment>\n"
        '    <sub-class-of type="application/vnd.sqlite3"/>\n'
        '    <magic priority="60">\n'
        '      <match type="string" value="SQLite format 3" offset="0">\n'
        f'        <match type="big32" value="0x{APPLICATION_ID:08x}" offset="{APPLICATION_ID_AT}"/>\n'
        "      </match>\n"
        "    </magic>\n"
        f'    <glob pattern="*{ENDING}"/>\n'
        "  </mime-type>\n"
        "</mime-info>\n"
    )
    icon = files("gui").joinpath("airseam.svg").read_bytes()
    return {
        machine.data / "applications" / "airseam.desktop": entry.encode(),
        machine.data / "mime" / "packages" / "airseam.xml": mime.encode(),
        machine.data / "icons" / "hicolor" / "scalable" / "apps" / "airseam.svg": icon,
    }


def windows_entries(command: Sequence[str]) -> Mapping[str, str]:
    """Return the default values of the keys below `HKEY_CURRENT_USER` that make the association on Windows."""
    classes = r"Software\Classes"
    return {
        rf"{classes}\{ENDING}": WINDOWS_CLASS,
        rf"{classes}\{WINDOWS_CLASS}": COMMENT,
        rf"{classes}\{WINDOWS_CLASS}\shell": "open",
        rf"{classes}\{WINDOWS_CLASS}\shell\open": "",
        rf"{classes}\{WINDOWS_CLASS}\shell\open\command": f'{subprocess.list2cmdline(command)} "%1"',
    }


def exec_line(command: Iterable[str]) -> str:
    """Return arguments as the key `Exec` of a desktop entry writes them: quoted, then escaped as a text is."""
    return " ".join(_quoted(item.replace("%", "%%")) for item in command).replace("\\", "\\\\")


def _quoted(argument: str) -> str:
    if argument and not RESERVED.intersection(argument):
        return argument
    for mark in ("\\", '"', "`", "$"):
        argument = argument.replace(mark, f"\\{mark}")
    return f'"{argument}"'


def _only_linux(machine: Machine) -> None:
    if not machine.system.startswith("linux"):
        allowed = "only Linux and Windows can be told by a program; elsewhere choose it in the file's own information"
        raise InvalidInput("system", machine.system, allowed)


def _refresh(machine: Machine) -> None:
    """Have the desktop read its folders anew; where the tools are missing it does so by itself, later."""
    for tool, folder in (("update-mime-database", "mime"), ("update-desktop-database", "applications")):
        found = shutil.which(tool)
        if found is not None:
            subprocess.run([found, str(machine.data / folder)], capture_output=True, check=False)  # noqa: S603  a tool of the desktop


def _write_registry(entries: Mapping[str, str]) -> None:
    if sys.platform == "win32":
        import winreg

        for key, value in entries.items():
            with winreg.CreateKey(winreg.HKEY_CURRENT_USER, key) as opened:
                winreg.SetValueEx(opened, "", 0, winreg.REG_SZ, value)


def _clear_registry(entries: Mapping[str, str]) -> None:
    if sys.platform == "win32":
        import contextlib
        import winreg

        for key in reversed(entries):
            with contextlib.suppress(FileNotFoundError):
                winreg.DeleteKey(winreg.HKEY_CURRENT_USER, key)
