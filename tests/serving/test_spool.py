"""What is under way comes out as it went in, wherever it was kept, and all of it is bounded."""

from __future__ import annotations

import io
from collections.abc import Iterator
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from flangebook.serving.http import spool
from flangebook.serving.http.spool import IN_MEMORY, Spool, TooMuchUnderWayError

SIZES = st.integers(0, 3 * IN_MEMORY)


@pytest.fixture(autouse=True)
def nothing_is_left() -> Iterator[None]:
    """All that was charged is given back."""
    yield
    assert spool._files._left == spool.MOST_IN_FILES
    assert spool._memory._left == spool.MOST_MORE_IN_MEMORY


class SmallDisk(io.RawIOBase):
    """A file on a disk with room for so many bytes."""

    room = 0

    def __init__(self, **_: Any) -> None:
        self._kept = io.BytesIO()

    def write(self, data: Any) -> int:
        piece = bytes(data)[: self.room - self._kept.tell()]
        if not piece:
            raise OSError(28, "No space left on device")
        return self._kept.write(piece)

    def seek(self, place: int, whence: int = 0) -> int:
        return self._kept.seek(place, whence)

    def read(self, count: int = -1) -> bytes:
        return self._kept.read(count)


@settings(max_examples=40, deadline=None)
@given(
    st.lists(st.tuples(st.booleans(), SIZES), max_size=8),
    st.sampled_from([None, 0, IN_MEMORY, 2 * IN_MEMORY]),
)
def test_what_goes_in_first_comes_out_first(steps: list[tuple[bool, int]], room: int | None):
    with pytest.MonkeyPatch.context() as patch:
        if room is not None:
            patch.setattr(SmallDisk, "room", room)
            patch.setattr(spool, "TemporaryFile", SmallDisk)
        kept, expected, number = Spool(), b"", 0
        for puts, size in steps:
            if puts:
                number += 1
                data = bytes([number]) * size
                kept.put(data)
                expected += data
            else:
                taken = kept.take(size)
                assert taken == expected[:size]
                expected = expected[size:]
        assert kept.take() == expected
        kept.close()
        assert kept.take() == b""


@pytest.mark.parametrize("full", [False, True])
def test_all_together_are_bounded(monkeypatch: pytest.MonkeyPatch, full: bool):
    if full:
        monkeypatch.setattr(spool, "TemporaryFile", SmallDisk)
    monkeypatch.setattr(spool._memory if full else spool._files, "_left", 10 * IN_MEMORY)
    kept = [Spool() for _ in range(20)]

    def fill() -> None:
        for one in kept:
            one.put(b"x" * 2 * IN_MEMORY)

    with pytest.raises(TooMuchUnderWayError):
        fill()
    for one in kept:
        one.close()
    assert (spool._memory if full else spool._files)._left == 10 * IN_MEMORY


def test_what_is_closed_takes_nothing():
    kept = Spool()
    kept.put(b"x")
    kept.close()
    with pytest.raises(ValueError, match="closed"):
        kept.put(b"y")
