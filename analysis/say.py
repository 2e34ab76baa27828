"""How sentences are put into words: English with the values filled in, unless somebody says it in another language."""

from __future__ import annotations

from collections.abc import Callable

Say = Callable[..., str]
"""Takes an English message and, by name, the values that belong in its braces."""


def in_english(message: str, /, **values: object) -> str:
    """Return the message itself with its values."""
    return message.format(**values) if values else message
