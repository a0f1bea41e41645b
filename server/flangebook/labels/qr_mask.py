"""The mask of a QR code: which of eight makes it easiest to read.

ISO/IEC 18004, 7.8: the data are drawn under each of eight masks, and the one with the fewest
penalty points is taken. The library draws and rates one after another, a module at a time; here
one drawing gives all eight, and they are rated together.
"""

from __future__ import annotations

from functools import cache
from typing import Any

import numpy as np
import qrcode
from numpy.typing import NDArray
from qrcode import util

Modules = NDArray[np.bool_]
MASKS = range(8)
_FINDER = np.array([1, 0, 1, 1, 1, 0, 1, 0, 0, 0, 0], bool)  # and four light ones on one side


class Drawing(qrcode.QRCode):  # type: ignore[misc]
    """A code of the library's that knows which modules hold data."""

    data_area: Modules

    def map_data(self, data: Any, mask_pattern: int) -> None:
        """Note what is still free, then fill it."""
        self.data_area = np.array([[module is None for module in row] for row in self.modules])
        super().map_data(data, mask_pattern)


def best_masked(code: Drawing) -> Modules:
    """The code's modules under the best mask; its data and version are set."""
    # Rated as the library does, with the bits that name the mask left light: a code comes out as
    # it was printed before.
    code.makeImpl(True, 0)
    changes = _changes(len(code.modules)) & code.data_area
    mask = int(penalties(np.array(code.modules, bool) ^ changes).argmin())
    code.setup_type_info(False, mask)
    drawn: Modules = np.array(code.modules, bool) ^ changes[mask]
    return drawn


@cache
def _changes(side: int) -> Modules:
    """Where each mask differs from the first one."""
    masks = [
        [[util.mask_func(mask)(row, column) for column in range(side)] for row in range(side)]
        for mask in MASKS
    ]
    return np.array(masks) ^ np.array(masks[0])


def penalties(codes: Modules) -> NDArray[np.int_]:
    """Points of each of several codes of one size, ISO/IEC 18004, 7.8.3."""
    turned = codes.swapaxes(1, 2)
    lines = sum(_runs(c) + _finders(c) for c in (codes, turned))
    total: NDArray[np.int_] = lines + _blocks(codes) + _balance(codes)
    return total


def _runs(codes: Modules) -> NDArray[np.int_]:
    """A run of five or more modules of one colour counts its length less two."""
    same = codes[:, :, 1:] == codes[:, :, :-1]
    five = same[:, :, :-3] & same[:, :, 1:-2] & same[:, :, 2:-1] & same[:, :, 3:]
    begins = five[:, :, 1:] & ~five[:, :, :-1]
    first = five[:, :, 0].sum(1)
    points: NDArray[np.int_] = five.sum((1, 2)) + 2 * (begins.sum((1, 2)) + first)
    return points


def _blocks(codes: Modules) -> NDArray[np.int_]:
    """Three for each block of two by two."""
    corner = codes[:, 1:, 1:]
    same = (
        (corner == codes[:, :-1, 1:])
        & (corner == codes[:, 1:, :-1])
        & (corner == codes[:, :-1, :-1])
    )
    points: NDArray[np.int_] = 3 * same.sum((1, 2))
    return points


def _finders(codes: Modules) -> NDArray[np.int_]:
    """Forty for each that looks like a finder pattern."""
    places = codes.shape[2] - len(_FINDER) + 1
    points = np.zeros(len(codes), int)
    for pattern in (_FINDER, _FINDER[::-1]):
        alike = np.ones((*codes.shape[:2], places), bool)
        for offset, dark in enumerate(pattern):
            alike &= codes[:, :, offset : offset + places] == dark
        points += 40 * alike.sum((1, 2))
    return points


def _balance(codes: Modules) -> NDArray[np.int_]:
    """Ten for each whole five percent that the dark ones are off one half."""
    off = np.abs(codes.mean((1, 2)) * 100 - 50)
    points: NDArray[np.int_] = 10 * (off // 5).astype(int)
    return points
