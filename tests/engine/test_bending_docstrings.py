"""The docstrings of the calculations: examples run, parameters are named, units are given."""

from __future__ import annotations

import doctest
import importlib
import inspect
import pkgutil
import re

import pytest

import flangebook.bending

MODULES = [
    m.name.removeprefix("flangebook.bending.")
    for m in pkgutil.walk_packages(flangebook.bending.__path__, "flangebook.bending.")
    if not m.ispkg
]
FORMULA_MODULES = (
    "geometry.air_bend_geometry", "geometry.setback", "handbook.allowance", "handbook.force",
    "handbook.k_factor", "handbook.springback", "handbook.v_opening", "motion.lifting",
    "part.sheet_gauge",
)  # fmt: skip


def functions(module_name):
    module = importlib.import_module(f"flangebook.bending.{module_name}")
    return [
        pytest.param(function, id=f"{module_name}.{name}")
        for name, function in inspect.getmembers(module, inspect.isfunction)
        if function.__module__ == module.__name__ and not name.startswith("_")
    ]


ALL = [f for m in MODULES for f in functions(m)]
FORMULAS = [f for m in FORMULA_MODULES for f in functions(m)]


def returning(*annotations):
    return [f for f in FORMULAS if inspect.signature(f.values[0]).return_annotation in annotations]


@pytest.mark.parametrize("module_name", MODULES)
def test_examples_run(module_name):
    module = importlib.import_module(f"flangebook.bending.{module_name}")
    assert doctest.testmod(module).failed == 0


@pytest.mark.parametrize("function", [f for f in ALL if "\nArgs:" in inspect.getdoc(f.values[0])])
def test_named_parameters_are_the_real_ones(function):
    block = re.split(r"\n\n", inspect.getdoc(function).split("\nArgs:\n")[1])[0]
    named = re.findall(r"^    (\w+):", block, re.MULTILINE)
    assert named == list(inspect.signature(function).parameters)


@pytest.mark.parametrize("function", returning("float", "Estimate"))
def test_formulas_say_their_unit(function):
    assert re.search(r"\[(mm|cm|N|deg|kg|-|mm/mm)\]", inspect.getdoc(function))


@pytest.mark.parametrize("function", returning("float"))
def test_formulas_have_an_example(function):
    assert ">>>" in inspect.getdoc(function)
