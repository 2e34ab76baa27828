"""Undo and redo of edits. Measurements are never in here."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Generic, TypeVar

T = TypeVar("T")
DEPTH = 200


@dataclass(frozen=True, slots=True)
class Change(Generic[T]):
    """One edit: what it was called, and the document before and after."""

    label: str
    before: T
    after: T


class History(Generic[T]):
    """The edits of one document, oldest first."""

    def __init__(self) -> None:
        """Start with nothing to undo."""
        self._done: list[Change[T]] = []
        self._undone: list[Change[T]] = []

    @property
    def undo_label(self) -> str:
        """What would be undone, empty when there is nothing."""
        return self._done[-1].label if self._done else ""

    @property
    def redo_label(self) -> str:
        """What would be done again, empty when there is nothing."""
        return self._undone[-1].label if self._undone else ""

    def note(self, label: str, before: T, after: T) -> None:
        """Remember an edit; what had been undone is forgotten."""
        self._done = [*self._done, Change(label, before, after)][-DEPTH:]
        self._undone.clear()

    def undo(self) -> T | None:
        """Return the document before the last edit, None when there is none."""
        if not self._done:
            return None
        change = self._done.pop()
        self._undone.append(change)
        return change.before

    def redo(self) -> T | None:
        """Return the document after the edit that was undone last, None when there is none."""
        if not self._undone:
            return None
        change = self._undone.pop()
        self._done.append(change)
        return change.after
