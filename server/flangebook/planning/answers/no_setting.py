"""What is said of a result that no setting can mend: what limits, and what to check in which
order.

A bend that asks for more than punch, die and press have, or for more than the card's own table
tells, is wrong for another reason. The order is that of what is quickest to check and most often
the cause (common practice, no source).
"""

from __future__ import annotations

from collections.abc import Sequence

from flangebook.bending.checks import Sentence, degrees
from flangebook.bending.tools.setting_limits import LimitedBy, SettingLimits
from flangebook.planning.answers.answer import JsonDict, sentence_json

AS_WANTED_DEG = 0.05
TO_CHECK = (
    "Read the angle again: the included angle between the flats, at this bend.",
    "Compare the tools in the press with the card: punch and die.",
    "Measure the thickness of the sheet.",
    "Zero the depth again, at first touch of the sheet.",
)
_ENDS: dict[LimitedBy, str] = {
    "punch angle": "the punch",
    "die angle": "the die",
    "die depth": "the depth of the die",
    "press stroke": "the stroke of the press",
    "saved table": "what this card was saved with",
}


def error_words(wanted_deg: float, measured_deg: float) -> str:
    """How far off a bend came out.

    >>> error_words(90.0, 97.0)
    '7° too open.'
    """
    error = measured_deg - wanted_deg
    if abs(error) < AS_WANTED_DEG:
        return "As wanted."
    return f"{degrees(abs(error))}° too {'open' if error > 0 else 'closed'}."


def no_setting(
    wanted_deg: float, measured_deg: float, limits: SettingLimits, by: Sequence[LimitedBy]
) -> JsonDict:
    """The sentence and the list of checks for a result without a next setting.

    by: what a setting would be beyond; empty where tools and press would reach it, but the
    card's table of corrections does not.
    """
    what = f"{error_words(wanted_deg, measured_deg)} {_why(limits, by)} Something else is wrong."
    return {
        "limited_by": list(by),
        "to_check": list(TO_CHECK),
        "said": sentence_json(Sentence(what)),
    }


def _why(limits: SettingLimits, by: Sequence[LimitedBy]) -> str:
    ends = [_ENDS[one] for one in by if one in _ENDS]
    if ends:
        verb = "ends" if len(ends) == 1 else "end"
        names = " and ".join(ends)
        return (
            f"No setting mends that: {names} {verb} at {degrees(limits.sharpest_deg)}° under load."
        )
    if "open height" in by:
        return "No setting mends that: the tools do not go into the press."
    if "flat" in by:
        return "No setting mends that: it would not bend the sheet at all."
    return "That is further off than the card's table of corrections goes."
