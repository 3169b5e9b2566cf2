"""Where a chart and the sizes that it is placed on contradict each other, or are too large."""

from __future__ import annotations

from collections.abc import Collection, Sequence
from itertools import accumulate

from grading_core.answer_sizes import is_answered, label_problems
from grading_core.chart.grid import Chart
from grading_core.chart.layout import SECTIONS, Layout, Section, Stretches, lay_out
from grading_core.chart.remarks import half_stitches
from grading_core.chart.request import MAX_LOOKUPS, ChartPictureRequest, ChartRequest, ChartSize
from grading_core.codes import ProblemCode
from grading_core.errors import Check, Path, Problem, check, places, under
from grading_core.limits import MAX_ROUNDS_IN_ALL
from grading_core.unknown import UnknownError, is_unknown, told
from grading_core.wording import counted, some

COLOURS = ("plain_colour", "below_colour", "line_colour", "seam_colour")
"""Colours of stitches that aren't worked from the chart."""

ONLY_COLOURS = (*COLOURS, "exchange")
"""Wishes on which nothing but the colours of stitches depends."""

NO_COUNTS = (*ONLY_COLOURS, "motif_columns")
"""Wishes on which no count of a garment depends."""


def placement_problems(request: ChartRequest) -> Check[dict[int, Layout]]:
    """Every place where a request contradicts itself or is too large; makes every round of the sizes that are answered.

    request: any, with counts of zero or more. The rounds of a size are unknown where problems of it leave them so.
    """
    found = yield from places(request_problems(request))
    return (yield from _layouts(request, found))


def picture_problems(request: ChartPictureRequest) -> Check[tuple[int, Layout]]:
    """The same for a picture, of which only the size that is drawn has to be centred; makes its place and its rounds.

    request: any.
    """
    found = yield from places(request_problems(request.placements))
    index = yield from _index(request)
    layout = yield from _layout(request.placements, index, _stretches(request.placements), found)
    return index, layout


def request_problems(request: ChartRequest) -> Check[None]:
    """Every place where a request contradicts itself or is too large, apart from centres half a stitch off.

    request: any, with counts of zero or more.
    """
    yield from under(("chart",), chart_problems(request.chart, request.chart.colours))
    yield from _exchange_problems(request)
    for section in SECTIONS:
        yield from _anchor_problems(request, section)
    yield from _line_problems(request)
    yield from _motif_problems(request)
    for field in COLOURS:
        yield from _colour_problems(request, field)
    yield from _sizes_problems(request)


@check
def _index(request: ChartPictureRequest) -> Check[int]:
    if request.size is None:
        return 0
    labels = [size.label for size in request.placements.sizes]
    if request.size not in labels:
        yield Problem(("size",), ProblemCode.UNKNOWN_SIZE, f"{request.size!r} is the label of no size.")
        raise UnknownError
    return labels.index(request.size)


@check
def _layouts(request: ChartRequest, found: Sequence[Path]) -> Check[dict[int, Layout]]:
    layouts, known = {}, _stretches(request)
    for index, size in enumerate(request.sizes):
        if told(is_answered, size.label, request.answer_sizes) is True:
            layouts[index] = yield from _layout(request, index, known, found)
    return layouts


@check
def _layout(request: ChartRequest, index: int, known: Stretches, found: Sequence[Path]) -> Check[Layout]:
    """Every round of a size, and where its centres lie half a stitch off; unknown where other problems bear on it."""
    if any(_bears_on(path, index) for path in found):
        raise UnknownError
    layout = lay_out(request, request.sizes[index], known)
    if request.half_stitch == "refuse":
        yield from (each.problem for each in half_stitches(request, index, layout.off_centre))
    return layout


def _stretches(request: ChartRequest) -> Stretches:
    """The request's stretches, whether their plain colours are known or not."""
    return Stretches(request, told(request.plain_colours))


def _bears_on(path: Path, index: int) -> bool:
    """Whether a problem at a place bears on the rounds of a size: colours and labels don't, nor do other sizes."""
    if path[0] in (*ONLY_COLOURS, "answer_sizes") or path[2:] == ("label",):
        return False
    return path[0] != "sizes" or path[1:2] in ((), (index,))


@check
def chart_problems(chart: Chart, symbols: Collection[str]) -> Check[None]:
    """Where a chart has no stitch, rows of several lengths, or symbols that stand for nothing.

    chart: any. symbols: of the colours.
    """
    yield from _empty_problems(chart)
    if told(_are_sound, chart.rows, symbols) is True:
        return
    for index, row in enumerate(chart.rows):
        yield from under(("rows", index), _row_problems(row, chart, symbols))


@check
def _empty_problems(chart: Chart) -> Check[None]:
    if not chart.rows or not chart.rows[0]:
        yield Problem(("rows",), ProblemCode.EMPTY_CHART, "must hold at least one row of at least one stitch.")


def _are_sound(rows: Sequence[str], symbols: Collection[str]) -> bool:
    """Whether it is seen at once that all rows are as long as one another and of nothing but symbols."""
    return len({*map(len, rows)}) == 1 and not "".join(rows).strip("".join(symbols))


@check
def _row_problems(row: str, chart: Chart, symbols: Collection[str]) -> Check[None]:
    yield from _symbol_problems(row, symbols)
    if len(row) != len(chart.rows[0]):
        detail = f"has {len(row)} stitches where the first row has {len(chart.rows[0])}."
        yield Problem((), ProblemCode.UNEVEN_ROWS, detail)


@check
def _symbol_problems(row: str, symbols: Collection[str]) -> Check[None]:
    # of a row of nothing but symbols nothing is left
    if row.strip("".join(symbols)):
        unknown = sorted(set(row) - set(symbols))
        detail = f"has symbols that are not among the colours: {some(unknown)}"
        yield Problem((), ProblemCode.UNKNOWN_SYMBOL, detail)


@check
def _anchor_problems(request: ChartRequest, section: Section) -> Check[None]:
    anchor = getattr(request.anchor, section)
    if anchor.denominator not in (1, 2):
        yield Problem(("anchor", section), ProblemCode.ANCHOR_BETWEEN_HALVES, "must be a whole number or a half.")
        return
    width = len(request.chart.rows[0]) if request.chart.rows else 0
    if not 0 < anchor < width + 1:
        detail = f"lies outside the chart, whose columns are 1 to {width}."
        yield Problem(("anchor", section), ProblemCode.ANCHOR_OUTSIDE_CHART, detail)


@check
def _line_problems(request: ChartRequest) -> Check[None]:
    yield from _first_round_problems(request)
    if request.line_to_body is not None and request.line_to_body > request.line_stitches:
        detail = f"is more than the raglan line has: {counted(request.line_stitches, 'stitch')}."
        yield Problem(("line_to_body",), ProblemCode.MORE_THAN_LINE_HAS, detail)


@check
def _first_round_problems(request: ChartRequest) -> Check[None]:
    if request.first_round < 1:
        detail = "must be 1 or more: round 1 is the first after the neck."
        yield Problem(("first_round",), ProblemCode.ROUND_OUT_OF_RANGE, detail)


@check
def _motif_problems(request: ChartRequest) -> Check[None]:
    columns, width = request.motif_columns, len(request.chart.rows[0]) if request.chart.rows else 0
    if columns is not None and width % columns:
        detail = f"does not divide the chart's {counted(width, 'column')}."
        yield Problem(("motif_columns",), ProblemCode.MOTIFS_DO_NOT_FILL_CHART, detail)


@check
def _exchange_problems(request: ChartRequest) -> Check[None]:
    if request.exchange is None:
        return
    for place, symbol in enumerate(request.exchange):
        yield from _known_problems(request, ("exchange", place), symbol)
    first, second = request.exchange
    if first == second:
        yield Problem(("exchange", 1), ProblemCode.DUPLICATE_SYMBOL, f"{second!r} is the other of the two, too.")


@check
def _colour_problems(request: ChartRequest, field: str) -> Check[None]:
    symbol = getattr(request, field)
    if symbol is not None:
        yield from _known_problems(request, (field,), symbol)


@check
def _known_problems(request: ChartRequest, path: Path, symbol: str) -> Check[None]:
    if symbol not in request.chart.colours:
        yield Problem(path, ProblemCode.UNKNOWN_SYMBOL, f"{symbol!r} is not among the chart's colours.")


@check
def _sizes_problems(request: ChartRequest) -> Check[None]:
    yield from label_problems(request.answer_sizes, [size.label for size in request.sizes])
    for index, size in enumerate(request.sizes):
        yield from under(("sizes", index), _size_problems(request, size))
    yield from _limit_problems(request)


@check
def _limit_problems(request: ChartRequest) -> Check[None]:
    """Too many rounds, of those that are known."""
    answered = [size for size in request.sizes if told(is_answered, size.label, request.answer_sizes) is True]
    counts = (count for size in answered for count in (size.rounds, size.body_rounds, size.sleeve_rounds))
    rounds = sum(count for count in counts if not is_unknown(count))
    if rounds > MAX_ROUNDS_IN_ALL:
        detail = f"have {rounds} rounds in all, and one answer holds at most {MAX_ROUNDS_IN_ALL}."
        yield Problem(("sizes",), ProblemCode.TOO_MANY_ROUNDS, detail)
        return
    colours = max((len(set(row)) for row in request.chart.rows), default=0)
    if rounds * colours > MAX_LOOKUPS:
        detail = (
            f"have {rounds} rounds in all, and with {colours} colours in one chart row an answer holds at most "
            f"{MAX_LOOKUPS // colours}: send fewer sizes at a time."
        )
        yield Problem(("sizes",), ProblemCode.TOO_MANY_ROUNDS, detail)


@check
def _size_problems(request: ChartRequest, size: ChartSize) -> Check[None]:
    found = yield from places(_rounds_problems(size))
    fields = {path[0] for path in found}
    for section in SECTIONS:
        field = "sleeve_decrease_rounds" if section == "sleeve" else "body_shaping"
        if fields.isdisjoint(("increase_rounds", field)):
            yield from _width_problems(request, size, section, field)


def _rounds_problems(size: ChartSize) -> Check[None]:
    yield from _increase_problems(size)
    yield from _shaping_problems(size)
    decreases = size.sleeve_decrease_rounds
    yield from _round_problems(decreases, size.sleeve_rounds, "the sleeve", "sleeve_decrease_rounds")


@check
def _increase_problems(size: ChartSize) -> Check[None]:
    rounds = [step.round for step in size.increase_rounds]
    yield from _round_problems(rounds, size.rounds, "the yoke", "increase_rounds", "round")


@check
def _shaping_problems(size: ChartSize) -> Check[None]:
    rounds = [step.round for step in size.body_shaping]
    yield from _round_problems(rounds, size.body_rounds, "the body", "body_shaping", "round")
    for index, step in enumerate(size.body_shaping):
        if not is_unknown(step.stitches) and step.stitches % 4:
            detail = "must be a multiple of 4, so that back and front keep their centres."
            yield Problem(("body_shaping", index, "stitches"), ProblemCode.NOT_A_MULTIPLE, detail)


@check
def _round_problems(rounds: Sequence[int], last: int, part: str, *field: str) -> Check[None]:
    """Rounds that the part doesn't have, or that are listed twice. field: of the list, and of the round in an item."""
    seen: set[int] = set()
    for index, number in enumerate(rounds):
        if is_unknown(number):
            continue
        place: Path = (field[0], index, *field[1:])
        if not is_unknown(last) and not 1 <= number <= last:
            detail = f"round {number} is not in {part}, which has {counted(last, 'round')}."
            yield Problem(place, ProblemCode.ROUND_OUT_OF_RANGE, detail)
        elif number in seen:
            yield Problem(place, ProblemCode.DUPLICATE_ROUND, f"round {number} is listed twice.")
        seen.add(number)


@check
def _width_problems(request: ChartRequest, size: ChartSize, section: Section, field: str) -> Check[None]:
    """A section that comes to nothing below the split. field: what takes stitches from it there."""
    below = section == "sleeve"
    share, seam = request.line_share[below], request.seams(size)[below]
    if not (size.sleeve_rounds if below else size.body_rounds):
        return
    increases = sum(getattr(step, section) for step in size.increase_rounds)
    split = getattr(size.neck, section) + 2 * increases + 2 * share + size.underarm - seam
    if split < 1:
        detail = f"leaves the {section} no stitch beside a seam of {seam}."
        yield Problem(("underarm",), ProblemCode.NOTHING_LEFT, detail)
    elif split + (-2 * len(size.sleeve_decrease_rounds) if below else _narrowest(size)) < 1:
        detail = f"leaves the {section} no stitch: it has {split} at the split."
        yield Problem((field,), ProblemCode.NOTHING_LEFT, detail)


def _narrowest(size: ChartSize) -> int:
    """By how much the shaping of the body makes back and front narrower at most, as a negative number."""
    shaping = {step.round: step.stitches // 2 for step in size.body_shaping}
    return min(accumulate((shaping[number] for number in sorted(shaping)), initial=0))
