"""Card codes: typed by hand without doubt."""

from __future__ import annotations

import itertools
import random

import pytest

from flangebook.bending.errors import InputError
from flangebook.labels.codes import ALPHABET, check_character, display, is_code, new_code, parse
from flangebook.labels.codes import with_check as whole

_DRAWN = random.Random(60)
BODIES = [
    "000000",
    "ZZZZZZ",
    "SHE7FA",
    *("".join(_DRAWN.choices(ALPHABET, k=6)) for _ in range(60)),
]


def test_alphabet_is_crockfords():
    assert len(ALPHABET) == 32
    assert set("ILOU").isdisjoint(ALPHABET)


@pytest.mark.parametrize("body", BODIES)
def test_every_single_wrong_character_is_caught(body: str):
    code = whole(body)
    wrong = [
        code[:i] + other + code[i + 1 :] for i in range(7) for other in ALPHABET if other != code[i]
    ]
    assert len(wrong) == 7 * 31
    assert not any(is_code(w) for w in wrong)


def test_every_swap_of_two_characters_is_caught_for_every_pair():
    """The sum is linear, so the pairs decide, whatever the other characters are."""
    for place in range(6):
        for a, b in itertools.permutations(ALPHABET, 2):
            body = ["7"] * 6
            body[place] = a
            if place < 5:
                body[place + 1] = b
                code = whole("".join(body))
            else:  # the last pair holds the check character: find bodies that end in a, b
                code = _code_ending_in(a, b)
            swapped = code[:place] + code[place + 1] + code[place] + code[place + 2 :]
            assert is_code(code)
            assert not is_code(swapped), (code, swapped)


def _code_ending_in(a: str, b: str) -> str:
    return next(
        f"0000{first}{a}{b}" for first in ALPHABET if check_character(f"0000{first}{a}") == b
    )


def test_swaps_of_distant_characters_are_caught_too():
    rng = random.Random(7)
    for _ in range(2000):
        code = whole("".join(rng.choices(ALPHABET, k=6)))
        i, j = sorted(rng.sample(range(7), 2))
        swapped = list(code)
        swapped[i], swapped[j] = swapped[j], swapped[i]
        assert code[i] == code[j] or not is_code("".join(swapped))


def test_any_case_and_the_letters_read_as_digits():
    code = whole("01A01A")
    for typed in (code.lower(), code.replace("0", "o").replace("1", "l"), f" {display(code)} ",
                  code.replace("0", "O").replace("1", "i")):  # fmt: skip
        assert parse(typed) == code


@pytest.mark.parametrize(
    "typed",
    ["", "ABC", "ABCDEFGH", "ABCDEFU", "ABCD<F7", "ABCDEF\u00df", "SHE7FA\u0131", "a" * 10_000],
)
def test_what_cannot_be_a_code_is_refused_with_words(typed: str):
    with pytest.raises(InputError) as caught:
        parse(typed)
    assert "card code" in str(caught.value)
    assert len(str(caught.value)) < 300


def test_a_wrong_check_character_says_so():
    with pytest.raises(InputError, match="wrong check character"):
        parse("SHE7FA2")


def test_new_codes_differ_and_are_right():
    codes = {new_code() for _ in range(200)}
    assert len(codes) == 200
    assert all(parse(c) == c for c in codes)


def test_a_body_must_be_six_characters_of_the_alphabet():
    for body in ("12345", "1234567", "12345U"):
        with pytest.raises(InputError):
            whole(body)
