"""Card codes: seven characters of Crockford base 32, the last a check character.

Written by machine in upper case, read from a hand in any case, with O for 0 and I or L
for 1; spaces and hyphens between are ignored. The check character is a weighted sum over
the field of 32 elements with six different weights, none of them 1, so every single wrong
character and every swap of two unlike characters, neighbours or not, is caught.

Sources: D. Crockford, "Base 32" (the alphabet and the reading of O, I and L; his own check
symbol works modulo 37 and needs five characters that are not in the alphabet, so it is not
used). Weighted sums over a field: ISO/IEC 7064 uses a prime field; GF(32) is the same
argument with as many elements as there are characters.
"""

from __future__ import annotations

import secrets

from flangebook.bending.errors import InputError

ALPHABET = "0123456789ABCDEFGHJKMNPQRSTVWXYZ"
LENGTH = 7
_VALUES = {c: i for i, c in enumerate(ALPHABET)}
_READ_AS = str.maketrans({"O": "0", "I": "1", "L": "1", " ": "", "-": ""})
_MODULUS = 0b100101  # x^5 + x^2 + 1: primitive, so 2 has order 31
_RIGHT = "A card code is seven characters, digits and letters without I, L, O and U."
_MOST_TYPED = 40


def _product(a: int, b: int) -> int:
    """Product of two elements of GF(32)."""
    result = 0
    while b:
        if b & 1:
            result ^= a
        a <<= 1
        if a & 32:
            a ^= _MODULUS
        b >>= 1
    return result


def _weighted() -> tuple[dict[str, int], ...]:
    """For each place, what each character adds to the sum: its value times 2, 4, 8, ..."""
    weight, tables = 1, []
    for _ in range(LENGTH - 1):
        weight = _product(weight, 2)
        tables.append({c: _product(weight, value) for c, value in _VALUES.items()})
    return tuple(tables)


_WEIGHTED = _weighted()


def check_character(body: str) -> str:
    """The check character over the six characters before it.

    >>> check_character("SHE7FA")
    '1'
    """
    total = 0
    for table, character in zip(_WEIGHTED, body, strict=True):
        total ^= table[character]
    return ALPHABET[total]


def with_check(body: str) -> str:
    """A whole code from its first six characters.

    Raises InputError when the body is not six characters of the alphabet.

    >>> with_check("000000")
    '0000000'
    """
    read = plain(body)
    if len(read) != LENGTH - 1 or not all(c in _VALUES for c in read):
        raise InputError(f"{_shown(body)} is not the beginning of a card code.", "code", _RIGHT)
    return read + check_character(read)


def new_code() -> str:
    """A fresh code, drawn at random; whether it is taken already is the shop's to say."""
    return with_check("".join(secrets.choice(ALPHABET) for _ in range(LENGTH - 1)))


def parse(text: str, where: str = "code") -> str:
    """The code that a hand or a scanner gave, as it is kept.

    Raises InputError for what cannot be a code or has a wrong check character.

    >>> parse("she-7fal")
    'SHE7FA1'
    >>> parse("o0oOo00")
    '0000000'
    """
    read = plain(text)
    strange = sorted({c for c in read if c not in _VALUES})
    if strange or len(read) != LENGTH:
        raise InputError(f"{_shown(text)} is not a card code.", where, _RIGHT)
    if check_character(read[:-1]) != read[-1]:
        raise InputError(
            f"{_shown(text)} has a wrong check character: one character is mistyped "
            "or two are swapped.",
            where,
            "Read the code on the label again.",
        )
    return read


def is_code(text: str) -> bool:
    """Whether the text reads as a code with the right check character."""
    try:
        parse(text)
    except InputError:
        return False
    return True


def display(code: str) -> str:
    """The code grouped for the eye.

    >>> display("SHE7FA1")
    'SHE-7FA1'
    """
    return f"{code[:3]}-{code[3:]}"


def plain(text: str) -> str:
    """What a hand typed, in upper case, O as 0, I and L as 1, without spaces and hyphens.

    What is not ASCII stays as it is, so that it is refused.

    >>> plain("abcd-efgo")
    'ABCDEFG0'
    """
    short = text[:_MOST_TYPED].strip()
    return (short.upper() if short.isascii() else short).translate(_READ_AS)


def _shown(text: str) -> str:
    short = text if len(text) <= 20 else text[:20] + "..."
    return f'"{short}"'
