"""Student's t distribution: how likely a value so far out is, and the band's reach.

The tail is a regularised incomplete beta function (Digital Library of Mathematical Functions,
section 8.17; the continued fraction is 8.17.22, from memory). The tests hold both functions
beside the printed NIST table and beside an independent implementation.
"""

from __future__ import annotations

from functools import lru_cache
from math import exp, inf, isnan, lgamma, log, log1p, pi, sqrt
from statistics import NormalDist

from flangebook.bending.errors import InputError

_MOST_TERMS = 500


def tail_probability(t: float, degrees_of_freedom: float) -> float:
    """Probability that a t value lies above ``t`` [-].

    Args:
        t: in units of the scale [-].
        degrees_of_freedom: nu [-], above zero.

    Raises:
        InputError: the degrees of freedom are not above zero, or t is not a number.

    Source: DLMF 8.17 with P(T > t) = I_x(nu/2, 1/2) / 2, x = nu / (nu + t^2).

    >>> round(tail_probability(2.015, 5), 4)  # NIST table: 0.05
    0.05
    """
    if not 0.0 < degrees_of_freedom < inf or isnan(t):
        raise InputError(
            f"t = {t} with {degrees_of_freedom} degrees of freedom cannot be used.",
            "degrees_of_freedom",
            "Give a number above 0.",
        )
    if t < 0.0:
        return 1.0 - tail_probability(-t, degrees_of_freedom)
    square = t * t / degrees_of_freedom
    x, one_less_x = 1.0 / (1.0 + square), square / (1.0 + square)
    return 0.5 * _beta_ratio(degrees_of_freedom / 2.0, 0.5, x, one_less_x)


@lru_cache(maxsize=1024)
def quantile(above: float, degrees_of_freedom: float) -> float:
    """The t value [-] that lies ``above`` this share of all values, 0.5 to under 1.

    Args:
        above: share that lies below the value [-].
        degrees_of_freedom: nu [-], at least 1.

    Raises:
        InputError: outside those ranges.

    >>> round(quantile(0.95, 4), 3), round(quantile(0.95, 1), 3)  # NIST table: 2.132 and 6.314
    (2.132, 6.314)
    """
    if not 0.5 <= above < 1.0 or degrees_of_freedom < 1.0:
        raise InputError(
            f"No t value is sought for {above} with {degrees_of_freedom} degrees of freedom.",
            "above",
            "Give a share of 0.5 to under 1, and at least one degree of freedom.",
        )
    left = 1.0 - above
    # The tail falls ever more slowly, so Newton's steps from a start below never overshoot.
    t = NormalDist().inv_cdf(above)
    for _ in range(200):
        step = (tail_probability(t, degrees_of_freedom) - left) / _density(t, degrees_of_freedom)
        t += step
        if abs(step) <= 1e-10 * (1.0 + t):
            break
    return t


def _density(t: float, nu: float) -> float:
    scale = lgamma((nu + 1.0) / 2.0) - lgamma(nu / 2.0) - 0.5 * log(nu * pi)
    return exp(scale - (nu + 1.0) / 2.0 * log1p(t * t / nu))


def _beta_ratio(a: float, b: float, x: float, one_less_x: float) -> float:
    """I_x(a, b); x and 1 - x are given apart because one of them may be tiny."""
    if x <= 0.0 or one_less_x <= 0.0:
        return 0.0 if x <= 0.0 else 1.0
    if x > (a + 1.0) / (a + b + 2.0):
        return 1.0 - _beta_ratio(b, a, one_less_x, x)
    front = exp(a * log(x) + b * log(one_less_x) + lgamma(a + b) - lgamma(a) - lgamma(b)) / a
    return front * _continued(a, b, x)


def _continued(a: float, b: float, x: float) -> float:
    # As many terms as the size of a asks for, worked from the far end.
    terms = min(_MOST_TERMS, 40 + int(4.0 * sqrt(a + b)))
    value = 1.0
    for m in range(terms, 0, -1):
        even = m * (b - m) * x / ((a + 2 * m - 1) * (a + 2 * m))
        odd = -(a + m - 1) * (a + b + m - 1) * x / ((a + 2 * m - 2) * (a + 2 * m - 1))
        value = 1.0 + odd / (1.0 + even / value)
    return 1.0 / value
