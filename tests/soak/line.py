"""One connection of a device, and what all devices were told."""

from __future__ import annotations

import asyncio
import json
import re
import ssl
import time
from collections import Counter, defaultdict
from dataclasses import dataclass, field
from typing import Any

PATIENCE_S = 60.0
SILENT = (OSError, EOFError, TimeoutError, ValueError)
MAY_FAIL = {503, 507}


@dataclass
class Told:
    """Statuses by kind of request, how long answers took [s], and what must not be."""

    statuses: Counter[tuple[str, int]] = field(default_factory=Counter)
    took: dict[str, list[float]] = field(default_factory=lambda: defaultdict(list))
    silences: int = 0
    wrong: list[str] = field(default_factory=list)

    def add(self, kind: str, status: int, took_s: float, body: bytes) -> None:
        self.statuses[kind, status] += 1
        self.took[kind].append(took_s)
        if status >= 500 and status not in MAY_FAIL:
            self.wrong.append(f"{kind}: {status} {body[:200]!r}")


class Line:
    """Kept open as a browser keeps it, and opened again when it was closed."""

    def __init__(self, port: int, told: Told, trust: ssl.SSLContext | None = None) -> None:
        self.cookie = ""
        self._port, self._told, self._trust = port, told, trust
        self._open: tuple[asyncio.StreamReader, asyncio.StreamWriter] | None = None

    async def ask(
        self, kind: str, method: str, path: str, body: bytes = b"", more: str = "",
        patience_s: float = PATIENCE_S,
    ) -> tuple[int, bytes]:  # fmt: skip
        """Status and body; 0 where no answer came."""
        began = time.monotonic()
        try:
            async with asyncio.timeout(patience_s):
                status, said = await self._asked(method, path, body, more)
        except SILENT:
            self._told.silences += 1
            self.close()
            return 0, b""
        self._told.add(kind, status, time.monotonic() - began, said)
        return status, said

    async def json(self, kind: str, method: str, path: str, body: Any = None) -> tuple[int, Any]:
        """The same with JSON."""
        sent = b"" if body is None else json.dumps(body).encode()
        status, said = await self.ask(
            kind, method, path, sent, "Content-Type: application/json\r\n" if sent else ""
        )
        return status, json.loads(said) if said else None

    async def _asked(self, method: str, path: str, body: bytes, more: str) -> tuple[int, bytes]:
        if self._open is None:
            self._open = await asyncio.open_connection("127.0.0.1", self._port, ssl=self._trust)
        reader, writer = self._open
        cookie = f"Cookie: {self.cookie}\r\n" if self.cookie else ""
        head = (
            f"{method} /api/v1/{path} HTTP/1.1\r\nHost: 127.0.0.1:{self._port}\r\n"
            f"Content-Length: {len(body)}\r\n{cookie}{more}\r\n"
        )
        writer.write(head.encode() + body)
        await writer.drain()
        told = (await reader.readuntil(b"\r\n\r\n")).decode("latin-1")
        length = re.search(r"content-length: (\d+)", told, re.IGNORECASE)
        said = await reader.readexactly(int(length[1])) if length else b""
        if found := re.search(r"set-cookie: ([^;]+)", told, re.IGNORECASE):
            self.cookie = found[1]
        if re.search(r"connection: close", told, re.IGNORECASE):
            self.close()
        return int(told.split()[1]), said

    def close(self) -> None:
        """The next request opens another connection."""
        if self._open:
            self._open[1].close()
        self._open = None
