"""A file that is there whole or not at all, and that only its owner can read."""

from __future__ import annotations

import errno
import os
import secrets
from collections.abc import Iterator
from contextlib import contextmanager, suppress
from pathlib import Path

from flangebook.shop.errors import CopyError

_UNFINISHED = ".unfinished"
_BESIDE = ("", "-journal", "-wal", "-shm")
_FULL = (errno.ENOSPC, errno.EDQUOT) if hasattr(errno, "EDQUOT") else (errno.ENOSPC,)


@contextmanager
def unfinished(target: Path) -> Iterator[Path]:
    """An empty file beside ``target``; named so, on the disk, when the block ends well.

    What had the name before is there until then, and stays when the block fails.
    Raises CopyError when the folder or the disk does not take it.
    """
    made = target.with_name(f".{target.name}.{secrets.token_hex(4)}{_UNFINISHED}")
    try:
        target.parent.mkdir(parents=True, exist_ok=True)
        os.close(os.open(made, os.O_WRONLY | os.O_CREAT | os.O_EXCL, 0o600))
        yield made
        _to_disk(made)
        os.replace(made, target)
        _to_disk(target.parent)
    except OSError as error:
        raise unwritable(target, error) from error
    finally:
        for end in _BESIDE:
            with suppress(OSError):
                made.with_name(made.name + end).unlink()


def sweep(folder: Path) -> None:
    """Take away what a process that was killed left unfinished in ``folder``."""
    for left in folder.glob(f".*{_UNFINISHED}*"):
        with suppress(OSError):
            left.unlink()


def unwritable(target: Path, error: OSError) -> CopyError:
    """Why a file could not be written, in words."""
    if error.errno in _FULL:
        return no_room(target.parent)
    return CopyError(
        f"{target} cannot be written: {error.strerror or error}.", "Choose another place."
    )


def no_room(folder: Path) -> CopyError:
    """The disk is full."""
    return CopyError(
        f"The disk is full: there is no room for the copy in {folder}.", "Make room on it."
    )


def _to_disk(path: Path) -> None:
    if path.is_dir() and os.name == "nt":
        return  # Windows keeps names safe by itself and opens no folder
    descriptor = os.open(path, os.O_RDWR if path.is_file() else os.O_RDONLY)
    try:
        os.fsync(descriptor)
    finally:
        os.close(descriptor)
