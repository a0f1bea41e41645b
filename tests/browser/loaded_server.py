"""The program as it stands just before a server starts: all of it loaded, the search compiled.

Loaded by the one process that the browser tests' servers are forked from (server_child.py).
"""

from __future__ import annotations

import flangebook.serving.lan
import flangebook.serving.shop_server  # noqa: F401
from flangebook.planning.warm_up import warm_up

warm_up()
