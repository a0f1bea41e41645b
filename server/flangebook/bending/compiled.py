"""Compiled arithmetic for the order search: which functions are compiled, and where that is kept.

A search looks at many thousands of sweeps; compiled, one takes microseconds. The compiled code
is kept on disk, so it is made once and not at each start. A kept function also holds what it
calls in other files, and the compiler looks only at its own file for changes: therefore the
folder is named after the contents of every file with compiled functions.
"""

from __future__ import annotations

import hashlib
import os
import tempfile
from collections.abc import Callable
from functools import cache
from pathlib import Path
from typing import Any, TypeVar, cast

import numba

_HERE = Path(__file__).parent
_FOLDERS = ("clearance", "ordering")
_Function = TypeVar("_Function", bound=Callable[..., Any])


def kernel(function: _Function) -> _Function:
    """The function, compiled on first use and kept on disk; it lets other threads run."""
    numba.config.CACHE_DIR = str(kept_in())
    made = numba.njit(cache=True, nogil=True, error_model="numpy")(function)
    return cast(_Function, made)


@cache
def kept_in() -> Path:
    """The folder that compiled functions of exactly these sources are kept in."""
    sources = hashlib.sha256(numba.__version__.encode())
    files = [_HERE / "compiled.py"]
    files += [file for folder in _FOLDERS for file in sorted((_HERE / folder).glob("*.py"))]
    for file in files:
        sources.update(file.name.encode() + b"\0" + file.read_bytes())
    name = f"compiled-{sources.hexdigest()[:16]}"
    for parent in (_HERE / "__pycache__", Path(tempfile.gettempdir()) / f"flangebook-{_user()}"):
        try:
            (parent / name).mkdir(parents=True, exist_ok=True)
        except OSError:
            continue
        if os.access(parent / name, os.W_OK):
            return parent / name
    return Path(tempfile.mkdtemp(prefix="flangebook-"))


def _user() -> str:
    return str(os.getuid()) if hasattr(os, "getuid") else "user"
