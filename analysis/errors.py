"""The one error of the analysis: input that cannot be used, said in one sentence."""

from __future__ import annotations

LONGEST = 160
"""Characters of a value that a message shows."""


class InvalidInput(ValueError):
    """A field whose value cannot be used.

    The message names the field, the value and what is allowed: `runs[0].points[3].flow_m3_h is -4: a number greater
    than 0 is needed`.
    """

    def __init__(self, field: str, value: object, allowed: str, *, shown: str = "") -> None:
        """Keep the three parts; `allowed` is the end of the sentence, `shown` stands for the value in it if given."""
        self.shown = shown or ("missing" if value is None else in_short(value))
        super().__init__(f"{field} is {self.shown}: {allowed}")
        self.field = field
        self.value = value
        self.allowed = allowed


def in_short(value: object) -> str:
    """Return the value as text; of a long one begin and end, since a path says most at its end."""
    text = repr(value)
    return text if len(text) <= LONGEST else f"{text[: LONGEST - 70]}...{text[-67:]}"
