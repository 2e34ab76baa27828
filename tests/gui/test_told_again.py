"""What test, methods, drivers and tables say in English is known in German and French, sentence by sentence."""

from __future__ import annotations

import ast
import re
from collections.abc import Iterator
from itertools import product
from pathlib import Path

import pytest
from PySide6.QtCore import QCoreApplication
from PySide6.QtWidgets import QApplication

import acquisition
from acquisition.office.catalogue import JobLine
from acquisition.told.limits import limit_source
from acquisition.told.texts import sentence as as_sentence
from analysis.errors import InvalidInput
from analysis.exhaust import appliances
from analysis.fields import parse_document
from analysis.limits import shipped_limits
from drivers.errors import ProfileError
from drivers.portfaults import refusal
from drivers.profile import read_profile
from gui.languages import put_on
from gui.viewmodels.errors import error_words, sentence
from gui.viewmodels.jobs_page import jobs_picture
from gui.viewmodels.retold import retold, retold_part
from gui.words import Language

ENGLISH = re.compile(r"\b(the|of|and|is|with|to|from|are|not|by|for|it|has|have|be|at|that|which|before)\b")
"""Words that no German or French sentence has."""
ROOT = Path(acquisition.__file__).parent.parent
LANGUAGES = (Language.GERMAN, Language.FRENCH)
ELSEWHERE = (
    "acquisition/commands", "acquisition/options.py", "acquisition/terminal.py", "acquisition/keyed.py",
    "acquisition/typist.py", "acquisition/summary.py", "acquisition/sealing/dictated.py", "analysis/components",
    "acquisition/job/verify.py",
    "acquisition/job/export.py", "acquisition/job/hpxml.py", "acquisition/marking", "acquisition/replay/anonymous.py",
    "acquisition/report", "acquisition/languages", "acquisition/phone", "acquisition/setup/preparation_sheet.py",
)  # fmt: skip
"""Modules that say nothing in the window: terminal, files for programs, and papers, whose words other tests hold."""
CODE = re.compile(
    r"[A-Z]{3,} |\(\?|\(\.|read \(|write \(|[#<{]|\S+ = |\[shown|SUBSYSTEM|USB id|.*%s|.*\.toml|.*\.min_pa and",
    re.DOTALL,
)
"""What is no sentence: SQL, patterns, lines of files, and what only those see who write data files of the program."""
UNSEEN = {
    # Faults of the program itself, and names of threads.
    "a hosted loop must not wait: it returns the time at which it is next due",
    "hosted loop 7 asked to run again at 7, now is 7", "the link to %s failed", "writer of 7",
    "time factor 7: a number greater than 0 is needed", "start 7: a time with a time zone is needed",
    "begin a run while one is recorded", "end the test", "keep window 7", "change the flow range", "end a run",
    "profile 7: a gauge has a reply format and either a poll or a stream",
    "a weighted estimator was given points without their noise",
    # Words of an operating system that are looked for, and one of a battery.
    "Could not open port", "Could not configure port", "exclusively lock", "not a database", "Battery Power",
    # Names that stand for a kind, and are shown by other words or not at all.
    "in the jet", "nothing moves", "job number", "started (UTC)", "issued as", "stopping the fan", "zero before",
    "zero after", "zero-flow pressure", "fan does less", "fan does more", "pressure alone", "flow alone",
    "pressure too high", "gauge silent", "gauge frozen", "no pressure", "wrong sign", "pressure collapsed",
    "fan link lost", "program held up", "more flow than expected", "battery empty", "computer slept", "soft membrane",
    "over range", "frozen value", "noise floor", "round trip", "zero drift", "Hand-written record", "the test",
    # Asked for on the command line, or by those who write code or data files.
    "a number chooses among the tests of a job, and 7 is no job", "a cap needs it, nothing else has it",
    "it is known already with another title or zones", "7: place of 7", "7: within of 7", "7: zones of 7",
    "(relative humidity as a fraction)", "7, standard uncertainty", "zone_pa, standard uncertainty",
    "house_pa less zone_pa", "house 7 Pa, zone 7 Pa", "; with 7 7 Pa, fan 7 to 7 m3/h", "job file, \0", "Zones {zones}",
    # Names of documents and of places where something was read.
    "ASTM E1827 single-point", "ASTM E1827 two-point", "ANSI/RESNET/ICC 380 multi-point",
    "ANSI/RESNET/ICC 380 one-point", "basc.pnnl.gov, air leakage testing garage to house",
}  # fmt: skip


WHOLE = {
    "Fan 2 joins: the others move too little air.": ("joins: the others move too little air",),
    "Fan 2 leaves: the others do it alone.": ("leaves: the others do it alone",),
    "Held 50 Pa for 60 s: 900 m³/h, at the beginning 950 m³/h.": (", at the beginning \0 m³/h",),
    "The disk did not take the last 3 entries of a.airseam (full): the whole job with them is in b.airseam.": (
        "The disk did not take the last \0 entries of \0 (\0)",
        "\0: the whole job with them is in \0.",
    ),
    "The interval will be ±3.1 %: a limit within 3.1 % of the result cannot be decided.": (
        "a limit within \0 of the result cannot be decided",
        "The interval will be ±\0: \0.",
    ),
    "At 60 Pa the flow will be about 90 m³/h, below the 100 m³/h at which range wide begins.": (
        "below the \0 m³/h at which range \0 begins",
        "At \0 Pa the flow will be about \0 m³/h, \0.",
    ),
    "At 60 Pa the flow will be about 990 m³/h, above the 900 m³/h at which range narrow ends.": (
        "above the \0 m³/h at which range \0 ends",
    ),
    "A and B do not agree: 1.00 Pa apart at 50.0 Pa; 0.50 Pa are allowed. One of them needs calibration.": (
        "\0 Pa are allowed",
        "\0 and \0 do not agree: \0; \0. One of them needs calibration.",
    ),
    "3 checks since 2026-05-04: the difference has not grown.": (
        "\0 checks since \0",
        "\0: the difference has not grown.",
    ),
    "3 checks since 2026-05-04: the difference has grown from 10% to 60% of what is allowed.": (
        "\0: the difference has grown from \0 to \0 of what is allowed.",
    ),
    "a number greater than 7 and at most 9 is needed": (" and at most \0", "a number \0 is needed"),
    "Holding −50 Pa for 3 min: 900 m³/h, +1.0 % since the beginning. Seal, look, or ask for another pressure.": (
        " for \0 min: \0 m³/h\0",
        ", \0 % since the beginning",
    ),
    "Reading the zero-flow pressure again: 7 s of 30 s. Keep the fan covered.": (
        "Reading the zero-flow pressure \0: \0. Keep the fan covered.",
    ),
    "The fan was stopped. Fit flow range wide on fan 2; the point is then begun again.": (" on fan \0",),
    "2 points taken": ("\0 point\0 taken",),
    "Natural air change, 1/h": ("Natural air change",),
    "Infiltration credit, m³/h": ("Infiltration credit",),
    "From the first zero-flow record: −1.0 Pa, moving by 0.4 Pa; 2.1 s of readings count as one.": (
        "; \0 s of readings count as one.",
    ),
    "a list of texts is needed": ("a list of texts", "\0 is needed"),
    "a list of JSON objects is needed": ("a list of JSON objects",),
    "a list of numbers is needed": ("a list of numbers",),
    "a number from 1 to 3 m is needed": ("a number from \0 to \0 \0",),
    "outdoor: 0.5 readings a second, 10 are expected.": (", \0 are expected",),
    "COM3 may not be opened by this user: it belongs to the group dialout. Run `sudo usermod -aG dialout mira`, "
    "then log out and in.": (": it belongs to the group \0. Run `sudo usermod -aG \0 \0`, then log out and in",),
    "COM3 may not be opened by this user: only its owner may (group wheel); whoever looks after this computer has to "
    "allow it.": (": only its owner may (group \0); whoever looks after this computer has to allow it",),
    "gauge on COM3 sends bytes that make no sense: look at the speed of the port and at the cable.": (
        "\0 sends bytes that make no sense: look at the speed of the port and at the cable.",
    ),
    "gauge on COM3 does not say who it is: look whether it is switched on, and at the cable.": (
        "\0 does not say who it is: look whether it is switched on, and at the cable.",
    ),
    "a whole number is needed, not 7": ("a whole number", "\0 is needed, \0"),
}
"""Sentences that are put together in the program, and the pieces of each."""


@pytest.fixture(autouse=True)
def english_again() -> Iterator[None]:
    yield
    put_on(QCoreApplication.instance() or QApplication([]), Language.ENGLISH)


def sources() -> Iterator[tuple[str, str]]:
    """Yield every text of two words and more that is written in the program below the window, and where."""
    for folder in ("acquisition", "analysis", "drivers"):
        for path in sorted((ROOT / folder).rglob("*.py")):
            name = path.relative_to(ROOT).as_posix()
            if not name.startswith(ELSEWHERE):
                yield from (
                    (f"{name}, line {line}", text) for line, text in texts_of(ast.parse(path.read_text("utf-8")))
                )


def texts_of(tree: ast.AST) -> Iterator[tuple[int, str]]:
    """Yield the texts of a module with their lines; a value stands there as {}, docstrings and pieces are left out."""
    skipped: set[ast.AST] = set()
    for node in ast.walk(tree):
        body = getattr(node, "body", None)
        skipped.update(item.value for item in (body if isinstance(body, list) else []) if isinstance(item, ast.Expr))
        if isinstance(node, ast.JoinedStr):
            skipped.update(node.values)
            skipped.update(part for value in node.values for part in ast.walk(value) if isinstance(part, ast.JoinedStr))
    for node in ast.walk(tree):
        if node in skipped:
            continue
        if isinstance(node, ast.Constant) and isinstance(node.value, str):
            yield node.lineno, node.value
        elif isinstance(node, ast.JoinedStr):
            parts = (str(part.value) if isinstance(part, ast.Constant) else "\0" for part in node.values)
            yield node.lineno, "".join(parts)


def examples(text: str) -> Iterator[str]:
    """Yield a text with a number for each value, and with nothing for those that may be empty."""
    values = text.count("\0")
    for kept in product(("7", ""), repeat=min(values, 4)):
        pieces = iter((*kept, *("7" for _ in range(values))))
        yield re.sub("\0", lambda _, pieces=pieces: next(pieces), text).strip()  # type: ignore[misc]


def is_known(text: str) -> bool:
    """Whether a text is told in another language; a piece of a sentence is tried with what it stands in."""
    for example in examples(text):
        for whole in (example, example.removeprefix(","), f"{example}.", f"7{example}", f"7{example}.", f"7 {example}"):
            if retold_part(whole) != whole:
                return True
    return False


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_sentence_below_the_window_is_known(qapp: QApplication, language: Language) -> None:
    put_on(qapp, language)
    said = {
        text: where
        for where, text in sources()
        if len(re.findall(r"[A-Za-z]{2,}", text)) > 1 and " " in text.strip() and not CODE.match(text)
        if not UNSEEN.intersection((text, text.replace("\0", "7")))
    }
    pieces = {piece for found in WHOLE.values() for piece in found}
    assert len(said) > 900
    assert [f"{where}: {text}" for text, where in said.items() if text not in pieces and not is_known(text)] == []


def test_sentences_of_several_pieces_are_known_as_a_whole(qapp: QApplication) -> None:
    put_on(qapp, Language.GERMAN)
    written = {text for _, text in sources()}
    for whole, pieces in WHOLE.items():
        assert written.issuperset(pieces), whole
        assert retold_part(whole) != whole
        assert not ENGLISH.search(retold_part(whole)), retold_part(whole)


def test_words_that_a_table_made_a_sentence_are_known(qapp: QApplication) -> None:
    put_on(qapp, Language.GERMAN)
    words = "what was built or sealed between is part of the change"
    assert retold(as_sentence(words)) == as_sentence(retold(words))
    assert retold(as_sentence(words)) != as_sentence(words)


@pytest.mark.parametrize("language", LANGUAGES)
def test_data_files_that_the_window_shows_are_known(qapp: QApplication, language: Language) -> None:
    put_on(qapp, language)
    shown = [
        *(text for item in appliances() for text in (item.title, item.place, item.provenance.words)),
        *(limit_source(item, retold).partition("; ")[2] for item in shipped_limits().limits),
        *(item.title for item in shipped_limits().places),
    ]
    assert len(shown) > 80
    assert [text for text in map(retold, shown) if ENGLISH.search(text)] == []


def test_an_input_that_was_refused_is_told_with_field_value_and_what_is_allowed(qapp: QApplication) -> None:
    put_on(qapp, Language.GERMAN)
    error = InvalidInput("reading", "x", "a number greater than 0 is needed")
    assert sentence(error) == "Messwert ist 'x': eine Zahl größer als 0 ist nötig."
    assert retold(f"{error}") == error_words(error)
    assert retold("The wall is wet: nobody looked at it.") == "The wall is wet: nobody looked at it."
    with pytest.raises(InvalidInput) as caught:
        parse_document('{"a": 1, "a": 2}', "test.json")
    assert sentence(caught.value) == "A ist zweimal da: ein Feld darf in einem Objekt nur einmal vorkommen."
    with pytest.raises(ProfileError) as wrong:
        read_profile("format = 7", "mine.toml")
    assert error_words(wrong.value).startswith("mine.toml, Zeile 1: format: ")
    assert sentence(FileNotFoundError(2, "No such file or directory", "a.json")) == (
        "Datei oder Ordner nicht vorhanden (a.json)."
    )
    assert sentence(refusal("COM3", FileNotFoundError(2, ""))) == (
        "COM3 ist nicht da: Adapter abgezogen, oder ein anderer Name."
    )
    put_on(qapp, Language.ENGLISH)
    assert error_words(error) == str(error)
    assert error_words(wrong.value) == str(wrong.value)


def test_what_a_person_typed_is_left_alone(qapp: QApplication) -> None:
    put_on(qapp, Language.FRENCH)
    for typed in ("not dry yet", "Kitchen and bath", "from door to attic", "at most a hand wide", "Attic: area"):
        assert retold(typed) == typed
    assert retold("1.2 to 1.4") == "1.2 à 1.4"


def test_the_table_of_jobs_tells_verdicts_and_leaves_names(qapp: QApplication) -> None:
    put_on(qapp, Language.GERMAN)
    (row,) = jobs_picture("", (JobLine("a.airseam", name="meets", verdict="meets"),), 1, "", "", ",").rows
    assert (row[0], row[8]) == ("meets", "eingehalten")
