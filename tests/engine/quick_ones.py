"""Which cases of a test with many ``tests/run --quick`` keeps."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Any

import pytest


def but_for(kept: Iterable[Any], every: Iterable[Any]) -> list[Any]:
    """Every value of a parameter, marked slow but for those that are kept."""
    quick = list(kept)
    values = [v if v in quick else pytest.param(v, marks=pytest.mark.slow) for v in every]
    assert sum(v in quick for v in values) == len(quick), "a case that is kept is there"
    return values
