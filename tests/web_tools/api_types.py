"""Writes the web's types of what the API takes and gives, from the API's own description.

    tests/web_tools/api_types.py    writes api.d.ts beside it, which tests/run does too

What is written is not committed: only the type checker reads it, and made anew it is never stale.
"""

from __future__ import annotations

import subprocess
import sys
import tempfile
from pathlib import Path

from flangebook.api.app import close_app, create_app
from flangebook.api.config import Config

FOLDER = Path(__file__).parent
NODE = Path(sys.executable).parent / ("node.exe" if sys.platform == "win32" else "node")


def description() -> bytes:
    """The OpenAPI document, as the API serves it."""
    with tempfile.TemporaryDirectory() as folder:
        app = create_app(Config(Path(folder) / "shop"))
        document = app.test_client().get("/api/openapi.json").data
        close_app(app)
    return document


def main() -> int:
    """Write the types; the exit code is not 0 where that failed."""
    command = [NODE, FOLDER / "api_types.mjs", FOLDER / "api.d.ts"]
    return subprocess.run(command, input=description(), check=False).returncode


if __name__ == "__main__":
    sys.exit(main())
