"""What is known of pieces and legs, by key, so that nothing is looked at twice."""

from __future__ import annotations

from typing import NamedTuple

import numpy as np

from flangebook.bending.clearance.problem import Ints, Problem
from flangebook.bending.compiled import kernel

THROUGH_BEND, PAST_PUNCH, ON_ITSELF, CROSSING = range(4)
"""What is known: a piece through the bend, past the rising punch, on its own leg; a leg over
the bend's plane."""
_ROOM = 1 << 17
_SHIFT, _FIELD = 40, 21


KEY, CODE = range(2)
UNKNOWN = -1


class Sweeps(NamedTuple):
    """What is known of pieces, by key; where two keys fall on one place the later one stays.

    known: KEY, 0 is empty, and CODE, result bits, side by side: most of the time that it takes
    to find them goes by waiting for memory, (places, 2).
    """

    known: Ints


def new_sweeps(problem: Problem) -> Sweeps:
    """Nothing known yet."""
    room = 1 << 10
    while room < _ROOM and room < 64 << len(problem.at):
        room <<= 1
    return empty_sweeps(room)


def empty_sweeps(room: int) -> Sweeps:
    """Nothing known, places for that many (a power of two)."""
    return Sweeps(np.zeros((room, 2), np.int64))


@kernel
def key_of(kind: int, what: int, made: int) -> int:
    """One number for all that a code depends on; ``what`` below 2**21, ``made`` below 2**40."""
    return ((kind << _FIELD | what) << _SHIFT | made) + 1


@kernel
def place_of(sweeps: Sweeps, key: int) -> int:
    """Where what is known under a key is kept."""
    mixed = key ^ (key >> 31)
    mixed = (mixed * 668265263) ^ (key >> 17)
    mixed ^= mixed >> 23
    return int(mixed & (len(sweeps.known) - 1))


@kernel
def known_code(sweeps: Sweeps, key: int) -> int:
    """The code that is known under a key, UNKNOWN if none is."""
    place = place_of(sweeps, key)
    return int(sweeps.known[place, CODE] if sweeps.known[place, KEY] == key else UNKNOWN)


@kernel
def note_code(sweeps: Sweeps, key: int, code: int) -> None:
    """Remember a code under its key."""
    place = place_of(sweeps, key)
    sweeps.known[place, KEY], sweeps.known[place, CODE] = key, code
