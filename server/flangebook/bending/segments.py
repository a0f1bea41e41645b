"""Tool segments: which of the lengths owned make up a bend length."""

from __future__ import annotations

from collections.abc import Sequence


def segments_for(
    lengths_owned_mm: Sequence[float], wanted_mm: float, most_mm: float | None = None
) -> tuple[float, ...] | None:
    """Pieces that add up to ``wanted_mm`` or the least over it, longest first; None if none do."""
    scale = 100
    owned = sorted((round(x * scale) for x in lengths_owned_mm if x > 0), reverse=True)
    wanted = round(wanted_mm * scale)
    most = sum(owned) if most_mm is None else min(sum(owned), int(most_mm * scale + 1e-6))
    reach = [1]
    for piece in owned:
        reach.append(reach[-1] | reach[-1] << piece)
    left = reach[-1] >> wanted
    if wanted > most or not left:
        return None
    total = wanted + (left & -left).bit_length() - 1
    if total > most:
        return None
    chosen = []
    for i in range(len(owned), 0, -1):
        if reach[i - 1] >> total & 1:
            continue
        chosen.append(owned[i - 1] / scale)
        total -= owned[i - 1]
    return tuple(sorted(chosen, reverse=True))
