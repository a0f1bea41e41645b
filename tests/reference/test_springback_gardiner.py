"""F. J. Gardiner, Transactions of the ASME 79 (1957), pp. 1-9: springback of bent sheet.

Ri/Rf = 4 (Ri Y/(E T))^3 - 3 (Ri Y/(E T)) + 1. The citation was read at
https://mej.aut.ac.ir/article_378.html; the formula in several public texts, among them
https://www.slideshare.net/slideshow/theory-of-bending/47063140 and
https://novasolver.jp/en/tools/spring-back.html (which takes the ratio for the angle too).
No printed numerical example could be read, so the formula is checked against the exact elastic,
perfectly plastic solution that it is, and against a tables book's springback factors.
"""

from __future__ import annotations

import pytest

from flangebook.bending.errors import RangeError
from flangebook.bending.handbook.springback import springback_gardiner, springback_ratio_gardiner


@pytest.mark.parametrize("x", [0.001, 0.05, 0.1, 0.25, 0.4, 0.499])
def test_equals_unloading_of_an_ideal_plastic_sheet(x):
    """Moment of the stress block over E I t^-3, integrated numerically, taken off elastically.

    With yield strain e_y and curvature 1/R, x = R e_y / T is the elastic half height over T.
    """
    slices = 200_000
    moment = 0.0
    for i in range(slices):
        y = (i + 0.5) / slices / 2.0  # from the middle, thickness 1
        moment += 2.0 * min(y, x) * y / slices / 2.0  # stress over E/R: elastic y, then capped
    unloaded = 1.0 - 12.0 * moment  # curvature left over curvature loaded
    ratio = springback_ratio_gardiner(x * 1000.0, 1000.0, 1.0, 1.0)
    assert ratio == pytest.approx(unloaded, abs=1e-9)


# German metal-trade tables book, https://de.scribd.com/document/401383818: springback factor
# k_R = bend angle after / bend angle in the tool = (r1 + s/2)/(r2 + s/2). The values were read;
# the heads of the columns, r2/s, are from memory. Deep-drawing steel DC04.
HEADS_FROM_MEMORY = (1, 1.6, 2.5, 4, 6.3, 10, 16, 25, 40, 63, 100)
DC04 = (0.99, 0.99, 0.99, 0.98, 0.97, 0.97, 0.96, 0.94, 0.91, 0.87, 0.83)
STAINLESS = (0.99, 0.98, 0.97, 0.95, 0.93, 0.89, 0.84, 0.76, 0.63)


def factor(yield_mpa, youngs_mpa, released_over_t):
    """Gardiner with the loaded neutral radius that the book's definition of k_R implies."""
    low, high = 0.0, 1.0
    for _ in range(60):  # k_R = f(k_R * (r2 + s/2)): falling in k_R, so one crossing
        middle = (low + high) / 2.0
        loaded = middle * (released_over_t + 0.5)
        if springback_ratio_gardiner(yield_mpa, youngs_mpa, 1.0, loaded) > middle:
            low = middle
        else:
            high = middle
    return (low + high) / 2.0


def from_head(least, printed):
    return [(h, k) for h, k in zip(HEADS_FROM_MEMORY, printed, strict=False) if h >= least]


@pytest.mark.parametrize(("head", "printed"), from_head(10, DC04))
def test_tables_book_factors_of_deep_drawing_steel(head, printed):
    """DC04 yields at 140 to 210 MPa: the printed factor lies between the two, to its rounding."""
    assert factor(210, 210_000, head) - 0.0051 <= printed <= factor(140, 210_000, head) + 0.0051


@pytest.mark.parametrize(("head", "printed"), from_head(1, DC04))
def test_tables_book_never_springs_less_than_gardiner(head, printed):
    """In tight bends sheet hardens and springs more than Gardiner says: a lower witness."""
    assert printed <= factor(140, 210_000, head) + 0.0051


@pytest.mark.parametrize(("head", "printed"), from_head(1.6, STAINLESS))
def test_tables_book_factors_of_stainless(head, printed):
    """X12CrNi18-8 springs as if it yielded at 700 to 1000 MPa: as hardened as its strength."""
    assert factor(1000, 200_000, head) - 0.0051 <= printed <= factor(700, 200_000, head) + 0.0051


def test_springs_flat_beyond_the_elastic_limit():
    with pytest.raises(RangeError, match="springs back flat"):
        springback_ratio_gardiner(200, 200_000, 1.0, 500)
    assert springback_ratio_gardiner(200, 200_000, 1.0, 499.999) == pytest.approx(0.0, abs=1e-9)


@pytest.mark.parametrize("included_angle_deg", [30, 90, 135])
def test_angle_opens_by_the_same_ratio(included_angle_deg):
    """A bend pressed to the loaded angle comes out at the wanted one."""
    sprung = springback_gardiner(300, 70_000, 1.0, 5.0, included_angle_deg)
    loaded_bend = 180 - included_angle_deg + sprung
    ratio = springback_ratio_gardiner(300, 70_000, 1.0, 5.0)
    assert loaded_bend * ratio == pytest.approx(180 - included_angle_deg)
