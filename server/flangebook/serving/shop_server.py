"""Open the shop and serve it, in that order, with one clear sentence when either fails."""

from __future__ import annotations

import os
import shutil
import threading
from contextlib import ExitStack
from pathlib import Path

from flask import Flask
from sqlalchemy.exc import SQLAlchemyError

from flangebook.api.app import close_app, create_app
from flangebook.api.config import Config
from flangebook.serving.listener import Listener, ListenError
from flangebook.shop.errors import ShopError
from flangebook.shop.holding import held
from flangebook.shop.store import FILE_NAME

_UNFINISHED = "unfinished"


class ServeError(Exception):
    """The shop cannot be served; the message says why and what helps."""


def serve(port: int, data: Path, demo: Path | None) -> None:
    """Serve the shop kept in ``data`` until a signal says stop.

    demo: folder of the demo shop, loaded when there is no shop in ``data`` yet; None: not.
    Raises ServeError.
    """
    try:
        listener = Listener(port)
    except ListenError as error:
        raise ServeError(str(error)) from error
    with ExitStack() as open_things:
        try:
            open_things.enter_context(held(data))
            app = open_shop(data, demo)
        except BaseException as error:
            listener.close()
            raise _as_serve_error(error, data) from error
        open_things.callback(close_app, app)
        listener.serve(app, lambda: _ready(listener.address, data))


def open_shop(data: Path, demo: Path | None) -> Flask:
    """The app on the shop in ``data``.

    A new shop is filled in a folder of its own and moved into place whole, so that one cut
    off on the way leaves nothing behind that looks like a shop.
    """
    if not (data / FILE_NAME).exists():
        new = data / _UNFINISHED
        shutil.rmtree(new, ignore_errors=True)
        close_app(create_app(Config(data=new, demo=demo)))
        os.replace(new / FILE_NAME, data / FILE_NAME)
        shutil.rmtree(new)
    return create_app(Config(data=data))


def _ready(address: str, data: Path) -> None:
    """Say so, and only then get the order search ready, beside whatever is asked."""
    print(f"Flangebook is ready at {address} (shop in {data}, Ctrl-C stops it)", flush=True)
    threading.Thread(target=_warm_up, name="warm-up", daemon=True).start()


def _warm_up() -> None:
    # Loaded here: it brings the compiler, which a start should not wait for.
    from flangebook.bending.ordering.warm_up import warm_up  # noqa: PLC0415

    warm_up()


def _as_serve_error(error: BaseException, data: Path) -> BaseException:
    match error:
        case ShopError():
            return ServeError(str(error))
        case SQLAlchemyError():
            why = str(error.__cause__ or error)
            return ServeError(
                f"The shop in {data} cannot be opened: {why}. Choose another folder with --data, "
                "or put the file back from a copy."
            )
        case OSError():
            return ServeError(
                f"The folder {data} cannot be used: {error.strerror or error}. Choose another "
                "with --data."
            )
        case _:
            return error
