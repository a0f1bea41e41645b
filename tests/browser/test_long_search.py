"""A search for the order that takes long: what is known is shown, and Cancel gives the plan back.

Twenty-four bends in pleats have far more orders than any machine looks through in the time
that a search may take, so it always ends with an order that is not proven.
"""

from __future__ import annotations

import re
import shutil
from collections.abc import Iterator
from pathlib import Path

import pytest
from browsing import by_test, call, show, sideways, wait_ready
from looks import RULES
from playwright.sync_api import Page, Request, expect
from shop_process import ShopProcess
from test_order_panel import no_findings
from test_part import ANGLE, IN_PAGE, box, enter, good

TO_ITS_END_MS = 120_000
MANY = 24
PLEATS = {**ANGLE, "title": "Pleats", "flats": ["30", "30"], "bends": [("135", "up")]}
LEAST_TARGET_PX = 64
# The panel alone: the whole page takes longer to look at than the search.
FINDINGS_OF_PANEL = """async rules => {
  const found = await axe.run(".looking", {runOnly: {type: "tag", values: rules}});
  return found.violations.map(({id, help}) => `${id}: ${help}`);
}"""


# Bends after the first, at the right end; the section is whole after each one's flat. In the page:
# a call for each box takes longer than the search.
PLEAT = f"""async (many) => {{
  {IN_PAGE}
  for (let bend = 1; bend < many; bend++) {{
    add();
    await type(`bends.${{bend}}.included_angle_deg`, "135");
    turn(bend, ["up", "down", "down", "up"][bend % 4]);
    await type(`flats_mm.${{bend + 1}}`, "30");
  }}
}}"""


@pytest.fixture
def hasty_server(demo_data: Path, tmp_path: Path) -> Iterator[ShopProcess]:
    """A server that gives up a search sooner: how it ends is the same, it burns less."""
    shutil.copytree(demo_data, tmp_path / "shop")
    server = ShopProcess(tmp_path / "shop", search_s=5.0).start()
    yield server
    server.stop()


def test_a_long_search_is_shown_and_cancelled(page: Page, shop_server, root: Path):
    hung_up: list[str] = []

    def failed(request: Request) -> None:
        hung_up.append(request.url)

    show(page, f"{shop_server.url}/part", "part")
    enter(page, PLEATS)
    good(page)
    before = by_test(page, "blank-length").inner_text()
    expect(by_test(page, "looking")).to_have_count(0)
    page.evaluate((root / "tests/web_tools/node_modules/axe-core/axe.min.js").read_text("utf-8"))
    page.evaluate(PLEAT, MANY)
    looking = by_test(page, "looking")
    expect(looking).to_contain_text("Looking for the order")
    expect(by_test(page, "looking-seconds")).to_have_text(re.compile(r"^[2-9] s|^\d\d s"))
    expect(by_test(page, "looking-at")).to_have_text(re.compile(r"[1-9]"))
    expect(by_test(page, "looking-best")).to_have_text(re.compile("none yet|turn"))
    assert page.evaluate(FINDINGS_OF_PANEL, RULES) == []
    assert sideways(page) <= 0
    cancel = by_test(page, "cancel-looking")
    expect(cancel).to_be_in_viewport(ratio=1)  # wherever the form is scrolled to
    assert (cancel.bounding_box() or {})["height"] >= LEAST_TARGET_PX
    page.on("requestfailed", failed)
    cancel.click()
    expect(by_test(page, "stopped")).to_contain_text("no plan for what is typed now")
    expect(by_test(page, "stopped")).to_be_in_viewport()
    assert [url.rsplit("/", 1)[1] for url in hung_up] == ["plan"]
    expect(looking).to_have_count(0)
    expect(by_test(page, "part")).to_have_attribute("data-busy", "false")
    expect(by_test(page, "blank-length")).to_have_text(before)
    expect(by_test(page, "plan")).to_have_class(re.compile("stale"))
    expect(box(page, f"flats_mm.{MANY}")).to_have_value("30")  # nothing typed is lost
    no_findings(page, root)
    box(page, "title").fill("Long pleats")  # needs no new plan
    expect(by_test(page, "stopped")).to_be_visible()


def test_after_cancel_back_to_the_part_before_and_on_again(phone: Page, shop_server):
    show(phone, f"{shop_server.url}/part", "part")
    enter(phone, PLEATS)
    good(phone)
    phone.evaluate(PLEAT, MANY)
    by_test(phone, "cancel-looking").click()
    by_test(phone, "part-before").click()
    expect(by_test(phone, "stopped")).to_have_count(0)
    good(phone)
    expect(phone.locator("[data-test=section-rows] .flat-row")).to_have_count(2)
    expect(by_test(phone, "plan")).not_to_have_class(re.compile("stale"))
    phone.locator("[data-test=notice] button").first.click()  # put mine back
    expect(phone.locator("[data-test=section-rows] .flat-row")).to_have_count(MANY + 1)
    expect(by_test(phone, "looking")).to_be_visible()
    by_test(phone, "cancel-looking").click()
    by_test(phone, "look-again").click()
    expect(by_test(phone, "looking")).to_be_visible()


def test_an_order_found_by_the_deadline_is_not_called_clear(wide: Page, hasty_server):
    show(wide, f"{hasty_server.url}/part", "part")
    enter(wide, PLEATS)
    wide.evaluate(PLEAT, MANY)
    expect(by_test(wide, "looking")).to_be_visible()
    expect(by_test(wide, "looking")).to_have_count(0, timeout=TO_ITS_END_MS)
    good(wide)
    panel = by_test(wide, "order-panel")
    expect(panel).to_have_attribute("data-level", "caution")
    expect(panel.locator(".flag").first).to_have_text("Not fully checked")
    expect(by_test(wide, "order-words")).to_contain_text("is not clear on paper")
    expect(wide.locator("[data-code=order-not-proven]").first).to_be_visible()
    shown = panel.locator(".run").first.get_attribute("aria-label") or ""
    by_test(wide, "save").click()
    wait_ready(wide, "card")
    card = call(f"{hasty_server.url}/api/v1/cards/{wide.url.rsplit('/', 1)[1]}")
    order = card["plan"]["order"]
    assert order["proven"] is False
    assert shown == f"bends {', '.join(map(str, order['sequence']))}"  # the very plan seen
    expect(by_test(wide, "order-panel").locator(".flag").first).to_have_text("Not fully checked")
