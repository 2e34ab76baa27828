"""The version of the program, as it is stored with every test and printed on every report."""

PROGRAM_VERSION = "0.1.0"
