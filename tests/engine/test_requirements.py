"""What a calculation asks of its numbers: one table for the API and the engine."""

from __future__ import annotations

from math import inf, nan

import marshmallow as ma
import pytest
from hypothesis import given
from hypothesis import strategies as st

from flangebook.bending.errors import InputError
from flangebook.bending.requirements import ANGLES, FOLDED, FROM_ZERO, MOST, need, need_asked
from flangebook.schemas import part
from flangebook.schemas.fields import Many, Quantity

POSITIVE = ("thickness_mm", "v_opening_mm", "yield_mpa", "force_n", "anything_else")
NO_NUMBERS = (nan, inf, -inf, -1e-9, -1.0)


@pytest.mark.parametrize("name", [*POSITIVE, *sorted(FROM_ZERO), *sorted(ANGLES)])
@pytest.mark.parametrize("value", NO_NUMBERS)
def test_what_is_no_size_is_refused_by_name(name: str, value: float) -> None:
    with pytest.raises(InputError) as caught:
        need(**{name: value})
    assert caught.value.where == name
    assert caught.value.right


@given(st.floats(1e-9, 1e12))
def test_a_size_above_nothing_is_taken(value: float) -> None:
    need(**dict.fromkeys((*POSITIVE, *FROM_ZERO), value))


@pytest.mark.parametrize("name", [*POSITIVE, *sorted(ANGLES - {FOLDED})])
def test_nothing_is_no_size_and_no_angle_to_set(name: str) -> None:
    with pytest.raises(InputError, match="above 0"):
        need(**{name: 0.0})


def test_a_radius_and_a_folded_angle_may_be_nothing() -> None:
    need(**dict.fromkeys((*FROM_ZERO, FOLDED), 0.0))


@pytest.mark.parametrize("name", sorted(ANGLES))
def test_flat_is_no_bend(name: str) -> None:
    need(**{name: 179.9})
    with pytest.raises(InputError, match="not a bend"):
        need(**{name: 180.0})


@pytest.mark.parametrize("name", sorted(MOST))
def test_what_is_asked_for_is_above_nothing_and_has_a_most(name: str) -> None:
    need_asked(**{name: MOST[name]})
    for where in (name, f"{name}.3", f"holes.0.{name}"):
        for bad in (MOST[name] * 1.001, 0.0, *NO_NUMBERS):
            with pytest.raises(InputError) as caught:
                need_asked(**{where: bad})
            assert caught.value.where == where


def test_the_api_takes_as_much_and_no_more() -> None:
    schemas = [one for one in vars(part).values() if isinstance(one, type)]
    seen = set()
    for schema in (one for one in schemas if issubclass(one, ma.Schema)):
        for name, field in schema().fields.items():
            inner = field.inner if isinstance(field, Many) else field
            if name in MOST and isinstance(inner, Quantity):
                assert inner.high == MOST[name], (schema, name)
                seen.add(name)
    assert seen == set(MOST)
