"""A press's deflection from one strip test: three short bends along the bed."""

from __future__ import annotations

from flangebook.bending.errors import InputError
from flangebook.bending.prediction.crown import middle_open_deg
from flangebook.bending.prediction.deflection import deflection_from_strips
from flangebook.bending.tools.tooling import Die, Punch
from flangebook.planning.answers.answer import JsonDict, number
from flangebook.planning.steps.deflection_checks import depth_per_released_degree_mm
from flangebook.planning.tools.fit import Equipment, Wanted, fit


def strip_test(
    strip: Wanted,
    die: Die,
    punch: Punch,
    equipment: Equipment,
    end_mm: float,
    angles_deg: tuple[float, float, float],
) -> JsonDict:
    """The deflection at full force over the whole bed that three strips show.

    end_mm: from the bed's end to the middle of the outer strips [mm]. angles_deg: left, middle,
    right, after release.

    Raises InputError.
    """
    press = equipment.press
    if press is None:
        raise InputError("The shop has no press yet.", "press", "Enter the press first.")
    here = fit(strip, die, punch, equipment)
    per_degree = depth_per_released_degree_mm(here)
    if here.bend is None or per_degree is None:
        raise InputError(
            "That bend cannot be predicted in these tools.", "die", "Take tools that make it."
        )
    opens = middle_open_deg(*angles_deg)
    found = deflection_from_strips(
        opens, per_degree, here.bend.force_n.nominal, strip.bend_length_mm, end_mm,
        press.force_kn * 1000.0, press.bed_length_mm,
    )  # fmt: skip
    return {
        "middle_open_deg": number(opens, 2),
        "deflection_mm": number(found.nominal, 3),
        "deflection_mm_low": number(found.low, 3),
        "deflection_mm_high": number(found.high, 3),
    }
