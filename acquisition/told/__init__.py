"""Numbers put into words, once for terminal and window: each part of a result as a table of texts."""

from __future__ import annotations

from acquisition.told.budget import budget_table
from acquisition.told.comparison import Side, comparison_tables
from acquisition.told.corrections import correction_tables
from acquisition.told.meaning import meaning_table
from acquisition.told.outlook import outlook_table
from acquisition.told.quantities import quantity_table
from acquisition.told.table import Row, Table, Tone, table_lines
from acquisition.told.verdicts import verdict_table
from acquisition.told.zones import zone_tables

__all__ = [
    "Row",
    "Side",
    "Table",
    "Tone",
    "budget_table",
    "comparison_tables",
    "correction_tables",
    "meaning_table",
    "outlook_table",
    "quantity_table",
    "table_lines",
    "verdict_table",
    "zone_tables",
]
