"""Boxes and trays over the API: planned, kept as cards, drawn, and refused with words."""

from __future__ import annotations

import io
import itertools
import json
from collections.abc import Mapping
from typing import Any

import ezdxf
import pytest
import requests
import zxingcpp
from flask.testing import FlaskClient
from PIL import Image
from plan_reading import words_of
from problem import problem
from shapely.geometry import LineString, Polygon

from serving.running import Running

PLAN = "/api/v1/plan"
CARDS = "/api/v1/cards"
SIDES = ("left", "right", "front", "back")
JsonDict = dict[str, Any]


def chain(*flats: float, ways: str = "") -> JsonDict:
    """A side: flats outwards, each bend square; ways: "ud" for up, then down."""
    named = {"u": "up", "d": "down"}
    turns = ways or "u" * len(flats)
    bends = [{"included_angle_deg": 90, "direction": named[way]} for way in turns]
    return {"flats_mm": list(flats), "bends": bends}


def tray(side: JsonDict | None = None, **box: Any) -> JsonDict:
    """A 300 x 200 tray of 1.5 mm sheet, all sides alike unless told otherwise."""
    sides = {name: side or chain(30) for name in SIDES}
    measures = {"length_mm": 300, "width_mm": 200, "sides": sides, **box}
    return {"title": "Tray", "metal": "mild-steel-cr", "thickness_mm": 1.5, "box": measures}


def planned(client: FlaskClient, part: JsonDict) -> JsonDict:
    answer = client.post(PLAN, json=part)
    assert answer.status_code == 200, answer.text[:400]
    body: JsonDict = answer.get_json()
    return body


def codes(plan: Mapping[str, Any], level: str) -> set[str]:
    return {check["code"] for check in plan["checks"] if check["level"] == level}


def test_a_tray_is_planned(reader: FlaskClient):
    plan = planned(reader, tray())
    sides = [step["side"] for step in plan["steps"]]
    assert set(sides[:2]) == {"left", "right"}
    assert set(sides[2:]) == {"front", "back"}
    assert [step["number"] for step in plan["steps"]] == [1, 2, 3, 4]
    assert [step["turn_quarter"] for step in plan["steps"]] == [False, False, True, False]
    assert sorted(plan["order"]["sequence"]) == [1, 2, 3, 4]
    assert not codes(plan, "stop")
    lengths = {step["side"]: step["bend_length_mm"] for step in plan["steps"]}
    assert lengths["left"] == lengths["right"] < 200 < lengths["front"] == lengths["back"] < 300
    between = [step["clear_between_mm"] for step in plan["steps"]]
    assert between[:2] == [None, None]
    for step in plan["steps"][2:]:
        assert sum(step["segments_mm"]["punch"]) <= step["clear_between_mm"] < 300
    folded = [plan["folded"][name] for name in ("length_mm", "width_mm", "height_mm")]
    assert folded == pytest.approx([300, 200, 30])


def test_the_same_wall_takes_the_same_from_both_ways(reader: FlaskClient):
    """A square tray is planned alike along and across, but for what stands beside the tools."""
    plan = planned(reader, tray(width_mm=300))
    blank = plan["blank"]
    assert blank["length_mm"] == pytest.approx(blank["width_mm"])
    assert blank["length_mm"] == pytest.approx(
        300 + 2 * 30 - sum(line["bend_deduction_mm"] for line in blank["bend_lines"][:2]), abs=0.01
    )


def test_what_comes_back_can_be_sent_again(reader: FlaskClient):
    plan = planned(reader, tray(chain(30, 12)))
    assert planned(reader, plan["part"]) == plan


def test_a_box_takes_the_die_that_is_named_for_all_of_it(client: FlaskClient):
    part = {**tray(), "tools": {"die": "V10"}}
    plan = planned(client, part)
    assert {step["die"] for step in plan["steps"]} == {"V10"}
    assert plan["part"]["tools"] == {"die": "V10", "punch": None}
    costs = [words_of(wish) for wish in plan["order"]["wishes"]]
    assert costs
    assert all(words.startswith("Die V10 for every bend: ") for words in costs)
    card = client.post(CARDS, json={"part": part, "note": ""}).get_json()
    assert card["part"]["tools"]["die"] == "V10"
    problem(client.post(PLAN, json={**part, "tools": {"die": "Q"}}), 422, "tools.die")


def test_the_base_has_a_name_for_each_way(reader: FlaskClient):
    names = [size["flat_name"] for size in planned(reader, tray())["dimensions"]]
    assert len(names) == len(set(names)) == 6
    assert {"the base, left to right", "the base, front to back", "left flat 1"} <= set(names)


def test_a_box_is_told_line_by_line(reader: FlaskClient):
    answer = reader.post(PLAN, json=tray(), headers={"Accept": "application/x-ndjson"})
    last = json.loads(answer.get_data(as_text=True).splitlines()[-1])
    assert last == {"plan": planned(reader, tray())}


def test_a_box_is_kept_as_a_card(client: FlaskClient):
    made = client.post(CARDS, json={"part": tray(), "note": "First"})
    assert made.status_code == 201, made.text[:400]
    card = made.get_json()
    address = f"{CARDS}/{card['code']}"
    assert card["plan"] == planned(client, tray())
    assert card["part"]["box"]["sides"]["left"]["flats_mm"] == [30]
    higher = {"part": tray(chain(40)), "reason": "Deeper"}
    assert client.put(address, json=higher).status_code == 428
    changed = client.put(address, json=higher, headers={"If-Match": made.headers["ETag"]})
    assert changed.status_code == 200, changed.text[:400]
    problem(client.put(address, json=higher, headers={"If-Match": made.headers["ETag"]}), 412)
    revisions = client.get(f"{address}/revisions").get_json()["revisions"]
    assert sorted(one["revision"] for one in revisions) == [1, 2]
    now = client.get(address).get_json()
    assert now["plan"]["folded"]["height_mm"] == pytest.approx(40)
    first = client.get(f"{address}/revisions/1").get_json()
    assert first["plan"]["folded"]["height_mm"] == pytest.approx(30)
    fresh = client.get(f"{address}/fresh").get_json()
    assert fresh["differs"] is False


def test_a_result_of_a_box_leads_to_a_setting(client: FlaskClient):
    card = client.post(CARDS, json={"part": tray()}).get_json()
    step = card["plan"]["steps"][2]
    result = {
        "id": "7f4df1cf-54a0-4a6b-b6d0-6b0f1f3d5b11",
        "revision": 1,
        "step": step["number"],
        "measured_deg": 91.5,
        "made_at": "2026-09-14T08:20:00Z",
    }
    answer = client.post(f"{CARDS}/{card['code']}/results", json=result)
    assert answer.status_code in (200, 201), answer.text[:400]
    assert "91.5" in client.get(f"{CARDS}/{card['code']}/results").text


def test_the_label_of_a_box(client: FlaskClient):
    card = client.post(CARDS, json={"part": tray()}).get_json()
    address = f"{CARDS}/{card['code']}"
    label = client.get(f"{address}/label.svg")
    assert label.status_code == 200
    assert "Tray" in label.text
    png = Image.open(io.BytesIO(client.get(f"{address}/label.png?dpi=300").data))
    assert any(card["code"] in found.text for found in zxingcpp.read_barcodes(png))


@pytest.mark.parametrize(
    ("relief", "corner"), list(itertools.product(("round", "square"), ("closed", "open")))
)
def test_the_drawing_for_the_cutter(reader: FlaskClient, relief: str, corner: str):
    side = chain(30, 12, ways="ud")
    part = tray(side, relief=relief, corner=corner)
    blank = planned(reader, part)["blank"]
    answer = reader.post("/api/v1/blank.dxf", json=part)
    drawing = ezdxf.read(io.StringIO(answer.text))
    assert not drawing.audit().errors
    space = drawing.modelspace()
    assert {e.dxf.layer for e in space} == {"CUT", "BEND_UP", "BEND_DOWN"}
    (cut,) = space.query('*[layer=="CUT"]')
    assert cut.closed
    corners = [(p[0], p[1]) for p in cut.get_points()]
    assert Polygon(corners).bounds == pytest.approx(
        (0, 0, blank["length_mm"], blank["width_mm"]), abs=0.01
    )
    bends = space.query('LINE[layer=="BEND_UP" | layer=="BEND_DOWN"]')
    assert len(bends) == len(blank["lines"]) == 8
    sheet = Polygon(blank["outline"]).buffer(0.05)
    for line in bends:
        ends = [(p.x, p.y) for p in (line.dxf.start, line.dxf.end)]
        assert sheet.covers(LineString(ends))
    drawn = reader.post("/api/v1/blank.svg", json=part)
    assert drawn.status_code == 200
    assert drawn.text.startswith("<svg")


def sides(**given: Any) -> JsonDict:
    """A tray with these sides and no others."""
    return tray(sides=given)


def folded(**bend: Any) -> JsonDict:
    """A tray whose left wall hangs on such a bend."""
    plain = {"included_angle_deg": 90, "direction": "up"}
    return sides(left={"flats_mm": [30], "bends": [{**plain, **bend}]}, front=chain(30))


LEFT = "box.sides.left"
REFUSED: list[tuple[str, JsonDict, str]] = [
    ("no length", tray(chain(0)), f"{LEFT}.flats_mm.0"),
    ("below zero", tray(chain(-5)), f"{LEFT}.flats_mm.0"),
    ("no number", tray(chain(float("nan"))), ""),
    ("shorter than the sheet is thick", tray(chain(1)), f"{LEFT}.flats_mm.0"),
    ("lip shorter than the sheet is thick", tray(chain(30, 1)), f"{LEFT}.flats_mm.1"),
    ("lips that meet", tray(chain(30, 160)), f"{LEFT}.flats_mm.1"),
    ("a base that is all bend", tray(length_mm=3, width_mm=3), f"{LEFT}.flats_mm.0"),
    ("no base", tray(length_mm=0), "box.length_mm"),
    ("null", tray(length_mm=None), "box.length_mm"),
    ("a length in degrees", tray(width_mm="90 deg"), "box.width_mm"),
    ("no side", tray(sides={}), "box.sides"),
    ("a side that is a list", tray(sides=[]), "box.sides"),
    ("a side of another name", sides(top=chain(30)), "box.sides.top"),
    ("more flats than bends", sides(left={**chain(30, 12), "bends": chain(30)["bends"]}),
     f"{LEFT}.flats_mm"),
    ("seven bends on a side", sides(left=chain(*[30] * 7)), f"{LEFT}.flats_mm"),
    ("a chain through itself", sides(left=chain(*[30] * 6)), f"{LEFT}.flats_mm.5"),
    ("a relief larger than the base", tray(relief_mm=250), "box.relief_mm"),
    ("a relief below zero", tray(relief_mm=-1), "box.relief_mm"),
    ("a relief of no shape", tray(relief="star"), "box.relief"),
    ("a gap as wide as a door", tray(gap_mm=900), "box.gap_mm"),
    ("a corner of no kind", tray(corner="welded"), "box.corner"),
    ("no bend", folded(included_angle_deg=0), f"{LEFT}.bends.0.included_angle_deg"),
    ("flat", folded(included_angle_deg=180), f"{LEFT}.bends.0.included_angle_deg"),
    ("a field of no name", tray(depth_mm=30), "box.depth_mm"),
    ("a box that is a word", {**tray(), "box": "tray"}, "box"),
    ("a box that is empty", {**tray(), "box": {}}, "box.length_mm"),
    ("an order to and fro", {**tray(), "order": [1, 3, 2, 4]}, "order"),
    ("an order of too few", {**tray(), "order": [1, 2, 3]}, "order"),
    ("the other sides first", {**tray(first_pair="front-back"), "order": [1, 2, 3, 4]}, "order"),
    ("a first bend of the second sides", {**tray(), "wishes": {"first": 3}}, "wishes.first"),
    ("a last bend of the first sides", {**tray(), "wishes": {"last": 1}}, "wishes.last"),
    ("a flat that is not there", {**tray(), "wishes": {"critical_flats": [7]}},
     "wishes.critical_flats.0"),
    ("sides first that are no sides", tray(first_pair="left-front"), "box.first_pair"),
    ("holes", {**tray(), "holes": [{"flat": 1, "position_mm": 5, "diameter_mm": 4}]}, "holes"),
    ("a rolling direction", {**tray(), "grain": "with"}, "grain"),
]  # fmt: skip


@pytest.mark.parametrize(("part", "field"), [r[1:] for r in REFUSED], ids=[r[0] for r in REFUSED])
@pytest.mark.parametrize("path", [PLAN, "/api/v1/blank.dxf"])
def test_what_is_no_box_is_refused(reader: FlaskClient, part: JsonDict, field: str, path: str):
    answer = reader.post(path, data=json.dumps(part), content_type="application/json")
    problem(answer, answer.status_code, field)
    assert answer.status_code in (400, 422)


def test_an_order_of_ones_own_and_the_other_sides_first(client: FlaskClient):
    part = {**tray(first_pair="front-back"), "order": [4, 3, 1, 2]}
    plan = planned(client, part)
    assert plan["order"]["sequence"] == [4, 3, 1, 2]
    assert [step["side"] for step in plan["steps"]] == ["back", "front", "left", "right"]
    card = client.post(CARDS, json={"part": part}).get_json()
    assert card["part"]["order"] == [4, 3, 1, 2]
    assert card["part"]["box"]["first_pair"] == "front-back"
    code, etag = card["code"], f'"{card["revision"]}"'
    etag = client.get(f"{CARDS}/{code}").headers["ETag"]
    changed = client.put(
        f"{CARDS}/{code}", json={"part": tray(), "reason": "Other way"}, headers={"If-Match": etag}
    )
    assert changed.status_code == 200, changed.text[:400]
    said = client.get(f"{CARDS}/{code}/revisions").get_json()["revisions"]
    words = " ".join(w for one in said for w in one.get("changes", []))
    assert "sides bent first: front-back to left-right" in words
    assert "order: 4, 3, 1, 2 to left to the planner" in words


def test_a_refused_box_makes_no_card(client: FlaskClient):
    before = client.get(f"{CARDS}?limit=200").get_json()["cards"]
    answer = client.post(CARDS, json={"part": tray(chain(1))})
    problem(answer, 422, "part.box.sides.left.flats_mm.0")
    assert client.get(f"{CARDS}?limit=200").get_json()["cards"] == before


STOPPED: list[tuple[str, JsonDict, str]] = [
    ("walls higher than the punch reaches", tray(chain(90)), "box-wall-holder"),
    ("walls into the ram", tray(chain(180)), "box-wall-ram"),
    ("reliefs that eat the edge", tray(relief_mm=150), "box-relief-eats"),
    ("a base that no piece of punch goes into", tray(length_mm=12), "box-punch-between"),
    ("longer than the bed", tray(length_mm=9999, width_mm=9999), "longer-than-bed"),
    ("sharper than the die", folded(included_angle_deg=30), "sharper-than-die"),
]


@pytest.mark.parametrize(("part", "code"), [s[1:] for s in STOPPED], ids=[s[0] for s in STOPPED])
def test_a_box_that_cannot_be_made_is_answered_with_a_stop(
    reader: FlaskClient, part: JsonDict, code: str
):
    plan = planned(reader, part)
    assert plan["worst"] == "stop"
    assert code in codes(plan, "stop")
    assert plan["order"]["proven"] is False
    if code.startswith("box-"):
        assert "cannot be made like this" in plan["order"]["words"]
    assert plan["blank"]["length_mm"] > 0
    said = next(check for check in plan["checks"] if check["code"] == code)
    assert len(said["template"]) > 20
    assert said["do"]


def test_corners_without_relief_are_a_caution(reader: FlaskClient):
    plan = planned(reader, tray(relief="none"))
    assert "box-no-relief" in codes(plan, "caution")
    assert plan["blank"]["relief"]["size_mm"] == 0


def test_a_real_server_plans_and_draws_a_box(server: Running):
    part = tray(chain(30, 12))
    plan = requests.post(f"{server.address}api/v1/plan", json=part, timeout=60)
    assert plan.status_code == 200
    dxf = requests.post(f"{server.address}api/v1/blank.dxf", json=part, timeout=60)
    assert dxf.headers["Content-Type"].startswith("image/vnd.dxf")
    refused = requests.post(f"{server.address}api/v1/plan", json=tray(chain(0)), timeout=60)
    assert refused.status_code == 422
    assert refused.headers["Content-Type"] == "application/problem+json"
