"""The names other programs rely on, and what a bend and a plan promise."""

from __future__ import annotations

from typing import Any

import pytest
from flask.testing import FlaskClient
from plan_reading import why_tools
from problem import problem

BEND = {
    "metal": "mild-steel-cr",
    "thickness_mm": 2,
    "bend_length_mm": 500,
    "included_angle_deg": 90,
}
BEND_FIELDS = {
    "v_opening_mm", "force_kn", "force_kn_per_m", "inside_radius_mm", "min_flange_mm",
    "springback_deg", "set_angle_deg", "punch_depth_mm", "bend_allowance_mm",
    "bend_deduction_mm", "k_factor", "options", "checks",
}  # fmt: skip
PREDICTED = (
    "force_kn", "force_kn_per_m", "inside_radius_mm", "springback_deg", "set_angle_deg",
    "punch_depth_mm", "bend_allowance_mm", "bend_deduction_mm", "k_factor",
)  # fmt: skip
PLAN_FIELDS = {"blank_length_mm", "blank_mass_kg", "bend_lines_mm", "steps", "checks"}
STEP_FIELDS = {
    "bend", "punch", "die", "v_opening_mm", "gauge_x_mm", "gauge_r_mm", "gauged_end",
    "inside_face", "turn_over", "turn_end", "set_angle_deg", "punch_depth_mm", "force_kn",
    "drawing",
}  # fmt: skip


def bend(client: FlaskClient, **change: Any) -> dict[str, Any]:
    answer = client.post("/api/v1/bend", json={**BEND, **change})
    assert answer.status_code == 200, answer.text
    body: dict[str, Any] = answer.get_json()
    return body


def plan(client: FlaskClient, part: dict[str, Any]) -> dict[str, Any]:
    answer = client.post("/api/v1/plan", json=part)
    assert answer.status_code == 200, answer.text
    body: dict[str, Any] = answer.get_json()
    return body


def test_health(reader: FlaskClient):
    body = reader.get("/api/v1/health").get_json()
    assert body["status"] == "ok"
    assert body["version"]


def test_a_bend_has_every_field_and_a_band(reader: FlaskClient):
    body = bend(reader)
    assert set(body) >= BEND_FIELDS
    for name in PREDICTED:
        assert body[f"{name}_low"] <= body[name] <= body[f"{name}_high"], name
    assert [o["rank"] for o in body["options"]] == list(range(1, len(body["options"]) + 1))
    assert len(body["options"]) == len(reader.get("/api/v1/dies").get_json()["dies"])
    assert all(o["reason_said"]["template"] for o in body["options"])
    assert sum(o["chosen"] for o in body["options"]) == 1


@pytest.mark.parametrize("typed", [2, 2.0, "2", "2 mm", "0.2 cm", "2.0mm"])
def test_the_same_thickness_however_typed(reader: FlaskClient, typed: Any):
    assert bend(reader, thickness_mm=typed) == bend(reader)


def test_a_gauge_number_means_what_the_metal_says(reader: FlaskClient):
    """Manufacturers' Standard Gauge 16: 0.0598 in; ASTM B258 16: 0.0508 in."""
    steel = bend(reader, thickness_mm="16 ga")
    assert steel["thickness_mm"] == pytest.approx(0.0598 * 25.4, abs=0.0005)
    assert steel["thickness_gauge"] == "16 ga"
    metals = reader.get("/api/v1/metals").get_json()["metals"]
    aluminium = next(m["code"] for m in metals if m["gauge_family"] == "aluminium")
    soft = bend(reader, metal=aluminium, thickness_mm="16 ga")
    assert soft["thickness_mm"] == pytest.approx(0.0508 * 25.4, abs=0.0005)


def test_a_die_or_an_opening_can_be_asked_for(reader: FlaskClient):
    for option in bend(reader)["options"]:
        named = reader.post("/api/v1/bend", json={**BEND, "die": option["die"]})
        if named.status_code == 200:
            assert named.get_json()["die"] == option["die"]
            assert named.get_json()["v_opening_mm"] == option["v_opening_mm"]
    assert bend(reader, v_opening_mm=16)["v_opening_mm"] == 16


def test_a_plan_has_every_field(reader: FlaskClient, angle: dict[str, Any]):
    body = plan(reader, angle)
    assert set(body) >= PLAN_FIELDS
    assert len(body["bend_lines_mm"]) == 1
    for step in body["steps"]:
        assert set(step) >= STEP_FIELDS
        assert step["drawing"]["before"]["sheet"]


def test_a_forced_order_is_kept(reader: FlaskClient, angle: dict[str, Any]):
    up = {"included_angle_deg": 90, "direction": "up"}
    part = {**angle, "flats_mm": [30, 80, 30], "bends": [up, up]}
    for order in ([1, 2], [2, 1]):
        body = plan(reader, {**part, "order": order})
        assert [s["bend"] for s in body["steps"]] == order
        assert body["order"]["rule"] == "given"


def test_every_way_to_dimension_the_same_section(reader: FlaskClient, angle: dict[str, Any]):
    """At 90 degrees the inside dimension is the outside one less the thickness on each side."""
    outside = plan(reader, angle)
    mould = plan(reader, {**angle, "dimension": "mould_line"})
    inside = plan(reader, {**angle, "dimension": "inside", "flats_mm": [38, 58]})
    assert mould["blank_length_mm"] == outside["blank_length_mm"]
    assert inside["blank_length_mm"] == pytest.approx(outside["blank_length_mm"], abs=1e-3)


@pytest.mark.parametrize(
    ("change", "why"),
    [
        ({"flats_mm": [3, 60]}, "a flange too short for every die"),
        ({"bends": [{"included_angle_deg": 5, "direction": "up"}]}, "sharper than any tool"),
        ({"thickness_mm": 20, "bend_length_mm": 3000}, "far over the press"),
        ({"bend_length_mm": 9000}, "longer than the press"),
    ],
)
def test_what_cannot_be_made_still_gets_its_blank_and_the_reason(
    reader: FlaskClient, angle: dict[str, Any], change: dict[str, Any], why: str
):
    body = plan(reader, {**angle, **change})
    assert body["worst"] == "stop", why
    assert body["blank_length_mm"] > 0
    stops = [c for c in body["checks"] if c["level"] == "stop"]
    assert all(c["template"] and c["do"] for c in stops)


def test_what_is_no_part_is_refused_with_its_lengths_apart(
    reader: FlaskClient, angle: dict[str, Any]
):
    body = problem(reader.post("/api/v1/plan", json={**angle, "flats_mm": [1, 60]}), 422)
    said = body["said"]
    assert said["template"].startswith("Flat 1 is {flat_mm}, its bends alone take {need_mm}.")
    assert said["numbers"]["flat_mm"] == 1.0
    assert "1 mm" in body["detail"]


def test_an_order_clear_on_paper_is_said_to_be_so(reader: FlaskClient, angle: dict[str, Any]):
    body = plan(reader, angle)
    assert body["order"]["proven"] is True
    assert body["order"]["rule"] == "search"
    assert all(step["clearance"]["clear"] for step in body["steps"])
    assert not any(c["code"] == "clearance-not-checked" for c in body["checks"])


def test_limits_come_back_and_what_they_cost_is_said(reader: FlaskClient, angle: dict[str, Any]):
    body = plan(reader, {**angle, "wishes": {"first": 1, "margin_mm": "1/8 in"}})
    assert body["part"]["wishes"]["first"] == 1
    assert body["part"]["wishes"]["margin_mm"] == pytest.approx(3.175)
    said = {"template": "Bend 1 first: costs nothing.", "numbers": {}}
    assert body["order"]["wishes"] == [{"wish": "first", **said}]


@pytest.mark.parametrize(
    ("wishes", "where"),
    [
        ({"first": 2}, "wishes.first"),
        ({"last": 0}, "wishes.last"),
        ({"critical_flats": [3]}, "wishes.critical_flats.0"),
        ({"margin_mm": -1}, "wishes.margin_mm"),
        ({"no_turn_over": "yes"}, "wishes.no_turn_over"),
        ({"fast": True}, "wishes.fast"),
    ],
)
def test_limits_that_cannot_be_are_refused(
    reader: FlaskClient, angle: dict[str, Any], wishes: dict[str, Any], where: str
):
    answer = reader.post("/api/v1/plan", json={**angle, "wishes": wishes})
    assert answer.status_code in (400, 422)
    assert where in answer.get_json()["errors"]


def test_tools_named_for_a_part_come_back_and_what_they_cost_is_said(
    reader: FlaskClient, angle: dict[str, Any]
):
    named = {"die": "V25", "punch": "S85-2"}
    body = plan(reader, {**angle, "tools": named})
    assert body["part"]["tools"] == named
    assert {(step["die"], step["punch"]) for step in body["steps"]} == {("V25", "S85-2")}
    assert [wish["wish"] for wish in body["order"]["wishes"]] == ["tools.die", "tools.punch"]
    assert "Die V25 was asked for by name." in why_tools(body["steps"][0])


def test_tools_named_for_one_bend_come_back(reader: FlaskClient, angle: dict[str, Any]):
    bends = [{**angle["bends"][0], "die": "V25"}]
    body = plan(reader, {**angle, "bends": bends})
    assert body["part"]["bends"][0]["die"] == "V25"
    assert body["part"]["bends"][0]["punch"] is None
    assert body["part"]["tools"] == {"die": None, "punch": None}
    assert body["steps"][0]["die"] == "V25"


@pytest.mark.parametrize("kind", ["die", "punch"])
def test_a_tool_that_is_not_there_is_refused_at_its_field(
    reader: FlaskClient, angle: dict[str, Any], kind: str
):
    bend = {**angle["bends"][0], kind: "Q"}
    for where, change in ((f"tools.{kind}", {"tools": {kind: "Q"}}),
                          (f"bends.0.{kind}", {"bends": [bend]})):  # fmt: skip
        answer = reader.post("/api/v1/plan", json={**angle, **change})
        assert answer.status_code == 422
        assert where in answer.get_json()["errors"]


def test_the_chart_covers_every_die(reader: FlaskClient):
    body = reader.get("/api/v1/chart?metal=mild-steel-cr").get_json()
    dies = {d["code"] for d in reader.get("/api/v1/dies").get_json()["dies"]}
    assert {d["code"] for d in body["dies"]} == dies
    for row in body["rows"]:
        assert {cell["die"] for cell in row["cells"]} == dies


def test_the_demo_shop_is_whole(reader: FlaskClient):
    """Two people, a press of about 400 kN by 1.6 m, five metals, eight parts or more."""
    press = reader.get("/api/v1/press").get_json()["press"]
    assert 300 < press["force_kn"] < 500
    assert 1400 < press["bed_length_mm"] < 1800
    assert len(reader.get("/api/v1/metals").get_json()["metals"]) >= 5
    assert reader.get("/api/v1/cards").get_json()["total"] >= 8
