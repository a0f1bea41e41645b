"""What the search remembers: sets of bends it has met, ways to them, and what to look at next.

Plain arrays that compiled functions fill. When one is nearly full the search comes back to
Python, which makes it larger.
"""

from __future__ import annotations

from typing import NamedTuple, TypeVar

import numpy as np
from numpy.typing import NDArray

from flangebook.bending.clearance.problem import Ints
from flangebook.bending.compiled import kernel

_Kind = TypeVar("_Kind", bound=np.generic)

SLOT_KEY, SLOT_ROW = range(2)
FIRST, SECOND, ITEM = range(3)
UNSEEN = 2**62
"""A cost no way has: not met yet."""


class Keys(NamedTuple):
    """A numbering of keys in the order they come: key -> row, by open addressing.

    slots: key and row + 1, 0 is empty, side by side (SLOT_KEY, SLOT_ROW); a power of two long.
    keys: of each row. used: how many rows.
    """

    slots: Ints
    keys: Ints
    used: Ints


class States(NamedTuple):
    """What is known of each set of bends still to make *before* a step; a row for each set.

    By kind of the first step that follows, all (rows, kinds): best: the lowest cost of what
    follows, with that step found to be possible. way: the step and the kind of the one after it,
    ``bend * MOST_KINDS + kind``. code: what else there is to say of the step. closed: looked at,
    for good.
    """

    best: Ints
    way: NDArray[np.int32]
    code: NDArray[np.int32]
    closed: NDArray[np.bool_]


class Heap(NamedTuple):
    """A binary heap of items, lowest first, then lowest second.

    rows: FIRST, SECOND and ITEM side by side, (room, 3). used: how many.
    """

    rows: Ints
    used: Ints


def new_keys(room: int) -> Keys:
    """An empty numbering with room for that many keys (a power of two)."""
    return Keys(np.zeros((2 * room, 2), np.int64), np.zeros(room, np.int64), np.zeros(1, np.int64))


def new_states(room: int, kinds: int) -> States:
    """No sets met, room for that many."""
    return States(
        np.full((room, kinds), UNSEEN, np.int64),
        np.zeros((room, kinds), np.int32),
        np.zeros((room, kinds), np.int32),
        np.zeros((room, kinds), np.bool_),
    )


def new_heap(room: int) -> Heap:
    """An empty heap with room for that many."""
    return Heap(np.zeros((room, 3), np.int64), np.zeros(1, np.int64))


def more_keys(keys: Keys) -> Keys:
    """The same numbering with twice the room."""
    larger = new_keys(2 * len(keys.keys))
    used = int(keys.used[0])
    larger.keys[:used] = keys.keys[:used]
    larger.used[0] = used
    _refill(larger)
    return larger


def more_states(states: States) -> States:
    """The same sets with twice the room."""
    return States(
        _doubled(states.best, UNSEEN),
        _doubled(states.way),
        _doubled(states.code),
        _doubled(states.closed),
    )


def more_heap(heap: Heap) -> Heap:
    """The same heap with twice the room."""
    return Heap(_doubled(heap.rows), heap.used)


def _doubled(array: NDArray[_Kind], rest: int = 0) -> NDArray[_Kind]:
    """The array twice as long, filled up with that number."""
    longer = np.full((2 * len(array), *array.shape[1:]), rest, array.dtype)
    longer[: len(array)] = array
    return longer


@kernel
def _slot_of(keys: Keys, key: int) -> int:
    """The slot that holds the key, or the empty one where it belongs."""
    mask = len(keys.slots) - 1
    mixed = (key & 0xFFFFF) * 1640531 + (key >> 20) * 2654435  # of keys below 2**60 no overflow
    slot = (mixed ^ (mixed >> 13)) & mask
    while keys.slots[slot, SLOT_ROW] != 0 and keys.slots[slot, SLOT_KEY] != key:
        slot = (slot + 1) & mask
    return int(slot)


@kernel
def row_of(keys: Keys, key: int) -> int:
    """The row of that key; a new one if it has none yet."""
    slot = _slot_of(keys, key)
    if keys.slots[slot, SLOT_ROW] == 0:
        row = keys.used[0]
        keys.keys[row] = key
        keys.used[0] = row + 1
        keys.slots[slot, SLOT_KEY], keys.slots[slot, SLOT_ROW] = key, row + 1
        return int(row)
    return int(keys.slots[slot, SLOT_ROW] - 1)


@kernel
def known_row(keys: Keys, key: int) -> int:
    """The row of that key, -1 if it has none."""
    return int(keys.slots[_slot_of(keys, key), SLOT_ROW] - 1)


@kernel
def _refill(keys: Keys) -> None:
    """Put every row into its slot, after the slots became more."""
    for row in range(keys.used[0]):
        key = keys.keys[row]
        slot = _slot_of(keys, key)
        keys.slots[slot, SLOT_KEY], keys.slots[slot, SLOT_ROW] = key, row + 1


@kernel
def push(heap: Heap, first: int, second: int, item: int) -> None:
    """Put an item into the heap."""
    rows, i = heap.rows, heap.used[0]
    heap.used[0] = i + 1
    while i > 0:
        up = (i - 1) >> 1
        if rows[up, FIRST] < first or (rows[up, FIRST] == first and rows[up, SECOND] <= second):
            break
        _move(rows, up, i)
        i = up
    rows[i, FIRST], rows[i, SECOND], rows[i, ITEM] = first, second, item


@kernel
def pop(heap: Heap) -> int:
    """Take the lowest item out of a heap that is not empty."""
    rows, last = heap.rows, heap.used[0] - 1
    lowest = rows[0, ITEM]
    heap.used[0] = last
    first, second, item = rows[last, FIRST], rows[last, SECOND], rows[last, ITEM]
    i = 0
    while True:
        down = 2 * i + 1
        if down >= last:
            break
        if down + 1 < last and (
            rows[down + 1, FIRST] < rows[down, FIRST]
            or (rows[down + 1, FIRST] == rows[down, FIRST]
                and rows[down + 1, SECOND] < rows[down, SECOND])
        ):  # fmt: skip
            down += 1
        if first < rows[down, FIRST] or (
            first == rows[down, FIRST] and second <= rows[down, SECOND]
        ):
            break
        _move(rows, down, i)
        i = down
    rows[i, FIRST], rows[i, SECOND], rows[i, ITEM] = first, second, item
    return int(lowest)


@kernel
def _move(rows: Ints, of: int, to: int) -> None:
    for column in range(3):
        rows[to, column] = rows[of, column]
