"""What a result means for the house, in rows: the hole, the natural air change, a design, exhaust fans."""

from __future__ import annotations

from collections.abc import Iterator

from acquisition.told.table import Row, Table, Tone
from acquisition.told.texts import extrapolated, interval, sentence, with_unit
from acquisition.told.verdicts import TONES, likelihood
from analysis.exhaust import Depressurization
from analysis.infiltration import Infiltration
from analysis.meaning import Meaning
from analysis.records import Estimate
from analysis.units import Display, Quantity, System, format_estimate, format_value, format_with_unit, unit_symbol

NOTE = "Estimates by named models with their bands, not measured; none of them belongs on a certificate."


def meaning_table(meaning: Meaning, display: Display) -> Table:
    """Return what a result means; the cautions that have to stand beside the rows are their notes."""
    rows = [*_hole(meaning, display), *_natural(meaning, display), *_design(meaning, display)]
    if meaning.exhaust is not None:
        rows += _exhaust(meaning.exhaust, display)
    return Table("What it means", ("", "About", "95 % band"), tuple(rows), (*meaning.gaps, NOTE))


def _hole(meaning: Meaning, display: Display) -> Iterator[Row]:
    hole = meaning.hole
    unit = unit_symbol(Quantity.LEAKAGE_AREA, display)
    area = _cells(hole.area_cm2, Quantity.LEAKAGE_AREA, display)
    yield Row((with_unit("All leaks together as one hole", unit), *area), sentence(hole.definition))
    if display.system_of(Quantity.LEAKAGE_AREA) is System.US:
        inches = hole.diameter_cm.times(1 / 2.54)
        yield Row(("Its diameter, in", *_plain(inches, 1, display)))
    else:
        yield Row(("Its diameter, cm", *_plain(hole.diameter_cm, 1, display)))
    if meaning.construction is not None:
        nearest = meaning.construction
        yield Row(
            ("Nearest class of construction in load calculations", nearest.title, ""),
            f"{nearest.unit_leakage_cm2_m2:g} cm² at 4 Pa for each m² of exposed surface; {nearest.provenance.words}.",
        )


def _natural(meaning: Meaning, display: Display) -> Iterator[Row]:
    for item in meaning.natural:
        yield _infiltration("Natural air change", item, display)
    if meaning.credit is not None:
        yield _infiltration("Infiltration credit", meaning.credit, display)


def _infiltration(title: str, item: Infiltration, display: Display) -> Row:
    estimate, kind = item.air_change_per_h, Quantity.AIR_CHANGE
    if estimate is None:
        estimate, kind = item.flow_m3_h, Quantity.FLOW
    words = f"{item.model.title}: {item.model.says}. {sentence(item.model.provenance.words)} {item.note}"
    return Row((with_unit(title, unit_symbol(kind, display)), *_cells(estimate, kind, display)), words)


def _design(meaning: Meaning, display: Display) -> Iterator[Row]:
    design = meaning.design
    if design is None:
        return
    assumed = format_value(design.assumed_per_h, Quantity.AIR_CHANGE, display)
    yield Row(("The design assumed, 1/h", assumed, ""), f"That is {design.finding}.")
    yield Row(
        ("Heating load that the design lacks, W", *_plain(design.load_w, 0, display)),
        "Sensible heat of the difference between the expected and the assumed air change; below 0 the design has over.",
    )


def _exhaust(found: Depressurization, display: Display) -> Iterator[Row]:
    pressure = _cells(found.pressure_pa, Quantity.PRESSURE, display)
    remark = extrapolated([found.pressure_pa])
    note = f"{sentence(remark)} {found.caution}" if remark else found.caution
    yield Row(("Depressurization by the exhaust fans, Pa", *pressure), note, Tone.OPEN)
    for item in found.borne:
        limit = format_with_unit(item.appliance.limit_pa, Quantity.PRESSURE, display)
        title = f"{item.appliance.title}: at most {limit}"
        words = sentence(f"{item.appliance.place}; {item.appliance.provenance.words}")
        yield Row((title, item.verdict, likelihood(item.probability)), words, TONES[item.verdict])


def _cells(estimate: Estimate, kind: Quantity, display: Display) -> tuple[str, str]:
    return format_estimate(estimate, kind, display).value, interval(estimate, kind, display)


def _plain(estimate: Estimate, decimals: int, display: Display) -> tuple[str, str]:
    """Return a number that has no unit of its own in the display systems."""
    value, low, high = (
        f"{number:.{decimals}f}".replace("-", "\u2212").replace(".", display.decimal_mark)
        for number in (estimate.value, estimate.low, estimate.high)
    )
    return value, f"{low} to {high}"
