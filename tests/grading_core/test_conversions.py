"""Gauge conversions, worked by hand: 23 stitches and 32 rows to 10 cm beside a pattern's 22 and 31."""

from fractions import Fraction

from grading_core.conversions import ConversionRequest, Conversions, Item, convert
from grading_core.gauge import Gauge
from grading_core.rounding import CountRule

OWN = Gauge.over(Fraction(23), Fraction(32), Fraction(10))
PATTERN = Gauge.over(Fraction(22), Fraction(31), Fraction(10))


def converted(*items: Item, pattern: Gauge | None = None) -> Conversions:
    return convert(ConversionRequest(OWN, items, pattern))


def test_a_width_is_counted_in_stitches_and_a_length_in_rows() -> None:
    # 107 x 2.3 = 246.1, nearest multiple of 4: 248; 24 x 3.2 = 76.8, nearest: 77
    width, length = converted(Item("across", Fraction(107), CountRule(4)), Item("along", Fraction(24))).items
    assert (width.stitches, width.rows, width.exact) == (248, None, Fraction("246.1"))
    assert (length.stitches, length.rows, length.exact) == (None, 77, Fraction("76.8"))


def test_a_difference_is_what_the_count_makes_less_the_length_asked_for() -> None:
    (width,) = converted(Item("across", Fraction(107), CountRule(4))).items
    assert (width.length_cm, width.difference_cm) == (Fraction(2480, 23), Fraction(2480, 23) - 107)


def test_a_written_count_keeps_the_patterns_length() -> None:
    # 96 x 23 / 22 = 100.36; 74 x 32 / 31 = 76.39
    items = Item("stitches", Fraction(96)), Item("rows", Fraction(74))
    stitches, rows = converted(*items, pattern=PATTERN).items
    assert (stitches.regauged, rows.regauged) == (100, 76)
    assert stitches.pattern_length_cm == Fraction(960, 22)
    assert stitches.regauged_difference_cm == Fraction(1000, 23) - Fraction(960, 22)
    assert stitches.difference_cm == Fraction(960, 23) - Fraction(960, 22)
    assert rows.regauged_difference_cm == Fraction(760, 32) - Fraction(740, 31)


def test_without_a_pattern_a_written_count_has_a_length_and_nothing_to_differ_from() -> None:
    conversions = converted(Item("rows", Fraction(32)))
    (rows,) = conversions.items
    assert (rows.rows, rows.length_cm) == (32, 10)
    assert (rows.difference_cm, rows.regauged, conversions.comparison) == (None, None, None)


def test_items_come_back_in_their_order_under_their_names() -> None:
    items = [Item("across", Fraction(40), name=name) for name in ("hip", "bust", "neck")]
    assert [item.name for item in converted(*items).items] == ["hip", "bust", "neck"]


def test_a_written_count_off_its_own_rule_gets_a_word_at_its_place() -> None:
    items = [Item("stitches", Fraction(count), CountRule(4, 2)) for count in (98, 97)]
    (remark,) = converted(*items).remarks
    assert (remark.code, remark.path) == ("count_off_rule", ("items", 1, "stitches"))
    assert remark.message.values == {"count": 97, "multiple": 4, "plus": 2}


def test_a_length_too_short_for_a_stitch_gets_a_word_at_its_place() -> None:
    # 0.2 x 2.3 = 0.46, and 0.22 x 2.3 = 0.506
    items = [Item("across", Fraction(length)) for length in ("0.22", "0.2")]
    (remark,) = converted(*items).remarks
    assert (remark.code, remark.path) == ("rounded_to_nothing", ("items", 1, "across"))


def test_a_gauge_far_from_the_patterns_is_said_with_its_percentage() -> None:
    # 26 stitches of 22: 4 / 22 = 18.2 % more; 18 of 22: as many fewer; 24 of 22: 9.1 %
    for own, told in ((26, "tighter"), (18, "looser"), (24, None)):
        request = ConversionRequest(Gauge.over(Fraction(own), Fraction(31), Fraction(10)), (), PATTERN)
        remarks = convert(request).remarks
        assert [remark.code for remark in remarks] == ["gauge_far_from_pattern"] * (told is not None)
        assert [remark.message.values for remark in remarks] == [{"percent": Fraction("18.2"), "fabric": told}] * len(
            remarks
        )
