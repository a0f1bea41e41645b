"""What is answered about one bend, its stroke and about the wall chart."""

from __future__ import annotations

import marshmallow as ma

from flangebook.schemas.answers import (
    Check,
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
    number,
    one,
    ring,
    sometimes,
    text,
    whole,
    yes_no,
)

PREDICTED = (
    "inside_radius_mm",
    "springback_deg",
    "set_angle_deg",
    "punch_depth_mm",
    "bend_allowance_mm",
    "bend_deduction_mm",
    "k_factor",
)


def predicted() -> dict[str, ma.fields.Field[object]]:
    """Every predicted value with its band, force first.

    A setting is null where tools and press end sooner.
    """
    return {
        **banded_force("force_kn"),
        **banded_force("force_kn_per_m"),
        **{name: field for value in PREDICTED for name, field in banded(value).items()},
        **setting(),
    }


TO_SET = (
    "The number to set, under load. Until a piece of this metal was measured in this V it is the "
    "first hit, which comes out exact or open (first_hit says how far); after that it is the "
    "expected setting. Null where tools and press end sooner."
)
EXPECTED_SETTING = "The setting that is expected to come out exact; half of first bends over-bend."
FirstHit = answer(
    "FirstHit",
    comes_out_deg_low=described(number(), "The least that nine in ten first hits come out at."),
    comes_out_deg_high=described(number(), "The most. Open is pressed again."),
)


def setting() -> dict[str, ma.fields.Field[object]]:
    """The setting that leads, the one that is expected, and what a first hit comes out at."""
    return {
        "set_angle_deg": described(maybe(), TO_SET),
        "punch_depth_mm": described(maybe(), TO_SET),
        "expected_set_angle_deg": sometimes(described(maybe(), EXPECTED_SETTING)),
        "expected_punch_depth_mm": sometimes(described(maybe(), EXPECTED_SETTING)),
        "first_hit": sometimes(one(FirstHit, allow_none=True)),
    }


Pose = answer("Pose", sheet=ring(), punch=ring(), holder=ring(), ram=ring(), gauge=ring())
Drawing = answer(
    "Drawing",
    before=one(Pose),
    after=one(Pose),
    die=ring(),
    bed=ring(),
    gauge_point=exactly(2, allow_none=True),
    bounds=exactly(4),
)
ForceOpinion = answer(
    "ForceOpinion", name=text(), source=text(), force_kn=number(), force_kn_per_m=number()
)
AllowanceOpinion = answer(
    "AllowanceOpinion", name=text(), source=text(), bend_allowance_mm=number(), k_factor=number()
)
Opinions = answer("Opinions", force=many(ForceOpinion), allowance=many(AllowanceOpinion))


UNRATED = "null is unknown. A rating is either a force or a force per length."
Rating = answer(
    "Rating",
    what=text(),
    name=text(),
    load_kn=sometimes(number()),
    rating_kn=sometimes(described(maybe(), UNRATED)),
    load_kn_per_m=sometimes(number()),
    rating_kn_per_m=sometimes(described(maybe(), UNRATED)),
    share_percent=maybe(),
    level=level(),
)


Option = answer(
    "Option",
    die=text(),
    name=text(),
    v_opening_mm=number(),
    v_over_t=number(),
    punch=maybe_text(),
    **force(),
    **force("force_kn_per_m"),
    inside_radius_mm=maybe(),
    min_flange_mm=maybe(),
    set_angle_deg=maybe(),
    level=level(),
    rank=whole(),
    chosen=yes_no(),
    reason_said=one(Said),
    tray=text(),
    slot=text(),
)
Handbook = answer(
    "Handbook",
    force_kn=number(),
    force_kn_per_m=number(),
    inside_radius_mm=number(),
    springback_deg=number(),
    set_angle_deg=maybe(),
    punch_depth_mm=maybe(),
)
SettingLimits = answer(
    "SettingLimits", sharpest_deg=number(), deepest_mm=number(), limited_by=many(text())
)
OneBend = answer(
    "OneBend",
    metal=text(),
    thickness_mm=number(),
    thickness_gauge=maybe_text(),
    bend_length_mm=number(),
    included_angle_deg=number(),
    die=maybe_text(),
    die_name=maybe_text(),
    punch=maybe_text(),
    punch_name=maybe_text(),
    punch_radius_mm=number(),
    tools_reason_said=sometimes(one(Said)),
    v_opening_mm=number(),
    min_flange_mm=number(),
    **predicted(),
    limits=one(SettingLimits, allow_none=True),
    sources=ma.fields.Dict(keys=text(), values=text()),
    handbook=one(Handbook, allow_none=True),
    opinions=one(Opinions),
    ratings=many(Rating),
    options=many(Option),
    drawing=one(Drawing, allow_none=True),
    checks=many(Check),
    worst=level(),
)

Setting = answer("StrokeSetting", set_angle_deg=maybe(), punch_depth_mm=maybe(), **force())
StrokePoint = answer(
    "StrokePoint",
    punch_depth_mm=number(),
    **banded_force("force_kn", number),
    loaded_angle_deg=number(),
    released_angle_deg=number(),
)
StrokePeak = answer(
    "StrokePeak", **force(figure=number), punch_depth_mm=number(), loaded_angle_deg=number()
)
StrokeLimit = answer("StrokeLimit", what=text(), name=text(), limit_kn=maybe())
StrokeResult = answer(
    "StrokeResult",
    id=text(),
    punch_depth_mm=maybe(),
    set_angle_deg=maybe(),
    measured_deg=number(),
    outlier=yes_no(),
)
StrokeOfBend = answer(
    "StrokeOfBend",
    metal=text(),
    thickness_mm=number(),
    bend_length_mm=number(),
    included_angle_deg=number(),
    die=maybe_text(),
    punch=maybe_text(),
    v_opening_mm=number(),
    punch_radius_mm=number(),
    set=one(Setting),
    curve=many(StrokePoint),
    peak=one(StrokePeak, allow_none=True),
    limits=many(StrokeLimit),
    work_j=maybe(),
    energy_gap_percent=maybe(),
    trials=many(StrokeResult),
    checks=many(Check),
    worst=level(),
)

ChartMetal = answer("ChartMetal", code=text(), name=text())
ChartPress = answer("ChartPress", name=text(), force_kn=number())
ChartDie = answer(
    "ChartDie",
    code=text(),
    name=text(),
    v_opening_mm=number(),
    angle_deg=number(),
    rating_kn_per_m=maybe(),
    tray=text(),
    slot=text(),
)
ChartCell = answer(
    "ChartCell",
    die=text(),
    usable=yes_no(),
    why=text(),
    punch=maybe_text(),
    **force("force_kn_per_m"),
    inside_radius_mm=maybe(),
    min_flange_mm=maybe(),
    level=level(),
    limit=maybe_text(),
    share_percent=maybe(),
)
ChartRow = answer("ChartRow", thickness_mm=number(), gauge=maybe_text(), cells=many(ChartCell))
Chart = answer(
    "Chart",
    metal=one(ChartMetal),
    press=one(ChartPress, allow_none=True),
    bend_length_mm=number(),
    included_angle_deg=number(),
    dies=many(ChartDie),
    thicknesses_mm=ma.fields.List(number()),
    rows=many(ChartRow),
    words=ma.fields.List(text()),
)
