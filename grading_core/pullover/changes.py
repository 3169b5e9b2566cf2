"""What a maker changes: another version of the garment, and the numbers in which it differs from the design."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, fields, replace
from math import ceil

from grading_core.codes import ProblemCode
from grading_core.counts.solver import Solution, Solved
from grading_core.errors import Check, Impossible, Nearest, Path, Problem, check, under
from grading_core.fabric import Fabric
from grading_core.fraction import Fraction
from grading_core.limits import MAX_ROUNDS_IN_ALL
from grading_core.pullover.lengths import Lengths, ease_problems
from grading_core.pullover.measurements import too_many_rounds
from grading_core.pullover.proportions import SleeveStyle
from grading_core.pullover.request import BandWishes, Changes, Gauges, LevelWish
from grading_core.pullover.result import ChangedNumber, Row
from grading_core.unknown import known
from grading_core.yoke.request import Adjustment

_MAKERS: Mapping[Path, Path] = {
    ("body", "length"): ("changes", "body_length"),
    ("sleeve", "length"): ("changes", "sleeve_length"),
}
"""Lengths of the design, and where a maker asks for them."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Version:
    """A garment as it is designed, or as a maker changes it: all that a maker can change.

    gauges, lengths, sleeve_style, band: as asked. band_change: the field by which a maker has the band's rib repeat
    otherwise, None where nobody does. adjustment: of the yoke, None for none. changed: whether a maker has changed it.
    """

    gauges: Gauges
    lengths: Lengths
    sleeve_style: SleeveStyle
    band: BandWishes
    band_change: str | None = None
    adjustment: Adjustment | None = None
    changed: bool = False

    @property
    def band_rule(self) -> Path:
        """Where the band's rib, or the rule for its counts, is asked for."""
        return ("changes", "band", self.band_change) if self.band_change else ("band", self.band.told_by)

    def blame(self, problem: Problem) -> Problem:
        """A problem of this version where it comes from: the design is sound, so what a maker changes is to blame.

        problem: with its place in the design, or among the changes.
        """
        if not self.changed or problem.path[:1] == ("changes",):
            return problem
        return replace(problem, path=("changes",))

    def offer(self, impossible: Impossible) -> Impossible:
        """Why a size of this version is impossible, with lengths offered where a maker asks for them.

        impossible: with places in the design, or among the changes.
        """
        if not self.changed:
            return impossible
        nearest = (replace(each, path=_MAKERS.get(each.path, each.path)) for each in impossible.nearest)
        return replace(impossible, nearest=tuple(nearest))


def versions(design: Version, changes: Changes | None, changed: Lengths) -> Iterator[Version]:
    """The design and, where a maker changes it, the changed garment.

    design: that no maker has changed. changes: a maker's. changed: the lengths among them.
    """
    yield design
    if changes and not changes.keep_counts:
        # another style is as long as it usually is, not as the design's
        restyled = {"sleeve_length"} if changes.sleeve_style else set()
        kept = {name: asked for name, asked in design.lengths.items() if name not in restyled}
        yield Version(
            gauges=changes.gauges or design.gauges,
            lengths={**kept, **changed},
            sleeve_style=changes.sleeve_style or design.sleeve_style,
            band=changes.band.of(design.band),
            band_change=changes.band.told_by,
            adjustment=changes.yoke,
            changed=True,
        )


@check
def change_problems(changes: Changes | None, levels: Sequence[LevelWish]) -> Check[None]:
    """Changes that can't stand beside counts that are kept, and changes of ease on what the design doesn't have.

    changes: a maker's, None for none. levels: of the body's shaping.

    >>> from fractions import Fraction
    >>> [problem.path for problem in change_problems(Changes(keep_counts=True, body_length=Fraction(40)), [])]
    [('changes', 'keep_counts'), ('changes', 'body_length')]
    """
    if changes is None:
        return
    if not changes.keep_counts:
        yield from under(("changes",), ease_problems(changes.ease, levels))
        return
    if known(changes.gauges) is None:
        detail = "needs a gauge beside it: the written counts are measured at it."
        yield Problem(("changes", "keep_counts"), ProblemCode.KEEP_COUNTS_NEEDS_GAUGE, detail)
    for name in (each.name for each in fields(Changes)):
        if name not in ("gauges", "keep_counts", "yarn"):
            yield from under(("changes",), _beside_kept_counts(changes, name))


@check
def _beside_kept_counts(changes: Changes, name: str) -> Check[None]:
    sent = getattr(changes, name)
    if sent != getattr(Changes(), name):
        detail = "makes other counts, and keep_counts keeps those that are written: leave one of them out."
        yield Problem((name,), ProblemCode.NOT_BESIDE_KEEP_COUNTS, detail)


def adjustment_problems(adjustment: Adjustment | None, solution: Solution, gauge: Fabric) -> Iterator[Problem]:
    """A yoke that is made too deep for one answer.

    adjustment: of the yoke, None for none. solution: the counts of all sizes. gauge: of the yoke.
    """
    if adjustment is None:
        return
    written = [size.counts.rounds for size in solution.sizes if isinstance(size, Solved)]
    rounds = sum(adjustment.new_rounds(number, gauge) for number in written)
    if rounds > MAX_ROUNDS_IN_ALL:
        yield Problem(("changes", "yoke"), ProblemCode.TOO_MANY_ROUNDS, too_many_rounds(rounds))


def nearest_adjustment(adjustment: Adjustment, rounds: int, written: int, gauge: Fabric) -> Nearest:
    """A number of rounds in the way in which a maker asks for the yoke.

    adjustment: as asked. rounds: of the yoke. written: of the design's. gauge: of the yoke.

    >>> from fractions import Fraction
    >>> from grading_core.gauge import Gauge
    >>> nearest_adjustment(Adjustment(rounds_change=-20), 60, 72, Gauge(Fraction(2), Fraction(3)))
    Nearest(path=('changes', 'yoke', 'rounds_change'), value=-12)
    """
    if adjustment.depth_cm is not None:
        return Nearest(("changes", "yoke", "depth"), gauge.height_cm(rounds))
    if adjustment.depth_change_cm is not None:
        return Nearest(("changes", "yoke", "depth_change"), gauge.height_cm(rounds) - gauge.height_cm(written))
    if adjustment.rounds_change is not None:
        return Nearest(("changes", "yoke", "rounds_change"), rounds - written)
    if adjustment.own_rows is not None:
        return Nearest(("changes", "yoke", "own_rows"), ceil(Fraction(rounds, written) * gauge.span_rows))
    return Nearest(("changes", "yoke", "rounds"), rounds)


def changed_numbers(labels: Sequence[str], design: Sequence[Row], changed: Sequence[Row]) -> Iterator[ChangedNumber]:
    """Every number of the table that the changes changed for a reader, size by size.

    labels: of the sizes. design, changed: the tables of both versions; a row that one doesn't have has no numbers.
    Lengths are compared as answers write them.
    """
    before, after = ({(row.part, row.item): row for row in table} for table in (design, changed))
    compared = []
    for key, row in {**before, **after}.items():
        was, now = (table.get(key) or row._replace(values=(None,) * len(labels)) for table in (before, after))
        compared.append((was, was.answered, now, now.answered))
    for index, label in enumerate(labels):
        for was, designed, now, written in compared:
            if designed[index] != written[index]:
                yield ChangedNumber(
                    size=label,
                    part=was.part,
                    item=was.item,
                    unit=was.unit,
                    designed=was.values[index],
                    changed=now.values[index],
                )
