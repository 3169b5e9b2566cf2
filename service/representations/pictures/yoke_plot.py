"""The stitches of each section of a pullover's yoke, round by round: a panel for each size, all of one scale."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from math import inf

import svg

from grading_core.pullover.pictures import PicturedPullover
from grading_core.pullover.result import KnittedSize
from grading_core.pullover.yoke_stitches import SECTIONS, Step, doubled_rounds, yoke_stitches
from grading_core.sentences import COUNT, NAMES, TOKEN, Saying, Sentence, run_of
from service.language import text as said
from service.lengths import LengthWriter
from service.representations.pictures.drawing import TEXT_COLOUR, rounded, text
from service.representations.pictures.heading import heading
from service.representations.pictures.lettering import width_of, wrapped
from service.representations.pictures.sheets import Drawing, Picture, Room, room

TITLE = Saying("picture.yoke_plot")
SECTION = Saying("yoke_plot.section", of=TOKEN)
AXES = Saying("yoke_plot.axes")
DOUBLED = Saying("yoke_plot.doubled")
VERSION = Saying("yoke_plot.version", of=TOKEN)
ROUNDS = Saying("yoke_plot.rounds", rounds=COUNT)
GROWS = Saying("yoke_plot.grows", of=TOKEN, start=COUNT, end=COUNT)
DESIGNED_ROUNDS = Saying("yoke_plot.designed_rounds", sizes=NAMES, rounds=COUNT)

_SIZE = 10.5
_LINE = 16
_LEFT, _TOP, _BOTTOM = 34, 26, 24
"""Round the lines of a panel: for the numbers beside it, its size, and the rounds."""

_GAP = 16
_HEIGHT_ALONE, _LEAST_HEIGHT, _MOST_HEIGHT = 420, 0.78, 1.1
"""Of one panel; and of each of several, as a part of its width, where there is little and where there is much room."""

_APART = 12
"""The least between two numbers that stand one above the other."""

_SAMPLE = 34
_STEPS = (1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000, 5000)

_DASHES: Mapping[str, list[float] | None] = {"both": None, "back": None, "front": [2.0, 2.5], "sleeve": [7.0, 3.0]}
_THIN, _BOLD = 1.0, 2.0


@dataclass(frozen=True, slots=True)
class _Version:
    """A yoke as it is drawn.

    of: "designed" where a maker has changed it since, else "knitted". rounds: of the yoke. lines: the steps of each
    section; of back and front as "both" where they are the same. doubled: rounds with two increases at an edge.
    """

    of: str
    rounds: int
    lines: Mapping[str, tuple[Step, ...]]
    doubled: tuple[int, ...]

    @property
    def most(self) -> int:
        """The most stitches of a section."""
        return max(step.stitches for steps in self.lines.values() for step in steps)


@dataclass(frozen=True, slots=True, kw_only=True)
class _Axes:
    """The area of a panel's lines: its left and lower edge, its size in pixels, and what it has room for."""

    left: float
    bottom: float
    width: float
    height: float
    rounds: int
    stitches: int

    def x(self, number: int) -> float:
        return self.left + self.width * number / self.rounds

    def y(self, stitches: int) -> float:
        return self.bottom - self.height * stitches / self.stitches


def yoke_plot(view: PicturedPullover, length: LengthWriter) -> Picture:
    """The picture.

    view: what is drawn. length: writes lengths.
    """
    sizes, above = view.knitted, heading(view, TITLE())
    panels = _panels(view, sizes)
    return Picture(
        key="yoke-plot",
        heading=above,
        about=[*_described(view, sizes, panels)] if panels else [],
        drawings=_drawings(panels, room(view.picture.page, above))
        if panels
        else [Drawing(width=0, height=0, elements=[])],
    )


def _panels(view: PicturedPullover, sizes: Mapping[str, KnittedSize]) -> dict[str, list[_Version]]:
    """What each size's panel shows: the yoke as designed, where a maker's changes have made another of it, and as it is
    knitted."""
    designed = {size.label: size.outcome for size in view.pullover.designed}
    panels = {}
    for label, size in sizes.items():
        knitted, before = _version(size, "knitted"), designed.get(label)
        panels[label] = [knitted]
        if isinstance(before, KnittedSize):
            first = _version(before, "designed")
            if (first.rounds, first.lines) != (knitted.rounds, knitted.lines):
                panels[label] = [first, knitted]
    return panels


def _version(size: KnittedSize, of: str) -> _Version:
    steps: dict[str, tuple[Step, ...]] = dict(yoke_stitches(size).items())
    if steps["back"] == steps["front"]:
        steps = {"both": steps["back"], "sleeve": steps["sleeve"]}
    return _Version(of, size.counts.rounds, steps, doubled_rounds(size))


def _drawings(panels: Mapping[str, list[_Version]], space: Room) -> list[Drawing]:
    """The panels on as many sheets as they need, each with what its lines mean."""
    versions = [version for panel in panels.values() for version in panel]
    key = [*_key(versions, space.width)]
    columns = 1 if len(panels) == 1 else 2 if len(panels) in (2, 4) else 3
    width = (space.width - _GAP * (columns - 1)) / columns
    height, rows = _heights(-(-len(panels) // columns), width, space.height - _LINE * len(key), alone=columns == 1)
    right = max(width_of(written, _SIZE) for panel in panels.values() for _, written in _ends(panel, columns == 1))
    most = max(version.rounds for version in versions), max(version.most for version in versions)
    drawings, labels = [], list(panels)
    for start in range(0, len(labels), rows * columns):
        elements: list[svg.Element] = []
        here = labels[start : start + rows * columns]
        for place, label in enumerate(here):
            left, top = (place % columns) * (width + _GAP), (place // columns) * (height + _GAP)
            axes = _Axes(
                left=left + _LEFT,
                bottom=top + height - _BOTTOM,
                width=width - _LEFT - right - 12,
                height=height - _TOP - _BOTTOM,
                rounds=most[0],
                stitches=most[1],
            )
            drawn = [*_panel(panels[label], axes, None if columns == 1 else label)]
            elements.append(svg.G(class_=["panel"], elements=drawn))
        bottom = (height + _GAP) * -(-len(here) // columns)
        elements += [
            svg.G(transform=[svg.Translate(0, rounded(bottom + _LINE * number))], elements=line)
            for number, line in enumerate(key)
        ]
        drawings.append(Drawing(width=space.width, height=bottom + _LINE * len(key), elements=elements))
    return drawings


def _heights(rows: int, width: float, room: float, *, alone: bool) -> tuple[float, int]:
    """The height of a panel, and how many stand one below the other on a sheet.

    rows: of all panels. width: of a panel. room: the height of a sheet.
    """
    if alone:
        return min(_HEIGHT_ALONE, room - _GAP), 1
    height = width * _LEAST_HEIGHT
    if room == inf:
        return height, rows
    fitting = min(max(int(room // (height + _GAP)), 1), rows)
    return min(room / fitting - _GAP, width * _MOST_HEIGHT), fitting


def _panel(versions: Sequence[_Version], axes: _Axes, label: str | None) -> Iterator[svg.Element]:
    """One size.

    label: its name; None where it is the only one, whose lines are then named.
    """
    if label is not None:
        yield text(label, axes.left, axes.bottom - axes.height - 12, 12, font_weight="bold")
    yield from _grid(axes, sorted({version.rounds for version in versions}))
    for version in versions:
        yield from _lines(version, axes, bold=len(versions) > 1 and version is versions[-1])
    yield from _end_names(_ends(versions, label is None), axes, versions)


def _grid(axes: _Axes, lasts: Sequence[int]) -> Iterator[svg.Element]:
    """Axes with their numbers, and where the yoke ends."""
    right, top = axes.left + axes.width, axes.bottom - axes.height
    step = _step(axes.stitches, axes.height / 34)
    for stitches in range(0, axes.stitches + 1, step):
        y = axes.y(stitches)
        yield _path(f"M{rounded(axes.left)} {rounded(y)}H{rounded(right)}", 0.6, opacity=0.9 if stitches == 0 else 0.18)
        yield text(str(stitches), axes.left - 6, y + 3.8, _SIZE, anchor="end", class_=["stitches"])
    taken: list[float] = []
    for number in lasts:
        x = axes.x(number)
        yield _path(f"M{rounded(x)} {rounded(axes.bottom)}V{rounded(top)}", 0.6, dashes=[1.5, 3.0], opacity=0.6)
        if all(abs(x - other) > 24 for other in taken):
            taken.append(x)
            yield text(str(number), x, axes.bottom + 18, _SIZE, anchor="middle", font_weight="bold", class_=["rounds"])
    for number in range(0, axes.rounds + 1, _step(axes.rounds, axes.width / 32)):
        x = axes.x(number)
        yield _path(f"M{rounded(x)} {rounded(axes.bottom)}v4", 0.6)
        if all(abs(x - other) > 24 for other in taken):
            yield text(str(number), x, axes.bottom + 18, _SIZE, anchor="middle", class_=["rounds"])


def _lines(version: _Version, axes: _Axes, *, bold: bool) -> Iterator[svg.Element]:
    """The stitches of each section as a line that steps where they change, and marks over doubled rounds."""
    thickness = _BOLD if bold else _THIN if version.of == "designed" else 1.5
    for section, steps in version.lines.items():
        (_, cast_on), *others = steps
        path = [f"M{rounded(axes.x(0))} {rounded(axes.y(cast_on))}"]
        path += [f"H{rounded(axes.x(number))}V{rounded(axes.y(stitches))}" for number, stitches in others]
        path.append(f"H{rounded(axes.x(version.rounds))}")
        names = ["back", "front"] if section == "both" else [section]
        yield _path(
            "".join(path), thickness, dashes=_DASHES[section], names=[version.of, *(f"yoke-{name}" for name in names)]
        )
    if version.of == "knitted" and version.doubled:
        body = version.lines.get("both") or version.lines["back"]
        marks = "".join(_mark(axes.x(number), axes.y(_at(body, number)) - 6) for number in version.doubled)
        yield svg.Path(extra={"d": marks}, fill=TEXT_COLOUR, class_=["doubled"])


def _at(steps: Sequence[Step], number: int) -> int:
    """The stitches after a round."""
    return max(step for step in steps if step.round <= number).stitches


def _mark(x: float, y: float) -> str:
    """A triangle that points down."""
    return f"M{rounded(x)} {rounded(y + 3)}l-3.5 -6h7z"


def _ends(versions: Sequence[_Version], named: bool) -> list[tuple[int, str]]:
    """The stitches at the split, and what is written beside them: of all versions, the fewest first.

    named: whether with the sections.
    """
    sections: dict[int, list[str]] = {}
    for version in versions:
        for section, steps in version.lines.items():
            at = sections.setdefault(steps[-1].stitches, [])
            if section not in at:
                at.append(section)
    return [
        (stitches, " · ".join([*(said(SECTION(of=each)) for each in found), str(stitches)]) if named else str(stitches))
        for stitches, found in sorted(sections.items())
    ]


def _end_names(ends: Sequence[tuple[int, str]], axes: _Axes, versions: Sequence[_Version]) -> Iterator[svg.Element]:
    """What is written at the ends of the lines, at the right edge and apart from one another."""
    right = axes.left + axes.width
    places = [axes.y(stitches) for stitches, _ in ends]
    for number in range(1, len(places)):
        places[number] = min(places[number], places[number - 1] - _APART)
    for (stitches, written), y in zip(ends, places, strict=True):
        last = max(
            each.rounds for each in versions if any(steps[-1].stitches == stitches for steps in each.lines.values())
        )
        start = axes.x(last)
        if right - start > 3 or abs(y - axes.y(stitches)) > 1:
            line = f"M{rounded(start)} {rounded(axes.y(stitches))}H{rounded(right)}L{rounded(right + 6)} {rounded(y)}"
            yield _path(line, 0.6, dashes=[1.5, 2.0], opacity=0.7)
        yield text(written, right + 8, y + 3.8, _SIZE, class_=["end"])


def _key(versions: Sequence[_Version], width: float) -> Iterator[list[svg.Element]]:
    """What lines and marks mean, in lines of the width."""
    sections = [each for each in ("both", "back", "front", "sleeve") if any(each in one.lines for one in versions)]
    changed = {version.of for version in versions} > {"knitted"}
    samples: list[tuple[svg.Element, str]] = [
        (_path(f"M0 -4h{_SAMPLE - 8}", _BOLD if changed else 1.5, dashes=_DASHES[each]), said(SECTION(of=each)))
        for each in sections
    ]
    if changed:
        for of, thickness in (("designed", _THIN), ("changed", _BOLD)):
            samples.append((_path(f"M0 -4h{_SAMPLE - 8}", thickness), said(VERSION(of=of))))
    if any(version.doubled for version in versions if version.of == "knitted"):
        samples.append((svg.Path(extra={"d": _mark(14, -4)}, fill=TEXT_COLOUR), said(DOUBLED())))
    line: list[svg.Element] = []
    at = 0.0
    for sample, written in samples:
        needed = _SAMPLE + width_of(written, _SIZE) + 22
        if line and at + needed > width:
            yield line
            line, at = [], 0.0
        line += [svg.G(transform=[svg.Translate(rounded(at), 10)], elements=[sample])]
        line += [text(written, at + _SAMPLE, 10, _SIZE)]
        at += needed
    yield line
    for part in wrapped(said(AXES()), width, _SIZE):
        yield [text(part, 0, 10, _SIZE)]


def _described(
    view: PicturedPullover, sizes: Mapping[str, KnittedSize], panels: Mapping[str, Sequence[_Version]]
) -> Iterator[Sentence]:
    """The picture in words."""
    drawn = [sizes.get(label) for label in view.pullover.labels]

    def told(run: tuple[int | None, ...]) -> int | tuple[int | None, ...] | None:
        return run if len(run) > 1 else run[0]

    stitches = [yoke_stitches(size) if size else None for size in drawn]
    yield ROUNDS(rounds=told(run_of(drawn, lambda size: size.counts.rounds)))
    for section in SECTIONS:
        yield GROWS(
            of=section,
            start=told(tuple(each[section][0].stitches if each else None for each in stitches)),
            end=told(tuple(each[section][-1].stitches if each else None for each in stitches)),
        )
    changed = [label for label, versions in panels.items() if len(versions) > 1]
    if changed:
        rounds = told(tuple(panels[label][0].rounds if label in changed else None for label in view.pullover.labels))
        yield DESIGNED_ROUNDS(sizes=tuple(changed), rounds=rounds)


def _step(most: int, parts: float) -> int:
    """The distance of numbers on an axis, so that there are at most so many parts."""
    return next((step for step in _STEPS if most / step <= max(parts, 2)), _STEPS[-1])


def _path(
    path: str,
    width: float,
    *,
    dashes: list[float] | None = None,
    opacity: float | None = None,
    names: Sequence[str] = (),
) -> svg.Path:
    return svg.Path(
        extra={"d": path},
        fill="none",
        stroke=TEXT_COLOUR,
        stroke_width=width,
        stroke_opacity=opacity,
        stroke_dasharray=dashes,  # type: ignore[arg-type]
        stroke_linejoin="round",
        class_=list(names) or None,
    )
