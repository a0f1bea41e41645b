"""The copies a shop keeps of itself: when one is due, which are let go, what goes wrong."""

from __future__ import annotations

import logging
from collections import namedtuple
from collections.abc import Iterator
from datetime import UTC, datetime, timedelta, timezone
from pathlib import Path

import pytest

from flangebook.shop import documents
from flangebook.shop.backups import schedule
from flangebook.shop.backups.copies import look_through
from flangebook.shop.backups.schedule import FOLDER, Backup, Keeper, is_due, kept, let_go
from flangebook.shop.store import FILE_NAME, Store, open_store

HERE = timezone(timedelta(hours=2))
NOON = datetime(2026, 5, 20, 12, tzinfo=HERE)  # a Wednesday


@pytest.fixture
def store(tmp_path: Path) -> Iterator[Store]:
    """A shop in use."""
    opened = open_store(tmp_path)
    documents.write(opened, "dies", [{"code": "D"}], if_match="*")
    yield opened
    opened.close()


def night(at: datetime) -> Backup:
    return Backup(Path(f"/{at:%Y%m%d%H%M}"), "night", at.astimezone(UTC), 1)


@pytest.mark.parametrize(
    ("made", "now", "due"),
    [
        (None, NOON, True),
        (NOON - timedelta(hours=25), NOON, True),
        (NOON.replace(hour=2, minute=59), NOON, True),
        (NOON.replace(hour=3, minute=0), NOON, False),
        (NOON.replace(hour=11), NOON, False),
        (NOON - timedelta(hours=20), NOON.replace(hour=2, minute=59), False),
        (NOON - timedelta(hours=20), NOON.replace(hour=3), True),
        (NOON + timedelta(days=300), NOON, True),  # the clock was wrong then
    ],
)
def test_one_is_due_when_none_was_made_since_three_in_the_morning(
    made: datetime | None, now: datetime, due: bool
):
    assert is_due([night(made)] if made else [], now) is due


def test_copies_by_hand_count_for_nothing_and_are_never_let_go():
    others = [Backup(Path(f"/{k}"), k, NOON, 1) for k in ("by-hand", "replaced")]  # type: ignore[arg-type]
    assert is_due(others, NOON)
    assert let_go([*others, *[night(NOON - timedelta(days=d)) for d in range(100)]])
    assert not set(others) & set(
        let_go([*others, *[night(NOON - timedelta(days=d)) for d in range(100)]])
    )


def test_seven_days_and_four_weeks_stay():
    """By hand: 20 May 2026 is a Wednesday. Days 20 to 14; weeks end on 17 May, 10 May, 3 May."""
    nights = [night(NOON - timedelta(days=d)) for d in range(60)]
    stay = [n.at.date().isoformat() for n in nights if n not in let_go(nights)]
    assert stay == [
        "2026-05-20", "2026-05-19", "2026-05-18", "2026-05-17", "2026-05-16", "2026-05-15",
        "2026-05-14", "2026-05-10", "2026-05-03",
    ]  # fmt: skip


def test_a_shop_that_was_shut_for_months_lets_nothing_go_before_it_has_more():
    old = [night(NOON - timedelta(days=200 + d)) for d in range(7)]
    assert let_go(old) == []
    assert let_go([night(NOON), *old[:6]]) == []


def test_of_a_day_the_newest_stays():
    morning, evening = night(NOON.replace(hour=4)), night(NOON.replace(hour=20))
    assert let_go([morning, evening]) == [morning]


def test_sixty_nights(store: Store, tmp_path: Path):
    keeper = Keeper(tmp_path)
    for day in range(60):
        keeper.look(NOON + timedelta(days=day))
        keeper.look(NOON + timedelta(days=day, minutes=10))  # not due again
        assert keeper.trouble is None
    found = kept(tmp_path)
    assert 7 <= len(found) <= 7 + 4
    assert found[0].at == (NOON + timedelta(days=59)).astimezone(UTC)
    assert look_through(found[-1].path).shop_id == store.shop_id
    assert all(one.path.stat().st_mode & 0o077 == 0 for one in found)


def test_a_full_disk_is_said_once_and_the_good_ones_stay(
    store: Store, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, caplog: pytest.LogCaptureFixture
):
    keeper = Keeper(tmp_path)
    keeper.look(NOON)
    (good,) = kept(tmp_path)
    usage = namedtuple("usage", "total used free")
    with monkeypatch.context() as patched, caplog.at_level(logging.ERROR):
        patched.setattr(schedule.shutil, "disk_usage", lambda _: usage(1, 1, 0))
        for minutes in (0, 10, 20):
            keeper.look(NOON + timedelta(days=1, minutes=minutes))
    assert keeper.trouble is not None
    assert "disk is full" in keeper.trouble[1]
    assert [r.message for r in caplog.records] == [
        f"The night's copy of the shop could not be made. {keeper.trouble[1]}"
    ]
    assert kept(tmp_path) == [good]
    keeper.look(NOON + timedelta(days=1, minutes=30))
    assert keeper.trouble is None
    assert len(kept(tmp_path)) == 2


def test_a_damaged_shop_makes_no_copy_and_lets_no_good_one_go(store: Store, tmp_path: Path):
    keeper = Keeper(tmp_path)
    for day in range(10):
        keeper.look(NOON + timedelta(days=day))
    good = kept(tmp_path)
    store.close()
    for end in ("-wal", "-shm"):
        (tmp_path / (FILE_NAME + end)).unlink(missing_ok=True)
    data = bytearray((tmp_path / FILE_NAME).read_bytes())
    for start in range(8192, len(data), 4096):
        data[start : start + 64] = b"\xa5" * 64
    (tmp_path / FILE_NAME).write_bytes(data)
    keeper.look(NOON + timedelta(days=10))
    assert keeper.trouble is not None
    assert "damaged" in keeper.trouble[1]
    assert kept(tmp_path) == good


def test_what_a_killed_server_left_is_swept_away(store: Store, tmp_path: Path):
    folder = tmp_path / FOLDER
    folder.mkdir()
    (folder / ".night-x.sqlite.1a2b.unfinished").write_text("half")
    (folder / ".night-x.sqlite.1a2b.unfinished-journal").write_text("half")
    (folder / "mine.txt").write_text("not ours")
    Keeper(tmp_path).look(NOON)
    names = sorted(p.name for p in folder.iterdir())
    assert names == ["mine.txt", "night-2026-05-20T100000Z.sqlite"]
