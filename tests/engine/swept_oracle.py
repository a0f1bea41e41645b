"""One step's whole motion by a general geometry library (shapely), many steps at a time.

Written from the equations of motion alone, for the compiled sweep to be held against. Tools
are polygons, the sheet is cut into straights and arcs, every distance is shapely's. The motion
is halved where a point could come nearer between two moments than at either, so that the least
distance is found to about a hundredth of a millimetre.

What is wanted of a piece of sheet:

- the straight sheet from the bend line to the first finished fold lies on the die (not looked
  at) and may touch the punch; from everything else it keeps the margin;
- the first finished fold and its flat, bent up, may touch the die;
- the part may touch itself;
- everything else keeps the margin from everything.

To touch is to run in by no more than TOUCH_MM; two pieces of sheet may each be run into by as
much. A *slack* is the distance beyond what is wanted.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, field, replace

import numpy as np
import shapely
from numpy.typing import NDArray

from flangebook.bending.clearance.problem import LEFT, RIGHT, Problem
from flangebook.bending.tools.outline import tool_stack
from flangebook.bending.tools.tooling import Die, Holder, Press, Punch

Array = NDArray[np.float64]

TOUCH_MM = 0.03
CAP_MM = 0.08
"""Slacks above this are not told apart, unless asked for."""
SURE_MM = 0.012
"""What may touch and, drawn in, is further apart than this touches at most."""
DEEP_MM = -0.08
"""Nor are slacks below this."""
FINE_MM = 0.003
FIRST, DEEPEST = 8, 9
NEAR_LINE_MM = 5.0
ARC_CHORDS = 32
ACTIVE = -1
"""The group of the arc of the bend being made."""

UPPER = ("punch", "holder", "ram")
LOWER = ("die", "bed", "floor")


@dataclass(frozen=True)
class Motion:
    """One bend's stroke: the sheet's middle line turns by theta on either side.

    radius: of the middle line. take: allowance at theta_max. depth = shift_x tan(theta) -
    reach (1/cos(theta) - 1), times scale.
    """

    theta: float
    radius: float
    take: float
    thickness: float
    shift_x: float
    reach: float
    scale: float

    def depth(self, theta: Array) -> Array:
        """Punch travel from first touch [mm]."""
        swing = self.shift_x * np.tan(theta) - self.reach * (1.0 / np.cos(theta) - 1.0)
        return np.asarray(swing * self.scale)


def motion_of(problem: Problem, bend: int, pair: int) -> Motion:
    """The motion that the equations give for a bend in a pair of tools."""
    theta, radius, take, depth = (float(v) for v in problem.strokes[bend, pair])
    centre, shoulder, _ = (float(v) for v in problem.die[pair])
    t = float(problem.thickness)
    made = Motion(theta, radius + t / 2.0, take, t, centre, radius + t + shoulder, 1.0)
    return replace(made, scale=depth / float(made.depth(np.array(theta))))


@dataclass(frozen=True)
class Piece:
    """A straight or an arc of a leg, in the leg's frame (bend line at 0, 0).

    group: 0 for the run, k for the k-th finished fold and its flat. ring: its outline.
    thin: its outline drawn in by TOUCH_MM where it may touch. resting: it may touch the die.
    """

    key: tuple[object, ...]
    group: int
    ring: Array
    thin: Array
    resting: bool


def leg(problem: Problem, bend: int, side: int, folds: Iterable[int]) -> list[Piece]:
    """The pieces of a leg with these bends finished, outwards from the bend line."""
    line = float(problem.at[bend])
    edge = line if side == LEFT else float(problem.length) - line
    half, sign = float(problem.thickness) / 2.0, math.copysign(1.0, problem.angle[bend])
    outwards = sorted(folds, key=lambda b: abs(problem.at[b] - line))
    x, y, heading, done = 0.0, 0.0, 0.0, 0.0
    pieces: list[Piece] = []
    before: tuple[int, ...] = ()
    turn = 0.0
    for group, fold in enumerate([*outwards, None]):
        until = edge
        if fold is not None:
            until = abs(float(problem.at[fold]) - line) - float(problem.allowance[fold]) / 2.0
        resting = group == 1 and turn > 0.0
        key = (bend, side, before, fold)
        length = until - done
        for k, (a, b) in enumerate(_parts(length, near_line=group == 0)):
            here = (x + a * math.cos(heading), y + a * math.sin(heading), heading)
            full, thin = (_straight(*here, b - a, half, d) for d in (0.0, TOUCH_MM))
            pieces.append(Piece((*key, k), group, full, thin, resting))
        x, y = x + length * math.cos(heading), y + length * math.sin(heading)
        if fold is None:
            break
        before = (*before, fold)
        turn = float(problem.angle[fold]) * sign
        inner = float(problem.radius[fold])
        centre = _centre(x, y, heading, turn, inner + half)
        resting = group == 0 and turn > 0.0
        full, thin = (
            _arc(centre, heading, turn, inner + d, inner + 2.0 * half - d) for d in (0.0, TOUCH_MM)
        )
        pieces.append(Piece((bend, side, before, "arc"), group + 1, full, thin, resting))
        heading += turn
        reach = math.copysign(inner + half, turn)
        x, y = centre[0] + reach * math.sin(heading), centre[1] - reach * math.cos(heading)
        done = until + float(problem.allowance[fold])
    return pieces


def _parts(length: float, *, near_line: bool) -> list[tuple[float, float]]:
    """The run in two: what is near the bend line hardly moves, and is looked at apart."""
    if near_line and length > NEAR_LINE_MM + 1.0:
        return [(0.0, NEAR_LINE_MM), (NEAR_LINE_MM, length)]
    return [(0.0, length)]


def _straight(x: float, y: float, heading: float, length: float, half: float, by: float) -> Array:
    along = np.array([math.cos(heading), math.sin(heading)])
    up = np.array([-along[1], along[0]]) * (half - by)
    first, last = np.array([x, y]) + by * along, np.array([x, y]) + (length - by) * along
    return np.array([first - up, last - up, last + up, first + up])


def _centre(x: float, y: float, heading: float, turn: float, middle: float) -> tuple[float, float]:
    reach = math.copysign(middle, turn)
    return x - reach * math.sin(heading), y + reach * math.cos(heading)


def _arc(
    centre: tuple[float, float], heading: float, turn: float, inner: float, outer: float
) -> Array:
    angles = heading + turn * np.linspace(0.0, 1.0, ARC_CHORDS + 1)
    away = math.copysign(1.0, turn) * np.stack([np.sin(angles), -np.cos(angles)], axis=-1)
    return np.concatenate([centre + away * outer, (centre + away * max(inner, 1e-9))[::-1]])


@dataclass(frozen=True)
class Query:
    """A piece against one tool through one motion.

    at_back: the leg is the one at the gauge. phase: "bend", "approach" (flat, the punch rises
    by ``rise``), "withdrawal" (bent, it rises by as far as it was down as well) or "sprung back"
    (the same, at ``let_go``). touch: it may touch.
    """

    piece: Piece
    motion: Motion
    at_back: bool
    tool: shapely.Polygon
    upper: bool
    wanted: float
    touch: bool
    phase: str = "bend"
    rise: float = 0.0
    name: str = ""
    let_go: float = 0.0


@dataclass
class Batch:
    """Many queries as arrays; rings all of one number of points."""

    rings: Array
    run: NDArray[np.bool_]
    mirror: Array
    upper: NDArray[np.bool_]
    tools: NDArray[np.object_]
    bounds: Array
    wanted: Array
    span: Array  # of the parameter: theta [rad], or rise [mm]
    fixed: Array  # theta of a rising punch; nan when theta is the parameter
    exact_within: float
    motion: dict[str, Array] = field(default_factory=dict)
    speed: Array = field(default_factory=lambda: np.empty(0))

    def at(self, which: NDArray[np.int64], u: Array) -> Array:
        """The rings of some queries, each at a moment, in their tool's frame."""
        rising = ~np.isnan(self.fixed[which])
        theta = np.where(rising, self.fixed[which], u)
        m = {name: values[which] for name, values in self.motion.items()}
        local = self.rings[which].copy()
        local[:, :, 0] -= (m["take"] * theta / m["theta"] / 2.0)[:, None]
        run = self.run[which]
        local[run, :, 0] = np.maximum(local[run, :, 0], 0.0)
        cos, sin = np.cos(theta)[:, None], np.sin(theta)[:, None]
        x = m["radius"][:, None] * sin + cos * local[:, :, 0] - sin * local[:, :, 1]
        y = m["radius"][:, None] * (1.0 - cos) + sin * local[:, :, 0] + cos * local[:, :, 1]
        depth = m["shift_x"] * np.tan(theta) - m["reach"] * (1.0 / np.cos(theta) - 1.0)
        up = -m["thickness"] / 2.0 + np.where(rising, -u, 0.0)
        up += np.where(self.upper[which], 0.0, m["thickness"] - depth * m["scale"])
        return np.stack([x * self.mirror[which][:, None], y + up[:, None]], axis=-1)

    def slack(self, which: NDArray[np.int64], u: Array) -> Array:
        """Distance beyond what is wanted; a lower bound of it where it is far."""
        rings, box = self.at(which, u), self.bounds[which]
        low, high = rings.min(axis=1), rings.max(axis=1)
        apart = np.maximum(np.maximum(box[:, :2] - high, low - box[:, 2:]), 0.0)
        found = np.hypot(apart[:, 0], apart[:, 1])
        near = np.nonzero(found < self.wanted[which] + self.exact_within)[0]
        exact = shapely.distance(shapely.polygons(rings[near]), self.tools[which[near]])
        found[near] = np.where(exact > 0.0, exact, -1.0)
        return np.asarray(found - self.wanted[which])


def batch_of(queries: Sequence[Query], cap_mm: float) -> Batch:
    """The queries as arrays."""
    rings = np.array([q.piece.thin if q.touch else q.piece.ring for q in queries])
    names = ("theta", "radius", "take", "thickness", "shift_x", "reach", "scale")
    motion = {n: np.array([getattr(q.motion, n) for q in queries], float) for n in names}
    bending = np.array([q.phase == "bend" for q in queries])
    theta = motion["theta"]
    upper = np.array([q.upper for q in queries])
    furthest = np.sqrt((rings**2).sum(axis=-1)).max(axis=1)
    sink = motion["shift_x"] / np.cos(theta) ** 2 * motion["scale"]
    turning = furthest + motion["radius"] + motion["take"] * (1.0 + 0.5 / theta)
    speed = turning + np.where(upper, 0.0, sink)
    held = {"withdrawal": lambda q: q.motion.theta, "sprung back": lambda q: q.let_go}
    fixed = [held[q.phase](q) if q.phase in held else 0.0 for q in queries]
    rises = [
        q.rise + float(q.motion.depth(np.array(at))) for q, at in zip(queries, fixed, strict=True)
    ]
    return Batch(
        rings=rings,
        run=np.array([q.piece.group == 0 for q in queries]),
        mirror=np.array([1.0 if q.at_back else -1.0 for q in queries]),
        upper=upper,
        tools=np.array([q.tool for q in queries]),
        bounds=np.array([q.tool.bounds for q in queries]),
        wanted=np.array([q.wanted for q in queries]),
        span=np.where(bending, theta, rises),
        fixed=np.where(bending, np.nan, fixed),
        exact_within=4.0 + cap_mm,
        motion=motion,
        speed=np.where(bending, speed, 1.0),
    )


def least_slacks(queries: Sequence[Query], cap_mm: float = CAP_MM) -> Array:
    """The least slack of each query through its motion, told apart from DEEP_MM to cap_mm."""
    found = np.full(len(queries), cap_mm)
    sizes: dict[int, list[int]] = {}
    for i, query in enumerate(queries):
        sizes.setdefault(len(query.piece.ring), []).append(i)
    for members in sizes.values():
        for first in range(0, len(members), 4000):
            some = members[first : first + 4000]
            found[some] = _least(batch_of([queries[i] for i in some], cap_mm), cap_mm)
    return found


def _least(batch: Batch, cap_mm: float) -> Array:
    """Halve the motion where something nearer may lie between two moments."""
    count = len(batch.span)
    which = np.repeat(np.arange(count), FIRST + 1)
    shares = np.tile(np.linspace(0.0, 1.0, FIRST + 1), count)
    slack = batch.slack(which, shares * batch.span[which]).reshape(count, FIRST + 1)
    best = np.minimum(slack.min(axis=1), cap_mm)
    which = np.repeat(np.arange(count), FIRST)
    low = np.tile(np.arange(FIRST) / FIRST, count)
    s_low, s_high = slack[:, :-1].ravel(), slack[:, 1:].ravel()
    width = 1.0 / FIRST
    for _ in range(DEEPEST):
        between = (s_low + s_high - batch.speed[which] * batch.span[which] * width) / 2.0
        goes_on = (between < best[which] - FINE_MM) & (best[which] > DEEP_MM)
        which, low = which[goes_on], low[goes_on]
        s_low, s_high = s_low[goes_on], s_high[goes_on]
        if not len(which):
            break
        width /= 2.0
        middle = batch.slack(which, (low + width) * batch.span[which])
        np.minimum.at(best, which, middle)
        which = np.concatenate([which, which])
        low = np.concatenate([low, low + width])
        s_low, s_high = np.concatenate([s_low, middle]), np.concatenate([middle, s_high])
    return best


@dataclass(frozen=True)
class Tools:
    """One pair of tools as polygons by name, the upper ones with the tip at (0, 0)."""

    upper: tuple[tuple[str, shapely.Polygon], ...]
    lower: tuple[tuple[str, shapely.Polygon], ...]


def tools_of(press: Press, holder: Holder | None, punch: Punch, die: Die) -> Tools:
    """The outlines as drawn, and the floor where its height is on record."""
    stack = tool_stack(press, holder, punch, die, 0.0)
    rings = {name: getattr(stack, name) for name in (*UPPER, "die", "bed")}
    if press.floor_below_die_mm is not None:
        top = -die.height_mm - press.floor_below_die_mm
        rings["floor"] = (
            (-5000.0, top - 1000.0),
            (5000.0, top - 1000.0),
            (5000.0, top),
            (-5000.0, top),
        )
    shapes = {name: shapely.Polygon(ring) for name, ring in rings.items() if ring}
    for shape in shapes.values():
        shapely.prepare(shape)
    upper, lower = ([(n, shapes[n]) for n in names if n in shapes] for names in (UPPER, LOWER))
    return Tools(tuple(upper), tuple(lower))


LegKey = tuple[int, int, tuple[int, ...]]
"""Active bend, side, finished bends of that side."""

Slacks = dict[str, float]
"""By the name of what is met; "sheet" is the part itself."""


class Oracle:
    """What a problem's legs meet; each piece is looked at once."""

    def __init__(self, problem: Problem, tools: Sequence[Tools], cap_mm: float = CAP_MM) -> None:
        self.problem, self.tools, self.cap_mm = problem, tools, cap_mm
        self.known: dict[tuple[object, ...], float] = {}
        self._legs: dict[LegKey, list[Piece]] = {}
        self._slacks: dict[tuple[LegKey, bool, int, bool], Slacks] = {}

    def pieces(self, at: LegKey) -> list[Piece]:
        """The pieces of a leg."""
        if at not in self._legs:
            self._legs[at] = leg(self.problem, *at)
        return self._legs[at]

    def look(self, looks: Iterable[tuple[LegKey, bool, int]], *, rising: bool = False) -> None:
        """Look at these legs, at the back or not, in these tool pairs, all at once."""
        wanted: dict[tuple[object, ...], Query] = {}
        for at, at_back, pair in looks:
            for key, query in self._queries(at, at_back, pair, rising=rising):
                if key not in self.known:
                    wanted[key] = query
        slacks = least_slacks(list(wanted.values()), self.cap_mm) if wanted else ()
        self.known.update(zip(wanted, map(float, slacks), strict=True))

    def slacks(self, at: LegKey, at_back: bool, pair: int, *, rising: bool = False) -> Slacks:
        """The least slack of a leg from each tool, its pieces from each other among them."""
        look = (at, at_back, pair, rising)
        if look not in self._slacks:
            self.look([look[:3]], rising=rising)
            tools = self.tools[pair]
            found: Slacks = {n: self.cap_mm for n, _ in (*tools.upper, *tools.lower)}
            found |= {} if rising else {"sheet": self.self_slack(at)}
            for key, query in self._queries(at, at_back, pair, rising=rising):
                slack = self.known[key]
                if query.touch and slack > SURE_MM:
                    continue
                found[query.name] = min(found.get(query.name, self.cap_mm), slack)
            self._slacks[look] = found
        return self._slacks[look]

    def distances(self, at: LegKey, at_back: bool, pair: int) -> Slacks:
        """The least distance from each tool of the pieces that have to keep one."""
        self.look([(at, at_back, pair)])
        found: Slacks = {}
        for key, query in self._queries(at, at_back, pair, rising=False):
            if not query.touch:
                apart = self.known[key] + query.wanted
                found[query.name] = min(found.get(query.name, math.inf), apart)
        return found

    def _queries(
        self, at: LegKey, at_back: bool, pair: int, *, rising: bool
    ) -> Iterator[tuple[tuple[object, ...], Query]]:
        motion, tools = motion_of(self.problem, at[0], pair), self.tools[pair]
        margin, rise = float(self.problem.margin), float(self.problem.lift[pair])
        let_go = min(abs(float(self.problem.angle[at[0]])) / 2.0, motion.theta)
        phases = ("approach", "withdrawal", "sprung back") if rising else ("bend",)
        for piece in self.pieces(at):
            for name, tool in (*tools.upper, *(() if rising else tools.lower)):
                upper = name in UPPER
                if piece.group == 0 and name == "die":
                    continue
                touch = (piece.group == 0 and name == "punch") or (piece.resting and name == "die")
                for phase in phases:
                    yield (piece.key, name, phase, at_back, pair), Query(
                        piece, motion, at_back, tool, upper, 0.0 if touch else margin, touch,
                        phase, rise, name, let_go,
                    )  # fmt: skip

    def self_slack(self, at: LegKey) -> float:
        """How far apart the leg's own pieces stay that are not joined."""
        key = ("self", at)
        if key not in self.known:
            pieces = self.pieces(at)
            pairs = [(a, b) for a in pieces for b in pieces if b.group > a.group + 1]
            self.known[key] = CAP_MM
            if pairs:
                thin, full = (
                    [shapely.Polygon(r) for r in rings]
                    for rings in ([a.thin for a, _ in pairs], [b.thin for _, b in pairs])
                )
                found = shapely.distance(thin, full)
                self.known[key] = _touching(float(found.min()))
        return self.known[key]

    def meeting_slack(self, left: LegKey, right: LegKey, pair: int) -> float:
        """How far apart the two legs stay while the bend closes."""
        motion = motion_of(self.problem, left[0], pair)
        sides = [
            [(p, self._may_cross(p, motion, pair)) for p in self.pieces(w)] for w in (left, right)
        ]
        wanted = [
            (a, b)
            for a, a_crosses in sides[0]
            for b, b_crosses in sides[1]
            if (a_crosses or b_crosses) and (a.group or b.group)
        ]
        # The sheet goes on through the bend: what reaches over the bend's plane can also meet the
        # half of its arc that hangs on the other leg, at whose end the run, drawn in, stops.
        arcs = [_active_arc(left[0], side) for side in (LEFT, RIGHT)]
        wanted += [(arcs[0], b) for b, crosses in sides[1] if crosses and b.group]
        wanted += [(a, arcs[1]) for a, crosses in sides[0] if crosses and a.group]
        found = CAP_MM
        for a, b in wanted:
            key = (a.key, b.key, pair)
            if key not in self.known:
                self.known[key] = _meeting(a, b, motion)
            found = min(found, self.known[key])
        return _touching(found)

    def _may_cross(self, piece: Piece, motion: Motion, pair: int) -> bool:
        key = (piece.key, "crosses", pair)
        if key not in self.known:
            path = _Path(piece.ring, piece.group == 0, motion)
            least = path.at(np.linspace(0.0, motion.theta, 33), 1.0)[:, :, 0].min()
            self.known[key] = float(least < path.speed * motion.theta / 64.0)
        return bool(self.known[key])


def _touching(apart: float) -> float:
    """The slack of what may touch, from its distance when both are drawn in."""
    if apart <= 0.0:
        return -1.0
    return CAP_MM if apart > SURE_MM else apart


def _active_arc(bend: int, side: int) -> Piece:
    """The half of the bend being made that hangs on a leg; ``_ArcPath`` knows its outline."""
    nothing = np.zeros((0, 2))
    return Piece((bend, side, "active"), ACTIVE, nothing, nothing, resting=False)


def _path_of(piece: Piece, motion: Motion) -> _Path:
    """A piece, drawn in, through the bend."""
    if piece.group == ACTIVE:
        return _ArcPath(motion)
    return _Path(piece.thin, piece.group == 0, motion)


class _Path:
    """A ring through the bend, in the punch's frame."""

    def __init__(self, ring: Array, run: bool, motion: Motion) -> None:
        self.ring, self.run, self.motion = ring, run, motion
        furthest = math.sqrt((ring**2).sum(axis=-1).max())
        self.speed = furthest + motion.radius + motion.take * (1.0 + 0.5 / motion.theta)

    def at(self, theta: Array, mirror: float) -> Array:
        """The ring at each of these moments."""
        m, turn = self.motion, theta[:, None]
        x = self.ring[:, 0] - m.take * turn / m.theta / 2.0
        x = np.maximum(x, 0.0) if self.run else x
        y, cos, sin = self.ring[:, 1], np.cos(turn), np.sin(turn)
        across = mirror * (m.radius * sin + cos * x - sin * y)
        return np.stack([across, m.radius * (1.0 - cos) + sin * x + cos * y], axis=-1)


class _ArcPath(_Path):
    """Half of the active arc, drawn in: from the bend's plane to where the leg begins."""

    def __init__(self, motion: Motion) -> None:
        self.motion, self.speed = motion, motion.radius + motion.thickness

    def at(self, theta: Array, mirror: float) -> Array:
        """The ring at each of these moments; a sliver while the sheet is flat."""
        m, half = self.motion, self.motion.thickness / 2.0 - TOUCH_MM
        turn = np.maximum(theta, 1e-6)[:, None] * np.linspace(0.0, 1.0, ARC_CHORDS + 1)
        out, back = (
            np.stack([mirror * r * np.sin(turn), m.radius - r * np.cos(turn)], axis=-1)
            for r in (m.radius + half, m.radius - half)
        )
        return np.concatenate([out, back[:, ::-1]], axis=1)


def _meeting(one: Piece, two: Piece, motion: Motion) -> float:
    """How far apart a piece of the left leg and one of the right stay."""
    paths = _path_of(one, motion), _path_of(two, motion)

    def apart(u: Array) -> Array:
        shapes = [shapely.polygons(p.at(u, m)) for p, m in zip(paths, (-1.0, 1.0), strict=True)]
        found = shapely.distance(*shapes)
        return np.where(found > 0.0, found, -1.0)

    speed = paths[0].speed + paths[1].speed
    u = np.linspace(0.0, motion.theta, FIRST + 1)
    found = apart(u)
    best, width = min(CAP_MM, float(found.min())), motion.theta / FIRST
    low, s_low, s_high = u[:-1], found[:-1], found[1:]
    for _ in range(DEEPEST):
        goes_on = (s_low + s_high - speed * width) / 2.0 < best - FINE_MM
        if best < 0.0 or not goes_on.any():
            break
        low, s_low, s_high = low[goes_on], s_low[goes_on], s_high[goes_on]
        width /= 2.0
        middle = apart(low + width)
        best = min(best, float(middle.min()))
        low = np.concatenate([low, low + width])
        s_low, s_high = np.concatenate([s_low, middle]), np.concatenate([middle, s_high])
    return best
