"""Tools that the user names: found in the crib, or refused by the field that names them."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from flangebook.bending.checks import Sentence
from flangebook.bending.errors import MissingToolError
from flangebook.bending.part.part import Part
from flangebook.bending.tools.tooling import Crib, Die, Punch


def find_die(crib: Crib, code: str, where: str = "die") -> Die:
    """The die of that code.

    Raises:
        MissingToolError: the crib has none.
    """
    for die in crib.dies:
        if die.code == code:
            return die
    raise MissingToolError(f"There is no die {code!r} in the crib.", where, _codes(crib.dies))


def find_punch(crib: Crib, code: str, where: str = "punch") -> Punch:
    """The punch of that code.

    Raises:
        MissingToolError: the crib has none.
    """
    for punch in crib.punches:
        if punch.code == code:
            return punch
    raise MissingToolError(f"There is no punch {code!r} in the crib.", where, _codes(crib.punches))


def _codes(tools: Sequence[Die] | Sequence[Punch]) -> str:
    if not tools:
        return "The crib has none yet: leave it out, or enter it first."
    more = ", ..." if len(tools) > 20 else ""
    return f"Use one of: {', '.join(t.code for t in tools[:20])}{more}."


def need_tools(part: Part, crib: Crib) -> None:
    """Refuse a part that names tools which the crib has not.

    Raises:
        MissingToolError: with the field that names the tool.
    """
    named = [("tools", part.die, part.punch)]
    named += [(f"bends.{i}", bend.die, bend.punch) for i, bend in enumerate(part.bends)]
    for place, die, punch in named:
        if die:
            find_die(crib, die, f"{place}.die")
        if punch:
            find_punch(crib, punch, f"{place}.punch")


def without_tools_left_out(part: Part, crib: Crib) -> Part:
    """The part without the names of tools that are not in this crib because they cannot be drawn;
    a finding of its own says so of each."""
    dies, punches = ({tool.code for tool in tools} for tools in (crib.dies, crib.punches))

    def known(code: str | None, codes: set[str]) -> str | None:
        return code if code in codes else None

    return replace(
        part,
        die=known(part.die, dies),
        punch=known(part.punch, punches),
        bends=tuple(
            replace(bend, die=known(bend.die, dies), punch=known(bend.punch, punches))
            for bend in part.bends
        ),
    )


def names_dropped(part: Part) -> list[tuple[str, Sentence, Part]]:
    """Each tool named, by its field and in words, and the part without that name."""
    found = []
    for kind in ("die", "punch"):
        if code := getattr(part, kind):
            words = Sentence(f"{kind} {code} for every bend")
            found.append((f"tools.{kind}", words, _without(part, kind)))
    for i, bend in enumerate(part.bends):
        for kind in ("die", "punch"):
            if code := getattr(bend, kind):
                words = Sentence(f"{kind} {code} for bend {{bend}}", {"bend": i + 1})
                found.append((f"bends.{i}.{kind}", words, _without(part, kind, i)))
    return found


def _without(part: Part, kind: str, bend: int | None = None) -> Part:
    if bend is None:
        return replace(part, die=None) if kind == "die" else replace(part, punch=None)
    bends = list(part.bends)
    own = bends[bend]
    bends[bend] = replace(own, die=None) if kind == "die" else replace(own, punch=None)
    return replace(part, bends=tuple(bends))
