"""Each step in pictures: before, at its closest to a tool, after, and the slider between them."""

from __future__ import annotations

import json
import math
import re
from collections.abc import Callable, Iterator
from typing import Any

import pytest
from browsing import by_test, call, show, sideways, visit
from playwright.sync_api import Page, Route, expect

LEAST_TARGET_PX = 64
CARD = "Cable cover, hat section"
NEAREST_ON_PATH = """(path, [x, y]) => {
  const whole = path.getTotalLength();
  const points = Array.from({ length: 4001 }, (_, i) => path.getPointAtLength((whole * i) / 4000));
  return Math.min(...points.map((point) => Math.hypot(point.x - x, point.y - y)));
}"""


def step_of(shop_server, code: str, number: int) -> dict[str, Any]:
    return call(f"{shop_server.url}/api/v1/cards/{code}")["plan"]["steps"][number - 1]


def numbers(path: str) -> list[float]:
    return [float(one) for one in re.findall(r"-?\d+(?:\.\d+)?(?:e-?\d+)?", path)]


def moved_by(page: Page, test: str) -> str:
    return str(by_test(page, test).get_attribute("d"))


@pytest.fixture
def changed() -> Iterator[Callable[..., None]]:
    """A card as another plan would have it: steps changed on their way to the browser."""
    pages: list[Page] = []

    def change(page: Page, code: str, how: Callable[[dict[str, Any]], None]) -> None:
        def answer(route: Route) -> None:
            response = route.fetch()
            body = response.json()
            for card in body.get("cards", [body]):
                if card.get("code") == code:
                    for step in card["plan"]["steps"]:
                        how(step)
            route.fulfill(response=response, json=body)

        pages.append(page)
        page.route(re.compile(rf"/api/v1/(cards/{code}|changes)(\?|$)"), answer)

    yield change
    for page in pages:
        page.unroute_all(behavior="ignoreErrors")  # an answer may still be on its way


def test_the_slider_moves_the_sheet_and_the_keys_move_the_slider(
    page: Page, shop_server, demo_codes
):
    code = demo_codes[CARD]
    show(page, f"{shop_server.url}/c/{code}/step/3", "step")
    slider = by_test(page, "motion")
    assert slider.bounding_box()["height"] >= LEAST_TARGET_PX
    assert by_test(page, "play").bounding_box()["height"] >= LEAST_TARGET_PX
    flat = moved_by(page, "sheet")
    slider.fill("0.5")
    expect(by_test(page, "pose")).to_have_attribute("data-pose", "during")
    expect(by_test(page, "moment")).to_contain_text("Bending")
    half = moved_by(page, "sheet")
    assert half != flat
    slider.press("ArrowRight")
    assert moved_by(page, "sheet") != half
    expect(by_test(page, "step-number")).to_contain_text("Step 3")  # the keys turn no leaf here
    expect(slider).to_have_attribute("aria-valuetext", re.compile("Bending"))
    slider.fill("1")
    expect(by_test(page, "moment")).to_contain_text("Punch rising")
    by_test(page, "before").click()
    assert moved_by(page, "sheet") == flat


def test_the_slider_shows_the_frames_of_the_api(wide: Page, shop_server, demo_codes):
    """The right leg's outline on the screen is the API's ring where the frame puts it."""
    code = demo_codes[CARD]
    motion = step_of(shop_server, code, 3)["motion"]
    show(wide, f"{shop_server.url}/c/{code}/step/3", "step")
    frame = motion["frames"][len(motion["frames"]) // 2]
    by_test(wide, "motion").fill(str(frame["share"]))
    drawn = moved_by(wide, "sheet")
    x, y, turned = frame["right"]
    cos, sin = math.cos(math.radians(turned)), math.sin(math.radians(turned))
    for px, py in motion["right"]:
        wanted = (x + cos * px - sin * py, -(y + sin * px + cos * py))
        pairs = [tuple(numbers(p)[:2]) for p in drawn.split("L")[1:]]
        assert min(math.dist(wanted, pair) for pair in pairs) < 0.02


def test_playing_runs_to_the_end_and_stops(phone: Page, shop_server, demo_codes):
    show(phone, f"{shop_server.url}/c/{demo_codes[CARD]}/step/3", "step")
    by_test(phone, "motion").fill("0.9")
    by_test(phone, "play").click()
    expect(by_test(phone, "play")).to_have_attribute("aria-label", "Stop")
    expect(by_test(phone, "motion")).to_have_value("1")
    expect(by_test(phone, "play")).to_have_attribute("aria-label", "Play the bend")


def test_the_closest_approach_is_marked_with_its_distance(page: Page, shop_server, demo_codes):
    code = demo_codes[CARD]
    nearest = step_of(shop_server, code, 4)["clearance"]["nearest"]
    show(page, f"{shop_server.url}/c/{code}/step/4", "step")
    expect(by_test(page, "near")).to_have_count(0)
    expect(by_test(page, "moment")).to_contain_text(nearest["tool"])
    by_test(page, "during").click()
    expect(by_test(page, "during")).to_have_attribute("aria-pressed", "true")
    mark = by_test(page, "near")
    expect(mark).to_have_attribute("data-tool", nearest["tool"])
    distance = f"{nearest['distance_mm']:.1f} mm"
    expect(mark).to_contain_text(distance)
    expect(by_test(page, "moment")).to_contain_text(distance)
    line = numbers(str(mark.locator(".near-line").get_attribute("d")))
    (x1, y1), (x2, y2) = nearest["on_sheet"], nearest["on_tool"]
    assert line == pytest.approx([x1, -y1, x2, -y2])
    expect(mark.locator(".near-label")).to_be_in_viewport()
    view = numbers(str(by_test(page, "pose").get_attribute("viewBox")))
    assert view[0] < x1 < view[0] + view[2]
    assert view[1] < -y1 < view[1] + view[3]
    assert sideways(page) <= 0


def test_the_point_on_the_sheet_lies_on_the_sheet_as_drawn(wide: Page, shop_server, demo_codes):
    """The picture and the distance come from one motion: the mark touches the drawn outline."""
    for title in (CARD, "Tiered book display, six bends"):
        code = demo_codes[title]
        for step in call(f"{shop_server.url}/api/v1/cards/{code}")["plan"]["steps"]:
            near = (step.get("clearance") or {}).get("nearest")
            if not near or near["distance_mm"] > 100:
                continue
            visit(wide, f"{shop_server.url}/c/{code}/step/{step['number']}", "step")
            by_test(wide, "during").click()
            x, y = near["on_sheet"]
            apart = by_test(wide, "sheet").evaluate(
                NEAREST_ON_PATH,
                [x, -y],
            )
            assert apart < 0.4, f"{title}, step {step['number']}"


def test_a_hit_is_said_and_marked_as_one(page: Page, shop_server, demo_codes, changed):
    code = demo_codes[CARD]

    def hit(step: dict[str, Any]) -> None:
        near = {**step["clearance"]["nearest"], "distance_mm": -3.2, "tool": "holder"}
        step["clearance"] = {**step["clearance"], "clear": False, "nearest": near, "hits": [near]}

    changed(page, code, hit)
    show(page, f"{shop_server.url}/c/{code}/step/4", "step")
    expect(by_test(page, "during")).to_have_text("Collision")
    expect(by_test(page, "moment")).to_contain_text("runs 3.2 mm into the holder")
    by_test(page, "during").click()
    expect(by_test(page, "near")).to_contain_text("3.2 mm")
    expect(by_test(page, "near")).to_contain_text("into holder")


@pytest.mark.parametrize(
    ("way_in", "way_out", "said"),
    [
        ("straight", "slide", "Slide it out"),
        ("slide", "slide", "Slide it in and out"),
        ("straight", "swing", "Tilt it out"),
        ("swing", "swing", "Tilt it in and out"),
        ("swing", "slide", "Slide it out, tilt it in"),
        ("straight", "unknown", "No way out found"),
        ("straight", "trapped", "Trapped"),
    ],
)
def test_the_way_out_is_said(
    phone: Page, shop_server, demo_codes, changed, way_in: str, way_out: str, said: str
):
    code = demo_codes[CARD]

    def other_way(step: dict[str, Any]) -> None:
        step["clearance"] = {**step["clearance"], "way_in": way_in, "way_out": way_out}

    changed(phone, code, other_way)
    show(phone, f"{shop_server.url}/c/{code}/step/4", "step")
    expect(by_test(phone, "way")).to_contain_text(said)
    expect(by_test(phone, "way").locator(".sign")).to_be_visible()
    show(phone, f"{shop_server.url}/c/{code}", "card")
    expect(by_test(phone, "way").first).to_contain_text(said)


def test_an_old_card_shows_what_it_has(page: Page, shop_server, demo_codes, changed):
    """Plans kept before motions were worked out have neither motion nor clearance."""
    code = demo_codes[CARD]

    def older(step: dict[str, Any]) -> None:
        step.pop("motion", None)
        step.pop("clearance", None)

    changed(page, code, older)
    show(page, f"{shop_server.url}/c/{code}/step/3", "step")
    flat = moved_by(page, "sheet")
    by_test(page, "after").click()
    assert moved_by(page, "sheet") != flat
    for missing in ("motion", "during", "play", "near"):
        expect(by_test(page, missing)).to_have_count(0)
    show(page, f"{shop_server.url}/c/{code}", "card")
    narrow = page.evaluate("innerWidth") < 480  # there a step is a line
    expect(by_test(page, "small-after").first).to_be_visible(visible=not narrow)
    expect(by_test(page, "small-during")).to_have_count(0)


def test_a_motion_without_clearance_says_that_it_was_not_checked(
    phone: Page, shop_server, demo_codes, changed
):
    code = demo_codes[CARD]
    changed(phone, code, lambda step: step.update(clearance=None))
    show(phone, f"{shop_server.url}/c/{code}/step/3", "step")
    expect(by_test(phone, "moment")).to_contain_text("Clearance was not checked")
    by_test(phone, "during").click()
    expect(by_test(phone, "near")).to_have_count(0)


def test_card_and_paper_have_three_pictures_a_step(wide: Page, shop_server, demo_codes):
    code = demo_codes[CARD]
    steps = call(f"{shop_server.url}/api/v1/cards/{code}")["plan"]["steps"]
    for address, ready in ((f"/c/{code}", "card"), (f"/c/{code}/print", "print")):
        show(wide, f"{shop_server.url}{address}", ready)
        expect(by_test(wide, "small-poses")).to_have_count(len(steps))
        for step, said in zip(steps, by_test(wide, "small-during").all(), strict=True):
            near = step["clearance"]["nearest"]
            expect(said).to_have_text(f"{near['distance_mm']:.1f} mm to {near['tool']}")
        paths = by_test(wide, "small-poses").first.locator(".sheet")
        assert len({path.get_attribute("d") for path in paths.all()}) == 3


def test_turning_has_its_sign_on_the_card(phone: Page, shop_server, demo_codes):
    code = demo_codes[CARD]
    steps = call(f"{shop_server.url}/api/v1/cards/{code}")["plan"]["steps"]
    turned = [s for s in steps if s["turn_over"] or s["turn_end"]]
    assert turned
    show(phone, f"{shop_server.url}/c/{code}", "card")
    signs = by_test(by_test(phone, "step-list"), "turn")
    expect(signs).to_have_count(len(turned))
    expect(signs.first.locator(".sign")).to_be_visible()


def test_a_step_s_motion_is_light(shop_server):
    """A visit keeps every card on the device; what motions add to them stays small."""
    cards = call(f"{shop_server.url}/api/v1/changes?since=0")["cards"]
    motions = [step["motion"] for card in cards for step in card["plan"]["steps"] if step["motion"]]
    assert len(motions) >= 20
    assert max(len(json.dumps(one, separators=(",", ":"))) for one in motions) < 4096
