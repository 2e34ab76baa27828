"""The Job place: what stands in each field, what is wrong with it, what looks odd."""

from __future__ import annotations

from dataclasses import dataclass

from acquisition.rig import RigSpec, Role
from acquisition.stages import stage_names
from acquisition.told import texts
from analysis.errors import InvalidInput
from analysis.methods import method_of
from analysis.records import Building, TestResult
from analysis.units import Display
from gui.viewmodels.errors import sentence
from gui.viewmodels.hints import hints, volume_worth
from gui.viewmodels.history import History
from gui.viewmodels.published import PublishedPicture, published_picture
from gui.viewmodels.retold import retold
from gui.viewmodels.sheet import FIELDS, Field, Kind, Sheet, field_of, hose_words, remembering
from gui.words import say, within

MEASURED = {"indoor": Role.INDOOR, "outdoor": Role.OUTDOOR, "barometer": Role.BAROMETER}


@dataclass(frozen=True, slots=True)
class FieldPicture:
    """A field as it stands on the screen. Of `error`, `warning` and `note` the first that is not empty is shown."""

    id: str
    group: str
    label: str
    kind: Kind
    text: str
    unit: str
    choices: tuple[tuple[str, str], ...]
    placeholder: str
    error: str = ""
    warning: str = ""
    note: str = ""


@dataclass(frozen=True, slots=True)
class JobPicture:
    """The whole place."""

    path: str
    saved: str
    fields: tuple[FieldPicture, ...]
    published: PublishedPicture
    undo: str
    redo: str


class JobSheetModel:
    """The sheet under edit, with its history. Every accepted edit is kept at once by whoever `sheet` is handed to."""

    def __init__(self, sheet: Sheet, tested: Building | None) -> None:
        """Begin with the sheet of a job; `tested` is the building as it was last tested."""
        self.sheet = sheet
        self.tested = tested
        self._history: History[Sheet] = History()
        self._wrong: dict[str, tuple[str, str]] = {}

    def follow(self, sheet: Sheet) -> None:
        """Take over what was changed elsewhere (a simulated house fills an empty job)."""
        if (sheet.details, sheet.plan, sheet.stages) != (self.sheet.details, self.sheet.plan, self.sheet.stages):
            self.sheet = sheet

    @property
    def undo_label(self) -> str:
        """What would be undone."""
        return self._history.undo_label

    @property
    def redo_label(self) -> str:
        """What would be done again."""
        return self._history.redo_label

    def commit(self, field_id: str, text: str, display: Display) -> bool:
        """Take what was typed; return whether the sheet changed. What cannot be used stays, with its error."""
        field = field_of(field_id)
        if text == field.text(self.sheet, display):
            self._wrong.pop(field_id, None)
            return False
        try:
            changed = remembering(self.sheet, field.typed(self.sheet, text, display))
        except InvalidInput as error:
            self._wrong[field_id] = (text, sentence(error))
            return False
        self._wrong.pop(field_id, None)
        if changed == self.sheet:
            return False
        self._history.note(within(say(field.label)), self.sheet, changed)
        self.sheet = changed
        return True

    def undo(self) -> bool:
        """Go back one edit; return whether the sheet changed."""
        return self._take(self._history.undo())

    def redo(self) -> bool:
        """Do the edit again that was undone last; return whether the sheet changed."""
        return self._take(self._history.redo())

    def picture(
        self,
        display: Display,
        rig: RigSpec | None,
        result: TestResult | None,
        path: str,
        saved: str,
    ) -> JobPicture:
        """Return the place."""
        odd = {hint.field: hint.sentence for hint in hints(self.sheet, display)}
        measured = set(rig.role_channels()) if rig is not None else set()
        return JobPicture(
            path=path,
            saved=saved,
            fields=tuple(
                self._field(field.id, display, odd.get(field.id, ""), self._note(field.id, measured, result, display))
                for field in FIELDS
                if self._shows(field.id)
            ),
            published=published_picture(self.sheet.plan.published, self.sheet.details, display),
            undo=self.undo_label,
            redo=self.redo_label,
        )

    def _shows(self, field_id: str) -> bool:
        """Tell whether a field has anything to say: the reason of a change, the states that the method knows."""
        if field_id == "reason":
            return self.building_changed
        return field_id != "preparation" or bool(method_of(self.sheet.plan.method).preparations)

    @property
    def building_changed(self) -> bool:
        """Whether the building differs from the one that was last tested."""
        return self.tested is not None and self.tested != self.sheet.plan.building

    def _take(self, sheet: Sheet | None) -> bool:
        if sheet is None:
            return False
        self.sheet = sheet
        self._wrong.clear()
        return True

    def _field(self, field_id: str, display: Display, warning: str, note: str) -> FieldPicture:
        field = field_of(field_id)
        text, error = self._wrong.get(field_id, (field.text(self.sheet, display), ""))
        return FieldPicture(
            id=field.id,
            group=field.group,
            label=field.label,
            kind=field.kind,
            text=text,
            unit=field.unit(self.sheet, display),
            choices=self._choices(field),
            placeholder=field.hint,
            error=error,
            warning=warning,
            note=note,
        )

    def _choices(self, field: Field) -> tuple[tuple[str, str], ...]:
        if field.id == "stage":
            return tuple((say(name), say(name)) for name in stage_names(self.sheet.stages))
        if field.id == "hose_check":
            return tuple((words, words) for words in hose_words())
        if field.id != "preparation":
            return field.choices
        states = method_of(self.sheet.plan.method).preparations
        return (("", say("Not said")), *((state, _parted(words)[0]) for state, words in states.items()))

    def _note(self, field_id: str, measured: set[Role], result: TestResult | None, display: Display) -> str:
        if field_id == "volume":
            return volume_worth(self.sheet, result, display)
        if MEASURED.get(field_id) in measured:
            return say("The rig measures this; the value here counts where it does not read.")
        if field_id == "kind" and not self.sheet.plan.kind.certified:
            return say("Its report carries no certificate number; leaks come first.")
        if field_id == "stage" and any(item.stage == self.sheet.plan.stage for item in self.sheet.stages):
            return say("Kind, limits and state of the building are remembered for each stage.")
        if field_id == "preparation":
            return _parted(method_of(self.sheet.plan.method).preparations.get(self.sheet.plan.preparation, ""))[1]
        if field_id == "targets":
            return say("Highest first: it shows a loose seal at once.")
        return ""


def _parted(words: str) -> tuple[str, str]:
    """Return the name of a state of the building, and the sentence that says what it means."""
    name, _, meaning = retold(words).partition(":")
    return name.rstrip(), texts.sentence(meaning.strip()) if meaning else ""
