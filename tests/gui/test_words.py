"""What the window says in German and French: every message translated, every text whole, every value in its place."""

from __future__ import annotations

import ast
import re
import string
import xml.etree.ElementTree as ET
from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QCoreApplication, QTranslator
from PySide6.QtWidgets import QApplication

import gui
from acquisition.geometry import Adjoins, Geometry
from acquisition.languages import language_of
from acquisition.register.records import KINDS
from acquisition.sentences import idle_sentence, running_sentence
from acquisition.setup.openings import RULES, OpeningState, shipped_openings
from acquisition.setup.safety import shipped_questions
from acquisition.snapshot import Activity
from acquisition.stages import USUAL_STAGES
from acquisition.steps import WindowKind
from analysis.methods import method_ids, method_of
from analysis.records import Improvement, Settling, UncertaintyPart
from analysis.units import Display, System
from analysis.verdict import settling_words
from drivers.instrument import LinkState
from gui.languages import FOLDER, decimal_mark, put_on
from gui.settings import Settings, SettingsFile, display_of
from gui.viewmodels.keys import key_words
from gui.viewmodels.leak_sheet import FIELDS as LEAK_FIELDS
from gui.viewmodels.outcome import settled
from gui.viewmodels.retold import retold
from gui.viewmodels.rig_sheet import profile_choices
from gui.viewmodels.rooms import SURFACE_COLUMNS, Part, RoomsModel
from gui.words import Language, mark, say, speak, spoken, within

LANGUAGES = (Language.GERMAN, Language.FRENCH)
SAYING = {"say", "mark"}
SAME = {"Ctrl", "Pa"}


@pytest.fixture(autouse=True)
def english_again() -> Iterator[None]:
    yield
    put_on(QCoreApplication.instance() or QApplication([]), Language.ENGLISH)


def messages() -> dict[str, str]:
    """Return every message that is marked in the window, with its file."""
    found = {}
    for path in sorted(Path(gui.__file__).parent.rglob("*.py")):
        for node in ast.walk(ast.parse(path.read_text("utf-8"))):
            if isinstance(node, ast.Call) and isinstance(node.func, ast.Name) and node.func.id in SAYING and node.args:
                first = node.args[0]
                assert not isinstance(first, ast.JoinedStr), f"{path}, line {node.lineno}: no message is put together"
                if isinstance(first, ast.Constant):
                    found[str(first.value)] = path.name
    return found


def translations(language: Language) -> dict[str, str]:
    """Return what the translation file has for each message, empty where it is not finished."""
    document = ET.parse(FOLDER / f"airseam_{language}.ts")
    return {
        item.findtext("source", ""): "" if words is None or words.get("type") else words.text or ""
        for item in document.iter("message")
        for words in (item.find("translation"),)
    }


def values_of(message: str) -> set[str]:
    return {name for _, name, _, _ in string.Formatter().parse(message) if name is not None}


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_message_has_a_finished_translation_with_the_same_values(language: Language) -> None:
    marked, translated = messages(), translations(language)
    assert len(marked) > 1200
    assert marked.keys() == translated.keys(), "run `python3 run.py words`"
    for message, words in translated.items():
        assert words, f"{message!r} of {marked[message]} is not translated"
        assert values_of(words) == values_of(message), message
        assert words.startswith(" ") == message.startswith(" "), message
        assert words.endswith(" ") == message.endswith(" "), message


@pytest.mark.parametrize("language", LANGUAGES)
def test_what_is_compiled_is_what_was_translated_and_says_the_same_when_said_twice(language: Language) -> None:
    compiled = QTranslator()
    assert compiled.load(str(FOLDER / f"airseam_{language}.qm"))
    translated = translations(language)
    assert {message: compiled.translate("", message) for message in translated} == translated
    again = {words: translated[words] for words in translated.values() if words in translated}
    assert {words: twice for words, twice in again.items() if words != twice} == {}


def test_words_of_the_data_files_are_among_the_messages() -> None:
    marked = messages()
    openings, restored = shipped_openings()
    methods = [method_of(name) for name in method_ids()]
    said = [
        *(question.text for question in shipped_questions()),
        *(text for item in openings for text in (item.name, item.restore) if text),
        *(name for _, name in restored),
        *(state.value.capitalize() for state in OpeningState),
        *RULES.values(),
        *USUAL_STAGES,
        *(kind.capitalize() for kind in KINDS),
        *(state.value for state in LinkState),
        *(text for method in methods for text in method.preparations.values()),
        *(item.text for method in methods for item in method.requirements()),
        *(words for _, _, _, choices in LEAK_FIELDS for _, words in choices),
        *(profile.title for profile in profile_choices()),
    ]
    assert len(said) > 120
    for language in LANGUAGES:
        of_report = language_of(language.value).messages
        assert [text for text in said if text not in marked and text not in of_report] == []


def test_a_message_is_said_in_the_language_that_was_put_on(qapp: QApplication) -> None:
    put_on(qapp, Language.GERMAN)
    assert spoken() is Language.GERMAN
    assert key_words("H, Ctrl+Shift+Z") == "H, Strg+Umschalt+Z"
    assert say("Undo: {undo} (Ctrl+Z)", undo="Volumen") == "Zurücknehmen: Volumen (Strg+Z)"
    assert say("A name that somebody typed") == "A name that somebody typed"
    assert within("Hüllfläche") == "Hüllfläche"
    assert QCoreApplication.translate("QPlatformTheme", "Cancel") == "Abbrechen"
    put_on(qapp, Language.FRENCH)
    assert say("Fan") == "Ventilateur"
    assert within("Débit") == "débit"
    assert QCoreApplication.translate("QPlatformTheme", "Cancel") == "Annuler"
    put_on(qapp, Language.ENGLISH)
    assert say("Fan") == mark("Fan") == "Fan"
    assert QCoreApplication.translate("QPlatformTheme", "Cancel") == "Cancel"


def test_braces_without_values_stay_and_a_catalogue_of_ones_own_is_used() -> None:
    speak(Language.FRENCH, {"{year}": "{an}"}.get)  # type: ignore[arg-type]  # every message here is in it
    assert say("{year}") == "{an}"


def test_the_language_is_kept_and_brings_its_decimal_mark(tmp_path: Path) -> None:
    file = SettingsFile(tmp_path / "settings.json")
    file.set(Settings(language=Language.GERMAN))
    kept = SettingsFile(tmp_path / "settings.json").value
    assert kept.language is Language.GERMAN
    assert display_of(kept, decimal_mark(kept.language)).decimal_mark == ","
    assert display_of(Settings(decimal_mark=".", language=Language.FRENCH), ",").decimal_mark == "."
    assert decimal_mark(Language.ENGLISH) == "."


def test_values_stay_in_what_is_told_again(qapp: QApplication) -> None:
    text = idle_sentence(linked=True, complete=False, stopped=False)
    put_on(qapp, Language.GERMAN)
    assert retold(text) == "Bereit zur Messung."
    averaging = running_sentence(
        Activity.AVERAGE, kind=WindowKind.POINT, target_pa=-50.0, elapsed_s=7.0, total_s=20.0, saturated=False
    )
    held = "−50 Pa werden gehalten und gemittelt: 7 s von 20 s. Türen und Fenster geschlossen lassen."
    assert retold(averaging).replace("\u00a0", " ") == held
    assert retold("8 of 8 safety questions are not answered.") == "8 von 8 Sicherheitsfragen sind nicht beantwortet."
    assert retold("Nobody ever said this.") == "Nobody ever said this."
    assert retold("Stopped by hand. Turn the fan off.") == "Von Hand angehalten. Schalten Sie das Gebläse aus."
    put_on(qapp, Language.ENGLISH)
    assert retold(text) == text


def test_what_a_surface_adjoins_is_typed_in_the_language_or_in_english(qapp: QApplication) -> None:
    put_on(qapp, Language.GERMAN)
    model = RoomsModel(Geometry())
    assert model.add(Part.SURFACE)
    column = SURFACE_COLUMNS.index("adjoins")
    for typed, expected in (("Erdreich", Adjoins.GROUND), ("neighbour", Adjoins.NEIGHBOUR)):
        assert model.type_cell(Part.SURFACE, 0, column, typed, Display(System.SI, ","))
        assert model.geometry.surfaces[0].adjoins is expected
    assert not model.type_cell(Part.SURFACE, 0, column, "Mond", Display(System.SI, ","))
    assert "außen, Erdreich" in model.error


@pytest.mark.parametrize("language", [Language.GERMAN, Language.FRENCH])
def test_what_would_settle_a_verdict_is_said_in_the_language_of_the_window(
    qapp: QApplication, language: Language
) -> None:
    put_on(qapp, language)
    found = Settling(0.06, 4, (Improvement(UncertaintyPart("volume", 0.05), 0.02),))
    english, told = settling_words(found), settling_words(found, settled)
    put_on(qapp, Language.ENGLISH)
    assert settling_words(found, settled) == english
    assert not {"value", "interval", "mean", "tests", "measured"} & set(re.findall("[a-z]+", told))
