"""What happens to a card: made from a part, changed, held against a fresh plan."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from typing import Any

import marshmallow as ma

from flangebook.bending.checks import tidy
from flangebook.bending.errors import FlangebookError
from flangebook.planning.answers import differences
from flangebook.planning.answers.setting_json import limits_of
from flangebook.planning.results.gauged_flange import gauge_reaches
from flangebook.schemas.part import PartSchema
from flangebook.shop import cards, history, proposals, revisions
from flangebook.shop.store import Store
from flangebook.use_cases.planner import order_limits_from, plan_of

JsonDict = dict[str, Any]


@dataclass(frozen=True, slots=True)
class Edit:
    """A card's next revision and what changed, in words; None when nothing would."""

    content: cards.Content
    words: Sequence[str]


def new_content(store: Store, asked: Mapping[str, Any]) -> cards.Content:
    """The first revision of a card: its part, planned for the shop as it stands.

    asked: ``part`` and ``note`` as their schemas give them.
    """
    part = asked["part"]
    if not part["title"]:
        raise ma.ValidationError({"part": {"title": ["A card needs a title."]}})
    plan = plan_of(store, part, "part")
    return cards.Content(part["title"], asked["note"], plan["part"], plan, plan["worst"])


def edited(store: Store, code: str, content: cards.Content, asked: Mapping[str, Any]) -> Edit:
    """The card with what was asked for changed; a part that did not change keeps its plan."""
    if "restore_revision" in asked:
        number = asked["restore_revision"]
        old, _ = cards.content_of(store, code, number)
        return Edit(old, [f"brought back revision {number}", *history.changes(content, old)])
    plain = {k: asked[k] for k in ("note", "archived") if k in asked}
    after = replace(content, title=_title(content, asked), **plain)
    after, words = _planned(store, after, asked)
    if "settings" in asked:
        after = replace(after, settings=checked_settings(after, asked["settings"]))
    words = [*history.changes(content, after), *words]
    return Edit(after, [*words, *_settled(store, code, asked.get("settles", ()))])


def keep(
    store: Store,
    code: str,
    asked: Mapping[str, Any],
    content: cards.Content,
    etag: str,
    after: str = "",
) -> None:
    """Keep a change of a card as its next revision, if it changes anything.

    content: the card as it is, with its etag, or "*". after: id of the revision that it was made
    on, or empty. Raises ShopError.
    """
    edit = edited(store, code, content, asked)
    if edit.words:
        revisions.revise(
            store,
            code,
            edit.content,
            revisions.Author(asked["by"], asked["reason"], asked.get("id", "")),
            edit.words,
            if_match=etag,
            after=after,
            settles=asked.get("settles", ()),
            asked=asked,
        )


def _settled(store: Store, code: str, ids: Sequence[str]) -> list[str]:
    """Which proposals a change settles, in words."""
    if not ids:
        return []
    found = proposals.named(store, code, ids)
    by = sorted({one.by for one in found if one.by})
    return [
        f"settled {len(ids)} proposed change{'s' * (len(ids) > 1)}"
        + (f" of {', '.join(by)}" if by else "")
    ]


def _title(content: cards.Content, asked: Mapping[str, Any]) -> str:
    of_part = asked.get("part", {}).get("title", "")
    return str(asked.get("title") or of_part or content.title)


def _planned(
    store: Store, content: cards.Content, asked: Mapping[str, Any]
) -> tuple[cards.Content, list[str]]:
    """With a fresh plan where the part changed or one was asked for; settings go with the old."""
    kept = PartSchema().load(content.part)
    part = asked.get("part", kept)
    if _untitled(part) == _untitled(kept) and not asked.get("replan"):
        return content, []
    plan = plan_of(store, {**part, "title": content.title}, "part")
    found = differences.differences(content.plan_dict, plan)
    after = replace(content, part=plan["part"], plan=plan, worst=plan["worst"], settings=())
    return after, ["planned afresh", *([differences.in_words(found)] if found else [])]


def _untitled(part: Mapping[str, Any]) -> JsonDict:
    plain = {k: v for k, v in part.items() if k != "title"}
    return {**plain, "wishes": order_limits_from(part["wishes"])}


def checked_settings(
    content: cards.Content, settings: Sequence[Mapping[str, Any]]
) -> list[JsonDict]:
    """The settings, one a step that the plan has, each within what its tools and press reach.

    Raises ValidationError.
    """
    known = {step["number"]: step for step in content.plan_dict["steps"]}
    seen: set[int] = set()
    for number, one in enumerate(settings):
        if one["step"] not in known:
            raise _wrong_step(number, f"The plan has no step {one['step']}.")
        if one["step"] in seen:
            raise _wrong_step(number, f"Step {one['step']} is there twice.")
        seen.add(one["step"])
        if dict(one) not in content.settings:  # one that was there before is not shown if beyond
            _need_reach(number, known[one["step"]], one)
    return [dict(one) for one in settings]


def _need_reach(number: int, step: Mapping[str, Any], setting: Mapping[str, Any]) -> None:
    """Refuse a setting that tools and press of its step do not reach.

    Raises ValidationError.
    """
    limits = limits_of(step)
    wrong = {}
    for name, end, unit in (
        ("set_angle_deg", limits.sharpest_deg if limits else None, "° under load: no sharper"),
        ("punch_depth_mm", limits.deepest_mm if limits else None, " mm: no deeper"),
    ):
        value = setting.get(name)
        asked = (value, None) if name == "set_angle_deg" else (None, value)
        if value is None:
            continue
        if limits is None or end is None:
            wrong[name] = ["This step has no tools to set: plan it with the tools it needs first."]
        elif "flat" in limits.beyond(*asked):
            wrong[name] = ["That would not bend the sheet."]
        elif limits.beyond(*asked):
            wrong[name] = [f"Tools and press of this step end at {tidy(end)}{unit}."]
    if setting.get("gauge_x_mm") is not None and not gauge_reaches(step, setting["gauge_x_mm"]):
        wrong["gauge_x_mm"] = ["The back gauge does not reach that place at this step."]
    if wrong:
        raise ma.ValidationError({"settings": {number: wrong}})


def _wrong_step(number: int, words: str) -> ma.ValidationError:
    return ma.ValidationError({"settings": {number: {"step": [words]}}})


def freshness(store: Store, code: str) -> JsonDict:
    """Whether a plan made today would differ from the one on the card, and where."""
    content, _ = cards.content_of(store, code)
    try:
        fresh = plan_of(store, PartSchema().load(content.part), "part")
    except (FlangebookError, ma.ValidationError) as error:
        why = str(error) if isinstance(error, FlangebookError) else "The part can't be read."
        lost = {"where": "part", "what": "plan", "saved": "planned", "fresh": why}
        return {"differs": True, "differences": [lost], "words": f"It can't be planned now: {why}"}
    found = differences.differences(content.plan_dict, fresh)
    return {
        "differs": bool(found),
        "differences": found,
        "words": differences.in_words(found),
    }
