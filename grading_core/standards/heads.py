"""Head girth by age group, as published for hats."""

from __future__ import annotations

from dataclasses import dataclass

from grading_core.standards.ranges import Range, figure
from grading_core.standards.sources import CYC_HEADS, Source, Table


@dataclass(frozen=True, slots=True)
class HeadRow:
    """One age group. inch: its range as published; no centimetres were seen."""

    group: str
    inch: Range
    source: Source


HEADS = Table(
    tuple(
        HeadRow(group, figure(inches), CYC_HEADS)
        for group, inches in (
            ("preemie", "9-12"),
            ("baby", "14-16"),
            ("toddler", "16-18"),
            ("child", "18-20"),
            ("tween", "20-22"),
            ("adult woman", "21-23"),
            ("adult man", "22-24"),
        )
    )
)
"""Youngest first."""
