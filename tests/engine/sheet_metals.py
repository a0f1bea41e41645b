"""Metals, dies and bends for the tests of the bending calculations, made to order."""

from __future__ import annotations

from hypothesis import strategies as st

from flangebook.bending.part.metals import Figure, Metal
from flangebook.bending.tools.tooling import Die, Holder, Press, Punch


def about(nominal: float, spread: float = 0.1) -> Figure:
    """A figure with an even band."""
    return Figure(nominal * (1 - spread), nominal, nominal * (1 + spread), "invented", "typical")


def metal(
    tensile_mpa: float = 400.0,
    radius_share: float = 0.16,
    springback_deg: float = 1.0,
    youngs_mpa: float = 207_000.0,
    **other: object,
) -> Metal:
    """A metal with the figures that matter to a test."""
    return Metal(
        code="test-metal",
        name="Test metal",
        youngs_modulus_mpa=about(youngs_mpa, 0.02),
        yield_mpa=about(0.6 * tensile_mpa),
        tensile_mpa=about(tensile_mpa),
        density_kg_m3=about(7850, 0.01),
        radius_over_v=about(radius_share),
        springback_at_90_deg=about(springback_deg, 0.4),
        **other,  # type: ignore[arg-type]
    )


def die(v_mm: float = 16.0, angle_deg: float = 86.0, shoulder_mm: float = 2.0, **other) -> Die:
    """A V die, with a rating unless one is given."""
    given = {"code": "V16", "rating_kn_per_m": 1000.0, "segments_mm": (1000.0,)} | other
    return Die(
        name="test die",
        v_opening_mm=v_mm,
        angle_deg=angle_deg,
        shoulder_radius_mm=shoulder_mm,
        height_mm=80.0,
        width_mm=60.0,
        **given,
    )


def punch(angle_deg: float = 86.0, tip_mm: float = 1.0, **other) -> Punch:
    """A straight punch, with a rating unless one is given."""
    given = {"code": "P1", "rating_kn_per_m": 1000.0, "segments_mm": (1000.0,)} | other
    return Punch(
        name="test punch",
        angle_deg=angle_deg,
        tip_radius_mm=tip_mm,
        height_mm=120.0,
        body_width_mm=20.0,
        **given,
    )


def holder(rating_kn_per_m: float | None = 1000.0) -> Holder:
    """A holder."""
    return Holder("H1", "test holder", 100.0, 30.0, 30.0, rating_kn_per_m)


def press(force_kn: float = 400.0, **other) -> Press:
    """A press whose limits are all on record unless the test takes one away."""
    given = {
        "force_per_m_limit_kn_per_m": 800.0,
        "off_centre_mm": 200.0,
        "bending_speed_mm_s": 10.0,
    } | other
    return Press(
        name="Test press",
        force_kn=force_kn,
        bed_length_mm=1600.0,
        between_frames_mm=1300.0,
        open_height_mm=350.0,
        stroke_mm=120.0,
        throat_mm=200.0,
        gauge_x_min_mm=5.0,
        gauge_x_max_mm=500.0,
        gauge_r_min_mm=-20.0,
        gauge_r_max_mm=100.0,
        finger_height_mm=20.0,
        finger_depth_mm=40.0,
        **given,
    )


thicknesses = st.floats(0.4, 12.0)
lengths = st.floats(10.0, 4000.0)
strengths = st.floats(80.0, 1200.0)
openings = st.floats(4.0, 250.0)
angles = st.floats(20.0, 175.0)
