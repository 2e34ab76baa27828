"""The battery of the computer, from what each system says of it.

The folder of Linux is laid out as in the kernel's documentation (sysfs-class-power), the text is that of the tool of
macOS, the two numbers are fields of SYSTEM_POWER_STATUS of Windows; all three from memory.
"""

from __future__ import annotations

from pathlib import Path

from drivers.battery import Battery, parse_macos, parse_windows, read_battery, read_linux


def supply(folder: Path, name: str, **texts: str) -> None:
    (folder / name).mkdir(parents=True)
    for file, text in texts.items():
        (folder / name / file).write_text(f"{text}\n", encoding="utf-8")


def test_linux_takes_the_emptiest_battery_of_the_computer_itself(tmp_path: Path) -> None:
    assert read_linux(tmp_path / "none") is None
    supply(tmp_path, "AC", type="Mains", online="0")
    supply(tmp_path, "hid-mouse", type="Battery", scope="Device", capacity="2", status="Discharging")
    assert read_linux(tmp_path) is None
    supply(tmp_path, "BAT0", type="Battery", capacity="81", status="Not charging")
    supply(tmp_path, "BAT1", type="Battery", capacity="4", status="Discharging")
    supply(tmp_path, "BAT2", type="Battery", capacity="no number", status="Unknown")
    assert read_linux(tmp_path) == Battery(0.04, draining=True)


def test_macos_and_windows() -> None:
    text = "Now drawing from 'Battery Power'\n -InternalBattery-0 (id=1)\t37%; discharging; 2:10 remaining\n"
    assert parse_macos(text) == Battery(0.37, draining=True)
    assert parse_macos(text.replace("Battery Power", "AC Power")) == Battery(0.37, draining=False)
    assert parse_macos("Now drawing from 'AC Power'\n") is None
    assert parse_windows(0, 8) == Battery(0.08, draining=True)
    assert parse_windows(1, 100) == Battery(1.0, draining=False)
    assert parse_windows(255, 255) is None


def test_it_can_be_read_on_this_machine() -> None:
    found = read_battery()
    assert found is None or 0.0 <= found.charge <= 1.0
