"""What comes before a request's body is bounded, and refused in the app's own form."""

from __future__ import annotations

import json
import socket
import sys
from collections.abc import Iterator
from concurrent.futures import ThreadPoolExecutor
from contextlib import suppress
from pathlib import Path

import pytest

from flangebook.serving.http.open_connections import MOST_OPEN
from serving.running import Running, serving

pytestmark = pytest.mark.slow


@pytest.fixture(scope="module")
def server(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Running]:
    # Its memory is measured, of which nothing may be another process's.
    folder = tmp_path_factory.mktemp("heads") / "shop"
    with serving(folder, "--empty", from_nothing=True) as running:
        yield running


def resident_mb(server: Running) -> float:
    text = Path(f"/proc/{server.process.pid}/status").read_text()
    return int(text.partition("VmHWM:")[2].split()[0]) / 1024


def said(server: Running, *pieces: bytes) -> bytes:
    """What comes back for these bytes, sent as far as the server takes them."""
    with socket.create_connection(("127.0.0.1", server.port), timeout=60) as line:
        with suppress(ConnectionError):
            for piece in pieces:
                line.sendall(piece)
        answer = b""
        while piece := line.recv(65536):
            answer += piece
    return answer


def refused(answer: bytes, status: int) -> str:
    head, _, body = answer.partition(b"\r\n\r\n")
    assert int(head.split(b" ")[1]) == status, answer[:300]
    assert b"content-type: application/problem+json" in head.lower(), head
    told = json.loads(body)
    assert told["status"] == status
    detail: str = told["detail"]
    return detail


def ask(server: Running, *headers: bytes, line: bytes = b"GET /api/v1/health HTTP/1.1") -> bytes:
    host = b"Host: 127.0.0.1:%d" % server.port
    return b"\r\n".join([line, host, b"Connection: close", *headers, b"", b""])


def test_a_head_within_the_bounds_is_answered(server: Running):
    headers = [b"X-%d: y" % i for i in range(98)]
    assert b" 200 " in said(server, ask(server, *headers)).partition(b"\r\n")[0]


def test_a_line_without_end_is_not_read_into_memory(server: Running):
    before = resident_mb(server)
    long = [b"x" * 1_000_000] * 50
    starts = [(b"GET /", 414), (ask(server)[:-2] + b"X-Long: ", 431)] * 4
    with ThreadPoolExecutor(8) as threads:
        answers = list(threads.map(lambda start: said(server, start[0], *long), starts))
    for answer, (_, status) in zip(answers, starts, strict=True):
        refused(answer, status)
    # 400 MB were sent; what the search for orders loads after the start is some 100.
    assert resident_mb(server) - before < 200


@pytest.mark.parametrize("count", [99, 10_000])
def test_too_many_headers(server: Running, count: int):
    detail = refused(said(server, ask(server, *[b"X: y"] * count)), 431)
    assert "100" in detail


def test_two_lengths_of_a_body(server: Running):
    line = b"POST /api/v1/bend HTTP/1.1"
    for lengths in ([b"2", b"2"], [b"2", b"5"]):
        headers = [b"Content-Length: " + one for one in lengths]
        text = ask(server, b"Content-Type: application/json", *headers, line=line) + b"{}"
        assert "Content-Length" in refused(said(server, text), 400)


@pytest.mark.parametrize("length", [b"-2", b"+2", b"2_0", b"two", b"2, 2", b""])
def test_a_length_that_is_no_number(server: Running, length: bytes):
    headers = [b"Content-Type: application/json", b"Content-Length: " + length]
    text = ask(server, *headers, line=b"POST /api/v1/bend HTTP/1.1") + b"{}"
    assert "Content-Length" in refused(said(server, text), 400)


def test_a_length_and_pieces_as_well(server: Running):
    headers = [b"Content-Length: 2", b"Transfer-Encoding: chunked"]
    text = ask(server, *headers, line=b"POST /api/v1/bend HTTP/1.1") + b"2\r\n{}\r\n0\r\n\r\n"
    refused(said(server, text), 400)


def chunked(server: Running, pieces: bytes) -> bytes:
    headers = [b"Content-Type: application/json", b"Transfer-Encoding: chunked"]
    return said(server, ask(server, *headers, line=b"POST /api/v1/bend HTTP/1.1") + pieces)


def test_a_body_in_pieces_is_read_as_one(server: Running):
    """The app's own words about a body of {}: it has to have been read whole."""
    whole = [b"Content-Type: application/json", b"Content-Length: 2"]
    plain = said(server, ask(server, *whole, line=b"POST /api/v1/bend HTTP/1.1") + b"{}")
    words = refused(plain, 422)
    assert refused(chunked(server, b"1;x=y\r\n{\r\n1\r\n}\r\n0\r\nX: y\r\n\r\n"), 422) == words


@pytest.mark.parametrize(
    "pieces", [b"x\r\n{}", b"-2\r\n{}", b"2\r\n{}}\r\n0\r\n\r\n", b"0\r\n" + b"X: y\r\n" * 101]
)
def test_pieces_that_are_not_in_order(server: Running, pieces: bytes):
    refused(chunked(server, pieces), 400)


def test_pieces_without_end(server: Running):
    piece = b"%x\r\n" % 100_000 + b" " * 100_000 + b"\r\n"
    refused(chunked(server, piece * 100), 413)


def test_a_body_over_the_limit_hears_so_before_the_connection_goes(server: Running):
    head = ask(
        server, b"Content-Type: application/json", b"Content-Length: 70000000",
        line=b"POST /api/v1/bend HTTP/1.1",
    )  # fmt: skip
    refused(said(server, head, *[b" " * 1_000_000] * 20), 413)


@pytest.mark.parametrize(
    ("line", "status"),
    [
        (b"GET /api/v1/health HTTP/9.9", 505),
        (b"GET /api/v1/health NONSENSE", 400),
        (b"GET", 400),
        (b"G@T /api/v1/health HTTP/1.1", 405),
        (b"GET api HTTP/1.1", 400),
        (b"GET /%zz/\xff HTTP/1.1", 400),
        (b"GET //evil.example/x HTTP/1.1", 400),
        (b"GET http://[::1 HTTP/1.1", 400),
        (b"CONNECT 127.0.0.1:80 HTTP/1.1", 405),
        (b"BREW /api/v1/health HTTP/1.1", 405),
        (b"DELETE / HTTP/1.1", 405),
        (b"get /api/v1/health HTTP/1.1", 400),
        (b"GET /api/v1/nothing HTTP/1.1", 404),
        (b"GET /api/v1/cards/%00%ff HTTP/1.1", 404),
        (b"GET /made/../../x HTTP/1.1", 404),
        (b"GET /no-such-file.js HTTP/1.1", 404),
        (b"GET /api/v1/cards?%ff=%ff HTTP/1.1", 422),
    ],
)
def test_a_line_that_is_none(server: Running, line: bytes, status: int):
    refused(said(server, ask(server, line=line)), status)


def test_five_hundred_at_once_are_taken(server: Running):
    allow_open_files(1200)
    lines = []
    try:
        for _ in range(500):
            lines.append(socket.create_connection(("127.0.0.1", server.port), timeout=60))
            lines[-1].sendall(ask(server))
        answers = [line.recv(65536).partition(b"\r\n")[0] for line in lines]
        assert set(answers) == {b"HTTP/1.1 200 OK"}
    finally:
        for line in lines:
            line.close()


def test_where_too_many_are_open_the_oldest_without_a_request_goes(server: Running):
    """No time passes for it: the newest are all open when the first is cut."""
    allow_open_files(2000)
    lines = []
    try:
        for _ in range(MOST_OPEN + 20):
            lines.append(socket.create_connection(("127.0.0.1", server.port), timeout=60))
        assert b" 200 " in said(server, ask(server)).partition(b"\r\n")[0]
        with suppress(ConnectionError):
            assert lines[0].recv(1) == b""
    finally:
        for line in lines:
            line.close()
    assert b" 200 " in said(server, ask(server)).partition(b"\r\n")[0]


def allow_open_files(count: int) -> None:
    """Raise this process's own limit, where it is lower."""
    if sys.platform == "win32":
        return
    import resource

    soft, hard = resource.getrlimit(resource.RLIMIT_NOFILE)
    if soft < count:
        resource.setrlimit(resource.RLIMIT_NOFILE, (count, hard))
