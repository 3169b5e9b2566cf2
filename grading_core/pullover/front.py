"""The front of a pullover as it will look: its stitches, its ribs, and the neck with what is seen behind it."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, fields, replace
from typing import Literal, NamedTuple

from grading_core.chart.front import FrontView, seen_front, stitches_in_front
from grading_core.chart.grid import Anchor, Chart, Colour
from grading_core.chart.layout import Stretches, lay_out
from grading_core.chart.request import ChartRequest, SeamStitches
from grading_core.chart.views import stitches_drawn_problems
from grading_core.errors import sound
from grading_core.fraction import Fraction
from grading_core.gauge import Gauge
from grading_core.parts.ribbing import Rib, RibRepeat
from grading_core.pullover.chart import charted_sizes
from grading_core.pullover.colours import ONE_COLOUR, GarmentColours
from grading_core.pullover.pictures import PicturedPullover, PictureRequest, picture_pullover
from grading_core.pullover.request import YokeWishes
from grading_core.pullover.result import KnittedSize, Pullover

EdgeName = Literal["hem", "cuff", "band"]

_NAMELESS = "."
"""The symbol of the only colour where nothing names any."""

_ANY_RIB = RibRepeat(1, 1)
"""What is drawn where a rib may be any."""


class ShortRow(NamedTuple):
    """A short row as far as it is seen from the front, at either side: from the fold of the sleeve over the raglan line
    towards the middle of the front.

    sleeve, line, front: its stitches in each.
    """

    sleeve: int
    line: int
    front: int


@dataclass(frozen=True, slots=True, kw_only=True)
class RibView:
    """A rib as it is seen from the front.

    stitches: a "k" for each knit stitch and a "p" for each purled one, from the viewer's left. rounds: the adjusting
    round, which is knitted plain, among them where adjusted says that there is one. gauge: of the rib. colour: symbol.
    """

    stitches: str
    rounds: int
    adjusted: bool
    gauge: Gauge
    colour: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Finish:
    """What a pullover's front has beside stitches between the neck's edge and its ribs.

    plain: the gauge of short rows. short_rows: that raise the back, the first worked first. raised_cm: by which they
    raise it. missing: how many stitches the front lacks in its middle in each of its first rounds. back: stitches of
    the back at the neck. hem: below the body. cuffs: of the first sleeve and of the second. band, band_behind: what
    is seen of the neckband before the neck and, through the neck, behind it. edges: of each colour that any has,
    which ones.
    """

    plain: Gauge
    short_rows: tuple[ShortRow, ...]
    raised_cm: Fraction
    missing: tuple[int, ...]
    back: int
    hem: RibView
    cuffs: tuple[RibView, RibView]
    band: RibView
    band_behind: RibView
    edges: Mapping[str, tuple[EdgeName, ...]]


@dataclass(frozen=True, slots=True, kw_only=True)
class PulloverFront:
    """The front of one size. named: whether its colours have names."""

    view: FrontView
    finish: Finish
    named: bool


@dataclass(frozen=True, slots=True, kw_only=True)
class PicturedFront(PicturedPullover):
    """A pullover of which the front of one size is drawn. front: None where that size can't be knitted."""

    front: PulloverFront | None


def picture_front(request: PictureRequest) -> PicturedFront:
    """The pullover, and the colour of every stitch of one size's front.

    request: names the size.

    Raises ContradictionError as `picture_pullover` does, and for more stitches than `MAX_STITCHES_DRAWN`.
    """
    made = picture_pullover(request)
    (size,) = made.pullover.sizes
    front = None
    if isinstance(size.outcome, KnittedSize):
        front = _front(made.pullover, request.pullover.yoke, size.label, size.outcome)
    return PicturedFront(**{each.name: getattr(made, each.name) for each in fields(made)}, front=front)


def _front(pullover: Pullover, yoke: YokeWishes, label: str, size: KnittedSize) -> PulloverFront:
    colours = _with_symbols(pullover.colours)
    plan = pullover.plan or _plain_plan(pullover.gauges.plain, yoke, colours)
    counted = charted_sizes({label: size})[label]
    layout = lay_out(plan, counted, Stretches(plan, plan.plain_colours()))
    sound(stitches_drawn_problems(stitches_in_front(layout), ("picture", "size")))
    view = replace(seen_front(plan, counted, layout), colours=colours.palette)
    named = ONE_COLOUR not in pullover.colours.palette
    return PulloverFront(view=view, finish=_finish(pullover.gauges.plain, size, colours), named=named)


def _with_symbols(colours: GarmentColours) -> GarmentColours:
    """The colours with a symbol of one character for each."""
    if ONE_COLOUR not in colours.palette:
        return colours
    edges = {each.name: _NAMELESS for each in fields(colours) if each.name != "palette"}
    return GarmentColours(palette={_NAMELESS: Colour(ONE_COLOUR)}, **edges)


def _plain_plan(gauge: Gauge, yoke: YokeWishes, colours: GarmentColours) -> ChartRequest:
    """A pullover without a chart as one with a chart of one stitch."""
    column = Fraction(1)
    return ChartRequest(
        chart=Chart((colours.plain,), colours.palette),
        anchor=Anchor(column, column, column),
        gauge=gauge,
        sizes=(),
        line_stitches=yoke.options.line_stitches,
        line_to_body=yoke.line_to_body,
        seam_stitches=SeamStitches(yoke.seam_stitches, yoke.seam_stitches),
        seam=yoke.seam,
        half_stitch="shift",
    )


def _finish(plain: Gauge, size: KnittedSize, colours: GarmentColours) -> Finish:
    neck, band, hem, cuff = size.neck, size.band, size.body.hem, size.sleeve.cuff
    # a front that is wider than the back keeps what it has more in the hem
    front = min(hem.stitches, (hem.stitches + size.counts.front_extra + 1) // 2)
    round_hem, round_cuff = (_round(edge.rib, edge.stitches) for edge in (hem, cuff))
    half = (cuff.stitches + 1) // 2
    before, behind = _parted_band(size)
    edges: dict[str, tuple[EdgeName, ...]] = {}
    called: tuple[tuple[str, EdgeName], ...] = ((colours.hem, "hem"), (colours.cuff, "cuff"), (colours.band, "band"))
    for symbol, name in called:
        edges[symbol] = (*edges.get(symbol, ()), name)

    def seen(stitches: str, rounds: int, rib: Rib, colour: str, *, adjusted: bool) -> RibView:
        return RibView(stitches=stitches, rounds=rounds, adjusted=adjusted, gauge=rib.gauge, colour=colour)

    # A round starts with the back, or under the arm; the first sleeve is worked from back to front.
    first, second = round_cuff[len(round_cuff) - half :], round_cuff[:half]
    return Finish(
        plain=plain,
        short_rows=tuple(_short_rows(size)),
        raised_cm=neck.raised.height_cm if neck.raised else Fraction(0),
        missing=_missing(size),
        back=neck.sections.back,
        hem=seen(round_hem[len(round_hem) - front :], hem.rounds, hem.rib, colours.hem, adjusted=hem.change != 0),
        cuffs=(
            seen(first, cuff.rounds, cuff.rib, colours.cuff, adjusted=cuff.change != 0),
            seen(second, cuff.rounds, cuff.rib, colours.cuff, adjusted=cuff.change != 0),
        ),
        band=seen(before, band.edge.rounds, band.edge.rib, colours.band, adjusted=band.edge.change != 0),
        # from inside, and so the other way round
        band_behind=seen(
            behind[::-1].translate(_INSIDE),
            band.edge.rounds,
            band.edge.rib,
            colours.band,
            adjusted=band.edge.change != 0,
        ),
        edges=edges,
    )


_INSIDE = str.maketrans("kp", "pk")
"""A stitch that is knitted on one side is purled on the other."""


def _round(rib: Rib, stitches: int) -> str:
    """A round of a rib, stitch by stitch."""
    repeat = rib.worked or _ANY_RIB
    turn = "k" * repeat.knit + "p" * repeat.purl
    return (turn * (stitches // len(turn) + 1))[:stitches]


def _parted_band(size: KnittedSize) -> tuple[str, str]:
    """The band's stitches before the neck and those behind it: as large a part as the back and the sleeves' back halves
    have of what is picked up, from the middle of one sleeve to that of the other."""
    neck, band = size.neck, size.band
    stitches, picked_up = band.edge.stitches, band.picked_up.stitches
    half_sleeve = neck.line_stitches + neck.sections.sleeve // 2
    start = round(Fraction(stitches * (neck.sections.back + half_sleeve), picked_up))
    before = stitches - round(Fraction(stitches * (neck.sections.back + 2 * half_sleeve), picked_up))
    twice = 2 * _round(band.edge.rib, stitches)
    return twice[start : start + before], twice[start + before : start + stitches]


def _short_rows(size: KnittedSize) -> list[ShortRow]:
    """What is seen of the short rows; both rows of a pair reach as far at either side."""
    raised, neck = size.neck.raised, size.neck
    line, sleeve = neck.line_stitches, neck.sections.sleeve
    seen = []
    for turn in raised.turns if raised else ():
        past_back = turn.beyond_back - line
        in_half = past_back - sleeve // 2
        past_sleeve = past_back - sleeve
        row = ShortRow(
            sleeve=min(max(in_half, 0), sleeve - sleeve // 2),
            line=min(max(past_sleeve, 0), line),
            front=max(past_sleeve - line, 0),
        )
        if any(row):
            seen.append(row)
    return seen


def _missing(size: KnittedSize) -> tuple[int, ...]:
    """What the front lacks in its first rounds: in the last of them the middle that is cast on at its end."""
    drop = size.neck.drop
    return (*drop.missing, drop.centre) if drop else ()
