"""One bend asked as a test writes it down: sheet, bend, shop and tools in one line."""

from __future__ import annotations

from dataclasses import fields
from typing import Any

from flangebook.bending.tools.tooling import Crib, Press
from flangebook.planning import one_bend
from flangebook.planning.answers.answer import JsonDict
from flangebook.planning.one_bend import Named
from flangebook.planning.results.evidence import Evidence
from flangebook.planning.tools.fit import Equipment, Wanted

NAMED = {field.name for field in fields(Named)}


def check_bend(*bend: Any, **asked: Any) -> JsonDict:
    return one_bend.check_bend(*_apart(*bend, **asked))


def check_stroke(*bend: Any, **asked: Any) -> JsonDict:
    return one_bend.check_stroke(*_apart(*bend, **asked))


def _apart(
    *bend: Any, press: Press | None, crib: Crib, evidence: Evidence | None = None, **asked: Any
) -> tuple[Wanted, Equipment, Named]:
    tools = {name: value for name, value in asked.items() if name in NAMED}
    sheet = {name: value for name, value in asked.items() if name not in NAMED}
    return Wanted(*bend, **sheet), Equipment(press, crib, evidence), Named(**tools)
