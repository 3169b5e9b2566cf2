"""What is done with each colour of a pullover, stitch by stitch, and the yarn for it."""

from __future__ import annotations

from collections import Counter, defaultdict
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, replace
from itertools import pairwise

from grading_core.chart.request import ChartRequest
from grading_core.chart.result import SizePlacement
from grading_core.codes import ProblemCode, WarningCode
from grading_core.counts.result import Counts
from grading_core.errors import Check, Impossible, Problem, Remark, check, under
from grading_core.fraction import Fraction
from grading_core.limits import MAX_STRANDS_IN_ALL
from grading_core.parts.body import Body
from grading_core.parts.sleeve import Sleeve
from grading_core.pullover.colours import ONE_COLOUR, GarmentColours
from grading_core.pullover.request import ChartWishes, Gauges, PulloverRequest, PulloverYarn, YarnWishes
from grading_core.pullover.result import KnittedSize, Neck
from grading_core.unknown import told
from grading_core.yarn.amounts import STITCH, Loops, Widths, Work, loops_of, need, swatch_problems
from grading_core.yarn.estimates import ESTIMATED
from grading_core.yarn.result import Need
from grading_core.yoke.result import Schedule


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


def colour_work(size: KnittedSize, chart: ChartRequest | None, colours: GarmentColours) -> dict[str, Work]:
    """What is done with each colour of one size, by its symbol; colours that nothing is worked in are left out.

    size: with its chart placed. chart: as planned, None without one. colours: of the parts. Short rows are in the plain
    colour, and so is the difference that a dropped front makes, as far as it has any.
    """
    works: defaultdict[str, Counter[str]] = defaultdict(Counter)
    charted = size.chart if chart else None
    fabric = yoke_stitches(size.yoke, size.neck) + body_stitches(size.body) + 2 * sleeve_stitches(size.sleeve)
    fabric += raise_stitches(size.neck, size.counts)
    if charted:
        for symbol, count in charted.stitches_by_colour.total.items():
            plain, carried = charted.plain_stitches[symbol], charted.float_stitches_by_colour.total[symbol]
            works[symbol].update(plain=plain, stranded=count - plain, floats=carried)
            fabric -= count
    if darts := size.body.bust_darts:
        begun = chart is None or size.counts.rounds + darts.round >= chart.first_round
        works[colours.below if begun else colours.plain]["plain"] += darts.stitches
        fabric -= darts.stitches
    works[colours.plain]["plain"] += fabric
    _within_chart(works, colours.plain)

    hem, cuff, band = size.body.hem, size.sleeve.cuff, size.band
    works[colours.hem].update(rib=hem.stitches * hem.rounds, bound_off=hem.stitches)
    works[colours.cuff].update(rib=2 * cuff.stitches * cuff.rounds, bound_off=2 * cuff.stitches)
    works[colours.band].update(
        rib=band.edge.stitches * band.rounds, picked_up=band.picked_up.stitches, bound_off=band.edge.stitches
    )
    drop = size.neck.drop
    works[colours.plain]["cast_on"] += size.neck.cast_on.stitches + (drop.centre if drop else 0)
    works[colours.underarm(charted)].update(cast_on=2 * size.counts.underarm, picked_up=2 * size.counts.underarm)
    for symbol, pieces in _pieces(charted, colours).items():
        works[symbol]["ends"] += 2 * pieces
    return {symbol: Work(**work) for symbol, work in works.items() if any(work.values())}


def _within_chart(works: Mapping[str, Counter[str]], plain: str) -> None:
    """Take what a dropped front has fewer in rounds of the chart from these.

    From the plain colour's stitches, and where it hasn't as many, from those of the colours that have the most.
    """
    lacking = max(0, -works[plain]["plain"])
    works[plain]["plain"] += lacking
    others = sorted((each for symbol, each in works.items() if symbol != plain), key=lambda each: -each["stranded"])
    for work in (works[plain], *others):
        taken = min(lacking, work["stranded"])
        work["stranded"] -= taken
        lacking -= taken


def _pieces(placed: SizePlacement | None, colours: GarmentColours) -> Counter[str]:
    """How often each colour is begun: in yoke and body, each sleeve, and each edge that is in another than what it is
    worked on.
    """
    pieces: Counter[str] = Counter()
    if placed:
        stitches = placed.stitches_by_colour
        for symbol in stitches.total:
            pieces[symbol] += bool(stitches.yoke[symbol] or stitches.body[symbol]) + 2 * bool(stitches.sleeves[symbol])
    else:
        pieces[colours.plain] += 3
    pieces[colours.plain] = max(pieces[colours.plain], 1)
    pieces[colours.band] += 1
    pieces[colours.hem] += colours.hem != colours.below
    pieces[colours.cuff] += 2 * (colours.cuff != colours.below)
    return pieces


def colour_yarn(
    size: KnittedSize, chart: ChartRequest | None, colours: GarmentColours, spinning: Spinning
) -> tuple[Need, ...]:
    """Yarn of each colour of one size.

    size, chart, colours: as for `colour_work`. spinning: the yarns, and the gauges they are worked at.
    """
    works = colour_work(size, chart, colours)
    return tuple(
        spinning.need(symbol, name, works[symbol]) for symbol, name in colours.names.items() if symbol in works
    )


@dataclass(frozen=True, slots=True)
class Spinning:
    """The yarns of a pullover.

    loops: what a stitch takes of each colour's. widths: of the stitches that are knitted.
    """

    yarns: YarnWishes
    loops: Mapping[str, Loops]
    widths: Widths

    def need(self, symbol: str, name: str, work: Work) -> Need:
        """How much of the yarn of one colour some work needs.

        symbol, name: of the colour. work: what is done with it.
        """
        yarn, loops = self.yarns.of(symbol), self.loops[symbol]
        made = need(name, work, yarn, loops=loops, widths=self.widths, margin=self.yarns.margin)
        return made if symbol == ONE_COLOUR else made._replace(symbol=symbol)


def with_yarn(
    sizes: Mapping[str, KnittedSize], chart: ChartRequest | None, colours: GarmentColours, spinning: Spinning | None
) -> dict[str, KnittedSize]:
    """Sizes with the yarn of their colours; as they are where no yarn is asked for.

    sizes: by label, with their chart placed. chart, colours, spinning: as for `colour_yarn`.
    """
    if spinning is None:
        return dict(sizes)
    return {label: replace(size, yarn=colour_yarn(size, chart, colours, spinning)) for label, size in sizes.items()}


def spinning_of(
    request: PulloverRequest, colours: GarmentColours, worked: Gauges, own: YarnWishes | None
) -> Spinning | None:
    """The yarns that are asked for, None where none are.

    request: the design's yarns. colours: of the garment. worked: the gauges at which the pullover is knitted. own: a
    maker's yarns in their place, as long as the design's where none of them was weighed.
    """
    design = request.yarn or own
    if design is None:
        return None

    def loops(symbol: str) -> Loops:
        weighed = own.of(symbol) if own else None
        if weighed and weighed.swatch_grams is not None:
            return loops_of(weighed, swatch_width_cm(weighed, worked))
        yarn = design.of(symbol)
        return loops_of(yarn, swatch_width_cm(yarn, request.gauges))

    yarns, plain, stranded = own or design, worked.plain, worked.stranded or worked.plain
    # of the colours that there are nothing may be worked in some, which then need no yarn
    sent = [symbol for symbol in colours.names if yarns.has(symbol) and design.has(symbol)]
    return Spinning(yarns, {symbol: loops(symbol) for symbol in sent}, Widths(plain.width_cm(1), stranded.width_cm(1)))


def swatch_width_cm(yarn: PulloverYarn, gauges: Gauges) -> Fraction:
    """How wide a stitch of a yarn's swatch is.

    yarn: with the fabric of its swatch. gauges: of the fabrics.
    """
    stranded = gauges.stranded if yarn.swatch_fabric == "stranded" else None
    return (stranded or gauges.plain).width_cm(1)


@check
def yarn_problems(yarn: YarnWishes | None, gauges: Gauges) -> Check[None]:
    """What contradicts itself in the swatches of the yarns.

    yarn: as asked, None where it isn't. gauges: that their swatches have.
    """
    if yarn is not None:
        yield from swatch_problems(yarn, told(swatch_width_cm, yarn, gauges))
        for symbol, each in (yarn.colours or {}).items():
            yield from under(("colours", symbol), swatch_problems(each, told(swatch_width_cm, each, gauges)))


@check
def strand_problems(yarn: YarnWishes | None, chart: ChartWishes | None, sizes: int) -> Check[None]:
    """Yarns of more strands, in all sizes together, than one answer holds.

    yarn: as asked, None where it isn't. chart: whose colours one yarn for all is for. sizes: how many are answered.
    """
    strands = yarn.strands_of(len(chart.chart.colours) if chart else 1) * sizes if yarn else 0
    if strands > MAX_STRANDS_IN_ALL:
        detail = f"has {strands} strands in all colours and sizes, and an answer holds at most {MAX_STRANDS_IN_ALL}: "
        yield Problem((), ProblemCode.TOO_MANY_STRANDS, f"{detail}ask for fewer `answer_sizes` at a time.")


def yarn_remarks(sizes: Iterable[KnittedSize | Impossible]) -> Iterator[Remark]:
    """What the yarn of all sizes rests on.

    sizes: all of them, in order, with their yarn.
    """
    if any(need.basis == "estimated" for size in sizes if isinstance(size, KnittedSize) for need in size.yarn):
        yield Remark(WarningCode.ESTIMATED_YARN, ESTIMATED(least=STITCH.low, most=STITCH.high), path=("yarn",))
