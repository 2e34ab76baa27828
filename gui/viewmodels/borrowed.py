"""Words that the window borrows: test, methods, drivers and data files say them in English, the window in its language.

What a report says too has its translation there (`acquisition/languages`), and `retold` takes it from there.
`tests/gui/test_words.py` holds the words of the data files to both.
"""

from __future__ import annotations

from gui.words import mark

WAYS = (
    mark("depressurize"),
    mark("pressurize"),
    mark("Depressurize"),
    mark("Pressurize"),
)
"""Directions, inside a sentence and at its beginning."""
STATES = (
    mark("closed"),
    mark("opening"),
    mark("identifying"),
    mark("linked"),
    mark("lost"),
    mark("wrong instrument"),
    mark("sure"),
    mark("not sure"),
    mark("too windy to tell"),
    mark("recording"),
    mark("complete"),
    mark("stopped"),
    mark("faulted"),
    mark("interrupted"),
)
"""States of a link, of a change, of a record."""
KINDS = (
    mark("Gauge"),
    mark("Fan"),
    mark("Thermometer"),
    mark("Barometer"),
    mark("Other"),
)
"""Kinds of equipment."""
OPENINGS = (
    mark("Dampers of stove and flue as they were"),
    mark("Bath and kitchen fans switched on again"),
    mark("Ventilation of the whole building switched on again"),
    mark("Heating and hot water: pilot lit, appliance on"),
    mark("Pilot flames lit, appliances on and looked at"),
    mark("Thermostats as they were"),
    mark("Smoke and other alarms reinstated, those who were told are told again"),
    mark("Dampers and registers as they were"),
    mark("Keys given back"),
    mark("As is"),
    mark("Closed"),
    mark("Sealed"),
    mark("Open"),
    mark("Off"),
    mark("Filled"),
    mark("Not present"),
    mark("building in use"),
    mark("envelope alone"),
    mark("closed, dampers not sealed"),
)
"""Openings, what is put back, states and rules."""
STAGES = (
    mark("shell closed"),
    mark("services in"),
    mark("boards on"),
    mark("finished"),
)
"""Usual stages."""
PREPARATIONS = (
    mark("Method 1, building in use: openings for ventilation closed, others as they are in use"),
    mark("Method 2, building envelope: all intentional openings sealed or closed"),
    mark("Method 3, specific purpose: as the regulation or programme says"),
    mark("Building envelope: openings of heating and ventilation are left out (masked)"),
    mark("Operational envelope: openings of heating and ventilation belong to it, as in operation"),
)
"""States of the building by the methods."""
HEADS = (
    mark("Job"),
    mark("Site"),
    mark("Client"),
    mark("Number"),
    mark("Test"),
    mark("Date"),
    mark("Stage"),
    mark("Verdict"),
    mark("Issued as"),
)
"""Heads of the table of jobs."""
LEAKS = (
    mark("found"),
    mark("sealed"),
    mark("verified"),
    mark("left"),
    mark("hand"),
    mark("fog"),
    mark("smoke pen"),
    mark("infra-red"),
    mark("sound"),
    mark("other"),
)
"""Parts of a building that leak, the state of a leak, and how it was found."""
CHOICES = (
    mark("By a code or programme"),
    mark("For quality, no code"),
    mark("Finding leaks only"),
    mark("Quick"),
    mark("Standard"),
    mark("Precision"),
    mark("Windy"),
    mark("Measured inside, wall to wall"),
    mark("Taken from drawings"),
    mark("Measured outside, walls taken off"),
    mark("Estimated"),
    mark("outside"),
    mark("ground"),
    mark("unheated space"),
    mark("neighbour"),
    mark("even"),
    mark("odd"),
)
"""Kinds of test, schedules, how a building was measured, what a surface adjoins, parities."""
PROFILES = (
    mark("By hand (a person reads the gauge and types)"),
    mark("Line gauge (two pressures, two temperatures)"),
    mark("Line gauge that is asked (two pressures, two temperatures)"),
    mark("Modbus fan (electronically commutated motor)"),
    mark("Modbus gauge (two pressures, two temperatures, barometer)"),
    mark("Modbus pressure transmitter (one register, 0.1 Pa)"),
    mark("Modbus output 0 to 10 V as fan drive"),
    mark("Recorded file (readings played back)"),
    mark("SCPI fan drive"),
    mark("SCPI gauge (four pressures, two temperatures, barometer, humidity)"),
    mark("SCPI gauge (eight pressures, two temperatures, barometer, humidity)"),
    mark("Thermometer and barometer that send lines"),
)
"""Profiles of instruments."""
