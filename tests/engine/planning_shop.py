"""An invented small shop for the planning tests: metals, press, crib and a few parts."""

from __future__ import annotations

from flangebook.bending.part.metals import Figure, Metal
from flangebook.bending.part.part import Bend, Part
from flangebook.bending.tools.tooling import Crib, Die, Holder, Place, Press, Punch


def _about(nominal: float, spread: float = 0.1) -> Figure:
    return Figure(nominal * (1 - spread), nominal, nominal * (1 + spread), "invented", "typical")


MILD = Metal(
    code="mild-steel-cr",
    name="Mild steel, cold rolled",
    youngs_modulus_mpa=_about(207000, 0.02),
    yield_mpa=Figure(180, 220, 280, "invented", "typical"),
    tensile_mpa=Figure(300, 380, 450, "invented", "typical"),
    density_kg_m3=_about(7850, 0.005),
    radius_over_v=Figure(0.125, 0.16, 0.17, "invented", "common practice"),
    springback_at_90_deg=Figure(0.5, 1.0, 1.7, "invented", "common practice"),
    hardening_k_mpa=_about(530),
    hardening_n=_about(0.22),
    min_radius_over_t_across=Figure(0.5, 0.5, 0.5, "invented", "from memory"),
    min_radius_over_t_with=Figure(1.0, 1.0, 1.0, "invented", "from memory"),
    gauge_family="steel",
)
STAINLESS = Metal(
    code="stainless-304",
    name="Stainless 304",
    youngs_modulus_mpa=_about(193000, 0.02),
    yield_mpa=Figure(215, 290, 350, "invented", "typical"),
    tensile_mpa=Figure(515, 620, 720, "invented", "typical"),
    density_kg_m3=_about(8000, 0.005),
    radius_over_v=Figure(0.18, 0.20, 0.22, "invented", "common practice"),
    springback_at_90_deg=Figure(2.0, 2.7, 3.5, "invented", "common practice"),
    gauge_family="stainless",
)
METALS = {m.code: m for m in (MILD, STAINLESS)}

PRESS = Press(
    name="Long press",
    force_kn=400.0,
    bed_length_mm=1600.0,
    between_frames_mm=1250.0,
    open_height_mm=380.0,
    stroke_mm=150.0,
    throat_mm=200.0,
    gauge_x_min_mm=5.0,
    gauge_x_max_mm=500.0,
    gauge_r_min_mm=-20.0,
    gauge_r_max_mm=120.0,
    finger_height_mm=12.0,
    finger_depth_mm=40.0,
    force_per_m_limit_kn_per_m=500.0,
    off_centre_mm=300.0,
    bending_speed_mm_s=8.0,
    holder="H1",
)

LENGTHS = (500.0, 300.0, 200.0, 100.0, 100.0, 50.0, 40.0, 30.0, 20.0, 15.0, 10.0)


def die(v: float, rating: float | None = 600.0, angle: float = 84.0) -> Die:
    return Die(
        code=f"V{v:g}-{angle:g}",
        name=f"V {v:g} mm, {angle:g}°",
        v_opening_mm=v,
        angle_deg=angle,
        shoulder_radius_mm=max(0.5, 0.1 * v),
        height_mm=60.0,
        width_mm=v + 24.0,
        rating_kn_per_m=rating,
        segments_mm=LENGTHS,
        place=Place("D", f"{v:g}"),
        condition="good",
    )


STRAIGHT = Punch(
    code="P1",
    name="Straight, 1 mm tip",
    angle_deg=84.0,
    tip_radius_mm=1.0,
    height_mm=100.0,
    body_width_mm=22.0,
    rating_kn_per_m=800.0,
    segments_mm=LENGTHS,
    place=Place("P", "1"),
    condition="good",
)
SHARP = Punch(
    code="P2",
    name="Acute, 1 mm tip",
    angle_deg=28.0,
    tip_radius_mm=1.0,
    height_mm=100.0,
    body_width_mm=22.0,
    rating_kn_per_m=500.0,
    segments_mm=LENGTHS,
    place=Place("P", "2"),
)
GOOSENECK = Punch(
    code="P3",
    name="Gooseneck, 1 mm tip",
    angle_deg=84.0,
    tip_radius_mm=1.0,
    height_mm=125.0,
    body_width_mm=26.0,
    rating_kn_per_m=400.0,
    segments_mm=LENGTHS,
    shape="gooseneck",
    neck_relief_mm=22.0,
    place=Place("P", "3"),
)
BLUNT = Punch(
    code="P4",
    name="Straight, 3 mm tip",
    angle_deg=84.0,
    tip_radius_mm=3.0,
    height_mm=100.0,
    body_width_mm=22.0,
    rating_kn_per_m=900.0,
    segments_mm=LENGTHS,
    place=Place("P", "4"),
)
HOLDER = Holder("H1", "Quick-change holder", 90.0, 45.0, 60.0, 700.0)

CRIB = Crib(
    punches=(STRAIGHT, SHARP, GOOSENECK, BLUNT),
    dies=(
        *(die(v) for v in (6.0, 8.0, 10.0, 12.0, 16.0, 20.0, 25.0, 32.0, 40.0)),
        die(12.0, 400.0, 30.0),
        die(16.0, None, 30.0),
    ),
    holders=(HOLDER,),
)


def part(flats: tuple[float, ...], *bends: Bend, **other: object) -> Part:
    """A part of 2 mm mild steel, 500 mm long, with the given flats and bends."""
    base: dict[str, object] = {
        "title": "Test part",
        "metal": MILD.code,
        "thickness_mm": 2.0,
        "bend_length_mm": 500.0,
    }
    return Part(**{**base, **other}, flats_mm=flats, bends=bends)  # type: ignore[arg-type]


UP = Bend(90.0, "up")
DOWN = Bend(90.0, "down")
ANGLE = part((40.0, 60.0), UP)
CHANNEL = part((30.0, 80.0, 30.0), UP, UP)
ZED = part((30.0, 80.0, 30.0), UP, DOWN)
HAT = part((25.0, 30.0, 60.0, 30.0, 25.0), DOWN, UP, UP, DOWN)
SIX = part((15.0, 25.0, 40.0, 120.0, 40.0, 25.0, 15.0), UP, UP, DOWN, DOWN, UP, UP)
