"""Where a class may listen: this machine itself, or a private address of it that somebody chose. Nowhere else."""

from __future__ import annotations

import ipaddress
import socket
from contextlib import suppress

LOOPBACK = "127.0.0.1"


def is_private(host: str) -> bool:
    """Tell whether an address is of this machine or of a private network, and one address, not all of them."""
    try:
        address = ipaddress.IPv4Address(host)
    except ValueError:
        return False
    return address.is_private and not address.is_unspecified and address != ipaddress.IPv4Address("255.255.255.255")


def checked_address(host: str) -> str:
    """Return the address; raises `ValueError` for one that is not private."""
    if not is_private(host):
        known = ", ".join(private_addresses())
        raise ValueError(f"host is {host!r}: a private address of this machine is needed, such as: {known}")
    return host


def private_addresses() -> tuple[str, ...]:
    """Return the private addresses of this machine, the loopback first."""
    found = [LOOPBACK]
    with suppress(OSError), socket.socket(socket.AF_INET, socket.SOCK_DGRAM) as probe:
        # Nothing is sent: the system only says from which address it would be.
        probe.connect(("10.255.255.255", 9))
        found.append(str(probe.getsockname()[0]))
    with suppress(OSError):
        found += [str(item[4][0]) for item in socket.getaddrinfo(socket.gethostname(), None, socket.AF_INET)]
    return tuple(dict.fromkeys(address for address in found if is_private(address)))
