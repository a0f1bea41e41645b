"""Tools sent with what is engraved on them: the rest is filled, named as assumed and kept so."""

from __future__ import annotations

import pytest
from flask.testing import FlaskClient
from problem import problem

PUNCH = {
    "code": "P1", "angle_deg": 85, "tip_radius_mm": "1 mm", "rating_kn_per_m": 800,
    "assumed": ["height_mm", "body_width_mm"],
}  # fmt: skip
DIE = {
    "code": "V16", "v_opening_mm": 16, "angle_deg": 85,
    "assumed": ["shoulder_radius_mm", "height_mm", "width_mm"],
}  # fmt: skip
GOOSENECK = {
    **PUNCH, "code": "G1", "shape": "gooseneck",
    "assumed": ["height_mm", "body_width_mm", "neck_relief_mm"],
}  # fmt: skip
BLOCK = {
    "code": "B1", "shape": "multi_v", "assumed": ["shoulder_radius_mm", "height_mm", "width_mm"],
    "openings": [{"v_opening_mm": v, "angle_deg": 85} for v in (16, 22, 35, 50)],
}  # fmt: skip


def saved(client: FlaskClient, name: str, tool: dict) -> dict:
    """The tool as kept, and read again."""
    etag = client.get(f"/api/v1/{name}").headers["ETag"]
    answer = client.put(f"/api/v1/{name}", json={name: [tool]}, headers={"If-Match": etag})
    assert answer.status_code == 200, answer.get_json()
    return client.get(f"/api/v1/{name}").get_json()[name][0]


@pytest.mark.parametrize(
    ("name", "tool", "size"),
    [
        ("punches", PUNCH, "body_width_mm"),
        ("punches", GOOSENECK, "neck_relief_mm"),
        ("dies", DIE, "width_mm"),
        ("dies", BLOCK, "height_mm"),
    ],
)
def test_a_tool_is_kept_with_usual_sizes_named_as_assumed(client: FlaskClient, name, tool, size):
    kept = saved(client, name, tool)
    assert kept["assumed"] == tool["assumed"]
    assert kept[size] > 0
    assert len(kept["outline_mm"]) > 4
    again = saved(client, name, kept)
    assert again == kept


def test_a_block_has_its_v_on_faces_of_its_own(client: FlaskClient):
    kept = saved(client, "dies", BLOCK)
    assert {one["face"] for one in kept["openings"]} == {"top", "bottom", "back", "front"}
    assert [one["shoulder_radius_mm"] for one in kept["openings"]] == [1.6, 2.2, 3.5, 5.0]
    assert kept["v_opening_mm"] == 16


def test_a_size_that_is_not_named_is_needed_as_ever(client: FlaskClient):
    etag = client.get("/api/v1/punches").headers["ETag"]
    bare = {**PUNCH, "assumed": ["height_mm"]}
    answer = client.put("/api/v1/punches", json={"punches": [bare]}, headers={"If-Match": etag})
    problem(answer, 422, "punches.0.body_width_mm")
    unread = {**PUNCH, "angle_deg": "sharp"}
    answer = client.put("/api/v1/punches", json={"punches": [unread]}, headers={"If-Match": etag})
    problem(answer, 422, "punches.0.angle_deg")


def test_a_size_that_is_given_stays(client: FlaskClient):
    kept = saved(client, "punches", {**PUNCH, "height_mm": 120, "assumed": ["body_width_mm"]})
    assert (kept["height_mm"], kept["assumed"]) == (120, ["body_width_mm"])


def test_the_outline_says_what_it_assumed(client: FlaskClient):
    answer = client.post("/api/v1/outline", json={"kind": "punch", **PUNCH}).get_json()
    assert set(answer["assumed_mm"]) == set(PUNCH["assumed"])
    assert all(size > 0 for size in answer["assumed_mm"].values())


def test_a_tool_of_an_older_shop_has_nothing_assumed(reader: FlaskClient):
    for name in ("punches", "dies"):
        assert all(t["assumed"] == [] for t in reader.get(f"/api/v1/{name}").get_json()[name])
