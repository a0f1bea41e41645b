"""What the shop's store refuses, and why.

    ShopError
    +-- UnknownError   nothing is kept under that name
    +-- StaleError     someone else wrote first: the version given is not the newest
    +-- TakenError     that name or id is kept already, with other content
    +-- FullError      the shop or the card holds as much as it may
    +-- HeldError      somebody else holds the shop's file
    +-- CopyError      a copy cannot be made, or is not one that can be used
    +-- InUseError     the shop has something in it already
    +-- ImportRefusedError  the document is not a whole shop's; says where

Every error says what was wrong and what would be right, and builds its sentence when shown.
"""

from __future__ import annotations

from collections.abc import Mapping


class ShopError(Exception):
    """The store cannot do what was asked.

    what: what was wrong, in the user's words. right: what would be right.
    """

    def __init__(self, what: str, right: str = "") -> None:
        super().__init__(what, right)
        self.what = what
        self.right = right

    def __str__(self) -> str:
        return f"{self.what} {self.right}".strip()


class UnknownError(ShopError):
    """Nothing is kept under that name."""


class StaleError(ShopError):
    """The version given is not the newest. ``etag``: the newest one."""

    def __init__(self, what: str, right: str = "", etag: str = "") -> None:
        super().__init__(what, right)
        self.etag = etag


class TakenError(ShopError):
    """That name or id is kept already, with other content."""


class FullError(ShopError):
    """The shop or the card holds as much as it may."""


class HeldError(ShopError):
    """Somebody else holds the shop's file."""


class CopyError(ShopError):
    """A copy cannot be made, or is not one that can be used."""


class InUseError(ShopError):
    """The shop has something in it already."""


class ImportRefusedError(ShopError):
    """The document is not a whole shop's. ``wrong``: what is wrong, place by place."""

    def __init__(
        self, what: str, right: str = "", wrong: Mapping[str, list[str]] | None = None
    ) -> None:
        super().__init__(what, right)
        self.wrong = wrong or {}
