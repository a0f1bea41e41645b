"""What is to be said of single functions: their parameters, and what their docstrings hold."""

from __future__ import annotations

import ast
import re
from collections.abc import Iterable
from dataclasses import dataclass
from pathlib import Path

from shape.imports import tree

MANY = 8
_CONTAINERS = {"tuple", "list", "Sequence", "int"}
_NUMBERS = {"float", "Estimate"}
UNITS = (
    "mm", "mm2", "cm", "kg", "kg/m3", "N", "N/mm", "MPa", "deg", "rad", "1/mm", "mm/mm", "mm/m",
    "mm/rad", "deg/mm", "-",
)  # fmt: skip
_ONE = "|".join(map(re.escape, UNITS))
_UNIT = re.compile(rf"\[(?:{_ONE})(?:, (?:{_ONE}))*\]")
"""One unit or several in brackets, as in [N, mm, deg]."""
_SOURCE = re.compile(r"^Source: \S", re.MULTILINE)
_EXAMPLE = re.compile(r"^\s*>>> ", re.MULTILINE)


@dataclass(frozen=True, slots=True)
class PhysicalFunction:
    """A public function that computes a quantity, and what its docstring lacks."""

    place: str
    lacks: tuple[str, ...]


def long_parameter_lists(package: Path) -> list[str]:
    """The functions and methods with eight or more parameters, ``self`` not counted."""
    return [
        f"{file.relative_to(package.parent)}:{node.lineno} {node.name} ({parameters(node)})"
        for file in sorted(package.rglob("*.py"))
        for node in ast.walk(tree(file))
        if isinstance(node, ast.FunctionDef | ast.AsyncFunctionDef) and parameters(node) >= MANY
    ]


def parameters(node: ast.FunctionDef | ast.AsyncFunctionDef) -> int:
    """How many values a caller may hand over."""
    given = node.args
    names = [one.arg for one in (*given.posonlyargs, *given.args, *given.kwonlyargs)]
    own = names[:1] in (["self"], ["cls"])
    return len(names) - own + bool(given.vararg) + bool(given.kwarg)


def physical_functions(package: Path) -> list[PhysicalFunction]:
    """The public functions that return numbers, or what holds an ``Estimate``.

    A number is a ``float`` or an ``Estimate``, one or several of them, or none where there is
    no answer, with a count beside them or not. Points, arrays and names are not looked at.
    """
    trees = {f: tree(f) for f in sorted(package.rglob("*.py"))}
    holders = {name for text in trees.values() for name in _holders(text)}
    return [
        PhysicalFunction(
            f"{file.relative_to(package.parent)}:{node.lineno} {node.name}",
            lacking(ast.get_docstring(node) or ""),
        )
        for file, module in trees.items()
        for node in module.body
        if isinstance(node, ast.FunctionDef)
        and not node.name.startswith("_")
        and returns_quantity(node, holders)
    ]


def _holders(module: ast.Module) -> Iterable[str]:
    """The classes with an ``Estimate`` among their fields."""
    for node in ast.walk(module):
        if isinstance(node, ast.ClassDef):
            fields = [one.annotation for one in node.body if isinstance(one, ast.AnnAssign)]
            if any("Estimate" in _names(annotation) for annotation in fields):
                yield node.name


def _names(annotation: ast.expr) -> set[str]:
    return {node.id for node in ast.walk(annotation) if isinstance(node, ast.Name)}


def returns_quantity(node: ast.FunctionDef, holders: set[str]) -> bool:
    """Whether a function gives nothing but quantities."""
    named = _names(node.returns) - _CONTAINERS if node.returns else set()
    return bool(named) and named <= _NUMBERS | holders


def lacking(docstring: str) -> tuple[str, ...]:
    """What a quantity's docstring does not say: its unit, its source, an example that runs.

    The unit stands in the first paragraph or under ``Returns:``; the source in a paragraph
    that begins with ``Source:``.
    """
    first, *rest = docstring.split("\n\n")
    returns = " ".join(paragraph for paragraph in rest if paragraph.startswith("Returns:"))
    said = {
        "unit": _UNIT.search(f"{first} {returns}"),
        "source": _SOURCE.search(docstring),
        "example": _EXAMPLE.search(docstring),
    }
    return tuple(what for what, match in said.items() if not match)
