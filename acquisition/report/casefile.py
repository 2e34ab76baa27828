"""What a report takes out of the job beside the numbers of its test: office, leaks, photos, equipment, edits."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field
from datetime import date

from acquisition.job import Job
from acquisition.job.issues import IssueMark
from acquisition.job.records import Edit
from acquisition.kinds import TestKind
from acquisition.languages import ENGLISH, Language
from acquisition.office import Letterhead
from acquisition.register.due import DueState, due_of_rig, due_status
from acquisition.register.records import Calibration, Equipment, Register
from acquisition.report.photos import shrunk
from acquisition.rig import InstrumentSpec, RigSpec
from acquisition.sealing.leaks import Drop, Leak
from acquisition.setup.openings import shipped_openings
from acquisition.told.sealing import leak_place
from acquisition.worstcase import WorstCase, worst_case
from acquisition.zonetest import KeptZone, kept_zones
from analysis.errors import InvalidInput


@dataclass(frozen=True, slots=True)
class EquipmentLine:
    """One instrument or flow range, and how its calibration stood on the day of the test."""

    what: str
    serial: str
    calibrated: str
    due: str
    status: str


@dataclass(frozen=True, slots=True)
class ReportPhoto:
    """A picture as it is printed. `about` says what it shows, `leak` is the number of its leak, None for an opening."""

    id: int
    about: str
    taken: str
    sha256: str
    content: bytes
    leak: int | None = None

    @property
    def file(self) -> str:
        """Its name among the files of the page."""
        return f"photo-{self.id}.svg"


@dataclass(frozen=True, slots=True)
class CaseFile:
    """All of it; what a test without a job has not is empty."""

    kind: TestKind = TestKind.CODE
    office: Letterhead | None = None
    mark: IssueMark | None = None
    """None while the report is a draft."""
    leaks: Mapping[int, Leak] = field(default_factory=dict)
    drops: Mapping[int, Drop] = field(default_factory=dict)
    photos: tuple[ReportPhoto, ...] = ()
    equipment: tuple[EquipmentLine, ...] = ()
    edits: tuple[Edit, ...] = ()
    worst_case: WorstCase | None = None
    """What exhaust fans did to the pressure, where that was read."""
    zones: tuple[KeptZone, ...] = ()


def case_file(
    job: Job,
    kind: TestKind,
    rig: RigSpec | None,
    day: date,
    *,
    office: Letterhead | None = None,
    register: Register | None = None,
    mark: IssueMark | None = None,
    language: Language = ENGLISH,
) -> CaseFile:
    """Return the case file of a test that was made on `day`, with photos made small enough for a page."""
    leaks = job.leaks.leaks
    return CaseFile(
        kind=kind,
        office=office,
        mark=mark,
        leaks=leaks,
        drops=job.leaks.drops,
        photos=tuple(_photos(job, leaks, language)),
        equipment=() if rig is None else tuple(_equipment(rig, register or Register(), day, language)),
        edits=job.edits,
        worst_case=found if (found := worst_case(job.house.entries)).worst is not None else None,
        zones=kept_zones(job.house.entries),
    )


def _photos(job: Job, leaks: Mapping[int, Leak], language: Language) -> Iterable[ReportPhoto]:
    names = {opening.id: opening.name for opening in shipped_openings()[0]}
    of_leak = {photo: number for number, leak in leaks.items() for photo in leak.photos}
    for photo in job.house.photos:
        leak = of_leak.get(photo.id)
        about = language.say(names.get(photo.subject, photo.subject))
        if leak is not None:
            about = language.say("Leak {number}: {place}", number=leak, place=leak_place(leaks[leak], language))
        try:
            content = shrunk(job.house.photo(photo.id))
        except InvalidInput:
            continue  # what is no whole picture stays in the job; the report says how many there are
        taken = f"{language.short_day(photo.utc)} {photo.utc:%H:%M} UTC"
        yield ReportPhoto(photo.id, about, taken, photo.sha256, content, leak)


def _equipment(rig: RigSpec, register: Register, day: date, language: Language) -> Iterable[EquipmentLine]:
    for item in rig.instruments:
        known = register.by_serial(item.serial)
        own = known.calibration if known else None
        title = _title(item, known, language)
        yield _noted(title, item, rig, day, language) or _line(title, item.serial, own, rig, day, language)
        for entry in known.ranges if known else ():
            if entry.name in (rig.fitted, *(fan.fitted for fan in rig.further)):
                title = language.say("Flow range {name}", name=entry.name)
                yield _line(title, item.serial, entry.calibration, rig, day, language)


def _noted(what: str, item: InstrumentSpec, rig: RigSpec, day: date, language: Language) -> EquipmentLine | None:
    """Return the calibration that was written down with the test, None where there was none."""
    note = next((note for note in rig.calibrations if note.of == item.name and note.calibrated is not None), None)
    if note is None or note.calibrated is None:
        return None
    odd = due_of_rig([note], day)
    state = language.say(str(odd[0].state if odd else DueState.GOOD))
    scheme, due = min(note.due, key=lambda pair: pair[1])
    status = language.say("{state} by {scheme}", state=state, scheme=scheme) if scheme else state
    return EquipmentLine(what, item.serial, language.short_day(note.calibrated), language.short_day(due), status)


def _title(item: InstrumentSpec, known: Equipment | None, language: Language) -> str:
    name = language.say(item.name)
    return language.say("{what}: {words}", what=name, words=known.title) if known is not None else name


def _line(
    what: str, serial: str, calibration: Calibration | None, rig: RigSpec, day: date, language: Language
) -> EquipmentLine:
    if calibration is None:
        status = "simulated" if rig.simulated else "no calibration is registered"
        return EquipmentLine(what, serial, "", "", language.say(status))
    made_by = f", {calibration.laboratory}" if calibration.laboratory else ""
    return EquipmentLine(
        what=what,
        serial=serial,
        calibrated=f"{language.short_day(calibration.calibrated)}{made_by}",
        due=language.short_day(calibration.due_date),
        status=language.say(str(due_status(what, calibration, day).state)),
    )
