"""Every message of the report in every language: complete, with its values, spelled as the language asks."""

from __future__ import annotations

import re
from datetime import date
from pathlib import Path

import pytest

from acquisition.languages import ENGLISH, TAGS, Language, language_of, languages, reading
from acquisition.report.typeface import printable
from acquisition.vigil import findings
from acquisition.vigil.shift import Move, Shift
from analysis.errors import InvalidInput
from analysis.limits import shipped_limits
from analysis.units import Display, Quantity, format_value
from tests.acquisition.languages.messages import PLACE, said_from_data, said_in_code, source_texts

NARROW, NO_BREAK = "\u202f", "\u00a0"
FOREIGN = pytest.mark.parametrize("language", languages()[1:], ids=TAGS)
UNITS = {f"{{value}} {unit}" for unit in ("%", "s", "min", "h", "Pa")}
ALIKE = {
    "de": {
        "April", "August", "September", "November", ": ", "{name} {size}", "in {unit}", "{share}: {ways}.", "Wind",
        "{what}: {words}", "{where}: {what}", "Plan: {name}", "Garage", "Material: {materials}.", *UNITS,
    },
    "fr": {
        "{day} {month} {year}", "{day}, {time} UTC", "Signature", "{name} {size}", "Client", "Canada", "France",
        "client", "volume", "Volume", "Question", "Points, {direction}", "fibres", "Garage", *UNITS,
    },
}  # fmt: skip
"""Messages that are the same in both languages."""


@FOREIGN
def test_every_message_has_a_translation_with_the_same_values(language: Language) -> None:
    wanted = {text for text in said_in_code() | said_from_data() if re.search(r"[^\W\d_]|[:,]", text)}
    assert wanted - set(language.messages) == set()
    for message, words in language.messages.items():
        assert sorted(PLACE.findall(message)) == sorted(PLACE.findall(words)), message
        assert words.strip(), message
        plain = words.replace(NARROW, " ").replace(NO_BREAK, " ")
        assert plain != message or message in ALIKE[language.tag] or message in titles_of_limits(), message


def titles_of_limits() -> set[str]:
    """Return the titles of limits: names of foreign codes stay as they are printed."""
    return {item.title for item in shipped_limits().limits}


def test_the_catalogues_hold_the_same_messages_and_none_that_nothing_says() -> None:
    german, french = (set(language_of(tag).messages) for tag in TAGS)
    assert french - german <= {"1", "National Energy Code for Buildings"}
    assert german <= french
    said = said_in_code() | said_from_data() | titles_of_limits()
    texts = source_texts()
    for message in german - said - {"1 point taken"}:
        # What is not said is found in sentences that the program made elsewhere: all its parts stand in the program.
        for part in re.split(r"\{\w+\}|: |\. | and | since | by ", message):
            assert part.strip(" .,") in texts, (message, part)


@FOREIGN
def test_no_letter_is_missing_in_the_typeface_and_no_space_is_lost(language: Language) -> None:
    for words in language.messages.values():
        assert printable(words) == words.strip(" "), words


def test_french_marks_stand_behind_a_narrow_space_and_quotes_are_those_of_the_language() -> None:
    french, german = language_of("fr"), language_of("de")
    for words in french.messages.values():
        bare = words.replace("test.json", "")
        assert not re.search(rf"(?<![{NARROW}])[:;?!»]", bare), words
        assert not re.search(rf"«(?!{NARROW})", bare), words
        assert "'" not in words, words
        assert '"' not in words, words
    for words in german.messages.values():
        assert '"' not in words, words
        assert "“" not in words or words.index("„") < words.index("“"), words
        assert not re.search(r"\s[:;?!]", words), words
    for words in (*french.messages.values(), *german.messages.values()):
        assert not re.search(r"\d (Pa|%|°C|m²)\b", words), words


def test_days_and_numbers_are_written_as_the_language_does() -> None:
    german, french = language_of("de"), language_of("fr")
    # DIN 5008 and the French typographic code, from memory: 1. Mai, 1er mai.
    first = date(2026, 5, 1)
    assert [item.day(first) for item in languages()] == ["1 May 2026", "1. Mai 2026", "1er mai 2026"]
    assert [item.short_day(first) for item in languages()] == ["2026-05-01", "01.05.2026", "01/05/2026"]
    assert french.day(date(2026, 8, 2)) == "2 août 2026"
    for language in (german, french):
        display = language.display(Display())
        assert language.grouped(format_value(12345.67, Quantity.FLOW, display, 1)) == "12\u202f345,7"
    assert ENGLISH.display(Display(decimal_mark=",")).decimal_mark == "."
    assert language_of("") is language_of("en") is ENGLISH
    with pytest.raises(InvalidInput, match="one of en, de, fr is needed"):
        language_of("it", "--language")


@FOREIGN
def test_what_the_vigil_noticed_is_told_with_its_numbers(language: Language) -> None:
    found = [findings.shifted(Shift(50.0, 41.5, 900.0, 1010.0), move) for move in Move]
    found += [findings.off_the_line(83.0, 44.0, ""), findings.off_the_line(-83.0, 44.0, "narrow")]
    found += [findings.off_the_line(-83.0, 44.0, ""), findings.lasting(83.0, 44.0), findings.lasting(-83.0, 44.0)]
    found += [findings.fan_differs(-0.3), findings.fan_differs(0.3)]
    found += [item for item in vars(findings).values() if isinstance(item, findings.Finding)]
    for item in found:
        told = language.said(item.sentence)
        assert told != item.sentence, item.sentence
        assert re.findall(r"\d+", told) == re.findall(r"\d+", item.sentence), told
    assert language.said("Somebody typed this.") == "Somebody typed this."


@FOREIGN
def test_finished_sentences_are_found_and_their_values_too(language: Language) -> None:
    wind = language.said("Wind at most 3 m/s near the ground: a reading from a weather station may be up to 6.5 m/s")
    assert language.messages["Wind at most 3 m/s near the ground"] in wind
    assert "6,5" in wind
    due = language.said("Gauge: calibration overdue by ISO 9972 since 2026-01-05, 12 days.")
    assert language.short_day(date(2026, 1, 5)) in due
    assert language.messages["{count} days"].format(count=12) in due
    text = "Fan 2: 301.2 Pa at the flow element is above the 250 Pa that range middle is calibrated to. Fit range wide."
    told = language.said(text)
    assert "301,2" in told
    assert "range" not in told
    assert "above" not in told


@FOREIGN
def test_what_a_person_typed_is_no_sentence_of_the_program(language: Language) -> None:
    assert language.said("The hose: not recorded", "reasons") == "The hose: not recorded"
    assert language.said("outside flow range middle", "reasons") != "outside flow range middle"


def test_a_message_that_stands_twice_is_refused(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    head = '[language]\nname="X"\ndecimal_mark=","\nthousands=" "\nnarrow_before=""\nnarrow_after=""\n'
    monkeypatch.setattr(reading, "files", lambda _: tmp_path)
    (tmp_path / "xx.toml").write_text(f'{head}[a]\n"One"="Eins"\n[b]\n"One"="Ein"\n')
    with pytest.raises(ValueError, match="'One' stands there twice"):
        reading.read_catalogue("xx")
    (tmp_path / "yy.toml").write_text(head.replace("decimal_mark", "mark"))
    with pytest.raises(ValueError, match="decimal_mark, mark is unknown or missing"):
        reading.read_catalogue("yy")
