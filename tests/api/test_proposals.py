"""Changes that met another one: both sides are kept, everybody sees it, a revision settles it."""

from __future__ import annotations

import uuid
from typing import Any

import pytest
from flask.testing import FlaskClient
from problem import problem

CARD = "/api/v1/cards/SHE7FA1"
OTHER = "/api/v1/cards/ZRA2CKX"


def read(client: FlaskClient, card: str = CARD) -> dict[str, Any]:
    return client.get(card).get_json()


def change(client: FlaskClient, **fields: Any) -> Any:
    return client.put(CARD, json=fields, headers={"If-Match": "*"})


def proposal(**more: Any) -> dict[str, Any]:
    return {
        "id": str(uuid.uuid4()),
        "changes": {"note": "mine"},
        "before": {"note": "as it was"},
        "revision": 1,
        "by": "Ana",
        "made_at": "2026-05-04T08:00:00Z",
    } | more


def result(**more: Any) -> dict[str, Any]:
    return {"id": str(uuid.uuid4()), "revision": 1, "step": 1, "measured_deg": 91} | more


def propose(client: FlaskClient, one: dict[str, Any], card: str = CARD) -> Any:
    return client.post(f"{card}/proposals", json=one)


def test_a_change_after_the_newest_revision_passes_results_by(client: FlaskClient):
    card = read(client)
    assert client.post(f"{CARD}/results", json=result()).status_code == 201
    first, second = str(uuid.uuid4()), str(uuid.uuid4())
    made = change(client, note="one", id=first, after=card["revision_id"])
    assert made.status_code == 200
    assert made.get_json()["revision_id"] == first
    # The next change of the device was made on its own first one, before that had arrived.
    assert change(client, note="two", id=second, after=first).status_code == 200
    assert read(client)["revision"] == card["revision"] + 2
    # An answer was lost: the same again is harmless, though it is not the newest any more.
    again = change(client, note="one", id=first, after=card["revision_id"])
    assert (again.status_code, again.get_json()["revision_id"]) == (200, second)


def test_a_change_after_an_older_revision_is_refused(client: FlaskClient):
    base = read(client)["revision_id"]
    change(client, note="theirs", id=str(uuid.uuid4()), after=base)
    problem(change(client, note="mine", id=str(uuid.uuid4()), after=base), 412)
    problem(change(client, note="theirs", id=str(uuid.uuid4()), after=base), 412)
    assert read(client)["note"] == "theirs"


def test_a_proposal_is_on_the_card_in_the_feed_and_in_the_export(client: FlaskClient):
    cursor = client.get("/api/v1/changes?limit=100").get_json()["cursor"]
    before, one = read(client), proposal()
    answer = propose(client, one)
    assert answer.status_code == 201
    card = answer.get_json()
    assert card["etag"] != before["etag"]
    assert card["revision"] == before["revision"]
    (kept,) = card["proposals"]
    assert {k: kept[k] for k in ("id", "by", "revision")} == {
        k: one[k] for k in ("id", "by", "revision")
    }
    assert kept["changes"] == {"note": "mine"}
    (changed,) = client.get(f"/api/v1/changes?since={cursor}").get_json()["cards"]
    assert changed == card
    (row,) = client.get("/api/v1/export").get_json()["proposals"]
    assert (row["id"], row["body"]["changes"]) == (one["id"], {"note": "mine"})


def test_a_resend_is_harmless_and_other_content_is_refused(client: FlaskClient):
    one = proposal()
    assert [propose(client, one).status_code for _ in range(2)] == [201, 200]
    problem(propose(client, {**one, "changes": {"note": "other"}}), 409)
    problem(propose(client, one, OTHER), 409)
    assert len(read(client)["proposals"]) == 1


def test_a_revision_settles_it_and_both_sides_stay(client: FlaskClient):
    one = proposal()
    card = propose(client, one).get_json()
    settled = change(
        client,
        note="both",
        settles=[one["id"]],
        after=card["revision_id"],
        id=str(uuid.uuid4()),
        by="Ben",
    )
    assert settled.status_code == 200
    after = settled.get_json()
    assert (after["proposals"], after["proposals_total"]) == ([], 1)
    newest = client.get(f"{CARD}/revisions").get_json()["revisions"][0]
    assert "settled 1 proposed change of Ana" in newest["changes"]
    (kept,) = client.get(f"{CARD}/proposals").get_json()["proposals"]
    assert (kept["changes"], kept["settled_by"]) == ({"note": "mine"}, after["revision"])
    (row,) = client.get("/api/v1/export").get_json()["settlements"]
    assert (row["proposal_id"], row["revision"]) == (one["id"], after["revision"])


def test_leaving_the_card_as_it_is_settles_it_too(client: FlaskClient):
    one = proposal()
    card = propose(client, one).get_json()
    after = change(client, settles=[one["id"]], after=card["revision_id"]).get_json()
    assert (after["revision"], after["note"]) == (card["revision"] + 1, card["note"])
    assert after["proposals"] == []


def test_one_that_arrived_as_a_revision_is_no_conflict(client: FlaskClient):
    """Put, answer lost, and proposed: or proposed, and put again after all."""
    one, two = proposal(), proposal()
    change(client, note="mine", id=one["id"])
    assert propose(client, one).status_code == 200
    assert propose(client, two).status_code == 201
    change(client, note="mine too", id=two["id"])
    assert read(client)["proposals"] == []
    change(client, note="elsewhere", id=(three := proposal())["id"])
    problem(propose(client, three, OTHER), 409)


def test_a_settlement_may_come_before_its_proposal(client: FlaskClient):
    """As after a backup was put back, when each device sends again what it has."""
    one = proposal()
    assert change(client, note="both", settles=[one["id"]]).status_code == 200
    assert propose(client, one).status_code == 201
    assert read(client)["proposals"] == []


def test_proposals_of_another_card_are_not_settled_here(client: FlaskClient):
    one = proposal()
    propose(client, one, OTHER)
    before = read(client)
    problem(change(client, note="x", settles=[one["id"]]), 404)
    assert read(client) == before
    assert len(read(client, OTHER)["proposals"]) == 1


@pytest.mark.parametrize(
    ("wrong", "field"),
    [
        ({"changes": {}}, "changes"),
        ({"changes": {"part": {}}}, "changes.part"),
        ({"changes": {"title": ""}}, "changes.title"),
        ({"id": "mine"}, "id"),
        ({"made_at": "yesterday"}, "made_at"),
    ],
)
def test_what_is_no_proposal_is_refused(reader: FlaskClient, wrong: dict[str, Any], field: str):
    problem(propose(reader, proposal(**wrong)), 422, field)
    problem(propose(reader, proposal(), "/api/v1/cards/0000000"), 404)
    problem(reader.get("/api/v1/cards/0000000/proposals"), 404)
    assert read(reader)["proposals"] == []


def test_a_card_takes_so_many_open_proposals(client: FlaskClient):
    made = [propose(client, proposal(changes={"note": str(n)})).status_code for n in range(51)]
    assert made[:50] == [201] * 50
    assert made[50] in range(400, 500)


def test_a_clock_that_is_ahead_orders_nothing(client: FlaskClient):
    """The shop's own time and number order; the device's time is kept as it was said."""
    ahead, right = result(made_at="2999-01-01T00:00:00Z"), result()
    for one in (ahead, right):
        assert client.post(f"{CARD}/results", json=one).status_code == 201
    kept = client.get(f"{CARD}/results").get_json()["results"]
    assert [t["id"] for t in kept[:2]] == [right["id"], ahead["id"]]
    assert kept[1]["made_at"].startswith("2999")
    assert kept[1]["received_at"] < "2999"


def test_a_result_of_a_revision_that_a_restore_took_away(client: FlaskClient):
    """Sent again, it is kept with the newest; whoever sends it again, it is there once."""
    one = result(revision=7)
    problem(client.post(f"{CARD}/results", json=one), 404)
    for status in (201, 200):
        answer = client.post(f"{CARD}/results", json={**one, "again": True})
        assert answer.status_code == status
        kept = answer.get_json()["result"]
        assert (kept["id"], kept["revision"]) == (one["id"], 7)
        assert "again" not in kept
    (row,) = [t for t in client.get("/api/v1/export").get_json()["trials"] if t["id"] == one["id"]]
    assert row["revision"] == read(client)["revision"]
