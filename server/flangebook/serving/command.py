"""The ``flangebook`` command.

flangebook serve [--port N] [--data DIR] [--empty]; ``copy_commands`` has those about copies.
"""

from __future__ import annotations

import argparse
import sys
from collections.abc import Sequence
from pathlib import Path

import platformdirs

from flangebook import __version__
from flangebook.serving import copy_commands

PORT = 8417
_DEMO = Path(__file__).parents[3] / "demo_data"
_LAN = (
    "Serving the shop's network (--lan) is not there yet: this release answers only the machine "
    "it runs on. Start without --lan."
)


def main(arguments: Sequence[str] | None = None) -> int:
    """Run the command; the exit code."""
    options = _parser().parse_args(arguments)
    if options.run:
        return int(options.run(options))
    if options.lan:
        print(_LAN, file=sys.stderr)
        return 2
    # What it takes is loaded only now, so that --help and --version are quick.
    from flangebook.serving import shop_server  # noqa: PLC0415

    try:
        shop_server.serve(options.port, options.data, None if options.empty else _DEMO)
    except shop_server.ServeError as error:
        print(error, file=sys.stderr)
        return 1
    return 0


def _parser() -> argparse.ArgumentParser:
    parser = argparse.ArgumentParser("flangebook", description="Set-ups for the press brake.")
    parser.add_argument("--version", action="version", version=f"flangebook {__version__}")
    parser.set_defaults(run=None)
    commands = parser.add_subparsers(required=True, metavar="COMMAND")
    copy_commands.add(commands, data_folder())
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
        "--lan", action="store_true", help="serve the shop's network (not there yet)"
    )
    return parser


def data_folder() -> Path:
    """The user's own folder for the shop."""
    return Path(platformdirs.user_data_dir("flangebook", appauthor=False))


def _port(text: str) -> int:
    if not text.isascii() or not text.isdigit() or int(text) > 65535:
        raise argparse.ArgumentTypeError(f"{text!r} is not a port. A number from 0 to 65535.")
    return int(text)
