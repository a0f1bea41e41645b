"""The user's limits on the order of bends, apart from an order of their own."""

from __future__ import annotations

from dataclasses import dataclass

from flangebook.bending.errors import InputError

MARGIN_MM = 2.0
"""Clearance wanted between part and tools unless another is asked for (common practice)."""
MOST_MARGIN_MM = 50.0


@dataclass(frozen=True, slots=True)
class OrderLimits:
    """Limits on the order.

    first, last: number of the bend to make first or last, from 1. no_turn_over, no_turn_end:
    never turn the part that way. one_set_up: no change of tools. critical_flats: numbers of the
    flats to gauge directly if any order allows. margin_mm: clearance wanted [mm].
    """

    first: int | None = None
    last: int | None = None
    no_turn_over: bool = False
    no_turn_end: bool = False
    one_set_up: bool = False
    critical_flats: tuple[int, ...] = ()
    margin_mm: float = MARGIN_MM

    def check(self, bends: int, flats: int | None = None) -> None:
        """Refuse limits on the order that no part of so many bends can have.

        flats: how many it has; None for one more than bends, as in a section.

        Raises:
            InputError: a bend or flat that is not there, one bend both first and last, a margin
                out of range.
        """
        for name, number in (("first", self.first), ("last", self.last)):
            if number is not None and not 1 <= number <= bends:
                raise InputError(
                    f"There is no bend {number}.", f"wishes.{name}", f"Give one of 1 to {bends}."
                )
        if self.first is not None and self.first == self.last and bends > 1:
            raise InputError(
                f"Bend {self.first} cannot be both first and last.",
                "wishes.last",
                "Name another bend.",
            )
        flats = bends + 1 if flats is None else flats
        for i, flat in enumerate(self.critical_flats):
            if not 1 <= flat <= flats:
                raise InputError(
                    f"There is no flat {flat}.",
                    f"wishes.critical_flats.{i}",
                    f"Give one of 1 to {flats}.",
                )
        if not 0.0 <= self.margin_mm <= MOST_MARGIN_MM:
            raise InputError(
                "A clearance of {margin_mm} cannot be kept.",
                "wishes.margin_mm",
                "Give 0 to {most_mm}.",
                {"margin_mm": self.margin_mm, "most_mm": MOST_MARGIN_MM},
            )


NO_ORDER_LIMITS = OrderLimits()
