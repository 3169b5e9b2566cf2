"""What is asked about yokes: how to increase them, how much deeper or shallower, and the sizes."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from grading_core.answer_sizes import AnswerSizes
from grading_core.fabric import Fabric
from grading_core.fraction import Fraction
from grading_core.gauge import Gauge
from grading_core.sections import IncreaseRound, Increases, Sections
from grading_core.shaping import Spacing, Where
from grading_core.unknown import told

DoubleBody = Literal["never", "if_needed"]


@dataclass(frozen=True, slots=True, kw_only=True)
class Options:
    """How a yoke is to be increased.

    line_stitches: stitches of each raglan line, 0 to 8. step: 2 for increases in every second round
    at most, 1 for every round. first_increase_round: None takes the step. plain_rounds_at_end: rounds without
    increases wanted before the split. spacing: the order of the intervals. fewer_edge: where the edges with
    fewer increases get them. double_body: whether a body edge may get two in one round.
    double_where: in which of the rounds.
    """

    line_stitches: int = 2
    step: int = 2
    first_increase_round: int | None = None
    plain_rounds_at_end: int = 0
    spacing: Spacing = "closest_first"
    fewer_edge: Where = "early"
    double_body: DoubleBody = "never"
    double_where: Where = "early"

    @property
    def first(self) -> int:
        """The first round that may have an increase."""
        return self.step if self.first_increase_round is None else self.first_increase_round


@dataclass(frozen=True, slots=True)
class Yoke:
    """One size's yoke: its label, its rounds, and the sections at the neck and at the split."""

    label: str
    rounds: int
    neck: Sections
    split: Sections

    @property
    def increases(self) -> Increases:
        """Increases at each back, front and sleeve edge over the whole yoke."""
        return (
            (self.split.back - self.neck.back) // 2,
            (self.split.front - self.neck.front) // 2,
            (self.split.sleeve - self.neck.sleeve) // 2,
        )


@dataclass(frozen=True, slots=True)
class WrittenYoke:
    """A yoke as a pattern gives it.

    increase_rounds: its own list, or None where it follows from counts and options.
    """

    yoke: Yoke
    increase_rounds: tuple[IncreaseRound, ...] | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Adjustment:
    """How much deeper or shallower, in exactly one of five ways.

    depth_cm: the new depth. depth_change_cm: by how much it changes. rounds, rounds_change: the same
    in rounds. own_rows: a knitter's own rows over the span of the pattern's gauge, with which the written
    depth is wanted.
    """

    depth_cm: Fraction | None = None
    depth_change_cm: Fraction | None = None
    rounds: int | None = None
    rounds_change: int | None = None
    own_rows: Fraction | None = None

    def fabric(self, pattern: Fabric) -> Fabric:
        """What the adjusted yoke is knitted in: with the knitter's own rows where they are given."""
        return pattern if self.own_rows is None else pattern.with_rows(self.own_rows)

    def target_cm(self, written: int, gauge: Fabric) -> Fraction | None:
        """The depth that is wanted, None where rounds are.

        written: rounds as written. gauge: the pattern's.
        """
        if self.depth_cm is not None:
            return self.depth_cm
        if self.depth_change_cm is not None:
            return gauge.height_cm(written) + self.depth_change_cm
        return None if self.own_rows is None else gauge.height_cm(written)

    def new_rounds(self, written: int, gauge: Fabric) -> int:
        """The rounds of the adjusted yoke, which may be less than one where the change is too large.

        written: rounds as written. gauge: the pattern's. A depth is rounded to the nearest round.

        >>> gauge = Gauge.over(Fraction(22), Fraction(30), Fraction(10))
        >>> Adjustment(own_rows=Fraction(33)).new_rounds(60, gauge)
        66
        """
        target_cm = self.target_cm(written, gauge)
        if target_cm is not None:
            return self.fabric(gauge).rows(target_cm)
        return written + self.rounds_change if self.rounds_change is not None else self.rounds or 0


@dataclass(frozen=True, slots=True, kw_only=True)
class YokeRequest:
    """One size's yoke as it is sent, with exactly one of rounds and depth_cm."""

    label: str
    neck: Sections
    split: Sections
    rounds: int | None = None
    depth_cm: Fraction | None = None

    def yoke(self, gauge: Gauge) -> Yoke:
        """The yoke with its rounds; a depth is rounded to the nearest round, which may be the zeroth."""
        rounds = self.rounds if self.rounds is not None else told(self._rounds_of_depth, gauge)
        return Yoke(self.label, rounds, self.neck, self.split)

    def _rounds_of_depth(self, gauge: Gauge) -> int:
        return gauge.rows(self.depth_cm or Fraction(0))


@dataclass(frozen=True, slots=True, kw_only=True)
class WrittenYokeRequest(YokeRequest):
    """One size's yoke as a pattern gives it.

    increase_rounds: its own list, where it has one. adjust: how much deeper or shallower, where it isn't the same for
    all sizes.
    """

    increase_rounds: tuple[IncreaseRound, ...] | None = None
    adjust: Adjustment | None = None


@dataclass(frozen=True, slots=True)
class RaglanRequest:
    """Yokes to be increased.

    gauge: for depths and slopes; the counts don't depend on it. sizes: in the order of the answer. options: the same
    for all sizes. answer_sizes: labels of those that are answered.
    """

    gauge: Gauge
    sizes: tuple[YokeRequest, ...]
    options: Options = Options()
    answer_sizes: AnswerSizes = None


@dataclass(frozen=True, slots=True, kw_only=True)
class YokeAdjustmentRequest:
    """Yokes to be made deeper or shallower.

    gauge, sizes, options, answer_sizes: as for `RaglanRequest`. adjust: for sizes that bring none of their own.
    """

    gauge: Gauge
    sizes: tuple[WrittenYokeRequest, ...]
    options: Options = Options()
    adjust: Adjustment | None = None
    answer_sizes: AnswerSizes = None
