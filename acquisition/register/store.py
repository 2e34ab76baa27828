"""The register as a TOML file in the user's data folder, certificates beside it."""

from __future__ import annotations

import json
import os
import shutil
import tomllib
from collections.abc import Mapping
from datetime import date
from pathlib import Path

from platformdirs import user_data_path

from acquisition.correction import Correction
from acquisition.register.curves import PowerLaw, Table
from acquisition.register.reading import read_register
from acquisition.register.records import Calibration, FieldCheck, RangeEntry, Register
from analysis.errors import InvalidInput

FILE = "register.toml"
FORMAT = "airseam-register-1"
CERTIFICATES = "certificates"
LARGEST_FILE_BYTES = 10_000_000


def register_path() -> Path:
    """Return where the register of this user is."""
    return user_data_path("airseam", appauthor=False) / FILE


def load_register(path: Path) -> Register:
    """Read a register, an empty one where there is no file yet; raises `InvalidInput` naming what is wrong."""
    try:
        if not path.exists():
            return Register()
        if path.stat().st_size > LARGEST_FILE_BYTES:
            raise InvalidInput("register", str(path), f"at most {LARGEST_FILE_BYTES} bytes are read")
        table: Mapping[str, object] = tomllib.loads(path.read_bytes().decode("utf-8"))
    except OSError as error:
        raise InvalidInput("register", str(path), f"it cannot be read ({error.strerror})") from error
    except (UnicodeDecodeError, tomllib.TOMLDecodeError, RecursionError) as error:
        raise InvalidInput("register", str(path), f"a TOML text file is needed ({error})") from error
    if table.get("format") != FORMAT:
        raise InvalidInput("format", table.get("format"), f'"{FORMAT}" is needed')
    return read_register({key: value for key, value in table.items() if key != "format"})


def save_register(register: Register, path: Path) -> None:
    """Write a register as a whole or not at all; raises `InvalidInput` when it cannot be written or read back."""
    text = write_register(register)
    fresh = path.with_suffix(".new")
    try:
        path.parent.mkdir(parents=True, exist_ok=True)
        with fresh.open("w", encoding="utf-8") as file:
            file.write(text)
            file.flush()
            os.fsync(file.fileno())
        if load_register(fresh) != register:
            raise InvalidInput("register", str(path), "what was written does not read back alike")
        fresh.replace(path)
    except OSError as error:
        raise InvalidInput("register", str(path), f"it cannot be written ({error.strerror})") from error
    except UnicodeEncodeError as error:
        raise InvalidInput("register", error.object, "texts of whole characters are needed") from error
    finally:
        fresh.unlink(missing_ok=True)


def keep_certificate(source: Path, register: Path) -> str:
    """Copy a certificate beside the register and return its name there; an equal name gets a number."""
    folder = register.parent / CERTIFICATES
    try:
        folder.mkdir(parents=True, exist_ok=True)
        name, count = source.name, 1
        while (folder / name).exists():
            if (folder / name).read_bytes() == source.read_bytes():
                return name
            count += 1
            name = f"{source.stem}-{count}{source.suffix}"
        shutil.copyfile(source, folder / name)
    except OSError as error:
        raise InvalidInput("certificate", str(source), f"it cannot be copied ({error.strerror})") from error
    return name


def write_register(register: Register) -> str:
    """Return the text of a register."""
    lines = [f'format = "{FORMAT}"']
    for item in register.equipment:
        lines += ["", "[[equipment]]"]
        lines += [
            f"{key} = {_quoted(getattr(item, key))}" for key in ("id", "kind", "title", "serial", "profile", "note")
        ]
        lines += _calibration(item.calibration, "equipment.calibration")
        for entry in item.ranges:
            lines += _range(entry)
        for correction in item.corrections:
            lines += _correction(correction)
    for check in register.checks:
        lines += _check(check)
    return "\n".join(lines) + "\n"


def _range(entry: RangeEntry) -> list[str]:
    lines = ["", "[[equipment.range]]", f"name = {_quoted(entry.name)}"]
    lines += [f"min_pa = {entry.min_pa!r}", f"max_pa = {entry.max_pa!r}"]
    lines.append(f"reference_density_kg_m3 = {entry.reference_density_kg_m3!r}")
    curve = entry.curve
    if isinstance(curve, PowerLaw):
        lines.append(f"power_law = [{curve.coefficient_m3_h_pa_n!r}, {curve.exponent!r}]")
    elif isinstance(curve, Table):
        lines.append(f"table = [{', '.join(f'[{pa!r}, {flow!r}]' for pa, flow in curve.points)}]")
    else:
        key = "polynomial_of_root" if curve.of_root else "polynomial"
        lines.append(f"{key} = [{', '.join(map(repr, curve.coefficients))}]")
    return lines + _calibration(entry.calibration, "equipment.range.calibration")


def _correction(correction: Correction) -> list[str]:
    lines = ["", "[[equipment.correction]]", f"channel = {_quoted(correction.channel)}"]
    lines.append(f"calibrated = {_day(correction.calibrated)}")
    if correction.table:
        lines.append(f"table = [{', '.join(f'[{shown!r}, {true!r}]' for shown, true in correction.table)}]")
    if correction.polynomial:
        lines.append(f"polynomial = [{', '.join(map(repr, correction.polynomial))}]")
    return lines


def _calibration(calibration: Calibration | None, table: str) -> list[str]:
    if calibration is None:
        return []
    lines = [f"[{table}]", f"calibrated = {_day(calibration.calibrated)}", f"months = {calibration.months}"]
    if calibration.due is not None:
        lines.append(f"due = {_day(calibration.due)}")
    lines += [f"{key} = {_quoted(getattr(calibration, key))}" for key in ("certificate", "laboratory")]
    if calibration.schemes:
        pairs = ", ".join(f"{_quoted(name)} = {months}" for name, months in calibration.schemes)
        lines.append(f"schemes = {{ {pairs} }}")
    return lines


def _check(check: FieldCheck) -> list[str]:
    points = ", ".join(f"[{item.first_pa!r}, {item.second_pa!r}, {item.allowed_pa!r}]" for item in check.points)
    return [
        "",
        "[[check]]",
        f"day = {_day(check.day)}",
        f"first = {_quoted(check.first)}",
        f"second = {_quoted(check.second)}",
        f"points = [{points}]",
        f"note = {_quoted(check.note)}",
    ]


def _day(day: date) -> str:
    return day.isoformat()


def _quoted(text: str) -> str:
    """Return a TOML basic string; what JSON writes is one, but for one control character."""
    return json.dumps(text, ensure_ascii=False).replace("\x7f", "\\u007f")
