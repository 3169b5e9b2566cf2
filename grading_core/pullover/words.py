"""A graded pullover as a table of all sizes and as the sentences of its pattern."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from fractions import Fraction

from grading_core.chart import words as chart_words
from grading_core.chart.request import ChartRequest
from grading_core.counts.result import Counts
from grading_core.errors import Impossible
from grading_core.gauge import Gauge
from grading_core.parts import body, neckband, short_rows, sleeve
from grading_core.parts.neckline import Start, run_cast_on, run_drop
from grading_core.pullover.request import PulloverRequest
from grading_core.pullover.result import Instructions, MadeSize, Row, Unit
from grading_core.units import CM_PER_INCH, to_places
from grading_core.wording import counted, counted_run, size_run
from grading_core.yoke import words as yoke_words

_ROWS: tuple[tuple[str, Unit, Callable[[MadeSize], int | Fraction]], ...] = (
    ("cast_on", "stitches", lambda size: size.neck.cast_on.stitches),
    ("neck", "stitches", lambda size: size.counts.cast_on),
    ("neck_back", "stitches", lambda size: size.counts.neck.back),
    ("neck_front", "stitches", lambda size: size.counts.neck.front),
    ("neck_sleeve", "stitches", lambda size: size.counts.neck.sleeve),
    ("short_rows", "rows", lambda size: size.neck.raised.rows if size.neck.raised else 0),
    ("front_drop", "rows", lambda size: size.neck.drop.rows if size.neck.drop else 0),
    ("yoke", "rounds", lambda size: size.counts.rounds),
    ("increase_rounds", "rounds", lambda size: len(size.yoke.increase_rounds)),
    ("back_increases", "times", lambda size: size.yoke.yoke.increases[0]),
    ("front_increases", "times", lambda size: size.yoke.yoke.increases[1]),
    ("sleeve_increases", "times", lambda size: size.yoke.yoke.increases[2]),
    ("doubled_rounds", "rounds", lambda size: size.yoke.doubled_rounds),
    ("split_back", "stitches", lambda size: size.counts.split.back),
    ("split_front", "stitches", lambda size: size.counts.split.front),
    ("split_sleeve", "stitches", lambda size: size.counts.split.sleeve),
    ("yoke_total", "stitches", lambda size: size.counts.yoke_total),
    ("underarm", "stitches", lambda size: size.counts.underarm),
    ("body", "stitches", lambda size: size.counts.body),
    ("body", "rounds", lambda size: size.body.rounds),
    ("hem", "stitches", lambda size: size.body.hem.stitches),
    ("hem", "rounds", lambda size: size.body.hem.rounds),
    ("sleeve", "stitches", lambda size: size.counts.sleeve),
    ("sleeve", "rounds", lambda size: size.sleeve.rounds),
    ("sleeve_decrease_rounds", "rounds", lambda size: len(size.sleeve.decrease_rounds)),
    ("cuff", "stitches", lambda size: size.sleeve.cuff.stitches),
    ("cuff", "rounds", lambda size: size.sleeve.cuff.rounds),
    ("band", "stitches", lambda size: size.band.edge.stitches),
    ("band", "rounds", lambda size: size.band.rounds),
    ("finished_bust", "cm", lambda size: size.finished.bust),
    ("finished_upper_arm", "cm", lambda size: size.finished.upper_arm),
    ("finished_neck", "cm", lambda size: size.finished.neck),
    ("finished_yoke_depth", "cm", lambda size: size.finished.depth),
    ("finished_underarm", "cm", lambda size: size.finished.underarm),
    ("finished_hem", "cm", lambda size: size.finished.hem),
    ("finished_wrist", "cm", lambda size: size.finished.wrist),
    ("finished_body_length", "cm", lambda size: size.finished.body_length),
    ("finished_sleeve_length", "cm", lambda size: size.finished.sleeve_length),
    ("finished_total_length", "cm", lambda size: size.finished.total_length),
)


def table(sizes: Sequence[MadeSize | Impossible]) -> tuple[Row, ...]:
    """Every number of the garment, a row each, with one value per size.

    sizes: in order; an impossible one has none.
    """
    return tuple(
        Row(item, unit, tuple(None if isinstance(size, Impossible) else value(size) for size in sizes))
        for item, unit, value in _ROWS
    )


def instructions(
    sizes: Sequence[MadeSize], request: PulloverRequest, chart: ChartRequest | None
) -> tuple[Instructions, ...]:
    """The pattern's sentences with size runs, part by part.

    sizes: those that are possible. Where the sizes are too unlike to be told together, each is told by itself.
    request: what was asked. chart: as planned, None without one.
    """
    if not sizes:
        return ()
    seam = request.yoke.seam_stitches
    seams = [size.counts.underarm % 2 if seam is None else seam for size in sizes]
    counts = [size.counts for size in sizes]
    parts = [
        ("neck", (*_sizes_and_gauges(sizes, request), *_neck(sizes))),
        ("yoke", yoke_words.run_instructions([size.yoke.phases for size in sizes]) or _each(sizes, "yoke")),
        ("split", _split(counts, seams, request.neck.start, charted=chart is not None)),
        ("body", body.run_instructions([size.body for size in sizes]) or _each(sizes, "body")),
        ("sleeve", sleeve.run_instructions([size.sleeve for size in sizes]) or _each(sizes, "sleeve")),
        ("band", neckband.run_instructions([size.band for size in sizes])),
    ]
    placed = [size.chart for size in sizes if size.chart]
    if chart and placed:
        dropped = any(size.neck.drop for size in sizes)
        told = chart_words.run_instructions(chart, placed, seams=any(seams), dropped_front=dropped)
        parts.insert(1, ("chart", told))
    return tuple(Instructions(part, tuple(sentences)) for part, sentences in parts)


def _each(sizes: Sequence[MadeSize], part: str) -> tuple[str, ...]:
    return tuple(
        f"{size.label}: {sentence}" for size in sizes for sentence in getattr(size, part).instructions()
    )


def _sizes_and_gauges(sizes: Sequence[MadeSize], request: PulloverRequest) -> Iterator[str]:
    gauges = request.gauges
    yield f"Sizes: {size_run([size.label for size in sizes])}."
    yield f"Gauge, in the round and blocked: {_gauge(gauges.plain)}."
    if request.chart and gauges.stranded:
        yield f"Gauge of the chart: {_gauge(gauges.stranded)}."
    if gauges.rib:
        yield (
            f"Gauge of the rib: {_gauge(gauges.rib)}. Work hem, cuffs and neckband with the needle that gives it to "
            "you."
        )


def _gauge(gauge: Gauge) -> str:
    """Stitches and rounds, as they are counted over either of the usual spans."""
    said = []
    for span, name in ((Fraction(10), "10 cm"), (4 * CM_PER_INCH, "4 in")):
        stitches, rounds = to_places(gauge.stitches_per_cm * span), to_places(gauge.rows_per_cm * span)
        said.append(f"{stitches:g} stitches and {rounds:g} rounds to {name}")
    return f"{said[0]} ({said[1]})"


def _neck(sizes: Sequence[MadeSize]) -> tuple[str, ...]:
    drops = [size.neck.drop for size in sizes if size.neck.drop]
    return (
        *run_cast_on([size.neck.cast_on for size in sizes]),
        *short_rows.run_instructions([size.neck.raised for size in sizes]),
        *(run_drop(drops) if drops else ()),
    )


def _split(counts: Sequence[Counts], seams: Sequence[int], start: Start, *, charted: bool) -> Iterator[str]:
    """Where the sleeves are set aside, and where the rounds of body and sleeves start.

    A line's first stitches, in working order, go to the section before it. Below the split a round ends with the seam
    stitches in the middle of an underarm, as `chart_layout` has it; a start at the centre back stays there.
    """

    def stitches(of: Callable[[Counts], int]) -> str:
        return counted_run([of(each) for each in counts], "stitch")

    to_body = counts[0].line_to_body
    past = f" and {counted(to_body, 'stitch')} past it" if to_body else ""
    held = stitches(lambda each: each.split.sleeve + 2 * each.line_to_sleeve)
    underarm = f"cast on {stitches(lambda each: each.underarm)} for the underarm"
    front = stitches(lambda each: each.split.front + 2 * each.line_to_body)
    ends = counted_run(
        [(each.underarm + seam) // 2 for each, seam in zip(counts, seams, strict=True)], "stitch"
    )
    yield (
        f"There are {stitches(lambda each: each.yoke_total)} on the needle. Divide them in the next round, which is "
        "round 1 of the body:"
    )
    yield (
        f"Work to marker 1{past}, put the next {held} on hold for the first sleeve, {underarm}, work {front} for the "
        f"front, put the next {held} on hold for the second sleeve, {underarm}, and join in the round."
    )
    body_starts = (
        "Work on to the start of the round at the centre back, where the rounds of the body start too."
        if start == "centre_back"
        else f"Place a marker {ends} after the beginning of the underarm cast on last: round 1 ends there, and every "
        "later round of the body starts and ends there."
    )
    yield f"The body has {stitches(lambda each: each.body)}. {body_starts} The other markers are no longer needed."
    yield (
        f"For each sleeve take up its {held} again and pick up 1 stitch for each stitch cast on at its underarm: "
        f"{stitches(lambda each: each.sleeve)}. Its rounds start and end {ends} after the beginning of "
        "the underarm, which follows the stitches from the yoke."
    )
    if charted and any(seams):
        none = " (at 0 there is none)" if 0 in seams else ""
        yield (
            f"The seam is {counted_run(seams, 'stitch')} wide{none}, in the middle of each underarm; a "
            "round ends with it. What is told to be worked on either side of a marker is worked on either side of it."
        )
