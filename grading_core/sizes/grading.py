"""Size grading: body plus ease at a gauge gives the counts and finished measurements of every size.

Source: the arithmetic of the craft. Target = body + ease; count = target x gauge, rounded by the
measurement's rule; finished = count / gauge; difference = finished - target, which is reported and
never hidden.
"""

from __future__ import annotations

from collections.abc import Collection, Iterator, Mapping, Sequence

from grading_core.answer_sizes import answer_size_problems, is_answered
from grading_core.codes import ProblemCode, WarningCode
from grading_core.errors import Check, Path, Problem, Remark, check, sound
from grading_core.fraction import Fraction
from grading_core.gauge import Gauge
from grading_core.printing import printing
from grading_core.rounding import NEAREST, CountRule
from grading_core.sentences import LENGTH, NAMES, TOKEN, Saying, word
from grading_core.sizes.bodies import BodyValue, SizeBody, body_problems, measured
from grading_core.sizes.request import SizeGradingRequest, per_size
from grading_core.sizes.result import GradedMeasurement, GradedSize, PrintedRuns, SizeGrading
from grading_core.standards import Measurement
from grading_core.standards.body import ACROSS, MEASUREMENTS, count_unit
from grading_core.standards.fit import CLOSEST_PUBLISHED_CM, fit_name
from grading_core.unknown import is_unknown, shown, told
from grading_core.wording import counted, size_run

ESTIMATED = Saying("warning.estimated_body", measure=word("measure"), sizes=NAMES)
BELOW_PUBLISHED_FITS = Saying("warning.ease_below_published_fits", ease=LENGTH)
NOTHING_TO_KNIT = Saying("warning.nothing_to_knit", measure=word("measure"), unit=TOKEN)

_NO_EASE = Fraction(0)
_ACROSS = frozenset(ACROSS)


def grade_sizes(request: SizeGradingRequest) -> SizeGrading:
    """Counts and finished measurements of every size, and the size runs that a pattern prints.

    Raises ContradictionError as `grade_bodies` does.

    >>> from grading_core.gauge import Gauge
    >>> gauge = Gauge.over(Fraction(22), Fraction(31), Fraction(10))
    >>> request = SizeGradingRequest(
    ...     gauge=gauge, body_table="women", labels=("S", "M"), ease={"bust": Fraction(12)})
    >>> run = grade_sizes(request).runs["bust"]
    >>> run.stitches, run.finished_cm, run.finished_inch
    ('211 (233)', '96 (106)', '37 3/4 (41 3/4)')
    """
    sizes = grade_bodies(request)
    return SizeGrading(sizes, _runs(sizes), tuple(_remarks(request, sizes)))


def grade_bodies(request: SizeGradingRequest) -> tuple[GradedSize, ...]:
    """Counts and finished measurements alone, of every size that is answered, in the order asked.

    Raises ContradictionError for what `size_bodies` refuses, for an answer of sizes that aren't there, for ease or a
    rule on a measurement that no size has, for a list of ease of the wrong length, and where ease leaves nothing to
    knit.

    >>> from grading_core.gauge import Gauge
    >>> from grading_core.sizes.request import per_size, SentSize
    >>> gauge = Gauge.over(Fraction(22), Fraction(31), Fraction(10))
    >>> body = SentSize("S", {"bust": Fraction(84)})
    >>> request = SizeGradingRequest(gauge=gauge, sizes=(body,), ease={"bust": Fraction(12)})
    >>> bust = grade_bodies(request)[0].measurements["bust"]
    >>> bust.stitches, float(round(bust.finished, 2)), float(round(bust.difference, 2))
    (211, 95.91, -0.09)
    """
    return graded(request, sound(grading_problems(request)))


def graded(
    request: SizeGradingRequest, bodies: Sequence[SizeBody], wanted: Sequence[Measurement] = MEASUREMENTS
) -> tuple[GradedSize, ...]:
    """The same of bodies that are known.

    request: what is asked. bodies: from `grading_problems`, of which there are none. wanted: the measurements to grade.
    """
    names = tuple(name for name in wanted if any(name in body.values for body in bodies))
    eases = {name: per_size(request.ease.get(name, _NO_EASE), len(bodies)) for name in names}
    rules = {name: request.count_rules.get(name, NEAREST) for name in names}
    return tuple(
        _graded(request.gauge, body, {name: ease[index] for name, ease in eases.items() if name in body.values}, rules)
        for index, body in enumerate(bodies)
        if is_answered(body.label, request.answer_sizes)
    )


@check
def grading_problems(
    request: SizeGradingRequest, wanted: Collection[Measurement] = MEASUREMENTS
) -> Check[tuple[SizeBody, ...]]:
    """What contradicts itself in a grading; makes the bodies, as `body_problems` does.

    request: any. wanted: the measurements to grade.
    """
    eased = told(lambda: {*wanted, *request.ease})
    bodies = yield from body_problems(request, MEASUREMENTS if is_unknown(eased) else eased)
    yield from answer_size_problems(request.answer_sizes, told(lambda: [body.label for body in bodies]))
    used = told(measured, request)
    yield from _eases_problems(request, bodies, used)
    yield from _rules_problems(request, used)
    return bodies


def estimate_remarks(
    bodies: Mapping[str, Mapping[Measurement, BodyValue]], names: Sequence[Measurement], path: Path | None
) -> Iterator[Remark]:
    """One remark for each measurement whose body is an estimate in some sizes.

    bodies: by label, in the order of the sizes. names: of the measurements that are used. path: of the table in the
    request, None where it isn't sent.

    >>> wrist = {"wrist": BodyValue(Fraction(20), "estimated")}
    >>> [remark.message.values["sizes"] for remark in estimate_remarks({"M": wrist, "L": wrist}, ["wrist"], None)]
    [('M', 'L')]
    """
    for name in names:
        labels = [label for label, values in bodies.items() if name in values and values[name].origin == "estimated"]
        if labels:
            yield Remark(WarningCode.ESTIMATED_BODY, ESTIMATED(measure=name, sizes=tuple(labels)), path=path)


def _graded(
    gauge: Gauge, body: SizeBody, ease: Mapping[Measurement, Fraction], rules: Mapping[Measurement, CountRule]
) -> GradedSize:
    across, along = gauge.stitches_per_cm.as_integer_ratio(), gauge.rows_per_cm.as_integer_ratio()
    measurements = {}
    for name, value in body.values.items():
        if name not in ease:
            continue
        is_across = name in _ACROSS
        target = value.cm + ease[name] if ease[name] else value.cm
        # in whole numbers from here on: an answer has hundreds of measurements
        (count_of, cm_of), (long, parts) = across if is_across else along, target.as_integer_ratio()
        count = rules[name].round_ratio(long * count_of, parts * cm_of)
        measurements[name] = GradedMeasurement(
            body=value,
            ease=ease[name],
            target=target,
            stitches=count if is_across else None,
            rows=None if is_across else count,
            finished=Fraction(count * cm_of, count_of),
        )
    fit = fit_name(ease["bust"]) if "bust" in ease else None
    return GradedSize(body.label, measurements, fit)


def _runs(sizes: Sequence[GradedSize]) -> dict[Measurement, PrintedRuns]:
    """Every measurement that any size has as size runs."""
    printed, runs = printing(), {}
    for name in MEASUREMENTS:
        cells = [size.measurements.get(name) for size in sizes]
        if any(cells):
            counts = size_run([None if cell is None else cell.counted for cell in cells])
            runs[name] = PrintedRuns(
                stitches=counts if name in _ACROSS else None,
                rows=None if name in _ACROSS else counts,
                finished_cm=size_run([None if cell is None else printed.cm(cell.finished) for cell in cells]),
                finished_inch=size_run([None if cell is None else printed.inches(cell.finished) for cell in cells]),
            )
    return runs


@check
def _eases_problems(
    request: SizeGradingRequest, bodies: Sequence[SizeBody], used: Collection[Measurement]
) -> Check[None]:
    for name in request.ease:
        yield from _ease_problems(request, name, bodies, used)


@check
def _rules_problems(request: SizeGradingRequest, used: Collection[Measurement]) -> Check[None]:
    for name in request.count_rules:
        yield from _unused(used, name, "count_rules", "to count")


@check
def _unused(used: Collection[Measurement], name: Measurement, field: str, purpose: str) -> Check[bool]:
    """A measurement that no size has; makes whether it is one."""
    if name in used:
        return False
    yield Problem((field, name), ProblemCode.UNUSED_MEASUREMENT, f"No size has a {name} {purpose}.")
    return True


@check
def _ease_problems(
    request: SizeGradingRequest, name: Measurement, bodies: Sequence[SizeBody], used: Collection[Measurement]
) -> Check[None]:
    if (yield from _unused(used, name, "ease", "to add ease to")) is True:
        return
    ease, sizes = request.ease[name], len(bodies)
    if isinstance(ease, tuple) and len(ease) != sizes:
        detail = f"has {counted(len(ease), 'value')} for {counted(sizes, 'size')}."
        yield Problem(("ease", name), ProblemCode.WRONG_NUMBER_OF_VALUES, detail)
        return
    for index, (body, of_size) in enumerate(zip(bodies, per_size(ease, sizes), strict=True)):
        if not is_unknown(of_size) and of_size.numerator >= 0:
            continue
        path: Path = ("ease", name, index) if isinstance(ease, tuple) else ("ease", name)
        yield from _target_problems(body, name, of_size, path)


@check
def _target_problems(body: SizeBody, name: Measurement, ease: Fraction, path: Path) -> Check[None]:
    value = body.values.get(name)
    if value and value.cm + ease <= 0:
        yield Problem(path, ProblemCode.NOTHING_LEFT, f"This ease leaves nothing of the {name} of {shown(body.label)}.")


def _remarks(request: SizeGradingRequest, sizes: Sequence[GradedSize]) -> Iterator[Remark]:
    bodies = {size.label: {name: cell.body for name, cell in size.measurements.items()} for size in sizes}
    yield from estimate_remarks(bodies, MEASUREMENTS, ("body_table",))
    for size in sizes:
        bust = size.measurements.get("bust")
        if bust and bust.ease < CLOSEST_PUBLISHED_CM:
            message = BELOW_PUBLISHED_FITS(ease=CLOSEST_PUBLISHED_CM)
            yield Remark(WarningCode.EASE_BELOW_PUBLISHED_FITS, message, size.label, ("ease", "bust"))
        for name, cell in size.measurements.items():
            if cell.counted == 0:
                message = NOTHING_TO_KNIT(measure=name, unit=count_unit(name))
                yield Remark(WarningCode.NOTHING_TO_KNIT, message, size.label, ("count_rules", name))
