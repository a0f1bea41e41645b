"""What Chromium's pretended camera sees: labels from our own renderer, held, blotted and tilted.

A video is a row of JPEG pictures in one file, which Chromium plays over and over.
"""

from __future__ import annotations

import io
from pathlib import Path

import cv2
import numpy as np
from PIL import Image

from flangebook.labels.draw_png import label_png
from flangebook.labels.marks import Label, QrMark
from flangebook.labels.qr import qr_code

Picture = np.ndarray
WIDTH, HEIGHT = 1280, 720
STEEL = (112, 118, 121)  # a bin's side
GREASE = (31, 38, 44)


def square(text: str) -> bytes:
    """A QR code with any text, as PNG."""
    return label_png(Label(25.0, 25.0, text, (QrMark(0.0, 0.0, 25.0, qr_code(text, "H")),)), 300)


def held(label: bytes, *, at: tuple[int, int] = (640, 360), width: int = 640) -> Picture:
    """A label (PNG) stuck on a bin, its middle at a place, so many pixels wide."""
    return beside([(label, at, width)])


def beside(labels: list[tuple[bytes, tuple[int, int], int]]) -> Picture:
    """Several labels on one bin: each with the place of its middle and its width [px]."""
    bin_side = Image.new("RGB", (WIDTH, HEIGHT), STEEL)
    for png, (x, y), width in labels:
        label = Image.open(io.BytesIO(png)).convert("RGB")
        label = label.resize((width, round(width * label.height / label.width)))
        bin_side.paste(label, (x - label.width // 2, y - label.height // 2))
    return np.asarray(bin_side)


def blotted(picture: Picture, blots: int = 9, seed: int = 4) -> Picture:
    """Grease on the squares' data: the corner patterns stay, as without them nothing reads."""
    spoilt, rng = picture.copy(), np.random.default_rng(seed)
    for _ in range(blots):
        # A 50 x 25 mm label 640 px wide has its QR code at 320 to 640; its data in the middle.
        middle = tuple(int(v) for v in rng.integers((420, 300), (560, 440)))
        axes = tuple(int(v) for v in rng.integers(5, 12, 2))
        cv2.ellipse(spoilt, middle, axes, int(rng.integers(180)), 0, 360, GREASE, -1, cv2.LINE_AA)
    return spoilt


def tilted(picture: Picture, degrees: float = 28.0, lean: float = 0.25) -> Picture:
    """The phone turned, and held so that the far side of the label is smaller; a little unsharp."""
    turn = cv2.getRotationMatrix2D((WIDTH / 2, HEIGHT / 2), degrees, 1.0)
    turned = cv2.warpAffine(picture, turn, (WIDTH, HEIGHT), borderValue=STEEL)
    flat = np.array([(0, 0), (WIDTH, 0), (WIDTH, HEIGHT), (0, HEIGHT)], np.float32)
    inwards = np.array([(0, 0), (0, lean), (0, -lean), (0, 0)], np.float32) * HEIGHT
    leaning = cv2.getPerspectiveTransform(flat, flat + inwards)
    seen = cv2.warpPerspective(turned, leaning, (WIDTH, HEIGHT), borderValue=STEEL)
    return cv2.GaussianBlur(seen, (0, 0), 1.2)


def video(file: Path, *scenes: tuple[Picture, int]) -> Path:
    """A camera's film: each scene for so many pictures, thirty a second."""
    with file.open("wb") as film:
        for picture, count in scenes:
            done, jpeg = cv2.imencode(".jpg", cv2.cvtColor(picture, cv2.COLOR_RGB2BGR))
            assert done
            film.write(jpeg.tobytes() * count)
    return file
