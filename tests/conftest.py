"""What all tests share."""

from __future__ import annotations

import gc
import os
import shutil
import sys
import tempfile
from pathlib import Path

import pytest
from hypothesis import HealthCheck, settings
from hypothesis.internal.conjecture.providers import HypothesisProvider
from hypothesis.internal.constants_ast import Constants

from time_report import TimeReport

# A loaded machine is slow, not wrong: no time limit for an example, nor for making one.
settings.register_profile(
    "any machine", deadline=None, suppress_health_check=[HealthCheck.too_slow]
)
settings.load_profile("any machine")

ROOT = Path(__file__).resolve().parent.parent
DEMO_MADE = "FLANGEBOOK_DEMO_MADE"  # the variable that says where a run's demo shop lies


def pytest_configure(config: pytest.Config) -> None:
    """Have the time of each test added up, and the same examples drawn where that is asked for."""
    config.pluginmanager.register(TimeReport())
    if os.environ.get("FLANGEBOOK_ALIKE"):
        # hypothesis draws numbers that stand in the code too, from whatever is imported by then:
        # a seed alone would give other examples when a number anywhere in the code changes.
        HypothesisProvider._local_constants = Constants()


def pytest_collection_finish() -> None:
    """Have what thousands of collected tests are made of never looked through again for garbage,
    and what they make themselves less often: each look costs more than it finds."""
    gc.collect()
    gc.freeze()
    gc.set_threshold(20_000, 10, 10)


def pytest_unconfigure() -> None:
    """End the process that servers were forked from and wait for it: else what it and they did is
    in nobody's processor time."""
    started = sys.modules.get("multiprocessing.forkserver")
    if started:
        started._forkserver._stop()


@pytest.hookimpl(trylast=True)
def pytest_terminal_summary(terminalreporter: pytest.TerminalReporter) -> None:
    """Say above the closing line which checks beside the tests failed in this run."""
    failed = os.environ.get("FLANGEBOOK_FAILED_CHECKS")
    if failed:
        terminalreporter.section("checks that failed before the tests", red=True)
        terminalreporter.write_line(failed)


@pytest.fixture(scope="session")
def root() -> Path:
    """The repository."""
    return ROOT


@pytest.hookimpl
def pytest_xdist_setupnodes(config: pytest.Config) -> None:
    """Make the demo shop once for all the processes that run tests."""
    folder = tempfile.mkdtemp(prefix="flangebook-demo-")
    config.add_cleanup(lambda: shutil.rmtree(folder, ignore_errors=True))
    os.environ[DEMO_MADE] = str(make_demo(Path(folder)))


@pytest.fixture(scope="session")
def demo_data(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A folder with the demo shop; to be copied, not written to."""
    made = os.environ.get(DEMO_MADE)
    return Path(made) if made else make_demo(tmp_path_factory.mktemp("demo"))


def make_demo(folder: Path) -> Path:
    """The demo shop, as a first start makes it."""
    from flangebook.api.app import close_app
    from flangebook.serving.shop_server import open_shop

    close_app(open_shop(folder, ROOT / "demo_data"))
    return folder
