"""What the search remembers: sets of bends it has met, ways to them, and what to look at next.

Plain arrays that compiled functions fill. When one is nearly full the search comes back to
Python, which makes it larger.
"""

from __future__ import annotations

from typing import NamedTuple, TypeVar

import numpy as np
from numpy.typing import NDArray

from flangebook.bending.compiled import kernel
from flangebook.bending.ordering.problem import Ints

_Kind = TypeVar("_Kind", bound=np.generic)

UNSEEN = 2**62
"""A cost no way has: not met yet."""


class Keys(NamedTuple):
    """A numbering of keys in the order they come: key -> row, by open addressing.

    slots: row + 1, 0 is empty; a power of two long. keys: of each row. used: how many rows.
    """

    slots: Ints
    keys: Ints
    used: Ints


class States(NamedTuple):
    """What is known of each set of bends still to make *before* a step; a row for each set.

    By kind of the first step that follows, all (rows, kinds): best: the lowest cost of what
    follows, with that step found to be possible. way: the step and the kind of the one after it,
    ``bend * 256 + kind``. code: what else there is to say of the step. closed: looked at, for good.
    """

    best: Ints
    way: NDArray[np.int32]
    code: NDArray[np.int32]
    closed: NDArray[np.bool_]


class Heap(NamedTuple):
    """A binary heap of items, lowest first, then lowest second."""

    first: Ints
    second: Ints
    item: Ints
    used: Ints


def new_keys(room: int) -> Keys:
    """An empty numbering with room for that many keys (a power of two)."""
    return Keys(np.zeros(2 * room, np.int64), np.zeros(room, np.int64), np.zeros(1, np.int64))


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
    return Heap(*(np.zeros(size, np.int64) for size in (room, room, room, 1)))


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
    return Heap(_doubled(heap.first), _doubled(heap.second), _doubled(heap.item), heap.used)


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
    while keys.slots[slot] != 0 and keys.keys[keys.slots[slot] - 1] != key:
        slot = (slot + 1) & mask
    return int(slot)


@kernel
def row_of(keys: Keys, key: int) -> int:
    """The row of that key; a new one if it has none yet."""
    slot = _slot_of(keys, key)
    if keys.slots[slot] == 0:
        row = keys.used[0]
        keys.keys[row] = key
        keys.used[0] = row + 1
        keys.slots[slot] = row + 1
        return int(row)
    return int(keys.slots[slot] - 1)


@kernel
def known_row(keys: Keys, key: int) -> int:
    """The row of that key, -1 if it has none."""
    return int(keys.slots[_slot_of(keys, key)] - 1)


@kernel
def _refill(keys: Keys) -> None:
    """Put every row into its slot, after the slots became more."""
    for row in range(keys.used[0]):
        keys.slots[_slot_of(keys, keys.keys[row])] = row + 1


@kernel
def push(heap: Heap, first: int, second: int, item: int) -> None:
    """Put an item into the heap."""
    i = heap.used[0]
    heap.used[0] = i + 1
    while i > 0:
        up = (i - 1) >> 1
        if heap.first[up] < first or (heap.first[up] == first and heap.second[up] <= second):
            break
        heap.first[i], heap.second[i], heap.item[i] = heap.first[up], heap.second[up], heap.item[up]
        i = up
    heap.first[i], heap.second[i], heap.item[i] = first, second, item


@kernel
def pop(heap: Heap) -> int:
    """Take the lowest item out of a heap that is not empty."""
    lowest = heap.item[0]
    last = heap.used[0] - 1
    heap.used[0] = last
    first, second, item = heap.first[last], heap.second[last], heap.item[last]
    i = 0
    while True:
        down = 2 * i + 1
        if down >= last:
            break
        if down + 1 < last and (
            heap.first[down + 1] < heap.first[down]
            or (heap.first[down + 1] == heap.first[down]
                and heap.second[down + 1] < heap.second[down])
        ):  # fmt: skip
            down += 1
        if first < heap.first[down] or (first == heap.first[down] and second <= heap.second[down]):
            break
        heap.first[i] = heap.first[down]
        heap.second[i] = heap.second[down]
        heap.item[i] = heap.item[down]
        i = down
    heap.first[i], heap.second[i], heap.item[i] = first, second, item
    return int(lowest)
