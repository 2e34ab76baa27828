"""An error in words: what cannot be used, in the language on the screen."""

from __future__ import annotations

from acquisition.told import texts
from analysis.errors import InvalidInput
from drivers.errors import ProfileError
from gui.viewmodels.retold import retold, retold_part
from gui.words import say


def error_words(error: Exception) -> str:
    """Return what an error says, to stand inside a sentence: no capital in front, no full stop behind."""
    match error:
        case InvalidInput():
            parts = {"field": error.field, "shown": error.shown, "allowed": error.allowed}
            return say("{field} is {shown}: {allowed}", **{name: retold_part(text) for name, text in parts.items()})
        case ProfileError(line=None):
            allowed = retold_part(error.allowed)
            return say("{file}: {key}: {allowed}", file=error.file, key=error.key, allowed=allowed)
        case ProfileError():
            allowed = retold_part(error.allowed)
            place = {"file": error.file, "line": error.line, "key": error.key}
            return say("{file}, line {line}: {key}: {allowed}", **place, allowed=allowed)
        case OSError() if error.strerror:
            words = retold(error.strerror)
            return f"{words} ({error.filename})" if error.filename else words
        case _:
            return retold(str(error)).removesuffix(".")


def sentence(error: Exception) -> str:
    """Return an error as a sentence: a capital in front, a full stop behind."""
    return texts.sentence(error_words(error))
