"""Tests of the simulated instruments."""
