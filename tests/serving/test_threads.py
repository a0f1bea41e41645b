"""The server's threads: a job waits only while as many as may be are at work."""

from __future__ import annotations

import sys
import threading

import pytest

from flangebook.serving.http.threads import Threads

LONG_S = 60.0


@pytest.fixture(autouse=True)
def turns_change_often():
    """Threads take turns after a microsecond, so that they meet between any two lines."""
    usual = sys.getswitchinterval()
    sys.setswitchinterval(1e-6)
    yield
    sys.setswitchinterval(usual)


def test_jobs_that_take_long_do_not_wait_for_each_other():
    """Jobs that come at once, again and again, are all under way at the same time."""
    threads = Threads(4, "test")
    for _ in range(500):
        together = threading.Barrier(5)
        for _ in range(4):
            threads.run(lambda together=together: together.wait(LONG_S))
        together.wait(LONG_S)


def test_a_thread_between_two_jobs_is_not_counted_as_idle():
    """Short jobs leave threads on their way to the next job; the long ones after them all run."""
    for _ in range(60):
        threads = Threads(4, "test")
        for pause in range(40):
            threads.run(lambda: None)
            for _ in range(pause * 5):
                pass
        together = threading.Barrier(5)
        for _ in range(4):
            threads.run(lambda together=together: together.wait(LONG_S))
        together.wait(LONG_S)


@pytest.mark.parametrize("most", [1, 3])
def test_no_more_threads_than_allowed(most):
    """Jobs above the number wait, and run in the order they came."""
    threads = Threads(most, f"at most {most}")
    begun: list[int] = []
    end, done = threading.Event(), threading.Semaphore(0)

    def job(number: int) -> None:
        begun.append(number)
        end.wait(LONG_S)
        done.release()

    for number in range(10):
        threads.run(lambda number=number: job(number))
    names = [thread.name for thread in threading.enumerate()]
    assert len([name for name in names if name.startswith(f"at most {most} ")]) == most
    end.set()
    for _ in range(10):
        assert done.acquire(timeout=LONG_S)
    assert sorted(begun) == list(range(10))
    assert sorted(begun[:most]) == list(range(most))
