"""Load against the ratings of press and tools."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from flangebook.bending.checks import Check, Level
from flangebook.bending.limits import need_positive
from flangebook.bending.tooling import Die, Holder, Press, Punch

CAUTION_PERCENT = 80.0
STOP_PERCENT = 100.0
RatedThing = Literal["press", "press per metre", "punch", "die", "holder"]


@dataclass(frozen=True, slots=True)
class Rating:
    """One load against one rating; kN for the press, kN/m for everything per metre."""

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
        """Load as a share of the rating [%], None when the rating is unknown."""
        return None if not self.rating else 100.0 * self.load / self.rating

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
        if self.rating is None or self.share_percent is None:
            return Check(
                "unknown",
                code,
                f"The {self.what} {self.name} has no rating on record; "
                f"the bend may load it with {{load{unit}}}.",
                "Read the rating from its plate or papers and enter it.",
                numbers,
            )
        numbers |= {f"rating{unit}": self.rating, "share_percent": self.share_percent}
        words = (
            f"The {self.what} {self.name} carries up to {{load{unit}}}, "
            f"{{share_percent}} of its rating of {{rating{unit}}}."
        )
        return Check(
            self.level, code, words, "" if self.level == "ok" else "Use a wider V.", numbers
        )


def ratings(
    force_n: float,
    bend_length_mm: float,
    press: Press | None = None,
    punch: Punch | None = None,
    die: Die | None = None,
    holder: Holder | None = None,
) -> tuple[Rating, ...]:
    """Every load against its rating; force_n [N] is the high end of the band."""
    need_positive(force_n=force_n, bend_length_mm=bend_length_mm)
    per_m = force_n / bend_length_mm
    rows: list[Rating] = []
    if press:
        rows.append(Rating("press", press.name, force_n / 1000.0, press.force_kn))
        rows.append(Rating("press per metre", press.name, per_m, press.force_per_m_limit_kn_per_m))
    if punch:
        rows.append(Rating("punch", punch.code, per_m, punch.rating_kn_per_m))
    if die:
        rows.append(Rating("die", die.code, per_m, die.rating_kn_per_m))
    if holder:
        rows.append(Rating("holder", holder.code, per_m, holder.rating_kn_per_m))
    return tuple(rows)


def off_centre(press: Press, force_n: float, off_centre_mm: float) -> Check | None:
    """A finding when the bend is made off the middle of the press; None when in the middle."""
    if off_centre_mm == 0.0:
        return None
    numbers = {"off_centre_mm": abs(off_centre_mm), "load_kn": force_n / 1000.0}
    if press.off_centre_mm is None:
        return Check(
            "unknown",
            "off-centre-load",
            "The bend is {off_centre_mm} off the middle; how far off this press may be loaded is not on record.",
            "Bend in the middle of the press, or read its manual.",
            numbers,
        )
    if abs(off_centre_mm) <= press.off_centre_mm:
        return Check(
            "ok", "off-centre-load", "The bend is {off_centre_mm} off the middle.", "", numbers
        )
    return Check(
        "caution",
        "off-centre-load",
        "The bend is {off_centre_mm} off the middle, further than full force may act.",
        "Bend nearer the middle, or follow the load diagram in the press's manual.",
        numbers,
    )
