"""Runs of a card as they are asked for and answered."""

from __future__ import annotations

from typing import Any

import marshmallow as ma

from flangebook.schemas.answers import (
    answer,
    described,
    given,
    many,
    maybe,
    maybe_text,
    maybe_whole,
    one,
    one_of,
    text,
    whole,
)
from flangebook.schemas.cards import MOST_STEPS
from flangebook.schemas.fields import Choice, DeviceId, Moment, Whole
from flangebook.shop.runs import KINDS

MOST_PIECES = 100_000


class RunEntrySchema(ma.Schema):
    """One thing that happened in a run. It names no person and no device."""

    id = DeviceId(required=True, metadata={"description": "Made by the device."})
    run_id = DeviceId(
        required=True,
        metadata={"description": "Made by the device that began the run; the same in every entry."},
    )
    revision = Whole(
        1,
        1_000_000,
        required=True,
        metadata={"description": "Of the card, as the device shows it."},
    )
    kind = Choice(*KINDS, required=True)
    pieces = Whole(
        1,
        MOST_PIECES,
        load_default=None,
        allow_none=True,
        metadata={"description": "How many are wanted: with kind begun."},
    )
    step = Whole(
        1,
        MOST_STEPS,
        load_default=None,
        allow_none=True,
        metadata={"description": "Where the piece was spoilt: with kind scrap."},
    )
    undoes = DeviceId(
        load_default=None,
        allow_none=True,
        metadata={"description": "The entry that is taken back: with kind back."},
    )
    made_at = Moment(required=True, metadata={"description": "By the device's clock."})

    @ma.validates_schema
    def _fits_its_kind(self, data: dict[str, Any], **_: Any) -> None:
        for name, kind in (("pieces", "begun"), ("step", "scrap"), ("undoes", "back")):
            if (data.get(name) is None) != (data.get("kind") != kind):
                raise ma.ValidationError(f"Give this with kind {kind}, and only then.", name)


RunEntry = given(
    RunEntrySchema,
    "RunEntry",
    code=text(),
    received_at=text(),
    change=described(whole(), "The shop's own number: in this order the entries came."),
)
Scrap = answer("Scrap", step=whole(), pieces=whole())
Run = answer(
    "Run",
    id=text(),
    revision=whole(),
    pieces=described(maybe_whole(), "How many are wanted; null while nobody has said."),
    state=one_of("open", "paused", "ended"),
    begun_at=text(),
    done=whole(),
    scrapped=whole(),
    scrap=many(Scrap),
    setup_s=described(maybe(), "Set-up time without pauses; null while it goes on."),
    setup_until=described(
        maybe_text(),
        "'said' by somebody, or 'first piece' where nobody did; null while it goes on.",
    ),
    run_s=described(maybe(), "From the end of the set-up to the last piece, without pauses."),
    paused_s=maybe(),
    seconds_per_piece=described(
        maybe(), "Of each good piece after the set-up; the time spent on scrap is in it."
    ),
)
Runs = answer("Runs", runs=many(Run))
RunAnswer = answer("RunAnswer", entry=one(RunEntry), run=one(Run))
