"""Fields of the API's bodies: quantities with units, bounded texts, bounded lists, codes."""

from __future__ import annotations

import math
import re
import unicodedata
import uuid
from collections.abc import Mapping
from datetime import UTC, datetime
from typing import Any

import marshmallow as ma

from flangebook.bending.checks import tidy
from flangebook.bending.errors import InputError
from flangebook.labels import codes
from flangebook.schemas.quantities import Kind, SheetGauge, read, read_thickness

MOST_TEXT = 200
MOST_NOTE = 2000
NEXT_TO_NOTHING = 1e-9
"""In no field's unit is there anything so small: it is read as 0."""
TOOL_CODE = r"^[A-Za-z0-9][A-Za-z0-9._-]{0,39}$"


class Quantity(ma.fields.Field[float]):
    """A number in the field's unit, or a text with a unit.

    low, high: bounds in the field's unit. Where a number has to be more than 0, low is the
    least that exists in a shop: a figure next to nothing is a slip, and breaks calculations.
    """

    def __init__(self, kind: Kind, low: float, high: float, **others: Any) -> None:
        super().__init__(**others)
        self.kind = kind
        self.low = low
        self.high = high

    def _deserialize(
        self, value: Any, attr: str | None, data: Mapping[str, Any] | None, **kwargs: Any
    ) -> Any:
        return self.bounded(self._value(value))

    def _value(self, value: Any) -> float:
        if isinstance(value, str):
            try:
                return read(value, self.kind)
            except InputError as error:
                raise ma.ValidationError(str(error)) from None
        if isinstance(value, bool) or not isinstance(value, int | float):
            raise ma.ValidationError(f"This is not {self.kind.called}. Give a number.")
        try:
            return float(value)
        except OverflowError:
            raise ma.ValidationError(self._range()) from None

    def bounded(self, value: float) -> float:
        """The value, or a ValidationError saying what range is right."""
        if not (math.isfinite(value) and self.low <= value <= self.high):
            raise ma.ValidationError(self._range())
        return value if abs(value) > NEXT_TO_NOTHING else 0.0

    def _range(self) -> str:
        unit = f" {self.kind.unit}" if self.kind.unit else ""
        return f"Out of range. Give {tidy(self.low)} or more, at most {tidy(self.high)}{unit}."


def optional(kind: Kind, low: float, high: float, words: str = "") -> Quantity:
    """A quantity that may be left out, or null. words: what it is."""
    about = {"description": words} if words else {}
    return Quantity(kind, low, high, load_default=None, allow_none=True, metadata=about)


class Thickness(Quantity):
    """A thickness, or a sheet gauge number, which the metal turns into one later."""

    def _value(self, value: Any) -> Any:
        if not isinstance(value, str):
            return super()._value(value)
        try:
            return read_thickness(value)
        except InputError as error:
            raise ma.ValidationError(str(error)) from None

    def bounded(self, value: Any) -> Any:
        """The value, or a ValidationError; a gauge number passes as it is."""
        return value if isinstance(value, SheetGauge) else super().bounded(value)


class Text(ma.fields.String):
    """A text of bounded length. lines: more than one line is allowed. least: fewest characters."""

    def __init__(
        self, most: int = MOST_TEXT, *, least: int = 0, lines: bool = False, **others: Any
    ) -> None:
        super().__init__(**others)
        self.most = most
        self.least = least
        self.lines = lines

    def _deserialize(
        self, value: Any, attr: str | None, data: Mapping[str, Any] | None, **kwargs: Any
    ) -> Any:
        if not isinstance(value, str):
            raise ma.ValidationError("This is not a text.")
        if len(value) > self.most + 100:
            raise ma.ValidationError(f"Too long. At most {self.most} characters.")
        text = value.replace("\r\n", "\n").strip()
        if len(text) > self.most:
            raise ma.ValidationError(f"Too long. At most {self.most} characters.")
        if len(text) < self.least:
            raise ma.ValidationError("This can't be empty.")
        allowed = {"\n", "\t"} if self.lines else set()
        if any(unicodedata.category(c) in ("Cc", "Cs") and c not in allowed for c in text):
            raise ma.ValidationError("This holds characters that can't be shown.")
        return text


class ToolCode(Text):
    """The code of a tool or metal."""

    def __init__(self, **others: Any) -> None:
        super().__init__(40, least=1, **others)

    def _deserialize(
        self, value: Any, attr: str | None, data: Mapping[str, Any] | None, **kwargs: Any
    ) -> Any:
        code = super()._deserialize(value, attr, data, **kwargs)
        if not re.match(TOOL_CODE, code):
            raise ma.ValidationError(
                "A code is up to 40 letters, digits, points, hyphens and underscores."
            )
        return code


class CardCode(Text):
    """A card's code, as typed."""

    def _deserialize(
        self, value: Any, attr: str | None, data: Mapping[str, Any] | None, **kwargs: Any
    ) -> Any:
        try:
            return codes.parse(super()._deserialize(value, attr, data, **kwargs))
        except InputError as error:
            raise ma.ValidationError(f"{error.what} {error.right}") from None


class DeviceId(Text):
    """An id made by the device: a UUID, written the usual way."""

    def _deserialize(
        self, value: Any, attr: str | None, data: Mapping[str, Any] | None, **kwargs: Any
    ) -> Any:
        text = super()._deserialize(value, attr, data, **kwargs)
        try:
            return str(uuid.UUID(text))
        except ValueError:
            raise ma.ValidationError("This is not a UUID.") from None


class Moment(Text):
    """A moment in ISO 8601 with its offset from UTC; kept in UTC."""

    def _deserialize(
        self, value: Any, attr: str | None, data: Mapping[str, Any] | None, **kwargs: Any
    ) -> Any:
        text = super()._deserialize(value, attr, data, **kwargs)
        try:
            moment = datetime.fromisoformat(text)
            if moment.tzinfo is None:
                raise ValueError
            kept = moment.astimezone(UTC)
        except (ValueError, OverflowError):
            raise ma.ValidationError(
                "This is not a moment. Write it like 2026-05-04T13:30:00Z."
            ) from None
        return kept.isoformat(timespec="milliseconds").replace("+00:00", "Z")


class Whole(ma.fields.Integer):
    """A whole number within bounds; texts only where they come from an address."""

    def __init__(self, low: int, high: int, *, typed: bool = False, **others: Any) -> None:
        bounds = ma.validate.Range(low, high, error=f"Out of range. Give {low} to {high}.")
        super().__init__(strict=True, validate=bounds, **others)
        self.error_messages["invalid"] = "This is not a whole number."
        self.typed = typed

    def _validated(self, value: Any) -> int:
        if self.typed and isinstance(value, str) and re.fullmatch(r"-?[0-9]{1,18}", value):
            value = int(value)
        return super()._validated(value)


class Many(ma.fields.List[Any]):
    """A list of bounded length; a longer one is refused before its members are looked at."""

    def __init__(self, inner: Any, most: int, *, least: int = 0, **others: Any) -> None:
        super().__init__(inner, **others)
        self.most = most
        self.least = least

    def _deserialize(
        self, value: Any, attr: str | None, data: Mapping[str, Any] | None, **kwargs: Any
    ) -> Any:
        if not isinstance(value, list):
            raise ma.ValidationError("This is not a list.")
        if not self.least <= len(value) <= self.most:
            raise ma.ValidationError(
                f"This list has {len(value)} members. Give {self.least} to {self.most}."
            )
        return super()._deserialize(value, attr, data, **kwargs)


class YesNo(ma.fields.Boolean):
    """True or false, nothing that looks like it: marshmallow takes 1 for true in any case."""

    def _deserialize(
        self, value: Any, attr: str | None, data: Mapping[str, Any] | None, **kwargs: Any
    ) -> Any:
        if not isinstance(value, bool):
            raise ma.ValidationError("This is neither true nor false.")
        return value


class Choice(ma.fields.String):
    """One of a few words."""

    def __init__(self, *choices: str, **others: Any) -> None:
        error = f"Give one of: {', '.join(choices)}."
        words = ma.validate.OneOf(choices, error=error)
        super().__init__(validate=words, **others)
        self.error_messages["invalid"] = error
