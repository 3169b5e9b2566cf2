"""What is asked when a chart is placed on a top-down raglan pullover or drawn, and what in it contradicts itself.

Colours are named by the chart's symbols. The field names are those of the request, so that a problem's path
is a place in it.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
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
    """Stitches that break the chart at each side of the body and under the sleeve.

    None takes one where the underarm is odd and none where it is even.
    """

    body: int | None = None
    sleeve: int | None = None


@dataclass(frozen=True, slots=True)
class PlainColours:
    """The symbols of plain stretches, raglan lines and seams."""

    plain: str
    line: str
    seam: str


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

    first_round: the yoke round that works chart row 1; later than the yoke's last it lies in body and sleeve.
    minimum_width: below it a section stays plain. plain_colour: of plain stretches; None takes the colour
    that the chart uses most. line_colour, seam_colour: None takes the plain colour. float_limit: the longest float,
    in stitches, that needs no word.
    """

    chart: Chart
    first_round: int = 1
    minimum_width: MinimumWidth = MinimumWidth()
    plain_colour: str | None = None
    line_colour: str | None = None
    seam_colour: str | None = None
    float_limit: int = COMMON_FLOAT_LIMIT

    def charted_fabric(self, plain: Gauge, charted: Gauge) -> Fabric:
        """What the rounds are knitted in, counted from the yoke's first: plain before and after those of the chart.

        >>> from fractions import Fraction
        >>> plain, charted = Gauge(Fraction(2), Fraction(3)), Gauge(Fraction(2), Fraction(2))
        >>> options = ChartOptions(chart=Chart(("#.",), {}, repeat="once"), first_round=5)
        >>> [options.charted_fabric(plain, charted).at(number) == charted for number in (4, 5, 6)]
        [False, True, False]
        """
        last = self.first_round + self.chart.height - 1 if self.chart.repeat == "once" else None
        return ChartedFabric(plain=plain, charted=charted, first=self.first_round, last=last)

    def plain_colours(self) -> PlainColours:
        """The colours of everything that isn't worked from the chart."""
        plain = self.plain_colour
        if plain is None:
            plain = Counter("".join(map(known, self.chart.worked_rows()))).most_common(1)[0][0]
        return PlainColours(
            plain,
            plain if self.line_colour is None else self.line_colour,
            plain if self.seam_colour is None else self.seam_colour,
        )


@dataclass(frozen=True, slots=True, kw_only=True)
class ChartRequest(ChartOptions):
    """A chart and the sizes that it is placed on.

    anchor: the column on each section's centre. gauge: of the colourwork fabric. plain_gauge: of rounds without the
    chart; None takes the same. line_stitches: of each raglan line,
    0 to 8. line_to_body: how many of them go to the body at the split; None takes the half, rounded down.
    seam_stitches: the breaks. half_stitch: "refuse" a section whose count and anchor don't agree, or "shift" it by
    half a stitch. for_children: a garment for a baby or a child. answer_sizes: labels of the sizes that are answered.
    """

    anchor: Anchor
    gauge: Gauge
    sizes: Sequence[ChartSize]
    plain_gauge: Gauge | None = None
    line_stitches: int = 2
    line_to_body: int | None = None
    seam_stitches: SeamStitches = SeamStitches()
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
        default = size.underarm % 2
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
