"""A graded pullover as data: the answer of `pullover.grade.grade_pullover`. Lengths are in cm."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from types import MappingProxyType
from typing import Literal, NamedTuple, TypeVar, get_args

from grading_core.chart.grid import ChartDescription, describe
from grading_core.chart.request import ChartRequest
from grading_core.chart.result import SizePlacement
from grading_core.counts.request import Targets
from grading_core.counts.result import Counts
from grading_core.errors import Impossible, Remark
from grading_core.fraction import Fraction
from grading_core.parts.body import Body
from grading_core.parts.neckband import Neckband
from grading_core.parts.neckline import CastOn, FrontDrop, HeadCheck
from grading_core.parts.short_rows import BackRaise, Turn
from grading_core.parts.sleeve import Sleeve
from grading_core.pullover.colours import GarmentColours
from grading_core.pullover.measurements import TargetMeasurements
from grading_core.pullover.request import AnswerPart, Gauges
from grading_core.sections import Sections
from grading_core.sentences import Saying, Sentence, run_of
from grading_core.standards.body import BodyTable
from grading_core.units import to_places
from grading_core.wording import known_run
from grading_core.yarn.result import Need
from grading_core.yoke.result import Method, Schedule

Value = TypeVar("Value")

Unit = Literal["stitches", "rounds", "rows", "times", "cm", "grams", "metres", "yards", "balls"]
TablePart = Literal["to_fit", "neck", "yoke", "split", "body", "hem", "sleeve", "cuff", "band", "finished", "yarn"]
Part = Literal[
    "sizes",
    "finished_measurements",
    "gauge",
    "needles",
    "yarn",
    "notions",
    "terms",
    "neck",
    "chart",
    "yoke",
    "split",
    "body",
    "sleeve",
    "band",
    "finishing",
    "own_gauge",
]

PART_TITLES: Mapping[Part | TablePart, Saying] = MappingProxyType(
    {part: Saying(f"title.part_{part}") for part in dict.fromkeys((*get_args(Part), *get_args(TablePart)))}
)
"""Of the parts of instructions, in reading order, and of the table."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Neck:
    """The neck of one size.

    cast_on: with its markers. sections: once all is cast on. line_stitches: of each raglan line. raised: the short
    rows of the back. drop: of the front. edge_cm: circumference of the edge before the band. head: whether it passes
    the head, None where the body has none. remarks: what else deserves a word.
    """

    cast_on: CastOn
    sections: Sections
    line_stitches: int
    raised: BackRaise | None
    drop: FrontDrop | None
    edge_cm: Fraction
    head: HeadCheck | None
    remarks: tuple[Remark, ...]

    @property
    def turns(self) -> tuple[Turn, ...]:
        """Of the short rows, one for each row."""
        return self.raised.turns if self.raised else ()

    def instructions(self) -> tuple[Sentence, ...]:
        """The neck in sentences, for one size."""
        parts = (self.cast_on, self.raised, self.drop)
        return tuple(sentence for part in parts if part for sentence in part.instructions())


@dataclass(frozen=True, slots=True, kw_only=True)
class FinishedMeasurements:
    """What one size measures when it is done, in cm.

    bust: of back and front together. neck: circumference of the cast-on round. depth: of the yoke, without the raise.
    hem, wrist: of the ribs. body_length: at the back. front_length: over the bust, darts included. front_extra: width
    of the front beyond that of the back. total_length: at the centre back, raise included. reach: from the centre
    back of the neck to the end of a sleeve, as `proportions.reach_cm` has it. band: of the neckband's last edge.
    """

    bust: Fraction
    upper_arm: Fraction
    neck: Fraction
    depth: Fraction
    underarm: Fraction
    hem: Fraction
    wrist: Fraction
    body_length: Fraction
    front_length: Fraction
    front_extra: Fraction
    sleeve_length: Fraction
    total_length: Fraction
    reach: Fraction
    band: Fraction


class Measured(NamedTuple):
    """One finished measurement. target_cm: what was asked for, None where nothing was."""

    finished_cm: Fraction
    target_cm: Fraction | None

    @property
    def difference_cm(self) -> Fraction | None:
        """Finished less target."""
        return None if self.target_cm is None else self.finished_cm - self.target_cm


@dataclass(frozen=True, slots=True)
class Corrections:
    """Rounds to add, or where negative to leave out, so that lengths are the design's again at another gauge.

    yoke, body, sleeve: before the ribs. yoke_method: how the yoke takes them, one of the ways to adjust it.
    """

    yoke: int
    body: int
    sleeve: int
    yoke_method: Method


@dataclass(frozen=True, slots=True, kw_only=True)
class AtOwnGauge:
    """One size as written, knitted at a maker's own gauge.

    finished: what it measures. target: the measurements that the design asks for. nearest_size: the written size that
    comes nearest to this one's bust. corrections: in rounds. head: whether the neck passes it, None where it isn't
    known. yarn: by colour, empty where none is asked for. remarks: what deserves a word.
    """

    finished: FinishedMeasurements
    target: TargetMeasurements
    nearest_size: str
    corrections: Corrections
    head: HeadCheck | None
    yarn: tuple[Need, ...]
    remarks: tuple[Remark, ...]

    def measured(self, measurement: str) -> Measured:
        """A finished measurement beside its target.

        measurement: a field of `FinishedMeasurements`.
        """
        return Measured(getattr(self.finished, measurement), getattr(self.target, measurement, None))


@dataclass(frozen=True, slots=True, kw_only=True)
class KnittedSize:
    """One size that can be knitted.

    to_fit: the bust of the body that it is for. counts: from cast-on to split, differences: each less its target, cost:
    of these, as `solver` has it. target: the measurements asked for. chart: where it lies, None without one. yarn: by
    colour, empty where none is asked for. at_own_gauge: the same counts at a maker's gauge, None where nobody asks.
    """

    to_fit: Fraction
    counts: Counts
    differences: Targets
    cost: Fraction
    neck: Neck
    yoke: Schedule
    body: Body
    sleeve: Sleeve
    band: Neckband
    target: TargetMeasurements
    finished: FinishedMeasurements
    chart: SizePlacement | None = None
    yarn: tuple[Need, ...] = ()
    at_own_gauge: AtOwnGauge | None = None

    def measured(self, measurement: str) -> Measured:
        """A finished measurement beside its target.

        measurement: a field of `FinishedMeasurements`.
        """
        return Measured(getattr(self.finished, measurement), getattr(self.target, measurement, None))


@dataclass(frozen=True, slots=True)
class PulloverSize:
    """One size. outcome: its parts, or why it can't be knitted."""

    label: str
    outcome: KnittedSize | Impossible


class Row(NamedTuple):
    """One line of the table of all sizes.

    part, item: its key. title: for people. values: one per size, None where the size is impossible or doesn't have it.
    printed, printed_inch: the same as `printing` had it, the latter None where it is no length. letter: by which a
    schematic refers to it, None where none shows it. colour: whose yarn it is. strand: which of several strands of it,
    counted from 1.
    """

    part: TablePart
    item: str
    unit: Unit
    title: Sentence
    values: tuple[int | Fraction | None, ...]
    printed: tuple[str, ...]
    printed_inch: tuple[str, ...] | None = None
    letter: str | None = None
    colour: str | None = None
    strand: int | None = None

    @property
    def answered(self) -> tuple[int | float | None, ...]:
        """The values as answers write them."""
        return tuple([as_answered(value, self.unit) for value in self.values])

    @property
    def run(self) -> str | None:
        """The values as patterns print them, None where no size has any."""
        return self._run(self.printed)

    @property
    def run_inch(self) -> str | None:
        """Lengths likewise in inches; None for what is no length."""
        return None if self.printed_inch is None else self._run(self.printed_inch)

    def _run(self, printed: tuple[str, ...]) -> str | None:
        return known_run([None if value is None else each for value, each in zip(self.values, printed, strict=True)])


@dataclass(frozen=True, slots=True)
class Instructions:
    """One part of the garment in sentences with size runs."""

    part: Part
    sentences: tuple[Sentence, ...]

    @property
    def title(self) -> Sentence:
        """Of the part, for people."""
        return PART_TITLES[self.part]()


@dataclass(frozen=True, slots=True, kw_only=True)
class ChangedNumber:
    """One number that a maker's changes have changed in one size; None where that size is impossible."""

    size: str
    part: TablePart
    item: str
    unit: Unit
    designed: int | Fraction | None
    changed: int | Fraction | None


@dataclass(frozen=True, slots=True, kw_only=True)
class Pullover:
    """The sizes that are answered, in the order asked.

    parts: of the answer that are wanted; table and instructions are empty where they aren't. body_table: of the bodies,
    None where all are sent. gauges: of the fabrics that are used. plan: how its chart is placed, without sizes, None
    without one. colours: of its parts. cost, unevenness: of the counts of all sizes, as `solver` has them. table: rows
    x sizes, of the rows those in which any size has a number. instructions: with a dash for a size that is impossible.
    designed: the sizes before a maker's changes, as far as their parts, empty without any. changed: what those have
    changed. remarks: words about answers that are right.
    """

    parts: frozenset[AnswerPart]
    sizes: tuple[PulloverSize, ...]
    body_table: BodyTable | None
    gauges: Gauges
    plan: ChartRequest | None
    colours: GarmentColours
    cost: Fraction
    unevenness: Fraction
    table: tuple[Row, ...]
    instructions: tuple[Instructions, ...]
    designed: tuple[PulloverSize, ...]
    changed: tuple[ChangedNumber, ...]
    remarks: tuple[Remark, ...]

    @property
    def labels(self) -> tuple[str, ...]:
        """Of the sizes."""
        return tuple(size.label for size in self.sizes)

    @property
    def chart(self) -> ChartDescription | None:
        """What the chart is, as it was sent; None without one."""
        return describe(self.plan.chart) if self.plan else None


Sizes = Mapping[str, KnittedSize | None]
"""Sizes by label, None where one can't be knitted."""


def each_size(sizes: Sizes, of: Callable[[KnittedSize], Value]) -> tuple[Value | None, ...]:
    """A value of every size, None in an impossible one.

    sizes: in their order. of: gets the value.
    """
    return run_of(sizes.values(), of)


def as_answered(value: int | Fraction | None, unit: Unit) -> int | float | None:
    """A number of the table as answers write it: a length to two decimals, an amount of yarn to one, a count as it is.

    value: exact. unit: of the row.

    >>> as_answered(Fraction(1, 3), "cm"), as_answered(Fraction(1, 3), "grams")
    (0.33, 0.3)
    """
    # asked in this order since to ask whether a count is a fraction takes far longer
    return value if value is None or isinstance(value, int) else to_places(value, 2 if unit == "cm" else 1)
