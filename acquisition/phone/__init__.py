"""What the person at the leak sees on a phone: read only, in the local network, off unless asked for."""

from acquisition.phone.server import HelperNumbers, HelperView, PhoneServer

__all__ = ["HelperNumbers", "HelperView", "PhoneServer"]
