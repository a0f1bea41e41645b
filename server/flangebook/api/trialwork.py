"""A trial as it comes from the press: held against its card, and what to set next."""

from __future__ import annotations

import json
from collections.abc import Mapping
from typing import Any

import marshmallow as ma

from flangebook.planning.next_setting import measured_angle_deg, next_setting
from flangebook.shop import cards, trials
from flangebook.shop.store import Store
from flangebook.shop.writing import json_text

JsonDict = dict[str, Any]


def checked(store: Store, code: str, asked: Mapping[str, Any]) -> tuple[JsonDict, JsonDict]:
    """The trial with its measured angle and bend filled in, and its correction.

    Raises UnknownError for a card or revision that is not there, ValidationError for a step
    that the plan of that revision does not have.
    """
    content, _ = cards.content_of(store, code, asked["revision"])
    plan = content.plan_dict
    step = _step(plan, asked)
    setting = next((s for s in content.settings if s["step"] == step["number"]), None)
    correction = next_setting(step, asked, content.part["bend_length_mm"], setting)
    trial = {**asked, "bend": step["bend"], "measured_deg": round(measured_angle_deg(asked), 4)}
    return trial, correction


def answer(kept: trials.Kept) -> str:
    """What the device is told: the trial as kept, its correction, the card's new ETag."""
    correction = json.loads(kept.body)["correction"]
    rest = json_text({"correction": correction, "card_etag": kept.card_etag})
    return f'{{"trial":{kept.body},{rest[1:]}'


def _step(plan: Mapping[str, Any], asked: Mapping[str, Any]) -> JsonDict:
    for step in plan["steps"]:
        if step["number"] == asked["step"]:
            if asked["bend"] not in (None, step["bend"]):
                words = f"Step {asked['step']} makes bend {step['bend']}."
                raise ma.ValidationError({"bend": [words]})
            found: JsonDict = step
            return found
    raise ma.ValidationError({"step": [f"The plan has no step {asked['step']}."]})
