"""Where the handbook and the bend model say different things of one bend, in plain words.

A caution where it matters: a force above the model's band; a radius more than 20 % off that
changes the blank by more than 0.1 mm a bend. (A flat bend's radius is far from the handbook's,
which is for bends near square, and hardly changes the blank.) Else it is only said. "By more than
the band" is by the model's own band, before it was widened towards the handbook.
"""

from __future__ import annotations

from collections.abc import Iterator

from flangebook.bending.checks import Check, Level
from flangebook.bending.estimate import Estimate
from flangebook.bending.prediction.modelled_bend import ModelledBend
from flangebook.bending.prediction.predicted_bend import AirBend

CODE = "handbook-differs"
RADIUS_SHARE = 0.20
BLANK_MM = 0.1


def handbook_differs(
    bend: AirBend, bend_length_mm: float, *, one_bump: bool = False
) -> tuple[Check, ...]:
    """A finding for each figure that the two see differently; none when they agree.

    The radius of one bump of a large radius is not compared: the handbook's share of the V is
    that of a whole bend near square, and the blank is counted with the large radius.

    Args:
        bend: as predicted, with both.
        bend_length_mm: length of the bend [mm].
        one_bump: whether it is one of many bumps that make a large radius.
    """
    found, handbook = bend.model, bend.handbook
    if found is None or handbook is None:
        return ()
    return (
        *_force(found, handbook.force_n, bend_length_mm),
        *(() if one_bump else _radius(found.radius_mm, bend, handbook)),
        *_springback(found.springback_deg, handbook.springback_deg),
        *_depth(handbook.punch_depth_mm, bend.punch_depth_mm),
    )


def model_not_used(bend: AirBend) -> tuple[Check, ...]:
    """That the figures are the handbook's alone, and why."""
    if bend.model is not None or not bend.why_no_model:
        return ()
    why = bend.why_no_model.replace("{", "(").replace("}", ")")
    words = f"These figures are the handbook's alone. The bend model is not used: {why}."
    return (Check("ok", "handbook-alone", words),)


def _outside(value: float, band: Estimate) -> bool:
    return not band.low <= value <= band.high


def _force(found: ModelledBend, handbook: Estimate, bend_length_mm: float) -> Iterator[Check]:
    model = found.force_n_per_mm
    if not _outside(handbook.nominal / bend_length_mm, model):
        return
    above = handbook.nominal / bend_length_mm > model.high
    level: Level = "caution" if above else "ok"
    side, end = ("above", model.high) if above else ("below", model.low)
    to = "up to" if above else "down to"
    yield Check(
        level,
        CODE,
        f"The handbook makes the force {{handbook_kn}}, {side} what the bend model gives: "
        f"{{model_kn}}, {to} {{end_kn}}. Press and tools are held against the higher of both.",
        "Watch the force on the first bend." if above else "",
        {
            "handbook_kn": handbook.nominal / 1000.0,
            "model_kn": model.nominal * bend_length_mm / 1000.0,
            "end_kn": end * bend_length_mm / 1000.0,
        },
    )


def _radius(model: Estimate, bend: AirBend, beside: AirBend) -> Iterator[Check]:
    handbook = beside.inside_radius_mm
    share = abs(model.nominal - handbook.nominal) / handbook.nominal
    if share <= RADIUS_SHARE and not _outside(handbook.nominal, model):
        return
    blank = abs(bend.bend_deduction_mm.nominal - beside.bend_deduction_mm.nominal)
    matters = share > RADIUS_SHARE and blank > BLANK_MM
    yield Check(
        "caution" if matters else "ok",
        CODE,
        "The handbook makes the inside radius {handbook_mm}, the bend model {model_mm}: "
        "{share_percent} apart. The blank is counted with the model's; the handbook's would change "
        "it by {blank_mm}.",
        "Measure radius and flanges of the first piece before cutting more blanks."
        if matters
        else "",
        {
            "handbook_mm": handbook.nominal,
            "model_mm": model.nominal,
            "share_percent": 100.0 * share,
            "blank_mm": blank,
        },
    )


def _springback(model: Estimate, handbook: Estimate) -> Iterator[Check]:
    if _outside(handbook.nominal, model):
        yield Check(
            "ok",
            CODE,
            "The handbook makes the springback {handbook_deg}, the bend model {model_deg}. "
            "What is expected lies between the two, and its band holds both.",
            "",
            {"handbook_deg": handbook.nominal, "model_deg": model.nominal},
        )


def _depth(handbook: Estimate, shown: Estimate) -> Iterator[Check]:
    if _outside(handbook.nominal, shown):
        yield Check(
            "ok",
            CODE,
            "The handbook's radius and angle make the punch depth {handbook_mm}, the bend model "
            "{model_mm}. The setting is the model's.",
            "",
            {"handbook_mm": handbook.nominal, "model_mm": shown.nominal},
        )
