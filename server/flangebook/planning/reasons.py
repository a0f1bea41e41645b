"""Why tools for a bend stand where they stand, in words."""

from __future__ import annotations

from collections.abc import Callable

from flangebook.bending.checks import tidy
from flangebook.bending.v_opening import PREFERRED_OVER_T
from flangebook.planning.fit import Fit
from flangebook.planning.ranking import COUNTED_APART, SHARPER_CODES, WEIGHT, Merit, doubtful

BY_NAME = "Asked for by name."


def reason(mine: tuple[Merit, Fit], best: tuple[Merit, Fit], *, named: bool) -> str:
    """Why these tools stand where they stand, against the best ones.

    named: these tools were asked for by name.
    """
    (merit_here, one), (merit_best, _) = mine, best
    if one.stops:
        words = one.stops[0].words
        return f"Asked for by name, but: {words}" if named else words
    if named:
        return BY_NAME
    if one is best[1]:
        return f"Best: {_why_best(one)}"
    return what_is_worse(merit_here, merit_best, one)


def _why_best(one: Fit) -> str:
    asked = one.wanted.radius_mm
    radius = "" if asked is None else f" and its radius nearest to the {tidy(asked)} mm asked for"
    return f"V is {tidy(one.v_over_t)} t, the nearest to 8 t with least against it{radius}."


def what_is_worse(here: Merit, best: Merit, one: Fit) -> str:
    """What weighs most against tools, compared with better ones."""
    more = {name: cost - best.terms[name] for name, cost in here.terms.items()}
    name = max(more, key=lambda n: more[n])
    if more[name] <= 0.0:
        return "As good, but the other punch or die is the more usual one."
    return _WORSE[name](one)


def _stopped(one: Fit) -> str:
    return one.stops[0].words


def _blunt(one: Fit) -> str:
    said = next((c.words for c in one.checks if c.code in SHARPER_CODES), "")
    return said or "Its tools end too near the angle to set."


def _doubtful(one: Fit) -> str:
    tool = next(t for t in (one.die, one.punch) if doubtful(t))
    kind = "Die" if tool is one.die else "Punch"
    return f"{kind} {tool.code} {'has no rating' if tool.rating_kn_per_m is None else 'is worn'}."


def _radius(one: Fit) -> str:
    radius = one.bend.inside_radius_mm.nominal if one.bend is not None else 0.0
    asked = one.wanted.radius_mm or 0.0
    return f"The radius would be {tidy(radius)} mm, further from the {tidy(asked)} mm asked for."


def _range(one: Fit) -> str:
    wide = one.v_over_t > PREFERRED_OVER_T
    side = "wide: longer flanges needed" if wide else "narrow: more force"
    return f"V is {tidy(one.v_over_t)} t, {side}; usual is 6 t to 12 t."


def _load(one: Fit) -> str:
    return max(one.ratings, key=lambda r: WEIGHT[r.level]).check().words


def _caution(one: Fit) -> str:
    found = (c.words for c in one.checks if c.level == "caution" and c.code not in COUNTED_APART)
    return next(found)


def _unknown(one: Fit) -> str:
    return next(c.words for c in one.checks if c.code.endswith("-condition"))


def _from_8t(one: Fit) -> str:
    return f"V is {tidy(one.v_over_t)} t, further from 8 t."


def _less_usual(one: Fit) -> str:
    return "As good, but the other punch or die is the more usual one."


_WORSE: dict[str, Callable[[Fit], str]] = {
    "stops": _stopped,
    "blunt": _blunt,
    "doubtful": _doubtful,
    "radius_miss": _radius,
    "out_of_range": _range,
    "load": _load,
    "cautions": _caution,
    "unknowns": _unknown,
    "from_8t": _from_8t,
    "tools_second_choice": _less_usual,
}
