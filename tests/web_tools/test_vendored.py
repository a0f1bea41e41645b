"""The files in web/vendor are the published ones, byte for byte.

They are copied from the packages that the lock file beside this file pins by hash; only
the comment that names a source map, which is not served, is left out of scripts. The QR
reader's program is a compiled zxing-cpp, whose licence its package leaves out: that one is
held against the same library's package for Python, which the tests use too.
"""

from __future__ import annotations

import importlib.metadata
import json
import re
from pathlib import Path

import pytest

MODULES = Path(__file__).parent / "node_modules"
ORIGINS = {
    "barcode-detector/ponyfill.js": "barcode-detector/dist/es/ponyfill.js",
    "barcode-detector/zxing-exported.js": "barcode-detector/dist/es/zxing-exported.js",
    "idb/index.js": "idb/build/index.js",
    "zxing-wasm/zxing_reader.wasm": "zxing-wasm/dist/reader/zxing_reader.wasm",
}
VENDOR = Path(__file__).resolve().parents[2] / "web/vendor"
VENDORED = sorted(p.relative_to(VENDOR).as_posix() for p in VENDOR.rglob("*") if p.is_file())
SOURCE_MAP = re.compile(rb"\n?//# sourceMappingURL=\S+\n?$")


def published(name: str) -> bytes:
    if name == "zxing-cpp/LICENSE":
        licence = importlib.metadata.distribution("zxing-cpp").read_text("licenses/LICENSE")
        assert licence
        return licence.encode()
    return (MODULES / ORIGINS.get(name, name)).read_bytes()


@pytest.mark.parametrize("name", VENDORED)
def test_a_vendored_file_is_the_published_one(name: str) -> None:
    kept, origin = (VENDOR / name).read_bytes(), published(name)
    if not name.endswith(".wasm"):
        kept, origin = kept.rstrip(b"\n"), SOURCE_MAP.sub(b"", origin).rstrip(b"\n")
    assert kept == origin


def test_the_reader_gets_the_program_it_was_made_for() -> None:
    """barcode-detector names the one version of zxing-wasm that it works with."""
    wanted = json.loads((MODULES / "barcode-detector/package.json").read_text("utf-8"))
    given = json.loads((MODULES / "zxing-wasm/package.json").read_text("utf-8"))
    assert wanted["dependencies"]["zxing-wasm"] == given["version"]
