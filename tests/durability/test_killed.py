"""Kill -9 in the middle of writes, two hundred times: what was acknowledged is there.

A killed process leaves its writes in the machine's cache, so this says nothing of a power
cut; that every commit is synced to the disk is measured apart, below.
"""

from __future__ import annotations

import http.client
import json
import os
import random
import re
import shutil
import signal
import sqlite3
import subprocess
import sys
import threading
import time
import uuid
from collections.abc import Iterator
from contextlib import closing, contextmanager
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

import pytest

from flangebook.labels.codes import new_code
from flangebook.shop.store import FILE_NAME
from serving.running import command, serving

KILLS = 200
WRITERS = 4
MOST_ANSWERS = 12
RUN = "2f6f5a1c-6a52-4d77-9d1c-5b0a5b4e9a01"
PATIENCE_S = 20
READY = re.compile(r"http://127\.0\.0\.1:(\d+)/")
ANGLE = {
    "title": "Angle",
    "metal": "mild-steel-cr",
    "thickness_mm": 2,
    "bend_length_mm": 300,
    "flats_mm": [40, 60],
    "bends": [{"included_angle_deg": 90, "direction": "up"}],
}
posix = pytest.mark.skipif(not hasattr(os, "fork"), reason="servers are forked")


class Kennel:
    """Starts servers on shops, quickly, and kills them."""

    def __init__(self) -> None:
        start = [sys.executable, str(Path(__file__).parent / "kennel.py")]
        pipe = subprocess.PIPE
        self._process = subprocess.Popen(start, stdin=pipe, stdout=pipe, text=True)

    def start(self, data: Path) -> tuple[int, int]:
        """A new server on a shop; its process id and port, once it answers."""
        stdin, stdout = self._process.stdin, self._process.stdout
        assert stdin
        assert stdout
        stdin.write(f"{data}\n")
        stdin.flush()
        child = port = 0
        while not (child and port):
            line = stdout.readline()
            assert line, "the kennel ended"
            found = READY.search(line)
            if found:
                port = int(found[1])
            else:
                child = int(line)
        return child, port

    def close(self) -> None:
        """No more servers."""
        self._process.kill()
        self._process.communicate()


@dataclass
class Ledger:
    """What the server said it had kept, and what was on its way when it died."""

    trials: dict[str, str] = field(default_factory=dict)
    cards: set[str] = field(default_factory=set)
    revisions: dict[str, str] = field(default_factory=dict)
    documents: set[str] = field(default_factory=set)
    pieces: dict[str, str] = field(default_factory=dict)
    unanswered: list[tuple[str, str, dict[str, Any]]] = field(default_factory=list)

    def wait_for(self, more: int) -> None:
        """Until so many more were acknowledged."""
        aim, deadline = self._count() + more, time.monotonic() + PATIENCE_S
        while self._count() < aim:
            assert time.monotonic() < deadline, "the writers got no answers"
            time.sleep(0.002)

    def _count(self) -> int:
        kept = (self.trials, self.cards, self.revisions, self.documents, self.pieces)
        return sum(len(one) for one in kept)


class Writer(threading.Thread):
    """Writes without pause until the server is gone."""

    def __init__(self, port: int, code: str, ledger: Ledger) -> None:
        super().__init__(daemon=True)
        self._line = http.client.HTTPConnection("127.0.0.1", port, timeout=PATIENCE_S)
        self._code = code
        self._ledger = ledger
        self._dice = random.Random()

    def run(self) -> None:
        """Results and pieces mostly; sometimes a card, a revision, a change of the crib."""
        others = [self._revision, self._dies] * 2
        acts = [
            *[self._trial] * 5,
            *[self._piece] * 3,
            *others,
            self._card,
        ]  # planning a card takes the longest
        try:
            while True:
                self._dice.choice(acts)()
        except (OSError, http.client.HTTPException):
            return

    def _send(self, method: str, path: str, body: Any, etag: str = "") -> tuple[int, Any, str]:
        headers = {"Content-Type": "application/json"} | ({"If-Match": etag} if etag else {})
        self._line.request(method, f"/api/v1/{path}", json.dumps(body), headers)
        answer = self._line.getresponse()
        return answer.status, json.loads(answer.read()), answer.headers["ETag"] or ""

    def _post(self, path: str, body: dict[str, Any]) -> None:
        waiting = (path, "POST", body)
        self._ledger.unanswered.append(waiting)
        status, told, _ = self._send("POST", path, body)
        assert status in (200, 201), told
        self._ledger.unanswered.remove(waiting)

    def _trial(self) -> None:
        result = {"id": str(uuid.uuid4()), "revision": 1, "step": 1, "measured_deg": 91}
        self._post(f"cards/{self._code}/results", result)
        self._ledger.trials[result["id"]] = self._code  # type: ignore[index]

    def _piece(self) -> None:
        entry = {"id": str(uuid.uuid4()), "run_id": RUN, "revision": 1, "kind": "piece"}
        self._post(f"cards/{self._code}/runs", {**entry, "made_at": "2026-05-04T08:00:00Z"})
        self._ledger.pieces[entry["id"]] = self._code  # type: ignore[index]

    def _card(self) -> None:
        code = new_code()
        self._post("cards", {"part": ANGLE, "code": code})
        self._ledger.cards.add(code)

    def _revision(self) -> None:
        _, card, etag = self._send("GET", f"cards/{self._code}", None)
        change = {"note": str(uuid.uuid4()), "id": str(uuid.uuid4())}
        status, told, _ = self._send("PUT", f"cards/{card['code']}", change, etag)
        assert status == 200, told  # each writer has a card of its own
        self._ledger.revisions[change["id"]] = change["note"]

    def _dies(self) -> None:
        _, kept, etag = self._send("GET", "dies", None)
        mark = str(uuid.uuid4())
        kept["dies"][0]["condition_note"] = mark
        status, told, _ = self._send("PUT", "dies", kept, etag)
        assert status in (200, 412), told
        if status == 200:
            self._ledger.documents.add(mark)


def missing(data: Path, ledger: Ledger) -> list[str]:
    """What was acknowledged and is not in the file, and what is there by halves."""
    with closing(sqlite3.connect(data / FILE_NAME)) as file:
        file.execute("PRAGMA query_only = 1")
        trials = dict(file.execute("SELECT id, code FROM trials"))
        cards = {code for (code,) in file.execute("SELECT code FROM cards")}
        revisions = dict(file.execute("SELECT id, note FROM revisions"))
        pieces = dict(file.execute("SELECT id, code FROM run_entries"))
        marks = file.execute(
            "SELECT json_extract(body, '$[0].condition_note') FROM documents WHERE name = 'dies'"
        )
        notes = {mark for (mark,) in marks}
        halves = file.execute(
            "SELECT 'trials of ' || code FROM cards AS c WHERE trials != "
            "(SELECT count(*) FROM trials WHERE code = c.code) UNION ALL "
            "SELECT 'revisions of ' || code FROM cards AS c WHERE revision != "
            "(SELECT count(*) FROM revisions WHERE code = c.code) UNION ALL "
            "SELECT 'sequence' FROM cards, shop WHERE cards.change > shop.change UNION ALL "
            "SELECT 'runs' FROM run_entries AS e, shop WHERE e.change > shop.change UNION ALL "
            "SELECT 'plan of ' || code FROM revisions LEFT JOIN plans ON plan_id = plans.id "
            "WHERE plans.id IS NULL"
        ).fetchall()
    lost = [f"trial {i}" for i, code in ledger.trials.items() if trials.get(i) != code]
    lost += [f"piece {i}" for i, code in ledger.pieces.items() if pieces.get(i) != code]
    lost += [f"card {c}" for c in ledger.cards - cards]
    lost += [f"revision {i}" for i, note in ledger.revisions.items() if revisions.get(i) != note]
    lost += [f"dies {m}" for m in ledger.documents - notes]
    return lost + [str(h) for (h,) in halves]


def resent(port: int, waiting: list[tuple[str, str, dict[str, Any]]]) -> list[int]:
    """Send again what got no answer, as a phone does."""
    line = http.client.HTTPConnection("127.0.0.1", port, timeout=PATIENCE_S)
    statuses = []
    for path, method, body in waiting:
        line.request(
            method, f"/api/v1/{path}", json.dumps(body), {"Content-Type": "application/json"}
        )
        answer = line.getresponse()
        answer.read()
        statuses.append(answer.status)
    line.close()
    return statuses


@contextmanager
def kennel() -> Iterator[Kennel]:
    kept = Kennel()
    try:
        yield kept
    finally:
        kept.close()


def first_cards(demo_data: Path, data: Path, count: int) -> list[str]:
    """Put a copy of the demo shop into ``data``; its first cards."""
    shutil.copytree(demo_data, data)
    with closing(sqlite3.connect(data / FILE_NAME)) as file:
        rows = file.execute(
            "SELECT code FROM cards ORDER BY updated_at DESC, code LIMIT ?", (count,)
        )
        return [code for (code,) in rows]


@posix
def test_two_hundred_kills_lose_nothing_acknowledged(demo_data: Path, tmp_path: Path) -> None:
    data = tmp_path / "shop"
    codes = first_cards(demo_data, data, WRITERS)
    ledger, dice = Ledger(), random.Random(8417)
    again: list[int] = []
    with kennel() as kept:
        for _ in range(KILLS):
            child, port = kept.start(data)
            again += resent(port, ledger.unanswered)
            ledger.unanswered.clear()
            writers = [Writer(port, code, ledger) for code in codes]
            for writer in writers:
                writer.start()
            ledger.wait_for(dice.randint(1, MOST_ANSWERS))
            time.sleep(dice.uniform(0.0, 0.01))
            os.kill(child, signal.SIGKILL)
            for writer in writers:
                writer.join(PATIENCE_S)
                assert not writer.is_alive()
            assert missing(data, ledger) == []
        child, port = kept.start(data)
        again += resent(port, ledger.unanswered)
        os.kill(child, signal.SIGKILL)
    assert set(again) <= {200, 201}
    assert missing(data, ledger) == []
    # It did write, and it was killed in the middle of it.
    assert len(ledger.trials) > KILLS
    assert len(ledger.pieces) > KILLS // 4
    assert min(len(ledger.cards), len(ledger.revisions), len(ledger.documents)) > KILLS // 10
    assert len(again) > KILLS // 10
    with closing(sqlite3.connect(data / FILE_NAME)) as file:
        assert file.execute("PRAGMA integrity_check").fetchall() == [("ok",)]
        assert file.execute("PRAGMA foreign_key_check").fetchall() == []
    with serving(data) as server:
        for code in codes:
            assert server.get(f"/api/v1/cards/{code}").status_code == 200
            (run,) = server.get(f"/api/v1/cards/{code}/runs").json()["runs"]
            there = [i for i, of in ledger.pieces.items() if of == code]
            assert run["done"] >= len(there), "what got no answer may be there, too"


@pytest.mark.skipif(sys.platform != "linux", reason="counted with strace")
def test_every_acknowledged_write_was_synced_to_the_disk(demo_data: Path, tmp_path: Path) -> None:
    """One sync a commit at least, before the answer goes out: what a power cut would need."""
    tracer = shutil.which("strace")
    assert tracer, "strace is not there: `apt-get install strace`"
    data = tmp_path / "shop"
    (code, *_) = first_cards(demo_data, data, 1)
    log = tmp_path / "syncs"
    trace = [tracer, "-f", "-qq", "-e", "trace=fsync,fdatasync", "-o", str(log)]
    server = subprocess.Popen(
        [*trace, *command(data)], stdout=subprocess.PIPE, text=True, start_new_session=True
    )
    try:
        assert server.stdout
        found = READY.search(server.stdout.readline())
        assert found
        line = http.client.HTTPConnection("127.0.0.1", int(found[1]), timeout=PATIENCE_S)
        for number in range(20):
            before = len(log.read_text().splitlines())
            result = {
                "id": str(uuid.uuid4()),
                "revision": 1,
                "step": 1,
                "measured_deg": 90 + number,
            }
            line.request(
                "POST", f"/api/v1/cards/{code}/results", json.dumps(result),
                {"Content-Type": "application/json"},
            )  # fmt: skip
            answer = line.getresponse()
            answer.read()
            assert answer.status == 201
            assert len(log.read_text().splitlines()) > before
    finally:
        os.killpg(server.pid, signal.SIGKILL)
        server.communicate(timeout=PATIENCE_S)
