"""Cards and results as they are asked for."""

from __future__ import annotations

from typing import Any

import marshmallow as ma

from flangebook.bending.requirements import (
    LEAST_LENGTH_MM,
    LEAST_THICKNESS_MM,
    MOST_LENGTH_MM,
    MOST_THICKNESS_MM,
)
from flangebook.schemas.fields import (
    MOST_NOTE,
    CardCode,
    Choice,
    DeviceId,
    Many,
    Moment,
    Quantity,
    Text,
    Whole,
    YesNo,
    optional,
)
from flangebook.schemas.part import LEAST_ANGLE_DEG, PartSchema
from flangebook.schemas.quantities import ANGLE, LENGTH

MOST_STEPS = 400
MOST_DEPTH_MM = 500.0
MOST_SETTLED = 50
_BY = {"description": "Who, in a word or two."}


def _by() -> Text:
    return Text(80, load_default="", metadata=_BY)


class SettingSchema(ma.Schema):
    """What to set at a step instead of what was planned."""

    step = Whole(1, MOST_STEPS, required=True)
    set_angle_deg = optional(ANGLE, LEAST_ANGLE_DEG, 180.0)
    punch_depth_mm = optional(LENGTH, -MOST_DEPTH_MM, MOST_DEPTH_MM)
    gauge_x_mm = Quantity(
        LENGTH,
        0.0,
        MOST_LENGTH_MM,
        allow_none=True,
        metadata={"description": "The back gauge, where it is not the plan's."},
    )
    trial_id = DeviceId(load_default=None, allow_none=True)
    reason = Text(load_default="")

    @ma.post_load
    def _no_gauge_of_its_own(self, data: dict[str, Any], **_: Any) -> dict[str, Any]:
        """Settings that were kept before gauges were moved do not have the field."""
        return {k: v for k, v in data.items() if k != "gauge_x_mm" or v is not None}


class NewCardSchema(ma.Schema):
    """A card to be made from a part."""

    part = ma.fields.Nested(PartSchema, required=True)
    note = Text(MOST_NOTE, lines=True, load_default="")
    by = _by()
    code = CardCode(
        load_default=None,
        allow_none=True,
        metadata={"description": "Made by the device, so that a resend is harmless."},
    )


class CardEditSchema(ma.Schema):
    """What is to change on a card; what is not named stays."""

    title = Text(least=1)
    note = Text(MOST_NOTE, lines=True)
    part = ma.fields.Nested(PartSchema)
    replan = YesNo(metadata={"description": "Plan afresh even if the part did not change."})
    settings = Many(ma.fields.Nested(SettingSchema), MOST_STEPS)
    archived = YesNo()
    restore_revision = Whole(1, 1_000_000)
    settles = Many(
        DeviceId(), MOST_SETTLED, metadata={"description": "Proposals that this settles."}
    )
    after = DeviceId(metadata={"description": "The newest revision's id when the change was made."})
    reason = Text(load_default="")
    by = _by()
    id = DeviceId(metadata={"description": "Made by the device, so that a resend is harmless."})

    @ma.validates_schema
    def _alone(self, data: dict[str, Any], **_: Any) -> None:
        others = data.keys() & {
            "title", "note", "part", "replan", "settings", "archived", "settles",
        }  # fmt: skip
        if "restore_revision" in data and others:
            raise ma.ValidationError(
                "Bring a revision back by itself, then change it.", "restore_revision"
            )
        if "restore_revision" not in data and not others:
            raise ma.ValidationError("There is nothing to change in this.")


class ChangesSchema(ma.Schema):
    """Fields of a card that need no planning, as a device would have them."""

    title = Text(least=1)
    note = Text(MOST_NOTE, lines=True)
    settings = Many(ma.fields.Nested(SettingSchema), MOST_STEPS)
    archived = YesNo()


class ProposalSchema(ma.Schema):
    """A change that could not be made since the card was changed meanwhile."""

    id = DeviceId(required=True, metadata={"description": "The id the change was sent with."})
    changes = ma.fields.Nested(ChangesSchema, required=True)
    before = ma.fields.Nested(
        ChangesSchema,
        load_default=dict,
        metadata={"description": "The same fields as the device showed them before."},
    )
    revision = Whole(
        1, 1_000_000, load_default=None, allow_none=True,
        metadata={"description": "The revision that the device showed."},
    )  # fmt: skip
    made_at = Moment(
        load_default=None, allow_none=True, metadata={"description": "By the device's clock."}
    )
    reason = Text(load_default="")
    by = _by()

    @ma.validates_schema
    def _something(self, data: dict[str, Any], **_: Any) -> None:
        if not data.get("changes"):
            raise ma.ValidationError("There is nothing to change in this.", "changes")


def need_an_angle(data: dict[str, Any]) -> None:
    """Refuse a result of which no angle was measured.

    Raises ValidationError.
    """
    angles = ("measured_deg", "left_deg", "middle_deg", "right_deg")
    if all(data.get(name) is None for name in angles):
        raise ma.ValidationError("Give at least one measured angle.", "measured_deg")


def _flange() -> Quantity:
    return optional(LENGTH, LEAST_LENGTH_MM, MOST_LENGTH_MM)


class ResultSchema(ma.Schema):
    """One measured result."""

    id = DeviceId(required=True, metadata={"description": "Made by the device."})
    revision = Whole(1, 1_000_000, required=True)
    step = Whole(1, MOST_STEPS, required=True)
    bend = Whole(1, MOST_STEPS, load_default=None, allow_none=True)
    measured_deg = optional(ANGLE, LEAST_ANGLE_DEG, 180.0)
    left_deg = optional(ANGLE, LEAST_ANGLE_DEG, 180.0)
    middle_deg = optional(ANGLE, LEAST_ANGLE_DEG, 180.0)
    right_deg = optional(ANGLE, LEAST_ANGLE_DEG, 180.0)
    set_angle_deg = optional(ANGLE, LEAST_ANGLE_DEG, 180.0)
    punch_depth_mm = optional(LENGTH, -MOST_DEPTH_MM, MOST_DEPTH_MM)
    gauge_x_mm = optional(
        LENGTH, 0.0, MOST_LENGTH_MM, "Where the back gauge stood; null: as the step says."
    )
    flange_mm = _flange()
    radius_mm = optional(LENGTH, 0.0, 500.0)
    thickness_mm = optional(LENGTH, LEAST_THICKNESS_MM, MOST_THICKNESS_MM)
    lot = Text(80, load_default="", metadata={"description": "As written on the sheet."})
    loaded_deg = optional(
        ANGLE, LEAST_ANGLE_DEG, 180.0, "Included angle measured in the press, under load."
    )
    flat_length_mm = _flange()
    flange_left_mm = _flange()
    flange_right_mm = _flange()
    note = Text(MOST_NOTE, lines=True, load_default="")
    made_at = Moment(load_default=None, allow_none=True)
    by = _by()
    again = YesNo(
        load_only=True,
        metadata={
            "description": "The shop had it before it was put back to an earlier day. If its "
            "revision is not there any more, it is kept with the newest."
        },
    )

    @ma.validates_schema
    def _measured(self, data: dict[str, Any], **_: Any) -> None:
        need_an_angle(data)


class ListQuery(ma.Schema):
    """Which cards, and which page of them."""

    q = Text(load_default="")
    archived = Choice("no", "yes", "all", load_default="no")
    limit = Whole(1, 200, typed=True, load_default=50)
    offset = Whole(0, 1_000_000, typed=True, load_default=0)


class PageQuery(ma.Schema):
    """Which page."""

    limit = Whole(1, 200, typed=True, load_default=50)
    offset = Whole(0, 1_000_000, typed=True, load_default=0)


class ChangesQuery(ma.Schema):
    """From where, and how many."""

    since = Text(load_default="")
    limit = Whole(1, 100, typed=True, load_default=40)
