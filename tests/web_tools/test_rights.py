"""The app asks for rights by the shop's own names: a name that the shop does not know would be
taken for something that everybody may do."""

from __future__ import annotations

import re
from pathlib import Path

from flangebook.api import roles

WEB = Path(__file__).resolve().parents[2] / "web"
KNOWN = set(roles.LEAST) | set(roles.FINER)
GROUPS = "|".join(sorted({name.partition(".")[0] for name in KNOWN}))
NAMED = re.compile(rf'"((?:{GROUPS})\.\w+)"')
ASKED = re.compile(r'(?:\bmay|\boffer|\bnotYours)\("([^"]+)"|needs: "([^"]+)"')


def written() -> list[str]:
    files = [file for name in ("app", "view", "screens") for file in WEB.glob(f"{name}/**/*.js")]
    return [file.read_text(encoding="utf-8") for file in files]


def test_every_right_the_app_asks_for_is_one_of_the_shops() -> None:
    named = {name for text in written() for name in NAMED.findall(text) if name[-3:] != ".js"}
    asked = {one or other for text in written() for one, other in ASKED.findall(text)}
    assert {"cards.revise", "shop.write_dies", "crew.listed", "results.keep"} <= named | asked
    assert (named | asked) - KNOWN == set()


def test_a_screen_is_not_offered_by_a_right_that_everybody_has() -> None:
    """Such a question would be answered yes always: it is a slip."""
    asked = {one or other for text in written() for one, other in ASKED.findall(text)}
    assert [name for name in asked if roles.least(name) in (roles.ANYONE, "bench")] == []
