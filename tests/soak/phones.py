"""Phones that follow a bench, open cards, fetch changes and send what came out, as the app does."""

from __future__ import annotations

import asyncio
import random
import ssl
import uuid
from collections.abc import Callable
from typing import Any

from soak.line import Line, Told

FOLLOW_S = 3.0
CARD_EVERY, FEED_EVERY, TRIAL_EVERY = 6, 10, 12  # rounds of following


class Phone:
    """One paired device. typed: ids of its results; acknowledged: those that the shop took."""

    def __init__(self, port: int, trust: ssl.SSLContext, told: Told, rnd: random.Random) -> None:
        self.line = Line(port, told, trust)
        self.typed: dict[str, str] = {}
        self.acknowledged: set[str] = set()
        self._outbox: list[tuple[str, dict[str, Any]]] = []
        self._told, self._rnd = told, rnd

    async def live(self, codes: list[str], cursor: str, going: Callable[[], bool]) -> None:
        """Until it is over; what was typed by then may still wait."""
        await asyncio.sleep(self._rnd.uniform(0, FOLLOW_S))
        turn = self._rnd.randrange(CARD_EVERY * FEED_EVERY)
        while going():
            turn += 1
            await self.line.ask("follow", "GET", "benches/1")
            if turn % CARD_EVERY == 0:
                await self.line.ask("card", "GET", f"cards/{self._rnd.choice(codes)}")
            if turn % FEED_EVERY == 0:
                await self.line.ask("feed", "GET", f"changes?since={cursor}")
            if turn % TRIAL_EVERY == 0:
                self._type(self._rnd.choice(codes))
            await self.send()
            await asyncio.sleep(FOLLOW_S * self._rnd.uniform(0.8, 1.2))

    def _type(self, code: str) -> None:
        result = {"id": str(uuid.uuid4()), "revision": 1, "step": 1,
                 "measured_deg": round(self._rnd.uniform(90.0, 91.0), 1)}  # fmt: skip
        self.typed[result["id"]] = code
        self._outbox.append((code, result))

    async def send(self) -> bool:
        """Send what waits, in order, until one is not taken; whether nothing waits any more."""
        while self._outbox:
            code, result = self._outbox[0]
            status, said = await self.line.json("trial", "POST", f"cards/{code}/results", result)
            if status not in (200, 201):
                if status not in (0, 503, 507):
                    self._told.wrong.append(f"result: {status} {said}")
                return False
            self.acknowledged.add(result["id"])
            self._outbox.pop(0)
        return True
