"""What is answered about yokes: increase schedules, and every way to make a yoke deeper or shallower."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from itertools import pairwise
from typing import Literal, get_args

from grading_core.errors import Impossible, Remark
from grading_core.fraction import Fraction
from grading_core.sections import IncreaseRound, Increases, Sections
from grading_core.sentences import Sentence
from grading_core.shaping import Phase, phases
from grading_core.yoke.request import Yoke
from grading_core.yoke.words import Told, explained, size_instructions

Method = Literal["plain_rounds", "wider", "closer", "double_body"]
LONGEST_STREAK = 8
"""More increase rounds than this one after another draw a raglan line together (a judgement, no source)."""

METHODS: tuple[Method, ...] = get_args(Method)


@dataclass(frozen=True, slots=True)
class YokeStitches:
    """Stitches on the needles at the neck and at the split, raglan lines included."""

    neck: int
    split: int


@dataclass(frozen=True, slots=True)
class RaglanLine:
    """The slope of one raglan line in the fabric.

    rise_over_run: the yoke's depth over the width of the increases at the line, None where there are none.
    length_cm: the length of the line.
    """

    rise_over_run: Fraction | None
    length_cm: Fraction


@dataclass(frozen=True, slots=True, kw_only=True)
class Schedule:
    """Where every increase of one size falls.

    body_increases: at each body edge over the whole yoke; None where back and front have other numbers, which are in
    back_increases and front_increases then. sleeve_increases: at each sleeve edge. doubled_rounds: rounds with two
    increases at a body edge. increase_rounds: every round with an increase. phases: rounds 1 to the last without gap
    or overlap, each of one kind of round. raglan_line: as seen on the back. front_raglan_line: as seen on the front,
    None where it is the same. missing: after each of the first rounds, stitches of a front that is cast on in parts
    which are not on the needles yet.
    """

    yoke: Yoke
    line_stitches: int
    body_increases: int | None
    back_increases: int | None
    front_increases: int | None
    sleeve_increases: int
    doubled_rounds: int
    increase_rounds: tuple[IncreaseRound, ...]
    phases: tuple[Phase[Increases], ...]
    depth_cm: Fraction
    raglan_line: RaglanLine
    front_raglan_line: RaglanLine | None
    missing: tuple[int, ...] = ()

    @property
    def plain_rounds_at_end(self) -> int:
        """Rounds after the last increase."""
        return self.yoke.rounds - (self.increase_rounds[-1].round if self.increase_rounds else 0)

    @property
    def consecutive_increase_rounds(self) -> int:
        """The most increase rounds that follow one another without a round between."""
        longest = current = 1 if self.increase_rounds else 0
        for before, after in pairwise(self.increase_rounds):
            current = current + 1 if after.round == before.round + 1 else 1
            longest = max(longest, current)
        return longest

    @property
    def stitches(self) -> YokeStitches:
        """Stitches on the needles."""
        return YokeStitches(self.yoke.neck.total(self.line_stitches), self.yoke.split.total(self.line_stitches))

    @property
    def body_as_one(self) -> bool:
        """Whether back and front have the same increases in every round, and so can be told as the body's."""
        return all(back == front for phase in self.phases for _, (back, front, _) in phase.cycle)

    def sections_after_phases(self) -> tuple[Sections, ...]:
        """The sections at the end of each phase."""
        return tuple(_sections_after(self.yoke.neck, self.phases))

    def instructions(self) -> tuple[Sentence, ...]:
        """The schedule in sentences, each with the stitches on the needles after it."""
        return (*explained(self.line_stitches, doubled=self.doubled_rounds > 0), *self.told_by_rounds())

    def told_by_rounds(self) -> tuple[Sentence, ...]:
        """The schedule without what has to be known for all sizes."""
        return tuple(size_instructions(replace(self.told, phases=self._spoken_phases())))

    @property
    def told(self) -> Told:
        """What is told of it beside other sizes."""
        return Told(self.phases, self.stitches.neck, self.missing)

    def _spoken_phases(self) -> tuple[Phase[Increases], ...]:
        """The fewest phases where a repeat may hold rounds of different kinds, as a sentence can say."""
        if len(self.phases) <= 4:
            # three cycles and a plain stretch can't be said in fewer
            return self.phases
        return phases(increase_events(self.increase_rounds), self.yoke.rounds, mix_kinds=True)


@dataclass(frozen=True, slots=True)
class SizeSchedule:
    """One size's yoke and its schedule, or why there is none.

    difference_cm: the depth made minus the depth asked for, None where rounds were asked for.
    """

    yoke: Yoke
    depth_cm: Fraction
    schedule: Schedule | Impossible
    difference_cm: Fraction | None = None

    @classmethod
    def of(cls, schedule: Schedule) -> SizeSchedule:
        """A schedule that is possible, for which no depth was asked."""
        return cls(schedule.yoke, schedule.depth_cm, schedule)


@dataclass(frozen=True, slots=True, kw_only=True)
class RaglanRuns:
    """Numbers of all sizes as size runs, None where no size has a schedule.

    The body's increases, or the back's and the front's where they differ.
    """

    rounds: str | None
    body_increases: str | None
    back_increases: str | None
    front_increases: str | None
    sleeve_increases: str | None
    doubled_rounds: str | None
    neck_stitches: str | None
    split_stitches: str | None


@dataclass(frozen=True, slots=True)
class RaglanSchedules:
    """The schedules of all sizes. instructions: with size runs, none where the sizes are too unlike."""

    sizes: tuple[SizeSchedule, ...]
    runs: RaglanRuns
    instructions: tuple[Sentence, ...]
    remarks: tuple[Remark, ...] = ()


@dataclass(frozen=True, slots=True)
class RoundsAndDepth:
    """Rounds, and the depth that they make."""

    rounds: int
    depth_cm: Fraction


@dataclass(frozen=True, slots=True, kw_only=True)
class Way:
    """One way to adjust a yoke.

    rounds, depth_cm: of the adjusted yoke. difference_cm: the depth minus the depth wanted, None where rounds are.
    chart_rows_change: rows of a chart gained or lost before the split. schedule: of the adjusted yoke, or why this way
    is impossible. shallowest: the least this way can reach, None where it was not looked for.
    """

    method: Method
    rounds: int
    depth_cm: Fraction
    difference_cm: Fraction | None
    chart_rows_change: int
    schedule: Schedule | Impossible
    shallowest: RoundsAndDepth | None


@dataclass(frozen=True, slots=True)
class AdjustedYoke:
    """Every way to adjust one size's yoke.

    before: the yoke as written. options: all methods, in the order of `METHODS`. recommended: one of them, or None.
    why: the reason.
    """

    before: SizeSchedule
    options: tuple[Way, ...]
    recommended: Method | None
    why: Sentence

    @property
    def feasible(self) -> bool:
        """Whether any way can be done."""
        return self.recommended is not None


@dataclass(frozen=True, slots=True)
class YokeAdjustments:
    """The adjusted yokes of all sizes."""

    sizes: tuple[AdjustedYoke, ...]
    remarks: tuple[Remark, ...] = ()


def increase_events(increase_rounds: Sequence[IncreaseRound]) -> list[tuple[int, Increases]]:
    """Increase rounds as the shaping rows of a schedule."""
    return [(number, (back, front, sleeve)) for number, back, front, sleeve in increase_rounds]


def _sections_after(sections: Sections, worked: Sequence[Phase[Increases]]) -> Iterator[Sections]:
    """The sections at the end of each phase, from those before the first."""
    for phase in worked:
        many = phase.times
        for _, (back, front, sleeve) in phase.cycle:
            sections = sections.after((back * many, front * many, sleeve * many))
        yield sections
