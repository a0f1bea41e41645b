"""Labels as they are asked for."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

import marshmallow as ma

from flangebook.bending.errors import InputError
from flangebook.labels import codes
from flangebook.labels.label import SIZES
from flangebook.labels.sheet import PAPERS
from flangebook.schemas.fields import Choice, Text, Whole

MOST_LABELS = 200


class Codes(Text):
    """Card codes, commas between."""

    def _deserialize(
        self, value: Any, attr: str | None, data: Mapping[str, Any] | None, **kwargs: Any
    ) -> Any:
        text = super()._deserialize(value, attr, data, **kwargs)
        typed = [one for one in text.split(",") if one.strip()]
        if not 1 <= len(typed) <= MOST_LABELS:
            raise ma.ValidationError(f"Name 1 to {MOST_LABELS} cards, commas between.")
        try:
            return [codes.parse(one) for one in typed]
        except InputError as error:
            raise ma.ValidationError(f"{error.what} {error.right}") from None


class LabelQuery(ma.Schema):
    """How a label is drawn. dpi: of a PNG."""

    size = Choice(*SIZES, load_default="50x25")
    units = Choice("mm", "inch", load_default="mm")
    dpi = Whole(72, 600, typed=True, load_default=300)


class SheetQuery(LabelQuery):
    """Which labels go on a sheet, and which sheet of several is wanted."""

    codes = Codes(MOST_LABELS * 12, required=True)
    paper = Choice(*PAPERS, load_default="A4")
    page = Whole(1, MOST_LABELS, typed=True, load_default=1)
    skip = Whole(0, 1_000, typed=True, load_default=0)
