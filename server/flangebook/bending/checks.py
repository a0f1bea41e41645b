"""Findings: one check says one thing, with its numbers and what to do."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field, replace
from typing import Literal

Level = Literal["ok", "unknown", "caution", "stop"]
SEVERITY: Mapping[Level, int] = {"ok": 0, "unknown": 1, "caution": 2, "stop": 3}

_UNITS = {"_kn_per_m": " kN/m", "_mm_s": " mm/s", "_mm": " mm", "_kn": " kN", "_deg": "°",
          "_kg": " kg", "_mpa": " MPa", "_percent": " %"}  # fmt: skip


@dataclass(frozen=True, slots=True)
class Names:
    """What the flats of a section are called in the part that the reader knows, and which numbers
    its bends and steps have there.

    flats, bends: by number in the section; what is not listed is called as in the section.
    flats_before, steps_before: those of the part that come before the section's.
    """

    flats: Mapping[int, str] = field(default_factory=dict)
    bends: Mapping[int, int] = field(default_factory=dict)
    flats_before: int = 0
    steps_before: int = 0

    def flat(self, number: int) -> str:
        """What a flat is called."""
        return self.flats.get(number, f"flat {number}")

    def flat_number(self, number: int) -> int:
        """The number of a flat in the part."""
        return number + self.flats_before

    def bend(self, number: int) -> int:
        """The number of a bend in the part."""
        return self.bends.get(number, number)

    def step(self, number: int) -> int:
        """The number of a step in the part."""
        return number + self.steps_before

    def subject(self, name: str, number: float) -> str | None:
        """What a sentence speaks of by this number, None where it is a plain figure."""
        match name.rpartition("_")[2]:
            case "flat":
                return self.flat(int(number))
            case "bend":
                return str(self.bend(int(number)))
            case "step":
                return str(self.step(int(number)))
        return None


PLAIN = Names()


@dataclass(frozen=True, slots=True)
class Sentence:
    """Words with numbers in them, each by its name, so that a screen may show them in the
    reader's own units; as :class:`Check` has them.

    A name that ends in ``flat``, ``bend`` or ``step`` has the number of one, which ``called``
    puts into the words; ``{Flat}`` begins a sentence with it.

    >>> said = Sentence("{Flat} of bend {bend} is {flat_mm}.", {"flat": 2, "bend": 1, "flat_mm": 8})
    >>> said.called(Names({2: "the base"}, {1: 4})).template
    'The base of bend 4 is {flat_mm}.'
    """

    template: str
    numbers: Mapping[str, float] = field(default_factory=dict)

    @property
    def capital(self) -> Sentence:
        """The same, begun with a capital."""
        return replace(self, template=_capital(self.template))

    def called(self, names: Names) -> Sentence:
        """The same with flats, bends and steps in words, by these names."""
        words = with_names(self.template, self.numbers, names)
        return Sentence(words, figures(self.numbers))

    @property
    def words(self) -> str:
        """The words with the numbers filled in, metric."""
        return fill(self.template, self.numbers)


def joined(*parts: Sentence | str) -> Sentence:
    """One sentence of several in a row; numbers of one name that differ are named apart.

    >>> one = joined("V of ", Sentence("{v_mm}", {"v_mm": 8.0}), ", not ",
    ...              Sentence("{v_mm}.", {"v_mm": 12.0}))
    >>> one.template, one.words
    ('V of {v_mm}, not {n3_v_mm}.', 'V of 8 mm, not 12 mm.')
    """
    template, numbers = "", dict[str, float]()
    for i, part in enumerate(parts):
        one = apart(Sentence(part) if isinstance(part, str) else part, numbers, f"n{i}_")
        numbers |= one.numbers
        template += one.template
    return Sentence(template, numbers)


def apart(said: Sentence, others: Mapping[str, float], prefix: str) -> Sentence:
    """The same, to stand beside others: a number gets the prefix to its name where they have
    another of that name."""
    words, numbers = said.template, dict[str, float]()
    for name, value in said.numbers.items():
        own = name if others.get(name, value) == value else prefix + name
        numbers[own] = value
        words = words.replace(f"{{{name}}}", f"{{{own}}}")
        words = words.replace(f"{{{_capital(name)}}}", f"{{{_capital(own)}}}")
    return Sentence(words, numbers)


@dataclass(frozen=True, slots=True)
class Check:
    """One finding.

    level: "ok", "unknown" (a rating or figure is missing), "caution" or "stop".
    code: stable name for programs, such as "press-overload".
    template: the words; ``{force_kn}`` stands for a number by its name in ``numbers``,
        so that a screen may show it in the reader's own units.
    do: what to do about it, same form as ``template``; empty when there is nothing to do.
    numbers: figures by name, the unit is the end of the name (mm, kn, kn_per_m, deg, kg, percent).
    step, bend: the step or bend (from 1) that it is about, if one.
    """

    level: Level
    code: str
    template: str
    do: str = ""
    numbers: Mapping[str, float] = field(default_factory=dict)
    step: int | None = None
    bend: int | None = None

    @property
    def words(self) -> str:
        """The words with the numbers filled in, metric."""
        return fill(self.template, self.numbers)

    @property
    def said(self) -> Sentence:
        """What it says, its numbers apart."""
        return Sentence(self.template, self.numbers)

    @property
    def whole(self) -> Sentence:
        """What it says and what to do about it."""
        return Sentence(f"{self.template} {self.do}".strip(), self.numbers)

    def called(self, names: Names) -> Check:
        """The same with flats, bends and steps in words, by these names; as part of their part."""
        return replace(
            self,
            template=with_names(self.template, self.numbers, names),
            do=with_names(self.do, self.numbers, names),
            numbers=figures(self.numbers),
            step=None if self.step is None else names.step(self.step),
            bend=None if self.bend is None else names.bend(self.bend),
        )

    def at(self, *, step: int | None = None, bend: int | None = None) -> Check:
        """The same finding, tied to a step or a bend."""
        return replace(self, step=step if step is not None else self.step,
                       bend=bend if bend is not None else self.bend)  # fmt: skip


def fill(template: str, numbers: Mapping[str, float]) -> str:
    """Put the numbers into the words, each with the unit its name ends in."""
    words = with_names(template, numbers, PLAIN)
    for name, value in figures(numbers).items():
        unit = next((u for end, u in _UNITS.items() if name.endswith(end)), "")
        written = degrees(value) if unit == "°" else tidy(value)
        words = _put(words, name, f"{written}{unit}")
    return words


def with_names(template: str, numbers: Mapping[str, float], names: Names) -> str:
    """Put flats, bends and steps into the words, by these names."""
    for name, value in numbers.items():
        subject = names.subject(name, value)
        if subject is not None:
            template = _put(template, name, subject)
    return template


def figures(numbers: Mapping[str, float]) -> dict[str, float]:
    """Those numbers that are not the number of a flat, a bend or a step."""
    return {name: value for name, value in numbers.items() if PLAIN.subject(name, value) is None}


def _put(template: str, name: str, words: str) -> str:
    """The words in the place of that name, and with a capital in the place of its capital."""
    template = template.replace(f"{{{name}}}", words)
    return template.replace(f"{{{_capital(name)}}}", _capital(words))


def _capital(words: str) -> str:
    return words[:1].upper() + words[1:]


def degrees(value: float) -> str:
    """An angle as it can be set and read: to a tenth, no trailing zero.

    >>> degrees(2.56), degrees(134.6), degrees(90.0)
    ('2.6', '134.6', '90')
    """
    return f"{round(value, 1) + 0.0:.1f}".removesuffix(".0")


def tidy(value: float) -> str:
    """A number as a person would write it: three figures, no trailing zeros."""
    digits = 0 if abs(value) >= 100 else 1 if abs(value) >= 10 else 2
    text = f"{value:.{digits}f}"
    return text.rstrip("0").rstrip(".") if "." in text else text


def shown_less(value_mm: float, limit_mm: float) -> bool:
    """Whether a length is below a limit, and still is when both are written, in mm or inches.

    A finding that says "4 mm is too small: use 4 mm or more" contradicts itself.

    >>> shown_less(4.0, 4.0005), shown_less(3.9, 4.0)
    (False, True)
    """
    written = tidy(value_mm) != tidy(limit_mm)
    return (
        value_mm < limit_mm and written and round(value_mm / 25.4, 3) != round(limit_mm / 25.4, 3)
    )


def worst(checks: Iterable[Check]) -> Level:
    """The most serious level among the checks; "ok" when there is none."""
    return max((c.level for c in checks), key=SEVERITY.__getitem__, default="ok")
