"""Why a test is made: that decides what its report may say."""

from __future__ import annotations

from enum import StrEnum


class TestKind(StrEnum):
    """CODE: a rule asks for it. QUALITY: somebody wants to know. FINDING: to find leaks; its result is not quoted."""

    CODE = "code"
    QUALITY = "quality"
    FINDING = "finding"

    @property
    def words(self) -> str:
        """The kind for people."""
        return KIND_WORDS[self]

    @property
    def certified(self) -> bool:
        """Whether its report is a certificate with a number."""
        return self is not TestKind.FINDING


KIND_WORDS = {
    TestKind.CODE: "By a code or programme",
    TestKind.QUALITY: "For quality, no code",
    TestKind.FINDING: "Finding leaks only",
}
