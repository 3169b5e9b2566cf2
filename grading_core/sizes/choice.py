"""Which size to knit: the nearest finished circumference to the one that is wanted.

What is wanted is the circumference of a garment that fits, or a body plus the wanted ease. The
nearest size is best, of two equally near ones the larger (a garment that is too large can be worn).
A knitter whose gauge is not the pattern's knits the written counts to another circumference:
finished x written stitches per cm / own stitches per cm.

Source: the arithmetic of the craft; that a tie goes to the larger size is common practice, no source.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence

from grading_core.codes import ProblemCode, WarningCode
from grading_core.errors import Check, Problem, Remark, check, duplicate_labels, sound, under
from grading_core.fraction import Fraction
from grading_core.sentences import TOKEN, Saying
from grading_core.sizes.bodies import SizeBody
from grading_core.sizes.grading import graded, grading_problems
from grading_core.sizes.request import FinishedSize, SizeMatchRequest
from grading_core.sizes.result import GradedSize, Neighbours, Offer, SizeChoice, SizeMatch
from grading_core.standards import Measurement
from grading_core.units import whole_parts
from grading_core.unknown import known, shown

BELOW_EVERY_SIZE = Saying("warning.below_every_size", gauge=TOKEN)
ABOVE_EVERY_SIZE = Saying("warning.above_every_size", gauge=TOKEN)
"""gauge: written, or the knitter's own."""

_CHOSEN_BY: tuple[Measurement, ...] = ("bust",)


def choose_size(finished: Sequence[FinishedSize], *, wanted: Fraction, body: Fraction | None = None) -> SizeChoice:
    """The size nearest to a wanted circumference, with its neighbours.

    finished: one size or more, in any order. wanted, body: in cm.

    >>> sizes = [FinishedSize("S", Fraction(100)), FinishedSize("M", Fraction(110))]
    >>> choose_size(sizes, wanted=Fraction(105)).best.label
    'M'
    """
    *busts, sought = whole_parts([*(size.bust for size in finished), wanted])
    places = range(len(busts))
    best = min(places, key=lambda place: (abs(busts[place] - sought), -busts[place]))
    smaller = max((place for place in places if busts[place] < busts[best]), key=busts.__getitem__, default=None)
    larger = min((place for place in places if busts[place] > busts[best]), key=busts.__getitem__, default=None)
    return SizeChoice(
        best=_offer(finished[best], wanted, body),
        neighbours=Neighbours(
            smaller=None if smaller is None else _offer(finished[smaller], wanted, body),
            larger=None if larger is None else _offer(finished[larger], wanted, body),
        ),
    )


def match_sizes(request: SizeMatchRequest) -> SizeMatch:
    """Which size to knit, at the written gauge and at the knitter's own.

    Raises ContradictionError where there is not exactly one of finished and grading, or of garment
    and body with ease; where ease leaves nothing; where a label is repeated; where an own gauge has
    no written one beside it, or that differs from the grading's; and for what `grade_bodies` refuses.

    >>> sizes = (FinishedSize("S", Fraction(100)), FinishedSize("M", Fraction(110)))
    >>> match = match_sizes(SizeMatchRequest(finished=sizes, body=Fraction(90), ease=Fraction(12)))
    >>> match.written.best.label, match.written.best.ease, match.written.best.difference
    ('S', Fraction(10, 1), Fraction(-2, 1))
    """
    bodies, grading = sound(match_problems(request)), request.grading
    finished = _busts(graded(grading, bodies, _CHOSEN_BY)) if grading else request.finished or ()
    body = request.body
    wanted = request.garment if request.garment is not None else (body or 0) + (request.ease or Fraction(0))
    at_written = choose_size(finished, wanted=wanted, body=body)
    remarks = list(_end_remarks(at_written, "written"))
    written_gauge = request.written_gauge or (request.grading and request.grading.gauge)
    at_own = None
    if written_gauge and request.own_gauge:
        change = written_gauge.stitches_per_cm / request.own_gauge.stitches_per_cm
        knitted = [FinishedSize(size.label, size.bust * change) for size in finished]
        at_own = choose_size(knitted, wanted=wanted, body=body)
        remarks += _end_remarks(at_own, "own")
    return SizeMatch(wanted, at_written, at_own, tuple(remarks))


def _offer(size: FinishedSize, wanted: Fraction, body: Fraction | None) -> Offer:
    return Offer(
        label=size.label,
        finished=size.bust,
        ease=None if body is None else size.bust - body,
        difference=size.bust - wanted,
    )


def _busts(sizes: Iterable[GradedSize]) -> tuple[FinishedSize, ...]:
    """The finished busts of graded sizes."""
    return tuple(FinishedSize(size.label, size.measurements["bust"].finished) for size in sizes)


def match_problems(request: SizeMatchRequest) -> Check[tuple[SizeBody, ...]]:
    """What contradicts itself in the sizes offered and in what is wanted; makes the bodies of a grading.

    request: any.
    """
    yield from _offer_problems(request)
    yield from _finished_problems(request)
    bodies = yield from _grading_problems(request)
    yield from _wish_problems(request)
    yield from _gauge_problems(request)
    return bodies


@check
def _offer_problems(request: SizeMatchRequest) -> Check[None]:
    if (known(request.finished) is None) == (known(request.grading) is None):
        yield Problem((), ProblemCode.MISSING_OFFER, "Send either finished or grading.")


@check
def _finished_problems(request: SizeMatchRequest) -> Check[None]:
    if request.finished is None:
        return
    if not request.finished:
        yield Problem(("finished",), ProblemCode.NO_SIZES, "There is no size.")
    yield from duplicate_labels([size.label for size in request.finished], ("finished",))


@check
def _grading_problems(request: SizeMatchRequest) -> Check[tuple[SizeBody, ...]]:
    grading = request.grading
    if grading is None:
        return ()
    bodies = yield from under(("grading",), grading_problems(grading, _CHOSEN_BY))
    for body in bodies:
        yield from _bust_problems(body)
    return bodies


@check
def _bust_problems(body: SizeBody) -> Check[None]:
    if "bust" not in body.values:
        detail = f"Size {shown(body.label)!r} has no bust to choose by."
        yield Problem(("grading",), ProblemCode.MISSING_MEASUREMENT, detail)


@check
def _wish_problems(request: SizeMatchRequest) -> Check[None]:
    garment, body, ease = known(request.garment), known(request.body), request.ease
    if garment is not None:
        if ease is not None:
            detail = "A garment that fits has its ease already: send it without ease."
            yield Problem(("ease",), ProblemCode.EASE_BESIDE_GARMENT, detail)
    elif body is None:
        yield Problem((), ProblemCode.MISSING_WISH, "Send either garment, or body with ease.")
    elif ease is None:
        yield Problem((), ProblemCode.MISSING_WISH, "A body needs an ease beside it; 0 is one.")
    elif body + ease <= 0:
        yield Problem(("ease",), ProblemCode.NOTHING_LEFT, "This ease leaves nothing of the body.")


@check
def _gauge_problems(request: SizeMatchRequest) -> Check[None]:
    written, grading = request.written_gauge, known(request.grading)
    if written is None and grading is None and request.own_gauge is not None:
        detail = "An own gauge needs the written_gauge to compare with."
        yield Problem(("own_gauge",), ProblemCode.MISSING_WRITTEN_GAUGE, detail)
    if written and grading and written.stitches_per_cm != grading.gauge.stitches_per_cm:
        detail = "The stitches differ from the grading's own gauge."
        yield Problem(("written_gauge",), ProblemCode.GAUGES_DIFFER, detail)


def _end_remarks(choice: SizeChoice, gauge: str) -> Iterator[Remark]:
    """A remark where what is wanted lies beyond the smallest or the largest size."""
    best = choice.best
    if best.difference > 0 and choice.neighbours.smaller is None:
        yield Remark(WarningCode.BELOW_EVERY_SIZE, BELOW_EVERY_SIZE(gauge=gauge), best.label)
    if best.difference < 0 and choice.neighbours.larger is None:
        yield Remark(WarningCode.ABOVE_EVERY_SIZE, ABOVE_EVERY_SIZE(gauge=gauge), best.label)
