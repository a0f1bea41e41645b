"""The shop's file: how connections are set up, what can't be undone, what is held in memory."""

from __future__ import annotations

import json
import sqlite3
import threading
from collections.abc import Iterator
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path
from typing import Any

import pytest
import sqlalchemy as sa
from alembic import command
from alembic.autogenerate import compare_metadata
from alembic.config import Config
from alembic.migration import MigrationContext
from alembic.script import ScriptDirectory

from flangebook.shop import (
    cards,
    demo,
    documents,
    evidence,
    options,
    press_screens,
    proposals,
    results,
    revisions,
    runs,
)
from flangebook.shop.cards import Content
from flangebook.shop.errors import ShopError, StaleError, TakenError, UnknownError
from flangebook.shop.revisions import Author
from flangebook.shop.storage import migrate
from flangebook.shop.storage.cache import Cache
from flangebook.shop.storage.database import PRAGMAS, reading, settings_of, writing
from flangebook.shop.storage.tables import APPEND_ONLY, ASIDE, metadata
from flangebook.shop.store import FILE_NAME, Store, last_change, open_store

PLAN = {"steps": [], "worst": "ok", "title": "x"}
CONTENT = Content("Bracket", "", {"metal": "m", "thickness_mm": 2, "bends": [{}]}, PLAN, "ok")


@pytest.fixture
def store(tmp_path: Path) -> Iterator[Store]:
    """An empty shop."""
    opened = open_store(tmp_path)
    yield opened
    opened.close()


def result(number: int) -> dict[str, object]:
    return {"id": f"trial-{number}", "revision": 1, "step": 1, "by": ""}


def test_every_connection_syncs_fully(store: Store):
    """As many connections at once as the pool gives, each with its own settings."""
    together = threading.Barrier(20)

    def look(writes: bool) -> dict[str, object]:
        with reading(store.engine) as connection:
            together.wait(30)
            return settings_of(connection)

    with ThreadPoolExecutor(20) as threads:
        found = list(threads.map(look, [False] * 20))
    assert found == [PRAGMAS] * 20
    assert PRAGMAS["synchronous"] == 2
    with writing(store.engine) as connection:
        assert settings_of(connection) == PRAGMAS


@pytest.mark.parametrize("table", APPEND_ONLY)
@pytest.mark.parametrize("verb", ["UPDATE {} SET {} = {}", "DELETE FROM {}"])
def test_history_cannot_be_changed(store: Store, tmp_path: Path, table: str, verb: str):
    code, _ = revisions.create(store, CONTENT, Author("a"))
    results.add(store, code, result(1), None, {"id": result(1)["id"], "metal": "steel"})
    evidence.mark(store, result(1)["id"], "forget")
    documents.write(store, "dies", [{"code": "D"}], if_match="*")
    proposals.propose(store, code, {"id": "p", "by": "a", "changes": {"note": "n"}})
    with writing(store.engine) as connection:
        proposals.settle(connection, code, 1, ["p"])
    runs.add(store, code, {"id": "e", "run_id": "r", "kind": "piece"})
    column = metadata.tables[table].primary_key.columns[0].name
    with (
        sqlite3.connect(tmp_path / FILE_NAME) as file,
        pytest.raises(sqlite3.IntegrityError, match="append-only"),
    ):
        file.execute(verb.format(table, column, column))
    with reading(store.engine) as connection:
        rows = connection.execute(sa.select(metadata.tables[table])).all()
    assert len(rows) == 1


def test_the_migrations_make_the_tables_the_code_uses(store: Store):
    with reading(store.engine) as connection:
        context = MigrationContext.configure(connection)
        assert compare_metadata(context, metadata) == []
        assert migrate.form_of(connection) == migrate.NEWEST


def test_the_newest_form_is_the_last_migration():
    scripts = ScriptDirectory(str(Path(migrate.__file__).parent / "migrations"))
    assert scripts.get_heads() == [migrate.NEWEST]
    assert sorted(s.revision for s in scripts.walk_revisions())[-1] == migrate.NEWEST


def written_by_todays_code(connection: sa.Connection) -> None:
    """Let today's code write into a file of an older form: the column it names stands in."""
    for table in sa.inspect(connection).get_table_names():
        if "device" in metadata.tables.get(table, sa.Table("none", sa.MetaData())).columns:
            connection.exec_driver_sql(f"ALTER TABLE {table} ADD device TEXT NOT NULL DEFAULT ''")


def as_it_was_written_then(store: Store) -> None:
    """Take that column away again."""
    with writing(store.engine) as connection:
        for table in sa.inspect(connection).get_table_names():
            if any(c["name"] == "device" for c in sa.inspect(connection).get_columns(table)):
                connection.exec_driver_sql(f"ALTER TABLE {table} DROP COLUMN device")


def test_a_file_of_the_first_release_is_brought_up_to_date(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
):
    """What it held stays as it was, and results kept then are no evidence."""

    def first_form(connection: sa.Connection) -> None:
        config = Config()
        config.set_main_option("script_location", str(Path(migrate.__file__).parent / "migrations"))
        config.attributes["connection"] = connection
        command.upgrade(config, "0001")
        written_by_todays_code(connection)

    with monkeypatch.context() as patched:
        patched.setattr(migrate, "_run", first_form)
        old = open_store(tmp_path)
    code, _ = revisions.create(old, CONTENT, Author("a"))
    results.add(old, code, result(1), None)
    before = results.page(old, code, 10, 0)
    with reading(old.engine) as connection:
        assert migrate.form_of(connection) == "0001"
        assert not sa.inspect(connection).has_table("evidence")
    as_it_was_written_then(old)
    old.close()
    new = open_store(tmp_path)
    try:
        assert results.page(new, code, 10, 0) == before
        assert evidence.counter(new, "m") == 0
        results.add(new, code, result(2), None, {"id": result(2)["id"], "metal": "m"})
        assert [r.id for r in evidence.counted(new, "m")] == [result(2)["id"]]
        assert [p.result["id"] for p in results.pieces(new, code, 1, 1)] == ["trial-1", "trial-2"]
        evidence.mark(new, "trial-2", "forget")
        assert evidence.counted(new, "m") == []
        assert [p.result["id"] for p in results.pieces(new, code, 1, 1)] == ["trial-1"]
    finally:
        new.close()


def test_an_upgrade_gives_new_k_and_n_to_metals_nobody_edited(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
):
    """As shipped up to 0.3: renewed. Edited in a strength, K or n: the user's, left alone."""

    def form_of_0_3(connection: sa.Connection) -> None:
        config = Config()
        config.set_main_option("script_location", str(Path(migrate.__file__).parent / "migrations"))
        config.attributes["connection"] = connection
        command.upgrade(config, "0006")
        written_by_todays_code(connection)

    now = {m["code"]: m for m in json.loads(demo.STARTER_METALS.read_text("utf-8"))["metals"]}

    def shipped(code: str, k: tuple[float, ...], n: tuple[float, ...]) -> dict[str, Any]:
        ends = ("low", "nominal", "high")
        old = {"source": "Groover", "standing": "typical"}
        return now[code] | {
            "hardening_k_mpa": dict(zip(ends, k, strict=True)) | old,
            "hardening_n": dict(zip(ends, n, strict=True)) | old,
        }

    untouched = shipped("mild-steel-cr", (500, 530, 600), (0.21, 0.25, 0.26)) | {"note": "Rack 3"}
    edited = shipped("galvanised", (500, 530, 600), (0.21, 0.25, 0.26))
    edited["tensile_mpa"] = edited["tensile_mpa"] | {"nominal": 390, "standing": "measured"}
    copper = shipped("copper-annealed", (300, 315, 530), (0.44, 0.5, 0.54))
    own = copper | {"code": "copper-of-ours"}
    kept = [untouched, edited, copper, own]
    with monkeypatch.context() as patched:
        patched.setattr(migrate, "_run", form_of_0_3)
        old = open_store(tmp_path)
    documents.write(old, "metals", kept, if_match="*")
    with reading(old.engine) as connection:
        before = last_change(connection)
    as_it_was_written_then(old)
    old.close()
    for _ in range(2):  # the second start finds nothing left to do
        new = open_store(tmp_path)
        try:
            newest = documents.read(new, "metals")
            with reading(new.engine) as connection:
                assert last_change(connection) == before + 1
        finally:
            new.close()
        assert newest.version == 2
        first, second, third, fourth = json.loads(newest.body)
        assert (second, fourth) == (edited, own)
        for row, was in ((first, untouched), (third, copper)):
            for name in ("hardening_k_mpa", "hardening_n"):
                assert row[name] == now[row["code"]][name] != was[name]
            assert row["note"] == was["note"]


def test_a_file_of_a_newer_release_is_left_alone(tmp_path: Path):
    open_store(tmp_path).close()
    with sqlite3.connect(tmp_path / FILE_NAME) as file:
        file.execute("UPDATE alembic_version SET version_num = '9999'")
    with pytest.raises(ShopError, match="newer release"):
        open_store(tmp_path)


def test_a_migration_that_fails_leaves_nothing(tmp_path: Path, monkeypatch: pytest.MonkeyPatch):
    def broken(_connection: object) -> None:
        raise RuntimeError("power cut")

    from flangebook.shop import store as module

    with monkeypatch.context() as patched:
        run = migrate._run
        patched.setattr(migrate, "_run", lambda c: (run(c), broken(c)))
        with pytest.raises(RuntimeError):
            open_store(tmp_path)
    with sqlite3.connect(tmp_path / FILE_NAME) as file:
        assert file.execute("SELECT name FROM sqlite_master").fetchall() == []
    module.open_store(tmp_path).close()


def test_a_write_that_fails_halfway_leaves_nothing(store: Store, monkeypatch: pytest.MonkeyPatch):
    monkeypatch.setattr(revisions, "_plan_id", lambda *_: 1 / 0)
    with pytest.raises(ZeroDivisionError):
        revisions.create(store, CONTENT, Author("a"), code="0000000")
    with pytest.raises(UnknownError):
        cards.read(store, "0000000")
    with reading(store.engine) as connection:
        assert connection.execute(sa.text("SELECT change FROM shop")).scalar() == 0


def test_a_plan_is_kept_once(store: Store):
    for _ in range(5):
        revisions.create(store, CONTENT, Author("a"))
    with reading(store.engine) as connection:
        assert connection.execute(sa.text("SELECT count(*) FROM plans")).scalar() == 1


def test_foreign_keys_hold(store: Store):
    with pytest.raises(sa.exc.IntegrityError), writing(store.engine) as connection:
        connection.execute(
            sa.insert(metadata.tables["trials"]).values(
                id="x", code="0000000", number=1, revision=1, digest="", at="", by="", body="{}"
            )
        )


def test_many_writers_at_once_lose_nothing(store: Store):
    code, _ = revisions.create(store, CONTENT, Author("a"))
    with ThreadPoolExecutor(12) as threads:
        kept = list(threads.map(lambda n: results.add(store, code, result(n), None), range(120)))
    assert all(one.new for one in kept)
    assert len({one.card_etag for one in kept}) == 120
    with reading(store.engine) as connection:
        numbers = connection.execute(
            sa.text("SELECT number FROM trials ORDER BY number")
        ).scalars().all()  # fmt: skip
    assert numbers == list(range(1, 121))


def test_of_many_editors_with_one_etag_one_wins(store: Store):
    code, _ = revisions.create(store, CONTENT, Author("a"))
    etag = cards.read(store, code).etag

    def edit(number: int) -> bool:
        changed = Content(f"Title {number}", "", CONTENT.part, PLAN, "ok")
        try:
            return revisions.revise(store, code, changed, Author("b"), ["x"], if_match=etag)
        except StaleError as error:
            return error.etag == etag

    with ThreadPoolExecutor(12) as threads:
        assert sum(threads.map(edit, range(24))) == 1


def test_of_many_senders_of_one_card_one_makes_it(store: Store):
    def send(_: int) -> tuple[str, bool]:
        return revisions.create(store, CONTENT, Author("a"), code="0000000", asked={"part": 1})

    with ThreadPoolExecutor(12) as threads:
        made = list(threads.map(send, range(24)))
    assert sum(new for _, new in made) == 1
    with pytest.raises(TakenError):
        revisions.create(store, CONTENT, Author("a"), code="0000000", asked={"part": 2})


def test_memory_forgets_after_a_write_by_anyone(store: Store, tmp_path: Path):
    cache = Cache(tmp_path / FILE_NAME)
    made: list[int] = []

    def make() -> int:
        made.append(1)
        return len(made)

    def ask() -> int:
        return cache.get_or_compute("x", make, lambda _: 1)

    assert [ask(), ask(), ask()] == [1, 1, 1]
    documents.write(store, "dies", [], if_match="*")
    documents.write(store, "dies", [{"code": "a"}], if_match="*")
    assert [ask(), ask()] == [2, 2]
    with sqlite3.connect(tmp_path / FILE_NAME) as other_program:
        other_program.execute("INSERT INTO documents VALUES ('dies', 9, '[]', '', '', 9, '')")
    assert [ask(), ask()] == [3, 3]
    with sqlite3.connect(tmp_path / FILE_NAME) as other_program:
        other_program.execute("UPDATE shop SET shop_id = 'x'")
    assert [ask(), ask()] == [4, 4]
    cache.close()


def test_memory_keeps_what_does_not_rest_on_what_was_written(store: Store, tmp_path: Path):
    cache = Cache(tmp_path / FILE_NAME)
    made = {"rests": 0, "moment": 0}

    def ask(name: str) -> int:
        def make() -> int:
            made[name] += 1
            return made[name]

        return cache.get_or_compute(name, make, lambda _: 1, moment=name == "moment")

    assert (ask("rests"), ask("moment")) == (1, 1)
    press_screens.move(store, "1", press_screens.ShownStep(None, 0))
    assert (ask("rests"), ask("moment")) == (1, 2)
    options.set_option(store, options.LABELS_OPEN, True)
    assert (ask("moment"), ask("rests"), ask("moment")) == (3, 1, 3)
    code, _ = revisions.create(store, CONTENT, Author("a"))
    assert (ask("rests"), ask("moment")) == (2, 4)
    results.add(store, code, result(1), None)
    assert (ask("moment"), ask("rests")) == (5, 3)
    assert cache._bytes == 2
    cache.close()


def test_every_table_counts_what_is_written_or_is_named_as_one_aside(store: Store):
    """A table forgotten here would leave old answers standing."""
    with reading(store.engine) as connection:
        query = "SELECT tbl_name, name FROM sqlite_master WHERE name LIKE '%\\_counts' ESCAPE '\\'"
        found = {tuple(row) for row in connection.exec_driver_sql(query)}
    counted = set(metadata.tables) - ASIDE
    added = {(table, f"{table}_insert_counts") for table in counted}
    changed = {
        (t, f"{t}_{v}_counts") for t in counted - set(APPEND_ONLY) for v in ("update", "delete")
    }
    assert found == added | changed


def test_memory_has_a_bound(tmp_path: Path, store: Store):
    cache = Cache(tmp_path / FILE_NAME, most_bytes=1000)
    for number in range(100):
        cache.get_or_compute(f"n{number}", lambda: "x", lambda _: 100)
    assert len(cache._held) == 10
    assert cache._bytes == 1000
    cache.get_or_compute("whale", lambda: "x", lambda _: 900)
    assert "whale" not in cache._held
    cache.close()


def test_memory_never_shows_what_is_older_than_a_finished_write(store: Store):
    """Readers and a writer at once: after a write is acknowledged, every read has it."""
    code, _ = revisions.create(store, CONTENT, Author("a"))
    done = threading.Event()
    newest = [0]
    wrong: list[tuple[int, int]] = []

    def look() -> None:
        while not done.is_set():
            at_least = newest[0]
            seen = int(cards.read(store, code).etag.split(".")[1])
            if seen < at_least:
                wrong.append((seen, at_least))

    readers = [threading.Thread(target=look) for _ in range(4)]
    for thread in readers:
        thread.start()
    for number in range(1, 150):
        results.add(store, code, result(number), None)
        newest[0] = number
    done.set()
    for thread in readers:
        thread.join()
    assert wrong == []
