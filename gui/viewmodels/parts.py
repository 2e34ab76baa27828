"""Pieces of sentences with values in them: looked for inside one only, since a person may have typed the like."""

from __future__ import annotations

from gui.words import mark

PARTS = (
    mark("{what} with {count} points"),
    mark("{what} at line {line}, column {column}"),
    mark("line {line}, {what}"),
    mark("line {line}"),
    mark("Port of {name}"),
    mark("flow range {name}"),
    mark("{field} of “{name}”"),
    mark("channels of {name}"),
    mark("profile of {name}"),
    mark("{count} times"),
    mark("{count} readings"),
    mark("{count} gaps"),
    mark("{count} input registers"),
    mark("{count} holding registers"),
    mark("not {value}"),
    mark("greater than {low}"),
    mark("at least {low}"),
    mark("at most {high}"),
    mark("{count} points taken"),
    mark("{name}: volume"),
    mark("{name}: floor area"),
    mark("{name}: area"),
    mark("{item}, range {name}"),
    mark("{count} days"),
    mark("{difference} K between indoors and outdoors"),
    mark("air pressure {value} {unit}"),
    mark("{flow}, {change} % since the beginning"),
)
