"""What the office is, and the part of it that a report copies in."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path

from analysis.errors import InvalidInput

LONGEST_TEXT = 600
LONGEST_LINE = 120
MOST_LINES = 5
"""What still leaves the certificate on one page."""


@dataclass(frozen=True, slots=True)
class Office:
    """The office. `address` and `closing` may have several lines; `logo` is the path of a picture, empty for none.

    `opening` stands in front of the certificate, `closing` at its end. `next_number` is the count of the next
    certificate. `jobs` and `backup` are folders, empty where none was chosen.
    """

    name: str = ""
    address: str = ""
    signer: str = ""
    opening: str = ""
    closing: str = ""
    logo: str = ""
    number_pattern: str = "{year}-{count:03}"
    next_number: int = 1
    name_pattern: str = "{name}-test-{test}"
    jobs: str = ""
    backup: str = ""

    def __post_init__(self) -> None:
        """Check the lengths; raises `InvalidInput`."""
        for field, text in (("opening text", self.opening), ("closing text", self.closing)):
            if len(text) > LONGEST_TEXT:
                raise InvalidInput(field, text, f"at most {LONGEST_TEXT} characters fit", shown=f"{len(text)} long")
        for field, text in (("name of the office", self.name), ("usual signer", self.signer)):
            if len(text) > LONGEST_LINE:
                raise InvalidInput(field, text, f"at most {LONGEST_LINE} characters fit", shown=f"{len(text)} long")
        lines = self.address.splitlines()
        if len(lines) > MOST_LINES or any(len(line) > LONGEST_LINE for line in lines):
            allowed = f"at most {MOST_LINES} lines of {LONGEST_LINE} characters fit"
            raise InvalidInput("address", self.address, allowed, shown=f"{len(lines)} lines long")
        if not 0 <= self.next_number < 10**9:
            raise InvalidInput("next number", self.next_number, "a whole number from 0 to 999 999 999 is needed")


@dataclass(frozen=True, slots=True)
class Letterhead:
    """What a report copies in of the office. `logo` is the picture, empty without one."""

    name: str = ""
    address: tuple[str, ...] = ()
    opening: str = ""
    closing: str = ""
    logo: bytes = b""


def letterhead(office: Office) -> Letterhead:
    """Return the letterhead; raises `InvalidInput` where the logo is gone."""
    logo = b""
    if office.logo:
        try:
            logo = Path(office.logo).read_bytes()
        except OSError as error:
            raise InvalidInput("logo", office.logo, f"it cannot be read ({error.strerror})") from error
    return Letterhead(
        name=office.name,
        address=tuple(line.strip() for line in office.address.splitlines() if line.strip()),
        opening=office.opening,
        closing=office.closing,
        logo=logo,
    )
