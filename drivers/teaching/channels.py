"""What a person says about a number on the wire, and the part of a profile that this becomes."""

from __future__ import annotations

import json
from collections.abc import Sequence
from dataclasses import dataclass
from pathlib import Path

from drivers.errors import ProfileError
from drivers.profile import read_profile
from drivers.profilesections import FORMAT
from drivers.siunits import UNITS
from drivers.spec import LinkSettings, Profile

USUAL_LIMITS = {
    "pressure": (-500.0, 500.0),
    "temperature": (-40.0, 60.0),
    "flow": (-20_000.0, 20_000.0),
    "humidity": (0.0, 1.0),
    "battery": (0.0, 1.0),
    "speed": (0.0, 1.0),
}
"""In SI units: what a gauge for this work usually spans, where nobody says better."""
FINEST = 1e-9


@dataclass(frozen=True, slots=True)
class Meaning:
    """What a number is. `low`, `high` and `resolution` in `unit`; None: usual limits, last digit shown."""

    name: str
    quantity: str = "pressure"
    unit: str = "Pa"
    scale: float = 1.0
    sign: str = "plus"
    low: float | None = None
    high: float | None = None
    resolution: float | None = None
    accuracy: float = 0.0
    accuracy_percent: float = 0.0


def usual_limits(quantity: str, unit: str) -> tuple[float, float]:
    """Return the usual limits of a quantity in a unit; raises `KeyError` for units that the program does not know."""
    factor, offset = UNITS[quantity][unit]
    low, high = USUAL_LIMITS[quantity]
    return (low - offset) / factor, (high - offset) / factor


def heading(id_: str, title: str, protocol: str, link: LinkSettings) -> list[str]:
    """Return the lines of a profile's first part; the caller may add keys before its first table."""
    return [
        f"format = {quoted(FORMAT)}",
        f"id = {quoted(id_)}",
        f"title = {quoted(title)}",
        'kind = "gauge"',
        f"protocol = {quoted(protocol)}",
        "",
        "[link]",
        f"baud = {link.baud}",
        f"data_bits = {link.data_bits}",
        f"parity = {quoted(link.parity)}",
        f"stop_bits = {link.stop_bits}",
        f"dtr = {str(link.dtr).lower()}",
        f"rts = {str(link.rts).lower()}",
        f"settle_s = {link.settle_s!r}",
        f"terminator = {quoted(link.terminator)}",
    ]


def channel_lines(meaning: Meaning, shown_step: float) -> list[str]:
    """Return the `[[channel]]` of a number whose last digit on the wire is worth `shown_step`."""
    lines = ["", "[[channel]]"]
    lines += [f"{key} = {quoted(getattr(meaning, key))}" for key in ("name", "quantity", "unit", "sign")]
    lines.append(f"scale = {meaning.scale!r}")
    known = meaning.quantity in UNITS and meaning.unit in UNITS[meaning.quantity]
    low, high = usual_limits(meaning.quantity, meaning.unit) if known else (0.0, 1.0)
    lines.append(f"low = {low if meaning.low is None else meaning.low!r}")
    lines.append(f"high = {high if meaning.high is None else meaning.high!r}")
    step = max(shown_step * abs(meaning.scale), FINEST) if meaning.resolution is None else meaning.resolution
    lines.append(f"resolution = {step!r}")
    lines += [f"accuracy = {meaning.accuracy!r}", f"accuracy_percent = {meaning.accuracy_percent!r}"]
    return lines


def quoted(text: str) -> str:
    """Return a TOML basic string; what JSON writes is one."""
    return json.dumps(text, ensure_ascii=True)


def checked(lines: Sequence[str], id_: str) -> tuple[str, Profile]:
    """Return the text of a profile and the profile that is read from it; raises `ProfileError`."""
    text = "\n".join(lines) + "\n"
    return text, read_profile(text, f"{id_}.toml")


def save_profile(text: str, folder: Path, *, replacing: bool = False) -> Path:
    """Write a profile as ID.toml and return its path, for the rig file; raises `ProfileError`.

    What is no valid profile is not written; a profile of the same id is only overwritten when `replacing`.
    """
    profile = read_profile(text, "profile")
    if not profile.id.replace("-", "").replace("_", "").isalnum() or not profile.id.isascii():
        raise ProfileError("profile", None, "id", f"letters, digits, - and _ are needed, not {profile.id!r}")
    path = folder / f"{profile.id}.toml"
    try:
        folder.mkdir(parents=True, exist_ok=True)
        with path.open("w" if replacing else "x", encoding="utf-8") as file:
            file.write(text)
    except FileExistsError as error:
        raise ProfileError(str(path), None, "id", "a profile of this id is there already: choose another id") from error
    except OSError as error:
        raise ProfileError(str(path), None, "profile", f"it cannot be written ({error.strerror})") from error
    return path
