"""Exit status of a command."""

from __future__ import annotations

VALID, NOT_VALID, UNUSABLE, RIG_FAULT = 0, 1, 2, 3
