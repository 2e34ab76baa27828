"""A job for spreadsheets and for other programs: CSV with the units in the headings, and the test as JSON."""

from __future__ import annotations

import csv
import io
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, replace
from datetime import UTC, datetime
from pathlib import Path

from acquisition.correction import Correction
from acquisition.derive import derive_point, derive_zero, has_readings
from acquisition.fitted import Fitted
from acquisition.job.job import Job
from acquisition.job.loading import StoredReading
from acquisition.job.records import LoadedRun, LoadedTest
from acquisition.job.results import analyse_record
from acquisition.rig import Role
from acquisition.series import WindowRecord
from acquisition.steps import WindowKind
from acquisition.version import PROGRAM_VERSION
from analysis.errors import InvalidInput
from analysis.records import Estimate, TestResult
from analysis.testjson import write_test
from drivers.clock import NS_PER_S
from drivers.reading import Quality

Cell = str | float | int | None
Row = Sequence[Cell]

ROLE_HEADINGS = {
    Role.ENVELOPE: "envelope pressure (Pa)",
    Role.ENVELOPE_2: "envelope pressure at tap 2 (Pa)",
    Role.ENVELOPE_3: "envelope pressure at tap 3 (Pa)",
    Role.ENVELOPE_4: "envelope pressure at tap 4 (Pa)",
    Role.FLOW_ELEMENT: "flow element pressure (Pa)",
    Role.FLOW_ELEMENT_2: "flow element pressure of fan 2 (Pa)",
    Role.FLOW_ELEMENT_3: "flow element pressure of fan 3 (Pa)",
    Role.FLOW_ELEMENT_4: "flow element pressure of fan 4 (Pa)",
    Role.FLOW: "flow (m³/h)",
    Role.FLOW_2: "flow of fan 2 (m³/h)",
    Role.FLOW_3: "flow of fan 3 (m³/h)",
    Role.FLOW_4: "flow of fan 4 (m³/h)",
    Role.ZONE_1: "indoors against zone 1 (Pa)",
    Role.ZONE_2: "indoors against zone 2 (Pa)",
    Role.ZONE_3: "indoors against zone 3 (Pa)",
    Role.ZONE_4: "indoors against zone 4 (Pa)",
    Role.INDOOR: "indoor temperature (°C)",
    Role.INDOOR_2: "indoor temperature at place 2 (°C)",
    Role.INDOOR_3: "indoor temperature at place 3 (°C)",
    Role.OUTDOOR: "outdoor temperature (°C)",
    Role.OUTDOOR_2: "outdoor temperature at place 2 (°C)",
    Role.BAROMETER: "barometric pressure (Pa)",
}
POINT_HEADINGS = (
    "direction", "window", "kind", "start (s)", "length (s)", "target (Pa)", "readings", "envelope pressure (Pa)",
    "spread of envelope pressure (Pa)", "fan flow (m³/h)", "spread of fan flow (m³/h)", "induced pressure (Pa)",
    "envelope flow (m³/h)", "flow range", "flow range as entered", "struck because",
)  # fmt: skip
RESULT_HEADINGS = ("direction", "quantity", "value", "low (95 %)", "high (95 %)", "extrapolated")
QUANTITIES = {
    "q50_m3_h": "q50 (m³/h)",
    "n50_per_h": "n50 (1/h)",
    "qe50_m3_h_m2": "qE50 (m³/(h·m²))",
    "qf50_m3_h_m2": "qF50 (m³/(h·m²))",
    "n": "n (1)",
    "c_env_m3_h_pa_n": "C at the air of the test (m³/(h·Paⁿ))",
    "c_l_m3_h_pa_n": "C at reference air (m³/(h·Paⁿ))",
    "ela4_cm2": "ELA4, discharge coefficient 1 (cm²)",
    "eqla10_cm2": "EqLA10, discharge coefficient 0.611 (cm²)",
}


@dataclass(frozen=True, slots=True)
class Dialect:
    """How a CSV file writes columns and numbers.

    A spreadsheet that expects a decimal comma also needs the mark that tells it that the file is UTF-8.
    """

    delimiter: str = ","
    decimal: str = "."
    encoding: str = "utf-8"

    def cell(self, value: Cell) -> str:
        """Return a value as text; what is not known is empty."""
        if value is None:
            return ""
        if isinstance(value, float):
            return repr(value).replace(".", self.decimal)
        return str(value)


POINT_DIALECT = Dialect()
COMMA_DIALECT = Dialect(";", ",", "utf-8-sig")


def write_csv(job: Job, folder: Path, dialect: Dialect = POINT_DIALECT) -> tuple[Path, ...]:
    """Write samples, points and results of every test into `folder` and return the files.

    Files of an earlier export are replaced. Raises `InvalidInput` when the folder cannot be written.
    """
    written: list[Path] = []
    try:
        folder.mkdir(parents=True, exist_ok=True)
        for record in job.tests():
            loaded = job.load(record.id)
            result, gap = _result(loaded)
            tables = {
                "samples": (_sample_headings(loaded), _samples(job, loaded)),
                "points": (POINT_HEADINGS, _points(loaded, result)),
                "results": (RESULT_HEADINGS, _results(result, gap)),
            }
            for name, (headings, rows) in tables.items():
                path = folder / f"test-{record.id}-{name}.csv"
                _write(path, dialect, _readme(record.id, record.started, name), headings, rows)
                written.append(path)
    except OSError as error:
        raise InvalidInput("folder", str(folder), f"it cannot be written ({error.strerror})") from error
    return tuple(written)


def _result(loaded: LoadedTest) -> tuple[TestResult | None, str]:
    try:
        return analyse_record(loaded.record, loaded.test()), ""
    except InvalidInput as error:
        return None, str(error)


def test_json(job: Job, test_id: int) -> dict[str, object]:
    """Return a test in the format airseam-test-1; raises `InvalidInput` without any point."""
    return write_test(job.load(test_id).test())


def _write(path: Path, dialect: Dialect, readme: str, headings: Row, rows: Iterable[Row]) -> None:
    text = io.StringIO()
    writer = csv.writer(text, delimiter=dialect.delimiter, lineterminator="\r\n")
    writer.writerow([readme])
    for row in (headings, *rows):
        writer.writerow([dialect.cell(value) for value in row])
    part = path.with_name(path.name + ".part")
    part.write_text(text.getvalue(), encoding=dialect.encoding, newline="")
    part.replace(path)


def _readme(test_id: int, started: datetime, name: str) -> str:
    when = started.astimezone(UTC).strftime("%Y-%m-%d %H:%M:%S")
    return (
        f"# Airseam {PROGRAM_VERSION}: {name} of test {test_id} begun {when} UTC. SI units. "
        "Pressures are indoor minus outdoor, corrected where the rig has a correction. "
        "Times in s count from the begin of the run. Text is UTF-8."
    )


def _sample_headings(loaded: LoadedTest) -> Row:
    return (
        "time (UTC)",
        "time (s)",
        "direction",
        "window",
        *(ROLE_HEADINGS[role] for role in _roles(loaded)),
        "quality",
    )


def _roles(loaded: LoadedTest) -> list[Role]:
    return [role for role in Role if any(role in run.data.roles for run in loaded.runs)]


def _samples(job: Job, loaded: LoadedTest) -> Iterator[Row]:
    """Yield one row for all readings of one instant."""
    roles, corrections = _roles(loaded), loaded.record.rig.corrections_by_channel()
    for run in loaded.runs:
        instant: dict[Role, StoredReading] = {}
        for stored in _readings(job, run):
            reading = _corrected(stored, corrections.get(stored.channel))
            earlier = next(iter(instant.values()), reading)
            if reading.role in instant or reading.t_ns != earlier.t_ns:
                yield _sample(run, roles, instant)
                instant = {}
            instant[reading.role] = reading
        if instant:
            yield _sample(run, roles, instant)


def _corrected(reading: StoredReading, correction: Correction | None) -> StoredReading:
    """Return a reading with the true pressure in the place of the one that the gauge showed."""
    if correction is None or reading.value is None:
        return reading
    return replace(reading, value=correction.true_pa(reading.value))


def _readings(job: Job, run: LoadedRun) -> Iterator[StoredReading]:
    """Yield the readings of all pieces of a run on its clock."""
    if not run.pieces:
        yield from job.readings(run.record.id)
    for piece in run.pieces:
        for reading in job.readings(piece.record.id):
            yield replace(reading, t_ns=reading.t_ns + piece.shift_ns)


def _sample(run: LoadedRun, roles: Sequence[Role], instant: dict[Role, StoredReading]) -> Row:
    first = next(iter(instant.values()))
    utc = datetime.fromtimestamp(first.utc_ns // 1000 / 1e6, UTC).strftime("%Y-%m-%dT%H:%M:%S.%fZ")
    window = next((item.id for item in run.windows if item.start_ns <= first.t_ns < item.end_ns), None)
    odd = sorted({reading.quality.value for reading in instant.values()} - {Quality.GOOD.value})
    values = [instant[role].value if role in instant else None for role in roles]
    elapsed_s = (first.t_ns - run.record.started_ns) / NS_PER_S
    return (utc, elapsed_s, run.record.direction.value, window, *values, ", ".join(odd) or Quality.GOOD.value)


def _points(loaded: LoadedTest, result: TestResult | None) -> Iterator[Row]:
    for run in loaded.runs:
        outcomes = _outcomes(run, result)
        for window in run.windows:
            yield (
                run.record.direction.value,
                window.id,
                window.kind.value,
                (window.start_ns - run.record.started_ns) / NS_PER_S,
                window.seconds,
                window.target_pa,
                *_means(loaded, run, window),
                *outcomes.get(window.id, (None, None)),
                *_ranges(loaded, run, window),
                window.struck_reason,
            )


def _ranges(loaded: LoadedTest, run: LoadedRun, window: WindowRecord) -> tuple[Cell, Cell]:
    """Return the flow range of each fan that a point was worked out with, and the one that had been entered."""
    if window.kind is not WindowKind.POINT or loaded.record.rig.typed:
        return (None, None)
    entered = run.fitted(loaded.record.rig)
    return (_names(entered.corrected(window.corrected), window), _names(entered, window))


def _names(fitted: Fitted, window: WindowRecord) -> str:
    return "; ".join(item.name for item in fitted.at(window.start_ns))


def _outcomes(run: LoadedRun, result: TestResult | None) -> dict[int, tuple[float, float]]:
    """Return induced pressure and envelope flow of each point window that is in the result."""
    kept = [
        window.id
        for window in run.windows
        if window.kind is WindowKind.POINT and not window.struck and has_readings(run.data, window)
    ]
    for outcome in result.runs if result is not None else ():
        pairs = list(zip(outcome.induced_pa, outcome.envelope_flow_m3_h, strict=True))
        if outcome.direction is run.record.direction and len(pairs) == len(kept):
            return dict(zip(kept, pairs, strict=True))
    return {}


def _means(loaded: LoadedTest, run: LoadedRun, window: WindowRecord) -> tuple[Cell, ...]:
    """Return count, pressure, its spread, flow, its spread; empty where the window holds no usable reading."""
    if not has_readings(run.data, window):
        return (0, None, None, None, None)
    if window.kind is not WindowKind.POINT:
        zero = derive_zero(run.data, window)
        return (zero.count, zero.mean_pa, None, None, None)
    record = loaded.record
    direction, air = run.record.direction, run.record.air
    point = derive_point(direction, air, run.data, window, run.fitted(record.rig), record.plan.building)
    return (point.count, point.envelope_pa, point.envelope_sd_pa, point.flow_m3_h, point.flow_sd_m3_h)


def _results(result: TestResult | None, gap: str) -> Iterator[Row]:
    if result is None:
        yield ("", f"no result: {gap}")
    else:
        yield from _quantities(result)


def _quantities(result: TestResult) -> Iterator[Row]:
    sources = [(run.direction.value, run) for run in result.runs]
    for name, source in (*sources, *([("mean", result.mean)] if len(sources) > 1 else [])):
        for field, heading in QUANTITIES.items():
            estimate = getattr(source, field, None)
            if isinstance(estimate, Estimate):
                outside = "yes" if estimate.extrapolated else "no"
                yield (name, heading, estimate.value, estimate.low, estimate.high, outside)
    for run in result.runs:
        yield (run.direction.value, "r² (1)", run.r2)
        yield (run.direction.value, "zero-flow pressure (Pa)", run.zero_pa)
