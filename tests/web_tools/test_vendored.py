"""The modules in web/vendor are the published ones, byte for byte.

They are copied from the packages that the lock file beside this file pins by hash; only
the comment that names a source map, which is not served, is left out.
"""

from __future__ import annotations

import re
from pathlib import Path

import pytest

MODULES = Path(__file__).parent / "node_modules"
ORIGINS = {"idb/index.js": "idb/build/index.js", "idb/LICENSE": "idb/LICENSE"}
VENDOR = Path(__file__).resolve().parents[2] / "web/vendor"
VENDORED = sorted(p.relative_to(VENDOR).as_posix() for p in VENDOR.rglob("*") if p.is_file())


@pytest.mark.parametrize("name", VENDORED)
def test_a_vendored_file_is_the_published_one(name: str) -> None:
    origin = (MODULES / ORIGINS.get(name, name)).read_text("utf-8")
    published = re.sub(r"\n?//# sourceMappingURL=\S+\n?$", "", origin).rstrip("\n")
    assert (VENDOR / name).read_text("utf-8").rstrip("\n") == published
