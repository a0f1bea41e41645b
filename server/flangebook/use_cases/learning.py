"""From the evidence as kept to what planning counts with, and what a change of it changes.

What is worked out of a metal's evidence is kept until that evidence or the metal changes;
where there is none, asking costs a look into memory.
"""

from __future__ import annotations

import json
from collections.abc import Iterator, Mapping
from functools import lru_cache
from typing import Any

from flangebook.bending.checks import Sentence
from flangebook.bending.learning.joint import GAUGE, Solved, solve
from flangebook.bending.learning.lessons import Lesson
from flangebook.bending.learning.result import Result
from flangebook.bending.part.metals import Metal
from flangebook.bending.tools.tooling import SetBy
from flangebook.labels.codes import display
from flangebook.planning.answers import learned_json
from flangebook.planning.answers.answer import said_json
from flangebook.planning.answers.learned_json import odd_sentences
from flangebook.planning.plan import find_metal
from flangebook.planning.results import affected
from flangebook.planning.results.evidence import Evidence, Lessons, odd_ids, result_from
from flangebook.planning.results.press_learned import press_json
from flangebook.planning.tools.fit import Equipment
from flangebook.shop import evidence as kept
from flangebook.shop import listing
from flangebook.shop.crib import Tooling, tooling
from flangebook.shop.store import Store
from flangebook.shop.zeros import NEVER_SET, Zeros

JsonDict = dict[str, Any]
MOST_METALS = 32
MOST_CARDS = 50
MOST_OF_OTHERS = 30
"""So many of the newest results of each other metal tell of the press."""
WRONG = Sentence("Marked wrong: it does not count.")
NO_METAL = Sentence("Its metal is not in the shop.")
NOT_LEARNED = Sentence("This bend cannot be predicted, so nothing can be learned from it.")
MOST_THICKNESS_APART = 1.8
"""Evidence does not reach sheet that is so many times as thick; ``nearness`` says why."""


def evidence_of(store: Store, metal: Metal, lot: str = "") -> Evidence | None:
    """What there is of a metal, and of press and gauge in other metals; None where there is
    nothing."""

    def look() -> Evidence | None:
        shop = tooling(store)
        set_by = shop.press.set_by if shop.press else None
        counter, others = kept.counter(store, metal.code), _of_others(store, shop, metal, set_by)
        if not (counter or others):
            return None
        return _counted(store, metal, counter, store.shop_id, set_by, others, shop.zeros)

    found = store.cache.get_or_compute(f"evidence {metal.code}", look, lambda _: 0)
    return found.of_lot(lot) if found is not None and lot else found


@lru_cache(maxsize=MOST_METALS)
def _counted(
    store: Store,
    metal: Metal,
    counter: int,
    shop_id: str,
    set_by: SetBy | None,
    others: tuple[Lesson, ...] = (),
    zeros: Zeros = NEVER_SET,
) -> Evidence | None:
    """counter: so that evidence that changed is read again; shop_id: another shop's, too, that
    was put in the place of this one."""
    records = kept.counted(store, metal.code) if counter else []
    if not (records or others):
        return None
    return Evidence(
        metal,
        tuple(result_of(record, metal) for record in records),
        calculated=frozenset(r.id for r in records if r.body.get("depth_calculated")),
        of_others=others,
        set_by=set_by,
        press=zeros.press,
        gauge=zeros.gauge,
        known=_lessons(store, metal, shop_id, set_by),
    )


def gauge_evidence(store: Store) -> Solved | None:
    """Of every metal the newest flanges that the gauge set, and strips' lengths, solved
    together."""
    shop = tooling(store)
    found = [
        lesson
        for theirs, result in _newest(store, shop, shop.press.set_by if shop.press else None)
        for lesson in theirs.said_by(result)[0]
        if lesson.figure == "deduction" and result.id not in theirs.together.asked
    ]
    return solve(found, GAUGE)


def _of_others(
    store: Store, shop: Tooling, metal: Metal, set_by: SetBy | None
) -> tuple[Lesson, ...]:
    """What the newest results of the shop's other metals say of the press and its gauge."""
    return tuple(
        lesson
        for theirs, result in _newest(store, shop, set_by, metal.code)
        for lesson in theirs.said_by(result)[0]
        if lesson.per_mm
    )


def _newest(
    store: Store, shop: Tooling, set_by: SetBy | None, but: str | None = None
) -> Iterator[tuple[Evidence, Result]]:
    """The newest results of every metal but one, each with all there is of its metal."""
    for code in kept.metals_with_evidence(store):
        other = shop.metals.get(code)
        if other is None or code == but:
            continue
        theirs = _counted(store, other, kept.counter(store, code), store.shop_id, set_by)
        if theirs is not None:
            yield from ((theirs, result) for result in theirs.results[-MOST_OF_OTHERS:])


@lru_cache(maxsize=MOST_METALS)
def _lessons(_store: Store, _metal: Metal, _shop_id: str, _set_by: SetBy | None) -> Lessons:
    """What the metal's results teach: a result never changes, so what it teaches does not."""
    return {}


def result_of(record: kept.Record, metal: Metal) -> Result:
    """A piece of evidence as the learning takes it."""
    return result_from(record.body, metal, _label(record), record.confirmed)


def _label(record: kept.Record) -> str:
    of = f"of card {display(record.code)}, " if record.code else ""
    return f"{of}{_made_at(record)[:16].replace('T', ' ')}"


def _made_at(record: kept.Record) -> str:
    return str(record.body.get("made_at") or record.at)


def rows(store: Store, metal: Metal, records: list[kept.Record]) -> list[JsonDict]:
    """Evidence as the API gives it, each with what is odd about it."""
    evidence = evidence_of(store, metal) or Evidence(metal, ())
    learned: dict[Any, Any] = {}
    found = []
    for record in records:
        result = result_of(record, metal)
        here = result.set_up
        if here not in learned and not record.forgotten:
            learned[here] = learned_json.learning_at(evidence.of_lot(here.lot), here)
        learning = None if record.forgotten else learned[here]
        odd = [WRONG] if record.forgotten else odd_sentences(evidence, result, learning)
        outlier = learning is not None and result.id in odd_ids(learning)
        asked = not record.forgotten and result.id in evidence.together.asked
        teaches = not (record.forgotten or asked) and bool(evidence.said_by(result)[0])
        said = {"outlier": outlier, "teaches": teaches, "asks": asked}
        found.append({**_row(record), **said, **said_json(odd)})
    return found


def row_of(store: Store, record: kept.Record) -> JsonDict:
    """One piece of evidence as the API gives it, of a metal that may be gone from the shop."""
    metal = tooling(store).metals.get(record.metal)
    if metal is None:
        said = {"outlier": False, "teaches": False, "asks": False}
        return {**_row(record), **said, **said_json([NO_METAL])}
    return rows(store, metal, [record])[0]


def question_about(store: Store, evidence_id: str) -> Sentence | None:
    """What to ask about a result that does not count until it is confirmed; None for any other."""
    record = kept.of_id(store, str(evidence_id))
    metal = None if record is None else tooling(store).metals.get(record.metal)
    evidence = None if metal is None else evidence_of(store, metal)
    if record is None or evidence is None or record.forgotten:
        return None
    check = evidence.question_about(result_of(record, evidence.metal))
    return None if check is None else check.whole


_MEASURED = (
    "measured_deg", "left_deg", "middle_deg", "right_deg", "set_angle_deg", "loaded_deg",
    "punch_depth_mm", "flat_length_mm", "flange_left_mm", "flange_right_mm", "radius_mm",
)  # fmt: skip


def _row(record: kept.Record) -> JsonDict:
    body = record.body
    return {
        "id": record.id,
        "kind": record.kind,
        "code": record.code,
        "step": body.get("step"),
        "metal": record.metal,
        "lot": body["lot"],
        "thickness_mm": body.get("thickness_mm") or body["ordered_mm"],
        "ordered_thickness_mm": body["ordered_mm"],
        "bend_length_mm": body["bend_length_mm"],
        "included_angle_deg": body["included_angle_deg"],
        "v_opening_mm": body["die"]["v_opening_mm"],
        "die": body["die"]["code"],
        "punch": body["punch"]["code"],
        "punch_radius_mm": body["punch"]["tip_radius_mm"],
        **{name: body.get(name) for name in _MEASURED},
        "made_at": _made_at(record),
        "by": record.by,
        "device": record.device,
        "note": body.get("note") or "",
        "forgotten": record.forgotten,
        "confirmed": record.confirmed,
    }


def listed(store: Store, asked: Mapping[str, Any]) -> JsonDict:
    """All evidence of a metal, newest first.

    Raises MissingToolError.
    """
    metal = find_metal(tooling(store).metals, asked["metal"])
    records, total = kept.page(store, metal.code, asked["limit"], asked["offset"])
    return {"evidence": rows(store, metal, records), "total": total}


def learned_of(store: Store, code: str) -> JsonDict:
    """What the evidence of a metal makes of its figures, place by place.

    Raises MissingToolError.
    """
    shop = tooling(store)
    metal = find_metal(shop.metals, code)
    evidence = evidence_of(store, metal)
    groups = learned_json.learned_json(evidence) if evidence else []
    press = press_json(evidence or Evidence(metal, ()), shop.crib)
    return {"metal": metal.code, "press": press, "groups": groups, "words": _bounds(evidence)}


def _bounds(evidence: Evidence | None) -> list[str]:
    if evidence is None or not evidence.results:
        return ["There is no test bend and no first piece of this metal that counts."]
    if len(evidence.results) < kept.MOST_COUNTED:
        return []
    return [f"Only the newest {kept.MOST_COUNTED} test bends and first pieces are counted."]


def what_changed(store: Store, record: kept.Record) -> JsonDict:
    """What a piece of evidence, or a mark on it, changed: figures, words, outliers, cards.

    Where it counts, its figures are those with it beside those without it; where it was marked
    wrong, the other way round.
    """
    shop = tooling(store)
    metal = shop.metals.get(record.metal)
    if metal is None:
        gone = Sentence(f"The metal {record.metal} is not in the shop: no figure follows from it.")
        return {"figures": [], **said_json([gone]), "outliers": [], "cards": []}
    now = evidence_of(store, metal) or Evidence(metal, ())
    result = result_of(record, metal)
    calculated = bool(record.body.get("depth_calculated"))
    other = now.with_one(result, calculated) if record.forgotten else now.without(result.id)
    return _compared(store, shop, record, result, other, now)


def _compared(
    store: Store,
    shop: Tooling,
    record: kept.Record,
    result: Result,
    before: Evidence,
    after: Evidence,
) -> JsonDict:
    here = result.set_up
    old = learned_json.learning_at(before.of_lot(here.lot), here)
    new = learned_json.learning_at(after.of_lot(here.lot), here)
    if old is None or new is None:
        return {"figures": [], **said_json([NOT_LEARNED]), "outliers": [], "cards": []}
    alone = [] if record.forgotten else odd_sentences(after, result, new)
    figures = learned_json.figures_json(old.bend, new, here.case)
    if result.id not in before.together.counting | after.together.counting:
        figures = []
    elif record.forgotten:
        gone = learned_json.figures_json(new.bend, old, here.case)
        figures = [_turned(one, figures) for one in gone]
    cards, cut = cards_that_change(store, shop, here.case.thickness_mm, before, after)
    said = [
        *alone,
        *learned_json.figure_sentences(figures),
        *learned_json.together_sentences(new),
        *(
            [Sentence(f"Only the {MOST_CARDS} cards changed last were looked through.")]
            if cut
            else []
        ),
    ]
    outliers = learned_json.outliers_json(after, new)
    return {"figures": figures, **said_json(said), "outliers": outliers, "cards": cards}


def _turned(one: JsonDict, left: list[JsonDict]) -> JsonDict:
    """A figure when a result was taken away: before and after change places; the results and
    points are those that are left."""
    rest = next((other for other in left if other["what"] == one["what"]), None)
    points = rest["points"] if rest else []
    return {
        **one,
        "before": one["after"],
        "after": one["before"],
        "trials": len(points),
        "points": points,
    }


def cards_that_change(
    store: Store, shop: Tooling, thickness_mm: float, before: Evidence, after: Evidence
) -> tuple[list[JsonDict], bool]:
    """Cards of the metal that would be planned otherwise, and whether not all were looked at."""
    found, equipment = [], Equipment(shop.press, shop.crib)
    near = (thickness_mm / MOST_THICKNESS_APART, thickness_mm * MOST_THICKNESS_APART)
    plans, cut = listing.plans_of(store, after.metal.code, near, MOST_CARDS)
    for code, title, plan in plans:
        changes = affected.changes(json.loads(plan), equipment, before, after)
        if changes:
            found.append({"code": code, "title": title, **said_json(changes)})
    return found, cut
