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
            typeface.outline.cache_clear()
            typeface.face(False)
            together = threading.Barrier(8)

            def outline(character: str, barrier: threading.Barrier) -> str:
                barrier.wait()
                return typeface.outline(character, False)

            letters = string.ascii_letters[:8]
            with ThreadPoolExecutor(8) as pool:
                drawn = [pool.submit(outline, c, together) for c in letters]
            alone = [typeface.outline.__wrapped__(c, False) for c in letters]
            assert [d.result() for d in drawn] == alone
    finally:
        sys.setswitchinterval(switching)
