"""Labels and sheets as PNG in grey: black on white at the printer's resolution.

Edges of QR modules fall on whole pixels; text is drawn three times as large and brought
down, a character at a time at the place the layout gives it.
"""

from __future__ import annotations

import io
from functools import lru_cache

from PIL import Image, ImageDraw, ImageFont

from flangebook.bending.errors import InputError
from flangebook.labels.marks import Frame, Label, QrMark, Sign, Text
from flangebook.labels.qr import QUIET_MODULES
from flangebook.labels.sheet import Page
from flangebook.labels.typeface import face

MM_PER_INCH = 25.4
LEAST_DPI, MOST_DPI = 72, 600
_FINER = 3
_BLACK, _WHITE = 0, 255


def label_png(label: Label, dpi: int = 300) -> bytes:
    """A label as a PNG file. Raises InputError when dpi is outside 72 to 600."""
    _check(dpi)
    return _file(_label_image(label, dpi), dpi)


def page_png(page: Page, dpi: int = 300) -> bytes:
    """A sheet of labels as a PNG file. Raises InputError when dpi is outside 72 to 600."""
    _check(dpi)
    sheet = Image.new("L", (_pixels(page.width, dpi), _pixels(page.height, dpi)), _WHITE)
    for placed in page.placed:
        corner = _pixels(placed.x, dpi), _pixels(placed.y, dpi)
        sheet.paste(_label_image(placed.label, dpi), corner)
    pen = ImageDraw.Draw(sheet)
    for line in page.cut_marks:
        pen.line([_pixels(v, dpi) for v in line], fill=_BLACK)
    return _file(sheet, dpi)


def _check(dpi: int) -> None:
    if not LEAST_DPI <= dpi <= MOST_DPI:
        raise InputError(
            f"{dpi} dots per inch cannot be drawn.", "dpi", f"{LEAST_DPI} to {MOST_DPI}."
        )


def _pixels(mm: float, dpi: float) -> int:
    return round(mm * dpi / MM_PER_INCH)


def _file(image: Image.Image, dpi: int) -> bytes:
    buffer = io.BytesIO()
    image.save(buffer, "PNG", dpi=(dpi, dpi), optimize=True)
    return buffer.getvalue()


def _label_image(label: Label, dpi: int) -> Image.Image:
    size = _pixels(label.width, dpi), _pixels(label.height, dpi)
    fine = Image.new("L", (size[0] * _FINER, size[1] * _FINER), _WHITE)
    pen = ImageDraw.Draw(fine)
    for mark in label.marks:
        if isinstance(mark, Text):
            _draw_text(pen, mark, dpi * _FINER)
        elif isinstance(mark, Frame):
            _draw_frame(pen, mark, dpi * _FINER)
        elif isinstance(mark, Sign):
            _draw_sign(pen, mark, dpi * _FINER)
    image = fine.resize(size, Image.Resampling.BOX)
    pen = ImageDraw.Draw(image)
    for mark in label.marks:
        if isinstance(mark, QrMark):
            _draw_qr(pen, mark, dpi)
    return image


def _draw_text(pen: ImageDraw.ImageDraw, text: Text, dpi: float) -> None:
    weight = face(text.bold)
    scale = dpi / MM_PER_INCH
    font = _font(text.bold, round(text.size * scale, 2))
    x = text.x
    for character in text.words:
        pen.text((x * scale, text.y * scale), character, _BLACK, font, anchor="ls")
        x += weight.advances[character] * text.size


@lru_cache(maxsize=64)
def _font(bold: bool, pixels: float) -> ImageFont.FreeTypeFont:
    return ImageFont.truetype(face(bold).file, pixels, layout_engine=ImageFont.Layout.BASIC)


def _draw_frame(pen: ImageDraw.ImageDraw, frame: Frame, dpi: float) -> None:
    left, top = _pixels(frame.x, dpi), _pixels(frame.y, dpi)
    right, bottom = _pixels(frame.x + frame.width, dpi), _pixels(frame.y + frame.height, dpi)
    line = max(1, _pixels(frame.line, dpi))
    pen.rectangle((left, top, right - 1, bottom - 1), outline=_BLACK, width=line)


def _draw_sign(pen: ImageDraw.ImageDraw, sign: Sign, dpi: float) -> None:
    scale = dpi / MM_PER_INCH
    for line in sign.lines():
        points = [(x * scale, y * scale) for x, y in line]
        pen.line(points, fill=_BLACK, width=max(1, round(sign.stroke * scale)), joint="curve")


def _draw_qr(pen: ImageDraw.ImageDraw, mark: QrMark, dpi: float) -> None:
    module = mark.side / mark.code.modules
    edges = range(len(mark.code.rows) + 1)
    xs = [_pixels(mark.x + (QUIET_MODULES + i) * module, dpi) for i in edges]
    ys = [_pixels(mark.y + (QUIET_MODULES + i) * module, dpi) for i in edges]
    for j, row in enumerate(mark.code.rows):
        for i, dark in enumerate(row):
            if dark:
                pen.rectangle((xs[i], ys[j], xs[i + 1] - 1, ys[j + 1] - 1), fill=_BLACK)
