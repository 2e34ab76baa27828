"""The page on the phone: shows numbers with their age, and refuses everything that is not a phone with the link."""

from __future__ import annotations

import json
import socket
from collections.abc import Iterator
from contextlib import suppress
from dataclasses import replace
from datetime import UTC, datetime
from http.client import HTTPConnection, HTTPResponse
from pathlib import Path

import pytest

import airseam
from acquisition.holding import held_plan
from acquisition.phone import HelperNumbers, HelperView, PhoneServer
from acquisition.phone.numbers import helper_numbers
from acquisition.phone.page import STALE_S, page
from acquisition.phone.server import COOKIE, LONGEST_S, MOST_PHONES
from analysis.errors import InvalidInput
from analysis.units import Display, Quantity, System, format_value
from drivers.clock import VirtualClock, seconds
from tests.acquisition.scenes import a_scene

HERE = "127.0.0.1"


@pytest.fixture
def clock() -> VirtualClock:
    return VirtualClock(datetime(2026, 5, 4, 9, 0, tzinfo=UTC))


@pytest.fixture
def server(clock: VirtualClock) -> Iterator[PhoneServer]:
    view = HelperView(clock)
    view.show(HelperNumbers("1 287", "m³/h", "−1.9 %", "−50.1 Pa", "Held"))
    found = PhoneServer(view, clock, HERE, page())
    yield found
    found.stop()


def ask(server: PhoneServer, path: str, method: str = "GET", **headers: str) -> HTTPResponse:
    connection = HTTPConnection(server.host, timeout=5.0)
    connection.request(method, path, headers=headers)
    answer = connection.getresponse()
    answer.read()
    connection.close()
    return answer


def stream(server: PhoneServer) -> tuple[HTTPConnection, HTTPResponse]:
    connection = HTTPConnection(server.host, timeout=5.0)
    connection.request("GET", "/stream", headers={"Cookie": f"{COOKIE}={server.token}"})
    return connection, connection.getresponse()


def first_numbers(answer: HTTPResponse) -> dict[str, object]:
    while not (line := answer.readline()).startswith(b"data: "):
        assert line
    found: dict[str, object] = json.loads(line[6:])
    return found


def test_the_link_leads_to_the_page_and_the_page_to_numbers(server: PhoneServer, clock: VirtualClock) -> None:
    let_in = ask(server, f"/?t={server.token}")
    assert (let_in.status, let_in.getheader("Location")) == (303, "/")
    cookie = let_in.getheader("Set-Cookie") or ""
    assert "HttpOnly" in cookie
    assert "SameSite=Strict" in cookie
    page = ask(server, "/", Cookie=cookie.split(";")[0])
    assert page.status == 200
    assert "default-src 'none'" in (page.getheader("Content-Security-Policy") or "")
    assert page.getheader("Cache-Control") == "no-store"
    clock.wait_until(clock.now_ns() + seconds(3.0))
    connection, answer = stream(server)
    numbers = first_numbers(answer)
    assert server.phones == 1
    connection.close()
    answer.close()
    assert (numbers["flow"], numbers["change"], numbers["pressure"]) == ("1 287", "−1.9 %", "−50.1 Pa")
    # What the page greys out by: old numbers say how old they are.
    assert numbers["age_s"] == pytest.approx(3.0)


def test_the_page_is_small_and_knows_when_numbers_are_old() -> None:
    assert len(page()) < 20_000
    assert f"old<{STALE_S:g}".encode() in page()
    assert b"http" not in page().replace(b"</html>", b"")


def test_words_of_another_language_stay_words_and_leave_the_script_as_the_policy_names_it() -> None:
    other = page(lambda text: f'"><script>{text}&', "de", ",")
    assert b'"><script>' not in other
    assert b"&quot;&gt;&lt;script&gt;Flow now&amp;" in other
    assert b'data-mark=","' in other
    assert other.partition(b"<script>")[2] == page().partition(b"<script>")[2]


@pytest.mark.parametrize("path", ["/?t=wrong", "/", "/stream", "/?t=%C3%A9"])
def test_nobody_comes_in_without_the_token(server: PhoneServer, path: str) -> None:
    assert ask(server, path).status == 403
    assert ask(server, path, Cookie=f"{COOKIE}=wrong").status == 403


def test_another_host_is_refused(server: PhoneServer) -> None:
    assert ask(server, f"/?t={server.token}", Host="elsewhere.example").status == 403


@pytest.mark.parametrize("method", ["POST", "PUT", "DELETE", "HEAD", "OPTIONS", "get"])
def test_any_method_but_get_is_refused(server: PhoneServer, method: str) -> None:
    assert ask(server, f"/?t={server.token}", method).status == 405


def test_there_are_no_files(server: PhoneServer) -> None:
    for path in ("/etc/passwd", "/../../etc/passwd", "/page.py"):
        assert ask(server, path, Cookie=f"{COOKIE}={server.token}").status == 404


def test_the_ninth_phone_is_refused_and_the_eighth_is_not(server: PhoneServer) -> None:
    phones = [stream(server) for _ in range(MOST_PHONES)]
    assert [answer.status for _, answer in phones] == [200] * MOST_PHONES
    ninth, answer = stream(server)
    assert answer.status == 503
    for connection, open_answer in [*phones, (ninth, answer)]:
        open_answer.close()
        connection.close()


@pytest.mark.parametrize("noise", [b"\x00\xff\n\n", b"GET\r\n\r\n", b"GET " + b"a" * 9000, b"GET / HTTP/9.9\r\n\r\n"])
def test_noise_does_no_harm(server: PhoneServer, noise: bytes) -> None:
    host, port = server.host.split(":")
    with socket.create_connection((host, int(port)), timeout=5.0) as wire, suppress(ConnectionError):
        wire.sendall(noise)
        while wire.recv(4096):
            pass
    assert ask(server, f"/?t={server.token}").status == 303


def test_it_ends_after_four_hours(server: PhoneServer, clock: VirtualClock) -> None:
    clock.wait_until(clock.now_ns() + seconds(LONGEST_S))
    assert server.ended
    assert ask(server, f"/?t={server.token}").status == 410


@pytest.mark.parametrize("host", ["0.0.0.0", "8.8.8.8", "example.org", ""])
def test_only_a_private_address_is_listened_at(clock: VirtualClock, host: str) -> None:
    with pytest.raises(InvalidInput, match="private address"):
        PhoneServer(HelperView(clock), clock, host, page())


def test_each_server_has_a_token_of_its_own(server: PhoneServer, clock: VirtualClock) -> None:
    other = PhoneServer(HelperView(clock), clock, HERE, page())
    other.stop()
    assert other.token != server.token


def test_a_held_pressure_is_shown_in_the_units_of_the_laptop(clock: VirtualClock, tmp_path: Path) -> None:
    with a_scene(clock, tmp_path) as scene:
        scene.begin(held_plan(replace(scene.plan(), zero_s=5.0), -50.0))
        first = helper_numbers(scene.pass_time(3.0), Display(System.SI))
        seen = scene.until(lambda s: s.held is not None and s.held.change is not None)
        si, us = (helper_numbers(seen, Display(system)) for system in (System.SI, System.US))
    assert (first.flow, first.change) == ("–", "–")
    assert seen.held is not None
    assert si.flow == format_value(seen.held.flow_m3_h or 0.0, Quantity.FLOW, Display(System.SI))
    assert (si.unit, us.unit) == ("m³/h", "cfm")
    assert si.flow != us.flow
    assert si.pressure.startswith("−")
    assert si.change.endswith(" %")


def test_the_terminal_refuses_an_address_of_others(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    call = [
        "test",
        "--rig",
        "sim:mill-row",
        "--job",
        str(tmp_path / "a.airseam"),
        "--hold",
        "-50",
        "--phone",
        "8.8.8.8",
    ]
    assert airseam.main(call) == 2
    assert "private address of this machine is needed" in capsys.readouterr().err
    assert not (tmp_path / "a.airseam").exists()
