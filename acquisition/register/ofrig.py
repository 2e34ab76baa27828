"""What the register knows of the instruments and flow ranges of a rig: when they were calibrated, how they are off."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from acquisition.correction import Correction
from acquisition.register.records import Calibration, Equipment, RangeEntry, Register
from acquisition.rig import PRESSURES, CalibrationNote, InstrumentSpec, RigSpec
from analysis.records import FlowRange


def equipped(spec: RigSpec, register: Register) -> RigSpec:
    """Return the rig with the calibrations and corrections of what is registered.

    An instrument is known by its serial number; one without a number by its name, when the register has that too. A
    flow range is known by its name and its numbers.
    """
    calibrations: list[CalibrationNote] = []
    corrections: list[Correction] = []
    for instrument in spec.instruments:
        item = _item_of(instrument, register)
        if item is None:
            continue
        calibrations += [_note(instrument.name, item.calibration)] if not item.ranges or item.calibration else []
        corrections += _corrections(instrument, item)
    for flow_range in spec.ranges:
        found = _entry_of(flow_range, register)
        if found is not None:
            item, entry = found
            calibrations.append(_note(range_words(flow_range), entry.calibration or item.calibration))
    return replace(spec, calibrations=tuple(calibrations), corrections=tuple(corrections))


def in_use(spec: RigSpec) -> tuple[CalibrationNote, ...]:
    """Return the calibrations of a rig without those of flow ranges that are not fitted."""
    idle = {range_words(item) for item in spec.ranges} - {range_words(item) for item in spec.fitted_ranges.ranges}
    return tuple(note for note in spec.calibrations if note.of not in idle)


def range_words(flow_range: FlowRange) -> str:
    """Return what a calibration calls a flow range."""
    return f"flow range {flow_range.name}"


def _item_of(instrument: InstrumentSpec, register: Register) -> Equipment | None:
    if instrument.serial:
        return register.by_serial(instrument.serial)
    name = instrument.name.casefold()
    return next((item for item in register.equipment if not item.serial and item.title.casefold() == name), None)


def _entry_of(fitted: FlowRange, register: Register) -> tuple[Equipment, RangeEntry] | None:
    entries = ((item, entry) for item in register.equipment for entry in item.ranges if entry.name == fitted.name)
    return next((pair for pair in entries if pair[1].flow_range()[0] == fitted), None)


def _note(of: str, calibration: Calibration | None) -> CalibrationNote:
    if calibration is None:
        return CalibrationNote(of, None)
    return CalibrationNote(of, calibration.calibrated, calibration.due_dates)


def _corrections(instrument: InstrumentSpec, item: Equipment) -> Iterator[Correction]:
    """Yield the correction of each channel that reads a pressure of the test."""
    by_channel = {correction.channel: correction for correction in item.corrections}
    for channel, role in instrument.channels:
        correction = by_channel.get(channel, by_channel.get(""))
        if correction is not None and role in PRESSURES:
            yield replace(correction, channel=f"{instrument.name}.{channel}")
