"""A graded pullover in the sentences of its pattern."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from fractions import Fraction

from grading_core.chart import words as chart_words
from grading_core.chart.request import ChartRequest
from grading_core.counts.result import Counts
from grading_core.errors import Impossible
from grading_core.gauge import Gauge
from grading_core.parts import body, neckband, short_rows, sleeve
from grading_core.parts.neckline import Start, run_cast_on, run_drop
from grading_core.parts.underarm import Underarm, any_seams, seam_run, start_words
from grading_core.printing import printing
from grading_core.pullover import own_gauge
from grading_core.pullover.request import Gauges
from grading_core.pullover.result import Instructions, KnittedSize, Part
from grading_core.units import CM_PER_INCH
from grading_core.wording import counted, counted_run, size_run
from grading_core.yoke import words as yoke_words


def instructions(
    outcomes: Mapping[str, KnittedSize | Impossible],
    gauges: Gauges,
    start: Start,
    chart: ChartRequest | None,
    own: Gauges | None = None,
) -> tuple[Instructions, ...]:
    """The pattern's sentences with size runs, part by part; none where no size is possible.

    outcomes: of all sizes by label; for an impossible one stands a dash. Where they are too unlike to be told together,
    each is told by itself. gauges: of the fabrics that are used. start: of the yoke's rounds. chart: as planned, None
    without one. own: the gauges of a maker who keeps the counts, None where there is none.
    """
    sizes = {label: size if isinstance(size, KnittedSize) else None for label, size in outcomes.items()}
    made = [*sizes.values()]
    if not any(made):
        return ()
    counts = [size.counts if size else None for size in made]
    underarms = [size.body.underarm if size else None for size in made]
    bodies, sleeves = ([size.body if size else None for size in made], [size.sleeve if size else None for size in made])
    phases = [size.yoke.phases if size else None for size in made]
    parts: list[tuple[Part, Iterable[str]]] = [
        ("neck", (f"Sizes: {size_run([*sizes])}.", *_gauges(gauges), *(_neck(made) or _each(sizes, "neck")))),
        ("yoke", yoke_words.run_instructions(phases) or _each(sizes, "yoke")),
        ("split", _split(counts, underarms, start)),
        ("body", body.run_instructions(bodies) or _each(sizes, "body")),
        ("sleeve", sleeve.run_instructions(sleeves) or _each(sizes, "sleeve")),
        ("band", neckband.run_instructions([size.band if size else None for size in made])),
    ]
    placed = [size.chart if size else None for size in made]
    if chart and any(placed):
        dropped = any(size.neck.drop for size in made if size)
        told = chart_words.run_instructions(chart, placed, seams=any_seams(underarms), dropped_front=dropped)
        parts.insert(1, ("chart", told))
    if own:
        parts.append(("own_gauge", own_gauge.run_instructions(sizes, _gauge(own.plain))))
    return tuple(Instructions(part, tuple(sentences)) for part, sentences in parts)


def _each(sizes: Mapping[str, KnittedSize | None], part: str) -> tuple[str, ...]:
    return tuple(
        f"{label}: {sentence}"
        for label, size in sizes.items()
        if size
        for sentence in getattr(size, part).instructions()
    )


def _gauges(gauges: Gauges) -> Iterator[str]:
    yield f"Gauge, in the round and blocked: {_gauge(gauges.plain)}."
    if gauges.stranded:
        yield f"Gauge of the chart: {_gauge(gauges.stranded)}."
    if gauges.rib:
        yield (
            f"Gauge of the rib: {_gauge(gauges.rib)}. Work hem, cuffs and neckband with the needle that gives it to "
            "you."
        )


def _gauge(gauge: Gauge) -> str:
    """Stitches and rounds over the usual span, as the trade prints it: 10 cm for 4 in.

    A gauge that was counted over inches is told by its 4 in, so that a swatch comes back as it was sent.
    """
    by_inches = (gauge.rows_span_cm / CM_PER_INCH).denominator == 1
    swatch = gauge.swatch(4 * CM_PER_INCH if by_inches else Fraction(10))
    decimal = printing().decimal
    return f"{decimal(swatch.stitches)} stitches and {decimal(swatch.rows)} rounds to 10 cm = 4 in"


def _neck(sizes: Sequence[KnittedSize | None]) -> tuple[str, ...]:
    begun = run_cast_on([size.neck.cast_on if size else None for size in sizes])
    if not begun:
        return ()
    raised = short_rows.run_instructions([size.neck.raised if size else None for size in sizes])
    return (*begun, *raised, *run_drop([size.neck.drop if size else None for size in sizes]))


def _split(counts: Sequence[Counts | None], underarms: Sequence[Underarm | None], start: Start) -> Iterator[str]:
    """Where the sleeves are set aside, and where the rounds of body and sleeves start.

    A line's first stitches, in working order, go to the section before it. Below the split a round starts where
    `parts.underarm` has it; a start at the centre back stays there.
    """

    def stitches(of: Callable[[Counts], int]) -> str:
        return counted_run([of(each) if each else None for each in counts], "stitch")

    known = [each for each in counts if each]
    to_body = known[0].line_to_body
    past = f" and {counted(to_body, 'stitch')} past it" if to_body else ""
    held = stitches(lambda each: each.split.sleeve + 2 * each.line_to_sleeve)
    underarm = f"cast on {stitches(lambda each: each.underarm)} for the underarm"
    front = stitches(lambda each: each.split.front + 2 * each.line_to_body)
    yield (
        f"There are {stitches(lambda each: each.yoke_total)} on the needle. Divide them in the next round, which is "
        "round 1 of the body:"
    )
    yield (
        f"Work to marker 1{past}, put the next {held} on hold for the first sleeve, {underarm}, work {front} for the "
        "front, put as many as before on hold for the second sleeve, cast on as many for its underarm, and join in the "
        "round."
    )
    body_starts = (
        "Work on to the start of the round at the centre back, where the rounds of the body start too."
        if start == "centre_back"
        else f"Place a marker {start_words(underarms, 'the underarm cast on last')}: round 1 ends there, and every "
        "later round of the body starts and ends there."
    )
    yield f"The body has {stitches(lambda each: each.body)}. {body_starts} The other markers are no longer needed."
    if any(each.front_extra for each in known):
        yield f"From underarm to underarm the front has {stitches(lambda each: each.front_extra)} more than the back."
    yield (
        f"For each sleeve take up its {held} again and pick up 1 stitch for each stitch cast on at its underarm: "
        f"{stitches(lambda each: each.sleeve)}. Its rounds start and end {start_words(underarms, 'the underarm')}; the "
        "underarm follows the stitches from the yoke."
    )
    if any_seams(underarms):
        yield f"Each underarm has {seam_run(underarms)} in its middle; shaping is worked on either side of them."
