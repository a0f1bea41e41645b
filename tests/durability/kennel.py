"""Keeps servers to be killed: loads the program once, then makes each server by forking.

    python kennel.py

A line on standard input starts a server on the shop in the folder it names; the answer is the
child's process id and, from the child itself, the line that says it is ready. The child is the
real server, with its threads, sockets and its own connections to the shop's file; only the loading
of modules and of the compiled search is shared, which is what makes two hundred starts affordable.
"""

from __future__ import annotations

import os
import signal
import sys
import traceback
from pathlib import Path

from flangebook.planning.warm_up import warm_up
from flangebook.serving import shop_server


def main() -> None:
    """Start a server for each line, until there are no more."""
    warm_up()
    signal.signal(signal.SIGCHLD, signal.SIG_IGN)  # killed children leave nothing behind
    for line in sys.stdin:
        child = os.fork()
        if child == 0:
            try:
                data = Path(line.strip())
                shop_server.serve(shop_server.Serving(port=0, data=data, demo=None, workers=False))
            except BaseException:
                traceback.print_exc()
            os._exit(0)  # a child that ends must not go on as a kennel
        print(child, flush=True)


if __name__ == "__main__":
    main()
