"""The server's log: beside the shop, its owner's alone, never larger than so much."""

from __future__ import annotations

import logging
import socket
import stat
import sys
from collections.abc import Iterator
from pathlib import Path

import pytest
import requests

from flangebook.serving import log
from flangebook.serving.http.tls import BrokenHandshakes
from serving.lan import on_the_network
from serving.running import PATIENCE_S


@pytest.fixture
def begun(tmp_path: Path) -> Iterator[Path]:
    """The folder of a log that was begun in this process."""
    handlers, loud = log.log.handlers[:], logging.raiseExceptions
    log.begin(tmp_path)
    try:
        yield tmp_path / log.FOLDER
    finally:
        for handler in log.log.handlers:
            handler.close()
        log.log.handlers[:], logging.raiseExceptions = handlers, loud


def test_files_take_turns_and_are_private(begun: Path):
    for number in range(70):
        log.log.warning("%d %s", number, "x" * 100_000)
    files = sorted(begun.iterdir())
    assert len(files) == 1 + log.OLD_FILES
    for file in files:
        assert file.stat().st_size <= log.MOST_BYTES
        if sys.platform != "win32":
            assert stat.S_IMODE(file.stat().st_mode) == 0o600
    assert " WARNING 69 x" in (begun / log.NAME).read_text("utf-8")


def test_where_no_file_can_be_made_stderr_still_has_it(
    begun: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
):
    (tmp_path / "file").touch()
    log.begin(tmp_path / "file")
    log.log.warning("The disk is full.")
    assert capsys.readouterr().err == "The disk is full.\n"


def test_what_the_app_logs_is_in_it(begun: Path):
    logging.getLogger("flangebook.shop.keeping").error("The copy failed.")
    assert "The copy failed." in (begun / log.NAME).read_text("utf-8")


def test_a_minute_has_one_line_about_broken_handshakes(begun: Path):
    counted = BrokenHandshakes()
    for _ in range(50):
        counted.count("192.0.2.7", ConnectionResetError("gone"))
    again = BrokenHandshakes(quiet_s=0)
    again._unsaid = 49
    again.count("192.0.2.8", ConnectionResetError("gone"))
    lines = (begun / log.NAME).read_text("utf-8").splitlines()
    assert len(lines) == 2
    assert "192.0.2.7" in lines[0]
    assert "49 more" in lines[1]


@pytest.mark.slow
def test_broken_handshakes_at_the_door_are_one_line(tmp_path: Path):
    with on_the_network(tmp_path / "shop", "--empty") as lan:
        port = int(lan.https.rpartition(":")[2])
        for said in [b"GET / HTTP/1.1\r\n\r\n", b"\x16\x03\x01\x00\x05hello", b"x" * 500] * 5:
            with socket.create_connection(("127.0.0.1", port), timeout=PATIENCE_S) as line:
                line.sendall(said)
                while line.recv(4096):
                    pass
        with pytest.raises(requests.exceptions.SSLError):  # it does not trust the shop
            requests.get(f"{lan.https}/api/v1/health", timeout=PATIENCE_S)
        _, _, err = lan.server.stop()
    kept = (tmp_path / "shop" / log.FOLDER / log.NAME).read_text("utf-8")
    for lines in (err.splitlines(), kept.splitlines()):
        assert len(lines) == 1, lines
        assert "TLS handshake with 127.0.0.1 broke" in lines[0]
