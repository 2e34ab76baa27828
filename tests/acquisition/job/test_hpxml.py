"""The HPXML fragment, held against the public schema 4.2 (hpxmlonline.com/2023/09).

The element order and the enumerations below were read in HPXMLBaseElements.xsd and HPXMLDataTypes.xsd of that version;
the whole fragment was once validated against these files with a general XML library.
"""

from __future__ import annotations

from xml.etree import ElementTree as ET

import pytest

from acquisition.job.hpxml import NAMESPACE, hpxml_fragment
from tests.acquisition.report.cases import IN, OUT, bare, content
from tests.acquisition.samples import START

ORDER = {
    "HPXML": ("XMLTransactionHeaderInformation", "SoftwareInfo", "Building"),
    "XMLTransactionHeaderInformation": ("XMLType", "XMLGeneratedBy", "CreatedDateAndTime", "Transaction"),
    "SoftwareInfo": ("SoftwareProgramUsed", "SoftwareProgramVersion"),
    "Building": ("BuildingID", "ProjectStatus", "BuildingDetails"),
    "BuildingID": ("SendingSystemIdentifierType", "SendingSystemIdentifierValue"),
    "ProjectStatus": ("EventType",),
    "BuildingDetails": ("Enclosure",),
    "Enclosure": ("AirInfiltration",),
    "AirInfiltration": ("AirInfiltrationMeasurement",),
    "AirInfiltrationMeasurement": (
        "SystemIdentifier", "Date", "OutsideTemperature", "TypeOfInfiltrationMeasurement", "TypeOfBlowerDoorTest",
        "HousePressure", "BuildingAirLeakage", "EffectiveLeakageArea", "InfiltrationVolume", "InfiltrationHeight",
    ),
    "BuildingAirLeakage": ("UnitofMeasure", "AirLeakage"),
}  # fmt: skip
CHOICES = {
    "Transaction": {"create", "update"},
    "TypeOfInfiltrationMeasurement": {"blower door", "tracer gas", "estimate", "checklist"},
    "TypeOfBlowerDoorTest": {"pressurization", "depressurization"},
    "UnitofMeasure": {"CFM", "CFMnatural", "ACH", "ACHnatural"},
    "EventType": {
        "audit", "proposed workscope", "approved workscope", "construction-period testing/daily test out",
        "job completion testing/final inspection", "quality assurance/monitoring", "preconstruction",
    },
}  # fmt: skip
POSITIVE = {"HousePressure", "AirLeakage", "EffectiveLeakageArea", "InfiltrationVolume", "InfiltrationHeight"}
IDENTIFIED = {"BuildingID", "SystemIdentifier"}


def name_of(item: ET.Element) -> str:
    space, _, name = item.tag[1:].partition("}")
    assert space == NAMESPACE
    return name


def check(item: ET.Element, ids: set[str]) -> None:
    """Fail where an element is not as the schema wants it."""
    name, kids = name_of(item), [name_of(kid) for kid in item]
    places = [ORDER[name].index(kid) for kid in kids] if kids else []
    assert places == sorted(places), name
    if name in CHOICES:
        assert item.text in CHOICES[name]
    if name in POSITIVE:
        assert float(item.text or "") > 0
    assert set(item.attrib) == ({"id"} if name in IDENTIFIED else {"schemaVersion"} if name == "HPXML" else set())
    if name in IDENTIFIED:
        assert item.attrib["id"] not in ids
        ids.add(item.attrib["id"])
    for kid in item:
        check(kid, ids)


def test_the_fragment_has_the_structure_of_the_schema() -> None:
    made = content(OUT, IN, name="Mill & <Row>")
    top = ET.fromstring(hpxml_fragment(made.test, made.result, START))
    check(top, set())
    assert top.attrib["schemaVersion"] in {"4.0", "4.1", "4.2"}
    nothing = bare()
    check(ET.fromstring(hpxml_fragment(nothing.test, nothing.result, START)), set())


def test_the_numbers_are_in_the_units_of_the_schema() -> None:
    made = content(OUT)
    top = ET.fromstring(hpxml_fragment(made.test, made.result, START))

    def number(name: str) -> float:
        found = top.find(f".//{{{NAMESPACE}}}{name}")
        assert found is not None
        return float(found.text or "")

    # 1 cfm = 1.699011 m3/h, 1 m3 = 35.31467 ft3, 1 ft = 0.3048 m, 1 in2 = 6.4516 cm2, exact by the inch of 25.4 mm.
    assert number("AirLeakage") == pytest.approx(made.result.runs[0].q50_m3_h.value / 1.699011, rel=1e-5)
    assert number("InfiltrationVolume") == pytest.approx(300 * 35.31467, rel=1e-5)
    assert number("InfiltrationHeight") == pytest.approx(5 / 0.3048, rel=1e-5)
    assert number("OutsideTemperature") == pytest.approx(3 * 1.8 + 32, rel=1e-5)
    area = made.result.runs[0].ela4_cm2
    assert number("EffectiveLeakageArea") == pytest.approx(area.value / 6.4516, rel=1e-5)
