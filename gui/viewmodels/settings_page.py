"""The Settings page: the office, how numbers and theme are shown, folders and names."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass, replace
from datetime import datetime

from acquisition.office import Office, certificate_number, check_pattern, file_name
from acquisition.office.patterns import NAME_FIELDS, NUMBER_FIELDS
from analysis.errors import InvalidInput
from analysis.units import Quantity, System
from gui.settings import SCALES, Settings
from gui.theme import Mode
from gui.viewmodels.errors import sentence
from gui.viewmodels.sheet import Kind
from gui.words import Language, mark, say

OFFICE, NUMBERS, FOLDERS, VIEW, UNITS = (
    mark("Office, as it stands on reports"),
    mark("Numbers and names"),
    mark("Folders"),
    mark("View"),
    mark("Units"),
)
GROUPS = (OFFICE, NUMBERS, FOLDERS, VIEW, UNITS)
UNIT_PREFIX = "unit "
QUANTITIES = {
    Quantity.FLOW: mark("Flow"),
    Quantity.VOLUME: mark("Volume"),
    Quantity.AREA: mark("Area"),
    Quantity.LENGTH: mark("Length"),
    Quantity.TEMPERATURE: mark("Temperature"),
    Quantity.BAROMETRIC_PRESSURE: mark("Barometric pressure"),
    Quantity.SPEED: mark("Wind speed"),
    Quantity.LEAKAGE_AREA: mark("Leakage area"),
    Quantity.FLOW_PER_AREA: mark("Flow per area"),
    Quantity.FLOW_COEFFICIENT: mark("Leakage coefficient"),
}
MODES = {
    Mode.SYSTEM: mark("As the system"),
    Mode.DARK: mark("Dark"),
    Mode.LIGHT: mark("Light"),
    Mode.SUNLIGHT: mark("Sunlight"),
}
LANGUAGES = {
    Language.SYSTEM: mark("As the system"),
    Language.ENGLISH: "English",
    Language.GERMAN: "Deutsch",
    Language.FRENCH: "Français",
}
MARKS = {"": mark("As the language"), ".": mark("Point"), ",": mark("Comma")}


@dataclass(frozen=True, slots=True)
class SettingPicture:
    """A field of the page; `note` stands below it, `error` in its place where something is wrong."""

    id: str
    group: str
    label: str
    kind: Kind
    text: str
    choices: tuple[tuple[str, str], ...] = ()
    note: str = ""
    error: str = ""


@dataclass(frozen=True, slots=True)
class _Item:
    id: str
    group: str
    label: str
    kind: Kind
    read: Callable[[Office, Settings], str]
    choices: tuple[tuple[str, str], ...] = ()


class SettingsModel:
    """What was typed and could not be used stays, with its error, until it is typed anew."""

    def __init__(self) -> None:
        """Begin without errors."""
        self._wrong: dict[str, tuple[str, str]] = {}

    def pictures(self, office: Office, settings: Settings, now: datetime) -> tuple[SettingPicture, ...]:
        """Return every field."""
        return tuple(self._picture(item, office, settings, now) for item in ITEMS)

    def typed(self, field: str, text: str, office: Office, settings: Settings) -> tuple[Office, Settings]:
        """Return office and settings with a field typed; unchanged where it cannot be used."""
        try:
            changed = _typed(field, text, office, settings)
        except InvalidInput as error:
            self._wrong[field] = (text, sentence(error))
            return office, settings
        self._wrong.pop(field, None)
        return changed

    def _picture(self, item: _Item, office: Office, settings: Settings, now: datetime) -> SettingPicture:
        text, error = self._wrong.get(item.id, (item.read(office, settings), ""))
        note = _note(item.id, office, now)
        return SettingPicture(item.id, item.group, item.label, item.kind, text, item.choices, note, error)


def _note(field: str, office: Office, now: datetime) -> str:
    if field == "number_pattern":
        number = certificate_number(office.number_pattern, office.next_number, now, "J-1")
        return say(
            "The next certificate is {number}. Names: {{year}} {{month}} {{day}} {{count}} {{job}}.", number=number
        )
    if field == "name_pattern":
        values = {**dict.fromkeys(NAME_FIELDS, ""), "name": "Mill Row 8", "test": "1", "job": "J-1"}
        names = " ".join(f"{{{name}}}" for name in NAME_FIELDS)
        return say(
            "Such as {example}.pdf. Names: {names}.", example=file_name(office.name_pattern, values), names=names
        )
    return {
        "logo": say("PNG or JPEG; a copy is kept with the settings."),
        "opening": say("Stands in front of the certificate."),
        "closing": say("Stands at the foot of the certificate."),
        "jobs": say("Where “Find a job” looks. Empty: beside the open job."),
        "backup": say("Every job is copied here when it is closed. Empty: no copies."),
        "scale": say("Counts from the next start."),
        "language": say("Counts from the next start. Reports have a language of their own."),
    }.get(field, "")


def _typed(field: str, text: str, office: Office, settings: Settings) -> tuple[Office, Settings]:
    if field.startswith(UNIT_PREFIX):
        return office, _with_unit(field.removeprefix(UNIT_PREFIX), text, settings)
    if field == "mode":
        return office, replace(settings, mode=Mode(text))
    if field == "language":
        return office, replace(settings, language=Language(text))
    if field == "decimal_mark":
        return office, replace(settings, decimal_mark=text)
    if field == "scale":
        return office, replace(settings, scale=int(text))
    if field == "number_pattern":
        check_pattern(text, NUMBER_FIELDS, "number pattern")
    if field == "name_pattern":
        check_pattern(text, NAME_FIELDS, "name pattern")
    if field == "next_number":
        if not text.strip().isdecimal():
            raise InvalidInput("next number", text, "a whole number is needed", shown=text.strip() or "empty")
        return replace(office, next_number=int(text)), settings
    clean = text if field in ("address", "opening", "closing") else text.strip()
    return replace(office, **{field: clean}), settings  # type: ignore[arg-type]  # every other field is a text


def _with_unit(name: str, system: str, settings: Settings) -> Settings:
    """Return the settings with a quantity in a system of its own."""
    others = set(settings.other_units)
    others.discard(name)
    if system != settings.units:
        others.add(name)
    return replace(settings, other_units=tuple(sorted(others)))


def _office(field: str) -> Callable[[Office, Settings], str]:
    return lambda office, _: str(getattr(office, field))


def _unit(quantity: Quantity) -> Callable[[Office, Settings], str]:
    def read(_: Office, settings: Settings) -> str:
        other = System.SI if settings.units == System.US.value else System.US
        return other.value if quantity.name in settings.other_units else settings.units

    return read


def _pairs(words: Mapping[Mode, str] | Mapping[Language, str] | Mapping[str, str]) -> tuple[tuple[str, str], ...]:
    return tuple((str(value), text) for value, text in words.items())


ITEMS: tuple[_Item, ...] = (
    _Item("name", OFFICE, mark("Name of the office"), Kind.TEXT, _office("name")),
    _Item("signer", OFFICE, mark("Usual signer"), Kind.TEXT, _office("signer")),
    _Item("address", OFFICE, mark("Address, at most five lines"), Kind.LONG, _office("address")),
    _Item("logo", OFFICE, mark("Logo"), Kind.TEXT, _office("logo")),
    _Item("opening", OFFICE, mark("Opening text"), Kind.LONG, _office("opening")),
    _Item("closing", OFFICE, mark("Closing text"), Kind.LONG, _office("closing")),
    _Item("number_pattern", NUMBERS, mark("Pattern of certificate numbers"), Kind.TEXT, _office("number_pattern")),
    _Item("next_number", NUMBERS, mark("Next count"), Kind.TEXT, _office("next_number")),
    _Item("name_pattern", NUMBERS, mark("Pattern of file names"), Kind.TEXT, _office("name_pattern")),
    _Item("jobs", FOLDERS, mark("Folder of jobs"), Kind.TEXT, _office("jobs")),
    _Item("backup", FOLDERS, mark("Backup folder"), Kind.TEXT, _office("backup")),
    _Item("mode", VIEW, mark("Theme"), Kind.CHOICE, lambda _, settings: settings.mode.value, _pairs(MODES)),
    _Item(
        "language",
        VIEW,
        mark("Language of the window"),
        Kind.CHOICE,
        lambda _, settings: settings.language.value,
        _pairs(LANGUAGES),
    ),
    _Item(
        "decimal_mark",
        VIEW,
        mark("Decimal mark"),
        Kind.CHOICE,
        lambda _, settings: settings.decimal_mark,
        _pairs(MARKS),
    ),
    _Item(
        "scale",
        VIEW,
        mark("Size of everything"),
        Kind.CHOICE,
        lambda _, settings: str(settings.scale),
        tuple((str(scale), f"{scale} %") for scale in SCALES),
    ),
    *(
        _Item(
            f"{UNIT_PREFIX}{quantity.name}",
            UNITS,
            words,
            Kind.CHOICE,
            _unit(quantity),
            ((System.SI.value, quantity.value.si.symbol), (System.US.value, quantity.value.us.symbol)),
        )
        for quantity, words in QUANTITIES.items()
    ),
)
