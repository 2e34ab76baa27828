"""Instrument profiles: everything that the program knows of an instrument, as data.

A profile is a TOML file. Every mistake in it is answered with file, line, key and what is allowed. Units become SI
factors on reading, so that nothing behind knows another unit.
"""

from __future__ import annotations

import re
import tomllib
from importlib import resources
from pathlib import Path

from drivers.errors import ProfileError
from drivers.profilesections import profile_of
from drivers.profiletable import Table
from drivers.spec import ChannelSpec, LinkSettings, Profile

__all__ = ["ChannelSpec", "LinkSettings", "Profile", "load_profile", "read_profile", "shipped_profiles"]

FOLDER = "drivers.profiles"
LARGEST_FILE_BYTES = 200_000


def shipped_profiles() -> tuple[str, ...]:
    """Return the ids of the profiles that come with the program."""
    names = (item.name for item in resources.files(FOLDER).iterdir())
    return tuple(sorted(name.removesuffix(".toml") for name in names if name.endswith(".toml")))


def load_profile(id_or_path: str) -> Profile:
    """Return a shipped profile by its id, or the profile in a file; raises `ProfileError`."""
    if id_or_path in shipped_profiles():
        text = (resources.files(FOLDER) / f"{id_or_path}.toml").read_text("utf-8")
        return read_profile(text, f"{id_or_path}.toml")
    return read_profile(_file_text(id_or_path), Path(id_or_path).name)


def read_profile(text: str, file: str) -> Profile:
    """Return the profile in a text; `file` is its name in errors. Raises `ProfileError`."""
    try:
        content = tomllib.loads(text)
    except tomllib.TOMLDecodeError as error:
        found = re.search(r"line (\d+)", str(error))
        raise ProfileError(file, int(found.group(1)) if found else None, "TOML", str(error)) from error
    except RecursionError as error:
        raise ProfileError(file, None, "TOML", "brackets nested too deeply") from error
    return profile_of(Table(content, file, text, ""))


def _file_text(path: str) -> str:
    try:
        with Path(path).open("rb") as file:
            raw = file.read(LARGEST_FILE_BYTES + 1)
    except (OSError, ValueError) as error:
        known = ", ".join(shipped_profiles())
        raise ProfileError(path, None, "profile", f"no such file; the shipped ones are: {known}") from error
    if len(raw) > LARGEST_FILE_BYTES:
        raise ProfileError(path, None, "profile", f"at most {LARGEST_FILE_BYTES} bytes are read")
    try:
        return raw.decode("utf-8-sig")
    except UnicodeDecodeError as error:
        raise ProfileError(path, None, "profile", "a text file in UTF-8 is needed") from error
