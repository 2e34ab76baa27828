"""A line, the numbers that somebody pointed at in it, and the profile that reads them.

The pattern of the profile is the line itself with its numbers set free: text stays, blanks may be more or fewer,
numbers may be any number. Numbers that nobody pointed at are passed over. All lines that came are held against the
pattern.
"""

from __future__ import annotations

import math
import re
from collections.abc import Sequence
from dataclasses import dataclass, field
from typing import NoReturn

from drivers.errors import ProfileError
from drivers.framing.fields import Over
from drivers.framing.lines import Checksum
from drivers.spec import LinkSettings, Profile
from drivers.teaching.channels import Meaning, channel_lines, checked, heading, quoted

NUMBER = r"[-+]?(?:[0-9]+\.?[0-9]*|\.[0-9]+)(?:[eE][-+]?[0-9]{1,3})?"
WORD = r"[^\s,;=]{1,12}"
ENOUGH = 0.9
"""Share of the lines that a strict pattern must fit; below, words in the line may change."""
OVER_WORDS = re.compile(r"[-+]?(?:OVER(?:RANGE)?|OVR|OVL|OL|OF|OVF|O\.L\.?|>+|<+)", re.IGNORECASE)
FASTEST_HZ = 1000.0

_NUMBER = re.compile(NUMBER)
_NAME_BEFORE, _NAME_BEHIND = re.compile(r"[A-Za-z_]$"), re.compile(r"\s*[=:]")


@dataclass(frozen=True, slots=True)
class Span:
    """A number in a line: its first place, the place behind its last, and its text."""

    start: int
    end: int
    text: str

    @property
    def step(self) -> float:
        """What its last digit is worth."""
        mantissa, _, exponent = self.text.lower().partition("e")
        decimals = len(mantissa.partition(".")[2])
        return float(f"1e{int(exponent or 0) - decimals}")


@dataclass(frozen=True, slots=True)
class Lesson:
    """All that was said and seen. `picks` are places in `sample` (any place in a number) and what the number is.

    With `poll` (text, without the line end) the gauge is asked `rate_hz` times a second, else it sends by itself.
    """

    id: str
    title: str
    sample: str
    picks: tuple[tuple[int, Meaning], ...]
    lines: tuple[str, ...] = ()
    link: LinkSettings = field(default_factory=LinkSettings)
    checksum: Checksum = Checksum.NONE
    rate_hz: float = 10.0
    poll: str = ""
    zero: str = ""


@dataclass(frozen=True, slots=True)
class Taught:
    """The profile as text and as read; how many of the lines it reads, and a sentence about that."""

    text: str
    profile: Profile
    read: int
    of: int
    sentence: str


def numbers_in(line: str) -> tuple[Span, ...]:
    """Return the numbers of a line; a digit that belongs to a name (`p1=`, `T2:`) is none."""
    found = []
    for match in _NUMBER.finditer(line):
        start, end = match.span()
        named = _NAME_BEFORE.search(line[:start]) and _NAME_BEHIND.match(line, end)
        if not named:
            found.append(Span(start, end, match.group()))
    return tuple(found)


def number_at(line: str, place: int) -> Span | None:
    """Return the number that a click on a place in the line means, None where there is none."""
    return next((span for span in numbers_in(line) if span.start <= place < span.end), None)


def teach(lesson: Lesson) -> Taught:
    """Return the profile that a lesson makes; raises `ProfileError` with what is missing."""
    picked = _picked(lesson)
    lines = lesson.lines or (lesson.sample,)
    pattern, words = _fitted(lesson.sample, picked, lines, loose=False)
    if _count(pattern, lines) < ENOUGH * len(lines):
        pattern, words = _fitted(lesson.sample, picked, lines, loose=True)
    text, profile = _profile(lesson, picked, pattern, words, even=True)
    read = len(preview(profile, lines))
    if read < _count(pattern, lines):
        text, profile = _profile(lesson, picked, pattern, words, even=False)
        read = len(preview(profile, lines))
    return Taught(text, profile, read, len(lines), _verdict(read, len(lines)))


def preview(profile: Profile, lines: Sequence[str]) -> list[dict[str, float]]:
    """Return what a profile reads in lines, in SI units: NaN for nothing connected, infinity for over range."""
    assert profile.reply is not None
    channels = {channel.name: channel for channel in profile.channels}
    seen = []
    for line in lines:
        values = profile.reply.values(line.strip())
        if values is not None:
            seen.append(
                {
                    name: math.inf if value is Over.RANGE else value * channels[name].factor + channels[name].offset
                    for name, value in values.items()
                }
            )
    return seen


def _picked(lesson: Lesson) -> dict[Span, Meaning]:
    picked: dict[Span, Meaning] = {}
    for place, meaning in lesson.picks:
        span = number_at(lesson.sample, place)
        if span is None:
            _refuse(lesson, meaning.name, f"there is no number at place {place} of the line")
        if span in picked:
            _refuse(lesson, meaning.name, f"the number {span.text} is {picked[span].name} already")
        if not meaning.name.isidentifier() or not meaning.name.isascii() or meaning.name == "serial":
            _refuse(lesson, "name", f"letters, digits and _ are needed, not {meaning.name!r}")
        picked[span] = meaning
    if not picked:
        _refuse(lesson, "channel", "point at one number of the line at least")
    return picked


def _refuse(lesson: Lesson, key: str, allowed: str) -> NoReturn:
    raise ProfileError(f"{lesson.id}.toml", None, key, allowed)


def _pattern(sample: str, picked: dict[Span, Meaning], words: Sequence[str], *, loose: bool, word: str = "") -> str:
    """Return the expression of a line; a number that was picked may also be one of `words`, or anything like `word`."""
    choices = "|".join([NUMBER, *(re.escape(item) for item in words), *([word] if word else [])])
    parts, at = [], 0
    for span in numbers_in(sample):
        before = sample[at : span.start]
        # Blanks at both ends of a line are cut off before it is read.
        parts.append(_literal(before if at else before.lstrip(), loose=loose, before_number=True))
        meaning = picked.get(span)
        # The order of alternatives does not matter: the whole line has to fit.
        parts.append(f"(?:{choices})" if meaning is None else f"(?P<{meaning.name}>{choices})")
        at = span.end
    parts.append(_literal(sample[at:].rstrip(), loose=loose, before_number=False))
    return "".join(parts)


def _literal(text: str, *, loose: bool, before_number: bool) -> str:
    """Return the expression of what stands between two numbers."""
    if not text:
        return ""
    padded = before_number and bool(text.strip())
    body = text.rstrip() if padded else text
    parts = []
    for piece in re.findall(r"\s+|[A-Za-z]+|[^\sA-Za-z]+", body):
        if piece.isspace():
            parts.append(r"\s+")
        elif loose and piece.isalpha():
            parts.append("[A-Za-z]*")
        else:
            parts.append(re.escape(piece))
    if padded:
        # Numbers are often padded to a width: a blank stands where another line has a sign or a digit.
        parts.append(r"\s+" if text[-1:].isspace() and text.rstrip()[-1].isalnum() else r"\s*")
    return "".join(parts)


def _words(sample: str, picked: dict[Span, Meaning], lines: Sequence[str], *, loose: bool) -> tuple[str, ...]:
    """Return the words that the gauge writes instead of a number."""
    pattern = re.compile(_pattern(sample, picked, (), loose=loose, word=WORD))
    found: dict[str, None] = {}
    for line in lines:
        match = pattern.fullmatch(line.strip())
        for text in match.groupdict().values() if match else ():
            if not _NUMBER.fullmatch(text) and not re.search(r"[0-9]", text):
                found[text] = None
    return tuple(found)


def _fitted(
    sample: str, picked: dict[Span, Meaning], lines: Sequence[str], *, loose: bool
) -> tuple[str, tuple[str, ...]]:
    """Return the expression of the lines, and the words in them that stand for numbers."""
    words = _words(sample, picked, lines, loose=loose)
    return _pattern(sample, picked, words, loose=loose), words


def _count(pattern: str, lines: Sequence[str]) -> int:
    expression = re.compile(pattern)
    return sum(expression.fullmatch(line.strip()) is not None for line in lines)


def _profile(
    lesson: Lesson, picked: dict[Span, Meaning], pattern: str, words: Sequence[str], *, even: bool
) -> tuple[str, Profile]:
    over = [word for word in words if OVER_WORDS.fullmatch(word)]
    nothing = [word for word in words if word not in over]
    lines = heading(lesson.id, lesson.title, "lines", lesson.link)
    lines.insert(5, f"checksum = {quoted(lesson.checksum)}")
    lines += ["", "[identity]", "# It has no name to ask for: whoever sends lines of this form is taken for it."]
    if lesson.poll:
        lines.append(f"query = {quoted(lesson.poll)}")
    lines.append(f"pattern = {quoted(re.sub(r'[(][?]P<[^>]+>', '(?:', pattern) + '(?P<serial>)')}")
    lines += ["", "[reply]", 'layout = "pattern"', f"pattern = {quoted(pattern)}", f"even = {str(even).lower()}"]
    lines += [f"over_range = [{', '.join(map(quoted, over))}]"] if over else []
    lines += [f"not_a_number = [{', '.join(map(quoted, nothing))}]"] if nothing else []
    rate_hz = min(max(lesson.rate_hz, 0.02), FASTEST_HZ)
    if lesson.poll:
        lines += ["", "[poll]", f"query = {quoted(lesson.poll)}", f"rate_hz = {rate_hz!r}", "timeout_s = 0.5"]
    else:
        lines += ["", "[stream]", f"rate_hz = {rate_hz!r}", f"silence_s = {max(1.0, 5.0 / rate_hz)!r}"]
    if lesson.zero:
        lines += ["", "[zero]", f"command = {quoted(lesson.zero)}"]
    for span, meaning in picked.items():
        lines += channel_lines(meaning, span.step)
    return checked(lines, lesson.id)


def _verdict(read: int, of: int) -> str:
    if read == of:
        return f"All {of} lines are read." if of > 1 else "The line is read."
    return f"{read} of {of} lines are read; the others look different and will be passed over."
