"""The blank as a DXF drawing: cut line and bend lines on their own layers."""

from __future__ import annotations

from flangebook.bending.blank import Blank


def blank_dxf(blank: Blank, title: str = "") -> str:
    """DXF text [mm]: layer CUT for the outline, BEND_UP and BEND_DOWN for the bend lines."""
    import io  # noqa: PLC0415

    import ezdxf  # noqa: PLC0415

    ezdxf.options.write_fixed_meta_data_for_testing = True
    doc = ezdxf.new("R2010", units=4)
    for name, colour in (("CUT", 7), ("BEND_UP", 5), ("BEND_DOWN", 1)):
        doc.layers.add(name, color=colour)
    space = doc.modelspace()
    length, width = blank.length_mm, blank.width_mm
    space.add_lwpolyline(
        [(0, 0), (length, 0), (length, width), (0, width)], close=True, dxfattribs={"layer": "CUT"}
    )
    for line in blank.bend_lines:
        layer = "BEND_UP" if line.direction == "up" else "BEND_DOWN"
        space.add_line((line.at_mm, 0), (line.at_mm, width), dxfattribs={"layer": layer})
    stream = io.StringIO()
    doc.write(stream)
    return stream.getvalue()
