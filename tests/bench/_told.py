"""What a bench tells as JSON."""

from __future__ import annotations

import math
from collections.abc import Mapping


def by_wind(tables: Mapping[str, Mapping[str, float]]) -> dict[str, object]:
    """Return the rows of a table by their winds; the fields of a single row stand at the top as well.

    What could not be measured is null: JSON knows no such number.
    """
    known = {
        wind: {name: value if math.isfinite(value) else None for name, value in row.items()}
        for wind, row in tables.items()
    }
    only = next(iter(known.values())) if len(known) == 1 else {}
    return {**only, "winds": known}
