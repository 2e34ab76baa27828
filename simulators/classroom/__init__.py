"""A class: a house for each student, or one for all to watch, served over TCP to the programs of the students."""

from simulators.classroom.address import checked_address, private_addresses
from simulators.classroom.server import ClassServer
from simulators.classroom.station import Station

__all__ = ["ClassServer", "Station", "checked_address", "private_addresses"]
