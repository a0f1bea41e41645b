"""The QR code of a card: its address in capitals, so that the code stays coarse.

Capitals and digits pack tighter than mixed case (ISO/IEC 18004, alphanumeric mode), which
saves a version; the server reads the address in any case. The level is H where dirt is to
be expected, Q where distance is, never less: in trials at 25 mm the codes of level M were
the first to fail under blots.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache
from typing import Literal

from qrcode import constants

from flangebook.bending.errors import InputError
from flangebook.labels.qr_mask import Drawing, best_masked

Level = Literal["H", "Q"]
QUIET_MODULES = 4  # on each side, ISO/IEC 18004
_LEVELS = {"H": constants.ERROR_CORRECT_H, "Q": constants.ERROR_CORRECT_Q}
_MOST_ADDRESS = 200


@dataclass(frozen=True, slots=True)
class QrCode:
    """A QR code: dark modules by row and column, without the quiet zone."""

    address: str
    level: Level
    version: int
    rows: tuple[tuple[bool, ...], ...]

    @property
    def modules(self) -> int:
        """Modules along a side, the quiet zone on both ends included."""
        return len(self.rows) + 2 * QUIET_MODULES


def card_address(base: str, code: str) -> str:
    """The address in a card's QR code.

    base: the shop's address, scheme and host and port, such as "http://127.0.0.1:8417".
    code: the card's code.

    >>> card_address("http://127.0.0.1:8417/", "SHE7FA1")
    'HTTP://127.0.0.1:8417/C/SHE7FA1'
    """
    return f"{base.rstrip('/')}/C/{code}".upper()


def qr_code(address: str, level: Level = "H") -> QrCode:
    """The smallest QR code that holds the address at that level or better.

    It is H instead of Q where that makes no more modules.
    Raises InputError when the address is longer than a label can carry.
    """
    if not 0 < len(address) <= _MOST_ADDRESS:
        raise InputError(
            f"The address has {len(address)} characters.", "address", f"At most {_MOST_ADDRESS}."
        )
    return _made(address, level)


@lru_cache(64)
def _made(address: str, level: Level) -> QrCode:
    taken: Level = "H"
    code = _sized(address, taken)
    if level != "H":
        lower = _sized(address, level)
        if lower.version < code.version:
            code, taken = lower, level
    rows = best_masked(code).tolist()
    return QrCode(address, taken, code.version, tuple(map(tuple, rows)))


def _sized(address: str, level: Level) -> Drawing:
    """A code of the smallest version, not yet drawn."""
    code = Drawing(error_correction=_LEVELS[level], border=0)
    code.add_data(address, optimize=0)
    code.best_fit()
    return code
