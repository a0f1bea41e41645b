"""Every address against every role: 401 for who is not paired, 403 for who may not, else let in."""

from __future__ import annotations

import shutil
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import timedelta
from pathlib import Path

import pytest
from flask import Flask
from flask.testing import FlaskClient
from problem import problem
from werkzeug.routing import Rule

from flangebook.api import roles
from flangebook.api.app import close_app, create_app
from flangebook.api.caller import WAY_KEY, cookie_name
from flangebook.api.config import Config, Network
from flangebook.shop import crew, options
from flangebook.shop.store import Store

NETWORK = Network("Oak & Iron", ("https://oak-iron.local:8418",), ("http://192.168.1.20:8419",))
WAYS = {"https": "8418", "http": "8419", "proxy": "443"}
# Written down again, address by address: who may ask, by the words. Nothing here is
# taken from the table in the code.
READS = {"bench", "operator", "owner"}
WORKS = {"operator", "owner"}
OWNS = {"owner"}
EXPECTED: dict[str, set[str]] = {
    "GET /api/v1/cards": READS,
    "POST /api/v1/cards": OWNS,
    "GET /api/v1/cards/<code>": READS,
    "PUT /api/v1/cards/<code>": WORKS,
    "GET /api/v1/cards/<code>/fresh": READS,
    "GET /api/v1/cards/<code>/revisions": READS,
    "GET /api/v1/cards/<code>/revisions/<int:number>": READS,
    "GET /api/v1/cards/<code>/proposals": READS,
    "POST /api/v1/cards/<code>/proposals": WORKS,
    "GET /api/v1/press-screens": READS,
    "GET /api/v1/press-screens/<name>": READS,
    "PUT /api/v1/press-screens/<name>": READS,
    "DELETE /api/v1/press-screens/<name>": OWNS,
    "GET /api/v1/cards/<code>/results": READS,
    "POST /api/v1/cards/<code>/results": WORKS,
    "GET /api/v1/cards/<code>/runs": READS,
    "GET /api/v1/cards/<code>/runs.csv": READS,
    "POST /api/v1/cards/<code>/runs": WORKS,
    "GET /api/v1/cards/<code>/label.svg": READS,
    "GET /api/v1/cards/<code>/label.png": READS,
    "GET /api/v1/cards/<code>/qr.svg": READS,
    "GET /api/v1/cards/<code>/blank.svg": READS,
    "GET /api/v1/cards/<code>/blank.dxf": READS,
    "GET /api/v1/changes": READS,
    "GET /api/v1/export": OWNS,
    "GET /api/v1/backups": OWNS,
    "POST /api/v1/import": OWNS,
    "GET /api/v1/labels/sheet.json": WORKS,
    "GET /api/v1/labels/sheet.svg": WORKS,
    "GET /api/v1/labels/sheet.png": WORKS,
    "GET /api/v1/chart": WORKS,
    "GET /api/v1/press": READS,
    "GET /api/v1/punches": READS,
    "GET /api/v1/dies": READS,
    "GET /api/v1/holders": READS,
    "GET /api/v1/metals": READS,
    "PUT /api/v1/press": OWNS,
    "PUT /api/v1/punches": OWNS,
    "PUT /api/v1/dies": OWNS,
    "PUT /api/v1/holders": OWNS,
    "PUT /api/v1/metals": OWNS,
    "POST /api/v1/bend": WORKS,
    "POST /api/v1/stroke": WORKS,
    "POST /api/v1/plan": WORKS,
    "POST /api/v1/blank.svg": WORKS,
    "POST /api/v1/blank.dxf": WORKS,
    "POST /api/v1/outline": WORKS,
    "POST /api/v1/press/strip-test": WORKS,
    "GET /api/v1/press/gauge": WORKS,
    "POST /api/v1/outlines/dxf": WORKS,
    "GET /api/v1/test-bends": WORKS,
    "POST /api/v1/test-bends": OWNS,
    "GET /api/v1/learned": WORKS,
    "POST /api/v1/evidence/<evidence_id>/confirm": OWNS,
    "POST /api/v1/evidence/<evidence_id>/forget": OWNS,
    "POST /api/v1/evidence/<evidence_id>/remember": OWNS,
    "POST /api/v1/pairings": OWNS,
    "GET /api/v1/devices": OWNS,
    "PUT /api/v1/devices/<device_id>": OWNS,
    "DELETE /api/v1/devices/<device_id>": OWNS,
    "GET /api/v1/crew-options": OWNS,
    "PUT /api/v1/crew-options": OWNS,
}
OPEN = {
    "GET /api/v1/health",
    "GET /api/v1/me",
    "GET /api/v1/join",
    "GET /api/v1/authority.crt",
    "POST /api/v1/pair",
    "POST /api/v1/leave",
    "GET /api/openapi.json",
}
FILLED = {
    "<code>": "SHE7FA1",
    "<int:number>": "1",
    "<evidence_id>": "x",
    "<device_id>": "x",
    "<name>": "1",
}


@dataclass
class Crew:
    """A shop on a network, and a device's token for each role."""

    app: Flask
    store: Store
    tokens: dict[str, str]

    def client(self, role: str | None, way: str = "https", token: str = "") -> FlaskClient:
        """A device of that role; None: one that is not paired."""
        port = WAYS[way]
        name = "oak-iron.local" if way != "proxy" else "bend.example"
        made = self.app.test_client(use_cookies=False)
        made.environ_base.update(
            {WAY_KEY: way, "SERVER_PORT": port, "wsgi.url_scheme": "https", "REMOTE_ADDR": "::9"}
        )
        host = name if port == "443" else f"{name}:{port}"
        made.environ_base["HTTP_HOST"] = host
        held = token or (self.tokens[role] if role else "")
        if held:
            made.environ_base["HTTP_COOKIE"] = f"{cookie_name(way)}={held}"  # type: ignore[arg-type]
        return made


def pair(store: Store, role: crew.Role, way: str = "https") -> str:
    code = f"CODE{role}{way}"
    crew.offer(store, code, role, role, "test", timedelta(minutes=5))
    return crew.pair(store, code, "", way)[1]


@pytest.fixture(scope="module")
def shop(demo_data: Path, tmp_path_factory: pytest.TempPathFactory) -> Iterator[Crew]:
    folder = tmp_path_factory.mktemp("crew") / "shop"
    shutil.copytree(demo_data, folder)
    app = create_app(Config(folder, hosts=("oak-iron.local", "bend.example"), network=NETWORK))
    store = app.extensions["flangebook.store"]
    yield Crew(app, store, {role: pair(store, role) for role in crew.ROLES})
    close_app(app)


def rules(app: Flask) -> list[tuple[str, Rule]]:
    """Everything the API has, a method each."""
    found: list[Rule] = list(app.url_map.iter_rules())
    return [(m, rule) for rule in found for m in (rule.methods or set()) - {"HEAD", "OPTIONS"}]


def addresses(app: Flask) -> list[tuple[str, str]]:
    """Method and rule of everything the API has."""
    return sorted((method, rule.rule) for method, rule in rules(app))


def ask(client: FlaskClient, method: str, rule: str) -> int:
    path = rule
    for name, value in FILLED.items():
        path = path.replace(name, value)
    with client.open(path, method=method) as answer:
        if answer.status_code in (401, 403) and method != "HEAD":
            problem(answer, answer.status_code)
        return answer.status_code


def test_every_address_is_in_this_table_and_in_the_codes(shop: Crew):
    asked = {f"{method} {rule}" for method, rule in addresses(shop.app)}
    assert asked == set(EXPECTED) | OPEN
    endpoints = {rule.endpoint for rule in shop.app.url_map.iter_rules()}
    assert endpoints == set(roles.LEAST)


@pytest.mark.parametrize("role", [None, *crew.ROLES])
def test_each_role_gets_what_is_its_own_and_nothing_else(shop: Crew, role: str | None):
    client, wrong = shop.client(role), []
    for method, rule in addresses(shop.app):
        name = f"{method} {rule}"
        status = ask(client, method, rule)
        if name in OPEN or (role and role in EXPECTED[name]):
            good = status not in (401, 403) and status < 500
        else:
            good = status == (403 if role else 401)
        if not good:
            wrong.append((name, status))
        if name == "POST /api/v1/leave" and role:  # it did leave: pair again for what follows
            shop.tokens[role] = pair_again(shop, role)
            client = shop.client(role)
    assert wrong == []


@pytest.mark.parametrize("role", [None, *crew.ROLES])
def test_what_a_device_is_told_it_may_not_do_is_what_it_is_refused(shop: Crew, role: str | None):
    """The app leaves out what is named here: no more than the shop refuses, and no less."""
    endpoints = {rule.endpoint: f"{m} {rule.rule}" for m, rule in rules(shop.app)}
    told = shop.client(role).get("/api/v1/me").get_json()["refused"]
    assert set(told) <= set(endpoints) | {"cards.revise"}
    for endpoint, name in endpoints.items():
        if name in OPEN or (role and role in EXPECTED[name]):
            assert endpoint not in told
        else:
            assert told[endpoint] in EXPECTED[name]
    assert ("cards.revise" in told) == (role != "owner")


@pytest.mark.parametrize("role", crew.ROLES)
def test_every_answer_says_what_the_device_is_to_the_shop(shop: Crew, role: str):
    client = shop.client(role)
    for path in ("me", "changes", "devices", "nothing"):
        assert client.get(f"/api/v1/{path}").headers["Flangebook-Role"] == role
    assert "Flangebook-Role" not in shop.client(None).get("/api/v1/me").headers


def pair_again(shop: Crew, role: str) -> str:
    code = f"AGAIN{role}"
    crew.offer(shop.store, code, role, role, "test", timedelta(minutes=5))  # type: ignore[arg-type]
    return crew.pair(shop.store, code, "", "https")[1]


@pytest.mark.parametrize("method", ["HEAD", "OPTIONS"])
def test_other_methods_open_no_side_door(shop: Crew, method: str):
    client = shop.client(None)
    for rule in EXPECTED:
        path = rule.split()[1]
        status = ask(client, method, path)
        assert status in (401, 405), (method, rule, status)


def test_what_is_not_there_says_so_to_anybody_and_gives_nothing(shop: Crew):
    client = shop.client(None)
    for path in ("/api/v1/nothing", "/api/v2/cards", "/api/", "/api/v1/cards/"):
        assert client.get(path).status_code == 404


@pytest.mark.parametrize(
    "path",
    [
        "//api/v1/cards", "/api//v1/cards", "/API/v1/cards", "/api/v1/../v1/cards",
        "/%61pi/v1/cards", "/c/../api/v1/cards", "/api/v1/cards%2f", "/api/v1/cards;x",
    ],
)  # fmt: skip
def test_tricks_with_the_path_open_nothing(shop: Crew, path: str):
    with shop.client(None).get(path) as answer:
        assert answer.status_code in (400, 401, 403, 404, 308), path
        assert b"SHE7FA1" not in answer.data


@pytest.mark.parametrize(
    "token",
    ["x", "0" * 43, "'_OR_1=1_--", "%00", "a" * 5000, "null", "undefined"],
)
def test_forged_tokens_open_nothing(shop: Crew, token: str):
    assert shop.client("bench").get("/api/v1/cards").status_code == 200  # so the way is right
    body = problem(shop.client(None, token=token).get("/api/v1/cards"), 401, "pairing")
    assert body["errors"]["pairing"] == ["unknown"]


def test_the_hash_that_is_kept_is_no_token(shop: Crew):
    kept = [d.id for d in crew.listed(shop.store)]
    hashes = [crew.text_digest(t) for t in shop.tokens.values()]
    for token in [*kept, *hashes]:
        problem(shop.client(None, token=token).get("/api/v1/cards"), 401)


@pytest.mark.parametrize(
    ("came", "shown"), [("https", "http"), ("http", "https"), ("http", "proxy")]
)
def test_a_token_is_good_only_for_the_way_it_came(shop: Crew, came: str, shown: str):
    code = f"WAY{came}{shown}"
    crew.offer(shop.store, code, "operator", "", "test", timedelta(minutes=5))
    token = crew.pair(shop.store, code, "", came)[1]
    assert shop.client(None, came, token).get("/api/v1/cards").status_code == 200
    assert shop.client(None, shown, token).get("/api/v1/cards").status_code == 401


def test_a_request_that_came_by_no_door_is_nobodys(shop: Crew):
    made = shop.app.test_client()
    assert made.get("/api/v1/cards").status_code == 401
    assert made.get("/api/v1/me").get_json()["role"] is None


def test_a_header_can_not_name_the_way(shop: Crew):
    made = shop.client(None)
    for name in (WAY_KEY, WAY_KEY.replace(".", "-"), "X-Flangebook-Way"):
        answer = made.get("/api/v1/cards", headers={name: "loopback"})
        assert answer.status_code == 401


def test_an_operator_changes_the_note_and_nothing_else(shop: Crew):
    client = shop.client("operator")
    card = client.get("/api/v1/cards/SHE7FA1")
    etag = {"If-Match": card.headers["ETag"]}
    for change in ({"title": "Mine"}, {"archived": True}, {"note": "a", "replan": True}):
        problem(client.put("/api/v1/cards/SHE7FA1", json=change, headers=etag), 403, "role")
    kept = client.put("/api/v1/cards/SHE7FA1", json={"note": "Oil the die."}, headers=etag)
    assert kept.get_json()["note"] == "Oil the die."


def test_labels_can_be_left_open_and_nothing_else_opens(shop: Crew):
    client = shop.client(None)
    problem(client.get("/api/v1/cards/SHE7FA1"), 401)
    options.set_option(shop.store, options.LABELS_OPEN, True)
    try:
        assert client.get("/api/v1/cards/SHE7FA1").status_code == 200
        assert client.get("/api/v1/me").get_json()["labels_open"] is True
        for path in ("cards", "changes", "cards/SHE7FA1/revisions", "metals"):
            problem(client.get(f"/api/v1/{path}"), 401)
        problem(client.put("/api/v1/cards/SHE7FA1", json={"note": "x"}), 401)
    finally:
        options.set_option(shop.store, options.LABELS_OPEN, False)
