"""Pages that go into other hands: the leaks for each trade, with photos and pins; what was done on a day."""

from __future__ import annotations

import io
import json
import re
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import date, datetime

from PIL import Image

from acquisition.job import Job, SealingMarkKind
from acquisition.languages import Language, language_of
from acquisition.report import wording
from acquisition.report.annex import section
from acquisition.report.everypage import grouped, page_words
from acquisition.report.photos import shrunk, wrapped
from acquisition.report.typeface import printable
from acquisition.report.typesetting import template, typeset_pdf
from acquisition.sealing.leaks import Drop, Leak, LeakStatus
from acquisition.sealing.session import last_exponent
from acquisition.sealing.way import sizes_of_drop
from acquisition.told.sealing import leak_place
from acquisition.told.stages import StageTest, in_front, stage_tests
from acquisition.told.table import Row, Table
from acquisition.told.texts import BLANK, interval, plus_minus
from acquisition.version import PROGRAM_VERSION
from analysis.effective import QUANTITIES
from analysis.errors import InvalidInput
from analysis.sealing.remaining import together
from analysis.units import Display, Quantity, format_value, format_with_unit, unit_symbol

Json = dict[str, object]
NOBODY = "nobody yet"
PLAN = "plan"
PHOTO_MM, TALLEST_MM, PLAN_MM, TALLEST_PLAN_MM = 78.0, 70.0, 170.0, 190.0
CLOSED = (LeakStatus.SEALED, LeakStatus.VERIFIED)


@dataclass(frozen=True, slots=True)
class Handout:
    """A document before it is set: where its file is to go, its pages, its pictures."""

    stem: str
    document: Json
    pictures: Mapping[str, bytes]
    made: datetime

    def pdf(self) -> bytes:
        """Return it as PDF; the same job and day give the same bytes."""
        return typeset_pdf(self._sources(), self.made)

    def _sources(self) -> dict[str, bytes]:
        return {
            "main.typ": template("handout.typ"),
            **{name: template(name) for name in ("words.typ", "annex.typ")},
            "data.json": json.dumps(self.document, ensure_ascii=False).encode(),
            **self.pictures,
        }


def trades_of(leaks: Mapping[int, Leak]) -> tuple[str, ...]:
    """Return the trades that have leaks, `NOBODY` last for those that none has."""
    named = sorted({leak.trade for leak in leaks.values() if leak.trade}, key=str.casefold)
    return (*named, *((NOBODY,) if any(not leak.trade for leak in leaks.values()) else ()))


def trade_handouts(job: Job, display: Display, now: datetime, language: Language | None = None) -> list[Handout]:
    """Return one document for each trade, in the language of the job if none is given.

    Raises `InvalidInput` for a job without leaks.
    """
    spoken = language or language_of(job.details.language)
    leaks = job.leaks.leaks
    if not leaks:
        raise InvalidInput("leaks", None, "there is nothing to hand out", shown="not listed")
    return [_for_trade(job, trade, spoken.display(display), now, spoken) for trade in trades_of(leaks)]


def done_handout(job: Job, day: date, display: Display, now: datetime, language: Language | None = None) -> Handout:
    """Return what was sealed on a day, with the flow before and after, in the language of the job if none is given.

    Raises `InvalidInput` where nothing was.
    """
    spoken = language or language_of(job.details.language)
    display, say = spoken.display(display), spoken.say
    register = job.leaks
    leaks, drops = register.leaks, register.drops
    done = [
        mark.leak
        for mark in register.marks
        if mark.kind is SealingMarkKind.DONE and mark.leak in leaks and mark.utc.astimezone().date() == day
    ]
    numbers = [number for number in dict.fromkeys(done) if number is not None and leaks[number].status in CLOSED]
    if not numbers:
        raise InvalidInput("day", f"{day:%Y-%m-%d}", "nothing was marked as sealed on it", shown=f"{day:%d.%m.%Y}")
    gallery = _Gallery(job, spoken)
    tables = _done_tables(job, day, numbers, drops, display, spoken)
    page: Json = {
        "title": say("Done on {day}", day=spoken.day(day)),
        "lead": _done_words([leaks[number] for number in numbers], spoken),
        "tables": [section(table, widths) for table, widths in tables],
        "leaks": [_leak(number, leaks[number], drops.get(number), gallery, display) for number in numbers],
        "plans": gallery.plans(leaks, numbers),
    }
    return Handout(f"done-{day:%Y-%m-%d}", _document(job, say("Done today"), [page], now, spoken), gallery.files, now)


def _for_trade(job: Job, trade: str, display: Display, now: datetime, language: Language) -> Handout:
    leaks, drops, say = job.leaks.leaks, job.leaks.drops, language.say
    own = {number: leak for number, leak in leaks.items() if (leak.trade or NOBODY) == trade}
    still = [number for number, leak in own.items() if leak.status is LeakStatus.FOUND]
    rest = [number for number in own if number not in still]
    gallery = _Gallery(job, language)
    lead = [say("{still} to seal, {rest} sealed or left as they are.", still=len(still), rest=len(rest))]
    if trade == NOBODY:
        lead.append(say("No trade was named for these."))
    named = say(NOBODY) if trade == NOBODY else printable(trade)
    page: Json = {
        "title": say("Leaks for: {trade}", trade=named),
        "lead": lead,
        "tables": [],
        "leaks": [_leak(number, own[number], drops.get(number), gallery, display) for number in (*still, *rest)],
        "plans": gallery.plans(leaks, tuple(own)),
    }
    stem = re.sub(r"[^a-z0-9]+", "-", trade.casefold()).strip("-") or "trade"
    title = say("Leaks, {trade}", trade=named)
    return Handout(f"leaks-{stem}", _document(job, title, [page], now, language), gallery.files, now)


def _document(job: Job, title: str, pages: list[Json], now: datetime, language: Language) -> Json:
    details = job.details
    building = printable(job.draft().building.name or details.name)
    about = [building, printable(details.site), printable(details.name), language.day(now.astimezone())]
    simulated = any(record.rig.simulated for record in job.tests())
    document: Json = {
        "language": language.tag,
        "words": page_words(language),
        "title": title,
        "building": building,
        "author": printable(details.tester) or "Airseam",
        "date": [now.year, now.month, now.day, now.hour, now.minute, now.second],
        "footer": f"{building} · {title} · Airseam {PROGRAM_VERSION}",
        "heading": title,
        "footer-name": " · ".join(dict.fromkeys(part for part in about if part)),
        "stamps": [language.say(wording.SIMULATED)] if simulated else [],
        "office": None,
        "pages": pages,
    }
    return grouped(document, language)


def _leak(number: int, leak: Leak, drop: Drop | None, gallery: _Gallery, display: Display) -> Json:
    language, say = gallery.language, gallery.language.say
    how = say(leak.found_by.value)
    lines = [say("Found by {how}", how=how)]
    if leak.size_guess_m3_h is not None:
        flow = format_with_unit(leak.size_guess_m3_h, Quantity.FLOW, display)
        lines = [say("Found by {how}, guessed at {flow} at 50 Pa", how=how, flow=flow)]
    minutes = language.number(f"{leak.minutes or 0.0:g}")
    work = [leak.material, "" if leak.minutes is None else say("{minutes} min of work", minutes=minutes)]
    said = ", ".join(part for part in work if part)
    lines += [printable(words) for words in (said, leak.note) if words]
    brought = ""
    if drop is not None:
        unit = unit_symbol(Quantity.FLOW, display)
        brought = f"{plus_minus(drop.difference_m3_h, Quantity.FLOW, display)} {unit}, {say(drop.sureness.value)}"
    return {
        "number": str(number),
        "place": printable(leak_place(leak, language)),
        "lines": lines,
        "status": say(leak.status.value),
        "brought": brought,
        "photos": gallery.photos(number, leak),
    }


def _done_words(leaks: Sequence[Leak], language: Language) -> list[str]:
    say = language.say
    minutes = language.number(f"{sum(leak.minutes or 0.0 for leak in leaks):g}")
    materials = ", ".join(sorted({printable(leak.material) for leak in leaks if leak.material}))
    if len(leaks) == 1:
        words = [say("1 leak sealed in {minutes} minutes of work.", minutes=minutes)]
    else:
        words = [say("{count} leaks sealed in {minutes} minutes of work.", count=len(leaks), minutes=minutes)]
    return [*words, say("Material: {materials}.", materials=materials)] if materials else words


def _done_tables(
    job: Job, day: date, numbers: Sequence[int], drops: Mapping[int, Drop], display: Display, language: Language
) -> Iterable[tuple[Table, tuple[int, ...]]]:
    say = language.say
    flow, area = unit_symbol(Quantity.FLOW, display), unit_symbol(Quantity.LEAKAGE_AREA, display)
    told = [(number, drops[number]) for number in numbers if number in drops]
    leaks = job.leaks.leaks
    exponent, volume = last_exponent(job), job.draft().building.volume_m3
    rows = []
    for number, drop in told:
        sizes = sizes_of_drop(drop, exponent, volume)
        cells = (
            f"{number} {leak_place(leaks[number], language)}",
            format_value(drop.before_m3_h, Quantity.FLOW, display),
            format_value(drop.after_m3_h, Quantity.FLOW, display),
            f"{plus_minus(drop.difference_m3_h, Quantity.FLOW, display)}",
            interval(drop.difference_m3_h, Quantity.FLOW, display, language),
            plus_minus(sizes.ela4_cm2, Quantity.LEAKAGE_AREA, display),
            say(drop.sureness.value),
        )
        rows.append(Row(cells))
    if len(told) > 1:
        total = together([drop.difference_m3_h for _, drop in told])
        between = interval(total, Quantity.FLOW, display, language)
        rows.append(Row((say("Together"), "", "", plus_minus(total, Quantity.FLOW, display), between, "", "")))
    heads = (
        say("Leak"),
        say("Before, {unit}", unit=flow),
        say("After, {unit}", unit=flow),
        say("Change, {unit}", unit=flow),
        say("95 % interval"),
        f"ELA4, {area}",
        say("How sure"),
    )
    reference = ", ".join(sorted({language.number(f"{drop.reference_pa:g} Pa") for _, drop in told})) or "50 Pa"
    notes = (
        say("Change of the flow at {pressure}, after less before, while the pressure was held.", pressure=reference),
        say("ELA4: effective leakage area at 4 Pa, discharge coefficient 1, extrapolated by the leakage line."),
    )
    nothing = say("Nothing was measured while it was sealed.")
    yield Table(say("What each seal brought"), heads, tuple(rows), notes, nothing), (4, 0, 0, 0, 0, 0, 0)
    tests = [test for test in stage_tests(job.tests()) if test.record.started.astimezone().date() == day]
    if tests:
        rate = next(QUANTITIES[name] for name in in_front(tests) if name != "q50_m3_h")
        cells_of = (
            Row(
                (
                    f"{test.record.started.astimezone():%H:%M}, {_title(test, language)}",
                    plus_minus(test.q50_m3_h, Quantity.FLOW, display),
                    plus_minus(test.rates.get(rate.id), rate.kind, display),
                    say(test.verdict) if test.verdict else BLANK,
                )
            )
            for test in tests
        )
        rate_head = f"{rate.symbol}, {unit_symbol(rate.kind, display)}"
        titles = (say("Test"), f"q50, {flow}", rate_head, say("Target"))
        yield Table(say("Tests of the day, before and after"), titles, tuple(cells_of)), (4, 0, 0, 0)


def _title(test: StageTest, language: Language) -> str:
    number, stage = test.record.id, test.record.plan.stage or language.say("no stage")
    return language.say("Test {number}, {stage}", number=number, stage=stage)


class _Gallery:
    """The pictures of a job as far as they are printed, each once."""

    def __init__(self, job: Job, language: Language) -> None:
        """Print none yet."""
        self.language = language
        self.files: dict[str, bytes] = {}
        self._job = job
        self._known = {photo.id: photo for photo in job.house.photos}
        self._sizes: dict[int, tuple[int, int]] = {}

    def photos(self, number: int, leak: Leak) -> list[Json]:
        """Return the photos of a leak with its own pins."""
        found = []
        for photo in leak.photos:
            pins = [(str(number), pin.across, pin.down) for pin in leak.pins if pin.photo == photo]
            entry = self._entry(
                photo, pins, PHOTO_MM, TALLEST_MM, self.language.say("Photo of leak {number}", number=number)
            )
            if entry is not None:
                found.append(entry)
        return found

    def plans(self, leaks: Mapping[int, Leak], numbers: Sequence[int]) -> list[Json]:
        """Return the plans on which some of the leaks have pins, with these pins."""
        found = []
        for photo in self._known.values():
            pins = [
                (str(number), pin.across, pin.down)
                for number in numbers
                for pin in leaks[number].pins
                if pin.photo == photo.id
            ]
            if photo.subject == PLAN and pins:
                words = self.language.say("Plan: {name}", name=printable(photo.name))
                entry = self._entry(photo.id, pins, PLAN_MM, TALLEST_PLAN_MM, words)
                found += [] if entry is None else [entry]
        return found

    def _entry(
        self, photo: int, pins: Sequence[tuple[str, float, float]], width_mm: float, tallest_mm: float, alt: str
    ) -> Json | None:
        name = f"photo-{photo}.svg"
        if name not in self.files:
            try:
                content = shrunk(self._job.house.photo(photo))
            except InvalidInput:
                return None  # what is no whole picture stays in the job
            with Image.open(io.BytesIO(content)) as opened:
                self._sizes[photo] = opened.size
            self.files[name] = wrapped(content)
        width, height = self._sizes[photo]
        scale = min(width_mm / width, tallest_mm / height)
        shown = [
            {"x": across * width * scale, "y": down * height * scale, "words": words} for words, across, down in pins
        ]
        return {"file": name, "alt": alt, "width": width * scale, "height": height * scale, "pins": shown}
