"""Pictures of charts, read back from their SVG: which colour each stitch has, what is marked, and what stands where."""

from __future__ import annotations

import re
from dataclasses import dataclass
from typing import Any
from xml.etree.ElementTree import Element, fromstring

SVG = "{http://www.w3.org/2000/svg}"
SECTIONS = ("body", "back", "front", "sleeve")
_NUMBER = r"(-?[\d.]+)"

Place = tuple[int, int]


@dataclass(frozen=True)
class Text:
    """A text, its place beside the stitches, in pixels, and the end of it that lies there."""

    x: float
    y: float
    anchor: str
    text: str


@dataclass(frozen=True)
class Row:
    """A drawn row as it is read: the number at its left, and at its right the chart's row and the words."""

    round: str | None
    row: str
    words: str


@dataclass(frozen=True)
class Piece:
    """The chart on one sheet.

    height: of the rows. cell: of a stitch. stitches: by (row from the bottom, column as numbered), the paints, the
    colour first. starts: likewise, by section. signs: rows by sign.
    """

    cell: tuple[float, float]
    height: int
    columns: range
    stitches: dict[Place, list[str]]
    starts: dict[str, set[Place]]
    signs: dict[str, list[int]]
    texts: list[Text]

    def rows(self) -> list[Row]:
        """The rows, the lowest first, by what stands beside them."""
        width = len(self.columns) * self.cell[0]
        beside: list[dict[str, str]] = [{} for _ in range(self.height)]
        for text in sorted(self.texts, key=lambda text: text.x):
            if not 0 <= text.y <= self.height * self.cell[1]:
                continue
            here = beside[self.height - 1 - int(text.y / self.cell[1])]
            if text.x < 0:
                if text.text.isdecimal():
                    here["round"] = text.text
            elif text.x > width:
                here["words" if "row" in here else "row"] = text.text
        return [Row(here.get("round"), here["row"], here.get("words", "")) for here in beside]

    def numbered(self) -> dict[str, list[int]]:
        """The numbers above and below the stitches, by where they stand."""
        found: dict[str, list[int]] = {"above": [], "below": []}
        for text in self.texts:
            if text.anchor == "middle" and text.text.isdecimal():
                found["above" if text.y < 0 else "below"].append(int(text.text))
        return found


def sheets(svg: bytes) -> list[Element]:
    """The sheets of a picture, in their order."""
    return list(fromstring(svg).findall(f"{SVG}g"))


def pieces(svg: bytes) -> list[Piece]:
    """The chart as it is drawn on each sheet that has some of it."""
    return [
        _piece(group, stitches)
        for sheet in sheets(svg)
        for group in sheet.iter(f"{SVG}g")
        for stitches in group.findall(f"{SVG}g")
        if stitches.get("class") == "stitches"
    ]


def texts(element: Element) -> list[str]:
    return [text.text or "" for text in element.iter(f"{SVG}text")]


def _piece(group: Element, stitches: Element) -> Piece:
    cell: Any = tuple(map(float, re.findall(r"[\d.]+", stitches.get("transform", ""))))
    found: dict[Place, list[str]] = {}
    for path in stitches.findall(f"{SVG}path"):
        assert path.get("stroke-width") == "1"
        for x, y, run in re.findall(rf"M{_NUMBER} {_NUMBER}h(\d+)", path.get("d", "")):
            for at in range(int(run)):
                found.setdefault((int(float(y) - 0.5), int(float(x)) + at), []).append(path.get("stroke", ""))
    height, width = (1 + max(place[of] for place in found) for of in (0, 1))
    written = [_text(text, parent) for parent in group.iter() for text in parent.findall(f"{SVG}text")]
    [left] = {
        int(text.text) + int(text.x / cell[0]) for text in written if text.anchor == "middle" and text.text.isdecimal()
    }
    starts: dict[str, set[Place]] = {section: set() for section in SECTIONS}
    for path in group.findall(f"{SVG}path"):
        kind, _, section = path.get("class", "").partition("-")
        if kind == "starts":
            for x, y, back in re.findall(rf"M{_NUMBER} {_NUMBER}(v[^M]*l)?", path.get("d", "")):
                # a triangle begins at the right edge, in the upper half of its cell
                column = left - round(float(x) / cell[0] - bool(back))
                starts[section].add((height - 1 - int(float(y) / cell[1] + 0.01), column))
    signs: dict[str, list[int]] = {}
    for each in group.findall(f"{SVG}g"):
        if each.get("class") in ("increase", "double", "decrease"):
            middles = [float(dot.get("cy", "")) for dot in each.findall(f"{SVG}circle")] + [
                float(re.findall(rf"M{_NUMBER} {_NUMBER}", path.get("d", ""))[0][1]) + 2.2
                for path in each.findall(f"{SVG}path")
            ]
            signs[each.get("class", "")] = sorted(height - 1 - int(y / cell[1]) for y in middles)
    return Piece(
        cell=cell,
        height=height,
        columns=range(left - width + 1, left + 1),
        stitches={(height - 1 - y, left - x): paints for (y, x), paints in found.items()},
        starts=starts,
        signs=signs,
        texts=written,
    )


def _text(text: Element, parent: Element) -> Text:
    anchor = text.get("text-anchor") or parent.get("text-anchor") or "start"
    return Text(float(text.get("x", "")), float(text.get("y", "")), anchor, text.text or "")
