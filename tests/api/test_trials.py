"""Results: kept once, answered with what to set next."""

from __future__ import annotations

import uuid
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest
from flask import Flask
from flask.testing import FlaskClient
from plan_reading import words_of
from problem import problem

from flangebook.bending.prediction.air_bend import BendCase, air_bend
from flangebook.bending.prediction.correction import correction_table
from flangebook.bending.prediction.first_hit import first_hit
from flangebook.bending.tools.setting_limits import setting_limits
from flangebook.planning.results.next_setting import next_setting
from flangebook.shop import results as kept_trials

CARD = "/api/v1/cards/ZRA2CKX"
TRIALS = f"{CARD}/results"


def result(**more: Any) -> dict[str, Any]:
    return {"id": str(uuid.uuid4()), "revision": 1, "step": 1, "measured_deg": 91.0, **more}


def test_a_result_is_kept_and_answered(client: FlaskClient):
    card = client.get(CARD).get_json()
    step = card["plan"]["steps"][0]
    sent = result(note="lot 7", by="press", made_at="2026-05-04T10:00:00+02:00", flange_mm="1 in")
    answer = client.post(TRIALS, json=sent)
    assert answer.status_code == 201
    body = answer.get_json()
    kept = body["result"]
    assert kept["id"] == sent["id"]
    assert kept["bend"] == step["bend"]
    assert kept["made_at"] == "2026-05-04T08:00:00.000Z"
    assert kept["flange_mm"] == 25.4
    assert kept["correction"] == body["correction"]
    after = client.get(CARD)
    assert after.headers["ETag"] == body["card_etag"] != card["etag"]
    assert after.get_json()["trials"] == [kept]
    assert after.get_json()["trials_total"] == 1
    assert after.get_json()["revision"] == 1


def test_the_same_result_again_is_harmless(client: FlaskClient):
    sent = result()
    first = client.post(TRIALS, json=sent)
    again = client.post(TRIALS, json=sent)
    assert (first.status_code, again.status_code) == (201, 200)
    assert again.get_json() == first.get_json()
    assert client.get(CARD).get_json()["trials_total"] == 1


def test_the_same_id_with_other_content_is_a_conflict(client: FlaskClient):
    sent = result()
    client.post(TRIALS, json=sent)
    problem(client.post(TRIALS, json={**sent, "measured_deg": 90}), 409)
    problem(client.post("/api/v1/cards/SHE7FA1/results", json=sent), 409)
    assert client.get(CARD).get_json()["trials"][0]["measured_deg"] == 91


def test_left_middle_right_give_their_mean_and_a_tilt(client: FlaskClient):
    sent = result(left_deg=90.5, middle_deg=91, right_deg=91.5)
    del sent["measured_deg"]
    body = client.post(TRIALS, json=sent).get_json()
    assert body["result"]["measured_deg"] == 91
    assert body["correction"]["error_deg"] == 1
    assert body["correction"]["tilt_mm_per_m"] > 0, "the right end came out too open: more depth"


@pytest.mark.parametrize(
    ("change", "field"),
    [
        ({"id": "not-a-uuid"}, "id"),
        ({"id": None}, "id"),
        ({"step": 9}, "step"),
        ({"step": "1"}, "step"),
        ({"bend": 1}, "bend"),
        ({"measured_deg": None}, "measured_deg"),
        ({"measured_deg": 0}, "measured_deg"),
        ({"measured_deg": 181}, "measured_deg"),
        ({"left_deg": "wide"}, "left_deg"),
        ({"made_at": "yesterday"}, "made_at"),
        ({"made_at": "2026-05-04T10:00:00"}, "made_at"),
        ({"note": "x" * 2001}, "note"),
        ({"thickness_mm": "16 ga"}, "thickness_mm"),
        ({"colour": 1}, "colour"),
    ],
)
def test_results_that_cannot_be(reader: FlaskClient, change: dict[str, Any], field: str):
    problem(reader.post(TRIALS, json=result(**change)), 422, field)
    assert reader.get(CARD).get_json()["trials_total"] == 0


def test_a_revision_that_is_not_there(reader: FlaskClient):
    problem(reader.post(TRIALS, json=result(revision=7)), 404)


def test_a_result_of_an_older_revision_is_never_lost(client: FlaskClient):
    """Typed offline, sent after somebody changed the card."""
    card = client.get(CARD).get_json()
    part = {**card["part"], "flats_mm": [21, 30, 20]}
    client.put(CARD, json={"part": part, "archived": True}, headers={"If-Match": card["etag"]})
    answer = client.post(TRIALS, json=result(revision=1))
    assert answer.status_code == 201
    assert answer.get_json()["correction"]["set_angle_deg"] is not None
    assert client.get(CARD).get_json()["trials"][0]["revision"] == 1


@pytest.mark.slow
def test_a_card_shows_its_newest_results_and_pages_the_rest(client: FlaskClient):
    for number in range(105):
        answer = client.post(TRIALS, json=result(measured_deg=90 + number / 100))
        assert answer.status_code == 201
    card = client.get(CARD).get_json()
    assert card["trials_total"] == 105
    assert [t["number"] for t in card["trials"]] == list(range(6, 106))
    page = client.get(f"{TRIALS}?limit=10&offset=100").get_json()
    assert page["total"] == 105
    assert [t["number"] for t in page["results"]] == [5, 4, 3, 2, 1]


def test_a_card_is_full_some_day(client: FlaskClient, monkeypatch: pytest.MonkeyPatch):
    monkeypatch.setattr(kept_trials, "MOST_TRIALS", 1)
    assert client.post(TRIALS, json=result()).status_code == 201
    problem(client.post(TRIALS, json=result()), 409)


def test_the_offered_setting_is_the_printed_tables(client: FlaskClient):
    """At every measured angle of the step's own table the answer is that row's."""
    step = client.get(CARD).get_json()["plan"]["steps"][0]
    assert len(step["corrections"]) > 10
    most = max(95.0, step["first_hit"]["comes_out_deg_high"])  # further open, something is wrong
    for row in (one for one in step["corrections"] if one["measured_deg"] <= most):
        offered = next_setting(step, {"measured_deg": row["measured_deg"]}, 600.0)
        assert offered["set_angle_deg"] == pytest.approx(row["set_angle_deg"], abs=0.006)
        assert offered["punch_depth_mm"] == pytest.approx(row["punch_depth_mm"], abs=0.002)


@pytest.mark.parametrize("measured", [86.3, 89.1, 90.0, 90.2, 91.7, 92.4])
def test_the_offered_setting_is_the_engines_own(
    make_app: Callable[..., Flask], untaught_data: Path, measured: float
):
    """The saved table, read between its rows, against the engine's answer at that very angle."""
    app = make_app(copied=untaught_data)
    client = app.test_client()
    from flangebook.shop.crib import tooling

    plan = client.post("/api/v1/plan", json=client.get(CARD).get_json()["part"]).get_json()
    step = plan["steps"][0]
    shop = tooling(app.extensions["flangebook.store"])
    die = next(d for d in shop.crib.dies if d.code == step["die"])
    punch = next(p for p in shop.crib.punches if p.code == step["punch"])
    part = plan["part"]
    thickness = part["thickness_mm"]
    metal = shop.metals[part["metal"]]
    case = BendCase(metal, thickness, part["bend_length_mm"], 90.0, die, punch.tip_radius_mm)
    bend = air_bend(case)
    reach = max(abs(measured - 90.0), 0.1)
    ends = setting_limits(die, punch, thickness, bend.inside_radius_mm.nominal)
    first = first_hit(bend, case, ends)
    rows = correction_table(bend, case, ends, reach, reach, start=first)
    exact = min(rows, key=lambda row: abs(row.measured_deg - measured))
    assert exact.measured_deg == pytest.approx(measured)
    offered = next_setting(step, {"measured_deg": measured}, 600.0)
    assert offered["set_angle_deg"] == pytest.approx(exact.set_angle_deg, abs=0.01)
    assert offered["punch_depth_mm"] == pytest.approx(exact.punch_depth_mm, abs=0.005)


def test_a_second_correction_starts_from_what_was_set(client: FlaskClient):
    first = client.post(TRIALS, json=result(measured_deg=90.3)).get_json()["correction"]
    card = client.get(CARD).get_json()
    setting = {
        "step": 1,
        "set_angle_deg": first["set_angle_deg"],
        "punch_depth_mm": first["punch_depth_mm"],
    }
    client.put(CARD, json={"settings": [setting]}, headers={"If-Match": card["etag"]})
    right = client.post(TRIALS, json=result(revision=2, measured_deg=90)).get_json()["correction"]
    assert right["set_angle_deg"] == first["set_angle_deg"]
    assert right["punch_depth_mm"] == first["punch_depth_mm"]
    assert words_of(right["said"]).startswith("As wanted")
    still_open = client.post(TRIALS, json=result(revision=2, measured_deg=90.2)).get_json()
    assert still_open["correction"]["set_angle_deg"] < first["set_angle_deg"]
    assert still_open["correction"]["punch_depth_mm"] > first["punch_depth_mm"]


def test_what_was_really_set_counts_before_what_was_planned(client: FlaskClient):
    body = client.post(TRIALS, json=result(measured_deg=90, set_angle_deg=87, punch_depth_mm=4.7))
    correction = body.get_json()["correction"]
    assert (correction["set_angle_deg"], correction["punch_depth_mm"]) == (87, 4.7)


def test_what_was_set_beyond_the_tools_is_kept_and_not_offered_again(client: FlaskClient):
    """Die and punch are of 85 degrees; the depth at 85.5 is 4.75."""
    for beyond in ({"set_angle_deg": 85, "punch_depth_mm": 4.7}, {"punch_depth_mm": 5}):
        body = client.post(TRIALS, json=result(measured_deg=90, **beyond)).get_json()
        assert body["result"]["punch_depth_mm"] == beyond["punch_depth_mm"]
        correction = body["correction"]
        assert (correction["set_angle_deg"], correction["punch_depth_mm"]) == (None, None)
        assert len(correction["to_check"]) == 4


def test_a_measurement_far_off_says_check_first(client: FlaskClient):
    correction = client.post(TRIALS, json=result(measured_deg=105)).get_json()["correction"]
    assert (correction["set_angle_deg"], correction["punch_depth_mm"]) == (None, None)
    assert correction["limited_by"] == ["punch angle", "die angle"]
    assert "too open" in words_of(correction["said"])
    in_order = " ".join(correction["to_check"])
    assert in_order.index("Read the angle") < in_order.index("tools in the")
