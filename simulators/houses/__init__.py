"""The houses that come with the program: TOML files beside this module. All their data are invented."""

from __future__ import annotations

from pathlib import Path

from simulators.element import RANGES
from simulators.filetable import FileTable, read_file
from simulators.house import FACADES, WALLS, Climate, Facade, House, Leak, Zone

FORMAT = "airseam-house-1"
_FOLDER = Path(__file__).parent
RANGE_NAMES = tuple(item.name for item in RANGES)


def house_names() -> tuple[str, ...]:
    """Return the ids of all houses, sorted, `mill-row` first: the demonstration house."""
    names = sorted(path.stem for path in _FOLDER.glob("*.toml"))
    return tuple(sorted(names, key=lambda name: name != "mill-row"))


def load_house(name: str) -> House:
    """Return a house by its id; an unknown one raises `ValueError` that lists those there are."""
    if name not in house_names():
        raise ValueError(
            f"house is {name!r}: the name of a simulated house is needed, one of: {', '.join(house_names())}"
        )
    return read_house(name, (_FOLDER / f"{name}.toml").read_text(encoding="utf-8"))


def read_house(name: str, text: str) -> House:
    """Read the text of a house file; raises `InvalidFile`, a `ValueError`, with file, line and key."""
    top = read_file(text, f"{name}.toml", FORMAT)
    building, envelope, rig = top.table("building"), top.table("envelope"), top.table("rig")
    climate, leaks, zones = top.table("climate"), top.tables("leak"), top.tables("zone")
    height_m = building.number("height_m", above=0.0, at_most=100.0)
    house = House(
        id=name,
        name=top.text("name"),
        note=top.text("note"),
        volume_m3=building.number("volume_m3", at_least=10.0, at_most=1e6),
        envelope_area_m2=building.number("envelope_area_m2", above=0.0),
        floor_area_m2=building.number("floor_area_m2", above=0.0),
        height_m=height_m,
        altitude_m=building.number("altitude_m", at_least=-500.0, at_most=6000.0),
        n50_per_h=envelope.number("n50_per_h", above=0.0, at_most=100.0),
        air_stiffness=envelope.number("air_stiffness", at_least=1.0, at_most=1.4),
        leaks=tuple(_leak(leak) for leak in leaks),
        climate=_climate(climate),
        fan_facade=Facade(rig.choice("fan_facade", WALLS)),
        fitted=rig.choice("fitted", RANGE_NAMES),
        gauge_height_m=rig.number("gauge_height_m", at_least=0.0, at_most=height_m),
        zones=tuple(_zone(zone) for zone in zones),
    )
    total = sum(leak.share for leak in house.leaks)
    if not abs(total - 1.0) <= 1e-9:
        top.fail("leak", f"the shares of the leaks add up to {total:.4f}: 1 is needed")
    for table in (top, building, envelope, rig, climate, *leaks, *zones):
        table.finish()
    return house


def _climate(table: FileTable) -> Climate:
    return Climate(
        indoor_c=table.number("indoor_c", at_least=-50.0, at_most=60.0),
        outdoor_c=table.number("outdoor_c", at_least=-50.0, at_most=60.0),
        indoor_rh=table.number("indoor_rh", at_least=0.0, at_most=1.0),
        outdoor_rh=table.number("outdoor_rh", at_least=0.0, at_most=1.0),
        barometric_pa=table.number("barometric_pa", at_least=50_000.0, at_most=110_000.0),
        wind_m_s=table.number("wind_m_s", at_least=0.0, at_most=30.0),
        wind_from_deg=table.number("wind_from_deg", at_least=0.0, at_most=360.0),
        shelter=table.number("shelter", at_least=0.0, at_most=2.0),
    )


def _leak(table: FileTable) -> Leak:
    return Leak(
        name=table.text("name"),
        facade=Facade(table.choice("facade", FACADES)),
        share=table.number("share", above=0.0, at_most=1.0),
        exponent=table.number("exponent", at_least=0.5, at_most=1.0),
        height_m=table.number("height_m", at_least=0.0, at_most=100.0),
        pillowing=table.number("pillowing", 0.0, at_least=0.0, at_most=0.9),
        flap=table.number("flap", 0.0, at_least=0.0, at_most=100.0),
        flap_opens_pa=table.number("flap_opens_pa", 10.0, at_least=-100.0, at_most=100.0),
        tears_pa=table.number("tears_pa", 0.0, at_least=0.0),
        torn=table.number("torn", 0.0, at_least=0.0, at_most=100.0),
    )


def _zone(table: FileTable) -> Zone:
    height_m = table.number("inner_height_m", at_least=0.0) if table.has("inner_height_m") else None
    return Zone(
        name=table.text("name"),
        volume_m3=table.number("volume_m3", at_least=1.0),
        inner_m3_s_pa_n=table.number("inner_m3_s_pa_n", above=0.0),
        inner_exponent=table.number("inner_exponent", at_least=0.5, at_most=1.0),
        outer_m3_s_pa_n=table.number("outer_m3_s_pa_n", above=0.0),
        outer_exponent=table.number("outer_exponent", at_least=0.5, at_most=1.0),
        facade=Facade(table.choice("facade", FACADES)),
        inner_height_m=height_m,
    )
