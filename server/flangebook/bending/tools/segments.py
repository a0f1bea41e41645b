"""Tool segments: which of the lengths owned make up a bend length."""

from __future__ import annotations

from collections.abc import Sequence

STEPS_PER_MM = 100
MOST_PIECES = 400
MOST_LENGTH_MM = 20_000.0


def segments_for(
    lengths_owned_mm: Sequence[float], wanted_mm: float, most_mm: float | None = None
) -> tuple[float, ...] | None:
    """Pieces [mm] that add up to the bend length, or the least over it, longest first.

    lengths_owned_mm: one entry a piece [mm]. wanted_mm: the bend length [mm].
    most_mm: no longer than this, such as the clear inside length of a box [mm].
    Every sum is looked at, to 0.01 mm; long pieces are preferred. None when no set of pieces
    is long enough without being too long.

    Source: common practice, no source: exact sum first, then the least over.

    >>> segments_for([100.0, 50.0, 20.0, 20.0, 10.0], 175.0)
    (100.0, 50.0, 20.0, 10.0)
    >>> segments_for([100.0, 50.0], 120.0, most_mm=140.0) is None
    True
    """
    if not 0.0 < wanted_mm <= MOST_LENGTH_MM:
        return None
    owned = sorted(round(x * STEPS_PER_MM) for x in lengths_owned_mm[:MOST_PIECES] if x > 0.0)
    wanted = round(wanted_mm * STEPS_PER_MM)
    most = sum(owned) if most_mm is None else int(most_mm * STEPS_PER_MM + 1e-6)
    total = _least_sum(owned, wanted, most)
    return None if total is None else _pieces(owned, total)


def longest_within(lengths_owned_mm: Sequence[float], most_mm: float) -> tuple[float, ...]:
    """The pieces [mm] of the largest sum that is no longer than this, longest first; () for none.

    Source: common practice, no source.

    >>> longest_within([100.0, 50.0, 20.0], 140.0)
    (100.0, 20.0)
    """
    owned = sorted(round(x * STEPS_PER_MM) for x in lengths_owned_mm[:MOST_PIECES] if x > 0.0)
    most = int(min(max(most_mm, 0.0), MOST_LENGTH_MM) * STEPS_PER_MM + 1e-6)
    within = _reachable(owned)[-1] & ((1 << (most + 1)) - 1)
    return _pieces(owned, within.bit_length() - 1)


def _reachable(owned: Sequence[int]) -> list[int]:
    """Sums reachable with the first n pieces, as bits, for n from 0."""
    reach = [1]
    for piece in owned:
        reach.append(reach[-1] | reach[-1] << piece)
    return reach


def _least_sum(owned: Sequence[int], wanted: int, most: int) -> int | None:
    over = _reachable(owned)[-1] >> wanted
    if not over:
        return None
    total = wanted + (over & -over).bit_length() - 1
    return total if total <= most else None


def _pieces(owned: Sequence[int], total: int) -> tuple[float, ...]:
    """Pieces with this sum, taking a longer one wherever the rest still comes out."""
    reach = _reachable(owned)
    chosen = []
    for n in range(len(owned), 0, -1):
        piece = owned[n - 1]
        if piece <= total and reach[n - 1] >> (total - piece) & 1:
            chosen.append(piece / STEPS_PER_MM)
            total -= piece
    return tuple(chosen)
