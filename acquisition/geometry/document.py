"""A geometry as the JSON that the job file holds."""

from __future__ import annotations

import json
from dataclasses import asdict

from acquisition.geometry.records import HOW, Adjoins, Geometry, Room, Surface
from analysis.fields import Fields, parse_document


def geometry_text(geometry: Geometry) -> str:
    """Return JSON with sorted keys and no blanks."""
    return json.dumps(asdict(geometry), sort_keys=True, ensure_ascii=False, separators=(",", ":"), allow_nan=False)


def geometry_from(text: str) -> Geometry:
    """Read what `geometry_text` wrote; raises `InvalidInput` with the path of the field."""
    fields = parse_document(text, "geometry")
    made = Geometry(
        rooms=tuple(_room(item) for item in fields.records("rooms")),
        surfaces=tuple(_surface(item) for item in fields.records("surfaces")),
        how=fields.choice("how", tuple(HOW)),
    )
    fields.finish()
    return made


def _room(fields: Fields) -> Room:
    made = Room(
        name=fields.text("name"),
        floor_area_m2=fields.number_or_none("floor_area_m2"),
        height_m=fields.number_or_none("height_m"),
        volume_m3=fields.number_or_none("volume_m3"),
        included=fields.flag("included"),
        reason=fields.text("reason"),
    )
    fields.finish()
    return made


def _surface(fields: Fields) -> Surface:
    made = Surface(
        name=fields.text("name"),
        area_m2=fields.number_or_none("area_m2"),
        adjoins=Adjoins(fields.choice("adjoins", tuple(Adjoins))),
        included=fields.flag("included"),
        reason=fields.text("reason"),
    )
    fields.finish()
    return made
