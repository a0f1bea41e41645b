"""The web app's files: the page for every path of the app, nothing that is not its own."""

from __future__ import annotations

import gzip
import os
import re
from collections.abc import Callable
from pathlib import Path

import pytest
from flask import Flask
from flask.testing import FlaskClient
from problem import problem

from flangebook.api import static


@pytest.fixture
def web(tmp_path: Path) -> Path:
    """A small web folder, with things beside it that must stay inside the machine."""
    folder = tmp_path / "web"
    (folder / "app").mkdir(parents=True)
    (folder / "made").mkdir()
    (folder / "index.html").write_text(
        '<!doctype html><script src="/made/app.js"></script>' + "<p>page</p>" * 100
    )
    (folder / "made/app.js").write_text("// all\n" * 200)
    (folder / "made/app.js.map").write_text('{"version":3}')
    (folder / "app/main.js").write_text("// main\n" * 200)
    (folder / "tiny.css").write_text("p{}")
    (folder / "mark.png").write_bytes(b"\x89PNG" * 200)
    (folder / ".hidden.js").write_text("no")
    (folder / "notes.md").write_text("no")
    (tmp_path / "secret.json").write_text("{}")
    (folder / "link.json").symlink_to(tmp_path / "secret.json")
    return folder


@pytest.fixture
def site(make_app: Callable[..., Flask], web: Path) -> FlaskClient:
    """A client of that folder."""
    return make_app(empty=True, web=web).test_client()


@pytest.mark.parametrize(
    "path",
    [
        "/", "/bend", "/part", "/part?from=SHE7FA1", "/scan", "/cards", "/labels", "/chart",
        "/settings", "/shop", "/shop/press", "/shop/punches/S85-1",
        "/c/SHE7FA1", "/C/SHE7FA1", "/c/she7fa1",
        "/c/SHE7FA1/step/2", "/c/SHE7FA1/trial/1", "/c/SHE7FA1/history", "/c/SHE7FA1/label",
        "/shop/dies/V16.A", "/a-screen-of-tomorrow", "/app", "/app/", "/notes.md", "/etc/passwd",
    ],
)  # fmt: skip
def test_every_path_of_the_app_gives_the_page(site: FlaskClient, path: str):
    answer = site.get(path)
    assert answer.status_code == 200
    assert answer.content_type == "text/html; charset=utf-8"
    assert b"<p>page</p>" in answer.data


@pytest.mark.parametrize(
    "path",
    [
        "/nowhere.js", "/app/nowhere.css", "/favicon.ico", "/.hidden.js", "/.hidden",
        "/.git/config", "/../secret.json", "/%2e%2e/secret.json", "/app/../../secret.json",
        "/../secret",
        "/..%5csecret.json", "/link.json", "/main.js%00.html", "/app/main.js/", "/app//main.js",
        "/" + "x" * 5000 + ".js", "/api", "/api/", "/api/nowhere",
    ],
)  # fmt: skip
def test_nothing_else_is_served(site: FlaskClient, path: str):
    problem(site.get(path), 404)


def test_types_and_bytes(site: FlaskClient, web: Path):
    for name, kind in {
        "app/main.js": "text/javascript; charset=utf-8",
        "made/app.js.map": "application/json",
        "tiny.css": "text/css; charset=utf-8",
        "mark.png": "image/png",
    }.items():
        answer = site.get(f"/{name}")
        assert answer.content_type == kind
        assert answer.data == (web / name).read_bytes()


def test_text_is_compressed_pictures_are_not(site: FlaskClient, web: Path):
    asked = {"Accept-Encoding": "gzip"}
    answer = site.get("/app/main.js", headers=asked)
    assert answer.headers["Content-Encoding"] == "gzip"
    assert answer.headers["Vary"] == "Accept-Encoding"
    assert gzip.decompress(answer.data) == (web / "app/main.js").read_bytes()
    assert "Content-Encoding" not in site.get("/mark.png", headers=asked).headers
    assert "Content-Encoding" not in site.get("/tiny.css", headers=asked).headers
    refused = site.get("/app/main.js", headers={"Accept-Encoding": "gzip;q=0"})
    assert "Content-Encoding" not in refused.headers


def test_a_file_is_asked_for_again_and_mostly_unchanged(site: FlaskClient, web: Path):
    answer = site.get("/app/main.js")
    assert answer.headers["Cache-Control"] == "no-cache"
    etag = answer.headers["ETag"]
    again = site.get("/app/main.js", headers={"If-None-Match": etag})
    assert again.status_code == 304
    assert again.data == b""
    (web / "app/main.js").write_text("// other\n" * 200)
    after = site.get("/app/main.js", headers={"If-None-Match": etag})
    assert after.status_code == 200
    assert after.headers["ETag"] != etag


def test_only_an_address_with_its_version_is_kept_for_good(site: FlaskClient):
    etag = site.get("/app/main.js").headers["ETag"].strip('"')
    kept = site.get(f"/app/main.js?v={etag}").headers["Cache-Control"]
    assert "immutable" in kept
    assert site.get("/app/main.js?v=older").headers["Cache-Control"] == "no-cache"


def test_the_list_for_the_service_worker_names_files_that_are_there(site: FlaskClient, web: Path):
    script = site.get("/shell-files.js")
    assert script.content_type.startswith("text/javascript")
    before = script.data
    (web / "made/more.js").write_text("//")
    after = site.get("/shell-files.js").data
    assert before != after
    assert b"/made/more.js" in after


def test_a_file_of_the_shell_that_changes_makes_another_version(site: FlaskClient, web: Path):
    """An update, even of the same length; and an old version that is put back is the old one."""
    script = web / "made/app.js"
    old = script.read_bytes()
    before = site.get("/shell-files.js")
    assert site.get("/shell-files.js").data == before.data
    script.write_bytes(b"/" * len(old))
    os.utime(script, ns=(0, script.stat().st_mtime_ns + 1))
    after = site.get("/shell-files.js", headers={"If-None-Match": before.headers["ETag"]})
    assert after.status_code == 200
    assert after.data != before.data
    script.write_bytes(old)
    os.utime(script, ns=(0, script.stat().st_mtime_ns + 2))
    assert site.get("/shell-files.js").data == before.data


def test_the_list_is_made_again_only_when_a_file_changed(
    site: FlaskClient, monkeypatch: pytest.MonkeyPatch
):
    before = site.get("/shell-files.js").data
    monkeypatch.setattr(static, "shell_script", None)
    assert site.get("/shell-files.js").data == before


def test_a_device_keeps_the_one_script_and_not_what_it_is_made_of(site: FlaskClient):
    kept = site.get("/shell-files.js").text
    assert "/made/app.js" in kept
    assert "/app/main.js" not in kept
    assert ".map" not in kept
    assert b"/made/app.js" in site.get("/").data


def test_a_contributor_is_given_the_sources(make_app: Callable[..., Flask], web: Path):
    site = make_app(empty=True, web=web, sources=True).test_client()
    assert b"/app/main.js" in site.get("/").data
    assert b"/made/" not in site.get("/bend").data
    kept = site.get("/shell-files.js").text
    assert "/app/main.js" in kept
    assert "/made/app.js" not in kept


def test_every_file_of_the_real_shell_is_served(reader: FlaskClient):
    """The service worker fails as a whole when one file of its list is missing."""
    names = re.findall(r'"(/[^"]*)"', reader.get("/shell-files.js").text)
    assert "/" in names
    assert {"/made/app.js", "/made/app.css", "/manifest.webmanifest"} < set(names)
    for name in names:
        assert reader.get(name).status_code == 200, name


def test_head_gives_headers_only(site: FlaskClient):
    answer = site.head("/app/main.js")
    assert answer.status_code == 200
    assert answer.data == b""
    assert answer.headers["ETag"]
