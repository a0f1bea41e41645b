"""Calls made from the API's own description, right ones and wrong ones: never a fault of ours.

schemathesis, https://schemathesis.readthedocs.io, an independent reader of OpenAPI, makes the
calls and judges the answers: no 5xx, no status, content type or body that the description does
not name. Rows are there before, so that what is written can succeed.

A run makes some seven hundred calls; ``FLANGEBOOK_CALLS=10000`` asks for more.
"""

from __future__ import annotations

import itertools
import os
from collections import Counter
from contextlib import suppress
from typing import Any

import schemathesis
from hypothesis import HealthCheck, Phase, given, seed, settings
from hypothesis.errors import Unsatisfiable
from schemathesis.checks import not_a_server_error
from schemathesis.specs.openapi.checks import (
    content_type_conformance,
    response_schema_conformance,
    status_code_conformance,
)

from serving.running import Running

CALLS = int(os.environ.get("FLANGEBOOK_CALLS", "1000"))
THERE = {"code": "SHE7FA1", "number": 1, "name": "1"}
# A positive answer to a generated body and a 428 for a missing If-Match are right answers here,
# so what judges only those two is left out; nothing else is.
CHECKS = [
    not_a_server_error,
    status_code_conformance,
    content_type_conformance,
    response_schema_conformance,
]


def call_often(operation: Any, mode: Any, calls: int, statuses: Counter[str]) -> None:
    """Make that many calls of one operation, as described or spoilt."""

    @seed(20261127)
    @settings(
        max_examples=calls, deadline=None, database=None, phases=[Phase.generate],
        suppress_health_check=list(HealthCheck),
    )  # fmt: skip
    @given(case=operation.as_strategy(generation_mode=mode))
    def call(case: Any) -> None:
        if mode is schemathesis.GenerationMode.POSITIVE:
            there = {n: v for n, v in THERE.items() if n in (case.path_parameters or {})}
            case.path_parameters.update(there)
        answer = case.call()
        statuses[f"{answer.status_code // 100}xx"] += 1
        case.validate_response(answer, checks=CHECKS)

    with suppress(Unsatisfiable):  # nothing about it can be spoilt
        call()


def can_be_spoilt(operation: Any) -> bool:
    """Whether anything is asked for that could be wrong: each text is a right one in an address.

    To try in vain takes longer than most calls.
    """
    asked = [(p.definition["in"], p.definition["schema"]) for p in operation.iter_parameters()]
    return bool(operation.body) or any(one != ("path", {"type": "string"}) for one in asked)


def test_no_call_meets_a_fault_of_ours(server: Running):
    schema = schemathesis.openapi.from_url(f"{server.address}api/openapi.json")
    operations = [found.ok() for found in schema.get_all_operations()]
    assert len(operations) > 40
    statuses: Counter[str] = Counter()
    wrong = []
    modes = list(schemathesis.GenerationMode)
    for operation, mode in itertools.product(operations, modes):
        if mode is schemathesis.GenerationMode.NEGATIVE and not can_be_spoilt(operation):
            continue
        try:
            call_often(operation, mode, CALLS // len(operations) // len(modes) + 1, statuses)
        except (
            Exception,
            BaseExceptionGroup,
        ) as error:  # all of them are reported, not the first alone
            wrong.append(f"{operation.label}: {error}"[:1500])
    print(dict(statuses))
    assert wrong == []
    assert statuses["2xx"] > CALLS // 20
    assert statuses["4xx"] > CALLS // 5
    assert statuses["5xx"] == 0
