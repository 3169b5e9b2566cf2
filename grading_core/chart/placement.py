"""Where a colourwork chart starts in every round, section and size, and what that means for the knitter.

One layout is read three ways, so that they cannot disagree: as the tables of rows and
columns, as floats, and as the stitches of each colour.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping, Sequence
from itertools import pairwise

from grading_core.chart.contrast import contrast_remarks
from grading_core.chart.fabric import Stretch, Survey, Windows, find_float, survey
from grading_core.chart.grid import describe, progress
from grading_core.chart.layout import PARTS, WORKING_ORDER, LaidPart, Layout, Part, StretchKind
from grading_core.chart.motifs import whole_motifs
from grading_core.chart.problems import placement_problems
from grading_core.chart.remarks import chart_remarks, half_stitches, size_remarks
from grading_core.chart.request import ChartRequest, ChartSize
from grading_core.chart.result import (
    AnyRound,
    BodyPlacement,
    BodyRound,
    ByPart,
    ChartPlacements,
    ChartRounds,
    ColourStitches,
    DepthChange,
    FloatEnd,
    LongestFloat,
    SectionChanges,
    SectionStart,
    SizePlacement,
    SleevePlacement,
    SleeveRound,
    Span,
    YokeRound,
)
from grading_core.errors import sound
from grading_core.fabric import Fabric


def place_charts(request: ChartRequest, windows: Windows | None = None) -> ChartPlacements:
    """Place a chart on every size of a top-down raglan pullover that is answered.

    request: the chart, its anchors and the sizes. windows: of the chart as it is worked, where they are looked through
    for other sizes too; None makes them.

    Raises ContradictionError with every place where the request contradicts itself, and, unless shifts are
    accepted, where a section's centre would lie half a stitch from its anchor.

    >>> from fractions import Fraction
    >>> from grading_core.chart.grid import Anchor, Chart, Colour
    >>> from grading_core.gauge import Gauge
    >>> from grading_core.sections import IncreaseRound, Sections
    >>> request = ChartRequest(
    ...     chart=Chart(("..#..", ".###.", "#####"), {".": Colour("ground"), "#": Colour("motif")}),
    ...     anchor=Anchor(Fraction(3), Fraction(3), Fraction(3)),
    ...     gauge=Gauge.over(Fraction(22), Fraction(31), Fraction(10)),
    ...     sizes=[ChartSize(label="S", rounds=2, neck=Sections(5, 5, 3), increase_rounds=[IncreaseRound(2, 1, 1, 0)])],
    ... )
    >>> for yoke_round in place_charts(request).sizes[0].rounds:
    ...     print(yoke_round.chart_row, yoke_round.back.first_column, yoke_round.back.last_column)
    1 1 5
    2 5 1
    """
    layouts = sound(placement_problems(request))
    off_centre = [
        each for index, layout in layouts.items() for each in half_stitches(request, index, layout.off_centre)
    ]
    windows = windows or Windows(request.worked_chart.worked_rows())
    chart = describe(request.chart)
    starts = _Starts(request)
    sizes = {index: _place(request, request.sizes[index], layout, windows, starts) for index, layout in layouts.items()}
    remarks = [*chart_remarks(request, chart.mirror_axes, off_centre), *contrast_remarks(request)]
    for index, placed in sizes.items():
        remarks += size_remarks(request, index, placed)
    return ChartPlacements(chart, tuple(sizes.values()), tuple(remarks))


def place_size(request: ChartRequest, index: int, layout: Layout) -> SizePlacement:
    """The chart on one size alone.

    request: the chart and the sizes. index: of the size. layout: every round of the size.
    """
    windows = Windows(request.worked_chart.worked_rows())
    return _place(request, request.sizes[index], layout, windows, _Starts(request))


class _Starts(dict[Stretch, SectionStart]):
    """The printed columns of a stretch; one object for all rounds alike, in whatever size.

    Where motifs are only worked whole, plain stitches are told even where there are none.
    """

    def __init__(self, request: ChartRequest) -> None:
        self._width = request.chart.width
        self._whole = request.whole_motif is not None

    def __missing__(self, stretch: Stretch) -> SectionStart:
        stitches, start, _, before, after = stretch
        if start is None:
            found = SectionStart(stitches=stitches, first_column=None, last_column=None)
        else:
            last = (start + stitches - before - after - 1) % self._width + 1
            found = SectionStart(
                stitches=stitches,
                first_column=start + 1,
                last_column=last,
                plain_before=before if self._whole else None,
                plain_after=after if self._whole else None,
            )
        self[stretch] = found
        return found


def _place(request: ChartRequest, size: ChartSize, layout: Layout, windows: Windows, starts: _Starts) -> SizePlacement:
    surveys = {part: survey(windows, layout.part(part).rounds()) for part in PARTS}
    come = progress(request.chart, request.first_round, size.rounds)
    fabric = request.fabric
    finish = _span(fabric, size.rounds, size.rounds + come.finishing_rounds)
    motifs = whole_motifs(layout, request.whole_motif)
    rows = {part: [None if row is None else row + 1 for row in layout.part(part).rows] for part in PARTS}
    plain_after = finish.rounds if request.chart.repeat == "once" else max(len(rows["body"]), len(rows["sleeve"]))

    def rounds(kind: Callable[..., AnyRound], part: Part, *sections: StretchKind) -> ChartRounds[AnyRound]:
        columns = [layout.stretches(part, section) for section in sections]
        told = tuple([list(map(starts.__getitem__, column)) for column in columns])
        seen = surveys[part]
        return ChartRounds(kind=kind, rows=rows[part], starts=told, colours=seen.colours, floats=seen.floats)

    return SizePlacement(
        label=size.label,
        rounds=rounds(YokeRound, "yoke", "back", "front", "first_sleeve"),
        changes=SectionChanges(
            _changes(layout, "yoke", "back"),
            _changes(layout, "yoke", "front"),
            _changes(layout, "yoke", "first_sleeve"),
        ),
        body=BodyPlacement(
            rounds=rounds(BodyRound, "body", "back", "front"),
            changes=SectionChanges(_changes(layout, "body", "back"), _changes(layout, "body", "front")),
            last_chart_row=rows["body"][-1] if rows["body"] else None,
            plain_rounds=max(0, len(rows["body"]) - plain_after),
            motifs=motifs.body if motifs else None,
        ),
        sleeve=SleevePlacement(
            rounds=rounds(_sleeve_round, "sleeve", "sleeve"),
            changes=_changes(layout, "sleeve", "sleeve"),
            last_chart_row=rows["sleeve"][-1] if rows["sleeve"] else None,
            plain_rounds=max(0, len(rows["sleeve"]) - plain_after),
            motifs=motifs.sleeve if motifs else None,
        ),
        progress=come,
        shortest_body=finish,
        shortest_sleeve=finish,
        chart_ends_at_split=DepthChange(
            None if come.shallower is None else _span(fabric, size.rounds - come.shallower, size.rounds),
            _span(fabric, size.rounds, size.rounds + come.deeper),
        ),
        longest_float=_longest_float(request, size, layout, surveys, windows),
        floats_by_round=ByPart(*(tuple(seen.floats) for seen in surveys.values())),
        long_float_rounds=ByPart(*(_rounds_over(seen.floats, request.float_limit) for seen in surveys.values())),
        rounds_over_two_colours=ByPart(*(_rounds_over(seen.colours, 2) for seen in surveys.values())),
        stitches_by_colour=_by_colour(request.chart.colours, [seen.stitches for seen in surveys.values()]),
        float_stitches_by_colour=_by_colour(request.chart.colours, [seen.carried for seen in surveys.values()]),
        plain_stitches=_by_colour(request.chart.colours, [seen.plain for seen in surveys.values()]).total,
        motifs=motifs.yoke if motifs else None,
    )


def _span(fabric: Fabric, after: int, last: int) -> Span:
    """The rounds after one up to another."""
    return Span(last - after, fabric.height_cm(last) - fabric.height_cm(after))


def _sleeve_round(number: int, row: int | None, start: SectionStart, colours: int, longest_float: int) -> SleeveRound:
    return SleeveRound(
        round=number,
        chart_row=row,
        stitches=start.stitches,
        first_column=start.first_column,
        last_column=start.last_column,
        plain_before=start.plain_before,
        plain_after=start.plain_after,
        colours=colours,
        longest_float=longest_float,
    )


def _changes(layout: Layout, part: Part, section: StretchKind) -> tuple[int, ...]:
    """The rounds of a part in which a section starts with another column than in the round before."""
    stretches = layout.stretches(part, section)
    if not stretches or stretches.count(stretches[0]) == len(stretches):
        return ()
    return tuple(
        [
            number
            for number, (before, here) in enumerate(pairwise(stretches), 2)
            # most are one object, whose start needn't be read
            if before is not here and before.start != here.start
        ]
    )


def _rounds_over(numbers: Sequence[int], limit: int) -> tuple[int, ...]:
    if max(numbers, default=0) <= limit:
        return ()
    return tuple([number for number, here in enumerate(numbers, 1) if here > limit])


def _by_colour(symbols: Iterable[str], counts: Iterable[Mapping[str, int]]) -> ColourStitches:
    """Counts of yoke, body and one sleeve."""
    yoke, body, sleeve = ({symbol: counted.get(symbol, 0) for symbol in symbols} for counted in counts)
    sleeves = {symbol: 2 * count for symbol, count in sleeve.items()}
    total = {symbol: yoke[symbol] + body[symbol] + sleeves[symbol] for symbol in symbols}
    return ColourStitches(total, yoke, body, sleeves)


def _longest_float(
    request: ChartRequest, size: ChartSize, layout: Layout, surveys: Mapping[Part, Survey], windows: Windows
) -> LongestFloat | None:
    longest = max(max(seen.floats, default=0) for seen in surveys.values())
    if longest == 0:
        return None
    part = next(part for part, seen in surveys.items() if longest in seen.floats)
    index = surveys[part].floats.index(longest)
    colour = surveys[part].float_colours[index]
    assert colour is not None
    laid = layout.part(part)
    before = _text(windows, laid, index - 1) if index else ""
    start, end = find_float(before, _text(windows, laid, index), colour, longest)
    if start < 0:
        begins = _float_end(request, part, laid, index - 1, start + len(before))
    else:
        begins = _float_end(request, part, laid, index, start)
    ends = _float_end(request, part, laid, index, end)
    return LongestFloat(
        stitches=longest,
        length_cm=request.fabric.at(index + 1 + (0 if part == "yoke" else size.rounds)).width_cm(longest),
        part=part,
        round=index + 1,
        colour=colour,
        start=begins,
        end=ends,
    )


def _text(windows: Windows, laid: LaidPart, index: int) -> str:
    return "".join(map(windows[laid.rows[index]].stitches, laid.stretches(index)))


def _float_end(request: ChartRequest, part: Part, laid: LaidPart, index: int, place: int) -> FloatEnd:
    """Where the stitch at a place in a round lies, both counted from 0."""
    for section, (stitches, start, _, before, after) in zip(WORKING_ORDER[part], laid.stretches(index), strict=True):
        if place < stitches:
            if start is None or not before <= place < stitches - after:
                return FloatEnd(index + 1, section, None)
            return FloatEnd(index + 1, section, (start + place - before) % request.chart.width + 1)
        place -= stitches
    raise AssertionError("the place lies beyond the round's end")
