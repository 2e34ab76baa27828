"""The geometry of a building: rooms and surfaces, what they add up to, and whether that can be."""

from acquisition.geometry.document import geometry_from, geometry_text
from acquisition.geometry.judging import Oddity, oddities
from acquisition.geometry.pasting import rooms_from, surfaces_from
from acquisition.geometry.records import HOW, Adjoins, Geometry, Room, Surface
from acquisition.geometry.totals import Totals, applied, totals

__all__ = [
    "HOW",
    "Adjoins",
    "Geometry",
    "Oddity",
    "Room",
    "Surface",
    "Totals",
    "applied",
    "geometry_from",
    "geometry_text",
    "oddities",
    "rooms_from",
    "surfaces_from",
    "totals",
]
