"""Roots of many equations at once, each between its own bounds."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING

import numpy as np

from flangebook.bending.compiled import kernel

if TYPE_CHECKING:
    import numpy.typing as npt

    Array = npt.NDArray[np.float64]
    Bools = npt.NDArray[np.bool_]

MOST_ROUNDS = 100


class NoRootError(ArithmeticError):
    """An equation has no change of sign between its bounds, or did not settle."""


def roots(
    function: Callable[[Array], Array],
    low: Array,
    high: Array,
    at_low: Array | None = None,
    at_high: Array | None = None,
    skip: Bools | None = None,
    tolerance: float = 1e-9,
) -> Array:
    """Where each component of a function is zero between two bounds.

    Inverse quadratic interpolation where it is safe, halving where it is not.

    Args:
        function: takes and returns one value an equation.
        low: bounds on one side.
        high: bounds on the other side.
        at_low: the function at ``low``, where it is known.
        at_high: the function at ``high``, where it is known.
        skip: equations that need no answer; theirs means nothing.
        tolerance: of the answer, as a share of the width of the bounds.

    Raises:
        NoRootError: a function has the same sign at both bounds.

    Source: T. R. Chandrupatla, Advances in Engineering Software 28 (1997), pp. 145-149.

    >>> [round(float(x), 6) for x in roots(lambda x: x**2 - np.array([2.0, 9.0]),
    ...                                    np.zeros(2), np.full(2, 10.0))]
    [1.414214, 3.0]
    """
    a, b = high.astype(float), low.astype(float)
    fa = function(a) if at_high is None else at_high
    fb = function(b) if at_low is None else at_low
    if skip is not None:
        fa, fb = np.where(skip, 0.0, fa), np.where(skip, 0.0, fb)
    if np.any(fa * fb > 0.0) or not np.all(np.isfinite(fa) & np.isfinite(fb)):
        raise NoRootError("no change of sign between the bounds")
    c, fc = a.copy(), fa.copy()
    width = np.abs(high - low) * tolerance + 1e-300
    t = np.full_like(a, 0.5)
    for _ in range(MOST_ROUNDS):
        x = a + t * (b - a)
        fx = function(x)
        if skip is not None:
            fx = np.where(skip, 0.0, fx)
        same = np.sign(fx) == np.sign(fa)
        c, fc = np.where(same, a, b), np.where(same, fa, fb)
        b, fb = np.where(same, b, a), np.where(same, fb, fa)
        a, fa = x, fx
        best = np.where(np.abs(fa) < np.abs(fb), a, b)
        span = np.abs(b - a)
        if np.all((span < 2.0 * width) | (fa == 0.0) | (fb == 0.0)):
            return best
        _next_shares(np.array([a, b, c]), np.array([fa, fb, fc]), t)
        t = np.clip(t, width / np.maximum(span, 1e-300), 1.0 - width / np.maximum(span, 1e-300))
        t = np.where(span < 2.0 * width, 0.5, t)
    raise NoRootError("the equations did not settle")


@kernel
def next_share(a: float, b: float, c: float, fa: float, fb: float, fc: float) -> float:
    """Where between a (0) and b (1) to try next [-].

    Source: T. R. Chandrupatla, Advances in Engineering Software 28 (1997), pp. 145-149.

    >>> next_share(0.0, 1.0, 2.0, -1.0, 1.0, 3.0)  # a straight line: its root lies half-way
    0.5
    """
    xi, phi = (a - b) / (c - b), (fa - fb) / (fc - fb)
    if not (phi * phi < xi and (1.0 - phi) * (1.0 - phi) < 1.0 - xi):
        return 0.5
    return fa / (fb - fa) * fc / (fb - fc) + (c - a) / (b - a) * fa / (fc - fa) * fb / (fc - fb)


@kernel
def _next_shares(points: Array, values: Array, shares: Array) -> None:
    """:func:`next_share` of each column."""
    for i in range(len(shares)):
        a, b, c = points[0, i], points[1, i], points[2, i]
        shares[i] = next_share(a, b, c, values[0, i], values[1, i], values[2, i])
