"""Instrument profiles that ship with the program, one TOML file each."""
