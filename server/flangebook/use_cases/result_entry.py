"""A result as it comes from the press: held against its card, and what to set next."""

from __future__ import annotations

import json
from collections.abc import Mapping
from datetime import datetime, timedelta
from typing import Any

import marshmallow as ma

from flangebook.bending.checks import Sentence
from flangebook.planning.answers.answer import sentence_json
from flangebook.planning.results.measured_thickness import (
    AS_ORDERED,
    another_sheet,
    is_another_sheet,
    step_at_thickness,
)
from flangebook.planning.results.next_setting import Made, measured_angle_deg, next_setting
from flangebook.planning.tools.fit import Equipment, Wanted
from flangebook.shop import cards, results
from flangebook.shop.crib import tooling
from flangebook.shop.storage import writing
from flangebook.shop.storage.writing import json_text
from flangebook.shop.store import Store
from flangebook.use_cases.evidence import bend_length_mm, first_piece, tools_of

JsonDict = dict[str, Any]
ONE_RUN = timedelta(hours=12)
"""Pieces further apart than a shift are not of one set-up."""


def kept_with(store: Store, code: str, revision: int, *, again: bool) -> int:
    """The revision a result is kept with: its own, or the newest for one that is sent again to a
    shop that lost its own.

    Raises UnknownError.
    """
    return min(revision, cards.newest_revision(store, code)) if again else revision


def checked(
    store: Store, code: str, asked: Mapping[str, Any], revision: int
) -> tuple[JsonDict, JsonDict, JsonDict | None]:
    """The result with its measured angle and bend filled in, its correction, and what it is
    evidence of.

    Raises UnknownError for a card or revision that is not there, ValidationError for a step
    that the plan of that revision does not have.
    """
    content, _ = cards.content_of(store, code, revision)
    plan = content.plan_dict
    step = _step(plan, asked)
    setting = next((s for s in content.settings if s["step"] == step["number"]), None)
    earlier = _earlier(store, code, asked, revision, step["number"])
    correction = _correction(store, content.part, step, asked, setting, earlier)
    result = {**asked, "bend": step["bend"], "measured_deg": round(measured_angle_deg(asked), 4)}
    flange = correction["flange"]
    teaches = first_piece(store, code, content.part, step, setting, result, not earlier, flange)
    return result, correction, teaches


def _correction(
    store: Store,
    part: Mapping[str, Any],
    step: JsonDict,
    asked: Mapping[str, Any],
    setting: Mapping[str, Any] | None,
    earlier: list[Made],
) -> JsonDict:
    """What the result leads to, for the sheet as it was measured."""
    length, measured = bend_length_mm(part, step), asked["thickness_mm"]
    ordered = part["thickness_mm"]
    if measured is None or abs(measured - ordered) <= AS_ORDERED * ordered:
        return next_setting(step, asked, length, setting, earlier)
    if is_another_sheet(ordered, measured):
        return another_sheet(next_setting(step, asked, length, setting), ordered, measured)
    here = store.work(_at_thickness, step, part, measured)
    if here is None:
        return next_setting(step, asked, length, setting, earlier)
    return {**next_setting(here, asked, length, setting, earlier), "thickness_mm": measured}


def _at_thickness(
    store: Store, step: JsonDict, part: Mapping[str, Any], measured_mm: float
) -> JsonDict | None:
    """The step on sheet of that thickness; None where its tools or metal are not there any more."""
    tools, shop = tools_of(store, step), tooling(store)
    metal = shop.metals.get(part["metal"])
    if tools is None or metal is None or not step.get("corrections"):
        return None
    length = bend_length_mm(part, step)
    wanted = Wanted(metal, measured_mm, length, step["included_angle_deg"])
    return step_at_thickness(step, wanted, *tools, Equipment(shop.press, shop.crib))


def _earlier(
    store: Store, code: str, asked: Mapping[str, Any], revision: int, step: int
) -> list[Made]:
    """Pieces of this step made in the same run: before this one, not long before, of one lot."""
    now = _made(asked.get("made_at"), writing.now())
    found = []
    for piece in results.pieces(store, code, revision, step):
        made = _made(piece.result.get("made_at"), piece.result["received_at"])
        same_lot = (piece.result.get("lot") or "") == asked["lot"]
        if piece.result["id"] != asked["id"] and same_lot and now - ONE_RUN <= made <= now:
            setting = next((s for s in piece.settings if s["step"] == step), None)
            found.append((made, Made(piece.result, setting)))
    return [made for _, made in sorted(found, key=lambda one: one[0])]


def _made(by_device: str | None, received: str) -> datetime:
    """When a piece was made: a device whose clock is ahead cannot have made it after it came."""
    came = datetime.fromisoformat(received)
    return min(came, datetime.fromisoformat(by_device)) if by_device else came


def answer(kept: results.StoredResult, question: Sentence | None) -> str:
    """What the device is told: the result as kept, its correction, the card's new ETag, and what to
    ask about it."""
    correction = json.loads(kept.body)["correction"]
    told = {
        "correction": correction,
        "card_etag": kept.card_etag,
        "question_said": None if question is None else sentence_json(question),
    }
    rest = json_text(told)
    return f'{{"result":{kept.body},{rest[1:]}'


def _step(plan: Mapping[str, Any], asked: Mapping[str, Any]) -> JsonDict:
    for step in plan["steps"]:
        if step["number"] == asked["step"]:
            if asked["bend"] not in (None, step["bend"]):
                words = f"Step {asked['step']} makes bend {step['bend']}."
                raise ma.ValidationError({"bend": [words]})
            found: JsonDict = step
            return found
    raise ma.ValidationError({"step": [f"The plan has no step {asked['step']}."]})
