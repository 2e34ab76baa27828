"""What a job holds of the house beside its tests: the geometry, what was done to the building, pictures."""

from __future__ import annotations

import hashlib
import sqlite3
import threading
from dataclasses import dataclass, field
from datetime import datetime
from enum import StrEnum

from acquisition.geometry import Geometry, geometry_from, geometry_text
from acquisition.job.encoding import utc_from, utc_text
from acquisition.job.writer import Writer
from analysis.errors import InvalidInput

LARGEST_PHOTO_BYTES = 20 * 2**20
PICTURE_HEADS = (b"\x89PNG\r\n\x1a\n", b"\xff\xd8\xff")
"""How PNG and JPEG files begin."""


class PreparationKind(StrEnum):
    """What an entry is about."""

    OPENING = "opening"
    SEAL = "seal"
    RESTORE = "restore"
    SAFETY = "safety"
    CHECK = "check"
    EXHAUST = "exhaust"
    """A pressure that was read with exhaust fans on: `subject` says which, see `acquisition.worstcase`."""
    ZONE = "zone"
    """What was read at a garage or an attic: `subject` is its name, see `acquisition.zonetest`."""
    SITE = "site"
    """What changed on site before a test: `subject` is its number, `state` the words."""


@dataclass(frozen=True, slots=True)
class GeometryVersion:
    """A geometry as it was kept."""

    utc: datetime
    name: str
    reason: str
    geometry: Geometry


@dataclass(frozen=True, slots=True)
class Entry:
    """Something done to the building, or answered about it."""

    utc: datetime
    kind: PreparationKind
    subject: str
    state: str
    who: str = ""
    note: str = ""


@dataclass(frozen=True, slots=True)
class Photo:
    """A picture, without its content; `id` asks for that."""

    id: int
    utc: datetime
    subject: str
    name: str
    sha256: str


@dataclass(slots=True)
class HouseContents:
    """All of it but the pictures themselves."""

    draft: Geometry | None = None
    versions: list[GeometryVersion] = field(default_factory=list)
    entries: list[Entry] = field(default_factory=list)
    photos: list[Photo] = field(default_factory=list)


class House:
    """Keeps `HouseContents` and the file in step. Any thread may call it; nothing waits for the disk but `photo`."""

    def __init__(self, contents: HouseContents, writer: Writer) -> None:
        """Take over what was read from the file."""
        self._contents = contents
        self._writer = writer
        self._lock = threading.RLock()

    @property
    def geometry(self) -> Geometry:
        """The geometry as it is being entered, or as it was kept last."""
        with self._lock:
            if self._contents.draft is not None:
                return self._contents.draft
            return self._contents.versions[-1].geometry if self._contents.versions else Geometry()

    @property
    def versions(self) -> tuple[GeometryVersion, ...]:
        """All versions that were kept, oldest first."""
        with self._lock:
            return tuple(self._contents.versions)

    @property
    def entries(self) -> tuple[Entry, ...]:
        """Everything that was done to the building, oldest first."""
        with self._lock:
            return tuple(self._contents.entries)

    @property
    def photos(self) -> tuple[Photo, ...]:
        """All pictures, oldest first."""
        with self._lock:
            return tuple(self._contents.photos)

    def set_geometry(self, geometry: Geometry) -> None:
        """Keep the geometry as it is being entered."""
        with self._lock:
            self._contents.draft = geometry
            row = (geometry_text(geometry),)
            self._writer.post("INSERT OR REPLACE INTO geometry_draft (id, document) VALUES (1, ?)", (row,))

    def keep_version(self, name: str, reason: str, utc: datetime) -> None:
        """Keep the geometry as a version; raises `InvalidInput` without a name, without a reason, without a change."""
        version = GeometryVersion(utc, " ".join(name.split()), " ".join(reason.split()), self.geometry)
        if not version.name:
            raise InvalidInput("version", name, "a name is needed", shown="without a name")
        if not version.reason:
            raise InvalidInput("reason", reason, "say why the geometry is kept or was changed", shown="empty")
        with self._lock:
            if self._contents.versions and self._contents.versions[-1].geometry == version.geometry:
                raise InvalidInput("geometry", None, "there is nothing new to keep", shown="as it was kept last")
            self._contents.versions.append(version)
            row = (utc_text(utc), version.name, version.reason, geometry_text(version.geometry))
            self._writer.post(
                "INSERT INTO geometry_version (utc, name, reason, document) VALUES (?, ?, ?, ?)", (row,), urgent=True
            )

    def note(self, entry: Entry) -> None:
        """Add what was done or answered."""
        with self._lock:
            self._contents.entries.append(entry)
            row = (utc_text(entry.utc), entry.kind.value, entry.subject, entry.state, entry.who, entry.note)
            sql = "INSERT INTO preparation (utc, kind, subject, state, who, note) VALUES (?, ?, ?, ?, ?, ?)"
            self._writer.post(sql, (row,), urgent=True)

    def add_photo(self, subject: str, name: str, content: bytes, utc: datetime) -> Photo:
        """Put a copy of a picture into the job; raises `InvalidInput` for what is no PNG or JPEG, or too large."""
        if not content.startswith(PICTURE_HEADS):
            raise InvalidInput("photo", name, "a PNG or JPEG picture is needed", shown=f"{name!r}")
        if len(content) > LARGEST_PHOTO_BYTES:
            allowed = f"at most {LARGEST_PHOTO_BYTES // 2**20} MiB"
            raise InvalidInput("photo", name, allowed, shown=f"{len(content) / 2**20:.0f} MiB large")
        with self._lock:
            number = max((photo.id for photo in self._contents.photos), default=0) + 1
            photo = Photo(number, utc, subject, name, hashlib.sha256(content).hexdigest())
            self._contents.photos.append(photo)
            row = (number, utc_text(utc), subject, name, photo.sha256, content)
            sql = "INSERT INTO photo (id, utc, subject, name, sha256, content) VALUES (?, ?, ?, ?, ?, ?)"
            self._writer.post(sql, (row,), urgent=True)
        return photo

    def photo(self, photo_id: int) -> bytes:
        """Return the content of a picture; raises `InvalidInput` where there is none of this number."""

        def read(db: sqlite3.Connection) -> bytes | None:
            row = db.execute("SELECT content FROM photo WHERE id = ?", (photo_id,)).fetchone()
            return None if row is None else bytes(row[0])

        content = self._writer.read(read)
        if content is None:
            raise InvalidInput("photo", photo_id, "there is none of this number")
        return content


def read_house(db: sqlite3.Connection) -> HouseContents:
    """Read everything but the pictures themselves; raises `InvalidInput` or `sqlite3.Error`."""
    draft = db.execute("SELECT document FROM geometry_draft").fetchone()
    return HouseContents(
        draft=None if draft is None else geometry_from(draft[0]),
        versions=[
            GeometryVersion(utc_from(utc), name, reason, geometry_from(text))
            for utc, name, reason, text in db.execute(
                "SELECT utc, name, reason, document FROM geometry_version ORDER BY id"
            )
        ],
        entries=[
            Entry(utc_from(utc), PreparationKind(kind), *rest)
            for utc, kind, *rest in db.execute(
                "SELECT utc, kind, subject, state, who, note FROM preparation ORDER BY id"
            )
        ],
        photos=[
            Photo(number, utc_from(utc), *rest)
            for number, utc, *rest in db.execute("SELECT id, utc, subject, name, sha256 FROM photo ORDER BY id")
        ],
    )
