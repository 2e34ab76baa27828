"""Teaching a gauge: what came over the wire, the numbers that were pointed at, and the profile that this makes."""

from __future__ import annotations

import math
import re
from dataclasses import dataclass, replace

from acquisition.told.texts import sentence
from drivers.errors import ProfileError
from drivers.siunits import UNITS
from drivers.teaching.channels import Meaning
from drivers.teaching.lesson import Lesson, Span, Taught, number_at, numbers_in, preview, teach
from drivers.teaching.linkguess import Guess, LinkGuess
from drivers.teaching.rawstream import hex_view
from gui.viewmodels.retold import retold
from gui.words import mark, say

SHOWN_ROWS, SHOWN_BYTES = 6, 96
LETTERS = {"pressure": "p", "temperature": "t", "flow": "q", "humidity": "h", "speed": "s"}
NOT_LISTENING = mark("Choose the port of the gauge and listen to it.")
POINT = mark("Click the numbers in the line that you need, one after the other, and say what each is.")


@dataclass(frozen=True, slots=True)
class PickPicture:
    """A number that was pointed at: what it is said to be, and what the profile reads there now."""

    text: str
    name: str
    quantity: str
    unit: str
    units: tuple[str, ...]
    value: str


@dataclass(frozen=True, slots=True)
class TeachPicture:
    """The page. `marks` are the places of the numbers in the sample, and whether each was pointed at."""

    sentence: str
    listening: bool
    raw: str
    sample: str
    marks: tuple[tuple[int, int, bool], ...]
    picks: tuple[PickPicture, ...]
    title: str
    verdict: str
    ready: bool


class TeachModel:
    """A lesson under way. Belongs to the thread of the window; the port is listened to elsewhere."""

    def __init__(self) -> None:
        """Begin with nothing heard."""
        self.port = ""
        self.ask = ""
        self.title = say("My gauge")
        self._guess: LinkGuess | None = None
        self._seen: Guess | None = None
        self._trouble = ""
        self._sample = ""
        self._picks: dict[Span, Meaning] = {}

    @property
    def quantities(self) -> tuple[str, ...]:
        """What a number may be of."""
        return tuple(LETTERS)

    def listen(self, guess: LinkGuess) -> None:
        """Listen to a port; what was pointed at before is forgotten."""
        self.close()
        self._guess, self._seen, self._trouble, self._sample = guess, None, "", ""
        self._picks = {}
        guess.start()

    def close(self) -> None:
        """Let the port go."""
        guess, self._guess = self._guess, None
        if guess is not None:
            guess.close()

    def refresh(self) -> bool:
        """Take what was heard meanwhile; return whether anything is new."""
        if self._guess is None:
            return False
        seen = self._guess.look()
        if seen == self._seen:
            return False
        self._seen = seen
        if seen.done:
            self.close()
            self._sample = self._commonest()
        return True

    def pick(self, place: int) -> bool:
        """Point at the number at a place of the sample, or no longer; return whether there is one."""
        span = number_at(self._sample, place)
        if span is None:
            return False
        if span in self._picks:
            del self._picks[span]
        else:
            self._picks[span] = Meaning(self._free_name("pressure"))
        return True

    def drop(self, at: int) -> None:
        """Point no longer at the number at a place in the list."""
        del self._picks[list(self._picks)[at]]

    def say(self, at: int, field: str, text: str) -> None:
        """Say what the number at a place in the list is: its `name`, `quantity` or `unit`."""
        span, meaning = list(self._picks.items())[at]
        if field == "quantity" and text != meaning.quantity:
            meaning = replace(meaning, quantity=text, unit=next(iter(UNITS[text])), name=self._free_name(text))
        elif field == "name":
            meaning = replace(meaning, name=text.strip())
        elif field == "unit":
            meaning = replace(meaning, unit=text)
        self._picks[span] = meaning

    def taught(self) -> Taught:
        """Return the profile; raises `ProfileError` with what is missing."""
        seen = self._seen
        settings = seen.settings if seen is not None else None
        if seen is None or seen.best is None or settings is None:
            raise ProfileError("profile", None, "lines", NOT_LISTENING)
        stream = seen.best.seen
        return teach(
            Lesson(
                id=profile_id(self.title),
                title=self.title,
                sample=self._sample,
                picks=tuple((span.start, meaning) for span, meaning in self._picks.items()),
                lines=stream.lines,
                link=replace(settings, terminator=stream.terminator),
                checksum=stream.checksum,
                rate_hz=stream.rate_hz or 10.0,
                poll=self.ask.strip(),
            )
        )

    def picture(self) -> TeachPicture:
        """Return the page."""
        taught, verdict = None, ""
        if self._picks:
            try:
                taught = self.taught()
                verdict = retold(taught.sentence)
            except ProfileError as error:
                verdict = sentence(retold(error.allowed))
        elif self._sample:
            verdict = say(POINT)
        return TeachPicture(
            sentence=retold(self._seen.sentence) if self._seen is not None else say(NOT_LISTENING),
            listening=self._guess is not None,
            raw=self._raw(),
            sample=self._sample,
            marks=tuple((span.start, span.end, span in self._picks) for span in numbers_in(self._sample)),
            picks=tuple(self._pick_pictures(taught)),
            title=self.title,
            verdict=verdict,
            ready=taught is not None,
        )

    def _pick_pictures(self, taught: Taught | None) -> list[PickPicture]:
        values: dict[str, float] = {}
        if taught is not None and self._seen is not None and self._seen.best is not None:
            read = preview(taught.profile, self._seen.best.seen.lines[-1:])
            values = read[-1] if read else {}
        return [
            PickPicture(
                span.text, meaning.name, meaning.quantity, meaning.unit, tuple(UNITS[meaning.quantity]),
                value_text(values.get(meaning.name), meaning.quantity),
            )
            for span, meaning in self._picks.items()
        ]  # fmt: skip

    def _raw(self) -> str:
        best = self._seen.best if self._seen is not None else None
        if best is None:
            return ""
        return "\n".join([*best.seen.lines[-SHOWN_ROWS:], "", *hex_view(best.data[-SHOWN_BYTES:])])

    def _commonest(self) -> str:
        """Return the newest line of those with the most numbers."""
        best = self._seen.best if self._seen is not None else None
        if best is None or self._seen is None or self._seen.settings is None or not best.seen.lines:
            return ""
        lines = best.seen.lines
        most = max(len(numbers_in(line)) for line in lines)
        return next(line for line in reversed(lines) if len(numbers_in(line)) == most)

    def _free_name(self, quantity: str) -> str:
        taken = {meaning.name for meaning in self._picks.values()}
        letter = LETTERS[quantity]
        return next(name for at in range(1, 99) if (name := f"{letter}{at}") not in taken)


def profile_id(title: str) -> str:
    """Return the id of a profile with this title."""
    return re.sub(r"[^a-z0-9]+", "-", title.lower()).strip("-") or "my-gauge"


def value_text(value: float | None, quantity: str) -> str:
    """Return a value in SI units as it is shown while a gauge is taught."""
    if value is None or math.isnan(value):
        return "–"
    if math.isinf(value):
        return "over range"
    unit = {"pressure": "Pa", "temperature": "°C", "flow": "m³/h"}.get(quantity, "")
    return f"{value:.2f} {unit}".replace("-", "\u2212").strip()
