"""Commands that explain numbers: limits, what a result means, two tests beside each other, zones, components."""

from __future__ import annotations

import argparse
from collections.abc import Sequence
from dataclasses import fields, replace

from acquisition.commands.printing import display_of, show
from acquisition.commands.status import VALID
from acquisition.testfile import load_stored_test
from acquisition.told import Side, comparison_tables, meaning_table, zone_tables
from acquisition.told.components import component_list, component_sum
from acquisition.told.limits import limit_list
from acquisition.zonetest import ZoneQuestion
from analysis.meaning import Surroundings, meaning_of
from drivers.clock import WallClock


def limits(options: argparse.Namespace) -> int:
    """List the limits of codes and programmes."""
    for table in limit_list(options.place, options.zone, display_of(options.units)):
        show(table)
    return VALID


def explain(options: argparse.Namespace) -> int:
    """Say what the result of a test means for the house."""
    stored = load_stored_test(options.file, WallClock(), options.test)
    given = {
        item.name: value for item in fields(Surroundings) if (value := getattr(options, item.name, None)) is not None
    }
    result = stored.result(options.method)
    meaning = meaning_of(result, stored.test.building, replace(stored.surroundings, **given))
    show(meaning_table(meaning, display_of(options.units)))
    return VALID


def compare(options: argparse.Namespace) -> int:
    """Hold two tests beside each other."""
    sides = []
    for word, path, number in (
        ("Before", options.before, options.before_test),
        ("After", options.after, options.after_test),
    ):
        stored = load_stored_test(path, WallClock(), number)
        rig = () if stored.record is None else (("Rig", stored.record.rig.name),)
        conditions = (("Method", stored.method), *rig)
        sides.append(Side(word, stored.test, stored.result(), conditions))
    before, after = sides
    display = display_of(options.units)
    for table in comparison_tables(before, after, display, same_instruments=not options.other_instruments):
        show(table)
    return VALID


def zone(options: argparse.Namespace) -> int:
    """Say what the pressure of a zone tells, with a hole added or a garage door opened."""
    question = ZoneQuestion(
        house_pa=options.house,
        zone_pa=options.zone,
        pressure_u_pa=options.pressure_uncertainty,
        hole=options.hole,
        zone_after_pa=options.zone_after,
        flow_before_m3_h=options.flow,
        flow_after_m3_h=options.flow_after,
        flow_u_m3_h=options.flow_uncertainty,
        garage=options.garage,
    )
    for table in zone_tables(question, display_of(options.units)):
        show(table)
    return VALID


def components(options: argparse.Namespace) -> int:
    """List what single components leak, or add some up."""
    display = display_of(options.units)
    show(component_sum(_amounts(options.amounts), display) if options.amounts else component_list(display))
    return VALID


def _amounts(pairs: Sequence[tuple[str, float]]) -> dict[str, float]:
    total: dict[str, float] = {}
    for name, amount in pairs:
        total[name] = total.get(name, 0.0) + amount
    return total
