"""What is answered about sizes: their grading, and which one to knit."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import NamedTuple

from grading_core.errors import Remark
from grading_core.fraction import Fraction
from grading_core.sizes.bodies import BodyValue
from grading_core.standards import Measurement


class GradedMeasurement(NamedTuple):
    """One measurement of one size.

    body: with where it is from. ease, target, finished: in cm. stitches, rows: the count; only one of them.
    """

    body: BodyValue
    ease: Fraction
    target: Fraction
    stitches: int | None
    rows: int | None
    finished: Fraction

    @property
    def difference(self) -> Fraction:
        """Finished minus target, in cm."""
        return self.finished - self.target

    @property
    def counted(self) -> int:
        """The stitches across, or the rows along."""
        count = self.rows if self.stitches is None else self.stitches
        assert count is not None, "one of them is counted"
        return count


@dataclass(frozen=True, slots=True)
class GradedSize:
    """One size. measurements: by name, in the order of `MEASUREMENTS`.

    fit: the published name for the ease at the bust, None without a bust.
    """

    label: str
    measurements: Mapping[Measurement, GradedMeasurement]
    fit: str | None


@dataclass(frozen=True, slots=True, kw_only=True)
class PrintedRuns:
    """One measurement as the size runs that a pattern prints.

    stitches, rows: the counts; only one of them. finished_cm, finished_inch: the finished lengths as rounded for print.
    """

    stitches: str | None
    rows: str | None
    finished_cm: str
    finished_inch: str


@dataclass(frozen=True, slots=True)
class SizeGrading:
    """Every size, in the order asked, and what a pattern prints. runs: of every measurement that any size has."""

    sizes: tuple[GradedSize, ...]
    runs: Mapping[Measurement, PrintedRuns]
    remarks: tuple[Remark, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Offer:
    """A size beside what is wanted; lengths in cm.

    finished: its circumference. ease: that minus the body, None where no body is known. difference: that minus what is
    wanted.
    """

    label: str
    finished: Fraction
    ease: Fraction | None
    difference: Fraction


@dataclass(frozen=True, slots=True)
class Neighbours:
    """The next smaller and the next larger circumference, None at an end."""

    smaller: Offer | None
    larger: Offer | None


@dataclass(frozen=True, slots=True)
class SizeChoice:
    """The best size, and its neighbours."""

    best: Offer
    neighbours: Neighbours


@dataclass(frozen=True, slots=True)
class SizeMatch:
    """The choice at the written gauge, and at the knitter's own where it is known.

    wanted: the circumference in cm.
    """

    wanted: Fraction
    written: SizeChoice
    at_own_gauge: SizeChoice | None
    remarks: tuple[Remark, ...]
