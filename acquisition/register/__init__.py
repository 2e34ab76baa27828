"""The equipment register: instruments, fans and flow ranges with their calibrations, and checks in the field."""

from acquisition.register.due import DueState, DueStatus, due_of_rig, due_status
from acquisition.register.ofrig import equipped, in_use
from acquisition.register.records import Calibration, Equipment, FieldCheck, RangeEntry, Register, ranges_of
from acquisition.register.store import load_register, register_path, save_register
from acquisition.register.validity import Validity, check_validity

__all__ = [
    "Calibration",
    "DueState",
    "DueStatus",
    "Equipment",
    "FieldCheck",
    "RangeEntry",
    "Register",
    "Validity",
    "check_validity",
    "due_of_rig",
    "due_status",
    "equipped",
    "in_use",
    "load_register",
    "ranges_of",
    "register_path",
    "save_register",
]
