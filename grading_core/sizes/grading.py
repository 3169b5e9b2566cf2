"""Size grading: body plus ease at a gauge gives the counts and finished measurements of every size.

Source: the arithmetic of the craft. Target = body + ease; count = target x gauge, rounded by the
measurement's rule; finished = count / gauge; difference = finished - target, which is reported and
never hidden.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from fractions import Fraction
from typing import Literal

from grading_core.errors import Path, Problem, Remark, raise_if_any
from grading_core.gauge import Gauge
from grading_core.rounding import NEAREST, CountRule
from grading_core.sizes.bodies import BodyValue, SentSize, SizeBody, size_bodies
from grading_core.standards import Measurement, Within
from grading_core.standards.body import ACROSS, MEASUREMENTS
from grading_core.standards.fit import CLOSEST_PUBLISHED_CM, fit_name
from grading_core.units import InchConvention, to_printed_decimal, to_printed_inches
from grading_core.wording import counted, listed, size_run

CountUnit = Literal["stitches", "rows"]

_NO_EASE = Fraction(0)
_ACROSS = frozenset(ACROSS)


@dataclass(frozen=True, slots=True)
class EvenSteps:
    """Ease that goes from the first size sent to the last in even steps. first, last: in cm."""

    first: Fraction
    last: Fraction


Ease = Fraction | tuple[Fraction, ...] | EvenSteps
"""Ease in cm: one for all sizes, one per size, or even steps."""


@dataclass(frozen=True, slots=True, kw_only=True)
class SizeGradingRequest:
    """What to grade.

    gauge: of the fabric. body_table, labels, sizes, within: the bodies, as `size_bodies` takes
    them. ease: by measurement, none where it is missing. count_rules: by measurement, the nearest
    whole number where it is missing.
    """

    gauge: Gauge
    body_table: str | None = None
    labels: tuple[str, ...] | None = None
    sizes: tuple[SentSize, ...] | None = None
    within: Within = "middle"
    ease: Mapping[Measurement, Ease] = field(default_factory=dict)
    count_rules: Mapping[Measurement, CountRule] = field(default_factory=dict)


@dataclass(frozen=True, slots=True, kw_only=True)
class GradedMeasurement:
    """One measurement of one size.

    body: with where it is from. ease, target, finished, difference: in cm. count: in the
    measurement's count unit.
    """

    body: BodyValue
    ease: Fraction
    target: Fraction
    count: int
    finished: Fraction
    difference: Fraction


@dataclass(frozen=True, slots=True)
class GradedSize:
    """One size. measurements: by name, in the order of `MEASUREMENTS`.

    fit: the published name for the ease at the bust, None without a bust.
    """

    label: str
    measurements: Mapping[Measurement, GradedMeasurement]
    fit: str | None


@dataclass(frozen=True, slots=True)
class SizeGrading:
    """Every size, in the order asked. measurements: the names that any size has."""

    sizes: tuple[GradedSize, ...]
    measurements: tuple[Measurement, ...]
    remarks: tuple[Remark, ...]


@dataclass(frozen=True, slots=True)
class PrintedRuns:
    """One measurement as size runs. counts: stitches or rows; the finished lengths as rounded for print."""

    counts: str
    finished_cm: str
    finished_inch: str


def count_unit(measurement: Measurement) -> CountUnit:
    """What a measurement is counted in: stitches across, rows along.

    >>> count_unit("bust"), count_unit("armhole_depth")
    ('stitches', 'rows')
    """
    return "stitches" if measurement in _ACROSS else "rows"


def spread_ease(ease: Ease, sizes: int) -> tuple[Fraction, ...]:
    """The ease of each size, in cm.

    ease: one number, one per size, or even steps. sizes: how many; a single size takes the first
    end of even steps.

    Raises ValueError where a list has another length.

    >>> [float(cm) for cm in spread_ease(EvenSteps(Fraction(20), Fraction(25)), 3)]
    [20.0, 22.5, 25.0]
    """
    if isinstance(ease, Fraction):
        return (ease,) * sizes
    if isinstance(ease, EvenSteps):
        step = (ease.last - ease.first) / max(1, sizes - 1)
        return tuple(ease.first + step * index for index in range(sizes))
    if len(ease) != sizes:
        raise ValueError(f"{len(ease)} values for {sizes} sizes")
    return ease


def grade_sizes(request: SizeGradingRequest) -> SizeGrading:
    """Counts and finished measurements of every size.

    Raises ContradictionError for what `size_bodies` refuses, for ease or a rule on a measurement
    that no size has, for a list of ease of the wrong length, and where ease leaves nothing to knit.

    >>> gauge = Gauge.over(Fraction(22), Fraction(31), Fraction(10))
    >>> body = SentSize("S", {"bust": Fraction(84)})
    >>> request = SizeGradingRequest(gauge=gauge, sizes=(body,), ease={"bust": Fraction(12)})
    >>> bust = grade_sizes(request).sizes[0].measurements["bust"]
    >>> bust.count, float(round(bust.finished, 2)), float(round(bust.difference, 2))
    (211, 95.91, -0.09)
    """
    bodies = size_bodies(request.body_table, request.labels, request.sizes, request.within)
    names = tuple(name for name in MEASUREMENTS if any(name in body.values for body in bodies))
    raise_if_any(_name_problems(request, names, len(bodies)))
    eases = {name: spread_ease(request.ease.get(name, _NO_EASE), len(bodies)) for name in names}
    raise_if_any(_target_problems(request, bodies, eases))
    sizes = tuple(
        _graded(request, body, {name: eases[name][index] for name in body.values})
        for index, body in enumerate(bodies)
    )
    return SizeGrading(sizes, names, tuple(_remarks(request, sizes)))


def printed_runs(
    grading: SizeGrading,
    cm_step: Fraction = Fraction(1, 2),
    inch_denominator: int = 4,
    convention: InchConvention = "exact",
) -> dict[Measurement, PrintedRuns]:
    """Every measurement as the size runs that a pattern prints.

    grading: from `grade_sizes`. cm_step: to what centimetres are rounded. inch_denominator: the
    finest printed fraction of an inch. convention: how cm become inches.

    >>> gauge = Gauge.over(Fraction(22), Fraction(31), Fraction(10))
    >>> request = SizeGradingRequest(
    ...     gauge=gauge, body_table="women", labels=("S", "M"), ease={"bust": Fraction(12)})
    >>> printed_runs(grade_sizes(request))["bust"]
    PrintedRuns(counts='211 (233)', finished_cm='96 (106)', finished_inch='37 3/4 (41 3/4)')
    """
    runs = {}
    for name in grading.measurements:
        cells = [size.measurements.get(name) for size in grading.sizes]
        lengths = [None if cell is None else cell.finished for cell in cells]
        runs[name] = PrintedRuns(
            size_run([None if cell is None else cell.count for cell in cells]),
            size_run([None if cm is None else to_printed_decimal(cm, cm_step) for cm in lengths]),
            size_run(
                [
                    None if cm is None else to_printed_inches(cm, inch_denominator, convention)
                    for cm in lengths
                ]
            ),
        )
    return runs


def estimate_remarks(
    bodies: Mapping[str, Mapping[Measurement, BodyValue]], names: Sequence[Measurement], path: Path | None
) -> Iterator[Remark]:
    """One remark for each measurement whose body is an estimate in some sizes.

    bodies: by label, in the order of the sizes. names: of the measurements that are used. path: of the table in the
    request, None where it isn't sent.

    >>> wrist = {"wrist": BodyValue(Fraction(20), "estimated")}
    >>> [remark.message for remark in estimate_remarks({"M": wrist, "L": wrist}, ["wrist"], None)]
    ['No published table reaches the wrist of M and L: it is an estimate. Compare it with a body.']
    """
    for name in names:
        labels = [
            label for label, values in bodies.items() if name in values and values[name].origin == "estimated"
        ]
        if labels:
            yield Remark(
                "estimated_body",
                f"No published table reaches the {name.replace('_', ' ')} of {listed(labels)}: it is an estimate. "
                "Compare it with a body.",
                path=path,
            )


def _graded(request: SizeGradingRequest, body: SizeBody, ease: Mapping[Measurement, Fraction]) -> GradedSize:
    across, along = request.gauge.stitches_per_cm, request.gauge.rows_per_cm
    measurements = {
        name: _measurement(
            value, ease[name], across if name in _ACROSS else along, request.count_rules.get(name, NEAREST)
        )
        for name, value in body.values.items()
    }
    fit = fit_name(ease["bust"]) if "bust" in ease else None
    return GradedSize(body.label, measurements, fit)


def _measurement(body: BodyValue, ease: Fraction, per_cm: Fraction, rule: CountRule) -> GradedMeasurement:
    target = body.cm + ease if ease else body.cm
    count = rule.round(target * per_cm)
    finished = Fraction(count * per_cm.denominator, per_cm.numerator)
    return GradedMeasurement(
        body=body, ease=ease, target=target, count=count, finished=finished, difference=finished - target
    )


def _name_problems(
    request: SizeGradingRequest, names: Sequence[Measurement], sizes: int
) -> Iterator[Problem]:
    for name, ease in request.ease.items():
        if name not in names:
            yield Problem(("ease", name), f"No size has a {name} to add ease to.")
        elif isinstance(ease, tuple) and len(ease) != sizes:
            yield Problem(("ease", name), f"has {counted(len(ease), 'value')} for {counted(sizes, 'size')}.")
    for name in request.count_rules:
        if name not in names:
            yield Problem(("count_rules", name), f"No size has a {name} to count.")


def _target_problems(
    request: SizeGradingRequest, bodies: Sequence[SizeBody], eases: Mapping[Measurement, Sequence[Fraction]]
) -> Iterator[Problem]:
    for name, ease in request.ease.items():
        if min(eases[name]) >= 0:
            continue
        for index, body in enumerate(bodies):
            value = body.values.get(name)
            if value and value.cm + eases[name][index] <= 0:
                path: Path = ("ease", name, index) if isinstance(ease, tuple) else ("ease", name)
                yield Problem(path, f"This ease leaves nothing of the {name} of {body.label}.")


def _remarks(request: SizeGradingRequest, sizes: Sequence[GradedSize]) -> Iterator[Remark]:
    bodies = {size.label: {name: cell.body for name, cell in size.measurements.items()} for size in sizes}
    yield from estimate_remarks(bodies, MEASUREMENTS, ("body_table",))
    for size in sizes:
        bust = size.measurements.get("bust")
        if bust and bust.ease < CLOSEST_PUBLISHED_CM:
            yield Remark(
                "ease_below_published_fits",
                "The ease at the bust is below the closest published fit, -4 in (-10 cm).",
                size.label,
                ("ease", "bust"),
            )
        for name, cell in size.measurements.items():
            if cell.count == 0:
                yield Remark(
                    "nothing_to_knit",
                    f"The {name} rounds to no {count_unit(name)} at all: choose a smaller multiple.",
                    size.label,
                    ("count_rules", name),
                )
