"""The worst case of exhaust fans as tables: each situation, and what appliances bear."""

from __future__ import annotations

from acquisition.languages import ENGLISH, Language
from acquisition.told.table import Row, Table, Tone
from acquisition.told.texts import interval, sentence
from acquisition.told.verdicts import TONES, likelihood
from acquisition.worstcase import WorstCase
from analysis.exhaust import Borne
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


def worst_case_tables(found: WorstCase, display: Display, language: Language = ENGLISH) -> tuple[Table, ...]:
    """Return the situations, and the worst of them held against what appliances bear, with the caution."""
    say, rows = language.say, []
    for item in found.lowerings:
        worst = item is found.worst
        lowered = format_estimate(item.lowered_pa, Quantity.PRESSURE, display).value
        cells = (say(item.situation.words), lowered, interval(item.lowered_pa, Quantity.PRESSURE, display, language))
        note = say("The lowest pressure of all.") if worst else ""
        rows.append(Row(cells, note, Tone.OPEN if worst else Tone.PLAIN))
    heads = ("", say("Lower by, Pa"), say("95 % interval"))
    empty = say(NOTHING_READ) if found.off is None else say(NO_FAN)
    tables = [Table(say("Pressure with the exhaust fans"), heads, tuple(rows), (), empty)]
    if found.worst is not None:
        limits = tuple(_held(item, display, language) for item in found.borne)
        heads = ("", say("Verdict"), say("Probability"))
        tables.append(Table(say("What appliances bear"), heads, limits, (say(CAUTION),)))
    return tuple(tables)


def _held(item: Borne, display: Display, language: Language) -> Row:
    say, appliance = language.say, item.appliance
    limit = format_with_unit(appliance.limit_pa, Quantity.PRESSURE, display)
    title = say("{appliance}: at most {limit}", appliance=say(appliance.title), limit=limit)
    words = sentence(f"{say(appliance.place)}; {say(appliance.provenance.words)}")
    return Row((title, say(item.verdict), likelihood(item.probability, language)), words, TONES[item.verdict])
