"""What an app of 0.3 asks is answered by its own names; anybody else gets today's."""

from __future__ import annotations

import uuid
from typing import Any

import pytest
from flask.testing import FlaskClient
from problem import problem

API = "/api/v1"
CARD = f"{API}/cards/SHE7FA1"


@pytest.fixture
def client(make_app: Any) -> FlaskClient:
    return make_app().test_client()  # type: ignore[no-any-return]


def measured() -> dict[str, Any]:
    return {"id": str(uuid.uuid4()), "revision": 1, "step": 1, "measured_deg": 91}


def test_a_result_sent_by_its_old_name_is_kept_once_and_told_by_it(client: FlaskClient):
    sent = measured()
    first = client.post(f"{CARD}/trials", json=sent)
    assert first.status_code == 201
    assert first.get_json()["trial"]["id"] == sent["id"]
    again = client.post(f"{CARD}/results", json=sent)
    assert again.status_code == 200
    assert again.get_json()["result"] == first.get_json()["trial"]
    old, new = client.get(f"{CARD}/trials").get_json(), client.get(f"{CARD}/results").get_json()
    assert old["trials"] == new["results"]
    assert set(old) == {"trials", "total"}
    assert set(new) == {"results", "total"}


def test_a_page_of_old_names_is_asked_for_as_ever(client: FlaskClient):
    for _ in range(3):
        assert client.post(f"{CARD}/results", json=measured()).status_code == 201
    page = client.get(f"{CARD}/trials?limit=1&offset=1").get_json()
    whole = client.get(f"{CARD}/results").get_json()
    assert page == {"trials": whole["results"][1:2], "total": whole["total"]}


def test_a_press_screen_of_0_3_moves_and_is_told(client: FlaskClient):
    moved = client.put(f"{API}/benches/Big%20press", json={"code": "SHE7FA1", "step": 2})
    assert moved.status_code == 200
    seen = client.get(
        f"{API}/benches/Big%20press", headers={"If-None-Match": moved.headers["ETag"]}
    )
    assert seen.status_code == 304
    assert client.get(f"{API}/press-screens/Big%20press").get_json() == moved.get_json()
    assert client.get(f"{API}/benches").get_json() == {"benches": [moved.get_json()]}
    assert client.get(f"{API}/press-screens").get_json() == {"press_screens": [moved.get_json()]}
    assert client.delete(f"{API}/benches/Big%20press").status_code == 204


def test_backups_by_their_old_name(client: FlaskClient):
    old, new = client.get(f"{API}/copies").get_json(), client.get(f"{API}/backups").get_json()
    assert old["copies"] == new["backups"]
    assert "backups" not in old
    assert "copies" not in new


def test_what_is_refused_is_refused_alike(client: FlaskClient):
    problem(client.post(f"{CARD}/trials", json={**measured(), "step": 99}), 422, "step")
    problem(client.get(f"{API}/benches/1"), 404)
    problem(client.get(f"{API}/cards/SHE7FA1/trials/1"), 404)
    problem(client.post(f"{API}/benches", json={}), 405)
