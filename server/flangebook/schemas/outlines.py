"""What is asked and answered about outlines in drawings."""

from __future__ import annotations

import marshmallow as ma

from flangebook.schemas.answers import answer, many, number, one_of, ring, text, whole, yes_no
from flangebook.schemas.fields import Choice, Text, Whole

UNITS = ("mm", "cm", "m", "inch", "ft")


class DxfQuery(ma.Schema):
    """How a drawing is to be read."""

    kind = Choice("punch", "die", "holder", "ram", "bed", "die_holder", required=True)
    units = Choice(
        *UNITS,
        load_default=None,
        metadata={"description": "What a unit of the drawing is; without it, as its header says."},
    )
    layer = Text(255, load_default=None, metadata={"description": "Take only what lies on it."})
    origin = Choice(
        "rule",
        "drawn",
        "point",
        load_default="rule",
        metadata={"description": "Where (0, 0) is: by the rule, as drawn, at a point."},
    )
    point = Whole(1, 400, typed=True, load_default=None)
    turn_deg = Choice("0", "90", "180", "270", load_default="0")
    mirror = Choice("no", "yes", load_default="no")


LeftOut = answer("LeftOut", kind=text(), count=whole())

DxfOutline = answer(
    "DxfOutline",
    points_mm=ring(),
    units=one_of(*UNITS),
    units_asked=yes_no(),
    rule=text(),
    moved_mm=many(number()),
    width_mm=number(),
    height_mm=number(),
    within_mm=number(),
    layers=many(text()),
    left_out=many(LeftOut),
)
