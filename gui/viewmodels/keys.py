"""The key sheet: every key, what it does, and where."""

from __future__ import annotations

KEYS: tuple[tuple[str, tuple[tuple[str, str], ...]], ...] = (
    (
        "Always",
        (
            ("Esc", "Stop the fan, at once, from anywhere. A running test is paused and can go on; nothing is lost."),
            ("Space", "Press the big button at the bottom right: it does what the sentence beside it says."),
            ("1 to 7", "Go to Job, Set-up, Rig, Test, Hunt, Stages, Report."),
            ("F1", "Show this sheet, and go back."),
            ("Ctrl+K", "Find a command by its words."),
            ("F11", "Whole screen, in Hunt few huge figures, and back."),
        ),
    ),
    (
        "Job",
        (
            ("Ctrl+N", "Make a new job."),
            ("Ctrl+O", "Open a job; or drop its file on the window, or a rig file."),
            ("Ctrl+J", "Find a job in a folder by street, client, number or date."),
            ("Ctrl+B", "Copy the job into the backup folder."),
            ("Ctrl+Z", "Take back the last edit, in Test the last strike; measured data is never taken back."),
            ("Ctrl+Shift+Z", "Do it again."),
        ),
    ),
    (
        "Test",
        (
            ("R", "Show how far the points lie off the line, and back."),
            ("C", "Show every correction from the readings to the line, and back."),
            ("X", "Strike the point that is chosen in the table, or restore it."),
            ("P", "Take the chosen point again, or begin the one anew that is being taken."),
            ("F", "Another flow range is fitted: the fan is stopped, the point is begun again."),
            ("G", "Go on with a test that was cut short."),
            ("A", "Show all in the plots."),
            ("Wheel, drag", "Zoom and move a plot. The right button saves it as PNG, SVG or CSV."),
        ),
    ),
    (
        "Hunt",
        (
            ("H, Shift+H", "Hold a pressure, and end it."),
            ("+, -, Shift+D", "Hold 5 Pa more or less, or the same pressure in the other direction."),
            ("S, D", "Sealing starts, sealing is done: half a minute later stands here what it brought."),
            ("N, L", "Note of this moment, new leak that was found now."),
            ("M", "Count the change from this moment on."),
        ),
    ),
    (
        "Report",
        (
            ("Ctrl+S", "Save the report as PDF."),
            ("Ctrl+E", "Export the tables as CSV; Ctrl+Shift+E the test as JSON."),
            ("Ctrl+Shift+C", "Copy the points for a spreadsheet."),
        ),
    ),
    (
        "View",
        (
            ("Ctrl+U", "Change between SI and US units; what is stored stays as it is."),
            ("Ctrl+,", "Settings: office, units, folders, theme, size of everything."),
            ("Ctrl+T", "Next theme: as the system, dark, light, sunlight."),
        ),
    ),
)

CAUTIONS = (
    "Before the fan starts every flame is out, ashes are cold and covered, and everybody in the building knows.",
    "Local codes and licensed practice decide who may test and how; this program does not replace them.",
    "If the fan does not stop, pull its plug.",
)
