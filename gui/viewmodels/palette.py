"""Finding a command by its words."""

from __future__ import annotations

from collections.abc import Sequence


def matching(commands: Sequence[str], typed: str) -> tuple[int, ...]:
    """Return the places of the commands that have all typed words in them; those with a word that begins so first."""
    words = typed.lower().split()
    found = [at for at, command in enumerate(commands) if all(word in command.lower() for word in words)]

    def misses(at: int) -> int:
        parts = commands[at].lower().split()
        return sum(not any(part.startswith(word) for part in parts) for word in words)

    return tuple(sorted(found, key=lambda at: (misses(at), at)))
