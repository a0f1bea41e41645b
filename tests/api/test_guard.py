"""No web page of someone else's reaches the shop behind the owner's back."""

from __future__ import annotations

from collections.abc import Callable

import pytest
from flask import Flask
from flask.testing import FlaskClient
from problem import problem

from flangebook.api.guard import known_host

HERE = {"Host": "127.0.0.1:8417"}
PORT = {"SERVER_PORT": "8417"}
READ = "/api/v1/cards"


@pytest.mark.parametrize(
    "host", ["127.0.0.1:8417", "localhost:8417", "LocalHost:8417", "[::1]:8417", "127.9.9.9:8417"]
)
def test_loopback_names_with_the_right_port_are_ours(host: str):
    assert known_host(host, "8417", frozenset())


@pytest.mark.parametrize(
    "host",
    [
        "",
        "evil.example",
        "evil.example:8417",
        "127.0.0.1",
        "127.0.0.1:80",
        "localhost.evil.example:8417",
        "127.0.0.1.evil.example:8417",
        "evil.example@127.0.0.1:8417",
        "127.0.0.1:8417@evil.example",
        "127.0.0.1:8417/x",
        "192.168.1.5:8417",
        "0.0.0.0:8417",
        "[::2]:8417",
        "127.0.0.1:84171",
        "127.0.0.1:port",
        "[::1:8417",
        "shop.home.arpa:8417",
    ],
)
def test_other_names_are_not(host: str):
    assert not known_host(host, "8417", frozenset())


def test_a_name_from_the_settings_is_ours():
    assert known_host("Shop.Home.ARPA:8417", "8417", frozenset({"shop.home.arpa"}))


@pytest.mark.parametrize("path", ["/", "/c/SHE7FA1", READ, "/api/openapi.json", "/nowhere"])
def test_a_name_pointed_at_loopback_gets_nothing(reader: FlaskClient, path: str):
    headers = {"Host": "evil.example:8417"}
    problem(reader.get(path, headers=headers, environ_overrides=PORT), 403)


@pytest.mark.parametrize("host", HERE.values())
def test_our_own_page_may_read_and_write(client: FlaskClient, host: str):
    headers = {"Host": host, "Origin": f"http://{host}", "Sec-Fetch-Site": "same-origin"}
    assert client.get(READ, headers=headers, environ_overrides=PORT).status_code == 200
    answer = client.post("/api/v1/bend", headers=headers, environ_overrides=PORT, json={})
    assert answer.status_code == 422


@pytest.mark.parametrize(
    "headers",
    [
        {"Origin": "http://evil.example"},
        {"Origin": "null"},
        {"Origin": ""},
        {"Origin": "http://127.0.0.1:9999"},
        {"Origin": "http://localhost:8417"},
        {"Origin": "https://127.0.0.1:8417"},
        {"Sec-Fetch-Site": "cross-site"},
        {"Sec-Fetch-Site": "same-site"},
        {"Origin": "http://127.0.0.1:8417", "Sec-Fetch-Site": "cross-site"},
    ],
)
@pytest.mark.parametrize("method", ["GET", "POST", "PUT", "DELETE", "OPTIONS"])
def test_another_sites_page_is_refused(reader: FlaskClient, headers: dict[str, str], method: str):
    answer = reader.open(READ, method=method, headers={**HERE, **headers}, environ_overrides=PORT)
    problem(answer, 403)
    assert "Access-Control-Allow-Origin" not in answer.headers


def test_a_link_from_elsewhere_still_opens_the_page(reader: FlaskClient):
    """A QR code or a mail with the card's address leads to the page, which then asks itself."""
    headers = {**HERE, "Sec-Fetch-Site": "cross-site", "Sec-Fetch-Mode": "navigate"}
    assert reader.get("/c/SHE7FA1", headers=headers, environ_overrides=PORT).status_code == 200


def test_programs_without_a_browser_need_no_origin(reader: FlaskClient):
    assert reader.get(READ, headers=HERE, environ_overrides=PORT).status_code == 200


def test_pages_run_our_own_scripts_only(reader: FlaskClient):
    policy = reader.get("/").headers["Content-Security-Policy"]
    rules = dict(rule.split(" ", 1) for rule in policy.split("; "))
    assert rules["default-src"] == "'none'"
    assert rules["script-src"] == "'self' 'wasm-unsafe-eval'"  # for the compiled QR reader
    assert rules["style-src"] == "'self'"
    assert "'unsafe-" not in policy
    assert rules["frame-ancestors"] == "'none'"


@pytest.mark.parametrize("path", ["/", READ, "/nowhere", "/api/v1/cards/SHE7FA1/label.svg"])
def test_every_answer_is_dressed(reader: FlaskClient, path: str):
    headers = reader.get(path).headers
    assert headers["X-Content-Type-Options"] == "nosniff"
    assert headers["X-Frame-Options"] == "DENY"
    assert headers["Cross-Origin-Resource-Policy"] == "same-origin"
    assert headers["Referrer-Policy"] == "same-origin"
    assert "script-src 'unsafe" not in headers["Content-Security-Policy"]


def test_a_drawing_opened_by_itself_runs_nothing(reader: FlaskClient):
    headers = reader.get("/api/v1/cards/SHE7FA1/label.svg").headers
    assert "default-src 'none'" in headers["Content-Security-Policy"]
    assert "sandbox" in headers["Content-Security-Policy"]


def test_names_from_the_settings_reach_the_app(make_app: Callable[..., Flask]):
    app = make_app(hosts=("shop.home.arpa",))
    answer = app.test_client().get(READ, headers={"Host": "shop.home.arpa"})
    assert answer.status_code == 200
