"""A colourwork chart: its grid, its mirror axes, and where a section starts in it.

A chart repeats across its width W. Columns are counted 1 to W in working order, from the right; row 1 is
worked first. Each section has an anchor c, the column that sits on the section's centre: a whole number,
or a half where the centre lies between two stitches. A section of n stitches then starts with column
((c - (n + 1)/2) mod W) + 1, so every increase at its first edge moves the start back by one column.

The rule follows from laying the chart on the section with column c on the centre line. That a whole anchor
needs an odd count and a half an even one is the same fact: an odd section has a stitch on its centre line.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from typing import Literal

from grading_core.errors import Remark
from grading_core.fraction import Fraction
from grading_core.unknown import known

MAX_ROWS = 400
"""Of a chart."""

MAX_COLUMNS = 800
"""Of a chart."""

MAX_COLOURS = 62
"""Of a chart: as many as there are letters and digits to name them by."""

FirstRow = Literal["bottom", "top"]
Repeat = Literal["rows", "once"]
Symmetry = Literal["about_a_stitch", "between_stitches", "both", "none"]
Parity = Literal["odd", "even"]


@dataclass(frozen=True, slots=True)
class Colour:
    """A colour of a chart.

    name: for people. hex: its sRGB value as "#rrggbb", None where it isn't told.
    """

    name: str
    hex: str | None = None


@dataclass(frozen=True, slots=True)
class Chart:
    """A grid of stitches.

    rows: strings of one symbol a stitch, as drawn: the first string is topmost, the last symbol of a string
    is column 1. colours: what each symbol stands for. first_row: the end that is worked first. repeat: "rows" again
    and again, or "once" and plain after it.

    >>> chart = Chart(("..#..", ".###."), {".": Colour("ground"), "#": Colour("motif")})
    >>> chart.width, chart.height
    (5, 2)
    """

    rows: tuple[str, ...]
    colours: Mapping[str, Colour]
    first_row: FirstRow = "bottom"
    repeat: Repeat = "rows"

    @property
    def width(self) -> int:
        """The chart's columns."""
        return len(self.rows[0])

    @property
    def height(self) -> int:
        """The chart's rows."""
        return len(self.rows)

    def worked_rows(self) -> tuple[str, ...]:
        """The rows as they are worked: row 1 first, and each from column 1.

        >>> Chart(("ab", "cd"), {}).worked_rows()
        ('dc', 'ba')
        """
        ordered = self.rows if self.first_row == "top" else self.rows[::-1]
        return tuple(row[::-1] for row in ordered)

    def exchanged(self, first: str, second: str) -> Chart:
        """The chart with two of its colours in each other's place; what its symbols stand for stays.

        first, second: their symbols.

        >>> Chart(("..#.",), {}).exchanged(".", "#").rows
        ('##.#',)
        """
        places = str.maketrans({first: second, second: first})
        return replace(self, rows=tuple(row.translate(places) for row in self.rows))

    def row_worked(self, chart_round: int) -> int | None:
        """The chart row (1 to H) of a round counted from the chart's first round, which is 1.

        None before it, and after the last row of a chart that is worked once.

        >>> chart = Chart(("#.", ".#", ".."), {}, repeat="once")
        >>> [chart.row_worked(n) for n in (0, 1, 3, 4)]
        [None, 1, 3, None]
        """
        if chart_round < 1 or (self.repeat == "once" and chart_round > self.height):
            return None
        return (chart_round - 1) % self.height + 1


@dataclass(frozen=True, slots=True)
class Anchor:
    """The column on the centre of each section: whole, or a half between two columns."""

    back: Fraction
    front: Fraction
    sleeve: Fraction


@dataclass(frozen=True, slots=True)
class ChartDescription:
    """A chart, and what it is mirrored about when it is repeated across.

    mirror_axes: every anchor that makes a section's two sides mirror images. remarks: words of caution.
    """

    chart: Chart
    symmetry: Symmetry
    mirror_axes: tuple[Fraction, ...]
    remarks: tuple[Remark, ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class Progress:
    """How far a chart has come at the split.

    yoke_chart_rows: rounds of the chart worked in the yoke. last_chart_row: the row of the yoke's last round, None
    where it works none. rows_left: rows that finish the chart, or the repeat that the yoke has begun.
    finishing_rounds: rounds below the split after which it is finished, plain rounds before a later start included.
    shallower, deeper: by how many rounds the yoke's depth would have to change for the split to fall on the chart's
    last row; shallower is None where no such depth holds the whole chart.
    """

    yoke_chart_rows: int
    last_chart_row: int | None
    rows_left: int
    finishing_rounds: int
    shallower: int | None
    deeper: int


def first_column(anchor: Fraction, stitches: int, width: int) -> int:
    """The chart column of a section's first stitch.

    anchor: the column on the section's centre. stitches: the section's count, odd for a whole anchor and even
    for a half. width: the chart's columns.

    Raises ValueError where count and anchor do not agree.

    >>> first_column(Fraction(3), 5, 5), first_column(Fraction(3), 7, 5), first_column(Fraction(5, 2), 4, 5)
    (1, 5, 1)
    """
    start = anchor - Fraction(stitches + 1, 2)
    if start.denominator != 1:
        raise ValueError(f"{stitches} stitches have no centre on column {anchor}")
    return int(start) % width + 1


def mirror_axes(chart: Chart) -> tuple[Fraction, ...]:
    """The anchors about which the whole chart, repeated across, is its own mirror image.

    chart: at least one row of at least one stitch. Whole axes lie on a stitch, halves between two. Half a
    repeat beside an axis there is always another, so a chart of odd width that is mirrored at all is
    mirrored about a stitch and between two.

    >>> [str(axis) for axis in mirror_axes(Chart(("..#..", ".###."), {}))]
    ['3', '11/2']
    """
    width, stitches = chart.width, "".join(map(known, chart.worked_rows()))
    # a character for each kind of column, so that the mirrored ones are found as text is
    kinds: dict[str, str] = {}
    columns = "".join([kinds.setdefault(stitches[place::width], chr(len(kinds))) for place in range(width)])
    mirrored, twice_over = columns[::-1], (columns * 2)[:-1]
    axes: set[int] = set()
    turn = twice_over.find(mirrored)
    while turn >= 0:
        # Columns x and turn + width - 1 - x, counted from 0, are alike: the axis is half their sum.
        axes.update((turn + width - 1 + half) % (2 * width) for half in (0, width))
        turn = twice_over.find(mirrored, turn + 1)
    return tuple(Fraction(axis + 2, 2) for axis in sorted(axes))


def describe(chart: Chart) -> ChartDescription:
    """What there is to say of a chart, wherever it is placed.

    chart: at least one row of at least one stitch.

    >>> describe(Chart(("..#..", ".###."), {})).symmetry
    'both'
    """
    axes = mirror_axes(chart)
    return ChartDescription(chart, symmetry(axes), axes)


def symmetry(axes: tuple[Fraction, ...]) -> Symmetry:
    """What a chart is mirrored about.

    axes: its `mirror_axes`.

    >>> symmetry((Fraction(3), Fraction(11, 2)))
    'both'
    """
    kinds = {neck_parity(axis) for axis in axes}
    if len(kinds) == 2:
        return "both"
    if not kinds:
        return "none"
    return "about_a_stitch" if "odd" in kinds else "between_stitches"


def neck_parity(anchor: Fraction) -> Parity:
    """What a section's count must be for this anchor: at the neck, and so in the whole yoke.

    anchor: the column on the section's centre. An increase at both edges adds two, so the parity of the neck
    stays.

    >>> neck_parity(Fraction(3)), neck_parity(Fraction(5, 2))
    ('odd', 'even')
    """
    return "odd" if anchor.denominator == 1 else "even"


def default_anchor(chart: Chart, parity: Parity | None = None) -> Fraction:
    """The anchor to take where none is asked for.

    chart: the chart. parity: of the section, where it is bound. The mirror axis nearest to the drawn chart's
    middle, or without such an axis the column nearest to the middle; a tie goes to the lower column.

    >>> str(default_anchor(Chart(("#...",), {}))), str(default_anchor(Chart(("#...",), {}), "even"))
    ('2', '5/2')
    """
    middle = chart.width + 1  # in half columns, as all here
    for anchors in ([int(2 * axis) for axis in mirror_axes(chart)], range(2, 2 * chart.width + 2)):
        fitting = [anchor for anchor in anchors if parity is None or neck_parity(Fraction(anchor, 2)) == parity]
        if fitting:
            return Fraction(min(fitting, key=lambda anchor: (abs(anchor - middle), anchor)), 2)
    raise AssertionError("every chart has a whole and a half column")


def progress(chart: Chart, first_round: int, yoke_rounds: int) -> Progress:
    """How far a chart has come at the split, and what finishes it.

    chart: the chart. first_round: the yoke round that works row 1; it may lie below the split. yoke_rounds:
    rounds of the yoke. Call it with two depths to see what a deeper or shallower yoke gains or loses.

    >>> chart = Chart(("#.",) * 24, {})
    >>> progress(chart, 3, 60)
    Progress(yoke_chart_rows=58, last_chart_row=10, rows_left=14, finishing_rounds=14, shallower=10, deeper=14)
    """
    reached = yoke_rounds - first_round + 1
    worked, waiting = max(reached, 0), max(-reached, 0)
    height = chart.height
    if chart.repeat == "once":
        over = worked - height
        rows_left = max(-over, 0)
        worked = min(worked, height)
    else:
        over = worked % height if worked >= height else -1
        rows_left = -worked % height if worked else height
    return Progress(
        yoke_chart_rows=worked,
        last_chart_row=chart.row_worked(reached),
        rows_left=rows_left,
        finishing_rounds=waiting + rows_left,
        shallower=over if over >= 0 else None,
        deeper=waiting + rows_left,
    )
