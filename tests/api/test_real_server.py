"""What only a real server shows: sockets, bodies that are too long, many clients at once."""

from __future__ import annotations

import json
import socket
from concurrent.futures import ThreadPoolExecutor
from typing import Any
from uuid import uuid4

import pytest
import requests

from serving.running import Running

BEND = {
    "metal": "mild-steel-cr",
    "thickness_mm": 2,
    "bend_length_mm": 500,
    "included_angle_deg": 90,
}


def refused(answer: requests.Response, status: int) -> dict[str, Any]:
    assert answer.status_code == status, answer.text[:300]
    assert answer.headers["Content-Type"] == "application/problem+json"
    body: dict[str, Any] = answer.json()
    assert body["status"] == status
    return body


def spoken(server: Running, text: bytes) -> tuple[int, bytes]:
    """What the server answers to these bytes, and that it then listens on."""
    with socket.create_connection(("127.0.0.1", server.port), timeout=20) as line:
        line.sendall(text)
        line.shutdown(socket.SHUT_WR)
        answer = b""
        while piece := line.recv(65536):
            answer += piece
    assert server.get("/api/v1/health").status_code == 200
    return int(answer.split(b" ")[1]), answer


def test_a_body_of_fifty_megabytes(server: Running):
    with requests.Session() as session:
        headers = {"Content-Type": "application/json"}
        for path in ("bend", "plan", "cards"):
            url = f"{server.address}api/v1/{path}"
            refused(session.post(url, data=b"x" * 50_000_000, headers=headers, timeout=60), 413)
        assert session.get(f"{server.address}api/v1/health", timeout=20).status_code == 200


def test_a_body_in_pieces_without_a_length(server: Running):
    def pieces(count: int) -> Any:
        yield json.dumps(BEND).encode()
        for _ in range(count):
            yield b" " * 100_000

    url = f"{server.address}api/v1/bend"
    headers = {"Content-Type": "application/json"}
    assert requests.post(url, data=pieces(1), headers=headers, timeout=20).status_code == 200
    refused(requests.post(url, data=pieces(100), headers=headers, timeout=60), 413)


@pytest.mark.parametrize("length", [b"-5", b"abc", b"1e3", b"99999999999999999999"])
def test_a_length_that_is_none(server: Running, length: bytes):
    head = b"POST /api/v1/bend HTTP/1.1\r\nHost: 127.0.0.1:%d\r\n" % server.port
    rest = b"Content-Type: application/json\r\nContent-Length: %s\r\n\r\n{}" % length
    status, _ = spoken(server, head + rest)
    assert 400 <= status < 500


def test_a_body_cut_off(server: Running):
    head = b"POST /api/v1/bend HTTP/1.1\r\nHost: 127.0.0.1:%d\r\n" % server.port
    rest = b'Content-Type: application/json\r\nContent-Length: 5000\r\n\r\n{"metal": "mild'
    status, _ = spoken(server, head + rest)
    assert status == 400


def test_a_name_pointed_at_loopback(server: Running):
    text = b"GET /api/v1/cards HTTP/1.1\r\nHost: evil.example\r\nConnection: close\r\n\r\n"
    status, answer = spoken(server, text)
    assert status == 403
    assert b"SHE7FA1" not in answer


def test_no_host_at_all(server: Running):
    status, answer = spoken(server, b"GET /api/v1/cards HTTP/1.0\r\n\r\n")
    assert status in (400, 403)
    assert b"SHE7FA1" not in answer


def test_another_sites_page(server: Running):
    url = f"{server.address}api/v1/cards"
    refused(requests.get(url, headers={"Sec-Fetch-Site": "cross-site"}, timeout=20), 403)
    headers = {"Origin": "http://evil.example"}
    refused(requests.post(url, json={}, headers=headers, timeout=20), 403)
    preflight = {**headers, "Access-Control-Request-Method": "PUT"}
    answer = requests.options(url, headers=preflight, timeout=20)
    assert "Access-Control-Allow-Origin" not in answer.headers


def test_a_form_post(server: Running):
    url = f"{server.address}api/v1/cards"
    refused(requests.post(url, data={"title": "x"}, timeout=20), 415)
    refused(requests.post(url, files={"file": b"x"}, timeout=20), 415)


def test_the_wrong_method_keeps_its_allow(server: Running):
    answer = requests.delete(f"{server.address}api/v1/cards", timeout=20)
    refused(answer, 405)
    assert answer.headers["Allow"] == "GET, HEAD, OPTIONS, POST"


def test_many_clients_at_once_get_the_same(server: Running):
    def ask(_: int) -> tuple[str, str]:
        with requests.Session() as session:
            bend = session.post(f"{server.address}api/v1/bend", json=BEND, timeout=60)
            card = session.get(f"{server.address}api/v1/cards/SHE7FA1", timeout=60)
            return bend.text, card.text

    with ThreadPoolExecutor(8) as threads:
        assert len(set(threads.map(ask, range(40)))) == 1


@pytest.mark.parametrize("by_etag", [True, False])
def test_a_change_sent_again_before_the_first_is_answered_is_one_change(
    server: Running, by_etag: bool
):
    """As a phone does that gave up waiting, or that has two tabs."""
    url = f"{server.address}api/v1/cards/ZRA2CKX"
    with ThreadPoolExecutor(4) as threads:
        for turn in range(30):
            card = requests.get(url, timeout=60).json()
            change = {"id": str(uuid4()), "note": f"{turn} {by_etag}"}
            match = card["etag"]
            if not by_etag:
                change["after"], match = card["revision_id"], "*"

            def send(_: int, change=change, match=match) -> requests.Response:
                return requests.put(url, json=change, headers={"If-Match": match}, timeout=60)

            answers = list(threads.map(send, range(4)))
            assert [one.status_code for one in answers] == [200] * 4
            assert {one.json()["revision"] for one in answers} == {card["revision"] + 1}


def test_the_export_comes_whole(server: Running):
    body = requests.get(f"{server.address}api/v1/export", timeout=60).json()
    assert len(body["cards"]) >= 8
