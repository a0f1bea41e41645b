"""Benches: moved by anybody, the last one wins, cheap to ask for."""

from __future__ import annotations

import subprocess
import sys
from collections.abc import Callable
from typing import Any

import jsonschema
import pytest
from flask import Flask
from flask.testing import FlaskClient
from problem import problem
from sqlalchemy import event

from flangebook.planning.chart import chart as planning_chart
from flangebook.shop import press_screens
from flangebook.use_cases import planner

CODE = "SHE7FA1"
EMPTY = {"code": None, "step": 0}


@pytest.fixture
def steps(client: FlaskClient) -> int:
    """How many steps the card has."""
    return len(client.get(f"/api/v1/cards/{CODE}").get_json()["plan"]["steps"])


def put(client: FlaskClient, name: str, body: dict[str, Any], seen: str = "") -> Any:
    headers = {"If-Match": seen} if seen else {}
    return client.put(f"/api/v1/press-screens/{name}", json=body, headers=headers)


def names(client: FlaskClient) -> list[str]:
    return [b["name"] for b in client.get("/api/v1/press-screens").get_json()["press_screens"]]


def test_a_press_screen_is_made_moved_and_taken_out(client: FlaskClient, steps: int):
    assert names(client) == []
    problem(client.get("/api/v1/press-screens/1"), 404)
    made = put(client, "1", EMPTY).get_json()
    assert (made["name"], made["code"], made["step"], made["by"]) == ("1", None, 0, "")
    moved = put(client, "1", {"code": "she-7fa1", "step": 1, "by": "Ann"}).get_json()
    assert (moved["code"], moved["step"], moved["by"]) == (CODE, 1, "Ann")
    assert moved["version"] > made["version"]
    assert moved["at"].endswith("Z")
    assert client.get("/api/v1/press-screens/1").get_json() == moved
    assert client.get("/api/v1/press-screens").get_json() == {"press_screens": [moved]}
    done = put(client, "1", {"code": CODE, "step": steps + 1}).get_json()
    assert done["step"] == steps + 1
    assert client.delete("/api/v1/press-screens/1").status_code == 204
    problem(client.get("/api/v1/press-screens/1"), 404)
    problem(client.delete("/api/v1/press-screens/1"), 404)


def test_who_asks_again_hears_only_of_moves(client: FlaskClient):
    put(client, "1", {"code": CODE, "step": 1})
    first = client.get("/api/v1/press-screens/1")
    seen = {"If-None-Match": first.headers["ETag"]}
    quiet = client.get("/api/v1/press-screens/1", headers=seen)
    assert (quiet.status_code, quiet.data) == (304, b"")
    put(client, "2", {"code": CODE, "step": 2})
    assert client.get("/api/v1/press-screens/1", headers=seen).status_code == 304
    put(client, "1", {"code": CODE, "step": 2})
    told = client.get("/api/v1/press-screens/1", headers=seen)
    assert (told.status_code, told.get_json()["step"]) == (200, 2)
    assert told.headers["ETag"] != first.headers["ETag"]


def test_asking_again_takes_no_look_at_the_tables(make_app: Callable[..., Flask]):
    """Screens ask every second: what is not moved is answered from memory."""
    app = make_app()
    client = app.test_client()
    put(client, "1", {"code": CODE, "step": 1})
    seen = {"If-None-Match": client.get("/api/v1/press-screens/1").headers["ETag"]}
    asked: list[str] = []
    event.listen(
        app.extensions["flangebook.store"].engine,
        "before_cursor_execute",
        lambda _c, _cursor, statement, *_: asked.append(statement),
    )
    for _ in range(5):
        assert client.get("/api/v1/press-screens/1", headers=seen).status_code == 304
    assert asked == []
    put(client, "1", {"code": CODE, "step": 2})
    assert asked


ANOTHER_PROCESS = """
import pathlib, sys
from flangebook.shop import documents
from flangebook.shop.store import opened
with opened(pathlib.Path(sys.argv[1])) as store:
    documents.write(store, "holders", [], if_match="*")
"""


def test_a_step_of_a_press_screen_leaves_what_was_calculated(
    make_app: Callable[..., Flask], monkeypatch: pytest.MonkeyPatch
):
    """Any other write does not, whichever process it is from."""
    app = make_app()
    client = app.test_client()
    charts: list[Any] = []

    def counted(*of: Any, **more: Any) -> Any:
        charts.append(charts[0] if charts else planning_chart(*of, **more))
        return charts[-1]

    monkeypatch.setattr(planner, "chart", counted)

    def made() -> int:
        assert client.get("/api/v1/chart?metal=mild-steel-cr").status_code == 200
        return len(charts)

    assert [made(), made()] == [1, 1]
    for step in (1, 2):
        put(client, "1", {"code": CODE, "step": step})
        assert client.get("/api/v1/press-screens/1").get_json()["step"] == step
        assert made() == 1
    client.delete("/api/v1/press-screens/1")
    problem(client.get("/api/v1/press-screens/1"), 404)
    assert made() == 1
    card = client.get(f"/api/v1/cards/{CODE}")
    seen = {"If-Match": card.headers["ETag"]}
    client.put(f"/api/v1/cards/{CODE}", json={"note": "Oil the die."}, headers=seen)
    assert [made(), made()] == [2, 2]
    folder = app.extensions["flangebook.config"].data
    subprocess.run([sys.executable, "-c", ANOTHER_PROCESS, str(folder)], check=True)
    assert [made(), made()] == [3, 3]


def test_the_same_place_again_is_no_move(client: FlaskClient):
    first = put(client, "1", {"code": CODE, "step": 1})
    again = put(client, "1", {"code": CODE, "step": 1, "by": "Ben"})
    assert again.get_json() == first.get_json()
    assert again.headers["ETag"] == first.headers["ETag"]


def test_two_presses_of_next_at_one_moment_are_one_step(client: FlaskClient):
    seen = put(client, "1", {"code": CODE, "step": 1}).headers["ETag"]
    assert put(client, "1", {"code": CODE, "step": 2}, seen).status_code == 200
    late = put(client, "1", {"code": CODE, "step": 2}, seen)
    problem(late, 412)
    now = client.get("/api/v1/press-screens/1")
    assert late.headers["ETag"] == now.headers["ETag"]
    assert now.get_json()["step"] == 2
    assert put(client, "1", {"code": CODE, "step": 1}, "*").status_code == 200
    # Without the version it saw, the last one wins.
    assert put(client, "1", {"code": CODE, "step": 2}).status_code == 200


def test_a_press_screen_that_is_gone_is_not_made_by_who_saw_it(client: FlaskClient):
    seen = put(client, "1", {"code": CODE, "step": 1}).headers["ETag"]
    client.delete("/api/v1/press-screens/1")
    for tag in (seen, "*"):
        problem(put(client, "1", {"code": CODE, "step": 2}, tag), 412)
    assert names(client) == []


def test_a_press_screen_made_afresh_is_not_the_one_that_was_seen(client: FlaskClient):
    first = put(client, "1", {"code": CODE, "step": 1})
    client.delete("/api/v1/press-screens/1")
    again = put(client, "1", {"code": CODE, "step": 1})
    assert again.get_json()["version"] > first.get_json()["version"]
    assert again.headers["ETag"] != first.headers["ETag"]


def test_press_screens_do_not_know_of_each_other(client: FlaskClient):
    put(client, "Big press", {"code": CODE, "step": 2})
    put(client, "1", {"code": CODE, "step": 1})
    before = client.get("/api/v1/press-screens/1").data
    put(client, "Big press", EMPTY)
    assert client.get("/api/v1/press-screens/1").data == before
    assert names(client) == ["1", "Big press"]


@pytest.mark.parametrize(
    "name", ["1", "Big press", "Große Presse", "プレス 2", "a" * 40, "P.1", "50%"]
)
def test_names_that_are_right(client: FlaskClient, name: str):
    path = f"/api/v1/press-screens/{name.replace('%', '%25')}"
    assert client.put(path, json=EMPTY).get_json()["name"] == name
    assert client.get(path).get_json()["name"] == name


@pytest.mark.parametrize("name", ["a" * 41, "%20", "...", "1%0A1", "-", "%00"])
def test_names_that_are_wrong(client: FlaskClient, name: str):
    problem(put(client, name, EMPTY), 422, "name")
    problem(client.get(f"/api/v1/press-screens/{name}"), 422, "name")
    assert names(client) == []


@pytest.mark.parametrize(
    ("body", "field"),
    [
        ({}, "code"),
        ({"code": CODE}, "step"),
        ({"step": 1}, "code"),
        ({"code": CODE, "step": 0}, "step"),
        ({"code": CODE, "step": -1}, "step"),
        ({"code": CODE, "step": 99}, "step"),
        ({"code": CODE, "step": "1"}, "step"),
        ({"code": CODE, "step": 1.5}, "step"),
        ({"code": CODE, "step": True}, "step"),
        ({"code": CODE, "step": None}, "step"),
        ({"code": None, "step": 1}, "step"),
        ({"code": "0000000", "step": 1}, "code"),
        ({"code": "SHE7FA2", "step": 1}, "code"),
        ({"code": 7, "step": 1}, "code"),
        ({"code": CODE, "step": 1, "by": "x" * 81}, "by"),
        ({"code": CODE, "step": 1, "version": 4}, "version"),
    ],
)
def test_moves_that_are_wrong(client: FlaskClient, body: dict[str, Any], field: str):
    problem(put(client, "1", body), 422, field)
    kept = put(client, "1", {"code": CODE, "step": 1}).get_json()
    problem(put(client, "1", body), 422, field)
    assert client.get("/api/v1/press-screens/1").get_json() == kept


def test_one_past_the_last_step_is_done_and_two_are_wrong(client: FlaskClient, steps: int):
    told = problem(put(client, "1", {"code": CODE, "step": steps + 2}), 422, "step")
    assert f"1 to {steps}" in told["detail"]


def test_there_is_a_bound(client: FlaskClient, monkeypatch: pytest.MonkeyPatch):
    monkeypatch.setattr(press_screens, "MOST_BENCHES", 2)
    assert [put(client, name, EMPTY).status_code for name in "12"] == [200, 200]
    problem(put(client, "3", EMPTY), 409)
    assert put(client, "2", {"code": CODE, "step": 1}).status_code == 200


def test_the_export_has_them(client: FlaskClient):
    kept = put(client, "1", {"code": CODE, "step": 1}).get_json()
    assert client.get("/api/v1/export").get_json()["benches"] == [kept]


def test_a_move_is_no_news_for_the_cards_of_a_phone(client: FlaskClient):
    cursor = client.get("/api/v1/changes?limit=100").get_json()["cursor"]
    put(client, "1", {"code": CODE, "step": 1})
    news = client.get(f"/api/v1/changes?since={cursor}").get_json()
    assert (news["cards"], news["shop"], news["reset"]) == ([], None, False)


def test_the_document_is_true_of_the_answers(client: FlaskClient):
    spec = client.get("/api/openapi.json").get_json()
    moved = put(client, "1", {"code": CODE, "step": 1})
    answers = {
        ("/api/v1/press-screens", "get"): client.get("/api/v1/press-screens"),
        ("/api/v1/press-screens/{name}", "get"): client.get("/api/v1/press-screens/1"),
        ("/api/v1/press-screens/{name}", "put"): moved,
    }
    for (path, method), answer in answers.items():
        told = spec["paths"][path][method]["responses"]["200"]["content"]["application/json"]
        schema = {**told["schema"], "components": spec["components"]}
        jsonschema.validate(answer.get_json(), schema)
    told = spec["paths"]["/api/v1/press-screens/{name}"]
    assert {"200", "409", "412", "422"} <= set(told["put"]["responses"])
    assert set(told["delete"]["responses"]) == {"204", "404", "default"}
