"""Needles, yarn weights, heads and fits against the published charts.

Sources of `data/needles.csv`: a UK yarn retailer's chart (2011) and general needle-size articles, and the pairs that
the Craft Yarn Council's Standard Yarn Weight System prints. Of `data/yarn_weights.csv`: that system; Spin Off
magazine's one-page Yarn Standards chart (yards per pound turned into metres per 100 g); a UK hand-dyer's article
of October 2024; a comparison chart of Australia, New Zealand and the UK.
"""

import csv
from fractions import Fraction
from pathlib import Path

import pytest

from grading_core.standards.fit import FITS, fit_name
from grading_core.standards.heads import HEADS
from grading_core.standards.needles import NEEDLES
from grading_core.standards.yarn_weights import SPINNERS_CHART, YARN_WEIGHTS

DATA = Path(__file__).parent / "data"


def lines(name):
    return list(csv.DictReader((DATA / name).read_text().splitlines()))


def number(text):
    return Fraction(text) if text else None


def test_every_needle_is_as_charted():
    charted = [(Fraction(line["mm"]), line["us"] or None, line["uk"] or None) for line in lines("needles.csv")]
    assert [(needle.mm, needle.us, needle.uk) for needle in NEEDLES.rows] == charted


@pytest.mark.parametrize(("mm", "us"), [("4.5", "7"), ("4", "6")])
def test_common_needles_have_their_us_numbers(mm, us):
    assert [needle.us for needle in NEEDLES.rows if needle.mm == Fraction(mm)] == [us]


def test_every_yarn_category_is_as_published():
    charted = [line for line in lines("yarn_weights.csv") if line["chart"] == "cyc_yarn"]
    for line, kept in zip(charted, YARN_WEIGHTS.categories, strict=True):
        assert str(kept.category) == line["category"]
        assert kept.name == line["name"]
        gauge, needle = kept.stitches_per_4_inches, kept.needle_mm
        assert [gauge.low, gauge.high] == [number(line["sts_per_4in_low"]), number(line["sts_per_4in_high"])]
        assert [needle.low, needle.high] == [number(line["needle_mm_low"]), number(line["needle_mm_high"])]
        assert kept.needle_us.low == (line["needle_us_low"] or None)
        assert kept.needle_us.high == (line["needle_us_high"] or None)


def test_every_row_of_the_thickness_charts_is_as_published():
    charts = {line["chart"] for line in lines("yarn_weights.csv")} - {"cyc_yarn"}
    assert {chart.source.key for chart in YARN_WEIGHTS.charts} == charts
    for chart in YARN_WEIGHTS.charts:
        charted = [line for line in lines("yarn_weights.csv") if line["chart"] == chart.source.key]
        for line, kept in zip(charted, chart.rows, strict=True):
            assert (str(kept.category), kept.name) == (line["category"], line["name"])
            metres, wraps = kept.metres_per_100g, kept.wraps_per_inch
            assert [metres.low, metres.high] == [number(line["m_per_100g_low"]), number(line["m_per_100g_high"])]
            assert [wraps.low, wraps.high] == [number(line["wpi_low"]), number(line["wpi_high"])]


def test_yards_per_pound_become_metres_per_100_grams():
    """1 yd = 0.9144 m and 1 lb = 453.59237 g exactly (international yard and pound, 1959)."""
    per_yard_per_pound = Fraction("0.9144") * 100 / Fraction("453.59237")
    (spinners,) = [chart for chart in YARN_WEIGHTS.charts if chart.source is SPINNERS_CHART]
    assert len(spinners.rows) == 7
    for kept in spinners.rows:
        assert (kept.yards_per_pound.low or kept.yards_per_pound.high) is not None
        for end in ("low", "high"):
            yards, metres = getattr(kept.yards_per_pound, end), getattr(kept.metres_per_100g, end)
            assert (yards is None) == (metres is None)
            if yards is not None:
                assert abs(yards * per_yard_per_pound - metres) <= 1, kept.name


def test_the_us_numbers_of_yarn_categories_are_those_of_their_needles():
    us = {needle.mm: needle.us for needle in NEEDLES.rows}
    for kept in YARN_WEIGHTS.categories:
        for end in ("low", "high"):
            mm = getattr(kept.needle_mm, end)
            assert mm is None or us[mm] == getattr(kept.needle_us, end), kept.name


def test_eighteen_stitches_is_a_worsted_gauge():
    """Common practice, no source, that 18 stitches and 26 rows per 10 cm suit worsted; the category is published."""
    [medium] = [kept for kept in YARN_WEIGHTS.categories if "worsted" in kept.yarn_types.split("; ")]
    per_4_inches = Fraction(18, 10) * Fraction("10.16")
    assert medium.stitches_per_4_inches.low <= per_4_inches <= medium.stitches_per_4_inches.high


def test_heads_are_as_published():
    """Craft Yarn Council, Standards & Guidelines, head circumference chart, booklet of 2018, inches."""
    assert [(head.group, head.inch.low, head.inch.high) for head in HEADS.rows] == [
        ("preemie", 9, 12),
        ("baby", 14, 16),
        ("toddler", 16, 18),
        ("child", 18, 20),
        ("tween", 20, 22),
        ("adult woman", 21, 23),
        ("adult man", 22, 24),
    ]


def test_fit_bands_are_as_published():
    """Craft Yarn Council, Standards & Guidelines, fit and ease chart, current edition, inches and cm."""
    current = [
        (band.fit, band.inch.low, band.inch.high, band.cm.low, band.cm.high) for band in FITS.rows if band.current
    ]
    assert current == [
        ("very close fitting", -4, -2, -10, -5),
        ("close fitting", 0, 0, 0, 0),
        ("classic fit", 2, 4, 5, 10),
        ("loose fit", 4, 6, 10, 15),
        ("oversized", 6, None, 15, None),
    ]


@pytest.mark.parametrize("band", [band for band in FITS.rows if band.current], ids=lambda band: band.fit)
def test_every_published_ease_inside_a_band_has_its_name_in_either_unit(band):
    lowest = [band.cm.low, band.inch.low * Fraction("2.54")]
    for ease in (*lowest, max(lowest) + Fraction("0.01") if band.fit != "close fitting" else lowest[0]):
        assert fit_name(ease) == band.fit
