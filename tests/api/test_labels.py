"""Labels over the API: what they hold comes from the card and the address asked."""

from __future__ import annotations

import io
from collections.abc import Callable

import pytest
import zxingcpp
from flask import Flask
from flask.testing import FlaskClient
from PIL import Image
from problem import problem

from flangebook.labels.codes import new_code

CARD = "/api/v1/cards/SHE7FA1"


def scanned(png: bytes) -> set[str]:
    return {found.text for found in zxingcpp.read_barcodes(Image.open(io.BytesIO(png)))}


def test_the_qr_code_opens_the_card_at_the_address_asked(reader: FlaskClient):
    answer = reader.get(f"{CARD}/label.png", base_url="http://127.0.0.1:80")
    assert scanned(answer.data) == {"HTTP://127.0.0.1/C/SHE7FA1"}


def test_the_qr_code_holds_the_address_from_the_settings(make_app: Callable[..., Flask]):
    client = make_app(address="http://127.0.0.1:8417").test_client()
    answer = client.get(f"{CARD}/label.png?size=100x50&dpi=200")
    assert scanned(answer.data) == {"HTTP://127.0.0.1:8417/C/SHE7FA1"}


@pytest.mark.parametrize("size", ["50x25", "100x50"])
@pytest.mark.parametrize("units", ["mm", "inch"])
def test_both_sizes_both_units(reader: FlaskClient, size: str, units: str):
    width, height = (int(n) for n in size.split("x"))
    svg = reader.get(f"{CARD}/label.svg?size={size}&units={units}").text
    assert f'width="{width}mm"' in svg
    assert f'height="{height}mm"' in svg


def test_a_sheet_holds_every_card_asked_for(reader: FlaskClient):
    codes = [c["code"] for c in reader.get("/api/v1/cards?limit=5").get_json()["cards"]]
    sheet = f"/api/v1/labels/sheet.png?codes={','.join(codes)}&dpi=300"
    found = scanned(reader.get(sheet, base_url="http://127.0.0.1:80").data)
    assert found == {f"HTTP://127.0.0.1/C/{code}" for code in codes}


def test_many_labels_take_several_sheets(reader: FlaskClient):
    query = f"codes={','.join(['SHE7FA1'] * 45)}&paper=Letter"
    assert reader.get(f"/api/v1/labels/sheet.json?{query}").get_json() == {"pages": 2}
    first = reader.get(f"/api/v1/labels/sheet.svg?{query}&page=1").data
    assert first != reader.get(f"/api/v1/labels/sheet.svg?{query}&page=2").data
    problem(reader.get(f"/api/v1/labels/sheet.svg?{query}&page=3"), 422, "page")


def test_a_card_that_is_not_there(reader: FlaskClient):
    code = new_code()
    for rest in ("label.svg", "label.png", "qr.svg", "blank.svg", "blank.dxf"):
        problem(reader.get(f"/api/v1/cards/{code}/{rest}"), 404)
    problem(reader.get(f"/api/v1/labels/sheet.svg?codes=SHE7FA1,{code}"), 404)


def test_the_blank_of_a_saved_card_is_the_saved_one(client: FlaskClient):
    before = client.get(f"{CARD}/blank.svg").data
    kept = client.get("/api/v1/dies")
    client.put("/api/v1/dies", json={"dies": []}, headers={"If-Match": kept.headers["ETag"]})
    assert client.get(f"{CARD}/blank.svg").data == before
    dxf = client.get(f"{CARD}/blank.dxf")
    assert dxf.headers["Content-Disposition"] == 'attachment; filename="SHE7FA1.dxf"'
    assert b"BEND_UP" in dxf.data
