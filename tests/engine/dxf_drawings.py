"""DXF drawings for the tests, written by ezdxf or by hand."""

from __future__ import annotations

import io
from collections.abc import Callable
from typing import Any

import ezdxf

Draw = Callable[[Any], object]


def dxf(draw: Draw, units: int = 4, version: str = "R2010") -> bytes:
    """A file with what ``draw`` puts into the model space; units as $INSUNITS has them (4: mm)."""
    document: Any = ezdxf.new(version, units=units)  # type: ignore[attr-defined]
    draw(document.modelspace())
    stream = io.StringIO()
    document.write(stream)
    return stream.getvalue().encode()


def by_hand(*entities: str) -> bytes:
    """A file of the oldest kind, without a header: entities as tags with blanks between."""
    body = " ".join(entities).split()
    return "\n".join(
        ["0", "SECTION", "2", "ENTITIES", *body, "0", "ENDSEC", "0", "EOF", ""]
    ).encode()


def line(x1: float, y1: float, x2: float, y2: float) -> str:
    """A LINE for :func:`by_hand`."""
    return f"0 LINE 8 OUT 10 {x1} 20 {y1} 11 {x2} 21 {y2}"


DIE_CORNERS = [(100, 0), (160, 0), (160, 60), (138, 60), (130, 50), (122, 60), (100, 60)]


def die(space: Any) -> None:
    """A die 60 by 60 with a V of 16, drawn somewhere else."""
    space.add_lwpolyline(DIE_CORNERS, close=True)


def round_nosed_punch(space: Any, layer: str = "0") -> None:
    """A punch 20 wide, 100 high, its nose a half circle; lines and arc in no order."""
    own = {"layer": layer}
    space.add_line((60, 110), (60, 20), dxfattribs=own)
    space.add_arc((50, 20), 10, 180, 360, dxfattribs=own)
    space.add_line((40, 110), (60, 110), dxfattribs=own)
    space.add_line((40, 20), (40, 110), dxfattribs=own)
