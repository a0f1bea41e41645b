"""Input deck of one air bend for the finite element solver CalculiX (ccx 2.20).

Half a sheet, one element thick and held in the width direction (plane strain), bent between a
rigid faceted punch tip and a rigid faceted die shoulder, by quadratic bricks with reduced
integration (C3D20R), large deformation, von Mises plasticity with isotropic hardening.

What must be done so that it converges to the right answer:

- A first step that only touches. At the start of each step the solver forgives the penetration
  that is there and brings it back over the step, so a bend made in several steps creeps. All of
  going down and up is therefore one step, by an amplitude.
- Increments of at most 0.05 mm of travel, and much smaller ones at the turning points.
- One weak spring on the freed sheet, to a point that goes down with the punch and stays down
  when the punch lifts, so that it does not pull while the sheet is being bent.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace
from itertools import pairwise
from math import cos, pi, radians, sin, tan

import numpy as np

FACET_DEG = 2.0
GRID = 4096  # times and depths are whole parts of this, so that sums of them are exact
TOUCH_MM = 16 / GRID
SPRING_N_PER_MM = 0.5
Node = tuple[float, float]


@dataclass(frozen=True)
class Sheet:
    """E, nu, and K (e0 + e)^n with e0 = (Y/K)^(1/n) [MPa]; thickness [mm]; elements through t."""

    metal: str
    youngs_modulus_mpa: float
    yield_mpa: float
    k_mpa: float
    n: float
    thickness_mm: float = 2.0
    poisson: float = 0.3

    @property
    def prestrain(self) -> float:
        """e0 [-], so that the curve starts at the yield strength."""
        return float((self.yield_mpa / self.k_mpa) ** (1.0 / self.n))


@dataclass(frozen=True)
class Case:
    """One run: press to each depth in turn and lift after it. Lengths in mm."""

    name: str
    sheet: Sheet
    v_opening_mm: float
    punch_radius_mm: float
    shoulder_radius_mm: float
    depths_mm: tuple[float, ...]
    friction: float = 0.0
    die_angle_deg: float = 80.0
    elements_through: int = 4
    column_mm: float = 0.3
    lift_share: float = 0.07

    def finer(self) -> Case:
        """The same bend on a mesh 1.5 times as fine, for the convergence check."""
        return replace(
            self,
            name=self.name + "_fine",
            elements_through=self.elements_through + 2,
            column_mm=self.column_mm / 1.5,
        )

    @property
    def shoulder_x_mm(self) -> float:
        """Distance of the shoulder's centre from the tools' centre line [mm]."""
        flank = radians(90.0 - self.die_angle_deg / 2.0)
        return self.v_opening_mm / 2.0 + self.shoulder_radius_mm * tan(flank / 2.0)


class Mesh:
    """Nodes and elements as they are added, numbered from 1."""

    def __init__(self) -> None:
        self.nodes: list[tuple[float, float, float]] = []
        self.elements: dict[str, list[list[int]]] = {}
        self.count = 0
        self.first: dict[str, int] = {}

    def node(self, x: float, y: float, z: float) -> int:
        """Add a node; its number."""
        self.nodes.append((x, y, z))
        return len(self.nodes)

    def element(self, group: str, nodes: list[int]) -> int:
        """Add an element to a group; its number."""
        self.count += 1
        self.elements.setdefault(group, []).append([self.count, *nodes])
        return self.count


def columns_mm(case: Case) -> np.ndarray:
    """Where the columns of the sheet's mesh stand, from the bend line outwards [mm]."""
    t = case.sheet.thickness_mm
    fine_to = max(1.6 * t, 1.2 * case.punch_radius_mm + t)
    end = 1.36 * case.shoulder_x_mm + 1.5 * t
    fine = np.arange(0.0, fine_to, case.column_mm)
    coarse = case.column_mm * 1.7
    rest = np.linspace(fine[-1], end, 1 + round((end - fine[-1]) / coarse))
    return np.concatenate([fine, rest[1:]])


def add_sheet(mesh: Mesh, case: Case) -> dict[str, list[int]]:
    """The sheet's bricks; its node and face sets."""
    x = columns_mm(case)
    nx, ny = len(x) - 1, case.elements_through
    t = case.sheet.thickness_mm
    at: dict[tuple[int, int, int], int] = {}
    xs = np.interp(np.arange(2 * nx + 1) / 2.0, np.arange(nx + 1), x)
    for i in range(2 * nx + 1):
        for j in range(2 * ny + 1):
            for k in range(3):
                if (i % 2) + (j % 2) + (k % 2) <= 1:
                    at[i, j, k] = mesh.node(xs[i], t * j / (2 * ny), k / 2.0)
    sets: dict[str, list[int]] = {"bottom": [], "top": []}
    corner = [(0, 0), (2, 0), (2, 2), (0, 2)]
    middle = [(1, 0), (2, 1), (1, 2), (0, 1)]
    for i in range(nx):
        for j in range(ny):
            a, b = 2 * i, 2 * j
            order = [(p, q, k) for k in (0, 2) for p, q in corner]
            order += [(p, q, k) for k in (0, 2) for p, q in middle]
            order += [(p, q, 1) for p, q in corner]
            number = mesh.element("sheet", [at[a + p, b + q, k] for p, q, k in order])
            if j == 0:
                sets["bottom"].append(number)
            if j == ny - 1:
                sets["top"].append(number)
    sets["symmetry"] = [n for (i, _, _), n in at.items() if i == 0]
    sets["all"] = list(at.values())
    sets["outer_line"] = [at[i, 0, 0] for i in range(2 * nx + 1)]
    sets["inner_line"] = [at[i, 2 * ny, 0] for i in range(2 * nx + 1)]
    sets["spring_at"] = [at[0, 0, 0]]
    return sets


def add_tool(mesh: Mesh, group: str, face: list[Node], back: list[Node]) -> list[int]:
    """Rigid bricks between a tool's working face and a line behind it; their nodes.

    Every brick's first side (nodes 1-2) is on the face, which runs with the body on its left.
    """
    rows = [[[mesh.node(x, y, z) for x, y in line] for z in (-0.5, 1.5)] for line in (face, back)]
    for i in range(len(face) - 1):
        quad = [(0, i), (0, i + 1), (1, i + 1), (1, i)]
        mesh.element(group, [rows[row][side][at] for side in (0, 1) for row, at in quad])
    return [n for row in rows for side in row for n in side]


def arc(cx: float, cy: float, radius: float, degrees_from_down: Iterable[float]) -> list[Node]:
    """Points on a circle, angles from straight down towards +x."""
    return [
        (cx + radius * sin(a * pi / 180.0), cy - radius * cos(a * pi / 180.0))
        for a in degrees_from_down
    ]


def punch_lines(case: Case) -> tuple[list[Node], list[Node]]:
    """Working face (tip and flank) and back of the punch."""
    r, t = case.punch_radius_mm, case.sheet.thickness_mm
    angles = np.arange(-10.0, 54.1, FACET_DEG)
    face, back = arc(0, t + r, r, angles), arc(0, t + r, 0.6 * r, angles)
    a = radians(angles[-1])
    for line in (face, back):
        x, y = line[-1]
        line.append((x + 4 * cos(a), y + 4 * sin(a)))
    return face, back


def die_lines(case: Case) -> tuple[list[Node], list[Node]]:
    """Working face (flat top, shoulder, flank) and back of the die, from the back inwards."""
    r, xc = case.shoulder_radius_mm, case.shoulder_x_mm
    end = columns_mm(case)[-1] + 2.0
    steep = 90.0 - case.die_angle_deg / 2.0
    angles = 180.0 + np.arange(0.0, steep + 0.01, FACET_DEG)
    face, back = arc(xc, -r, r, angles), arc(xc, -r, 0.6 * r, angles)
    face.insert(0, (end, 0.0))
    back.insert(0, (end, -0.4 * r))
    a = radians(steep)
    for line in (face, back):
        x, y = line[-1]
        line.append((x - 4 * cos(a), y - 4 * sin(a)))
    return face, back


def on_grid(value: float) -> float:
    """The nearest whole part of the grid."""
    return round(value * GRID) / GRID


def path(case: Case) -> tuple[list[tuple[float, float, float]], list[float]]:
    """Travel of the press: (length travelled, punch down, spring's end down), and when to print.

    All in mm. The length travelled serves as the step's time. The solver is made to stop at the
    printing times; it dies of a step of no length where rounding puts two of them side by side,
    so they lie on a binary grid and the step lasts a power of two (the punch rests at the end).
    """
    depths = [on_grid(depth) for depth in case.depths_mm]
    lift = on_grid(case.lift_share * case.v_opening_mm)
    corners = [(TOUCH_MM, TOUCH_MM)]
    for i, depth in enumerate(depths):
        if i:
            corners.append((depths[i - 1], depths[i - 1]))  # down again to where it was
        corners += [(depth, depth), (depth - lift, depth)]
    time, table, points = 0.0, [(0.0, TOUCH_MM, TOUCH_MM)], []
    for (was, _), (down, held) in pairwise(corners):
        length = abs(down - was)
        near = [2 / GRID, 8 / GRID, 20 / GRID, 40 / GRID, 80 / GRID, 144 / GRID]
        most = 0.05 if down > was and was + lift not in depths else 0.1
        count = int(np.ceil((length - 0.05) / most))
        points += [time + d for d in near]
        points += [on_grid(x) for x in np.linspace(time + 0.05, time + length, count + 1)]
        time += length
        table.append((time, down, held))
    return table, points


def duration(case: Case) -> float:
    """Time of the step: the power of two at or above the length travelled."""
    return float(2.0 ** np.ceil(np.log2(path(case)[0][-1][0])))


def hardening(sheet: Sheet) -> list[tuple[float, float]]:
    """(stress, plastic strain) pairs of the hardening curve up to a strain of 1.5."""
    strain = np.concatenate([[0.0], np.geomspace(1e-4, 1.5, 70)])
    return [(float(sheet.k_mpa * (sheet.prestrain + e) ** sheet.n), float(e)) for e in strain]


def _rows(numbers: Iterable[int], per_row: int = 12) -> list[str]:
    items = [str(n) for n in numbers]
    return [", ".join(items[i : i + per_row]) for i in range(0, len(items), per_row)]


def deck(case: Case) -> str:
    """The whole input deck."""
    mesh = Mesh()
    sheet = add_sheet(mesh, case)
    punch = add_tool(mesh, "punch", *punch_lines(case))
    die = add_tool(mesh, "die", *die_lines(case))
    held = mesh.node(0.0, 0.0, 5.0)
    table, points = path(case)
    s = case.sheet
    out = ["*NODE, NSET=nall"]
    out += [f"{i}, {x:.8f}, {y:.8f}, {z:.4f}" for i, (x, y, z) in enumerate(mesh.nodes, 1)]
    for group, kind in (("sheet", "C3D20R"), ("punch", "C3D8"), ("die", "C3D8")):
        out.append(f"*ELEMENT, TYPE={kind}, ELSET=e{group}")
        for row in mesh.elements[group]:
            lines = _rows(row, 15)
            out += [line + "," for line in lines[:-1]] + [lines[-1]]
    out += ["*ELEMENT, TYPE=SPRING2, ELSET=espring"]
    out += [f"{mesh.count + 1}, {sheet['spring_at'][0]}, {held}", "*SPRING, ELSET=espring", "2, 2"]
    out += [f"{SPRING_N_PER_MM}"]
    for name, nodes in (
        ("nsheet", sheet["all"]), ("nsym", sheet["symmetry"]), ("npunch", punch), ("ndie", die),
        ("nouter", sheet["outer_line"]), ("ninner", sheet["inner_line"]), ("nheld", [held]),
    ):  # fmt: skip
        out += [f"*NSET, NSET={name}", *_rows(nodes)]
    for name, faces in (
        ("souter", [f"{e}, S3" for e in sheet["bottom"]]),
        ("sinner", [f"{e}, S5" for e in sheet["top"]]),
        ("spunch", [f"{row[0]}, S3" for row in mesh.elements["punch"]]),
        ("sdie", [f"{row[0]}, S3" for row in mesh.elements["die"]]),
    ):
        out += [f"*SURFACE, NAME={name}, TYPE=ELEMENT", *faces]
    out += ["*MATERIAL, NAME=metal", "*ELASTIC", f"{s.youngs_modulus_mpa}, {s.poisson}"]
    out += ["*PLASTIC", *[f"{stress:.5f}, {strain:.8f}" for stress, strain in hardening(s)]]
    out += ["*MATERIAL, NAME=tool", "*ELASTIC", "210000, 0.3"]
    out += ["*SOLID SECTION, ELSET=esheet, MATERIAL=metal"]
    out += ["*SOLID SECTION, ELSET=epunch, MATERIAL=tool"]
    out += ["*SOLID SECTION, ELSET=edie, MATERIAL=tool"]
    out += ["*SURFACE INTERACTION, NAME=touch", "*SURFACE BEHAVIOR, PRESSURE-OVERCLOSURE=LINEAR"]
    out += ["5e5"]
    if case.friction:
        out += ["*FRICTION", f"{case.friction}, 5e4"]
    out += ["*CONTACT PAIR, INTERACTION=touch, TYPE=SURFACE TO SURFACE", "sinner, spunch"]
    out += ["*CONTACT PAIR, INTERACTION=touch, TYPE=SURFACE TO SURFACE", "souter, sdie"]
    for name, column in (("down", 1), ("held", 2)):
        out += [
            f"*AMPLITUDE, NAME={name}",
            *[f"{row[0]:.12f}, {row[column]:.12f}" for row in table],
        ]
    out += ["*TIME POINTS, NAME=when", *[f"{time:.12f}" for time in points]]
    out += ["*BOUNDARY", "nsym, 1, 1", "nsheet, 3, 3", "ndie, 1, 3", "npunch, 1, 1"]
    out += ["npunch, 3, 3", "nheld, 1, 1", "nheld, 3, 3"]
    out += ["*STEP, NLGEOM, INC=1000", "*STATIC", "1., 1., 1e-6, 1."]
    out += ["*BOUNDARY", f"npunch, 2, 2, {-TOUCH_MM}", f"nheld, 2, 2, {-TOUCH_MM}", "*END STEP"]
    out += ["*STEP, NLGEOM, INC=100000", "*STATIC"]
    out += [f"{2 / GRID:.12f}, {duration(case)}, 1e-7, 0.0625"]
    out += ["*BOUNDARY, AMPLITUDE=down", "npunch, 2, 2, -1."]
    out += ["*BOUNDARY, AMPLITUDE=held", "nheld, 2, 2, -1."]
    out += ["*NODE PRINT, NSET=npunch, TOTALS=ONLY, TIME POINTS=when", "RF"]
    out += ["*NODE PRINT, NSET=nouter, TIME POINTS=when", "U"]
    out += ["*NODE PRINT, NSET=ninner, TIME POINTS=when", "U"]
    out += ["*END STEP", ""]
    return "\n".join(out)
