"""The figures of the code's shape, each with its goal and what stands in its way."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from pathlib import Path

from shape import floors
from shape.functions import long_parameter_lists, physical_functions
from shape.imports import circles, python_imports, web_files, web_imports
from shape.loose_types import loose, typed_comments

ROOT = Path(__file__).resolve().parents[2]
SERVER, WEB = ROOT / "server/flangebook", ROOT / "web"
BENDING = "flangebook.bending"
FULL_FOLDER = 20
_WRITTEN = {".py", ".js", ".css", ".html"}


@dataclass(frozen=True, slots=True)
class Figure:
    """One figure, the most or the least it is to be, and what keeps it from there."""

    key: str
    name: str
    value: float
    goal: float
    offenders: tuple[str, ...]
    unit: str = ""
    at_least: bool = False

    @property
    def met(self) -> bool:
        """Whether the goal is reached."""
        return self.value >= self.goal if self.at_least else self.value <= self.goal


def figures() -> list[Figure]:
    """All figures of this tree."""
    python, web = python_imports(SERVER), web_imports(WEB)
    heights = floors.read_floors(SERVER / "bending")
    return [
        _folders(),
        _count("python circles", "circles between Python files", 0, map(_joined, circles(python))),
        _count("web circles", "circles between web files", 0, map(_joined, circles(web))),
        _count(
            "arrows",
            "arrows upwards in bending",
            0,
            (f"{low} -> {high}" for low, high in floors.upward(python, BENDING, heights)),
        ),
        _count(
            "no floor", "on no floor in bending", 0, floors.without_floor(python, BENDING, heights)
        ),
        _count(
            "parameters",
            "functions with eight or more parameters",
            10,
            long_parameter_lists(SERVER),
        ),
        _loose_types(),
        _docstrings(),
    ]


def _count(key: str, name: str, goal: int, offenders: Iterable[str]) -> Figure:
    listed = tuple(offenders)
    return Figure(key, name, len(listed), goal, listed)


def _joined(circle: list[str]) -> str:
    return " <-> ".join(circle)


def _folders() -> Figure:
    full = [f"{name}: {n}" for name, n in files_by_folder().items() if n > FULL_FOLDER]
    return _count("folders", f"folders with more than {FULL_FOLDER} files", 0, full)


def files_by_folder() -> Mapping[str, int]:
    """How many files lie loose in each folder of server and web; a package's own not counted."""
    counts: dict[str, int] = {}
    for file in sources():
        if file.name != "__init__.py":
            folder = file.parent.relative_to(ROOT).as_posix()
            counts[folder] = counts.get(folder, 0) + 1
    return dict(sorted(counts.items()))


def lines_by_package() -> Mapping[str, int]:
    """The lines of each package of the server and of each folder of the web."""
    counts: dict[str, int] = {}
    for file in sources():
        base = SERVER if file.is_relative_to(SERVER) else WEB
        inner = file.relative_to(base).parts
        package = (base / inner[0] if len(inner) > 1 else base).relative_to(ROOT).as_posix()
        counts[package] = counts.get(package, 0) + len(file.read_bytes().splitlines())
    return dict(sorted(counts.items()))


def sources() -> Iterator[Path]:
    """What we wrote of server and web: no data, nothing made, nothing of others."""
    yield from sorted(SERVER.rglob("*.py"))
    yield from web_files(WEB)
    beside = {WEB / "made", WEB / "vendor"}
    for file in sorted(WEB.rglob("*")):
        if file.suffix in _WRITTEN - {".js"} and not beside.intersection(file.parents):
            yield file


def _loose_types() -> Figure:
    found = [(name, loose(comment)) for name, comment in typed_comments(WEB) if loose(comment)]
    listed = tuple(f"{name}: {many}" for name, many in found)
    return Figure("any", "any in the web's types", sum(many for _, many in found), 30, listed)


def _docstrings() -> Figure:
    all_of_them = physical_functions(SERVER / "bending")
    short = [one for one in all_of_them if one.lacks]
    share = 100.0 * (1.0 - len(short) / len(all_of_them))
    listed = tuple(f"{one.place} lacks {', '.join(one.lacks)}" for one in short)
    name = f"unit, source and example, of {len(all_of_them)} quantities"
    return Figure("docstrings", name, share, 100, listed, " %", at_least=True)
