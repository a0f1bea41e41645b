"""Test bends and first pieces: kept, counted, taken back; and what they change."""

from __future__ import annotations

import copy
import shutil
import uuid
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest
import requests
from flask import Flask
from flask.testing import FlaskClient
from plan_reading import said_in
from problem import problem

from flangebook.use_cases import learning
from serving.running import serving

BENDS = "/api/v1/test-bends"
METAL = "mild-steel-cr"
WANTED = {"metal": METAL, "thickness_mm": 2, "bend_length_mm": 300, "included_angle_deg": 90}
TOOLS = {"die": "V16", "punch": "S85-2"}


@pytest.fixture
def client(make_app: Callable[..., Flask], untaught_data: Path) -> FlaskClient:
    """A client of a demo shop whose first pieces were all marked wrong: what a test bends alone
    is what counts."""
    return make_app(copied=untaught_data).test_client()


def strip(**more: Any) -> dict[str, Any]:
    """A strip of 2 mm sheet in V 16 that springs back some 3 degrees."""
    return {
        "id": str(uuid.uuid4()),
        "metal": METAL,
        "lot": "A7",
        "thickness_mm": 1.98,
        "bend_length_mm": 100,
        **TOOLS,
        "included_angle_deg": 90,
        "loaded_deg": 88.0,
        "measured_deg": 91.0,
        "flat_length_mm": 100,
        "flange_left_mm": 50,
        "flange_right_mm": 53.6,
        "radius_mm": 2.7,
        "by": "at the press",
        **more,
    }


def kept(client: FlaskClient, **more: Any) -> dict[str, Any]:
    answer = client.post(BENDS, json=strip(**more))
    assert answer.status_code == 201, answer.text
    body: dict[str, Any] = answer.get_json()
    return body


def bend(client: FlaskClient, **more: Any) -> dict[str, Any]:
    answer = client.post("/api/v1/bend", json={**WANTED, **TOOLS, **more})
    assert answer.status_code == 200, answer.text
    body: dict[str, Any] = answer.get_json()
    return body


def learned(client: FlaskClient, metal: str = METAL) -> list[dict[str, Any]]:
    groups: list[dict[str, Any]] = client.get(f"/api/v1/learned?metal={metal}").get_json()["groups"]
    return groups


def evidence(client: FlaskClient, metal: str = METAL) -> list[dict[str, Any]]:
    rows: list[dict[str, Any]] = client.get(f"{BENDS}?metal={metal}").get_json()["evidence"]
    return rows


def width(body: dict[str, Any], name: str) -> float:
    low, high = body[f"{name}_low"], body[f"{name}_high"]
    assert isinstance(low, float)
    assert isinstance(high, float)
    return high - low


def test_test_bends_that_agree_move_the_figures_and_narrow_the_band(client: FlaskClient):
    before = bend(client)
    assert before["sources"]["springback_deg"].startswith(("model", "handbook"))
    first = kept(client)
    one = bend(client)
    for _ in range(3):
        kept(client)
    four = bend(client)
    assert before["springback_deg"] < one["springback_deg"] < four["springback_deg"] < 3.1
    assert width(four, "springback_deg") < width(one, "springback_deg")
    assert four["set_angle_deg"] == pytest.approx(90 - four["springback_deg"], abs=1e-3)
    for name in ("springback_deg", "inside_radius_mm", "k_factor", "punch_depth_mm"):
        assert four["sources"][name].startswith("your test bends: "), name
    assert not four["sources"]["force_kn"].startswith("your test bends")
    assert (four["force_kn"], four["handbook"]) == (before["force_kn"], before["handbook"])
    assert {f["what"] for f in first["figures"]} == {"springback", "inside radius", "K-factor"}
    for figure in first["figures"]:
        assert figure["before"]["origin"] in ("model", "handbook")
        assert figure["after"]["origin"] == "your test bends"
        assert figure["trials"] == len(figure["points"]) == 1
        assert any(figure["what"] in words for words in said_in(first))


def test_the_first_hit_leads_until_a_piece_was_measured_in_that_v(client: FlaskClient):
    """Open is hit again, over-bent is scrap; a measured piece lets the expected setting lead."""
    before, wide = bend(client), bend(client, die="V25", punch="S80-4")
    for fresh in (before, wide):
        assert fresh["first_hit"]["comes_out_deg_low"] == 90.0
        assert fresh["set_angle_deg"] > fresh["expected_set_angle_deg"]
        assert fresh["punch_depth_mm"] < fresh["expected_punch_depth_mm"]
    kept(client)
    after, other_v = bend(client), bend(client, die="V25", punch="S80-4")
    assert after["first_hit"] is None
    assert after["set_angle_deg"] == after["expected_set_angle_deg"]
    assert after["punch_depth_mm"] == after["expected_punch_depth_mm"]
    assert other_v["first_hit"] is not None, "nobody has bent in that V"


def test_a_plan_counts_with_them_and_says_so(client: FlaskClient, angle: dict[str, Any]):
    plain = client.post("/api/v1/plan", json=angle).get_json()
    step = plain["steps"][0]
    for _ in range(3):
        kept(client, die=step["die"], punch=step["punch"])
    taught = client.post("/api/v1/plan", json=angle).get_json()
    assert taught["steps"][0]["origin"]["springback_deg"] == "your test bends"
    assert taught["steps"][0]["origin"]["force_kn"] != "your test bends"
    assert taught["blank_length_mm"] != plain["blank_length_mm"]
    assert taught["steps"][0]["set_angle_deg"] < step["set_angle_deg"]
    other = {**angle, "metal": "brass-half-hard"}
    assert client.post("/api/v1/plan", json=other).get_json()["steps"][0]["origin"][
        "springback_deg"
    ] in ("model", "handbook"), "what one metal does says nothing of another"


def test_the_same_test_bend_again_is_harmless(client: FlaskClient):
    sent = strip()
    first = client.post(BENDS, json=sent)
    again = client.post(BENDS, json=sent)
    assert (first.status_code, again.status_code) == (201, 200)
    assert again.get_json() == first.get_json()
    assert [r["id"] for r in evidence(client)].count(sent["id"]) == 1
    problem(client.post(BENDS, json={**sent, "measured_deg": 92}), 409)


def test_an_id_is_a_test_bends_or_a_results(client: FlaskClient):
    sent = strip()
    client.post(BENDS, json=sent)
    result = {"id": sent["id"], "revision": 1, "step": 1, "measured_deg": 91}
    problem(client.post("/api/v1/cards/ZRA2CKX/results", json=result), 409)
    assert client.get("/api/v1/cards/ZRA2CKX").get_json()["trials_total"] == 0


def test_forgetting_restores_every_figure_exactly(client: FlaskClient, angle: dict[str, Any]):
    kept(client)

    def everything() -> list[Any]:
        plan = client.post("/api/v1/plan", json=angle).get_json()
        chart = client.get(f"/api/v1/chart?metal={METAL}").get_json()
        return [bend(client), plan, chart, learned(client)]

    before = everything()
    wrong = kept(client, measured_deg=89.6, radius_mm=3.3)["test_bend"]["id"]
    with_it = everything()
    assert all(one != other for one, other in zip(before, with_it, strict=True))
    answer = client.post(f"/api/v1/evidence/{wrong}/forget", json={"by": "x", "reason": "misread"})
    assert answer.status_code == 200
    assert everything() == before
    body = answer.get_json()
    assert body["evidence"]["forgotten"] is True
    figure = next(f for f in body["figures"] if f["what"] == "springback")
    of_lot = bend(client, lot="A7")
    assert figure["after"]["nominal"] == pytest.approx(of_lot["springback_deg"], abs=0.02)
    assert client.post(f"/api/v1/evidence/{wrong.upper()}/remember", json={}).status_code == 200
    assert everything() == with_it


def test_marks_are_added_and_saying_it_twice_is_harmless(client: FlaskClient):
    one = kept(client)["test_bend"]["id"]
    for _ in range(2):
        assert client.post(f"/api/v1/evidence/{one}/forget", json={}).status_code == 200
    assert next(r for r in evidence(client) if r["id"] == one)["forgotten"] is True
    client.post(f"/api/v1/evidence/{one}/remember", json={"reason": "it was right"})
    export = client.get("/api/v1/export").get_json()
    said = [(m["mark"], m["reason"]) for m in export["marks"] if m["evidence_id"] == one]
    assert said == [("forget", ""), ("remember", "it was right")]
    assert [e["body"]["measured_deg"] for e in export["evidence"] if e["id"] == one] == [91.0]
    problem(client.post(f"/api/v1/evidence/{uuid.uuid4()}/forget", json={}), 404)
    problem(client.post("/api/v1/evidence/nothing/remember", json={}), 404)


@pytest.mark.parametrize(
    ("change", "field"),
    [
        ({"id": "x"}, "id"),
        ({"metal": "cheese"}, "metal"),
        ({"die": "V99"}, "die"),
        ({"punch": "P99"}, "punch"),
        ({"thickness_mm": 0}, "thickness_mm"),
        ({"thickness_mm": "2 kN"}, "thickness_mm"),
        ({"ordered_thickness_mm": 99}, "ordered_thickness_mm"),
        ({"bend_length_mm": -1}, "bend_length_mm"),
        ({"included_angle_deg": 180}, "included_angle_deg"),
        ({"measured_deg": None}, "measured_deg"),
        ({"measured_deg": 181}, "measured_deg"),
        ({"loaded_deg": 0}, "loaded_deg"),
        ({"punch_depth_mm": 1e9}, "punch_depth_mm"),
        ({"flat_length_mm": 0}, "flat_length_mm"),
        ({"flange_left_mm": "long"}, "flange_left_mm"),
        ({"radius_mm": -1}, "radius_mm"),
        ({"made_at": "today"}, "made_at"),
        ({"lot": "x" * 81}, "lot"),
        ({"colour": "red"}, "colour"),
    ],
)
def test_test_bends_that_cannot_be_read(reader: FlaskClient, change: dict[str, Any], field: str):
    before = evidence(reader)
    problem(reader.post(BENDS, json=strip(**change)), 422, field)
    assert evidence(reader) == before


def test_questions_about_no_metal(reader: FlaskClient):
    for path in (BENDS, "/api/v1/learned"):
        problem(reader.get(path), 422, "metal")
        problem(reader.get(f"{path}?metal=cheese"), 422, "metal")


@pytest.mark.parametrize(
    ("change", "words"),
    [
        ({"measured_deg": 70, "loaded_deg": 68}, "sharper than the tools can bend"),
        ({"thickness_mm": 0.0787, "ordered_thickness_mm": 2}, "inch and millimetre"),
        ({"thickness_mm": 3.4, "ordered_thickness_mm": 2}, "another sheet"),
        ({"flange_right_mm": 60}, "do not come from a strip"),
        ({"loaded_deg": 90, "measured_deg": 140}, "more than half of itself"),
        ({"radius_mm": 12}, "does not fit into a V"),
        ({"measured_deg": 100, "included_angle_deg": 80}, "angle bent through"),
    ],
)
def test_what_no_tool_could_have_made_is_kept_and_teaches_nothing(
    client: FlaskClient, change: dict[str, Any], words: str
):
    before = bend(client)
    body = kept(client, **change)
    assert body["test_bend"]["teaches"] is False
    test_bend = " ".join(said_in(body["test_bend"]))
    assert words in test_bend
    assert "teaches nothing" in test_bend
    assert body["figures"] == []
    assert any(words in one for one in said_in(body))
    assert bend(client) == before


def test_a_bend_that_cannot_be_predicted_says_so(client: FlaskClient):
    """Sheet as thick as the opening is wide."""
    without = {"flat_length_mm": None, "radius_mm": None}
    body = kept(client, thickness_mm=16, ordered_thickness_mm=16, **without)
    assert body["figures"] == []
    assert "cannot be predicted" in said_in(body)[0]
    assert "cannot be compared" in said_in(body["test_bend"])[0]
    assert body["test_bend"]["teaches"] is False
    group = next(g for g in learned(client) if g["thickness_mm"] == 16)
    assert group["figures"] == []
    assert said_in(group)


def test_results_that_contradict_widen_the_band_and_say_so(client: FlaskClient):
    for measured in (90.9, 91.0, 91.1):
        kept(client, measured_deg=measured)
    agreed = bend(client, lot="A7")
    for measured in (88.3, 88.4):
        body = kept(client, measured_deg=measured)
    torn = bend(client, lot="A7")
    assert width(torn, "springback_deg") > 1.3 * width(agreed, "springback_deg")
    assert "trials-contradict" in {c["code"] for c in torn["checks"]}
    assert any("do not agree on the springback" in words for words in said_in(body))


def test_the_odd_one_out_is_shown_with_the_reason(client: FlaskClient):
    for measured in (89.4, 89.5, 89.6, 89.5):
        kept(client, measured_deg=measured)
    odd = kept(client, measured_deg=91.1)
    here = odd["test_bend"]
    assert here["outlier"] is True
    assert "where the other results lead to expect" in " ".join(said_in(here))
    assert [o["id"] for o in odd["outliers"]] == [here["id"]]
    assert [r["id"] for r in evidence(client) if r["outlier"]] == [here["id"]]
    group = next(g for g in learned(client) if g["v_opening_mm"] == 16 and g["lot"] is None)
    springback = next(f for f in group["figures"] if f["what"] == "springback")
    assert [p["id"] for p in springback["points"] if p["outlier"]] == [here["id"]]
    stroke = client.post("/api/v1/stroke", json={**WANTED, **TOOLS}).get_json()
    assert [t["id"] for t in stroke["trials"] if t["outlier"]] == [here["id"]]
    assert len(stroke["trials"]) == 5


def test_the_lot_counts_before_other_lots(client: FlaskClient):
    for _ in range(3):
        kept(client, lot="A7", measured_deg=89.5)
        kept(client, lot="B2", measured_deg=91.0)
    of = {lot: bend(client, lot=lot)["springback_deg"] for lot in ("", "A7", "B2")}
    assert of["A7"] < of[""] < of["B2"]
    assert {g["lot"] for g in learned(client) if g["v_opening_mm"] == 16} == {None, "A7", "B2"}


def test_a_die_entered_afresh_does_not_change_what_was_taught(client: FlaskClient):
    """What the result taught is held against the die as it was then."""
    kept(client)
    before, rows = learned(client), evidence(client)
    dies = client.get("/api/v1/dies")
    body = copy.deepcopy(dies.get_json())
    die = next(d for d in body["dies"] if d["code"] == "V16")
    die |= {"v_opening_mm": 18, "shoulder_radius_mm": die["shoulder_radius_mm"] + 1}
    headers = {"If-Match": dies.headers["ETag"]}
    assert client.put("/api/v1/dies", json=body, headers=headers).status_code == 200
    assert learned(client) == before
    assert evidence(client) == rows


def test_the_thickness_it_was_ordered_as(client: FlaskClient):
    assert kept(client, thickness_mm=1.95)["test_bend"]["ordered_thickness_mm"] == 2
    assert kept(client, thickness_mm=1.52)["test_bend"]["ordered_thickness_mm"] in (1.5, 1.519)
    named = kept(client, thickness_mm=1.95, ordered_thickness_mm="1.9 mm")["test_bend"]
    assert (named["ordered_thickness_mm"], named["thickness_mm"]) == (1.9, 1.95)


# --- cards


CARD = "/api/v1/cards/SHE7FA1"


def made(client: FlaskClient, angle: dict[str, Any]) -> dict[str, Any]:
    card: dict[str, Any] = client.post("/api/v1/cards", json={"part": angle}).get_json()
    return card


def tools_of(card: dict[str, Any]) -> dict[str, Any]:
    step = card["plan"]["steps"][0]
    return {"die": step["die"], "punch": step["punch"]}


def test_cards_that_would_plan_otherwise_are_named_and_stay_as_they_are(
    client: FlaskClient, angle: dict[str, Any]
):
    card = made(client, angle)
    path = f"/api/v1/cards/{card['code']}"
    assert client.get(f"{path}/fresh").get_json()["differs"] is False
    body = kept(client, **tools_of(card))
    named = {c["code"]: c for c in body["cards"]}
    assert named[card["code"]]["title"] == "Angle"
    changes = " ".join(said_in(named[card["code"]]))
    assert "step 1: angle to set" in changes
    assert "blank length" in changes
    assert client.get(path).get_json() == card
    fresh = client.get(f"{path}/fresh").get_json()
    saved = next(d for d in fresh["differences"] if d.get("field") == "set_angle_deg")
    assert f"{saved['saved_value']:.1f}° to {saved['fresh_value']:.1f}°" in changes
    length = next(d for d in fresh["differences"] if d.get("field") == "length_mm")
    longer = length["fresh_value"] - length["saved_value"]
    assert f"longer by {longer:.2f}" in changes
    back = client.post(f"/api/v1/evidence/{body['test_bend']['id']}/forget", json={}).get_json()
    assert card["code"] in {c["code"] for c in back["cards"]}
    assert client.get(f"{path}/fresh").get_json()["differs"] is False


def test_only_so_many_cards_are_looked_through_and_it_says_so(
    client: FlaskClient, angle: dict[str, Any], monkeypatch: pytest.MonkeyPatch
):
    for _ in range(3):
        card = made(client, angle)
    monkeypatch.setattr(learning, "MOST_CARDS", 2)
    body = kept(client, **tools_of(card))
    assert len(body["cards"]) == 2
    assert "Only the 2 cards changed last were looked through." in said_in(body)


def first_piece(client: FlaskClient, card: dict[str, Any], **more: Any) -> dict[str, Any]:
    sent = {
        "id": str(uuid.uuid4()),
        "revision": card["revision"],
        "step": 1,
        "measured_deg": 91.5,
        **more,
    }
    answer = client.post(f"/api/v1/cards/{card['code']}/results", json=sent)
    assert answer.status_code == 201, answer.text
    return next(r for r in evidence(client) if r["id"] == sent["id"])


def test_a_first_piece_teaches(client: FlaskClient, angle: dict[str, Any]):
    card = made(client, angle)
    step = card["plan"]["steps"][0]
    asked = {**WANTED, **tools_of(card)}
    before = client.post("/api/v1/bend", json=asked).get_json()
    open_by = step["set_angle_deg"] + step["springback_deg"] + 1.0
    row = first_piece(client, card, lot="C1", flat_length_mm=100, flange_left_mm=40,
                      flange_right_mm=63.6, thickness_mm=2.02,
                      measured_deg=open_by)  # fmt: skip
    assert (row["kind"], row["code"], row["step"]) == ("first piece", card["code"], 1)
    assert (row["lot"], row["thickness_mm"], row["ordered_thickness_mm"]) == ("C1", 2.02, 2)
    assert row["set_angle_deg"] == step["set_angle_deg"], "the setting in force"
    assert row["v_opening_mm"] == step["v_opening_mm"]
    after = client.post("/api/v1/bend", json=asked).get_json()
    assert after["springback_deg"] > before["springback_deg"]
    assert after["sources"]["k_factor"].startswith("your test bends")
    client.post(f"/api/v1/evidence/{row['id']}/forget", json={})
    assert client.post("/api/v1/bend", json=asked).get_json() == before


def test_the_setting_in_force_is_assumed_only_where_nothing_speaks_against_it(
    client: FlaskClient, angle: dict[str, Any]
):
    card = made(client, angle)
    step = card["plan"]["steps"][0]
    planned = {name: step[name] for name in ("set_angle_deg", "punch_depth_mm")}
    other = first_piece(client, card, punch_depth_mm=step["punch_depth_mm"] + 0.2)
    assert (other["set_angle_deg"], other["punch_depth_mm"]) == (
        None,
        pytest.approx(step["punch_depth_mm"] + 0.2),
    )
    same = first_piece(client, card, punch_depth_mm=step["punch_depth_mm"])
    assert same["set_angle_deg"] == planned["set_angle_deg"]
    unsaid = first_piece(client, card, measured_deg=90.2)
    assert unsaid["set_angle_deg"] is None, "it may have been made with the correction offered"
    assert "no figure can be got" in " ".join(said_in(unsaid))
    own = {"step": 1, "set_angle_deg": 86.5, "punch_depth_mm": 6.35}
    etag = client.get(f"/api/v1/cards/{card['code']}").headers["ETag"]
    client.put(f"/api/v1/cards/{card['code']}", json={"settings": [own]},
               headers={"If-Match": etag})  # fmt: skip
    saved = first_piece(client, {**card, "revision": 2}, punch_depth_mm=6.35)
    assert saved["set_angle_deg"] == 86.5


def test_a_depth_calculated_with_the_angle_is_no_reading(client: FlaskClient):
    """Angle and depth as offered teach the springback; that they go together is no news."""
    asked = {**WANTED, **TOOLS}
    kept(client, loaded_deg=None, set_angle_deg=88)
    narrow = bend(client)
    card = client.post(
        "/api/v1/cards",
        json={"part": {"title": "A", "metal": METAL, "thickness_mm": 2, "bend_length_mm": 300,
                       "flats_mm": [40, 60],
                       "bends": [{"included_angle_deg": 90, "direction": "up"}]}},
    ).get_json()  # fmt: skip
    step = card["plan"]["steps"][0]
    pair = {"set_angle_deg": step["set_angle_deg"], "punch_depth_mm": step["punch_depth_mm"]}
    row = first_piece(client, card, measured_deg=90, **pair)
    assert row["punch_depth_mm"] == step["punch_depth_mm"], "kept for the picture"
    group = next(g for g in learned(client) if g["v_opening_mm"] == step["v_opening_mm"])
    assert group["figures"]
    assert client.post("/api/v1/bend", json=asked).get_json() != narrow


def test_a_closed_hem_and_a_stepped_radius_teach_nothing(client: FlaskClient):
    for code in ("HEM5SDY", "STEP6BQ"):
        card = client.get(f"/api/v1/cards/{code}").get_json()
        before = len(evidence(client))
        closing = next((s for s in card["plan"]["steps"]
                        if s["operation"] in ("hem flatten", "step bend")), None)  # fmt: skip
        if closing is None:
            continue
        sent = {"id": str(uuid.uuid4()), "revision": 1, "step": closing["number"],
                "measured_deg": 3.0}  # fmt: skip
        assert client.post(f"/api/v1/cards/{code}/results", json=sent).status_code == 201
        assert len(evidence(client)) == before


# --- at the press


def opened(part: dict[str, Any], included_angle_deg: float) -> dict[str, Any]:
    """The part with its bend at another angle."""
    (one,) = part["bends"]
    return {**part, "bends": [{**one, "included_angle_deg": included_angle_deg}]}


@pytest.mark.parametrize("answer", [0.8, 1.0, 1.25])
@pytest.mark.parametrize("more_springback", [-0.8, 1.7, 2.5])
def test_two_pieces_are_enough_on_sheet_that_nothing_knows_of(
    client: FlaskClient, angle: dict[str, Any], answer: float, more_springback: float
):
    """Sheet that springs back otherwise, on a press that answers a change by 0.8 to 1.25; the
    tools reach what is asked of them."""
    card = made(client, opened(angle, 100.0))
    step = card["plan"]["steps"][0]
    planned = step["set_angle_deg"]
    setting = {"set_angle_deg": planned, "punch_depth_mm": step["punch_depth_mm"]}
    errors = []
    for _ in range(3):
        loaded = planned + answer * (setting["set_angle_deg"] - planned)
        bent = 180 - loaded
        measured = loaded + (step["springback_deg"] + more_springback) * bent / (180 - planned)
        sent = {"id": str(uuid.uuid4()), "revision": 1, "step": 1,
                "measured_deg": round(measured, 3), **setting}  # fmt: skip
        body = client.post(f"/api/v1/cards/{card['code']}/results", json=sent).get_json()
        errors.append(body["correction"]["error_deg"])
        setting = {k: body["correction"][k] for k in ("set_angle_deg", "punch_depth_mm")}
    milder = planned - step["expected_set_angle_deg"]
    assert errors[0] == pytest.approx(milder + more_springback, abs=0.01)
    assert abs(errors[1]) < 0.3 * abs(errors[0]) + 0.02
    assert abs(errors[2]) < 0.06 * abs(errors[0]) + 0.02
    assert "how the press answered" in body["correction"]["basis"]


def test_pieces_of_another_lot_another_day_or_marked_wrong_are_left_out(
    client: FlaskClient, angle: dict[str, Any]
):
    card = made(client, opened(angle, 100.0))
    step = card["plan"]["steps"][0]
    planned = step["set_angle_deg"]
    path = f"/api/v1/cards/{card['code']}/results"

    def tried(at: str, set_angle: float, measured: float, lot: str = "") -> dict[str, Any]:
        sent = {"id": str(uuid.uuid4()), "revision": 1, "step": 1, "measured_deg": measured,
                "set_angle_deg": set_angle, "made_at": at, "lot": lot}  # fmt: skip
        body: dict[str, Any] = client.post(path, json=sent).get_json()
        return body

    tried("2026-05-04T08:00:00Z", planned, 103.0)
    for at, lot in (("2026-05-04T09:00:00Z", "other"), ("2026-05-05T09:00:00Z", "")):
        alone = tried(at, planned - 2.0, 101.5, lot)["correction"]
        assert "how the press answered" not in alone["basis"]
    together = tried("2026-05-04T09:10:00Z", planned - 2.0, 101.5)
    assert "how the press answered" in together["correction"]["basis"]
    first = next(r for r in evidence(client) if r["made_at"].startswith("2026-05-04T08"))
    client.post(f"/api/v1/evidence/{first['id']}/forget", json={})
    left = tried("2026-05-04T09:20:00Z", planned - 2.0, 101.5)["correction"]
    assert "how the press answered" not in left["basis"]


def test_left_and_right_say_how_the_ram_is_tilted(client: FlaskClient, angle: dict[str, Any]):
    card = made(client, angle)
    sent = {"id": str(uuid.uuid4()), "revision": 1, "step": 1, "left_deg": 90.2, "right_deg": 91.0}
    body = client.post(f"/api/v1/cards/{card['code']}/results", json=sent).get_json()
    slope = (
        card["plan"]["steps"][0]["corrections"][11]["punch_depth_mm"]
        - card["plan"]["steps"][0]["corrections"][10]["punch_depth_mm"]
    ) / 0.5
    per_metre = 0.8 * slope * 1000 / 300
    assert body["correction"]["tilt_mm_per_m"] == pytest.approx(per_metre, rel=0.1)


# --- the shop as a whole


def test_a_result_sent_again_after_the_server_was_brought_up_to_date(client: FlaskClient):
    """Its device got no answer then; the fields that came later change nothing."""
    from flangebook.shop.storage.tables import trials
    from flangebook.shop.storage.writing import digest

    sent = {"id": str(uuid.uuid4()), "revision": 1, "step": 1, "measured_deg": 91}
    body = client.post("/api/v1/cards/ZRA2CKX/results", json=sent).get_json()["result"]
    later = (
        "lot", "loaded_deg", "flat_length_mm", "flange_left_mm", "flange_right_mm", "gauge_x_mm",
    )  # fmt: skip
    of_server = ("device", "number", "received_at", "correction", *later)
    as_it_was = {k: v for k, v in body.items() if k not in of_server}
    store = client.application.extensions["flangebook.store"]
    with store.engine.connect() as connection:
        row = connection.execute(trials.select().where(trials.c.id == sent["id"])).one()
    assert row.digest == digest(as_it_was)


def test_a_test_bend_sends_no_card_again(client: FlaskClient):
    feed = client.get("/api/v1/changes?limit=100").get_json()
    kept(client)
    after = client.get(f"/api/v1/changes?since={feed['cursor']}").get_json()
    assert (after["cards"], after["shop"], after["more"], after["reset"]) == (
        [],
        None,
        False,
        False,
    )
    assert after["cursor"] != feed["cursor"]


def test_two_shops_do_not_share_what_they_learned(make_app: Callable[..., Flask]):
    one, other = make_app().test_client(), make_app().test_client()
    before = bend(other)
    kept(one)
    assert bend(one) != before
    assert bend(other) == before


def test_a_metal_that_is_changed_is_predicted_and_learned_afresh(client: FlaskClient):
    kept(client)
    before = bend(client)
    metals = client.get("/api/v1/metals")
    body = copy.deepcopy(metals.get_json())
    metal = next(m for m in body["metals"] if m["code"] == METAL)
    metal["yield_mpa"] = {k: v * 1.2 if isinstance(v, float | int) else v
                          for k, v in metal["yield_mpa"].items()}  # fmt: skip
    metal["tensile_mpa"] = {k: v * 1.2 if isinstance(v, float | int) else v
                            for k, v in metal["tensile_mpa"].items()}  # fmt: skip
    headers = {"If-Match": metals.headers["ETag"]}
    assert client.put("/api/v1/metals", json=body, headers=headers).status_code == 200
    after = bend(client)
    assert after["springback_deg"] != before["springback_deg"]
    assert after["springback_deg"] == pytest.approx(before["springback_deg"], abs=0.6), (
        "the result says what the sheet does, whatever was expected"
    )


def test_a_metal_taken_out_keeps_its_evidence(client: FlaskClient):
    row = kept(client)["test_bend"]
    metals = client.get("/api/v1/metals")
    rest = [m for m in metals.get_json()["metals"] if m["code"] != METAL]
    client.put(
        "/api/v1/metals", json={"metals": rest}, headers={"If-Match": metals.headers["ETag"]}
    )
    body = client.post(f"/api/v1/evidence/{row['id']}/forget", json={}).get_json()
    assert body["figures"] == []
    assert "not in the shop" in said_in(body)[0]


@pytest.mark.slow
def test_a_real_server_remembers_what_it_learned(demo_data: Path, tmp_path: Path):
    folder = tmp_path / "shop"
    shutil.copytree(demo_data, folder)
    sent = strip()
    with serving(folder) as running:
        asked = f"{running.address}api/v1/bend"
        before = requests.post(asked, json={**WANTED, **TOOLS}, timeout=60).json()
        answer = requests.post(f"{running.address}api/v1/test-bends", json=sent, timeout=60)
        assert answer.status_code == 201
        taught = requests.post(asked, json={**WANTED, **TOOLS}, timeout=60).json()
        assert taught != before
        assert taught["sources"]["springback_deg"].startswith("your test bends")
        running.stop()
    with serving(folder) as running:
        asked = f"{running.address}api/v1/bend"
        assert requests.post(asked, json={**WANTED, **TOOLS}, timeout=60).json() == taught
        again = requests.post(f"{running.address}api/v1/test-bends", json=sent, timeout=60)
        assert again.status_code == 200
        gone = f"{running.address}api/v1/evidence/{sent['id']}/forget"
        assert requests.post(gone, json={}, timeout=60).status_code == 200
        after = requests.post(asked, json={**WANTED, **TOOLS}, timeout=60).json()
        assert after == before
