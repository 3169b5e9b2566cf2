"""What is asked about sizes: bodies, their grading, and which size to knit."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field

from grading_core.answer_sizes import AnswerSizes
from grading_core.fraction import Fraction
from grading_core.gauge import Gauge
from grading_core.rounding import CountRule
from grading_core.standards import Measurement, Within


@dataclass(frozen=True, slots=True)
class EvenSteps:
    """A length that goes from the first size sent to the last in even steps. first, last: in cm."""

    first: Fraction
    last: Fraction


PerSize = Fraction | tuple[Fraction, ...] | EvenSteps
"""A length in cm, such as ease: one for all sizes, one per size, or even steps."""


@dataclass(frozen=True, slots=True)
class SentSize:
    """A size of a custom table.

    label: unique in the request. measurements: the body in cm, by measurement name.
    """

    label: str
    measurements: Mapping[Measurement, Fraction]


@dataclass(frozen=True, slots=True, kw_only=True)
class BodiesRequest:
    """The bodies: those of a built-in table, of sizes that are sent, or of both.

    body_table: the table's name; beside sizes it fills in what they lack. labels: which of the table's sizes and in
    which order; all of them by default. sizes: a custom table. within: which part of a published range counts.
    answer_sizes: labels of those that are answered.
    """

    body_table: str | None = None
    labels: tuple[str, ...] | None = None
    sizes: tuple[SentSize, ...] | None = None
    within: Within = "middle"
    answer_sizes: AnswerSizes = None


@dataclass(frozen=True, slots=True, kw_only=True)
class SizeGradingRequest(BodiesRequest):
    """Bodies to grade.

    gauge: of the fabric. ease: by measurement, none where it is missing. count_rules: by measurement, the nearest
    whole number where it is missing.
    """

    gauge: Gauge
    ease: Mapping[Measurement, PerSize] = field(default_factory=dict)
    count_rules: Mapping[Measurement, CountRule] = field(default_factory=dict)


@dataclass(frozen=True, slots=True)
class FinishedSize:
    """A size as the pattern prints it. bust: the finished circumference in cm."""

    label: str
    bust: Fraction


@dataclass(frozen=True, slots=True, kw_only=True)
class SizeMatchRequest:
    """What is on offer and what is wanted; lengths in cm.

    finished: the pattern's sizes; or grading: what makes them. garment: the circumference of a
    garment that fits; or body and ease: what is to be worn with how much ease. A body beside a
    garment serves to tell the ease. written_gauge: the pattern's, by default the grading's.
    own_gauge: the knitter's.
    """

    finished: tuple[FinishedSize, ...] | None = None
    grading: SizeGradingRequest | None = None
    garment: Fraction | None = None
    body: Fraction | None = None
    ease: Fraction | None = None
    written_gauge: Gauge | None = None
    own_gauge: Gauge | None = None


def per_size(length: PerSize, sizes: int) -> tuple[Fraction, ...]:
    """The length of each size, in cm.

    length: one for all sizes, one per size, or even steps. sizes: how many; a single size takes the first
    end of even steps.

    Raises ValueError where a list has another length.

    >>> [float(cm) for cm in per_size(EvenSteps(Fraction(20), Fraction(25)), 3)]
    [20.0, 22.5, 25.0]
    """
    if isinstance(length, EvenSteps):
        (first, of_first), (last, of_last) = length.first.as_integer_ratio(), length.last.as_integer_ratio()
        steps = max(1, sizes - 1)
        first, last, parts = first * of_last, last * of_first, steps * of_first * of_last
        return tuple([Fraction(first * (steps - index) + last * index, parts) for index in range(sizes)])
    if not isinstance(length, tuple):
        return (length,) * sizes
    if len(length) != sizes:
        raise ValueError(f"{len(length)} values for {sizes} sizes")
    return length
