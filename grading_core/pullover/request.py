"""What is asked for when a whole pullover is graded. Every part has a default that makes a wearable garment.

The field names are those of the request. Lengths are in cm. Where sizes may differ, a length is one for all of
them, one for each, or goes from the first size sent to the last in even steps.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from types import MappingProxyType
from typing import Literal, TypeVar

from grading_core.chart.grid import Anchor
from grading_core.chart.request import ChartOptions, SeamStitch
from grading_core.fabric import Fabric
from grading_core.fraction import Fraction
from grading_core.gauge import Gauge
from grading_core.parts.neckband import Construction
from grading_core.parts.neckline import Start
from grading_core.parts.ribbing import RibRepeat
from grading_core.parts.short_rows import Way
from grading_core.pullover.proportions import USUAL_INCREASES, USUAL_RIB, USUAL_STRETCH, SleeveStyle
from grading_core.rounding import NEAREST, CountRule, Rounding
from grading_core.shaping import Spacing
from grading_core.sizes.request import BodiesRequest, PerSize
from grading_core.standards import Measurement
from grading_core.yarn.request import USUAL_MARGIN, Yarn
from grading_core.yoke.request import Adjustment, Options

LowerFront = Literal["short_rows", "front_drop", "both", "none"]

Smoothing = Literal["none", "steps"]

LevelMeasurement = Literal["waist", "hip"]

AnswerPart = Literal["table", "instructions", "sizes", "size_instructions", "chart_rounds"]
"""What an answer can do without. size_instructions: each size's own sentences. chart_rounds: its chart round by round.
Both stand in the sizes.
"""

SwatchFabric = Literal["plain", "stranded"]

_PARTS: Mapping[LowerFront, tuple[Fraction, Fraction]] = MappingProxyType(
    {
        "short_rows": (Fraction(1), Fraction(0)),
        "front_drop": (Fraction(0), Fraction(1)),
        "both": (Fraction(1, 2), Fraction(1, 2)),
        "none": (Fraction(0), Fraction(0)),
    }
)
"""What short rows and a front drop take of the usual height."""


@dataclass(frozen=True, slots=True)
class Fabrics:
    """What the garment is knitted in.

    plain: of what no chart is worked in, such as short rows. rib: of hem, cuffs and neckband. rounds: of the yoke,
    and on below it those of body and sleeves, counted from the first of the yoke.
    """

    plain: Gauge
    rib: Gauge
    rounds: Fabric


@dataclass(frozen=True, slots=True)
class Gauges:
    """Gauges of the fabrics, measured in the round and blocked; each part uses its own.

    plain: of everything that no other gauge is given for. stranded: of what is worked from a chart. rib: of hem, cuffs
    and neckband.
    """

    plain: Gauge
    stranded: Gauge | None = None
    rib: Gauge | None = None

    def used(self, *, charted: bool) -> Gauges:
        """Those that anything is knitted at: without a chart nothing is stranded.

        charted: whether a chart is there.
        """
        return self if charted else replace(self, stranded=None)

    def fabrics(self, options: ChartOptions | None) -> Fabrics:
        """What each round is knitted in.

        options: of the chart, None without one; its rounds are stranded.

        >>> gauge = Gauge(Fraction(2), Fraction(3))
        >>> Gauges(gauge).fabrics(None) == Fabrics(plain=gauge, rib=gauge, rounds=gauge)
        True
        """
        stranded = options and self.stranded
        rounds = options.charted_fabric(self.plain, stranded) if options and stranded else self.plain
        return Fabrics(plain=self.plain, rib=self.rib or self.plain, rounds=rounds)


@dataclass(frozen=True, slots=True)
class Shares:
    """How the neck's stitches without the lines are shared, in any measure: 3, 3 and 1, or 33, 33 and 17.

    sleeve: of each sleeve.
    """

    back: Fraction
    front: Fraction
    sleeve: Fraction


@dataclass(frozen=True, slots=True, kw_only=True)
class NeckWishes:
    """The neck.

    circumference: of the cast-on. shares: of its sections. count_rule: of the cast-on. lower_front: how the front comes
    to lie lower than the back. raise_height: of the back, by short rows; 0 for none. way: how it is cast on and raised;
    with a front drop always flat, and joined where nothing is worked flat. start: of the round. front_drop: height by
    which the front is cast on lower; 0 for none. stretch: of the edges, to pass the head, as a part of their
    circumference.
    """

    circumference: PerSize | None = None
    shares: Shares | None = None
    count_rule: CountRule = NEAREST
    lower_front: LowerFront = "short_rows"
    raise_height: Fraction | None = None
    way: Way = "joined"
    start: Start = "before_back"
    front_drop: Fraction | None = None
    stretch: Fraction = USUAL_STRETCH

    def heights_cm(self, usual_cm: Fraction) -> tuple[Fraction, Fraction]:
        """The heights of the raised back and of the front drop.

        usual_cm: by which the front lies lower where no height is asked. An asked drop takes the place of short rows
        whose height isn't asked, unless both are wanted.

        >>> [float(cm) for cm in NeckWishes(lower_front="both", raise_height=Fraction(1)).heights_cm(Fraction(4))]
        [1.0, 2.0]
        """
        raised, dropped = (usual_cm * part for part in _PARTS[self.lower_front])
        if self.lower_front == "short_rows" and self.front_drop:
            raised = Fraction(0)
        return (
            raised if self.raise_height is None else self.raise_height,
            dropped if self.front_drop is None else self.front_drop,
        )


@dataclass(frozen=True, slots=True, kw_only=True)
class YokeWishes:
    """The yoke and the split.

    depth: without the raise. underarm: width of each. line_to_body: stitches of each raglan line that go to the body,
    None for half, rounded down. seam_stitches: of the breaks below the split, None for as few as the underarm's parity
    allows. seam: how they are worked. options: how it is increased.
    """

    depth: PerSize | None = None
    underarm: PerSize | None = None
    line_to_body: int | None = None
    seam_stitches: int | None = None
    seam: SeamStitch = "knit"
    options: Options = USUAL_INCREASES


Rule = TypeVar("Rule", CountRule, "RuleChange")


@dataclass(frozen=True, slots=True)
class RuleChange:
    """What is asked of a count rule; None stays as it is."""

    multiple: int | None = None
    plus: int | None = None
    rounding: Rounding | None = None

    def of(self, rule: Rule) -> Rule:
        """The changed rule.

        rule: a rule, or what was asked of one before.
        """
        changed = {name: value for name in self.__slots__ if (value := getattr(self, name)) is not None}
        return replace(rule, **changed) if changed else rule


@dataclass(frozen=True, slots=True, kw_only=True)
class Ribbed:
    """How a rib repeats.

    count_rule: what is asked of the counts that it may have, beside the usual. rib: what is repeated; None takes what
    is usual for the rule's multiple.
    """

    count_rule: RuleChange = RuleChange()
    rib: RibRepeat | None = None

    @property
    def rule(self) -> CountRule:
        """Which counts the edge may have: multiples of its rib, else of its rule, else the usual ones.

        >>> ribs = Ribbed(rib=RibRepeat(3, 2)), Ribbed(count_rule=RuleChange(4)), Ribbed(count_rule=RuleChange(plus=1))
        >>> [(ribbed.rule.multiple, ribbed.rule.plus) for ribbed in ribs]
        [(5, 0), (4, 0), (2, 1)]
        """
        if self.rib is None:
            return self.count_rule.of(USUAL_RIB)
        return replace(self.count_rule.of(NEAREST), multiple=self.rib.stitches)

    @property
    def told_by(self) -> str:
        """The field that says over what the rib repeats."""
        return "rib" if self.rib else "count_rule"


@dataclass(frozen=True, slots=True)
class EdgeWishes(Ribbed):
    """A ribbed hem or cuff.

    height: None takes 2 in, for a young child 1 in. colour: its symbol, None for that of the fabric above.
    """

    height: Fraction | None = None
    colour: str | None = None


@dataclass(frozen=True, slots=True)
class LevelWish:
    """A height at which the body is to have its own circumference: body and ease of that measurement.

    below: the distance below the underarm.
    """

    measurement: LevelMeasurement
    below: PerSize


@dataclass(frozen=True, slots=True)
class DartWishes:
    """Short rows that shape the bust. extra: length of the front by them; 0 or None for none."""

    extra: PerSize | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class BodyWishes:
    """The body. length: from the underarm, hem included. count_rule: of its stitches. levels: from the underarm down.

    spacing: of its shaping. bust_darts: of the front. front_extra: by which the front is wider than the back from the
    split on, the bust being that of both.
    """

    length: PerSize | None = None
    count_rule: CountRule = NEAREST
    hem: EdgeWishes = EdgeWishes()
    levels: tuple[LevelWish, ...] = ()
    spacing: Spacing = "closest_first"
    bust_darts: DartWishes = DartWishes()
    front_extra: PerSize | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class SleeveWishes:
    """Each sleeve.

    style: how far down the arm it ends. length: from the underarm, cuff included; None as the style has it. count_rule:
    of its stitches at the upper arm. plain_before, plain_after: rounds without decreases at the top and before the
    cuff.
    """

    style: SleeveStyle = "long"
    length: PerSize | None = None
    count_rule: CountRule = NEAREST
    cuff: EdgeWishes = EdgeWishes()
    spacing: Spacing = "closest_first"
    plain_before: int = 0
    plain_after: int = 0


@dataclass(frozen=True, slots=True, kw_only=True)
class BandWishes(Ribbed):
    """The neckband. height: as worn; None takes 1 in. colour: its symbol, None for that of what is plain."""

    height: Fraction | None = None
    construction: Construction = "single"
    colour: str | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class BandChange:
    """Another neckband; None stays as it is."""

    height: Fraction | None = None
    count_rule: RuleChange = RuleChange()
    rib: RibRepeat | None = None
    construction: Construction | None = None
    colour: str | None = None

    @property
    def told_by(self) -> str | None:
        """The field that says over what the rib repeats, or which counts it may have; None where neither is sent."""
        if self.rib:
            return "rib"
        return None if self.count_rule == RuleChange() else "count_rule"

    def of(self, band: BandWishes) -> BandWishes:
        """The changed band. Another rib or multiple takes the place of both of the design's.

        >>> [BandChange(rib=RibRepeat(2, 2)).of(BandWishes(count_rule=RuleChange(6))).rule.multiple]
        [4]
        """
        rib, rule = band.rib, band.count_rule
        if self.rib or self.count_rule.multiple:
            rib, rule = self.rib, replace(rule, multiple=None)
        return BandWishes(
            height=band.height if self.height is None else self.height,
            count_rule=self.count_rule.of(rule),
            rib=rib,
            construction=self.construction or band.construction,
            colour=band.colour if self.colour is None else self.colour,
        )


@dataclass(frozen=True, slots=True, kw_only=True)
class ChartWishes(ChartOptions):
    """A colourwork chart; what else a placement needs follows from the garment.

    anchor: None takes the chart's mirror axis nearest to its middle for every section.
    """

    anchor: Anchor | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class PulloverYarn(Yarn):
    """A yarn of a pullover. swatch_fabric: what its swatch is of, and so how wide that swatch's stitches are."""

    swatch_fabric: SwatchFabric = "plain"


@dataclass(frozen=True, slots=True, kw_only=True)
class ColourYarn(PulloverYarn):
    """The yarn of one colour.

    name: of a colour that the chart doesn't have; None takes its symbol. hex: of one whose hex the chart doesn't tell,
    its sRGB value as "#rrggbb".
    """

    name: str | None = None
    hex: str | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class YarnWishes(PulloverYarn):
    """The yarn.

    Either one for all colours, or colours: one for each, by its symbol. main_colour: the symbol of what no chart and no
    edge says, where there is no chart; None takes the only colour that no edge has. margin: bought beyond what is
    needed, as a part of it.
    """

    colours: Mapping[str, ColourYarn] | None = None
    main_colour: str | None = None
    margin: Fraction = USUAL_MARGIN

    def strands_of(self, colours: int) -> int:
        """How many strands the yarns of all colours have. colours: how many there are where one yarn is for all."""
        if self.colours is None:
            return colours * len(self.held)
        return sum(len(yarn.held) for yarn in self.colours.values())

    def has(self, symbol: str) -> bool:
        """Whether a colour has a yarn."""
        return self.colours is None or symbol in self.colours

    def of(self, symbol: str) -> PulloverYarn:
        """The yarn of a colour that has one."""
        return self if self.colours is None else self.colours[symbol]


@dataclass(frozen=True, slots=True, kw_only=True)
class Changes:
    """A maker's own changes to a design.

    Another gauge or ease makes the counts anew, unless keep_counts says that the written ones are knitted at the other
    gauge. Everything else keeps the design's counts at neck and split: yoke says how much deeper or shallower;
    body_length and sleeve_length are from the underarm; sleeve_style ends the sleeves elsewhere, as long as the style
    has it where no length is sent beside it; band is what differs in the neckband; yarn is knitted in place of the
    design's, as much of it in length.
    """

    gauges: Gauges | None = None
    keep_counts: bool = False
    ease: Mapping[Measurement, PerSize] = field(default_factory=dict)
    yoke: Adjustment | None = None
    body_length: PerSize | None = None
    sleeve_length: PerSize | None = None
    sleeve_style: SleeveStyle | None = None
    band: BandChange = BandChange()
    yarn: YarnWishes | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class PulloverRequest(BodiesRequest):
    """A pullover to grade, for women's bodies where neither a table nor sizes are sent.

    ease: of bust, upper_arm and wrist, and of waist and hip where the body is shaped to them. smoothing: whether the
    sizes' girths are moved to even steps, or stay as body and ease have them; None evens those whose ease isn't asked,
    of bodies that are all from a built-in table. include: the parts of the answer that are wanted.
    """

    gauges: Gauges
    ease: Mapping[Measurement, PerSize] = field(default_factory=dict)
    smoothing: Smoothing | None = None
    neck: NeckWishes = NeckWishes()
    yoke: YokeWishes = YokeWishes()
    body: BodyWishes = BodyWishes()
    sleeve: SleeveWishes = SleeveWishes()
    band: BandWishes = BandWishes()
    chart: ChartWishes | None = None
    yarn: YarnWishes | None = None
    changes: Changes | None = None
    include: tuple[AnswerPart, ...] = ("table", "instructions", "sizes")

    @property
    def parts(self) -> frozenset[AnswerPart]:
        """The parts of the answer: those that are asked for, and the sizes where something of theirs is.

        >>> from grading_core.gauge import Gauge
        >>> gauges = Gauges(Gauge(Fraction(2), Fraction(3)))
        >>> sorted(PulloverRequest(gauges=gauges, include=("chart_rounds",)).parts)
        ['chart_rounds', 'sizes']
        """
        within_sizes = {"size_instructions", "chart_rounds"} & set(self.include)
        return frozenset(self.include) | (frozenset({"sizes"}) if within_sizes else frozenset())

    @property
    def bodies(self) -> BodiesRequest:
        """Where the bodies are from."""
        table = "women" if self.body_table is None and self.sizes is None else self.body_table
        return BodiesRequest(body_table=table, labels=self.labels, sizes=self.sizes, within=self.within)

    @property
    def kept_at(self) -> Gauges | None:
        """The gauges at which a maker knits the written counts; None where none does."""
        return self.changes.gauges if self.changes and self.changes.keep_counts else None

    @property
    def own_yarn(self) -> YarnWishes | None:
        """The yarn that a maker takes in place of the design's; None where none does."""
        return self.changes.yarn if self.changes else None

    @property
    def smooths(self) -> tuple[bool, bool]:
        """Whether girths whose ease isn't asked, and whether those whose ease is, are moved to even steps."""
        usual = self.sizes is None and self.smoothing is None
        return usual or self.smoothing == "steps", self.smoothing == "steps"
