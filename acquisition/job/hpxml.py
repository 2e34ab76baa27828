"""A test as a fragment in HPXML, the open exchange format for data of homes: its air-infiltration measurements.

The structure is that of schema 4.2 (hpxmlonline.com/2023/09): element order, enumerations and units were read in the
schema. HPXML knows US customary units alone: cfm, square inches, cubic feet, feet, degrees Fahrenheit.
"""

from __future__ import annotations

from datetime import UTC, datetime
from xml.etree.ElementTree import Element, SubElement, indent, tostring

from acquisition.version import PROGRAM_VERSION
from analysis.records import Direction, Estimate, Run, RunResult, Test, TestResult
from analysis.units import Display, Quantity, System, to_display

NAMESPACE = "http://hpxmlonline.com/2023/09"
SCHEMA_VERSION = "4.2"
DIGITS = 6
US = Display(System.US)
WAYS = {Direction.DEPRESSURIZE: "depressurization", Direction.PRESSURIZE: "pressurization"}
EVENT = "construction-period testing/daily test out"
"""Of what the schema lists, what a test of a stage comes nearest to."""


def hpxml_fragment(test: Test, result: TestResult, created: datetime) -> bytes:
    """Return an HPXML document with one building that holds a measurement for each direction."""
    top = Element("HPXML", {"xmlns": NAMESPACE, "schemaVersion": SCHEMA_VERSION})
    head = SubElement(top, "XMLTransactionHeaderInformation")
    _text(head, "XMLType", "air infiltration measurement")
    _text(head, "XMLGeneratedBy", "Airseam")
    _text(head, "CreatedDateAndTime", created.astimezone(UTC).strftime("%Y-%m-%dT%H:%M:%SZ"))
    _text(head, "Transaction", "create")
    software = SubElement(top, "SoftwareInfo")
    _text(software, "SoftwareProgramUsed", "Airseam")
    _text(software, "SoftwareProgramVersion", PROGRAM_VERSION)
    building = SubElement(top, "Building")
    name = SubElement(building, "BuildingID", {"id": "building"})
    if test.building.name:
        _text(name, "SendingSystemIdentifierType", "name of the building")
        _text(name, "SendingSystemIdentifierValue", test.building.name)
    _text(SubElement(building, "ProjectStatus"), "EventType", EVENT)
    details = SubElement(building, "BuildingDetails")
    infiltration = SubElement(SubElement(details, "Enclosure"), "AirInfiltration")
    for number, (run, outcome) in enumerate(zip(test.runs, result.runs, strict=True), 1):
        _measurement(SubElement(infiltration, "AirInfiltrationMeasurement"), number, test, run, outcome)
    indent(top)
    text: str = tostring(top, encoding="unicode")
    return f'<?xml version="1.0" encoding="UTF-8"?>\n{text}\n'.encode()


def _measurement(at: Element, number: int, test: Test, run: Run, result: RunResult) -> None:
    SubElement(at, "SystemIdentifier", {"id": f"air-infiltration-{number}"})
    if run.started is not None:
        _text(at, "Date", run.started.astimezone(UTC).strftime("%Y-%m-%d"))
    _number(at, "OutsideTemperature", run.air.outdoor_c, Quantity.TEMPERATURE)
    _text(at, "TypeOfInfiltrationMeasurement", "blower door")
    _text(at, "TypeOfBlowerDoorTest", WAYS[run.direction])
    _text(at, "HousePressure", "50")
    leakage = SubElement(at, "BuildingAirLeakage")
    _text(leakage, "UnitofMeasure", "CFM")
    _number(leakage, "AirLeakage", result.q50_m3_h.value, Quantity.FLOW)
    _estimate(at, "EffectiveLeakageArea", result.ela4_cm2, Quantity.LEAKAGE_AREA)
    _number(at, "InfiltrationVolume", test.building.volume_m3, Quantity.VOLUME)
    _number(at, "InfiltrationHeight", test.building.height_m, Quantity.LENGTH)


def _estimate(at: Element, name: str, estimate: Estimate | None, kind: Quantity) -> None:
    _number(at, name, None if estimate is None else estimate.value, kind)


def _number(at: Element, name: str, value: float | None, kind: Quantity) -> None:
    """Add a number in the unit of the schema; nothing where it is not known."""
    if value is not None:
        _text(at, name, f"{to_display(value, kind, US):.{DIGITS}g}")


def _text(at: Element, name: str, text: str) -> None:
    SubElement(at, name).text = text
