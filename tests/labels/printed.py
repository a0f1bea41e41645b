"""What is printed: the label as the product draws it, and the same label printed otherwise.

Everything is drawn by the product's own renderer; only the code is replaced by one that the
product does not offer (another level, another spelling, another quiet zone).
"""

from __future__ import annotations

import io
from dataclasses import dataclass, replace
from functools import lru_cache

import cv2
import numpy as np
import numpy.typing as npt
import qrcode
from PIL import Image
from qrcode import constants

from flangebook.labels.codes import with_check
from flangebook.labels.draw_png import label_png
from flangebook.labels.facts import facts_of_card
from flangebook.labels.label import label
from flangebook.labels.marks import Label, QrMark
from flangebook.labels.qr import QUIET_MODULES, QrCode, card_address

from .cards import card, with_plan

Grey = npt.NDArray[np.float32]
Box = tuple[float, float, float, float]
PRINT_DPI = 203  # the coarsest that label printers commonly have
PX_PER_MM = 12
SHOP = "https://shop.home.arpa:8443"
BIN = 70.0  # grey of the painted bin that the label sticks on; paper is 255, ink 0
BARE_MM = 5.0  # of the bin in the picture on each side
NEXT_TO_IT_MM = 6.0  # of the small label's text beside its code
CORNER_MODULES = 8  # a finder pattern and its separator, ISO/IEC 18004
_LEVELS = {"L": constants.ERROR_CORRECT_L, "M": constants.ERROR_CORRECT_M,
           "Q": constants.ERROR_CORRECT_Q, "H": constants.ERROR_CORRECT_H}  # fmt: skip


@dataclass(frozen=True)
class Way:
    """A way to print a label. levels, sides: of its codes, None: as the product has them.

    quiet: modules of white kept within the code's square, so that fewer make larger modules.
    ink, paper: greys, 0 black.
    """

    size: str = "50x25"
    levels: tuple[str, ...] | None = None
    capitals: bool = True
    quiet: int = QUIET_MODULES
    squares: tuple[Box, ...] | None = None
    ink: float = 0.0
    paper: float = 255.0


@dataclass(frozen=True)
class Printed:
    """A label on its bin. symbols: left, top, side, module of each code's modules. [mm]."""

    address: str
    picture: Grey
    symbols: tuple[Box, ...]

    @property
    def corners(self) -> list[Box]:
        """The finder patterns with their separators: left, top, right, bottom. [mm]."""
        found = []
        for left, top, side, module in self.symbols:
            reach = CORNER_MODULES * module
            far = side - reach
            found += [
                (left + x, top + y, left + x + reach, top + y + reach)
                for x, y in ((0.0, 0.0), (far, 0.0), (0.0, far))
            ]
        return found


@lru_cache(maxsize=256)
def printed(number: int, way: Way) -> Printed:
    """Label number so-and-so: each has a code of its own, and so a pattern of its own."""
    code = with_check(f"{number * 7919 + 32**5:06X}"[-6:])
    address = card_address(SHOP, code) if way.capitals else f"{SHOP}/c/{code}"
    facts = facts_of_card(with_plan({**card(3), "code": code}, worst="caution"))
    drawn = _other_codes(label(facts, address, way.size), address, way)
    print_out = np.asarray(Image.open(io.BytesIO(label_png(drawn, PRINT_DPI))), np.float32)
    shown_mm = 25.0 + NEXT_TO_IT_MM if way.size == "50x25" else drawn.width
    size = round(drawn.width * PX_PER_MM), round(drawn.height * PX_PER_MM)
    picture = cv2.resize(print_out, size, interpolation=cv2.INTER_LINEAR)
    picture = picture[:, : round(shown_mm * PX_PER_MM)]
    tinted = way.ink + picture * ((way.paper - way.ink) / 255)
    around = np.pad(tinted, round(BARE_MM * PX_PER_MM), constant_values=BIN)
    marks = [m for m in drawn.marks if isinstance(m, QrMark)]
    return Printed(address, around, tuple(_symbol(mark) for mark in marks))


def modules_mm(way: Way) -> list[tuple[int, float]]:
    """Version and module [mm] of each code."""
    symbols = printed(0, way).symbols
    return [((round(side / module) - 17) // 4, module) for _, _, side, module in symbols]


def _symbol(mark: QrMark) -> Box:
    module = mark.side / mark.code.modules
    inset = QUIET_MODULES * module + BARE_MM
    return mark.x + inset, mark.y + inset, module * len(mark.code.rows), module


def _other_codes(drawn: Label, address: str, way: Way) -> Label:
    if way.levels is None:
        return drawn
    own = [m for m in drawn.marks if isinstance(m, QrMark)]
    squares = way.squares or tuple((m.x, m.y, m.side, 0.0) for m in own)
    rest = tuple(m for m in drawn.marks if not isinstance(m, QrMark))
    pairs = zip(way.levels, squares, strict=False)
    codes = tuple(_mark(address, level, square, way.quiet) for level, square in pairs)
    return replace(drawn, marks=(*codes, *rest))


def _mark(address: str, level: str, square: Box, quiet: int) -> QrMark:
    code = _code(address, level)
    module = square[2] / (len(code.rows) + 2 * quiet)
    outside = (QUIET_MODULES - quiet) * module
    x, y = square[0] - outside, square[1] - outside
    return QrMark(x, y, module * code.modules, code)


def _code(address: str, level: str) -> QrCode:
    maker = qrcode.QRCode(error_correction=_LEVELS[level], border=0)
    maker.add_data(address, optimize=0)
    maker.make(fit=True)
    rows = tuple(tuple(bool(dark) for dark in row) for row in maker.get_matrix())
    return QrCode(address, level, maker.version, rows)  # type: ignore[arg-type]
