"""Single figures of the built-in body tables."""

from __future__ import annotations

from grading_core.standards import body_table


def value(table, label, measurement, within="middle"):
    """One measurement of one size in cm, exactly."""
    (size,) = [size for size in body_table(table).sizes if size.label == label]
    return size.measurements[measurement].value_cm(within)
