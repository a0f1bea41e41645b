"""What the API gives, for the OpenAPI document; answers are sent as they are, not dumped.

A schema here refuses what it does not name, so the tests that hold real answers against
the document find every field that was forgotten.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import marshmallow as ma

from flangebook.bending.checks import SEVERITY
from flangebook.schemas import cards, part, shop
from flangebook.schemas.fields import Choice, Many, Quantity

Field = ma.fields.Field[Any]


class Answer(ma.Schema):
    """The base of all answers."""

    class Meta:
        """Named fields only."""

        unknown = ma.RAISE


def answer(name: str, /, **fields: Field) -> type[Answer]:
    """An answer with these fields, all of them always there but for those of ``sometimes``."""
    for field in fields.values():
        field.required = SOMETIMES not in field.metadata
    return type(name, (Answer,), dict(fields))


SOMETIMES = "x-sometimes"


def sometimes(field: Field) -> Field:
    """A field that is there only where it says something."""
    field.metadata = {**field.metadata, SOMETIMES: True}
    return field


def older() -> Field:
    """A text that cards saved up to 0.3 have: metric words beside those with numbers apart."""
    return sometimes(text())


def number(**others: Any) -> Field:
    """A number."""
    return ma.fields.Float(**others)


def maybe() -> Field:
    """A number, or null where it is not known."""
    return ma.fields.Float(allow_none=True)


def whole() -> Field:
    """A whole number."""
    return ma.fields.Integer()


def maybe_whole() -> Field:
    """A whole number, or null."""
    return ma.fields.Integer(allow_none=True)


def text() -> Field:
    """A text."""
    return ma.fields.String()


def maybe_text() -> Field:
    """A text, or null."""
    return ma.fields.String(allow_none=True)


def yes_no() -> Field:
    """True or false."""
    return ma.fields.Boolean()


def one_of(*choices: str, allow_none: bool = False) -> Field:
    """One of a few words."""
    return Choice(*choices, allow_none=allow_none)


def level() -> Field:
    """How serious."""
    return one_of(*SEVERITY)


def many(inner: type[ma.Schema] | Field) -> Field:
    """A list."""
    return ma.fields.List(ma.fields.Nested(inner) if isinstance(inner, type) else inner)


def one(inner: type[ma.Schema], *, allow_none: bool = False) -> Field:
    """An object."""
    return ma.fields.Nested(inner, allow_none=allow_none)


def banded(name: str) -> dict[str, Field]:
    """A predicted value with its band."""
    return {name: maybe(), f"{name}_low": maybe(), f"{name}_high": maybe()}


ALLOW_FOR = (
    "The force to allow for: set the press by this. Ratings are checked with it. The highest of "
    "the bend model and the published relations, with the strongest sheet of the metal."
)
EXPECTED = "The expected force, at nominal figures. A press set to no more may stall."
LEAST = "The least force to be expected."


def force(name: str = "force_kn", figure: Callable[[], Field] = maybe) -> dict[str, Field]:
    """A force as it is read: what to allow for first, then what is expected."""
    return {
        f"{name}_high": described(figure(), ALLOW_FOR),
        name: described(figure(), EXPECTED),
    }


def banded_force(name: str, figure: Callable[[], Field] = maybe) -> dict[str, Field]:
    """A force with the band's low end."""
    return {**force(name, figure), f"{name}_low": described(figure(), LEAST)}


def described(field: Field, words: str) -> Field:
    """A field with what it means, for the OpenAPI document."""
    field.metadata = {**field.metadata, "description": words}
    return field


def exactly(count: int, inner: Field | None = None, **others: Any) -> Field:
    """A list that always has that many members: numbers, where nothing else is said."""
    length = ma.validate.Length(equal=count)
    return ma.fields.List(inner or number(), validate=length, **others)


def point() -> Field:
    """A point: x and y [mm]."""
    return exactly(2)


def ring() -> Field:
    """A closed outline, or a line: points [mm]."""
    return many(point())


def given(schema: type[ma.Schema], name: str, /, **more: Field) -> type[Answer]:
    """What is given back for what was taken: the same fields, quantities as plain numbers."""
    fields = {key: _given(field) for key, field in schema().fields.items()}
    return answer(name, **fields, **more)


def _given(field: Field) -> Field:
    if isinstance(field, Quantity):
        return ma.fields.Float(allow_none=field.allow_none)
    if isinstance(field, Many):
        if field.least == field.most:
            return exactly(field.most, _given(field.inner), allow_none=field.allow_none)
        return ma.fields.List(_given(field.inner), allow_none=field.allow_none)
    if isinstance(field, ma.fields.Nested):
        return ma.fields.Nested(given_once(type(field.schema)), allow_none=field.allow_none)
    return field


_made: dict[type[ma.Schema], type[Answer]] = {}


def given_once(schema: type[ma.Schema]) -> type[Answer]:
    """The answer's form of a schema that is nested in others."""
    if schema not in _made:
        _made[schema] = given(schema, f"Given{schema.__name__.removesuffix('Schema')}")
    return _made[schema]


def said() -> dict[str, Field]:
    """Words with their numbers apart."""
    return {"template": text(), "numbers": ma.fields.Dict(keys=text(), values=number())}


Check = answer(
    "Check",
    level=level(),
    code=text(),
    **said(),
    do=text(),
    words=older(),
    do_template=older(),
    step=maybe_whole(),
    bend=maybe_whole(),
)

Said = answer("Said", **said())

# Asked for it may be left out; kept each V has one.
given_once(shop.OpeningSchema)._declared_fields["code"] = ma.fields.String(required=True)
Punch = given(shop.PunchSchema, "Punch", outline_mm=ring())
Die = given(shop.DieSchema, "Die", outline_mm=ring())
Holder = given(shop.HolderSchema, "Holder", outline_mm=ring())
RamAndBed = answer("RamAndBed", ram=ring(), bed=ring())
Press = given(shop.PressSchema, "Press", outlines_mm=one(RamAndBed))
Metal = given(shop.MetalSchema, "Metal")

SHOP = {
    "press": answer("PressAnswer", press=one(Press, allow_none=True)),
    "punches": answer("PunchesAnswer", punches=many(Punch)),
    "dies": answer("DiesAnswer", dies=many(Die)),
    "holders": answer("HoldersAnswer", holders=many(Holder)),
    "metals": answer("MetalsAnswer", metals=many(Metal)),
}


class Outline(Answer):
    """``outline_mm`` of a tool, ``ram`` and ``bed`` of a press; the sizes that are assumed."""

    outline_mm = ring()
    ram = ring()
    bed = ring()
    checks = many(Check)
    assumed_mm = ma.fields.Dict(keys=text(), values=number())


Health = answer("Health", status=text(), version=text())

Part = given(part.PartSchema, "Part")
Setting = given(cards.SettingSchema, "Setting")
for _setting in (Setting, given_once(cards.SettingSchema)):
    # Settings that leave the gauge as planned do not name it.
    _setting._declared_fields["gauge_x_mm"].required = False
