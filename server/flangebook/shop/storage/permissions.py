"""The shop's files belong to the user who serves it: nobody else on the machine reads them."""

from __future__ import annotations

import os
from collections.abc import Iterator
from contextlib import suppress
from pathlib import Path

FOLDER_MODE = 0o700
FILE_MODE = 0o600


def make_private(folder: Path, file: Path) -> None:
    """Make folder and file for their owner alone, and mend those of an older release.

    SQLite gives its log and its shared memory the mode of the file they stand beside. What
    belongs to somebody else is left as it is; Windows keeps a user's folders private by itself.
    """
    folder.mkdir(mode=FOLDER_MODE, parents=True, exist_ok=True)
    if not file.exists():
        os.close(os.open(file, os.O_WRONLY | os.O_CREAT, FILE_MODE))
    for path in _ours(folder, file):
        with suppress(OSError):
            wanted = FOLDER_MODE if path.is_dir() else FILE_MODE
            if path.stat().st_mode & 0o777 != wanted:
                path.chmod(wanted)


def _ours(folder: Path, file: Path) -> Iterator[Path]:
    yield folder
    for end in ("", "-wal", "-shm"):
        yield file.with_name(file.name + end)
    copies = folder / "copies"
    if copies.is_dir():
        yield copies
        yield from copies.glob("*.sqlite*")
