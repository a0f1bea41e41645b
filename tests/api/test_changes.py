"""What a phone needs to be complete without the network; and the whole shop as one document."""

from __future__ import annotations

import gzip
import json
import uuid
from collections.abc import Callable
from typing import Any

import pytest
from flask import Flask
from flask.testing import FlaskClient

from flangebook.shop import changes

FEED = "/api/v1/changes"


def feed(client: FlaskClient, since: str = "", limit: int = 100) -> dict[str, Any]:
    answer = client.get(FEED, query_string={"since": since, "limit": limit})
    assert answer.status_code == 200
    body: dict[str, Any] = answer.get_json()
    return body


def all_cards(client: FlaskClient) -> dict[str, Any]:
    listed = client.get("/api/v1/cards?limit=200&archived=all").get_json()["cards"]
    return {c["code"]: client.get(f"/api/v1/cards/{c['code']}").get_json() for c in listed}


def test_the_first_round_gives_everything(client: FlaskClient):
    body = feed(client)
    assert {c["code"]: c for c in body["cards"]} == all_cards(client)
    assert body["more"] is body["reset"] is False
    for name in ("press", "punches", "dies", "holders", "metals"):
        answer = client.get(f"/api/v1/{name}")
        assert body["shop"][name] == answer.get_json()[name]
        assert body["shop"]["etags"][name] == answer.headers["ETag"]


def test_pages_add_up(client: FlaskClient):
    found, cursor, rounds = {}, "", 0
    while True:
        body = feed(client, cursor, 5)
        assert len(body["cards"]) <= 5
        found |= {c["code"]: c for c in body["cards"]}
        cursor, rounds = body["cursor"], rounds + 1
        if not body["more"]:
            break
    assert rounds == -(-len(found) // 5)
    assert found == all_cards(client)


def test_a_page_is_bounded_by_its_size_too(client: FlaskClient, monkeypatch: pytest.MonkeyPatch):
    monkeypatch.setattr(changes, "MOST_CHARACTERS", 50_000)
    found, body = [], feed(client)
    while True:
        found += [c["code"] for c in body["cards"]]
        assert sum(len(json.dumps(c)) for c in body["cards"][:-1]) < 60_000
        if not body["more"]:
            break
        body = feed(client, body["cursor"])
    assert sorted(found) == sorted(all_cards(client))


def test_afterwards_only_what_changed(client: FlaskClient, angle: dict[str, Any]):
    cursor = feed(client)["cursor"]
    quiet = feed(client, cursor)
    assert (quiet["cards"], quiet["shop"], quiet["cursor"]) == ([], None, cursor)
    result = {"id": str(uuid.uuid4()), "revision": 1, "step": 1, "measured_deg": 91}
    client.post("/api/v1/cards/SHE7FA1/results", json=result)
    new = client.post("/api/v1/cards", json={"part": angle}).get_json()["code"]
    body = feed(client, cursor)
    assert [c["code"] for c in body["cards"]] == ["SHE7FA1", new]
    assert body["cards"][0]["trials"][-1]["id"] == result["id"]
    assert body["shop"] is None
    kept = client.get("/api/v1/dies")
    dies = kept.get_json()["dies"][1:]
    client.put("/api/v1/dies", json={"dies": dies}, headers={"If-Match": kept.headers["ETag"]})
    after = feed(client, body["cursor"])
    assert after["cards"] == []
    assert after["shop"]["dies"] == dies


def test_a_card_changed_while_pages_are_fetched_comes_again(client: FlaskClient):
    first = feed(client, "", 3)
    code = first["cards"][0]["code"]
    etag = first["cards"][0]["etag"]
    client.put(f"/api/v1/cards/{code}", json={"note": "new"}, headers={"If-Match": etag})
    rest: list[Any] = []
    body = first
    while body["more"]:
        body = feed(client, body["cursor"], 3)
        rest += body["cards"]
    assert [c["note"] for c in rest if c["code"] == code] == ["new"]


def test_a_cursor_of_another_shop_starts_again_and_says_so(
    client: FlaskClient, make_app: Callable[..., Flask]
):
    other = make_app(empty=True).test_client()
    cursor = feed(client)["cursor"]
    body = feed(other, cursor)
    assert body["reset"] is True
    assert body["shop"]["metals"]
    assert feed(other, body["cursor"])["reset"] is False


def test_a_cursor_from_a_later_day_of_a_restored_shop_starts_again(client: FlaskClient):
    shop, _, number = feed(client)["cursor"].rpartition(".")
    assert feed(client, f"{shop}.{int(number) + 1}")["reset"] is True
    for nonsense in ("x", ".", f"{shop}.-1", f"{shop}.1e3", f"{shop}.٣", f"{shop}.{'9' * 150}"):
        body = feed(client, nonsense)
        assert body["reset"] is True, nonsense
        assert body["cards"]


def test_a_long_answer_is_compressed_for_those_who_can_read_it(client: FlaskClient):
    plain = client.get(FEED)
    assert "Content-Encoding" not in plain.headers
    packed = client.get(FEED, headers={"Accept-Encoding": "gzip"})
    assert packed.headers["Content-Encoding"] == "gzip"
    assert packed.headers["Vary"] == "Accept-Encoding"
    assert json.loads(gzip.decompress(packed.data)) == plain.get_json()
    assert len(packed.data) < len(plain.data) / 4


def test_the_export_holds_everything(client: FlaskClient):
    card = client.get("/api/v1/cards/SHE7FA1").get_json()
    client.put("/api/v1/cards/SHE7FA1", json={"note": "n"}, headers={"If-Match": card["etag"]})
    answer = client.get("/api/v1/export")
    assert "attachment" in answer.headers["Content-Disposition"]
    body = answer.get_json()
    assert (body["format"], body["format_version"]) == ("flangebook-shop", 1)
    cards = all_cards(client)
    assert {c["code"] for c in body["cards"]} == set(cards)
    assert len(body["revisions"]) == sum(c["revision"] for c in cards.values())
    assert len(body["trials"]) == sum(c["trials_total"] for c in cards.values())
    plans = {p["id"]: p["body"] for p in body["plans"]}
    newest = {(r["code"], r["revision"]): r for r in body["revisions"]}
    for code, kept in cards.items():
        revision = newest[code, kept["revision"]]
        assert plans[revision["plan_id"]] == kept["plan"]
        assert revision["part"] == kept["part"]
        assert revision["settings"] == kept["settings"]
    trials = {t["id"]: t["body"] for t in body["trials"]}
    assert all(trials[t["id"]] == t for c in cards.values() for t in c["trials"])
    documents = {d["name"]: d["body"] for d in body["documents"]}
    for name in ("punches", "dies", "holders"):
        shown = client.get(f"/api/v1/{name}").get_json()[name]
        assert documents[name] == [
            {k: v for k, v in tool.items() if k != "outline_mm"} for tool in shown
        ]
    assert documents["metals"] == client.get("/api/v1/metals").get_json()["metals"]
