"""What the press is told by measuring: three strips along the bed, and the flanges of parts."""

from __future__ import annotations

import marshmallow as ma

from flangebook.bending.requirements import (
    LEAST_LENGTH_MM,
    LEAST_THICKNESS_MM,
    MOST_LENGTH_MM,
    MOST_THICKNESS_MM,
)
from flangebook.schemas.answers import answer, many, number, text, whole, yes_no
from flangebook.schemas.fields import Quantity, ToolCode
from flangebook.schemas.part import LEAST_ANGLE_DEG
from flangebook.schemas.quantities import ANGLE, LENGTH


def _angle() -> Quantity:
    return Quantity(ANGLE, LEAST_ANGLE_DEG, 179.9, required=True)


class StripTestSchema(ma.Schema):
    """The same strip, bent at one setting at the left, in the middle and at the right."""

    metal = ToolCode(required=True)
    die = ToolCode(required=True)
    punch = ToolCode(required=True)
    thickness_mm = Quantity(LENGTH, LEAST_THICKNESS_MM, MOST_THICKNESS_MM, required=True)
    strip_length_mm = Quantity(LENGTH, LEAST_LENGTH_MM, MOST_LENGTH_MM, required=True)
    end_mm = Quantity(
        LENGTH,
        0.0,
        MOST_LENGTH_MM,
        required=True,
        metadata={"description": "From the bed's end to the middle of the outer strips."},
    )
    included_angle_deg = Quantity(ANGLE, LEAST_ANGLE_DEG, 179.9, load_default=90.0)
    left_deg = _angle()
    middle_deg = _angle()
    right_deg = _angle()


StripTest = answer(
    "StripTest",
    middle_open_deg=number(),
    deflection_mm=number(),
    deflection_mm_low=number(),
    deflection_mm_high=number(),
)
DeductionLeft = answer("DeductionLeft", of=text(), flanges=whole(), more_mm=number())
GaugeFound = answer(
    "GaugeFound",
    zero_mm=number(),
    sd_mm=number(),
    flanges=whole(),
    systematic=yes_no(),
    deductions=many(DeductionLeft),
)
