"""A QR code for the terminal."""

from __future__ import annotations

from flangebook.labels.qr import QUIET_MODULES, qr_code

_HALVES = {(True, True): " ", (True, False): "▄", (False, True): "▀", (False, False): "█"}


def qr_text(address: str) -> str:
    """The address as half blocks: light modules printed, so that it reads on a dark terminal."""
    rows = [list(row) for row in qr_code(address, "Q").rows]
    width = len(rows) + 2 * QUIET_MODULES
    empty = [[False] * width for _ in range(QUIET_MODULES)]
    side = [False] * QUIET_MODULES
    full = [*empty, *([*side, *row, *side] for row in rows), *empty]
    if len(full) % 2:
        full.append([False] * width)
    pairs = zip(full[::2], full[1::2], strict=True)
    return "\n".join("".join(_HALVES[pair] for pair in zip(*two, strict=True)) for two in pairs)
