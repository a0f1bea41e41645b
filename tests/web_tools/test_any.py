"""What the web says of its types says something: ``any`` is an exception, with its reason.

The type checker refuses an ``any`` that nobody wrote; here those are counted that somebody did.
"""

from __future__ import annotations

from pathlib import Path

import pytest

from shape.loose_types import loose, typed_comments, types_in

WEB = Path(__file__).resolve().parents[2] / "web"
MOST = 5


@pytest.mark.parametrize(
    ("comment", "count"),
    [
        ("/** @param {any} step */", 1),
        ("/** @type {any[]} */", 1),
        ("/** @type {Record<string, any>|{plan: any}} */", 2),
        ("/**\n * @typedef {{a: string,\n *   b: any}} Two\n */", 1),
        ("/** @param {*} step */", 1),
        ("/** @type {Function} */", 1),
        ("/** @param {Api.Step} step any that is not yet done */", 0),
        ('/** @param {"any"|"all"} which */', 0),
        ("/**\n * Of any kind.\n * @param {Company} many\n */", 0),
    ],
)
def test_it_counts_what_switches_the_checker_off(comment: str, count: int) -> None:
    assert loose(comment) == count


def test_few_types_are_any() -> None:
    comments = list(typed_comments(WEB))
    assert len(comments) > 1000
    found = [(name, loose(comment)) for name, comment in comments if loose(comment)]
    assert sum(count for _, count in found) <= MOST, found


def test_each_any_has_its_reason() -> None:
    bare = [(name, one) for name, one in typed_comments(WEB) if loose(one) and "any: " not in one]
    assert bare == []


def test_what_the_api_gives_has_the_apis_own_types() -> None:
    """A plan, a step, a card, a finding, a bend and a result are what the API describes."""
    types = " ".join(one for _, comment in typed_comments(WEB) for one in types_in(comment))
    for name in ("Plan", "Step", "Card", "Check", "OneBend", "Correction", "Result", "Punch"):
        assert f"Api.{name}" in types, name
