"""A part as it is asked for: section, metal, thickness, length."""

from __future__ import annotations

from typing import Any

import marshmallow as ma

from flangebook.bending.box.box import MOST_SIDE_BENDS, PAIRS
from flangebook.bending.part.order_limits import MARGIN_MM, MOST_MARGIN_MM
from flangebook.bending.part.part import MOST_BENDS
from flangebook.bending.requirements import (
    LEAST_LENGTH_MM,
    LEAST_THICKNESS_MM,
    MOST_HEM_GAP_MM,
    MOST_LENGTH_MM,
    MOST_RADIUS_MM,
    MOST_THICKNESS_MM,
    MOST_V_OPENING_MM,
)
from flangebook.schemas.fields import (
    Choice,
    Many,
    Quantity,
    Text,
    Thickness,
    ToolCode,
    Whole,
    YesNo,
    optional,
)
from flangebook.schemas.quantities import ANGLE, LENGTH

LEAST_ANGLE_DEG = 1.0
MOST_HOLES = 100
MOST_FLATS = MOST_BENDS + 2
"""A box has two sections' flats."""


def _code(what_for: str) -> ToolCode:
    return ToolCode(load_default=None, allow_none=True, metadata={"description": what_for})


class BendSchema(ma.Schema):
    """A bend of a part."""

    included_angle_deg = Quantity(
        ANGLE,
        0.0,
        179.9,
        required=True,
        metadata={"description": "Angle between the two flats: 90 is square, 180 flat; hems 0."},
    )
    direction = Choice("up", "down", required=True)
    inside_radius_mm = optional(LENGTH, 0.0, MOST_RADIUS_MM)
    kind = Choice("bend", "closed_hem", "open_hem", load_default="bend")
    hem_gap_mm = Quantity(LENGTH, 0.0, MOST_HEM_GAP_MM, load_default=0.0)
    die = _code("Die to make this bend in; null for the part's, or the one that suits best.")
    punch = _code("Punch to make this bend with; null likewise.")


class HoleSchema(ma.Schema):
    """A hole near a bend."""

    flat = Whole(1, MOST_BENDS + 1, required=True)
    position_mm = Quantity(LENGTH, 0.0, MOST_LENGTH_MM, required=True)
    diameter_mm = Quantity(LENGTH, LEAST_LENGTH_MM, MOST_LENGTH_MM, required=True)


class OrderLimitsSchema(ma.Schema):
    """What is wished of the order, apart from an order of one's own."""

    first = Whole(1, MOST_BENDS, load_default=None, allow_none=True)
    last = Whole(1, MOST_BENDS, load_default=None, allow_none=True)
    no_turn_over = YesNo(load_default=False)
    no_turn_end = YesNo(load_default=False)
    one_set_up = YesNo(load_default=False)
    critical_flats = Many(Whole(1, MOST_BENDS + 1), MOST_BENDS + 1, load_default=list)
    margin_mm = Quantity(
        LENGTH,
        0.0,
        MOST_MARGIN_MM,
        load_default=MARGIN_MM,
        metadata={"description": "Clearance wanted between part and tools."},
    )


class NamedToolsSchema(ma.Schema):
    """Tools to take for every bend that names none of its own."""

    die = _code("Die for the whole part; null for the one that suits each bend best.")
    punch = _code("Punch for the whole part; null likewise.")


class SideSchema(ma.Schema):
    """One side of a box, from the base outwards: as many flats as bends."""

    flats_mm = Many(
        Quantity(LENGTH, LEAST_LENGTH_MM, MOST_LENGTH_MM), MOST_SIDE_BENDS, least=1, required=True
    )
    bends = Many(ma.fields.Nested(BendSchema), MOST_SIDE_BENDS, least=1, required=True)

    @ma.validates_schema
    def _fits(self, data: dict[str, Any], **_: Any) -> None:
        flats, bends = len(data["flats_mm"]), len(data["bends"])
        if flats != bends:
            raise ma.ValidationError(
                f"{flats} flats do not go with {bends} bends. Give as many flats as bends.",
                "flats_mm",
            )


def _side() -> ma.fields.Field[Any]:
    return ma.fields.Nested(SideSchema, load_default=None, allow_none=True)


class SidesSchema(ma.Schema):
    """The sides of a box; one that is left out is a plain edge."""

    left = _side()
    right = _side()
    front = _side()
    back = _side()


class BoxSchema(ma.Schema):
    """A base with sides: inside up, x from left to right, y from front to back."""

    length_mm = Quantity(
        LENGTH,
        LEAST_LENGTH_MM,
        MOST_LENGTH_MM,
        required=True,
        metadata={"description": "Of the base from left to right, outside as ``dimension`` says."},
    )
    width_mm = Quantity(
        LENGTH,
        LEAST_LENGTH_MM,
        MOST_LENGTH_MM,
        required=True,
        metadata={"description": "Of the base from front to back."},
    )
    sides = ma.fields.Nested(SidesSchema, required=True)
    relief = Choice("round", "square", "none", load_default="round")
    relief_mm = optional(
        LENGTH, 0.0, 500.0, "Diameter or side of the cut-out at the corners; null by rule."
    )
    corner = Choice(
        "closed",
        "open",
        load_default="closed",
        metadata={"description": "Closed: square walls meet edge to edge."},
    )
    gap_mm = optional(LENGTH, 0.0, 50.0)
    first_pair = Choice(
        *PAIRS,
        load_default=PAIRS[0],
        metadata={"description": "The sides bent first; the others are bent between them."},
    )


OF_A_SECTION = ("bend_length_mm", "flats_mm", "bends")


class PartSchema(ma.Schema):
    """A part of one constant section, or a box.

    A box has its own measures in place of flats, bends and bend length; what is sent for those
    is worked out again.
    """

    title = Text(load_default="")
    metal = ToolCode(required=True)
    thickness_mm = Thickness(LENGTH, LEAST_THICKNESS_MM, MOST_THICKNESS_MM, required=True)
    bend_length_mm = Quantity(LENGTH, LEAST_LENGTH_MM, MOST_LENGTH_MM)
    flats_mm = Many(
        Quantity(LENGTH, LEAST_LENGTH_MM, MOST_LENGTH_MM),
        MOST_FLATS,
        least=1,
        metadata={"description": "Outside lengths as ``dimension`` says, from the left end."},
    )
    bends = Many(ma.fields.Nested(BendSchema), MOST_BENDS)
    dimension = Choice("din6935", "mould_line", "inside", load_default="din6935")
    order = Many(
        Whole(1, MOST_BENDS),
        MOST_BENDS,
        load_default=None,
        allow_none=True,
        metadata={"description": "Bend numbers from 1; forces this order."},
    )
    holes = Many(ma.fields.Nested(HoleSchema), MOST_HOLES, load_default=list)
    grain = Choice("with", "across", load_default=None, allow_none=True)
    wishes = ma.fields.Nested(OrderLimitsSchema, load_default=dict)
    tools = ma.fields.Nested(NamedToolsSchema, load_default=lambda: {"die": None, "punch": None})
    box = ma.fields.Nested(BoxSchema, load_default=None, allow_none=True)

    @ma.validates_schema
    def _fits(self, data: dict[str, Any], **_: Any) -> None:
        if data.get("box") is not None:
            _need_a_plain_box(data)
            return
        missing = [name for name in OF_A_SECTION if name not in data]
        if missing:
            said = ["Missing data for required field."]
            raise ma.ValidationError(dict.fromkeys(missing, said))
        flats, bends, order = len(data["flats_mm"]), len(data["bends"]), data.get("order")
        if flats != bends + 1:
            raise ma.ValidationError(
                f"{flats} flats do not go with {bends} bends. Give one flat more than bends.",
                "flats_mm",
            )
        if order is not None and sorted(order) != list(range(1, bends + 1)):
            raise ma.ValidationError("Give every bend's number, from 1, once.", "order")

    @ma.post_load
    def _of_the_box(self, data: dict[str, Any], **_: Any) -> dict[str, Any]:
        """A box's flats and bends follow from its sides; what came for them is dropped."""
        if data.get("box") is not None:
            data = {k: v for k, v in data.items() if k not in OF_A_SECTION}
        return data


def _need_a_plain_box(data: dict[str, Any]) -> None:
    """Refuse what a box cannot have.

    Raises ValidationError.
    """
    wrong: dict[str, Any] = {}
    if data.get("holes"):
        wrong["holes"] = ["Holes are not looked at in a box. Leave them out."]
    if data.get("grain") is not None:
        wrong["grain"] = ["A box is bent both ways. Leave it out."]
    if wrong:
        raise ma.ValidationError(wrong)


class ChartQuery(ma.Schema):
    """Which metal the wall chart is for, and how long the bends are."""

    metal = ToolCode(required=True)
    bend_length_mm = Quantity(LENGTH, LEAST_LENGTH_MM, MOST_LENGTH_MM, load_default=1000.0)


class OneBendSchema(ma.Schema):
    """A single bend to be checked."""

    metal = ToolCode(required=True)
    thickness_mm = Thickness(LENGTH, LEAST_THICKNESS_MM, MOST_THICKNESS_MM, required=True)
    bend_length_mm = Quantity(LENGTH, LEAST_LENGTH_MM, MOST_LENGTH_MM, required=True)
    included_angle_deg = Quantity(ANGLE, LEAST_ANGLE_DEG, 179.9, required=True)
    die = ToolCode(load_default=None, allow_none=True)
    punch = ToolCode(load_default=None, allow_none=True)
    v_opening_mm = optional(LENGTH, LEAST_LENGTH_MM, MOST_V_OPENING_MM)
    punch_radius_mm = optional(LENGTH, 0.0, MOST_RADIUS_MM)
    lot = Text(
        80,
        load_default="",
        metadata={"description": "Of the sheet; test bends of that lot count before others."},
    )
