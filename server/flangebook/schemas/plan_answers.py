"""What is answered about a part: its plan, step by step."""

from __future__ import annotations

import marshmallow as ma

from flangebook.planning.order.search import HANDLING_WORDS
from flangebook.schemas.answers import (
    Check,
    Part,
    Said,
    answer,
    banded,
    banded_force,
    described,
    exactly,
    force,
    level,
    many,
    maybe,
    maybe_text,
    maybe_whole,
    number,
    older,
    one,
    one_of,
    point,
    ring,
    said,
    sometimes,
    text,
    whole,
    yes_no,
)
from flangebook.schemas.bend_answers import AllowanceOpinion, Drawing, SettingLimits, setting

BendLine = answer(
    "BendLine",
    bend=whole(),
    at_mm=number(),
    included_angle_deg=number(),
    direction=one_of("up", "down"),
    inside_radius_mm=number(),
    bend_allowance_mm=number(),
    bend_deduction_mm=number(),
    k_factor=number(),
    opinions=many(AllowanceOpinion),
)
SIDES = ("left", "right", "front", "back")
BoxLine = answer(
    "BoxLine",
    bend=whole(),
    side=one_of(*SIDES),
    place=whole(),
    x1_mm=number(),
    y1_mm=number(),
    x2_mm=number(),
    y2_mm=number(),
    direction=one_of("up", "down"),
)
Relief = answer("Relief", shape=one_of("round", "square", "none"), size_mm=number(), rule=text())
Blank = answer(
    "Blank",
    length_mm=number(),
    length_mm_low=number(),
    length_mm_high=number(),
    width_mm=number(),
    mass_kg=number(),
    sum_check_mm=number(),
    bend_lines=many(BendLine),
    rests_on=sometimes(
        described(text(), "The pieces that its length was learned from; empty where it was not.")
    ),
    width_mm_low=sometimes(number()),
    width_mm_high=sometimes(number()),
    outline=sometimes(ring()),
    cut=sometimes(
        described(many(exactly(3)), "Of a box: x, y and bulge, as DXF has it, along the cut line.")
    ),
    lines=sometimes(many(BoxLine)),
    relief=sometimes(one(Relief)),
)
Section = answer(
    "Section",
    outline=ring(),
    centre_line=ring(),
    bend_points=ring(),
    dimensions=many(exactly(2, point())),
    width_mm=number(),
    height_mm=number(),
)
Tool = answer(
    "Tool",
    kind=one_of("punch", "die", "holder"),
    code=text(),
    name=text(),
    tray=text(),
    slot=text(),
    condition=text(),
    condition_note=text(),
    segments_mm=ma.fields.List(number()),
    segments_total_mm=number(),
    rating_kn_per_m=maybe(),
    steps=ma.fields.List(whole()),
)
OrderLimitCost = answer("OrderLimitCost", wish=text(), **said(), words=older())
Alternative = answer(
    "Alternative",
    sequence=ma.fields.List(whole()),
    **{count: whole() for count in HANDLING_WORDS},
    words=text(),
)
Blocked = answer(
    "Blocked", step=maybe_whole(), bend=whole(), hits=ma.fields.List(text()), words=text()
)
Remedy = answer(
    "Remedy",
    kind=text(),
    **said(),
    words=older(),
)
Order = answer(
    "Order",
    sequence=ma.fields.List(whole()),
    rule=text(),
    proven=yes_no(),
    words=text(),
    looked_at=whole(),
    **{count: whole() for count in HANDLING_WORDS},
    wishes=many(OrderLimitCost),
    alternatives=many(Alternative),
    blocked=many(Blocked),
    remedies=many(Remedy),
)
Near = answer(
    "Near",
    tool=text(),
    phase=text(),
    included_angle_deg=number(),
    punch_travel_mm=number(),
    distance_mm=number(),
    on_sheet=point(),
    on_tool=point(),
    flat=whole(),
    flat_name=sometimes(text()),
)
Clearance = answer(
    "Clearance",
    clear=yes_no(),
    needed_mm=number(),
    nearest=one(Near, allow_none=True),
    hits=many(Near),
    way_in=text(),
    way_out=text(),
    rides_up=sometimes(yes_no()),
    words=text(),
)
Pieces = answer("Pieces", punch=ma.fields.List(number()), die=ma.fields.List(number()))
Station = answer(
    "Station",
    number=whole(),
    punch=text(),
    die=text(),
    turned=yes_no(),
    centre_mm=number(),
    length_mm=number(),
    punch_segments_mm=ma.fields.List(number()),
    die_segments_mm=ma.fields.List(number()),
    **force(figure=number),
    off_centre_level=level(),
    words=older(),
    steps=ma.fields.List(whole()),
)
Dimension = answer(
    "Dimension",
    flat=whole(),
    flat_name=sometimes(text()),
    wanted_mm=number(),
    error_mm=maybe(),
    critical=yes_no(),
    gauged_directly=yes_no(),
    step=whole(),
    basis=older(),
    basis_said=sometimes(one(Said)),
)
Bumps = answer(
    "Bumps",
    count=whole(),
    pitch_mm=number(),
    chord_error_mm=number(),
    angle_each_deg=number(),
    gauge_x_mm=ma.fields.List(number()),
)
SettingFor = answer(
    "SettingFor", measured_deg=number(), set_angle_deg=number(), punch_depth_mm=number()
)
FlangeFor = answer("FlangeFor", measured_deg=number(), flange_mm=number())
GaugedFlange = answer(
    "GaugedFlange",
    flat=whole(),
    wanted_mm=number(),
    x_low_mm=number(),
    x_high_mm=number(),
    most_error_mm=number(),
    deduction_mm=sometimes(number()),
    rows=many(FlangeFor),
)


def placed() -> ma.fields.Field[object]:
    """Where a leg lies: x and y [mm], and by how much it is turned [degrees]."""
    return exactly(3)


Frame = answer(
    "Frame",
    share=number(),
    phase=one_of("putting in", "approach", "bend", "release", "withdrawal", "taking out"),
    included_angle_deg=number(),
    punch_y_mm=number(),
    left=placed(),
    right=placed(),
    inside_radius_mm=number(),
    half_arc_mm=number(),
    gauge_x_mm=maybe(),
)
Motion = answer("Motion", thickness_mm=number(), left=ring(), right=ring(), frames=many(Frame))
STEP_PREDICTED = (
    "set_angle_deg",
    "punch_depth_mm",
    "springback_deg",
    "inside_radius_mm",
)
ORIGINS = ("model", "handbook", "your test bends", "given")
Origins = answer(
    "Origins",
    force_kn=one_of(*ORIGINS, allow_none=True),
    springback_deg=one_of(*ORIGINS, allow_none=True),
    inside_radius_mm=one_of(*ORIGINS, allow_none=True),
    punch_depth_mm=one_of(*ORIGINS, allow_none=True),
    bend_allowance_mm=one_of(*ORIGINS, allow_none=True),
)
SideNear = answer(
    "SideNear",
    tool=one_of("holder", "ram", "bed"),
    side=one_of(*SIDES),
    flat=whole(),
    distance_mm=number(),
    included_angle_deg=number(),
)
Step = answer(
    "Step",
    number=whole(),
    bend=whole(),
    operation=text(),
    direction=one_of("up", "down"),
    included_angle_deg=number(),
    punch=maybe_text(),
    punch_name=maybe_text(),
    die=maybe_text(),
    die_name=maybe_text(),
    tools_reason=older(),
    tools_reason_said=sometimes(one(Said)),
    holder=maybe_text(),
    v_opening_mm=maybe(),
    gauge_x_mm=maybe(),
    gauge_r_mm=maybe(),
    gauge_draw_back_mm=maybe(),
    gauged_end=one_of("left", "right"),
    gauged_against=maybe_text(),
    inside_face=one_of("up", "down"),
    turn_over=yes_no(),
    turn_end=yes_no(),
    **banded_force("force_kn"),
    **banded_force("force_kn_per_m"),
    **{
        **{n: f for value in STEP_PREDICTED for n, f in banded(value).items()},
        **setting(),
    },
    limits=sometimes(one(SettingLimits, allow_none=True)),
    min_flange_mm=maybe(),
    origin=one(Origins),
    hits=one(Bumps, allow_none=True),
    corrections=many(SettingFor),
    drawing=one(Drawing, allow_none=True),
    motion=one(Motion, allow_none=True),
    checks=many(Check),
    clearance=one(Clearance, allow_none=True),
    station=maybe_whole(),
    punch_turned=yes_no(),
    segments_mm=one(Pieces),
    gauges_flat=maybe_whole(),
    gauged_flange=sometimes(one(GaugedFlange, allow_none=True)),
    bend_length_mm=sometimes(number()),
    side=sometimes(one_of(*SIDES)),
    gauged_side=sometimes(one_of(*SIDES)),
    turn_quarter=sometimes(yes_no()),
    clear_between_mm=sometimes(maybe()),
    sides_near=sometimes(many(SideNear)),
)


class PlanCheck(Check):  # type: ignore[valid-type, misc]
    """A finding of a plan. steps: every step it was made in."""

    steps = ma.fields.List(whole(), required=True)


FoldedFace = answer("FoldedFace", side=text(), flat=whole(), outline=ring())
FoldedSize = answer(
    "FoldedSize",
    name=one_of("length", "width", "height"),
    mm=number(),
    **{"from": point(), "to": point()},
)


def _folded_lines() -> ma.fields.Field[object]:
    """Lines of a picture: each one's x and y, then those of its other end."""
    return many(exactly(4))


FoldedLines = answer(
    "FoldedLines", edge=_folded_lines(), bend=_folded_lines(), hidden=_folded_lines()
)
Folded = answer(
    "Folded",
    lines=one(FoldedLines),
    faces=many(FoldedFace),
    dimensions=many(FoldedSize),
    bounds=exactly(4),
    length_mm=number(),
    width_mm=number(),
    height_mm=number(),
)
BoxSection = answer(
    "BoxSection",
    pair=one_of("left-right", "front-back"),
    outline=ring(),
    centre_line=ring(),
    bend_points=ring(),
    dimensions=many(exactly(2, point())),
    width_mm=number(),
    height_mm=number(),
)
Plan = answer(
    "Plan",
    sections=sometimes(many(BoxSection)),
    folded=sometimes(one(Folded)),
    flat_names=sometimes(ma.fields.List(text())),
    title=text(),
    thickness_gauge=maybe_text(),
    part=one(Part),
    blank_length_mm=number(),
    blank_mass_kg=number(),
    bend_lines_mm=ma.fields.List(number()),
    blank=one(Blank),
    section=one(Section),
    tools=many(Tool),
    order=one(Order),
    stations=many(Station),
    dimensions=many(Dimension),
    steps=many(Step),
    checks=many(PlanCheck),
    worst=level(),
    engine=text(),
)
