"""A garment's front read back from its picture: rows of stitches, as a general XML parser finds them."""

from __future__ import annotations

import re
from collections.abc import Iterator
from typing import NamedTuple
from xml.etree import ElementTree

SVG = "{http://www.w3.org/2000/svg}"
PIECES = ("front", "first-sleeve", "second-sleeve")

Run = tuple[float, int, str]
"""Where stitches begin in their row, how many they are, and their paint."""


class Rows(NamedTuple):
    """Rows of one gauge.

    kind: what they are. count: how many. top: where the first begins, in cm. stitch, row: size of a stitch. runs: of
    each row, from the left. purled: rectangles of purl stitches: left, top, width and height, in stitches.
    """

    kind: str
    count: int
    top: float
    stitch: float
    row: float
    runs: list[list[Run]]
    purled: list[tuple[float, float, float, float]]


def root(svg: str | bytes) -> ElementTree.Element:
    return ElementTree.fromstring(svg)


def classed(svg: ElementTree.Element, name: str, tag: str = "g") -> list[ElementTree.Element]:
    return [found for found in svg.iter(f"{SVG}{tag}") if found.get("class") == name]


def bands(svg: ElementTree.Element, piece: str) -> list[Rows]:
    """The bands of rows of a piece, from the top."""
    (group,) = classed(svg, piece)
    (within,) = [child for child in group if child.tag == f"{SVG}g" and child.get("clip-path")]
    return [_rows(band) for band in within]


def rows(svg: ElementTree.Element, piece: str, kind: str) -> list[list[Run]]:
    """The rows of a kind, whatever their gauge."""
    return [row for band in bands(svg, piece) if band.kind == kind for row in band.runs]


def colours(row: list[Run]) -> list[str]:
    """The paint of each stitch, from the left."""
    return [paint for _, count, paint in row for _ in range(count)]


def drawn(svg: ElementTree.Element) -> list[tuple[str, list[Run]]]:
    """All rows of all pieces, with their kind."""
    return [(band.kind, row) for piece in PIECES for band in bands(svg, piece) for row in band.runs]


def points(shape: ElementTree.Element) -> list[tuple[float, float]]:
    return [tuple(map(float, point.split(","))) for point in shape.get("points").split()]


def _rows(band: ElementTree.Element) -> Rows:
    translated, scaled = re.findall(r"\(([^)]*)\)", band.get("transform"))
    (_, top), (stitch, row) = ([float(number) for number in re.split("[ ,]+", text)] for text in (translated, scaled))
    found: dict[float, list[Run]] = {}
    for path in band.iterfind(f"{SVG}path"):
        if path.get("stroke-width") == "1" and not path.get("stroke").startswith("url"):
            for x, y, count in re.findall(r"M(\S+) (\S+)h(\d+)", path.get("d")):
                found.setdefault(float(y), []).append((float(x), int(count), path.get("stroke")))
    # the texture lies over all rows; those in the paper's colour have nothing else
    (texture,) = [path.get("d") for path in band.iterfind(f"{SVG}path") if "-knit-" in (path.get("fill") or "")]
    count = int(re.search(r"v(\d+)", texture)[1])
    every = [number + 0.5 for number in range(count)]
    assert set(found) <= set(every)
    return Rows(band.get("class"), count, top, stitch, row, [sorted(found.get(y, [])) for y in every], [*_purled(band)])


def _purled(band: ElementTree.Element) -> Iterator[tuple[float, float, float, float]]:
    for path in band.iterfind(f"{SVG}path"):
        if "-purl-" in (path.get("fill") or ""):
            for box in re.findall(r"M(\S+) (\S+?)h(\d+)v(\d+)", path.get("d")):
                yield tuple(map(float, box))
