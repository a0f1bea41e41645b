"""Copies as their owner meets them: made while the shop is written to, put back, refused."""

from __future__ import annotations

import json
import resource
import shutil
import sqlite3
import subprocess
import sys
import threading
import uuid
from collections.abc import Callable, Iterator
from contextlib import closing
from pathlib import Path
from typing import Any

import pytest
import requests

from flangebook.shop.backups.schedule import FOLDER
from flangebook.shop.store import FILE_NAME

from .running import PATIENCE_S, Running, run, serving

CARD = "SHE7FA1"
WRITERS = 4
HALVES = (
    "SELECT code FROM cards AS c "
    "WHERE trials != (SELECT count(*) FROM trials AS t WHERE t.code = c.code)"
)


def flangebook(*arguments: str | Path) -> subprocess.CompletedProcess[str]:
    return run([sys.executable, "-m", "flangebook", *map(str, arguments)])


def done(*arguments: str | Path) -> str:
    """What a command that must succeed says."""
    ended = flangebook(*arguments)
    assert (ended.returncode, ended.stderr) == (0, ""), ended.stderr
    return ended.stdout


def refused(*arguments: str | Path) -> str:
    """The one clear line of a command that must fail."""
    ended = flangebook(*arguments)
    assert (ended.returncode, ended.stdout) == (1, "")
    assert ended.stderr.count("\n") == 1, ended.stderr
    assert "Traceback" not in ended.stderr
    return ended.stderr


@pytest.fixture
def data(demo_data: Path, tmp_path: Path) -> Path:
    """A demo shop of the test's own, without copies."""
    shutil.copytree(demo_data, tmp_path / "shop")
    return tmp_path / "shop"


@pytest.fixture
def server(data: Path) -> Iterator[Running]:
    """A server on it."""
    with serving(data) as running:
        yield running


def rows(file: Path, query: str) -> list[Any]:
    with closing(sqlite3.connect(f"file:{file}?mode=ro", uri=True)) as shop:
        return shop.execute(query).fetchall()


def result(server: Running, **change: Any) -> str:
    body = {"id": str(uuid.uuid4()), "revision": 1, "step": 1, "measured_deg": 91, **change}
    url = f"{server.address}api/v1/cards/{CARD}/results"
    assert requests.post(url, json=body, timeout=PATIENCE_S).status_code == 201
    return str(body["id"])


def note(server: Running, words: str, etag: str = "") -> requests.Response:
    etag = etag or server.get(f"/api/v1/cards/{CARD}").headers["ETag"]
    url = f"{server.address}api/v1/cards/{CARD}"
    return requests.put(url, json={"note": words}, headers={"If-Match": etag}, timeout=PATIENCE_S)


def cards_of(server: Running) -> dict[str, Any]:
    """Every card as a new phone gets it."""
    found: dict[str, Any] = {}
    body = server.get("/api/v1/changes").json()
    found |= {c["code"]: c for c in body["cards"]}
    while body["more"]:
        body = server.get(f"/api/v1/changes?since={body['cursor']}").json()
        found |= {c["code"]: c for c in body["cards"]}
    return found


def same(cards: dict[str, Any]) -> dict[str, Any]:
    """Cards without their ETags, which a shop that was put back draws anew."""
    return {code: {k: v for k, v in c.items() if k != "etag"} for code, c in cards.items()}


def test_a_copy_made_while_four_write_is_one_moment_of_the_shop(server: Running, data: Path):
    stop = threading.Event()
    acknowledged: list[str] = []
    faults: list[BaseException] = []

    def write() -> None:
        try:
            while not stop.is_set():
                acknowledged.append(result(server))
        except BaseException as error:
            faults.append(error)

    writers = [threading.Thread(target=write) for _ in range(WRITERS)]
    for writer in writers:
        writer.start()
    made: list[tuple[Path, set[str], int]] = []
    try:
        for number in range(3):
            wanted = len(acknowledged) + 5
            while len(acknowledged) < wanted and not faults:
                stop.wait(0.01)
            before, target = set(acknowledged), data.parent / f"copy{number}.sqlite"
            assert "found whole" in done("backup", "--data", data, "--to", target)
            made.append((target, before, len(acknowledged)))
    finally:
        stop.set()
        for writer in writers:
            writer.join(PATIENCE_S)
    assert faults == []
    for target, before, _ in made:
        assert rows(target, "PRAGMA integrity_check") == [("ok",)]
        kept = {i for (i,) in rows(target, "SELECT id FROM trials")}
        assert before <= kept
        assert rows(target, HALVES) == []
        assert rows(target, "SELECT max(c.change) <= s.change FROM cards c, shop s") == [(1,)]
        assert target.stat().st_mode & 0o077 == 0
        beside = [p.name for p in target.parent.iterdir() if p.name.startswith(target.name)]
        assert beside == [target.name]
    assert made[-1][2] > made[0][2]  # they did write meanwhile


def test_restore_after_a_wipe_gives_everything_back(data: Path, tmp_path: Path):
    copy = tmp_path / "stick" / "copy.sqlite"
    with serving(data) as server:
        one = result(server, note="kept")
        assert note(server, "Grüße").status_code == 200
        before, dies = cards_of(server), server.get("/api/v1/dies").json()
        done("backup", "--data", data, "--to", copy)
        server.stop()
    shutil.rmtree(data)
    assert "Put back" in done("restore", copy, "--data", data)
    assert not (data / FOLDER).exists()  # there was nothing to keep
    with serving(data) as server:
        after = cards_of(server)
        assert same(after) == same(before)
        assert server.get("/api/v1/dies").json() == dies
        assert one in [t["id"] for t in after[CARD]["trials"]]
        assert result(server)
        server.stop()


def test_a_phone_that_was_ahead_of_a_restored_shop_starts_again(data: Path, tmp_path: Path):
    """The shop is put back to an earlier day and grows past what a phone has seen: by numbers
    alone the phone would miss every write between the copy and its own cursor."""
    copy = tmp_path / "copy.sqlite"
    with serving(data) as server:
        done("backup", "--data", data, "--to", copy)
        before = server.get(f"/api/v1/cards/{CARD}").json()["revision"]
        for number in range(4):
            result(server, note=f"lost {number}")
        assert note(server, "lost").status_code == 200
        phone = server.get("/api/v1/changes").json()["cursor"]
        card = server.get(f"/api/v1/cards/{CARD}")
        assert card.json()["revision"] == before + 1
        server.stop()
    done("restore", copy, "--data", data)
    with serving(data) as server:
        other = next(c for c in cards_of(server) if c != CARD)
        url = f"{server.address}api/v1/cards/{other}"
        etag = server.get(f"/api/v1/cards/{other}").headers["ETag"]
        new = requests.put(
            url, json={"note": "new"}, headers={"If-Match": etag}, timeout=PATIENCE_S
        )
        assert new.status_code == 200
        number = int(phone.rpartition(".")[2])
        written = 0
        while int(server.get("/api/v1/changes").json()["cursor"].rpartition(".")[2]) <= number + 1:
            result(server, note="after")
            written += 1
        body = server.get(f"/api/v1/changes?since={phone}").json()
        assert body["reset"] is True
        assert other in {c["code"] for c in body["cards"]}  # written before the cursor's number
        # An edit made from the card as it was before is refused, though the same numbers of
        # revision and results have come again.
        assert note(server, "a new line").status_code == 200
        now = server.get(f"/api/v1/cards/{CARD}").json()
        assert now["revision"] == before + 1
        assert now["etag"] != card.headers["ETag"]
        assert note(server, "from before", card.headers["ETag"]).status_code == 412
        server.stop()
    assert written > 0


def test_a_stale_etag_is_refused_even_when_its_numbers_come_again(data: Path, tmp_path: Path):
    copy = tmp_path / "copy.sqlite"
    with serving(data) as server:
        before = server.get(f"/api/v1/cards/{CARD}").headers["ETag"]
        done("backup", "--data", data, "--to", copy)
        result(server, measured_deg=95)
        stale = server.get(f"/api/v1/cards/{CARD}").headers["ETag"]
        assert stale != before
        dies = server.get("/api/v1/dies").headers["ETag"]
        server.stop()
    done("restore", copy, "--data", data)
    with serving(data) as server:
        result(server, measured_deg=85)  # as many results as the phone saw, but another
        now = server.get(f"/api/v1/cards/{CARD}").headers["ETag"]
        assert now.split(".")[:2] == stale.split(".")[:2]
        assert note(server, "x", stale).status_code == 412
        url = f"{server.address}api/v1/dies"
        answer = requests.put(
            url, json={"dies": []}, headers={"If-Match": dies}, timeout=PATIENCE_S
        )
        assert answer.status_code == 412
        headers = {"If-None-Match": stale}
        got = requests.get(
            f"{server.address}api/v1/cards/{CARD}", headers=headers, timeout=PATIENCE_S
        )
        assert got.status_code == 200
        server.stop()


def test_restore_keeps_the_shop_it_replaces(data: Path, tmp_path: Path):
    copy = tmp_path / "copy.sqlite"
    done("backup", "--data", data, "--to", copy)
    with serving(data) as server:
        lost = result(server)
        server.process.kill()  # what was written last is still in the file's log
        server.process.wait(PATIENCE_S)
    said = done("restore", copy, "--data", data)
    (kept,) = (data / FOLDER).glob("replaced-*.sqlite")
    assert str(kept) in said
    assert (lost,) in rows(kept, "SELECT id FROM trials")
    assert (lost,) not in rows(data / FILE_NAME, "SELECT id FROM trials")
    done("restore", kept, "--data", data)
    assert (lost,) in rows(data / FILE_NAME, "SELECT id FROM trials")
    assert len(list((data / FOLDER).glob("replaced-*.sqlite"))) == 2


def test_restore_is_refused_while_a_server_holds_the_shop(server: Running, data: Path):
    (copy, *_) = wait_for_copy(data)
    before = rows(data / FILE_NAME, "SELECT shop_id FROM shop")
    assert "server" in refused("restore", copy, "--data", data)
    assert rows(data / FILE_NAME, "SELECT shop_id FROM shop") == before
    result(server)


def wait_for_copy(data: Path) -> list[Path]:
    waiting = threading.Event()
    for _ in range(PATIENCE_S * 10):
        if found := list((data / FOLDER).glob("night-*.sqlite")):
            return found
        waiting.wait(0.1)
    raise AssertionError("the server made no copy")


def test_a_server_makes_a_copy_when_it_starts_and_says_so(server: Running, data: Path):
    (copy,) = wait_for_copy(data)
    told = server.get("/api/v1/backups").json()
    assert told["standing"] == "ok"
    assert [c["name"] for c in told["backups"]] == [copy.name]
    assert rows(copy, "PRAGMA integrity_check") == [("ok",)]
    assert server.stop() == (0, "", "")
    with serving(data) as again:
        assert again.get("/api/v1/backups").json()["backups"] == told["backups"]
        again.stop()
    assert wait_for_copy(data) == [copy]


@pytest.fixture(scope="module")
def whole_copy(demo_data: Path, tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A copy of the demo shop as the command makes it; to be copied, not written to."""
    folder = tmp_path_factory.mktemp("whole")
    shutil.copytree(demo_data, folder / "shop")
    done("backup", "--data", folder / "shop", "--to", folder / "copy.sqlite")
    return folder / "copy.sqlite"


def cut(copy: Path) -> None:
    copy.write_bytes(copy.read_bytes()[:20_000])


def scratched(copy: Path) -> None:
    data = bytearray(copy.read_bytes())
    for start in range(8_192, len(data), 4_096):
        data[start : start + 64] = b"\xa5" * 64
    copy.write_bytes(data)


def no_shop(copy: Path) -> None:
    copy.write_text("Not a database")


def another_database(copy: Path) -> None:
    copy.unlink()
    with closing(sqlite3.connect(copy)) as file:
        file.execute("CREATE TABLE cards (code)")
        file.commit()


def newer(copy: Path) -> None:
    with closing(sqlite3.connect(copy)) as file:
        file.execute("UPDATE alembic_version SET version_num = '9999'")
        file.commit()


def loose_ends(copy: Path) -> None:
    with closing(sqlite3.connect(copy)) as file:
        file.execute("PRAGMA foreign_keys = 0")
        file.execute("DELETE FROM cards WHERE code = ?", (CARD,))
        file.commit()


def empty(copy: Path) -> None:
    copy.write_bytes(b"")


SPOILT: list[tuple[Callable[[Path], None], str]] = [
    (cut, "damaged"),
    (scratched, "damaged"),
    (no_shop, "not a copy of a shop"),
    (another_database, "not a shop's"),
    (newer, "newer release"),
    (loose_ends, "not there"),
    (empty, "not a copy of a shop"),
]


@pytest.mark.parametrize(("spoil", "words"), SPOILT, ids=lambda v: getattr(v, "__name__", ""))
def test_what_is_no_whole_copy_is_refused_and_nothing_changed(
    spoil: Callable[[Path], None], words: str, whole_copy: Path, data: Path, tmp_path: Path
):
    copy = tmp_path / "copy.sqlite"
    shutil.copy(whole_copy, copy)
    spoil(copy)
    before = (data / FILE_NAME).read_bytes()
    assert words in refused("restore", copy, "--data", data)
    assert (data / FILE_NAME).read_bytes() == before
    assert not (data / FOLDER).exists()


def test_a_damaged_shop_gives_no_copy_and_the_good_one_stays(data: Path, tmp_path: Path):
    copy = tmp_path / "copy.sqlite"
    done("backup", "--data", data, "--to", copy)
    good = copy.read_bytes()
    scratched(data / FILE_NAME)
    assert "damaged" in refused("backup", "--data", data, "--to", copy)
    assert copy.read_bytes() == good
    assert [p.name for p in tmp_path.iterdir() if "unfinished" in p.name] == []
    said = done("restore", copy, "--data", data)
    assert "damaged as it was" in said
    (kept,) = (data / FOLDER).glob("replaced-*.sqlite")
    assert kept.stat().st_size > 8_192
    with serving(data) as server:
        assert len(cards_of(server)) > 5
        server.stop()


def test_files_that_cannot_be(data: Path, tmp_path: Path):
    shop = data / FILE_NAME
    before = shop.read_bytes()
    assert "shop itself" in refused("backup", "--data", data, "--to", shop)
    assert "shop itself" in refused("restore", shop, "--data", data)
    assert "no shop" in refused("backup", "--data", tmp_path / "nothing")
    assert not (tmp_path / "nothing").exists()
    assert "cannot be read" in refused("restore", tmp_path / "nothing", "--data", data)
    assert "cannot be read" in refused("restore", tmp_path, "--data", data)
    (tmp_path / "file").write_text("in the way")
    assert "cannot be" in refused("backup", "--data", data, "--to", tmp_path / "file" / "x")
    assert shop.read_bytes() == before


def test_a_disk_that_takes_no_more_leaves_nothing_half_there(data: Path, tmp_path: Path):
    """The system refuses every byte past the first 100,000 of a file, as a full disk does."""
    target = tmp_path / "copies" / "copy.sqlite"
    ended = subprocess.run(
        [sys.executable, "-m", "flangebook", "backup", "--data", str(data), "--to", str(target)],
        capture_output=True, text=True, timeout=PATIENCE_S, check=False,
        preexec_fn=lambda: resource.setrlimit(resource.RLIMIT_FSIZE, (100_000, 100_000)),
    )  # fmt: skip
    assert ended.returncode == 1
    assert "room" in ended.stderr
    assert "Traceback" not in ended.stderr
    assert list(target.parent.iterdir()) == []


def test_a_device_that_was_shut_out_stays_shut_out(data: Path, tmp_path: Path):
    def devices(revoked: str | None) -> None:
        with closing(sqlite3.connect(data / FILE_NAME)) as file:
            file.execute("DELETE FROM devices")
            fields = ("token_hash", "name", "role", "way", "paired_at", "paired_by", "seen_at")
            for name, gone in (("lost", revoked), ("mine", None)):
                file.execute(
                    f"INSERT INTO devices (id, revoked_at, {', '.join(fields)})"
                    f" VALUES (?, ?{', ?' * len(fields)})",
                    (name, gone, *[f"{name} {f}" for f in fields]),
                )
            file.commit()

    copy = tmp_path / "copy.sqlite"
    devices(None)
    done("backup", "--data", data, "--to", copy)
    devices("2026-05-04T13:30:00.000Z")
    assert "1 paired device " in done("restore", copy, "--data", data)
    kept = dict(rows(data / FILE_NAME, "SELECT id, revoked_at FROM devices"))
    assert kept == {"lost": "2026-05-04T13:30:00.000Z", "mine": None}


def test_out_as_a_document_and_into_a_new_folder(server: Running, data: Path, tmp_path: Path):
    result(server)
    document, new = tmp_path / "shop.json", tmp_path / "new"
    done("export", "--data", data, "--to", document)
    assert document.stat().st_mode & 0o077 == 0
    assert json.loads(flangebook("export", "--data", data).stdout)["cards"]
    assert "Imported" in done("import", document, "--data", new)
    with serving(new) as other:
        assert same(cards_of(other)) == same(cards_of(server))
        other.stop()
    assert "something in it" in refused("import", document, "--data", new)
    said = done("import", document, "--data", new, "--replace")
    (kept,) = (new / FOLDER).glob("replaced-*.sqlite")
    assert str(kept) in said
    document.write_text(document.read_text("utf-8")[:5000], "utf-8")
    assert "breaks off" in refused("import", document, "--data", new, "--replace")
    assert "cannot be read" in refused("import", tmp_path / "none.json", "--data", new)


def test_a_served_shop_is_replaced_under_the_server(server: Running, data: Path, tmp_path: Path):
    """By the command, while the server runs: what it holds in memory is not the old shop's."""
    document = tmp_path / "shop.json"
    done("export", "--data", data, "--to", document)
    before = server.get("/api/v1/changes").json()["cursor"]
    lost = result(server)
    assert lost in server.get(f"/api/v1/cards/{CARD}").text
    done("import", document, "--data", data, "--replace")
    assert lost not in server.get(f"/api/v1/cards/{CARD}").text
    assert server.get(f"/api/v1/changes?since={before}").json()["reset"] is True
    assert result(server)
