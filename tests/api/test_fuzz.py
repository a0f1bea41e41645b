"""Requests spoilt at random: always a right answer or a clear no, never a broken server."""

from __future__ import annotations

import copy
import json
import uuid
from typing import Any

import pytest
from flask.testing import FlaskClient
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from problem import problem

JUNK = st.one_of(
    st.none(),
    st.booleans(),
    st.integers(),
    st.sampled_from([0, -1, 1e-12, 1e9, 10**30, 0.1, 90, 179.999, 2**63]),
    st.floats(allow_nan=False, allow_infinity=False),
    st.text(max_size=30),
    st.sampled_from(
        ["16 ga", "1/8 in", "3 mm", "1,5", "", "\x00", "'; --", "<b>", "SHE7FA1", "up"]
    ),
    st.lists(st.integers(-5, 100), max_size=5),
    st.dictionaries(st.text(max_size=5), st.integers(), max_size=3),
)
BEND = {"metal": "mild-steel-cr", "thickness_mm": 2, "bend_length_mm": 500,
        "included_angle_deg": 90, "die": "V16", "punch": None}  # fmt: skip
PART = {
    "title": "Fuzz",
    "metal": "mild-steel-cr",
    "thickness_mm": 1.5,
    "bend_length_mm": 400,
    "flats_mm": [20, 40, 60, 25],
    "bends": [
        {"included_angle_deg": 90, "direction": "up"},
        {"included_angle_deg": 120, "direction": "down", "inside_radius_mm": 2},
        {"included_angle_deg": 0, "direction": "up", "kind": "closed_hem", "hem_gap_mm": 0},
    ],
    "order": [3, 1, 2],
    "holes": [{"flat": 2, "position_mm": 20, "diameter_mm": 6}],
    "grain": "across",
}
OUTLINE = {"kind": "die", "code": "D", "v_opening_mm": 12, "angle_deg": 85, "segments_mm": [100],
           "shoulder_radius_mm": 1, "height_mm": 60, "width_mm": 40, "shape": "points",
           "points_mm": [[-20, -60], [20, -60], [20, 0], [0, -6], [-20, 0]]}  # fmt: skip
TEST_BEND = {"id": "b6d3a7f2-64d9-4c5e-a1d0-5f6f7a8b9c01", "metal": "mild-steel-cr", "lot": "A",
             "thickness_mm": 1.98, "ordered_thickness_mm": 2, "bend_length_mm": 100,
             "die": "V16", "punch": "S85-2", "included_angle_deg": 90, "set_angle_deg": 88,
             "loaded_deg": 88, "punch_depth_mm": 6.3, "left_deg": 90.5, "right_deg": 91.5,
             "flat_length_mm": 100, "flange_left_mm": 50, "flange_right_mm": 53.6,
             "radius_mm": 2.7}  # fmt: skip
FUZZ = settings(
    max_examples=150,
    deadline=None,
    suppress_health_check=[HealthCheck.function_scoped_fixture, HealthCheck.too_slow],
)


def places(value: Any, path: tuple[Any, ...] = ()) -> list[tuple[Any, ...]]:
    """Every place in a body where something can be put."""
    found = [path] if path else []
    if isinstance(value, dict):
        found += [p for key, inner in value.items() for p in places(inner, (*path, key))]
    elif isinstance(value, list):
        found += [p for key, inner in enumerate(value) for p in places(inner, (*path, key))]
    return found


@st.composite
def spoilt(draw: st.DrawFn, body: dict[str, Any]) -> Any:
    """The body with one to three things changed, taken out or put in."""
    spoiling: Any = copy.deepcopy(body)
    for _ in range(draw(st.integers(1, 3))):
        here = places(spoiling)
        if not here:
            return spoiling
        *way, last = draw(st.sampled_from(here))
        holder = spoiling
        for key in way:
            holder = holder[key]
        act = draw(st.sampled_from(["change", "change", "change", "drop", "add"]))
        if act == "drop":
            del holder[last]
        elif act == "add" and isinstance(holder, dict):
            holder[draw(st.text(max_size=8))] = draw(JUNK)
        else:
            holder[last] = draw(JUNK)
    return spoiling


def sound(client: FlaskClient, path: str, body: Any) -> None:
    answer = client.post(path, data=json.dumps(body), content_type="application/json")
    if answer.status_code == 200:
        json.loads(answer.data, parse_constant=pytest.fail)
    else:
        assert answer.status_code in (400, 422), (answer.status_code, body)
        problem(answer, answer.status_code)


@pytest.mark.slow
@FUZZ
@given(body=spoilt(BEND))
def test_bends(reader: FlaskClient, body: Any):
    sound(reader, "/api/v1/bend", body)


@FUZZ
@given(body=spoilt(PART))
def test_parts(reader: FlaskClient, body: Any):
    sound(reader, "/api/v1/plan", body)


@FUZZ
@given(body=spoilt(OUTLINE))
def test_outlines(reader: FlaskClient, body: Any):
    sound(reader, "/api/v1/outline", body)


@pytest.mark.slow
@FUZZ
@given(body=spoilt(TEST_BEND))
def test_test_bends(client: FlaskClient, body: Any):
    """Each under an id of its own; whatever was kept, the figures can still be asked for."""
    if isinstance(body, dict) and body.get("id") == TEST_BEND["id"]:
        body["id"] = str(uuid.uuid4())
    answer = client.post(
        "/api/v1/test-bends", data=json.dumps(body), content_type="application/json"
    )
    if answer.status_code == 201:
        json.loads(answer.data, parse_constant=pytest.fail)
        taught = client.post("/api/v1/bend", json=BEND)
        assert taught.status_code == 200, (taught.text, body)
        band = taught.get_json()
        assert band["set_angle_deg_low"] <= band["set_angle_deg"] <= band["set_angle_deg_high"]
        client.post(f"/api/v1/evidence/{answer.get_json()['test_bend']['id']}/forget", json={})
    else:
        assert answer.status_code in (400, 422), (answer.status_code, body)
        problem(answer, answer.status_code)


@FUZZ
@given(text=st.one_of(st.text(max_size=200), st.binary(max_size=200)))
def test_bodies_that_are_anything(reader: FlaskClient, text: str | bytes):
    answer = reader.post("/api/v1/bend", data=text, content_type="application/json")
    problem(answer, answer.status_code)
    assert answer.status_code in (400, 422)


@FUZZ
@given(
    code=st.text(min_size=1, max_size=12),
    rest=st.sampled_from(["", "/revisions", "/trials", "/fresh", "/label.png", "/qr.svg"]),
)
def test_codes_that_are_anything(reader: FlaskClient, code: str, rest: str):
    answer = reader.get("/api/v1/cards/" + code.replace("/", "x").replace("?", "x") + rest)
    assert answer.status_code in (200, 404, 308), answer.status_code


@FUZZ
@given(st.dictionaries(st.sampled_from(["q", "limit", "offset", "archived", "x"]), st.text()))
def test_queries_that_are_anything(reader: FlaskClient, query: dict[str, str]):
    answer = reader.get("/api/v1/cards", query_string=query)
    assert answer.status_code in (200, 422)
