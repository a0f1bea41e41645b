"""Every number the API takes, at its edges and past them, and every part of an address.

The OpenAPI document says which numbers there are; a new field is walked without a new test. A
real server answers each with a figure or a clear no, never with an error of its own.
"""

from __future__ import annotations

import copy
import http.client
import json
import math
from collections.abc import Iterator, Mapping
from contextlib import suppress
from typing import Any, NamedTuple
from urllib.parse import urlencode
from uuid import uuid4

import pytest

from serving.running import PATIENCE_S, Running

pytestmark = pytest.mark.slow
WAY = tuple[str | int, ...]
RAW = "a place for a number"
NOT_NUMBERS = ("NaN", "Infinity", "-Infinity", "1e999", "9" * 5000)
ANYWHERE = ("0", "-1", "5e-324", "1e-308", "1e-12", "1e308", "-1e308", "1" + "0" * 30,
            "-1" + "0" * 30, "9223372036854775808", "1" + "0" * 4000)  # fmt: skip
PARTS_OF_ADDRESSES = (
    "0", "-1", "1.5", "1e308", "NaN", "9223372036854775808", "9" * 23, "9" * 5000, "%00", "%FF",
    "%ED%A0%80", "..%2F..", "x" * 5000, "%20", "'%20OR%201=1",
)  # fmt: skip

BEND = {"included_angle_deg": 90, "direction": "up", "inside_radius_mm": 2, "hem_gap_mm": 0}
PART = {
    "metal": "mild-steel-cr", "thickness_mm": 2, "bend_length_mm": 300, "flats_mm": [40, 60],
    "bends": [BEND], "order": [1], "holes": [{"flat": 1, "position_mm": 9, "diameter_mm": 4}],
    "wishes": {"first": None, "last": None, "critical_flats": [1], "margin_mm": 2},
}  # fmt: skip
SIDE = {"flats_mm": [30], "bends": [BEND]}
BOX = {
    "metal": "mild-steel-cr", "thickness_mm": 1,
    "box": {"length_mm": 200, "width_mm": 150, "relief_mm": 5, "gap_mm": 1,
            "sides": dict.fromkeys(("left", "right", "front", "back"), SIDE)},
}  # fmt: skip
ONE_BEND = {"metal": "mild-steel-cr", "thickness_mm": 2, "bend_length_mm": 500,
            "included_angle_deg": 90, "v_opening_mm": 16, "punch_radius_mm": 2}  # fmt: skip
SETTING = {"step": 1, "set_angle_deg": 88, "punch_depth_mm": 6, "gauge_x_mm": 40}
TRIAL = {
    "revision": 1, "step": 1, "bend": 1, "measured_deg": 91, "left_deg": 91, "middle_deg": 91,
    "right_deg": 91, "set_angle_deg": 88, "punch_depth_mm": 6.3, "gauge_x_mm": 40,
    "flange_mm": 40, "radius_mm": 2.7, "thickness_mm": 2, "loaded_deg": 88, "flat_length_mm": 100,
    "flange_left_mm": 50, "flange_right_mm": 53.6,
}  # fmt: skip
TEST_BEND = {
    **{k: v for k, v in TRIAL.items() if k not in ("revision", "step", "bend", "gauge_x_mm",
                                                   "flange_mm")},
    "metal": "mild-steel-cr", "ordered_thickness_mm": 2, "bend_length_mm": 100, "die": "V16",
    "punch": "S85-2", "included_angle_deg": 90,
}  # fmt: skip
STRIPS = {"metal": "mild-steel-cr", "die": "V16", "punch": "S85-2", "thickness_mm": 2,
          "strip_length_mm": 100, "end_mm": 100, "included_angle_deg": 90, "left_deg": 90,
          "middle_deg": 91, "right_deg": 90}  # fmt: skip
CARD = "SHE7FA1"
CARD_RUN = "5b0a5b4e-6a52-4d77-9d1c-2f6f5a1c9a01"
RUN_ENTRY = {"revision": 1, "made_at": "2026-05-04T08:00:00.000Z"}
BODIES: dict[str, list[dict[str, Any]]] = {
    "post /bend": [ONE_BEND],
    "post /stroke": [ONE_BEND],
    "post /plan": [PART, BOX],
    "post /blank.svg": [PART, BOX],
    "post /blank.dxf": [PART, BOX],
    "post /cards": [{"part": PART}, {"part": BOX}],
    "put /cards/{code}": [{"part": PART, "settings": [SETTING], "restore_revision": 1},
                          {"part": BOX}],
    "post /cards/{code}/proposals": [
        {"changes": {"settings": [SETTING]}, "before": {"settings": [SETTING]}, "revision": 1}
    ],
    "post /cards/{code}/results": [TRIAL],
    "post /cards/{code}/runs": [
        {"run_id": CARD_RUN, "kind": "begun", "pieces": 5, **RUN_ENTRY},
        {"run_id": CARD_RUN, "kind": "scrap", "step": 1, **RUN_ENTRY},
    ],
    "post /test-bends": [TEST_BEND],
    "post /press/strip-test": [STRIPS],
    "put /press-screens/{name}": [{"code": CARD, "step": 1}],
}  # fmt: skip
DOCUMENTS = ("press", "punches", "dies", "holders", "metals")
KINDS = {"press": "press", "punch": "punches", "die": "dies", "holder": "holders"}
HAS_AN_ID = ("post /cards/{code}/results", "post /cards/{code}/runs", "post /test-bends",
             "post /cards", "put /cards/{code}", "post /cards/{code}/proposals")  # fmt: skip
REFUSED_ONLY = ("post /plan", "post /cards", "put /cards/{code}", "post /blank.dxf")
"""The parts of these are tried whole with the blank's drawing, which searches no order."""
TAKES_NO_NUMBER_APART = {"post /import"}  # whole shops; test_import has its edges
PAST_A_MACHINE = {400, 422}


class Number(NamedTuple):
    """A number of a body: where it is, and its bounds."""

    way: WAY
    schema: dict[str, Any]


def numbers(schema: dict[str, Any], schemas: dict[str, Any], way: WAY = ()) -> Iterator[Number]:
    """Every number of a schema."""
    if "$ref" in schema:
        schema = schemas[schema["$ref"].rpartition("/")[2]]
    for several in ("anyOf", "oneOf", "allOf"):
        for one in schema.get(several, []):
            yield from numbers(one, schemas, way)
    kinds = schema.get("type")
    if {"number", "integer"} & set(kinds if isinstance(kinds, list) else [kinds]):
        yield Number(way, schema)
    for name, inner in schema.get("properties", {}).items():
        yield from numbers(inner, schemas, (*way, name))
    if "items" in schema:
        yield from numbers(schema["items"], schemas, (*way, 0))


@pytest.fixture(scope="module")
def spec(server: Running) -> dict[str, Any]:
    """The document as it is served."""
    body: dict[str, Any] = server.get("/api/openapi.json").json()
    return body


def operations(spec: dict[str, Any]) -> Iterator[tuple[str, dict[str, Any]]]:
    """Each as "post /bend", with what the document says of it."""
    for path, item in spec["paths"].items():
        for method, operation in item.items():
            if method != "parameters":
                yield f"{method} {path.removeprefix('/api/v1')}", operation


def taken(operation: dict[str, Any], spec: dict[str, Any]) -> list[Number]:
    """The numbers of a body."""
    content = operation.get("requestBody", {}).get("content", {})
    schema = content.get("application/json", {}).get("schema", {})
    return list(numbers(schema, spec["components"]["schemas"]))


def test_every_number_has_both_ends_and_none_ends_at_next_to_nothing(spec: dict[str, Any]):
    for name, operation in operations(spec):
        if name in TAKES_NO_NUMBER_APART:
            continue
        asked = [(n.way, n.schema) for n in taken(operation, spec)]
        for parameter in operation.get("parameters", []):
            kinds = numbers(parameter["schema"], spec["components"]["schemas"])
            asked += [((parameter["name"],), n.schema) for n in kinds]
        for way, schema in asked:
            assert math.isfinite(schema["minimum"]), (name, way)
            assert math.isfinite(schema["maximum"]), (name, way)
            assert "exclusiveMinimum" not in schema, (name, way)
            assert schema["minimum"] <= 0 or schema["minimum"] > 1e-5, (name, way)


def edges(schema: dict[str, Any]) -> list[str]:
    """The numbers that a field is tried with, as they stand in JSON."""
    low, high = schema["minimum"], schema["maximum"]
    if schema["type"] == "integer" or "integer" in schema["type"]:
        around = [low, high, low - 1, high + 1]
    else:
        around = [low, high, math.nextafter(low, -math.inf), math.nextafter(high, math.inf)]
    return [*map(json.dumps, around), *ANYWHERE, *NOT_NUMBERS]


def outside(text: str, schema: dict[str, Any]) -> bool:
    """Whether the number is past the bounds that the document tells."""
    if text in NOT_NUMBERS:
        return True
    value = float(text)
    return not schema["minimum"] <= value <= schema["maximum"]


class Answer(NamedTuple):
    """What the server said."""

    status_code: int
    headers: http.client.HTTPMessage
    text: str

    @property
    def ok(self) -> bool:
        """Whether it was taken."""
        return self.status_code < 400

    def json(self) -> Any:
        """The body, read."""
        return json.loads(self.text)


class Line:
    """One connection for all of thousands of requests."""

    def __init__(self, port: int) -> None:
        self._line = http.client.HTTPConnection("127.0.0.1", port, timeout=2 * PATIENCE_S)

    def ask(
        self, method: str, path: str, text: str | None = None, headers: Mapping[str, str] = {}
    ) -> Answer:
        """A request, on a new connection where the server has closed the last."""
        with suppress(ConnectionError):
            return self._asked(method, path, text, headers)
        self._line.close()
        return self._asked(method, path, text, headers)

    def _asked(
        self, method: str, path: str, text: str | None, headers: Mapping[str, str]
    ) -> Answer:
        self._line.request(method.upper(), path, text, dict(headers))
        answer = self._line.getresponse()
        return Answer(answer.status, answer.headers, answer.read().decode(errors="replace"))


class Walk:
    """Puts each number of a body to its edges, one at a time."""

    def __init__(self, server: Running, spec: dict[str, Any]) -> None:
        self.spec = spec
        self.operations = dict(operations(spec))
        self._line = Line(server.port)

    def ask(self, name: str, text: str, etag: str = "*") -> Answer:
        method, _, path = name.partition(" ")
        path = path.replace("{code}", CARD).replace("{name}", "one")
        headers = {"Content-Type": "application/json", "If-Match": etag}
        return self._line.ask(method, f"/api/v1{path}", text, headers)

    def get(self, path: str, params: Mapping[str, str] = {}) -> Answer:
        query = f"?{urlencode(params)}" if params else ""
        return self._line.ask("get", f"/api/v1{path}{query}")

    def sound(self, answer: Answer, *about: Any) -> None:
        """An answer, or a no in the words of the API."""
        assert answer.status_code < 500, (about, answer.text[:300])
        if answer.status_code >= 400:
            kind = answer.headers["Content-Type"]
            assert kind == "application/problem+json", (about, answer.status_code, kind)

    def try_out(self, name: str, body: dict[str, Any], one: Number, etag: str = "*") -> set[str]:
        """Every edge of one number; which of them were taken."""
        kept = set()
        for text in edges(one.schema):
            if name in REFUSED_ONLY and not outside(text, one.schema):
                continue
            spoilt = copy.deepcopy(body)
            if name in HAS_AN_ID:
                spoilt["id"] = str(uuid4())
            put(spoilt, one.way, RAW)
            answer = self.ask(name, json.dumps(spoilt).replace(f'"{RAW}"', text), etag)
            self.sound(answer, name, one.way, text[:40])
            if outside(text, one.schema):
                assert answer.status_code in PAST_A_MACHINE, (name, one.way, text[:40])
            if answer.ok:
                kept.add(text)
                etag = answer.headers.get("ETag", etag) if etag != "*" else etag
                self.look(name, text)
        return kept

    def look(self, name: str, text: str) -> None:
        """What was kept can still be asked for, and worked with."""
        if not name.startswith("put /"):
            return
        one = {k: v for k, v in ONE_BEND.items() if k not in ("v_opening_mm", "punch_radius_mm")}
        self.sound(self.ask("post /bend", json.dumps(one)), name, text)
        self.sound(self.get("/changes"), name, text)


def put(body: Any, way: WAY, value: Any) -> None:
    """Put a value at a place of a body that has this place."""
    *before, last = way
    for step in before:
        body = body[step]
    body[last] = value


def has(body: Any, way: WAY) -> bool:
    """Whether a number could stand there: everything above it is there."""
    for step in way[:-1]:
        if isinstance(body, dict):
            body = body.get(step)
        elif isinstance(body, list) and isinstance(step, int) and step < len(body):
            body = body[step]
        else:
            return False
    return isinstance(body, dict) or (isinstance(body, list) and bool(body))


@pytest.fixture(scope="module")
def walk(server: Running, spec: dict[str, Any]) -> Walk:
    """The walker over the server of this file."""
    return Walk(server, spec)


@pytest.mark.parametrize("name", BODIES)
def test_numbers_of_a_body(walk: Walk, name: str):
    asked = taken(walk.operations[name], walk.spec)
    assert asked
    for one in asked:
        body = next((b for b in BODIES[name] if has(b, one.way)), None)
        assert body is not None, f"no body of {name} has {one.way}"
        walk.try_out(name, body, one)


def test_no_body_with_numbers_is_left_out(spec: dict[str, Any]):
    walked = {*BODIES, *(f"put /{name}" for name in DOCUMENTS), "post /outline"}
    having = {name for name, operation in operations(spec) if taken(operation, spec)}
    assert having - TAKES_NO_NUMBER_APART == walked


RING = [[-30, 0], [30, 0], [30, 60], [-30, 60]]
OPENING = {"code": None, "v_opening_mm": 16, "angle_deg": 85, "shoulder_radius_mm": 2,
           "face": "top", "centre_mm": 0, "rating_kn_per_m": None}  # fmt: skip
BANDS = ("hardening_k_mpa", "hardening_n", "min_radius_over_t_across", "min_radius_over_t_with")
BAND = {"low": 0.5, "nominal": 0.5, "high": 0.5, "standing": "typical"}


def whole(name: str, document: Any) -> Any:
    """The shop's document with a place for every number of its first entry, which stands alone:
    so every bend that is asked for has to be worked out with it."""
    if name == "press":
        rings = ("ram_points_mm", "bed_points_mm", "die_holder_points_mm")
        return {**document, **dict.fromkeys(rings, RING)}
    first = {**document[0], "points_mm": RING} if name != "metals" else dict(document[0])
    if name == "dies":
        first["openings"] = [OPENING]
    for band in BANDS if name == "metals" else ():
        first[band] = first.get(band) or BAND
    return [first]


@pytest.mark.parametrize("name", DOCUMENTS)
def test_numbers_of_what_the_shop_has(walk: Walk, name: str):
    answer = walk.get(f"/{name}")
    before = answer.json()
    body = {name: whole(name, before[name])}
    for one in taken(walk.operations[f"put /{name}"], walk.spec):
        assert has(body, one.way), one.way
        etag = walk.get(f"/{name}").headers["ETag"]
        walk.try_out(f"put /{name}", body, one, etag)
    etag = walk.get(f"/{name}").headers["ETag"]
    assert walk.ask(f"put /{name}", json.dumps(before), etag).ok


@pytest.mark.parametrize("kind", KINDS)
def test_numbers_of_an_outline_to_be_drawn(walk: Walk, kind: str):
    name = KINDS[kind]
    kept = whole(name, walk.get(f"/{name}").json()[name])
    body = {"kind": kind, **(kept if name == "press" else kept[0])}
    schema = {"$ref": f"#/components/schemas/{kind.title()}OutlineInput"}
    asked = list(numbers(schema, walk.spec["components"]["schemas"]))
    assert asked
    for one in asked:
        assert has(body, one.way), one.way
        walk.try_out("post /outline", body, one)


def test_numbers_of_a_query(walk: Walk):
    asked = 0
    for name, operation in walk.operations.items():
        method, _, path = name.partition(" ")
        if method != "get":
            continue
        for parameter in operation.get("parameters", []):
            for one in numbers(parameter["schema"], walk.spec["components"]["schemas"]):
                asked += 1
                for text in edges(one.schema):
                    query = {"metal": "mild-steel-cr", "codes": CARD, parameter["name"]: text}
                    told = {p["name"] for p in operation["parameters"]}
                    query = {k: v for k, v in query.items() if k in told}
                    answer = walk.get(path.replace("{code}", CARD), query)
                    walk.sound(answer, name, query)
                    if outside(text, one.schema):
                        assert answer.status_code == 422, (name, query)
    assert asked > 20


def test_cursors_of_the_feed(walk: Walk):
    shop = walk.get("/changes").json()["cursor"]
    shop_id = shop.rpartition(".")[0]
    for number in (*PARTS_OF_ADDRESSES, *ANYWHERE):
        for cursor in (f"{shop_id}.{number}", number):
            answer = walk.get("/changes", {"since": cursor[:190]})
            walk.sound(answer, cursor[:80])
            assert answer.status_code in (200, 422)


def test_every_part_of_every_address(walk: Walk):
    asked = 0
    for path, item in walk.spec["paths"].items():
        names = [p for p in path.split("/") if p.startswith("{")]
        for name in names:
            for text in PARTS_OF_ADDRESSES:
                address = path.replace(name, text)
                address = address.replace("{code}", CARD).removeprefix("/api/v1")
                for method in set(item) - {"parameters"}:
                    asked += 1
                    answer = walk.ask(f"{method} {address}", "{}")
                    walk.sound(answer, method, address[:120])
    assert asked > 200
