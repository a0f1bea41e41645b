"""A plan told line by line: how far the search is, then the plan or the problem."""

from __future__ import annotations

import json
import threading
from collections.abc import Mapping
from typing import Any

import pytest
import requests
from flask.testing import FlaskClient

from flangebook.api import plan_stream
from flangebook.bending.ordering.cost import Cost
from flangebook.bending.ordering.search import Progress
from flangebook.planning.deadline import PlanLimits
from serving.running import Running

LINES = {"Accept": "application/x-ndjson"}
SOON_S = 20.0


def lines(text: str) -> list[dict[str, Any]]:
    return [json.loads(line) for line in text.splitlines()]


def test_the_last_line_is_the_plan(reader: FlaskClient, angle: dict[str, Any]):
    answer = reader.post("/api/v1/plan", json=angle, headers=LINES)
    assert answer.status_code == 200
    assert answer.content_type == "application/x-ndjson"
    *before, last = lines(answer.get_data(as_text=True))
    assert all(set(line) == {"progress"} for line in before)
    plain = reader.post("/api/v1/plan", json=angle).get_json()
    assert last == {"plan": plain}


@pytest.mark.parametrize("accept", ["*/*", "application/json", "application/x-ndjson;q=0"])
def test_who_does_not_ask_for_lines_gets_none(
    reader: FlaskClient, angle: dict[str, Any], accept: str
):
    answer = reader.post("/api/v1/plan", json=angle, headers={"Accept": accept})
    assert answer.content_type == "application/json"


def test_a_part_that_cannot_be_is_a_problem_in_the_last_line(
    reader: FlaskClient, angle: dict[str, Any]
):
    answer = reader.post("/api/v1/plan", json={**angle, "metal": "unknown"}, headers=LINES)
    problem = lines(answer.get_data(as_text=True))[-1]["problem"]
    assert problem["status"] == 422
    assert "metal" in problem["errors"]


def test_a_body_that_cannot_be_read_is_refused_before_any_line(
    reader: FlaskClient, angle: dict[str, Any]
):
    answer = reader.post("/api/v1/plan", json={**angle, "flats_mm": []}, headers=LINES)
    assert answer.status_code == 422
    assert answer.content_type == "application/problem+json"


class Long:
    """A planner that goes on until nobody wants its plan any more."""

    def __init__(self) -> None:
        self.ended = threading.Event()

    def __call__(self, limits: PlanLimits) -> Mapping[str, Any]:
        assert limits.progress is not None
        assert limits.cancelled is not None
        best = Cost(0, 0, 2, 0, 1, 0, 0, 0.01, 0.5)
        limits.progress(Progress(0.1, 500, 3, best))
        limits.progress(Progress(0.1, 200, 5, None))  # the next search
        try:
            while not limits.cancelled():
                self.ended.wait(0.01)
        finally:
            self.ended.set()
        return {}


def test_progress_is_told_and_hanging_up_ends_the_planning():
    planner = Long()
    answer = plan_stream.streamed(planner)
    told = iter(answer.iter_encoded())
    first = json.loads(next(told))["progress"]
    second = json.loads(next(told))["progress"]
    assert first["looked_at"] == second["looked_at"] == 700
    assert 0.0 < first["seconds"] < second["seconds"]
    assert second["bends_left"] == 5
    assert first["best"] == {"turn_overs": 2, "turn_ends": 1, "tool_changes": 0, "slides": 0}
    assert not planner.ended.is_set()
    answer.close()
    assert planner.ended.wait(SOON_S)


def test_what_goes_wrong_in_the_server_is_a_problem_too():
    def broken(_limits: PlanLimits) -> Mapping[str, Any]:
        raise ZeroDivisionError

    [line] = lines(b"".join(plan_stream.streamed(broken).iter_encoded()).decode())
    assert line["problem"]["status"] == 500


def test_a_real_server_sends_lines_and_lets_go_of_who_hangs_up(
    server: Running, angle: dict[str, Any]
):
    url = f"{server.address}api/v1/plan"
    many = [{"included_angle_deg": 120, "direction": d} for d in ["up", "down", "down", "up"] * 4]
    long = {**angle, "flats_mm": [40] * 17, "bends": many}
    with requests.post(url, json=long, headers=LINES, stream=True, timeout=60) as answer:
        assert answer.headers["Content-Type"] == "application/x-ndjson"
        assert "Content-Length" not in answer.headers
        assert set(json.loads(next(answer.iter_lines()))) <= {"progress", "plan"}
    again = requests.post(url, json=angle, headers=LINES, timeout=60)
    assert "plan" in lines(again.text)[-1]
