"""The pages of the hunt: fog and infra-red, zones step by step, phones, the tone."""

from __future__ import annotations

import io
import json
import urllib.error
import urllib.request
import wave
from http.cookiejar import CookieJar

import numpy as np
import pytest

from acquisition.phone.addresses import LOOPBACK, private_addresses
from acquisition.sealing.looking import advice
from acquisition.setup import board_of
from acquisition.zonetest import kept_zones
from analysis.records import Direction
from gui.hunt_drawing import timer_words
from gui.tone import RATE_HZ, pitch_hz, tone_wav
from gui.viewmodels.hunt import HuntTab
from gui.viewmodels.moment import Place
from gui.viewmodels.retold import retold
from gui.viewmodels.zone_walk import ZoneWalk
from gui.words import Language
from tests.gui.conftest import Stage
from tests.gui.fakes import SI, US


def show(stage: Stage, tab: HuntTab) -> None:
    stage.program.screen.hunt.tab = tab
    stage.program.screen.go_to(Place.HUNT)
    stage.draw()


def test_the_page_on_phones_is_switched_on_and_off(stage: Stage) -> None:
    stage.connect()
    show(stage, HuntTab.PHONE)
    panel, page = stage.program.window.hunt.phone, stage.program.desk.phone
    assert panel.lamp.text() == "off"
    assert page.link == ""
    assert not panel.code.rows
    panel.addresses.setCurrentText(LOOPBACK)
    panel.switch.click()
    stage.pass_time(1.0)
    assert page.link.startswith(f"http://{LOOPBACK}:")
    assert panel.link.text() == page.link
    # A QR code has as many rows as squares in a row, 21 at least (ISO/IEC 18004, from memory).
    assert len(panel.code.rows) == len(panel.code.rows[0]) >= 21
    assert "on: 0 phones" in panel.lamp.text()
    assert "on, 0" in stage.program.window.hunt.tabs.button(list(HuntTab).index(HuntTab.PHONE)).text()
    browser = urllib.request.build_opener(urllib.request.HTTPCookieProcessor(CookieJar()))
    assert b"EventSource" in browser.open(page.link, timeout=5.0).read()
    host = page.link.partition("/?")[0]
    stream = browser.open(f"{host}/stream", timeout=5.0)
    lines = [stream.readline() for _ in range(4)]
    assert any(b'"pressure"' in line and b"age_s" in line for line in lines)
    stage.draw()
    assert "on: 1 phone" in panel.lamp.text()
    with pytest.raises(urllib.error.HTTPError, match="403"):
        urllib.request.urlopen(f"{host}/?t=guessed", timeout=5.0)
    stream.close()
    panel.switch.click()
    stage.draw()
    assert page.link == ""
    with pytest.raises(urllib.error.URLError):
        urllib.request.urlopen(f"{host}/", timeout=5.0)


@pytest.mark.parametrize("language", [Language.GERMAN])
def test_the_page_on_phones_speaks_the_language_of_the_window(stage: Stage) -> None:
    stage.connect()
    show(stage, HuntTab.PHONE)
    stage.program.window.hunt.phone.addresses.setCurrentText(LOOPBACK)
    stage.program.window.hunt.phone.switch.click()
    stage.pass_time(1.0)
    browser = urllib.request.build_opener(urllib.request.HTTPCookieProcessor(CookieJar()))
    link = stage.program.desk.phone.link
    page = browser.open(link, timeout=5.0).read().decode()
    assert '<html lang="de">' in page
    assert "Volumenstrom jetzt" in page
    assert 'data-old="Daten {age} s alt" data-mark=","' in page
    stream = browser.open(f"{link.partition('/?')[0]}/stream", timeout=5.0)
    numbers = next(line for line in (stream.readline() for _ in range(6)) if line.startswith(b"data: "))
    stream.close()
    assert json.loads(numbers[6:])["state"] == retold(stage.snapshot().sentence) != stage.snapshot().sentence
    stage.program.window.hunt.phone.switch.click()


def test_addresses_are_private_and_end_with_this_machine_alone() -> None:
    found = private_addresses()
    assert found[-1] == LOOPBACK
    assert len(set(found)) == len(found)


def test_an_isolated_alarm_stays_on_the_board_until_it_is_reinstated(stage: Stage) -> None:
    show(stage, HuntTab.LOOK)
    page, job = stage.program.window.hunt.look, stage.program.desk.job
    assert job is not None
    assert not page.reinstate.isEnabled()
    page.isolate.click()
    stage.draw()
    assert "still to be reinstated" in page.alarm.text()
    owed = board_of(job.draft(), job.house.entries).owed
    assert any("alarm" in item.lower() for item in owed)
    page.reinstate.click()
    stage.draw()
    assert "reinstated" in page.alarm.text()
    assert not any("Fire alarm" in item for item in board_of(job.draft(), job.house.entries).owed)
    page.timer.click()
    stage.draw()
    assert page.left.text() == "10:00 left"
    page.timer.click()
    stage.draw()
    assert page.left.text() == ""
    assert timer_words(-1.0).startswith("The time is up")


@pytest.mark.parametrize(
    ("indoor", "outdoor", "usable", "words"),
    [
        (21.0, 3.0, True, "Infra-red works: 18 K"),
        (21.0, 14.0, True, "large leaks only"),
        (21.0, 20.0, False, "shows nothing"),
        (None, 3.0, False, "no temperatures are known"),
    ],
)
def test_infra_red_is_advised_by_the_temperatures(
    indoor: float | None, outdoor: float | None, usable: bool, words: str
) -> None:
    told = advice(indoor, outdoor, Direction.DEPRESSURIZE, 50.0)
    assert told.usable is usable
    assert words in told.infra_red
    assert "25 Pa or less" in told.fog
    assert "outside" in advice(indoor, outdoor, Direction.PRESSURIZE, 15.0).fog


def test_the_tone_falls_with_the_flow() -> None:
    with wave.open(io.BytesIO(tone_wav(pitch_hz(950.0, 1000.0)))) as file:
        assert file.getframerate() == RATE_HZ
        samples = np.frombuffer(file.readframes(file.getnframes()), "<i2")
    spectrum = np.abs(np.fft.rfft(samples))
    heard_hz = float(np.argmax(spectrum)) * RATE_HZ / len(samples)
    # Five percent are two and a half semitones of the equal temperament, 2**(1/12) each.
    assert heard_hz == pytest.approx(660.0 * 2.0 ** (-2.5 / 12.0), abs=RATE_HZ / len(samples))
    assert pitch_hz(1000.0, 1000.0) > pitch_hz(980.0, 1000.0) > pitch_hz(900.0, 1000.0)


def test_a_zone_is_kept_in_the_job_under_its_name(stage: Stage) -> None:
    program, page = stage.program, stage.program.window.hunt.zones
    program.screen.hunt.tab = HuntTab.ZONES
    program.screen.go_to(Place.HUNT)
    stage.draw()
    assert not page.keep.isEnabled()
    for name, text in (("house_pa", "50"), ("zone_pa", "20"), ("flow_before", "1000"), ("zone_after_pa", "10")):
        program.intents.hunt_pages.type_zone(name, text)
    program.intents.hunt_pages.type_zone("flow_after", "1060")
    stage.draw()
    page.keep.click()
    stage.draw()
    assert any("Zone is empty" in item.sentence for item in program.window.notices.notices)
    page.named.emit("garage")
    page.keep.click()
    stage.draw()
    assert page.kept.text() == "Kept in this job: garage."
    job = program.desk.job
    assert job is not None
    (kept,) = kept_zones(job.house.entries)
    assert (kept.name, kept.question) == ("garage", program.screen.zones.question())
    # Read again, the newer readings stand in the place of the older.
    program.intents.hunt_pages.type_zone("zone_pa", "19")
    page.keep.click()
    page.again.click()
    stage.draw()
    assert [zone.question.zone_pa for zone in kept_zones(job.house.entries)] == [19.0]
    assert program.screen.zones.question() is None


def test_a_zone_is_walked_through_step_by_step() -> None:
    walk = ZoneWalk()
    assert walk.picture(SI).step.startswith("1 ")
    walk.read("house_pa", -50.0)
    walk.type_field("zone_pa", "20", SI)
    assert "The zone is" in walk.picture(SI).tables[0].rows[0].note
    assert walk.picture(SI).step.startswith("2 ")
    walk.type_field("flow_before", "1000", SI)
    assert walk.picture(SI).step.startswith("3 ")
    walk.type_field("zone_after_pa", "ten", SI)
    assert "ten" in walk.picture(SI).values["zone_after_pa"][2]
    walk.type_field("zone_after_pa", "10", SI)
    walk.read("flow_after", 1060.0)
    shown = walk.picture(SI)
    assert shown.step.startswith("4 ")
    # C_hz = dQ / ((P_h - P_z')**n - (P_h - P_z)**n), n 0.65: 60 / (40**0.65 - 30**0.65) = 32.2 (by hand).
    (row,) = [item for item in shown.tables[1].rows if item.cells[0].startswith("Leak between house and zone")]
    assert float(row.cells[1]) == pytest.approx(32.2, rel=0.03)
    # Drawn again nothing is worked out anew; in other units, or after another reading, it is.
    assert walk.picture(SI).tables is shown.tables
    assert walk.picture(US).tables != shown.tables
    # A hole to outdoors cannot raise the pressure of the zone: that is said, and nothing is lost.
    walk.type_field("zone_after_pa", "30", SI)
    assert "Read again" in walk.picture(SI).step
    assert walk.picture(US).values["flow_before"][1] == "cfm"
    walk.clear()
    assert walk.picture(SI).tables == ()
