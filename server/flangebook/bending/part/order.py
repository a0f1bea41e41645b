"""The order of the bends: the one given, or a plain rule.

``outside_in`` is a rule of the trade (common practice, no source): it looks at no tool and
proves nothing, so what it gives is never marked clear on paper. Where press and tools are known a
search takes its place.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from flangebook.bending.errors import InputError
from flangebook.bending.part.part import Part

Rule = Literal["given", "outside in", "search"]


@dataclass(frozen=True, slots=True)
class Order:
    """An order of bends. sequence: bend numbers from 1. clear_on_paper: every step was shown to
    clear the tools. words: one sentence saying where it comes from and what it is worth."""

    sequence: tuple[int, ...]
    rule: Rule
    clear_on_paper: bool
    words: str


def outside_in(part: Part) -> Order:
    """Ends first, middle last; hems before all. Clearance is not looked at.

    Level by level from both ends; each level starts at the end where the last one stopped,
    so that the part is turned end for end as seldom as the rule allows.
    """
    count = len(part.bends)
    hems = [n for n in (1, count) if part.bends[n - 1].kind != "bend"]
    if count == 1:
        hems = hems[:1]
    sequence: list[int] = []
    at_left = True
    for level in range((count + 1) // 2):
        left, right = level + 1, count - level
        pair = [left] if left == right else [left, right] if at_left else [right, left]
        sequence += pair
        at_left = pair[-1] == left
    sequence.sort(key=lambda n: n not in hems)
    return Order(
        tuple(sequence),
        "outside in",
        False,
        "Outside in: a plain rule, not a proof. Clearance not checked.",
    )


def check_order(sequence: tuple[int, ...], count: int) -> None:
    """Refuse an order that does not name each of ``count`` bends once.

    Raises:
        InputError: a bend is missing, named twice, or does not exist.
    """
    if sorted(sequence) != list(range(1, count + 1)):
        raise InputError(
            "The order does not name every bend once.",
            "order",
            f"Give the numbers 1 to {count}, each once.",
        )


def order_for(part: Part) -> Order:
    """The part's own order if it gives one, else the plain rule's.

    Raises:
        InputError: the order given does not name every bend once.
    """
    if part.order is None:
        return outside_in(part)
    check_order(part.order, len(part.bends))
    return Order(part.order, "given", False, "The order given. Clearance not checked.")
