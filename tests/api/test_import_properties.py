"""Any shop, whatever was typed into it, goes out and in again without loss."""

from __future__ import annotations

import json
import shutil
import tempfile
import uuid
from datetime import UTC, datetime
from pathlib import Path
from typing import Any

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from flangebook.labels.codes import new_code
from flangebook.shop import demo, documents, evidence, results, revisions
from flangebook.shop.cards import Content
from flangebook.shop.revisions import Author
from flangebook.shop.store import Store, opened
from flangebook.shop.transfer import export, importing
from flangebook.use_cases import intake

OTHERS = ("shop_id", "exported_at")
PART = {
    "metal": "mild-steel-cr",
    "bend_length_mm": 300.0,
    "flats_mm": [40.0, 60.0],
    "bends": [{"included_angle_deg": 90.0, "direction": "up"}],
}
METALS = json.loads(demo.STARTER_METALS.read_text("utf-8"))["metals"]
# Anything Unicode has but what the API refuses, too: control characters, and half characters,
# which no UTF-8 can hold.
WORDS = st.text(st.characters(exclude_categories=("Cc", "Cs")), max_size=20)
NUMBERS = st.floats(allow_nan=False, allow_infinity=False)
VALUES = st.recursive(
    st.none() | st.booleans() | st.integers(-(2**60), 2**60) | NUMBERS | WORDS,
    lambda inner: st.lists(inner, max_size=3) | st.dictionaries(WORDS, inner, max_size=3),
    max_leaves=8,
)
ACTS = st.lists(st.sampled_from(["card", "revise", "trial", "mark", "metals"]), max_size=14)


@pytest.fixture(scope="module")
def new_shop(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A folder with a shop that nothing was written to; to be copied."""
    folder = tmp_path_factory.mktemp("new")
    with opened(folder):
        return folder


def plain(store: Store) -> dict[str, Any]:
    """The shop's document without what another shop and another moment have different."""
    document = json.loads("".join(export.pieces(store)))
    return {name: value for name, value in document.items() if name not in OTHERS}


def live(store: Store, acts: list[str], data: st.DataObject) -> None:
    """Do these things to a shop, with whatever words and numbers come."""
    codes: dict[str, int] = {}
    learned: list[str] = []
    for act in acts:
        if act == "metals":
            kept = METALS[: data.draw(st.integers(1, len(METALS)))]
            by = data.draw(WORDS)
            documents.write(store, "metals", intake.document("metals", kept), by=by, if_match="*")
        elif act == "card" or not codes:
            code = new_code()
            revisions.create(store, content(data), author(data), code=code, asked=code)
            codes[code] = 1
        else:
            code = data.draw(st.sampled_from(sorted(codes)))
            if act == "revise":
                words = data.draw(st.lists(WORDS, max_size=2))
                revisions.revise(store, code, content(data), author(data), words, if_match="*")
                codes[code] += 1
            elif act == "trial":
                learned.append(tried(store, code, codes[code], data))
            elif learned:
                mark = data.draw(st.sampled_from(["forget", "remember", "confirm"]))
                evidence.mark(store, learned[-1], mark, data.draw(WORDS), data.draw(WORDS))


def content(data: st.DataObject) -> Content:
    title = data.draw(st.sampled_from(["Angle", "Winkel ß", "角"]))
    thickness = data.draw(st.floats(0.5, 6.0))
    part = {**PART, "title": title, "thickness_mm": thickness}
    plan = {"steps": [], "worst": "ok", "found": data.draw(VALUES)}
    setting = [{"step": 1, "set_angle_deg": data.draw(NUMBERS)}]
    return Content(title, data.draw(WORDS), part, plan, "ok", setting, data.draw(st.booleans()))


def author(data: st.DataObject) -> Author:
    return Author(data.draw(WORDS), data.draw(WORDS))


def tried(store: Store, code: str, revision: int, data: st.DataObject) -> str:
    one = {"id": str(uuid.uuid4()), "revision": revision, "step": 1, "by": data.draw(WORDS)}
    body = {**one, "note": data.draw(WORDS), "measured_deg": data.draw(NUMBERS)}
    teaches = {"id": one["id"], "metal": "mild-steel-cr", "set_up": data.draw(VALUES)}
    results.add(store, code, body, data.draw(st.none() | st.just({"set_angle_deg": 88.5})), teaches)
    return str(one["id"])


@pytest.mark.slow
@settings(
    max_examples=40,
    deadline=None,
    suppress_health_check=[HealthCheck.too_slow, HealthCheck.data_too_large],
)
@given(acts=ACTS, data=st.data())
def test_any_shop_out_in_and_out_again_is_the_same(
    new_shop: Path, acts: list[str], data: st.DataObject
):
    with tempfile.TemporaryDirectory() as folder:
        first, second = Path(folder) / "first", Path(folder) / "second"
        for copy in (first, second):
            shutil.copytree(new_shop, copy)
        with opened(first) as one, opened(second) as other:
            live(one, acts, data)
            document = "".join(export.pieces(one)).encode()
            importing.take(
                other, document, intake, replace=False, folder=second, now=datetime.now(UTC)
            )
            assert json.dumps(plain(other)) == json.dumps(plain(one))
            again = "".join(export.pieces(other)).encode()
            importing.take(one, again, intake, replace=True, folder=first, now=datetime.now(UTC))
            assert json.dumps(plain(one)) == json.dumps(plain(other))
