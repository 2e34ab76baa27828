"""The version of the program."""

from __future__ import annotations

import tomllib
from pathlib import Path

from acquisition.version import PROGRAM_VERSION


def test_the_program_says_the_version_of_its_package() -> None:
    table = tomllib.loads((Path(__file__).parents[2] / "pyproject.toml").read_text("utf-8"))
    assert table["project"]["version"] == PROGRAM_VERSION
