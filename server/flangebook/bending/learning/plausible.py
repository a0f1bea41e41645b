"""Results that cannot be, and results that deserve a second look.

"stop": the numbers contradict each other or the tools; the result is kept and shown with these
words and teaches nothing. "caution": it counts, and somebody should measure again. The limits
are common practice, no source, unless geometry gives them.
"""

from __future__ import annotations

from collections.abc import Iterator

from flangebook.bending.checks import Check
from flangebook.bending.learning.readings import deduction_measured, k_factor_from_deduction
from flangebook.bending.learning.result import Result
from flangebook.bending.requirements import need

READING_DEG = 1.0  # how far an angle may be misread before the tools are called to witness
OTHER_SHEET = 1.5  # measured over ordered thickness, either way
OUT_OF_TOLERANCE = 1.12  # rolled sheet stays within this
MOST_SPRINGBACK_SHARE = 0.5  # of the loaded bend angle
USUAL_K = 0.55  # above the middle of the sheet there is no neutral line in a plain bend
FAR_FROM_WANTED_DEG = 5.0
MM_PER_INCH = 25.4

_MEASURE = "Measure again. If it was wrong, mark it wrong: it stays on record and no longer counts."

_MAY_BE_GIVEN = (
    "measured_deg", "loaded_deg", "set_angle_deg", "thickness_mm", "flat_length_mm",
    "flange_left_mm", "flange_right_mm", "radius_mm",
)  # fmt: skip


def check_numbers(result: Result) -> None:
    """Refuse numbers that are no sizes and angles that are no bends.

    Raises:
        InputError: naming the field.
    """
    given = {name: getattr(result, name) for name in _MAY_BE_GIVEN}
    if result.punch_depth_mm is not None:
        # A display may well read below zero; it must still be a number.
        given["punch_depth_mm"] = abs(result.punch_depth_mm)
    need(**{name: value for name, value in given.items() if value is not None})


def implausible(result: Result, expected_radius_mm: float | None = None) -> tuple[Check, ...]:
    """What is odd about a result by itself.

    Args:
        result: as it was entered.
        expected_radius_mm: inside radius [mm] to judge the lengths with if none was measured;
            None leaves that judgement out.

    Raises:
        InputError: as :func:`check_numbers`.
    """
    check_numbers(result)
    return (
        *_thickness(result),
        *_angle(result),
        *_springback(result),
        *_radius(result),
        *_lengths(result, result.radius_mm or expected_radius_mm),
    )


def _thickness(result: Result) -> Iterator[Check]:
    ordered, measured = result.set_up.case.thickness_mm, result.real_thickness_mm
    ratio = measured / ordered
    numbers = {"thickness_mm": measured, "ordered_mm": ordered}
    said = "The sheet measured {thickness_mm}, the card says {ordered_mm}"
    if abs(ratio * MM_PER_INCH - 1.0) < 0.12 or abs(ratio / MM_PER_INCH - 1.0) < 0.12:
        yield Check("stop", "trial-thickness-unit", f"{said}: inch and millimetre mixed up?",
                    "Enter the thickness with its unit.", numbers)  # fmt: skip
    elif not 1.0 / OTHER_SHEET <= ratio <= OTHER_SHEET:
        yield Check("stop", "trial-other-sheet", f"{said}: that is another sheet.",
                    "Look at the sheet's label and measure away from burrs and folds.",
                    numbers)  # fmt: skip
    elif not 1.0 / OUT_OF_TOLERANCE <= ratio <= OUT_OF_TOLERANCE:
        yield Check("caution", "trial-thickness-off", f"{said}, more than sheet usually varies.",
                    _MEASURE, numbers)  # fmt: skip


def _angle(result: Result) -> Iterator[Check]:
    case = result.set_up.case
    sharpest = max(case.die.angle_deg, result.set_up.punch_angle_deg or 0.0)
    measured, wanted = result.measured_deg, case.included_angle_deg
    for angle, words in ((result.loaded_deg, "under load"), (measured, "after release")):
        if angle is not None and angle < sharpest - READING_DEG:
            yield Check(
                "stop", "trial-sharper-than-tools",
                f"{{measured_deg}} {words} is sharper than the tools can bend: {{sharpest_deg}}.",
                "Check which tools were in, and that the angle between the flats was measured, "
                "not the angle bent through.",
                {"measured_deg": angle, "sharpest_deg": sharpest},
            )  # fmt: skip
            return
    off, other_way = abs(measured - wanted), abs(180.0 - measured - wanted)
    if off > FAR_FROM_WANTED_DEG and other_way < min(FAR_FROM_WANTED_DEG, off / 4.0):
        yield Check(
            "stop", "trial-angle-of-the-other-side",
            "{measured_deg} looks like the angle bent through; between the flats that would be "
            "{between_deg}.",
            "Enter the angle between the flats: flat is 180°, square is 90°.",
            {"measured_deg": measured, "between_deg": 180.0 - measured},
        )  # fmt: skip


def _springback(result: Result) -> Iterator[Check]:
    loaded = result.loaded_deg if result.loaded_deg is not None else result.set_angle_deg
    if loaded is None:
        return
    spring = result.measured_deg - loaded
    numbers = {"loaded_deg": loaded, "measured_deg": result.measured_deg}
    if spring > MOST_SPRINGBACK_SHARE * (180.0 - loaded):
        yield Check("stop", "trial-springs-back-too-far",
                    "From {loaded_deg} to {measured_deg} the bend would have lost more than half "
                    "of itself.", "Check both angles and which way they were measured.",
                    numbers)  # fmt: skip


def _radius(result: Result) -> Iterator[Check]:
    radius, case = result.radius_mm, result.set_up.case
    tip, v = case.punch_radius_mm, case.die.v_opening_mm
    if radius is None:
        return
    numbers = {"radius_mm": radius, "tip_mm": tip, "v_mm": v}
    if radius > v / 2.0:
        yield Check("stop", "trial-radius-wider-than-v",
                    "An inside radius of {radius_mm} does not fit into a V of {v_mm}.",
                    "Measure the inside, as a radius and not a diameter.", numbers)  # fmt: skip
    elif radius < 0.8 * tip or radius == 0.0:
        yield Check("caution", "trial-radius-under-tip",
                    "The inside radius measured {radius_mm}; the punch's tip is {tip_mm}.",
                    "Measure again; a crease at the tip reads sharper than it is.",
                    numbers)  # fmt: skip


def _lengths(result: Result, radius_mm: float | None) -> Iterator[Check]:
    given = (result.flat_length_mm, result.flange_left_mm, result.flange_right_mm)
    flat, left, right = given
    if flat is None or left is None or right is None:
        if any(g is not None for g in given):
            yield Check("caution", "trial-lengths-missing",
                        "Deduction and K-factor need the flat length and both flanges.",
                        "Measure the strip before the bend and both flanges after it.")  # fmt: skip
        return
    if radius_mm is None:
        return
    deducted = deduction_measured(flat, left, right)
    bent = (result.measured_deg, radius_mm, result.real_thickness_mm)
    k = k_factor_from_deduction(deducted, *bent, result.set_up.case.dimension)
    numbers = {"deduction_mm": deducted, "flat_mm": flat, "left_mm": left, "right_mm": right,
               "k_factor": k}  # fmt: skip
    if not 0.0 <= k <= 1.0:
        yield Check("stop", "trial-lengths-contradict",
                    "Flanges of {left_mm} and {right_mm} do not come from a strip of {flat_mm}: "
                    "the neutral line would lie outside the sheet (K {k_factor}).",
                    "Measure the flanges as the card has them (outside or inside) and the strip's "
                    "length across the bend.", numbers)  # fmt: skip
    elif k > USUAL_K:
        yield Check("caution", "trial-k-factor-high",
                    "The lengths amount to a K-factor of {k_factor}; a plain bend stays under "
                    "0.5.", _MEASURE, numbers)  # fmt: skip
