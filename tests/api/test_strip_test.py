"""The press's deflection from three strips, asked of the shop."""

from __future__ import annotations

from typing import Any

import pytest
from flask.testing import FlaskClient
from problem import problem

ASKED = {
    "metal": "mild-steel-cr", "die": "V16", "punch": "S85-2", "thickness_mm": 2,
    "strip_length_mm": "300 mm", "end_mm": 150, "left_deg": 90.0, "middle_deg": 91.2,
    "right_deg": 90.0,
}  # fmt: skip


def asked(client: FlaskClient, **change: Any):
    return client.post("/api/v1/press/strip-test", json={**ASKED, **change})


def test_an_open_middle_gives_the_deflection_with_its_band(reader: FlaskClient):
    answer = asked(reader)
    assert answer.status_code == 200, answer.get_json()
    found = answer.get_json()
    assert found["middle_open_deg"] == 1.2
    assert found["deflection_mm_low"] < found["deflection_mm"] < found["deflection_mm_high"]
    twice = asked(reader, left_deg=88.8, right_deg=88.8).get_json()
    assert twice["deflection_mm"] == pytest.approx(2.0 * found["deflection_mm"], rel=0.01)


def test_a_tilt_alone_tells_nothing(reader: FlaskClient):
    problem(asked(reader, left_deg=89.0, middle_deg=90.0, right_deg=91.0), 422, "middle_deg")


@pytest.mark.parametrize(
    ("change", "field"),
    [
        ({"strip_length_mm": 900}, "strip_length_mm"),
        ({"end_mm": 700}, "end_mm"),
        ({"middle_deg": None}, "middle_deg"),
        ({"middle_deg": 89}, "middle_deg"),
        ({"die": "V99"}, "die"),
        ({"metal": "cheese"}, "metal"),
    ],
)
def test_what_tells_nothing_is_refused_at_its_box(
    reader: FlaskClient, change: dict[str, Any], field: str
):
    problem(asked(reader, **change), 422, field)
