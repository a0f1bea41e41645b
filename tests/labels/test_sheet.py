"""Sheets of labels: every place on the paper, none on another, the used ones left free."""

from __future__ import annotations

import io
import itertools

import pytest
import zxingcpp
from PIL import Image

from flangebook.bending.errors import InputError
from flangebook.labels.draw_png import page_png
from flangebook.labels.draw_svg import page_svg
from flangebook.labels.facts import facts_of_card
from flangebook.labels.label import SIZES, label
from flangebook.labels.marks import Label
from flangebook.labels.sheet import MARGIN_MM, PAPERS, Page, grid, sheets

from .cards import card


def labels(count: int, size: str = "50x25") -> list[Label]:
    facts = facts_of_card(card())
    return [label(facts, f"HTTP://127.0.0.1:8417/C/{n:07}", size) for n in range(count)]


def pages(made: list[Label], paper: str, skip: int = 0) -> list[Page]:
    """All sheets."""
    size = (made[0].width, made[0].height) if made else (50.0, 25.0)
    there = sheets(len(made), size, paper, skip)
    return [there.page(n, [made[i] for i in there.on(n)]) for n in range(there.count)]


def corners(page: Page) -> list[tuple[float, float]]:
    return [(p.x, p.y) for p in page.placed]


@pytest.mark.parametrize("size", SIZES)
@pytest.mark.parametrize("paper", PAPERS)
def test_labels_keep_to_the_margins_and_apart(paper: str, size: str) -> None:
    width, height = PAPERS[paper]
    (one,) = labels(1, size)
    places = grid(paper, (one.width, one.height))
    (page,) = pages(labels(places.places, size), paper)
    xs = sorted({x for x, _ in corners(page)})
    ys = sorted({y for _, y in corners(page)})
    assert len(xs) * len(ys) == places.places == len(set(corners(page)))
    assert xs[0] >= MARGIN_MM
    assert ys[0] >= MARGIN_MM
    assert xs[-1] + one.width <= width - MARGIN_MM + 1e-9
    assert ys[-1] + one.height <= height - MARGIN_MM + 1e-9
    assert all(b - a == pytest.approx(one.width) for a, b in itertools.pairwise(xs))
    # One more would not fit.
    assert (len(xs) + 1) * one.width > width - 2 * MARGIN_MM
    assert (len(ys) + 1) * one.height > height - 2 * MARGIN_MM


def test_used_places_are_skipped_on_the_first_sheet_only() -> None:
    places = grid("A4", (50.0, 25.0)).places
    made = pages(labels(places), "A4", skip=7)
    assert [len(s.placed) for s in made] == [places - 7, 7]
    assert corners(made[0])[0] == grid("A4", (50.0, 25.0)).corner(7)
    assert corners(made[1])[0] == grid("A4", (50.0, 25.0)).corner(0)
    assert [s.name for s in made] == ["Sheet 1 of 2", "Sheet 2 of 2"]


@pytest.mark.parametrize("skip", [-1, 44, 1000])
def test_skipping_more_than_a_sheet_is_refused(skip: int) -> None:
    with pytest.raises(InputError, match="0 to 43 on A4"):
        pages(labels(1), "A4", skip)


def test_no_labels_and_unknown_paper_are_refused() -> None:
    with pytest.raises(InputError, match="at least one"):
        pages([], "A4")
    with pytest.raises(InputError, match="A4, Letter"):
        pages(labels(1), "A3")


def test_cut_marks_stay_in_the_margins_and_meet_the_edges() -> None:
    (page,) = pages(labels(3), "Letter")
    lefts = {x for x, _ in corners(page)}
    ups = {x0 for x0, _, x1, _ in page.cut_marks if x0 == x1}
    assert lefts <= ups
    for x0, y0, x1, y1 in page.cut_marks:
        inside_x = min(x0, x1) >= MARGIN_MM and max(x0, x1) <= page.width - MARGIN_MM
        inside_y = min(y0, y1) >= MARGIN_MM and max(y0, y1) <= page.height - MARGIN_MM
        assert not (inside_x and inside_y)
        assert min(x0, x1, y0, y1) >= 0
        assert max(x0, x1) <= page.width
        assert max(y0, y1) <= page.height


@pytest.mark.parametrize("size", SIZES)
def test_every_label_on_the_printed_sheet_reads(size: str) -> None:
    (page,) = pages(labels(6, size), "A4", skip=2)
    image = Image.open(io.BytesIO(page_png(page, 203)))
    assert image.size == (1678, 2374)
    read = {code.text for code in zxingcpp.read_barcodes(image)}
    assert read == {f"HTTP://127.0.0.1:8417/C/{n:07}" for n in range(6)}


def test_the_svg_is_in_mm_on_the_paper_asked_for() -> None:
    (page,) = pages(labels(2), "Letter")
    svg = page_svg(page)
    assert 'width="215.9mm" height="279.4mm" viewBox="0 0 215.9 279.4"' in svg
    for x, y in corners(page):
        assert f'translate({x:g} {y:g})"' in svg
