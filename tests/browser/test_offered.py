"""What a device may not do is not offered: over the shop's https, as owner, operator and bench
screen. A screen's own words and links are gone through, not a list of what we think they are."""

from __future__ import annotations

from collections.abc import Callable

import pytest
from browsing import GO, SILENCE, WIDE, by_test, call, show, wait_ready
from playwright.sync_api import Page, Response, expect
from secure import SecureShop, pair

CARD = "STEP6BQ"
# Every control that ends in something only the owner may ask, by the name screens give it.
OWNERS = [
    "edit", "take-fresh", "use-order", "let-it-choose", "resolve", "bring-back", "put-back", "keep",
    "save", "add", "take-out", "to-crew", "to-backups", "to-test-bend", "forget", "remember",
    "remove-press-screen",
]  # fmt: skip
MAY_SAVE = {"note", "result"}  # screens whose "save" is an operator's too
# A link's screen, and what tells two of one screen apart: the rest may be any card or tool.
SCREENS = """async () => {
  const { match } = await import("/app/shell/routes.js");
  const found = [];
  for (const link of document.querySelectorAll("header a[href], main a[href]")) {
    const { origin, pathname, search } = new URL(link.href);
    const there = origin === location.origin && !link.download && match(pathname);
    if (there) found.push([`${there.route.name} ${there.params.kind ?? ""}`, pathname + search]);
  }
  return found;
}"""


@pytest.fixture
def refused() -> list[str]:
    """What the shop answered with 403, filled by ``watched``."""
    return []


@pytest.fixture
def new(
    device: Callable[..., Page], secure_shop: SecureShop, refused: list[str], console
) -> Callable[[str], Page]:
    """A wide device of a role, paired; whatever is refused to it is written down."""
    console.expect("401")

    def made(role: str) -> Page:
        page = device(WIDE)

        def hear(answer: Response) -> None:
            if answer.status == 403:
                refused.append(f"{role}: {answer.request.method} {answer.url}")

        pair(page, secure_shop, role, f"{role} device")
        page.on("response", hear)
        return page

    return made


def gone_through(page: Page) -> dict[str, set[str]]:
    """Every screen that can be reached by links, and the controls that each shows."""
    seen: dict[str, set[str]] = {}
    waiting = [("home ", "/"), ("card ", f"/c/{CARD}")]
    while waiting:
        key, address = waiting.pop()
        if key in seen:
            continue
        page.evaluate(GO, address)
        page.wait_for_selector("html[data-ready]")
        ready = page.evaluate("document.documentElement.dataset.ready")
        assert ready not in ("failed", "not-yours", "nowhere"), (address, ready)
        names = "[...document.querySelectorAll('main [data-test]')].map(e => e.dataset.test)"
        seen[key] = set(page.evaluate(names))
        waiting += [(one, href) for one, href in page.evaluate(SCREENS) if one not in seen]
    page.wait_for_load_state("networkidle")
    return seen


def says_whose(page: Page, address: str, whose: str) -> None:
    """An address of somebody else's screen, opened all the same."""
    page.evaluate(GO, address)
    expect(by_test(page, "not-yours")).to_contain_text(whose)


def owners_in(seen: dict[str, set[str]]) -> set[str]:
    return {
        f"{key}: {name}"
        for key, names in seen.items()
        for name in names & set(OWNERS)
        if not (name == "save" and key.split()[0] in MAY_SAVE)
    }


def test_an_operator_is_offered_what_works_and_nothing_of_the_owners(
    new: Callable[[str], Page], secure_shop: SecureShop, refused: list[str]
):
    page = new("operator")
    seen = gone_through(page)
    assert owners_in(seen) == set()
    assert {
        "home ", "scan ", "card ", "step ", "result ", "note ", "history ", "label ", "print ",
        "bend ", "part ", "shop ", "press ", "chart ", "labels ", "learned ", "settings ",
        "tools punches", "tools dies", "tools metals", "tool punches", "tool dies", "tool metals",
    } <= set(seen)  # fmt: skip
    assert not {"crew ", "backups ", "test-bend ", "resolve "} & set(seen)
    for address in ("/crew", "/backups", "/shop/test-bend", "/shop/dies/+", f"/c/{CARD}/resolve"):
        says_whose(page, address, "This is for the owner")
    assert refused == []
    show(page, f"{secure_shop.https}/c/{CARD}/note", "note")
    expect(by_test(page, "title")).to_have_count(0)
    by_test(page, "note").fill("Oil the die.")
    by_test(page, "save").click()
    wait_ready(page, "card")
    page.wait_for_selector("html[data-waiting='0']")
    assert call(f"{secure_shop.url}/api/v1/cards/{CARD}")["note"] == "Oil the die."
    show(page, f"{secure_shop.https}/c/{CARD}/result/1", "result")
    page.locator("#measured_deg").fill("91.5")
    by_test(page, "save").click()
    expect(by_test(page, "sent")).to_be_visible()
    expect(by_test(page, "owners")).to_contain_text("The owner can make this")
    expect(by_test(page, "keep")).to_have_count(0)
    assert refused == []


def test_a_press_screen_is_offered_what_works_and_nothing_else(
    new: Callable[[str], Page], secure_shop: SecureShop, refused: list[str]
):
    page = new("bench")
    seen = gone_through(page)
    assert owners_in(seen) == set()
    assert {"home ", "card ", "step ", "history ", "shop ", "tools dies", "tool dies"} <= set(seen)
    others = {"crew ", "backups ", "test-bend ", "resolve ", "bend ", "part ", "note ", "result "}
    assert not (others | {"chart ", "labels ", "learned "}) & set(seen)
    for address in ("/part", "/chart", f"/c/{CARD}/note", f"/c/{CARD}/result/1"):
        says_whose(page, address, "This is for the crew")
    show(page, f"{secure_shop.https}/shop/dies/V32", "tool")
    expect(by_test(page, "v_opening_mm")).to_be_disabled()
    expect(page.locator(".outlines svg")).to_be_visible()
    show(page, f"{secure_shop.https}/press-screen", "press-screen")
    by_test(page, "press-screen").fill("1")
    by_test(page, "make-press-screen").click()
    expect(by_test(page, "press-screen-idle")).to_be_visible()
    assert refused == []


def test_an_owners_phone_is_offered_everything(
    new: Callable[[str], Page], secure_shop: SecureShop, refused: list[str]
):
    page = new("owner")
    seen = gone_through(page)
    assert {"crew ", "backups ", "test-bend ", "tool punches", "part "} <= set(seen)
    assert {"edit", "write-note"} <= seen["card "]
    assert {"to-crew", "to-backups", "to-test-bend"} <= seen["shop "]
    assert "add" in seen["tools dies"]
    assert {"save", "take-out"} <= seen["tool dies"]
    assert "save" in seen["part "]
    assert refused == []


def test_without_the_shop_the_buttons_are_the_same_and_another_role_is_followed(
    new: Callable[[str], Page], secure_shop: SecureShop, console
):
    console.expect(f"{SILENCE}|Failed to load resource")
    page = new("operator")
    page.wait_for_selector("html[data-offline-ready=true]")
    secure_shop.kill()
    try:
        show(page, f"{secure_shop.https}/c/{CARD}", "card")
        expect(by_test(page, "write-note")).to_be_visible()
        expect(by_test(page, "edit")).to_have_count(0)
    finally:
        secure_shop.start()
    page.wait_for_selector("html[data-reached=true]", timeout=60_000)
    devices = call(f"{secure_shop.url}/api/v1/devices")["devices"]
    (own,) = [one for one in devices if one["name"] == "operator device" and one["own"] is False
              and one == max(devices, key=lambda d: d["paired_at"])]  # fmt: skip
    for role, edits in (("owner", 1), ("bench", 0), ("operator", 0)):
        call(f"{secure_shop.url}/api/v1/devices/{own['id']}", "PUT", {"role": role})
        page.evaluate("document.dispatchEvent(new Event('visibilitychange'))")  # looks again now
        expect(by_test(page, "edit")).to_have_count(edits)
        expect(by_test(page, "write-note")).to_have_count(0 if role == "bench" else 1)
