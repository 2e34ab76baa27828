"""The language that a command was asked to write in."""

from __future__ import annotations

import argparse

from acquisition.languages import Language, language_of


def wanted_language(options: argparse.Namespace) -> Language | None:
    """Return the language of the option, None where that of the job holds; raises `InvalidInput`."""
    return None if options.language is None else language_of(options.language, "--language")
