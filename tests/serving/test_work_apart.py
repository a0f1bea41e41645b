"""Work apart from the server: the same answers, and what happens when a worker or an asker goes."""

from __future__ import annotations

import os
import shutil
import signal
import socket
import subprocess
import sys
import time
from collections.abc import Iterator
from concurrent.futures import Future, ThreadPoolExecutor
from contextlib import suppress
from pathlib import Path
from typing import Any
from urllib.parse import urlsplit

import pytest
import requests
from heavy_parts import worst_box

from flangebook.api.app import close_app, create_app
from flangebook.api.config import Config

from .running import PATIENCE_S, Running, serving

pytestmark = [
    pytest.mark.slow,
    pytest.mark.skipif(sys.platform != "linux", reason="reads /proc"),
]
LINES = {"Accept": "application/x-ndjson"}
BEND = {"metal": "mild-steel-cr", "thickness_mm": 2, "bend_length_mm": 431,
        "included_angle_deg": 97}  # fmt: skip
SHEET = {"title": "", "metal": "mild-steel-cr", "thickness_mm": 1.5}
ANGLE = {**SHEET, "bend_length_mm": 313, "flats_mm": [41, 62],
         "bends": [{"included_angle_deg": 90, "direction": "up"}]}  # fmt: skip
CROSSED = b"0\nSECTION\n2\nENTITIES\n0\nLINE\n10\n0\n20\n0\n11\n9\n21\n9\n0\nENDSEC\n0\nEOF\n"


@pytest.fixture(scope="module")
def server(demo_data: Path, tmp_path_factory: pytest.TempPathFactory) -> Iterator[Running]:
    folder = tmp_path_factory.mktemp("served") / "shop"
    shutil.copytree(demo_data, folder)
    with serving(folder, from_nothing=True) as running:
        yield running


def workers_of(server: Running) -> set[int]:
    """The processes that it started."""
    tasks = Path(f"/proc/{server.process.pid}/task").iterdir()
    return {int(one) for task in tasks for one in (task / "children").read_text().split()}


def processor_s(process: int) -> float:
    """What a process has used of the processor; so much for good when it is gone [s]."""
    try:
        fields = Path(f"/proc/{process}/stat").read_text().rpartition(")")[2].split()
    except FileNotFoundError:
        return -1.0
    return (int(fields[11]) + int(fields[12])) / os.sysconf("SC_CLK_TCK")


def at_work(process: int, more_s: float = 0.3) -> None:
    """Wait until it has worked for so long."""
    began, until = processor_s(process), time.monotonic() + PATIENCE_S
    while processor_s(process) - began < more_s:
        assert time.monotonic() < until, "it does nothing"
        time.sleep(0.02)


def busy(server: Running) -> None:
    """Wait until a worker is at work."""
    until = time.monotonic() + PATIENCE_S
    while max(map(processor_s, workers_of(server)), default=0.0) < 1.0:
        assert time.monotonic() < until, "no worker is at work"
        time.sleep(0.02)


def fresh_worker(server: Running) -> int:
    """The one that plans next, of those there are: new, and the last to have had a plan."""
    kill_workers(server)
    with ThreadPoolExecutor() as threads:
        plan = threads.submit(ask, server, {**ANGLE, "bend_length_mm": time.time() % 1000 + 10})
        while not (there := workers_of(server)):
            time.sleep(0.01)
        assert plan.result().status_code == 200
    [first] = there
    return first


def kill_workers(server: Running) -> None:
    for one in workers_of(server):
        with suppress(ProcessLookupError):
            os.kill(one, signal.SIGKILL)
    while workers_of(server):
        time.sleep(0.02)


def ask(server: Running, part: dict[str, Any], **how: Any) -> requests.Response:
    return requests.post(f"{server.address}api/v1/plan", json=part, timeout=PATIENCE_S, **how)


def asked(server: Running, length_mm: float, threads: ThreadPoolExecutor) -> Future[Any]:
    return threads.submit(ask, server, worst_box(length_mm))


def test_the_answers_are_the_same_to_the_byte_and_the_server_stays_without_the_compiler(
    server: Running, demo_data: Path, tmp_path: Path
) -> None:
    wanted: list[tuple[str, str, dict[str, Any]]] = [
        ("post", "bend", {"json": BEND}),
        ("post", "stroke", {"json": BEND}),
        ("post", "plan", {"json": ANGLE}),
        ("post", "plan", {"json": {**ANGLE, "metal": "none"}}),
        ("post", "outlines/dxf?kind=punch", {"data": CROSSED}),
        ("get", "chart?metal=mild-steel-cr&bend_length_mm=500", {}),
        ("get", "learned?metal=mild-steel-cr", {}),
        ("get", "test-bends?metal=mild-steel-cr", {}),
        ("get", "press/gauge", {}),
        ("get", "cards/SHE7FA1/fresh", {}),
    ]
    shutil.copytree(demo_data, tmp_path / "here")
    app = create_app(Config(tmp_path / "here"))
    here = app.test_client()
    dxf = {"Content-Type": "image/vnd.dxf"}
    for how, path, body in wanted:
        headers = dxf if "data" in body else {}
        there = requests.request(
            how, f"{server.address}api/v1/{path}", **body, headers=headers, timeout=PATIENCE_S
        )
        alone = here.open(f"/api/v1/{path}", method=how.upper(), headers=headers, **body)
        assert (there.status_code, there.content) == (alone.status_code, alone.data), path
    close_app(app)
    drawn = requests.post(f"{server.address}api/v1/blank.dxf", json=ANGLE, timeout=PATIENCE_S)
    assert drawn.status_code == 200  # ezdxf writes the moment into it
    assert workers_of(server)
    maps = Path(f"/proc/{server.process.pid}/maps").read_text()
    assert "numba" not in maps
    assert "llvmlite" not in maps


def test_a_worker_that_is_killed_is_one_failed_plan(server: Running) -> None:
    with ThreadPoolExecutor() as threads:
        process = fresh_worker(server)
        lost = asked(server, 401, threads)
        at_work(process)
        os.kill(process, signal.SIGKILL)
        answer = lost.result()
    assert answer.status_code == 503
    assert answer.headers["Content-Type"] == "application/problem+json"
    assert answer.headers["Retry-After"]
    assert "Nothing was lost" in answer.json()["detail"]
    assert ask(server, ANGLE).status_code == 200


def test_a_plan_told_line_by_line_says_so_too(server: Running) -> None:
    process = fresh_worker(server)
    with ask(server, worst_box(402), headers=LINES, stream=True) as answer:
        lines = answer.iter_lines()
        assert b"progress" in next(lines)
        at_work(process)
        os.kill(process, signal.SIGKILL)
        *_, last = lines
    assert b'"problem"' in last
    assert b"503" in last


@pytest.mark.parametrize("headers", [{}, LINES])
def test_who_leaves_ends_the_work(server: Running, headers: dict[str, str]) -> None:
    """A plan that takes 5 s of the processor has 2 s more at most; as a rule far less."""
    process = fresh_worker(server)
    with requests.Session() as session:
        request = requests.Request(
            "POST", f"{server.address}api/v1/plan", json=worst_box(403), headers=headers
        )
        with socket.create_connection(("127.0.0.1", server.port)) as line:
            line.sendall(_spoken(session.prepare_request(request)))
            at_work(process)
            left = processor_s(process)
        used, still = left, 0
        while still < 20 and used - left < 10.0:
            time.sleep(0.1)
            now = processor_s(process)
            still = still + 1 if now in (used, -1.0) else 0
            used = max(now, used)
    assert used - left < 2.0


def _spoken(request: requests.PreparedRequest) -> bytes:
    lines = [f"POST {request.path_url} HTTP/1.1", f"Host: {urlsplit(request.url or '').netloc}"]
    lines += [f"{name}: {value}" for name, value in request.headers.items()]
    assert isinstance(request.body, bytes)
    return "\r\n".join(lines).encode() + b"\r\n\r\n" + request.body


def test_others_are_answered_while_the_worst_plans_run(server: Running) -> None:
    """None of the plans can have ended before: each is stopped after that."""
    with ThreadPoolExecutor() as threads:
        plans = [asked(server, 410 + n, threads) for n in range(4)]
        busy(server)
        assert server.get("/api/v1/health").status_code == 200
        assert server.get("/api/v1/cards/SHE7FA1").status_code == 200
        bend = {**BEND, "bend_length_mm": 432}
        url = f"{server.address}api/v1/bend"
        assert requests.post(url, json=bend, timeout=PATIENCE_S).status_code == 200
        assert not all(plan.done() for plan in plans)
        assert len(workers_of(server)) <= 3
        while not all(plan.done() for plan in plans):
            for process in workers_of(server):
                os.kill(process, signal.SIGKILL)
            time.sleep(0.1)


def test_four_worst_plans_do_not_hold_up_the_stop(demo_data: Path, tmp_path: Path) -> None:
    shutil.copytree(demo_data, tmp_path / "shop")
    with serving(tmp_path / "shop", from_nothing=True) as running, ThreadPoolExecutor() as threads:
        plans = [asked(running, 420 + n, threads) for n in range(4)]
        busy(running)
        workers = workers_of(running)
        code, out, err = running.stop()
        assert (code, out) == (0, "")
        assert "Traceback" not in err
        for plan in plans:
            assert plan.exception() or plan.result().status_code == 503
    assert all(_ended(one) for one in workers)


def test_workers_end_with_a_server_that_is_killed(demo_data: Path, tmp_path: Path) -> None:
    shutil.copytree(demo_data, tmp_path / "shop")
    with serving(tmp_path / "shop", from_nothing=True) as running, ThreadPoolExecutor() as threads:
        plan = asked(running, 430, threads)
        busy(running)
        workers = workers_of(running)
        running.process.kill()
        assert plan.exception()
    assert all(_ended(one) for one in workers)


def _ended(process: int) -> bool:
    until = time.monotonic() + PATIENCE_S
    while time.monotonic() < until:
        if processor_s(process) < 0.0:
            return True
        time.sleep(0.02)
    return False


def test_a_worker_that_nobody_asks_any_more_ends_without_a_word() -> None:
    told = subprocess.run(
        [sys.executable, "-m", "flangebook.serving.workers.worker_process"],
        input=b"", capture_output=True, cwd="/", timeout=PATIENCE_S, check=False,
    )  # fmt: skip
    assert (told.returncode, told.stderr) == (0, b"")
