"""What is believed of a value that scatters: mean and variance both unknown, and the update.

A value x is normal with mean mu and variance s2. The belief is normal-inverse-gamma:

    s2 ~ inverse gamma(alpha, beta),   mu | s2 ~ normal(mu_0, s2 / kappa)

After values x_i, each counted with a weight w_i from 0 to 1 (n = sum of w_i, xbar their
weighted mean), it is normal-inverse-gamma again:

    kappa_n = kappa + n                mu_n = (kappa mu_0 + n xbar) / (kappa + n)
    alpha_n = alpha + n / 2
    beta_n  = beta + 1/2 sum w_i (x_i - xbar)^2 + kappa n (xbar - mu_0)^2 / (2 (kappa + n))

and the next value is Student t with 2 alpha_n degrees of freedom about mu_n, its scale
squared beta_n (kappa_n + 1) / (alpha_n kappa_n).

Sources: the density, SciPy's documentation of ``normal_inverse_gamma``; update and predictive,
K. P. Murphy, Conjugate Bayesian analysis of the Gaussian distribution, 2007, as documentation
of statistical libraries prints them (the paper's own equations could not be read). Weights:
the power prior, a likelihood raised to a power from 0 to 1, of J. G. Ibrahim and M.-H. Chen, as
described in arXiv 2404.02453. The tests integrate numerically and get the same.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from math import fsum, inf, sqrt

from flangebook.bending.errors import InputError
from flangebook.bending.learning.student import quantile
from flangebook.bending.limits import need_positive

NINE_IN_TEN = 0.95  # a twentieth of all values lies beyond either end of a band
# How firm an expectation is; common practice, no source. The scatter from bend to bend is known
# as well as from 4 bends. It is at most so large a share of what a first bend is uncertain by
# that the first trial moves the expectation half the way.
FIRMNESS_BENDS = 4.0
MOST_SCATTER_SHARE = sqrt(0.5)


@dataclass(frozen=True, slots=True)
class NormalInverseGamma:
    """The belief; the module says what the four mean."""

    mean: float
    kappa: float
    alpha: float
    beta: float

    def __post_init__(self) -> None:
        need_positive(kappa=self.kappa, alpha=self.alpha, beta=self.beta)
        if not -inf < self.mean < inf:
            raise InputError(f"{self.mean} cannot be used.", "mean", "Give a number.")

    @property
    def degrees_of_freedom(self) -> float:
        """Of the Student t that the next value follows [-]."""
        return 2.0 * self.alpha

    @property
    def scale(self) -> float:
        """Of the Student t that the next value follows, in the value's unit."""
        return sqrt(self.beta * (self.kappa + 1.0) / (self.alpha * self.kappa))

    @property
    def half_width(self) -> float:
        """Half the band that nine in ten of the next values fall in."""
        return self.scale * quantile(NINE_IN_TEN, self.degrees_of_freedom)

    def after(self, weighted: Iterable[tuple[float, float]]) -> NormalInverseGamma:
        """The belief after values, each as (value, weight from 0 to 1).

        The sums are exact, so the order of the values changes nothing, not even the last digit.

        Raises:
            InputError: a value is not a number or a weight is not from 0 to 1.

        >>> start = NormalInverseGamma(0.0, 1.0, 2.0, 1.0)
        >>> start.after([(3.0, 1.0), (1.0, 1.0)])
        NormalInverseGamma(mean=1.3333333333333333, kappa=3.0, alpha=3.0, beta=3.333333333333333)
        """
        pairs = [(value, weight) for value, weight in weighted if _counts(value, weight)]
        n = fsum(weight for _, weight in pairs)
        if n == 0.0:
            return self
        mean = fsum(weight * value for value, weight in pairs) / n
        scatter = fsum(weight * (value - mean) ** 2 for value, weight in pairs)
        return self.after_sums(n, mean, scatter)

    def after_sums(self, n: float, mean: float, scatter: float) -> NormalInverseGamma:
        """The belief after n values in all, of that mean and that sum of squares about it."""
        kappa = self.kappa + n
        # Written as a step from the old mean, so that agreeing values leave it there.
        step = mean - self.mean
        return NormalInverseGamma(
            self.mean + n / kappa * step,
            kappa,
            self.alpha + n / 2.0,
            self.beta + 0.5 * scatter + 0.5 * self.kappa * n / kappa * step**2,
        )


def belief_of_band(nominal: float, half_width: float, scatter: float) -> NormalInverseGamma:
    """The belief whose next value falls within nominal +- half_width nine times in ten.

    Args:
        nominal: middle of the band.
        half_width: half the band.
        scatter: standard deviation from bend to bend of one sheet, readings included. Where it
            is most of the band already, there is less to learn and a trial moves the mean less.

    Raises:
        InputError: half_width or scatter is not above zero.

    >>> round(belief_of_band(1.0, 0.4, 0.01).half_width, 9)
    0.4
    """
    need_positive(half_width=half_width, scatter=scatter)
    whole = half_width / quantile(NINE_IN_TEN, FIRMNESS_BENDS)
    share = min(scatter / whole, MOST_SCATTER_SHARE)
    alpha = FIRMNESS_BENDS / 2.0
    return NormalInverseGamma(
        nominal, share**2 / (1.0 - share**2), alpha, alpha * (share * whole) ** 2
    )


def _counts(value: float, weight: float) -> bool:
    if not (-inf < value < inf and 0.0 <= weight <= 1.0):
        raise InputError(
            f"A value of {value} with a weight of {weight} teaches nothing.",
            "weight",
            "The weight is from 0 to 1.",
        )
    return weight > 0.0
