"""The key sheet: every key, what it does, and where."""

from __future__ import annotations

from gui.words import mark, say

KEYS: tuple[tuple[str, tuple[tuple[str, str], ...]], ...] = (
    (
        mark("Always"),
        (
            (
                "Esc",
                mark("Stop the fan, at once, from anywhere. A running test is paused and can go on; nothing is lost."),
            ),
            (
                mark("Space"),
                mark("Press the big button at the bottom right: it does what the sentence beside it says."),
            ),
            (mark("1 to 7"), mark("Go to Job, Set-up, Rig, Test, Hunt, Stages, Report.")),
            ("F1", mark("Show this sheet, and go back.")),
            ("Ctrl+K", mark("Find a command by its words.")),
            ("F11", mark("Whole screen, in Hunt few huge figures, and back.")),
        ),
    ),
    (
        mark("Job"),
        (
            ("Ctrl+N", mark("Make a new job.")),
            ("Ctrl+O", mark("Open a job; or drop its file on the window, or a rig file.")),
            ("Ctrl+J", mark("Find a job in a folder by street, client, number or date.")),
            ("Ctrl+B", mark("Copy the job into the backup folder.")),
            (
                "Ctrl+Z",
                mark("Take back the last edit, in Test the last change of points; measured data is never taken back."),
            ),
            ("Ctrl+Shift+Z", mark("Do it again.")),
        ),
    ),
    (
        mark("Test"),
        (
            ("R", mark("Show how far the points lie off the line, and back.")),
            ("C", mark("Show every correction from the readings to the line, and back.")),
            ("X", mark("Strike the points that are chosen in the table, or restore them.")),
            ("P", mark("Take the chosen point again, or begin the one anew that is being taken.")),
            ("F", mark("Another flow range is fitted: the fan is stopped, the point is begun again.")),
            (
                "Shift+F",
                mark("Say with which flow range the chosen points were read; with none chosen, those off the line."),
            ),
            ("G", mark("Go on with a test that was cut short.")),
            ("A", mark("Show all in the plots.")),
            (mark("Wheel, drag"), mark("Zoom and move a plot. The right button saves it as PNG, SVG or CSV.")),
        ),
    ),
    (
        mark("Hunt"),
        (
            ("H, Shift+H", mark("Hold a pressure, and end it.")),
            ("+, -, Shift+D", mark("Hold 5 Pa more or less, or the same pressure in the other direction.")),
            ("S, D", mark("Sealing starts, sealing is done: half a minute later stands here what it brought.")),
            ("N, L", mark("Note of this moment, new leak that was found now.")),
            ("M", mark("Count the change from this moment on.")),
        ),
    ),
    (
        mark("Report"),
        (
            ("Ctrl+S", mark("Save the report as PDF.")),
            ("Ctrl+E", mark("Export the tables as CSV; Ctrl+Shift+E the test as JSON.")),
            ("Ctrl+Shift+C", mark("Copy the points for a spreadsheet.")),
        ),
    ),
    (
        mark("View"),
        (
            ("Ctrl+U", mark("Change between SI and US units; what is stored stays as it is.")),
            ("Ctrl+,", mark("Settings: office, units, folders, theme, size of everything.")),
            ("Ctrl+T", mark("Next theme: as the system, dark, light, sunlight.")),
        ),
    ),
)

CAUTIONS = (
    mark("Before the fan starts every flame is out, ashes are cold and covered, and everybody in the building knows."),
    mark("Local codes and licensed practice decide who may test and how; this program does not replace them."),
    mark("If the fan does not stop, pull its plug."),
)

MODIFIERS = (mark("Ctrl"), mark("Shift"))


def key_words(key: str) -> str:
    """Return a key as keyboards of the language on the screen name it, as the menus do."""
    words = say(key)
    for name in MODIFIERS:
        words = words.replace(name, say(name))
    return words
