"""Benches as they are asked for and answered."""

from __future__ import annotations

import unicodedata
from collections.abc import Mapping
from typing import Any

import marshmallow as ma

from flangebook.schemas.answers import answer, many, text, whole
from flangebook.schemas.cards import MOST_STEPS
from flangebook.schemas.fields import CardCode, Text, Whole

MOST_NAME = 40


class PressScreenName(Text):
    """What a bench is called: 1 to 40 characters, a letter or digit among them."""

    def __init__(self, **others: Any) -> None:
        super().__init__(MOST_NAME, least=1, **others)

    def _deserialize(
        self, value: Any, attr: str | None, data: Mapping[str, Any] | None, **kwargs: Any
    ) -> Any:
        name = super()._deserialize(value, attr, data, **kwargs)
        # Of points alone an address would mean another place.
        if "/" in name or not any(unicodedata.category(c)[0] in "LN" for c in name):
            raise ma.ValidationError(
                "A name needs a letter or a digit, and has no stroke (/). Write it like: Bench 1."
            )
        return name


class PressScreenSchema(ma.Schema):
    """Where a bench is to stand. step: one past the card's last when the card is done, 0 for an
    empty bench."""

    code = CardCode(required=True, allow_none=True)
    step = Whole(0, MOST_STEPS + 1, required=True)
    by = Text(80, load_default="", metadata={"description": "Who, in a word or two."})


def _code() -> ma.fields.Field[Any]:
    return ma.fields.String(allow_none=True)


PressScreen = answer(
    "PressScreen", name=text(), code=_code(), step=whole(), version=whole(), at=text(), by=text()
)
PressScreens = answer("PressScreens", press_screens=many(PressScreen))
