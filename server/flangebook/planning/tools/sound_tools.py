"""The tools whose outline can be worked out; one that cannot is left out, and named.

Entry refuses an outline that crosses itself or sizes that do not fit together, but what an
older release kept, or what was brought in whole, may be such a tool. Where it stands in the
room cannot be said, so nothing may be planned with it; the others are planned with as ever.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace
from typing import TypeVar

from flangebook.bending.checks import Check
from flangebook.bending.errors import InputError
from flangebook.bending.geometry.ring import Ring
from flangebook.bending.tools.outline import die_outline, punch_outline
from flangebook.bending.tools.tooling import Crib, Die, Punch

Tool = TypeVar("Tool", Punch, Die)


def sound_crib(crib: Crib) -> tuple[Crib, tuple[Check, ...]]:
    """The crib without the punches and dies that cannot be drawn, and a finding on each.

    Where no punch or no die can be drawn, the crib stays as it is: what is then not checked is
    said of the plan as a whole.
    """
    punches, no_punches = _sound("punch", crib.punches, punch_outline)
    dies, no_dies = _sound("die", crib.dies, die_outline)
    left_out = (*no_punches, *no_dies)
    if not left_out or not punches or not dies:
        return crib, ()
    return replace(crib, punches=punches, dies=dies), left_out


def _sound(
    kind: str, tools: Sequence[Tool], outline: Callable[[Tool], Ring]
) -> tuple[tuple[Tool, ...], list[Check]]:
    sound, left_out = [], []
    for tool in tools:
        try:
            outline(tool)
        except InputError as error:
            left_out.append(_left_out(kind, tool.code, error))
        else:
            sound.append(tool)
    return tuple(sound), left_out


def _left_out(kind: str, code: str, error: InputError) -> Check:
    what, right = (said.replace("{", "(").replace("}", ")") for said in (error.what, error.right))
    return Check(
        "unknown",
        f"{kind}-left-out",
        f"{kind.capitalize()} {code} is left out: its outline cannot be drawn. {what}",
        f"Mend it in the shop's list. {right}",
    )
