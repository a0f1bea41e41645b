"""Whatever is sent wrong gets a clear 4xx as a problem document, and nothing is kept."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

import pytest
from flask.testing import FlaskClient
from problem import problem

BEND = {
    "metal": "mild-steel-cr",
    "thickness_mm": 2,
    "bend_length_mm": 500,
    "included_angle_deg": 90,
}
HUGE = 10**400


@pytest.fixture(scope="module")
def newest(reader: FlaskClient) -> str:
    """Where the feed stands before the first test, and after each."""
    before = reader.get("/api/v1/changes?limit=1").get_json()["cursor"]
    cursor: str = reader.get(f"/api/v1/changes?since={before}&limit=100").get_json()["cursor"]
    return cursor


@pytest.fixture(autouse=True)
def _nothing_is_kept(reader: FlaskClient, newest: str) -> Iterator[None]:
    yield
    after = reader.get(f"/api/v1/changes?since={newest}").get_json()
    assert after["cards"] == []
    assert after["shop"] is None
    assert after["cursor"] == newest


def post(client: FlaskClient, path: str, text: str | bytes, kind: str = "application/json") -> Any:
    return client.post(f"/api/v1{path}", data=text, content_type=kind)


@pytest.mark.parametrize(
    ("field", "value"),
    [
        ("thickness_mm", 0),
        ("thickness_mm", -1),
        ("thickness_mm", 1e9),
        ("thickness_mm", HUGE),
        ("thickness_mm", -HUGE),
        ("thickness_mm", "NaN"),
        ("thickness_mm", "1e999"),
        ("thickness_mm", "99 ga"),
        ("thickness_mm", "16 ga sheet"),
        ("thickness_mm", True),
        ("thickness_mm", None),
        ("thickness_mm", []),
        ("thickness_mm", {"mm": 2}),
        ("thickness_mm", "2 kN"),
        ("thickness_mm", "2" * 500),
        ("bend_length_mm", 0),
        ("bend_length_mm", 1e12),
        ("bend_length_mm", "1/8"),
        ("included_angle_deg", 180),
        ("included_angle_deg", -5),
        ("included_angle_deg", "1.57 rad"),
        ("metal", "no-such-metal"),
        ("metal", "'; DROP TABLE cards; --"),
        ("metal", "<script>alert(1)</script>"),
        ("metal", ""),
        ("metal", 7),
        ("metal", "\ud800"),
        ("die", "no-such-die"),
        ("punch", "no-such-punch"),
        ("v_opening_mm", 0),
        ("punch_radius_mm", -1),
        ("colour", "blue"),
    ],
)
def test_a_bend_that_cannot_be_read(reader: FlaskClient, field: str, value: Any):
    problem(reader.post("/api/v1/bend", json={**BEND, field: value}), 422, field)


def test_a_gauge_number_without_a_metal(reader: FlaskClient):
    asked = {k: v for k, v in BEND.items() if k != "metal"}
    problem(reader.post("/api/v1/bend", json={**asked, "thickness_mm": "16 ga"}), 422, "metal")


def test_a_gauge_number_for_a_metal_that_has_no_gauges(reader: FlaskClient):
    metals = reader.get("/api/v1/metals").get_json()["metals"]
    without = next(m["code"] for m in metals if m["gauge_family"] is None)
    asked = {**BEND, "metal": without, "thickness_mm": "16 ga"}
    body = problem(reader.post("/api/v1/bend", json=asked), 422, "thickness_mm")
    assert "mm or inches" in body["detail"]


@pytest.mark.parametrize(
    "text",
    [
        "",
        " ",
        "{",
        "{'metal': 'x'}",
        '{"metal": "x",}',
        "nonsense",
        '{"thickness_mm": NaN}',
        '{"thickness_mm": Infinity}',
        '{"thickness_mm": -Infinity}',
        '{"thickness_mm": 1e999}',
        '{"thickness_mm": ' + "9" * 5000 + "}",
        '{"metal": "a", "metal": "b"}',
        "[" * 100_000,
        '{"a":' * 50_000,
        "[" * 3000 + "]" * 3000,
        b'{"metal": "\xff\xfe"}',
        '{"metal": "x"} extra',
        '\ufeff{"metal": "x"}',
    ],
)
def test_what_is_not_json(reader: FlaskClient, text: str | bytes):
    problem(post(reader, "/bend", text), 400)


@pytest.mark.parametrize("text", ["null", "1", '"text"', "[]", "[1, 2]", "true"])
@pytest.mark.parametrize("path", ["/bend", "/plan", "/cards", "/outline"])
def test_json_that_is_not_an_object(reader: FlaskClient, path: str, text: str):
    problem(post(reader, path, text), 422)


@pytest.mark.parametrize(
    "kind",
    [
        "application/x-www-form-urlencoded",
        "multipart/form-data; boundary=x",
        "text/plain",
        "application/xml",
        "",
    ],
)
@pytest.mark.parametrize("path", ["/bend", "/plan", "/cards", "/outline"])
def test_forms_and_other_kinds_of_body(reader: FlaskClient, path: str, kind: str):
    problem(post(reader, path, "metal=x", kind), 415)


def test_a_body_over_the_bound(reader: FlaskClient):
    body = problem(post(reader, "/bend", b" " * 2_000_001), 413)
    assert "2 MB" in body["detail"]


@pytest.mark.parametrize("method", ["GET", "POST", "PUT", "PATCH", "DELETE"])
@pytest.mark.parametrize("path", ["/api/v1/nothing", "/api/v2/bend", "/api/", "/api/v1/cards/"])
def test_an_address_that_is_not_there(reader: FlaskClient, path: str, method: str):
    problem(reader.open(path, method=method), 404)


@pytest.mark.parametrize(
    ("path", "method", "allowed"),
    [
        ("/api/v1/bend", "GET", {"POST", "OPTIONS"}),
        ("/api/v1/cards", "DELETE", {"GET", "HEAD", "POST", "OPTIONS"}),
        ("/api/v1/cards/SHE7FA1", "PATCH", {"GET", "HEAD", "PUT", "OPTIONS"}),
        ("/api/v1/dies", "POST", {"GET", "HEAD", "PUT", "OPTIONS"}),
        ("/bend", "POST", {"GET", "HEAD"}),
    ],
)
def test_the_wrong_method_hears_the_right_ones(
    reader: FlaskClient, path: str, method: str, allowed: set[str]
):
    answer = reader.open(path, method=method)
    problem(answer, 405)
    assert set(answer.headers["Allow"].split(", ")) == allowed


@pytest.mark.parametrize(
    ("change", "field"),
    [
        ({"flats_mm": [40]}, "flats_mm"),
        ({"flats_mm": []}, "flats_mm"),
        ({"flats_mm": [40, 0]}, "flats_mm.1"),
        ({"flats_mm": [40, "1,500"]}, "flats_mm.1"),
        ({"flats_mm": [1] * 42}, "flats_mm"),
        ({"flats_mm": [1] * 500_000}, "flats_mm"),
        ({"flats_mm": "40, 60"}, "flats_mm"),
        ({"flats_mm": {"0": 40}}, "flats_mm"),
        ({"bends": None}, "bends"),
        ({"bends": [{"included_angle_deg": 90, "direction": "left"}]}, "bends.0.direction"),
        ({"bends": [{"direction": "up"}]}, "bends.0.included_angle_deg"),
        ({"bends": [90]}, "bends.0"),
        ({"order": [2]}, "order"),
        ({"order": [1, 1]}, "order"),
        ({"order": [1.0]}, "order.0"),
        ({"dimension": "outer"}, "dimension"),
        ({"title": "x" * 201}, "title"),
        ({"title": "x" * 1_000_000}, "title"),
        ({"title": "bell \u0007"}, "title"),
        ({"title": "half \ud800"}, "title"),
        ({"title": 5}, "title"),
        ({"holes": [{"flat": 9, "position_mm": 1, "diameter_mm": 1}]}, None),
        ({"grain": "sideways"}, "grain"),
        ({"metal": "unobtainium"}, "metal"),
        ({"__proto__": {}}, "__proto__"),
    ],
)
@pytest.mark.parametrize("path", ["/api/v1/plan", "/api/v1/cards"])
def test_a_part_that_cannot_be_read(
    reader: FlaskClient, angle: dict[str, Any], path: str, change: Any, field: str | None
):
    part = {**angle, **change}
    body = part if path.endswith("plan") else {"part": part}
    place = "" if path.endswith("plan") else "part."
    problem(reader.post(path, json=body), 422, f"{place}{field}" if field else "")


def test_a_section_that_crosses_itself(reader: FlaskClient, angle: dict[str, Any]):
    square = {"included_angle_deg": 90, "direction": "up"}
    part = {**angle, "flats_mm": [100, 50, 50, 100, 30], "bends": [square] * 4}
    body = problem(reader.post("/api/v1/plan", json=part), 422)
    assert body["errors"]


def test_at_most_fifty_errors_are_told(reader: FlaskClient):
    body = {f"field{i}": i for i in range(500)}
    told = problem(reader.post("/api/v1/bend", json=body), 422)
    assert len(told["errors"]) <= 51


@pytest.mark.parametrize(
    "code",
    ["SHE7FA2", "SHE7AF1", "short", "SHE7FAU", "%00", "..%2f..", "1" * 3000, "<b>", "' OR 1=1"],
)
@pytest.mark.parametrize(
    "rest", ["", "/revisions", "/fresh", "/trials", "/label.svg", "/blank.dxf"]
)
def test_a_card_code_that_cannot_be(reader: FlaskClient, code: str, rest: str):
    problem(reader.get(f"/api/v1/cards/{code}{rest}"), 404)


def test_a_wrong_check_character_says_so(reader: FlaskClient):
    body = problem(reader.get("/api/v1/cards/SHE7FA2"), 404, "code")
    assert "check character" in body["detail"]


@pytest.mark.parametrize(
    "query",
    [
        "limit=0",
        "limit=-1",
        "limit=201",
        "limit=ten",
        "limit=1e2",
        "limit=" + "9" * 400,
        "offset=-1",
        "q=" + "x" * 5000,
        "archived=maybe",
        "colour=blue",
    ],
)
def test_a_list_that_cannot_be_asked_for(reader: FlaskClient, query: str):
    problem(reader.get(f"/api/v1/cards?{query}"), 422)


@pytest.mark.parametrize("query", ["limit=0", "limit=101", "since=" + "x" * 500])
def test_changes_that_cannot_be_asked_for(reader: FlaskClient, query: str):
    problem(reader.get(f"/api/v1/changes?{query}"), 422)


@pytest.mark.parametrize(
    "query",
    [
        "",
        "codes=",
        "codes=SHE7FA2",
        "codes=SHE7FA1&size=10x10",
        "codes=SHE7FA1&paper=A0",
        "codes=SHE7FA1&page=2",
        "codes=SHE7FA1&skip=5000",
        "codes=SHE7FA1&dpi=100000",
        "codes=SHE7FA1&units=cubits",
        "codes=" + ",".join(["SHE7FA1"] * 201),
    ],
)
def test_labels_that_cannot_be_printed(reader: FlaskClient, query: str):
    problem(reader.get(f"/api/v1/labels/sheet.png?{query}"), 422)


@pytest.mark.parametrize("query", ["", "metal=nothing", "metal=mild-steel-cr&bend_length_mm=-1"])
def test_a_chart_that_cannot_be_made(reader: FlaskClient, query: str):
    problem(reader.get(f"/api/v1/chart?{query}"), 422)


def test_sql_in_a_search_finds_nothing(reader: FlaskClient):
    for words in ("' OR '1'='1", "%", "_", "\\", '"; DELETE FROM cards; --'):
        found = reader.get("/api/v1/cards", query_string={"q": words})
        assert found.status_code == 200
        assert found.get_json()["total"] == 0
