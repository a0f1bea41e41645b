"""What all tests share."""

from __future__ import annotations

import os
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


def pytest_configure(config: pytest.Config) -> None:
    """Have the time of each test added up, and the same examples drawn where that is asked for."""
    config.pluginmanager.register(TimeReport())
    if os.environ.get("FLANGEBOOK_ALIKE"):
        # hypothesis draws numbers that stand in the code too, from whatever is imported by then:
        # a seed alone would give other examples when a number anywhere in the code changes.
        HypothesisProvider._local_constants = Constants()


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


@pytest.fixture(scope="session")
def demo_data(tmp_path_factory: pytest.TempPathFactory, root: Path) -> Path:
    """A folder with the demo shop; to be copied, not written to."""
    from flangebook.api.app import close_app, create_app
    from flangebook.api.config import Config

    folder = tmp_path_factory.mktemp("demo")
    close_app(create_app(Config(folder, demo=root / "demo_data")))
    return folder
