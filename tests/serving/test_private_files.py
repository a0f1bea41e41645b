"""Nobody else on the machine can read the shop: its files are the owner's alone."""

from __future__ import annotations

import os
import shutil
import stat
from pathlib import Path

import pytest

from flangebook.shop.store import FILE_NAME
from serving.running import serving

pytestmark = [
    pytest.mark.slow,
    pytest.mark.skipif(os.name == "nt", reason="Windows keeps a user's folder private by itself"),
]


def mode(path: Path) -> int:
    return stat.S_IMODE(path.stat().st_mode)


def test_a_new_shop_is_its_owner_s_alone(tmp_path: Path):
    data = tmp_path / "shop"
    with serving(data, "--empty") as running:
        assert running.get("/api/v1/press").ok
        files = [data / (FILE_NAME + end) for end in ("", "-wal", "-shm")]
        assert [(f.name, oct(mode(f))) for f in files] == [(f.name, "0o600") for f in files]
        assert mode(data) == 0o700


def test_a_shop_of_an_older_release_is_mended_at_start(tmp_path: Path, demo_data: Path):
    data = tmp_path / "shop"
    shutil.copytree(demo_data, data)
    for path in (data, *data.rglob("*")):
        path.chmod(0o755 if path.is_dir() else 0o644)
    (data / "copies").mkdir(exist_ok=True)
    copy = data / "copies" / "by-hand-2026-05-04T030000Z.sqlite"
    shutil.copy(data / FILE_NAME, copy)
    copy.chmod(0o644)
    with serving(data) as running:
        assert running.get("/api/v1/press").ok
        files = [data / (FILE_NAME + end) for end in ("", "-wal", "-shm")]
        assert {mode(f) for f in (*files, copy)} == {0o600}
        assert {mode(data), mode(data / "copies")} == {0o700}
