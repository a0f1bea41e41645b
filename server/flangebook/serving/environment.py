"""The project's own Python environment: made once, checked in a moment ever after.

Used by ``server/start`` and ``tests/run`` before anything is installed, so it needs nothing
but the standard library, and it is loaded by its path rather than imported from the package.
It has to be readable by old Pythons too, to be able to say that they are too old.

What is installed is written down last, as hashes of the lock files: an installation that was
cut off leaves no such note and is made anew.
"""

from __future__ import annotations

import contextlib
import hashlib
import importlib.util
import json
import os
import re
import shutil
import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path

OLDEST = (3, 11)
WARM_UP = "flangebook.planning.warm_up"
_NOTE = "flangebook-installed.json"
_MISSING_VENV = (
    "Python's venv module is not complete here. Get it with "
    "`apt-get install python3-venv` (on Debian or Ubuntu), then start again."
)


class SetupError(Exception):
    """The environment cannot be made; the message says in one line why and what helps."""


def python_for(root: Path, lock: Path, *within: Path) -> Path:
    """The Python of ``root/.venv`` with everything in the lock file installed.

    root: the repository. lock: a requirements file with hashes inside it. within: other
    such files that ask for nothing but what is in ``lock`` as well.
    Raises SetupError.
    """
    require_python()
    folder = root / ".venv"
    python = _python_in(folder)
    want = _wanted(root, lock, *within)
    if not _is_installed(folder, python, want):
        with _alone(root / ".venv.lock"):
            if not _is_installed(folder, python, want):
                _install(root, folder, python, lock, want)
    _compile(root, folder, python)
    return python


def run_python(python: Path, arguments: list[str]) -> int:
    """Become that Python program, where the system can; else run it and give its exit code."""
    command = [str(python), *arguments]
    sys.stdout.flush()
    if os.name == "posix":
        os.execv(command[0], command)
    child = subprocess.Popen(command)
    while True:
        # Ctrl-C reaches the child as well: wait for it to stop by itself.
        with contextlib.suppress(KeyboardInterrupt):
            return child.wait()


def require_python(version: tuple[int, ...] = tuple(sys.version_info[:3])) -> None:
    """Raise SetupError when this Python is too old."""
    if version < OLDEST:
        raise SetupError(
            "Flangebook needs Python {}.{} or newer, this is {}. Install a newer one (Debian: "
            "`apt-get install python3`; otherwise from python.org) and start with it.".format(
                *OLDEST, ".".join(map(str, version))
            )
        )


def require_venv() -> None:
    """Raise SetupError when Python came without what makes an environment."""
    for module in ("venv", "ensurepip"):
        if importlib.util.find_spec(module) is None:
            raise SetupError(_MISSING_VENV)


def _python_in(folder: Path) -> Path:
    return folder / ("Scripts/python.exe" if os.name == "nt" else "bin/python")


def _wanted(root: Path, *locks: Path) -> dict[str, str]:
    """What has to be written in the note for the environment to be the right one."""
    project = (root / "pyproject.toml").read_bytes()
    python = "{}.{} {}".format(*sys.version_info[:2], sys.base_prefix)
    hashes = {
        lock.relative_to(root).as_posix(): hashlib.sha256(lock.read_bytes() + project).hexdigest()
        for lock in locks
    }
    return {"root": str(root), "python": python, **hashes}


def _read_note(folder: Path) -> dict[str, str]:
    try:
        note = json.loads((folder / _NOTE).read_text(encoding="utf-8"))
    except (OSError, ValueError):
        return {}
    return note if isinstance(note, dict) else {}


def _is_installed(folder: Path, python: Path, want: dict[str, str]) -> bool:
    note = _read_note(folder)
    return python.exists() and all(note.get(key) == value for key, value in want.items())


def _install(root: Path, folder: Path, python: Path, lock: Path, want: dict[str, str]) -> None:
    require_venv()
    note = _read_note(folder)
    kept = note if all(note.get(k) == want[k] for k in ("root", "python")) else {}
    (folder / _NOTE).unlink(missing_ok=True)
    if not (kept and python.exists()):
        kept = {}
        _say(f"Making a Python environment in {folder.name} (only the first time) ...")
        shutil.rmtree(folder, ignore_errors=True)
        _make(folder)
    _say("Installing what the project needs (only the first time) ...")
    # The lock names all there is to install: nothing to work out. Python compiles what is loaded.
    plain = ["--no-deps", "--no-compile"]
    _pip(python, [*plain, "--require-hashes", "--only-binary=:all:", "-r", str(lock)], _count(lock))
    _pip(python, ["--no-deps", "--no-build-isolation", "-e", str(root)], 0)
    note = {key: value for key, value in {**kept, **want}.items() if key != "compiled"}
    (folder / _NOTE).write_text(json.dumps(note, indent=1), encoding="utf-8")
    _say("Installed.")


def _compile(root: Path, folder: Path, python: Path) -> None:
    """Compile what bend model and order search are made of, when it is new or changed.

    It is only made ready here so that nobody waits for it later: a failure is said, no more.
    """
    made_of = _compiled_from(root)
    if not made_of or _read_note(folder).get("compiled") == made_of:
        return
    with _alone(root / ".venv.lock"):
        if _read_note(folder).get("compiled") == made_of:
            return
        _say("Making bend model and order search ready (only the first time) ...")
        command = [str(python), "-m", WARM_UP]
        done = subprocess.run(command, capture_output=True, text=True, check=False)
        if done.returncode:
            last = (done.stderr or done.stdout).strip().splitlines()[-1:]
            _say("That failed; the first plan tries again and takes longer. " + "".join(last))
            return
        note = {**_read_note(folder), "compiled": made_of}
        (folder / _NOTE).write_text(json.dumps(note, indent=1), encoding="utf-8")


def _compiled_from(root: Path) -> str:
    """A hash of the files that compiled functions are in; empty if there are none."""
    package = root / "server/flangebook/bending"
    files = sorted(
        file
        for name in ("ordering", "clearance", "sheet_model")
        for file in (package / name).glob("*.py")
    )
    stamps = [(file.name, file.stat().st_mtime_ns, file.stat().st_size) for file in files]
    return hashlib.sha256(repr(stamps).encode()).hexdigest() if files else ""


def _make(folder: Path) -> None:
    made = subprocess.run(
        [sys.executable, "-m", "venv", str(folder)], capture_output=True, text=True, check=False
    )
    if made.returncode:
        last = (made.stderr or made.stdout).strip().splitlines()[-1:]
        shutil.rmtree(folder, ignore_errors=True)
        raise SetupError(_MISSING_VENV + (f" (It said: {last[0]})" if last else ""))


def _pip(python: Path, arguments: list[str], expected: int) -> None:
    """Run pip, counting packages on the terminal as they come."""
    command = [str(python), "-m", "pip", "install", "--disable-pip-version-check", "--no-input",
               "--progress-bar=off", *arguments]  # fmt: skip
    pip = subprocess.Popen(
        command, stdout=subprocess.PIPE, stderr=subprocess.STDOUT, text=True, errors="replace"
    )
    assert pip.stdout is not None
    lines: list[str] = []
    seen = 0
    for line in pip.stdout:
        lines.append(line.rstrip())
        found = re.match(r"(?:Collecting |Processing \S*[/\\])([A-Za-z0-9_.]+)", line)
        if found and expected:
            seen += 1
            _say(f"  {seen:3} of about {expected}: {found[1]}")
        elif line.startswith("Installing collected") and expected:
            _say("  unpacking ...")
    if pip.wait():
        print(*lines[-15:], sep="\n", file=sys.stderr)
        raise SetupError(
            "Installing failed; pip's last words are above. Check the network and the free "
            "disk space, then start again: it goes on from a clean state."
        )


def _count(lock: Path) -> int:
    """How many packages the lock file names, for this system or another."""
    names = re.findall(r"^([\w.\-]+)==", lock.read_text(encoding="utf-8"), re.MULTILINE)
    return len(set(names))


@contextlib.contextmanager
def _alone(path: Path) -> Iterator[None]:
    """Hold a lock file, so that two starts at once do not install over each other.

    The system lets go of it when the process ends, however it ends.
    """
    with path.open("a+", encoding="utf-8") as file:
        if os.name == "nt":
            import msvcrt  # noqa: PLC0415

            msvcrt.locking(file.fileno(), msvcrt.LK_LOCK, 1)  # type: ignore[attr-defined,unused-ignore]
        else:
            import fcntl  # noqa: PLC0415

            fcntl.flock(file, fcntl.LOCK_EX)
        yield


def _say(line: str) -> None:
    print(line, flush=True)
