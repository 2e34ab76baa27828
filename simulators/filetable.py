"""Tables of house and scenario files: every mistake is answered with file, line, key and what is allowed."""

from __future__ import annotations

import tomllib
from collections.abc import Mapping, Sequence
from pathlib import Path
from typing import Never

from drivers.profiletable import Table


class InvalidFile(ValueError):
    """A house or scenario file that cannot be used."""

    def __init__(self, file: str, line: int | None, key: str, allowed: str) -> None:
        """Name the file, the line if known, the key and what is allowed there."""
        where = file if line is None else f"{file}, line {line}"
        super().__init__(f"{where}: {key}: {allowed}" if key else f"{where}: {allowed}")
        self.file = file
        self.line = line
        self.key = key


class FileTable(Table):
    """A table of a file for the simulator."""

    def fail(self, key: str, allowed: str) -> Never:
        """Raise the error about a key."""
        name = f"{self._header}.{key}" if self._header else key
        raise InvalidFile(self._file, self._line_of(key), name, allowed)

    def optional(self, key: str) -> FileTable | None:
        """Return a table inside this one, None when it is missing."""
        return self.table(key) if self.has(key) else None


def read_file(text: str, file: str, form: str) -> FileTable:
    """Return the top table of a file; raises `InvalidFile` when it is no TOML or of another format."""
    try:
        content: Mapping[str, object] = tomllib.loads(text)
    except tomllib.TOMLDecodeError as error:
        raise InvalidFile(file, None, "", f"this is no TOML: {error}") from error
    top = FileTable(content, file, text, "")
    if not top.has("format") or content["format"] != form:
        top.fail("format", f'"{form}" is needed, not {content.get("format")!r}')
    return top


def named_file(kind: str, id_or_path: str, folder: Path, names: Sequence[str]) -> tuple[str, str, str]:
    """Return id, text and the words for the file of what is shipped under a name, or of a file that ends in .toml.

    Raises `InvalidFile` for a file that cannot be read; an unknown name, a `ValueError`, is answered with those there
    are.
    """
    own = id_or_path.endswith(".toml")
    if not own and id_or_path not in names:
        known = ", ".join(names)
        raise ValueError(f"{kind} is {id_or_path!r}: a .toml file is needed, or one of: {known}")
    path = Path(id_or_path) if own else folder / f"{id_or_path}.toml"
    try:
        return path.stem, path.read_text(encoding="utf-8"), id_or_path if own else path.name
    except (OSError, UnicodeDecodeError) as error:
        raise InvalidFile(id_or_path, None, "", f"a file that can be read is needed: {error}") from error
