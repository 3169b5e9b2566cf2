"""Sizes as they are sent, graded or refused."""

from fractions import Fraction

import pytest

from grading_core.errors import ContradictionError
from grading_core.gauge import Gauge
from grading_core.sizes.grading import grade_sizes
from grading_core.sizes.request import SentSize, SizeGradingRequest

GAUGE = Gauge.over(Fraction(22), Fraction(31), Fraction(10))
INCH = Fraction("2.54")


def sent(label, **measurements):
    return SentSize(label, {name: Fraction(str(value)) for name, value in measurements.items()})


def grade(*sizes, gauge=GAUGE, **options):
    return grade_sizes(SizeGradingRequest(gauge=gauge, sizes=sizes or None, **options))


def problems(*sizes, **options):
    with pytest.raises(ContradictionError) as refused:
        grade(*sizes, **options)
    return [(problem.path, problem.detail) for problem in refused.value.problems]


def paths(*sizes, **options):
    return [path for path, _ in problems(*sizes, **options)]
