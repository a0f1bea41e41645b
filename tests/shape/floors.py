"""The floors of ``bending``: which folder may import which, as its README's table says."""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping
from pathlib import Path

from shape.imports import Graph

_ROW = re.compile(r"^\|\s*(\d+)\s*\|([^|]*)\|", re.MULTILINE)


def floors(readme: str) -> Mapping[str, tuple[int, int]]:
    """Each folder or loose file of the table with how high it stands.

    Of several on one floor, one to the right stands higher: it may import one to its left.
    """
    return {
        name.strip(" `"): (int(row[1]), place)
        for row in _ROW.finditer(readme)
        for place, name in enumerate(row[2].split(","))
    }


def read_floors(package: Path) -> Mapping[str, tuple[int, int]]:
    """The floors that a package's README names; none without one."""
    readme = package / "README.md"
    return floors(readme.read_text("utf-8")) if readme.exists() else {}


def upward(
    graph: Graph, package: str, heights: Mapping[str, tuple[int, int]]
) -> Iterable[tuple[str, str]]:
    """The imports that run from a lower floor to a higher one."""
    for name, others in graph.items():
        low = heights.get(folder_of(name, package))
        for other in sorted(others):
            high = heights.get(folder_of(other, package))
            if low and high and high > low:
                yield name, other


def without_floor(graph: Graph, package: str, heights: Mapping[str, tuple[int, int]]) -> list[str]:
    """The folders and loose files that stand on no floor."""
    named = {folder_of(name, package) for name in graph if name.startswith(f"{package}.")}
    return sorted(named - set(heights))


def folder_of(name: str, package: str) -> str:
    """The first folder under the package that a module is in; a loose file's own name."""
    return name.removeprefix(f"{package}.").split(".")[0] if name != package else ""
