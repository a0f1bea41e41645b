"""Open the shop and serve it, in that order, with one clear sentence when either fails."""

from __future__ import annotations

import ctypes
import os
import shutil
import sys
import threading
from contextlib import ExitStack, suppress
from dataclasses import dataclass, replace
from datetime import timedelta
from pathlib import Path
from typing import TYPE_CHECKING

from flask import Flask
from sqlalchemy.exc import SQLAlchemyError

from flangebook.api.app import close_app, create_app
from flangebook.api.config import Config, Network
from flangebook.api.resources.crew import join_address, new_code, pair_address
from flangebook.serving import log
from flangebook.serving.backup_thread import keeping_copies
from flangebook.serving.http import listener as doors
from flangebook.serving.http.listener import Listener, ListenError
from flangebook.serving.terminal import qr_text
from flangebook.serving.workers.workers import Processes
from flangebook.shop import crew
from flangebook.shop.backups.damage import need_undamaged
from flangebook.shop.errors import ShopError
from flangebook.shop.storage.file_lock import held
from flangebook.shop.store import FILE_NAME, Store

if TYPE_CHECKING:
    from flangebook.serving.lan.lan import Lan, LanOptions

_UNFINISHED = "unfinished"
FIRST_OWNER_FOR = timedelta(hours=1)
WARM_UP_AFTER_S = 1.0
_MOST_ARENAS = -8  # M_ARENA_MAX of glibc's malloc.h


class ServeError(Exception):
    """The shop cannot be served; the message says why and what helps."""


@dataclass(frozen=True, slots=True)
class Serving:
    """What to serve: port on this machine, the shop's folder, the demo shop's folder for a new
    shop (None: not), the network (None: this machine only), whether the app comes as the files
    it is written in (``Config.sources``), whether other processes calculate."""

    port: int
    data: Path
    demo: Path | None
    lan: LanOptions | None = None
    sources: bool = False
    workers: bool = True


def serve(wanted: Serving) -> None:
    """Serve the shop until a signal says stop. Raises ServeError."""
    _share_memory()
    own: Listener | None = None
    lan: Lan | None = None
    try:
        own = Listener(wanted.port)
        lan = _network(wanted)
    except BaseException as error:
        if own is not None:
            own.close()
        raise _as_serve_error(error, wanted.data) from error
    workers = Processes() if wanted.workers else None
    with ExitStack() as open_things:
        if workers:
            open_things.callback(workers.stop)
        try:
            open_things.enter_context(held(wanted.data))
            log.begin(wanted.data)
            app = open_shop(wanted.data, wanted.demo, lan, wanted.sources, workers)
        except BaseException as error:
            for opened in (own, lan):
                if opened is not None:
                    opened.close()
            raise _as_serve_error(error, wanted.data) from error
        open_things.callback(close_app, app)
        if lan:
            open_things.callback(lan.end)
        open_things.enter_context(keeping_copies(app.extensions["flangebook.copies"]))
        listeners = [own, *(lan.listeners if lan else [])]
        doors.serve(
            listeners,
            app,
            lambda: _ready(own.address, wanted.data, app, lan),
            workers.stop if workers else _nothing,
        )


def _share_memory() -> None:
    """Let all threads take memory from two places: glibc gives each thread one of its own, and
    what is free in one helps no other. A shop of 5,000 cards in use takes 14 MB less."""
    if sys.platform == "linux":
        with suppress(AttributeError):  # not glibc
            ctypes.CDLL(None).mallopt(_MOST_ARENAS, 2)


def _network(wanted: Serving) -> Lan | None:
    if wanted.lan is None:
        return None
    # Loaded only for those who want it: certificates and names on the network weigh 15 MB.
    from flangebook.serving.lan.lan import Lan  # noqa: PLC0415

    return Lan(wanted.port, wanted.data, wanted.lan)


def open_shop(
    data: Path,
    demo: Path | None,
    lan: Lan | None = None,
    sources: bool = False,
    workers: Processes | None = None,
) -> Flask:
    """The app on the shop in ``data``.

    A new shop is filled in a folder of its own and moved into place whole, so that one cut
    off on the way leaves nothing behind that looks like a shop.
    """
    need_undamaged(data)
    if not (data / FILE_NAME).exists():
        new = data / _UNFINISHED
        shutil.rmtree(new, ignore_errors=True)
        close_app(create_app(Config(data=new, demo=demo), workers))
        if workers:
            workers.let_go()
        os.replace(new / FILE_NAME, data / FILE_NAME)
        shutil.rmtree(new)
    config = Config(data=data, sources=sources)
    if lan is not None:
        network = lan.network
        config = replace(config, hosts=lan.hosts, address=network.https[0], network=network)
    return create_app(config, workers)


def _ready(address: str, data: Path, app: Flask | None = None, lan: Lan | None = None) -> None:
    """Say so, and only after what is asked at once get the compiled functions ready, where they
    are called in this process."""
    print(f"Flangebook is ready at {address} (shop in {data}, Ctrl-C stops it)", flush=True)
    if lan and app:
        lan.begin(lambda words: print(words, flush=True))
        print(_lan_words(lan, app.extensions["flangebook.store"]), flush=True)
    if app is None or app.extensions["flangebook.store"].workers is None:
        warming = threading.Timer(WARM_UP_AFTER_S, _warm_up)
        warming.name, warming.daemon = "warm-up", True
        warming.start()


def _lan_words(lan: Lan, store: Store) -> str:
    """How a device gets in, and the first owner's code where there is no owner's device yet."""
    network = lan.network
    begin = join_address(network)
    lines = [
        f"On the network of {network.shop}: {'  or  '.join(network.https)}",
        f"A phone begins at {begin}",
        qr_text(begin),
    ]
    if lan.for_proxy:
        lines.append(f"The proxy passes on to {lan.for_proxy}")
    if network.fingerprint:
        lines.append(f"The shop's authority, SHA-256: {grouped(network.fingerprint)}")
    if not crew.has_owner(store):
        lines.append(_first_owner(network, store))
    lines.append("Only paired devices are let in; this machine needs no pairing.")
    return "\n".join(lines)


def _first_owner(network: Network, store: Store) -> str:
    """The first owner's code; a full disk keeps nobody from being served."""
    code = new_code()
    try:
        crew.offer(store, code, "owner", "", "the server's terminal", FIRST_OWNER_FOR)
    except SQLAlchemyError as error:
        if not _is_the_disk(error.__cause__):
            raise
        return "There is no owner's code: the disk is full. Make room on it and start again."
    return (
        f"The first owner's code, good once within the hour: {code[:4]}-{code[4:]} "
        f"({pair_address(network, code)})"
    )


def grouped(fingerprint: str) -> str:
    """A fingerprint in fours, for eyes that compare it.

    >>> grouped("AB12CD34EF")
    'AB12 CD34 EF'
    """
    return " ".join(fingerprint[i : i + 4] for i in range(0, len(fingerprint), 4))


def _nothing() -> None:
    pass


def _warm_up() -> None:
    # Loaded here: it brings the compiler, which a start should not wait for.
    from flangebook.planning.warm_up import warm_up  # noqa: PLC0415

    warm_up()


def _is_the_disk(cause: BaseException | None) -> bool:
    name = getattr(cause, "sqlite_errorname", "")
    return name.startswith(("SQLITE_IOERR", "SQLITE_FULL"))


def _as_serve_error(error: BaseException, data: Path) -> BaseException:
    from flangebook.serving.lan.authority import AuthorityError  # noqa: PLC0415
    from flangebook.serving.lan.lan import LanError  # noqa: PLC0415

    match error:
        case ShopError() | ListenError() | LanError() | AuthorityError():
            return ServeError(str(error))
        case SQLAlchemyError():
            why = str(error.__cause__ or error)
            if _is_the_disk(error.__cause__):
                return ServeError(
                    f"The disk that the shop in {data} is on is full, or cannot be written: {why}. "
                    "Make room on it and start again; nothing is lost by that."
                )
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
