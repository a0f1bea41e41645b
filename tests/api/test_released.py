"""Shops of released versions: opened, read, printed, synced and imported by this one."""

from __future__ import annotations

import json
import lzma
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest
from flask import Flask
from flask.testing import FlaskClient

from flangebook.shop.store import FILE_NAME

RELEASED = Path(__file__).parent / "released"
VERSIONS = sorted(folder.name for folder in RELEASED.iterdir() if folder.is_dir())
API = "/api/v1"


def document(version: str) -> dict[str, Any]:
    """The export that the version's own code wrote."""
    packed = (RELEASED / version / "export.json.xz").read_bytes()
    found: dict[str, Any] = json.loads(lzma.decompress(packed))
    return found


@pytest.fixture(params=VERSIONS)
def version(request: pytest.FixtureRequest) -> str:
    return str(request.param)


@pytest.fixture
def opened(version: str, make_app: Callable[..., Flask], tmp_path: Path) -> FlaskClient:
    """The version's shop, opened by this one."""
    folder = tmp_path / "released"
    folder.mkdir()
    packed = (RELEASED / version / f"{FILE_NAME}.xz").read_bytes()
    (folder / FILE_NAME).write_bytes(lzma.decompress(packed))
    return make_app(copied=folder).test_client()


def get(client: FlaskClient, path: str) -> Any:
    answer = client.get(API + path)
    assert answer.status_code == 200, (path, answer.get_json())
    return answer.get_json()


def test_there_is_a_shop_of_each_version_to_test():
    assert VERSIONS == ["0.3.0"]


def test_it_opens_with_every_card_as_it_was(version: str, opened: FlaskClient):
    kept = {card["code"]: card for card in document(version)["cards"]}
    listed = get(opened, "/cards?archived=all&limit=50")["cards"]
    assert {card["code"] for card in listed} == set(kept)
    for code, before in kept.items():
        card = get(opened, f"/cards/{code}")
        for name in ("revision", "title", "archived", "updated_at"):
            assert card[name] == before[name]
        assert card["part"]["metal"] == before["metal"]
        assert card["plan"]["steps"]
        assert get(opened, f"/cards/{code}/fresh")
        assert get(opened, f"/cards/{code}/revisions")


def test_it_prints(opened: FlaskClient):
    for card in get(opened, "/cards?archived=all&limit=50")["cards"]:
        label = f"{API}/cards/{card['code']}/label"
        for kind in ("svg", "png"):
            answer = opened.get(f"{label}.{kind}")
            assert answer.status_code == 200
            assert len(answer.data) > 1000


def test_it_syncs(version: str, opened: FlaskClient):
    changes = get(opened, "/changes")
    assert {card["code"] for card in changes["cards"]} == {
        card["code"] for card in document(version)["cards"]
    }
    (proposed,) = [card for card in changes["cards"] if card["proposals"]]
    assert proposed["proposals"][0]["changes"] == {"note": "Countersunk side in."}
    results = get(opened, f"/cards/{proposed['code']}/results")
    assert results["total"] == len(results["results"]) == 2
    assert get(opened, "/press-screens")["press_screens"][0]["code"] == proposed["code"]
    assert get(opened, "/test-bends?metal=mild-steel-cr")["evidence"]


def test_what_a_phone_of_it_had_queued_is_taken(version: str, opened: FlaskClient):
    result, note = json.loads((RELEASED / version / "queued.json").read_text("utf-8"))
    card = f"{API}/cards/{result['code']}"
    assert opened.post(f"{card}/trials", json=result["body"]).status_code == 201
    assert opened.post(f"{card}/trials", json=result["body"]).status_code == 200
    sent = {**note["body"], "id": note["id"], "after": note["after"]}
    assert opened.put(card, json=sent, headers={"If-Match": "*"}).status_code == 200
    assert get(opened, f"/cards/{result['code']}")["note"] == note["body"]["note"]
    assert get(opened, f"/cards/{result['code']}/results")["results"][0]["id"] == result["id"]


def test_its_export_comes_in_whole(version: str, make_app: Callable[..., Flask]):
    client = make_app(empty=True).test_client()
    before = document(version)
    answer = client.post(
        f"{API}/import?replace=true",
        data=json.dumps(before),
        content_type="application/json",
    )
    assert answer.status_code in (200, 201), answer.get_json()
    after = get(client, "/export")
    for name in ("cards", "revisions", "trials", "evidence", "marks", "proposals", "plans"):
        assert len(after[name]) == len(before[name]), name
    assert [card["title"] for card in after["cards"]] == [c["title"] for c in before["cards"]]
    assert [row["id"] for row in after["trials"]] == [row["id"] for row in before["trials"]]
