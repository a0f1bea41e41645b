"""WebKit, as half of the phones have it: Debian's, driven over WebDriver, shown in memory."""

from __future__ import annotations

import os
import shutil
import subprocess
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any

from selenium import webdriver
from selenium.webdriver.support.ui import WebDriverWait
from selenium.webdriver.webkitgtk.options import Options
from selenium.webdriver.webkitgtk.service import Service

# How long a busy machine may take.
PATIENCE_S = 60.0
PLACES = "/usr/lib"
# Its window is else no narrower than its buttons and the box for the address, 447 px.
NARROW = """
    entry, button, box, headerbar, toolbar * {
        padding: 0; margin: 0; border: 0; min-width: 0; min-height: 0; font-size: 4px;
    }
"""

# Another screen, waited for in the page: each question from outside takes longer than to draw it.
GO_TO = """
    const [path, ready, done] = arguments;
    history.pushState(null, "", path);
    dispatchEvent(new PopStateEvent("popstate"));
    const look = () => {
      if (document.documentElement.dataset.ready === ready) done();
      else setTimeout(look, 10);
    };
    look();
"""


def browser() -> str | None:
    """The path of WebKit's own small browser, which Debian puts beside the library."""
    return next((str(p) for p in sorted(Path(PLACES).glob("*/webkit2gtk-4.*/MiniBrowser"))), None)


@contextmanager
def screen(home: Path) -> Iterator[dict[str, str]]:
    """A screen in memory; the environment for what is to be shown on it, with all that it keeps
    in an empty folder."""
    look = home / "config/gtk-3.0/gtk.css"
    look.parent.mkdir(parents=True)
    look.write_text(NARROW)
    kept = {f"XDG_{name.upper()}_HOME": str(home / name) for name in ("config", "data", "cache")}
    tell, say = os.pipe()
    command = ["Xvfb", "-displayfd", str(say), "-screen", "0", "1400x1000x24", "-nolisten", "tcp"]
    with subprocess.Popen(command, pass_fds=[say], stderr=subprocess.DEVNULL) as server:
        os.close(say)
        with os.fdopen(tell) as told:
            number = told.readline().strip()
        try:
            yield {**os.environ, **kept, "DISPLAY": f":{number}", "GDK_BACKEND": "x11"}
        finally:
            server.terminate()


class WebKit:
    """One browser with nothing kept from before: such a session is a private window."""

    def __init__(self, environment: dict[str, str]) -> None:
        options = Options()
        options.binary_location = browser() or ""
        options.add_argument("--automation")
        service = Service(shutil.which("WebKitWebDriver"), env=environment)
        self.driver = webdriver.WebKitGTK(options=options, service=service)
        self.size(500)
        self.driver.set_script_timeout(PATIENCE_S)

    def close(self) -> None:
        """End it and all its windows."""
        self.driver.quit()

    def size(self, wide: int, high: int = 900) -> None:
        """Make the window another size [px]; a page that is shown has it then."""
        self.driver.set_window_size(wide, high)
        self.wait(f"innerWidth === {wide}")

    def run(self, script: str, *arguments: Any) -> Any:
        """What a function's body gives in the page."""
        return self.driver.execute_script(script, *arguments)

    def go_to(self, path: str, ready: str) -> None:
        """Show another screen of the app that is open, as Back does: no page is loaded again."""
        self.driver.execute_async_script(GO_TO, path, ready)

    def wait(self, expression: str) -> Any:
        """Wait until something holds in the page; what it comes to."""
        return WebDriverWait(self.driver, PATIENCE_S, poll_frequency=0.02).until(
            lambda _: self.run(f"return {expression}"), f"never: {expression}"
        )

    def show(self, address: str, ready: str) -> None:
        """Open an address and wait until its data is on the screen."""
        self.driver.get(address)
        self.wait(f"document.documentElement.dataset.ready === '{ready}'")

    def state(self, name: str) -> str | None:
        """What the app says of itself on the page's root."""
        return self.run("return document.documentElement.dataset[arguments[0]] ?? null", name)

    def words(self, name: str) -> str:
        """The words of an element, once it is there."""
        return str(self.wait(f"document.querySelector('[data-test=\"{name}\"]')?.textContent"))

    def press(self, name: str) -> None:
        """Press a button or link, once it is there."""
        self.words(name)
        self.run(f"document.querySelector('[data-test=\"{name}\"]').click()")

    def fill(self, name: str, text: str) -> None:
        """Type into a box, once it is there."""
        self.wait(f"document.querySelector('[data-test=\"{name}\"]') !== null")
        box = self.driver.find_element("css selector", f'[data-test="{name}"]')
        box.clear()
        box.send_keys(text)

    def sideways(self) -> float:
        """How far the page is wider than the window [px]."""
        return float(self.run("return document.documentElement.scrollWidth - innerWidth"))
