"""The server's log: on stderr, and in files beside the shop that take turns."""

from __future__ import annotations

import logging
from contextlib import suppress
from logging.handlers import RotatingFileHandler
from pathlib import Path

from flangebook.shop.storage.permissions import FILE_MODE, FOLDER_MODE

FOLDER = "log"
NAME = "flangebook.log"
MOST_BYTES = 1_000_000
OLD_FILES = 3

log = logging.getLogger("flangebook")


class _PrivateFile(RotatingFileHandler):
    """Readable by its owner alone, as all else in the shop's folder."""

    def _open(self):  # type: ignore[no-untyped-def]
        Path(self.baseFilename).touch(mode=FILE_MODE)
        return super()._open()


def begin(data: Path) -> None:
    """Write what is logged from now on to stderr, and to DATA/log where that can be written."""
    log.handlers[:] = [logging.StreamHandler()]
    # A disk that is full keeps nobody from being served.
    logging.raiseExceptions = False
    folder = data / FOLDER
    with suppress(OSError):
        folder.mkdir(mode=FOLDER_MODE, parents=True, exist_ok=True)
        file = _PrivateFile(
            folder / NAME, maxBytes=MOST_BYTES, backupCount=OLD_FILES, encoding="utf-8"
        )
        file.setFormatter(logging.Formatter("%(asctime)s %(levelname)s %(message)s"))
        log.addHandler(file)
