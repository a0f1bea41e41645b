"""Two hundred phones over the shop's https for two minutes: follow a bench, scan, fetch changes.

Nothing passes or fails on time; an answer that is not the right one does. Latencies stand
beside those of the request that does nothing, asked by the same phones in the same run.
"""

from __future__ import annotations

import asyncio
import json
import os
import random
import re
import ssl
import statistics
import subprocess
import sys
import time
from collections import defaultdict
from concurrent.futures import ThreadPoolExecutor
from dataclasses import dataclass, field
from pathlib import Path

import pytest

from .conftest import PATIENCE_S, Figures, Shop

pytestmark = pytest.mark.benchmark
PHONES = 200
SECONDS = float(os.environ.get("FLANGEBOOK_CROWD_S", "120"))
FOLLOW_S = 1.5
SCAN_EVERY, FEED_EVERY = 6, 8  # rounds of following


@dataclass
class Told:
    """What the phones saw: seconds by kind of request, and what went wrong."""

    took: dict[str, list[float]] = field(default_factory=lambda: defaultdict(list))
    wrong: list[str] = field(default_factory=list)


class Phone:
    """One device: a TLS connection that is kept, and opened again when it was closed."""

    def __init__(self, port: int, trust: ssl.SSLContext, cookie: str, told: Told) -> None:
        self._port, self._trust, self._cookie, self._told = port, trust, cookie, told
        self._line: tuple[asyncio.StreamReader, asyncio.StreamWriter] | None = None

    async def ask(self, kind: str, path: str, good: tuple[int, ...], more: str = "") -> str:
        """GET; the ETag. A closed connection is opened again, as a browser does."""
        began = time.perf_counter()
        try:
            status, etag = await self._once(path, more)
        except (OSError, asyncio.IncompleteReadError):
            self._line = None
            try:
                status, etag = await self._once(path, more)
            except (OSError, asyncio.IncompleteReadError) as error:
                self._told.wrong.append(f"{kind}: {error!r}")
                self._line = None
                return ""
        self._told.took[kind].append(time.perf_counter() - began)
        if status not in good:
            self._told.wrong.append(f"{kind}: {status}")
        return etag

    async def _once(self, path: str, more: str) -> tuple[int, str]:
        if self._line is None:
            self._line = await asyncio.open_connection("127.0.0.1", self._port, ssl=self._trust)
        reader, writer = self._line
        asked = f"GET {path} HTTP/1.1\r\nHost: 127.0.0.1:{self._port}\r\nCookie: {self._cookie}\r\n"
        writer.write(f"{asked}{more}\r\n".encode())
        await writer.drain()
        head = (await reader.readuntil(b"\r\n\r\n")).decode()
        length = re.search(r"content-length: (\d+)", head, re.IGNORECASE)
        if length:
            await reader.readexactly(int(length[1]))
        if re.search(r"connection: close", head, re.IGNORECASE):
            writer.close()
            self._line = None
        etag = re.search(r"etag: (\S+)", head, re.IGNORECASE)
        return int(head.split()[1]), etag[1] if etag else ""

    async def live(self, codes: list[str], cursor: str, until: float, rnd: random.Random) -> None:
        """Follow the bench; now and then scan a label, fetch what changed, and ask nothing."""
        await asyncio.sleep(rnd.uniform(0, FOLLOW_S))
        seen, turn = "", rnd.randrange(SCAN_EVERY * FEED_EVERY)
        while time.monotonic() < until:
            known = f"If-None-Match: {seen}\r\n" if seen else ""
            seen = await self.ask("follow", "/api/v1/press-screens/1", (200, 304), known) or seen
            turn += 1
            if turn % SCAN_EVERY == 0:
                await self.ask("scan", f"/api/v1/cards/{rnd.choice(codes)}", (200,))
                await self.ask("nothing", "/api/v1/health", (200,))
            if turn % FEED_EVERY == 0:
                await self.ask("feed", f"/api/v1/changes?since={cursor}", (200,))
            await asyncio.sleep(FOLLOW_S * rnd.uniform(0.8, 1.2))


@pytest.fixture
def crowded(tmp_path: Path) -> Shop:
    """A server with the demo shop and --lan, ready."""
    command = [sys.executable, "-m", "flangebook", "serve", "--port", "0", "--lan",
               "--data", str(tmp_path)]  # fmt: skip
    process = subprocess.Popen(command, stdout=subprocess.PIPE, text=True)
    assert process.stdout
    line = process.stdout.readline()
    found = re.search(r"http://[\w.]+:\d+", line)
    assert found, line
    return Shop(process, found[0], 0.0)


def https_port(shop: Shop) -> int:
    assert shop.process.stdout
    while not (found := re.search(r"https://127\.0\.0\.1:(\d+)", shop.process.stdout.readline())):
        pass
    return int(found[1])


def test_two_hundred_phones(crowded: Shop, tmp_path: Path, figures: Figures) -> None:
    import requests

    port = https_port(crowded)
    owner = requests.Session()
    codes = [one["code"] for one in crowded.get("/api/v1/cards?limit=50")["cards"]]
    cursor = crowded.get("/api/v1/changes?since=")["cursor"]
    owner.put(f"{crowded.address}/api/v1/press-screens/1", json={"code": codes[0], "step": 1})
    trust = ssl.create_default_context(cafile=str(tmp_path / "https/authority.crt"))
    cookies = []
    for _ in range(PHONES):
        offer = owner.post(f"{crowded.address}/api/v1/pairings", json={"role": "operator"}).json()
        paired = requests.post(
            f"https://127.0.0.1:{port}/api/v1/pair", json={"code": offer["code"]},
            verify=str(tmp_path / "https/authority.crt"), timeout=PATIENCE_S,
        )  # fmt: skip
        cookies.append(paired.headers["Set-Cookie"].partition(";")[0])
    told, before = Told(), crowded.memory_mb()

    async def crowd() -> None:
        until = time.monotonic() + SECONDS
        phones = [Phone(port, trust, cookie, told) for cookie in cookies]
        lives = [p.live(codes, cursor, until, random.Random(n)) for n, p in enumerate(phones)]
        await asyncio.gather(*lives)

    try:
        # The browser's own event loop is still running in this thread.
        with ThreadPoolExecutor(1) as thread:
            thread.submit(asyncio.run, crowd()).result()
        after = crowded.memory_mb()
    finally:
        crowded.kill()
    count = sum(len(times) for times in told.took.values())
    figures.add(
        f"{PHONES} phones over https, {SECONDS:.0f} s",
        f"{count} answers, {len(told.wrong)} wrong", "0 wrong",
    )  # fmt: skip
    nothing = statistics.median(told.took["nothing"])
    for kind in ("nothing", "follow", "scan", "feed"):
        times = sorted(told.took[kind])
        late = times[int(len(times) * 0.99)]
        ratio = statistics.median(times) / nothing
        figures.add(
            f"of these, {kind}",
            f"median {statistics.median(times) * 1000:.1f} ms ({ratio:.1f} times nothing), "
            f"1 in 100 over {late * 1000:.0f} ms",
        )
    figures.add("server memory before and after", f"{before:.0f} and {after:.0f} MB")
    print(json.dumps(told.wrong[:20]))
    assert told.wrong == []
