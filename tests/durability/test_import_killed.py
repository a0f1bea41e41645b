"""Kill -9 in the middle of an import that replaces the shop: the old one or the new, whole."""

from __future__ import annotations

import json
import random
import sqlite3
import time
from contextlib import closing
from pathlib import Path

from flangebook.shop import documents, revisions
from flangebook.shop.cards import Content
from flangebook.shop.revisions import Author
from flangebook.shop.storage.tables import APPEND_ONLY, ASIDE
from flangebook.shop.store import FILE_NAME, opened
from flangebook.shop.transfer.export import pieces
from serving.running import PROGRAM, started

KILLS = 6
CARDS = 150
PART = {
    "metal": "mild-steel-cr",
    "thickness_mm": 2.0,
    "bend_length_mm": 300.0,
    "flats_mm": [40.0, 60.0],
    "bends": [{"included_angle_deg": 90.0, "direction": "up"}],
}


def shop(folder: Path, title: str) -> None:
    """A shop whose cards all have that title."""
    plan = {"steps": [], "worst": "ok", "filler": ["x" * 1000] * 4}
    part = {**PART, "title": title}
    with opened(folder) as store:
        documents.write(store, "dies", [], by=title, if_match="*")
        for number in range(CARDS):
            content = Content(title, "", part, {**plan, "number": number}, "ok")
            revisions.create(store, content, Author(title))


def stands(folder: Path) -> str:
    """Which of the two it is; fails when it is by halves."""
    with closing(sqlite3.connect(folder / FILE_NAME)) as file:
        assert file.execute("PRAGMA integrity_check").fetchall() == [("ok",)]
        assert file.execute("PRAGMA foreign_key_check").fetchall() == []
        ((title, cards),) = file.execute("SELECT title, count(*) FROM cards GROUP BY title")
        assert cards == CARDS
        assert file.execute("SELECT DISTINCT title FROM revisions").fetchall() == [(title,)]
        query = "SELECT count(*) FROM sqlite_master WHERE type = 'trigger'"
        counting = len(set(APPEND_ONLY) - ASIDE) + 3
        assert file.execute(query).fetchone()[0] == 2 * len(APPEND_ONLY) + counting
    return str(title)


def test_an_import_that_is_killed_leaves_the_old_shop_or_the_new(tmp_path: Path) -> None:
    data, other, document = tmp_path / "shop", tmp_path / "other", tmp_path / "shop.json"
    shop(data, "old")
    shop(other, "new")
    with opened(other) as store:
        document.write_text("".join(pieces(store)), "utf-8")
    back = tmp_path / "back.json"
    with opened(data) as store:
        back.write_text("".join(pieces(store)), "utf-8")
    assert len(json.loads(back.read_text("utf-8"))["cards"]) == CARDS
    dice, waiting = random.Random(8417), {"old": document, "new": back}
    killed = 0
    for _ in range(KILLS):
        before = stands(data)
        importing = started(
            [*PROGRAM, "import", str(waiting[before]), "--replace", "--data", str(data)]
        )
        # It is at work when it has begun to keep a copy of what it replaces.
        copies = data / "copies"
        had = len(list(copies.glob("*"))) if copies.exists() else 0
        while importing.poll() is None and (
            not copies.exists() or len(list(copies.glob("*"))) == had
        ):
            time.sleep(0.001)
        time.sleep(dice.uniform(0.0, 0.15))
        if importing.poll() is None:
            importing.kill()
            killed += 1
        importing.communicate()
        assert stands(data) in waiting
    assert killed > 0
