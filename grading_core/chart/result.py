"""Where a chart lies on every size of a pullover, as data: the answer of `placement.place_charts`.

Columns and chart rows are counted from 1, columns from the right. A plain section has no columns. Rounds are kept by
what they have in common, since an answer holds thousands of them. Beside it, how a chart's colours read: the answer of
`contrast.colour_contrasts`.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from itertools import count
from typing import Generic, Literal, NamedTuple, TypeVar

from grading_core.chart.grid import ChartDescription, Progress
from grading_core.chart.layout import Part, StretchKind
from grading_core.chart.lightness import Reads, reads
from grading_core.errors import Remark
from grading_core.fraction import Fraction


@dataclass(frozen=True, slots=True, kw_only=True)
class SectionStart:
    """A section in one round: its stitches, and the columns of the first and last worked from the chart.

    first_column, last_column: None in a plain section.
    plain_before, plain_after: stitches of motifs that the section cuts, where those stay plain; else None.
    """

    stitches: int
    first_column: int | None
    last_column: int | None
    plain_before: int | None = None
    plain_after: int | None = None


class YokeRound(NamedTuple):
    """A yoke round. chart_row: None where no row is worked. colours: how many the round uses.

    longest_float: in stitches, 0 for none.
    """

    round: int
    chart_row: int | None
    back: SectionStart
    front: SectionStart
    sleeve: SectionStart
    colours: int
    longest_float: int


class BodyRound(NamedTuple):
    """A body round, counted from 1 after the split; back and front are the halves between the seams."""

    round: int
    chart_row: int | None
    back: SectionStart
    front: SectionStart
    colours: int
    longest_float: int


class SleeveRound(NamedTuple):
    """A round of each sleeve, counted from 1 after the split."""

    round: int
    chart_row: int | None
    stitches: int
    first_column: int | None
    last_column: int | None
    plain_before: int | None
    plain_after: int | None
    colours: int
    longest_float: int


AnyRound = TypeVar("AnyRound", YokeRound, BodyRound, SleeveRound)


@dataclass(frozen=True, slots=True, kw_only=True)
class ChartRounds(Generic[AnyRound]):
    """The rounds of a part, round 1 first; each is made when it is asked for.

    kind: makes a round of its number and what it has of the others. rows, colours, floats: the chart row of each round,
    how many colours it uses, its longest float. starts: of each section, round by round.
    """

    kind: Callable[..., AnyRound]
    rows: Sequence[int | None]
    starts: tuple[Sequence[SectionStart], ...]
    colours: Sequence[int]
    floats: Sequence[int]

    def __len__(self) -> int:
        return len(self.rows)

    def __iter__(self) -> Iterator[AnyRound]:
        return map(self.kind, count(1), self.rows, *self.starts, self.colours, self.floats)

    def __getitem__(self, place: int) -> AnyRound:
        number = range(1, len(self) + 1)[place]
        columns = (self.rows, *self.starts, self.colours, self.floats)
        return self.kind(number, *[column[place] for column in columns])


@dataclass(frozen=True, slots=True)
class SectionChanges:
    """Per section, the rounds whose first column differs from the round before; no sleeve in a body."""

    back: tuple[int, ...]
    front: tuple[int, ...]
    sleeve: tuple[int, ...] | None = None


@dataclass(frozen=True, slots=True)
class Motifs:
    """How many whole motifs a section has from a round of the part on."""

    motifs: int
    from_round: int


@dataclass(frozen=True, slots=True)
class SectionMotifs:
    """Per section, its whole motifs wherever their number changes while the chart is worked; no sleeve in a body."""

    back: tuple[Motifs, ...]
    front: tuple[Motifs, ...]
    sleeve: tuple[Motifs, ...] | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class BodyPlacement:
    """The body below the split.

    rounds: all of them. changes: where the start moves. last_chart_row: the row at which the chart stops,
    None where none is worked in the body's last round. plain_rounds: rounds after a chart that is worked
    once. motifs: None where they may be cut.
    """

    rounds: ChartRounds[BodyRound]
    changes: SectionChanges
    last_chart_row: int | None
    plain_rounds: int
    motifs: SectionMotifs | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class SleevePlacement:
    """A sleeve below the split; as `BodyPlacement`, for its one section."""

    rounds: ChartRounds[SleeveRound]
    changes: tuple[int, ...]
    last_chart_row: int | None
    plain_rounds: int
    motifs: tuple[Motifs, ...] | None = None


@dataclass(frozen=True, slots=True)
class Span:
    """Rounds and the length in cm that they make."""

    rounds: int
    length_cm: Fraction


@dataclass(frozen=True, slots=True)
class DepthChange:
    """By how much a yoke's depth would have to change for the split to fall on the chart's last row.

    shallower_by: None where no such depth holds the whole chart.
    """

    shallower_by: Span | None
    deeper_by: Span


@dataclass(frozen=True, slots=True)
class FloatEnd:
    """A stitch that holds a float: its round, the section and its chart column, None where it is plain."""

    round: int
    section: StretchKind
    column: int | None


@dataclass(frozen=True, slots=True, kw_only=True)
class LongestFloat:
    """The longest float of a size, the first in working order where several are as long.

    stitches, length_cm: what it passes over. part, round: where it counts. colour: the symbol of its strand.
    start, end: the stitches of that colour between which it lies.
    """

    stitches: int
    length_cm: Fraction
    part: Part
    round: int
    colour: str
    start: FloatEnd
    end: FloatEnd


@dataclass(frozen=True, slots=True)
class ByPart:
    """Numbers of the yoke, the body and each sleeve: rounds that share a property, or one number a round."""

    yoke: tuple[int, ...]
    body: tuple[int, ...]
    sleeve: tuple[int, ...]


@dataclass(frozen=True, slots=True)
class ColourStitches:
    """Stitches of each colour, by symbol: in all, in the yoke, in the body, and in both sleeves."""

    total: Mapping[str, int]
    yoke: Mapping[str, int]
    body: Mapping[str, int]
    sleeves: Mapping[str, int]


@dataclass(frozen=True, slots=True, kw_only=True)
class SizePlacement:
    """One size.

    label: its name. rounds, changes, motifs: the yoke. body, sleeve: below the split. progress: how far the chart has
    come at the split. shortest_body, shortest_sleeve: what finishes the chart, hem and cuff excluded.
    chart_ends_at_split: what would let it end there. longest_float: None where there is none. floats_by_round: the
    longest of every round, in stitches. long_float_rounds: with a float above the limit. rounds_over_two_colours: with
    more than two colours. stitches_by_colour: exact counts. float_stitches_by_colour: the stitches that each colour's
    floats pass over. plain_stitches: of each colour's in all those in rounds in which the chart isn't worked.
    """

    label: str
    rounds: ChartRounds[YokeRound]
    changes: SectionChanges
    body: BodyPlacement
    sleeve: SleevePlacement
    progress: Progress
    shortest_body: Span
    shortest_sleeve: Span
    chart_ends_at_split: DepthChange
    longest_float: LongestFloat | None
    floats_by_round: ByPart
    long_float_rounds: ByPart
    rounds_over_two_colours: ByPart
    stitches_by_colour: ColourStitches
    float_stitches_by_colour: ColourStitches
    plain_stitches: Mapping[str, int]
    motifs: SectionMotifs | None = None


@dataclass(frozen=True, slots=True)
class ChartPlacements:
    """All sizes side by side, in the order of the request.

    chart: with what it is mirrored about. sizes: one each. remarks: words about answers that are right.
    """

    chart: ChartDescription
    sizes: tuple[SizePlacement, ...]
    remarks: tuple[Remark, ...]


Direction = Literal["next_column", "next_row"]


@dataclass(frozen=True, slots=True, kw_only=True)
class ComparedColour:
    """A colour by its lightness: CIE L*, 0 to 100. grey: the sRGB grey as light, which a grey copy shows."""

    name: str
    hex: str
    lightness: Fraction
    grey: str


class MeetingStitch(NamedTuple):
    """A stitch of a chart, and where its neighbour in the other colour lies: in the next column, or in the next row."""

    row: int
    column: int
    direction: Direction


@dataclass(frozen=True, slots=True)
class Meetings:
    """How often two colours lie beside each other in one repeat of a chart.

    side_by_side: within rows. one_above_other: between rows. places: the first of them in working order.
    """

    side_by_side: int
    one_above_other: int
    places: tuple[MeetingStitch, ...]


@dataclass(frozen=True, slots=True)
class ColourPair:
    """Two colours side by side.

    colours: their symbols. difference: of their lightnesses. meetings: where they meet, if they hardly read apart; None
    where they do, or without a chart.
    """

    colours: tuple[str, str]
    difference: Fraction
    meetings: Meetings | None = None

    @property
    def reads(self) -> Reads:
        """Whether they read apart."""
        return reads(self.difference)

    @property
    def is_low(self) -> bool:
        """Whether they hardly read apart and meet, or may meet in a chart that isn't known."""
        meetings = self.meetings
        return self.reads == "hardly" and (not meetings or meetings.side_by_side + meetings.one_above_other > 0)


@dataclass(frozen=True, slots=True)
class ColourContrasts:
    """How colours read beside each other.

    colours: by symbol. pairs: every two of them. low: those that hardly read apart and are named one by one, the most
    alike first. remarks: words about these.
    """

    colours: Mapping[str, ComparedColour]
    pairs: tuple[ColourPair, ...]
    low: tuple[ColourPair, ...]
    remarks: tuple[Remark, ...]
