"""Small files that would make a great deal when they are taken apart are refused before it is made.

Each would run for minutes, or for ever, if it were only counted afterwards.
"""

from __future__ import annotations

from typing import Any

import pytest
from dxf_drawings import by_hand, dxf, line

from flangebook.bending.errors import OutlineError
from flangebook.bending.geometry import dxf_lines
from flangebook.bending.geometry.dxf_lines import MOST_IN_FILE, MOST_PIECES, read_lines


def filled(space: Any, name: str, what: str) -> Any:
    """A block with one of something in it."""
    block = space.doc.blocks.new(name)
    if what == "line":
        block.add_line((0, 0), (1, 1))
    elif what == "point":
        block.add_point((0, 0))
    elif what == "text":
        block.add_text("x")
    return block


def grid(space: Any, name: str, columns: int, rows: int, apart: float = 1.0) -> None:
    """Insert a block in columns and rows."""
    spacing = {"column_count": columns, "row_count": rows, "column_spacing": apart,
               "row_spacing": apart}  # fmt: skip
    space.add_blockref(name, (0, 0), dxfattribs=spacing)


@pytest.mark.parametrize("what", ["line", "point", "text", "nothing"])
@pytest.mark.parametrize("apart", [1.0, 0.0])
def test_one_block_in_a_million_places(what: str, apart: float):
    def draw(space: Any) -> None:
        filled(space, "A", what)
        grid(space, "A", 3000, 3000, apart)

    refused(dxf(draw))


@pytest.mark.parametrize("what", ["line", "point", "text", "nothing"])
def test_ten_blocks_in_each_of_ten_in_each_of_ten(what: str):
    def draw(space: Any) -> None:
        filled(space, "B0", what)
        for n in range(1, 8):
            block = space.doc.blocks.new(f"B{n}")
            for i in range(10):
                block.add_blockref(f"B{n - 1}", (i, 0))
        space.add_blockref("B7", (0, 0))

    refused(dxf(draw))


def test_a_block_that_holds_itself_in_a_grid():
    def draw(space: Any) -> None:
        grid(filled(space, "A", "line"), "A", 20, 20)
        space.add_blockref("A", (0, 0))

    refused(dxf(draw))


def test_curves_of_many_points_in_many_places():
    def draw(space: Any) -> None:
        block = space.doc.blocks.new("A")
        block.add_spline([(i, i % 7) for i in range(5000)])
        block.add_lwpolyline([(i, i % 7, 0.0, 0.0, 1.5) for i in range(5000)])
        grid(space, "A", 60, 60)

    refused(dxf(draw))


def test_curves_that_need_many_chords_each():
    def draw(space: Any) -> None:
        for i in range(60):
            space.add_circle((0, 0), 6_000 + i)

    refused(dxf(draw), "points")


@pytest.mark.parametrize("tag", ["0 LINE", "0 -"])
def test_a_file_of_many_empty_entities(tag: str):
    refused(by_hand(*[tag] * (MOST_IN_FILE + 1)), f"{MOST_IN_FILE} entities")


def test_a_file_out_of_step_is_no_way_round_the_bound():
    out_of_step = by_hand(*["0 LINE"] * 3 * MOST_IN_FILE).replace(b"0\nSECTION", b"x\n0\nSECTION")
    refused(out_of_step, f"{MOST_IN_FILE} entities")


def test_what_takes_long_ends(monkeypatch: pytest.MonkeyPatch):
    monkeypatch.setattr(dxf_lines, "LONGEST_S", -1.0)
    refused(dxf(lambda space: space.add_line((0, 0), (9, 0))), "s to read")


@pytest.mark.slow
def test_what_is_within_the_bounds_is_read():
    def draw(space: Any) -> None:
        filled(space, "A", "line").add_text("beside it")
        grid(space, "a", 70, 71)
        space.add_text("in the drawing")

    drawing = read_lines(dxf(draw))
    assert len(drawing.pieces) == 70 * 71 <= MOST_PIECES
    assert dict(drawing.left) == {"texts and dimensions": 70 * 71 + 1}
    many = by_hand(*[line(0, i, 9, i) for i in range(MOST_PIECES)])
    assert len(read_lines(many, "mm").pieces) == MOST_PIECES


def refused(data: bytes, words: str = "more than") -> None:
    with pytest.raises(OutlineError, match=words) as told:
        read_lines(data, "mm")
    assert told.value.code == "too-many-lines"
