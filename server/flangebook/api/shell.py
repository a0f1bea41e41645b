"""The list of the app's own files, for the service worker to keep on the device.

Written from the files that are there, so that it can never be out of date; any changed
byte changes the version, and a browser then fetches a new shell.
"""

from __future__ import annotations

import hashlib
import json
import re
from pathlib import Path

# The worker itself is kept by the browser; a kept copy would hide its own updates. The page that
# helps a device to join is for one that has no app yet.
_NOT_KEPT = {"sw.js", "join.html"}
# What stands in the one script and the one stylesheet, and those themselves.
_SOURCES = re.compile(r"(?:app|drawing|screens|view|vendor/(?:idb|lit-html))/.*|style/[^/]+\.css")
_MADE = re.compile(r"made/.*")


def shell_script(web_root: Path, sources: bool = False) -> str:
    """JavaScript that sets ``SHELL`` to ``{version, files}``.

    web_root: the folder that is served at ``/``. ``index.html`` is listed as ``/``.
    sources: whether the page takes the scripts as they are written, not as one (``Config``).
    """
    unused = _MADE if sources else _SOURCES
    digest = hashlib.sha256()
    files = []
    for path in sorted(p for p in web_root.rglob("*") if p.is_file()):
        name = path.relative_to(web_root).as_posix()
        if path.name.startswith(".") or path.name == "LICENSE" or path.suffix in (".map", ".md"):
            continue
        if unused.fullmatch(name):
            continue
        digest.update(name.encode() + b"\0" + path.read_bytes())
        if name not in _NOT_KEPT:
            files.append("/" if name == "index.html" else f"/{name}")
    shell = {"version": digest.hexdigest()[:16], "files": files}
    return f"self.SHELL = {json.dumps(shell)};\n"
