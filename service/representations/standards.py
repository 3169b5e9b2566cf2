"""Answers about the built-in published tables."""

from __future__ import annotations

from collections.abc import Iterable
from fractions import Fraction
from typing import Any

from grading_core.sizes.grading import count_unit
from grading_core.standards import BODY_TABLES, BodyRow, BodyTable
from grading_core.standards.body import MEANINGS, MEASUREMENTS
from grading_core.standards.fit import FIT_BANDS
from grading_core.standards.heads import HEADS
from grading_core.standards.needles import NEEDLES, Needle
from grading_core.standards.ranges import Range
from grading_core.standards.sources import Source
from grading_core.standards.yarn_weights import (
    YARN_CATEGORIES,
    YARN_THICKNESSES,
    YarnCategory,
    YarnThickness,
)
from service.lengths import LengthWriter

_FIT_NOTES = (
    "A band starts at its lower end, in whichever column that comes first, so that a published figure in either unit "
    "lies in its own band.",
    "A border that two bands share belongs to the looser one; a gap between bands is divided halfway, a tie to the "
    "looser one.",
    "Less ease than the closest band has is still called by its name, with a warning.",
)


def standards(_nothing: Any, _length: LengthWriter) -> dict[str, Any]:
    """The answer of `GET /v1/standards`."""
    return {
        "body_tables": [
            {
                "name": table.name,
                "title": table.title,
                "labels": list(table.sizes),
                "href": f"/v1/standards/body-tables/{table.name}",
            }
            for table in BODY_TABLES.values()
        ],
        "measurements": [
            {"name": name, "meaning": MEANINGS[name], "counted_in": count_unit(name)} for name in MEASUREMENTS
        ],
        "other_tables": [
            {"title": "Bands of ease and their names", "href": "/v1/standards/fits"},
            {"title": "Head girth by age group", "href": "/v1/standards/heads"},
            {"title": "Needle sizes", "href": "/v1/standards/needles"},
            {"title": "Yarn weights", "href": "/v1/standards/yarn-weights"},
        ],
    }


def body_table(table: BodyTable, length: LengthWriter) -> dict[str, Any]:
    """The answer of `GET /v1/standards/body-tables/{name}`."""
    return {
        "name": table.name,
        "title": table.title,
        "sizes": [
            {
                "label": label,
                "measurements": {name: _body_row(rows[index], length) for name, rows in table.rows.items()},
            }
            for index, label in enumerate(table.sizes)
        ],
        "notes": list(table.notes),
        "sources": sources(row.source for rows in table.rows.values() for row in rows),
    }


def fits(_nothing: Any, _length: LengthWriter) -> dict[str, Any]:
    """The answer of `GET /v1/standards/fits`."""
    return {
        "bands": [
            {
                "fit": band.fit,
                "inch": _range(band.inch),
                "cm": _range(band.cm),
                "current": band.current,
                "source": band.source.key,
            }
            for band in FIT_BANDS
        ],
        "notes": list(_FIT_NOTES),
        "sources": sources(band.source for band in FIT_BANDS),
    }


def heads(_nothing: Any, _length: LengthWriter) -> dict[str, Any]:
    """The answer of `GET /v1/standards/heads`."""
    return {
        "heads": [
            {"group": head.group, "inch": _range(head.inch), "source": head.source.key} for head in HEADS
        ],
        "sources": sources(head.source for head in HEADS),
    }


def needles(_nothing: Any, _length: LengthWriter) -> dict[str, Any]:
    """The answer of `GET /v1/standards/needles`."""
    return {
        "needles": [_needle(needle) for needle in NEEDLES],
        "sources": sources(needle.source for needle in NEEDLES),
    }


def yarn_weights(_nothing: Any, _length: LengthWriter) -> dict[str, Any]:
    """The answer of `GET /v1/standards/yarn-weights`."""
    return {
        "categories": [_category(category) for category in YARN_CATEGORIES],
        "charts": [
            {"source": source.key, "rows": [_thickness(row) for row in rows]}
            for source, rows in YARN_THICKNESSES.items()
        ],
        "sources": sources([*(category.source for category in YARN_CATEGORIES), *YARN_THICKNESSES]),
    }


def _body_row(row: BodyRow, length: LengthWriter) -> dict[str, Any]:
    return {
        **({"inch": _range(row.inch)} if row.inch else {}),
        **({"cm": _range(row.cm)} if row.cm else {}),
        "middle": length(row.value_cm()),
        "origin": row.origin,
        "source": row.source.key,
        **_note(row.note),
    }


def _needle(needle: Needle) -> dict[str, Any]:
    return {
        "mm": _number(needle.mm),
        "us": needle.us,
        "uk": needle.uk,
        "source": needle.source.key,
        **_note(needle.note),
    }


def _category(category: YarnCategory) -> dict[str, Any]:
    first, last = category.needle_us
    return {
        "category": category.category,
        "name": category.name,
        "yarn_types": category.yarn_types,
        "stitches_per_4_inches": _range(category.stitches_per_4_inches),
        "needle_mm": _range(category.needle_mm),
        "needle_us": {**({"low": first} if first else {}), **({"high": last} if last else {})},
        "source": category.source.key,
        **_note(category.note),
    }


def _thickness(row: YarnThickness) -> dict[str, Any]:
    return {
        "category": row.category,
        "name": row.name,
        "metres_per_100g": _range(row.metres_per_100g),
        "wraps_per_inch": _range(row.wraps_per_inch),
        **({"yards_per_pound": _range(row.yards_per_pound)} if row.yards_per_pound else {}),
    }


def _range(published: Range) -> dict[str, float]:
    ends = {"low": published.low, "high": published.high}
    return {end: _number(value) for end, value in ends.items() if value is not None}


def _number(value: Fraction) -> float:
    return value.numerator if value.denominator == 1 else float(value)


def _note(note: str | None) -> dict[str, str]:
    return {"note": note} if note else {}


def sources(named: Iterable[Source]) -> list[dict[str, str]]:
    """Each source once, with its edition and the credit that it asks for."""
    return [
        {
            "key": source.key,
            "name": source.name,
            "edition": source.edition,
            **({"credit": source.credit} if source.credit else {}),
        }
        for source in dict.fromkeys(named)
    ]
