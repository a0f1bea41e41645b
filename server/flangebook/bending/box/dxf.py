"""The blank of a box as a DXF drawing: cut line and bend lines on their own layers."""

from __future__ import annotations

from flangebook.bending.box.blank import BoxBlank
from flangebook.bending.part.blank_dxf import new_drawing, written


def box_dxf(blank: BoxBlank) -> str:
    """DXF text in mm: layer CUT for the cut line, BEND_UP and BEND_DOWN for the bend lines.

    The inside of the box is up; the cut line is one closed polyline, its round reliefs true
    arcs. The same blank always gives the same text.
    """
    drawing = new_drawing()
    space = drawing.modelspace()
    corners = [(round(x, 4), round(y, 4), round(bulge, 9)) for x, y, bulge in blank.cut]
    space.add_lwpolyline(corners, format="xyb", close=True, dxfattribs={"layer": "CUT"})
    for line in blank.lines:
        layer = "BEND_UP" if line.direction == "up" else "BEND_DOWN"
        start = (round(line.x1_mm, 4), round(line.y1_mm, 4))
        end = (round(line.x2_mm, 4), round(line.y2_mm, 4))
        space.add_line(start, end, dxfattribs={"layer": layer})
    return written(drawing)
