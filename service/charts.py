"""Charts that come as PNG pictures, as the rows of characters that they stand for."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from string import ascii_lowercase, ascii_uppercase, digits
from typing import Any

from grading_core.chart.grid import Chart, ChartDescription, Colour, describe
from grading_core.wording import some
from service.flaws import Flaw, FormCode, FormError
from service.png_chart import read_png

_SYMBOLS = ascii_uppercase + ascii_lowercase + digits
"""For colours that nobody gave a symbol."""


def read_chart(png: bytes) -> ChartDescription:
    """The chart that a PNG file holds, its colours named by their hex.

    Raises FormError for a file that can't be used.
    """
    return describe(chart_of_pixels(read_png(png)))


def chart_of_pixels(
    pixels: Sequence[Sequence[str]], colours: Mapping[str, Colour] | None = None, **options: Any
) -> Chart:
    """The chart that a picture stands for.

    pixels: each one's hex, as `read_png` has them. colours: told by their hex; None gives every colour a symbol, in the
    order in which they are met from the top left, and its hex as its name. options: how the chart is worked.

    Raises FormError, by the fields of a chart as it is sent, for a pixel whose colour is not in `colours`, and for two
    of them that are alike.
    """
    met = list(dict.fromkeys(hex for row in pixels for hex in row))
    if colours is None:
        colours = {symbol: Colour(hex, hex) for symbol, hex in zip(_SYMBOLS, met, strict=False)}
    elif errors := _colour_errors(colours, met):
        raise FormError(errors)
    symbols = {colour.hex: symbol for symbol, colour in colours.items()}
    rows = tuple("".join([symbols[hex] for hex in row]) for row in pixels)
    return Chart(rows, colours, **options)


def _colour_errors(colours: Mapping[str, Colour], met: Sequence[str]) -> dict[str, Any]:
    symbols: dict[str, str] = {}
    twice: dict[str, Any] = {}
    for symbol, colour in colours.items():
        if colour.hex is None:
            continue
        if colour.hex in symbols:
            detail = f"is the hex of {symbols[colour.hex]!r} already."
            twice[symbol] = {"hex": Flaw(FormCode.DUPLICATE_COLOUR, detail)}
        symbols[colour.hex] = symbol
    missing = [hex for hex in met if hex not in symbols]
    errors: dict[str, Any] = {"colours": twice} if twice else {}
    if missing:
        detail = f"has colours that are no hex of `colours`: {some(missing)}."
        errors["png"] = Flaw(FormCode.UNKNOWN_COLOUR, detail)
    return errors
