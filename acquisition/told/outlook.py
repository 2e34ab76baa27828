"""What a test can be expected to know, in rows: every schedule beside the chosen one."""

from __future__ import annotations

from acquisition.plan import OWN_SCHEDULE
from acquisition.planning.outlook import Outlook, Prospect, percent
from acquisition.told.table import Row, Table, Tone


def outlook_table(outlook: Outlook) -> Table:
    """Return the schedules with the interval of q50 that each can be expected to give."""
    schedules = list(outlook.schedules)
    if outlook.chosen.schedule == OWN_SCHEDULE:
        schedules.append(outlook.chosen)
    rows = tuple(_row(item, chosen=item.schedule == outlook.chosen.schedule) for item in schedules)
    air = outlook.unrest
    wind = (
        f"From the first zero-flow record: {air.mean_pa:.1f} Pa, moving by {air.sd_pa:.1f} Pa".replace("-", "−")
        + f"; {air.independent_s:.1f} s of readings count as one."
    )
    notes = tuple(note for note in (outlook.advice, *outlook.doubts, wind) if note)
    heads = ("Expected for q50", "Readings", "With kit", "min")
    return Table("Expected before the points", heads, rows, notes)


def _row(item: Prospect, *, chosen: bool) -> Row:
    name = item.schedule.capitalize() + (" (chosen)" if chosen else "")
    cells = (name, f"±{percent(item.half_width)}", f"±{percent(item.with_kit)}", f"{item.minutes:.0f}")
    return Row(cells, tone=Tone.GOOD if chosen else Tone.PLAIN)
