"""Compiled arithmetic of bend model and order search: which functions, and where that is kept.

A search looks at many thousands of sweeps, a bend at as many integrals; compiled, one takes
microseconds. The compiled code is kept on disk, so it is made once and not at each start. A kept
function also holds what it calls in other files, and the compiler looks only at its own file for
changes: therefore the folder is named after the contents of every file with compiled functions.

The compiler is loaded when the first of them is called and not before, so that a server is
ready without it.
"""

from __future__ import annotations

import functools
import hashlib
import os
import shutil
import tempfile
import threading
import time
from collections.abc import Callable
from functools import cache
from importlib.metadata import version
from pathlib import Path
from pickle import UnpicklingError
from types import FunctionType
from typing import Any, TypeVar, cast

_HERE = Path(__file__).parent
_FOLDERS = ("clearance", "ordering", "sheet_model")
_OLD_S = 3600.0
_HOW: dict[str, Any] = {"cache": True, "nogil": True, "error_model": "numpy"}
_Function = TypeVar("_Function", bound=Callable[..., Any])
_BROKEN = (EOFError, OSError, UnpicklingError, LookupError, ValueError, RuntimeError, ImportError)
"""What loading kept files raises that a power cut or a full disk left broken."""

_compiling = threading.RLock()
_begun_anew = threading.Event()
_kernels: list[_Kernel] = []


class _Kernel:
    """A function that is compiled when it is first called.

    Called from Python it needs a wrapper that takes Python's values apart; for a problem of
    many arrays that costs more to compile than most functions. So it is compiled twice: with
    the wrapper only if Python calls it, and without, for the other kernels to call.
    """

    def __init__(self, function: Callable[..., Any], *, inlined: bool) -> None:
        functools.update_wrapper(self, function)
        self._function, self._inlined = function, inlined
        self._made: dict[bool, Callable[..., Any]] = {}
        _kernels.append(self)

    def __call__(self, *arguments: Any) -> Any:
        made = self._made.get(True) or self.compiled(for_python=True)
        try:
            return made(*arguments)
        except _BROKEN:
            if _begun_anew.is_set():
                raise
            _begin_anew()
        return self.compiled(for_python=True)(*arguments)

    def forget(self) -> None:
        """Compile or load it anew at the next call."""
        self._made.clear()

    def compiled(self, *, for_python: bool) -> Callable[..., Any]:
        """The compiled function, calling others like it directly."""
        with _compiling:
            if for_python not in self._made:
                self._made[for_python] = self._compile(for_python)
            return self._made[for_python]

    def _compile(self, for_python: bool) -> Callable[..., Any]:
        import numba  # noqa: PLC0415

        numba.config.CACHE_DIR = str(kept_in())  # type: ignore[attr-defined]
        function, names = self._function, self._function.__globals__
        known = {name: names[name] for name in function.__code__.co_names if name in names}
        known |= {name: names[name] for name in ("__name__", "__builtins__")}
        copy = FunctionType(function.__code__, known, function.__name__, function.__defaults__)
        # What is kept is found by its name: each of the two needs its own.
        copy.__qualname__ = function.__qualname__ + ("" if for_python else "_inside")
        copy.__module__ = function.__module__
        for name, value in known.items():
            if isinstance(value, _Kernel):
                known[name] = value.compiled(for_python=False)
        wanted = {"no_cfunc_wrapper": True, "no_cpython_wrapper": not for_python, **_HOW}
        # Counting references to arrays at each call takes as long as all that the search does
        # with its states. Who calls holds them; only what makes arrays has to count.
        if self._inlined and not for_python:
            wanted["forceinline"] = True
        wanted["_nrt"] = for_python or "empty" in function.__code__.co_names
        made: Callable[..., Any] = numba.njit(copy, **wanted)
        if hasattr(made, "get_call_template"):
            _take_literals_as_values(made)
        return made


def _take_literals_as_values(made: Any) -> None:
    """Compile one form for all calls, not another for each constant written in a call.

    The compiler would make a function anew for f(x, 0), f(x, 1) and f(x, n).
    """
    from numba.core import types  # noqa: PLC0415

    template = made.get_call_template

    def for_values(arguments: tuple[Any, ...], named: dict[str, Any]) -> Any:
        kinds = [types.unliteral(kind) for kind in arguments]  # type: ignore[no-untyped-call]
        return template(tuple(kinds), named)

    made.get_call_template = for_values


def kernel(function: _Function) -> _Function:
    """The function, compiled on first use and kept on disk; it lets other threads run.

    It may call other kernels by their own names (no recursion), take and give numbers, arrays
    and named tuples of them. Arrays it makes itself come from ``np.empty``.
    """
    return cast(_Function, _Kernel(function, inlined=False))


def inlined_kernel(function: _Function) -> _Function:
    """As ``kernel``, written out in the kernel that calls it, at every place.

    For a function that is called often from one or two places: a problem, a memo and a table are
    hundreds of numbers, which a call would copy one by one.
    """
    return cast(_Function, _Kernel(function, inlined=True))


@cache
def kept_in() -> Path:
    """The folder that compiled functions of exactly these sources are kept in."""
    name = f"compiled-{_sources()[:16]}"
    for parent in _parents():
        try:
            (parent / name).mkdir(parents=True, exist_ok=True)
        except OSError:
            continue
        if os.access(parent / name, os.W_OK):
            return parent / name
    return Path(tempfile.mkdtemp(prefix="flangebook-"))


def forget_old() -> None:
    """Delete what was kept for other sources, unless it was made within the hour.

    Another version may be compiling at this moment; what is deleted under it is only made anew.
    """
    wanted = kept_in()
    for folder in wanted.parent.glob("compiled-*"):
        if folder != wanted and time.time() - folder.stat().st_mtime > _OLD_S:
            shutil.rmtree(folder, ignore_errors=True)


def _begin_anew() -> None:
    """Throw away all that was kept, once in the life of a process."""
    with _compiling:
        if not _begun_anew.is_set():
            _begun_anew.set()
            for file in kept_in().rglob("*.nb?"):
                file.unlink(missing_ok=True)
            for one in _kernels:
                one.forget()


def _sources() -> str:
    """A hash of all files with compiled functions and of the compiler's version."""
    sources = hashlib.sha256(version("numba").encode())
    files = [_HERE / "compiled.py"]
    files += [file for folder in _FOLDERS for file in sorted((_HERE / folder).glob("*.py"))]
    for file in files:
        sources.update(file.name.encode() + b"\0" + file.read_bytes())
    return sources.hexdigest()


def _parents() -> tuple[Path, ...]:
    """Where the folder may be: beside the sources, else in the user's own temporary one."""
    return _HERE / "__pycache__", Path(tempfile.gettempdir()) / f"flangebook-{_user()}"


def _user() -> str:
    return str(os.getuid()) if hasattr(os, "getuid") else "user"
