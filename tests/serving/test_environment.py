"""What makes the environment: says in one line what is missing, and does nothing twice."""

from __future__ import annotations

import importlib.util
import json
import os
import re
import subprocess
import sys
import tomllib
import types
from pathlib import Path

import pytest

from .running import READY


@pytest.fixture
def environment(root: Path) -> types.ModuleType:
    """The module, loaded by its path as the start script does."""
    path = root / "server/flangebook/serving/environment.py"
    spec = importlib.util.spec_from_file_location("environment", path)
    assert spec is not None
    assert spec.loader is not None
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    return module


@pytest.fixture
def project(tmp_path: Path) -> Path:
    """A project with nothing to install but itself."""
    (tmp_path / "server").mkdir()
    (tmp_path / "server/requirements.lock").write_text("")
    (tmp_path / "pyproject.toml").write_text("")
    return tmp_path


def pretend_installed(environment: types.ModuleType, project: Path) -> Path:
    lock = project / "server/requirements.lock"
    python: Path = environment._python_in(project / ".venv")
    python.parent.mkdir(parents=True)
    python.write_text("")
    note = json.dumps(environment._wanted(project, lock))
    (project / ".venv" / environment._NOTE).write_text(note)
    return lock


def test_an_old_python_is_told_which_one_is_needed(environment: types.ModuleType) -> None:
    with pytest.raises(environment.SetupError, match=r"3\.11 or newer, this is 3\.9\.2") as told:
        environment.require_python((3, 9, 2))
    assert "\n" not in str(told.value)
    environment.require_python((3, 11, 0))
    environment.require_python((4, 0, 0))


@pytest.mark.parametrize("missing", ["venv", "ensurepip"])
def test_without_the_venv_module_it_says_how_to_get_it(
    environment: types.ModuleType, monkeypatch: pytest.MonkeyPatch, missing: str
) -> None:
    find = importlib.util.find_spec
    monkeypatch.setattr(
        environment.importlib.util, "find_spec", lambda n: None if n == missing else find(n)
    )
    with pytest.raises(environment.SetupError, match="apt-get install python3-venv") as told:
        environment.require_venv()
    assert "\n" not in str(told.value)


def test_what_is_installed_is_not_installed_again(
    environment: types.ModuleType, project: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    lock = pretend_installed(environment, project)
    monkeypatch.setattr(environment, "_install", lambda *_: pytest.fail("installed again"))
    assert environment.python_for(project, lock).exists()


@pytest.mark.parametrize("change", ["lock", "pyproject", "moved", "cut off", "no python"])
def test_it_installs_again_when_it_has_to(
    environment: types.ModuleType, project: Path, monkeypatch: pytest.MonkeyPatch, change: str
) -> None:
    lock = pretend_installed(environment, project)
    note = project / ".venv" / environment._NOTE
    match change:
        case "lock":
            lock.write_text("# another")
        case "pyproject":
            (project / "pyproject.toml").write_text("# another")
        case "moved":
            note.write_text(note.read_text().replace(project.name, "elsewhere"))
        case "cut off":
            note.unlink()
        case "no python":
            environment._python_in(project / ".venv").unlink()
    installed: list[Path] = []
    monkeypatch.setattr(environment, "_install", lambda root, *_: installed.append(root))
    environment.python_for(project, lock)
    assert installed == [project]


def test_the_note_is_gone_while_it_installs_and_after_it_failed(
    environment: types.ModuleType, project: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    lock = pretend_installed(environment, project)
    lock.write_text("# another")
    note = project / ".venv" / environment._NOTE

    def fail(*_: object) -> None:
        assert not note.exists()
        raise environment.SetupError("no network")

    monkeypatch.setattr(environment, "_pip", fail)
    with pytest.raises(environment.SetupError):
        environment.python_for(project, lock)
    assert not note.exists()


def test_a_failed_download_shows_pips_words_and_one_line_of_advice(
    environment: types.ModuleType, capfd: pytest.CaptureFixture[str]
) -> None:
    arguments = ["--no-index", "no-such-package-of-ours==1"]
    with pytest.raises(environment.SetupError, match="Check the network"):
        environment._pip(Path(sys.executable), arguments, 1)
    assert "no-such-package-of-ours" in capfd.readouterr().err


def test_two_at_once_wait_for_each_other(environment: types.ModuleType, tmp_path: Path) -> None:
    lock = tmp_path / "lock"
    ask = (
        "import importlib.util as u, pathlib, sys\n"
        "s = u.spec_from_file_location('e', sys.argv[1]); e = u.module_from_spec(s)\n"
        "s.loader.exec_module(e)\n"
        "with e._alone(pathlib.Path(sys.argv[2])): print('in', flush=True)\n"
    )
    arguments = [sys.executable, "-c", ask, environment.__file__, str(lock)]
    with environment._alone(lock):
        other = subprocess.Popen(arguments, stdout=subprocess.PIPE, text=True)
        with pytest.raises(subprocess.TimeoutExpired):
            other.wait(1.5)
    assert other.communicate(timeout=30)[0] == "in\n"


def test_it_needs_only_the_standard_library(environment: types.ModuleType, root: Path) -> None:
    paths = [Path(environment.__file__), root / "server/start", root / "tests/run"]
    for path in paths:
        modules = re.findall(r"^\s*(?:import|from) (\w+)", path.read_text("utf-8"), re.MULTILINE)
        assert set(modules) <= sys.stdlib_module_names | {"__future__"}, path


@pytest.mark.parametrize("name", ["server/requirements.lock", "tests/requirements.lock"])
def test_the_lock_files_pin_every_package_by_hash_and_name_no_host(root: Path, name: str) -> None:
    text = (root / name).read_text("utf-8")
    lines = [line for line in text.splitlines() if line and not line.lstrip().startswith("#")]
    pinned = [line for line in lines if not line.startswith(" ")]
    assert len(pinned) > 20
    assert all("==" in line and line.endswith("\\") for line in pinned)
    assert all(re.match(r"    --hash=sha256:[0-9a-f]{64}( \\)?$", x) for x in lines if x[0] == " ")
    assert not re.search(r"https?:|--index|--extra-index|--find-links", text)


@pytest.mark.parametrize(
    ("name", "extras"),
    [("server/requirements.lock", ["build"]), ("tests/requirements.lock", ["build", "test"])],
)
def test_everything_the_project_asks_for_is_locked(
    root: Path, name: str, extras: list[str]
) -> None:
    project = tomllib.loads((root / "pyproject.toml").read_text("utf-8"))["project"]
    asked = [
        *project["dependencies"],
        *(x for e in extras for x in project["optional-dependencies"][e]),
    ]
    wanted = {re.split(r"[^\w.-]", one)[0] for one in asked}
    locked = re.findall(r"^([\w.-]+)==", (root / name).read_text("utf-8"), re.MULTILINE)
    assert wanted <= set(locked)


def test_both_lock_files_agree(root: Path) -> None:
    def pins(name: str) -> set[str]:
        text = (root / name).read_text("utf-8")
        return set(re.findall(r"^(\S+==\S+(?: ; [^\\]+)?)", text, re.MULTILINE))

    assert pins("server/requirements.lock") < pins("tests/requirements.lock")


def test_the_npm_lock_file_pins_by_hash_and_names_no_host(root: Path) -> None:
    lock = json.loads((root / "tests/web_tools/package-lock.json").read_text("utf-8"))
    packages = {name: one for name, one in lock["packages"].items() if name}
    assert packages
    assert all(one["integrity"].startswith("sha512-") for one in packages.values())
    assert not any("resolved" in one for one in packages.values())


@pytest.mark.skipif(sys.platform == "win32", reason="the file's mode is of POSIX")
@pytest.mark.parametrize("name", ["server/start", "tests/run", ".ci/run"])
def test_the_scripts_can_be_started(root: Path, name: str) -> None:
    assert os.access(root / name, os.X_OK)


@pytest.mark.skipif(sys.platform == "win32", reason="becomes the server only on POSIX")
def test_the_start_script_becomes_the_server(root: Path, tmp_path: Path) -> None:
    """It makes the environment if it is not there, and a signal to it reaches the server."""
    start = [str(root / "server/start"), "--port", "0", "--data", str(tmp_path), "--empty"]
    process = subprocess.Popen(start, stdout=subprocess.PIPE, text=True)
    try:
        assert process.stdout is not None
        said = [process.stdout.readline()]
        while said[-1] and not READY.match(said[-1]):
            said.append(process.stdout.readline())
        assert READY.match(said[-1]), said
        process.terminate()
        assert process.wait(30) == 0
    finally:
        if process.poll() is None:
            process.kill()
        process.wait()


@pytest.fixture
def search_files(project: Path) -> Path:
    """What the order search is compiled from, in a project where all is installed."""
    folder = project / "server/flangebook/bending/ordering"
    folder.mkdir(parents=True)
    (folder / "search.py").write_text("")
    return folder


def compiled_by(
    environment: types.ModuleType, project: Path, monkeypatch: pytest.MonkeyPatch, code: int = 0
) -> list[list[str]]:
    """The commands that getting ready runs; each ends with that exit code."""
    commands: list[list[str]] = []

    def run(command: list[str], **_: object) -> subprocess.CompletedProcess[str]:
        commands.append(command)
        return subprocess.CompletedProcess(command, code, "", "no room on the disk")

    monkeypatch.setattr(environment.subprocess, "run", run)
    environment.python_for(project, project / "server/requirements.lock")
    environment.python_for(project, project / "server/requirements.lock")
    return commands


def test_the_order_search_is_compiled_once(
    environment: types.ModuleType,
    project: Path,
    search_files: Path,
    monkeypatch: pytest.MonkeyPatch,
    capsys: pytest.CaptureFixture[str],
) -> None:
    pretend_installed(environment, project)
    commands = compiled_by(environment, project, monkeypatch)
    assert [command[1:] for command in commands] == [["-m", environment.WARM_UP]]
    assert "only the first time" in capsys.readouterr().out
    (search_files / "search.py").write_text("# another")
    assert len(compiled_by(environment, project, monkeypatch)) == 1
    assert environment._is_installed(
        project / ".venv",
        environment._python_in(project / ".venv"),
        environment._wanted(project, project / "server/requirements.lock"),
    )


def test_when_compiling_fails_it_says_so_and_goes_on(
    environment: types.ModuleType,
    project: Path,
    search_files: Path,
    monkeypatch: pytest.MonkeyPatch,
    capsys: pytest.CaptureFixture[str],
) -> None:
    assert search_files.exists()
    pretend_installed(environment, project)
    assert len(compiled_by(environment, project, monkeypatch, code=1)) == 2
    said = capsys.readouterr().out
    assert "no room on the disk" in said
    assert "Traceback" not in said


def test_what_gets_the_search_ready_is_there(environment: types.ModuleType) -> None:
    assert importlib.util.find_spec(environment.WARM_UP) is not None
