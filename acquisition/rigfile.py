"""The rig file: TOML that says which instruments there are, in which roles, and which flow range is fitted."""

from __future__ import annotations

import math
import tomllib
from collections.abc import Mapping
from pathlib import Path

from acquisition.rig import FAN_FLOWS, TAPS, ZONES, FurtherFan, InstrumentSpec, RigSpec, Role
from analysis.errors import InvalidInput
from analysis.records import FlowRange

FORMAT = "airseam-rig-1"
LARGEST_FILE_BYTES = 1_000_000

_RIG_KEYS = {
    "format", "name", "simulated", "time_factor", "fitted", "fan", "fans", "fitted_on", "shutter", "instrument",
    "range", "zones",
}  # fmt: skip
_INSTRUMENT_KEYS = {"name", "profile", "port", "serial", "channels"}
_RANGE_KEYS = {"name", "coefficient_m3_h_pa_n", "exponent", "min_pa", "max_pa", "reference_density_kg_m3"}


def load_rig(path: Path) -> RigSpec:
    """Read a rig file; raises `InvalidInput` naming the field, the value and what is allowed."""
    try:
        size = path.stat().st_size
        if size > LARGEST_FILE_BYTES:
            raise InvalidInput(str(path), f"{size} bytes long", f"a rig file has at most {LARGEST_FILE_BYTES} bytes")
        text = path.read_bytes().decode("utf-8")
    except OSError as error:
        raise InvalidInput("rig file", str(path), f"it cannot be read ({error.strerror})") from error
    except UnicodeDecodeError as error:
        raise InvalidInput("rig file", str(path), "a TOML text file in UTF-8 is needed") from error
    return read_rig(text)


def read_rig(text: str) -> RigSpec:
    """Read the text of a rig file; raises `InvalidInput`."""
    try:
        table: Mapping[str, object] = tomllib.loads(text)
    except tomllib.TOMLDecodeError as error:
        raise InvalidInput("rig file", "unreadable", f"a TOML table is needed ({error})") from error
    _known(table, _RIG_KEYS, "")
    if table.get("format") != FORMAT:
        raise InvalidInput("format", table.get("format"), f'"{FORMAT}" is needed')
    simulated = _bool(table, "simulated")
    factor = _number(table, "time_factor", default=1.0, above=0.0)
    if factor != 1.0 and not simulated:
        raise InvalidInput("time_factor", factor, "only a simulated rig may run faster than real time")
    instruments = tuple(_instrument(item, f"instrument[{i}]") for i, item in enumerate(_tables(table, "instrument")))
    ranges = tuple(_range(item, f"range[{i}]") for i, item in enumerate(_tables(table, "range")))
    fan, *further = _fans(table)
    fitted = _text(table, "fitted")
    spec = RigSpec(
        name=_text(table, "name"),
        instruments=instruments,
        fan=fan,
        ranges=ranges,
        fitted=fitted,
        shutter=_bool(table, "shutter"),
        simulated=simulated,
        time_factor=factor,
        further=_further(table, further, fitted),
        zone_names=_zone_names(table),
    )
    check_rig(spec)
    return spec


def check_rig(spec: RigSpec) -> None:
    """Check what concerns the whole rig; raises `InvalidInput`."""
    names = [instrument.name for instrument in spec.instruments]
    _distinct(names, "instrument.name")
    _distinct([item.name for item in spec.ranges], "range.name")
    _distinct([role.value for instrument in spec.instruments for _, role in instrument.channels], "role")
    known = ", ".join(item.name for item in spec.ranges) or "none"
    fitted = {"fitted": spec.fitted} | {f"fitted_on.{fan.drive}": fan.fitted for fan in spec.further}
    for field, name in fitted.items():
        if name not in [item.name for item in spec.ranges]:
            raise InvalidInput(field, name, f"the name of a flow range is needed; there are: {known}")
    _distinct(list(spec.fans), "fans")
    for fan in spec.fans:
        if fan not in names:
            raise InvalidInput("fan", fan, f"the name of an instrument is needed; there are: {', '.join(names)}")
    roles = spec.role_channels()
    if Role.ENVELOPE not in roles:
        raise InvalidInput("instrument.channels", "without envelope pressure", f'one channel needs "{Role.ENVELOPE}"')
    if Role.FLOW_ELEMENT not in roles and Role.FLOW not in roles:
        allowed = f'one channel needs "{Role.FLOW_ELEMENT}" or "{Role.FLOW}"'
        raise InvalidInput("instrument.channels", "without a flow", allowed)
    for number, (flow, element) in enumerate(FAN_FLOWS[1:], 2):
        if len(spec.fans) >= number and flow not in roles and element not in roles:
            allowed = f'one channel needs "{element}" or "{flow}"'
            raise InvalidInput("instrument.channels", f"without the flow of fan {spec.fans[number - 1]}", allowed)
    _check_typed(spec)
    if len(spec.fans) > len(FAN_FLOWS):
        raise InvalidInput("fans", len(spec.fans), f"at most {len(FAN_FLOWS)} fans blow together")


def _check_typed(spec: RigSpec) -> None:
    """Refuse a rig that nobody could watch over, or whose typed readings would not belong together."""
    typed, read = spec.by_hand, set(spec.role_channels()) - spec.by_hand
    flows = {role for pair in FAN_FLOWS for role in pair}
    if spec.fan and typed & {*TAPS, *flows}:
        allowed = "a drive needs gauges that the program reads itself; without it a person turns the fan"
        raise InvalidInput("fan", spec.fan, allowed)
    if typed & {*TAPS} and len({*TAPS} & (typed | read)) > 1:
        raise InvalidInput(
            "instrument.channels", "several outdoor taps", "of a gauge that is typed only one can be used"
        )
    if Role.ENVELOPE in typed and read & flows:
        allowed = "where the envelope pressure is typed, the flow has to be typed too"
        raise InvalidInput("instrument.channels", "a flow that is read", allowed)


def write_rig(spec: RigSpec) -> str:
    """Return the text of a rig file that `read_rig` reads back as `spec`."""
    lines = [f'format = "{FORMAT}"', f"name = {_quoted(spec.name)}"]
    if spec.simulated:
        lines += ["simulated = true", f"time_factor = {spec.time_factor!r}"]
    if spec.shutter:
        lines.append("shutter = true")
    lines.append(f"fitted = {_quoted(spec.fitted)}")
    if spec.further:
        lines.append(f"fans = [{', '.join(_quoted(name) for name in spec.fans)}]")
        lines += ["[fitted_on]", *(f"{_quoted(fan.drive)} = {_quoted(fan.fitted)}" for fan in spec.further)]
    elif spec.fan:
        lines.append(f"fan = {_quoted(spec.fan)}")
    if spec.zone_names:
        lines += ["[zones]", *(f"{_quoted(role.value)} = {_quoted(name)}" for role, name in spec.zone_names)]
    for instrument in spec.instruments:
        lines += ["", "[[instrument]]", f"name = {_quoted(instrument.name)}"]
        lines += [f"profile = {_quoted(instrument.profile)}", f"port = {_quoted(instrument.port)}"]
        if instrument.serial:
            lines.append(f"serial = {_quoted(instrument.serial)}")
        if instrument.channels:
            lines.append("[instrument.channels]")
            lines += [f"{_quoted(channel)} = {_quoted(role.value)}" for channel, role in instrument.channels]
    for item in spec.ranges:
        lines += ["", "[[range]]", f"name = {_quoted(item.name)}"]
        lines += [f"coefficient_m3_h_pa_n = {item.coefficient_m3_h_pa_n!r}", f"exponent = {item.exponent!r}"]
        lines += [f"min_pa = {item.min_pa!r}", f"max_pa = {item.max_pa!r}"]
        lines.append(f"reference_density_kg_m3 = {item.reference_density_kg_m3!r}")
    return "\n".join(lines) + "\n"


def _fans(table: Mapping[str, object]) -> list[str]:
    """Return the names of the fan drives, at least one; an empty one stands for a fan by hand."""
    fans = table.get("fans")
    if fans is None:
        return [_text(table, "fan", default="")]
    if not isinstance(fans, list) or not fans or not all(isinstance(name, str) and name for name in fans):
        raise InvalidInput("fans", fans, "a list of names of fan drives is needed")
    if table.get("fan", fans[0]) != fans[0]:
        raise InvalidInput("fan", table["fan"], f"beside fans it can only be the first of them, {fans[0]}")
    return fans


def _further(table: Mapping[str, object], drives: list[str], usual: str) -> tuple[FurtherFan, ...]:
    """Return the fans beyond the first, with their ranges: that of the first where none is named."""
    fitted = table.get("fitted_on", {})
    if not isinstance(fitted, dict):
        raise InvalidInput("fitted_on", fitted, "a table of fan = flow range is needed")
    for name in fitted:
        if name not in drives:
            raise InvalidInput(f"fitted_on.{name}", "unknown", f"the fans beyond the first are: {', '.join(drives)}")
    return tuple(FurtherFan(name, _text(fitted, name, "fitted_on", default=usual)) for name in drives)


def _zone_names(table: Mapping[str, object]) -> tuple[tuple[Role, str], ...]:
    zones = table.get("zones", {})
    known = {role.value: role for role in ZONES}
    if not isinstance(zones, dict):
        raise InvalidInput("zones", zones, f"a table of zone = name is needed, with {', '.join(known)}")
    for role in zones:
        if role not in known:
            raise InvalidInput(f"zones.{role}", "unknown", f"the zones are: {', '.join(known)}")
    return tuple((role, _text(zones, name, "zones")) for name, role in known.items() if name in zones)


def _instrument(table: Mapping[str, object], where: str) -> InstrumentSpec:
    _known(table, _INSTRUMENT_KEYS, f"{where}.")
    channels = table.get("channels", {})
    if not isinstance(channels, dict):
        raise InvalidInput(f"{where}.channels", channels, "a table of channel = role is needed")
    roles: list[tuple[str, Role]] = []
    for channel, role in channels.items():
        try:
            roles.append((str(channel), Role(str(role))))
        except ValueError as error:
            known = ", ".join(item.value for item in Role)
            raise InvalidInput(f"{where}.channels.{channel}", role, f"a role is needed, one of: {known}") from error
    return InstrumentSpec(
        name=_text(table, "name", where),
        profile=_text(table, "profile", where),
        port=_text(table, "port", where),
        channels=tuple(roles),
        serial=_text(table, "serial", where, default=""),
    )


def _range(table: Mapping[str, object], where: str) -> FlowRange:
    _known(table, _RANGE_KEYS, f"{where}.")
    low = _number(table, "min_pa", where, above=0.0)
    high = _number(table, "max_pa", where, above=0.0)
    if high <= low:
        raise InvalidInput(f"{where}.max_pa", high, f"a number greater than min_pa ({low:g}) is needed")
    return FlowRange(
        name=_text(table, "name", where),
        coefficient_m3_h_pa_n=_number(table, "coefficient_m3_h_pa_n", where, above=0.0),
        exponent=_number(table, "exponent", where, above=0.0, at_most=1.0),
        min_pa=low,
        max_pa=high,
        reference_density_kg_m3=_number(table, "reference_density_kg_m3", where, default=1.2041, above=0.0),
    )


def _known(table: Mapping[str, object], keys: set[str], prefix: str) -> None:
    for key in table:
        if key not in keys:
            raise InvalidInput(f"{prefix}{key}", "unknown", f"the keys are: {', '.join(sorted(keys))}")


def _tables(table: Mapping[str, object], key: str) -> list[Mapping[str, object]]:
    value = table.get(key)
    if not isinstance(value, list) or not value or not all(isinstance(item, dict) for item in value):
        raise InvalidInput(key, value, f"at least one [[{key}]] table is needed")
    return value


def _text(table: Mapping[str, object], key: str, where: str = "", default: str | None = None) -> str:
    value = table.get(key, default)
    name = f"{where}.{key}" if where else key
    if not isinstance(value, str) or (default is None and not value.strip()):
        raise InvalidInput(name, value, "a text in quotes is needed")
    return value


def _bool(table: Mapping[str, object], key: str) -> bool:
    value = table.get(key, False)
    if not isinstance(value, bool):
        raise InvalidInput(key, value, "true or false is needed")
    return value


def _number(
    table: Mapping[str, object],
    key: str,
    where: str = "",
    default: float | None = None,
    above: float = -math.inf,
    at_most: float = math.inf,
) -> float:
    value = table.get(key, default)
    name = f"{where}.{key}" if where else key
    bounds = f"greater than {above:g}" + ("" if math.isinf(at_most) else f" and at most {at_most:g}")
    if isinstance(value, bool) or not isinstance(value, int | float) or not math.isfinite(value):
        raise InvalidInput(name, value, f"a number {bounds} is needed")
    if not above < value <= at_most:
        raise InvalidInput(name, value, f"a number {bounds} is needed")
    return float(value)


def _distinct(names: list[str], field: str) -> None:
    for name in names:
        if names.count(name) > 1:
            raise InvalidInput(field, name, "each may occur only once")


def _quoted(text: str) -> str:
    """Return a TOML basic string."""
    escaped = text.replace("\\", "\\\\").replace('"', '\\"')
    return '"' + "".join(c if c.isprintable() else f"\\U{ord(c):08x}" for c in escaped) + '"'
