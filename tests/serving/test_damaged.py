"""A damaged shop is not served: one sentence says what brings it back, and that works."""

from __future__ import annotations

import shlex
import shutil
import sqlite3
import sys
import time
from contextlib import closing
from pathlib import Path

import pytest

from flangebook.shop.store import FILE_NAME
from serving.running import command, run, serving

pytestmark = pytest.mark.slow


@pytest.fixture
def data(tmp_path: Path, demo_data: Path) -> Path:
    """A shop with three copies of itself, of which the newest is damaged."""
    folder = tmp_path / "a shop"
    shutil.copytree(demo_data, folder)
    shutil.rmtree(folder / "copies", ignore_errors=True)
    made = run([sys.executable, "-m", "flangebook", "backup", "--data", str(folder)])
    assert made.returncode == 0, made.stderr
    (good,) = (folder / "copies").iterdir()
    shutil.copy(good, good.with_name("by-hand-2001-01-01T000000Z.sqlite"))
    overwrite(shutil.copy(good, good.with_name("by-hand-2099-01-01T000000Z.sqlite")))
    return folder


def overwrite(path: Path | str, *, served: bool = False) -> None:
    """Write 4 KB of rubbish over the root of the revisions."""
    with closing(sqlite3.connect(path)) as file:
        file.execute("PRAGMA wal_checkpoint(TRUNCATE)")
        if not served:
            file.execute("PRAGMA journal_mode = DELETE")
        size = file.execute("PRAGMA page_size").fetchone()[0]
        query = "SELECT rootpage FROM sqlite_master WHERE name = 'revisions'"
        page = file.execute(query).fetchone()[0]
    with Path(path).open("r+b") as raw:
        raw.seek((page - 1) * size)
        raw.write(b"\xa5" * 4096)


def spoil(path: Path, how: str) -> None:
    if how == "overwritten":
        overwrite(path)
    else:
        path.write_bytes(b"" if how == "empty" else b"no database" * 400)


@pytest.mark.parametrize("how", ["overwritten", "empty", "something else"])
def test_it_is_refused_with_the_command_that_brings_it_back(data: Path, how: str):
    spoil(data / FILE_NAME, how)
    before = (data / FILE_NAME).read_bytes()
    refused = run(command(data))
    assert refused.returncode == 1
    assert "ready" not in refused.stdout
    assert refused.stderr.count("\n") == 1, refused.stderr
    assert "damaged" in refused.stderr
    assert (data / FILE_NAME).read_bytes() == before
    words = shlex.split(refused.stderr.rpartition("with: ")[2])
    assert words[:2] == ["flangebook", "restore"]
    newest_good = sorted((data / "copies").iterdir())[-2]
    assert Path(words[2]) == newest_good
    brought = run([sys.executable, "-m", *words])
    assert brought.returncode == 0, brought.stderr
    with serving(data) as running:
        assert running.get("/api/v1/cards").json()["total"] >= 8


@pytest.mark.skipif(sys.platform != "linux", reason="only Linux limits a process's files")
def test_a_shop_on_a_full_disk_is_not_called_damaged(data: Path):
    import resource

    start = ["import resource, runpy, sys",
             "resource.setrlimit(resource.RLIMIT_FSIZE, (4096, resource.RLIM_INFINITY))",
             "sys.argv[0] = 'flangebook'",
             "runpy.run_module('flangebook', run_name='__main__')"]  # fmt: skip
    assert resource.getrlimit(resource.RLIMIT_FSIZE)[1] == resource.RLIM_INFINITY
    with serving(data) as running:
        code = running.get("/api/v1/cards").json()["cards"][0]["code"]
        running.process.kill()  # what it wrote last is still in its log
    refused = run([sys.executable, "-c", "; ".join(start), *command(data)[3:]])
    assert refused.returncode == 1, refused.stdout
    assert refused.stderr.count("\n") == 1, refused.stderr
    assert "damaged" not in refused.stderr
    assert "Make room" in refused.stderr
    assert "restore" not in refused.stderr
    with serving(data) as running:
        assert running.get(f"/api/v1/cards/{code}").status_code == 200


def test_without_a_good_copy_it_says_so(data: Path):
    shutil.rmtree(data / "copies")
    spoil(data / FILE_NAME, "overwritten")
    refused = run(command(data))
    assert refused.returncode == 1
    assert "no good copy" in refused.stderr


def test_an_export_that_meets_damage_is_an_error_and_no_cut_file(data: Path):
    with serving(data) as running:
        assert running.get("/api/v1/export").ok
        overwrite(data / FILE_NAME, served=True)
        answer = running.get("/api/v1/export")
        assert answer.status_code == 500
        assert answer.headers["Content-Type"] == "application/problem+json"
        assert "damaged" in answer.json()["detail"]


def test_what_only_the_full_check_finds_is_said_while_it_is_served(data: Path):
    with closing(sqlite3.connect(data / FILE_NAME, isolation_level=None)) as file:
        file.execute("PRAGMA foreign_keys = 0")
        file.execute("DROP TRIGGER IF EXISTS revisions_delete")
        names = file.execute(
            "SELECT name FROM sqlite_master WHERE type = 'trigger' AND tbl_name = 'plans'"
        ).fetchall()
        for (name,) in names:
            file.execute(f'DROP TRIGGER "{name}"')
        file.execute("DELETE FROM plans WHERE id = (SELECT max(plan_id) FROM revisions)")
    with serving(data) as running:
        for _ in range(600):
            told = running.get("/api/v1/backups").json()
            if told["standing"] == "trouble":
                break
            time.sleep(0.1)
        assert "flangebook restore" in told["trouble"]["words"]
