"""The README's pictures show what the app shows."""

from __future__ import annotations

import io
from pathlib import Path

import pytest
from pictures import FOLDER, SCREENS, take, words_of
from PIL import Image


@pytest.mark.parametrize("name", SCREENS)
def test_a_picture_shows_the_screen_as_it_is(name: str, phone, shop_server, demo_codes):
    screen = SCREENS[name]
    fresh = take(phone, shop_server.url, screen, demo_codes[screen.card])
    kept = (FOLDER / name).read_bytes()
    again = "It is out of date: PYTHONPATH=server python tests/browser/pictures.py"
    assert words_of(kept) == words_of(fresh), again
    assert Image.open(io.BytesIO(kept)).size == Image.open(io.BytesIO(fresh)).size, again
    assert len(kept) < 150_000


def test_the_readme_shows_them(root: Path):
    page = (root / "README.md").read_text("utf-8")
    for name in SCREENS:
        assert f"(demo_data/pictures/{name})" in page
