"""Where a figure in a data file comes from, and how far it can be trusted."""

from __future__ import annotations

from dataclasses import dataclass

CONFIDENCES = ("high", "medium", "low")
FROM_MEMORY = "from memory"


@dataclass(frozen=True, slots=True)
class Provenance:
    """Source of a figure.

    `verified` turns true when somebody has held the figure against the document itself; `source` says until then where
    it was read, or begins with "from memory".
    """

    source: str
    confidence: str
    verified: bool

    @property
    def words(self) -> str:
        """Return what has to stand beside the figure."""
        if self.verified:
            return f"checked against the document: {self.source}"
        if self.source.startswith(FROM_MEMORY):
            return f"{self.source}, not checked against the document"
        return f"read in {self.source}, not checked against the document"
