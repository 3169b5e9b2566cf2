"""Which colour each part of a pullover has: from its chart, its edges and its yarn."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from typing import NamedTuple

from grading_core.codes import ProblemCode
from grading_core.errors import Check, Path, Problem, check
from grading_core.pullover.request import PulloverRequest
from grading_core.unknown import is_unknown, told
from grading_core.wording import some

ONE_COLOUR = "yarn"
"""What the only colour is called where nothing names any."""


@dataclass(frozen=True, slots=True, kw_only=True)
class GarmentColours:
    """The colours of a pullover's parts, by symbol.

    names: of all colours that there are. plain: of what isn't worked from a chart. below: of the same below a chart
    that is worked once, where body and sleeves end. hem, cuff, band: of the edges.
    """

    names: Mapping[str, str]
    plain: str
    below: str
    hem: str
    cuff: str
    band: str


class _Edge(NamedTuple):
    path: Path
    colour: str | None


def garment_colours(request: PulloverRequest, *, changed: bool = True) -> GarmentColours:
    """The colours of the garment.

    request: free of `colour_problems`. changed: with a maker's changes where there are any, or as designed.
    """
    names = _names(request)
    if request.chart is None:
        plain = below = _main_colour(request) or ONE_COLOUR
    else:
        colours = request.chart.plain_colours()
        plain, below = colours.plain, colours.last.plain
    band = request.changes.band.of(request.band) if request.changes and changed else request.band
    return GarmentColours(
        names=names or {ONE_COLOUR: ONE_COLOUR},
        plain=plain,
        below=below,
        hem=request.body.hem.colour or below,
        cuff=request.sleeve.cuff.colour or below,
        band=band.colour or plain,
    )


@check
def colour_problems(request: PulloverRequest) -> Check[None]:
    """Colours that edges name and nothing has, and colours without a yarn.

    request: any.
    """
    names = told(_names, request)
    if is_unknown(names):
        return
    for edge in _edges(request):
        if edge.colour is not None and edge.colour not in names:
            yield _unknown(edge.path, edge.colour, names)
    yield from _main_colour_problems(request, names)
    yield from _yarn_problems(request, names)


@check
def _main_colour_problems(request: PulloverRequest, names: Mapping[str, str]) -> Check[None]:
    yarn = request.yarn
    asked = yarn.main_colour if yarn else None
    path: Path = ("yarn", "main_colour")
    if request.chart is not None:
        if asked is not None:
            detail = "has no say where there is a chart, whose `plain_colour` it is."
            yield Problem(path, ProblemCode.MAIN_COLOUR_BESIDE_CHART, detail)
    elif asked is not None and asked not in names:
        yield _unknown(path, asked, names)
    elif asked is None and names and _main_colour(request) is None:
        detail = f"is missing: which of the colours is the pullover's own, {some(sorted(names))}?"
        yield Problem(path, ProblemCode.MAIN_COLOUR_MISSING, detail)


@check
def _yarn_problems(request: PulloverRequest, names: Mapping[str, str]) -> Check[None]:
    """Colours of the garment that no yarn is sent for where each has its own."""
    used = [symbol for symbol in _used(request) if symbol in names]
    own = request.changes.yarn if request.changes else None
    for path, yarn in ((("yarn", "colours"), request.yarn), (("changes", "yarn", "colours"), own)):
        without = [symbol for symbol in used if yarn and yarn.colours is not None and symbol not in yarn.colours]
        if without:
            yield Problem(path, ProblemCode.COLOUR_WITHOUT_YARN, f"has no yarn for {some(without)}.")


def _unknown(path: Path, colour: str, names: Mapping[str, str]) -> Problem:
    there = f"among {some(sorted(names))}" if names else "there: neither a chart nor `yarn.colours` is sent"
    return Problem(path, ProblemCode.UNKNOWN_SYMBOL, f"{colour!r} is not {there}.")


def _names(request: PulloverRequest) -> dict[str, str]:
    """Every colour that the chart or the yarn has, the chart's first; none where neither tells any."""
    charted = request.chart.chart.colours if request.chart else {}
    yarns = (request.yarn.colours if request.yarn else None) or {}
    told_names = {symbol: colour.name for symbol, colour in charted.items()}
    return told_names | {symbol: yarn.name or symbol for symbol, yarn in yarns.items() if symbol not in told_names}


def _edges(request: PulloverRequest) -> Iterator[_Edge]:
    yield _Edge(("body", "hem", "colour"), request.body.hem.colour)
    yield _Edge(("sleeve", "cuff", "colour"), request.sleeve.cuff.colour)
    yield _Edge(("band", "colour"), request.band.colour)
    if request.changes:
        yield _Edge(("changes", "band", "colour"), request.changes.band.colour)


def _main_colour(request: PulloverRequest) -> str | None:
    """The colour of a pullover without a chart: the one asked for, or the only one that no edge has."""
    if request.yarn is None or request.yarn.colours is None:
        return None
    if request.yarn.main_colour is not None:
        return request.yarn.main_colour
    left = set(request.yarn.colours) - {edge.colour for edge in _edges(request)}
    return left.pop() if len(left) == 1 else None


def _used(request: PulloverRequest) -> dict[str, None]:
    """The colours that something of the garment has, each once."""
    edges = dict.fromkeys(edge.colour for edge in _edges(request) if edge.colour is not None)
    if request.chart is None:
        return edges
    colours = request.chart.plain_colours()
    around = [symbol for here in (colours, colours.last) for symbol in (here.plain, here.line, here.seam)]
    return dict.fromkeys((*"".join(request.chart.worked_chart.rows), *around)) | edges
