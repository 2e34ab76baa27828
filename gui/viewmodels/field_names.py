"""Names of fields in sentences that refuse an input: "photo is …"."""

from __future__ import annotations

from gui.words import mark

FIELD_NAMES = (
    mark("address"),
    mark("certificate"),
    mark("day"),
    mark("equipment"),
    mark("file"),
    mark("folder"),
    mark("geometry"),
    mark("leak"),
    mark("leaks"),
    mark("logo"),
    mark("method"),
    mark("office"),
    mark("photo"),
    mark("pin"),
    mark("register"),
    mark("revision"),
    mark("safety"),
    mark("schedule"),
    mark("seal"),
    mark("situation"),
    mark("storeys"),
    mark("version"),
    mark("weather"),
)
