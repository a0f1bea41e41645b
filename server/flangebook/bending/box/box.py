"""A box or tray: a base, and on up to four of its sides a chain of flats.

Frame: the base lies with its inside up, x runs from its left to its right side, y from its
front to its back. A chain is counted outwards from the base: flat 1 is the wall. Direction
"up" folds towards the inside of the box, so a wall up and a lip up close over it, a lip down
turns outwards.

Seen along y, left chain, base and right chain are one section; seen along x, front chain, base
and back chain are another. All bends of a section are bent with what is known of sections. Bends
and flats are numbered over left and right first, then over front and back, whichever of the two
is bent first.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from typing import Literal, get_args

from flangebook.bending.checks import Names
from flangebook.bending.errors import InputError, NotAPartError
from flangebook.bending.geometry.setback import Dimension
from flangebook.bending.part.order_limits import NO_ORDER_LIMITS, OrderLimits
from flangebook.bending.part.part import MOST_BENDS, Bend, Part
from flangebook.bending.part.section import check_part

SideName = Literal["left", "right", "front", "back"]
Pair = Literal["left-right", "front-back"]
ReliefShape = Literal["square", "round", "none"]
Corner = Literal["closed", "open"]
SIDES: tuple[SideName, ...] = get_args(SideName)
ENDS_OF: dict[Pair, tuple[SideName, SideName]] = {
    "left-right": ("left", "right"),
    "front-back": ("front", "back"),
}
PAIRS: tuple[Pair, Pair] = ("left-right", "front-back")
CALLED: dict[Pair, str] = {"left-right": "left and right", "front-back": "front and back"}
MOST_SIDE_BENDS = 6


@dataclass(frozen=True, slots=True)
class Side:
    """What stands on one side of the base, outwards. flats_mm: as many as bends; bends[0] is
    between base and flat 1."""

    flats_mm: tuple[float, ...]
    bends: tuple[Bend, ...]


@dataclass(frozen=True, slots=True)
class Box:
    """A base with sides.

    length_mm: of the base from left to right, width_mm: from front to back, outside as
    ``dimension`` says. relief, relief_mm: cut-out where two bends meet, its diameter or the side
    of its square [mm], None by rule. corner: "closed" walls meet edge to edge where both are
    square; "open" walls end where the neighbour's bend begins. gap_mm: between them [mm], None
    by rule. first_pair: the sides that are bent first; their walls run out to the corner, and the
    others are bent between them. order: numbers of the bends in an order of one's own; None lets
    the planner choose. order_limits: by the numbers that bends and flats have in the box. die,
    punch: codes of the tools asked for, for every bend that names none of its own.
    """

    title: str
    metal: str
    thickness_mm: float
    length_mm: float
    width_mm: float
    left: Side | None = None
    right: Side | None = None
    front: Side | None = None
    back: Side | None = None
    relief: ReliefShape = "round"
    relief_mm: float | None = None
    corner: Corner = "closed"
    gap_mm: float | None = None
    dimension: Dimension = "din6935"
    first_pair: Pair = "left-right"
    order: tuple[int, ...] | None = None
    order_limits: OrderLimits = NO_ORDER_LIMITS
    die: str | None = None
    punch: str | None = None

    @property
    def pairs(self) -> tuple[Pair, Pair]:
        """The pairs of sides in the order they are bent in."""
        return self.first_pair, across(self.first_pair)

    def side(self, name: SideName) -> Side | None:
        """The chain on that side, None for a plain edge."""
        return {"left": self.left, "right": self.right, "front": self.front, "back": self.back}[
            name
        ]

    def base_mm(self, pair: Pair) -> float:
        """The base's dimension along a section [mm]."""
        return self.length_mm if pair == "left-right" else self.width_mm


@dataclass(frozen=True, slots=True)
class BoxBend:
    """One bend. number: from 1 over the box. place: from 1 outwards on its side. in_section:
    its number in its pair's section."""

    number: int
    side: SideName
    place: int
    pair: Pair
    in_section: int
    bend: Bend


def section_of(box: Box, pair: Pair) -> Part | None:
    """The section through a pair of sides, None when neither is there.

    Its bends are as long as the base is across the section, outside. Order and limits on it are
    those of the box that speak of this section.
    """
    first, last = (box.side(name) for name in ENDS_OF[pair])
    if first is None and last is None:
        return None
    other = across(pair)
    before = first or Side((), ())
    after = last or Side((), ())
    return Part(
        title=box.title,
        metal=box.metal,
        thickness_mm=box.thickness_mm,
        bend_length_mm=box.base_mm(other),
        flats_mm=(*before.flats_mm[::-1], box.base_mm(pair), *after.flats_mm),
        bends=(*before.bends[::-1], *after.bends),
        dimension=box.dimension,
        order=_order_of(box, pair),
        order_limits=_order_limits_of(box, pair),
        walled=pair != box.first_pair and _stands(box, other),
        die=box.die,
        punch=box.punch,
    )


def _stands(box: Box, pair: Pair) -> bool:
    return any(box.side(name) is not None for name in ENDS_OF[pair])


def _in_section(box: Box, pair: Pair) -> dict[int, int]:
    """The numbers that the bends of a section have in it, by their numbers in the box."""
    return {one.number: one.in_section for one in bends_of(box) if one.pair == pair}


def _order_of(box: Box, pair: Pair) -> tuple[int, ...] | None:
    if box.order is None:
        return None
    mine = _in_section(box, pair)
    return tuple(mine[number] for number in box.order if number in mine)


def _order_limits_of(box: Box, pair: Pair) -> OrderLimits:
    mine = _in_section(box, pair)
    before = flats_before(box, pair)
    flats = (number - before for number in box.order_limits.critical_flats)
    return replace(
        box.order_limits,
        first=mine.get(box.order_limits.first or 0),
        last=mine.get(box.order_limits.last or 0),
        critical_flats=tuple(n for n in flats if 1 <= n <= flats_in(box, pair)),
    )


def flats_in(box: Box, pair: Pair) -> int:
    """How many flats a section has, the base among them; 0 when it is not there."""
    sides = [side for name in ENDS_OF[pair] if (side := box.side(name)) is not None]
    return sum(len(side.flats_mm) for side in sides) + 1 if sides else 0


def flats_before(box: Box, pair: Pair) -> int:
    """How many flats are numbered before those of a section."""
    return sum(flats_in(box, one) for one in PAIRS[: PAIRS.index(pair)])


def across(pair: Pair) -> Pair:
    """The other pair."""
    return "front-back" if pair == "left-right" else "left-right"


def base_flat(box: Box, pair: Pair) -> int:
    """The index of the base among the flats of a section."""
    first = box.side(ENDS_OF[pair][0])
    return len(first.flats_mm) if first else 0


def bends_of(box: Box) -> tuple[BoxBend, ...]:
    """All bends by number."""
    found: list[BoxBend] = []
    for pair in PAIRS:
        for i, (side, place, bend) in enumerate(_along(box, pair), 1):
            found.append(BoxBend(len(found) + 1, side, place, pair, i, bend))
    return tuple(found)


def _along(box: Box, pair: Pair) -> Iterator[tuple[SideName, int, Bend]]:
    """The bends of a section from its left end: side, place on it, bend."""
    first, last = ENDS_OF[pair]
    one, two = box.side(first), box.side(last)
    for i, bend in reversed(list(enumerate(one.bends if one else ()))):
        yield first, i + 1, bend
    for i, bend in enumerate(two.bends if two else ()):
        yield last, i + 1, bend


def flat_name(box: Box, pair: Pair, flat: int) -> str:
    """What flat ``flat`` (from 1) of a section is called: "the base", "left flat 1"."""
    base = base_flat(box, pair)
    if flat - 1 == base:
        return "the base"
    first, last = ENDS_OF[pair]
    if flat - 1 < base:
        return f"{first} flat {base - flat + 1}"
    return f"{last} flat {flat - 1 - base}"


def check_box(box: Box) -> None:
    """Refuse what is not a box, before any tool is known.

    Raises:
        InputError, NotAPartError: ``where`` names the field, lists counted from 0.
    """
    _check_counts(box)
    for pair in PAIRS:
        section = section_of(box, pair)
        if section is not None:
            _check_section(box, pair, section)
    _check_order_limits(box)


def _check_counts(box: Box) -> None:
    if not any(box.side(name) for name in SIDES):
        raise NotAPartError("The box has no side.", "box.sides", "Give at least one side.")
    total = 0
    for name in SIDES:
        side = box.side(name)
        if side is None:
            continue
        where = f"box.sides.{name}"
        if len(side.flats_mm) != len(side.bends) or not side.flats_mm:
            raise NotAPartError(
                f"{len(side.flats_mm)} flats do not go with {len(side.bends)} bends.",
                f"{where}.flats_mm",
                "Give as many flats as bends, from the base outwards.",
            )
        if len(side.bends) > MOST_SIDE_BENDS:
            raise InputError(
                f"{len(side.bends)} bends on one side are too many.",
                f"{where}.bends",
                f"At most {MOST_SIDE_BENDS}.",
            )
        total += len(side.bends)
    if total > MOST_BENDS:
        raise InputError(f"{total} bends are too many.", "box.sides", f"At most {MOST_BENDS}.")
    for field, value in (("relief_mm", box.relief_mm), ("gap_mm", box.gap_mm)):
        if value is not None and not 0.0 <= value < min(box.length_mm, box.width_mm):
            raise InputError(
                "{given_mm} does not fit the base.",
                f"box.{field}",
                "Give less, or leave it out.",
                {"given_mm": value},
            )


def _check_order_limits(box: Box) -> None:
    """Refuse an order or limits on the order that no box bent one pair after the other can have.

    Raises:
        InputError: a bend or flat that is not there, or one whose sides have another turn.
    """
    bends = bends_of(box)
    turns = [pair for pair in box.pairs if _stands(box, pair)]
    pair_of_bend = {one.number: one.pair for one in bends}
    if box.order is not None:
        _check_order(box.order, pair_of_bend, turns)
    box.order_limits.check(len(bends), sum(flats_in(box, pair) for pair in PAIRS))
    for name, turn in (("first", turns[0]), ("last", turns[-1])):
        number = getattr(box.order_limits, name)
        if number is not None and pair_of_bend[number] != turn:
            raise InputError(
                f"Bend {number} cannot be {name}: {CALLED[turn]} are bent {name}.",
                f"wishes.{name}",
                f"Name a bend of {CALLED[turn]}, or have the other sides bent first.",
            )


def _check_order(order: Sequence[int], pair_of_bend: dict[int, Pair], turns: list[Pair]) -> None:
    if sorted(order) != sorted(pair_of_bend):
        raise InputError(
            f"The order {', '.join(map(str, order))} does not name every bend once.",
            "order",
            f"Give every number from 1 to {len(pair_of_bend)} once.",
        )
    given = [pair_of_bend[number] for number in order]
    if given != sorted(given, key=turns.index):
        raise InputError(
            f"A box is bent one pair of sides after the other, {CALLED[turns[0]]} first.",
            "order",
            f"Give all bends of {CALLED[turns[0]]}, then those of {CALLED[turns[-1]]}, or have "
            "the other sides bent first.",
        )


def _check_section(box: Box, pair: Pair, section: Part) -> None:
    try:
        check_part(section)
    except (InputError, NotAPartError) as error:
        error.where = place_of(box, pair, error.where)
        error.call(names_in_box(box, pair))
        raise


def place_of(box: Box, pair: Pair, where: str) -> str:
    """Where a field of a section is in the box: "flats_mm.0" is "box.sides.left.flats_mm.1"."""
    name, _, rest = where.partition(".")
    number, _, field = rest.partition(".")
    if name == "bend_length_mm":
        return "box.width_mm" if pair == "left-right" else "box.length_mm"
    if name not in ("flats_mm", "bends") or not number.isdigit():
        return f"box.{where}" if name in ("flats_mm", "bends") else where
    base, index = base_flat(box, pair), int(number)
    if name == "flats_mm" and index == base:
        return "box.length_mm" if pair == "left-right" else "box.width_mm"
    before = index < base
    side = ENDS_OF[pair][0 if before else 1]
    at = base - 1 - index if before else index - base - (1 if name == "flats_mm" else 0)
    return ".".join(one for one in (f"box.sides.{side}.{name}.{at}", field) if one)


def names_in_box(box: Box, pair: Pair, steps_before: int = 0) -> Names:
    """What flats and bends of a section are called in the box."""
    flats = {n: flat_name(box, pair, n) for n in range(1, flats_in(box, pair) + 1)}
    bends = {n: number for number, n in _in_section(box, pair).items()}
    return Names(flats, bends, flats_before(box, pair), steps_before)
