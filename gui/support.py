"""What helps somebody else to find a fault: the log, and a bundle that says nothing about people unless asked to."""

from __future__ import annotations

import io
import json
import logging
import platform
import re
import tempfile
import zipfile
from collections.abc import Mapping
from dataclasses import asdict, replace
from logging.handlers import RotatingFileHandler
from pathlib import Path

from PySide6 import __version__ as qt_version

from acquisition.job import Job
from acquisition.version import PROGRAM_VERSION
from gui.settings import Settings

LOG = "airseam.log"
LOG_BYTES, LOG_FILES = 2**20, 5
STAMP = (1980, 1, 1, 0, 0, 0)
"""Of every file in the bundle: the oldest that the format knows, so that the same content gives the same bytes."""
ERROR = re.compile(r"(\w+\.)*[A-Z]\w*: ")
"""How the last line of an error begins: with its kind."""
QUOTED = re.compile(r"'(?!\(a job\)')[^']*'|\"[^\"]*\"")


def keep_log(folder: Path) -> Path | None:
    """Have warnings and errors written into a rotating file; return it, None where that is not possible."""
    try:
        folder.mkdir(parents=True, exist_ok=True)
        handler = RotatingFileHandler(folder / LOG, maxBytes=LOG_BYTES, backupCount=LOG_FILES - 1, encoding="utf-8")
    except OSError:
        return None
    handler.setLevel(logging.WARNING)
    handler.setFormatter(logging.Formatter("%(asctime)s %(levelname)s %(name)s: %(message)s"))
    logging.getLogger().addHandler(handler)
    return folder / LOG


def bundle_parts(settings: Settings, trouble: str, log: Path | None) -> dict[str, bytes]:
    """Return what goes into every bundle, by name: nothing of it says who or where."""
    facts = {
        "program": PROGRAM_VERSION,
        "python": platform.python_version(),
        "qt": qt_version,
        "system": f"{platform.system()} {platform.release()}, {platform.machine()}",
    }
    bare = replace(settings, recent=())
    parts = {
        "versions.json": _json(facts),
        "settings.json": _json(asdict(bare)),
        "trouble.txt": anonymous(trouble).encode(),
    }
    if log is not None and log.exists():
        parts[LOG] = anonymous(log.read_text("utf-8", errors="replace")).encode()
    return parts


def job_bytes(job: Job) -> bytes:
    """Return a copy of a whole job, which is open: only where the person asked for it."""
    with tempfile.TemporaryDirectory() as folder:
        copy = Path(folder) / job.path.name
        job.copy_to(copy)
        return copy.read_bytes()


def bundle(parts: Mapping[str, bytes]) -> bytes:
    """Return the parts as one ZIP file."""
    made = io.BytesIO()
    with zipfile.ZipFile(made, "w", zipfile.ZIP_DEFLATED) as archive:
        for name, content in parts.items():
            archive.writestr(zipfile.ZipInfo(name, STAMP), content, zipfile.ZIP_DEFLATED)
    return made.getvalue()


def anonymous(text: str) -> str:
    """Return a text without the folder's owner, without names of job files, and without the values of errors."""
    home = str(Path.home())
    cleaned = text.replace(home, "~") if len(home) > 1 else text
    words = [_without_values(_without_job(line)) for line in cleaned.splitlines()]
    return "\n".join(words) + ("\n" if text.endswith("\n") else "")


def _without_job(line: str) -> str:
    """Cut the name of a job out of a line, with the folders in front of it."""
    end = line.find(".airseam")
    if end < 0:
        return line
    start = max(line.rfind(mark, 0, end) for mark in ("'", '"', " /", " ~", "(")) + 1
    return f"{line[:start]}(a job){_without_job(line[end + len('.airseam') :])}"


def _without_values(line: str) -> str:
    """Cut what is quoted out of the last line of an error: a person may have typed it."""
    return QUOTED.sub("'…'", line) if ERROR.match(line) else line


def _json(table: Mapping[str, object]) -> bytes:
    return (json.dumps(table, indent=1, ensure_ascii=False, sort_keys=True) + "\n").encode()
