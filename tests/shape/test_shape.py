"""The figures of the code's shape: they count right, and what is reached stays reached."""

from __future__ import annotations

import ast
from pathlib import Path

import pytest

from shape import figures
from shape.__main__ import line
from shape.figures import Figure
from shape.floors import floors, upward, without_floor
from shape.functions import lacking, parameters, physical_functions
from shape.imports import circles, python_imports, web_imports


def files(folder: Path, texts: dict[str, str]) -> Path:
    for name, text in texts.items():
        (folder / name).parent.mkdir(parents=True, exist_ok=True)
        (folder / name).write_text(text, "utf-8")
    return folder


def test_python_imports_are_found_wherever_they_stand(tmp_path: Path) -> None:
    texts = {
        "__init__.py": "",
        "a.py": "from house.low import b\nimport json",
        "low/__init__.py": "from . import c",
        "low/b.py": "def f():\n    from .c import x",
        "low/c.py": "import house.a\nfrom house import low",
    }
    graph = python_imports(files(tmp_path / "house", texts))
    assert graph["house.a"] == {"house.low.b"}
    assert graph["house.low"] == {"house.low.c"}
    assert graph["house.low.b"] == {"house.low.c"}
    assert graph["house.low.c"] == {"house.a", "house.low"}
    assert circles(graph) == [["house.a", "house.low", "house.low.b", "house.low.c"]]


def test_web_imports_are_found_in_every_form(tmp_path: Path) -> None:
    texts = {
        "app/a.js": 'import {\n  one,\n  two,\n} from "./b.js";\nimport "/app/c.js";',
        "app/b.js": 'export { x } from "../app/c.js";\n// import { y } from "./a.js";',
        "app/c.js": '/** @type {import("./a.js").Y} */\nconst load = () => import("./d.js");',
        "app/d.js": 'import { html } from "/vendor/lit.js";\nconst text = "from ./a.js";',
        "vendor/lit.js": "",
    }
    graph = web_imports(files(tmp_path, texts))
    assert {name.removeprefix("app/"): set(others) for name, others in graph.items()} == {
        "a.js": {"app/b.js", "app/c.js"},
        "b.js": {"app/c.js"},
        "c.js": {"app/d.js"},
        "d.js": set(),
    }
    assert circles(graph) == []


def test_a_circle_is_one_group_however_many_ways_round() -> None:
    graph = {"a": {"b"}, "b": {"a", "c"}, "c": {"b", "d"}, "d": set(), "e": {"e"}}
    assert circles({k: frozenset(v) for k, v in graph.items()}) == [["a", "b", "c"], ["e"]]


def test_floors_are_read_and_arrows_upwards_found() -> None:
    heights = floors("| floor | folder |\n| --- | --- |\n| 2 | `part`, `tools` |\n| 1 | errors | |")
    assert heights == {"part": (2, 0), "tools": (2, 1), "errors": (1, 0)}
    graph = {
        "p.part.a": frozenset({"p.errors", "p.tools.b"}),
        "p.tools.b": frozenset({"p.part.c"}),
        "p.part.c": frozenset[str](),
        "p.errors": frozenset({"p.part.c"}),
        "p.new.d": frozenset({"p.part.c"}),
        "p": frozenset[str](),
    }
    assert set(upward(graph, "p", heights)) == {
        ("p.part.a", "p.tools.b"),
        ("p.errors", "p.part.c"),
    }
    assert without_floor(graph, "p", heights) == ["new"]


@pytest.mark.parametrize(
    ("text", "count"),
    [
        ("def f(a, b, /, c, *, d): ...", 4),
        ("def f(self, a, *more, **named): ...", 3),
        ("async def f(cls): ...", 0),
    ],
)
def test_parameters_are_what_a_caller_hands_over(text: str, count: int) -> None:
    (node,) = ast.parse(text).body
    assert isinstance(node, ast.FunctionDef | ast.AsyncFunctionDef)
    assert parameters(node) == count


GOOD = "Force [N] of it.\n\nSource: Groover.\n\n>>> 1.0\n1.0"


@pytest.mark.parametrize(
    ("docstring", "lacks"),
    [
        (GOOD, ()),
        ("Force.\n\nReturns:\n    The force [N].\n\nSource: Groover.\n\n>>> 1.0\n1.0", ()),
        (GOOD.replace("[N]", "[N, mm, deg]"), ()),
        (GOOD.replace(" [N]", ""), ("unit",)),
        (GOOD.replace("[N]", "[it]"), ("unit",)),
        ("Force.\n\nArgs:\n    a: width [mm].\n\nSource: x.\n\n>>> 1.0\n1.0", ("unit",)),
        (GOOD.replace("Source: ", "By "), ("source",)),
        (GOOD.replace("Source: Groover.", "Source:"), ("source",)),
        (GOOD.replace(">>>", ">>"), ("example",)),
        ("", ("unit", "source", "example")),
    ],
)
def test_a_quantitys_docstring_says_unit_source_and_example(
    docstring: str, lacks: tuple[str, ...]
) -> None:
    assert lacking(docstring) == lacks


def test_quantities_are_public_functions_that_return_numbers(tmp_path: Path) -> None:
    text = """
class Band:
    force: Estimate

def a() -> float: ...
def b() -> Estimate | None: ...
def c() -> tuple[float, ...]: ...
def d() -> Band: ...
def e() -> int: ...
def f() -> Point: ...
def g() -> tuple[float, Point]: ...
def h(): ...
def j() -> dict[str, float]: ...
def k() -> int: ...
def _i() -> float: ...
"""
    found = physical_functions(files(tmp_path / "bending", {"x.py": text}))
    assert [one.place.split()[-1] for one in found] == ["a", "b", "c", "d"]


@pytest.mark.parametrize(
    ("figure", "end"),
    [
        (Figure("a", "of it", 0, 0, ()), "0   goal at most 0: met"),
        (Figure("a", "of it", 21, 20, ()), "21   goal at most 20: missed"),
        (
            Figure("a", "of it", 99.9, 100, (), " %", at_least=True),
            "99 %   goal at least 100 %: missed",
        ),
        (
            Figure("a", "of it", 100, 100, (), " %", at_least=True),
            "100 %   goal at least 100 %: met",
        ),
    ],
)
def test_a_figure_stands_beside_its_goal(figure: Figure, end: str) -> None:
    assert line(figure).endswith(f" {end}")


def test_no_figure_is_worse_than_its_goal() -> None:
    worse = [figure for figure in figures.figures() if not figure.met]
    assert worse == [], "\n".join(word for one in worse for word in (line(one), *one.offenders))


def test_every_folder_and_package_is_counted() -> None:
    lines, many = figures.lines_by_package(), figures.files_by_folder()
    for package in (figures.SERVER / "bending", figures.SERVER / "api", figures.WEB / "screens"):
        name = package.relative_to(figures.ROOT).as_posix()
        assert lines[name] > 1000
        assert any(folder.startswith(name) for folder in many)
    assert not any("vendor" in name or "made" in name for name in (*lines, *many))
