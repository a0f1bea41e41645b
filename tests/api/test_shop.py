"""Press, punches, dies, holders, metals: read, changed whole, checked."""

from __future__ import annotations

import copy
from collections.abc import Callable
from typing import Any

import pytest
from flask import Flask
from flask.testing import FlaskClient
from problem import problem

NAMES = ("press", "punches", "dies", "holders", "metals")


def fetched(client: FlaskClient, name: str) -> tuple[Any, str]:
    answer = client.get(f"/api/v1/{name}")
    assert answer.status_code == 200
    body = answer.get_json()
    assert set(body) == {name}
    return body[name], answer.headers["ETag"]


def put(client: FlaskClient, name: str, value: Any, etag: str, **more: Any) -> Any:
    return client.put(f"/api/v1/{name}", json={name: value, **more}, headers={"If-Match": etag})


@pytest.mark.parametrize("name", NAMES)
def test_what_was_read_can_be_put_back_and_changes_nothing(client: FlaskClient, name: str):
    value, etag = fetched(client, name)
    assert value
    answer = put(client, name, value, etag)
    assert answer.status_code == 200, answer.text
    assert answer.get_json()[name] == value
    assert answer.headers["ETag"] == etag


@pytest.mark.parametrize("name", NAMES)
def test_changing_needs_the_newest_etag(client: FlaskClient, name: str):
    value, etag = fetched(client, name)
    problem(client.put(f"/api/v1/{name}", json={name: value}), 428)
    problem(put(client, name, value, '"0.000000"'), 412)
    changed = copy.deepcopy(value)
    (changed if name == "press" else changed[0])["name"] = "Renamed"
    answer = put(client, name, changed, etag, by="owner")
    assert answer.status_code == 200
    assert answer.headers["ETag"] != etag
    stale = put(client, name, value, etag)
    problem(stale, 412)
    assert stale.headers["ETag"] == answer.headers["ETag"]
    now, _ = fetched(client, name)
    assert (now if name == "press" else now[0])["name"] == "Renamed"


def test_an_empty_shop_has_metals_and_nothing_else(make_app: Callable[..., Flask]):
    client = make_app(empty=True).test_client()
    assert fetched(client, "press")[0] is None
    for name in ("punches", "dies", "holders"):
        assert fetched(client, name)[0] == []
    assert len(fetched(client, "metals")[0]) >= 5
    assert client.get("/api/v1/cards").get_json() == {"cards": [], "total": 0}


def test_a_shop_can_be_entered_from_nothing(
    make_app: Callable[..., Flask], untaught: FlaskClient, angle: dict[str, Any]
):
    client = make_app(empty=True).test_client()
    for name in NAMES:
        _, etag = fetched(client, name)
        assert put(client, name, fetched(untaught, name)[0], etag).status_code == 200
    ours = client.post("/api/v1/plan", json=angle).get_json()
    assert ours == untaught.post("/api/v1/plan", json=angle).get_json()


def test_sizes_may_be_typed_in_inches_and_short_tons(client: FlaskClient):
    press, etag = fetched(client, "press")
    typed = {**press, "force_kn": "45 short tons", "bed_length_mm": "63 in"}
    typed["bending_speed_mm_s"] = "1/4 in/s"
    kept = put(client, "press", typed, etag).get_json()["press"]
    assert kept["force_kn"] == pytest.approx(400.34, abs=0.01)
    assert kept["bed_length_mm"] == 1600.2
    assert kept["bending_speed_mm_s"] == 6.35


def test_an_unknown_rating_stays_unknown(client: FlaskClient):
    dies, etag = fetched(client, "dies")
    dies[0]["rating_kn_per_m"] = None
    assert put(client, "dies", dies, etag).get_json()["dies"][0]["rating_kn_per_m"] is None


def test_outlines_are_worked_out_not_taken(client: FlaskClient):
    dies, etag = fetched(client, "dies")
    right = dies[0]["outline_mm"]
    assert len(right) > 8
    dies[0]["outline_mm"] = [[0, 0], [1, 0], [1, 1]]
    assert put(client, "dies", dies, etag).get_json()["dies"][0]["outline_mm"] == right
    press, _ = fetched(client, "press")
    assert set(press["outlines_mm"]) == {"ram", "bed"}


DIE = {
    "code": "N1",
    "name": "New",
    "v_opening_mm": 12,
    "angle_deg": 85,
    "shoulder_radius_mm": 1,
    "height_mm": 60,
    "width_mm": 40,
    "rating_kn_per_m": None,
}


@pytest.mark.parametrize(
    ("change", "field"),
    [
        ({"code": ""}, "code"),
        ({"code": "a b"}, "code"),
        ({"code": "x/../y"}, "code"),
        ({"code": "x" * 41}, "code"),
        ({"code": "<b>"}, "code"),
        ({"v_opening_mm": 0}, "v_opening_mm"),
        ({"v_opening_mm": "12 kN"}, "v_opening_mm"),
        ({"angle_deg": 200}, "angle_deg"),
        ({"rating_kn_per_m": 0}, "rating_kn_per_m"),
        ({"rating_kn_per_m": "20 tons/ft"}, "rating_kn_per_m"),
        ({"rating_kn_per_m": "unknown"}, "rating_kn_per_m"),
        ({"segments_mm": [100, -5]}, "segments_mm.1"),
        ({"segments_mm": [10] * 201}, "segments_mm"),
        ({"condition": "fine"}, "condition"),
        ({"shape": "round"}, "shape"),
        ({"points_mm": [[0, 0]] * 401}, "points_mm"),
        ({"points_mm": [[0, 0, 0]]}, "points_mm.0"),
        ({"condition_note": "x" * 2001}, "condition_note"),
        ({"weight_kg": 3}, "weight_kg"),
    ],
)
def test_tools_that_cannot_be(reader: FlaskClient, change: dict[str, Any], field: str):
    _, etag = fetched(reader, "dies")
    answer = put(reader, "dies", [DIE, {**DIE, "code": "N2", **change}], etag)
    problem(answer, 422, f"dies.1.{field}")
    assert fetched(reader, "dies")[1] == etag


def test_an_outline_that_crosses_itself_is_refused_at_its_tool(reader: FlaskClient):
    _, etag = fetched(reader, "dies")
    bow_tie = [[-20, -60], [20, 0], [20, -60], [-20, 0]]
    tool = {**DIE, "shape": "points", "points_mm": bow_tie}
    body = problem(put(reader, "dies", [tool], etag), 422)
    assert any(name.startswith("dies.0.") for name in body["errors"])


def test_a_code_is_given_once(reader: FlaskClient):
    _, etag = fetched(reader, "dies")
    answer = put(reader, "dies", [DIE, {**DIE, "code": "n1"}], etag)
    problem(answer, 422, "dies.1.code")


def test_lists_have_a_bound(reader: FlaskClient):
    _, etag = fetched(reader, "dies")
    many = [{**DIE, "code": f"N{i}"} for i in range(501)]
    problem(put(reader, "dies", many, etag), 422, "dies")


@pytest.mark.parametrize(
    ("change", "field"),
    [
        ({"force_kn": None}, "press.force_kn"),
        ({"force_kn": "40 tons"}, "press.force_kn"),
        ({"gauge_x_max_mm": -5}, "press.gauge_x_max_mm"),
        ({"gauge_r_min_mm": 500}, "press.gauge_r_max_mm"),
        ({"holder": "a b"}, "press.holder"),
    ],
)
def test_presses_that_cannot_be(reader: FlaskClient, change: dict[str, Any], field: str):
    press, etag = fetched(reader, "press")
    problem(put(reader, "press", {**press, **change}, etag), 422, field)


@pytest.mark.parametrize(
    ("figure", "change"),
    [
        ("tensile_mpa", {"low": 500}),
        ("tensile_mpa", {"high": 100}),
        ("tensile_mpa", {"nominal": "340 bar"}),
        ("tensile_mpa", {"standing": "guessed"}),
        ("density_kg_m3", {"low": 1}),
        ("yield_mpa", None),
    ],
)
def test_metals_that_cannot_be(reader: FlaskClient, figure: str, change: Any):
    metals, etag = fetched(reader, "metals")
    metals[0][figure] = change and {**metals[0][figure], **change}
    body = problem(put(reader, "metals", metals, etag), 422)
    assert any(name.startswith(f"metals.0.{figure}") for name in body["errors"])


@pytest.mark.parametrize(
    ("kind", "name"), [("punch", "punches"), ("die", "dies"), ("holder", "holders")]
)
def test_an_outline_before_it_is_saved(reader: FlaskClient, kind: str, name: str):
    for tool in fetched(reader, name)[0]:
        ring = tool.pop("outline_mm")
        del tool["code"]
        answer = reader.post("/api/v1/outline", json={"kind": kind, **tool})
        assert answer.status_code == 200, answer.text
        assert answer.get_json()["outline_mm"] == ring


def test_an_outline_of_the_press(reader: FlaskClient):
    press = fetched(reader, "press")[0]
    both = press.pop("outlines_mm")
    body = reader.post("/api/v1/outline", json={"kind": "press", **press}).get_json()
    assert {"ram": body["ram"], "bed": body["bed"]} == both
    assert body["checks"] == []


def test_an_outline_says_what_is_missing(reader: FlaskClient):
    body = reader.post("/api/v1/outline", json={"kind": "die", **DIE}).get_json()
    codes = {check["code"]: check["level"] for check in body["checks"]}
    assert codes == {"die-rating-unknown": "unknown", "die-no-segments": "unknown"}


def test_an_outline_of_what_cannot_be(reader: FlaskClient):
    problem(reader.post("/api/v1/outline", json={"kind": "tray"}), 422, "kind")
    problem(reader.post("/api/v1/outline", json={"kind": ["die"]}), 422, "kind")
    wide = {"kind": "die", **DIE, "v_opening_mm": 100}
    problem(reader.post("/api/v1/outline", json=wide), 422)
