"""How open a bend's middle comes out because bed and ram give way."""

from __future__ import annotations

from collections.abc import Iterable

from flangebook.bending.checks import Check
from flangebook.bending.prediction.correction import correction_table
from flangebook.bending.prediction.crown import Shim, shim_for
from flangebook.bending.prediction.deflection import bow_mm
from flangebook.bending.tools.tooling import Press
from flangebook.planning.answers.setting_json import within
from flangebook.planning.tools.fit import Fit

DEFLECTION_CODE = "deflection-unknown"
MOST_OPEN_DEG = 0.5
"""An open middle within this is let pass: angles are held to half a degree (common practice)."""
LONG_SHARE = 0.6
"""A bend of less than this share of the bed hardly bows it, so nothing is asked about it."""


def deflection_checks(fit: Fit, press: Press | None, in_bumps: bool) -> Iterable[Check]:
    """A finding where the middle of a bend stays more open than half a degree; a note on a long
    bend where the press's deflection is not known.

    in_bumps: the bend is a radius made in bumps, of which each is too small to say.
    """
    if press is None or fit.bend is None or in_bumps or not within(fit.bend, fit.limits):
        return
    if press.deflection_mm is None:
        if fit.wanted.bend_length_mm >= LONG_SHARE * press.bed_length_mm:
            yield _not_known()
        return
    per_degree = depth_per_released_degree_mm(fit)
    if per_degree is None:
        return
    lack = bow_mm(
        press.deflection_mm, press.force_kn * 1000.0, press.bed_length_mm, fit.bend.force_n,
        fit.wanted.bend_length_mm,
    )  # fmt: skip
    if lack.nominal > MOST_OPEN_DEG * per_degree:
        shim = shim_for(lack.nominal, fit.wanted.bend_length_mm)
        yield _open(lack.nominal / per_degree, lack.high / per_degree, lack.nominal, shim)


def depth_per_released_degree_mm(fit: Fit) -> float | None:
    """Punch depth that closes the released angle by a degree near the setting [mm]; None where
    the tools leave no room to tell."""
    if fit.bend is None or fit.limits is None:
        return None
    rows = correction_table(fit.bend, fit.case, fit.limits, 1.0, 1.0)
    if len(rows) < 2:
        return None
    first, last = rows[0], rows[-1]
    turned = last.measured_deg - first.measured_deg
    # A row says what to set after an angle came out too open, so more depth closes it.
    return (last.punch_depth_mm - first.punch_depth_mm) / turned if turned > 0.0 else None


def _open(open_deg: float, most_deg: float, lack_mm: float, shim: Shim | None) -> Check:
    do = (
        "Shim or crown the middle by {lack_mm} before the first piece, and measure left, middle "
        "and right."
        if shim is not None
        else "That is more than shims should make up: bend it in a wider V, or on another press."
    )
    return Check(
        "caution",
        "middle-open",
        "Bed and ram give way: the middle comes out about {open_deg} more open than the ends, up "
        "to {most_deg}.",
        do,
        {"open_deg": open_deg, "most_deg": most_deg, "lack_mm": lack_mm},
    )


def _not_known() -> Check:
    return Check(
        "ok",
        DEFLECTION_CODE,
        "How far bed and ram give way is not known, so the middle of this long bend may come out "
        "more open than its ends.",
        "Measure left, middle and right. The press's papers, or three strips, give the figure.",
    )
