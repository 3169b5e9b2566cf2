"""A chart drawn as a PNG picture: one pixel is one stitch.

Size and kind are read from the file's first bytes, before anything is decoded, and the chunks that hold text,
profiles or animation never reach the decoder: what a file costs is bounded by the chart's limits.
"""

from __future__ import annotations

import struct
from collections.abc import Iterator
from io import BytesIO
from typing import TYPE_CHECKING

from grading_core.chart.grid import MAX_COLOURS, MAX_COLUMNS, MAX_ROWS
from service.flaws import Flaw, FormCode, FormError

if TYPE_CHECKING:
    from PIL import Image

MAX_BYTES = 512 * 1024

_SIGNATURE = b"\x89PNG\r\n\x1a\n"
_ANIMATED = b"acTL"
_DECODED = (b"IHDR", b"PLTE", b"tRNS", b"IDAT", b"IEND")
"""The chunks that decide a pixel's colour."""


def read_png(png: bytes) -> tuple[tuple[str, ...], ...]:
    """The colour of every pixel, as "#rrggbb": rows from the top, each from the left.

    png: a file of 8 bits a sample at most, without transparent pixels. Its numbers are taken as they are,
    whatever colour profile it names.

    Raises FormError for any other file, and for more pixels or colours than a chart may have.
    """
    # The decoder is loaded where it is needed: most workers never read a picture.
    from PIL import Image

    if len(png) > MAX_BYTES:
        raise FormError(Flaw(FormCode.TOO_LONG, f"is larger than {MAX_BYTES // 1024} KiB."))
    _check_header(png)
    chunks = list(_chunks(png))
    if any(kind == _ANIMATED for kind, _ in chunks):
        raise FormError(Flaw(FormCode.UNREADABLE_PICTURE, "is animated; a chart is a still picture."))
    needed = _SIGNATURE + b"".join(whole for kind, whole in chunks if kind in _DECODED)
    try:
        # Decoding alone would pass over wrong checksums.
        Image.open(BytesIO(needed), formats=("PNG",)).verify()
        pixels = Image.open(BytesIO(needed), formats=("PNG",)).convert("RGBA")
    except Exception:  # The decoder answers broken files by many kinds of errors.
        raise FormError(Flaw(FormCode.UNREADABLE_PICTURE, "is broken: its pixels cannot be read.")) from None
    return _colours(pixels)


def _check_header(png: bytes) -> None:
    """Refuse by the first 26 bytes what is no PNG or too large."""
    if not png.startswith(_SIGNATURE) or png[12:16] != b"IHDR" or len(png) < 26:
        raise FormError(Flaw(FormCode.UNREADABLE_PICTURE, "is not a PNG file."))
    width, height, bits = struct.unpack(">IIB", png[16:25])
    if not (1 <= width <= MAX_COLUMNS and 1 <= height <= MAX_ROWS):
        raise FormError(
            Flaw(
                FormCode.UNUSABLE_PIXELS,
                f"is {width} x {height} pixels; a chart has at most {MAX_COLUMNS} columns and {MAX_ROWS} rows, "
                "one pixel a stitch.",
            )
        )
    if bits > 8:
        raise FormError(Flaw(FormCode.UNREADABLE_PICTURE, f"has {bits} bits a sample; save it with 8."))


def _chunks(png: bytes) -> Iterator[tuple[bytes, bytes]]:
    """The kind of each chunk with the whole of it."""
    place = len(_SIGNATURE)
    while place + 8 <= len(png):
        length, kind = struct.unpack(">I4s", png[place : place + 8])
        yield kind, png[place : place + 12 + length]
        place += 12 + length


def _colours(pixels: Image.Image) -> tuple[tuple[str, ...], ...]:
    counted = pixels.getcolors(MAX_COLOURS)
    if counted is None:
        raise FormError(
            Flaw(FormCode.UNUSABLE_PIXELS, f"has more than {MAX_COLOURS} colours; reduce them to those of the yarns.")
        )
    width, height = pixels.size
    names: dict[bytes, str] = {}
    content = pixels.tobytes()
    stitches = [content[place : place + 4] for place in range(0, len(content), 4)]
    for pixel in set(stitches):
        if pixel[3] != 255:
            column, row = stitches.index(pixel) % width, stitches.index(pixel) // width
            raise FormError(
                Flaw(
                    FormCode.UNUSABLE_PIXELS,
                    f"is transparent in pixel {column + 1} from the left of row {row + 1} from the top; every "
                    "stitch needs a colour.",
                )
            )
        names[pixel] = "#" + pixel[:3].hex()
    coloured = [names[pixel] for pixel in stitches]
    return tuple(tuple(coloured[row * width : (row + 1) * width]) for row in range(height))
