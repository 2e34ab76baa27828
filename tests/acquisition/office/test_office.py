"""The office: how it is kept, how reports are numbered, how files are named."""

from __future__ import annotations

from pathlib import Path

import pytest

from acquisition.office import (
    Office,
    certificate_number,
    check_pattern,
    file_name,
    keep_logo,
    letterhead,
    load_office,
    save_office,
)
from acquisition.office.patterns import NAME_FIELDS, NUMBER_FIELDS
from analysis.errors import InvalidInput
from tests.acquisition.samples import START

PNG = b"\x89PNG\r\n\x1a\n" + b"\x00" * 40
OFFICE = Office("Office of Nobody", "Mill Lane 1\nHollow End", "T. Nobody", "Hello", "Bye", next_number=12)
VALUES = dict.fromkeys(NAME_FIELDS, "") | {"name": "Mill Row 8", "test": "3", "stage": "shell / closed"}


def test_the_office_is_kept_and_a_missing_one_is_blank(tmp_path: Path) -> None:
    path = tmp_path / "new" / "office.json"
    assert load_office(path) == Office()
    save_office(OFFICE, path)
    assert load_office(path) == OFFICE
    assert not path.with_suffix(".new").exists()


@pytest.mark.parametrize("text", ["[]", "{", '{"name": 3}', '{"nobody": "x"}', '{"next_number": true}'])
def test_an_unreadable_office_is_one_sentence(tmp_path: Path, text: str) -> None:
    path = tmp_path / "office.json"
    path.write_text(text)
    with pytest.raises(InvalidInput) as caught:
        load_office(path)
    assert "\n" not in str(caught.value)


def test_texts_that_do_not_fit_on_the_certificate_are_refused() -> None:
    with pytest.raises(InvalidInput, match="at most 600 characters fit"):
        Office(closing="x" * 601)
    with pytest.raises(InvalidInput, match="at most 5 lines"):
        Office(address="a\n" * 6)


def test_a_logo_is_copied_beside_the_office_and_goes_into_the_letterhead(tmp_path: Path) -> None:
    source = tmp_path / "ours.png"
    source.write_bytes(PNG)
    kept = keep_logo(source, tmp_path / "config" / "office.json")
    source.unlink()
    head = letterhead(Office("Nobody", "A\n\n B ", logo=kept))
    assert (head.logo, head.address) == (PNG, ("A", "B"))
    other = tmp_path / "ours.gif"
    other.write_bytes(b"GIF89a")
    with pytest.raises(InvalidInput, match="a PNG or JPEG picture"):
        keep_logo(other, tmp_path / "config" / "office.json")
    with pytest.raises(InvalidInput, match="logo"):
        letterhead(Office(logo=str(tmp_path / "gone.png")))


@pytest.mark.parametrize(
    ("pattern", "made"),
    [("{year}-{count:03}", "2026-012"), ("A{month}{day}/{count}", "A0504/12"), ("{job} {count:05}", "J-7 00012")],
)
def test_numbers_follow_the_pattern(pattern: str, made: str) -> None:
    assert certificate_number(pattern, 12, START, "J-7") == made


@pytest.mark.parametrize("pattern", ["{nobody}", "{year", "{count:x}", "{year:03}", "{year!r}", "", "{count.real}"])
def test_a_pattern_that_cannot_be_used_is_refused(pattern: str) -> None:
    with pytest.raises(InvalidInput):
        check_pattern(pattern, NUMBER_FIELDS, "number pattern")


def test_file_names_suit_every_system_and_leave_no_gaps() -> None:
    assert file_name("{name}-test-{test}", VALUES) == "Mill-Row-8-test-3"
    assert file_name("{client} {name} {stage}: {test}?", VALUES) == "Mill-Row-8-shell-closed-3"
    assert file_name("{client}", VALUES) == "job"
    assert len(file_name("{name}", VALUES | {"name": "x" * 500})) == 120
