"""What a report takes out of the job beside the numbers of its test: office, leaks, photos, equipment, edits."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field
from datetime import date

from acquisition.job import Job
from acquisition.job.issues import IssueMark
from acquisition.job.records import Edit
from acquisition.kinds import TestKind
from acquisition.office import Letterhead
from acquisition.register.due import DueState, due_of_rig, due_status
from acquisition.register.records import Calibration, Equipment, Register
from acquisition.report.photos import shrunk
from acquisition.rig import InstrumentSpec, RigSpec
from acquisition.sealing.leaks import Drop, Leak
from acquisition.setup.openings import shipped_openings
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


def case_file(
    job: Job,
    kind: TestKind,
    rig: RigSpec | None,
    day: date,
    *,
    office: Letterhead | None = None,
    register: Register | None = None,
    mark: IssueMark | None = None,
) -> CaseFile:
    """Return the case file of a test that was made on `day`, with photos made small enough for a page."""
    leaks = job.leaks.leaks
    return CaseFile(
        kind=kind,
        office=office,
        mark=mark,
        leaks=leaks,
        drops=job.leaks.drops,
        photos=tuple(_photos(job, leaks)),
        equipment=() if rig is None else tuple(_equipment(rig, register or Register(), day)),
        edits=job.edits,
    )


def _photos(job: Job, leaks: Mapping[int, Leak]) -> Iterable[ReportPhoto]:
    names = {opening.id: opening.name for opening in shipped_openings()[0]}
    of_leak = {photo: number for number, leak in leaks.items() for photo in leak.photos}
    for photo in job.house.photos:
        leak = of_leak.get(photo.id)
        about = names.get(photo.subject, photo.subject)
        if leak is not None:
            about = f"Leak {leak}: {leaks[leak].place}"
        try:
            content = shrunk(job.house.photo(photo.id))
        except InvalidInput:
            continue  # what is no whole picture stays in the job; the report says how many there are
        taken = f"{photo.utc:%Y-%m-%d %H:%M} UTC"
        yield ReportPhoto(photo.id, about, taken, photo.sha256, content, leak)


def _equipment(rig: RigSpec, register: Register, day: date) -> Iterable[EquipmentLine]:
    for item in rig.instruments:
        known = register.by_serial(item.serial)
        own = known.calibration if known else None
        yield _noted(_title(item, known), item, rig, day) or _line(_title(item, known), item.serial, own, rig, day)
        for entry in known.ranges if known else ():
            if entry.name in (rig.fitted, *(fan.fitted for fan in rig.further)):
                yield _line(f"Flow range {entry.name}", item.serial, entry.calibration, rig, day)


def _noted(what: str, item: InstrumentSpec, rig: RigSpec, day: date) -> EquipmentLine | None:
    """Return the calibration that was written down with the test, None where there was none."""
    note = next((note for note in rig.calibrations if note.of == item.name and note.calibrated is not None), None)
    if note is None or note.calibrated is None:
        return None
    odd = due_of_rig([note], day)
    state = odd[0].state if odd else DueState.GOOD
    scheme, due = min(note.due, key=lambda pair: pair[1])
    status = f"{state} by {scheme}" if scheme else str(state)
    return EquipmentLine(what, item.serial, note.calibrated.isoformat(), due.isoformat(), status)


def _title(item: InstrumentSpec, known: Equipment | None) -> str:
    return f"{item.name}: {known.title}" if known is not None else item.name


def _line(what: str, serial: str, calibration: Calibration | None, rig: RigSpec, day: date) -> EquipmentLine:
    if calibration is None:
        status = "simulated" if rig.simulated else "no calibration is registered"
        return EquipmentLine(what, serial, "", "", status)
    made_by = f", {calibration.laboratory}" if calibration.laboratory else ""
    return EquipmentLine(
        what=what,
        serial=serial,
        calibrated=f"{calibration.calibrated.isoformat()}{made_by}",
        due=calibration.due_date.isoformat(),
        status=str(due_status(what, calibration, day).state),
    )
