"""Press, tools and metals: the documents the shop keeps, and their outlines."""

from __future__ import annotations

from typing import Any

import marshmallow as ma

from flangebook.bending.requirements import LEAST_LENGTH_MM, MOST_V_OPENING_MM
from flangebook.bending.tools.usual_sizes import usual_die, usual_punch
from flangebook.schemas.fields import (
    MOST_NOTE,
    Choice,
    Many,
    Moment,
    Quantity,
    Text,
    ToolCode,
    Whole,
    YesNo,
    optional,
)
from flangebook.schemas.quantities import (
    ANGLE,
    DENSITY,
    FORCE,
    FORCE_PER_LENGTH,
    LENGTH,
    RATIO,
    SPEED,
    STRESS,
    Kind,
)
from flangebook.schemas.usual_sizes import block_filled, filled, known_sizes, read_sizes

MOST_TOOLS = 500
MOST_SEGMENTS = 200
MOST_POINTS = 400
MOST_OPENINGS = 24
_SIZE = 5_000.0
_LEAST_FORCE = 1.0
_LEAST_RATING = 1.0
_LEAST_BED = 10.0
_LEAST_SPEED = 0.01
_LEAST_ERROR_MM = 0.0001
_MOST_REPEATABILITY_MM = 10.0
_LEAST_ANGLE_ACCURACY_DEG = 0.01
_MOST_ANGLE_ACCURACY_DEG = 5.0
_MOST_DEFLECTION_MM = 20.0


def _size(**others: Any) -> Quantity:
    return Quantity(LENGTH, LEAST_LENGTH_MM, _SIZE, required=True, **others)


def _ring() -> Many:
    point = Many(Quantity(LENGTH, -_SIZE, _SIZE), 2, least=2)
    return Many(
        point,
        MOST_POINTS,
        load_default=list,
        metadata={"description": "A closed outline [mm], counter-clockwise; empty for none."},
    )


def _rating(words: str = "null is unknown, and is never taken for enough.") -> Quantity:
    return optional(FORCE_PER_LENGTH, _LEAST_RATING, 100_000.0, words)


class _Document(ma.Schema):
    """What GET gives may be put back: read-only fields are taken out first."""

    @ma.pre_load
    def _without_read_only(self, data: Any, **_: Any) -> Any:
        if isinstance(data, dict):
            return {k: v for k, v in data.items() if k not in ("outline_mm", "outlines_mm")}
        return data


class _ToolSchema(_Document):
    code = ToolCode(required=True)
    name = Text(load_default="")
    rating_kn_per_m = _rating()
    points_mm = _ring()
    tray = Text(80, load_default="")
    slot = Text(80, load_default="")
    condition = Choice("good", "worn", "damaged", "unknown", load_default="unknown")
    condition_note = Text(MOST_NOTE, lines=True, load_default="")


def _segments() -> Many:
    return Many(
        _size(),
        MOST_SEGMENTS,
        load_default=list,
        metadata={"description": "Lengths owned [mm], one entry a piece."},
    )


def _maybe_size(words: str) -> Quantity:
    return optional(LENGTH, LEAST_LENGTH_MM, _SIZE, words)


def _turned() -> YesNo:
    return YesNo(
        load_default=False,
        metadata={"description": "Put in back to front: its outline mirrored."},
    )


def _assumable(*names: str) -> Many:
    return Many(
        Choice(*names),
        len(names),
        load_default=list,
        metadata={
            "description": "Sizes that nobody has measured. One that is named here and left out "
            "gets a usual proportion (common practice, no source); what depends on it is unknown."
        },
    )


class PunchSchema(_ToolSchema):
    """A punch."""

    assumed = _assumable("height_mm", "body_width_mm", "neck_relief_mm")

    angle_deg = Quantity(ANGLE, 5.0, 180.0, required=True)
    tip_radius_mm = Quantity(LENGTH, 0.0, 500.0, required=True)
    height_mm = _size()
    body_width_mm = _size()
    segments_mm = _segments()
    shape = Choice("straight", "gooseneck", "points", load_default="straight")
    neck_relief_mm = Quantity(LENGTH, 0.0, _SIZE, load_default=0.0)
    neck_width_mm = _maybe_size("Thickness of a gooseneck's neck; null: as the body.")
    throat_top_mm = _maybe_size(
        "Height above the tip where a gooseneck's throat begins to close; null: as high as can be."
    )
    turned = _turned()

    @ma.pre_load
    def _usual_sizes(self, data: Any, **_: Any) -> Any:
        sizes = read_sizes(self, data, ("angle_deg", "tip_radius_mm"))
        if sizes is None:
            return data
        given = known_sizes(self, data, ("body_width_mm", "neck_relief_mm"))
        return filled(data, usual_punch(data.get("shape", "straight"), *sizes, **given))


class OpeningSchema(ma.Schema):
    """One V of a block, a die of its own when it is up."""

    code = ToolCode(
        load_default=None,
        allow_none=True,
        metadata={"description": "Of the die it makes; without one, the block's with a number."},
    )
    v_opening_mm = Quantity(LENGTH, LEAST_LENGTH_MM, MOST_V_OPENING_MM, required=True)
    angle_deg = Quantity(ANGLE, 5.0, 179.0, required=True)
    shoulder_radius_mm = Quantity(LENGTH, 0.0, 200.0, required=True)
    face = Choice("top", "back", "bottom", "front", load_default="top")
    centre_mm = Quantity(
        LENGTH,
        -_SIZE,
        _SIZE,
        load_default=0.0,
        metadata={"description": "Its middle from its face's, + to the gauge with that face up."},
    )
    rating_kn_per_m = _rating("null: as the block's.")


_ANY_V = {"v_opening_mm": 10, "angle_deg": 90, "shoulder_radius_mm": 1}


class DieSchema(_ToolSchema):
    """A die with one V, or a block with several (``multi_v``): then ``openings`` has them, each
    with a code to plan with, and the die's own V is that of the opening that is ``up``."""

    assumed = _assumable("shoulder_radius_mm", "height_mm", "width_mm")
    v_opening_mm = Quantity(LENGTH, LEAST_LENGTH_MM, MOST_V_OPENING_MM, required=True)
    angle_deg = Quantity(ANGLE, 5.0, 179.0, required=True)
    shoulder_radius_mm = Quantity(LENGTH, 0.0, 200.0, required=True)
    height_mm = _size()
    width_mm = _size()
    segments_mm = _segments()
    shape = Choice("single_v", "multi_v", "points", load_default="single_v")
    openings = Many(ma.fields.Nested(OpeningSchema), MOST_OPENINGS, load_default=list)
    up = Whole(
        1,
        MOST_OPENINGS,
        load_default=1,
        metadata={"description": "Number of the opening that is drawn up, from 1."},
    )
    turned = _turned()

    @ma.pre_load
    def _from_what_was_typed(self, data: Any, **_: Any) -> Any:
        """Usual sizes first: a block's own V is read from its openings, whatever was sent."""
        if not isinstance(data, dict):
            return data
        if data.get("shape") == "multi_v":
            return self._v_that_is_up(block_filled(OpeningSchema(), data))
        sizes = read_sizes(self, data, ("v_opening_mm", "angle_deg"))
        return data if sizes is None else filled(data, usual_die(*sizes))

    def _v_that_is_up(self, data: dict[str, Any]) -> dict[str, Any]:
        openings, up = data.get("openings"), data.get("up", 1)
        at = up - 1 if type(up) is int else 0
        one = openings[at] if isinstance(openings, list) and 0 <= at < len(openings) else None
        given = one if isinstance(one, dict) else {}
        # What is missing or wrong there is told there, not a second time here.
        return {**data, **_ANY_V, **{k: v for k, v in given.items() if k in _ANY_V}}

    @ma.validates_schema
    def _has_what_is_up(self, data: dict[str, Any], **_: Any) -> None:
        if data["shape"] == "multi_v" and not data["openings"]:
            raise ma.ValidationError("A block has at least one V.", "openings")
        if data["openings"] and data["up"] > len(data["openings"]):
            raise ma.ValidationError(f"It has {len(data['openings'])} openings.", "up")

    @ma.post_load
    def _with_codes(self, data: dict[str, Any], **_: Any) -> dict[str, Any]:
        for number, one in enumerate(data["openings"], 1):
            one["code"] = one["code"] or f"{data['code'][:36]}.{number}"
        return data


class HolderSchema(_ToolSchema):
    """What holds the punch in the ram: a plain block, clamps with a body above them, or points."""

    height_mm = _size()
    overhang_front_mm = Quantity(LENGTH, 0.0, _SIZE, required=True)
    overhang_back_mm = Quantity(LENGTH, 0.0, _SIZE, required=True)
    shape = Choice("block", "clamps", "points", load_default="block")
    clamp_height_mm = _maybe_size("How far the clamps reach up from the punch's seat.")
    body_front_mm = _maybe_size("From the tip's line to the front of the body above the clamps.")
    body_back_mm = _maybe_size("From the tip's line to the back of the body above the clamps.")

    @ma.pre_load
    def _shape_of_old(self, data: Any, **_: Any) -> Any:
        """Before holders had shapes, points were the outline wherever there were any."""
        if isinstance(data, dict) and "shape" not in data and data.get("points_mm"):
            return {**data, "shape": "points"}
        return data


def _known_size(
    least: float = LEAST_LENGTH_MM, most: float = _SIZE, *, usual_mm: float | None = None
) -> Quantity:
    """A size of the press that has to be given, or given as unknown. usual_mm: taken where it is
    left out, as older shops do."""
    words = "null: not known; what depends on it is unknown then."
    given: dict[str, Any] = {"required": True} if usual_mm is None else {"load_default": usual_mm}
    return Quantity(LENGTH, least, most, allow_none=True, metadata={"description": words}, **given)


class PressSchema(_Document):
    """The press brake."""

    name = Text(load_default="")
    force_kn = Quantity(FORCE, _LEAST_FORCE, 100_000.0, required=True)
    bed_length_mm = Quantity(LENGTH, _LEAST_BED, 50_000.0, required=True)
    between_frames_mm = _known_size(_LEAST_BED, 50_000.0)
    open_height_mm = _known_size()
    stroke_mm = _known_size()
    throat_mm = _known_size(0.0, _SIZE)
    gauge_x_min_mm = _known_size(-_SIZE, _SIZE)
    gauge_x_max_mm = _known_size(-_SIZE, _SIZE)
    gauge_r_min_mm = _known_size(-_SIZE, _SIZE)
    gauge_r_max_mm = _known_size(-_SIZE, _SIZE)
    finger_height_mm = _known_size()
    finger_depth_mm = _known_size()
    gauge_repeatability_mm = optional(
        LENGTH,
        _LEAST_ERROR_MM,
        _MOST_REPEATABILITY_MM,
        "The back gauge comes back to a place within so much either way, in 19 "
        "of 20 stops; null: not known, 0.1 mm is counted with (common practice).",
    )
    set_by = Choice(
        "angle",
        "depth",
        "stop",
        load_default=None,
        allow_none=True,
        metadata={
            "description": "What is set on it for a bend: an angle, a punch depth, or a stop that "
            "the ram runs against; null: not known, results are read as by angle."
        },
    )
    angle_accuracy_deg = optional(
        ANGLE,
        _LEAST_ANGLE_ACCURACY_DEG,
        _MOST_ANGLE_ACCURACY_DEG,
        "How near a press that measures the angle in the sheet comes to the "
        "angle that is set, either way in nine of ten bends; counts where it is set by angle. "
        "null: not known, or it does not measure: the doubt of sheet, tools and the depth's "
        "zero counts.",
    )
    depth_zeroed_at = Moment(
        allow_none=True,
        metadata={
            "description": "When the zero of the punch depth was last set, or another press came: "
            "results before say nothing of the press's error any more. Left out it stays as it "
            "is; another force_kn or bed_length_mm is another press and sets both moments."
        },
    )
    gauge_zeroed_at = Moment(
        allow_none=True,
        metadata={
            "description": "When the back gauge's zero was last set: flanges measured before "
            "say nothing of it any more. Left out it stays as it is."
        },
    )
    deflection_mm = optional(
        LENGTH,
        _LEAST_ERROR_MM,
        _MOST_DEFLECTION_MM,
        "How far bed and ram together give way in the middle, against the ends, "
        "at full force over the whole bed; null: not known.",
    )
    force_per_m_limit_kn_per_m = _rating()
    off_centre_mm = optional(LENGTH, 0.0, 25_000.0)
    bending_speed_mm_s = optional(SPEED, _LEAST_SPEED, 1_000.0)
    ram_width_mm = _known_size(usual_mm=80.0)
    ram_height_mm = _known_size(usual_mm=200.0)
    bed_width_mm = _known_size(usual_mm=100.0)
    bed_height_mm = _known_size(usual_mm=200.0)
    ram_points_mm = _ring()
    bed_points_mm = _ring()
    holder = ToolCode(load_default=None, allow_none=True)
    floor_below_die_mm = _maybe_size(
        "From the face that the die stands on down to the floor; null: not looked at."
    )
    die_holder_height_mm = Quantity(
        LENGTH,
        0.0,
        _SIZE,
        load_default=0.0,
        allow_none=True,
        metadata={"description": "Of the riser or die holder between bed and die; 0, null: none."},
    )
    die_holder_width_mm = _maybe_size("Of a plain one; null where points are given.")
    die_holder_points_mm = _ring()
    die_holder_rating_kn_per_m = _rating()
    note = Text(MOST_NOTE, lines=True, load_default="")

    @ma.post_load
    def _none_is_no_height(self, data: dict[str, Any], **_: Any) -> dict[str, Any]:
        return {**data, "die_holder_height_mm": data["die_holder_height_mm"] or 0.0}

    @ma.validates_schema
    def _travel(self, data: dict[str, Any], **_: Any) -> None:
        for axis in ("x", "r"):
            low, high = data[f"gauge_{axis}_min_mm"], data[f"gauge_{axis}_max_mm"]
            if low is not None and high is not None and low > high:
                raise ma.ValidationError(
                    "The travel ends before it begins.", f"gauge_{axis}_max_mm"
                )


def figure_schema(name: str, kind: Kind, low: float, high: float) -> type[ma.Schema]:
    """A schema for a metal's figure with its band, source and standing."""
    fields: dict[str, ma.fields.Field[Any] | type] = {
        end: Quantity(kind, low, high, required=True) for end in ("low", "nominal", "high")
    }
    fields["source"] = Text(400, load_default="")
    fields["standing"] = Choice(
        "guaranteed minimum", "typical", "measured", "common practice", "from memory",
        required=True,
    )  # fmt: skip

    @ma.validates_schema
    def _in_order(_self: ma.Schema, data: dict[str, Any], **_: Any) -> None:
        if not data["low"] <= data["nominal"] <= data["high"]:
            raise ma.ValidationError(
                "The band is out of order. Give low, nominal, high, rising.", "nominal"
            )

    return type(f"{name}Schema", (ma.Schema,), {**fields, "_in_order": _in_order})


_STRESS = figure_schema("Strength", STRESS, 1.0, 5_000.0)
_STIFFNESS = figure_schema("Stiffness", STRESS, 1_000.0, 1_000_000.0)
_DENSITY = figure_schema("Density", DENSITY, 100.0, 30_000.0)
_RADIUS_OVER_V = figure_schema("RadiusOverV", RATIO, 0.01, 1.0)
_SPRINGBACK = figure_schema("Springback", ANGLE, 0.0, 45.0)
_HARDENING = figure_schema("Hardening", RATIO, 0.0, 1.0)
_RADIUS_OVER_T = figure_schema("RadiusOverT", RATIO, 0.0, 50.0)


def _figure(schema: type[ma.Schema], *, needed: bool = True) -> ma.fields.Nested:
    if needed:
        return ma.fields.Nested(schema, required=True)
    return ma.fields.Nested(schema, load_default=None, allow_none=True)


class MetalSchema(_Document):
    """A sheet metal, each figure with its source."""

    code = ToolCode(required=True)
    name = Text(least=1, required=True)
    youngs_modulus_mpa = _figure(_STIFFNESS)
    yield_mpa = _figure(_STRESS)
    tensile_mpa = _figure(_STRESS)
    density_kg_m3 = _figure(_DENSITY)
    radius_over_v = _figure(_RADIUS_OVER_V)
    springback_at_90_deg = _figure(_SPRINGBACK)
    poisson = Quantity(RATIO, 0.0, 0.5, load_default=0.3)
    hardening_k_mpa = _figure(_STRESS, needed=False)
    hardening_n = _figure(_HARDENING, needed=False)
    prestrain = optional(RATIO, 0.0, 1.0)
    min_radius_over_t_across = _figure(_RADIUS_OVER_T, needed=False)
    min_radius_over_t_with = _figure(_RADIUS_OVER_T, needed=False)
    gauge_family = Choice(
        "steel", "galvanised", "stainless", "aluminium", load_default=None, allow_none=True
    )
    note = Text(MOST_NOTE, lines=True, load_default="")


def _document(name: str, of: ma.fields.Field[Any]) -> type[ma.Schema]:
    """All that the shop has of one kind, and who changed it."""
    fields = {name: of, "by": Text(80, load_default="")}
    return ma.Schema.from_dict(fields, name=f"{name.title()}Document")


def _tools(name: str, schema: type[ma.Schema]) -> type[ma.Schema]:
    return _document(name, Many(ma.fields.Nested(schema), MOST_TOOLS, required=True))


DOCUMENTS = {
    # Null in a shop that has no press yet.
    "press": _document("press", ma.fields.Nested(PressSchema, required=True, allow_none=True)),
    "punches": _tools("punches", PunchSchema),
    "dies": _tools("dies", DieSchema),
    "holders": _tools("holders", HolderSchema),
    "metals": _tools("metals", MetalSchema),
}


def _outlined(name: str, kind: str, schema: type[ma.Schema]) -> type[ma.Schema]:
    fields: dict[str, Any] = {"kind": Choice(kind, required=True)}
    if "code" in schema().fields:
        fields["code"] = ToolCode(load_default="new")
    return type(name, (schema,), fields)


OUTLINED = {
    "punch": _outlined("PunchOutlineSchema", "punch", PunchSchema),
    "die": _outlined("DieOutlineSchema", "die", DieSchema),
    "holder": _outlined("HolderOutlineSchema", "holder", HolderSchema),
    "press": _outlined("PressOutlineSchema", "press", PressSchema),
}
