"""The web app: one shop, served."""

from __future__ import annotations

from typing import Any

from flask import Flask
from werkzeug.routing import IntegerConverter, Map

from flangebook.api import bodies, caller, guard, names_of_0_3, problems, static
from flangebook.api.config import Config
from flangebook.api.openapi import make_api
from flangebook.api.resources import (
    backups,
    bends,
    cards,
    crew,
    evidence,
    feed,
    labels,
    outlines,
    parts,
    press_screens,
    results,
    runs,
    shop,
)
from flangebook.shop import demo
from flangebook.shop.backups.schedule import Keeper
from flangebook.shop.store import Store, open_store
from flangebook.shop.work import Workers
from flangebook.use_cases import intake

MOST_NUMBER = 1_000_000


class WholeNumber(IntegerConverter):
    """A number in an address: one past every bound is nothing's number, so it is not there."""

    def __init__(self, url_map: Map, **bounds: Any) -> None:
        super().__init__(url_map, **{"max": MOST_NUMBER, **bounds})


def create_app(config: Config, workers: Workers | None = None) -> Flask:
    """An app on the shop in ``config.data``, which is made and filled where it is new.

    workers: who does long calculations; None: the thread that is asked. Close it with
    ``close_app``.
    """
    store = open_store(config.data, workers)
    _fill(store, config)
    app = Flask(__name__, static_folder=None)
    app.json.sort_keys = False  # type: ignore[attr-defined]
    app.extensions["flangebook.store"] = store
    app.extensions["flangebook.config"] = config
    app.extensions["flangebook.copies"] = Keeper(config.data)
    app.url_map.converters["int"] = WholeNumber
    bodies.register(app)
    app.extensions["flangebook.attempts"] = crew.new_attempts()
    guard.register(app, config)
    caller.register(app, config)
    static.register(app, config)
    api = make_api(app)
    problems.register(app)
    names_of_0_3.register(app)
    for group in (
        feed, crew, bends, parts, cards, results, evidence, labels, shop, backups, outlines,
        press_screens, runs,
    ):  # fmt: skip
        api.register_blueprint(group.blp)
    return app


def close_app(app: Flask) -> None:
    """Close the shop's file."""
    store: Store = app.extensions["flangebook.store"]
    store.close()


def _fill(store: Store, config: Config) -> None:
    if not demo.is_empty(store):
        return
    if config.demo is None:
        demo.load_starter_metals(store, intake)
    else:
        demo.load(store, config.demo, intake)
