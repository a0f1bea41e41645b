"""The demo shop as a newcomer finds it: dates in order, results that can be, nothing stale."""

from __future__ import annotations

import json
import shutil
from collections.abc import Iterator
from datetime import UTC, datetime, timedelta
from itertools import pairwise
from pathlib import Path
from typing import Any

import pytest
from flask.testing import FlaskClient

from flangebook.api.app import close_app, create_app
from flangebook.api.config import Config

Json = dict[str, Any]
DEMO = Path(__file__).resolve().parents[2] / "demo_data"
HEAVY_KG = 15.0  # from here on a sheet may be called heavy; common practice, no source
SAME_DEG = 0.15  # a press is set to tenths of a degree


@pytest.fixture(scope="module")
def client(demo_data: Path, tmp_path_factory: pytest.TempPathFactory) -> Iterator[FlaskClient]:
    folder = tmp_path_factory.mktemp("coherent") / "shop"
    shutil.copytree(demo_data, folder)
    app = create_app(Config(folder))
    yield app.test_client()
    close_app(app)


@pytest.fixture(scope="module")
def cards(client: FlaskClient) -> list[Json]:
    """Every card of the shop, whole."""
    found = answer(client, "/cards?limit=200")["cards"]
    return [answer(client, f"/cards/{one['code']}") for one in found]


@pytest.fixture(scope="module")
def evidence(client: FlaskClient, cards: list[Json]) -> list[Json]:
    """What was measured of each metal that the shop bends, with what was set."""
    metals = sorted({card["part"]["metal"] for card in cards})
    return [
        {"metal": metal, **one}
        for metal in metals
        for one in answer(client, f"/test-bends?metal={metal}")["evidence"]
    ]


def answer(client: FlaskClient, path: str) -> Any:
    response = client.get(f"/api/v1{path}")
    assert response.status_code == 200, response.text
    return response.get_json()


def shop(name: str) -> Any:
    return json.loads((DEMO / f"{name}.json").read_text("utf-8"))[name]


def moment(text: str) -> datetime:
    return datetime.fromisoformat(text)


def test_no_card_is_stale(client: FlaskClient, cards: list[Json]) -> None:
    assert len(cards) == 13
    fresh = {card["code"]: answer(client, f"/cards/{card['code']}/fresh") for card in cards}
    assert {code: one["words"] for code, one in fresh.items() if one["differs"]} == {}


def test_every_result_is_later_than_the_plan_it_was_made_by(
    client: FlaskClient, cards: list[Json]
) -> None:
    results = 0
    for card in cards:
        revisions = answer(client, f"/cards/{card['code']}/revisions")["revisions"]
        made = {one["revision"]: moment(one["at"]) for one in revisions}
        assert made[1] == moment(card["created_at"])
        assert sorted(made.values()) == [made[number] for number in sorted(made)]
        for result in card["trials"]:
            results += 1
            assert moment(result["made_at"]) > made[result["revision"]], card["code"]
            assert moment(result["made_at"]) <= moment(result["received_at"])
    assert results >= 5


def test_the_shop_was_at_work_in_the_last_weeks(cards: list[Json]) -> None:
    """However long ago the demo was written: nothing in it is of tomorrow, and none of it old."""
    dates = [moment(card[field]) for card in cards for field in ("created_at", "updated_at")]
    now = datetime.now(UTC)
    assert max(dates) <= now
    assert now - max(dates) < timedelta(days=9)
    assert now - min(dates) < timedelta(days=120)


def test_tools_and_press_are_older_than_the_first_card(
    client: FlaskClient, cards: list[Json]
) -> None:
    rows = answer(client, "/export")["documents"]
    assert len(rows) == 5
    assert max(moment(row["at"]) for row in rows) < min(moment(c["created_at"]) for c in cards)


def test_each_measured_springback_is_within_its_metals_own_band(evidence: list[Json]) -> None:
    rows = {metal["code"]: metal["springback_at_90_deg"] for metal in shop("metals")}
    assert len(evidence) >= 5
    for one in evidence:
        assert one["included_angle_deg"] == 90, "the row is of bends to 90 degrees"
        springback = one["measured_deg"] - one["set_angle_deg"]
        row = rows[one["metal"]]
        assert row["low"] <= springback <= row["high"], (one["metal"], springback)
        assert one["teaches"] is True, one


def test_a_piece_after_the_first_was_set_as_the_one_before_it_led_to(cards: list[Json]) -> None:
    corrected = 0
    for card in cards:
        results = sorted(card["trials"], key=lambda one: one["number"])
        for before, after in pairwise(results):
            assert (before["step"], before["revision"]) == (after["step"], after["revision"])
            offered = before["correction"]["set_angle_deg"]
            assert after["set_angle_deg"] == pytest.approx(offered, abs=SAME_DEG), card["code"]
            wanted = after["correction"]["wanted_deg"]
            assert abs(after["measured_deg"] - wanted) < abs(before["measured_deg"] - wanted)
            corrected += 1
    assert corrected >= 2


def test_a_saved_setting_is_that_of_its_result(cards: list[Json]) -> None:
    saved = 0
    for card in cards:
        results = {one["id"]: one for one in card["trials"]}
        for setting in card["settings"]:
            result = results[setting["trial_id"]]
            assert result["step"] == setting["step"]
            assert setting["set_angle_deg"] == result["correction"]["set_angle_deg"]
            assert setting["punch_depth_mm"] == result["correction"]["punch_depth_mm"]
            assert result["set_angle_deg"] == pytest.approx(setting["set_angle_deg"], abs=0.3)
            saved += 1
    assert saved >= 1


def test_only_a_heavy_blank_is_called_heavy(cards: list[Json]) -> None:
    for card in cards:
        words = card["note"].casefold()
        if "heavy" in words or "two people" in words:
            assert card["plan"]["blank_mass_kg"] >= HEAVY_KG, card["code"]


def test_a_die_rated_below_a_narrower_one_says_why() -> None:
    """A wider V of one row is the stronger: less force goes through a thicker block."""
    for acute in (False, True):
        row = [die for die in shop("dies") if (die["angle_deg"] < 45) == acute]
        known = 0.0
        for die in sorted(row, key=lambda one: float(one["v_opening_mm"])):
            rating = die["rating_kn_per_m"]
            if rating is None or rating < known:
                assert "rat" in die["condition_note"].casefold(), die["code"]
            known = max(known, rating or 0.0)


@pytest.mark.parametrize("name", ["punches", "holders"])
def test_a_tool_without_a_rating_says_why(name: str) -> None:
    for tool in shop(name):
        if tool["rating_kn_per_m"] is None:
            assert "rating not known" in tool["condition_note"], tool["code"]


def test_a_punchs_code_and_name_say_what_it_is() -> None:
    for punch in shop("punches"):
        acute = punch["angle_deg"] < 45
        kind = "acute" if acute else punch["shape"]
        assert kind in punch["name"].casefold(), punch["code"]
        assert punch["code"][0] == kind[0].upper(), punch["code"]
        assert f"{punch['angle_deg']}°" in punch["name"]
        assert punch["code"][1:].startswith(str(punch["angle_deg"]))
        assert f"R {punch['tip_radius_mm']:g}" in punch["name"]


def test_a_dies_code_and_name_say_what_it_is() -> None:
    for die in shop("dies"):
        acute = die["angle_deg"] < 45
        assert die["code"] == f"V{die['v_opening_mm']}" + "A" * acute
        assert die["name"] == f"V {die['v_opening_mm']} mm, {die['angle_deg']}°"
