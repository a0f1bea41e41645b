"""The list of the app's own files, for the service worker to keep on the device.

Written from the files that are there, so that it can never be out of date; any changed
byte changes the version, and a browser then fetches a new shell.
"""

from __future__ import annotations

import hashlib
import json
import os
import re
from collections.abc import Iterable, Iterator
from pathlib import Path

Stamp = tuple[str, int, int]
"""A file's name below the root, when it was changed [ns], its length [bytes]."""

# The worker itself is kept by the browser; a kept copy would hide its own updates. The page that
# helps a device to join is for one that has no app yet.
_NOT_KEPT = {"sw.js", "join.html"}
# What stands in the one script and the one stylesheet, and those themselves.
_SOURCES = re.compile(r"(?:app|drawing|screens|view|vendor/(?:idb|lit-html))/.*|style/[^/]+\.css")
_MADE = re.compile(r"made/.*")


def shell_files(web_root: Path, sources: bool = False) -> tuple[Stamp, ...]:
    """What the shell is made of, with what tells that a file has changed.

    web_root: the folder that is served at ``/``.
    sources: whether the page takes the scripts as they are written, not as one (``Config``).
    """
    unused = _MADE if sources else _SOURCES
    found = _below(str(web_root), "")
    return tuple(sorted(one for one in found if _is_shown(one[0]) and not unused.fullmatch(one[0])))


def shell_script(web_root: Path, files: Iterable[Stamp]) -> str:
    """JavaScript that sets ``SHELL`` to ``{version, files}``.

    files: of ``shell_files``. ``index.html`` is listed as ``/``.
    """
    digest = hashlib.sha256()
    listed = []
    for name, *_ in files:
        digest.update(name.encode() + b"\0" + (web_root / name).read_bytes())
        if name not in _NOT_KEPT:
            listed.append("/" if name == "index.html" else f"/{name}")
    shell = {"version": digest.hexdigest()[:16], "files": listed}
    return f"self.SHELL = {json.dumps(shell)};\n"


def _is_shown(name: str) -> bool:
    file = name.rpartition("/")[2]
    return not (file.startswith(".") or file == "LICENSE" or file.endswith((".map", ".md")))


def _below(folder: str, within: str) -> Iterator[Stamp]:
    """All files below a folder. Asked for at each visit, so it looks at each folder only once."""
    with os.scandir(folder) as entries:
        for entry in entries:
            if entry.is_dir():
                yield from _below(entry.path, f"{within}{entry.name}/")
            elif entry.is_file():
                facts = entry.stat()
                yield within + entry.name, facts.st_mtime_ns, facts.st_size
