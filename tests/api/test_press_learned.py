"""Results that no metal can show, asked about; and the press's own error, apart from the metals."""

from __future__ import annotations

import copy
import uuid
from collections.abc import Callable
from math import degrees
from pathlib import Path
from typing import Any

import pytest
from flask import Flask
from flask.testing import FlaskClient
from plan_reading import said_in, words_of
from problem import problem

METAL = "mild-steel-cr"
WANTED = {"metal": METAL, "thickness_mm": 2, "bend_length_mm": 300, "included_angle_deg": 90}
TOOLS = {"die": "V16", "punch": "S85-2"}


@pytest.fixture
def client(make_app: Callable[..., Flask], untaught_data: Path) -> FlaskClient:
    """A client of a demo shop in which nothing was learned yet."""
    return make_app(copied=untaught_data).test_client()


def evidence(client: FlaskClient, metal: str = METAL) -> list[dict[str, Any]]:
    path = f"/api/v1/test-bends?metal={metal}"
    rows: list[dict[str, Any]] = client.get(path).get_json()["evidence"]
    return rows


def bend(client: FlaskClient, **more: Any) -> dict[str, Any]:
    answer = client.post("/api/v1/bend", json={**WANTED, **TOOLS, **more})
    assert answer.status_code == 200, answer.text
    body: dict[str, Any] = answer.get_json()
    return body


def kept(client: FlaskClient, measured_deg: float, **more: Any) -> dict[str, Any]:
    """A strip set as planned, and what came."""
    sent = {**WANTED, "bend_length_mm": 100, **TOOLS, "measured_deg": measured_deg, **more}
    if "set_angle_deg" not in sent and "loaded_deg" not in sent:
        asked = {k: sent[k] for k in (*WANTED, *TOOLS)}
        sent["set_angle_deg"] = client.post("/api/v1/bend", json=asked).get_json()["set_angle_deg"]
    answer = client.post("/api/v1/test-bends", json={"id": str(uuid.uuid4()), **sent})
    assert answer.status_code == 201, answer.text
    body: dict[str, Any] = answer.get_json()
    return body


def learned(client: FlaskClient, metal: str = METAL) -> dict[str, Any]:
    body: dict[str, Any] = client.get(f"/api/v1/learned?metal={metal}").get_json()
    return body


def set_by(client: FlaskClient, way: str | None) -> None:
    press = client.get("/api/v1/press")
    body = {**copy.deepcopy(press.get_json()["press"]), "set_by": way}
    headers = {"If-Match": press.headers["ETag"]}
    assert client.put("/api/v1/press", json={"press": body}, headers=headers).status_code == 200


def test_ten_degrees_off_is_kept_asked_about_and_changes_nothing(client: FlaskClient):
    before = bend(client)
    body = kept(client, 100.0)
    row = body["test_bend"]
    assert (row["asks"], row["teaches"], row["confirmed"]) == (True, False, False)
    assert "does not count" in " ".join(said_in(row))
    assert "thickness" in " ".join(said_in(row))
    assert body["figures"] == []
    assert bend(client) == before
    assert [r["id"] for r in evidence(client) if r["asks"]] == [row["id"]]


def test_confirmed_it_counts_and_marking_it_wrong_takes_it_out_again(client: FlaskClient):
    flatter = {"included_angle_deg": 110}  # which these tools still reach then
    before = bend(client, **flatter)
    one = kept(client, 98.0)["test_bend"]["id"]
    path = f"/api/v1/evidence/{one}"
    for _ in range(2):
        answer = client.post(f"{path}/confirm", json={"by": "x"})
        assert answer.status_code == 200
    row = answer.get_json()["evidence"]
    assert (row["asks"], row["teaches"], row["confirmed"]) == (False, True, True)
    after = bend(client, **flatter)
    assert after["set_angle_deg"] < before["set_angle_deg"]
    assert after["springback_deg_low"] > 0
    client.post(f"{path}/forget", json={})
    assert bend(client, **flatter) == before
    client.post(f"{path}/remember", json={})
    assert bend(client, **flatter) == before, "it asks again"
    marks = [m["mark"] for m in client.get("/api/v1/export").get_json()["marks"]
             if m["evidence_id"] == one]  # fmt: skip
    assert marks == ["confirm", "forget", "remember"]
    problem(client.post(f"/api/v1/evidence/{uuid.uuid4()}/confirm", json={}), 404)


def test_three_good_ones_and_a_misreading(client: FlaskClient):
    loaded = bend(client)["set_angle_deg"]
    for _ in range(3):
        kept(client, round(loaded + 2.4, 3), set_angle_deg=loaded)
    before = bend(client)
    kept(client, 95.0, set_angle_deg=loaded)
    after = bend(client)
    for name in ("springback_deg", "set_angle_deg"):
        assert after[name] == pytest.approx(before[name], abs=0.1)
        width = after[f"{name}_high"] - after[f"{name}_low"]
        assert width < 1.3 * (before[f"{name}_high"] - before[f"{name}_low"])


def test_one_92_on_v16_leaves_other_dies_springback(client: FlaskClient):
    others = ({"die": "V10", "thickness_mm": 1.2}, {"die": "V25", "thickness_mm": 3})
    before = [bend(client, **one) for one in others]
    kept(client, 92.0)
    for old, one in zip(before, others, strict=True):
        new = bend(client, **one)
        assert new["springback_deg"] == pytest.approx(old["springback_deg"], rel=0.08)


def test_a_press_that_comes_short_shows_in_every_metal(client: FlaskClient):
    """The same error in two V's of one metal moves the setting of another, and not its
    springback."""
    brass = {"metal": "brass-half-hard", "included_angle_deg": 110}
    before = bend(client, **brass)
    assert learned(client)["press"]["offset_mm"] is None
    places = [{"die": die, "thickness_mm": t} for die, t in (("V16", 2), ("V25", 3), ("V10", 1.2))]
    for place, plain in [(place, bend(client, **place)) for place in places]:
        # A sharp bend is V/2 tan(half the bend angle) deep: V/2 more for a radian at 90 degrees.
        short_deg = degrees(0.2 / (plain["v_opening_mm"] / 2))
        for _ in range(3):
            kept(client, 90.0 + short_deg, **place, set_angle_deg=plain["expected_set_angle_deg"])
    press = learned(client)["press"]
    assert press["results"] == 9
    assert press["offset_mm"]["low"] < 0.13 < press["offset_mm"]["high"]
    assert press["offset_mm"]["nominal"] > 0.06
    assert "every metal" in said_in(press)[0]
    after = bend(client, **brass)
    assert after["springback_deg"] == before["springback_deg"]
    assert after["set_angle_deg"] < before["set_angle_deg"]
    assert after["punch_depth_mm"] > before["punch_depth_mm"]
    assert learned(client, "brass-half-hard")["groups"] == []


def test_while_they_cannot_be_told_apart_a_strip_is_named(client: FlaskClient):
    loaded = bend(client)["set_angle_deg"]
    for measured in (91.0, 91.1, 90.9):
        kept(client, measured, set_angle_deg=loaded)
    body = learned(client)
    press = body["press"]
    assert press["apart"] is False
    assert press["strip"]["metal"] == METAL
    assert (press["strip"]["die"], press["strip"]["thickness_mm"]) != ("V16", 2.0)
    words = " ".join(said_in(press))
    assert "cannot be told apart" in words
    assert press["strip"]["die"] in words
    (group,) = [g for g in body["groups"] if g["lot"] is None]
    assert group["factor"]["low"] < group["factor"]["nominal"] < group["factor"]["high"]


@pytest.mark.parametrize("way", ["angle", "depth", "stop", None])
def test_the_press_says_how_it_is_set(client: FlaskClient, way: str | None):
    set_by(client, way)
    assert client.get("/api/v1/press").get_json()["press"]["set_by"] == way
    plain = bend(client)
    kept(client, 90.0, set_angle_deg=plain["set_angle_deg"],
         punch_depth_mm=plain["punch_depth_mm"] + 0.1)  # fmt: skip
    assert learned(client)["press"]["set_by"] == way
    after = bend(client)
    by_depth = way in ("depth", "stop")
    # By angle it came as expected; by depth it should have closed further and did not.
    assert (after["set_angle_deg"] < plain["set_angle_deg"] - 0.3) is by_depth


def test_another_way_to_set_a_press_is_refused(reader: FlaskClient):
    press = reader.get("/api/v1/press")
    body = {**press.get_json()["press"], "set_by": "guess"}
    headers = {"If-Match": press.headers["ETag"]}
    problem(reader.put("/api/v1/press", json={"press": body}, headers=headers), 422, "press.set_by")


def test_a_cards_result_that_no_metal_shows_is_asked_about(client: FlaskClient):
    sheet = {k: WANTED[k] for k in ("metal", "thickness_mm", "bend_length_mm")}
    bends = [{"included_angle_deg": 90, "direction": "up"}]
    part = {"title": "A", **sheet, "flats_mm": [40, 60], "bends": bends}
    card = client.post("/api/v1/cards", json={"part": part}).get_json()
    path = f"/api/v1/cards/{card['code']}/results"
    sent = {"id": str(uuid.uuid4()), "revision": 1, "step": 1, "measured_deg": 101}
    answer = client.post(path, json=sent)
    assert answer.status_code == 201
    assert "measured right" in words_of(answer.get_json()["question_said"])
    assert client.post(path, json=sent).get_json() == answer.get_json()
    usual = {"id": str(uuid.uuid4()), "revision": 1, "step": 1, "measured_deg": 90.5}
    assert client.post(path, json=usual).get_json()["question_said"] is None


def put_press(
    client: FlaskClient, leave_out: tuple[str, ...] = (), **changes: Any
) -> dict[str, Any]:
    press = client.get("/api/v1/press")
    body = {**copy.deepcopy(press.get_json()["press"]), **changes}
    body = {name: value for name, value in body.items() if name not in leave_out}
    headers = {"If-Match": press.headers["ETag"]}
    answer = client.put("/api/v1/press", json={"press": body}, headers=headers)
    assert answer.status_code == 200, answer.text
    found: dict[str, Any] = answer.get_json()["press"]
    return found


def teach_the_press(client: FlaskClient, short_mm: float = 0.12) -> None:
    """Strips of three V's on a press that comes short by so much."""
    for die, t in (("V16", 2), ("V25", 3), ("V10", 1.2)):
        place = {"die": die, "thickness_mm": t}
        plain = bend(client, **place)
        v = float(die[1:])
        per_mm = degrees(4.0 / v)  # of 90 degrees: the half angle turns by 2/V a mm
        came = plain["set_angle_deg"] + plain["springback_deg"] + short_mm * per_mm
        for _ in range(3):
            kept(client, round(came, 3), set_angle_deg=plain["set_angle_deg"], **place)


OTHER = {"metal": "brass-half-hard", "included_angle_deg": 110}


def test_another_press_does_not_inherit_the_error_of_the_first(client: FlaskClient):
    """Seen: results made on one press moved the settings of the one that came after it."""
    plain = bend(client, **OTHER)
    teach_the_press(client)
    moved = bend(client, **OTHER)
    assert abs(moved["set_angle_deg"] - plain["set_angle_deg"]) > 0.5
    spring = bend(client)["springback_deg"]
    found = put_press(client, name="The new one", force_kn=600, bed_length_mm=2000)
    assert found["depth_zeroed_at"]
    assert found["gauge_zeroed_at"]
    press = learned(client)["press"]
    assert (press["offset_mm"], press["results"]) == (None, 0)
    assert bend(client, **OTHER)["set_angle_deg"] == pytest.approx(plain["set_angle_deg"], abs=0.01)
    # What the metal does it does in any press.
    assert bend(client)["springback_deg"] == pytest.approx(spring, abs=0.01)
    assert bend(client)["first_hit"], "no piece was measured on this press yet"
    again = bend(client)["set_angle_deg"]
    kept(client, 90.2, set_angle_deg=again)
    assert learned(client)["press"]["results"] == 1
    assert bend(client)["first_hit"] is None


def test_a_zero_set_anew_begins_anew(client: FlaskClient):
    teach_the_press(client)
    assert learned(client)["press"]["results"] == 9
    put_press(client, depth_zeroed_at="2999-01-01T00:00:00Z")
    press = learned(client)["press"]
    assert (press["offset_mm"], press["results"]) == (None, 0)
    assert bend(client)["first_hit"]


def test_the_same_press_keeps_its_error(client: FlaskClient):
    teach_the_press(client)
    before = learned(client)["press"]
    put_press(client, name="Renamed", note="moved to the other wall")
    assert learned(client)["press"] == before
    put_press(client, depth_zeroed_at="2026-01-01T00:00:00Z")
    moment = put_press(client, leave_out=("depth_zeroed_at", "gauge_zeroed_at"), note="x")
    assert moment["depth_zeroed_at"] == "2026-01-01T00:00:00.000Z", "left out, it stays"


def test_a_result_from_before_the_zero_that_comes_late_is_not_of_the_new_one(client: FlaskClient):
    put_press(client, depth_zeroed_at="2026-03-01T00:00:00Z")
    kept(client, 90.5, made_at="2026-02-01T00:00:00Z")
    assert learned(client)["press"]["results"] == 0
    kept(client, 90.5, made_at="2026-03-02T00:00:00Z")
    assert learned(client)["press"]["results"] == 1
