"""No setting beyond what punch, die and press can do: on a result, at a step, on paper, offline."""

from __future__ import annotations

from typing import Any

import pytest
from browsing import by_test, call, plain_angle, show
from playwright.sync_api import Page, expect

MEASURED = ("97", "110", "120")


@pytest.fixture
def code(own_server) -> str:
    """A card in a shop of its own, whose metal learns from these results: 2 mm, 90 degrees, tools
    of 85 degrees."""
    body = {"part": plain_angle("Angle within limits")}
    return str(call(f"{own_server.url}/api/v1/cards", "POST", body)["code"])


def measure(page: Page, address: str, angle: str) -> None:
    show(page, address, "result")
    by_test(page, "measured_deg").fill(angle)
    by_test(page, "save").click()


def nothing_to_set_is_shown(page: Page) -> None:
    said = by_test(page, "no-setting")
    expect(said).to_contain_text("No new setting")
    expect(said).to_contain_text("Something else is wrong")
    expect(said).to_contain_text("85.5°")
    expect(said.locator("li")).to_have_count(4)
    for name in ("new-setting", "new-angle", "new-depth", "keep", "tilt", "basis"):
        expect(by_test(page, name)).to_have_count(0)


def test_a_result_that_asks_for_more_says_what_limits_and_what_to_check(
    page: Page, own_server, code: str
):
    for typed in MEASURED:
        measure(page, f"{own_server.url}/c/{code}/result/1", typed)
        expect(by_test(page, "sent")).to_be_visible()
        nothing_to_set_is_shown(page)
    trials = call(f"{own_server.url}/api/v1/cards/{code}")["trials"]
    for result in trials:
        assert result["correction"]["limited_by"] == ["punch angle", "die angle"]
    assert len(trials) == len(MEASURED)
    show(page, f"{own_server.url}/c/{code}", "card")
    expect(by_test(page, "result").first).not_to_contain_text("new setting")


def test_it_says_so_without_the_shop_too(kept: Page, own_server):
    own_server.kill()
    for typed in MEASURED:
        measure(kept, f"{own_server.url}/c/SHE7FA1/result/1", typed)
        expect(by_test(kept, "waits")).to_contain_text("Waiting")
        said = by_test(kept, "no-setting")
        expect(said).to_contain_text("Something else is wrong")
        expect(said.locator("li")).to_have_count(4)
        expect(by_test(kept, "new-setting")).to_have_count(0)


SETTING_OF = """async ([card, own, old]) => {
    const { settingOf } = await import("/app/sync/cards.js");
    const step = { ...card.plan.steps[0] };
    if (old) delete step.limits;
    const { set_angle_deg, punch_depth_mm } = settingOf({ ...card, settings: own }, step);
    return [set_angle_deg, punch_depth_mm];
}"""


def test_a_setting_kept_by_an_earlier_release_is_shown_only_within_the_limits(
    phone: Page, own_server, code: str
):
    show(phone, f"{own_server.url}/c/{code}", "card")
    card = call(f"{own_server.url}/api/v1/cards/{code}")
    step = card["plan"]["steps"][0]

    def shown(own: list[dict[str, Any]], *, old: bool) -> list[float | None]:
        found: list[float | None] = phone.evaluate(SETTING_OF, [card, own, old])
        return found

    good = {"step": 1, "set_angle_deg": 87.0, "punch_depth_mm": step["punch_depth_mm"]}
    for old in (False, True):
        assert shown([], old=old) == [step["set_angle_deg"], step["punch_depth_mm"]]
        assert shown([good], old=old) == [87.0, step["punch_depth_mm"]]
        for beyond in (
            {"set_angle_deg": 58.0, "punch_depth_mm": 8.82},
            {"set_angle_deg": 85.4, "punch_depth_mm": step["punch_depth_mm"]},
            {"set_angle_deg": 88.0, "punch_depth_mm": 8.82},
        ):
            assert shown([{"step": 1, **beyond}], old=old) == [None, None]
