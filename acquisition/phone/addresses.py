"""The private addresses of this machine, one of which the page for phones may listen at."""

from __future__ import annotations

import contextlib
import ipaddress
import socket

LOOPBACK = "127.0.0.1"
_SOMEWHERE = ("10.255.255.255", "172.31.255.255", "192.168.255.255", "169.254.255.255")


def private_addresses() -> tuple[str, ...]:
    """Return the private IPv4 addresses of this machine, that of the machine alone last.

    The system is asked which of its addresses it would send from; nothing is sent.
    """
    found: list[str] = []
    for target in _SOMEWHERE:
        with socket.socket(socket.AF_INET, socket.SOCK_DGRAM) as asked:
            try:
                asked.connect((target, 9))
                found.append(str(asked.getsockname()[0]))
            except OSError:
                continue
    with contextlib.suppress(OSError):
        found += socket.gethostbyname_ex(socket.gethostname())[2]
    private = [host for host in found if ipaddress.ip_address(host).is_private and not host.startswith("127.")]
    return (*dict.fromkeys(private), LOOPBACK)
