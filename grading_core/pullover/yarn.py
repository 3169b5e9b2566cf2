"""How many stitches a pullover has, in all and of each colour, and the yarn for them."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from itertools import pairwise

from grading_core.chart.request import ChartRequest
from grading_core.codes import WarningCode
from grading_core.counts.result import Counts
from grading_core.errors import Impossible, Remark
from grading_core.fabric import Fabric
from grading_core.parts.body import Body
from grading_core.parts.neckband import Neckband
from grading_core.parts.ribbing import RibbedEdge
from grading_core.parts.sleeve import Sleeve
from grading_core.pullover.request import YarnWishes
from grading_core.pullover.result import KnittedSize, Neck
from grading_core.sentences import COUNT, NUMBER, TOKEN, Saying
from grading_core.yarn.estimates import need
from grading_core.yarn.result import Need
from grading_core.yoke.result import Schedule

LEAVES_OUT = Saying("warning.yarn_leaves_out", ribs=COUNT, margin=NUMBER, chart=TOKEN)

ONE_COLOUR = "yarn"
"""What the only colour is called where there is no chart."""


def yoke_stitches(schedule: Schedule, neck: Neck) -> int:
    """Stitches worked in the rounds of the yoke; a dropped front has fewer until it is cast on in full.

    schedule: of the yoke. neck: with its front drop.
    """
    total = schedule.yoke.neck.total(schedule.line_stitches)
    increases = {worked.round: worked for worked in schedule.increase_rounds}
    worked = 0
    for number in range(1, schedule.yoke.rounds + 1):
        if number in increases:
            here = increases[number]
            total += 2 * (here.back + here.front + 2 * here.sleeve)
        worked += total
    drop = neck.drop
    if drop:
        missing = drop.centre + 2 * drop.edge_increases
        for row in range(1, drop.rows + 1):
            missing -= 2 * (row in drop.increase_rows)
            worked -= missing
    return worked


def raise_stitches(neck: Neck, counts: Counts) -> int:
    """Stitches worked in the short rows, the way back to the start of the round included.

    neck: with its raise. counts: of the size.
    """
    raised = neck.raised
    if raised is None or not raised.turns:
        return 0
    back = counts.neck.back
    reached = [turn.beyond_back for turn in raised.turns]
    between = sum(back + before + after for before, after in pairwise(reached))
    if raised.way == "joined":
        return back + reached[0] + between + reached[-1]
    # from the edge at the centre front to the first turn, and from the last one to the other edge
    fronts = 2 * neck.drop.each_side if neck.drop else counts.neck.front
    sides = 4 * counts.line_stitches + 2 * counts.neck.sleeve
    return fronts + sides + 2 * back + reached[0] + between + reached[-1]


def body_stitches(body: Body) -> int:
    """Stitches worked in the rounds of the body and in the short rows over its front, without the hem.

    body: of the size.
    """
    shaping = dict(body.shaping)
    stitches, worked = body.stitches, 0
    for number in range(1, body.rounds + 1):
        stitches += shaping.get(number, 0)
        worked += stitches
    return worked + (body.bust_darts.stitches if body.bust_darts else 0)


def sleeve_stitches(sleeve: Sleeve) -> int:
    """Stitches worked in the rounds of one sleeve, without the cuff.

    sleeve: of the size.
    """
    # a decrease leaves its two stitches out of its own round and of every later one
    left_out = sum(2 * (sleeve.rounds - number + 1) for number in sleeve.decrease_rounds)
    return sleeve.stitches * sleeve.rounds - left_out


def rib_stitches(body: Body, sleeve: Sleeve, band: Neckband) -> int:
    """Stitches of hem, both cuffs and band.

    body, sleeve, band: of the size.
    """
    return _edge(body.hem) + 2 * _edge(sleeve.cuff) + band.edge.stitches * band.rounds


def _edge(edge: RibbedEdge) -> int:
    return edge.stitches * edge.rounds


def colour_yarn(size: KnittedSize, chart: ChartRequest | None, wishes: YarnWishes, rounds: Fabric) -> tuple[Need, ...]:
    """Yarn of each colour of one size.

    size, chart: as for `stitches_by_colour`. wishes: the yarn and a swatch, where one was weighed. rounds: of the
    yoke, and on below it; an estimate goes by the first round below the split.
    """
    stitches, gauge = stitches_by_colour(size, chart), rounds.at(size.counts.rounds + 1)
    return tuple(need(colour, count, wishes, wishes.margin, gauge) for colour, count in stitches.items())


def yarn_remarks(wishes: YarnWishes, sizes: Iterable[KnittedSize | Impossible], *, charted: bool) -> Iterator[Remark]:
    """What the yarn of all sizes leaves out.

    wishes: the yarn. sizes: all of them, in order. charted: whether there is a chart, which has floats.
    """
    known = [size if isinstance(size, KnittedSize) else None for size in sizes]
    if not any(known):
        return
    ribs = tuple(rib_stitches(size.body, size.sleeve, size.band) if size else None for size in known)
    message = LEAVES_OUT(ribs=ribs, margin=wishes.margin * 100, chart="floats" if charted else "none")
    yield Remark(WarningCode.YARN_LEAVES_OUT, message, path=("yarn",))


def stitches_by_colour(size: KnittedSize, chart: ChartRequest | None) -> dict[str, int]:
    """Stitches of each colour of the whole garment, by the colour's name.

    size: with its chart placed. chart: the chart; short rows, hem, cuffs and band are in its plain colour, and so is
    the difference that a dropped front makes.
    """
    yoke, body, sleeve = (yoke_stitches(size.yoke, size.neck), body_stitches(size.body), sleeve_stitches(size.sleeve))
    ribs = rib_stitches(size.body, size.sleeve, size.band)
    total = yoke + body + 2 * sleeve + raise_stitches(size.neck, size.counts) + ribs
    if chart is None or size.chart is None:
        return {ONE_COLOUR: total}
    placed = size.chart.stitches_by_colour.total
    symbols = {symbol: colour.name for symbol, colour in chart.chart.colours.items()}
    counts = dict.fromkeys(symbols.values(), 0)
    for symbol, count in placed.items():
        counts[symbols[symbol]] += count
    counts[symbols[chart.plain_colours().plain]] += total - sum(placed.values())
    return counts
