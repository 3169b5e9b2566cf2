"""Knitting needle sizes: millimetres, US numbers and the old UK and Canadian numbers.

Millimetres are the needle's diameter and settle any doubt: the numbers are names, and charts
disagree about some of them.
"""

from __future__ import annotations

from dataclasses import dataclass

from grading_core.fraction import Fraction
from grading_core.standards.sources import CYC_CREDIT, Source, Table

_YARN_SYSTEM = Source(
    "cyc_needles",
    "Craft Yarn Council, Standard Yarn Weight System",
    "prints this pair of millimetres and US number; general charts agree unless noted",
    CYC_CREDIT,
)
_THREE_CHARTS = Source(
    "three_charts", "A chart of a UK yarn retailer (2011) and two general needle-size articles", "all agree"
)
_THREE_SYSTEMS = Source(
    "three_systems", "A general needle-size article with a chart of three systems", "one chart only"
)
_GENERAL = Source("general_charts", "General charts of millimetres and US numbers", "several")
_UK = Source("uk_chart", "A chart of a UK yarn retailer (2011)", "not in every chart")


@dataclass(frozen=True, slots=True, kw_only=True)
class Needle:
    """One needle size.

    mm: the diameter. us, uk: the US and the old UK and Canadian number, or None where the size
    has none. source: where the row is from. note: a disagreement between charts.
    """

    mm: Fraction
    us: str | None
    uk: str | None
    source: Source
    note: str | None = None


def _needle(mm: str, us: str | None, uk: str | None, source: Source, note: str | None = None) -> Needle:
    return Needle(mm=Fraction(mm), us=us, uk=uk, source=source, note=note)


NEEDLES = Table(
    (
        _needle("1", "00000", "19", _THREE_SYSTEMS),
        _needle("1.25", "0000", "18", _THREE_SYSTEMS),
        _needle("1.5", "000", "17", _YARN_SYSTEM, "the UK number is from one chart only"),
        _needle("1.75", "00", "15", _THREE_SYSTEMS),
        _needle("2", "0", "14", _THREE_CHARTS),
        _needle("2.25", "1", "13", _YARN_SYSTEM, "one chart misprints US 0 here"),
        _needle("2.5", "1.5", None, _GENERAL, "several charts give no US number"),
        _needle("2.75", "2", "12", _THREE_CHARTS),
        _needle("3", "2.5", "11", _GENERAL, "the US number is disputed, the UK number agreed"),
        _needle("3.25", "3", "10", _YARN_SYSTEM),
        _needle("3.5", "4", None, _THREE_CHARTS),
        _needle("3.75", "5", "9", _YARN_SYSTEM),
        _needle("4", "6", "8", _THREE_CHARTS),
        _needle("4.5", "7", "7", _YARN_SYSTEM, "the only size with one number in both systems"),
        _needle("5", "8", "6", _THREE_CHARTS),
        _needle("5.5", "9", "5", _YARN_SYSTEM),
        _needle("6", "10", "4", _THREE_CHARTS),
        _needle("6.5", "10.5", "3", _THREE_CHARTS),
        _needle("7", None, "2", _THREE_CHARTS, "US 10.75 is sometimes seen (from memory)"),
        _needle("7.5", None, "1", _THREE_CHARTS),
        _needle("8", "11", "0", _YARN_SYSTEM),
        _needle("9", "13", "00", _THREE_CHARTS),
        _needle("10", "15", "000", _THREE_CHARTS),
        _needle("12.75", "17", None, _YARN_SYSTEM, "other charts give 12 or 12.5 mm for US 17"),
        _needle("15", "19", None, _THREE_CHARTS),
        _needle("19", "35", None, _GENERAL),
        _needle("20", "36", None, _UK),
        _needle("25", "50", None, _GENERAL),
        _needle("35", "70", None, _THREE_SYSTEMS),
    )
)
"""Thinnest first."""
