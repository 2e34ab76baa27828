"""Tests, laid out like the program; reference/ holds the checks against the outside world."""
