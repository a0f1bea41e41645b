"""The shop over its own https, under a name that is not localhost, and browsers that trust it.

The browser is started in a home of its own, whose certificate store holds the shop's
authority and nothing else: no flag tells it to overlook anything.
"""

from __future__ import annotations

import os
import subprocess
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any

from browsing import by_test, call, wait_ready
from playwright.sync_api import Browser, BrowserType, Page, expect
from shop_process import ShopProcess

NAME = "shop.home.arpa"


class SecureShop(ShopProcess):
    """A server with --lan; ``url`` is the owner's door, ``https`` the one for the network."""

    def __init__(self, data: Path, *more: str) -> None:
        super().__init__(data, "--lan", "--shop", "Oak & Iron", "--host", NAME, *more)
        self.name = NAME

    @property
    def https(self) -> str:
        """What a phone opens."""
        return f"https://{self.name}:{self.port + 1}"

    @property
    def http(self) -> str:
        """Where a phone begins."""
        return f"http://{self.name}:{self.port + 2}"

    @property
    def authority(self) -> Path:
        """The certificate to trust."""
        return self.data / "https/authority.crt"

    def code(self, role: str) -> str:
        """A pairing code, offered at the server's own screen."""
        offered = call(f"{self.url}/api/v1/pairings", "POST", {"role": role})
        return str(offered["code"])


@contextmanager
def trusting(
    browser_type: BrowserType, home: Path, authority: Path, launch: dict[str, Any], *flags: str
) -> Iterator[Browser]:
    """A browser in a home of its own that trusts the authority."""
    store = home / ".pki/nssdb"
    store.mkdir(parents=True)
    tool = ["certutil", "-d", f"sql:{store}"]
    subprocess.run([*tool, "-N", "--empty-password"], check=True)
    put = ["-A", "-t", "C,,", "-n", "shop", "-i", str(authority)]
    subprocess.run([*tool, *put], check=True)
    rule = f"--host-resolver-rules=MAP {NAME} 127.0.0.1"
    browser = browser_type.launch(
        **{**launch, "args": [*launch["args"], rule, *flags]},
        env={**os.environ, "HOME": str(home)},
    )
    try:
        yield browser
    finally:
        browser.close()


def pair(page: Page, shop: SecureShop, role: str, name: str) -> Page:
    """Pair the page's device as somebody would: with a code that the owner's screen shows."""
    page.goto(f"{shop.https}/pair")
    wait_ready(page, "pair")
    by_test(page, "pair-code").fill(shop.code(role))
    by_test(page, "pair-name").fill(name)
    by_test(page, "pair").click()
    wait_ready(page, "home")
    expect(by_test(page, "card").first).to_be_visible()
    return page
