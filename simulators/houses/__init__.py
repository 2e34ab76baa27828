"""The houses that come with the program: TOML files beside this module. All their data are invented."""

from __future__ import annotations

import tomllib
from collections.abc import Mapping
from pathlib import Path
from typing import Any

from simulators.house import Climate, Facade, House, Leak, Zone

FORMAT = "airseam-house-1"
_FOLDER = Path(__file__).parent


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
    """Read the text of a house file; raises `ValueError` when it is none."""
    table: Mapping[str, Any] = tomllib.loads(text)
    if table.get("format") != FORMAT:
        raise ValueError(f'house {name}: format is {table.get("format")!r}: "{FORMAT}" is needed')
    leaks = tuple(Leak(**{**leak, "facade": Facade(leak["facade"])}) for leak in table["leak"])
    total = sum(leak.share for leak in leaks)
    if abs(total - 1.0) > 1e-9:
        raise ValueError(f"house {name}: the shares of the leaks add up to {total:.4f}: 1 is needed")
    rig = table["rig"]
    return House(
        id=name,
        name=table["name"],
        note=table["note"],
        **table["building"],
        **table["envelope"],
        leaks=leaks,
        climate=Climate(**table["climate"]),
        fan_facade=Facade(rig["fan_facade"]),
        fitted=rig["fitted"],
        gauge_height_m=rig["gauge_height_m"],
        zones=tuple(Zone(**{**zone, "facade": Facade(zone["facade"])}) for zone in table.get("zone", [])),
    )
