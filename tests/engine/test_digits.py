"""Sentences show as many digits as a press is set to and a protractor is read to."""

from __future__ import annotations

import re

import pytest
from hypothesis import given
from hypothesis import strategies as st

from flangebook.bending.checks import Check, degrees, fill
from flangebook.planning.answers.learned_json import figure_sentences
from flangebook.planning.answers.no_setting import error_words


@given(st.floats(-180.0, 180.0))
def test_no_angle_in_a_sentence_has_more_than_a_tenth(angle):
    """Seen: "2.56 degrees too open"."""
    for words in (fill("{x_deg}", {"x_deg": angle}), error_words(0.0, angle)):
        for digits in re.findall(r"\d+\.(\d+)", words):
            assert len(digits) == 1, words
        assert "-0°" not in words


@given(st.floats(0.06, 100.0))
def test_an_angle_that_is_off_is_never_off_by_nothing(angle):
    assert not error_words(0.0, angle).startswith("0°")


@pytest.mark.parametrize(
    ("value", "words"), [(2.56, "2.6"), (134.64, "134.6"), (90.0, "90"), (-0.04, "0")]
)
def test_degrees(value, words):
    assert degrees(value) == words


def test_a_findings_words_and_its_remedy_are_one_sentence_with_its_numbers_apart():
    check = Check("caution", "x", "It is {a_mm}.", "Make it {b_deg}.", {"a_mm": 2.0, "b_deg": 3.16})
    assert check.whole.words == "It is 2 mm. Make it 3.2°."
    assert check.whole.numbers == check.numbers


def test_what_a_result_taught_stays_as_it_is_shown():
    band = {"low": 1.02, "nominal": 2.01, "high": 3.0}
    same = {"low": 0.98, "nominal": 2.04, "high": 3.04}
    (said,) = figure_sentences(
        [{"what": "springback", "before": band, "after": same, "unit": "deg", "trials": 1}]
    )
    assert said.words == "The springback stays 2° (1° to 3°), by 1 result."
