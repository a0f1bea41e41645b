"""Quantities as people type them: a number, or a number with a unit, into the field's unit.

Each kind of quantity has a whitelist of unit spellings; everything else is refused with
the words that are right. Only then pint converts, in a registry that knows these units and
no others, with exact fractions: "1/8 in" is 3.175 mm.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction
from functools import cache
from typing import Any

from flangebook.bending.errors import InputError

LONGEST = 40
_NUMBER = re.compile(
    r"(?P<sign>[+-]?)(?:"
    r"(?:(?P<whole>\d{1,6})[ -])?(?P<top>\d{1,4})/(?P<bottom>\d{1,4})"
    r"|(?P<decimal>\d{1,12}(?:\.\d{0,12}|,\d{1,12})?|\.\d{1,12})"
    r")(?![\d.,/])",
    re.ASCII,
)
# Some write a thousand so, others a decimal: nobody can tell which is meant.
_TWO_WAYS = re.compile(r"(?P<first>[1-9]\d{0,2}),(?P<last>\d{3})", re.ASCII)
_GAUGE = re.compile(r"(?P<number>\d{1,2}) ?(?:ga|gauge|gage)\.?", re.IGNORECASE | re.ASCII)


@dataclass(frozen=True, slots=True)
class Kind:
    """A kind of quantity.

    name: as a person calls it. unit: how the field's unit is shown. base: the same for pint.
    spellings: how each unit may be written (any case) and what it is for pint.
    refused: spellings that look right and mean two things, with what to say about them.
    """

    name: str
    unit: str
    base: str
    spellings: Mapping[str, str]
    refused: Mapping[str, str]

    @property
    def called(self) -> str:
        """The name with its article: "a length", "an angle"."""
        return f"{'an' if self.name[0] in 'aeiou' else 'a'} {self.name}"


@dataclass(frozen=True, slots=True)
class SheetGauge:
    """A sheet gauge number; what thickness it means depends on the metal."""

    number: int


_INCH = dict.fromkeys(("in", "in.", "inch", "inches", '"', "″", "”"), "inch")
_TON = "There are short and metric tons: write kN, short tons or t."
_TONNES = ("t", "tf", "tonne", "tonnes", "metric ton", "metric tons")
_DEGREE_ONLY = "Angles are in degrees."
LENGTH = Kind(
    "length",
    "mm",
    "millimeter",
    {"mm": "millimeter", "cm": "centimeter", "m": "meter", "ft": "foot", **_INCH},
    {"'": "Write ft for feet and in for inches.", "mil": "Write mm or in.",
     "ga": "A gauge number is a thickness only.",
     "gauge": "A gauge number is a thickness only."},
)  # fmt: skip
FORCE = Kind(
    "force",
    "kN",
    "kilonewton",
    {
        "kn": "kilonewton",
        "n": "newton",
        "short ton": "short_ton",
        "short tons": "short_ton",
        "us ton": "short_ton",
        "us tons": "short_ton",
        "lbf": "pound_force",
        **dict.fromkeys(_TONNES, "metric_ton"),
    },
    dict.fromkeys(("ton", "tons", "tonf", "long ton", "long tons"), _TON),
)
FORCE_PER_LENGTH = Kind(
    "force per length",
    "kN/m",
    "kilonewton / meter",
    {
        "kn/m": "kilonewton / meter",
        "n/mm": "newton / millimeter",
        "short tons/ft": "short_ton / foot",
        "short ton/ft": "short_ton / foot",
        "us tons/ft": "short_ton / foot",
        **{f"{one}/m": "metric_ton / meter" for one in _TONNES},
    },
    dict.fromkeys(("ton/m", "tons/m", "ton/ft", "tons/ft", "tonf/ft"), _TON)
    | {"kn": "A rating is a force per metre: write kN/m."},
)
STRESS = Kind(
    "stress",
    "MPa",
    "megapascal",
    {
        "mpa": "megapascal",
        "n/mm2": "megapascal",
        "n/mm²": "megapascal",
        "gpa": "gigapascal",
        "psi": "psi",
        "ksi": "ksi",
        "msi": "msi",
    },
    {"bar": "Write MPa."},
)
DENSITY = Kind(
    "density",
    "kg/m³",
    "kilogram / meter ** 3",
    {
        "kg/m3": "kilogram / meter ** 3",
        "kg/m³": "kilogram / meter ** 3",
        "g/cm3": "gram / centimeter ** 3",
        "g/cm³": "gram / centimeter ** 3",
        "lb/in3": "pound / inch ** 3",
        "lb/in³": "pound / inch ** 3",
    },
    {},
)
ANGLE = Kind(
    "angle",
    "degrees",
    "degree",
    {"deg": "degree", "degree": "degree", "degrees": "degree", "°": "degree"},
    dict.fromkeys(("rad", "radian", "radians", "gon", "grad", "'", '"'), _DEGREE_ONLY),
)
SPEED = Kind(
    "speed",
    "mm/s",
    "millimeter / second",
    {"mm/s": "millimeter / second", "in/s": "inch / second"},
    {"m/min": "Write mm/s.", "in/min": "Write mm/s or in/s."},
)
RATIO = Kind("ratio", "", "", {}, {})
KINDS = (LENGTH, FORCE, FORCE_PER_LENGTH, STRESS, DENSITY, ANGLE, SPEED, RATIO)

_DEFINITIONS = """
meter = [length]
millimeter = meter / 1000
centimeter = meter / 100
inch = 254 / 10 * millimeter
foot = 12 * inch
second = [time]
kilogram = [mass]
gram = kilogram / 1000
pound = 45359237 / 100000000 * kilogram
newton = kilogram * meter / second ** 2
kilonewton = 1000 * newton
pound_force = pound * 980665 / 100000 * meter / second ** 2
short_ton = 2000 * pound_force
metric_ton = 1000 * kilogram * 980665 / 100000 * meter / second ** 2
megapascal = newton / millimeter ** 2
gigapascal = 1000 * megapascal
psi = pound_force / inch ** 2
ksi = 1000 * psi
msi = 1000 * ksi
degree = []
"""


def read(text: str, kind: Kind) -> float:
    """The value in the kind's unit.

    Raises InputError for what is not a number, or has a unit that is not on the whitelist.

    >>> read("1/8 in", LENGTH), read("1 1/2 in", LENGTH), read("3", LENGTH)
    (3.175, 38.1, 3.0)
    >>> round(read("10 short tons", FORCE), 3)
    88.964
    """
    short = text.strip().replace("−", "-", 1)  # the minus sign as the screens write it
    found = _NUMBER.match(short) if len(short) <= LONGEST else None
    if found is None:
        raise InputError(f"{_shown(text)} is not {kind.called}.", right=_right(kind, short))
    spelling = " ".join(short[found.end() :].casefold().split())
    if not spelling and found["top"]:
        right = f"Write {short} in." if kind is LENGTH else _right(kind, short)
        raise InputError(f"{_shown(text)} is a fraction without a unit.", right=right)
    if two := _TWO_WAYS.fullmatch(found["decimal"] or ""):
        first, last = two.groups()
        unit = f" {spelling}" if spelling else ""
        point = f"{first}.{last}".rstrip("0").rstrip(".")
        raise InputError(
            f"{_shown(text)} can be {point} or {first}{last}.",
            right=f"Write {point}{unit} or {first}{last}{unit}.",
        )
    value = _value(found, text)
    return float(_converted(value, _unit(spelling, kind, text), kind))


def read_thickness(text: str) -> float | SheetGauge:
    """A thickness [mm], or a gauge number where one was typed.

    >>> read_thickness("16 ga")
    SheetGauge(number=16)
    >>> read_thickness("0.125 in")
    3.175
    """
    gauge = _GAUGE.fullmatch(text.strip()) if len(text) <= LONGEST else None
    return SheetGauge(int(gauge["number"])) if gauge else read(text, LENGTH)


def _value(found: re.Match[str], text: str) -> Fraction:
    if found["top"]:
        if int(found["bottom"]) == 0:
            raise InputError(f"{_shown(text)} divides by zero.", right="Write 1/8 in.")
        value = Fraction(int(found["top"]), int(found["bottom"])) + int(found["whole"] or 0)
    else:
        decimal = found["decimal"].replace(",", ".")
        value = Fraction(f"0{decimal}" if decimal.startswith(".") else decimal.rstrip("."))
    return -value if found["sign"] == "-" else value


def _unit(spelling: str, kind: Kind, text: str) -> str:
    if not spelling:
        return kind.base
    if spelling in kind.refused:
        raise InputError(f"{_shown(text)} can't be used.", right=kind.refused[spelling])
    if spelling not in kind.spellings:
        raise InputError(
            f"{_shown(text)} has a unit that is not known for a {kind.name}.",
            right=_right(kind, text),
        )
    return kind.spellings[spelling]


def _converted(value: Fraction, unit: str, kind: Kind) -> Fraction:
    if unit == kind.base:
        return value
    converted: Fraction = _registry().Quantity(value, unit).to(kind.base).magnitude
    return converted


@cache
def _registry() -> Any:
    # pint takes a while to load, and most requests come without a unit.
    import pint  # noqa: PLC0415

    registry: Any = pint.UnitRegistry(None, non_int_type=Fraction)
    for definition in _DEFINITIONS.strip().splitlines():
        registry.define(definition)
    return registry


def _right(kind: Kind, text: str) -> str:
    if "," in text:
        return "Write 1.5 or 1500, without a comma."
    examples = {
        "length": "Write a number in mm, or with a unit: 3 mm, 0.125 in, 1/8 in.",
        "force": "Write a number in kN, or with a unit: 400 kN, 45 short tons, 40 t.",
        "ratio": "Write a plain number.",
    }
    return examples.get(kind.name, f"Write a number in {kind.unit}.")


def _shown(text: str) -> str:
    return f'"{text if len(text) <= LONGEST else text[:LONGEST] + "…"}"'
