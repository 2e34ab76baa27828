"""The certificate: what was tested, how, what came out and who says so, in plain words on one page."""

from __future__ import annotations

import io
from datetime import UTC, datetime

import segno

from acquisition.report import wording
from acquisition.report.content import ReportContent
from acquisition.report.names import Json
from acquisition.report.typeface import printable
from acquisition.told.titles import method_title
from analysis.limits import shipped_limits
from analysis.limits.entry import ANYWHERE
from analysis.records import Direction
from analysis.units import Display, Quantity, format_value, format_with_unit

WAYS = {
    Direction.DEPRESSURIZE: "drew air out of the building",
    Direction.PRESSURIZE: "blew air into the building",
}


def utc_words(moment: datetime, until: datetime | None = None) -> str:
    """Return a date and time for people, in UTC."""
    start = moment.astimezone(UTC)
    end = "" if until is None else f" to {until.astimezone(UTC):%H:%M}"
    return f"{start.day} {wording.MONTHS[start.month - 1]} {start.year}, {start:%H:%M}{end} UTC"


def certificate_words(content: ReportContent, display: Display) -> Json:
    """Return the paragraphs and the fields below them."""
    office = content.file.office
    opening = [{"head": "", "text": printable(office.opening)}] if office is not None and office.opening else []
    return {
        "paragraphs": [
            *opening,
            {"head": "What was tested", "text": _tested(content, display)},
            {"head": "How", "text": _how(content, display)},
            {"head": "What it means", "text": _meaning(content, display)},
        ],
        "fields": _fields(content),
        "signature": "Signature" if content.from_job else "",
    }


def stamps(content: ReportContent) -> list[str]:
    """Return what nobody may overlook."""
    made = [wording.SIMULATED] if content.simulated else []
    if content.typed:
        made.append(wording.TYPED)
    if not content.file.kind.certified:
        made.append(wording.FINDING)
    if content.from_job and content.file.mark is None:
        made.append(wording.DRAFT)
    return made


def code_of(content: ReportContent) -> tuple[bytes, str]:
    """Return the QR code as SVG, and what it says: the digest of the attached test."""
    words = f"{wording.PROGRAM} test.json SHA-256 {content.data_digest()}"
    made = io.BytesIO()
    segno.make(words, error="m", micro=False).save(made, kind="svg", scale=4, border=0, xmldecl=False)
    return made.getvalue(), f"QR code with the SHA-256 of the attached test.json, {content.data_digest()}"


def _tested(content: ReportContent, display: Display) -> str:
    building = content.test.building
    sizes = [
        f"{name} {format_with_unit(value, kind, display, 0)}"
        for name, value, kind in (
            ("internal volume", building.volume_m3, Quantity.VOLUME),
            ("envelope area", building.envelope_area_m2, Quantity.AREA),
            ("floor area", building.floor_area_m2, Quantity.AREA),
        )
        if value is not None
    ]
    stage = printable(content.test.stage)
    at = f" at the stage “{stage}”" if stage else ""
    with_sizes = f", with {', '.join(sizes)}" if sizes else ""
    kind = f" Kind of test: {content.file.kind.words.lower()}." if content.from_job else ""
    return f"The air leakage of the building named above{at}{with_sizes}.{kind}{_zone(content)}"


def _zone(content: ReportContent) -> str:
    details = content.details
    place = next((item for item in shipped_limits().places if item.id == details.place), None)
    if place is None or place.id == ANYWHERE:
        return ""
    zone = f", {place.zone_title} {printable(details.zone)}" if details.zone else ""
    return f" Place of the codes: {place.title}{zone}."


def _how(content: ReportContent, display: Display) -> str:
    ways = " and then ".join(WAYS[run.run.direction] for run in content.runs)
    induced = [abs(pa) for run in content.runs for pa in run.result.induced_pa]
    low, high = (format_value(pa, Quantity.PRESSURE, display, 0) for pa in (min(induced), max(induced)))
    count = sum(len(run.run.points) for run in content.runs)
    typed = " Pressures and flows were typed from a hand-written record." if content.typed else ""
    return (
        f"By {method_title(content.result.method)}: a fan {ways}, and its flow was measured at {count} pressure "
        f"differences from {low} to {high} Pa between indoors and outdoors.{typed}"
    )


def _meaning(content: ReportContent, display: Display) -> str:
    mean = content.result.mean
    flow = format_with_unit(mean.q50_m3_h.value, Quantity.FLOW, display)
    words = f"With 50 Pa between indoors and outdoors, {flow} of air pass through the leaks of the building"
    if mean.n50_per_h is not None:
        times = format_value(mean.n50_per_h.value, Quantity.AIR_CHANGE, display)
        words += f": all its air is exchanged {times} times an hour"
    return f"{words}. In use the pressures are much smaller, and so is the exchange of air."


def _fields(content: ReportContent) -> list[list[str]]:
    details, mark = content.details, content.file.mark
    when = "not recorded" if content.started is None else utc_words(content.started, content.ended)
    fields = [
        ["Client", printable(details.client)],
        ["Tested by", printable(details.tester)],
        ["Tested on", when],
    ]
    if mark is not None:
        fields += [
            ["Signed by", printable(mark.signed_by)],
            ["Issued on", utc_words(mark.utc)],
        ]
        if mark.revision:
            fields.append([f"Revision {mark.revision} because", printable(mark.reason)])
    return [[name, text or wording.NOT_RECORDED] for name, text in fields]
