"""The update of a belief, against brute-force integration over a library's density."""

from __future__ import annotations

from itertools import permutations
from math import exp, isfinite, log, pi, sqrt

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy import stats

from flangebook.bending.errors import InputError
from flangebook.bending.learning.conjugate import (
    FIRMNESS_BENDS,
    NormalInverseGamma,
    belief_of_band,
)
from flangebook.bending.learning.student import quantile, tail_probability

values = st.floats(-50.0, 50.0)
weights = st.floats(0.01, 1.0)
weighted = st.lists(st.tuples(values, weights), max_size=12)
beliefs = st.builds(
    NormalInverseGamma,
    st.floats(-10.0, 10.0),
    st.floats(0.05, 5.0),
    st.floats(1.0, 10.0),
    st.floats(0.01, 20.0),
)
CASES = [
    ([(3.0, 1.0), (1.0, 1.0)], NormalInverseGamma(0.0, 1.0, 2.0, 1.0)),
    ([(1.3, 1.0)], NormalInverseGamma(1.0, 0.125, 2.0, 0.01)),
    ([(1.3, 1.0), (0.9, 0.5), (1.1, 0.25)], NormalInverseGamma(1.0, 0.4, 2.0, 0.05)),
]


def by_brute_force(
    prior: NormalInverseGamma, seen: list[tuple[float, float]]
) -> tuple[float, float, float]:
    """Mean of mu, mean of the variance, mean of 1/variance: prior density times likelihood on a
    grid, each likelihood raised to its weight."""
    spread = prior.scale * 60.0
    mu = np.linspace(prior.mean - spread, prior.mean + spread, 3001)[:, None]
    log_s2 = np.linspace(log(prior.beta) - 12.0, log(prior.beta) + 14.0, 1501)[None, :]
    s2 = np.exp(log_s2)
    density = stats.normal_inverse_gamma.logpdf(
        mu, s2, prior.mean, prior.kappa, prior.alpha, prior.beta
    )
    for value, weight in seen:
        density = density + weight * stats.norm.logpdf(value, mu, np.sqrt(s2))
    share = np.exp(density - density.max()) * s2  # d s2 = s2 d log s2
    share = share / share.sum()
    return float((share * mu).sum()), float((share * s2).sum()), float((share / s2).sum())


@pytest.mark.parametrize(("seen", "prior"), CASES)
def test_posterior_is_prior_times_likelihood(seen, prior):
    after = prior.after(seen)
    mean, variance, precision = by_brute_force(prior, seen)
    assert after.mean == pytest.approx(mean, abs=2e-4)
    assert after.alpha / after.beta == pytest.approx(precision, rel=1e-3)
    assert after.beta / (after.alpha - 1.0) == pytest.approx(variance, rel=5e-3)


@pytest.mark.parametrize(("seen", "prior"), CASES)
def test_next_value_follows_the_predictive(seen, prior):
    """The next value's tail, with mean and variance integrated out over the posterior."""
    after = prior.after(seen)
    s2 = np.exp(np.linspace(log(after.beta) - 14.0, log(after.beta) + 14.0, 20001))
    weight = stats.invgamma.pdf(s2, after.alpha, scale=after.beta) * s2
    for out in (0.5, 2.0):
        x = after.mean + out * after.scale
        tails = stats.norm.sf(x, after.mean, np.sqrt(s2 * (1.0 + 1.0 / after.kappa)))
        expected = float((tails * weight).sum() / weight.sum())
        assert tail_probability(out, after.degrees_of_freedom) == pytest.approx(expected, rel=1e-5)


def test_the_worked_case_by_hand():
    """Prior (0, 1, 2, 1), values 3 and 1: kappa 3, mean 4/3, alpha 3, beta 1 + 1 + 4/3."""
    after = NormalInverseGamma(0.0, 1.0, 2.0, 1.0).after([(3.0, 1.0), (1.0, 1.0)])
    assert (after.kappa, after.alpha) == (3.0, 3.0)
    assert after.mean == pytest.approx(4.0 / 3.0)
    assert after.beta == pytest.approx(1.0 + 1.0 + 4.0 / 3.0)


@given(beliefs, weighted, weighted)
def test_one_after_another_or_all_at_once(prior, first, second):
    step_by_step, at_once = prior.after(first).after(second), prior.after([*first, *second])
    assert step_by_step.mean == pytest.approx(at_once.mean, abs=1e-9)
    assert step_by_step.kappa == pytest.approx(at_once.kappa)
    assert step_by_step.alpha == pytest.approx(at_once.alpha)
    assert step_by_step.beta == pytest.approx(at_once.beta, rel=1e-9, abs=1e-9)


@given(beliefs, st.lists(st.tuples(values, weights), min_size=1, max_size=4))
def test_order_does_not_matter_to_the_last_digit(prior, seen):
    assert {prior.after(order) for order in permutations(seen)} == {prior.after(seen)}


@given(beliefs, weighted)
def test_a_belief_stays_a_belief(prior, seen):
    after = prior.after(seen)
    assert all(map(isfinite, (after.mean, after.kappa, after.alpha, after.beta)))
    assert after.half_width > 0.0
    lowest = min([prior.mean, *(value for value, _ in seen)])
    highest = max([prior.mean, *(value for value, _ in seen)])
    assert lowest - 1e-9 <= after.mean <= highest + 1e-9


@given(beliefs, st.integers(1, 40))
def test_agreeing_values_narrow_the_band_each_time(prior, count):
    fewer = prior.after([(prior.mean, 1.0)] * (count - 1))
    more = prior.after([(prior.mean, 1.0)] * count)
    assert more.half_width < fewer.half_width
    assert more.mean == pytest.approx(prior.mean, abs=1e-12)


@given(beliefs, st.floats(5.0, 50.0))
def test_contradicting_values_widen_it(prior, apart):
    out = apart * prior.half_width
    after = prior.after([(prior.mean - out, 1.0), (prior.mean + out, 1.0)])
    assert after.half_width > prior.half_width
    assert after.mean == pytest.approx(prior.mean, abs=1e-6 * out)


@given(beliefs)
def test_no_weight_teaches_nothing(prior):
    assert prior.after([(1e6, 0.0)]) is prior
    assert prior.after([]) is prior


@given(st.floats(-5.0, 5.0), st.floats(1e-3, 50.0), st.floats(1e-4, 5.0))
def test_band_and_back(nominal, half, scatter):
    belief = belief_of_band(nominal, half, scatter)
    assert belief.half_width == pytest.approx(half, rel=1e-9)
    assert belief.mean == nominal


def test_first_trial_takes_most_of_the_way_when_the_expectation_is_vague():
    """Scatter a third of the whole: kappa 1/8, so one trial moves the mean by 8/9."""
    third = 0.4 / quantile(0.95, FIRMNESS_BENDS) / 3.0
    after = belief_of_band(1.0, 0.4, third).after([(1.3, 1.0)])
    assert after.mean == pytest.approx(1.0 + 0.3 * 8.0 / 9.0)


@given(st.floats(0.01, 10.0))
def test_first_trial_moves_half_the_way_at_least(scatter):
    after = belief_of_band(1.0, 0.4, scatter).after([(1.3, 1.0)])
    assert 1.15 - 1e-9 <= after.mean < 1.3


def test_nine_in_ten_of_drawn_values_fall_in_the_band():
    """Truth drawn from the prior, three bends seen, the fourth in the band: nine times in ten."""
    draw = np.random.default_rng(7)
    prior = belief_of_band(0.0, 1.0, 0.2)
    inside, runs = 0, 4000
    for _ in range(runs):
        s2 = prior.beta / draw.gamma(prior.alpha)
        mu = draw.normal(prior.mean, sqrt(s2 / prior.kappa))
        *seen, then = draw.normal(mu, sqrt(s2), 4)
        after = prior.after([(float(value), 1.0) for value in seen])
        inside += abs(then - after.mean) <= after.half_width
    assert inside / runs == pytest.approx(0.9, abs=0.015)  # three standard errors


@pytest.mark.parametrize(
    "pair", [(float("nan"), 1.0), (float("inf"), 1.0), (1.0, 1.5), (1.0, -0.1)]
)
def test_refuses_what_teaches_nothing(pair):
    with pytest.raises(InputError):
        NormalInverseGamma(0.0, 1.0, 2.0, 1.0).after([pair])


@given(st.floats(-40.0, 40.0), st.floats(1.0, 300.0))
def test_tail_beside_an_independent_one(t, nu):
    assert tail_probability(t, nu) == pytest.approx(float(stats.t.sf(t, nu)), rel=1e-8)


@given(st.floats(0.5, 0.9999), st.floats(1.0, 300.0))
def test_quantile_beside_an_independent_one(above, nu):
    assert quantile(above, nu) == pytest.approx(float(stats.t.ppf(above, nu)), rel=1e-7, abs=1e-8)


def test_density_of_the_library_is_the_one_written_down():
    """The formula in its documentation, so that the brute force above rests on that."""
    x, s2, mu, lam, a, b = 0.7, 0.4, 0.2, 1.5, 2.0, 0.8
    by_hand = (
        sqrt(lam) / sqrt(2.0 * pi * s2) * b**a / 1.0 * (1.0 / s2) ** (a + 1.0)
        * exp(-(2.0 * b + lam * (x - mu) ** 2) / (2.0 * s2))
    )  # fmt: skip  # gamma(2) = 1
    assert float(stats.normal_inverse_gamma.pdf(x, s2, mu, lam, a, b)) == pytest.approx(by_hand)
