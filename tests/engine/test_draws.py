"""The examples of a whole run do not hang on the numbers that happen to stand in the code."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

import pytest

PROPERTY = """
import bending
from hypothesis import given, strategies as st
@given(st.lists(st.integers()))
def test_it(drawn):
    print(drawn)
"""


def drawn(folder: Path, root: Path, number: int) -> str:
    """What a property draws beside that number, with the settings of the whole run."""
    file = folder / f"with_{number}" / "test_it.py"
    file.parent.mkdir()
    file.write_text(PROPERTY, "utf-8")
    (file.parent / "bending.py").write_text(f"NUMBER = {number}\n", "utf-8")
    command = [
        sys.executable, "-m", "pytest", "-q", "-s", "-p", "no:cacheprovider", "-p", "conftest",
        "--hypothesis-seed", "1", "--rootdir", str(file.parent), str(file),
    ]  # fmt: skip
    settings = {**os.environ, "FLANGEBOOK_ALIKE": "1", "PYTHONPATH": str(root / "tests")}
    run = subprocess.run(
        command, cwd=file.parent, env=settings, check=False, text=True, capture_output=True
    )
    assert run.returncode == 0, run.stdout + run.stderr
    return "\n".join(line for line in run.stdout.splitlines() if line.startswith("["))


@pytest.mark.slow
def test_a_number_in_the_code_changes_no_example(tmp_path: Path, root: Path) -> None:
    one = drawn(tmp_path, root, 424_242)
    assert one.count("\n") >= 50
    assert "424242" not in one
    assert drawn(tmp_path, root, 737_373) == one
