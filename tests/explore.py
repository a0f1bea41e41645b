"""Draw fresh examples for every property until the time is up: ``tests/run --explore MINUTES``.

One process for each core runs the properties in an order of its own, each with a seed of its
own, again and again. hypothesis writes each failing example as a patch; it is applied here,
so the example stays beside its test as an ``@example``. A test that failed rests from then on.
An example that cannot be written down (drawn inside the test, by ``data``) is printed only.
"""

from __future__ import annotations

import json
import os
import random
import re
import subprocess
import sys
import time
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parent.parent
# Importing schemathesis takes the values out of the examples that are printed.
CALLS = "tests/api/test_described_calls.py"
PATCHES = ROOT / ".hypothesis/patches"
_UNTIL, _FAILED = "FLANGEBOOK_EXPLORE_UNTIL", "FLANGEBOOK_EXPLORE_FAILED"
_SEED = "FLANGEBOOK_EXPLORE_SEED"


def explore(minutes: float, arguments: list[str], cores: int) -> int:
    """Run the properties for that long; print what failed. 0 when nothing did."""
    until, failed, rounds = time.time() + 60.0 * minutes, set[str](), 0
    known = set(PATCHES.glob("*.patch"))
    while time.time() < until:
        runs = [_start(until, failed, arguments) for _ in range(cores)]
        printed = [run.communicate()[0] for run in runs]
        rounds += cores
        for run, words in zip(runs, printed, strict=True):
            new = set(re.findall(r"^FAILED (.+?)(?: - .*)?$", words, re.MULTILINE))
            failed |= new
            if new or run.returncode not in (0, 1, 2, 5):
                print(words, flush=True)
            if run.returncode not in (0, 1, 2, 5):
                return run.returncode
        for patch in sorted(set(PATCHES.glob("*.patch")) - known):
            known.add(patch)
            _keep(patch)
    print(f"{rounds} rounds in {minutes:g} minutes; {len(failed)} properties failed.", flush=True)
    print(*sorted(failed), sep="\n", flush=True)
    return 1 if failed else 0


def _start(until: float, failed: set[str], arguments: list[str]) -> subprocess.Popen[str]:
    """One round over all properties in a process of its own."""
    seed = str(random.SystemRandom().randrange(2**32))
    command = [
        sys.executable, "-m", "pytest", "-p", "explore", "-m", "hypothesis", "-q", "-rf",
        "--hypothesis-seed", seed, *(arguments or ["tests"]),
    ]  # fmt: skip
    settings = {
        **os.environ, _UNTIL: str(until), _FAILED: "\n".join(sorted(failed)), _SEED: seed,
        "PYTHONPATH": str(ROOT / "tests"),
    }  # fmt: skip
    return subprocess.Popen(
        command, cwd=ROOT, env=settings, text=True, stdout=subprocess.PIPE, stderr=subprocess.STDOUT
    )


def _keep(patch: Path) -> None:
    """Put the failing examples into the tests' files, as the project's style has it."""
    applied = subprocess.run(["git", "apply", str(patch)], cwd=ROOT, check=False)
    if applied.returncode:
        print(f"{patch.name} could not be applied; it is in {PATCHES.relative_to(ROOT)}")
        return
    files = sorted(set(re.findall(r"^\+\+\+ \./(\S+)", patch.read_text("utf-8"), re.MULTILINE)))
    for file in files:
        _import_names(ROOT / file)
    for run in (["check", "--quiet", "--fix", "--select", "I"], ["format", "--quiet"]):
        subprocess.run([sys.executable, "-m", "ruff", *run, *files], cwd=ROOT, check=False)
    print(f"The failing examples are in {', '.join(files)}.", flush=True)


def _import_names(file: Path) -> None:
    """Imports for what the examples name and the file has not: the decorator, and our classes."""
    command = ["check", "--select", "F821", "--output-format", "json", str(file)]
    told = subprocess.run(
        [sys.executable, "-m", "ruff", *command], cwd=ROOT, check=False, capture_output=True
    )
    names = {re.findall(r"`(\w+)`", one["message"])[0] for one in json.loads(told.stdout)}
    lines = [f"from {module} import {name}" for name in names if (module := _module_of(name))]
    source = file.read_text("utf-8")
    begin = source.index("from hypothesis import ")
    file.write_text(
        source[:begin] + "".join(f"{line}\n" for line in lines) + source[begin:], "utf-8"
    )


def _module_of(name: str) -> str:
    """The module that a class of ours is defined in; empty for what is nowhere."""
    if name == "example":
        return "hypothesis"
    server = ROOT / "server"
    for file in sorted(server.glob("flangebook/**/*.py")):
        if re.search(rf"^class {name}\b", file.read_text("utf-8"), re.MULTILINE):
            return ".".join(file.relative_to(server).with_suffix("").parts)
    return ""


# What follows is the plugin that each round loads.


@pytest.hookimpl(trylast=True)
def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    """Each round has an order of its own, and leaves out what failed already."""
    if _SEED not in os.environ:
        return
    failed = os.environ[_FAILED].splitlines()
    items[:] = [item for item in items if item.nodeid not in failed]
    random.Random(os.environ[_SEED]).shuffle(items)


@pytest.hookimpl(tryfirst=True)
def pytest_runtest_teardown(item: pytest.Item) -> None:
    """Stop between two tests when the time is up."""
    if time.time() >= float(os.environ.get(_UNTIL, "inf")):
        item.session.shouldstop = "The time is up."


if __name__ == "__main__":
    sys.exit(explore(float(sys.argv[1]), sys.argv[2:], os.cpu_count() or 1))
