"""Commands about copies: ``backup``, ``restore``, ``export``, ``import``.

Each does one thing, says in one line what it did, and ends with 1 and one clear sentence on
standard error when it could not.
"""

from __future__ import annotations

import argparse
import sys
from collections.abc import Callable
from datetime import datetime
from pathlib import Path
from typing import Any

_SHOWN = 10
Run = Callable[[argparse.Namespace], None]


def add(commands: Any, data: Path) -> None:
    """Add them to the sub-commands. data: folder that the shop is kept in by default."""

    def command(name: str, run: Run, words: str) -> argparse.ArgumentParser:
        made: argparse.ArgumentParser = commands.add_parser(name, help=words, description=words)
        made.add_argument(
            "--data", type=Path, default=data, metavar="DIR",
            help="folder the shop is kept in (%(default)s)",
        )  # fmt: skip
        made.set_defaults(run=lambda options: _ran(run, options))
        return made

    backup = command("backup", _backup, "copy the shop's file, also while it is served")
    backup.add_argument(
        "--to", type=Path, metavar="FILE", help="the copy (default: a new one in DIR/copies)"
    )
    restore = command("restore", _restore, "put the shop back from a copy; not while it is served")
    restore.add_argument("file", type=Path, metavar="FILE", help="the copy")
    export = command("export", _export, "write the whole shop as one JSON document")
    export.add_argument("--to", type=Path, metavar="FILE", help="default: standard output")
    take = command("import", _import, "fill the shop from its JSON document")
    take.add_argument("file", type=Path, metavar="FILE", help="what `export` wrote")
    take.add_argument(
        "--replace",
        action="store_true",
        help="replace a shop that has something in it, copied first",
    )


def _ran(run: Run, options: argparse.Namespace) -> int:
    from sqlalchemy.exc import SQLAlchemyError  # noqa: PLC0415

    from flangebook.shop.errors import ShopError  # noqa: PLC0415

    try:
        run(options)
    except ShopError as error:
        print(error, file=sys.stderr)
        for place, words in list(getattr(error, "wrong", {}).items())[1:_SHOWN]:
            print(f"{place}: {words[0]}", file=sys.stderr)
        return 1
    except SQLAlchemyError as error:
        why = error.__cause__ or error
        print(f"The shop in {options.data} cannot be used: {why}.", file=sys.stderr)
        return 1
    except OSError as error:
        print(f"The folder {options.data} cannot be used: {error}.", file=sys.stderr)
        return 1
    return 0


# What a command takes is loaded only when it runs, so that --help is quick.


def _backup(options: argparse.Namespace) -> None:
    from flangebook.shop.backups import copies, schedule  # noqa: PLC0415
    from flangebook.shop.storage.file_lock import held  # noqa: PLC0415

    copies.shop_file(options.data)
    target = options.to or schedule.by_hand(options.data)
    with held(options.data):
        facts = copies.make_copy(options.data, target)
    print(f"Copied to {target}: {facts.cards} cards, {facts.trials} results, found whole.")


def _restore(options: argparse.Namespace) -> None:
    from flangebook.shop.backups.restoring import restore  # noqa: PLC0415

    done = restore(options.file, options.data, datetime.now().astimezone())
    print(f"Put back: {done.facts.cards} cards, {done.facts.trials} results, in {options.data}.")
    if done.replaced:
        damaged = "" if done.whole else ", damaged as it was"
        print(f"The shop that was there is kept as {done.replaced}{damaged}.")
    print("Phones fetch everything anew when they next reach the server.")
    if done.devices:
        devices = "1 paired device" if done.devices == 1 else f"{done.devices} paired devices"
        print(f"{devices} may use it now. See that all of them are still yours.")


def _export(options: argparse.Namespace) -> None:
    from flangebook.shop.backups import copies  # noqa: PLC0415
    from flangebook.shop.storage.file_lock import held  # noqa: PLC0415
    from flangebook.shop.storage.whole_file import unfinished  # noqa: PLC0415
    from flangebook.shop.store import opened  # noqa: PLC0415
    from flangebook.shop.transfer import export  # noqa: PLC0415

    copies.shop_file(options.data)
    with held(options.data), opened(options.data) as store:
        if options.to is None:
            sys.stdout.reconfigure(encoding="utf-8", newline="\n")  # type: ignore[union-attr]
            sys.stdout.writelines(export.pieces(store))
            return
        with unfinished(options.to) as made, made.open("w", encoding="utf-8", newline="\n") as file:
            file.writelines(export.pieces(store))
    print(f"Exported to {options.to}.")


def _import(options: argparse.Namespace) -> None:
    from flangebook.shop.errors import ImportRefusedError  # noqa: PLC0415
    from flangebook.shop.storage.file_lock import held  # noqa: PLC0415
    from flangebook.shop.store import opened  # noqa: PLC0415
    from flangebook.shop.transfer import importing  # noqa: PLC0415
    from flangebook.use_cases import intake  # noqa: PLC0415

    try:
        data = options.file.read_bytes()
    except OSError as error:
        raise ImportRefusedError(
            f"{options.file} cannot be read: {error.strerror or error}."
        ) from error
    with held(options.data), opened(options.data) as store:
        done = importing.take(
            store, data, intake,
            replace=options.replace, folder=options.data, now=datetime.now().astimezone(),
        )  # fmt: skip
    print(f"Imported: {done.holds.cards} cards, {done.holds.trials} results.")
    if done.replaced:
        print(f"The shop that was there is kept as {done.replaced}.")
