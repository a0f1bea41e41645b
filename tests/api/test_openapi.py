"""The OpenAPI document: valid, complete, and true of what is really answered."""

from __future__ import annotations

import re
import uuid
from collections.abc import Callable
from typing import Any

import jsonschema
import pytest
from flask import Flask
from flask.testing import FlaskClient
from openapi_spec_validator import validate


@pytest.fixture(scope="module")
def spec(reader: FlaskClient) -> dict[str, Any]:
    """The document as it is served."""
    body: dict[str, Any] = reader.get("/api/openapi.json").get_json()
    return body


def test_it_is_valid(spec: dict[str, Any]):
    assert spec["openapi"].startswith("3.")
    validate(spec)


def routes(app: Flask) -> set[tuple[str, str]]:
    """Every address and method the app really answers below /api."""
    return {
        (re.sub(r"<(?:\w+:)?(\w+)>", r"{\1}", rule.rule), method.lower())
        for rule in app.url_map.iter_rules()
        for method in (rule.methods or set()) - {"HEAD", "OPTIONS"}
        if rule.rule.startswith("/api/") and rule.rule != "/api/openapi.json"
    }


def test_every_route_is_documented_and_nothing_else(reader: FlaskClient, spec: dict[str, Any]):
    documented = {(path, method) for path, item in spec["paths"].items()
                  for method in item if method != "parameters"}  # fmt: skip
    assert documented == routes(reader.application)
    assert len(documented) > 30


def test_everything_has_words(spec: dict[str, Any]):
    for path, item in spec["paths"].items():
        for method, operation in item.items():
            if method != "parameters":
                assert operation["summary"].endswith("."), (path, method)
                assert operation["tags"], (path, method)


@pytest.mark.parametrize(
    ("schema", "name"),
    [
        ("OneBend", "force_kn"), ("OneBend", "force_kn_per_m"), ("Option", "force_kn"),
        ("Option", "force_kn_per_m"), ("StrokeSetting", "force_kn"), ("StrokePeak", "force_kn"),
        ("StrokePoint", "force_kn"), ("Station", "force_kn"), ("Step", "force_kn"),
        ("Step", "force_kn_per_m"), ("ChartCell", "force_kn_per_m"),
    ],
)  # fmt: skip
def test_the_force_to_allow_for_is_described_before_the_expected_one(
    spec: dict[str, Any], schema: str, name: str
):
    """Whoever sets a press by the API reads first which of the two to set it by."""
    fields = spec["components"]["schemas"][schema]["properties"]
    names = list(fields)
    assert names.index(f"{name}_high") < names.index(name)
    assert fields[f"{name}_high"]["description"].startswith("The force to allow for")
    assert fields[name]["description"].startswith("The expected force")


def test_the_force_to_allow_for_is_the_one_ratings_are_checked_with(reader: FlaskClient):
    wanted = {"metal": "mild-steel-cr", "thickness_mm": 2, "bend_length_mm": 800,
              "included_angle_deg": 90}  # fmt: skip
    answer = reader.post("/api/v1/bend", json=wanted).get_json()
    (press,) = [row for row in answer["ratings"] if row["what"] == "press"]
    assert press["load_kn"] == answer["force_kn_high"]
    assert answer["force_kn_high"] > 1.2 * answer["force_kn"]
    stroke = reader.post("/api/v1/stroke", json=wanted).get_json()
    assert stroke["peak"]["force_kn_high"] == answer["force_kn_high"]
    assert stroke["set"]["force_kn"] < stroke["set"]["force_kn_high"] <= answer["force_kn_high"]


def test_every_operation_says_how_errors_look(spec: dict[str, Any]):
    for path, item in spec["paths"].items():
        for method, operation in item.items():
            if method != "parameters":
                assert "default" in operation["responses"], (path, method)
    for name, response in spec["components"]["responses"].items():
        assert list(response["content"]) == ["application/problem+json"], name


def test_every_answer_names_its_fields(spec: dict[str, Any]):
    for name in ("Plan", "OneBend", "Card", "Step", "Chart", "Punch", "Check"):
        assert spec["components"]["schemas"][name]["additionalProperties"] is False


def test_quantities_are_numbers_or_texts(spec: dict[str, Any]):
    thickness = spec["components"]["schemas"]["PartInput"]["properties"]["thickness_mm"]
    kinds = {one["type"] for one in thickness["anyOf"]}
    assert kinds == {"number", "string"}


class Told:
    """Holds real answers against what the document says of them."""

    def __init__(self, spec: dict[str, Any], client: FlaskClient) -> None:
        self.spec = spec
        self.client = client

    def __call__(self, method: str, path: str, template: str = "", **sent: Any) -> Any:
        answer = self.client.open(path, method=method, **sent)
        operation = self.spec["paths"][template or path.partition("?")[0]][method.lower()]
        responses = operation["responses"]
        told = responses.get(str(answer.status_code), responses["default"])
        if "$ref" in told:
            told = self.spec["components"]["responses"][told["$ref"].rpartition("/")[2]]
        kind = answer.content_type.partition(";")[0]
        assert kind in told["content"], (path, answer.status_code, kind)
        if kind.endswith("json"):
            schema = {**told["content"][kind]["schema"], "components": self.spec["components"]}
            jsonschema.validate(answer.get_json(), schema)
        return answer


@pytest.fixture
def told(spec: dict[str, Any], client: FlaskClient) -> Told:
    """A client that checks every answer."""
    return Told(spec, client)


CODE = "/api/v1/cards/{code}"


def test_real_answers_about_bends_and_parts(told: Told, angle: dict[str, Any]):
    bend = {k: v for k, v in angle.items() if k in ("metal", "thickness_mm", "bend_length_mm")}
    for angle_deg in (60, 90, 135):
        answer = told("POST", "/api/v1/bend", json={**bend, "included_angle_deg": angle_deg})
        assert answer.status_code == 200
    assert told("POST", "/api/v1/bend", json={}).status_code == 422
    assert told("POST", "/api/v1/plan", json=angle).status_code == 200
    assert told("POST", "/api/v1/plan", json={**angle, "flats_mm": [3, 3]}).status_code == 200
    assert told("GET", "/api/v1/chart?metal=stainless-304").status_code in (200, 422)
    assert told("GET", "/api/v1/chart?metal=mild-steel-cr").status_code == 200
    for kind in ("svg", "dxf"):
        assert told("POST", f"/api/v1/blank.{kind}", json=angle).status_code == 200


@pytest.mark.slow
def test_real_answers_about_every_demo_card(told: Told):
    listed = told("GET", "/api/v1/cards?limit=200").get_json()["cards"]
    assert len(listed) >= 8
    for one in listed:
        path = f"/api/v1/cards/{one['code']}"
        assert told("GET", path, CODE).status_code == 200
        assert told("GET", f"{path}/fresh", f"{CODE}/fresh").status_code == 200
        for name in ("label.svg", "label.png", "qr.svg", "blank.svg", "blank.dxf"):
            assert told("GET", f"{path}/{name}", f"{CODE}/{name}").status_code == 200


def test_real_answers_about_the_life_of_a_card(told: Told, angle: dict[str, Any]):
    card = told("POST", "/api/v1/cards", json={"part": angle}).get_json()
    path = f"/api/v1/cards/{card['code']}"
    assert told("PUT", path, CODE, json={"note": "x"}).status_code == 428
    headers = {"If-Match": card["etag"]}
    settings = [{"step": 1, "set_angle_deg": 88}]
    answer = told("PUT", path, CODE, json={"settings": settings}, headers=headers)
    assert answer.status_code == 200
    assert told("PUT", path, CODE, json={"note": "x"}, headers=headers).status_code == 412
    result = {"id": str(uuid.uuid4()), "revision": 1, "step": 1, "measured_deg": 91}
    for status in (201, 200):
        answer = told("POST", f"{path}/results", f"{CODE}/results", json=result)
        assert answer.status_code == status
    assert told("GET", f"{path}/results", f"{CODE}/results").status_code == 200
    assert told("GET", f"{path}/revisions", f"{CODE}/revisions").status_code == 200
    one = f"{CODE}/revisions/{{number}}"
    assert told("GET", f"{path}/revisions/1", one).status_code == 200
    assert told("GET", f"{path}/revisions/9", one).status_code == 404
    assert told("GET", path, CODE).get_json()["trials_total"] == 1


def test_real_answers_about_what_the_metal_teaches(told: Told, angle: dict[str, Any]):
    card = told("POST", "/api/v1/cards", json={"part": angle}).get_json()
    step = card["plan"]["steps"][0]
    sent = {
        "id": str(uuid.uuid4()), "metal": angle["metal"], "thickness_mm": 1.98,
        "bend_length_mm": 100, "die": step["die"], "punch": step["punch"],
        "included_angle_deg": 90, "loaded_deg": 88, "measured_deg": 91, "radius_mm": 2.7,
        "flat_length_mm": 100, "flange_left_mm": 50, "flange_right_mm": 53.6,
    }  # fmt: skip
    for status in (201, 200):
        answer = told("POST", "/api/v1/test-bends", json=sent)
        assert answer.status_code == status
    assert answer.get_json()["cards"]
    assert told("POST", "/api/v1/test-bends", json={**sent, "note": "x"}).status_code == 409
    assert told("POST", "/api/v1/test-bends", json={**sent, "die": "V0"}).status_code == 422
    odd = {**sent, "id": str(uuid.uuid4()), "measured_deg": 60}
    assert told("POST", "/api/v1/test-bends", json=odd).status_code == 201
    result = {"id": str(uuid.uuid4()), "revision": 1, "step": 1, "left_deg": 91, "lot": "A7"}
    path = f"/api/v1/cards/{card['code']}/results"
    assert told("POST", path, f"{CODE}/results", json=result).status_code == 201
    for one in (sent, result):
        for mark in ("forget", "remember", "confirm", "forget"):
            path = f"/api/v1/evidence/{one['id']}/{mark}"
            spelled = f"/api/v1/evidence/{{evidence_id}}/{mark}"
            assert told("POST", path, spelled, json={"reason": "misread"}).status_code == 200
    for name in ("test-bends", "learned"):
        assert told("GET", f"/api/v1/{name}?metal={angle['metal']}").status_code == 200
    asked = {k: angle[k] for k in ("metal", "thickness_mm", "bend_length_mm")}
    stroke = told("POST", "/api/v1/stroke", json={**asked, "included_angle_deg": 90})
    assert stroke.status_code == 200


def test_real_answers_about_the_shop(told: Told):
    for name in ("press", "punches", "dies", "holders", "metals"):
        answer = told("GET", f"/api/v1/{name}")
        body, etag = answer.get_json(), answer.headers["ETag"]
        again = told("PUT", f"/api/v1/{name}", json=body, headers={"If-Match": etag})
        assert again.status_code == 200
        assert told("PUT", f"/api/v1/{name}", json=body).status_code == 428
    for path in ("/api/v1/health", "/api/v1/changes", "/api/v1/export"):
        assert told("GET", path).status_code == 200
    die = told("GET", "/api/v1/dies").get_json()["dies"][0]
    assert told("POST", "/api/v1/outline", json={"kind": "die", **die}).status_code == 200
    codes = "codes=SHE7FA1,ZRA2CKX"
    for kind in ("json", "svg", "png"):
        assert told("GET", f"/api/v1/labels/sheet.{kind}?{codes}").status_code == 200


def test_real_answers_of_an_empty_shop(
    make_app: Callable[..., Flask], spec: dict[str, Any], angle: dict[str, Any]
):
    told = Told(spec, make_app(empty=True).test_client())
    for path in ("press", "punches", "cards", "changes", "chart?metal=mild-steel-cr"):
        assert told("GET", f"/api/v1/{path}").status_code == 200
    plan = told("POST", "/api/v1/plan", json=angle).get_json()
    assert plan["blank_length_mm"] > 90
    assert plan["steps"][0]["die"] is None
    bend = {"metal": "mild-steel-cr", "thickness_mm": 2, "bend_length_mm": 500}
    assert told("POST", "/api/v1/bend", json={**bend, "included_angle_deg": 90}).status_code == 200
