"""The web app's files by their names; every path that names no file gets the app's page.

A file is read, hashed and compressed once and kept until it changes. The browser asks
again each time (no-cache) and mostly hears that nothing changed; only an address that
names its own version (``?v=``) is kept for good.
"""

from __future__ import annotations

import gzip
import hashlib
import threading
from dataclasses import dataclass
from pathlib import Path, PurePosixPath

from flask import Flask, Response, request
from werkzeug.exceptions import MethodNotAllowed, NotFound

from flangebook.api.config import Config
from flangebook.api.shell import shell_files, shell_script

SHELL_FILES = "shell-files.js"
_TYPES = {
    ".html": "text/html; charset=utf-8",
    ".js": "text/javascript; charset=utf-8",
    ".css": "text/css; charset=utf-8",
    ".json": "application/json",
    ".map": "application/json",
    ".webmanifest": "application/manifest+json",
    ".svg": "image/svg+xml",
    ".txt": "text/plain; charset=utf-8",
    ".png": "image/png",
    ".ico": "image/vnd.microsoft.icon",
    ".woff2": "font/woff2",
    ".wasm": "application/wasm",
}
_COMPRESSED = {".html", ".js", ".css", ".json", ".map", ".webmanifest", ".svg", ".txt", ".wasm"}
_LEAST_COMPRESSED = 300
_SOURCE_OF = {b"/made/app.css": b"/style/app.css", b"/made/app.js": b"/app/main.js"}


@dataclass(frozen=True, slots=True)
class _Kept:
    stamp: object
    etag: str
    plain: bytes
    compressed: bytes | None
    content_type: str


class Files:
    """The files of one folder, kept in memory once asked for."""

    def __init__(self, root: Path, sources: bool) -> None:
        self.root = root.resolve()
        self._sources = sources
        self._kept: dict[str, _Kept] = {}
        self._lock = threading.Lock()

    def find(self, name: str) -> _Kept:
        """A file by its name below the root; NotFound for what is not served."""
        try:
            path = (self.root / name).resolve()
            facts = path.stat()
        except (OSError, ValueError):
            raise NotFound from None
        plain = Path(name).as_posix() == name
        hidden = any(part.startswith(".") for part in Path(name).parts)
        served = (
            plain and path.suffix in _TYPES and path.is_relative_to(self.root) and path.is_file()
        )
        if hidden or not served:
            raise NotFound
        stamp = (facts.st_mtime_ns, facts.st_size)
        kept = self._kept.get(name)
        if kept is None or kept.stamp != stamp:
            kept = self._keep(name, stamp, path.read_bytes(), path.suffix)
        return kept

    def page(self) -> _Kept:
        """The app's page. For a contributor it takes the sources and not what is made of them."""
        page = self.find("index.html")
        if not self._sources:
            return page
        plain = page.plain
        for made, source in _SOURCE_OF.items():
            plain = plain.replace(made, source)
        return self._keep("page of the sources", page.stamp, plain, ".html")

    def shell(self) -> _Kept:
        """The list of the app's own files, for the service worker."""
        stamp = shell_files(self.root, self._sources)
        kept = self._kept.get(SHELL_FILES)
        if kept is None or kept.stamp != stamp:
            script = shell_script(self.root, stamp)
            kept = self._keep(SHELL_FILES, stamp, script.encode(), ".js")
        return kept

    def _keep(self, name: str, stamp: object, plain: bytes, suffix: str) -> _Kept:
        etag = hashlib.sha256(plain).hexdigest()[:20]
        held = self._kept.get(name)
        if held is not None and held.etag == etag and held.stamp == stamp:
            return held
        worth = suffix in _COMPRESSED and len(plain) >= _LEAST_COMPRESSED
        compressed = gzip.compress(plain, 9, mtime=0) if worth else None
        kept = _Kept(stamp, etag, plain, compressed, _TYPES[suffix])
        with self._lock:
            self._kept[name] = kept
        return kept


def register(app: Flask, config: Config) -> None:
    """Serve the folder at ``/``."""
    files = Files(config.web, config.sources)

    @app.before_request
    def _file() -> Response | None:
        # Before routing: a route for every path would hide the API's own 404 and 405.
        if request.path.startswith("/api/") or request.path == "/api":
            return None
        found = _found(files, request.path.removeprefix("/"))
        if request.method not in ("GET", "HEAD"):
            raise MethodNotAllowed(valid_methods=["GET", "HEAD"])
        return _sent(found)


def _found(files: Files, path: str) -> _Kept:
    if path == SHELL_FILES:
        return files.shell()
    if path == "join":  # a page by itself: it has to work before a device trusts the shop
        return files.find("join.html")
    return files.find(path) if _names_a_file(path) else files.page()


def _names_a_file(path: str) -> bool:
    """Not the app's own path: which of those it knows, the app alone says.

    A tool's code may have a point in it, so only the endings of files that are served count.
    The API's name in other letters is no path of the app.
    """
    asked = PurePosixPath(path)
    first = path.lstrip("/").partition("/")[0]
    hidden = any(part.startswith(".") for part in asked.parts)
    return asked.suffix in _TYPES or hidden or first.lower() == "api"


def _sent(kept: _Kept) -> Response:
    compressed = kept.compressed
    use = compressed is not None and request.accept_encodings["gzip"] > 0
    made = Response(compressed if use and compressed else kept.plain)
    made.headers["Content-Type"] = kept.content_type
    if use:
        made.headers["Content-Encoding"] = "gzip"
    if compressed is not None:
        made.headers["Vary"] = "Accept-Encoding"
    made.set_etag(f"{kept.etag}{'-gz' if use else ''}")
    versioned = request.args.get("v") == kept.etag
    made.headers["Cache-Control"] = (
        "public, max-age=31536000, immutable" if versioned else "no-cache"
    )
    made.make_conditional(request)
    return made
