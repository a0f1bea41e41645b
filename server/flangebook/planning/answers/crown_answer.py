"""What left, middle and right of a bend say of its middle, and the shim that takes it out."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from flangebook.bending.checks import Sentence
from flangebook.bending.prediction.crown import LEAST_CROWN_DEG, Shim, middle_open_deg, shim_for
from flangebook.planning.answers.answer import JsonDict, number, sentence_json

PLACES = ("left_deg", "middle_deg", "right_deg")


def open_middle_deg(result: Mapping[str, Any]) -> float | None:
    """How much more open the middle is than the ends [deg], where that is no mere reading; None
    where it is not, or where not all three were measured.

    >>> open_middle_deg({"left_deg": 90.0, "middle_deg": 91.5, "right_deg": 90.0})
    1.5
    """
    left, middle, right = (result.get(name) for name in PLACES)
    if left is None or middle is None or right is None:
        return None
    opens = middle_open_deg(left, middle, right)
    return opens if opens >= LEAST_CROWN_DEG else None


def deg_to_set_by(result: Mapping[str, Any], mean_deg: float) -> float:
    """The angle that the next setting is reckoned from [deg].

    The ends', where the middle is more open: a shim or crowning brings the middle to them, and a
    setting for the mean would over-bend the ends. mean_deg: of all that was measured.
    """
    if open_middle_deg(result) is None:
        return mean_deg
    return 0.5 * (float(result["left_deg"]) + float(result["right_deg"]))


def crown_json(
    result: Mapping[str, Any], bend_length_mm: float, depth_per_degree_mm: float
) -> JsonDict | None:
    """How much the middle is open and what takes it out; None unless all three were measured.

    depth_per_degree_mm: punch depth that closes the released angle by a degree there.
    """
    measured = [result.get(name) for name in PLACES]
    left, middle, right = measured
    if left is None or middle is None or right is None:
        return None
    opens = middle_open_deg(left, middle, right)
    lack = opens * depth_per_degree_mm
    by_ends = open_middle_deg(result) is not None
    shim = shim_for(lack, bend_length_mm) if by_ends else None
    return {
        "middle_open_deg": number(opens, 2),
        "lack_mm": number(lack, 3),
        "shim": shim_json(shim),
        "setting_for": "ends" if by_ends else "mean",
        "said": sentence_json(_said(opens, shim)),
    }


def shim_json(shim: Shim | None) -> JsonDict | None:
    """The strips of a shim; None without one."""
    if shim is None:
        return None
    return {
        "middle_mm": number(shim.middle_mm, 3),
        "strip_mm": number(shim.strip_mm, 3),
        "lengths_mm": [number(one) for one in shim.lengths_mm],
    }


def _said(opens_deg: float, shim: Shim | None) -> Sentence:
    if abs(opens_deg) < LEAST_CROWN_DEG:
        return Sentence("Middle and ends agree as well as an angle is read.")
    numbers = {"off_deg": abs(opens_deg)}
    if opens_deg < 0.0:
        return Sentence(
            "The middle is {off_deg} more closed than the ends: take out shims or crowning, or "
            "check the die for wear at its ends.",
            numbers,
        )
    how = "The middle is {off_deg} more open than the ends."
    if shim is None:
        return Sentence(
            f"{how} No shim is reckoned for that: check that the tools sit, and the die's wear. "
            "The setting is for the ends, the middle stays open.",
            numbers,
        )
    return Sentence(
        f"{how} Crowning of {{shim_mm}} in the middle takes it out, or as much shim under the "
        "middle of the die: first that, then the setting, which is for the ends; bend again and "
        "measure.",
        {**numbers, "shim_mm": shim.middle_mm},
    )
