"""Zones beside the house: attics, garages, crawl spaces, closed rooms and neighbours, with propagated uncertainty."""

from __future__ import annotations

from analysis.zones.addhole import AddedHole, HoleSide, ZoneSplit, split_by_hole
from analysis.zones.garage import DoorOpened, GarageResult, garage_result
from analysis.zones.guarded import interface_flow_m3_h
from analysis.zones.reading import ZoneRatio, ZoneReading, zone_ratio
from analysis.zones.rooms import RoomResult, room_result, transfer_area_cm2
from analysis.zones.series import leakage_ratio, series_coefficient, zone_pressure_pa

__all__ = [
    "AddedHole",
    "DoorOpened",
    "GarageResult",
    "HoleSide",
    "RoomResult",
    "ZoneRatio",
    "ZoneReading",
    "ZoneSplit",
    "garage_result",
    "interface_flow_m3_h",
    "leakage_ratio",
    "room_result",
    "series_coefficient",
    "split_by_hole",
    "transfer_area_cm2",
    "zone_pressure_pa",
    "zone_ratio",
]
