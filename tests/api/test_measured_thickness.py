"""A measured thickness changes the next setting, through the model and the one limit function."""

from __future__ import annotations

import uuid
from typing import Any

import pytest
from flask.testing import FlaskClient
from plan_reading import words_of

from flangebook.bending.tools.setting_limits import setting_limits
from flangebook.planning.results.measured_thickness import TO_CHECK

CARD = "/api/v1/cards/ZRA2CKX"


def correction(client: FlaskClient, **more: Any) -> dict[str, Any]:
    result = {"id": str(uuid.uuid4()), "revision": 1, "step": 1, "measured_deg": 92.0, **more}
    answer = client.post(f"{CARD}/results", json=result)
    assert answer.status_code == 201, answer.get_json()
    return answer.get_json()["correction"]


def ordered_mm(client: FlaskClient) -> float:
    return client.get(CARD).get_json()["part"]["thickness_mm"]


def test_a_thicker_and_a_thinner_sheet_get_their_own_setting(client: FlaskClient):
    ordered = ordered_mm(client)
    plain = correction(client, lot="a")
    thick = correction(client, lot="b", thickness_mm=1.08 * ordered)
    thin = correction(client, lot="c", thickness_mm=0.92 * ordered)
    depths = [one["punch_depth_mm"] for one in (thin, plain, thick)]
    assert len(set(depths)) == 3
    # A thinner sheet springs back more, and more of every degree set springs back again.
    assert thin["set_angle_deg"] < thick["set_angle_deg"]
    assert thick["thickness_mm"] == pytest.approx(1.08 * ordered)
    assert "thickness_mm" not in plain


def test_as_ordered_changes_nothing(client: FlaskClient):
    ordered = ordered_mm(client)
    plain, same = correction(client, lot="a"), correction(client, lot="b", thickness_mm=ordered)
    assert same == plain


def test_nothing_beyond_the_limits_of_the_measured_sheet(client: FlaskClient):
    from flangebook.shop.crib import tooling

    store = client.application.extensions["flangebook.store"]
    step = client.get(CARD).get_json()["plan"]["steps"][0]
    shop = tooling(store)
    die = next(d for d in shop.crib.dies if d.code == step["die"])
    punch = next(p for p in shop.crib.punches if p.code == step["punch"])
    for share in (0.9, 1.1):
        thickness = share * ordered_mm(client)
        ends = setting_limits(die, punch, thickness, 0.5 * step["inside_radius_mm"])
        for measured in (88.0, 92.0, 93.5, 95.0, 110.0):
            said = correction(client, thickness_mm=thickness, measured_deg=measured)
            if said["set_angle_deg"] is not None:
                assert said["set_angle_deg"] >= ends.sharpest_deg
                assert said["punch_depth_mm"] <= step["limits"]["deepest_mm"]
            else:
                assert said["to_check"]


def test_another_sheet_than_the_card_s_gives_no_number(client: FlaskClient):
    ordered = ordered_mm(client)
    for share in (0.5, 1.5):
        said = correction(client, thickness_mm=share * ordered, flange_mm=20.0)
        assert (said["set_angle_deg"], said["punch_depth_mm"]) == (None, None)
        assert said["flange"]["gauge_x_mm"] is None
        assert said["to_check"] == list(TO_CHECK)
        assert "the card is planned for" in words_of(said["said"])
