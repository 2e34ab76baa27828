"""The command that lists the serial ports, and asks who is there."""

from __future__ import annotations

import argparse
import json
from dataclasses import asdict

from acquisition.commands.status import VALID
from drivers.ports import PortInfo, PortList, list_ports


def ports(options: argparse.Namespace) -> int:
    """List the serial ports of this machine, or who is there."""
    found = PortList(tuple(PortInfo(name, "") for name in options.at)) if options.at else list_ports()
    if options.identify:
        return identify(found, as_json=options.json)
    if options.json:
        print(json.dumps(asdict(found), ensure_ascii=False, indent=1))
        return VALID
    for port in found.ports:
        print("  ".join(text for text in (port.name, port.description, port.usb_id, port.usb_serial) if text))
    if not found.ports:
        print(found.note or "There is no serial port on this machine.")
    return VALID


def identify(ports: PortList, *, as_json: bool) -> int:
    """Ask at each port who is there, and say so."""
    from drivers.clock import WallClock
    from drivers.finding import find_instruments
    from drivers.openers import Openers
    from drivers.profile import load_profile, shipped_profiles

    profiles = [load_profile(name) for name in shipped_profiles()]
    clock = WallClock()
    found = find_instruments(ports.ports, profiles, Openers(clock).open, clock)
    if as_json:
        print(json.dumps([asdict(item) for item in found], ensure_ascii=False, indent=1))
        return VALID
    for item in found:
        print(f"{item.port.name}  {item.profile or 'nobody'}  {item.identity or item.sentence}")
    if not found:
        print(ports.note or "There is no serial port on this machine.")
    return VALID
