"""The digest of a run: SHA-256 over its readings and inputs, as schema.sql writes it down."""

from __future__ import annotations

import hashlib
import math
import struct
from collections.abc import Iterable

from acquisition.fitted import RangeChange
from acquisition.job.encoding import document_text, utc_text
from acquisition.job.records import FanRecord, RunRecord
from acquisition.series import WindowRecord

_FORMAT = "airseam-digest-1"


def double_text(value: float | None) -> str:
    """Return the 16 hexadecimal digits of the IEEE 754 double, "nan" for no number; SQLite knows no negative zero."""
    if value is None or math.isnan(value):
        return "nan"
    return struct.pack(">d", value + 0.0).hex()


class RunDigest:
    """Grows with the readings; finished with what comes at the end of the run."""

    def __init__(self) -> None:
        """Start with no reading."""
        self._hash = hashlib.sha256(f"{_FORMAT}\n".encode())

    def reading(
        self,
        role: str,
        channel: str,
        t_ns: int,
        utc_ns: int,
        value: float | None,
        round_trip_s: float,
        quality: str,
        sequence: int,
    ) -> None:
        """Take one reading, in the order in which it is stored."""
        number, trip = double_text(value), double_text(round_trip_s)
        line = f"r\t{role}\t{channel}\t{t_ns}\t{utc_ns}\t{number}\t{trip}\t{quality}\t{sequence}\n"
        self._hash.update(line.encode())

    def finish(
        self,
        fan: Iterable[FanRecord],
        windows: Iterable[WindowRecord],
        inputs: Iterable[tuple[str, str]],
        changes: Iterable[RangeChange] = (),
    ) -> str:
        """Take fan commands, windows, changes of the range and inputs (name and text) and return the 64 digits."""
        for command in fan:
            self._hash.update(f"f\t{command.t_ns}\t{double_text(command.fraction)}\n".encode())
        for window in windows:
            target = "" if window.target_pa is None else double_text(window.target_pa)
            line = f"w\t{window.id}\t{window.kind}\t{window.start_ns}\t{window.end_ns}\t{target}\n"
            self._hash.update(line.encode())
        for change in changes:
            line = f"c\t{change.t_ns}\t{change.fan}\t{document_text(change.flow_range)}\n"
            self._hash.update(line.encode())
        for name, text in inputs:
            self._hash.update(f"{name}\t{text}\n".encode())
        return self._hash.hexdigest()


def digest_inputs(
    run: RunRecord, plan_text: str, rig_text: str, air_text: str, continues: str = ""
) -> tuple[tuple[str, str], ...]:
    """Return the inputs of a run in the order of the digest; the texts as they stand in the file.

    `continues` is the digest of the run that it goes on with, empty where there is none.
    """
    chained = (("continues", continues),) if run.continues is not None else ()
    return (
        ("direction", run.direction.value),
        ("started", utc_text(run.started)),
        ("plan", plan_text),
        ("rig", rig_text),
        ("air", air_text),
        *chained,
    )
