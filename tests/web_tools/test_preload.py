"""The page names ahead what a card needs, so that a scanned card does not wait for one module
to name the next."""

from __future__ import annotations

import re
from pathlib import Path

WEB = Path(__file__).resolve().parents[2] / "web"
STARTS = ("/app/main.js", "/screens/card.js")
IMPORT = re.compile(
    r'^(?:import|export)\s+(?:[\w*{][^"\';=()]*?\sfrom\s+)?"([^"]+)";', re.MULTILINE
)
PRELOAD = re.compile(r'<link rel="modulepreload" href="([^"]+)">')


def imports(module: str) -> set[str]:
    """What a module imports at once (not what it loads later), as addresses."""
    file = WEB / module.removeprefix("/")
    folder = file.parent
    return {
        name
        if name.startswith("/")
        else f"/{(folder / name).resolve().relative_to(WEB).as_posix()}"
        for name in IMPORT.findall(file.read_text(encoding="utf-8"))
    }


def needed() -> set[str]:
    found: set[str] = set()
    waiting = list(STARTS)
    while waiting:
        module = waiting.pop()
        if module not in found:
            found.add(module)
            waiting.extend(imports(module))
    return found


def test_imports_are_read() -> None:
    assert "/app/router.js" in imports("/app/main.js")
    assert "/vendor/lit-html/lit-html.js" in imports("/app/router.js")


def test_the_page_preloads_what_a_card_needs_and_nothing_else() -> None:
    page = (WEB / "index.html").read_text(encoding="utf-8")
    assert set(PRELOAD.findall(page)) == needed()
