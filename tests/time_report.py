"""Where the time of a run goes: the slowest tests, and each folder's share.

A test's processor time is its own, that of the programs that it started, and of theirs: what
they have used up so far, read before and after. So a server or a browser that several tests
share counts for each as far as it worked for that test. Only Linux tells of programs that
still run; elsewhere they count when they have ended.
"""

from __future__ import annotations

import os
import time
from collections import defaultdict
from collections.abc import Iterator
from pathlib import Path

import pytest

SLOWEST = 20
LOOK_EVERY_S = 0.1  # to look for programs of programs takes longer than many a test


class TimeReport:
    """A pytest plugin that prints the table under the tests' results."""

    def __init__(self) -> None:
        self._used: dict[str, float] = defaultdict(float)
        self._took: dict[str, float] = defaultdict(float)
        self._before = -1.0

    @pytest.hookimpl(wrapper=True)
    def pytest_runtest_protocol(self) -> Iterator[None]:
        """Note what the processor had done when the first test began; each other begins where the
        one before it ended."""
        if self._before < 0.0:
            self._before = processor_seconds()
        return (yield)

    @pytest.hookimpl(wrapper=True)
    def pytest_runtest_makereport(self, call: pytest.CallInfo[None]) -> Iterator[None]:
        """Write down what the processor did up to here, after a test and after what is tidied up;
        xdist carries it along."""
        report = yield
        if call.when != "setup":
            now = processor_seconds()
            report.processor_s = now - self._before
            self._before = now
        return report

    def pytest_runtest_logreport(self, report: pytest.TestReport) -> None:
        """Add up the phases of each test."""
        # Less than nothing where a program ended whose parent had ended before: what it did is no
        # longer told of. It was counted for the tests that it did it for.
        self._used[report.nodeid] += max(0.0, getattr(report, "processor_s", 0.0))
        self._took[report.nodeid] += report.duration

    def pytest_terminal_summary(self, terminalreporter: pytest.TerminalReporter) -> None:
        """Print the table, where there were enough tests to make one."""
        if len(self._used) <= SLOWEST:
            return
        write = terminalreporter.write_line
        terminalreporter.section("processor time and time, in seconds")
        for test in sorted(self._used, key=self._used.__getitem__, reverse=True)[:SLOWEST]:
            write(f"{self._used[test]:8.1f} {self._took[test]:8.1f}  {test}")
        write("")
        folders: dict[str, list[float]] = defaultdict(lambda: [0, 0.0, 0.0])
        for test, used in self._used.items():
            row = folders[os.path.dirname(test.partition("::")[0])]
            row[0] += 1
            row[1] += used
            row[2] += self._took[test]
        for folder, (tests, used, took) in sorted(folders.items(), key=lambda f: -f[1][1]):
            write(f"{used:8.1f} {took:8.1f}  {folder}: {tests} tests")


class _Started:
    """Programs that this one started, and those that they started, as far as they still run.

    Kept from one look to the next: the list of a program's children may miss some while others of
    them end.
    """

    def __init__(self) -> None:
        self._all: set[int] = set()
        self._looked = 0.0

    def used_s(self) -> float:
        """What the processor has done for them so far."""
        if time.monotonic() - self._looked > LOOK_EVERY_S:
            self._find(os.getpid())
            self._looked = time.monotonic()
        return sum(map(self._used_by, tuple(self._all)))

    def _find(self, process: int) -> None:
        for child in _children(process):
            self._all.add(child)
            self._find(child)

    def _used_by(self, process: int) -> float:
        """Of one running program, those of its own that ended counted in it."""
        try:
            words = Path(f"/proc/{process}/stat").read_text().rpartition(")")[2].split()
        except OSError:
            self._all.discard(process)
            return 0.0
        return sum(map(int, words[11:15])) / os.sysconf("SC_CLK_TCK")


_STARTED = _Started()


def processor_seconds() -> float:
    """What the processor has done so far for this program and all that it started."""
    times = os.times()
    ended = times.user + times.system + times.children_user + times.children_system
    return ended + _STARTED.used_s()


def _children(process: int) -> list[int]:
    try:
        tasks = list(Path(f"/proc/{process}/task").iterdir())
        words = [(task / "children").read_text().split() for task in tasks]
    except OSError:
        return []
    return [int(child) for line in words for child in line]
