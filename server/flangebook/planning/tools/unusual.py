"""One line on why unusual tools were chosen: the best of the usual ones, and what is against them.

Unusual is an acute tool for a bend that is not acute, a V outside 6 t to 12 t, and a tool that is
worn or has no rating.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from typing import Literal

from flangebook.bending.checks import Sentence, joined, tidy
from flangebook.bending.prediction.bend_checks import flange_length
from flangebook.bending.tools.tooling import Die, Punch
from flangebook.planning.tools.candidates import Candidates
from flangebook.planning.tools.fit import USUAL_V_OVER_T, Fit
from flangebook.planning.tools.ranking import acute, doubtful
from flangebook.planning.tools.reasons import what_is_worse

SQUARE_FROM_DEG = 80.0
"""Usual tools, of 80 to 88 degrees, are not meant for bends sharper than this [deg]."""
Kind = Literal["die", "punch"]
KINDS: tuple[Kind, Kind] = ("die", "punch")


def _nothing(_: Fit, __: str) -> str:
    return ""


def _unknown(_: Fit) -> float | None:
    return None


@dataclass(frozen=True, slots=True)
class Chosen:
    """Tools as chosen for a bend.

    by_name: which of them were asked for. flange_mm: the shorter run beside the line in given
    tools [mm], None where it is not known. passed_over: why tools, called so, were not taken
    that have no more against them.
    """

    one: Fit
    candidates: Candidates
    by_name: frozenset[Kind] = frozenset()
    flange_mm: Callable[[Fit], float | None] = _unknown
    passed_over: Callable[[Fit, str], str] = _nothing


@dataclass(frozen=True, slots=True)
class _Trait:
    """Something unusual in a die or a punch. said: of a fit that has it. usual: whether a fit has
    neither this nor what would make it a poor example."""

    holds: Callable[[Fit], bool]
    said: Callable[[Fit], Sentence | str]
    usual: Callable[[Fit], bool]


def why_unusual(chosen: Chosen) -> Sentence:
    """One line; empty where the tools are the usual ones."""
    lines = {line.words: line for line in _lines(chosen)}
    spaced = ((" ", line) if i else (line,) for i, line in enumerate(lines.values()))
    return joined(*(part for parts in spaced for part in parts))


def _lines(chosen: Chosen) -> Iterator[Sentence]:
    one = chosen.one
    if not (one.die.code and one.punch.code):
        return
    for kind in KINDS:
        if kind in chosen.by_name:
            yield Sentence(f"{kind.capitalize()} {_tool(one, kind).code} was asked for by name.")
            continue
        for trait in _traits(kind):
            if trait.holds(one):
                yield joined(trait.said(one), *_instead(chosen, kind, trait))


def _tool(one: Fit, kind: Kind) -> Die | Punch:
    return one.die if kind == "die" else one.punch


def _traits(kind: Kind) -> tuple[_Trait, ...]:
    name = kind.capitalize()
    worn = _Trait(
        lambda f: doubtful(_tool(f, kind)),
        lambda f: f"{name} {_tool(f, kind).code} {_doubt(_tool(f, kind))}",
        lambda f: not doubtful(_tool(f, kind)),
    )
    sharp = _Trait(
        lambda f: acute(_tool(f, kind)) and f.wanted.included_angle_deg >= SQUARE_FROM_DEG,
        lambda f: f"Acute {kind} {_tool(f, kind).code}",
        lambda f: not acute(_tool(f, kind)) and (kind == "punch" or _usual_v(f)),
    )
    far = _Trait(lambda f: not _usual_v(f), _v_words, _usual_v)
    return (worn, far, sharp) if kind == "die" else (worn, sharp)


def _usual_v(one: Fit) -> bool:
    low, high = USUAL_V_OVER_T
    return low <= one.v_over_t <= high


def _v_words(one: Fit) -> Sentence:
    ratio = tidy(one.v_over_t)
    return Sentence(f"V of {{v_mm}}, {ratio} × thickness", {"v_mm": one.die.v_opening_mm})


def _doubt(tool: Die | Punch) -> str:
    return "has no rating" if tool.rating_kn_per_m is None else f"is {tool.condition}"


def _instead(chosen: Chosen, kind: Kind, trait: _Trait) -> tuple[Sentence | str, ...]:
    """The best of the usual tools, and why they were not taken."""
    one, candidates = chosen.one, chosen.candidates

    def keep(other: Fit) -> bool:
        alike = kind == "die" or other.die.code == one.die.code
        named = all(_tool(other, k).code == _tool(one, k).code for k in chosen.by_name)
        return alike and named and trait.usual(other)

    pair = candidates.best(keep)
    if pair is None:
        return (f": the crib has no other {kind} to take.",)
    rival = candidates.fit(pair)
    called = _tool(rival, kind).code
    return f", not {called}: ", _why_not(chosen, rival, called)


def _why_not(chosen: Chosen, rival: Fit, called: str) -> Sentence | str:
    if rival.stops:
        return rival.stops[0].said
    flange = _flange_words(chosen, rival)
    if flange is not None:
        return flange
    mine, other = (chosen.candidates.merit((f.punch.code, f.die.code)) for f in (chosen.one, rival))
    if other.cost <= mine.cost:
        return chosen.passed_over(rival, called) or "the order of the bends goes with these tools."
    return what_is_worse(other, mine, rival)


def _flange_words(chosen: Chosen, rival: Fit) -> Sentence | None:
    """What is against the rival's flange, where the chosen tools have less against theirs."""
    worse = _flange_level(chosen, rival)
    if worse == "ok" or worse == _flange_level(chosen, chosen.one):
        return None
    run = chosen.flange_mm(rival)
    assert run is not None
    assert rival.bend is not None
    return flange_length(run, rival.bend.min_flange_mm).said


def _flange_level(chosen: Chosen, one: Fit) -> str:
    run = chosen.flange_mm(one)
    if run is None or one.bend is None:
        return "ok"
    return flange_length(run, one.bend.min_flange_mm).level
