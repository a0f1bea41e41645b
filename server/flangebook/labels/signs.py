"""The signs beside a finding's word, drawn in lines, so that no finding is told by a word alone.

Caution is the general warning sign, the shape of W001 of ISO 7010, open: an upright triangle of
equal sides with an exclamation mark; stop is an octagon, unknown a circle with a question mark. As
``web/view/common/finding.js`` draws them, in a square of 24.
"""

from __future__ import annotations

from math import cos, pi, sin

Line = tuple[tuple[float, float], ...]
SQUARE = 24.0
STROKE = 2.6
_CIRCLE: Line = tuple(
    (12.0 + 10.0 * cos(2.0 * pi * i / 40), 12.0 + 10.0 * sin(2.0 * pi * i / 40)) for i in range(41)
)
_HOOK: Line = (
    (8.5, 9.0), (9.0, 7.2), (10.2, 6.0), (12.0, 5.5), (13.8, 6.0), (15.0, 7.2), (15.5, 9.0),
    (14.9, 10.8), (13.5, 12.0), (12.4, 13.0), (12.0, 14.6),
)  # fmt: skip
LINES: dict[str, tuple[Line, ...]] = {
    "stop": (
        ((7, 1.5), (17, 1.5), (22.5, 7), (22.5, 17), (17, 22.5), (7, 22.5), (1.5, 17), (1.5, 7),
         (7, 1.5)),
    ),
    "caution": (
        ((12, 3.2), (22, 20.5), (2, 20.5), (12, 3.2)),
        ((12, 9.2), (12, 14.6)),
        ((12, 16.4), (12, 18.6)),
    ),
    "unknown": (_CIRCLE, _HOOK, ((12, 16.8), (12, 19.0))),
}  # fmt: skip
