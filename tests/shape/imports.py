"""Which file imports which, of Python and of JavaScript, and what goes in a circle."""

from __future__ import annotations

import ast
import re
from collections.abc import Iterable, Mapping
from functools import cache
from pathlib import Path

Graph = Mapping[str, frozenset[str]]
"""Each file's name, with the names of the files that it imports."""

_COMMENT = re.compile(r"/\*.*?\*/|^\s*//.*?$", re.DOTALL | re.MULTILINE)
_FROM = re.compile(
    r"""^\s*(?:import|export)\b(?:[^"'`;()]*?\bfrom)?\s*["'](?P<plain>[./][^"']*)["']"""
    r"""|\bimport\(\s*["'](?P<later>[./][^"']*)["']""",
    re.MULTILINE,
)


@cache
def tree(file: Path) -> ast.Module:
    """A file of Python as its syntax."""
    return ast.parse(file.read_text("utf-8"))


def python_imports(package: Path) -> Graph:
    """The imports among a package's files, wherever in a file they stand; dotted names."""
    files = {_dotted(file, package): file for file in sorted(package.rglob("*.py"))}
    return {name: frozenset(_imported(file, name, files)) for name, file in files.items()}


def _dotted(file: Path, package: Path) -> str:
    parts = file.relative_to(package.parent).with_suffix("").parts
    return ".".join(parts[:-1] if parts[-1] == "__init__" else parts)


def _imported(file: Path, name: str, files: Mapping[str, Path]) -> Iterable[str]:
    here = name if file.name == "__init__.py" else name.rpartition(".")[0]
    for node in ast.walk(tree(file)):
        if isinstance(node, ast.Import):
            yield from (alias.name for alias in node.names if alias.name in files)
        elif isinstance(node, ast.ImportFrom):
            up = here.rsplit(".", node.level - 1)[0] if node.level else ""
            source = ".".join(part for part in (up, node.module or "") if part)
            for alias in node.names:
                module = f"{source}.{alias.name}"
                if module in files or source in files:
                    yield module if module in files else source


def web_files(web: Path) -> list[Path]:
    """The app's own scripts: without what is made of them and what others wrote."""
    beside = {"made", "vendor"}
    return [f for f in sorted(web.rglob("*.js")) if f.relative_to(web).parts[0] not in beside]


def web_imports(web: Path) -> Graph:
    """The imports among the app's scripts, those that wait for a screen too; paths in ``web``."""
    files = {file.relative_to(web).as_posix() for file in web_files(web)}
    return {name: frozenset(_named(web / name, web)) & files for name in sorted(files)}


def _named(file: Path, web: Path) -> Iterable[str]:
    text = _COMMENT.sub("", file.read_text("utf-8"))
    for match in _FROM.finditer(text):
        path = match["plain"] or match["later"]
        whole = web / path[1:] if path.startswith("/") else file.parent / path
        resolved = whole.resolve()
        if resolved.is_relative_to(web.resolve()):
            yield resolved.relative_to(web.resolve()).as_posix()


def circles(graph: Graph) -> list[list[str]]:
    """The groups of files of which each reaches each other one, a file that imports itself too."""
    reached = {name: _reached(graph, name) for name in graph}
    groups = {
        frozenset({name, *(other for other in reached[name] if name in reached[other])})
        for name in graph
        if name in reached[name]
    }
    return sorted(sorted(group) for group in groups)


def _reached(graph: Graph, start: str) -> set[str]:
    seen: set[str] = set()
    waiting = list(graph[start])
    while waiting:
        name = waiting.pop()
        if name not in seen:
            seen.add(name)
            waiting.extend(graph[name])
    return seen
