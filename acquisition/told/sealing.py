"""Sealing in words: what changed while a pressure was held, and the leaks of the house."""

from __future__ import annotations

from collections.abc import Mapping

from acquisition.languages import ENGLISH, Language
from acquisition.sealing.held import HeldLook
from acquisition.sealing.leaks import Drop, Leak, LeakStatus
from acquisition.told.table import Row, Table, Tone
from acquisition.told.texts import BLANK, plus_minus, sentence
from analysis.sealing.change import Change, Sureness, sizes_of, smallest_m3_h
from analysis.sealing.parts import part_of
from analysis.sealing.watch import Step, StepKind
from analysis.units import Display, Quantity, format_value, unit_symbol

TONES = {Sureness.SURE: Tone.GOOD, Sureness.NOT_SURE: Tone.OPEN, Sureness.TOO_WINDY: Tone.OPEN}
AREAS = (
    "ELA4: effective leakage area at 4 Pa, discharge coefficient 1; EqLA10: equivalent leakage area at 10 Pa, "
    "discharge coefficient 0.611. Both follow the leakage line down from the pressure held: extrapolated."
)


def held_table(look: HeldLook, display: Display) -> Table:
    """Return what changed in a held run: marked seals, and what was seen without a mark."""
    flow, area = unit_symbol(Quantity.FLOW, display), unit_symbol(Quantity.LEAKAGE_AREA, display)
    rows = [(item.done_s, _row("sealed", item.done_s, item.change, look, display)) for item in look.sealed]
    marked = [(item.started_s - 5.0, item.done_s + 30.0) for item in look.sealed]
    rows += [
        (step.at_s, _step_row(step, look, display))
        for step in look.steps
        if not any(begin <= step.at_s <= end for begin, end in marked)
    ]
    heads = ("At", "What", f"Before, {flow}", f"After, {flow}", f"Change, {flow}", f"ELA4, {area}", f"EqLA10, {area}")
    title = f"Flow at {look.levelling.reference_pa:g} Pa while the pressure was held"
    notes = (_least(look, display), AREAS)
    ordered = tuple(row for _, row in sorted(rows, key=lambda item: item[0]))
    return Table(title, heads, ordered, notes, "Nothing changed that stands out from the wind.", text_columns=2)


def leak_place(leak: Leak, language: Language = ENGLISH) -> str:
    """Return where a leak is, in a few words."""
    title = language.say(part_of(leak.part).title)
    return language.say("{where}: {what}", where=leak.where, what=title) if leak.where else title


def leak_table(
    leaks: Mapping[int, Leak], drops: Mapping[int, Drop], display: Display, language: Language = ENGLISH
) -> Table:
    """Return the leaks of the house by their number."""
    flow, say = unit_symbol(Quantity.FLOW, display), language.say
    rows = []
    for number, leak in leaks.items():
        drop = drops.get(number)
        change = BLANK if drop is None else plus_minus(drop.difference_m3_h, Quantity.FLOW, display)
        brought = BLANK if drop is None else f"{change}, {say(drop.sureness)}"
        size = leak.size_guess_m3_h
        guess = BLANK if size is None else format_value(size, Quantity.FLOW, display)
        minutes = "" if leak.minutes is None else language.number(f"{leak.minutes:g} min")
        work = [leak.trade, leak.material, minutes]
        words = ", ".join(text for text in (*work, leak.note) if text)
        tone = Tone.OPEN if leak.status is LeakStatus.FOUND else Tone.GOOD
        cells = (str(number), leak_place(leak, language), say(leak.status), guess, brought)
        rows.append(Row(cells, sentence(words) if words else "", tone))
    heads = (
        say("No."), say("Where"), say("Status"), say("Guess at 50 Pa, {unit}", unit=flow),
        say("Sealing brought, {unit}", unit=flow),
    )  # fmt: skip
    return Table(say("Leaks"), heads, tuple(rows), (), say("None is listed."), text_columns=3)


def _step_row(step: Step, look: HeldLook, display: Display) -> Row:
    seal = step.kind is StepKind.SEAL
    words = "looks like a seal" if seal else step.kind.value
    return _row(words, step.at_s, step.change, look, display, plain=not seal)


def _row(
    words: str, at_s: float, change: Change | None, look: HeldLook, display: Display, *, plain: bool = False
) -> Row:
    elapsed = round(at_s - look.trace.start_s)
    at = f"{elapsed // 60}:{elapsed % 60:02d}"
    if change is None:
        return Row((at, words, *(BLANK,) * 5), "Too early to tell, or nothing was quiet before.", Tone.OPEN)
    sizes = sizes_of(change.difference_m3_h, look.levelling)
    share = change.share
    note = f"{100 * share.value:+.1f} % ± {100 * share.half_width:.1f} %, {change.sureness}".replace("-", "\u2212")
    cells = (
        at,
        words,
        format_value(change.before_m3_h, Quantity.FLOW, display),
        format_value(change.after_m3_h, Quantity.FLOW, display),
        plus_minus(change.difference_m3_h, Quantity.FLOW, display),
        plus_minus(sizes.ela4_cm2, Quantity.LEAKAGE_AREA, display),
        plus_minus(sizes.eqla10_cm2, Quantity.LEAKAGE_AREA, display),
    )
    return Row(cells, note, Tone.PLAIN if plain else TONES[change.sureness])


def _least(look: HeldLook, display: Display) -> str:
    if look.keen is None:
        return "The pressure was held for less than a quiet minute: no change can be told yet."
    least = smallest_m3_h(look.keen)
    text = format_value(least, Quantity.FLOW, display, 1)
    share = 100.0 * least / look.keen.mean_m3_h
    unit = unit_symbol(Quantity.FLOW, display)
    return f"The least change that is told in 30 s in this wind: {text} {unit}, {share:.1f} %."
