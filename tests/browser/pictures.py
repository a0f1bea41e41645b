"""The README's pictures: screens of the demo shop, each with its words kept in the file.

    PYTHONPATH=server python tests/browser/pictures.py

makes them again, in the project's environment; ``test_pictures.py`` says when that is due.
"""

from __future__ import annotations

import io
import os
import re
import shutil
import tempfile
from dataclasses import dataclass
from pathlib import Path

from browsing import PHONE, call, show
from PIL import Image
from PIL.PngImagePlugin import PngInfo
from playwright.sync_api import Page, ViewportSize, sync_playwright

DESK = {"width": 1280, "height": 860}
FOLDER = Path(__file__).parents[2] / "demo_data/pictures"


@dataclass(frozen=True, slots=True)
class Screen:
    """A screen of the demo shop. card: its title; ready: the name that the screen says."""

    card: str
    address: str
    ready: str
    size: dict[str, int]


SCREENS = {
    "step.png": Screen("Cable cover, hat section", "/c/{code}/step/2", "step", PHONE),
    "plan.png": Screen("Tiered book display, six bends", "/part?from={code}", "part", DESK),
}


def take(page: Page, shop: str, screen: Screen, code: str) -> bytes:
    """A picture of the screen as PNG; its text chunk "words" holds what can be read there."""
    page.set_viewport_size(ViewportSize(**screen.size))
    show(page, shop + screen.address.format(code=code), screen.ready)
    page.evaluate("document.fonts.ready")
    words = PngInfo()
    words.add_text("words", re.sub(r"\s+", " ", page.locator("main").inner_text()).strip())
    drawn = Image.open(io.BytesIO(page.screenshot()))
    small = drawn.convert("RGB").quantize(128, dither=Image.Dither.NONE)
    file = io.BytesIO()
    small.save(file, "PNG", optimize=True, pnginfo=words)
    return file.getvalue()


def words_of(picture: bytes) -> str:
    """What could be read on the screen when the picture was taken."""
    return str(Image.open(io.BytesIO(picture)).info["words"])


def main() -> None:
    """Take all of them anew."""
    from shop_process import ShopProcess

    from flangebook.api.app import close_app
    from flangebook.serving.shop_server import open_shop

    FOLDER.mkdir(exist_ok=True)
    chromium = os.environ.get("CHROMIUM") or shutil.which("chromium")
    with tempfile.TemporaryDirectory() as data, sync_playwright() as playwright:
        close_app(open_shop(Path(data), FOLDER.parent))
        server = ShopProcess(Path(data)).start()
        cards = call(f"{server.url}/api/v1/cards?limit=200")["cards"]
        codes = {card["title"]: card["code"] for card in cards}
        browser = playwright.chromium.launch(executable_path=chromium, chromium_sandbox=False)
        page = browser.new_page(locale="en-GB")
        for name, screen in SCREENS.items():
            (FOLDER / name).write_bytes(take(page, server.url, screen, codes[screen.card]))
        browser.close()
        server.stop()


if __name__ == "__main__":
    main()
