"""The ``flangebook`` command.

flangebook serve [--port N] [--data DIR] [--empty] [--lan] [--shop NAME] ...; ``copy_commands``
has those about copies.
"""

from __future__ import annotations

import argparse
import sys
from collections.abc import Sequence
from pathlib import Path
from typing import TYPE_CHECKING

import platformdirs

from flangebook import __version__
from flangebook.serving import backup_commands

if TYPE_CHECKING:
    from flangebook.serving.lan.lan import LanOptions

PORT = 8417
_DEMO = Path(__file__).parents[3] / "demo_data"


def main(arguments: Sequence[str] | None = None) -> int:
    """Run the command; the exit code."""
    options = _parser().parse_args(arguments)
    if options.run:
        return int(options.run(options))
    # What it takes is loaded only now, so that --help and --version are quick.
    from flangebook.serving import shop_server  # noqa: PLC0415

    demo = None if options.empty else _DEMO
    wanted = shop_server.Serving(
        options.port, options.data, demo, _lan(options), options.sources, not options.one_process
    )
    try:
        shop_server.serve(wanted)
    except shop_server.ServeError as error:
        print(error, file=sys.stderr)
        return 1
    return 0


def _parser() -> argparse.ArgumentParser:
    parser = argparse.ArgumentParser("flangebook", description="Set-ups for the press brake.")
    parser.add_argument("--version", action="version", version=f"flangebook {__version__}")
    parser.set_defaults(run=None)
    commands = parser.add_subparsers(required=True, metavar="COMMAND")
    backup_commands.add(commands, data_folder())
    serve = commands.add_parser("serve", help="serve the shop on this machine")
    serve.add_argument(
        "--port", type=_port, default=PORT, metavar="N", help=f"port to listen on ({PORT}); 0: any"
    )
    serve.add_argument(
        "--data", type=Path, default=data_folder(), metavar="DIR",
        help="folder everything is kept in (%(default)s)",
    )  # fmt: skip
    serve.add_argument(
        "--empty", action="store_true", help="start a new shop empty, without the demo shop"
    )
    serve.add_argument(
        "--sources", action="store_true",
        help="give browsers the app's scripts one by one, as they are written: for a contributor",
    )  # fmt: skip
    serve.add_argument(
        "--one-process", action="store_true",
        help="calculate in the server itself: quicker to start, but long plans hold others up",
    )  # fmt: skip
    _add_network(serve.add_argument_group("the shop's network"))
    return parser


def _add_network(group: argparse._ArgumentGroup) -> None:
    group.add_argument(
        "--lan", action="store_true",
        help="let paired phones and screens in: https on the port after --port, and the page "
        "that helps them to join on the one after that",
    )  # fmt: skip
    group.add_argument(
        "--shop", type=_shop, metavar="NAME",
        help="the shop's name, remembered; its address on the network is made from it (--lan)",
    )  # fmt: skip
    group.add_argument(
        "--host", action="append", default=[], type=_host, metavar="NAME",
        help="another name of this machine, such as the one in the router's list (--lan)",
    )  # fmt: skip
    group.add_argument(
        "--certificate", type=Path, metavar="FILE",
        help="a certificate (PEM, chain included) instead of the shop's own authority (--lan)",
    )  # fmt: skip
    group.add_argument(
        "--key", type=Path, metavar="FILE", help="its key, where that is another file"
    )
    group.add_argument(
        "--behind", default="", metavar="ADDRESS",
        help="the https address of a reverse proxy on this machine: only plain http for it, on "
        "the port after --port (--lan)",
    )  # fmt: skip


def _lan(options: argparse.Namespace) -> LanOptions | None:
    """What was asked for the network; None: nothing."""
    asked = (options.shop, options.host, options.certificate, options.behind)
    if not options.lan and not any(asked):
        return None
    from flangebook.serving.lan.lan import LanOptions  # noqa: PLC0415

    return LanOptions(
        options.shop or "", tuple(options.host), options.certificate, options.key, options.behind
    )


def data_folder() -> Path:
    """The user's own folder for the shop."""
    return Path(platformdirs.user_data_dir("flangebook", appauthor=False))


def _port(text: str) -> int:
    if not text.isascii() or not text.isdigit() or int(text) > 65535:
        raise argparse.ArgumentTypeError(f"{text!r} is not a port. A number from 0 to 65535.")
    return int(text)


def _shop(text: str) -> str:
    if not 0 < len(text.strip()) <= 40 or not text.isprintable():
        raise argparse.ArgumentTypeError("The shop's name has 1 to 40 characters.")
    return text.strip()


def _host(text: str) -> str:
    from flangebook.serving.lan.names import is_host  # noqa: PLC0415

    if not is_host(text.lower()):
        raise argparse.ArgumentTypeError(f"{text!r} is not a host name, such as bend.home.arpa.")
    return text.lower()
