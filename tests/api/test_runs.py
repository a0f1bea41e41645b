"""Runs of a card: counted by entries, so that nothing is lost and nothing counts twice."""

from __future__ import annotations

import csv
import json
import random
from collections.abc import Callable
from typing import Any

import pytest
from flask import Flask
from flask.testing import FlaskClient
from problem import problem
from run_entries import begun, new_id, run_entry

from flangebook.shop import changes, runs

CARD = "/api/v1/cards/ZRA2CKX"
RUNS = f"{CARD}/runs"


def sent(client: FlaskClient, *entries: dict[str, Any]) -> dict[str, Any]:
    """Send them in their order; the run after the last."""
    run: dict[str, Any] = {}
    for entry in entries:
        answer = client.post(RUNS, json=entry)
        assert answer.status_code in (200, 201), answer.get_json()
        run = answer.get_json()["run"]
    return run


def only_run(client: FlaskClient) -> dict[str, Any]:
    (run,) = client.get(RUNS).get_json()["runs"]
    return dict(run)


def test_a_run_begins_and_counts(client: FlaskClient):
    run = new_id()
    begin = begun(run)
    answer = client.post(RUNS, json=begin)
    assert answer.status_code == 201
    stored = answer.get_json()["entry"]
    assert {k: stored[k] for k in begin} == begin
    assert stored["code"] == "ZRA2CKX"
    after = sent(client, run_entry(run, "piece", 5), run_entry(run, "scrap", 6, step=2))
    assert (after["pieces"], after["done"], after["scrapped"]) == (20, 1, 1)
    assert after["scrap"] == [{"step": 2, "pieces": 1}]
    assert (after["state"], after["revision"]) == ("open", 1)
    assert only_run(client) == after


def test_a_card_without_a_run_has_none(client: FlaskClient):
    assert client.get(RUNS).get_json() == {"runs": []}


def test_the_same_entry_again_counts_once(client: FlaskClient):
    run = new_id()
    piece = run_entry(run, "piece", 5)
    sent(client, begun(run), piece)
    again = client.post(RUNS, json=piece)
    assert again.status_code == 200
    assert again.get_json()["run"]["done"] == 1
    problem(client.post(RUNS, json={**piece, "kind": "paused"}), 409)
    problem(client.post("/api/v1/cards/SHE7FA1/runs", json=piece), 409)
    assert only_run(client)["done"] == 1


def test_two_devices_that_were_offline_add_up_in_any_order(client: FlaskClient):
    """Every order of arrival gives the same counts; late entries of an ended run count too."""
    run = new_id()
    first = [begun(run), run_entry(run, "piece", 4), run_entry(run, "piece", 6)]
    second = [
        run_entry(run, "piece", 5), run_entry(run, "scrap", 7, step=1), run_entry(run, "ended", 9),
    ]  # fmt: skip
    both = first + second
    for seed in range(20):
        order = list(both)
        random.Random(seed).shuffle(order)
        copies = {}
        other = new_id()
        for entry in order:
            copies[entry["id"]] = {**entry, "id": new_id(), "run_id": other}
        after = sent(client, *copies.values())
        assert (after["pieces"], after["done"], after["scrapped"]) == (20, 3, 1)
        assert after["state"] == "ended"
        times = [after[n] for n in ("setup_s", "run_s", "seconds_per_piece")]
        assert times == [240, 180, 90]


def test_a_mistake_is_taken_back_once(client: FlaskClient):
    """Two devices that take the same piece back take one back, not two."""
    run = new_id()
    pieces = [run_entry(run, "piece", n) for n in (4, 5, 6)]
    back = [run_entry(run, "back", 7, undoes=pieces[2]["id"]) for _ in range(2)]
    after = sent(client, begun(run), *pieces, *back)
    assert after["done"] == 2
    ended = run_entry(run, "ended", 8)
    assert sent(client, ended)["state"] == "ended"
    assert sent(client, run_entry(run, "back", 9, undoes=ended["id"]))["state"] == "open"


def test_a_piece_may_come_before_its_run_begins(client: FlaskClient):
    run = new_id()
    early = sent(client, run_entry(run, "piece", 5))
    assert (early["pieces"], early["done"], early["revision"]) == (None, 1, 1)
    assert sent(client, begun(run, 7))["pieces"] == 7
    assert only_run(client)["begun_at"] == "2026-05-04T08:00:00.000Z"


def test_a_run_pauses_and_goes_on(client: FlaskClient):
    run = new_id()
    assert sent(client, begun(run), run_entry(run, "paused", 5))["state"] == "paused"
    assert sent(client, run_entry(run, "resumed", 6))["state"] == "open"


def test_times_leave_the_pauses_out(client: FlaskClient):
    """Set-up 0 to 12 with 2 paused; pieces 12 to 60 with 30 paused: 18 minutes for 3 pieces."""
    run = new_id()
    after = sent(
        client,
        begun(run),
        run_entry(run, "paused", 2),
        run_entry(run, "resumed", 4),
        run_entry(run, "setup", 12),
        run_entry(run, "piece", 16),
        run_entry(run, "scrap", 18, step=1),
        run_entry(run, "piece", 20),
        run_entry(run, "paused", 25),
        run_entry(run, "resumed", 55),
        run_entry(run, "piece", 60),
        run_entry(run, "ended", 90),
    )
    assert (after["setup_s"], after["setup_until"]) == (600, "said")
    assert (after["run_s"], after["paused_s"]) == (1080, 1920)
    assert after["seconds_per_piece"] == 360


def test_where_nobody_said_so_the_set_up_ends_with_the_first_piece(client: FlaskClient):
    run = new_id()
    after = sent(client, begun(run), *[run_entry(run, "piece", n) for n in (10, 13, 16)])
    assert (after["setup_s"], after["setup_until"]) == (600, "first piece")
    assert after["seconds_per_piece"] == 180, "the first piece is part of the set-up"


def test_times_are_unknown_until_there_is_something_to_tell(client: FlaskClient):
    run = new_id()
    after = sent(client, begun(run))
    assert (after["setup_s"], after["setup_until"]) == (None, None)
    assert (after["run_s"], after["seconds_per_piece"]) == (None, None)
    assert sent(client, run_entry(run, "scrap", 3, step=1))["seconds_per_piece"] is None


def test_a_clock_that_is_ahead_does_not_make_a_piece_later_than_it_came(client: FlaskClient):
    run = new_id()
    begin = {**begun(run), "made_at": "2999-01-01T00:00:00.000Z"}
    piece = {**run_entry(run, "piece"), "made_at": "2999-01-02T00:00:00.000Z"}
    assert sent(client, begin, piece)["setup_s"] < 60


@pytest.mark.parametrize(
    ("change", "field"),
    [
        ({"id": "no"}, "id"),
        ({"run_id": None}, "run_id"),
        ({"kind": "eaten"}, "kind"),
        ({"kind": "begun"}, "pieces"),
        ({"kind": "begun", "pieces": 0}, "pieces"),
        ({"kind": "begun", "pieces": 100_001}, "pieces"),
        ({"kind": "piece", "pieces": 3}, "pieces"),
        ({"kind": "scrap"}, "step"),
        ({"kind": "piece", "step": 1}, "step"),
        ({"kind": "back"}, "undoes"),
        ({"made_at": "yesterday"}, "made_at"),
        ({"by": "Ana"}, "by"),
        ({"device": "Ana's phone"}, "device"),
    ],
)
def test_what_does_not_fit_is_refused(client: FlaskClient, change: dict[str, Any], field: str):
    """A name is refused too: nothing of a run says who it was."""
    problem(client.post(RUNS, json={**run_entry(new_id(), "piece"), **change}), 422, field)


def test_an_unknown_card_has_no_runs(client: FlaskClient):
    for ask in (client.get, lambda path: client.post(path, json=begun(new_id()))):
        problem(ask("/api/v1/cards/0000000/runs"), 404)
    problem(client.get("/api/v1/cards/0000000/runs.csv"), 404)


def test_runs_have_a_bound(client: FlaskClient, monkeypatch: pytest.MonkeyPatch):
    monkeypatch.setattr(runs, "MOST_ENTRIES", 2)
    run = new_id()
    sent(client, begun(run), run_entry(run, "piece"))
    problem(client.post(RUNS, json=run_entry(run, "piece")), 409)


def test_the_table_for_the_next_quote(client: FlaskClient):
    one, other = new_id(), new_id()
    sent(client, begun(one, 3), *[run_entry(one, "piece", n) for n in (10, 13, 16)])
    sent(client, run_entry(one, "scrap", 17, step=2), run_entry(one, "ended", 18))
    sent(client, begun(other, 8, minute=60))
    answer = client.get(f"{RUNS}.csv")
    assert answer.content_type == "text/csv; charset=utf-8"
    assert answer.headers["Content-Disposition"].endswith('filename="runs-ZRA2CKX.csv"')
    rows = list(csv.DictReader(answer.get_data(as_text=True).splitlines()))
    assert [row["pieces_wanted"] for row in rows] == ["8", "3"]
    assert rows[1] == {
        "card": "ZRA-2CKX", "revision": "1", "begun_at": "2026-05-04T08:00:00.000Z",
        "state": "ended", "pieces_wanted": "3", "pieces_done": "3", "pieces_scrapped": "1",
        "scrap_by_step": "step 2: 1", "setup_minutes": "10.0", "setup_until": "first piece",
        "run_minutes": "7.0", "paused_minutes": "0.0", "minutes_per_piece": "3.5",
    }  # fmt: skip
    assert (rows[0]["setup_minutes"], rows[0]["minutes_per_piece"]) == ("", "")


# What a phone is told ---------------------------------------------------------------------


def feed(client: FlaskClient, since: str = "", limit: int = 100) -> dict[str, Any]:
    body: dict[str, Any] = client.get(
        "/api/v1/changes", query_string={"since": since, "limit": limit}
    ).get_json()
    return body


def test_the_feed_brings_entries_and_not_the_card_again(client: FlaskClient):
    before = feed(client)
    run = new_id()
    sent(client, begun(run), run_entry(run, "piece", 5))
    after = feed(client, before["cursor"])
    assert after["cards"] == []
    assert after["shop"] is None
    assert [e["kind"] for e in after["run_entries"]] == ["begun", "piece"]
    assert feed(client, after["cursor"])["run_entries"] == []


def test_pages_of_entries_and_cards_add_up(client: FlaskClient, monkeypatch: pytest.MonkeyPatch):
    monkeypatch.setattr(changes, "MOST_ENTRIES", 3)
    run = new_id()
    entries = [begun(run), *[run_entry(run, "piece", n) for n in range(10)]]
    for number, entry in enumerate(entries):
        sent(client, entry)
        if number % 4 == 0:
            result = {"id": new_id(), "revision": 1, "step": 1, "measured_deg": 91.0}
            assert client.post(f"{CARD}/results", json=result).status_code == 201
    listed = client.get("/api/v1/cards?limit=200&archived=all").get_json()["cards"]
    all_codes = [card["code"] for card in listed]
    for limit in (2, 100):
        cursor, ids, codes = "", [], set()
        for _ in range(100):
            page = feed(client, cursor, limit)
            assert len(page["run_entries"]) <= 3
            ids += [e["id"] for e in page["run_entries"]]
            codes |= {card["code"] for card in page["cards"]}
            cursor = page["cursor"]
            if not page["more"]:
                break
        assert ids == [e["id"] for e in entries]
        assert codes == set(all_codes)


# Export and import ------------------------------------------------------------------------


@pytest.fixture
def exported(client: FlaskClient) -> dict[str, Any]:
    run = new_id()
    sent(client, begun(run), run_entry(run, "piece", 5), run_entry(run, "scrap", 6, step=1))
    body: dict[str, Any] = client.get("/api/v1/export").get_json()
    return body


def imported(client: FlaskClient, document: dict[str, Any]) -> Any:
    return client.post(
        "/api/v1/import?replace=true", data=json.dumps(document), content_type="application/json"
    )


def test_runs_go_out_and_come_in(
    client: FlaskClient, exported: dict[str, Any], make_app: Callable[..., Flask]
):
    other = make_app(empty=True).test_client()
    assert imported(other, exported).status_code in (200, 201)
    assert other.get(RUNS).get_json() == client.get(RUNS).get_json()
    assert other.get("/api/v1/export").get_json()["run_entries"] == exported["run_entries"]


def test_an_export_from_before_there_were_runs_comes_in(
    exported: dict[str, Any], make_app: Callable[..., Flask]
):
    del exported["run_entries"]
    other = make_app(empty=True).test_client()
    assert imported(other, exported).status_code in (200, 201)
    assert other.get(RUNS).get_json() == {"runs": []}


@pytest.mark.parametrize(
    ("where", "value"),
    [
        ("body", {"made_at": "long ago"}),
        ("body", {"received_at": 5}),
        ("body", {"kind": "x"}),
        ("body", {"step": 3}),
        ("body", {"run_id": "x"}),
        ("body", {"by": "Ana"}),
        ("kind", "scrap"),
        ("code", "0000000"),
        ("body", None),
    ],
)
def test_an_entry_that_does_not_fit_is_not_imported(
    exported: dict[str, Any], make_app: Callable[..., Flask], where: str, value: Any
):
    row = next(row for row in exported["run_entries"] if row["kind"] == "piece")
    row[where] = {**row["body"], **value} if isinstance(value, dict) else value
    other = make_app(empty=True).test_client()
    answer = imported(other, exported)
    assert answer.status_code == 422, answer.get_json()
    assert any(place.startswith("run_entries.") for place in answer.get_json()["errors"])
