"""FAA, Aviation Maintenance Technician Handbook: Airframe, vol. 1, ch. 4, bending a U-channel.

0.040 in 2024-T3, R 0.16 in, mould lines 1.00, 2.00 and 1.00 in, two square bends. Read at
https://fliphtml5.com/xvtk/vgpt (p. 230) and http://www.flight-mechanic.com/layout-and-forming-part-two/
and https://www.aircraftsystemstech.com/2017/06/making-straight-line-bends.html
The handbook's own total developed width was not read, so only its setback and flats are here.
"""

from __future__ import annotations

import pytest

from flangebook.bending.geometry.setback import setback_mm

RADIUS_IN, THICKNESS_IN = 0.16, 0.040


@pytest.mark.parametrize("dimension", ["din6935", "mould_line"])
def test_setback(dimension):
    """SB = K (R + T) with K 1 for 90 degrees: 0.2 in."""
    assert setback_mm(90, RADIUS_IN, THICKNESS_IN, dimension) == pytest.approx(0.2, abs=1e-9)


@pytest.mark.parametrize(("mould_line_in", "bends", "flat_in"), [(1.00, 1, 0.8), (2.00, 2, 1.6)])
def test_flats(mould_line_in, bends, flat_in):
    """Flat = MLD - SB for a side, MLD - 2 SB for the middle."""
    setback = setback_mm(90, RADIUS_IN, THICKNESS_IN)
    assert mould_line_in - bends * setback == pytest.approx(flat_in, abs=1e-9)
