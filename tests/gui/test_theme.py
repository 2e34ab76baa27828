"""Colours: what is read stands out, whatever the theme."""

from __future__ import annotations

import re

import pytest

from gui.style import style_sheet
from gui.theme import DARK, LIGHT, SUNLIGHT, TEXT_CONTRAST, Theme, Tone, contrast, mix, readable

THEMES = pytest.mark.parametrize("theme", [DARK, LIGHT, SUNLIGHT], ids=lambda theme: theme.name)


def test_contrast_is_that_of_the_recommendation() -> None:
    """WCAG 2.1 (from memory): black on white has 21:1, a colour on itself 1:1, #767676 on white 4.54:1."""
    assert contrast("#000000", "#ffffff") == pytest.approx(21.0)
    assert contrast("#777777", "#777777") == pytest.approx(1.0)
    assert contrast("#767676", "#ffffff") == pytest.approx(4.54, abs=0.005)


@THEMES
def test_text_of_every_tone_stands_out_on_every_ground(theme: Theme) -> None:
    for tone in Tone:
        for ground in theme.grounds:
            assert contrast(theme.ink(tone), ground) >= TEXT_CONTRAST, (tone, ground)


@THEMES
def test_words_on_buttons_stand_out(theme: Theme) -> None:
    for ground in (theme.stop, theme.stop_pressed):
        assert contrast(theme.on_stop, ground) >= TEXT_CONTRAST
    for ground in (theme.primary, theme.primary_pressed):
        assert contrast(theme.on_primary, ground) >= TEXT_CONTRAST


@THEMES
def test_lines_and_marks_stand_out_from_the_panel(theme: Theme) -> None:
    """WCAG 2.1, criterion 1.4.11 (from memory): 3:1 for what is not text."""
    for tone in Tone:
        assert contrast(theme.mark(tone), theme.panel) >= 3.0, tone


@THEMES
def test_every_text_rule_of_the_style_sheet_uses_a_readable_colour(theme: Theme) -> None:
    allowed = {theme.text, theme.on_stop, theme.on_primary, *(theme.ink(tone) for tone in Tone)}
    found = re.findall(r"(?<![-\w])(?:placeholder-text-)?color:\s*(#\w{6})", style_sheet(theme))
    assert len(found) > 20
    assert set(found) <= allowed


def test_a_colour_moves_no_further_than_it_must() -> None:
    assert readable("#ffffff", "#ffffff", ("#000000",)) == "#ffffff"
    moved = readable("#555555", "#ffffff", ("#000000",))
    assert contrast(moved, "#000000") >= TEXT_CONTRAST
    assert contrast(moved, "#000000") < TEXT_CONTRAST + 0.5


def test_mixing_goes_from_one_colour_to_the_other() -> None:
    assert mix("#102030", "#ffffff", 0.0) == "#102030"
    assert mix("#102030", "#ffffff", 1.0) == "#ffffff"
    assert mix("#000000", "#ffffff", 0.5) == "#808080"
