"""Where in a request something is wrong, when only the inner part of it was looked at."""

from __future__ import annotations

from collections.abc import Callable
from typing import TypeVar

from flangebook.bending.errors import FlangebookError

T = TypeVar("T")


def within(place: str, act: Callable[[], T]) -> T:
    """Do it; an error's ``where`` gets the place, if there is one, in front."""
    try:
        return act()
    except FlangebookError as error:
        error.where = ".".join(name for name in (place, error.where) if name)
        raise
