"""Devices as a model: the outbox's rules as `sending.js`, `outbox.js` and `local_shop.js` of
`web/app/sync` have them, over a line that loses requests and answers, doubles them, and kills the
server.
"""

from __future__ import annotations

import http.client
import json
import random
import uuid
from collections.abc import Callable
from dataclasses import dataclass, field
from typing import Any

Entry = dict[str, Any]
PATIENCE_S = 60


class SilenceError(Exception):
    """No answer came: nobody knows whether the server has it."""


class RefusedError(Exception):
    """The server answered, and said no."""

    def __init__(self, status: int, body: Any) -> None:
        super().__init__(f"{status}: {body}")
        self.status = status


@dataclass
class Faults:
    """How often, of all requests, something goes wrong on the way."""

    unsent: float = 0.08
    unanswered: float = 0.12
    doubled: float = 0.06
    killed: float = 0.03


NONE = Faults(0, 0, 0, 0)


@dataclass
class Line:
    """The way to the server. kill: ends it the hard way and gives the port of the next one."""

    port: int
    dice: random.Random
    kill: Callable[[], int]
    faults: Faults = field(default_factory=Faults)
    kills: int = 0
    lost: int = 0

    def ask(self, method: str, path: str, body: Any = None, etag: str = "") -> Any:
        """The answer's body. Raises SilenceError, RefusedError."""
        chance = self.dice.random()
        for share, happens in (
            (self.faults.unsent, self._unsent),
            (self.faults.unanswered, self._unanswered),
            (self.faults.doubled, self._doubled),
            (self.faults.killed, self._killed),
        ):
            if chance < share:
                return happens(method, path, body, etag)
            chance -= share
        return self._read(self._sent(method, path, body, etag))

    def _unsent(self, *_: Any) -> Any:
        raise SilenceError

    def _unanswered(self, *request: Any) -> Any:
        self.lost += 1
        self._sent(*request).getresponse().read()
        raise SilenceError

    def _doubled(self, *request: Any) -> Any:
        first = self._sent(*request)
        second = self._sent(*request)
        second.getresponse().read()
        return self._read(first)

    def _killed(self, *request: Any) -> Any:
        line = self._sent(*request)
        self.kills += 1
        self.port = self.kill()
        line.close()
        raise SilenceError

    def _sent(self, method: str, path: str, body: Any, etag: str) -> http.client.HTTPConnection:
        line = http.client.HTTPConnection("127.0.0.1", self.port, timeout=PATIENCE_S)
        headers = {"Content-Type": "application/json"} | ({"If-Match": etag} if etag else {})
        line.request(method, f"/api/v1/{path}", json.dumps(body) if body else None, headers)
        return line

    def _read(self, line: http.client.HTTPConnection) -> Any:
        answer = line.getresponse()
        told = json.loads(answer.read())
        line.close()
        if answer.status >= 400:
            raise RefusedError(answer.status, told)
        return told


class Device:
    """A phone: what it keeps, what waits, what the shop said it has."""

    def __init__(self, name: str, line: Line) -> None:
        self.name = name
        self.line = line
        self.cards: dict[str, Any] = {}
        self.aside: dict[str, Any] = {}
        self.runs: dict[str, Any] = {}
        self.runs_aside: dict[str, Any] = {}
        self.cursor = ""
        self.outbox: dict[str, Entry] = {}
        self.sent: dict[str, Entry] = {}
        self.number = 0
        self.typed: set[str] = set()
        self.same: set[str] = set()
        self.acknowledged: set[str] = set()
        self.resets = 0

    # What a person does -----------------------------------------------------------------

    def result(self, code: str, angle: float) -> None:
        """Type what came out."""
        body = {"id": str(uuid.uuid4()), "revision": self.cards[code]["revision"], "step": 1}
        self._type("trial", code, body | {"measured_deg": angle, "by": self.name}, body["id"])

    def count(self, code: str, run_id: str, kind: str, **more: Any) -> None:
        """Count what happened in a run."""
        body = {"id": str(uuid.uuid4()), "run_id": run_id, "revision": 1, "kind": kind, **more}
        self._type("run", code, body | {"made_at": "2026-05-04T08:00:00.000Z"}, body["id"])

    def counted(self, code: str, run_id: str) -> set[str]:
        """Ids of the pieces of a run as this device shows them: the shop's and those that wait."""
        waiting = [e["body"] | {"code": e["code"]} for e in self.outbox.values()]
        return {
            entry["id"]
            for entry in [*self.runs.values(), *waiting]
            if (entry["code"], entry.get("run_id"), entry.get("kind")) == (code, run_id, "piece")
        }

    def edit(self, code: str, **changes: Any) -> None:
        """Change a note, a title, or put a card away."""
        seen, edits = self.shown(code), self._edits(code)
        real = {k: v for k, v in changes.items() if seen[k] != v}
        if real:
            after = edits[-1]["id"] if edits else seen["revision_id"]
            self._edit(code, seen, real, after)

    def settle(self, code: str, dice: random.Random) -> None:
        """Choose, field by field, for the oldest change that met another one."""
        mine = [e for e in self._edits(code) if "settles" in e["body"]]
        done = {i for e in mine for i in e["body"]["settles"]}
        card = self._with(code, mine)
        one = next((p for p in card["proposals"] if p["id"] not in done), None)
        if one is None:
            return
        chosen = {k: v for k, v in one["changes"].items() if v != card[k] and dice.random() < 0.5}
        after = mine[-1]["id"] if mine else card["revision_id"]
        self._edit(code, card, chosen, after, settles=[one["id"]])

    def shown(self, code: str) -> Any:
        """A card with what waits here."""
        return self._with(code, [e for e in self._edits(code) if not e.get("parked")])

    # The outbox -------------------------------------------------------------------------

    def sync(self) -> None:
        """First what the shop says, then what waits, then what came of it."""
        try:
            self._fetch()
            if self._flush():
                self._fetch()
        except SilenceError:
            pass

    def _type(self, kind: str, code: str, body: Any, entry_id: str, **more: Any) -> None:
        self.number += 1
        entry = {"id": entry_id, "kind": kind, "code": code, "body": body, **more}
        self.outbox[entry_id] = entry | {"number": self.number}
        self.typed.add(entry_id)

    def _edit(
        self, code: str, seen: Any, changes: Any, after: str, settles: list[str] | None = None
    ) -> None:
        body = {**changes, "by": self.name} | ({"settles": settles} if settles else {})
        before = {k: seen[k] for k in changes}
        self._type("edit", code, body, str(uuid.uuid4()), after=after, before=before)

    def _edits(self, code: str) -> list[Entry]:
        return [e for e in self._in_order() if e["code"] == code and e["kind"] == "edit"]

    def _with(self, code: str, edits: list[Entry]) -> Any:
        card = dict(self.cards[code])
        for entry in edits:
            card |= _fields(entry["body"])
        return card

    def _in_order(self) -> list[Entry]:
        return sorted(self.outbox.values(), key=lambda e: e["number"])

    def _flush(self) -> bool:
        sent = False
        for entry in self._in_order():
            if self._ready(entry):
                sent = True
                try:
                    self._step(entry)
                except RefusedError as error:
                    if error.status != 404 or "missing" in entry:
                        raise
                    entry["missing"] = True  # of a revision that a restore took away
        return sent

    def _ready(self, entry: Entry) -> bool:
        after = entry.get("after")
        if not after or entry.get("parked"):
            return True
        if after in self.outbox:
            return False
        if not self.sent.get(after, {}).get("proposed"):
            return True
        card = self.cards[entry["code"]]
        if any(p["id"] == after for p in card["proposals"]):
            return False
        if all(card[k] == v for k, v in entry["before"].items()):
            entry["after"] = card["revision_id"]
        else:
            entry["parked"] = True
        return True

    def _step(self, entry: Entry) -> None:
        path = f"cards/{entry['code']}"
        try:
            if entry["kind"] == "trial":
                again = {"again": True} if entry.get("missing") else {}
                self.line.ask("POST", f"{path}/results", entry["body"] | again)
                return self._arrived(entry)
            if entry["kind"] == "run":
                told = self.line.ask("POST", f"{path}/runs", entry["body"])
                self.runs[entry["id"]] = told["entry"]
                return self._arrived(entry)
            if entry.get("parked"):
                return self._propose(entry)
            body = {**entry["body"], "id": entry["id"], "after": entry["after"]}
            card = self.line.ask("PUT", path, body, "*")
        except RefusedError as error:
            if error.status != 412:
                raise
            return self._met(entry)
        self._keep(card)
        if card["revision_id"] == entry["after"]:
            self.same.add(entry["id"])
            self._follow(entry["id"], entry["after"])
        return self._arrived(entry)

    def _met(self, entry: Entry) -> None:
        card = self.line.ask("GET", f"cards/{entry['code']}")
        self._keep(card)
        settles = {p["id"] for p in card["proposals"]} & set(entry["body"].get("settles", ()))
        if settles or all(card[k] == v for k, v in _fields(entry["body"]).items()):
            self._arrived(entry)
            self.same.add(entry["id"])
            return self._follow(entry["id"], card["revision_id"], card)
        entry["parked"] = True
        return self._propose(entry)

    def _propose(self, entry: Entry) -> None:
        asked = {"id": entry["id"], "changes": _fields(entry["body"]), "before": entry["before"]}
        card = self.line.ask(
            "POST", f"cards/{entry['code']}/proposals", asked | {"by": entry["body"]["by"]}
        )
        self._keep(card)
        self._arrived(entry, proposed=True)

    def _arrived(self, entry: Entry, *, proposed: bool = False) -> None:
        self.outbox.pop(entry["id"], None)
        kept = {k: v for k, v in entry.items() if k not in ("parked", "missing")}
        self.sent[entry["id"]] = kept | {"proposed": proposed}
        self.acknowledged.add(entry["id"])

    def _follow(self, gone: str, after: str, card: Any = None) -> None:
        for entry in self.outbox.values():
            seen = card is None or all(card[k] == v for k, v in entry.get("before", {}).items())
            if entry.get("after") == gone and seen:
                entry["after"] = after

    # The feed ---------------------------------------------------------------------------

    def _fetch(self) -> None:
        while True:
            page = self.line.ask("GET", f"changes?since={self.cursor}")
            if page["reset"]:
                self._reset()
            for card in page["cards"]:
                self.cards[card["code"]] = card
                self._found(card)
            self._runs_found(page)
            self.cursor = page["cursor"]
            if not page["more"]:
                return

    def _keep(self, card: Any) -> None:
        held = self.cards.get(card["code"])
        if held is None or _age(card) >= _age(held):
            self.cards[card["code"]] = card

    def _reset(self) -> None:
        self.resets += 1
        self.aside, self.cards = self.aside | self.cards, {}
        self.runs_aside, self.runs = self.runs_aside | self.runs, {}
        again = sorted(self.sent.values(), key=lambda e: e["number"])
        for place, entry in enumerate(again):
            parked = {"parked": True} if entry.pop("proposed") else {}
            if entry["id"] not in self.outbox:
                self.outbox[entry["id"]] = {**entry, "number": place - len(again), **parked}
        self.sent = {}

    def _runs_found(self, page: Any) -> None:
        for entry in page["run_entries"]:
            self.runs[entry["id"]] = entry
            self.runs_aside.pop(entry["id"], None)
        if page["more"]:
            return
        for entry in [e for e in self.runs_aside.values() if e["code"] in self.cards]:
            del self.runs_aside[entry["id"]]
            if entry["id"] not in self.outbox:
                given = ("code", "received_at", "change")
                body = {k: v for k, v in entry.items() if k not in given}
                self.outbox[entry["id"]] = {
                    "id": entry["id"], "kind": "run", "code": entry["code"], "body": body,
                    "number": 0,
                }  # fmt: skip

    def _found(self, card: Any) -> None:
        aside = self.aside.pop(card["code"], None)
        there = {t["id"] for t in card["trials"]} | self.outbox.keys()
        for result in aside["trials"] if aside else ():
            if result["id"] not in there:
                given = ("number", "received_at", "correction", "device")
                body = {k: v for k, v in result.items() if k not in given}
                self.outbox[result["id"]] = {
                    "id": result["id"], "kind": "trial", "code": card["code"], "body": body,
                    "number": 0,
                }  # fmt: skip


def _fields(body: Any) -> Any:
    return {k: v for k, v in body.items() if k in ("title", "note", "archived")}


def _age(card: Any) -> tuple[int, int, int]:
    return card["revision"], card["trials_total"], card["proposals_total"]
