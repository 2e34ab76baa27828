"""The worst case of exhaust fans as tables: each situation, and what appliances bear."""

from __future__ import annotations

from acquisition.told.table import Row, Table, Tone
from acquisition.told.texts import interval, sentence
from acquisition.told.verdicts import TONES, likelihood
from acquisition.worstcase import WorstCase
from analysis.units import Display, Quantity, format_estimate, format_with_unit

CAUTION = (
    "Measured in the weather of that moment. It does not show that an appliance is safe: wind and a cold flue are not "
    "in it, and only a test at the appliance tells whether its gases go up. The local code and the instructions of the "
    "appliance govern. Have every appliance tested by somebody licensed for it, again after every day of sealing, and "
    "resolve a possible backdraught before anything else is sealed."
)
"""Has to stand beside every verdict (after public guidance on enclosure leakage tests, basc.pnnl.gov)."""
NOTHING_READ = "Nothing is read yet: begin with everything off."
NO_FAN = "Only the pressure with everything off is read yet."


def worst_case_tables(found: WorstCase, display: Display) -> tuple[Table, ...]:
    """Return the situations, and the worst of them held against what appliances bear, with the caution."""
    rows = []
    for item in found.lowerings:
        worst = item is found.worst
        lowered = format_estimate(item.lowered_pa, Quantity.PRESSURE, display).value
        cells = (item.situation.words, lowered, interval(item.lowered_pa, Quantity.PRESSURE, display))
        rows.append(Row(cells, "The lowest pressure of all." if worst else "", Tone.OPEN if worst else Tone.PLAIN))
    heads = ("", "Lower by, Pa", "95 % interval")
    tables = [Table("Pressure with the fans", heads, tuple(rows), (), NOTHING_READ if found.off is None else NO_FAN)]
    if found.worst is not None:
        limits = []
        for held in found.borne:
            limit = format_with_unit(held.appliance.limit_pa, Quantity.PRESSURE, display)
            words = sentence(f"{held.appliance.place}; {held.appliance.provenance.words}")
            cells = (f"{held.appliance.title}: at most {limit}", held.verdict, likelihood(held.probability))
            limits.append(Row(cells, words, TONES[held.verdict]))
        tables.append(Table("What appliances bear", ("", "Verdict", "Probability"), tuple(limits), (CAUTION,)))
    return tuple(tables)
