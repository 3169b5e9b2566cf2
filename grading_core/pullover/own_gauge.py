"""The written counts at a maker's own gauge: what they measure, and what to correct in rounds.

Nothing is graded anew. Unchanged counts change the garment: a length is its count over the own gauge. A length is the
design's again with as many rounds more or fewer as the difference has at the own row gauge, to the nearest round, a tie
to the longer; never with fewer than increases, decreases and chart need (arithmetic of the craft; that added rounds are
worked without shaping before the split and the ribs is common practice, no source).
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import replace
from math import floor
from operator import attrgetter

from grading_core.chart.grid import progress
from grading_core.chart.request import ChartRequest
from grading_core.codes import ProblemCode, WarningCode
from grading_core.errors import Impossible, Problem, Remark, raise_if_any
from grading_core.fabric import Fabric
from grading_core.fraction import Fraction
from grading_core.gauge import Gauge
from grading_core.limits import MAX_ROUNDS_IN_ALL
from grading_core.parts.neckline import DOES_NOT_PASS, HeadCheck, neck_edge_cm
from grading_core.parts.ribbing import RibbedEdge
from grading_core.pullover.bodies import Wearer
from grading_core.pullover.colours import GarmentColours
from grading_core.pullover.front_matter import swatch
from grading_core.pullover.measurements import too_many_rounds
from grading_core.pullover.neck import pass_head
from grading_core.pullover.parts import measure
from grading_core.pullover.request import Fabrics, PulloverRequest
from grading_core.pullover.result import AtOwnGauge, Corrections, KnittedSize, Row
from grading_core.pullover.table import garment_table, yarn_table
from grading_core.pullover.yarn import colour_yarn, spinning_of
from grading_core.sentences import CM, COUNT, LENGTH, NUMBER, TEXT, TOKEN, Saying, Sentence, for_sizes, run_of
from grading_core.sizes.choice import choose_size
from grading_core.sizes.request import FinishedSize
from grading_core.yoke.adjustment import adjust
from grading_core.yoke.request import Adjustment, Options, WrittenYoke, Yoke
from grading_core.yoke.result import Method

GAUGE = Saying("own_gauge.gauge", stitches=NUMBER, rounds=NUMBER)
MEASURES = {
    name: Saying(f"own_gauge.{name}", length=LENGTH) for name in ("bust", "depth", "body_length", "sleeve_length")
}
SAME = Saying("own_gauge.same")
ADD = Saying("own_gauge.add", part=TOKEN, rounds=COUNT)
LEAVE_OUT = Saying("own_gauge.leave_out", part=TOKEN, rounds=COUNT)
METHODS: Mapping[Method, Saying] = {
    method: Saying(f"own_gauge.{method}") for method in ("wider", "closer", "double_body")
}
"""How a yoke takes its correction where plain rounds after the last increase don't do it."""

NEAREST_SIZE = Saying("own_gauge.nearest", sizes=TEXT, nearest=TEXT)
NECK_DOES_NOT_PASS = Saying("warning.neck_does_not_pass_head_own_gauge", **DOES_NOT_PASS.values)

_EXCESS = {"rounds": COUNT, "spare": COUNT, "excess": CM}
_STAYS_TOO_LONG: Mapping[str, tuple[WarningCode, Saying]] = {
    "yoke": (WarningCode.YOKE_TOO_DEEP_AT_OWN_GAUGE, Saying("warning.yoke_too_deep_at_own_gauge", **_EXCESS)),
    "body": (WarningCode.BODY_TOO_LONG_AT_OWN_GAUGE, Saying("warning.body_too_long_at_own_gauge", **_EXCESS)),
    "sleeve": (WarningCode.SLEEVE_TOO_LONG_AT_OWN_GAUGE, Saying("warning.sleeve_too_long_at_own_gauge", **_EXCESS)),
}
"""What is said of a part that can't lose as many rounds as its length takes."""


def at_own_gauge(
    sizes: Mapping[str, KnittedSize],
    wearers: Sequence[Wearer],
    request: PulloverRequest,
    chart: ChartRequest | None,
    colours: GarmentColours,
) -> dict[str, KnittedSize]:
    """Every size with what its counts come to at the maker's gauge; as it is where no maker keeps the counts.

    sizes: those that are possible, by label, with chart and yarn. wearers: of all sizes. request: what is asked. chart:
    as planned, None without one. colours: of the garment.

    Raises ContradictionError for a row gauge at which the design's lengths take more rounds than one answer holds.
    """
    if request.kept_at is None:
        return dict(sizes)
    own = request.kept_at.fabrics(request.chart)
    spinning = spinning_of(request, colours, request.kept_at, request.own_yarn)
    raise_if_any(_too_many_rounds(sizes.values(), own))
    finished = {
        label: measure(
            size.counts,
            own,
            size.neck,
            size.body,
            size.sleeve,
            size.band,
            depth_cm=own.rounds.height_cm(size.counts.rounds),
        )
        for label, size in sizes.items()
    }
    busts = [FinishedSize(label, made.bust) for label, made in finished.items()]
    worn_by = {wearer.label: wearer for wearer in wearers}
    made: dict[str, KnittedSize] = {}
    for label, size in sizes.items():
        head = _head(size, worn_by[label], own, request.neck.stretch)
        corrections, remarks = _correct(size, label, own, request, chart)
        measured = AtOwnGauge(
            finished=finished[label],
            target=size.target,
            nearest_size=choose_size(busts, wanted=size.target.bust).best.label,
            corrections=corrections,
            head=head,
            yarn=colour_yarn(size, chart, colours, spinning) if spinning else (),
            remarks=(*_head_remarks(head), *remarks),
        )
        made[label] = replace(size, at_own_gauge=measured)
    return made


def own_gauge_table(outcomes: Iterable[KnittedSize | Impossible], colours: GarmentColours) -> tuple[Row, ...]:
    """The table of all sizes with the finished measurements and the yarn of the maker's gauge.

    outcomes: of all sizes in order, those that are possible from `at_own_gauge`. colours: of the garment.
    """
    made = [
        replace(size, finished=size.at_own_gauge.finished, yarn=size.at_own_gauge.yarn)
        if isinstance(size, KnittedSize) and size.at_own_gauge
        else size
        for size in outcomes
    ]
    return (*garment_table(made), *yarn_table(made, colours))


def own_gauge_remarks(sizes: Iterable[KnittedSize]) -> Iterator[Remark]:
    """What deserves a word at the maker's gauge.

    sizes: those that are possible.
    """
    for size in sizes:
        if size.at_own_gauge:
            yield from size.at_own_gauge.remarks


def run_instructions(sizes: Mapping[str, KnittedSize | None], own: Gauge) -> tuple[Sentence, ...]:
    """The written counts at the maker's gauge in sentences with size runs; none where nobody asks.

    sizes: by label, None where one is impossible. own: the maker's gauge.
    """
    made = [size.at_own_gauge if size else None for size in sizes.values()]
    if not any(made):
        return ()
    measured = [saying(length=run_of(made, attrgetter(f"finished.{name}"))) for name, saying in MEASURES.items()]
    corrections = [each.corrections if each else None for each in made]
    steps = (
        *_steps("yoke", [each.yoke if each else None for each in corrections]),
        *_methods(tuple(sizes), corrections),
        *_steps("body", [each.body if each else None for each in corrections]),
        *_steps("sleeve", [each.sleeve if each else None for each in corrections]),
    )
    nearest = run_of(made, lambda each: each.nearest_size)
    return (GAUGE(**swatch(own)), *measured, *(steps or (SAME(),)), NEAREST_SIZE(sizes=tuple(sizes), nearest=nearest))


def _steps(part: str, rounds: Sequence[int | None]) -> Iterator[Sentence]:
    """What to do in one part, in the sizes that have something to do."""
    for saying, sign in ((ADD, 1), (LEAVE_OUT, -1)):
        many = tuple([sign * each if each and sign * each > 0 else None for each in rounds])
        if any(many):
            yield saying(part=part, rounds=many)


def _methods(labels: Sequence[str], corrections: Sequence[Corrections | None]) -> Iterator[Sentence]:
    """How the yokes take their corrections, in sentences that name their sizes where they aren't for all."""
    for method, saying in METHODS.items():
        places = [place for place, each in enumerate(corrections) if each and each.yoke_method == method]
        if places:
            yield saying() if len(places) == len(labels) else for_sizes(saying(), labels, places)


def _head(size: KnittedSize, wearer: Wearer, own: Fabrics, stretch: Fraction) -> HeadCheck | None:
    neck, edge = size.neck, size.band.edge
    drop = neck.drop and replace(neck.drop, height_cm=own.rounds.height_cm(neck.drop.rows))
    neck = replace(neck, edge_cm=neck_edge_cm(neck.cast_on, own.rounds, drop))
    band = replace(size.band, edge=replace(edge, rib=replace(edge.rib, gauge=own.rib)))
    return pass_head(wearer, neck, band, stretch)


def _head_remarks(head: HeadCheck | None) -> Iterator[Remark]:
    if head and not head.passes:
        for remark in head.remarks:
            # a caution for the young stands beside the design already
            if remark.code is WarningCode.NECK_DOES_NOT_PASS_HEAD:
                message = NECK_DOES_NOT_PASS(**remark.message.values)
                yield replace(remark, message=message, path=("changes",))


def _too_many_rounds(sizes: Iterable[KnittedSize], own: Fabrics) -> Iterator[Problem]:
    rounds = Fraction(0)
    for size in sizes:
        designed, below = size.finished, own.rounds.below(size.counts.rounds)
        rounds += own.rounds.exact_rows(designed.depth)
        rounds += below.exact_rows(designed.body_length) + below.exact_rows(designed.sleeve_length)
    if rounds > MAX_ROUNDS_IN_ALL:
        yield Problem(("changes",), ProblemCode.TOO_MANY_ROUNDS, too_many_rounds(round(rounds)))


def _correct(
    size: KnittedSize, label: str, own: Fabrics, request: PulloverRequest, chart: ChartRequest | None
) -> tuple[Corrections, tuple[Remark, ...]]:
    """The rounds for the design's lengths, and a word for each part that can't lose as many as that."""
    remarks: list[Remark] = []
    written, designed = size.yoke.yoke, size.finished

    def correct(part: str, fabric: Fabric, height_cm: Fraction, rounds: int, least: int) -> int:
        wanted = _nearest(height_cm, fabric)
        if wanted >= least:
            return wanted - rounds
        code, saying = _STAYS_TOO_LONG[part]
        excess = fabric.height_cm(least) - height_cm
        message = saying(rounds=rounds - wanted, spare=rounds - least, excess=excess)
        remarks.append(Remark(code, message, label, ("changes",)))
        return least - rounds

    least, method = _adjusted(written, _nearest(designed.depth, own.rounds), request.yoke.options, own.rounds)
    yoke = correct("yoke", own.rounds, designed.depth, written.rounds, least)

    # what is below follows the corrected yoke, in which a chart comes further or less far
    split = written.rounds + yoke
    below = own.rounds.below(split)
    unfinished = progress(chart.chart, chart.first_round, split).finishing_rounds if chart else 0

    def correct_below(part: str, length_cm: Fraction, edge: RibbedEdge, rounds: int, shaping: int) -> int:
        # what is shorter than its chart by design may stay so
        least = max(shaping, min(unfinished, rounds))
        return correct(part, below, length_cm - own.rib.height_cm(edge.rounds), rounds, least)

    body, sleeve, decreases = size.body, size.sleeve, len(size.sleeve.decrease_rounds)
    plain = request.sleeve.plain_before + request.sleeve.plain_after if decreases else 0
    corrections = Corrections(
        yoke,
        correct_below("body", designed.body_length, body.hem, body.rounds, len(body.shaping)),
        correct_below("sleeve", designed.sleeve_length, sleeve.cuff, sleeve.rounds, decreases + plain),
        method,
    )
    return corrections, tuple(remarks)


def _adjusted(written: Yoke, rounds: int, options: Options, gauge: Fabric) -> tuple[int, Method]:
    """The rounds that a yoke can have which are nearest to those wanted, and how it takes them."""
    adjusted = adjust(WrittenYoke(written), Adjustment(rounds=rounds), options, gauge)
    if adjusted.recommended is None:
        rounds = min(way.shallowest.rounds for way in adjusted.options if way.shallowest)
        adjusted = adjust(WrittenYoke(written), Adjustment(rounds=rounds), options, gauge)
    assert adjusted.recommended is not None
    return rounds, adjusted.recommended


def _nearest(height_cm: Fraction, fabric: Fabric) -> int:
    """The rounds for a height, a tie to the longer; below zero where the ribs alone are higher."""
    return floor(fabric.exact_rows(height_cm) + Fraction(1, 2))
