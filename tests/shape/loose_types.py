"""What the web's JSDoc leaves open: the types that switch the type checker off."""

from __future__ import annotations

import re
from collections.abc import Iterable
from pathlib import Path

from shape.imports import web_files

_COMMENT = re.compile(r"/\*\*.*?\*/", re.DOTALL)
_TAG = re.compile(r"@\w+\s*(?=\{)")
_LOOSE = re.compile(r"\bany\b|\bFunction\b|(?<![\w.])\*(?![\w/])")


def types_in(comment: str) -> list[str]:
    """The types of a comment's tags: what stands in their braces."""
    plain = re.sub(r"\n\s*\*", "\n", comment)
    return [_braced(plain[tag.end() :]) for tag in _TAG.finditer(plain)]


def _braced(text: str) -> str:
    depth = 0
    for place, sign in enumerate(text):
        depth += {"{": 1, "}": -1}.get(sign, 0)
        if not depth:
            return text[1:place]
    return text


def loose(comment: str) -> int:
    """How often a comment switches the type checker off."""
    # What stands between quotes is a text: "any" is no type there.
    types = [re.sub(r'"[^"]*"', "", one) for one in types_in(comment)]
    return sum(len(_LOOSE.findall(one)) for one in types)


def typed_comments(web: Path) -> Iterable[tuple[str, str]]:
    """Every comment of the app that may hold a type, with its file's name."""
    for file in web_files(web):
        for comment in _COMMENT.findall(file.read_text("utf-8")):
            yield file.relative_to(web).as_posix(), comment
