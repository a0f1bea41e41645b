"""Test bends, what they teach, and marks on them: as asked for and as answered."""

from __future__ import annotations

from typing import Any, get_args

import marshmallow as ma

from flangebook.bending.requirements import (
    LEAST_LENGTH_MM,
    LEAST_THICKNESS_MM,
    MOST_LENGTH_MM,
    MOST_THICKNESS_MM,
)
from flangebook.bending.tools.tooling import SetBy
from flangebook.schemas.answers import (
    Field,
    Said,
    answer,
    described,
    many,
    maybe,
    maybe_text,
    number,
    one,
    one_of,
    text,
    whole,
    yes_no,
)
from flangebook.schemas.cards import MOST_DEPTH_MM, need_an_angle
from flangebook.schemas.fields import (
    MOST_NOTE,
    DeviceId,
    Moment,
    Quantity,
    Text,
    ToolCode,
    Whole,
    optional,
)
from flangebook.schemas.part import LEAST_ANGLE_DEG
from flangebook.schemas.quantities import ANGLE, LENGTH

MOST_LOT = 80


def _angle() -> Quantity:
    return optional(ANGLE, LEAST_ANGLE_DEG, 180.0)


def _length(most: float = MOST_LENGTH_MM) -> Quantity:
    return optional(LENGTH, LEAST_LENGTH_MM, most)


class TestBendSchema(ma.Schema):
    """A strip that was bent to see what the metal does."""

    __test__ = False  # not one of pytest's

    id = DeviceId(required=True, metadata={"description": "Made by the device."})
    metal = ToolCode(required=True)
    lot = Text(MOST_LOT, load_default="", metadata={"description": "As written on the sheet."})
    thickness_mm = Quantity(
        LENGTH,
        LEAST_THICKNESS_MM,
        MOST_THICKNESS_MM,
        required=True,
        metadata={"description": "Of the strip, measured."},
    )
    ordered_thickness_mm = optional(
        LENGTH,
        LEAST_THICKNESS_MM,
        MOST_THICKNESS_MM,
        "As ordered; the usual thickness nearest to it if left out.",
    )
    bend_length_mm = Quantity(LENGTH, LEAST_LENGTH_MM, MOST_LENGTH_MM, required=True)
    die = ToolCode(required=True)
    punch = ToolCode(required=True)
    included_angle_deg = Quantity(ANGLE, LEAST_ANGLE_DEG, 179.9, required=True)
    set_angle_deg = _angle()
    loaded_deg = _angle()
    punch_depth_mm = optional(LENGTH, -MOST_DEPTH_MM, MOST_DEPTH_MM)
    measured_deg = _angle()
    left_deg = _angle()
    middle_deg = _angle()
    right_deg = _angle()
    flat_length_mm = _length()
    flange_left_mm = _length()
    flange_right_mm = _length()
    radius_mm = optional(LENGTH, 0.0, 500.0)
    note = Text(MOST_NOTE, lines=True, load_default="")
    made_at = Moment(load_default=None, allow_none=True)
    by = Text(80, load_default="")

    @ma.validates_schema
    def _measured(self, data: dict[str, Any], **_: Any) -> None:
        need_an_angle(data)


class MarkSchema(ma.Schema):
    """Who says so, and why."""

    by = Text(80, load_default="")
    reason = Text(load_default="")


class EvidenceQuery(ma.Schema):
    """Of which metal, and which page."""

    metal = ToolCode(required=True)
    limit = Whole(1, 200, typed=True, load_default=200)
    offset = Whole(0, 1_000_000, typed=True, load_default=0)


class LearnedQuery(ma.Schema):
    """Of which metal."""

    metal = ToolCode(required=True)


Band = answer("Band", low=number(), nominal=number(), high=number(), origin=text())
ResultPoint = answer("ResultPoint", id=text(), value=number(), weight=number(), outlier=yes_no())
LearnedFigure = answer(
    "LearnedFigure",
    what=one_of("springback", "inside radius", "K-factor"),
    before=one(Band),
    after=one(Band),
    unit=one_of("deg", "mm", ""),
    trials=whole(),
    points=many(ResultPoint),
)
OddResult = answer("OddResult", id=text(), said=many(Said))
CardThatChanges = answer("CardThatChanges", code=text(), title=text(), said=many(Said))
EvidenceRow = answer(
    "EvidenceRow",
    id=text(),
    kind=one_of("test bend", "first piece"),
    code=maybe_text(),
    step=ma.fields.Integer(allow_none=True),
    metal=text(),
    lot=text(),
    thickness_mm=number(),
    ordered_thickness_mm=number(),
    bend_length_mm=number(),
    included_angle_deg=number(),
    v_opening_mm=number(),
    die=text(),
    punch=text(),
    punch_radius_mm=number(),
    measured_deg=number(),
    left_deg=maybe(),
    middle_deg=maybe(),
    right_deg=maybe(),
    set_angle_deg=maybe(),
    loaded_deg=maybe(),
    punch_depth_mm=maybe(),
    flat_length_mm=maybe(),
    flange_left_mm=maybe(),
    flange_right_mm=maybe(),
    radius_mm=maybe(),
    made_at=text(),
    by=text(),
    device=text(),
    note=text(),
    forgotten=yes_no(),
    confirmed=yes_no(),
    outlier=yes_no(),
    teaches=yes_no(),
    asks=yes_no(),
    said=many(Said),
)
EvidenceList = answer("EvidenceList", evidence=many(EvidenceRow), total=whole())
_changed: dict[str, Field] = {
    "figures": many(LearnedFigure),
    "said": many(Said),
    "outliers": many(OddResult),
    "cards": many(CardThatChanges),
}
TestBendAnswer = answer("TestBendAnswer", test_bend=one(EvidenceRow), **_changed)
MarkAnswer = answer("MarkAnswer", evidence=one(EvidenceRow), **_changed)
LearnedDeduction = answer(
    "LearnedDeduction", before_mm=one(Band), after_mm=one(Band), flanges=whole(), strips=whole()
)
LearnedGroup = answer(
    "LearnedGroup",
    thickness_mm=number(),
    v_opening_mm=number(),
    lot=maybe_text(),
    included_angle_deg=number(),
    die=text(),
    punch_radius_mm=number(),
    factor=one(Band, allow_none=True),
    deduction=described(
        one(LearnedDeduction, allow_none=True),
        "What a bend takes of the blank by measured flanges and strips; null where none counts.",
    ),
    figures=many(LearnedFigure),
    said=many(Said),
    outliers=many(OddResult),
)
StripToBend = answer(
    "StripToBend", metal=text(), thickness_mm=number(), die=text(), v_opening_mm=number()
)
LearnedPress = answer(
    "LearnedPress",
    set_by=one_of(*get_args(SetBy), allow_none=True),
    offset_mm=described(
        one(Band, allow_none=True),
        "How much less deep the punch goes than the press shows [mm]; below 0 it goes deeper; "
        "null where no result tells of it.",
    ),
    results=whole(),
    apart=yes_no(),
    strip=one(StripToBend, allow_none=True),
    said=many(Said),
)
Learned = answer(
    "Learned",
    metal=text(),
    press=one(LearnedPress),
    groups=many(LearnedGroup),
    words=many(text()),
)
