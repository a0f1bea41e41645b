"""Cards: made, found, changed, brought back; nobody's work is lost."""

from __future__ import annotations

import json
from typing import Any

import pytest
from flask.testing import FlaskClient
from problem import problem

from flangebook.labels.codes import is_code, new_code

CARDS = "/api/v1/cards"


def made(client: FlaskClient, part: dict[str, Any], **more: Any) -> dict[str, Any]:
    answer = client.post(CARDS, json={"part": part, **more})
    assert answer.status_code == 201, answer.text
    card: dict[str, Any] = answer.get_json()
    return card


def put(client: FlaskClient, card: dict[str, Any], **change: Any) -> Any:
    return client.put(f"{CARDS}/{card['code']}", json=change, headers={"If-Match": card["etag"]})


def changed(client: FlaskClient, card: dict[str, Any], **change: Any) -> dict[str, Any]:
    answer = put(client, card, **change)
    assert answer.status_code == 200, answer.text
    after: dict[str, Any] = answer.get_json()
    assert after["etag"] == answer.headers["ETag"]
    return after


def test_a_new_card_is_planned_and_kept(client: FlaskClient, angle: dict[str, Any]):
    answer = client.post(CARDS, json={"part": angle, "note": "Deburr.", "by": "layout"})
    card = answer.get_json()
    assert answer.status_code == 201
    assert answer.headers["Location"] == f"{CARDS}/{card['code']}"
    assert is_code(card["code"])
    assert card["revision"] == 1
    assert card["title"] == "Angle"
    assert card["note"] == "Deburr."
    assert card["created_by"] == card["updated_by"] == "layout"
    assert card["url"] == f"/c/{card['code']}"
    assert len(card["plan"]["steps"]) == 1
    assert card["worst"] == card["plan"]["worst"]
    again = client.get(f"{CARDS}/{card['code']}")
    assert again.get_json() == card
    assert again.headers["ETag"] == card["etag"]


def test_the_plan_on_the_card_is_the_plan_of_the_part(client: FlaskClient, angle: dict[str, Any]):
    assert made(client, angle)["plan"] == client.post("/api/v1/plan", json=angle).get_json()


def test_the_part_on_the_card_can_be_sent_again(client: FlaskClient, angle: dict[str, Any]):
    typed = {**angle, "thickness_mm": "16 ga", "flats_mm": ["1 1/2 in", 60]}
    card = made(client, typed)
    assert card["part"]["flats_mm"] == [38.1, 60]
    assert card["part"]["thickness_mm"] == pytest.approx(1.5189, abs=1e-3)
    assert made(client, card["part"])["part"] == card["part"]


@pytest.mark.parametrize("typed", [str.lower, str.upper, lambda c: f"{c[:3]}-{c[3:]}"])
def test_a_code_in_any_case(client: FlaskClient, typed: Any):
    assert client.get(f"{CARDS}/{typed('SHE7FA1')}").get_json()["code"] == "SHE7FA1"


def test_an_unchanged_card_is_not_sent_twice(client: FlaskClient):
    etag = client.get(f"{CARDS}/SHE7FA1").headers["ETag"]
    answer = client.get(f"{CARDS}/SHE7FA1", headers={"If-None-Match": etag})
    assert answer.status_code == 304
    assert answer.data == b""


def test_a_card_needs_a_title(client: FlaskClient, angle: dict[str, Any]):
    problem(client.post(CARDS, json={"part": {**angle, "title": " "}}), 422, "part.title")


def test_a_code_made_by_the_device_makes_a_resend_harmless(
    client: FlaskClient, angle: dict[str, Any]
):
    code = new_code()
    first = made(client, angle, code=code.lower(), note="a")
    assert first["code"] == code
    again = client.post(CARDS, json={"part": angle, "code": code, "note": "a"})
    assert again.status_code == 200
    assert again.get_json() == first
    problem(client.post(CARDS, json={"part": angle, "code": code, "note": "b"}), 409)
    assert client.get(f"{CARDS}/{code}").get_json() == first


def test_a_resend_after_a_change_gives_the_card_as_it_is_now(
    client: FlaskClient, angle: dict[str, Any]
):
    code = new_code()
    card = changed(client, made(client, angle, code=code), note="newer")
    again = client.post(CARDS, json={"part": angle, "code": code})
    assert again.status_code == 200
    assert again.get_json() == card


def test_a_device_made_code_is_checked(client: FlaskClient, angle: dict[str, Any]):
    problem(client.post(CARDS, json={"part": angle, "code": "SHE7FA2"}), 422, "code")


def test_changing_needs_the_etag(client: FlaskClient):
    problem(client.put(f"{CARDS}/SHE7FA1", json={"note": "x"}), 428)


def test_a_stale_change_is_refused_and_hears_the_newest_etag(client: FlaskClient):
    card = client.get(f"{CARDS}/SHE7FA1").get_json()
    after = changed(client, card, note="first")
    answer = put(client, card, note="second")
    problem(answer, 412)
    assert answer.headers["ETag"] == after["etag"]
    assert client.get(f"{CARDS}/SHE7FA1").get_json()["note"] == "first"


def test_a_result_makes_an_etag_stale_too(client: FlaskClient):
    card = client.get(f"{CARDS}/ZRA2CKX").get_json()
    result = {
        "id": "7d1a1f7e-28b1-4a5f-9d0c-6b6f4f1d2a10",
        "revision": 1,
        "step": 1,
        "measured_deg": 91,
    }
    assert client.post(f"{CARDS}/ZRA2CKX/results", json=result).status_code == 201
    problem(put(client, card, note="x"), 412)


def test_a_change_names_who_and_why(client: FlaskClient):
    card = client.get(f"{CARDS}/SHE7FA1").get_json()
    changed(client, card, note="Other side out.", by="press", reason="wrong side")
    history = client.get(f"{CARDS}/SHE7FA1/revisions").get_json()
    before = card["revision"]
    assert history["total"] == before + 1
    newest, older, *_ = history["revisions"]
    made = (newest["revision"], newest["by"], newest["reason"])
    assert made == (before + 1, "press", "wrong side")
    assert newest["changes"][0].startswith("note: ")
    assert older["revision"] == before
    assert older["at"] < newest["at"]


def test_a_new_title_keeps_the_plan(client: FlaskClient):
    card = client.get(f"{CARDS}/SHE7FA1").get_json()
    after = changed(client, card, title="Shelf bracket, stacks")
    assert after["title"] == after["part"]["title"] == "Shelf bracket, stacks"
    assert after["plan"] == card["plan"]
    assert after["revision"] == card["revision"] + 1


def test_a_changed_part_is_planned_afresh(client: FlaskClient):
    card = client.get(f"{CARDS}/SHE7FA1").get_json()
    part = {**card["part"], "flats_mm": [60, 95]}
    after = changed(client, card, part=part)
    assert after["plan"]["blank_length_mm"] == pytest.approx(card["plan"]["blank_length_mm"] + 5)
    words = client.get(f"{CARDS}/SHE7FA1/revisions").get_json()["revisions"][0]["changes"]
    assert "flat 2: 90 mm to 95 mm" in words
    assert "planned afresh" in words


def test_the_same_part_again_changes_nothing(client: FlaskClient):
    card = client.get(f"{CARDS}/SHE7FA1").get_json()
    assert changed(client, card, part=card["part"], note=card["note"]) == card


def test_settings_are_kept_and_go_when_the_plan_changes(client: FlaskClient):
    card = client.get(f"{CARDS}/SHE7FA1").get_json()
    setting = {"step": 1, "set_angle_deg": 87.5, "punch_depth_mm": 6.1, "reason": "first piece"}
    after = changed(client, card, settings=[setting])
    assert after["settings"] == [{**setting, "trial_id": None}]
    words = client.get(f"{CARDS}/SHE7FA1/revisions").get_json()["revisions"][0]["changes"]
    assert any(w.startswith("step 1 angle to set") for w in words)
    part = {**card["part"], "flats_mm": [61, 90]}
    assert changed(client, after, part=part)["settings"] == []


@pytest.mark.parametrize("steps", [[2], [1, 1], [0]])
def test_settings_are_for_steps_of_the_plan(client: FlaskClient, steps: list[int]):
    card = client.get(f"{CARDS}/SHE7FA1").get_json()
    settings = [{"step": step, "set_angle_deg": 88} for step in steps]
    problem(put(client, card, settings=settings), 422)


@pytest.mark.parametrize(
    ("field", "value", "words"),
    [
        ("set_angle_deg", 58.0, "no sharper"),
        ("punch_depth_mm", 40.0, "no deeper"),
        ("punch_depth_mm", -1.0, "would not bend"),
    ],
)
def test_a_setting_that_tools_and_press_do_not_reach_is_refused(
    client: FlaskClient, field: str, value: float, words: str
):
    card = client.get(f"{CARDS}/SHE7FA1").get_json()
    setting = {"step": 1, "set_angle_deg": 88.0, "punch_depth_mm": 6.1, field: value}
    body = problem(put(client, card, settings=[setting]), 422)
    assert words in json.dumps(body["errors"])
    assert client.get(f"{CARDS}/SHE7FA1").get_json()["settings"] == card["settings"]


def test_an_older_revision_can_be_brought_back(client: FlaskClient):
    card = client.get(f"{CARDS}/SHE7FA1").get_json()
    part = {**card["part"], "flats_mm": [10, 95]}
    after = changed(client, card, part=part, note="wrong")
    back = changed(client, after, restore_revision=card["revision"], reason="a mistake")
    assert back["revision"] == card["revision"] + 2
    for same in ("part", "plan", "note", "title", "settings"):
        assert back[same] == card[same]
    newest = client.get(f"{CARDS}/SHE7FA1/revisions").get_json()["revisions"][0]
    assert newest["changes"][0] == f"brought back revision {card['revision']}"
    problem(put(client, back, restore_revision=9), 404)
    problem(put(client, back, restore_revision=1, note="x"), 422)


def test_every_revision_can_be_read_as_it_was(client: FlaskClient):
    card = client.get(f"{CARDS}/SHE7FA1").get_json()
    changed(client, card, note="new")
    old = client.get(f"{CARDS}/SHE7FA1/revisions/{card['revision']}").get_json()
    assert old["note"] == card["note"]
    assert old["plan"] == card["plan"]
    problem(client.get(f"{CARDS}/SHE7FA1/revisions/{card['revision'] + 2}"), 404)
    problem(client.get(f"{CARDS}/{new_code()}/revisions/1"), 404)


def test_a_revision_id_makes_a_resend_harmless(client: FlaskClient):
    """The answer was lost, the phone sends again with the ETag it had: no false conflict."""
    card = client.get(f"{CARDS}/SHE7FA1").get_json()
    change = {"note": "typed offline", "id": "0b9f2f5e-9f7d-4f8e-8f4c-0d9d7a3b1c55"}
    after = changed(client, card, **change)
    again = put(client, card, **change)
    assert again.status_code == 200
    assert again.get_json() == after
    problem(put(client, card, **{**change, "note": "other"}), 409)
    assert client.get(f"{CARDS}/SHE7FA1/revisions").get_json()["total"] == card["revision"] + 1


def test_nothing_to_change_is_refused(client: FlaskClient):
    card = client.get(f"{CARDS}/SHE7FA1").get_json()
    problem(put(client, card, by="me"), 422)


def test_cards_are_put_away_not_deleted(client: FlaskClient):
    card = client.get(f"{CARDS}/SHE7FA1").get_json()
    changed(client, card, archived=True)
    codes = [c["code"] for c in client.get(CARDS).get_json()["cards"]]
    assert "SHE7FA1" not in codes
    away = client.get(f"{CARDS}?archived=yes").get_json()["cards"]
    assert [c["code"] for c in away] == ["SHE7FA1"]
    assert client.get(f"{CARDS}/SHE7FA1").get_json()["archived"] is True


def test_cards_are_found_by_every_word(client: FlaskClient, angle: dict[str, Any]):
    card = made(client, {**angle, "title": "Größe Äpfel 50 % <b>"}, note="for the MAP room")
    for words in ("größe", "GRÖSSE", "äpfel map", card["code"].lower(), "50 %", "<b>"):
        found = client.get(CARDS, query_string={"q": words}).get_json()
        assert [c["code"] for c in found["cards"]] == [card["code"]], words
    assert client.get(f"{CARDS}?q=map+nowhere").get_json()["total"] == 0


def test_a_list_comes_in_pages(client: FlaskClient):
    whole = client.get(f"{CARDS}?limit=200").get_json()
    pages = [
        card
        for offset in range(0, whole["total"], 5)
        for card in client.get(f"{CARDS}?limit=5&offset={offset}").get_json()["cards"]
    ]
    assert pages == whole["cards"]
    assert {"title", "metal", "thickness_mm", "bends", "worst", "trials"} <= set(pages[0])


def test_script_and_sql_in_names_are_kept_as_text(client: FlaskClient, angle: dict[str, Any]):
    title = "<script>alert(1)</script>'; DROP TABLE cards; --"
    card = made(client, {**angle, "title": title}, note="{{7*7}} ${x} \u202e", by="Robert')")
    assert card["title"] == title
    answer = client.get(f"{CARDS}/{card['code']}")
    assert answer.content_type == "application/json"
    assert answer.get_json() == card


def test_a_fresh_plan_is_held_against_the_saved_one(client: FlaskClient, angle: dict[str, Any]):
    path = f"{CARDS}/{client.post(CARDS, json={'part': angle}).get_json()['code']}"
    assert client.get(f"{path}/fresh").get_json()["differs"] is False
    card = client.get(path).get_json()
    die = card["plan"]["steps"][0]["die"]
    kept = client.get("/api/v1/dies")
    left = [d for d in kept.get_json()["dies"] if d["code"] != die]
    client.put("/api/v1/dies", json={"dies": left}, headers={"If-Match": kept.headers["ETag"]})
    fresh = client.get(f"{path}/fresh").get_json()
    assert fresh["differs"] is True
    assert any(d["what"] == "die" and d["saved"] == die for d in fresh["differences"])
    assert client.get(path).get_json() == card, "a saved card never changes by itself"


def test_a_card_whose_metal_is_gone_still_opens(client: FlaskClient):
    kept = client.get("/api/v1/metals")
    client.put("/api/v1/metals", json={"metals": []}, headers={"If-Match": kept.headers["ETag"]})
    assert client.get(f"{CARDS}/SHE7FA1").status_code == 200
    fresh = client.get(f"{CARDS}/SHE7FA1/fresh").get_json()
    assert fresh["differs"] is True
    assert "metal" in fresh["words"]
