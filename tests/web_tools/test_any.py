"""What the web says of its types says something: ``any`` is an exception, with its reason.

The type checker refuses an ``any`` that nobody wrote; here those are counted that somebody did.
"""

from __future__ import annotations

import re
from pathlib import Path

import pytest

WEB = Path(__file__).resolve().parents[2] / "web"
FOLDERS = ("app", "screens", "drawing")
MOST = 5
COMMENT = re.compile(r"/\*\*.*?\*/", re.DOTALL)
TAG = re.compile(r"@\w+\s*(?=\{)")
LOOSE = re.compile(r"\bany\b|\bFunction\b|(?<![\w.])\*(?![\w/])")
"""Each of them switches the type checker off."""


def types_in(comment: str) -> list[str]:
    """The types of a comment's tags: what stands in their braces."""
    plain = re.sub(r"\n\s*\*", "\n", comment)
    return [_braced(plain[tag.end() :]) for tag in TAG.finditer(plain)]


def _braced(text: str) -> str:
    depth = 0
    for place, sign in enumerate(text):
        depth += {"{": 1, "}": -1}.get(sign, 0)
        if not depth:
            return text[1:place]
    return text


def loose(comment: str) -> int:
    """How often a comment switches the type checker off."""
    # What stands between quotes is a text: "any" is no type there.
    types = [re.sub(r'"[^"]*"', "", one) for one in types_in(comment)]
    return sum(len(LOOSE.findall(one)) for one in types)


def written() -> list[tuple[str, str]]:
    """Every comment of the app that may hold a type, with its file's name."""
    files = [file for folder in FOLDERS for file in sorted((WEB / folder).rglob("*.js"))]
    return [
        (file.relative_to(WEB).as_posix(), comment)
        for file in files
        for comment in COMMENT.findall(file.read_text(encoding="utf-8"))
    ]


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
    comments = written()
    assert len(comments) > 1000
    found = [(name, loose(comment)) for name, comment in comments if loose(comment)]
    assert sum(count for _, count in found) <= MOST, found


def test_each_any_has_its_reason() -> None:
    bare = [(name, one) for name, one in written() if loose(one) and "any: " not in one]
    assert bare == []


def test_what_the_api_gives_has_the_apis_own_types() -> None:
    """A plan, a step, a card, a finding, a bend and a result are what the API describes."""
    types = " ".join(one for _, comment in written() for one in types_in(comment))
    for name in ("Plan", "Step", "Card", "Check", "OneBend", "Correction", "Trial", "Punch"):
        assert f"Api.{name}" in types, name
