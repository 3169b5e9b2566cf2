"""Charts as they are sent: rows of characters, or a PNG picture; both come to the same chart."""

from __future__ import annotations

from base64 import b64decode
from collections.abc import Mapping
from dataclasses import dataclass
from string import ascii_lowercase, ascii_uppercase, digits

from grading_core.chart.grid import Chart, FirstRow, Repeat
from grading_core.errors import ContradictionError, Path, Problem, raise_if_any
from service.png_chart import UnusablePng, read_png

_SYMBOLS = ascii_uppercase + ascii_lowercase + digits
"""For colours that nobody gave a symbol."""


@dataclass(frozen=True, slots=True)
class ChartColour:
    """A colour's name, and its sRGB value as "#rrggbb" where it has one."""

    name: str
    hex: str | None = None


@dataclass(frozen=True, slots=True)
class DrawnChart:
    """A chart, and its colours by symbol."""

    chart: Chart
    colours: Mapping[str, ChartColour]


@dataclass(frozen=True, slots=True, kw_only=True)
class SentChart:
    """A chart as a request has it: exactly one of rows and png (in base64)."""

    rows: tuple[str, ...] | None = None
    png: str | None = None
    colours: Mapping[str, ChartColour] | None = None
    first_row: FirstRow = "bottom"
    repeat: Repeat = "rows"

    def drawn(self, path: Path = ("chart",)) -> DrawnChart:
        """The chart itself.

        path: where it stands in the request.

        Raises ContradictionError for a picture that can't be used.
        """
        colours = self.colours
        if self.png is not None:
            rows, colours = chart_of_png(b64decode(self.png), colours, (*path, "png"))
        else:
            assert self.rows is not None
            rows = self.rows
            if colours is None:
                colours = {symbol: ChartColour(symbol) for symbol in dict.fromkeys("".join(rows))}
        names = {symbol: colour.name for symbol, colour in colours.items()}
        return DrawnChart(Chart(rows, names, self.first_row, self.repeat), colours)


def read_chart(png: bytes) -> DrawnChart:
    """The chart that a PNG file holds, its colours named by their hex.

    Raises ContradictionError for a file that can't be used.
    """
    rows, colours = chart_of_png(png, None, ())
    return DrawnChart(Chart(rows, {symbol: colour.name for symbol, colour in colours.items()}), colours)


def chart_of_png(
    png: bytes, colours: Mapping[str, ChartColour] | None, path: Path
) -> tuple[tuple[str, ...], Mapping[str, ChartColour]]:
    """The rows of characters that a picture stands for, and their colours.

    png: the file. colours: told by their hex; None gives every colour a symbol, in the order in which they
    are met from the top left, and its hex as its name. path: where the picture stands in the request.

    Raises ContradictionError for a file that can't be used and for a pixel whose colour is not in `colours`.
    """
    try:
        pixels = read_png(png)
    except UnusablePng as why:
        raise ContradictionError([Problem(path, str(why))]) from None
    used = list(dict.fromkeys(colour for row in pixels for colour in row))
    if colours is None:
        colours = {symbol: ChartColour(used, used) for symbol, used in zip(_SYMBOLS, used, strict=False)}
    symbols = {colour.hex: symbol for symbol, colour in colours.items()}
    raise_if_any(_colour_problems(colours, used, path))
    return tuple("".join([symbols[colour] for colour in row]) for row in pixels), colours


def _colour_problems(colours: Mapping[str, ChartColour], used: list[str], path: Path) -> list[Problem]:
    symbols: dict[str, str] = {}
    found = []
    for symbol, colour in colours.items():
        if colour.hex is None:
            continue
        if colour.hex in symbols:
            place = ("chart", "colours", symbol, "hex")
            found.append(Problem(place, f"is the hex of {symbols[colour.hex]!r} already."))
        symbols[colour.hex] = symbol
    missing = [colour for colour in used if colour not in symbols]
    if missing:
        found.append(Problem(path, f"has colours that are no hex of `colours`: {', '.join(missing)}."))
    return found
