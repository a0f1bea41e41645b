"""What is predicted of a bend, what loads it, and every other choice, as the API gives it."""

from __future__ import annotations

from collections.abc import Sequence

from flangebook.bending.checks import Sentence
from flangebook.bending.handbook import allowance
from flangebook.bending.handbook.force import force_opinions
from flangebook.bending.part.metals import Metal
from flangebook.bending.prediction.air_bend import AirBend
from flangebook.bending.prediction.first_hit import FirstHit
from flangebook.bending.tools.ratings import Rating
from flangebook.bending.tools.setting_limits import SettingLimits
from flangebook.planning.answers.answer import (
    N_PER_KN,
    JsonDict,
    banded,
    maybe,
    number,
    sentence_json,
    sources,
)
from flangebook.planning.answers.setting_json import setting_json
from flangebook.planning.tools.fit import Fit, Wanted
from flangebook.planning.tools.ranking import Merit
from flangebook.planning.tools.reasons import reason


def predicted(
    bend: AirBend, bend_length_mm: float, limits: SettingLimits | None, first: FirstHit | None
) -> JsonDict:
    """Every predicted value with its band; no setting beyond the limits."""
    return {
        **banded("force_kn", bend.force_n, 1.0 / N_PER_KN),
        **banded("force_kn_per_m", bend.force_n, 1.0 / bend_length_mm),
        **banded("inside_radius_mm", bend.inside_radius_mm),
        "min_flange_mm": number(bend.min_flange_mm),
        **banded("springback_deg", bend.springback_deg),
        **setting_json(bend, limits, first),
        **banded("bend_allowance_mm", bend.bend_allowance_mm),
        **banded("bend_deduction_mm", bend.bend_deduction_mm),
        **banded("k_factor", bend.k_factor),
    }


def bend_sources(bend: AirBend) -> dict[str, str]:
    """Where each predicted value comes from."""
    return sources(
        {
            "force_kn": bend.force_n,
            "inside_radius_mm": bend.inside_radius_mm,
            "springback_deg": bend.springback_deg,
            "set_angle_deg": bend.set_angle_deg,
            "punch_depth_mm": bend.punch_depth_mm,
            "bend_allowance_mm": bend.bend_allowance_mm,
            "bend_deduction_mm": bend.bend_deduction_mm,
            "k_factor": bend.k_factor,
        }
    )


STEP_FIGURES = (
    "force_kn",
    "springback_deg",
    "inside_radius_mm",
    "punch_depth_mm",
    "bend_allowance_mm",
)


def origins(bend: AirBend | None) -> dict[str, str | None]:
    """In a word, where the figures of a step come from; nulls where it has none."""
    if bend is None:
        return dict.fromkeys(STEP_FIGURES)
    return {
        "force_kn": bend.force_n.origin,
        "springback_deg": bend.springback_deg.origin,
        "inside_radius_mm": bend.inside_radius_mm.origin,
        "punch_depth_mm": bend.punch_depth_mm.origin,
        "bend_allowance_mm": bend.bend_allowance_mm.origin,
    }


def handbook_json(
    bend: AirBend, bend_length_mm: float, limits: SettingLimits | None
) -> JsonDict | None:
    """What the handbook says of the bend, beside the model; None where it says nothing."""
    said = bend if bend.model is None else bend.handbook
    if said is None:
        return None
    setting = setting_json(said, limits)
    return {
        "force_kn": number(said.force_n.nominal / N_PER_KN),
        "force_kn_per_m": number(said.force_n.nominal / bend_length_mm),
        "inside_radius_mm": number(said.inside_radius_mm.nominal),
        "springback_deg": number(said.springback_deg.nominal),
        "set_angle_deg": setting["set_angle_deg"],
        "punch_depth_mm": setting["punch_depth_mm"],
    }


def opinions(wanted: Wanted, bend: AirBend) -> JsonDict:
    """What each published source makes of force and allowance, side by side."""
    length = wanted.bend_length_mm
    return {
        "force": [
            {
                "name": one.name,
                "source": one.source,
                "force_kn": number(one.force_n / N_PER_KN),
                "force_kn_per_m": number(one.force_n / length),
            }
            for one in force_opinions(wanted.metal, wanted.thickness_mm, length, bend.v_opening_mm)
        ],
        "allowance": allowance_opinions(
            wanted.metal,
            wanted.included_angle_deg,
            bend.inside_radius_mm.nominal,
            wanted.thickness_mm,
        ),
    }


def allowance_opinions(
    metal: Metal, included_angle_deg: float, inside_radius_mm: float, thickness_mm: float
) -> list[JsonDict]:
    """What each published source makes of the bend allowance."""
    said = allowance.opinions(
        included_angle_deg, inside_radius_mm, thickness_mm, metal.gauge_family
    )
    return [
        {
            "name": one.name,
            "source": one.source,
            "bend_allowance_mm": number(one.bend_allowance_mm),
            "k_factor": number(one.k_factor),
        }
        for one in said
    ]


def rating_json(row: Rating) -> JsonDict:
    """One load against one rating; kN for the press, kN/m for the rest."""
    unit = "kn_per_m" if row.per_metre else "kn"
    return {
        "what": row.what,
        "name": row.name,
        f"load_{unit}": number(row.load),
        f"rating_{unit}": maybe(row.rating),
        "share_percent": maybe(row.share_percent, 1),
        "level": row.level,
    }


def options_json(
    chosen: Fit, options: Sequence[tuple[Merit, Fit]], *, named: bool
) -> list[JsonDict]:
    """Every die's best fit in the order of the ranking, each with the reason for its place.

    named: the die was asked for by name.
    """
    if not options:
        return []
    best = options[0]
    return [
        _option(
            one,
            rank,
            chosen=one is chosen,
            why=reason((its_merit, one), best, named=named and one is chosen),
        )
        for rank, (its_merit, one) in enumerate(options, start=1)
    ]


def _option(one: Fit, rank: int, *, chosen: bool, why: Sentence) -> JsonDict:
    bend = one.bend
    length = one.wanted.bend_length_mm
    return {
        "die": one.die.code,
        "name": one.die.name,
        "v_opening_mm": number(one.die.v_opening_mm),
        "v_over_t": number(one.v_over_t, 2),
        "punch": one.punch.code or None,
        "force_kn": maybe(bend.force_n.nominal / N_PER_KN if bend else None),
        "force_kn_high": maybe(bend.force_n.high / N_PER_KN if bend else None),
        "force_kn_per_m": maybe(bend.force_n.nominal / length if bend else None),
        "force_kn_per_m_high": maybe(bend.force_n.high / length if bend else None),
        "inside_radius_mm": maybe(bend.inside_radius_mm.nominal if bend else None),
        "min_flange_mm": maybe(bend.min_flange_mm if bend else None),
        "set_angle_deg": setting_json(bend, one.limits, one.first_hit)["set_angle_deg"],
        "level": one.level,
        "rank": rank,
        "chosen": chosen,
        "reason_said": sentence_json(why),
        "tray": one.die.place.tray,
        "slot": one.die.place.slot,
    }
