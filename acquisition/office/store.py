"""The office as a JSON file in the folder of the user's settings, its logo beside it."""

from __future__ import annotations

import json
import os
from dataclasses import asdict, fields
from pathlib import Path

from platformdirs import user_config_path

from acquisition.jsontext import table_of
from acquisition.office.records import Office
from analysis.errors import InvalidInput

FILE = "office.json"
LARGEST_LOGO_BYTES = 2 * 2**20
LOGO_HEADS = {".png": b"\x89PNG\r\n\x1a\n", ".jpg": b"\xff\xd8\xff", ".jpeg": b"\xff\xd8\xff"}


def office_path() -> Path:
    """Return where the office of this user is."""
    return user_config_path("airseam", appauthor=False) / FILE


def load_office(path: Path) -> Office:
    """Read the office, a blank one where there is no file yet; raises `InvalidInput`."""
    try:
        text = path.read_text("utf-8")
    except FileNotFoundError:
        return Office()
    except (OSError, UnicodeDecodeError) as error:
        raise InvalidInput("office", str(path), f"it cannot be read ({error})") from error
    table = table_of("office", text)
    known = {field.name: type(field.default) for field in fields(Office)}
    for name, value in table.items():
        if name not in known or type(value) is not known[name]:
            raise InvalidInput(f"office, {name}", value, f"one of {', '.join(known)}, each of its kind, is needed")
    return Office(**table)


def save_office(office: Office, path: Path) -> None:
    """Write the office as a whole or not at all; raises `InvalidInput` when it cannot be written."""
    fresh = path.with_suffix(".new")
    try:
        path.parent.mkdir(parents=True, exist_ok=True)
        with fresh.open("w", encoding="utf-8") as file:
            file.write(json.dumps(asdict(office), indent=1, ensure_ascii=False))
            file.flush()
            os.fsync(file.fileno())
        fresh.replace(path)
    except OSError as error:
        raise InvalidInput("office", str(path), f"it cannot be written ({error.strerror})") from error


def keep_logo(source: Path, path: Path) -> str:
    """Copy a logo beside the office file and return where it is; raises `InvalidInput` for what is no picture."""
    suffix = source.suffix.lower()
    if suffix not in LOGO_HEADS:
        raise InvalidInput("logo", str(source), "a PNG or JPEG picture is needed")
    try:
        content = source.read_bytes()
        if not content.startswith(LOGO_HEADS[suffix]) or len(content) > LARGEST_LOGO_BYTES:
            most = LARGEST_LOGO_BYTES // 2**20
            raise InvalidInput("logo", str(source), f"a PNG or JPEG picture of at most {most} MiB is needed")
        target = path.with_name(f"logo{suffix}")
        path.parent.mkdir(parents=True, exist_ok=True)
        if source.resolve() != target.resolve():
            target.write_bytes(content)
    except OSError as error:
        raise InvalidInput("logo", str(source), f"it cannot be copied ({error.strerror})") from error
    return str(target)
