"""The labels' typeface under many requests at once."""

from __future__ import annotations

import string
import sys
import threading
from concurrent.futures import ThreadPoolExecutor

from flangebook.labels import typeface


def test_a_freshly_read_font_can_be_drawn_from_by_many_threads_at_once() -> None:
    switching = sys.getswitchinterval()
    sys.setswitchinterval(1e-6)
    try:
        for _ in range(10):
            typeface.face.cache_clear()
            fresh = typeface.face(False)
            together = threading.Barrier(8)

            def outline(character: str, font: typeface.Face, barrier: threading.Barrier) -> str:
                barrier.wait()
                return font.outline(character)

            with ThreadPoolExecutor(8) as pool:
                drawn = [pool.submit(outline, c, fresh, together) for c in string.ascii_letters[:8]]
            assert [d.result() for d in drawn] == [
                fresh.outline(c) for c in string.ascii_letters[:8]
            ]
    finally:
        sys.setswitchinterval(switching)
