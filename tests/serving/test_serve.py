"""The server as its owner meets it: started, asked, stopped, started again."""

from __future__ import annotations

import json
import shutil
import signal
import socket
import sqlite3
import sys
import threading
import time
from collections.abc import Iterator
from contextlib import closing
from pathlib import Path
from uuid import uuid4

import pytest
import requests

from flangebook.serving import shop_server
from flangebook.shop.store import FILE_NAME

from .running import PATIENCE_S, Running, command, run, serving, started

BEND = {"metal": "mild-steel-cr", "thickness_mm": 2, "bend_length_mm": 800,
        "included_angle_deg": 90}  # fmt: skip
posix = pytest.mark.skipif(sys.platform == "win32", reason="signals of POSIX")


def demo_codes(root: Path) -> int:
    return len(json.loads((root / "demo_data/parts.json").read_text("utf-8"))["cards"])


@pytest.fixture(scope="module")
def data(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A folder with the demo shop in it, loaded once for this file."""
    folder = tmp_path_factory.mktemp("shop")
    with serving(folder, from_nothing=True) as server:
        assert server.get("/api/v1/health").status_code == 200
        server.stop()
    return folder


@pytest.fixture(scope="module")
def server(data: Path, tmp_path_factory: pytest.TempPathFactory) -> Iterator[Running]:
    """A server for tests that leave it and its shop as they were."""
    folder = tmp_path_factory.mktemp("served") / "shop"
    shutil.copytree(data, folder)
    with serving(folder) as running:
        yield running


def test_one_line_with_the_address_says_that_it_is_ready(data: Path) -> None:
    with serving(data, from_nothing=True) as server:
        assert server.line.count("\n") == 1
        assert str(data) in server.line
        answer = server.get("/api/v1/health")
        assert answer.json()["status"] == "ok"
        code, out, err = server.stop()
    assert (code, out, err) == (0, "", "")


@posix
@pytest.mark.parametrize("number", [signal.SIGTERM, signal.SIGINT])
def test_a_signal_stops_it_cleanly_and_frees_the_port(data: Path, number: signal.Signals) -> None:
    with serving(data, from_nothing=True) as server:
        port = server.port
        assert server.stop(number) == (0, "", "")
    with serving(data, port=port) as again:
        assert again.port == port
        assert again.get("/api/v1/health").status_code == 200


@posix
def test_it_stops_even_while_a_browser_keeps_its_connection(data: Path) -> None:
    """The browser closes neither line until the server is gone: it cannot have been waited for."""
    with serving(data) as server, requests.Session() as browser:
        browser.get(f"{server.address}api/v1/health", timeout=PATIENCE_S)
        silent = socket.create_connection(("127.0.0.1", server.port))
        assert server.stop()[0] == 0
        silent.close()


@posix
def test_an_answer_under_way_is_finished_before_it_stops(data: Path) -> None:
    """The request's body comes after the signal; that it is being read is said by a 100."""
    body = json.dumps({"id": str(uuid4()), "note": "Nothing of it is lost."}).encode()
    head = (
        f"PUT /api/v1/cards/SHE7FA1 HTTP/1.1\r\nHost: 127.0.0.1:{{}}\r\n"
        f"If-Match: *\r\nContent-Type: application/json\r\n"
        f"Content-Length: {len(body)}\r\nExpect: 100-continue\r\n\r\n"
    )
    with serving(data) as server, socket.create_connection(("127.0.0.1", server.port)) as asking:
        asking.settimeout(PATIENCE_S)
        asking.sendall(head.format(server.port).encode())
        assert asking.recv(1000).startswith(b"HTTP/1.1 100")
        server.process.send_signal(signal.SIGTERM)
        time.sleep(0.3)
        assert server.process.poll() is None
        asking.sendall(body)
        answer = b"".join(iter(lambda: asking.recv(100_000), b""))
        assert answer.startswith(b"HTTP/1.1 200")
        assert b"Nothing of it is lost." in answer
        assert server.process.wait(PATIENCE_S) == 0


def test_a_taken_port_is_one_clear_line(data: Path) -> None:
    with socket.socket() as other:
        other.bind(("127.0.0.1", 0))
        other.listen()
        port = other.getsockname()[1]
        done = run(command(data, port=port))
    assert done.returncode == 1
    assert done.stdout == ""
    assert done.stderr.count("\n") == 1
    assert f"Port {port}" in done.stderr
    assert "--port" in done.stderr


def test_only_the_loopback_address_is_listened_on(server: Running) -> None:
    with socket.socket() as other:
        # Another address of this machine is still free on that port.
        other.bind(("127.0.0.2", server.port))


@pytest.mark.parametrize("port", ["-1", "65536", "1e3", "http", "８０"])
def test_a_port_that_is_none_is_refused(tmp_path: Path, port: str) -> None:
    done = run([*command(tmp_path), "--port", port])
    assert done.returncode == 2
    assert "0 to 65535" in done.stderr


def test_the_demo_shop_is_there_at_first(root: Path, server: Running) -> None:
    assert server.get("/api/v1/cards").json()["total"] == demo_codes(root)
    assert server.get("/api/v1/press").json()["press"]["force_kn"] == 400


def test_an_empty_shop_has_no_press_and_no_cards_and_stays_so(tmp_path: Path) -> None:
    with serving(tmp_path, "--empty") as server:
        assert server.get("/api/v1/press").json()["press"] is None
        assert server.get("/api/v1/cards").json()["total"] == 0
        assert server.get("/api/v1/metals").json()["metals"]
        server.stop()
    # The demo shop never comes into a folder that has a shop already.
    with serving(tmp_path) as server:
        assert server.get("/api/v1/press").json()["press"] is None
        assert server.get("/api/v1/cards").json()["total"] == 0


def test_a_second_start_keeps_what_was_written(root: Path, tmp_path: Path) -> None:
    with serving(tmp_path) as server:
        answer = server.get("/api/v1/press")
        press = answer.json()["press"] | {"name": "Another press"}
        press.pop("outline_mm", None)
        written = requests.put(
            f"{server.address}api/v1/press",
            json={"press": press},
            headers={"If-Match": answer.headers["ETag"]},
            timeout=PATIENCE_S,
        )
        assert written.ok, written.text
        server.process.kill()
    with serving(tmp_path) as server:
        assert server.get("/api/v1/press").json()["press"]["name"] == "Another press"
        assert server.get("/api/v1/cards").json()["total"] == demo_codes(root)


@pytest.mark.parametrize("loaded", [0.0, 0.1, 0.5, 1.0])
def test_a_demo_shop_cut_off_while_it_is_loaded_is_whole_after_the_next_start(
    root: Path, tmp_path: Path, loaded: float
) -> None:
    """Killed as soon as its file is there, and when a share of its cards is in it."""
    first = started(command(tmp_path))
    wanted = round(loaded * demo_codes(root))
    while first.poll() is None and cards_in(tmp_path) < wanted:
        time.sleep(0.01)
    first.kill()
    first.communicate()
    with serving(tmp_path) as server:
        assert server.get("/api/v1/cards").json()["total"] == demo_codes(root)
        assert server.get("/api/v1/press").json()["press"]["force_kn"] == 400


def cards_in(data: Path) -> int:
    """How many cards a shop has that is being loaded or just was; -1 before there is a file."""
    unfinished = data / shop_server._UNFINISHED / FILE_NAME
    file = next((f for f in (unfinished, data / FILE_NAME) if f.exists()), None)
    if file is None:
        return -1
    try:
        with closing(sqlite3.connect(f"file:{file}?mode=ro", uri=True)) as shop:
            return int(shop.execute("SELECT count(*) FROM cards").fetchone()[0])
    except sqlite3.OperationalError:  # its tables are not made yet, or it was moved just now
        return 0


def test_a_file_that_is_no_shop_is_one_clear_line(tmp_path: Path) -> None:
    (tmp_path / "flangebook.sqlite").write_bytes(b"this is not a shop, it is a letter" * 100)
    done = run(command(tmp_path))
    assert done.returncode == 1
    assert done.stderr.count("\n") == 1
    assert str(tmp_path) in done.stderr
    assert "Traceback" not in done.stderr


def test_a_shop_of_a_newer_release_is_left_alone(tmp_path: Path) -> None:
    with serving(tmp_path, "--empty") as server:
        server.stop()
    file = tmp_path / "flangebook.sqlite"
    with sqlite3.connect(file) as shop:
        shop.execute("UPDATE alembic_version SET version_num = '9999'")
    shop.close()
    done = run(command(tmp_path))
    assert done.returncode == 1
    assert "newer release" in done.stderr
    assert done.stderr.count("\n") == 1


def test_a_folder_that_cannot_be_made_is_one_clear_line(tmp_path: Path) -> None:
    (tmp_path / "file").write_text("in the way")
    done = run(command(tmp_path / "file" / "shop"))
    assert done.returncode == 1
    assert done.stderr.count("\n") == 1
    assert "--data" in done.stderr


def test_silent_connections_do_not_hold_up_others(server: Running) -> None:
    """All of them are still open after the answer: it cannot have waited for one to be given up."""
    silent = [socket.create_connection(("127.0.0.1", server.port)) for _ in range(40)]
    assert server.get("/api/v1/health").status_code == 200
    for one in silent:
        one.setblocking(False)
        with pytest.raises(BlockingIOError):
            one.recv(1)
        one.close()


def test_the_installed_command_is_the_same(data: Path) -> None:
    name = "flangebook.exe" if sys.platform == "win32" else "flangebook"
    done = run([str(Path(sys.executable).parent / name), "--version"])
    assert done.returncode == 0
    assert done.stdout.startswith("flangebook ")


def test_the_order_search_is_made_ready_only_after_it_says_it_is_ready(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str], tmp_path: Path
) -> None:
    said: list[str] = []
    warmed = threading.Event()

    def warm_up() -> None:
        said.append(capsys.readouterr().out)
        warmed.set()

    monkeypatch.setattr("flangebook.planning.warm_up.warm_up", warm_up)
    shop_server._ready("http://127.0.0.1:1", tmp_path)
    assert warmed.wait(PATIENCE_S)
    assert said[0].startswith("Flangebook is ready at http://127.0.0.1:1 ")
