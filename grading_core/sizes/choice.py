"""Which size to knit: the nearest finished circumference to the one that is wanted.

What is wanted is the circumference of a garment that fits, or a body plus the wanted ease. The
nearest size is best, of two equally near ones the larger (a garment that is too large can be worn).
A knitter whose gauge is not the pattern's knits the written counts to another circumference:
finished x written stitches per cm / own stitches per cm.

Source: the arithmetic of the craft; that a tie goes to the larger size is common practice, no source.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from fractions import Fraction

from grading_core.errors import ContradictionError, Problem, Remark, duplicate_labels, raise_if_any
from grading_core.gauge import Gauge
from grading_core.sizes.grading import SizeGradingRequest, grade_sizes


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


@dataclass(frozen=True, slots=True)
class Match:
    """A size beside what is wanted; lengths in cm.

    finished: its circumference. difference: that minus what is wanted. ease: that minus the body,
    None where no body is known.
    """

    label: str
    finished: Fraction
    difference: Fraction
    ease: Fraction | None


@dataclass(frozen=True, slots=True)
class Choice:
    """The best size, and the next smaller and next larger circumference, None at an end."""

    best: Match
    smaller: Match | None
    larger: Match | None


@dataclass(frozen=True, slots=True)
class SizeMatch:
    """The choice at the written gauge, and at the knitter's own where it is known.

    wanted: the circumference in cm.
    """

    wanted: Fraction
    written: Choice
    at_own_gauge: Choice | None
    remarks: tuple[Remark, ...]


def choose_size(finished: Sequence[FinishedSize], wanted: Fraction, body: Fraction | None = None) -> Choice:
    """The size nearest to a wanted circumference, with its neighbours.

    finished: one size or more, in any order. wanted, body: in cm.

    >>> sizes = [FinishedSize("S", Fraction(100)), FinishedSize("M", Fraction(110))]
    >>> choose_size(sizes, Fraction(105)).best.label
    'M'
    """
    best = min(finished, key=lambda size: (abs(size.bust - wanted), -size.bust))
    smaller = max((size for size in finished if size.bust < best.bust), key=_bust, default=None)
    larger = min((size for size in finished if size.bust > best.bust), key=_bust, default=None)
    return Choice(
        _match(best, wanted, body),
        None if smaller is None else _match(smaller, wanted, body),
        None if larger is None else _match(larger, wanted, body),
    )


def match_sizes(request: SizeMatchRequest) -> SizeMatch:
    """Which size to knit, at the written gauge and at the knitter's own.

    Raises ContradictionError where there is not exactly one of finished and grading, or of garment
    and body with ease; where ease leaves nothing; where a label is repeated; where an own gauge has
    no written one beside it, or that differs from the grading's; and for what `grade_sizes` refuses.

    >>> sizes = (FinishedSize("S", Fraction(100)), FinishedSize("M", Fraction(110)))
    >>> match = match_sizes(SizeMatchRequest(finished=sizes, body=Fraction(90), ease=Fraction(12)))
    >>> match.written.best.label, match.written.best.ease, match.written.best.difference
    ('S', Fraction(10, 1), Fraction(-2, 1))
    """
    raise_if_any(_problems(request))
    finished = request.finished or _graded_busts(request)
    body = request.body
    wanted = request.garment if request.garment is not None else (body or 0) + (request.ease or Fraction(0))
    choice = choose_size(finished, wanted, body)
    remarks = list(_end_remarks(choice, "written gauge"))
    written = request.written_gauge or (request.grading and request.grading.gauge)
    at_own_gauge = None
    if written and request.own_gauge:
        change = written.stitches_per_cm / request.own_gauge.stitches_per_cm
        knitted = [FinishedSize(size.label, size.bust * change) for size in finished]
        at_own_gauge = choose_size(knitted, wanted, body)
        remarks += _end_remarks(at_own_gauge, "own gauge")
    return SizeMatch(wanted, choice, at_own_gauge, tuple(remarks))


def _bust(size: FinishedSize) -> Fraction:
    return size.bust


def _match(size: FinishedSize, wanted: Fraction, body: Fraction | None) -> Match:
    return Match(size.label, size.bust, size.bust - wanted, None if body is None else size.bust - body)


def _graded_busts(request: SizeMatchRequest) -> tuple[FinishedSize, ...]:
    """The finished busts that a grading makes."""
    assert request.grading is not None, "checked before"
    try:
        grading = grade_sizes(request.grading)
    except ContradictionError as error:
        raise ContradictionError([problem.under("grading") for problem in error.problems]) from error
    without = [size.label for size in grading.sizes if "bust" not in size.measurements]
    raise_if_any(Problem(("grading",), f"Size {label!r} has no bust to choose by.") for label in without)
    return tuple(FinishedSize(size.label, size.measurements["bust"].finished) for size in grading.sizes)


def _problems(request: SizeMatchRequest) -> Iterator[Problem]:
    if (request.finished is None) == (request.grading is None):
        yield Problem((), "Send either finished or grading.")
    yield from duplicate_labels([size.label for size in request.finished or ()], ("finished",))
    if request.finished is not None and not request.finished:
        yield Problem(("finished",), "There is no size.")
    yield from _wish_problems(request)
    yield from _gauge_problems(request)


def _wish_problems(request: SizeMatchRequest) -> Iterator[Problem]:
    if request.garment is not None:
        if request.ease is not None:
            yield Problem(("ease",), "A garment that fits has its ease already: send it without ease.")
    elif request.body is None:
        yield Problem((), "Send either garment, or body with ease.")
    elif request.ease is None:
        yield Problem((), "A body needs an ease beside it; 0 is one.")
    elif request.body + request.ease <= 0:
        yield Problem(("ease",), "This ease leaves nothing of the body.")


def _gauge_problems(request: SizeMatchRequest) -> Iterator[Problem]:
    written, grading = request.written_gauge, request.grading
    if written is None and grading is None and request.own_gauge is not None:
        yield Problem(("own_gauge",), "An own gauge needs the written_gauge to compare with.")
    if written and grading and written.stitches_per_cm != grading.gauge.stitches_per_cm:
        yield Problem(("written_gauge",), "The stitches differ from the grading's own gauge.")


def _end_remarks(choice: Choice, at: str) -> Iterator[Remark]:
    """A remark where what is wanted lies beyond the smallest or the largest size."""
    best = choice.best
    if best.difference > 0 and choice.smaller is None:
        yield Remark(
            "below_every_size", f"At the {at} the smallest size is still larger than wanted.", best.label
        )
    if best.difference < 0 and choice.larger is None:
        yield Remark(
            "above_every_size", f"At the {at} the largest size is still smaller than wanted.", best.label
        )
