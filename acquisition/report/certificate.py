"""The certificate: what was tested, how, what came out and who says so, in plain words on one page."""

from __future__ import annotations

import io
from datetime import UTC, datetime

import segno

from acquisition.job.issues import IssueMark
from acquisition.languages import Language
from acquisition.report import wording
from acquisition.report.content import ReportContent
from acquisition.report.names import Json
from acquisition.report.typeface import printable
from acquisition.told.headline import headline
from acquisition.told.titles import method_title
from analysis.effective import QUANTITIES, REFERENCE_PRESSURE_PA, mean_flow
from analysis.limits import shipped_limits
from analysis.limits.entry import ANYWHERE
from analysis.records import Direction
from analysis.units import Display, Quantity, format_value, format_with_unit

WAYS = {
    Direction.DEPRESSURIZE: "drew air out of the building",
    Direction.PRESSURIZE: "blew air into the building",
}


def utc_words(moment: datetime, language: Language, until: datetime | None = None) -> str:
    """Return a date and time for people, in UTC."""
    start = moment.astimezone(UTC)
    day, begin = language.day(start), f"{start:%H:%M}"
    if until is None:
        return language.say("{day}, {time} UTC", day=day, time=begin)
    end = f"{until.astimezone(UTC):%H:%M}"
    return language.say("{day}, {begin} to {end} UTC", day=day, begin=begin, end=end)


def certificate_words(content: ReportContent, display: Display) -> Json:
    """Return the paragraphs and the fields below them."""
    say, office = content.language.say, content.file.office
    opening = [{"head": "", "text": printable(office.opening)}] if office is not None and office.opening else []
    return {
        "paragraphs": [
            *opening,
            {"head": say("What was tested"), "text": _tested(content, display)},
            {"head": say("How"), "text": _how(content, display)},
            {"head": say("What it means"), "text": _meaning(content, display)},
        ],
        "fields": _fields(content),
        "signature": say("Signature") if content.from_job else "",
    }


def stamps(content: ReportContent) -> list[str]:
    """Return what nobody may overlook."""
    say = content.language.say
    made = [wording.SIMULATED] if content.simulated else []
    if content.typed:
        made.append(wording.TYPED)
    if not content.file.kind.certified:
        made.append(wording.FINDING)
    if content.from_job and content.file.mark is None:
        made.append(wording.DRAFT)
    return [say(words) for words in made]


def code_of(content: ReportContent) -> tuple[bytes, str]:
    """Return the QR code as SVG, and what it says: the digest of the attached test."""
    words = f"{wording.PROGRAM} test.json SHA-256 {content.data_digest()}"
    made = io.BytesIO()
    segno.make(words, error="m", micro=False).save(made, kind="svg", scale=4, border=0, xmldecl=False)
    told = content.language.say(
        "QR code with the SHA-256 of the attached test.json, {digest}", digest=content.data_digest()
    )
    return made.getvalue(), told


def _tested(content: ReportContent, display: Display) -> str:
    say, building = content.language.say, content.test.building
    sizes = [
        say("{name} {size}", name=name, size=format_with_unit(value, kind, display, 0))
        for name, value, kind in (
            (say("internal volume"), building.volume_m3, Quantity.VOLUME),
            (say("envelope area"), building.envelope_area_m2, Quantity.AREA),
            (say("floor area"), building.floor_area_m2, Quantity.AREA),
        )
        if value is not None
    ]
    stage = printable(content.test.stage)
    at = say(" at the stage “{stage}”", stage=stage) if stage else ""
    with_sizes = say(", with {sizes}", sizes=", ".join(sizes)) if sizes else ""
    tested = say("The air leakage of the building named above{at}{with_sizes}.", at=at, with_sizes=with_sizes)
    kind = say("Kind of test: {kind}.", kind=say(content.file.kind.words.lower())) if content.from_job else ""
    return " ".join(words for words in (tested, kind, _zone(content)) if words)


def _zone(content: ReportContent) -> str:
    details = content.details
    place = next((item for item in shipped_limits().places if item.id == details.place), None)
    if place is None or place.id == ANYWHERE:
        return ""
    say = content.language.say
    if not details.zone:
        return say("Place of the codes: {place}.", place=say(place.title))
    zone = f"{say(place.zone_title)} {printable(details.zone)}"
    return say("Place of the codes: {place}, {zone}.", place=say(place.title), zone=zone)


def _how(content: ReportContent, display: Display) -> str:
    say = content.language.say
    ways = say(" and then ").join(say(WAYS[run.run.direction]) for run in content.runs)
    induced = [abs(pa) for run in content.runs for pa in run.result.induced_pa]
    low, high = (format_value(pa, Quantity.PRESSURE, display, 0) for pa in (min(induced), max(induced)))
    count = sum(len(run.run.points) for run in content.runs)
    how = say(
        "By {method}: a fan {ways}, and its flow was measured {count} times, at pressure differences from {low} to "
        "{high} Pa between indoors and outdoors.",
        method=method_title(content.result.method),
        ways=ways,
        count=count,
        low=low,
        high=high,
    )
    typed = say("Pressures and flows were typed from a hand-written record.") if content.typed else ""
    return f"{how} {typed}".rstrip()


def _meaning(content: ReportContent, display: Display) -> str:
    say, mean = content.language.say, content.result.mean
    pressure_pa, flow_m3_h = _usual_flow(content)
    times = ""
    if mean.n50_per_h is not None and pressure_pa == REFERENCE_PRESSURE_PA:
        exchanged = format_value(mean.n50_per_h.value, Quantity.AIR_CHANGE, display)
        times = say(": all its air is exchanged {times} times an hour", times=exchanged)
    return say(
        "With {pressure} Pa between indoors and outdoors, {flow} of air pass through the leaks of the building{times}. "
        "In use the pressures are much smaller, and so is the exchange of air.",
        pressure=f"{pressure_pa:g}",
        flow=format_with_unit(flow_m3_h, Quantity.FLOW, display),
        times=times,
    )


def _usual_flow(content: ReportContent) -> tuple[float, float]:
    """Return the pressure (Pa) of the quantity in front, no less than the usual one, and the flow (m3/h) at it."""
    result = content.result
    front, _ = headline(result, content.test.building, next((item.limit for item in result.verdicts), None))
    pressure_pa = QUANTITIES[front].pressure_pa
    lines = [line for run in result.runs if (line := run.reference_line) is not None]
    if pressure_pa <= REFERENCE_PRESSURE_PA or len(lines) < len(result.runs):
        return REFERENCE_PRESSURE_PA, result.mean.q50_m3_h.value
    return pressure_pa, mean_flow(lines, pressure_pa).value


def _fields(content: ReportContent) -> list[list[str]]:
    details, say = content.details, content.language.say
    when = "" if content.started is None else utc_words(content.started, content.language, content.ended)
    fields = [
        [say("Client"), printable(details.client)],
        [say("Tested by"), printable(details.tester)],
        [say("Tested on"), when],
        *issue_fields(content.file.mark, content.language),
    ]
    return [[name, text or say(wording.NOT_RECORDED)] for name, text in fields]


def issue_fields(mark: IssueMark | None, language: Language) -> list[list[str]]:
    """Return who signed, when, and why it is issued again; nothing for a draft."""
    if mark is None:
        return []
    say = language.say
    fields = [
        [say("Signed by"), printable(mark.signed_by)],
        [say("Issued on"), utc_words(mark.utc, language)],
    ]
    if mark.revision:
        fields.append([say("Revision {number} because", number=mark.revision), printable(mark.reason)])
    return fields
