"""How much bed and ram of a press bow under a bend, and what that leaves open in its middle.

Bed and ram are taken together as one straight beam of even section, simply supported at the ends
of the bed (span S), of which the frames and cylinders do not give way. The force F of a bend of
length L stands in the middle of the bed, evenly spread. At a distance u from the middle, up to
L/2, the beam has sunk less than in its middle by

    F/(2 E I) ((2 S - L) u²/8 - u⁴/(12 L))  +  F u²/(2 L k G A)

the first term from bending, the second from shear, which deep plates need. At u = L/2 that is the
bow of the bend: F L² (12 S - 7 L)/(384 E I) + F L/(8 k G A). The middle itself sinks by
F (8 S³ - 4 S L² + L³)/(384 E I) + F (S/4 - L/8)/(k G A).

What nobody measures is E I and k G A. One figure gives both: the deflection at full force over
the whole bed, 5 F S³/(384 E I) + F S/(8 k G A), of which shear is taken to be a fifth, and none
to a half for the band. A plate of depth h has a share of 2.5 (h/S)² beside its bending
(rectangle, k = 5/6, G = E/2.6): a fifth of the whole belongs to a depth of 0.3 S, a half to 0.6 S.

Own derivation from the elementary theory of beams (Timoshenko, Strength of Materials). Limits as
in any table of beams: 5 F S³/(384 E I) at L = S, F S³/(48 E I) at L = 0; a force at x from one end
sinks by F x² (S - x)²/(3 E I S) under itself (R. L. Mott, Machine Elements in Mechanical Design,
4th ed., table A14-1).
"""

from __future__ import annotations

from dataclasses import dataclass
from math import sqrt

from flangebook.bending.errors import InputError
from flangebook.bending.estimate import NINE_IN_TEN, Estimate
from flangebook.bending.requirements import need

SHEAR_SHARES = (0.0, 0.2, 0.5)
"""Share of shear in the deflection at full force over the whole bed: low, nominal, high."""
MOST_STRIP_SHARE = 0.25
"""A strip longer than this share of the bed bows the press over its own length too."""
READING_SD_DEG = 0.3


@dataclass(frozen=True, slots=True)
class Beam:
    """A simply supported beam. span_mm: S. bending_n_mm2: E I. shear_n: k G A."""

    span_mm: float
    bending_n_mm2: float
    shear_n: float


def beam_of(deflection_mm: float, force_n: float, span_mm: float, shear_share: float) -> Beam:
    """The beam that sinks in its middle by a deflection under a force over its whole length.

    Args:
        deflection_mm: in the middle, against the ends [mm].
        force_n: the force [N].
        span_mm: S, the length of the bed [mm].
        shear_share: part of the deflection that is shear [-], 0 to below 1.

    Raises:
        InputError: a figure is not above zero.

    >>> beam = beam_of(0.5, 400e3, 2000.0, 0.0)
    >>> round(sinks_less_mm(400e3, 2000.0, 1000.0, beam), 9)  # the bed's ends do not sink
    0.5
    """
    need(deflection_mm=deflection_mm, force_n=force_n, span_mm=span_mm)
    bent, sheared = deflection_mm * (1.0 - shear_share), deflection_mm * shear_share
    return Beam(
        span_mm,
        5.0 * force_n * span_mm**3 / (384.0 * bent),
        force_n * span_mm / (8.0 * sheared) if sheared > 0.0 else float("inf"),
    )


def sinks_less_mm(force_n: float, length_mm: float, from_middle_mm: float, beam: Beam) -> float:
    """How much less than the middle a place under the load sinks [mm].

    Args:
        force_n: F [N].
        length_mm: L that it is spread over in the middle [mm], above 0.
        from_middle_mm: u, at most L/2 either way [mm].
        beam: bed and ram.

    Raises:
        InputError: the length is not within the span, the place not within the length.

    Source: elementary theory of beams, as at the top of the module.

    >>> beam = beam_of(0.5, 400e3, 2000.0, 0.0)
    >>> round(sinks_less_mm(400e3, 2000.0, 1000.0, beam), 6)  # the ends do not sink at all
    0.5
    """
    need(length_mm=length_mm)
    _need_within(length_mm, beam.span_mm)
    _need_within(2.0 * abs(from_middle_mm), length_mm)
    s, long, u = beam.span_mm, length_mm, from_middle_mm
    bent = (2.0 * s - long) * u**2 / 8.0 - u**4 / (12.0 * long)
    return force_n * (bent / (2.0 * beam.bending_n_mm2) + u**2 / (2.0 * long * beam.shear_n))


def bow_mm(
    deflection_mm: float, full_force_n: float, span_mm: float, force_n: Estimate, length_mm: float
) -> Estimate:
    """By how much the middle of a bend lacks depth against its ends [mm].

    Args:
        deflection_mm: of bed and ram together at full force over the whole bed [mm].
        full_force_n: full force [N].
        span_mm: S, the length of the bed [mm].
        force_n: of the bend, expected with its band [N].
        length_mm: L of the bend in the middle of the bed [mm]; longer than it counts as the bed.

    Raises:
        InputError: a figure is not above zero.

    Band: the force's, with shear from none to a half of the deflection.

    Source: elementary theory of beams, as at the top of the module.

    >>> full = Estimate(400e3, 400e3, 400e3, "model", "")
    >>> round(bow_mm(0.5, 400e3, 2000.0, full, 2000.0).nominal, 9)
    0.5
    """
    long = min(length_mm, span_mm)
    beams = [beam_of(deflection_mm, full_force_n, span_mm, share) for share in SHEAR_SHARES]
    unit = [sinks_less_mm(1.0, long, long / 2.0, beam) for beam in beams]
    basis = "beam formulas, from the press's deflection at full force"
    return Estimate(
        min(unit) * force_n.low, unit[1] * force_n.nominal, max(unit) * force_n.high,
        "handbook", basis,
    )  # fmt: skip


def deflection_from_strips(
    open_deg: float,
    depth_per_degree_mm: float,
    strip_force_n: float,
    strip_length_mm: float,
    end_mm: float,
    full_force_n: float,
    span_mm: float,
) -> Estimate:
    """Deflection at full force over the whole bed [mm], from one strip test.

    The same short strip is bent at the left, in the middle and at the right of the bed, at one
    setting. Under the strip's force the middle gives way more than the places near the ends, so
    it comes out more open there. The strip's force is taken as a point: a strip of a quarter of
    the bed makes 3 % of difference. Dies that are worn in the middle are measured along with it.

    Args:
        open_deg: middle less the mean of left and right [deg], after release.
        depth_per_degree_mm: punch depth for one released degree at that bend [mm].
        strip_force_n: expected force of the strip [N].
        strip_length_mm: length of its bend [mm].
        end_mm: from the end of the bed to the middle of the strip, left and right [mm].
        full_force_n: full force of the press [N].
        span_mm: S, the length of the bed [mm].

    Raises:
        InputError: the strip is too long or stands too near the middle to tell anything, or what
            came is within the reading: no figure follows from it.

    Band: readings of 0.3 degrees (one standard deviation, each of the three), nine in ten.

    Source: own derivation from the elementary theory of beams; the reading is common practice, no
    source.

    >>> found = deflection_from_strips(1.0, 0.08, 60e3, 300.0, 200.0, 400e3, 1600.0)
    >>> round(found.low, 2), round(found.nominal, 2), round(found.high, 2)
    (0.17, 0.42, 0.68)
    """
    need(
        depth_per_degree_mm=depth_per_degree_mm,
        strip_force_n=strip_force_n,
        strip_length_mm=strip_length_mm,
        full_force_n=full_force_n,
        span_mm=span_mm,
        end_mm=end_mm,
    )
    _need_apart(strip_length_mm, end_mm, span_mm)
    per_degree = depth_per_degree_mm * full_force_n / strip_force_n
    per_degree /= _middle_over_ends(end_mm / span_mm)
    doubt = NINE_IN_TEN * READING_SD_DEG * sqrt(1.5)
    if open_deg <= doubt / 2.0:
        raise InputError(
            f"The middle came out {open_deg:.2g} degrees more open than the ends: within what "
            "reading an angle leaves, so no deflection follows.",
            "middle_deg",
            "Take thicker strips, as long as a fifth of the bed, and measure each twice.",
        )
    low, high = max(open_deg - doubt, 0.0), open_deg + doubt
    basis = "three strips along the bed"
    return Estimate(
        low * per_degree, open_deg * per_degree, high * per_degree, "your test bends", basis
    )


def _middle_over_ends(place: float) -> float:
    """How much more the middle sinks under a point force than a place [S from one end] does under
    the same, over the deflection at that force along the whole beam."""
    share, flat = SHEAR_SHARES[1], place * (1.0 - place)
    bent = 384.0 / 5.0 * (1.0 / 48.0 - flat**2 / 3.0)
    return (1.0 - share) * bent + share * 8.0 * (0.25 - flat)


def _need_within(length_mm: float, span_mm: float) -> None:
    if not 0.0 <= length_mm <= span_mm:
        raise InputError(
            "{given_mm} is not within {span_mm}.",
            "length_mm",
            "Give a shorter one.",
            {"given_mm": length_mm, "span_mm": span_mm},
        )


def _need_apart(strip_length_mm: float, end_mm: float, span_mm: float) -> None:
    if strip_length_mm > MOST_STRIP_SHARE * span_mm:
        raise InputError(
            "The strips are too long for this.",
            "strip_length_mm",
            "Take strips of {most_mm} or less.",
            {"most_mm": MOST_STRIP_SHARE * span_mm},
        )
    if end_mm > MOST_STRIP_SHARE * span_mm:
        raise InputError(
            "Left and right are too near the middle to tell it from them.",
            "end_mm",
            "Bend them within {most_mm} of the bed's ends.",
            {"most_mm": MOST_STRIP_SHARE * span_mm},
        )
