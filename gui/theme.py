"""The colours, sizes and type of the window: plain data, the only place where a colour is written down.

Series colours are the colour-blind safe set of Okabe and Ito ("Color Universal Design", 2008, from memory) and their
darker companions for daylight. They serve lines and marks. Where the same colour carries text it is moved towards the
text colour until it stands out 7:1 (the enhanced contrast of WCAG 2.1, criterion 1.4.6, from memory).
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum
from functools import cache

TEXT_CONTRAST = 7.0

GAP_4, GAP_8, GAP_12, GAP_16, GAP_24 = 4, 8, 12, 16, 24
PANEL_CORNER, BUTTON_CORNER = 10, 8
TARGET_HEIGHT = 44
SMALL, BODY, NEXT, FIGURE, RESULT = 11, 13, 15, 26, 54
"""Type in device-independent pixels."""
LINE_WIDTH = 2


class Mode(StrEnum):
    """Which theme to show."""

    SYSTEM = "system"
    DARK = "dark"
    LIGHT = "light"
    SUNLIGHT = "sunlight"


class Tone(StrEnum):
    """What a coloured word or mark says; a sign goes with it wherever it is shown."""

    PLAIN = "plain"
    QUIET = "quiet"
    PRESSURE = "pressure"
    FLOW = "flow"
    GOOD = "good"
    ATTENTION = "attention"
    BAD = "bad"


SIGNS = {Tone.GOOD: "✓", Tone.ATTENTION: "!", Tone.BAD: "✗", Tone.QUIET: "…"}
"""Colour never comes alone."""


@dataclass(frozen=True, slots=True)
class Theme:
    """One set of colours, `#rrggbb` each."""

    name: str
    ground: str
    panel: str
    raised: str
    line: str
    text: str
    quiet: str
    pressure: str
    flow: str
    good: str
    attention: str
    bad: str
    stop: str
    stop_pressed: str
    on_stop: str
    primary: str
    primary_pressed: str
    on_primary: str
    line_width: int = LINE_WIDTH
    """Of the curves in plots."""
    frame: str = ""
    """Colour of a frame around every panel and button; empty where their ground tells them apart."""

    @property
    def grounds(self) -> tuple[str, str, str]:
        """Everything that text stands on, but for buttons."""
        return self.ground, self.panel, self.raised

    def mark(self, tone: Tone) -> str:
        """Return the colour of a line or mark."""
        return {
            Tone.PLAIN: self.text,
            Tone.QUIET: self.quiet,
            Tone.PRESSURE: self.pressure,
            Tone.FLOW: self.flow,
            Tone.GOOD: self.good,
            Tone.ATTENTION: self.attention,
            Tone.BAD: self.bad,
        }[tone]

    def ink(self, tone: Tone) -> str:
        """Return the colour of text in that tone: at least 7:1 on every ground."""
        return readable(self.mark(tone), self.text, self.grounds)


DARK = Theme(
    name="dark",
    ground="#11171d",
    panel="#19212a",
    raised="#212c37",
    line="#2f3d4b",
    text="#e9eff5",
    quiet="#8fa2b4",
    pressure="#56B4E9",
    flow="#E69F00",
    good="#2fb68a",
    attention="#F0E442",
    bad="#F0703A",
    stop="#9e2c11",
    stop_pressed="#7d220d",
    on_stop="#ffffff",
    primary="#56B4E9",
    primary_pressed="#7cc5ee",
    on_primary="#06131d",
)

LIGHT = Theme(
    name="light",
    ground="#f4f2ec",
    panel="#ffffff",
    raised="#ece8df",
    line="#cfc9bc",
    text="#14202b",
    quiet="#55636f",
    pressure="#0072B2",
    flow="#A65E00",
    good="#007A58",
    attention="#7a6a00",
    bad="#B03A00",
    stop="#9e2c11",
    stop_pressed="#7d220d",
    on_stop="#ffffff",
    primary="#005a8f",
    primary_pressed="#004a76",
    on_primary="#ffffff",
)

SUNLIGHT = Theme(
    name="sunlight",
    ground="#ffffff",
    panel="#ffffff",
    raised="#ffffff",
    line="#999999",
    text="#000000",
    quiet="#000000",
    pressure="#00407a",
    flow="#6b3d00",
    good="#004d37",
    attention="#4d4300",
    bad="#8a1f00",
    stop="#8a1f00",
    stop_pressed="#5c1500",
    on_stop="#ffffff",
    primary="#000000",
    primary_pressed="#333333",
    on_primary="#ffffff",
    line_width=4,
    frame="#000000",
)
"""For a screen in the sun: black on white, thick lines."""


def mix(colour: str, other: str, share: float) -> str:
    """Return `colour` moved by `share` (0..1) towards `other`."""
    pairs = zip(_channels(colour), _channels(other), strict=True)
    return "#" + "".join(f"{round(a + (b - a) * share):02x}" for a, b in pairs)


def contrast(colour: str, ground: str) -> float:
    """Return the contrast ratio of two colours, 1..21 (WCAG 2.1, from memory)."""
    light, dark = sorted((_luminance(colour), _luminance(ground)), reverse=True)
    return (light + 0.05) / (dark + 0.05)


@cache
def readable(colour: str, towards: str, grounds: tuple[str, ...], ratio: float = TEXT_CONTRAST) -> str:
    """Return `colour`, moved towards the text colour as little as it takes to be read on all grounds."""
    for step in range(51):
        candidate = mix(colour, towards, step / 50)
        if all(contrast(candidate, ground) >= ratio for ground in grounds):
            return candidate
    return towards


def _channels(colour: str) -> tuple[int, int, int]:
    return int(colour[1:3], 16), int(colour[3:5], 16), int(colour[5:7], 16)


def _luminance(colour: str) -> float:
    def linear(channel: int) -> float:
        share = channel / 255
        return share / 12.92 if share <= 0.04045 else float(((share + 0.055) / 1.055) ** 2.4)

    red, green, blue = (linear(channel) for channel in _channels(colour))
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue
