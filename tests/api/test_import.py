"""The whole shop out as one document and in again: nothing lost, nothing half taken."""

from __future__ import annotations

import copy
import json
import sqlite3
import uuid
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest
from flask import Flask
from flask.testing import FlaskClient
from problem import problem

from flangebook.api.config import Config
from flangebook.shop.backups import schedule
from flangebook.shop.storage import tables
from flangebook.shop.storage.writing import json_text, text_digest
from flangebook.shop.store import FILE_NAME
from flangebook.shop.transfer.export import NOT_EXPORTED, TEXTS

# What a document that went through a shop has that is another: the shop and the moment.
OTHERS = ("shop_id", "exported_at")
Document = dict[str, Any]


def folder_of(client: FlaskClient) -> Path:
    config: Config = client.application.extensions["flangebook.config"]
    return config.data


def export(client: FlaskClient) -> Document:
    body: Document = client.get("/api/v1/export").get_json()
    return body


def plain(document: Document) -> Document:
    return {name: value for name, value in document.items() if name not in OTHERS}


def send(client: FlaskClient, document: Any, **query: str) -> Any:
    data = document if isinstance(document, bytes) else json.dumps(document).encode()
    return client.post(
        "/api/v1/import", query_string=query, data=data, content_type="application/json"
    )


def used(client: FlaskClient) -> Document:
    """A shop with something of everything, as its document."""
    card = client.get("/api/v1/cards/SHE7FA1").get_json()
    edit = {"note": 'Käfig ✓ "quoted"', "by": "Night shift"}
    client.put("/api/v1/cards/SHE7FA1", json=edit, headers={"If-Match": card["etag"]})
    result = {"id": str(uuid.uuid4()), "revision": 2, "step": 1, "measured_deg": 91.25}
    assert client.post("/api/v1/cards/SHE7FA1/results", json=result).status_code == 201
    for mark in ("forget", "remember", "confirm", "forget"):
        client.post(f"/api/v1/evidence/{result['id']}/{mark}", json={"reason": "misread"})
    found = export(client)
    assert all(found[name] for name in ("documents", "cards", "trials", "evidence", "marks"))
    return found


@pytest.fixture
def document(client: FlaskClient) -> Document:
    """The demo shop's document, after some work."""
    return used(client)


@pytest.fixture
def empty(make_app: Callable[..., Flask]) -> FlaskClient:
    """A shop with nothing in it but its first metals."""
    return make_app(empty=True).test_client()


def test_every_table_is_exported_or_named_as_left_out():
    assert set(TEXTS) | NOT_EXPORTED == set(tables.metadata.tables)
    assert not set(TEXTS) & NOT_EXPORTED


def test_out_in_and_out_again_is_the_same(
    client: FlaskClient, document: Document, empty: FlaskClient
):
    answer = send(empty, document)
    assert answer.status_code == 200, answer.text
    told = answer.get_json()
    assert (told["imported"], told["kept_as"]) == (True, None)
    assert told["holds"]["cards"] == len(document["cards"])
    again = export(empty)
    assert again["shop_id"] != document["shop_id"]
    assert plain(again) == plain(document)
    # Byte for byte, the order of names as well.
    assert json_text(plain(again)) == json_text(plain(document))
    for one in document["cards"]:
        there = empty.get(f"/api/v1/cards/{one['code']}").get_json()
        here = client.get(f"/api/v1/cards/{one['code']}").get_json()
        assert {k: v for k, v in there.items() if k != "etag"} == {
            k: v for k, v in here.items() if k != "etag"
        }
    word = "käfig"
    found = empty.get("/api/v1/cards", query_string={"q": word}).get_json()
    assert [c["code"] for c in found["cards"]] == ["SHE7FA1"]


def test_afterwards_history_is_kept_again_and_numbers_go_on(document: Document, empty: FlaskClient):
    assert send(empty, document).status_code == 200
    with sqlite3.connect(folder_of(empty) / FILE_NAME) as file:
        triggers = file.execute("SELECT count(*) FROM sqlite_master WHERE type='trigger'")
        counting = len(set(tables.APPEND_ONLY) - tables.ASIDE) + 3
        assert triggers.fetchone()[0] == 2 * len(tables.APPEND_ONLY) + counting
        assert file.execute("PRAGMA foreign_key_check").fetchall() == []
        with pytest.raises(sqlite3.IntegrityError, match="append-only"):
            file.execute("DELETE FROM trials")
    cursor = empty.get("/api/v1/changes").get_json()["cursor"]
    card = empty.get("/api/v1/cards/SHE7FA1").get_json()
    headers = {"If-Match": card["etag"]}
    assert (
        empty.put("/api/v1/cards/SHE7FA1", json={"note": "n"}, headers=headers).status_code == 200
    )
    after = empty.get("/api/v1/changes", query_string={"since": cursor}).get_json()
    assert [c["code"] for c in after["cards"]] == ["SHE7FA1"]


def test_a_shop_with_something_in_it_is_refused_and_replaced_only_when_asked(
    client: FlaskClient, document: Document
):
    code = document["cards"][0]["code"]
    card = client.get(f"/api/v1/cards/{code}").get_json()
    since = client.get("/api/v1/changes").get_json()["cursor"]
    dies = client.get("/api/v1/dies").headers["ETag"]
    mine = {**document, "marks": []}
    assert "something in it already" in problem(send(client, mine), 409)["detail"]
    assert plain(export(client)) == plain(document)
    told = send(client, mine, replace="true").get_json()
    assert plain(export(client)) == plain(mine)
    # Whatever knew the shop before is told, even though every number is the same.
    stale = client.put(
        f"/api/v1/cards/{code}", json={"note": "x"}, headers={"If-Match": card["etag"]}
    )
    assert stale.status_code == 412
    assert client.get("/api/v1/changes", query_string={"since": since}).get_json()["reset"] is True
    assert (
        client.put("/api/v1/dies", json={"dies": []}, headers={"If-Match": dies}).status_code == 412
    )
    # What was replaced is kept, to the last row.
    kept = folder_of(client) / schedule.FOLDER / told["kept_as"]
    with sqlite3.connect(kept) as file:
        (marks,) = file.execute("SELECT count(*) FROM marks").fetchone()
    assert marks == len(document["marks"])
    assert kept.stat().st_mode & 0o077 == 0


def test_what_the_metal_taught_is_the_document_s(client: FlaskClient, document: Document):
    """Learned figures are held in memory by numbers that the new shop has come to as well."""
    metal = document["marks"][0]["metal"]
    path = f"/api/v1/test-bends?metal={metal}"
    assert [e["forgotten"] for e in client.get(path).get_json()["evidence"]].count(True) == 1
    (forgotten, *_) = [m["evidence_id"] for m in document["marks"]]
    others = copy.deepcopy(document)
    for one in others["marks"]:
        one["mark"] = {"forget": "remember", "remember": "forget", "confirm": "forget"}[one["mark"]]
    before = client.get(f"/api/v1/learned?metal={metal}").get_json()
    assert send(client, others, replace="true").status_code == 200
    rows = client.get(path).get_json()["evidence"]
    assert [e["forgotten"] for e in rows if e["id"] == forgotten] == [False]
    after = client.get(f"/api/v1/learned?metal={metal}").get_json()
    assert json.dumps(after) != json.dumps(before)


def test_a_preview_changes_nothing(client: FlaskClient, document: Document, empty: FlaskClient):
    before = plain(export(empty))
    told = send(empty, document, preview="true").get_json()
    assert told["imported"] is False
    assert told["untouched"] is True
    assert told["holds"] == {
        "press": client.get("/api/v1/press").get_json()["press"]["name"],
        "tools": sum(
            len(client.get(f"/api/v1/{n}").get_json()[n]) for n in ("punches", "dies", "holders")
        ),
        "metals": len(client.get("/api/v1/metals").get_json()["metals"]),
        "cards": len(document["cards"]),
        "revisions": len(document["revisions"]),
        "trials": len(document["trials"]),
        "test_bends": sum(e["kind"] == "test bend" for e in document["evidence"]),
    }
    assert plain(export(empty)) == before
    assert send(client, document, preview="true").get_json()["untouched"] is False


def spoilt(document: Document, name: str, place: int, /, **change: Any) -> Document:
    rows = list(document[name])
    rows[place] = {**rows[place], **change}
    return {**document, name: rows}


def dropped(document: Document, name: str, number: int) -> Document:
    return {**document, name: document[name][:number] + document[name][number + 1 :]}


def test_what_is_no_whole_shop_is_refused_with_its_place(document: Document, empty: FlaskClient):
    before = plain(export(empty))
    text = json.dumps(document).encode()
    plan = copy.deepcopy(document["plans"][0]["body"])
    plan["blank_length_mm"] = 1.0
    bad_die = next(i for i, d in enumerate(document["documents"]) if d["name"] == "dies")
    tried = {t["code"] for t in document["trials"]}
    lone = next(i for i, r in enumerate(document["revisions"]) if r["code"] not in tried)
    cases: list[tuple[Any, str, str]] = [
        (text[: len(text) // 2], "", "breaks off"),
        (text[: text.index(b"Night shift") + 5], "", "breaks off"),
        (text[:-2], "", "breaks off at line 1"),
        (b"", "", "breaks off"),
        (b'{"a":1.', "", "breaks off"),
        (b'{"a":[1,tr', "", "breaks off"),
        (b"\xff\xfe", "", "UTF-8"),
        (b"[" * 100_000, "", "nested"),
        (b'{"format":"flangebook-shop","format":1}', "", "twice"),
        (b'{"a":NaN}', "", "not a number"),
        (b'{"a":1e999}', "", "too large"),
        (text.replace(b'"Night shift"', b'"\\ud800"'), "", "half a character"),
        ({"cards": []}, "", "not an export"),
        ([], "", "not an export"),
        ({**document, "format_version": 2}, "", "newer release"),
        ({**document, "format_version": "1"}, "", "whole number"),
        ({**document, "cards": {}}, "cards", "a list"),
        ({**document, "photos": []}, "photos", "no such list"),
        ({k: v for k, v in document.items() if k != "trials"}, "trials", "needed"),
        (spoilt(document, "cards", 0, bends="2"), "cards.0.bends", "whole number"),
        (spoilt(document, "cards", 0, colour="red"), "cards.0.colour", "no such field"),
        (spoilt(document, "cards", 0, archived=1), "cards.0.archived", "neither"),
        (spoilt(document, "cards", 0, title="Mine"), "cards.0.title", "by its revisions"),
        (text.replace(document["cards"][0]["code"].encode(), b"0000001"), "cards.0.code",
         "not a card's code"),
        (spoilt(document, "cards", 0, trials=99), "cards.0.trials", "by its revisions"),
        (spoilt(document, "cards", 1, change=document["cards"][0]["change"]), "cards.1.change",
         "twice"),
        (spoilt(document, "plans", 0, body=plan), "plans.0.body", "as it was calculated"),
        (spoilt(document, "plans", 0, body=[]), "plans.0.body", "no steps"),
        (dropped(document, "plans", 0), "revisions.", "not among the plans"),
        (dropped(document, "cards", 0), "revisions.", "not among the cards"),
        (dropped(document, "revisions", lone), "cards.", "has no revision"),
        (spoilt(document, "revisions", 0, part={}), "revisions.0.part.metal", "required"),
        (spoilt(document, "revisions", 0, at="yesterday"), "revisions.0.at", "moment"),
        (spoilt(document, "revisions", 0, settings=[1]), "revisions.0.settings", "settings"),
        (spoilt(document, "trials", 0, number=7), "trials.0.number", "missing"),
        (spoilt(document, "trials", 0, body=None), "trials.0.body", "not an object"),
        (spoilt(document, "documents", bad_die, body=[{}]),
         f"documents.{bad_die}.body.dies.0.code", "required"),
        (spoilt(document, "marks", 0, evidence_id="x"), "marks.0.evidence_id", "not among"),
        (spoilt(document, "marks", 0, mark="maybe"), "marks.0.mark", "forget, remember"),
        (spoilt(document, "evidence", 0, change=-1), "evidence.0.change", "from 1 up"),
        (spoilt(document, "evidence", 0, metal="tin"), "evidence.0.body.metal", "as its row says"),
    ]  # fmt: skip
    for sent, place, words in cases:
        answer = send(empty, sent, replace="true")
        body = problem(answer, 422)
        said = json.dumps(body)
        assert words in said, (place, words, said[:400])
        assert not place or any(e.startswith(place) for e in body["errors"]), (place, said[:400])
        assert plain(export(empty)) == before, place
    assert list((folder_of(empty) / schedule.FOLDER).glob("*")) == []
    assert empty.post("/api/v1/import", data=b"x", content_type="text/plain").status_code == 415
    assert send(empty, document, replace="perhaps").status_code == 422


def test_a_text_that_the_api_would_refuse_is_refused(document: Document, empty: FlaskClient):
    before = plain(export(empty))
    result = document["trials"][0]["body"]
    plan = copy.deepcopy(document["plans"][0]["body"])
    plan["steps"][0]["die"] = "x" * 300_000
    digest = text_digest(json_text(plan))
    cases: list[tuple[Document, str, str]] = [
        (spoilt(document, "revisions", 0, note="x" * 300_000), "revisions.0.note", "2000"),
        (spoilt(document, "revisions", 0, note="one\x00two"), "revisions.0.note", "shown"),
        (spoilt(document, "revisions", 0, reason="x" * 201), "revisions.0.reason", "200"),
        (spoilt(document, "cards", 0, updated_by="x" * 81), "cards.0.updated_by", "80"),
        (spoilt(document, "marks", 0, by="\x1b[2J"), "marks.0.by", "shown"),
        (spoilt(document, "trials", 0, body={**result, "note": "x" * 300_000}),
         "trials.0.body", "2000"),
        (spoilt(document, "trials", 0, body={**result, "by": "\x00"}), "trials.0.body", "shown"),
        (spoilt(document, "trials", 0, body={**result, "\x00": 1}), "trials.0.body", "shown"),
        (spoilt(document, "plans", 0, body=plan, digest=digest), "plans.0.body", "2000"),
        (spoilt(document, "revisions", 0, changes=["x" * 2001]), "revisions.0.changes", "2000"),
    ]  # fmt: skip
    for sent, place, words in cases:
        answer = problem(send(empty, sent, replace="true"), 422, place)
        assert words in answer["errors"][place][0], answer
        assert plain(export(empty)) == before, place
