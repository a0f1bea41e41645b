"""Outlines: out of DXF files, of blocks with several V's, and in shops kept by older releases."""

from __future__ import annotations

import copy
import json
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest
from flask import Flask
from flask.testing import FlaskClient
from plan_reading import words_of
from problem import problem

from flangebook.shop import documents

DXF = "/api/v1/outlines/dxf"
HEADER = "0 SECTION 2 HEADER 9 $INSUNITS 70 {} 0 ENDSEC"
CORNERS = [(100, 0), (160, 0), (160, 60), (138, 60), (130, 50), (122, 60), (100, 60)]


def file(*corners: tuple[float, float], units: int | None = 4, closed: bool = True) -> bytes:
    """A DXF file with lines from corner to corner."""
    ends = [*corners[1:], *corners[:1]] if closed else corners[1:]
    lines = [
        f"0 LINE 8 OUT 10 {x1} 20 {y1} 11 {x2} 21 {y2}"
        for (x1, y1), (x2, y2) in zip(corners, ends, strict=False)
    ]
    head = HEADER.format(units) if units is not None else ""
    tags = f"{head} 0 SECTION 2 ENTITIES {' '.join(lines)} 0 ENDSEC 0 EOF"
    return ("\n".join(tags.split()) + "\n").encode()


def sent(client: FlaskClient, data: bytes, content: str = "image/vnd.dxf", **asked: Any) -> Any:
    query = {"kind": "die", **asked}
    return client.post(DXF, data=data, content_type=content, query_string=query)


def test_a_drawing_becomes_points_that_can_be_saved_as_they_are(client: FlaskClient):
    body = sent(client, file(*CORNERS)).get_json()
    assert {tuple(p) for p in body["points_mm"]} == {(x - 130, y - 60) for x, y in CORNERS}
    assert (body["units"], body["units_asked"]) == ("mm", False)
    assert (body["width_mm"], body["height_mm"], body["moved_mm"]) == (60, 60, [-130, -60])
    assert body["within_mm"] == 0.01
    assert "widest opening" in body["rule"]
    answer = client.get("/api/v1/dies")
    die = {
        "code": "DRAWN", "v_opening_mm": 16, "angle_deg": 78, "shoulder_radius_mm": 0,
        "height_mm": 60, "width_mm": 60, "shape": "points", "points_mm": body["points_mm"],
    }  # fmt: skip
    dies = [*answer.get_json()["dies"], die]
    headers = {"If-Match": answer.headers["ETag"]}
    kept = client.put("/api/v1/dies", json={"dies": dies}, headers=headers).get_json()["dies"][-1]
    assert {tuple(p) for p in kept["outline_mm"]} == {tuple(p) for p in body["points_mm"]}
    told = client.post("/api/v1/outline", json={"kind": "die", **die}).get_json()["checks"]
    assert {c["code"] for c in told} == {"die-rating-unknown", "die-no-segments"}


@pytest.mark.parametrize("kind", ["application/dxf", "application/octet-stream"])
def test_a_dxf_may_come_under_its_other_names(reader: FlaskClient, kind: str):
    assert sent(reader, file(*CORNERS), kind).status_code == 200


def test_units_are_asked_for_where_the_file_does_not_say(reader: FlaskClient):
    for data in (file(*CORNERS, units=None), file(*CORNERS, units=0)):
        body = problem(sent(reader, data), 422, "units")
        assert body["outline"]["code"] == "units-unknown"
        asked = sent(reader, data, units="inch").get_json()
        assert asked["height_mm"] == 60 * 25.4
        assert asked["units_asked"] is True


def test_origin_turn_and_layer_can_be_chosen(reader: FlaskClient):
    data = file(*CORNERS)
    drawn = sent(reader, data, origin="drawn").get_json()
    assert {tuple(p) for p in drawn["points_mm"]} == set(CORNERS)
    point = sent(reader, data, origin="point", point=2).get_json()
    assert point["points_mm"][1] == [0, 0]
    turned = sent(reader, data, kind="bed", turn_deg="90", mirror="yes").get_json()
    assert turned["height_mm"] == turned["width_mm"] == 60
    assert sent(reader, data, layer="OUT").status_code == 200
    body = problem(sent(reader, data, layer="ELSEWHERE"), 422)
    assert (body["outline"]["code"], body["outline"]["layers"]) == ("no-outline", ["OUT"])


WRONG = [
    ("open", file(*CORNERS, closed=False)),
    ("crossing", file((0, 0), (40, 40), (40, 0), (0, 40))),
    ("no-outline", file()),
    ("too-large", file((0, 0), (9000, 0), (0, 50))),
    ("too-small", file((0, 0), (0.5, 0), (0, 0.5))),
    ("broken", b""),
    ("broken", b"\xff\xfe not a drawing"),
    ("broken", file(*CORNERS)[:-30]),
    ("broken", file(*CORNERS).replace(b"LINE", b"LINE\nx\ny", 1)),
    ("too-large", file(*CORNERS).replace(b"138", b"1e999")),
    ("too-large", file(*CORNERS).replace(b"138", b"nan")),
]


@pytest.mark.parametrize(
    ("code", "data"), WRONG, ids=[f"{n}-{c}" for n, (c, _) in enumerate(WRONG)]
)
def test_what_cannot_be_used_is_said_for_people_and_programs(
    reader: FlaskClient, code: str, data: bytes
):
    body = problem(sent(reader, data), 422)
    assert body["outline"]["code"] == code
    assert set(body["outline"]) == {"code", "lines_mm", "edges", "marks_mm", "layers"}


def test_where_it_is_open_or_crosses_can_be_drawn(reader: FlaskClient):
    opened = problem(sent(reader, WRONG[0][1]), 422)["outline"]
    assert {tuple(p) for p in opened["marks_mm"]} == {CORNERS[0], CORNERS[-1]}
    assert len(opened["lines_mm"]) == len(CORNERS) - 1
    crossing = problem(sent(reader, WRONG[1][1]), 422)["outline"]
    assert crossing["marks_mm"] == [[20, 20]]
    assert len(crossing["edges"]) == 2


def test_requests_that_are_none(reader: FlaskClient):
    data = file(*CORNERS)
    problem(sent(reader, data, "application/json"), 415)
    problem(sent(reader, b"0\n" * 1_100_000), 413)
    for asked in ({"kind": "hammer"}, {"units": "furlong"}, {"origin": "there"}, {"point": "x"},
                  {"turn_deg": "45"}, {"mirror": "true"}, {"sideways": 1}):  # fmt: skip
        problem(sent(reader, data, **asked), 422, next(iter(asked)))
    problem(sent(reader, data, origin="point"), 422, "point")
    problem(reader.post(DXF, data=data, content_type="image/vnd.dxf"), 422, "kind")


def test_typed_points_that_cross_are_marked_too(reader: FlaskClient):
    punch = {
        "kind": "punch", "angle_deg": 60, "tip_radius_mm": 1, "height_mm": 40,
        "body_width_mm": 20, "shape": "points",
        "points_mm": [[0, 0], ["1 in", "1 in"], ["1 in", 0], [0, "1 in"]],
    }  # fmt: skip
    body = problem(reader.post("/api/v1/outline", json=punch), 422, "points_mm")
    told = body["outline"]
    assert (told["code"], told["edges"], told["marks_mm"]) == ("crossing", [1, 3], [[12.7, 12.7]])
    assert told["lines_mm"][0][1] == [25.4, 25.4]


BLOCK = {
    "code": "BL",
    "name": "Block 80",
    "shape": "multi_v",
    "height_mm": 60,
    "width_mm": 80,
    "rating_kn_per_m": 900,
    "segments_mm": [500, 500],
    "openings": [
        {"v_opening_mm": 16, "angle_deg": 88, "shoulder_radius_mm": 2, "centre_mm": -20,
         "rating_kn_per_m": 700},
        {"v_opening_mm": "1/2 in", "angle_deg": 88, "shoulder_radius_mm": 1, "centre_mm": 20},
        {"v_opening_mm": 30, "angle_deg": 85, "shoulder_radius_mm": 3, "face": "bottom",
         "code": "BL-30"},
    ],
}  # fmt: skip


def put(client: FlaskClient, name: str, change: Callable[[Any], Any]) -> Any:
    answer = client.get(f"/api/v1/{name}")
    value = change(answer.get_json()[name])
    return client.put(
        f"/api/v1/{name}", json={name: value}, headers={"If-Match": answer.headers["ETag"]}
    )


def test_each_v_of_a_block_can_be_planned_with_by_its_own_code(client: FlaskClient):
    kept = put(client, "dies", lambda dies: [*dies, BLOCK])
    assert kept.status_code == 200, kept.text
    block = kept.get_json()["dies"][-1]
    assert [o["code"] for o in block["openings"]] == ["BL.1", "BL.2", "BL-30"]
    assert [o["rating_kn_per_m"] for o in block["openings"]] == [700, None, None]
    assert (block["v_opening_mm"], block["up"]) == (16, 1)  # the one that is up
    # Two of the V's end at 88°: what is drawn has to be flatter than that under load.
    ask = {"metal": "mild-steel-cr", "thickness_mm": 2, "bend_length_mm": 500,
           "included_angle_deg": 100}  # fmt: skip
    for code, v, rating, reach in (("BL.1", 16, 700, 60), ("BL.2", 12.7, 900, 60),
                                   ("BL-30", 30, 900, 40)):  # fmt: skip
        answer = client.post("/api/v1/bend", json={**ask, "die": code}).get_json()
        assert (answer["die"], answer["v_opening_mm"]) == (code, v)
        rated = next(r for r in answer["ratings"] if r["what"] == "die")
        assert rated["rating_kn_per_m"] == rating
        xs = [x for x, _ in answer["drawing"]["die"]]
        assert max(map(abs, xs)) == reach
        assert max(xs) - min(xs) == 80
    problem(client.post("/api/v1/bend", json={**ask, "die": "BL"}), 422)


def test_the_same_block_with_another_v_up(client: FlaskClient):
    kept = put(client, "dies", lambda dies: [*dies, {**BLOCK, "up": 3}])
    block = kept.get_json()["dies"][-1]
    assert (block["v_opening_mm"], block["angle_deg"]) == (30, 85)
    asked = {k: v for k, v in block.items() if k != "outline_mm"}
    shown = client.post("/api/v1/outline", json={"kind": "die", **asked}).get_json()
    assert shown["outline_mm"] == block["outline_mm"]
    again = put(client, "dies", lambda dies: dies)
    assert again.get_json()["dies"][-1] == block


@pytest.mark.parametrize(
    ("change", "field"),
    [
        ({"openings": []}, "openings"),
        ({"up": 4}, "up"),
        ({"up": 0}, "up"),
        ({"openings": [{"v_opening_mm": 12}]}, "openings.0.angle_deg"),
        ({"openings": "none"}, "openings"),
        ({"openings": [None]}, "openings.0"),
        ({"openings": [{**BLOCK["openings"][0], "centre_mm": 39}]}, "openings.0.centre_mm"),  # type: ignore[index, call-overload]
        ({"openings": [{**BLOCK["openings"][0], "face": "left"}]}, "openings.0.face"),  # type: ignore[index, call-overload]
        ({"openings": [{**BLOCK["openings"][0], "code": "v16"}]}, "openings.0.code"),  # type: ignore[index, call-overload]
        ({"turned": "yes"}, "turned"),
    ],
)
def test_blocks_that_cannot_be(reader: FlaskClient, change: dict[str, Any], field: str):
    many = len(reader.get("/api/v1/dies").get_json()["dies"])
    answer = put(reader, "dies", lambda dies: [*dies, {**BLOCK, **change}])
    problem(answer, 422, f"dies.{many}.{field}")


NEW = {
    "press": ("floor_below_die_mm", "die_holder_height_mm", "die_holder_width_mm",
              "die_holder_points_mm", "die_holder_rating_kn_per_m", "gauge_repeatability_mm",
              "set_by", "angle_accuracy_deg"),
    "punches": ("turned", "neck_width_mm", "throat_top_mm"),
    "dies": ("turned", "openings", "up"),
    "holders": ("shape", "clamp_height_mm", "body_front_mm", "body_back_mm"),
}  # fmt: skip


def test_a_shop_kept_by_an_older_release_is_whole(
    demo_data: Path, make_app: Callable[..., Flask], tmp_path: Path, angle: dict[str, Any]
):
    """Documents without the newer fields are read, shown with them, planned with, put back."""
    app = make_app()
    store = app.extensions["flangebook.store"]
    before = app.test_client().post("/api/v1/plan", json=angle).get_json()
    pointed = [[-30, 0], [30, 0], [30, 80], [-30, 80]]
    for name, fields in NEW.items():
        value = json.loads(documents.read(store, name).body)  # type: ignore[arg-type]
        for one in [value] if name == "press" else value:
            for field in fields:
                one.pop(field)
        if name == "press":
            value["name"] = "Kept long ago"
        if name == "holders":
            value[1]["points_mm"] = pointed
        documents.write(store, name, value, if_match="*")  # type: ignore[arg-type]
    client = app.test_client()
    for name, fields in NEW.items():
        shown = client.get(f"/api/v1/{name}").get_json()[name]
        for one in [shown] if name == "press" else shown:
            assert set(fields) <= set(one), name
    holder = client.get("/api/v1/holders").get_json()["holders"][1]
    assert holder["shape"] == "points"
    assert sorted(holder["outline_mm"]) == sorted(pointed)
    after = client.post("/api/v1/plan", json=angle).get_json()
    assert after["steps"][0]["set_angle_deg"] == before["steps"][0]["set_angle_deg"]
    for name in NEW:
        value = client.get(f"/api/v1/{name}").get_json()[name]
        again = put(client, name, copy.deepcopy)
        assert again.status_code == 200, again.text
        assert again.get_json()[name] == value


def test_a_tool_taller_than_the_press_opens_is_a_stop(client: FlaskClient):
    punch = {"kind": "punch", "angle_deg": 60, "tip_radius_mm": 1, "height_mm": 450,
             "body_width_mm": 20, "rating_kn_per_m": 500, "segments_mm": [100]}  # fmt: skip
    checks = client.post("/api/v1/outline", json=punch).get_json()["checks"]
    assert [(c["code"], c["level"]) for c in checks] == [("tool-too-tall", "stop")]
    assert put(client, "press", lambda press: {**press, "open_height_mm": 500}).status_code == 200
    assert client.post("/api/v1/outline", json=punch).get_json()["checks"] == []


def test_the_riser_is_in_the_way_and_counts_for_height_and_load(client: FlaskClient):
    ask = {"metal": "mild-steel-cr", "thickness_mm": 2, "bend_length_mm": 500,
           "included_angle_deg": 90}  # fmt: skip
    plain = client.post("/api/v1/bend", json=ask).get_json()
    risen = {"die_holder_height_mm": 40, "die_holder_width_mm": 300}
    kept = put(client, "press", lambda press: {**press, **risen}).get_json()["press"]
    assert max(x for x, _ in kept["outlines_mm"]["bed"]) == 150
    answer = client.post("/api/v1/bend", json={**ask, "die": plain["die"]}).get_json()
    assert max(x for x, _ in answer["drawing"]["bed"]) == 150
    row = next(r for r in answer["ratings"] if r["what"] == "die holder")
    assert (row["level"], row["rating_kn_per_m"]) == ("unknown", None)
    tall = put(client, "press", lambda press: {**press, "die_holder_height_mm": 250})
    assert tall.status_code == 200
    answer = client.post("/api/v1/bend", json=ask).get_json()
    assert "tools-too-tall" in {c["code"] for c in answer["checks"] if c["level"] == "stop"}


CROSSED = [[-10.0, 0.0], [10.0, 60.0], [10.0, 0.0], [-10.0, 60.0]]
"""No outline: its sides cross."""


@pytest.mark.parametrize(("name", "kind"), [("punches", "punch"), ("dies", "die")])
def test_a_tool_that_cannot_be_drawn_is_left_out_alone(
    make_app: Callable[..., Flask], name: str, kind: str
):
    """As an older release may have kept one: the order is still proven, with the other tools."""
    app = make_app()
    client, store = app.test_client(), app.extensions["flangebook.store"]
    part = {"metal": "mild-steel-cr", "thickness_mm": 2, "bend_length_mm": 300,
            "flats_mm": [30, 80, 30], "bends": [{"included_angle_deg": 90, "direction": "up"}] * 2,
            "title": "Channel"}  # fmt: skip
    before = client.post("/api/v1/plan", json=part).get_json()
    used = before["steps"][0][kind]
    tools = json.loads(documents.read(store, name).body)  # type: ignore[arg-type]
    broken = next(tool for tool in tools if tool["code"] == used)
    broken |= {"shape": "points", "points_mm": CROSSED}
    documents.write(store, name, tools, if_match="*")  # type: ignore[arg-type]
    after = client.post("/api/v1/plan", json=part).get_json()
    (finding,) = [c for c in after["checks"] if c["code"] == f"{kind}-left-out"]
    assert finding["level"] == "unknown"
    assert words_of(finding).startswith(f"{kind.capitalize()} {used} is left out")
    assert after["order"]["proven"]
    assert used not in {step[kind] for step in after["steps"]}
    assert not {"clearance-not-checked", "not-drawn"} & {c["code"] for c in after["checks"]}
