"""Rooms and surfaces: sums, gaps, what looks odd, pasting, and the way through the job file."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from acquisition.geometry import (
    Adjoins,
    Geometry,
    Room,
    Surface,
    applied,
    geometry_from,
    geometry_text,
    oddities,
    rooms_from,
    surfaces_from,
    totals,
)
from analysis.errors import InvalidInput
from analysis.records import Building
from analysis.units import Display, System

SI, US, COMMA = Display(), Display(System.US), Display(System.SI, ",")
HALL = Room("Hall", 40.0, 2.5)
LOFT = Room("Loft", 30.0, volume_m3=60.0)
SHED = Room("Shed", 12.0, 2.2, included=False, reason="unheated, door to the outside")
HOUSE = Geometry(
    (HALL, LOFT, SHED),
    (Surface("Walls", 140.0), Surface("Floor", 40.0, Adjoins.GROUND), Surface("Roof", 60.0)),
    "inside",
)


def sentences(geometry: Geometry, display: Display = SI) -> list[str]:
    return [item.sentence for item in oddities(geometry, display)]


def test_only_what_is_included_counts() -> None:
    sums = totals(HOUSE)
    assert (sums.volume_m3, sums.floor_area_m2, sums.envelope_area_m2) == (160.0, 70.0, 240.0)
    assert sums.adjoining_m2 == ((Adjoins.OUTSIDE, 200.0), (Adjoins.GROUND, 40.0))
    assert sums.left_out == ("Shed",)
    assert sums.gaps == ()
    assert sentences(HOUSE) == []


def test_a_sum_with_a_gap_is_not_used() -> None:
    geometry = Geometry((HALL, Room("Bath", 6.0)))
    known = Building("Mill Row 8", 400.0, floor_area_m2=99.0)
    assert totals(geometry).gaps == ("Bath: volume",)
    assert applied(known, geometry) == Building("Mill Row 8", 400.0, floor_area_m2=46.0)
    assert any("Bath: volume" in item for item in sentences(geometry))
    assert applied(known, Geometry()) == known


def test_what_cannot_be_is_told() -> None:
    assert any("25.0 m high" in item for item in sentences(Geometry((Room("Hall", 10.0, 25.0),))))
    assert any("82.0 ft high" in item for item in sentences(Geometry((Room("Hall", 10.0, 25.0),)), US))
    assert any("without a reason" in item for item in sentences(Geometry((Room("Shed", 9.0, 2.4, included=False),))))
    assert any("twice" in item for item in sentences(Geometry((HALL, HALL))))
    # A ball of 100 m3 has (36 pi)^(1/3) 100^(2/3) = 104.2 m2 (geometry).
    tight = Geometry((Room("Hall", 40.0, 2.5),), (Surface("Walls", 104.0),))
    assert any("less than 104 m²" in item for item in sentences(tight))
    assert sentences(Geometry((Room("Hall", 40.0, 2.5),), (Surface("Walls", 104.3),))) == []
    assert any("Very much" in item for item in sentences(Geometry((HALL,), (Surface("Walls", 900.0),))))


def test_rooms_come_out_of_a_spreadsheet() -> None:
    text = "Room\tArea\tHeight\tVolume\nHall\t40,5\t2,5\nLoft\t30\t\t54\n\n"
    assert rooms_from(text, COMMA) == (Room("Hall", 40.5, 2.5), Room("Loft", 30.0, None, 54.0))
    (hall,) = rooms_from("Hall\t100\t8", US)
    # 100 ft2 by 8 ft are 800 ft3; a foot is 0.3048 m (exact by definition).
    assert hall.volume == pytest.approx(800 * 0.3048**3, rel=1e-12)
    assert surfaces_from("Wall\t20\tNeighbour\nRoof\t30", SI) == (
        Surface("Wall", 20.0, Adjoins.NEIGHBOUR),
        Surface("Roof", 30.0),
    )


@pytest.mark.parametrize(
    ("text", "words"),
    [
        ("", "empty"),
        ("Hall\tmany2", "line 1, floor area"),
        ("Hall\t40\t2.5\nBath\t-3\t2.5", "line 2, floor area"),
        ("Hall\t40\t2.5\t100\t7", "columns are"),
        ("\t40\t2.5", "name is empty"),
    ],
)
def test_a_table_that_cannot_be_read_is_refused(text: str, words: str) -> None:
    with pytest.raises(InvalidInput, match=words):
        rooms_from(text, SI)


def test_an_unknown_neighbour_is_refused() -> None:
    with pytest.raises(InvalidInput, match="one of outside, ground"):
        surfaces_from("Wall\t20\tmoon", SI)


sizes = st.none() | st.floats(0.1, 1e5)
rooms = st.builds(Room, st.text(max_size=20), sizes, sizes, sizes, st.booleans(), st.text(max_size=20))
surfaces = st.builds(Surface, st.text(max_size=20), sizes, st.sampled_from(Adjoins), st.booleans(), st.text(max_size=9))


@given(st.builds(Geometry, st.lists(rooms, max_size=5).map(tuple), st.lists(surfaces, max_size=5).map(tuple)))
def test_a_geometry_comes_back_from_its_text(geometry: Geometry) -> None:
    assert geometry_from(geometry_text(geometry)) == geometry
    sums = totals(geometry)
    if sums.volume_m3 is not None:
        assert math.isclose(sums.volume_m3, sum(room.volume or 0 for room in geometry.rooms if room.included))


def test_a_damaged_text_is_refused_with_its_place() -> None:
    with pytest.raises(InvalidInput, match=r"rooms\[0\]\.name"):
        geometry_from('{"rooms": [{"name": 3}], "surfaces": [], "how": ""}')
