"""Load against the ratings of press and tools, and what else the press allows.

Over 80 % of a rating is a caution, over 100 % a stop, a rating nobody knows is unknown. The
load is the high end of the force band. The limits of the tools' own plates and papers and of
the press's manual come first; these checks only repeat what has been entered from them.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from flangebook.bending.checks import Check, Level
from flangebook.bending.requirements import need
from flangebook.bending.tools.tooling import Die, Holder, Press, Punch

CAUTION_PERCENT = 80.0
STOP_PERCENT = 100.0
RatedThing = Literal["press", "press per metre", "punch", "die", "holder", "die holder"]

_WHAT: dict[RatedThing, str] = {
    "press": "The press",
    "press per metre": "Bed and ram of the press",
    "punch": "Punch",
    "die": "Die",
    "holder": "Holder",
    "die holder": "Die holder",
}
_REMEDY: dict[RatedThing, str] = {
    "press": "Use a wider V, a thinner or softer sheet, or a stronger press.",
    "press per metre": "Use a wider V, or spread the load over a longer stretch of the bed.",
    "punch": "Use a wider V or a punch with a higher rating.",
    "die": "Use a wider V or a die with a higher rating.",
    "holder": "Use a wider V or a holder with a higher rating.",
    "die holder": "Use a wider V or a die holder with a higher rating.",
}
_FIND_OUT: dict[RatedThing, str] = {
    "press": "Read the force on the press's plate and enter it.",
    "press per metre": "Look in the press's manual for the load it bears per metre and enter it.",
    "punch": "Read the rating on the punch or in its papers and enter it.",
    "die": "Read the rating on the die or in its papers and enter it.",
    "holder": "Read the rating on the holder or in its papers and enter it.",
    "die holder": "Read the rating on the die holder or in its papers and enter it.",
}


@dataclass(frozen=True, slots=True)
class Rating:
    """One load against one rating.

    load, rating: [kN] for the press, [kN/m] for everything else; rating None is unknown.
    """

    what: RatedThing
    name: str
    load: float
    rating: float | None

    @property
    def per_metre(self) -> bool:
        """Whether load and rating are kN/m rather than kN."""
        return self.what != "press"

    @property
    def share_percent(self) -> float | None:
        """Load over rating [%]; None when the rating is unknown."""
        return None if self.rating is None else 100.0 * self.load / self.rating

    @property
    def level(self) -> Level:
        """Over 80 % caution, over 100 % stop, no rating unknown."""
        share = self.share_percent
        if share is None:
            return "unknown"
        return "stop" if share > STOP_PERCENT else "caution" if share > CAUTION_PERCENT else "ok"

    def check(self) -> Check:
        """The finding in words."""
        unit = "_kn_per_m" if self.per_metre else "_kn"
        numbers = {f"load{unit}": self.load}
        code = f"{self.what.replace(' ', '-')}-load"
        # Braces in a name must not be taken for one of the template's numbers.
        name = self.name.replace("{", "(").replace("}", ")")
        thing = f"{_WHAT[self.what]} {name}".rstrip()
        if self.rating is None or self.share_percent is None:
            words = (
                f"{thing}: no rating on record; this bend may load it with {{load{unit}}}. "
                "Whether it bears that is not known."
            )
            return Check("unknown", code, words, _FIND_OUT[self.what], numbers)
        numbers |= {f"rating{unit}": self.rating, "share_percent": self.share_percent}
        words = (
            f"{thing}: up to {{load{unit}}}, {{share_percent}} of the rating of {{rating{unit}}}."
        )
        remedy = _REMEDY[self.what]
        do = {
            "ok": "",
            "caution": f"Little in hand: check thickness and metal. {remedy}",
            "stop": f"Do not bend this. {remedy}",
        }[self.level]
        return Check(self.level, code, words, do, numbers)


def ratings(
    force_n: float,
    bend_length_mm: float,
    press: Press | None = None,
    punch: Punch | None = None,
    die: Die | None = None,
    holder: Holder | None = None,
) -> tuple[Rating, ...]:
    """Every load against its rating, for the press and tools that are given.

    Args:
        force_n: high end of the force band [N].
        bend_length_mm: length of the bend [mm].
        press: compared by total force and, over this length, by force per metre, with the
            die holder on its bed.
        punch: compared by force per metre, like die and holder.
        die: see punch.
        holder: see punch.

    Raises:
        InputError: a size or a rating is not above zero.
    """
    need(force_n=force_n, bend_length_mm=bend_length_mm)
    per_m = force_n / bend_length_mm  # N/mm is kN/m
    rows: list[Rating] = []
    if press is not None:
        rows.append(Rating("press", press.name, force_n / 1000.0, press.force_kn))
        limit = press.force_per_m_limit_kn_per_m
        rows.append(Rating("press per metre", press.name, per_m, limit))
        if press.die_holder_height_mm > 0.0:
            rows.append(Rating("die holder", "", per_m, press.die_holder_rating_kn_per_m))
    if punch is not None:
        rows.append(Rating("punch", punch.code, per_m, punch.rating_kn_per_m))
    if die is not None:
        rows.append(Rating("die", die.code, per_m, die.rating_kn_per_m))
    if holder is not None:
        rows.append(Rating("holder", holder.code, per_m, holder.rating_kn_per_m))
    for row in rows:
        if row.rating is not None:
            need(**{f"{row.what.replace(' ', '_')}_rating": row.rating})
    return tuple(rows)


def off_centre(press: Press, force_n: float, off_centre_mm: float) -> Check | None:
    """A finding when the bend's middle lies off the middle of the press; None in the middle.

    Further off than the press may be loaded is a caution, because less force is then allowed
    than its plate says, and a stop when the bend needs more than 80 % of the plate's.

    Args:
        press: its permitted distance from the middle [mm] and full force [kN].
        force_n: high end of the force band [N].
        off_centre_mm: distance of the bend's middle from the press's middle [mm], either way.

    Raises:
        InputError: the force is not above zero.
    """
    distance = abs(off_centre_mm)
    need(force_n=force_n, off_centre_mm=distance)
    if distance == 0.0:
        return None
    numbers = {"off_centre_mm": distance, "load_kn": force_n / 1000.0}
    if press.off_centre_mm is None:
        return Check(
            "unknown",
            "off-centre-load",
            "The bend lies {off_centre_mm} off the middle of the press; how far off it may be "
            "loaded is not on record.",
            "Bend in the middle, or look in the press's manual and enter the distance.",
            numbers,
        )
    numbers["allowed_mm"] = press.off_centre_mm
    words = "The bend lies {off_centre_mm} off the middle; full force is allowed up to {allowed_mm}"
    if distance <= press.off_centre_mm:
        return Check("ok", "off-centre-load", f"{words}.", "", numbers)
    near_full = force_n / 1000.0 > press.force_kn * CAUTION_PERCENT / 100.0
    return Check(
        "stop" if near_full else "caution",
        "off-centre-load",
        f"{words}, and the bend needs up to {{load_kn}}.",
        "Move the tools nearer the middle, or keep to the load diagram in the press's manual.",
        numbers,
    )
