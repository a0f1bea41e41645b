"""Everything at once, for a while: ``tests/run --soak MINUTES``.

Two hundred phones work over the shop's https; meanwhile thirty slow connections, drawings that
would be enormous, four of the worst plans at a time; the server is killed, and so are its workers,
twenty times in all; once the disk is full. Nothing that was acknowledged may be lost, nothing that
was typed may be there twice or not at all, no answer may be a 5xx but 503 and 507, and the server's
memory stays bounded. Linux only.
"""

from __future__ import annotations

import asyncio
import random
import shutil
import sqlite3
import ssl
import statistics
import sys
import tempfile
import time
from contextlib import closing
from pathlib import Path

from shop_process import free_ports

from soak.attacks import plan_the_worst, slow, throw_bombs
from soak.line import Line, Told
from soak.phones import Phone
from soak.shop import Shop

PHONES, SLOW, PLANS, KILLS, CARDS = 200, 30, 4, 20, 60
MOST_SERVER_MB = 400
DISK_FULL_S = 8.0
FLUSH_S = 300.0
PART = {
    "metal": "mild-steel-cr", "thickness_mm": 2, "bend_length_mm": 300, "flats_mm": [40, 60],
    "bends": [{"included_angle_deg": 90, "direction": "up"}],
}  # fmt: skip


class Soak:
    """One run."""

    def __init__(self, folder: Path, seconds: float) -> None:
        self._shop = Shop(folder / "shop", free_ports(3))
        self._seconds = seconds
        self._until = 0.0
        self._told = Told()
        self._phones: list[Phone] = []
        self._alone = asyncio.Lock()  # the disk is not filled while the server starts
        self._rnd = random.Random(8417)

    def run(self) -> int:
        """0 when all held."""
        try:
            self._shop.start()
            asyncio.run(self._all())
            stopped_s = self._shop.stop()
        finally:
            self._shop.end()
        faults = [*self._told.wrong, *self._lost()]
        if self._shop.memory.server > MOST_SERVER_MB:
            faults.append(f"the server took {self._shop.memory.server:.0f} MB")
        if traceback := self._shop.log().partition("Traceback")[2][:3000]:
            faults.append(f"the log has a traceback: {traceback}")
        print(*self._figures(stopped_s), *faults[:30], sep="\n")
        print(f"{len(faults)} faults.")
        return 1 if faults else 0

    def _going(self) -> bool:
        return time.monotonic() < self._until

    async def _all(self) -> None:
        codes, cursor = await self._cards()
        await self._pair()
        self._until = time.monotonic() + self._seconds
        own, https, http = self._shop.port, self._shop.port + 1, self._shop.port + 2
        rnd = self._rnd
        tasks = [phone.live(codes, cursor, self._going) for phone in self._phones]
        tasks += [slow((own, https, http)[n % 3], self._going, rnd) for n in range(SLOW)]
        tasks += [plan_the_worst(own, self._told, self._going, rnd) for _ in range(PLANS)]
        tasks += [throw_bombs(own, self._told, self._going, rnd), self._ask_health(own)]
        tasks += [self._kill(), self._fill_disk()]
        await asyncio.gather(*tasks)
        end = time.monotonic() + FLUSH_S
        left = self._phones
        while left and time.monotonic() < end:
            sent = await asyncio.gather(*(phone.send() for phone in left))
            left = [phone for phone, done in zip(left, sent, strict=True) if not done]
        for phone in self._phones:
            phone.line.close()

    async def _cards(self) -> tuple[list[str], str]:
        line, codes = Line(self._shop.port, self._told), []
        for number in range(CARDS):
            part = {**PART, "title": f"Angle {number}"}
            status, card = await line.json("new card", "POST", "cards", {"part": part})
            assert status == 201, card
            codes.append(card["code"])
        await line.json("bench", "PUT", "benches/1", {"code": codes[0], "step": 1})
        status, changes = await line.json("feed", "GET", "changes?since=")
        assert status == 200, changes
        line.close()
        return codes, changes["cursor"]

    async def _pair(self) -> None:
        trust = ssl.create_default_context(cafile=str(self._shop.data / "https/authority.crt"))
        owner = Line(self._shop.port, self._told)
        for number in range(PHONES):
            rnd = random.Random(number)
            phone = Phone(self._shop.port + 1, trust, self._told, rnd)
            _, offer = await owner.json("offer", "POST", "pairings", {"role": "operator"})
            status, said = await phone.line.json("pair", "POST", "pair", {"code": offer["code"]})
            assert status == 200, said
            self._phones.append(phone)
        owner.close()

    async def _ask_health(self, port: int) -> None:
        line = Line(port, self._told)
        while self._going():
            await line.ask("health", "GET", "health")
            await asyncio.sleep(0.2)

    async def _kill(self) -> None:
        """Evenly over the time, the server and a worker in turns."""
        began, apart_s = time.monotonic(), self._seconds * 0.95 / KILLS
        for number in range(KILLS):
            await asyncio.sleep(max(0.0, began + apart_s * (number + 1) - time.monotonic()))
            async with self._alone:
                if number % 2 == 0 or not self._shop.kill_worker():
                    await asyncio.to_thread(self._shop.kill)

    async def _fill_disk(self) -> None:
        """Once, in the middle."""
        await asyncio.sleep(self._seconds / 2)
        async with self._alone:
            self._shop.limit_files(4096)
            await asyncio.sleep(DISK_FULL_S)
            self._shop.limit_files(-1)

    def _lost(self) -> list[str]:
        """What was acknowledged or typed and is not there as it should be."""
        with closing(sqlite3.connect(self._shop.data / "flangebook.sqlite")) as file:
            kept = file.execute("SELECT id, code FROM trials").fetchall()
            sound = file.execute("PRAGMA integrity_check").fetchall()
            loose = file.execute("PRAGMA foreign_key_check").fetchall()
        there = dict(kept)
        typed = {i: code for phone in self._phones for i, code in phone.typed.items()}
        acknowledged = set().union(*(phone.acknowledged for phone in self._phones))
        lost = [f"acknowledged and lost: {i}" for i in acknowledged - there.keys()]
        lost += [f"typed and not there: {i}" for i, code in typed.items() if there.get(i) != code]
        if len(there) != len(kept):
            lost.append("something is there twice")
        if self._told.statuses["trial", 507] == 0:
            lost.append("no write met the full disk")
        return lost + ([] if sound == [("ok",)] and not loose else [f"damaged: {sound} {loose}"])

    def _figures(self, stopped_s: float) -> list[str]:
        told, shop = self._told, self._shop
        by_kind: dict[str, dict[int, int]] = {}
        for (kind, status), count in sorted(told.statuses.items()):
            by_kind.setdefault(kind, {})[status] = count
        rows = [f"{kind}: {counts}, {spread(told.took[kind])}" for kind, counts in by_kind.items()]
        typed = sum(len(phone.typed) for phone in self._phones)
        return [
            *rows,
            f"{sum(told.statuses.values())} answers, {told.silences} requests without one",
            f"{typed} results typed; {shop.server_kills} kills of the server, "
            f"{shop.worker_kills} of workers",
            f"most memory: server {shop.memory.server:.0f} MB, with its workers "
            f"{shop.memory.with_workers:.0f} MB; stopped in {stopped_s:.1f} s",
        ]


def spread(times: list[float]) -> str:
    """Median and 99th percentile."""
    ordered = sorted(times)
    late = ordered[int(len(ordered) * 0.99)]
    return f"median {statistics.median(ordered) * 1000:.0f} ms, 1 in 100 over {late * 1000:.0f} ms"


if __name__ == "__main__":
    folder = Path(tempfile.mkdtemp(prefix="soak"))
    code = Soak(folder, 60 * float(sys.argv[1])).run()
    shutil.rmtree(folder)
    sys.exit(code)
