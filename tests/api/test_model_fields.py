"""What the bend model brings to the API: two witnesses, origins, the stroke."""

from __future__ import annotations

from typing import Any

import jsonschema
import pytest
from flask.testing import FlaskClient
from plan_reading import words_of

BEND = {
    "metal": "mild-steel-cr",
    "thickness_mm": 2,
    "bend_length_mm": 500,
    "included_angle_deg": 90,
}
BESIDE = {"force_kn", "force_kn_per_m", "inside_radius_mm", "springback_deg", "set_angle_deg",
          "punch_depth_mm"}  # fmt: skip
FROM_MODEL = ("force_kn", "inside_radius_mm", "springback_deg", "set_angle_deg", "punch_depth_mm")
STROKE = {"die", "punch", "thickness_mm", "bend_length_mm", "metal", "set", "curve", "peak",
          "limits", "work_j", "energy_gap_percent", "trials", "checks"}  # fmt: skip


def post(client: FlaskClient, path: str, **change: Any) -> dict[str, Any]:
    answer = client.post(f"/api/v1/{path}", json={**BEND, **change})
    assert answer.status_code == 200, answer.text
    body: dict[str, Any] = answer.get_json()
    return body


def test_the_handbook_stands_beside_the_model(untaught: FlaskClient):
    body = post(untaught, "bend")
    assert set(body["handbook"]) == BESIDE
    assert all(body["sources"][name].startswith("model: ") for name in FROM_MODEL)
    assert body["handbook"]["force_kn"] != body["force_kn"]
    assert body["force_kn_high"] >= max(o["force_kn"] for o in body["opinions"]["force"])
    rated = [r["load_kn"] for r in body["ratings"] if "load_kn" in r]
    assert rated == [pytest.approx(body["force_kn_high"], abs=1e-3)]


def test_flatter_than_the_model_holds_the_handbook_answers_and_says_so(untaught: FlaskClient):
    body = post(untaught, "bend", included_angle_deg=177)
    for name in FROM_MODEL:
        assert body["sources"][name].startswith("handbook: ")
    assert "not the bend model: it holds from 175 degrees down" in body["sources"]["force_kn"]
    assert body["handbook"]["punch_depth_mm"] == body["expected_punch_depth_mm"]
    assert "handbook-alone" in {c["code"] for c in body["checks"]}


def test_where_the_two_differ_it_is_said(reader: FlaskClient):
    metals = [m["code"] for m in reader.get("/api/v1/metals").get_json()["metals"]]
    found = [
        (c["level"], words_of(c))
        for metal in metals
        for c in post(reader, "bend", metal=metal)["checks"]
        if c["code"] == "handbook-differs"
    ]
    assert found, "no metal of the demo shop has any difference"
    assert {level for level, _ in found} <= {"ok", "caution"}
    assert all("handbook" in words and "bend model" in words for _, words in found)


def test_a_step_says_where_its_figures_come_from(reader: FlaskClient):
    size = {"metal": "mild-steel-cr", "thickness_mm": 2, "bend_length_mm": 500}
    bends = [{"included_angle_deg": 88, "direction": "up"}]
    part = {"title": "x", **size, "flats_mm": [40, 60], "bends": bends}
    step = reader.post("/api/v1/plan", json=part).get_json()["steps"][0]
    assert set(step["origin"]) == {"force_kn", "springback_deg", "inside_radius_mm",
                                   "punch_depth_mm", "bend_allowance_mm"}  # fmt: skip
    assert step["origin"]["force_kn"] == "model"
    # From 83° by half a degree, as far as tools and press can be set: 93° lies beyond.
    *measured, last = [row["measured_deg"] for row in step["corrections"]]
    assert measured == [83 + i / 2 for i in range(len(measured))]
    assert measured[-1] < last < 93.0
    assert step["corrections"][-1]["set_angle_deg"] >= step["limits"]["sharpest_deg"]


def test_the_stroke_of_a_bend_as_the_document_says(reader: FlaskClient):
    spec = reader.get("/api/openapi.json").get_json()
    told = spec["paths"]["/api/v1/stroke"]["post"]["responses"]["200"]
    schema = {**told["content"]["application/json"]["schema"], "components": spec["components"]}
    for change in ({}, {"included_angle_deg": 178}, {"v_opening_mm": 16, "punch_radius_mm": 2}):
        body = post(reader, "stroke", **change)
        jsonschema.validate(body, schema)
        assert set(body) >= STROKE
    body = post(reader, "stroke")
    bend = post(reader, "bend")
    assert body["set"]["punch_depth_mm"] == bend["punch_depth_mm"]
    assert body["die"] == bend["die"]


@pytest.mark.parametrize(("field", "bad"), [
    ("thickness_mm", 0), ("included_angle_deg", 180), ("bend_length_mm", "long"),
    ("metal", "unobtainium"), ("die", "V999"),
])  # fmt: skip
def test_the_stroke_refuses_what_a_bend_refuses(reader: FlaskClient, field: str, bad: Any):
    answer = reader.post("/api/v1/stroke", json={**BEND, field: bad})
    assert answer.status_code == 422
    assert field in answer.get_json()["errors"]
    assert (
        answer.get_json()["errors"]
        == (reader.post("/api/v1/bend", json={**BEND, field: bad}).get_json()["errors"])
    )
