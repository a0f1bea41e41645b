"""The bend model over its whole domain: no gaps, no jumps, no silent answers."""

from __future__ import annotations

import warnings

import numpy as np
import pytest
from hypothesis import HealthCheck, example, given, settings
from hypothesis import strategies as st

from flangebook.bending.errors import InputError, RangeError
from flangebook.bending.prediction.modelled_bend import LEAST_RADIUS_OVER_T
from flangebook.bending.sheet_model.bands import banded_bend
from flangebook.bending.sheet_model.moment_curvature import sheet_law
from flangebook.bending.sheet_model.stroke import set_bend, stroke
from flangebook.bending.sheet_model.tools import tools

LOW_CARBON = (207_000, 200, 530, 0.22)


@st.composite
def bends(draw):
    """Any sheet on any tools that the model takes."""
    thickness = draw(st.floats(0.4, 12.0))
    v = thickness * draw(st.floats(4.0, 40.0))
    n = draw(st.one_of(st.just(0.0), st.floats(0.001, 0.6)))
    modulus = draw(st.floats(40_000, 220_000))
    # Any K up to 3 % of E, any Y under it whose curve can start there: e0 = (Y/K)^(1/n).
    k = modulus * draw(st.floats(0.0005, 0.03))
    yield_mpa = max(k * 10.0 ** (-n * draw(st.floats(0.3, 8.9))), 0.05 * k) if n else k
    law = sheet_law(modulus, yield_mpa, k, n, thickness, draw(st.floats(0.0, 0.45)))
    die = tools(
        v,
        draw(st.floats(20, 150)),
        v / 2.0 * draw(st.floats(0.0, 1.0)),
        v / 2.0 * draw(st.floats(0.0, 1.0)),
        draw(st.one_of(st.just(0.0), st.floats(0.001, 0.3))),
    )
    return law, die


EXAMPLES = settings(max_examples=150, deadline=None, suppress_health_check=[HealthCheck.too_slow])


@EXAMPLES
@given(bends())
def test_stroke_is_finite_monotone_and_without_jumps(bend):
    law, die = bend
    with warnings.catch_warnings():
        warnings.simplefilter("error")
        found = stroke(law, die, 40)
    for values in (found.depth_mm, found.force_n_per_mm, found.springback_deg, found.work_n):
        assert np.all(np.isfinite(values))
    assert np.all(found.force_n_per_mm > 0.0)
    assert np.all(found.springback_deg > 0.0)
    assert not np.any(np.isnan(found.loaded_radius_mm))
    assert not np.any(np.isnan(found.released_radius_mm))
    assert np.all(found.loaded_radius_mm >= 0.0)
    assert np.all(np.diff(found.depth_mm) > 0.0)
    assert np.all(np.diff(found.released_angle_deg) < 1e-6)
    assert np.all(np.diff(found.work_n) > 0.0)


# Nearly elastic strip on a blunt tip: it wraps the tip and springs back by 67 degrees of 78.
SPRINGY = sheet_law(40_000, 703, 703, 0.0, 1.0, 0.0), tools(34, 80, 17, 14.3)


@EXAMPLES
@example(SPRINGY, 0.59)
@given(bends(), st.floats(0.1, 0.9))
def test_small_step_of_the_angle_is_a_small_step_of_all(bend, share):
    """Continuity: a hundredth of a degree changes nothing by more than a part in a hundred."""
    law, die = bend
    found = stroke(law, die)  # the fan that set_bend itself looks through
    sharpest = float(found.released_angle_deg[-1])
    wanted = sharpest + 1.0 + share * (174.0 - sharpest)
    if wanted > 174.5:
        return
    one, other = set_bend(law, die, wanted), set_bend(law, die, wanted + 0.01)
    assert one.depth_mm > other.depth_mm
    assert one.depth_mm == pytest.approx(other.depth_mm, rel=0.01, abs=1e-4 * die.v_opening_mm)
    assert one.peak_force_n_per_mm == pytest.approx(other.peak_force_n_per_mm, rel=0.01)
    assert one.springback_deg == pytest.approx(other.springback_deg, rel=0.01, abs=0.02)
    assert one.released_radius_mm >= 0.0
    # Near no radius at all the model is not used, so there its share of nothing says nothing.
    near_nothing = 0.02 * LEAST_RADIUS_OVER_T * law.thickness_mm
    assert one.released_radius_mm == pytest.approx(
        other.released_radius_mm, rel=0.02, abs=near_nothing
    )


def test_a_springy_strip_is_rounder_after_release_than_under_load():
    """What it came off a blunt tip under load goes back with the curvature of its nose."""
    found = stroke(*SPRINGY)
    assert found.wrap_deg[-1] > 90.0
    assert np.all(found.released_radius_mm > found.loaded_radius_mm)


@EXAMPLES
@given(bends(), st.floats(20.0, 175.0))
def test_setting_springs_back_to_the_wanted_angle_or_says_why_not(bend, wanted):
    law, die = bend
    if stroke(law, die).released_angle_deg[-1] > wanted:
        with pytest.raises(RangeError, match="at the sharpest") as refusal:
            set_bend(law, die, wanted)
        assert refusal.value.where == "included_angle_deg"
        return
    found = set_bend(law, die, wanted)
    assert found.set_angle_deg + found.springback_deg == pytest.approx(wanted)
    dense = stroke(law, die, 240)
    at = np.interp(-wanted, -dense.released_angle_deg, dense.depth_mm)
    assert found.depth_mm == pytest.approx(at, abs=0.004 * die.v_opening_mm)
    assert found.peak_force_n_per_mm >= found.force_n_per_mm * (1.0 - 1e-9)


@pytest.mark.parametrize("n", [1e-4, 1e-3, 0.01])
def test_small_n_runs_into_no_hardening(n):
    die = tools(16, 80, 2.4, 1.0)
    soft = set_bend(sheet_law(207_000, 200, 200 * 1.2**n, n, 2.0), die, 90)
    ideal = set_bend(sheet_law(207_000, 200, 0.0, 0.0, 2.0), die, 90)
    assert soft.peak_force_n_per_mm == pytest.approx(ideal.peak_force_n_per_mm, rel=3 * n + 1e-3)
    assert soft.depth_mm == pytest.approx(ideal.depth_mm, rel=5 * n + 1e-3)


@pytest.mark.parametrize(
    ("change", "where", "words"),
    [
        ({"shoulder_radius_mm": 9.0}, "shoulder_radius_mm", "wider than the die's opening"),
        ({"punch_radius_mm": 8.5}, "punch_radius_mm", "does not go into an opening"),
        ({"punch_radius_mm": -1.0}, "punch_radius_mm", "cannot be used"),
        ({"friction": 0.9}, "friction", "friction coefficient"),
        ({"die_angle_deg": 180.0}, "angle_deg", "no V"),
        ({"v_opening_mm": float("nan")}, "v_opening_mm", "cannot be used"),
    ],
)
def test_tools_that_cannot_be_are_refused(change, where, words):
    given_tools = {
        "v_opening_mm": 16.0,
        "die_angle_deg": 80.0,
        "shoulder_radius_mm": 2.0,
        "punch_radius_mm": 1.0,
        **change,
    }
    with pytest.raises(InputError, match=words) as refusal:
        tools(**given_tools)
    assert refusal.value.where == where


@pytest.mark.parametrize(
    ("figures", "where", "words"),
    [
        ((207_000, 200, 150, 0.2), "hardening_k_mpa", "is said to harden"),
        ((207_000, 200, 530, 0.001), "hardening_k_mpa", "too far above the yield strength"),
        ((207_000, 200, 530, 1.5), "hardening_n", "no sheet metal"),
        ((207_000, 200, 530, -0.1), "hardening_n", "cannot be used"),
        ((207, 200, 530, 0.2), "yield_mpa", "no sheet metal"),
        ((207_000, 0, 530, 0.2), "yield_mpa", "cannot be used"),
    ],
)
def test_metals_that_cannot_be_are_refused(figures, where, words):
    with pytest.raises(InputError, match=words) as refusal:
        sheet_law(*figures, 2.0)
    assert refusal.value.where == where


@pytest.mark.parametrize(("v", "words"), [(7.0, "3.5 t"), (90.0, "45 t")])
def test_openings_outside_the_model_are_refused(v, words):
    with pytest.raises(RangeError, match=words):
        set_bend(sheet_law(*LOW_CARBON, 2.0), tools(v, 80, 1.0, 1.0), 90)


@pytest.mark.parametrize("angle", [176.0, 180.0, 0.0, -5.0, float("nan")])
def test_angles_outside_the_model_are_refused(angle):
    with pytest.raises(RangeError, match="175"):
        set_bend(sheet_law(*LOW_CARBON, 2.0), tools(16, 80, 1.0, 1.0), angle)


def test_angle_sharper_than_the_tools_allow_says_how_far_they_go():
    with pytest.raises(RangeError, match="at the sharpest, not to 60"):
        set_bend(sheet_law(*LOW_CARBON, 2.0), tools(16, 86, 1.0, 1.0), 60)


@pytest.fixture(scope="module")
def metals():
    import json
    from dataclasses import fields
    from importlib.resources import files

    from flangebook.bending.part.metals import Figure, Metal

    text = files("flangebook.shop").joinpath("starter_metals.json").read_text("utf-8")
    known = {f.name for f in fields(Metal)}
    return [
        Metal(
            **{
                name: Figure(**value) if isinstance(value, dict) else value
                for name, value in row.items()
                if name in known
            }
        )
        for row in json.loads(text)["metals"]
    ]


@pytest.mark.parametrize("angle", [170, 135, 90])
@pytest.mark.parametrize(("thickness", "v"), [(0.8, 8), (2.0, 16), (6.0, 50)])
def test_bands_hold_the_nominal_for_every_shipped_metal(metals, thickness, v, angle):
    die = tools(v, 80, 0.12 * v, 0.5 * thickness, 0.1)
    for metal in metals:
        found = banded_bend(metal, thickness, die, angle)
        for band in (found.force_n_per_mm, found.springback_deg, found.depth_mm):
            assert 0.0 < band.low < band.nominal < band.high
        assert found.set_angle_deg.nominal == pytest.approx(angle - found.springback_deg.nominal)


def test_bands_widen_with_the_tolerance(metals):
    die = tools(16, 80, 2.4, 1.0, 0.1)
    tight = banded_bend(metals[0], 2.0, die, 90, thickness_tolerance_mm=0.0)
    loose = banded_bend(metals[0], 2.0, die, 90, thickness_tolerance_mm=0.2)
    for name in ("force_n_per_mm", "springback_deg", "depth_mm"):
        narrow, wide = getattr(tight, name), getattr(loose, name)
        assert wide.high - wide.low > narrow.high - narrow.low
    assert tight.nominal == loose.nominal
    with pytest.raises(InputError, match="no tolerance"):
        banded_bend(metals[0], 2.0, die, 90, thickness_tolerance_mm=1.5)


def test_rows_solved_together_are_the_same_as_alone(metals):
    """The bands solve many sheets as rows of one; a cause without spread moves nothing."""
    die = tools(16, 80, 2.4, 1.0, 0.1)
    found = banded_bend(metals[0], 2.0, die, 90, thickness_tolerance_mm=0.0)
    still = next(e for e in found.effects if e.cause == "thickness")
    assert still.force_n_per_mm == (0.0, 0.0)
    assert still.depth_mm == (0.0, 0.0)
