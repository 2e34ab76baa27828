"""Notices, while a test runs, that something happened to the house, the hoses, the fan or the readings.

`quiet` learns how restless pressure and flow of this test are by themselves; `shift` tells in which way they moved;
`unrest` looks at how restless they are; `findings` says in words what it can have been; `vigil` joins all that and is
shown the last seconds by `acquisition.sight`. Nothing here stops a fan: that is the guard's.
"""

from acquisition.vigil.findings import Finding
from acquisition.vigil.vigil import Vigil

__all__ = ["Finding", "Vigil"]
