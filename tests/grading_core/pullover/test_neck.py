"""The neck of one size: what fits in it, its band, and the head; expected values by hand."""

from dataclasses import replace
from fractions import Fraction

from grading_core.counts.result import Counts
from grading_core.errors import Impossible
from grading_core.gauge import Gauge
from grading_core.pullover.bodies import Wearer
from grading_core.pullover.neck import knit_band, pass_head, shape_neck, shoulder_remarks
from grading_core.pullover.request import BandWishes, Fabrics, NeckWishes
from grading_core.pullover.result import Neck
from grading_core.sections import Sections
from grading_core.yoke.request import Options
from tests.grading_core.pullover.test_targets import SMALL

GAUGE = Gauge(Fraction(2), Fraction(3))
FABRICS = Fabrics(plain=GAUGE, rib=Gauge(Fraction(2), Fraction(4)), rounds=GAUGE)
COUNTS = Counts(
    neck=Sections(34, 34, 12), split=Sections(90, 90, 50), underarm=14, rounds=60, line_to_body=1, line_to_sleeve=1
)


def shape(counts=COUNTS, options=Options(), usual=Fraction("2.5"), **wishes) -> Neck | Impossible:  # noqa: B008
    wishes = NeckWishes(**wishes)
    raised, dropped = wishes.heights_cm(usual)
    target = replace(SMALL, raise_height=raised, front_drop=dropped)
    return shape_neck(counts, target, wishes, options, FABRICS)


def test_the_back_is_raised_as_usual_unless_asked_otherwise():
    # 2.5 cm are 7.5 rows: four pairs of short rows, 8/3 cm
    assert shape().raised.height_cm == Fraction(8, 3)
    assert shape(raise_height=Fraction(0)).raised is None
    assert shape(front_drop=Fraction(2)).raised is None
    assert shape(lower_front="none").raised is None


def test_both_ways_are_worked_in_one_neck_the_short_rows_flat_over_what_is_cast_on():
    neck = shape(lower_front="both", usual=Fraction(4))
    # 2 cm of each are 6 rows; the front has half of 34 in its middle, 17, made 18 as its parity wants: 8 at each side,
    # of which 3 right-side rows increase 3
    assert (neck.drop.rows, neck.drop.each_side, neck.raised.rows) == (6, 5, 6)
    assert (neck.cast_on.way, neck.raised.way) == ("flat", "flat")
    # the last turns lie before the ends of the 5 stitches
    assert neck.raised.front_stitches == 4


def test_a_neck_of_which_nothing_is_worked_flat_is_joined_at_once():
    assert shape(way="flat").cast_on.way == "flat"
    assert shape(way="flat", raise_height=Fraction(0)).cast_on.way == "joined"
    # a third of a centimetre is one row of 3, and half a pair is rounded up: less is none
    assert shape(way="flat", raise_height=Fraction(1, 4)).cast_on.way == "joined"
    # a front of two stitches can't be parted
    tiny = replace(COUNTS, neck=Sections(34, 2, 12))
    assert shape(tiny, way="flat", lower_front="front_drop").cast_on.way == "joined"


def test_a_height_that_is_not_asked_is_lowered_to_what_fits():
    # one stitch of sleeve, two of line, and an eighth of 34: 7 turns
    narrow = replace(COUNTS, neck=Sections(34, 34, 1))
    assert shape(narrow, usual=Fraction(40)).raised.pairs == 7
    assert isinstance(shape(narrow, raise_height=Fraction(40)), Impossible)
    # 60 rounds of yoke
    assert shape(lower_front="front_drop", usual=Fraction(40)).drop.rows == 58
    # a front of two stitches can't be parted
    tiny = replace(COUNTS, neck=Sections(34, 2, 12))
    assert shape(tiny, lower_front="front_drop").drop is None
    assert isinstance(shape(tiny, front_drop=Fraction(2)), Impossible)


def test_a_neck_wider_than_half_the_cross_back_deserves_a_word():
    # 44 cm round are 14 cm across
    assert shoulder_remarks(Wearer("S", {"cross_back": Fraction(28)}, child=True, young=True), Fraction(44)) == ()
    assert shoulder_remarks(Wearer("S", {}, child=True, young=True), Fraction(44)) == ()
    (remark,) = shoulder_remarks(Wearer("S", {"cross_back": Fraction(27)}, child=True, young=True), Fraction(44))
    assert (remark.code, remark.size) == ("neck_wider_than_shoulders", "S")
    assert (remark.message.values["neck"], remark.message.values["held"]) == (44, Fraction(27, 2))
    assert round(remark.message.values["width"], 1) == 14


def test_the_increases_fall_on_right_side_rows_of_the_drop():
    # of 5 cm, 15 rows, with increases in every second round from the second on: even rows
    assert shape(front_drop=Fraction(5)).drop.rows == 16
    odd = shape(options=Options(first_increase_round=3), front_drop=Fraction(5), raise_height=Fraction(2))
    assert odd.drop.rows == 15
    # its first row follows the last short row, and its last one is on the right side
    assert odd.raised.begins == "wrong"


def test_a_drop_as_deep_as_the_yoke_is_impossible_and_one_of_two_rounds_less_is_not():
    refused = shape(front_drop=Fraction(20))
    (nearest,) = refused.nearest
    assert (nearest.field, nearest.value) == ("neck.front_drop", Fraction(58, 3))
    assert isinstance(shape(front_drop=nearest.value), Neck)


def test_a_raise_with_more_turns_than_stitches_is_impossible_and_the_nearest_one_is_not():
    # turns lie in 12 stitches of sleeve, 2 of line, and an eighth of 34
    refused = shape(raise_height=Fraction(40))
    (nearest,) = refused.nearest
    assert (nearest.field, nearest.value) == ("neck.raise_height", Fraction(2 * (12 + 2 + 4), 3))
    assert isinstance(shape(raise_height=nearest.value), Neck)


def test_a_band_is_1_in_high_at_the_rib_s_gauge_unless_asked_otherwise():
    neck = shape()
    assert knit_band(neck, BandWishes(), FABRICS, None).rounds == 10
    # two layers of 3 cm, and the round of the fold
    folded = BandWishes(height=Fraction(3), construction="double_with_fold_round")
    assert knit_band(neck, folded, FABRICS, None).rounds == 2 * 12 + 1


def test_a_band_is_picked_up_round_the_dropped_front_too():
    dropped = shape(front_drop=Fraction(4))
    # 12 rows, and two stitches for three of them, at each side of what is cast on
    picked_up = knit_band(dropped, BandWishes(), FABRICS, None).picked_up
    assert picked_up.stitches == dropped.cast_on.stitches + dropped.drop.centre + 2 * 8


def test_the_head_is_looked_at_where_it_is_known():
    neck = shape()
    band = knit_band(neck, BandWishes(), FABRICS, None)
    known = Wearer("S", {"head": Fraction(56)}, child=False, young=False)
    # 100 stitches are 50 cm
    assert pass_head(known, neck, band, Fraction(12, 100)).passes
    assert not pass_head(known, neck, band, Fraction(11, 100)).passes
    assert pass_head(Wearer("S", {}, child=False, young=False), neck, band, Fraction(0)) is None
