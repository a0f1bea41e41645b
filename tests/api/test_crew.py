"""Pairing, the list of devices, and what keeps guessing out."""

from __future__ import annotations

import hashlib
import json
from collections.abc import Callable
from datetime import UTC, datetime, timedelta
from typing import Any
from uuid import uuid4

import pytest
import sqlalchemy as sa
from flask import Flask
from flask.testing import FlaskClient
from problem import problem
from test_roles import NETWORK, WAYS

from flangebook.api.attempts import Attempts
from flangebook.api.caller import WAY_KEY
from flangebook.labels.codes import ALPHABET
from flangebook.shop import crew
from flangebook.shop.errors import FullError
from flangebook.shop.storage.database import reading, writing
from flangebook.shop.storage.tables import options, pairings
from flangebook.shop.storage.writing import text_digest


@pytest.fixture
def app(make_app: Callable[..., Flask]) -> Flask:
    return make_app(empty=True, hosts=("oak-iron.local",), network=NETWORK)


@pytest.fixture
def owner(app: Flask) -> FlaskClient:
    """The owner at the server's own screen."""
    made = app.test_client()
    made.environ_base[WAY_KEY] = "loopback"
    return made


@pytest.fixture
def phone(app: Flask) -> FlaskClient:
    made = app.test_client()
    made.environ_base.update(
        {WAY_KEY: "https", "SERVER_PORT": WAYS["https"], "HTTP_HOST": "oak-iron.local:8418",
         "wsgi.url_scheme": "https"}
    )  # fmt: skip
    return made


def offer(owner: FlaskClient, role: str = "operator", name: str = "") -> dict[str, str]:
    answer = owner.post("/api/v1/pairings", json={"role": role, "name": name})
    assert answer.status_code == 201, answer.text
    body: dict[str, str] = answer.get_json()
    return body


def test_an_offer_is_a_code_an_address_and_its_qr(owner: FlaskClient):
    made = offer(owner, "bench", "Big screen")
    plain = made["code"].replace("-", "")
    assert len(plain) == 8
    assert set(plain) <= set(ALPHABET)
    assert made["address"] == f"https://oak-iron.local:8418/pair#{plain}"
    assert made["qr"].startswith("<svg")
    lasts = datetime.fromisoformat(made["expires_at"]) - datetime.now(UTC)
    assert timedelta(minutes=9) < lasts <= timedelta(minutes=10)


def test_a_device_takes_it_once_and_is_listed(owner: FlaskClient, phone: FlaskClient, app: Flask):
    made = offer(owner, "operator", "Ann's phone")
    typed = made["code"].lower().replace("0", "o").replace("1", "l")
    device = phone.post("/api/v1/pair", json={"code": typed}).get_json()
    assert (device["name"], device["role"], device["own"]) == ("Ann's phone", "operator", True)
    assert phone.get("/api/v1/me").get_json()["role"] == "operator"
    listed = owner.get("/api/v1/devices").get_json()["devices"]
    assert [one["name"] for one in listed] == ["Ann's phone"]
    assert listed[0]["own"] is False
    assert "token" not in str(listed)
    problem(app_client(app).post("/api/v1/pair", json={"code": made["code"]}), 410, "code")


def app_client(app: Flask, address: str = "192.168.1.50") -> FlaskClient:
    made = app.test_client()
    made.environ_base.update(
        {WAY_KEY: "https", "SERVER_PORT": "8418", "HTTP_HOST": "oak-iron.local:8418",
         "wsgi.url_scheme": "https", "REMOTE_ADDR": address}
    )  # fmt: skip
    return made


def test_a_name_of_the_devices_own_goes_first(owner: FlaskClient, phone: FlaskClient):
    made = offer(owner, "operator", "somebody")
    device = phone.post("/api/v1/pair", json={"code": made["code"], "name": "Ben's"}).get_json()
    assert device["name"] == "Ben's"


def test_an_old_code_is_too_old(app: Flask, phone: FlaskClient):
    store = app.extensions["flangebook.store"]
    ago = datetime.now(UTC) - timedelta(minutes=11)
    crew.offer(store, "ABCD1234", "owner", "", "x", timedelta(minutes=10), lambda: ago)
    problem(phone.post("/api/v1/pair", json={"code": "ABCD-1234"}), 410, "code")


@pytest.mark.parametrize("code", ["ZZZZZZZZ", "0", "ABCD-123", "é", "' OR 1=1 --"])
def test_a_wrong_code_is_said(phone: FlaskClient, code: str):
    body = problem(phone.post("/api/v1/pair", json={"code": code}), 404, "code")
    assert "no such" in body["detail"]


@pytest.mark.parametrize(
    ("body", "field"),
    [({}, "code"), ({"code": ""}, "code"), ({"code": 5}, "code"),
     ({"code": "A", "name": "x" * 41}, "name"), ({"code": "A", "role": "owner"}, "role")],
)  # fmt: skip
def test_what_is_no_pairing_is_refused_by_field(phone: FlaskClient, body: object, field: str):
    problem(phone.post("/api/v1/pair", json=body), 422, field)


def test_guessing_is_stopped_by_address_and_keeps_nobody_else_out(app: Flask, owner: FlaskClient):
    one = app_client(app, "192.168.1.66")
    codes = [one.post("/api/v1/pair", json={"code": f"WRONG{i:03}"}).status_code for i in range(6)]
    assert codes == [404] * 5 + [429]
    waiting = one.post("/api/v1/pair", json={"code": offer(owner)["code"]})
    problem(waiting, 429)
    assert 0 < int(waiting.headers["Retry-After"]) <= 60
    assert (
        app_client(app, "192.168.1.67").post("/api/v1/pair", json={"code": "X"}).status_code == 404
    )
    for address in range(70, 100):
        wrong = app_client(app, f"192.168.1.{address}").post("/api/v1/pair", json={"code": "X"})
        problem(wrong, 404)
    right = app_client(app, "192.168.1.9").post("/api/v1/pair", json={"code": offer(owner)["code"]})
    assert right.status_code == 200


def test_tries_age_and_right_ones_are_forgiven():
    moment = [0.0]
    attempts = Attempts(2, 60.0, lambda: moment[0])
    assert [attempts.wait_s("a") for _ in range(3)] == [0.0, 0.0, 60.0]
    moment[0] = 59.0
    assert attempts.wait_s("a") == 1.0
    moment[0] = 61.0
    for _ in range(5):
        assert attempts.wait_s("a") == 0.0
        attempts.forgive("a")


def test_turned_out_is_out_and_stays_on_the_list(owner: FlaskClient, phone: FlaskClient):
    device = phone.post("/api/v1/pair", json={"code": offer(owner)["code"]}).get_json()
    gone = owner.delete(f"/api/v1/devices/{device['id']}").get_json()
    assert gone["revoked_at"]
    assert owner.delete(f"/api/v1/devices/{device['id']}").get_json() == gone
    body = problem(phone.get("/api/v1/cards"), 401, "pairing")
    assert body["errors"]["pairing"] == ["revoked"]
    assert phone.get("/api/v1/me").get_json()["why"] == "revoked"
    problem(owner.delete("/api/v1/devices/nobody"), 404)


def test_another_role_counts_from_the_next_request(owner: FlaskClient, phone: FlaskClient):
    device = phone.post("/api/v1/pair", json={"code": offer(owner, "bench")["code"]}).get_json()
    problem(phone.get("/api/v1/learned?metal=mild-steel-cr"), 403, "role")
    changed = owner.put(f"/api/v1/devices/{device['id']}", json={"role": "operator", "name": "B"})
    assert (changed.get_json()["role"], changed.get_json()["name"]) == ("operator", "B")
    assert phone.get("/api/v1/learned?metal=mild-steel-cr").status_code == 200
    problem(owner.put(f"/api/v1/devices/{device['id']}", json={}), 422)
    problem(owner.put(f"/api/v1/devices/{device['id']}", json={"role": "king"}), 422, "role")
    problem(owner.put("/api/v1/devices/x", json={"name": "B"}), 404)


def test_leaving_takes_the_cookie_back(owner: FlaskClient, phone: FlaskClient):
    phone.post("/api/v1/pair", json={"code": offer(owner)["code"]})
    gone = phone.post("/api/v1/leave")
    assert gone.status_code == 204
    assert "Max-Age=0" in gone.headers["Set-Cookie"]
    problem(phone.get("/api/v1/cards"), 401)


@pytest.mark.slow
def test_there_is_a_bound_on_open_offers(app: Flask, owner: FlaskClient):
    for _ in range(crew.MOST_OFFERS):
        offer(owner)
    problem(owner.post("/api/v1/pairings", json={"role": "owner"}), 409)


def test_there_is_a_bound_on_devices(app: Flask, monkeypatch: pytest.MonkeyPatch):
    store = app.extensions["flangebook.store"]
    monkeypatch.setattr(crew, "MOST_DEVICES", 2)
    for number in range(2):
        crew.offer(store, f"C{number}", "bench", "", "x", timedelta(minutes=1))
        crew.pair(store, f"C{number}", "", "https")
    crew.offer(store, "C3", "bench", "", "x", timedelta(minutes=1))
    with pytest.raises(FullError):
        crew.pair(store, "C3", "", "https")
    crew.revoke(store, crew.listed(store)[0].id)
    assert crew.pair(store, "C3", "", "https")[0].role == "bench"


def test_a_shop_for_its_own_machine_offers_no_pairing(client: FlaskClient):
    body = problem(client.post("/api/v1/pairings", json={"role": "operator"}), 409)
    assert "--lan" in body["detail"]
    problem(client.post("/api/v1/pair", json={"code": "X"}), 409)
    problem(client.get("/api/v1/join"), 404)
    problem(client.get("/api/v1/authority.crt"), 404)
    assert client.get("/api/v1/me").get_json() == {
        "role": "owner", "name": "", "way": "loopback", "why": "", "network": False,
        "labels_open": False, "refused": {},
    }  # fmt: skip


def test_the_owners_own_screen_does_not_pair(owner: FlaskClient):
    problem(owner.post("/api/v1/pair", json={"code": offer(owner)["code"]}), 409)


def test_a_switch_is_kept(owner: FlaskClient):
    assert owner.get("/api/v1/crew-options").get_json() == {"labels_open": False}
    assert owner.put("/api/v1/crew-options", json={"labels_open": True}).status_code == 200
    assert owner.get("/api/v1/crew-options").get_json() == {"labels_open": True}
    problem(owner.put("/api/v1/crew-options", json={"labels_open": "yes"}), 422, "labels_open")


def test_the_device_s_own_name_is_recorded_beside_what_is_typed(
    app: Flask, owner: FlaskClient, phone: FlaskClient, angle: dict[str, Any]
):
    code = offer(owner, "owner", "Ada's phone")["code"]
    assert phone.post("/api/v1/pair", json={"code": code}).status_code == 200
    card = phone.post("/api/v1/cards", json={"part": angle, "by": "Bob"}).get_json()
    path = f"/api/v1/cards/{card['code']}"
    result = {"id": str(uuid4()), "revision": 1, "step": 1, "measured_deg": 91, "by": "Bob"}
    for _ in range(2):  # sent again, it is the same
        made = phone.post(f"{path}/results", json=result).get_json()["result"]
        assert (made["by"], made["device"]) == ("Bob", "Ada's phone")
    edit = {"note": "At the server", "by": "Bob"}
    assert owner.put(path, json=edit, headers={"If-Match": "*"}).status_code == 200
    history = owner.get(f"{path}/revisions").get_json()["revisions"]
    assert [(one["by"], one["device"]) for one in history] == [("Bob", ""), ("Bob", "Ada's phone")]
    assert owner.get(f"{path}/revisions/1").get_json()["device"] == "Ada's phone"
    answer = phone.get("/api/v1/metals")
    metals, etag = answer.get_json()["metals"], answer.headers["ETag"]
    metals[0]["note"] = "Rack 3"
    sent = {"metals": metals, "by": "Bob"}
    assert phone.put("/api/v1/metals", json=sent, headers={"If-Match": etag}).status_code == 200
    newest = owner.get("/api/v1/export").get_json()["documents"][-1]
    assert (newest["by"], newest["device"]) == ("Bob", "Ada's phone")


def test_an_owner_is_not_paired_over_plain_http(app: Flask, owner: FlaskClient, phone: FlaskClient):
    plain = app_client(app)
    plain.environ_base.update(
        {WAY_KEY: "http", "SERVER_PORT": "8419", "HTTP_HOST": "oak-iron.local:8419",
         "wsgi.url_scheme": "http"}
    )  # fmt: skip
    code = offer(owner, "owner")["code"]
    refused = problem(plain.post("/api/v1/pair", json={"code": code}), 403, "code")
    assert "https" in refused["detail"]
    assert phone.post("/api/v1/pair", json={"code": code}).status_code == 200  # not used up
    code = offer(owner, "operator")["code"]
    device = plain.post("/api/v1/pair", json={"code": code}).get_json()
    problem(owner.put(f"/api/v1/devices/{device['id']}", json={"role": "owner"}), 409, "role")
    assert plain.get("/api/v1/me").get_json()["role"] == "operator"


def test_a_code_is_kept_as_a_slow_hash_of_this_shop_alone(app: Flask, owner: FlaskClient):
    store = app.extensions["flangebook.store"]
    code = offer(owner)["code"].replace("-", "")
    with reading(store.engine) as connection:
        (kept,) = connection.execute(sa.select(pairings.c.code_hash)).scalars()
        salt = json.loads(connection.execute(sa.select(options.c.value)).scalar_one())
    assert text_digest(code) != kept
    again = hashlib.scrypt(code.encode(), salt=bytes.fromhex(salt), n=2**14, r=8, p=1, dklen=32)
    assert kept == f"scrypt:{again.hex()}"


def test_a_code_that_an_older_release_offered_still_pairs(app: Flask, phone: FlaskClient):
    store = app.extensions["flangebook.store"]
    at = "2999-01-01T00:00:00.000Z"
    with writing(store.engine) as connection:
        connection.execute(
            sa.insert(pairings).values(
                code_hash=text_digest("ABCD1234"), role="operator", name="", offered_at=at,
                offered_by="x", expires_at=at,
            )
        )  # fmt: skip
    assert phone.post("/api/v1/pair", json={"code": "ABCD-1234"}).status_code == 200
    assert phone.post("/api/v1/pair", json={"code": "ABCD-1234"}).status_code == 410
