"""The blank as a DXF drawing: cut line and bend lines on their own layers."""

from __future__ import annotations

import io
from importlib import import_module
from typing import Any

from flangebook.bending.part.blank import Blank

_COLOURS = {"CUT": 7, "BEND_UP": 5, "BEND_DOWN": 6}


def blank_dxf(blank: Blank) -> str:
    """DXF text in mm: layer CUT for the outline, BEND_UP and BEND_DOWN for the bend lines.

    The blank's left end is x = 0, its bend lines run along y, its face that is up in the
    section is up. The same blank always gives the same text.
    """
    drawing = new_drawing()
    space = drawing.modelspace()
    length, width = round(blank.length_mm, 4), round(blank.width_mm, 4)
    corners = [(0.0, 0.0), (length, 0.0), (length, width), (0.0, width)]
    space.add_lwpolyline(corners, close=True, dxfattribs={"layer": "CUT"})
    for line in blank.bend_lines:
        layer = "BEND_UP" if line.direction == "up" else "BEND_DOWN"
        at = round(line.at_mm, 4)
        space.add_line((at, 0.0), (at, width), dxfattribs={"layer": layer})
    return written(drawing)


def new_drawing() -> Any:
    """An empty drawing in mm with the layers of a blank."""
    # Loaded on first use: it takes half a second that no other answer should wait for.
    ezdxf: Any = import_module("ezdxf")
    ezdxf.options.write_fixed_meta_data_for_testing = True  # no clock, no chance in the file
    drawing = ezdxf.new("R2010", units=4)
    for name, colour in _COLOURS.items():
        drawing.layers.add(name, color=colour)
    return drawing


def written(drawing: Any) -> str:
    """A drawing as DXF text."""
    stream = io.StringIO()
    drawing.write(stream)
    return stream.getvalue()
