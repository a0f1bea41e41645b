"""The lines of a DXF drawing, in mm: what is drawn in its model space, arcs and curves as chords.

The file is read by ezdxf, with its repairs. Taken: LINE, ARC, CIRCLE, ELLIPSE, LWPOLYLINE,
POLYLINE, SPLINE, and blocks that are inserted; what lies on hidden layers and every other kind is
counted and left.
"""

from __future__ import annotations

import io
import logging
import math
import time
from collections import Counter
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from importlib import import_module
from itertools import islice
from typing import Any, Literal

from flangebook.bending.errors import OutlineError
from flangebook.bending.geometry.ring import Point, chords

Unit = Literal["mm", "cm", "m", "inch", "ft"]
MM_OF: dict[Unit, float] = {"mm": 1.0, "cm": 10.0, "m": 1000.0, "inch": 25.4, "ft": 304.8}
_UNIT_OF_CODE: dict[int, Unit] = {1: "inch", 2: "ft", 4: "mm", 5: "cm", 6: "m"}  # $INSUNITS
MOST_PIECES = 5_000
MOST_POINTS_OF_A_PIECE = 2_000
MOST_POINTS = 100_000
MOST_IN_FILE = 20_000  # entities, and what else begins with group code 0
MOST_MADE = 50_000  # entities and their points, by taking blocks and polylines apart
LONGEST_S = 10.0
ARC_ERROR_MM = 0.009  # chords of arcs
CURVE_ERROR_MM = 0.005  # of other curves, whose points may be thinned afterwards
MOST_MM = 100_000.0  # further off, chords would no longer be exact
FLAT_MM = 0.01
_DEEPEST = 8  # blocks within blocks
_LINES = ("LINE", "ARC", "CIRCLE", "ELLIPSE", "SPLINE")
_TAKEN = (*_LINES, "LWPOLYLINE", "POLYLINE", "INSERT")
_TEXTS = "TEXT MTEXT DIMENSION ATTRIB ATTDEF LEADER"


@dataclass(frozen=True, slots=True)
class DrawnLine:
    """One line or curve: its points [mm], the layer it lies on."""

    points: tuple[Point, ...]
    layer: str


@dataclass(frozen=True, slots=True)
class Drawing:
    """What a drawing holds. asked: the unit was asked for, not read from the file's header.
    left: how many of each kind were not looked at."""

    pieces: tuple[DrawnLine, ...]
    unit: Unit
    asked: bool
    left: tuple[tuple[str, int], ...]

    @property
    def layers(self) -> tuple[str, ...]:
        """Layers that lines were found on, those with most first."""
        return tuple(name for name, _ in Counter(p.layer for p in self.pieces).most_common(50))


def read_lines(data: bytes, unit: Unit | None = None) -> Drawing:
    """The lines of a DXF file.

    Args:
        data: the file.
        unit: what one unit of the drawing is; None: as its header says.

    Raises:
        OutlineError: the file is broken or binary, says no unit, is not flat, holds too much.
    """
    _looks_whole(data)
    logging.getLogger("ezdxf").setLevel(logging.CRITICAL)  # its repairs are no news of ours
    try:
        # Loaded on first use: it takes half a second that no other answer should wait for.
        document, _ = import_module("ezdxf.recover").read(io.BytesIO(data))
        said = _UNIT_OF_CODE.get(int(document.header.get("$INSUNITS", 0) or 0))
        chosen = unit or said
        if chosen is None:
            raise OutlineError(
                "The drawing does not say what unit it is in.", "units",
                "Say mm or inch.", code="units-unknown",
            )  # fmt: skip
        left: Counter[str] = Counter()
        pieces = tuple(_pieces(document, MM_OF[chosen], left))
    except OutlineError:
        raise
    except Exception as error:  # whatever a reader of foreign files may stumble over
        raise _broken("It cannot be read.") from error
    return Drawing(pieces, chosen, unit is not None, tuple(sorted(left.items())))


def _looks_whole(data: bytes) -> None:
    if b"Binary DXF" in data[:22]:
        raise _broken("It is a binary DXF.", "Save the drawing as a text DXF.")
    if b"ENTITIES" not in data:
        raise _broken("It has no drawing in it.")
    if not data.rstrip().endswith(b"EOF"):
        raise _broken("It stops before its end.")
    # Group code and value take turns, a line each. Some 0 are values, and a reader that mends
    # files may take one for the other: so there is a bound for both, too.
    zeros = [line.strip() == b"0" for line in data.splitlines()]
    if sum(zeros[::2]) > MOST_IN_FILE or sum(zeros) > 3 * MOST_IN_FILE:
        raise _too_many(MOST_IN_FILE, "entities")


def _broken(why: str, right: str = "Save the drawing again as DXF.") -> OutlineError:
    return OutlineError(f"This is no DXF file that can be used. {why}", "", right, code="broken")


def _too_many(most: int, what: str) -> OutlineError:
    return OutlineError(
        f"The drawing holds more than {most} {what}.", "",
        "Save the tool's outline by itself.", code="too-many-lines",
    )  # fmt: skip


def _pieces(document: Any, scale: float, left: Counter[str]) -> Iterator[DrawnLine]:
    hidden = {
        layer.dxf.name.casefold()
        for layer in document.layers
        if layer.is_off() or layer.is_frozen()
    }
    heights: list[float] = []
    points_left = MOST_POINTS
    ends_at = time.monotonic() + LONGEST_S
    for count, (entity, layer) in enumerate(_Apart(document, left).shown()):
        if count >= MOST_PIECES:
            raise _too_many(MOST_PIECES, "lines")
        if time.monotonic() > ends_at:
            raise OutlineError(
                f"The drawing takes longer than {LONGEST_S:g} s to read.", "",
                "Save the tool's outline by itself.", code="too-many-lines",
            )  # fmt: skip
        if layer.casefold() in hidden:
            left["on hidden layers"] += 1
            continue
        points = [(p.x * scale, p.y * scale, p.z * scale) for p in _points(entity, scale)]
        if len(points) > MOST_POINTS_OF_A_PIECE or not all(map(_near, points)):
            raise OutlineError(
                "A line of the drawing lies too far off or has too many points.", "",
                "Check the units, and draw the outline with lines and arcs.", code="too-large",
            )  # fmt: skip
        points_left -= len(points)
        if points_left < 0:
            raise _too_many(MOST_POINTS, "points")
        heights += [z for _, _, z in points]
        if max(heights, default=0.0) - min(heights, default=0.0) > FLAT_MM:
            raise OutlineError(
                "The drawing is not flat.", "",
                "Draw the tool's section in the plane.", code="not-flat",
            )  # fmt: skip
        if len(points) > 1:
            yield DrawnLine(tuple((x, y) for x, y, _ in points), layer)


def _near(point: tuple[float, float, float]) -> bool:
    return all(abs(c) <= MOST_MM for c in point)  # not a number is not near


class _Apart:
    """Takes a drawing's blocks and polylines apart, and counts what that makes before it is made.

    left: how many of each kind were not looked at, counted on.
    """

    def __init__(self, document: Any, left: Counter[str]) -> None:
        self._document = document
        self._left = left
        self._weights: dict[tuple[str, int], int] = {}
        self._made = 0
        left.update(_without_the_rest(document.modelspace()))
        self._left_of = {
            block.name.casefold(): _without_the_rest(block) for block in document.blocks
        }

    def shown(self) -> Iterator[tuple[Any, str]]:
        """Lines and curves, with their layers."""
        return self._shown(self._document.modelspace(), "0", _DEEPEST)

    def _shown(
        self, entities: Iterable[Any], layer: str, deepest: int
    ) -> Iterator[tuple[Any, str]]:
        """Layer "0" of a block is the block's."""
        for entity in entities:
            kind, own = entity.dxftype(), str(entity.dxf.layer)
            own = layer if own == "0" else own
            if kind in _LINES:
                yield entity, own
            elif kind == "LWPOLYLINE" or (kind == "POLYLINE" and _is_line(entity)):
                self._make(self._weight(entity, deepest))
                for part in entity.virtual_entities():
                    yield part, own
            elif kind == "INSERT" and deepest:
                self._make(self._weight(entity, deepest))
                for one in entity.multi_insert() if entity.mcount > 1 else (entity,):
                    self._left.update(self._left_of.get(entity.dxf.name.casefold(), {}))
                    yield from self._shown(one.virtual_entities(), own, deepest - 1)
            else:
                self._left[_called(kind)] += 1

    def _make(self, many: int) -> None:
        self._made += many
        if self._made > MOST_MADE:
            raise _too_many(MOST_MADE, "entities and points, with its blocks taken apart")

    def _weight(self, entity: Any, deepest: int) -> int:
        """How many entities and points one of them makes, with the blocks that are in it."""
        kind = entity.dxftype()
        if kind in ("LWPOLYLINE", "POLYLINE"):
            return 1 + len(entity)
        if kind == "SPLINE":
            return 1 + sum(map(len, (entity.control_points, entity.fit_points, entity.knots)))
        if kind == "INSERT" and deepest:
            # Its reader goes through all places, also where they fall on one another.
            places: int = max(1, entity.dxf.row_count) * max(1, entity.dxf.column_count)
            return places * self._weight_of_block(entity.dxf.name, deepest - 1)
        return 1

    def _weight_of_block(self, name: str, deepest: int) -> int:
        known = self._weights.get((name, deepest))
        if known is None:
            block = self._document.blocks.get(name) or ()
            known = 1 + sum(self._weight(entity, deepest) for entity in block)
            self._weights[name, deepest] = known
        return known


def _without_the_rest(block: Any) -> Counter[str]:
    """Leaves in a block what lines are made of; how many of each other kind there were."""
    left: Counter[str] = Counter()
    for entity in list(block):
        if entity.dxftype() not in _TAKEN:
            left[_called(entity.dxftype())] += 1
            entity.destroy()
    return left


def _called(kind: str) -> str:
    return "texts and dimensions" if kind in _TEXTS.split() else kind


def _is_line(polyline: Any) -> bool:
    return bool(polyline.is_2d_polyline or polyline.is_3d_polyline)


def _points(entity: Any, scale: float) -> Sequence[Any]:
    """Points of one line or curve, in the drawing's unit; chords within its error."""
    kind = entity.dxftype()
    if kind == "LINE":
        return (entity.dxf.start, entity.dxf.end)
    if kind in ("ARC", "CIRCLE"):
        return _arc(entity, kind, scale)
    far = 10.0 * MOST_MM / scale
    if kind == "ELLIPSE" and not entity.dxf.major_axis.magnitude < far:
        return (entity.dxf.major_axis * math.inf,) * 2
    if kind == "SPLINE":
        entity.control_points or entity.fit_points[0]  # one of them there is
        if not all(abs(c) < far for p in (*entity.control_points, *entity.fit_points) for c in p):
            return (entity.dxf.extrusion * math.inf,) * 2
    curve = entity.flattening(CURVE_ERROR_MM / scale)
    return list(islice(curve, MOST_POINTS_OF_A_PIECE + 1))


def _arc(entity: Any, kind: str, scale: float) -> Sequence[Any]:
    start, sweep = 0.0, 360.0
    if kind == "ARC":
        start = entity.dxf.start_angle
        sweep = (entity.dxf.end_angle - start) % 360.0 or 360.0
    count = chords(abs(entity.dxf.radius) * scale, sweep, ARC_ERROR_MM)
    count = min(count, MOST_POINTS_OF_A_PIECE + 1)
    return list(entity.vertices([start + sweep * i / count for i in range(count + 1)]))
