"""What is asked when a chart is placed on a top-down raglan pullover or drawn, and what in it contradicts itself.

Colours are named by the chart's symbols. The field names are those of the request, so that a problem's path
is a place in it.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from typing import Literal

from grading_core.answer_sizes import AnswerSizes
from grading_core.chart.grid import Anchor, Chart
from grading_core.fabric import ChartedFabric, Fabric
from grading_core.gauge import Gauge
from grading_core.sections import IncreaseRound, Sections
from grading_core.unknown import known

COMMON_FLOAT_LIMIT = 5
"""Floats longer than about 5 stitches or 2.5 cm are caught at the back: common practice, taught alike by
magazines and handbooks of stranded knitting."""

MAX_LOOKUPS = 40_000
"""Rounds in all, times the colours of the chart row that has most: what the work grows with."""

HalfStitch = Literal["refuse", "shift"]
PartialMotifs = Literal["work", "plain"]
SeamStitch = Literal["knit", "purl"]


@dataclass(frozen=True, slots=True)
class BodyShaping:
    """Stitches that a body round takes or adds in all, half of them on the back and half on the front.

    round: 1 for the first after the split. stitches: below zero for decreases; a multiple of 4, since each
    half loses or gains one at either side of its centre.
    """

    round: int
    stitches: int


@dataclass(frozen=True, slots=True)
class MinimumWidth:
    """The stitches from which a section of the body or the sleeves is wide enough for the motif."""

    body: int = 0
    sleeve: int = 0


@dataclass(frozen=True, slots=True)
class SeamStitches:
    """Stitches that break the chart at each side of the body and under the sleeve. None takes `usual_seam`."""

    body: int | None = None
    sleeve: int | None = None


def usual_seam(underarm: int, seam: SeamStitch) -> int:
    """The seam stitches in the middle of an underarm where nobody says how many: as few as its parity allows, and where
    they are purled, to be seen, at least one of the stitches that there are.

    underarm: its stitches. seam: how they are worked.

    >>> [usual_seam(underarm, "knit") for underarm in (9, 8)], [usual_seam(underarm, "purl") for underarm in (9, 8, 0)]
    ([1, 0], [1, 2, 0])
    """
    return min(underarm, underarm % 2 or (2 if seam == "purl" else 0))


@dataclass(frozen=True, slots=True)
class PlainColours:
    """The symbols of plain stretches, raglan lines and seams.

    below: the same after the last row of a chart that is worked once; None where nothing changes there.
    """

    plain: str
    line: str
    seam: str
    below: PlainColours | None = None

    @property
    def last(self) -> PlainColours:
        """Those of the last rounds: below the chart where it has others there."""
        return self if self.below is None else self.below


@dataclass(frozen=True, slots=True, kw_only=True)
class ChartSize:
    """One size: all counts that the chart's place depends on.

    label: the size's name. rounds: of the yoke. neck: the sections before the first round. increase_rounds:
    in any order, each round once. underarm: stitches cast on at each side at the split. body_rounds,
    sleeve_rounds: below the split, hem and cuff excluded. body_shaping: rounds that change the body.
    sleeve_decrease_rounds: rounds that take two stitches from the sleeve.
    """

    label: str
    rounds: int
    neck: Sections
    increase_rounds: Sequence[IncreaseRound] = ()
    underarm: int = 0
    body_rounds: int = 0
    body_shaping: Sequence[BodyShaping] = ()
    sleeve_rounds: int = 0
    sleeve_decrease_rounds: Sequence[int] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class ChartOptions:
    """A chart, and how it is worked whatever the garment's counts are.

    exchange: two symbols that change places in the chart's rows. first_round: the yoke round that works chart row 1;
    later than the yoke's last it lies in body and sleeve. minimum_width: below it a section stays plain.
    partial_motifs: whether motifs that a section cuts are worked as far as they go, or plain until they fit whole.
    motif_columns: how many columns of the chart, from column 1 on, are one motif, and so on; None takes all.
    plain_colour: of plain stretches; None takes the colour that the chart uses most. below_colour: of what is plain
    after a chart that is worked once; None takes the plain colour. line_colour, seam_colour: None takes the plain
    colour of the round. float_limit: the longest float, in stitches, that needs no word.
    """

    chart: Chart
    exchange: tuple[str, str] | None = None
    first_round: int = 1
    minimum_width: MinimumWidth = MinimumWidth()
    partial_motifs: PartialMotifs = "work"
    motif_columns: int | None = None
    plain_colour: str | None = None
    below_colour: str | None = None
    line_colour: str | None = None
    seam_colour: str | None = None
    float_limit: int = COMMON_FLOAT_LIMIT

    @property
    def worked_chart(self) -> Chart:
        """The chart with the colours in which it is worked."""
        return self.chart if self.exchange is None else self.chart.exchanged(*self.exchange)

    @property
    def whole_motif(self) -> int | None:
        """The columns of a motif that is only worked where it fits whole; None where motifs may be cut."""
        if self.partial_motifs == "work":
            return None
        return self.chart.width if self.motif_columns is None else self.motif_columns

    @property
    def last_round(self) -> int | None:
        """The round of the chart's last row, counted from the yoke's first; None where its rows go on."""
        return self.first_round + self.chart.height - 1 if self.chart.repeat == "once" else None

    def plain_colours(self) -> PlainColours:
        """The colours of everything that isn't worked from the chart."""
        plain = self.plain_colour
        if plain is None:
            stitches = "".join(map(known, self.worked_chart.worked_rows()))
            # of colours that the chart uses as often, the one met first
            plain = max(
                self.chart.colours, key=lambda symbol: (stitches.count(symbol), -stitches.find(symbol)), default=""
            )
        above = self._around(plain)
        if self.below_colour is None or self.chart.repeat == "rows":
            return above
        return replace(above, below=self._around(self.below_colour))

    def _around(self, plain: str) -> PlainColours:
        """The colours of rounds of which the plain colour is known."""
        return PlainColours(
            plain,
            plain if self.line_colour is None else self.line_colour,
            plain if self.seam_colour is None else self.seam_colour,
        )

    def charted_fabric(self, plain: Gauge, charted: Gauge) -> Fabric:
        """What the rounds are knitted in, counted from the yoke's first: plain before and after those of the chart.

        >>> from fractions import Fraction
        >>> plain, charted = Gauge(Fraction(2), Fraction(3)), Gauge(Fraction(2), Fraction(2))
        >>> options = ChartOptions(chart=Chart(("#.",), {}, repeat="once"), first_round=5)
        >>> [options.charted_fabric(plain, charted).at(number) == charted for number in (4, 5, 6)]
        [False, True, False]
        """
        return ChartedFabric(plain=plain, charted=charted, first=self.first_round, last=self.last_round)


@dataclass(frozen=True, slots=True, kw_only=True)
class ChartRequest(ChartOptions):
    """A chart and the sizes that it is placed on.

    anchor: the column on each section's centre. gauge: of the colourwork fabric. plain_gauge: of rounds without the
    chart; None takes the same. line_stitches: of each raglan line, 0 to 8. line_to_body: how many of them go to the
    body at the split; None takes the half, rounded down. seam_stitches: the breaks. seam: how their stitches are
    worked. half_stitch: "refuse" a section whose count and anchor don't agree, or "shift" it by half a stitch.
    for_children: a garment for a baby or a child. answer_sizes: labels of the sizes that are answered.
    """

    anchor: Anchor
    gauge: Gauge
    sizes: Sequence[ChartSize]
    plain_gauge: Gauge | None = None
    line_stitches: int = 2
    line_to_body: int | None = None
    seam_stitches: SeamStitches = SeamStitches()
    seam: SeamStitch = "knit"
    half_stitch: HalfStitch = "refuse"
    for_children: bool = False
    answer_sizes: AnswerSizes = None

    @property
    def fabric(self) -> Fabric:
        """What the rounds of yoke, body and sleeves are knitted in, counted from the yoke's first."""
        return self.charted_fabric(self.plain_gauge or self.gauge, self.gauge)

    @property
    def line_share(self) -> tuple[int, int]:
        """Stitches of each raglan line that go to the body and to the sleeve at the split."""
        body = self.line_stitches // 2 if self.line_to_body is None else self.line_to_body
        return body, self.line_stitches - body

    def seams(self, size: ChartSize) -> tuple[int, int]:
        """Stitches of each break at the body's sides and under the sleeve, in one size."""
        default = usual_seam(size.underarm, self.seam)
        body, sleeve = self.seam_stitches.body, self.seam_stitches.sleeve
        return default if body is None else body, default if sleeve is None else sleeve


@dataclass(frozen=True, slots=True)
class ChartPictureRequest:
    """A chart on its sizes, and the size of which a picture is asked for.

    placements: the chart and the sizes. size: the label of one of them; None takes the first.
    """

    placements: ChartRequest
    size: str | None = None


@dataclass(frozen=True, slots=True)
class ToldColour:
    """A colour whose hex is told. name: for people. hex: its sRGB value as "#rrggbb"."""

    name: str
    hex: str


@dataclass(frozen=True, slots=True)
class ContrastRequest:
    """Colours that should read apart.

    colours: by symbol. chart: whose symbols they stand for, whatever it has for colours itself; None
    compares the colours alone.
    """

    colours: Mapping[str, ToldColour]
    chart: Chart | None = None
