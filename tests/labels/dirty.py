"""A label as the shop leaves it and as a phone's camera sees it.

Dirt is laid on the label in mm, then a camera looks at it from a seeded place: perspective,
defocus, shake, light, glare, noise, eight bits. Own models, no source: they rank ways to print
a label, they do not foretell a shop's reading rate.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from functools import cache

import cv2
import numpy as np
import zxingcpp

from .printed import BARE_MM, BIN, PX_PER_MM, Grey, Printed, Way, printed

LOOKS = {"ZXing": 3, "OpenCV": 1}  # a phone looks more than once; the second reader is slow
Span = tuple[float, float]
_FOCAL_PX = 900.0
_CLOSER = {"50x25": 1.0, "100x50": 0.68}  # the camera stands back from the large one
_FRAME = {"50x25": (440, 440), "100x50": (800, 560)}
_NONE: Span = (0.0, 0.0)


@dataclass(frozen=True)
class Damage:
    """What happens to a label and how it is looked at; spans are drawn from evenly.

    blots: how many on a code's area of 25 x 25 mm; blot_mm: their radius; anywhere: also on
    finder patterns. scratches: likewise, each up to 0.5 mm wide. scale: pixels a mm.
    tilt: degrees out of square. defocus, shake: pixels. light: share of full. fall: how much
    darker one side is. veil: share of contrast lost. glare: radius [mm] of a burnt-out patch.
    noise: grey levels.
    """

    blots: Span = _NONE
    blot_mm: Span = (0.6, 1.6)
    anywhere: bool = True
    scratches: Span = _NONE
    scale: Span = (8.5, 10.5)
    turn: float = 15.0
    tilt: Span = (0.0, 15.0)
    defocus: Span = (0.5, 1.0)
    shake: Span = _NONE
    light: Span = (0.8, 1.0)
    fall: Span = (0.0, 0.2)
    veil: Span = _NONE
    glare: Span = _NONE
    noise: float = 3.0


DAMAGES = {
    "clean": Damage(),
    "few blots on the data": Damage(blots=(6, 10), anywhere=False),
    "many blots on the data": Damage(blots=(16, 22), anywhere=False),
    "few blots anywhere": Damage(blots=(4, 7)),
    "many blots anywhere": Damage(blots=(12, 16)),
    "scratches": Damage(scratches=(3, 7)),
    "blur": Damage(defocus=(2.0, 4.0), shake=(0.0, 5.0)),
    "turned and slanted": Damage(turn=180.0, tilt=(50.0, 68.0)),
    "dim and noisy": Damage(light=(0.12, 0.25), noise=9.0, defocus=(1.0, 1.8)),
    "far": Damage(scale=(1.9, 3.0), defocus=(0.5, 0.8)),
    "pale": Damage(veil=(0.85, 0.95), fall=(0.2, 0.5), noise=5.0),
    "glare": Damage(glare=(3.5, 6.0), tilt=(10.0, 30.0)),
    "all at once": Damage(blots=(3, 6), scratches=(2, 4), tilt=(10.0, 35.0), light=(0.25, 0.6),
                          turn=180.0, defocus=(0.9, 1.6), noise=6.0, scale=(5.5, 8.0)),
}  # fmt: skip


def dirtied(one: Printed, kind: str, number: int) -> Grey:
    """The label with the dirt of that kind. Same number and kind: same dirt, however printed."""
    damage, seed = DAMAGES[kind], [number, *kind.encode()]
    scratched = _scratched(one, damage, np.random.default_rng([*seed, 1]))
    return _blotted(scratched, one, damage, np.random.default_rng([*seed, 2]))


def seen(number: int, way: Way, kind: str) -> Iterator[np.ndarray]:
    """The camera's looks at a label, from as many places."""
    dirty = dirtied(printed(number, way), kind, number)
    for look in range(max(LOOKS.values())):
        rng = np.random.default_rng([number, *kind.encode(), 3, look])
        yield _photographed(dirty, DAMAGES[kind], way.size, rng)


@dataclass(frozen=True)
class Reading:
    """Which readers got the address in any frame, and whether one got anything else."""

    by: dict[str, bool]
    wrong: bool


@cache
def read(number: int, way: Way, kind: str) -> Reading:
    """What both readers make of one label."""
    address = printed(number, way).address
    by, wrong = dict.fromkeys(READERS, False), False
    frames = seen(number, way, kind)
    for look in range(max(LOOKS.values())):
        waiting = [name for name, got in by.items() if not got and look < LOOKS[name]]
        if not waiting:
            break
        frame = next(frames)
        for name in waiting:
            texts = READERS[name](frame)
            wrong = wrong or bool(texts - {address})
            by[name] = address in texts
    return Reading(by, wrong)


def counts(way: Way, kind: str, labels: range) -> tuple[int, ...]:
    """How many of the labels each reader reads."""
    found = [read(number, way, kind) for number in labels]
    return tuple(sum(reading.by[name] for reading in found) for name in READERS)


def _zxing(frame: np.ndarray) -> set[str]:
    qr = zxingcpp.BarcodeFormat.QRCode
    return {found.text for found in zxingcpp.read_barcodes(frame, formats=qr)}


def _opencv(frame: np.ndarray) -> set[str]:
    try:
        found, texts, _, _ = cv2.QRCodeDetector().detectAndDecodeMulti(frame)
    except cv2.error:  # what it has no answer to, it trips over
        return set()
    return {text for text in texts if text} if found else set()


READERS = {"ZXing": _zxing, "OpenCV": _opencv}


def _number(span: Span, rng: np.random.Generator, area: float) -> int:
    return round(rng.uniform(*span) * area)


def _area(one: Printed) -> float:
    """Of the label, in squares of 25 mm."""
    high, wide = (side / PX_PER_MM - 2 * BARE_MM for side in one.picture.shape)
    return wide * high / 625.0


def _place(one: Printed, rng: np.random.Generator) -> tuple[float, float]:
    high, wide = (side / PX_PER_MM - BARE_MM for side in one.picture.shape)
    return rng.uniform(BARE_MM, wide), rng.uniform(BARE_MM, high)


def _blotted(picture: Grey, one: Printed, damage: Damage, rng: np.random.Generator) -> Grey:
    """Dark drops of oil and ink, and light chips where print came off, with ragged edges."""
    marked = picture.copy()
    for _ in range(_number(damage.blots, rng, _area(one))):
        radius = rng.uniform(*damage.blot_mm)
        grey = rng.uniform(10, 60) if rng.random() < 0.65 else rng.uniform(200, 250)
        lobes = rng.uniform(-0.6, 0.6, (5, 2)), rng.uniform(0.45, 0.8, 5)
        places = [_place(one, rng) for _ in range(40)]
        x, y = next(p for p in places if damage.anywhere or _spares_corners(p, radius, one))
        for (dx, dy), share in zip(*lobes, strict=True):
            centre = (round((x + dx * radius) * PX_PER_MM), round((y + dy * radius) * PX_PER_MM))
            cv2.circle(marked, centre, round(radius * share * PX_PER_MM), grey, -1, cv2.LINE_AA)
    return marked


def _spares_corners(place: tuple[float, float], radius: float, one: Printed) -> bool:
    x, y = place
    reach = radius * 1.4
    return not any(
        left - reach < x < right + reach and top - reach < y < bottom + reach
        for left, top, right, bottom in one.corners
    )


def _scratched(one: Printed, damage: Damage, rng: np.random.Generator) -> Grey:
    """Straight scratches: most lift the print, some are dark."""
    marked = one.picture.copy()
    for _ in range(_number(damage.scratches, rng, _area(one))):
        x, y = _place(one, rng)
        angle, half = rng.uniform(0, np.pi), rng.uniform(3.0, 12.0)
        dx, dy = half * np.cos(angle), half * np.sin(angle)
        grey = rng.uniform(210, 250) if rng.random() < 0.7 else rng.uniform(20, 80)
        ends = [(round(v * PX_PER_MM), round(w * PX_PER_MM))
                for v, w in ((x - dx, y - dy), (x + dx, y + dy))]  # fmt: skip
        wide = max(1, round(rng.uniform(0.15, 0.5) * PX_PER_MM))
        cv2.line(marked, *ends, grey, wide, cv2.LINE_AA)
    return marked


def _photographed(
    picture: Grey, damage: Damage, label: str, rng: np.random.Generator
) -> np.ndarray:
    scale, size = rng.uniform(*damage.scale) * _CLOSER[label], _FRAME[label]
    # What falls on one pixel is averaged before the picture is sampled at pixels.
    fine = cv2.GaussianBlur(picture, (0, 0), 0.4 * PX_PER_MM / scale)
    sharp = cv2.warpPerspective(
        fine, _view(picture.shape, scale, damage, size, rng), size, borderValue=BIN
    )
    shaken = _shaken(_lit(sharp, scale, damage, rng), rng.uniform(*damage.shake), rng)
    soft = cv2.GaussianBlur(shaken, (0, 0), rng.uniform(*damage.defocus))
    veil = rng.uniform(*damage.veil)
    exposed = (soft * (1 - veil) + 150.0 * veil) * rng.uniform(*damage.light)
    grain = rng.standard_normal(exposed.shape, np.float32) * damage.noise
    grainy = exposed + grain * np.sqrt(0.3 + exposed / 255)
    return np.clip(np.rint(grainy), 0, 255).astype(np.uint8)


def _lit(frame: Grey, scale: float, damage: Damage, rng: np.random.Generator) -> Grey:
    """Light that falls off to one side, and a patch that is burnt out."""
    high, wide = frame.shape
    angle, fall = rng.uniform(0, 2 * np.pi), rng.uniform(*damage.fall)
    x, y = np.arange(wide, dtype=np.float32), np.arange(high, dtype=np.float32)[:, None]
    along = np.cos(angle) * (x / wide - 0.5) + np.sin(angle) * (y / high - 0.5) + 0.5
    lit = frame * (1 - fall * np.clip(along, 0, 1))
    spread = rng.uniform(*damage.glare) * 0.7 * scale
    over, up = np.array((wide, high)) / 2 + rng.uniform(-9.0, 9.0, 2) * scale
    if spread:
        squared = (x - over) ** 2 + ((y - up) * 1.6) ** 2
        lit = lit + 330.0 * np.exp(-squared / (2 * spread**2))
    return np.minimum(lit, 255.0).astype(np.float32)


def _shaken(picture: Grey, pixels: float, rng: np.random.Generator) -> Grey:
    length, angle = round(pixels), rng.uniform(0, np.pi)
    if length < 2:
        return picture
    kernel = np.zeros((2 * length + 1, 2 * length + 1), np.float32)
    reach = np.array([np.cos(angle), np.sin(angle)]) * length / 2
    ends = [tuple(int(v) for v in np.rint(length + side * reach)) for side in (-1, 1)]
    cv2.line(kernel, *ends, 1.0)
    return cv2.filter2D(picture, -1, kernel / kernel.sum())


def _view(
    shape: tuple[int, ...], scale: float, damage: Damage, size: tuple[int, int],
    rng: np.random.Generator,
) -> np.ndarray:  # fmt: skip
    """From the picture's pixels to the frame's: a pinhole camera over a tilted plane."""
    turn = np.radians(rng.uniform(-damage.turn, damage.turn))
    tilt, about = np.radians(rng.uniform(*damage.tilt)), rng.uniform(0, np.pi)
    axis = np.array([np.cos(about), np.sin(about), 0.0]) * tilt
    rotation = cv2.Rodrigues(axis)[0] @ cv2.Rodrigues(np.array([0.0, 0.0, turn]))[0]
    high, wide = shape[0] / PX_PER_MM, shape[1] / PX_PER_MM
    flat = np.array([(0, 0), (wide, 0), (wide, high), (0, high)], np.float64)
    turned = np.c_[flat - (wide / 2, high / 2), np.zeros(4)] @ rotation.T
    away = _FOCAL_PX / scale + turned[:, 2:]
    centre = np.array(size) / 2 + rng.uniform(-15, 15, 2)
    onto = turned[:, :2] * _FOCAL_PX / away + centre
    return cv2.getPerspectiveTransform(
        (flat * PX_PER_MM).astype(np.float32), onto.astype(np.float32)
    )
