from decimal import Decimal
from fractions import Fraction

from hypothesis import given
from hypothesis import strategies as st

from grading_core.gauge import Gauge, Swatch, compare, regauge_rows, regauge_stitches
from grading_core.rounding import CountRule
from grading_core.standards.needles import NEEDLES
from grading_core.standards.yarn_weights import YARN_WEIGHTS
from grading_core.units import to_cm, to_places

counts = st.integers(0, 2000)
swatches = st.decimals(min_value=8, max_value=60, places=1)
lengths = st.decimals(min_value=0, max_value=200, places=2)
rules = st.builds(CountRule, st.integers(1, 12), st.integers(0, 11), st.sampled_from(["nearest", "up", "down"]))


def gauge_of(stitches: Decimal | int, rows: Decimal | int) -> Gauge:
    return Gauge.over(Fraction(stitches), Fraction(rows), Fraction(10))


@given(swatches, swatches, lengths, rules)
def test_inches_and_centimetres_give_the_same_count(
    stitches: Decimal, rows: Decimal, inches: Decimal, rule: CountRule
) -> None:
    in_inches = Gauge.over(Fraction(stitches), Fraction(rows), to_cm(4, "in"))
    in_cm = Gauge.over(Fraction(stitches), Fraction(rows), to_cm(Decimal("10.16")))
    centimetres = float(inches * Decimal("2.54"))
    assert in_inches.stitches(to_cm(float(inches), "in"), rule) == in_cm.stitches(to_cm(centimetres), rule)
    assert in_inches.rows(to_cm(float(inches), "in"), rule) == in_cm.rows(to_cm(centimetres), rule)


@given(swatches, swatches, st.integers(1, 40))
def test_a_swatch_counted_over_twice_the_span_is_the_same_gauge(stitches: Decimal, rows: Decimal, factor: int) -> None:
    wide = Gauge.over(Fraction(stitches) * factor, Fraction(rows) * factor, Fraction(10 * factor))
    assert wide == gauge_of(stitches, rows)


def test_rows_may_be_counted_over_a_span_of_their_own() -> None:
    gauge = Gauge.over(Fraction(22), Fraction(62), Fraction(10), Fraction(20))
    assert gauge.rows_per_cm == Fraction(31, 10)
    assert gauge.stitches_per_cm == Fraction(22, 10)


@given(swatches, counts)
def test_the_width_of_a_count_takes_just_that_count(stitches: Decimal, count: int) -> None:
    gauge = gauge_of(stitches, stitches)
    assert gauge.stitches(gauge.width_cm(count)) == count
    assert gauge.rows(gauge.height_cm(count)) == count


@given(swatches, lengths)
def test_a_count_is_never_further_from_the_length_than_half_a_stitch(stitches: Decimal, length: Decimal) -> None:
    gauge = gauge_of(stitches, stitches)
    missed = gauge.width_cm(gauge.stitches(Fraction(length))) - Fraction(length)
    assert abs(missed) <= gauge.width_cm(1) / 2


@given(swatches, swatches, counts, st.integers(2, 9))
def test_scaling_gauge_and_counts_together_changes_no_length(
    stitches: Decimal, rows: Decimal, count: int, factor: int
) -> None:
    coarse, fine = gauge_of(stitches, rows), gauge_of(stitches * factor, rows * factor)
    assert fine.width_cm(count * factor) == coarse.width_cm(count)
    assert fine.height_cm(count * factor) == coarse.height_cm(count)


@given(swatches, swatches, counts)
def test_a_regauged_count_keeps_the_length_to_half_a_stitch(own: Decimal, pattern: Decimal, count: int) -> None:
    own_gauge, pattern_gauge = gauge_of(own, own), gauge_of(pattern, pattern)
    for regauged in (regauge_stitches(count, own_gauge, pattern_gauge), regauge_rows(count, own_gauge, pattern_gauge)):
        change = own_gauge.width_cm(regauged) - pattern_gauge.width_cm(count)
        assert abs(change) <= own_gauge.width_cm(1) / 2


@given(swatches, counts, rules)
def test_a_regauged_count_keeps_its_rule(own: Decimal, count: int, rule: CountRule) -> None:
    assert rule.accepts(regauge_stitches(count, gauge_of(own, 30), gauge_of(22, 31), rule))


def test_the_contracts_example_of_a_conversion_comes_out_as_printed_there() -> None:
    # The worked request of the HTTP contract: 23 x 32 over 10 cm beside the pattern's 22 x 31; recomputed by hand:
    # 107 cm x 2.3 = 246.1, and 248 / 2.3 = 107.826; 96 / 2.3 = 41.739, 96 / 2.2 = 43.636, 96 x 23 / 22 = 100.36.
    own, pattern = gauge_of(23, 32), gauge_of(22, 31)
    assert own.stitches(Fraction(107), CountRule(4)) == 248
    assert to_places(own.width_cm(248)) == 107.83
    assert to_places(own.width_cm(96)) == 41.74
    assert to_places(pattern.width_cm(96)) == 43.64
    assert regauge_stitches(96, own, pattern) == 100
    assert to_places(compare(own, pattern).stitches_ratio, 4) == 1.0455
    assert to_places(compare(own, pattern).rows_ratio, 4) == 1.0323


@given(swatches, swatches, swatches, swatches)
def test_the_fabric_is_judged_by_stitches(own: Decimal, pattern: Decimal, own_rows: Decimal, rows: Decimal) -> None:
    compared = compare(gauge_of(own, own_rows), gauge_of(pattern, rows))
    expected = "tighter" if own > pattern else "looser" if own < pattern else "same"
    assert compared.fabric == expected


def test_matching_stitches_with_other_rows_keep_the_needle() -> None:
    compared = compare(gauge_of(22, 30), gauge_of(22, 31))
    assert compared.needle == "none"
    assert compared.advice.id == "advice.rows_differ"


def test_the_same_gauge_is_knitted_as_written() -> None:
    assert compare(gauge_of(22, 31), gauge_of(22, 31)).advice.id == "advice.as_written"


def test_within_a_tenth_another_needle_is_tried_and_beyond_it_another_yarn_or_size() -> None:
    pattern = gauge_of(20, 28)
    assert [compare(gauge_of(own, 28), pattern).needle for own in (18, 19, 20, 21, 22)] == [
        "smaller",
        "smaller",
        "none",
        "larger",
        "larger",
    ]
    for own in (Decimal("17.9"), Decimal("22.1")):
        far = compare(gauge_of(own, 28), pattern)
        assert far.beyond_needles
        assert far.needle == "none"
        assert far.advice.id == "advice.beyond_needles"


def test_the_published_yarn_standard_gives_a_needle_size_about_half_a_tenth() -> None:
    # its gauges and needles of one category, thickest needle against thinnest; the sizes between from the needle table
    mm = [needle.mm for needle in NEEDLES.rows]
    a_size = {}
    for yarn in YARN_WEIGHTS.categories[1:5]:
        needles, stitches = yarn.needle_mm, yarn.stitches_per_4_inches
        steps = mm.index(needles.high) - mm.index(needles.low)
        a_size[yarn.name] = round(100 * ((float(stitches.high) / float(stitches.low)) ** (1 / steps) - 1))
    assert a_size == {"Super fine": 4, "Fine": 6, "Light": 7, "Medium": 12}


def test_a_swatch_is_counted_over_any_span() -> None:
    # 22 stitches over 10 cm are 22.352 over 4 in
    assert gauge_of(22, 31).swatch(Fraction("10.16")) == Swatch(Fraction("22.352"), Fraction("31.496"))
