"""What is answered about cards, results, labels, changes and the whole shop."""

from __future__ import annotations

from typing import Any

import marshmallow as ma

from flangebook.schemas import cards
from flangebook.schemas.answers import (
    Die,
    Holder,
    Metal,
    Part,
    Press,
    Punch,
    Said,
    Setting,
    answer,
    described,
    given,
    given_once,
    level,
    many,
    maybe,
    maybe_whole,
    number,
    older,
    one,
    one_of,
    sometimes,
    text,
    whole,
    yes_no,
)
from flangebook.schemas.plan_answers import Plan
from flangebook.schemas.runs import RunEntry
from flangebook.shop.results import LATER

Shim = answer("Shim", middle_mm=number(), strip_mm=number(), lengths_mm=ma.fields.List(number()))
Crown = answer(
    "Crown",
    setting_for=sometimes(one_of("ends", "mean")),
    middle_open_deg=number(),
    lack_mm=number(),
    shim=one(Shim, allow_none=True),
    said=sometimes(one(Said)),
    words=older(),
)
FlangeResult = answer(
    "FlangeResult",
    flat=maybe_whole(),
    measured_mm=number(),
    expected_mm=maybe(),
    error_mm=maybe(),
    gauge_x_mm=maybe(),
    off_plan_mm=maybe(),
    v_opening_mm=maybe(),
    to_check=many(text()),
    said=sometimes(one(Said)),
    words=older(),
)
Correction = answer(
    "Correction",
    wanted_deg=number(),
    measured_deg=number(),
    error_deg=number(),
    set_angle_deg=maybe(),
    punch_depth_mm=maybe(),
    tilt_mm_per_m=maybe(),
    crown=sometimes(one(Crown, allow_none=True)),
    flange=sometimes(one(FlangeResult, allow_none=True)),
    thickness_mm=sometimes(number()),
    said=sometimes(one(Said)),
    limited_by=sometimes(many(text())),
    to_check=sometimes(many(text())),
    basis=text(),
    what=older(),
    words=older(),
)
Result = given(
    cards.ResultSchema,
    "Result",
    device=sometimes(described(text(), "The name of the paired device that sent it.")),
    number=whole(),
    received_at=text(),
    correction=one(Correction, allow_none=True),
)
del Result._declared_fields["again"]  # says how it is sent, not what it is
for _later in LATER:
    # Results that were kept before there were these fields do not have them.
    Result._declared_fields[_later].required = False
ResultAnswer = answer(
    "ResultAnswer",
    result=one(Result),
    correction=one(Correction, allow_none=True),
    card_etag=text(),
    question_said=described(
        one(Said, allow_none=True),
        "What to ask about a result that does not count, because no metal does that, until it is "
        "confirmed; null where there is nothing to ask.",
    ),
)
Results = answer("Results", results=many(Result), total=whole())
Proposal = given(cards.ProposalSchema, "Proposal", received_at=text(), device=sometimes(text()))
SettledProposal = given(
    cards.ProposalSchema,
    "SettledProposal",
    received_at=text(),
    device=sometimes(text()),
    settled_by=maybe_whole(),
)  # fmt: skip
for _field in given_once(cards.ChangesSchema)._declared_fields.values():
    # A change names only what it changes.
    _field.required = False
Proposals = answer("Proposals", proposals=many(SettledProposal))
Card = answer(
    "Card",
    code=text(),
    display_code=text(),
    url=text(),
    etag=text(),
    revision=whole(),
    revision_id=text(),
    title=text(),
    note=text(),
    archived=yes_no(),
    worst=level(),
    created_at=text(),
    created_by=text(),
    updated_at=text(),
    updated_by=text(),
    trials_total=whole(),
    proposals_total=whole(),
    settings=many(Setting),
    part=one(Part),
    plan=one(Plan),
    trials=many(Result),
    proposals=many(Proposal),
)
CardSummary = answer(
    "CardSummary",
    code=text(),
    display_code=text(),
    title=text(),
    metal=text(),
    thickness_mm=number(),
    bends=whole(),
    revision=whole(),
    trials=whole(),
    worst=level(),
    archived=yes_no(),
    created_at=text(),
    created_by=text(),
    updated_at=text(),
    updated_by=text(),
    etag=text(),
    url=text(),
)
CardList = answer("CardList", cards=many(CardSummary), total=whole())
Revision = answer(
    "Revision",
    revision=whole(),
    at=text(),
    by=text(),
    device=text(),
    reason=text(),
    title=text(),
    changes=ma.fields.List(text()),
    worst=level(),
    archived=yes_no(),
)
Revisions = answer("Revisions", revisions=many(Revision), total=whole())
Snapshot = answer(
    "Snapshot",
    code=text(),
    display_code=text(),
    revision=whole(),
    id=text(),
    at=text(),
    by=text(),
    device=text(),
    reason=text(),
    title=text(),
    note=text(),
    archived=yes_no(),
    worst=level(),
    changes=ma.fields.List(text()),
    settings=many(Setting),
    part=one(Part),
    plan=one(Plan),
)


def _bare_value() -> ma.fields.Field[Any]:
    return ma.fields.Raw(allow_none=True)


Difference = answer(
    "Difference",
    where=text(),
    what=text(),
    field=text(),
    saved=text(),
    fresh=text(),
    saved_value=_bare_value(),
    fresh_value=_bare_value(),
)
Freshness = answer("Freshness", differs=yes_no(), differences=many(Difference), words=text())
SheetCount = answer("SheetCount", pages=whole())


def _etags() -> ma.fields.Field[Any]:
    return ma.fields.Dict(keys=text(), values=text())


Shop = answer(
    "Shop",
    press=one(Press, allow_none=True),
    punches=many(Punch),
    dies=many(Die),
    holders=many(Holder),
    metals=many(Metal),
    etags=_etags(),
)
Changes = answer(
    "Changes",
    cursor=text(),
    more=yes_no(),
    reset=yes_no(),
    shop=one(Shop, allow_none=True),
    cards=many(Card),
    run_entries=many(RunEntry),
)


def _rows() -> ma.fields.Field[Any]:
    return ma.fields.List(ma.fields.Dict())


Export = answer(
    "Export",
    format=text(),
    format_version=whole(),
    made_by=text(),
    exported_at=text(),
    shop_id=text(),
    created_at=text(),
    documents=_rows(),
    plans=_rows(),
    cards=_rows(),
    revisions=_rows(),
    trials=_rows(),
    evidence=_rows(),
    marks=_rows(),
    proposals=_rows(),
    settlements=_rows(),
    benches=_rows(),
    run_entries=_rows(),
)
