"""Why tools for a bend stand where they stand, in words."""

from __future__ import annotations

from collections.abc import Callable

from flangebook.bending.checks import SEVERITY, Sentence, joined, tidy
from flangebook.bending.handbook.v_opening import PREFERRED_OVER_T
from flangebook.planning.tools.fit import Fit
from flangebook.planning.tools.ranking import COUNTED_APART, SHARPER_CODES, Merit, doubtful

BY_NAME = Sentence("Asked for by name.")
LESS_USUAL = Sentence("As good, but the other punch or die is the more usual one.")


def reason(mine: tuple[Merit, Fit], best: tuple[Merit, Fit], *, named: bool) -> Sentence:
    """Why these tools stand where they stand, against the best ones.

    named: these tools were asked for by name.
    """
    (merit_here, one), (merit_best, _) = mine, best
    if one.stops:
        stop = one.stops[0].said
        return joined("Asked for by name, but: ", stop) if named else stop
    if named:
        return BY_NAME
    if one is best[1]:
        return joined("Best: ", _why_best(one))
    return what_is_worse(merit_here, merit_best, one)


def _why_best(one: Fit) -> Sentence:
    asked = one.wanted.radius_mm
    best = f"V is {tidy(one.v_over_t)} × thickness, the closest to 8 × with least against it"
    if asked is None:
        return Sentence(f"{best}.")
    return Sentence(f"{best} and its radius nearest to the {{asked_mm}} asked for.",
                    {"asked_mm": asked})  # fmt: skip


def what_is_worse(here: Merit, best: Merit, one: Fit) -> Sentence:
    """What weighs most against tools, compared with better ones."""
    more = {name: cost - best.terms[name] for name, cost in here.terms.items()}
    name = max(more, key=lambda n: more[n])
    if more[name] <= 0.0:
        return LESS_USUAL
    return _WORSE[name](one)


def _stopped(one: Fit) -> Sentence:
    return one.stops[0].said


def _blunt(one: Fit) -> Sentence:
    near = Sentence("Its tools end too near the angle to set.")
    return next((c.said for c in one.checks if c.code in SHARPER_CODES), near)


def _doubtful(one: Fit) -> Sentence:
    tool = next(t for t in (one.die, one.punch) if doubtful(t))
    kind = "Die" if tool is one.die else "Punch"
    doubt = "has no rating" if tool.rating_kn_per_m is None else "is worn"
    return Sentence(f"{kind} {tool.code} {doubt}.")


def _radius(one: Fit) -> Sentence:
    radius = one.bend.inside_radius_mm.nominal if one.bend is not None else 0.0
    asked = one.wanted.radius_mm or 0.0
    return Sentence(
        "The radius would be {radius_mm}, further from the {asked_mm} asked for.",
        {"radius_mm": radius, "asked_mm": asked},
    )


def _range(one: Fit) -> Sentence:
    wide = one.v_over_t > PREFERRED_OVER_T
    side = "wide: longer flanges needed" if wide else "narrow: more force"
    return Sentence(f"V is {tidy(one.v_over_t)} × thickness, {side}; usual is 6 × to 12 ×.")


def _load(one: Fit) -> Sentence:
    return max(one.ratings, key=lambda r: SEVERITY[r.level]).check().said


def _caution(one: Fit) -> Sentence:
    found = (c.said for c in one.checks if c.level == "caution" and c.code not in COUNTED_APART)
    return next(found)


def _unknown(one: Fit) -> Sentence:
    return next(c.said for c in one.checks if c.code.endswith("-condition"))


def _from_8t(one: Fit) -> Sentence:
    return Sentence(f"V is {tidy(one.v_over_t)} × thickness, further from 8 ×.")


def _less_usual(_: Fit) -> Sentence:
    return LESS_USUAL


_WORSE: dict[str, Callable[[Fit], Sentence]] = {
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
