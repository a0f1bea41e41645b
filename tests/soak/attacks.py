"""Who keeps the server from its work: slow connections, bombs, the worst plans."""

from __future__ import annotations

import asyncio
import json
import random
from collections.abc import Callable
from contextlib import suppress
from typing import Any

from dxf_drawings import dxf
from heavy_parts import worst_box

from soak.line import SILENT, Line, Told

Going = Callable[[], bool]


async def slow(port: int, going: Going, rnd: random.Random) -> None:
    """A byte of a header now and then; a line that is cut is opened again."""
    while going():
        with suppress(*SILENT):
            reader, writer = await asyncio.open_connection("127.0.0.1", port)
            writer.write(b"GET / HTTP/1.1\r\nX-Slow: ")
            while going() and not reader.at_eof():
                writer.write(b"x")
                await writer.drain()
                with suppress(TimeoutError):
                    await asyncio.wait_for(reader.read(4096), rnd.uniform(0.2, 0.8))
            writer.close()
        await asyncio.sleep(0.2)


def bombs() -> list[bytes]:
    """Small drawings that would be enormous."""

    def many_places(space: Any) -> None:
        block = space.doc.blocks.new("A")
        block.add_line((0, 0), (1, 1))
        spacing = {"column_count": 3000, "row_count": 3000, "column_spacing": 1, "row_spacing": 1}
        space.add_blockref("A", (0, 0), dxfattribs=spacing)

    def ten_in_ten(space: Any) -> None:
        space.doc.blocks.new("B0").add_text("x")
        for n in range(1, 8):
            block = space.doc.blocks.new(f"B{n}")
            for i in range(10):
                block.add_blockref(f"B{n - 1}", (i, 0))
        space.add_blockref("B7", (0, 0))

    def many_points(space: Any) -> None:
        block = space.doc.blocks.new("A")
        block.add_spline([(i, i % 7) for i in range(5000)])
        space.add_blockref("A", (0, 0), dxfattribs={"column_count": 60, "row_count": 60})

    return [dxf(draw) for draw in (many_places, ten_in_ten, many_points)]


async def throw_bombs(port: int, told: Told, going: Going, rnd: random.Random) -> None:
    """One after another; each is refused."""
    line, files = Line(port, told), bombs()
    while going():
        status, said = await line.ask(
            "bomb", "POST", "outlines/dxf?kind=die", rnd.choice(files),
            "Content-Type: image/vnd.dxf\r\n",
        )  # fmt: skip
        if status not in (0, 422, 503):
            told.wrong.append(f"bomb: {status} {said[:200]!r}")
        await asyncio.sleep(rnd.uniform(1, 3))


async def plan_the_worst(port: int, told: Told, going: Going, rnd: random.Random) -> None:
    """One after another; every third asker leaves before the answer."""
    line = Line(port, told)
    while going():
        body = json.dumps(worst_box(400 + rnd.randrange(3000) / 10)).encode()
        patience_s = rnd.choice((2.0, 120.0, 120.0))
        status, said = await line.ask(
            "worst plan", "POST", "plan", body, "Content-Type: application/json\r\n", patience_s
        )
        if status not in (0, 200, 503):
            told.wrong.append(f"worst plan: {status} {said[:200]!r}")
        await asyncio.sleep(0.1)
