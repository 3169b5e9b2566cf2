"""Yarn weights: the standard categories, and the charts that add metres per 100 g and wraps per inch.

The standard names categories by gauge and needle only. Metres per 100 g come from a magazine's
chart, published in yards per pound, and from two retail guides, which are usage and no standard;
they overlap, and each is kept whole.
"""

from __future__ import annotations

from dataclasses import dataclass

from grading_core.standards.ranges import Range, figure
from grading_core.standards.sources import CYC_YARN, Source, Sourced
from grading_core.units import CM_PER_INCH

SPINNERS_CHART = Source(
    "spinners_chart",
    "Spin Off magazine, one-page Yarn Standards chart",
    "adds wraps per inch and yards per pound to the standard categories; 1 yd/lb = 0.201591 m/100 g",
)
UK_TRADE = Source("uk_trade", "UK hand-dyer's article on yarn weights", "October 2024; a retail guide, not a standard")
SOUTHERN_USAGE = Source(
    "southern_usage",
    "Yarn comparison chart of Australia, New Zealand and the UK on a knitting information site",
    "a retail guide, not a standard",
)


@dataclass(frozen=True, slots=True)
class NeedleNumbers:
    """A range of US needle numbers. low, high: None at an end that the publication leaves open."""

    low: str | None
    high: str | None


@dataclass(frozen=True, slots=True, kw_only=True)
class YarnCategory:
    """A category of the standard.

    category: 0 to 7. name: as published. yarn_types: the trade's names. stitches_per_4_inches: of
    stockinette. needle_mm: recommended. needle_us: the same in US numbers. note: a contradiction
    between editions.
    """

    category: int
    name: str
    yarn_types: str
    stitches_per_4_inches: Range
    needle_mm: Range
    needle_us: NeedleNumbers
    source: Source
    note: str | None = None

    @property
    def stitches_per_10_cm(self) -> Range:
        """Of stockinette, exactly converted; printed beside one another, 4 in and 10 cm are often taken as equal."""
        return self.stitches_per_4_inches.times(10 / (4 * CM_PER_INCH))


@dataclass(frozen=True, slots=True, kw_only=True)
class YarnThickness:
    """One row of a chart that says how thick a category's yarn is.

    category: of the standard. name: the chart's own. metres_per_100g: the range; where the chart
    prints yards_per_pound, converted and rounded to whole metres. wraps_per_inch: the range.
    """

    category: int
    name: str
    metres_per_100g: Range
    wraps_per_inch: Range
    yards_per_pound: Range | None = None


@dataclass(frozen=True, slots=True)
class YarnChart:
    """A chart that says how thick the yarn of a category is. rows: thinnest first."""

    source: Source
    rows: tuple[YarnThickness, ...]


@dataclass(frozen=True, slots=True)
class YarnWeights:
    """The categories of the standard, thinnest first, and the charts, which overlap and disagree."""

    categories: tuple[YarnCategory, ...]
    charts: tuple[YarnChart, ...]

    @property
    def sources(self) -> tuple[Source, ...]:
        """The publications of categories and charts, each once."""
        sourced: tuple[Sourced, ...] = (*self.categories, *self.charts)
        return tuple(dict.fromkeys(row.source for row in sourced))


def _category(
    number: int,
    name: str,
    yarn_types: str,
    stitches: str,
    needle_mm: str,
    needle_us: tuple[str | None, str | None],
    note: str | None = None,
) -> YarnCategory:
    return YarnCategory(
        category=number,
        name=name,
        yarn_types=yarn_types,
        stitches_per_4_inches=figure(stitches),
        needle_mm=figure(needle_mm),
        needle_us=NeedleNumbers(*needle_us),
        source=CYC_YARN,
        note=note,
    )


def _thickness(category: int, name: str, metres: str, wraps: str, yards_per_pound: str | None = None) -> YarnThickness:
    yards = figure(yards_per_pound) if yards_per_pound else None
    return YarnThickness(
        category=category,
        name=name,
        metres_per_100g=figure(metres),
        wraps_per_inch=figure(wraps),
        yards_per_pound=yards,
    )


YARN_WEIGHTS = YarnWeights(
    categories=(
        _category(
            0,
            "Lace",
            "fingering; 10-count crochet thread",
            "33-40",
            "1.5-2.25",
            ("000", "1"),
            "lace is often worked on larger needles, so the gauge is nominal",
        ),
        _category(1, "Super fine", "sock; fingering; baby", "27-32", "2.25-3.25", ("1", "3")),
        _category(2, "Fine", "sport; baby", "23-26", "3.25-3.75", ("3", "5")),
        _category(
            3,
            "Light",
            "DK; light worsted",
            "21-24",
            "3.75-4.5",
            ("5", "7"),
            "the publisher's guide misprints US 3 to 5; its chart says 5 to 7, which is 3.75 to 4.5 mm",
        ),
        _category(
            4,
            "Medium",
            "worsted; afghan; aran",
            "16-20",
            "4.5-5.5",
            ("7", "9"),
            "one reprint has 5.2 mm; the publisher says 5.5",
        ),
        _category(5, "Bulky", "chunky; craft; rug", "12-15", "5.5-8", ("9", "11")),
        _category(
            6,
            "Super bulky",
            "super bulky; roving",
            "7-11",
            "8-12.75",
            ("11", "17"),
            "6 to 11 stitches and 8 mm or larger before category 7 was added in 2015",
        ),
        _category(7, "Jumbo", "jumbo; roving", "6-", "12.75+", ("17", None), "added in 2015"),
    ),
    charts=(
        YarnChart(
            SPINNERS_CHART,
            (
                _thickness(0, "Lace", "484+", "18+", "2401+"),
                _thickness(1, "Super fine", "383-484", "16-18", "1901-2400"),
                _thickness(2, "Fine", "242-383", "14-15", "1201-1900"),
                _thickness(3, "Light", "182-242", "12-13", "901-1200"),
                _thickness(4, "Medium", "121-181", "10-11", "601-900"),
                _thickness(5, "Bulky", "81-121", "8-9", "401-600"),
                _thickness(6, "Super bulky", "81-", "7-", "400-"),
            ),
        ),
        YarnChart(
            UK_TRADE,
            (
                _thickness(0, "Cobweb (1 ply)", "800+", "40+"),
                _thickness(0, "Laceweight (2 ply)", "600-800", "30-40"),
                _thickness(1, "3 ply / light fingering", "500-600", "20-30"),
                _thickness(1, "4 ply / fingering / sock", "350-450", "14-24"),
                _thickness(2, "Sport (5 ply)", "250-350", "12-18"),
                _thickness(3, "DK (8 ply)", "200-250", "11-15"),
                _thickness(4, "Aran / worsted (10-12 ply)", "120-200", "9-12"),
                _thickness(5, "Chunky (12-16 ply)", "100-130", "6-8"),
                _thickness(6, "Super chunky", "100-", "6-"),
            ),
        ),
        YarnChart(
            SOUTHERN_USAGE,
            (
                _thickness(0, "lace (2-3 ply)", "600-800", "18+"),
                _thickness(1, "fingering (3-4 ply)", "400-480", "16"),
                _thickness(2, "sport (4 ply)", "300-400", "14"),
                _thickness(3, "DK (8 ply)", "240-300", "13"),
                _thickness(4, "worsted (10 ply)", "200-240", "12"),
                _thickness(4, "aran (12 ply)", "120-160", "10-11"),
                _thickness(5, "chunky", "110-130", "10"),
                _thickness(5, "bulky (14 ply)", "90-100", "9-10"),
                _thickness(6, "super bulky", "100-", "8-"),
            ),
        ),
    ),
)
