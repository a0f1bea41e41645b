"""The processes that calculate: lost, cancelled, bounded, idle, stopped."""

from __future__ import annotations

import os
import signal
import sys
import threading
import time
from collections.abc import Callable, Iterator
from concurrent.futures import Future, ThreadPoolExecutor
from pathlib import Path
from typing import Any

import pytest

from flangebook.bending.errors import OutlineError
from flangebook.planning.deadline import PlanLimits
from flangebook.serving.workers import worker, workers
from flangebook.serving.workers.worker_process import MOST_BYTES
from flangebook.serving.workers.workers import MOST, MOST_PLANS, MOST_WAITING, Processes
from flangebook.shop.store import FILE_NAME, Store, open_store
from flangebook.shop.work import BusyError, LostError, NotWantedError, StoppedError

from .jobs import worker_jobs
from .running import PATIENCE_S

JOBS = Path(__file__).parent.parent
linux = pytest.mark.skipif(sys.platform != "linux", reason="only Linux bounds the memory")


@pytest.fixture(scope="module")
def processes() -> Iterator[Processes]:
    """Workers that find this file's jobs, for tests that leave some of them alive."""
    with pytest.MonkeyPatch.context() as patch:
        patch.setenv("PYTHONPATH", str(JOBS))
        made = Processes()
        yield made
        made.stop()


@pytest.fixture(scope="module")
def store(processes: Processes, tmp_path_factory: pytest.TempPathFactory) -> Iterator[Store]:
    made = open_store(tmp_path_factory.mktemp("shop"), processes)
    yield made
    made.close()


class Asked:
    """Somebody who waits for a long job, told how far it is."""

    def __init__(self, store: Store, job: Callable[..., Any], threads: ThreadPoolExecutor) -> None:
        self.begun = threading.Event()
        self.left = threading.Event()
        self.process = 0
        limits = PlanLimits(cancelled=self._cancelled, progress=self._progress)
        self.answer: Future[Any] = threads.submit(store.work, job, limits=limits)

    def wait(self) -> Asked:
        assert self.begun.wait(PATIENCE_S)
        return self

    def leave(self) -> None:
        self.left.set()
        with pytest.raises(NotWantedError):
            self.answer.result(PATIENCE_S)

    def _cancelled(self) -> bool:
        if self.left.is_set():
            raise NotWantedError
        return False

    def _progress(self, process: Any) -> None:
        self.process = process
        self.begun.set()


def gone(process: int) -> bool:
    """Whether there is no such process any more."""
    until = time.monotonic() + PATIENCE_S
    while time.monotonic() < until:
        try:
            os.kill(process, 0)
        except ProcessLookupError:
            return True
        time.sleep(0.02)
    return False


def test_a_job_is_done_in_another_process_on_the_same_shop(store: Store) -> None:
    assert store.work(worker_jobs.number) != os.getpid()
    assert store.work(worker_jobs.shop_id) == store.shop_id


def test_one_after_another_is_done_by_the_same_process(store: Store) -> None:
    assert len({store.work(worker_jobs.number) for _ in range(5)}) == 1


def test_an_error_comes_with_all_that_it_keeps(store: Store) -> None:
    with pytest.raises(OutlineError) as caught:
        store.work(worker_jobs.refused)
    assert (caught.value.where, caught.value.code, caught.value.edges) == (
        "points_mm", "crossing", (3, 5),
    )  # fmt: skip
    assert "worker_jobs" in "".join(caught.value.__notes__)


def test_a_process_that_is_killed_is_one_failed_job(store: Store) -> None:
    with ThreadPoolExecutor() as threads:
        asked = Asked(store, worker_jobs.deaf, threads).wait()
        os.kill(asked.process, signal.SIGKILL)
        with pytest.raises(LostError, match="Try again"):
            asked.answer.result(PATIENCE_S)
    assert store.work(worker_jobs.number) != asked.process


@linux
def test_a_process_that_takes_too_much_memory_is_one_failed_job(store: Store) -> None:
    before = store.work(worker_jobs.number)
    with pytest.raises(LostError):
        store.work(worker_jobs.hog, MOST_BYTES)
    assert gone(before)
    assert store.work(worker_jobs.number) != before


def test_who_leaves_ends_the_job_and_the_process_stays(store: Store) -> None:
    with ThreadPoolExecutor() as threads:
        asked = Asked(store, worker_jobs.heeding, threads).wait()
        asked.leave()
    assert store.work(worker_jobs.number) == asked.process


def test_who_leaves_a_job_that_asks_nothing_ends_its_process(store: Store) -> None:
    with ThreadPoolExecutor() as threads:
        asked = Asked(store, worker_jobs.deaf, threads).wait()
        asked.leave()
        assert gone(asked.process)
    assert store.work(worker_jobs.number) != asked.process


def test_long_jobs_leave_a_process_for_short_ones_and_only_so_many_wait(
    store: Store, processes: Processes
) -> None:
    with ThreadPoolExecutor(32) as threads:
        at_work = [Asked(store, worker_jobs.heeding, threads).wait() for _ in range(MOST_PLANS)]
        waiting = [Asked(store, worker_jobs.heeding, threads) for _ in range(MOST_WAITING)]
        while processes._waiting < MOST_WAITING:
            time.sleep(0.01)
        with pytest.raises(BusyError):
            store.work(worker_jobs.heeding, limits=PlanLimits())
        short = {threads.submit(store.work, worker_jobs.number) for _ in range(10)}
        numbers = {one.result(PATIENCE_S) for one in short}
        assert numbers.isdisjoint({one.process for one in at_work})
        assert len(processes.numbers) <= MOST
        waiting[0].leave()  # it has not begun
        assert not waiting[0].begun.is_set()
        at_work[0].leave()
        for one in (*waiting[1:], at_work[1]):
            one.left.set()
    assert processes._plans == processes._waiting == 0


@pytest.fixture
def others(processes: Processes, store: Store, monkeypatch: pytest.MonkeyPatch) -> Iterator[Store]:
    """The same shop, with workers of its own."""
    made = Processes()
    yield Store(store.engine, store.cache, made)
    made.stop()


def test_those_that_nobody_asks_are_ended(others: Store, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(workers, "IDLE_S", 0.1)
    assert gone(others.work(worker_jobs.number))
    assert isinstance(others.workers, Processes)
    assert others.workers.numbers == []
    assert others.work(worker_jobs.number)


def test_one_may_be_ready_before_somebody_asks(others: Store) -> None:
    assert isinstance(others.workers, Processes)
    others.workers.expect()
    others.workers.expect()
    [ready] = others.workers.numbers
    assert others.work(worker_jobs.number) == ready


def test_a_plan_that_takes_long_leaves_a_worker_ready_for_others(
    others: Store, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(workers, "SPARE_S", 0.1)
    assert isinstance(others.workers, Processes)
    with ThreadPoolExecutor() as threads:
        asked = Asked(others, worker_jobs.heeding, threads).wait()
        while len(others.workers.numbers) == 1:
            time.sleep(0.02)
        [ready] = set(others.workers.numbers) - {asked.process}
        assert others.work(worker_jobs.number) == ready
        asked.leave()


def test_when_the_server_stops_those_who_wait_are_told_so(others: Store) -> None:
    assert isinstance(others.workers, Processes)
    with ThreadPoolExecutor() as threads:
        at_work = [Asked(others, worker_jobs.deaf, threads).wait() for _ in range(MOST_PLANS)]
        waiting = Asked(others, worker_jobs.deaf, threads)
        others.workers.stop()
        for one in (*at_work, waiting):
            with pytest.raises(StoppedError):
                one.answer.result(PATIENCE_S)
    with pytest.raises(StoppedError):
        others.work(worker_jobs.number)
    assert all(gone(one.process) for one in at_work)


def test_the_file_can_be_moved_while_nobody_asks(others: Store, tmp_path: Path) -> None:
    first = open_store(tmp_path / "first", others.workers)
    assert first.work(worker_jobs.shop_id) == first.shop_id
    first.close()
    assert isinstance(others.workers, Processes)
    others.workers.let_go()
    (tmp_path / "first").rename(tmp_path / "moved")
    assert not list((tmp_path / "moved").glob(f"{FILE_NAME}-*"))
    again = open_store(tmp_path / "moved", others.workers)
    assert again.work(worker_jobs.shop_id) == again.shop_id
    again.close()


def test_the_first_job_of_a_worker_may_take_longer(monkeypatch: pytest.MonkeyPatch, tmp_path: Path):
    """Seen: on a slow machine the first start ended while all was still being compiled."""
    monkeypatch.setenv("PYTHONPATH", str(JOBS))
    monkeypatch.setattr(worker, "LONGEST_S", 0.5)
    made = Processes()
    store = open_store(tmp_path, made)
    assert store.work(worker_jobs.slow, 1.5) == 1.5
    with pytest.raises(LostError):
        store.work(worker_jobs.slow, PATIENCE_S)
    store.close()
    made.stop()
