"""Whether there is a good copy; the whole shop out as a file and in again."""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

import pytest
from browsing import by_test, call, show, sideways
from playwright.sync_api import Page, expect


def exported(page: Page) -> Path:
    """The shop's file, as the browser saves it."""
    with page.expect_download() as saved:
        by_test(page, "export").click()
    assert saved.value.suggested_filename == "flangebook-shop.json"
    return Path(saved.value.path())


def open_copies(page: Page, url: str) -> None:
    show(page, f"{url}/shop", "shop")
    by_test(page, "to-backups").click()
    page.wait_for_selector("html[data-ready=backups]")


def test_out_and_in_again(page: Page, own_server: Any, tmp_path: Path):
    url = own_server.url
    open_copies(page, url)
    document = json.loads(exported(page).read_text("utf-8"))
    dropped = document["marks"]
    document["marks"] = []
    file = tmp_path / "mine.json"
    file.write_text(json.dumps(document), "utf-8")
    cards = call(f"{url}/api/v1/cards?limit=200")["total"]
    page.wait_for_selector("html[data-offline-ready=true]")
    by_test(page, "import-file").set_input_files(file)
    preview = by_test(page, "import-preview")
    expect(preview).to_contain_text("mine.json")
    expect(preview.get_by_role("row", name="Cards")).to_contain_text(f"{cards}")
    expect(preview).to_contain_text("Everything in the shop is replaced")
    before = call(f"{url}/api/v1/export")["shop_id"]
    page.once("dialog", lambda question: question.dismiss())
    by_test(page, "import-now").click()
    assert call(f"{url}/api/v1/export")["shop_id"] == before
    asked: list[str] = []
    page.once("dialog", lambda question: (asked.append(question.message), question.accept()))
    by_test(page, "import-now").click()
    expect(by_test(page, "import-done")).to_contain_text(f"{cards} cards")
    assert f"{cards} cards" in asked[0]
    assert sideways(page) <= 0
    expect(by_test(page, "backups")).to_contain_text("before it was replaced")
    after = call(f"{url}/api/v1/export")
    assert after["shop_id"] != before
    assert after["cards"] == document["cards"]
    assert dropped == document["marks"] or after["marks"] == []
    # This device, too, has fetched the new shop.
    page.wait_for_function(
        """async before => {
          const { keptCursor } = await import("/app/sync/local_shop.js");
          return !(await keptCursor()).startsWith(before);
        }""",
        arg=before,
    )


def test_a_file_that_is_not_whole_is_refused_in_plain_words(
    page: Page, own_server: Any, tmp_path: Path, console: Any
):
    console.expect("422")
    open_copies(page, own_server.url)
    text = exported(page).read_text("utf-8")
    before = call(f"{own_server.url}/api/v1/export")["cards"]
    document = json.loads(text)
    document["cards"][0]["title"] = "<b>Other</b>"
    for spoilt, words in (
        (text[:3000], "breaks off"),
        ("{}", "not an export"),
        (json.dumps(document), "cards.0.title"),
    ):
        file = tmp_path / "spoilt.json"
        file.write_text(spoilt, "utf-8")
        by_test(page, "import-file").set_input_files(file)
        expect(by_test(page, "import-wrong")).to_contain_text(words)
        expect(by_test(page, "import-wrong")).to_contain_text("Nothing in the shop was changed")
        expect(by_test(page, "import-now")).to_have_count(0)
        assert sideways(page) <= 0
    assert call(f"{own_server.url}/api/v1/export")["cards"] == before


@pytest.mark.parametrize(
    ("told", "words"),
    [
        ({"standing": "ok", "last_good_at": "2026-09-14T03:00:00Z"}, "There is a good backup"),
        ({"standing": "late", "last_good_at": "2026-09-01T03:00:00Z"}, "over two days old"),
        (
            {
                "standing": "trouble",
                "trouble": {"at": "2026-09-14T03:00:00Z", "words": "The disk is full."},
            },
            "The disk is full.",
        ),
        ({"standing": "none"}, "no backup yet"),
    ],
)
def test_how_the_copies_stand(page: Page, shop_server: Any, told: dict[str, Any], words: str):
    body = {"folder": "/x", "backups": [], "trouble": None, "last_good_at": None, **told}
    page.route("**/api/v1/backups", lambda route: route.fulfill(json=body))
    show(page, f"{shop_server.url}/backups", "backups")
    expect(by_test(page, "panel-backups")).to_contain_text(words)
    assert sideways(page) <= 0
