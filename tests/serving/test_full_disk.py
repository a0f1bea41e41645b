"""A full disk: each write is refused with words that help, nothing is lost, reading goes on.

One way a small disk of its own (tmpfs, as root only), the other a limit on how long the server
may make a file (RLIMIT_FSIZE): either way the system refuses SQLite's write.
"""

from __future__ import annotations

import shutil
import subprocess
import sys
from collections.abc import Callable, Iterator
from contextlib import ExitStack
from pathlib import Path
from typing import Any
from uuid import uuid4

import pytest
import requests

from flangebook.shop.store import FILE_NAME
from serving.running import serving

pytestmark = [
    pytest.mark.slow,
    pytest.mark.skipif(sys.platform != "linux", reason="only Linux limits a running process"),
]
PART = {
    "title": "Angle", "metal": "mild-steel-cr", "thickness_mm": 2, "bend_length_mm": 300,
    "flats_mm": [40, 60], "bends": [{"included_angle_deg": 90, "direction": "up"}],
}  # fmt: skip


class Disk:
    """Where the shop lies; ``fill`` takes its room away, ``free`` gives it back."""

    def __init__(self, folder: Path, fill: Callable[[int], None], free: Callable[[int], None]):
        self.folder, self.fill, self.free = folder, fill, free


def small_disk(folder: Path, end: ExitStack) -> Disk | None:
    folder.mkdir()
    mount = ["mount", "-t", "tmpfs", "-o", "size=8m", "none", str(folder)]
    if subprocess.run(mount, capture_output=True, check=False).returncode:
        return None
    end.callback(subprocess.run, ["umount", "-l", str(folder)], check=False)
    filler = folder / "filler"

    def fill(_pid: int) -> None:
        with filler.open("wb", buffering=0) as file:
            for size in (65536, 1):
                try:
                    while file.write(b"x" * size):
                        pass
                except OSError:
                    continue

    return Disk(folder / "shop", fill, lambda _pid: filler.unlink())


def limited_process(folder: Path) -> Disk:
    import resource

    most = resource.RLIM_INFINITY
    return Disk(
        folder,
        lambda pid: resource.prlimit(pid, resource.RLIMIT_FSIZE, (4096, most)) and None,
        lambda pid: resource.prlimit(pid, resource.RLIMIT_FSIZE, (most, most)) and None,
    )


@pytest.fixture(params=["small disk", "limited process"])
def disk(request: pytest.FixtureRequest, tmp_path: Path, demo_data: Path) -> Iterator[Disk]:
    """A disk with the demo shop on it."""
    with ExitStack() as end:
        small = request.param == "small disk"
        made = small_disk(tmp_path / "disk", end) if small else None
        made = made or limited_process(tmp_path / "shop")  # only root makes a disk
        shutil.copytree(demo_data, made.folder)
        yield made


def writes(address: str) -> list[requests.Response]:
    """One of every kind of write."""
    api = f"{address}api/v1/"
    card = requests.get(f"{api}cards/SHE7FA1", timeout=60).json()
    dies = requests.get(f"{api}dies", timeout=60)
    crib = [{**dies.json()["dies"][0], "name": uuid4().hex}]
    result = {"id": str(uuid4()), "revision": card["revision"], "step": 1, "measured_deg": 91}
    test_bend = {
        "id": str(uuid4()), "metal": "mild-steel-cr", "thickness_mm": 2, "bend_length_mm": 100,
        "die": "V16", "punch": "S85-2", "included_angle_deg": 90, "measured_deg": 91,
        "set_angle_deg": 88,
    }  # fmt: skip
    asked: list[tuple[str, str, Any, dict[str, str]]] = [
        ("POST", "cards", {"part": PART}, {}),
        ("PUT", "cards/SHE7FA1", {"note": uuid4().hex}, {"If-Match": card["etag"]}),
        ("POST", "cards/SHE7FA1/results", result, {}),
        ("POST", "test-bends", test_bend, {}),
        ("PUT", "benches/one", {"code": "SHE7FA1", "step": 1}, {}),
        ("PUT", "crew-options", {"labels_open": True}, {}),
        ("PUT", "dies", {"dies": crib}, {"If-Match": dies.headers["ETag"]}),
    ]
    return [
        requests.request(method, api + path, json=body, headers=headers, timeout=120)
        for method, path, body, headers in asked
    ]


def test_every_write_says_that_the_disk_is_full_and_nothing_is_lost(disk: Disk):
    with serving(disk.folder) as running:
        before = running.get("/api/v1/export").json()
        disk.fill(running.process.pid)
        for answer in writes(running.address):
            assert answer.status_code == 507, (answer.request.url, answer.text[:200])
            assert answer.headers["Content-Type"] == "application/problem+json"
            assert "Make room" in answer.json()["detail"]
        for path in ("cards", "cards/SHE7FA1", "changes", "press", "benches"):
            assert running.get(f"/api/v1/{path}").status_code == 200, path
        after = running.get("/api/v1/export").json()
        assert {**after, "exported_at": ""} == {**before, "exported_at": ""}
        if (disk.folder.parent / "filler").exists():
            told = running.get("/api/v1/backups").json()
            assert told["standing"] == "trouble"
            assert "disk is full" in told["trouble"]["words"]
        disk.free(running.process.pid)
        assert [answer.ok for answer in writes(running.address)] == [True] * 7
    assert (disk.folder / FILE_NAME).stat().st_size > 0
