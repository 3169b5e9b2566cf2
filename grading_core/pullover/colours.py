"""Which colour each part of a pullover has: from its chart, its edges and its yarn."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from typing import NamedTuple

from grading_core.chart.grid import Colour
from grading_core.chart.result import SizePlacement
from grading_core.codes import ProblemCode
from grading_core.errors import Check, Path, Problem, check
from grading_core.pullover.request import PulloverRequest, YarnWishes
from grading_core.unknown import is_unknown, told
from grading_core.wording import some

ONE_COLOUR = "yarn"
"""What the only colour is called where nothing names any."""


@dataclass(frozen=True, slots=True, kw_only=True)
class GarmentColours:
    """The colours of a pullover's parts, by symbol.

    palette: all colours that there are. plain: of what isn't worked from a chart. below: of the same below a chart
    that is worked once, where body and sleeves end. hem, cuff, band: of the edges.
    """

    palette: Mapping[str, Colour]
    plain: str
    below: str
    hem: str
    cuff: str
    band: str

    @property
    def names(self) -> dict[str, str]:
        """Of all colours."""
        return {symbol: colour.name for symbol, colour in self.palette.items()}

    def told(self, symbol: str) -> str | None:
        """What a colour is called in words; None where the pullover has but one, of which nobody speaks.

        symbol: of the colour.
        """
        return self.palette[symbol].name if len(self.palette) > 1 else None

    def underarm(self, chart: SizePlacement | None) -> str:
        """The symbol of what is cast on at the underarms: that of plain rounds there, and the upper one within a chart.

        chart: where it lies on the size, None without one.
        """
        return self.plain if chart and chart.progress.finishing_rounds else self.below


class _Edge(NamedTuple):
    path: Path
    colour: str | None


class _Sent(NamedTuple):
    """A yarn that is sent, and where."""

    path: Path
    yarn: YarnWishes


def garment_colours(request: PulloverRequest, *, changed: bool = True) -> GarmentColours:
    """The colours of the garment.

    request: free of `colour_problems`. changed: with a maker's changes where there are any, or as designed.
    """
    palette = _palette(request)
    if request.chart is None:
        plain = below = _main_colour(request) or ONE_COLOUR
    else:
        colours = request.chart.plain_colours()
        plain, below = colours.plain, colours.last.plain
    band = request.changes.band.of(request.band) if request.changes and changed else request.band
    return GarmentColours(
        palette=palette or {ONE_COLOUR: Colour(ONE_COLOUR)},
        plain=plain,
        below=below,
        hem=request.body.hem.colour or below,
        cuff=request.sleeve.cuff.colour or below,
        band=band.colour or plain,
    )


@check
def colour_problems(request: PulloverRequest) -> Check[None]:
    """Colours that edges name and nothing has, colours without a yarn, and a main colour that isn't told, or twice.

    request: any.
    """
    names = told(lambda: {symbol: colour.name for symbol, colour in _palette(request).items()})
    if is_unknown(names):
        return
    for edge in _edges(request):
        yield from _edge_problems(edge, names)
    yield from _main_colour_problems(request, names)
    yield from _main_colour_missing(request, names)
    yield from _yarn_problems(request, names)


@check
def _edge_problems(edge: _Edge, names: Mapping[str, str]) -> Check[None]:
    if edge.colour is not None and edge.colour not in names:
        yield _unknown(edge.path, edge.colour, names)


@check
def _main_colour_problems(request: PulloverRequest, names: Mapping[str, str]) -> Check[None]:
    for path, yarn in _yarns(request):
        asked, place = yarn.main_colour, (*path, "main_colour")
        if asked is None:
            continue
        if request.chart is not None:
            detail = "is for a pullover without a chart; beside one, `plain_colour` of the chart is the main colour."
            yield Problem(place, ProblemCode.MAIN_COLOUR_BESIDE_CHART, detail)
        elif asked not in names:
            yield _unknown(place, asked, names)
        elif asked != (_main_colour(request) or asked):
            detail = "is another than the design's: the yarn of each colour can be changed, and the colour of the band."
            yield Problem(place, ProblemCode.MAIN_COLOUR_CHANGED, detail)


@check
def _main_colour_missing(request: PulloverRequest, names: Mapping[str, str]) -> Check[None]:
    sent = _coloured(request)
    if request.chart is not None or sent is None or _main_colour(request) is not None:
        return
    # what edges really have would tell which colours are left
    if all(edge.colour is None or edge.colour in names for edge in _edges(request)):
        detail = f"is missing: which of the colours is the pullover's own, {some(sorted(names))}?"
        yield Problem((*sent.path, "main_colour"), ProblemCode.MAIN_COLOUR_MISSING, detail)


@check
def _yarn_problems(request: PulloverRequest, names: Mapping[str, str]) -> Check[None]:
    """Colours of the garment that no yarn is sent for where each has its own."""
    used = [symbol for symbol in _used(request) if symbol in names]
    for path, yarn in _yarns(request):
        without = [symbol for symbol in used if yarn.colours is not None and symbol not in yarn.colours]
        if without:
            yield Problem((*path, "colours"), ProblemCode.COLOUR_WITHOUT_YARN, f"has no yarn for {some(without)}.")


def _unknown(path: Path, colour: str, names: Mapping[str, str]) -> Problem:
    detail = f"{colour!r} is not among {some(sorted(names))}."
    if not names:
        detail = f"{colour!r} is a colour of a chart or of `yarn.colours`, and neither is sent."
    return Problem(path, ProblemCode.UNKNOWN_SYMBOL, detail)


def _yarns(request: PulloverRequest) -> Iterator[_Sent]:
    if request.yarn:
        yield _Sent(("yarn",), request.yarn)
    if request.changes and request.changes.yarn:
        yield _Sent(("changes", "yarn"), request.changes.yarn)


def _coloured(request: PulloverRequest) -> _Sent | None:
    """The yarn that tells which colours there are besides a chart's: the design's, or else a maker's."""
    return next((sent for sent in _yarns(request) if sent.yarn.colours is not None), None)


def _palette(request: PulloverRequest) -> dict[str, Colour]:
    """Every colour that the chart or the yarn has, the chart's first; none where neither tells any."""
    charted = request.chart.chart.colours if request.chart else {}
    sent = _coloured(request)
    yarns = (sent.yarn.colours if sent else None) or {}
    palette = dict(charted)
    for symbol, yarn in yarns.items():
        here = charted[symbol] if symbol in charted else Colour(yarn.name or symbol)
        palette[symbol] = Colour(here.name, yarn.hex) if here.hex is None else here
    return palette


def _edges(request: PulloverRequest) -> tuple[_Edge, ...]:
    return (
        _Edge(("body", "hem", "colour"), told(lambda: request.body.hem.colour)),
        _Edge(("sleeve", "cuff", "colour"), told(lambda: request.sleeve.cuff.colour)),
        _Edge(("band", "colour"), told(lambda: request.band.colour)),
        _Edge(("changes", "band", "colour"), told(lambda: request.changes.band.colour if request.changes else None)),
    )


def _main_colour(request: PulloverRequest) -> str | None:
    """The colour of a pullover without a chart: the one asked for, or the only one that no edge has."""
    sent = _coloured(request)
    if sent is None or sent.yarn.colours is None:
        return None
    if sent.yarn.main_colour is not None:
        return sent.yarn.main_colour
    left = set(sent.yarn.colours) - {edge.colour for edge in _edges(request)}
    return left.pop() if len(left) == 1 else None


def _used(request: PulloverRequest) -> dict[str, None]:
    """The colours that something of the garment has, each once."""
    edges = dict.fromkeys(edge.colour for edge in _edges(request) if edge.colour is not None)
    if request.chart is None:
        main = _main_colour(request)
        return edges if main is None else {main: None} | edges
    colours = request.chart.plain_colours()
    around = [symbol for here in (colours, colours.last) for symbol in (here.plain, here.line, here.seam)]
    return dict.fromkeys((*"".join(request.chart.worked_chart.rows), *around)) | edges
