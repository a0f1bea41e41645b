"""The API without a network between, on a copy of the demo shop; and a real server."""

from __future__ import annotations

import shutil
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any

import pytest
from first_pieces import forget_first_pieces
from flask import Flask
from flask.testing import FlaskClient

from flangebook.api.app import close_app, create_app
from flangebook.api.config import Config
from serving.running import Running, serving

ANGLE: dict[str, Any] = {
    "title": "Angle",
    "metal": "mild-steel-cr",
    "thickness_mm": 2,
    "bend_length_mm": 300,
    "flats_mm": [40, 60],
    "bends": [{"included_angle_deg": 90, "direction": "up"}],
}


@pytest.fixture
def make_app(demo_data: Path, bare_data: Path, tmp_path: Path) -> Iterator[Callable[..., Flask]]:
    """Makes an app on a shop of its own: a copy of the demo shop or another, or an empty one."""
    made: list[Flask] = []

    def make(*, empty: bool = False, copied: Path = demo_data, **settings: Any) -> Flask:
        folder = tmp_path / f"shop{len(made)}"
        shutil.copytree(bare_data if empty else copied, folder)
        made.append(create_app(Config(folder, **settings)))
        return made[-1]

    yield make
    for app in made:
        close_app(app)


@pytest.fixture(scope="session")
def bare_data(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A folder with a shop as it is made new, with nothing in it but metals; to be copied."""
    folder = tmp_path_factory.mktemp("bare") / "shop"
    close_app(create_app(Config(folder)))
    return folder


@pytest.fixture(scope="session")
def untaught_data(demo_data: Path, tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A folder with a demo shop in which nothing was learned yet; to be copied."""
    folder = tmp_path_factory.mktemp("untaught") / "shop"
    shutil.copytree(demo_data, folder)
    app = create_app(Config(folder))
    forget_first_pieces(app.test_client())
    close_app(app)
    return folder


@pytest.fixture
def untaught(make_app: Callable[..., Flask], untaught_data: Path) -> FlaskClient:
    """A client of a demo shop in which nothing was learned yet."""
    return make_app(copied=untaught_data).test_client()


@pytest.fixture
def client(make_app: Callable[..., Flask]) -> FlaskClient:
    """A client of a demo shop of its own."""
    return make_app().test_client()


@pytest.fixture(scope="module")
def reader(demo_data: Path, tmp_path_factory: pytest.TempPathFactory) -> Iterator[FlaskClient]:
    """A client for tests that only read or are refused; a shop for the whole file."""
    folder = tmp_path_factory.mktemp("reader") / "shop"
    shutil.copytree(demo_data, folder)
    app = create_app(Config(folder))
    yield app.test_client()
    close_app(app)


@pytest.fixture(scope="module")
def server(demo_data: Path, tmp_path_factory: pytest.TempPathFactory) -> Iterator[Running]:
    """A real server in a process of its own, for a whole file."""
    folder = tmp_path_factory.mktemp("served") / "shop"
    shutil.copytree(demo_data, folder)
    with serving(folder) as running:
        yield running


@pytest.fixture
def angle() -> dict[str, Any]:
    """The plainest part."""
    return {**ANGLE, "flats_mm": list(ANGLE["flats_mm"]), "bends": [dict(ANGLE["bends"][0])]}


def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    """A server in a process of its own is more than `tests/run --quick` is for."""
    for item in items:
        if "server" in getattr(item, "fixturenames", ()):
            item.add_marker(pytest.mark.slow)
