"""The equipment register on the command line: what it knows of a rig that is opened, and what has run out."""

from __future__ import annotations

import sys
from pathlib import Path

from acquisition.openrig import OpenRig, open_rig
from acquisition.register import Register, due_of_rig, in_use, load_register, register_path
from acquisition.rig import RigSpec
from analysis.errors import InvalidInput
from drivers.clock import Clock
from drivers.transport import TransportOpener


def opened_rig(spec: RigSpec, clock: Clock, opener: TransportOpener, register: Path | None) -> OpenRig:
    """Open a rig, and say which of its calibrations are not in order."""
    known = registered(register)
    rig = open_rig(spec, clock, opener)
    rig.equip(known)
    for status in due_of_rig(in_use(rig.spec), clock.utc().astimezone().date()):
        print(f"airseam: {status.sentence}", file=sys.stderr)
    return rig


def registered(path: Path | None) -> Register:
    """Return the equipment register: that of the user is left alone where it cannot be used, another has to be good."""
    if path is not None and not path.exists():
        raise InvalidInput("--register", str(path), "a register file is needed")
    try:
        return load_register(path or register_path())
    except InvalidInput as error:
        if path is not None:
            raise
        print(f"airseam: the equipment register is not used: {error}", file=sys.stderr)
        return Register()
