"""Compiled functions: loaded late, kept on disk, safe for several processes at once."""

from __future__ import annotations

import ast
import os
import shutil
import subprocess
import sys
import time
from pathlib import Path

import pytest

from flangebook.bending import compiled

MODULE = """
from flangebook.bending import compiled
from pathlib import Path
import sys
compiled.kept_in = lambda: Path(sys.argv[1])
from flangebook.bending.compiled import kernel

@kernel
def inner(x: float, n: int) -> float:
    total = 0.0
    for i in range(n):
        total += x / (i + 1.0)
    return total

@kernel
def outer(x: float) -> float:
    return inner(x, 4) + inner(2.0 * x, 2)

print(outer(12.0), inner(12.0, 2))
if "numba" in sys.modules:
    made = [outer._made[True], inner._made[True], inner._made[False]]
    hits = sum(sum(one.stats.cache_hits.values()) for one in made if hasattr(one, "stats"))
    print(hits)
"""


def run(module: Path, kept: Path, **settings: str) -> subprocess.Popen[str]:
    command = [sys.executable, str(module), str(kept)]
    environment = {**os.environ, **settings}
    return subprocess.Popen(command, stdout=subprocess.PIPE, text=True, env=environment)


@pytest.fixture
def module(tmp_path: Path) -> Path:
    file = tmp_path / "two_kernels.py"
    file.write_text(MODULE)
    return file


@pytest.mark.slow
def test_processes_that_start_together_do_each_other_no_harm(module: Path, tmp_path: Path) -> None:
    """Four compile the same two functions into the same empty folder; a fifth finds them."""
    kept = tmp_path / "kept"
    kept.mkdir()
    together = [run(module, kept) for _ in range(4)]
    assert [one.communicate(timeout=120)[0].splitlines()[0] for one in together] == [
        "61.0 18.0"
    ] * 4
    assert {one.returncode for one in together} == {0}
    said = run(module, kept).communicate(timeout=120)[0].splitlines()
    assert said[0] == "61.0 18.0"
    assert int(said[1]) >= 2


@pytest.fixture(scope="module")
def compiled_once(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A folder with the two functions compiled in ``kept``; to be copied."""
    folder = tmp_path_factory.mktemp("compiled")
    (folder / "kept").mkdir()
    (folder / "two_kernels.py").write_text(MODULE)
    run(folder / "two_kernels.py", folder / "kept").communicate(timeout=120)
    return folder


@pytest.mark.slow
@pytest.mark.parametrize("left", [b"", b"half of somethi"])
@pytest.mark.parametrize("kind", ["*.nbi", "*.nbc"])
def test_a_kept_file_that_is_broken_is_made_again(
    compiled_once: Path, tmp_path: Path, kind: str, left: bytes
) -> None:
    """As a power cut or a full disk leaves them."""
    module, kept = compiled_once / "two_kernels.py", tmp_path / "kept"
    shutil.copytree(compiled_once / "kept", kept)
    files = list(kept.rglob(kind))
    assert files
    for file in files:
        file.write_bytes(left)
    again = run(module, kept)
    assert again.communicate(timeout=120)[0].splitlines()[0] == "61.0 18.0"


def test_without_the_compiler_at_work_the_answers_are_the_same(
    module: Path, tmp_path: Path
) -> None:
    said = run(module, tmp_path, NUMBA_DISABLE_JIT="1").communicate(timeout=120)[0]
    assert said.splitlines()[0] == "61.0 18.0"


@pytest.mark.slow
def test_a_start_of_the_server_does_not_load_the_compiler() -> None:
    ask = "import sys, flangebook.serving.shop_server; print('numba' in sys.modules)"
    done = subprocess.run([sys.executable, "-c", ask], capture_output=True, text=True, check=True)
    assert done.stdout == "False\n"


def test_what_is_kept_has_the_name_of_its_sources(monkeypatch: pytest.MonkeyPatch) -> None:
    here = compiled.kept_in()
    assert os.access(here, os.W_OK)
    monkeypatch.setattr(compiled, "_FOLDERS", ("ordering",))
    assert compiled._sources()[:16] not in here.name


def test_old_folders_go_and_new_ones_stay(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Another version's that is still being made is left alone."""
    wanted, old, new, other = (
        tmp_path / name for name in ("compiled-me", "compiled-old", "compiled-new", "else")
    )
    for folder in (wanted, old, new, other):
        folder.mkdir()
        (folder / "one.nbi").write_text("")
    long_ago = time.time() - 7200
    for folder in (wanted, old, other):
        os.utime(folder, (long_ago, long_ago))
    monkeypatch.setattr(compiled, "kept_in", lambda: wanted)
    compiled.forget_old()
    assert sorted(one.name for one in tmp_path.iterdir()) == [
        "compiled-me", "compiled-new", "else",
    ]  # fmt: skip


def test_no_kernel_uses_what_its_kept_form_would_not_notice_change() -> None:
    """A constant is compiled in; one from elsewhere could change under what is kept."""
    here = Path(compiled.__file__).parent
    files = [file for name in compiled._FOLDERS for file in sorted((here / name).glob("*.py"))]
    kernels = 0
    for file in files:
        tree = ast.parse(file.read_text("utf-8"))
        foreign = {
            alias.asname or alias.name: node.module
            for node in ast.walk(tree)
            if isinstance(node, ast.ImportFrom) and _is_outside(node.module or "")
            for alias in node.names
        }
        for function in ast.walk(tree):
            if isinstance(function, ast.FunctionDef) and _is_kernel(function):
                kernels += 1
                body = [n for part in function.body for n in ast.walk(part)]
                used = {node.id for node in body if isinstance(node, ast.Name)}
                assert not used & set(foreign), (file.name, function.name)
    assert kernels > 20


def _is_outside(module: str) -> bool:
    mine = (f"flangebook.bending.{name}" for name in (*compiled._FOLDERS, "compiled"))
    return module.startswith("flangebook") and not module.startswith(tuple(mine))


def _is_kernel(function: ast.FunctionDef) -> bool:
    return any(isinstance(d, ast.Name) and d.id == "kernel" for d in function.decorator_list)
