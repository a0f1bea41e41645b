"""Many devices, a bad line and a dying server: what was typed is in the shop once, every edit that
met another one is seen by everybody, and in the end all devices hold the same.

The devices follow the rules of the web's outbox (`devices.py`); server, file and network are
real. Every run is drawn from its seed.
"""

from __future__ import annotations

import os
import random
import shutil
import signal
import sqlite3
from collections.abc import Iterator
from contextlib import closing
from pathlib import Path
from typing import Any

import pytest
from devices import NONE, Device, Line
from test_killed import Kennel, first_cards, kennel

from flangebook.shop.store import FILE_NAME

pytestmark = pytest.mark.skipif(not hasattr(os, "fork"), reason="servers are forked")
CARDS = 4
RUN = "2f6f5a1c-6a52-4d77-9d1c-5b0a5b4e9a01"


class Shop:
    """A server that is killed and started again, and the devices around it."""

    def __init__(self, data: Path, codes: list[str], kept: Kennel, devices: int, seed: int) -> None:
        self.data = data
        self.codes = codes
        self.dice = random.Random(seed)
        self._kennel = kept
        self.child, port = kept.start(data)
        self.line = Line(port, self.dice, self.kill)
        self.devices = [Device(f"device {n}", self.line) for n in range(devices)]
        self.quietly(self.devices[0].sync)
        for device in self.devices[1:]:  # all have been in the shop that morning
            device.cards, device.cursor = dict(self.devices[0].cards), self.devices[0].cursor

    def kill(self) -> int:
        """As when the plug is pulled; the port of the next server."""
        os.kill(self.child, signal.SIGKILL)
        self.child, port = self._kennel.start(self.data)
        return port

    def quietly(self, act: Any) -> None:
        """With a good line."""
        faults, self.line.faults = self.line.faults, NONE
        act()
        self.line.faults = faults

    def run(self, steps: int) -> None:
        """Random people: typing mostly, sometimes near enough to the shop to be heard."""
        for step in range(steps):
            device, code = self.dice.choice(self.devices), self.dice.choice(self.codes)
            act = self.dice.choice(
                ["trial", "note", "edit", "sync", "sync", "sync", "settle", "piece", "piece"]
            )
            if act == "piece":
                device.count(code, RUN, "piece")
            elif act == "trial":
                device.result(code, 85 + self.dice.random() * 10)
            elif act == "note":
                device.edit(code, note=f"note {step} of {device.name}")
            elif act == "edit":
                put_away = self.dice.random() < 0.5
                device.edit(code, title=f"title {self.dice.randrange(4)}", archived=put_away)
            elif act == "settle":
                device.settle(code, self.dice)
            else:
                device.sync()

    def come_to_rest(self) -> None:
        """All are heard, all that met is settled by somebody, until nothing waits."""
        self.line.faults = NONE
        for _ in range(60):
            self.all_are_heard()
            if not any(d.outbox for d in self.devices) and not self.open():
                break
            for code in self.codes:
                self.settle_all(code, self.dice.choice(self.devices))
        for device in self.devices:
            device.sync()

    def settle_all(self, code: str, device: Device) -> None:
        """One person goes through what is to settle on a card."""
        while device.cards[code]["proposals"]:
            before = len(device.cards[code]["proposals"])
            device.settle(code, self.dice)
            device.sync()
            if len(device.cards[code]["proposals"]) >= before:
                return

    def all_are_heard(self) -> None:
        """Every device that has just heard of the shop shows every conflict, and no other."""
        for device in self.devices:
            device.sync()
            seen = {p["id"] for c in device.cards.values() for p in c["proposals"]}
            assert seen == set(self.open()), f"{device.name} does not see what is to settle"

    def open(self) -> dict[str, str]:
        """Proposals that nobody settled, with their card."""
        return dict(
            self.rows(
                "SELECT id, code FROM proposals WHERE id NOT IN (SELECT proposal_id FROM "
                "settlements) AND id NOT IN (SELECT id FROM revisions)"
            )
        )

    def rows(self, query: str) -> list[Any]:
        """Asked of the file itself."""
        with closing(sqlite3.connect(self.data / FILE_NAME)) as file:
            return file.execute(query).fetchall()

    def ids(self, table: str) -> set[str]:
        """The ids of a table's rows; they are its key or unique, so each is there once."""
        found = [i for (i,) in self.rows(f"SELECT id FROM {table}")]
        assert len(found) == len(set(found))
        return set(found)


@pytest.fixture(scope="module")
def kept() -> Iterator[Kennel]:
    with kennel() as one:
        yield one


@pytest.fixture
def make_shop(demo_data: Path, tmp_path: Path, kept: Kennel) -> Iterator[Any]:
    data = tmp_path / "shop"
    codes = first_cards(demo_data, data, CARDS)
    made: list[Shop] = []

    def make(devices: int, seed: int) -> Shop:
        made.append(Shop(data, codes, kept, devices, seed))
        return made[-1]

    yield make
    for shop in made:
        os.kill(shop.child, signal.SIGKILL)


def check(shop: Shop) -> None:
    """Nothing waits, nothing is lost, nothing is there twice, all are equal."""
    assert [d.name for d in shop.devices if d.outbox] == []
    assert shop.open() == {}
    trials, revisions, proposals = (shop.ids(t) for t in ("trials", "revisions", "proposals"))
    entries = shop.ids("run_entries")
    assert entries, "nothing was counted"
    kinds = {i: e["kind"] for d in shop.devices for i, e in d.sent.items()}
    same = {i for d in shop.devices for i in d.same}
    for device in shop.devices:
        assert device.typed <= device.acknowledged
        for one in device.typed:
            if kinds[one] == "trial":
                assert one in trials, "a trial is lost"
            elif kinds[one] == "run":
                assert one in entries, "a piece is lost"
            elif one not in same:
                assert one in revisions | proposals, "an edit is lost"
    # A lost answer made no false conflict: what arrived is not proposed beside itself.
    assert revisions & proposals == set()
    assert shop.devices[0].cards.keys() >= set(shop.codes)
    for device in shop.devices:
        assert device.cards == shop.devices[0].cards, f"{device.name} holds something else"
    for code in shop.codes:
        assert shop.line.ask("GET", f"cards/{code}") == shop.devices[0].cards[code]
    check_counts(shop)


def check_counts(shop: Shop) -> None:
    """Every piece that anybody counted counts once, in the shop and on every device."""
    for code in shop.codes:
        counted = {
            i for d in shop.devices for i, e in d.sent.items() if _is_piece(e) and e["code"] == code
        }
        runs = shop.line.ask("GET", f"cards/{code}/runs")["runs"]
        assert sum(run["done"] for run in runs) == len(counted)
        for device in shop.devices:
            assert device.counted(code, RUN) == counted


def _is_piece(entry: Any) -> bool:
    return bool(entry["kind"] == "run" and entry["body"]["kind"] == "piece")


@pytest.mark.parametrize(
    ("devices", "steps", "seed"),
    [(5, 200, 11), (5, 200, 12), (12, 200, 13), (30, 200, 14), (100, 250, 15)],
)
def test_nothing_is_lost_and_all_are_equal_in_the_end(
    make_shop: Any, devices: int, steps: int, seed: int
) -> None:
    shop = make_shop(devices, seed)
    shop.run(steps)
    shop.come_to_rest()
    check(shop)
    # It was a bad line, the server died in the middle, and edits did meet.
    assert shop.line.kills > 0
    assert shop.line.lost > 0
    assert shop.ids("proposals")
    assert shop.rows("SELECT count(*) FROM revisions")[0][0] > CARDS


@pytest.mark.parametrize("seed", [21, 22])
def test_a_shop_put_back_to_an_earlier_day_gets_again_what_it_had(
    make_shop: Any, tmp_path: Path, seed: int
) -> None:
    shop = make_shop(6, seed)
    shop.run(60)
    for device in shop.devices:
        shop.quietly(device.sync)
    with (
        closing(sqlite3.connect(shop.data / FILE_NAME)) as file,
        closing(sqlite3.connect(tmp_path / "earlier")) as copy,
    ):
        file.backup(copy)
        copy.execute("UPDATE shop SET shop_id = 'put-back'")  # what makes the feed say reset
        copy.commit()
    shop.run(60)
    for device in shop.devices:
        shop.quietly(device.sync)
    had, counted = shop.ids("trials"), shop.ids("run_entries")
    os.kill(shop.child, signal.SIGKILL)
    for name in ("-wal", "-shm"):
        (shop.data / f"{FILE_NAME}{name}").unlink(missing_ok=True)
    shutil.copy(tmp_path / "earlier", shop.data / FILE_NAME)
    assert len(shop.ids("trials")) < len(had)
    assert len(shop.ids("run_entries")) < len(counted)
    shop.child, shop.line.port = shop._kennel.start(shop.data)
    shop.run(60)
    shop.come_to_rest()
    assert all(d.resets >= 1 for d in shop.devices)
    assert had <= shop.ids("trials")
    assert counted <= shop.ids("run_entries")
    check_counts(shop)
    check_after_restore(shop)


def check_after_restore(shop: Shop) -> None:
    """As ``check``; but an edit may have been proposed by one and have come as a revision too."""
    assert [d.name for d in shop.devices if d.outbox] == []
    assert shop.open() == {}
    kept = shop.ids("trials") | shop.ids("revisions") | shop.ids("proposals")
    kept |= shop.ids("run_entries")
    for device in shop.devices:
        assert device.typed - device.same <= kept
        assert device.cards == shop.devices[0].cards
