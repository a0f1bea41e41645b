"""What stands on a label, that it fits, and that SVG and PNG show the same."""

from __future__ import annotations

import io
import re
from typing import Any
from xml.etree import ElementTree

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from PIL import Image

from flangebook.bending.errors import InputError
from flangebook.labels.draw_png import label_png
from flangebook.labels.draw_svg import label_svg
from flangebook.labels.facts import facts_of_card
from flangebook.labels.label import SIZES, label
from flangebook.labels.marks import LEAST_SIZE, Frame, Label, QrMark, Sign, Text
from flangebook.labels.typeface import face, printable

from .cards import card, step, with_plan

ADDRESS = "HTTPS://SHOP.HOME.ARPA:8443/C/SHE7FA1"
SVG = "{http://www.w3.org/2000/svg}"


def made(base: dict[str, Any], size: str, units: str = "mm") -> Label:
    names = {"mild-steel-cr": "Mild steel, cold-rolled"}
    return label(facts_of_card(base, units, names), ADDRESS, size)  # type: ignore[arg-type]


def words(base: dict[str, Any], size: str, units: str = "mm") -> str:
    return " ".join(made(base, size, units).words)


def boxes(one: Label) -> list[tuple[float, float, float, float]]:
    found = []
    for mark in one.marks:
        match mark:
            case Text():
                found.append(mark.box)
            case QrMark():
                found.append((mark.x, mark.y, mark.x + mark.side, mark.y + mark.side))
            case Sign():
                found.append((mark.x, mark.y, mark.x + mark.side, mark.y + mark.side))
            case Frame():
                pass  # frames hold text on purpose
    return found


def assert_nothing_leaves_or_overlaps(one: Label) -> None:
    marks = boxes(one)
    for left, top, right, bottom in marks:
        assert left >= 0
        assert top >= 0
        assert right <= one.width + 1e-6
        assert bottom <= one.height + 1e-6
    for i, a in enumerate(marks):
        for b in marks[i + 1 :]:
            apart = a[2] <= b[0] + 1e-6 or b[2] <= a[0] + 1e-6 or a[3] <= b[1] + 1e-6
            assert apart or b[3] <= a[1] + 1e-6, (a, b)


@pytest.mark.parametrize("size", SIZES)
def test_the_essentials_stand_in_clear_type(size: str) -> None:
    text = words(card(), size)
    for essential in ("SHE-7FA1", "Shelf bracket,", "3 mm", "Mild steel", "V 25", "S85-1",
                      "141.6 × 220 mm", "Allow for 58 kN", "3"):  # fmt: skip
        assert essential in text


@pytest.mark.parametrize("size", SIZES)
@pytest.mark.parametrize(
    ("worst", "word", "lines"), [("stop", "STOP", 1), ("caution", "Caution", 3),
                                 ("unknown", "Unknown", 3)]
)  # fmt: skip
def test_a_finding_has_a_sign_of_its_own_beside_its_word(size, worst, word, lines) -> None:
    """Told apart by shape on black and white paper: octagon, open triangle, circle."""
    one = made(with_plan(card(), worst=worst), size)
    sign = next(m for m in one.marks if isinstance(m, Sign) and m.level == worst)
    (text,) = [m for m in one.marks if isinstance(m, Text) and word in m.words]
    assert text.words.endswith("read the card"), "not cut"
    assert 0.0 < text.x - (sign.x + sign.side) < 1.0
    assert sign.y < text.y < sign.y + 1.5 * sign.side
    assert len(sign.lines()) == lines
    root = ElementTree.fromstring(label_svg(one))
    assert root.find(f".//{SVG}path[@class='{worst}']") is not None
    corners = {"stop": 8, "caution": 3, "unknown": 40}
    outline = sign.lines()[0]
    assert outline[0] == pytest.approx(outline[-1]), "closed"
    assert len(outline) - 1 == corners[worst]


def test_the_warning_triangle_has_equal_sides() -> None:
    """ISO 3864-1: the warning sign is an equilateral triangle."""
    a, b, c, _ = Sign(0, 0, 24, "caution").lines()[0]
    sides = [((p[0] - q[0]) ** 2 + (p[1] - q[1]) ** 2) ** 0.5 for p, q in ((a, b), (b, c), (c, a))]
    assert max(sides) - min(sides) < 0.05


@pytest.mark.parametrize("size", SIZES)
def test_without_a_finding_there_is_no_sign_but_for_an_order_not_checked(size) -> None:
    plain = with_plan(card(), worst="ok", order={"proven": True})
    assert not [m for m in made(plain, size).marks if isinstance(m, Sign)]
    unchecked = with_plan(card(), worst="ok", order={"proven": False})
    (sign,) = [m for m in made(unchecked, size).marks if isinstance(m, Sign)]
    assert sign.level == "unknown"


@pytest.mark.parametrize("size", SIZES)
def test_the_force_to_allow_for_leads_and_is_never_rounded_down(size: str) -> None:
    """The greatest of the steps: a press set by the label must bend them all."""
    two = with_plan(card(2), steps=[step(1), step(2, force_kn=80.0, force_kn_high=120.2)])
    one = made(two, size)
    (lead,) = [m for m in one.marks if isinstance(m, Text) and "Allow for" in m.words]
    assert "Allow for 121 kN" in lead.words
    beside = [m for m in one.marks if isinstance(m, Text) and m.words == "expected 80 kN"]
    assert len(beside) == (1 if size == "100x50" else 0)
    assert all(m.size < lead.size and not m.bold for m in beside)
    assert "Allow for 13.6 tons" in words(two, size, "inch")


@pytest.mark.parametrize("size", SIZES)
def test_a_card_without_a_known_force_shows_none(size: str) -> None:
    """Kept by an early release, or no tools: the bends are named instead, no force is made up."""
    unknown = with_plan(card(), steps=[step(1, force_kn=None, force_kn_high=None)])
    assert "Allow" not in words(unknown, size)
    assert "1 bend" in words(unknown, size)


@pytest.mark.parametrize("size", SIZES)
def test_the_code_is_large_enough_to_type_from_at_arm_s_length(size: str) -> None:
    """Capitals of a two hundredth of the distance (common practice, no source), here 0.65 m."""
    (code,) = (m for m in made(card(), size).marks if isinstance(m, Text) and m.words == "SHE-7FA1")
    bold = face(True)
    capital = bold.font["glyf"][bold.glyphs["H"]].yMax / bold.units_per_em
    assert code.size * capital >= 650 / 200
    assert code.bold


@pytest.mark.parametrize("size", SIZES)
def test_lengths_in_inches_for_who_wants_them(size: str) -> None:
    text = words(card(), size, "inch")
    assert "0.118 in" in text
    assert "5.576 × 8.661 in" in text
    assert "mm" not in text


def test_the_large_one_has_a_line_for_each_step() -> None:
    text = made(card(steps=3), "100x50").words
    assert [w for w in text if re.match(r"\d+ 90° up$", w)] == ["1 90° up", "2 90° up", "3 90° up"]
    assert text.count("set 88.6°") == 3
    assert text.count("X 57.3") == 3


def test_what_was_learnt_at_the_press_goes_before_the_plan() -> None:
    learnt = card(settings=[{"step": 1, "set_angle_deg": 87.4}])
    assert "set 87.4°" in words(learnt, "100x50")
    assert "88.6" not in words(learnt, "100x50")


def test_a_setting_beyond_the_limits_is_not_printed() -> None:
    learnt = card(settings=[{"step": 1, "set_angle_deg": 58.0}])
    assert "no setting" in words(learnt, "100x50")
    assert "58°" not in words(learnt, "100x50")
    assert "set 58" not in words(learnt, "100x50")


def test_steps_that_do_not_fit_are_counted() -> None:
    text = made(card(steps=30), "100x50").words
    shown = sum(1 for w in text if w.startswith("set "))
    assert 0 < shown < 30
    assert f"and {30 - shown} more: open the card" in text


def test_tools_stand_once_when_they_are_the_same_and_per_step_when_not() -> None:
    same = made(card(steps=2), "100x50").words
    assert same.count("V 25 · S85-1") == 1
    mixed = with_plan(card(steps=2), steps=[step(1), step(2, v_opening_mm=16.0)])
    text = made(mixed, "100x50").words
    assert "V 25 · S85-1 / V 16 · S85-1" in text
    assert "V25 S85-1" in text
    assert "V16 S85-1" in text


@pytest.mark.parametrize(
    ("worst", "says"),
    [("stop", "STOP"), ("caution", "Caution"), ("unknown", "Unknown: read the card")],
)
@pytest.mark.parametrize("size", SIZES)
def test_a_finding_is_on_the_label_as_a_word(size: str, worst: str, says: str) -> None:
    assert says in words(with_plan(card(), worst=worst), size)


@pytest.mark.parametrize("size", SIZES)
def test_an_order_that_is_not_clear_on_paper_is_said(size: str) -> None:
    assert "Clearance not checked" in words(card(), size)
    clear = with_plan(card(), order={"proven": True})
    assert "Clearance" not in words(clear, size)


@pytest.mark.parametrize("size", SIZES)
def test_a_plan_without_tools_is_printed_as_such(size: str) -> None:
    bare = step(1, v_opening_mm=None, punch=None, set_angle_deg=None, gauge_x_mm=None)
    text = words(with_plan(card(), steps=[bare], worst="stop"), size)
    assert "no die · no punch" in text
    assert "STOP" in text
    assert "None" not in text


def test_pressing_a_hem_flat_has_no_angle_and_no_gauge_to_set() -> None:
    flat = step(2, operation="hem flatten", v_opening_mm=None, punch=None, set_angle_deg=None,
                gauge_x_mm=None, included_angle_deg=0.0)  # fmt: skip
    hem = with_plan(card(2), steps=[step(1, operation="hem pre-bend"), flat])
    text = made(hem, "100x50").words
    assert "1 90° up pre-bend" in text
    assert "2 flatten the hem" in text
    assert "V 25 · S85-1" in text
    assert not any("?" in words or "no die" in words for words in text)


def test_a_metal_that_is_not_in_the_shop_is_shown_by_its_code() -> None:
    gone = card()
    gone["part"]["metal"] = "gone-metal"
    assert "gone-metal" in words(gone, "50x25")


@pytest.mark.parametrize("size", SIZES)
@pytest.mark.parametrize(
    "title", ["<script>alert(1)</script> & 'x' \"y\" ]]>", "]]></svg>", "&amp;", "a\0b\x1bc"]
)
def test_markup_in_a_title_is_only_text(size: str, title: str) -> None:
    svg = label_svg(made(card(title=title), size))
    root = ElementTree.fromstring(svg)
    tags = {element.tag.removeprefix(SVG) for element in root.iter()}
    assert tags <= {"svg", "title", "desc", "defs", "path", "g", "use", "rect"}
    described = root.findtext(f"{SVG}title") or ""
    assert described.endswith(printable(title))


def test_accents_and_signs_of_the_trade_are_in_the_typeface() -> None:
    for bold in (False, True):
        for character in "×°øØÄéñçŁő²½–—·±→":
            assert character in face(bold).advances, character


def test_what_the_typeface_lacks_becomes_a_box_not_a_gap() -> None:
    assert printable("Halter 棚 1") == "Halter □ 1"


def test_svg_and_png_show_the_same() -> None:
    """The PNG's ink lies where the layout, from which the SVG is written too, has text."""
    one = made(card(steps=3, title="Wide WWW and low ggg"), "100x50")
    image = Image.open(io.BytesIO(label_png(one, 300)))
    scale = 300 / 25.4
    for mark in one.marks:
        if isinstance(mark, Text):
            left, top, right, bottom = (round(v * scale) for v in mark.box)
            # The end of the last letter is where the widths of the layout say.
            last = mark.words[-1]
            start = round((mark.box[2] - face(mark.bold).advances[last] * mark.size) * scale)
            assert image.crop((start, top, right, bottom)).getextrema()[0] < 128, mark.words
            assert image.crop((left, top, start + 1, bottom)).getextrema()[0] < 128, mark.words
    uses = label_svg(one).count("<use ")
    assert uses == sum(len(w.replace(" ", "")) for w in one.words)


@pytest.mark.parametrize(("size", "pixels"), [("50x25", (591, 295)), ("100x50", (1181, 591))])
def test_the_png_has_the_size_and_resolution_asked_for(size: str, pixels: tuple[int, int]) -> None:
    image = Image.open(io.BytesIO(label_png(made(card(), size), 300)))
    assert image.size == pixels
    assert image.info["dpi"] == pytest.approx((300, 300), abs=0.1)


@pytest.mark.parametrize("dpi", [0, -300, 71, 601, 100_000])
def test_a_resolution_that_cannot_be_drawn_is_refused(dpi: int) -> None:
    with pytest.raises(InputError, match="dots per inch"):
        label_png(made(card(), "50x25"), dpi)


def test_another_size_is_refused_with_the_sizes_there_are() -> None:
    with pytest.raises(InputError, match="50x25, 100x50"):
        made(card(), "10x10")


LENGTH = st.floats(0.1, 20_000)
TITLE = st.text(max_size=120) | st.text("W棚 mgÅ", max_size=120)


@settings(max_examples=60, deadline=None)
@given(
    size=st.sampled_from(SIZES),
    units=st.sampled_from(["mm", "inch"]),
    title=TITLE,
    metal=TITLE,
    thickness=st.floats(0.1, 25),
    blank=LENGTH,
    length=LENGTH,
    worst=st.sampled_from(["ok", "unknown", "caution", "stop"]),
    count=st.integers(0, 40),
    punch=st.text(min_size=1, max_size=40) | st.none(),
    differ=st.booleans(),
    operation=st.sampled_from(["bend", "hem pre-bend", "hem flatten", "step bend"]),
    gauge=LENGTH | st.none(),
    angle=st.floats(0.1, 179.9) | st.none(),
    force=st.floats(0.01, 99_999) | st.none(),
)
def test_whatever_the_card_says_nothing_leaves_its_box_and_no_number_is_cut(
    size: str, units: str, title: str, metal: str, thickness: float, blank: float,
    length: float, worst: str, count: int, punch: str | None, differ: bool, operation: str,
    gauge: float | None, angle: float | None, force: float | None,
) -> None:  # fmt: skip
    steps = [
        step(n, punch=punch, operation=operation, gauge_x_mm=gauge, set_angle_deg=angle,
             force_kn=force, force_kn_high=force and 1.4 * force,
             turn_over=True, turn_end=True, v_opening_mm=6.0 + (n % 3 if differ else 0))
        for n in range(1, count + 1)
    ]  # fmt: skip
    base = card(count, title=title)
    base["part"] |= {"thickness_mm": thickness, "bend_length_mm": length}
    base["part"]["metal"] = metal
    plan = with_plan(base, blank_length_mm=blank, worst=worst, steps=steps)
    one = made(plan, size, units)
    assert_nothing_leaves_or_overlaps(one)
    for mark in one.marks:
        if isinstance(mark, Text):
            assert mark.size >= LEAST_SIZE - 1e-9, mark.words
    for words in one.words:
        if words.startswith(("Blank ", "set ", "no setting", "X ", "Allow ", "expected ")):
            assert "…" not in words
    if size == "100x50" and steps:
        shown = ("set ", "no setting", "1 flatten the hem", "and ")
        assert any(words.startswith(shown) for words in one.words)
