"""Published raglans whose counts close: what is cast on, increased or decreased, and left."""

from fractions import Fraction

import pytest

from grading_core.counts.result import Counts
from grading_core.gauge import Gauge
from grading_core.sections import Sections
from grading_core.shaping_plans import RowPlan, RowSchedule, along_rows
from grading_core.yoke.request import Options, Yoke
from grading_core.yoke.result import Schedule
from grading_core.yoke.schedule import schedule
from tests.oracles.knitter import knit, knit_to_split
from tests.oracles.told import told_alone

GAUGE = Gauge.over(Fraction(20), Fraction(28), Fraction(10))  # nothing here depends on it


def yoke_of(neck: Sections, increases: tuple[int, int, int], rounds: int, options: Options) -> Schedule:
    made = schedule(Yoke("", rounds, neck, neck.after(increases)), options, GAUGE)
    assert isinstance(made, Schedule)
    return made


# Knitty, Spring 2007, page PATTleaf: a top-down cardigan in six sizes. Cast on 64 as 1/14/34/14/1: a stitch of each
# front, the sleeves, the back. A first increase row to 72, then more of them; sleeves and body before underarms.
OPEN_FRONT = Sections(back=34, front=1 + 1, sleeve=14)
SIX_SIZES = list(
    zip(
        (18, 21, 24, 27, 30, 33),
        (216, 240, 264, 288, 312, 336),
        (52, 58, 64, 70, 76, 82),
        (112, 124, 136, 148, 160, 172),
        strict=True,
    )
)


def test_the_six_size_raglan_casts_on_64_and_has_72_after_its_first_increase_row() -> None:
    assert OPEN_FRONT.total() == 64
    (first, *_) = knit(OPEN_FRONT, yoke_of(OPEN_FRONT, (19, 19, 19), 38, Options()).increase_rounds)
    assert first[1].total() == 72


@pytest.mark.parametrize(("more", "total", "sleeve", "body"), SIX_SIZES)
def test_the_six_size_raglan_arrives_at_its_printed_counts(more: int, total: int, sleeve: int, body: int) -> None:
    made = yoke_of(OPEN_FRONT, (1 + more,) * 3, 2 * (1 + more), Options())
    split = knit_to_split(made)
    assert len(made.increase_rounds) == 1 + more
    assert (split.total(), split.sleeve, split.back + split.front) == (total, sleeve, body)


# Lion Brand, "Family of Sweaters", nine sizes, worked from the hem up: decrease 2 every 2nd row, then every 4th row.
TWO_RATES = list(
    zip(
        (25, 31, 37, 41, 47, 51, 53, 57, 59),
        (6, 9, 9, 11, 13, 15, 15, 16, 18),
        (1, 0, 2, 2, 1, 1, 1, 1, 0),
        (11, 13, 15, 15, 19, 19, 21, 23, 23),
        strict=True,
    )
)


@pytest.mark.parametrize(("stitches", "every_2nd", "every_4th", "left"), TWO_RATES)
def test_the_nine_size_raglan_is_decreased_at_its_two_printed_rates(
    stitches: int, every_2nd: int, every_4th: int, left: int
) -> None:
    made = along_rows(RowPlan(name="back", stitches=stitches, to=left, rows=2 * every_2nd + 4 * every_4th, step=2))
    assert isinstance(made, RowSchedule)
    printed = ((2, every_2nd), (4, every_4th))
    assert made.intervals == tuple((every, times) for every, times in printed if times)
    assert made.plain_before == made.plain_after == 0


@pytest.mark.parametrize(("stitches", "every_2nd", "every_4th", "left"), TWO_RATES)
def test_the_nine_size_raglan_read_from_the_neck_down_is_increased_in_the_same_rows(
    stitches: int, every_2nd: int, every_4th: int, left: int
) -> None:
    rows = 2 * every_2nd + 4 * every_4th
    decreased, row = [], 0
    for interval in [2] * every_2nd + [4] * every_4th:
        row += interval
        decreased.append(row)
    neck, increases = Sections(left, left, 4), every_2nd + every_4th
    options = Options(step=2, first_increase_round=1, spacing="widest_first")
    made = yoke_of(neck, (increases,) * 3, rows, options)
    # the last row of the decreases is the first of the increases
    assert [worked.round for worked in made.increase_rounds] == [rows + 1 - number for number in reversed(decreased)]
    assert knit_to_split(made).back == stitches


# A leaflet of the 1950s or 1960s (title not in the text seen), a seamed raglan in ten sizes. Per size: back cast on;
# bound off at each underarm; decreases every 2nd row; left. Sleeve cast on; increases; stitches at the underarm.
LEAFLET = list(
    zip(
        (102, 108, 114, 120, 126, 86, 90, 96, 100, 106),
        (7, 8, 9, 10, 11, 4, 4, 5, 5, 6),
        (30, 31, 32, 33, 34, 26, 27, 28, 29, 30),
        (28, 30, 32, 34, 36, 26, 28, 30, 32, 34),
        (42, 44, 46, 48, 50, 40, 42, 44, 44, 46),
        (18, 19, 20, 21, 22, 12, 12, 13, 14, 15),
        (78, 82, 86, 90, 94, 64, 66, 70, 72, 76),
        strict=True,
    )
)


@pytest.mark.parametrize(("back", "bound_off", "decreases", "left", "cuff", "increases", "sleeve"), LEAFLET)
def test_the_seamed_raglan_is_the_yoke_from_its_neck_with_underarms_bound_off(
    back: int, bound_off: int, decreases: int, left: int, cuff: int, increases: int, sleeve: int
) -> None:
    # From the neck down, what is bound off at both sides of a piece is the underarm that it gets; 4 stitches are left
    # of the sleeve in every size.
    neck = Sections(left, left, 4)
    split = knit_to_split(yoke_of(neck, (decreases,) * 3, 2 * decreases, Options()))
    assert split.back + 2 * bound_off == back
    assert split.sleeve + 2 * bound_off == sleeve


@pytest.mark.parametrize(("back", "bound_off", "decreases", "left", "cuff", "increases", "sleeve"), LEAFLET)
def test_the_seamed_raglan_is_decreased_in_every_second_row_without_a_rest(
    back: int, bound_off: int, decreases: int, left: int, cuff: int, increases: int, sleeve: int
) -> None:
    for cast_on, to in ((back, left), (sleeve, 4)):
        made = along_rows(RowPlan(name="piece", stitches=cast_on - 2 * bound_off, to=to, rows=2 * decreases, step=2))
        assert isinstance(made, RowSchedule)
        assert made.intervals == ((2, decreases),)


@pytest.mark.parametrize(("back", "bound_off", "decreases", "left", "cuff", "increases", "sleeve"), LEAFLET)
def test_the_seamed_raglans_sleeve_is_increased_as_often_as_printed(
    back: int, bound_off: int, decreases: int, left: int, cuff: int, increases: int, sleeve: int
) -> None:
    made = along_rows(RowPlan(name="sleeve", stitches=cuff, to=sleeve, rows=120))
    assert isinstance(made, RowSchedule)
    assert len(made.shaping_rows) == increases


# The percentage system after Elizabeth Zimmermann, in its raglan form (reported by Claudia Krisniski, 1999, and by a
# yarn shop's article, 2010): of K = 200, the sleeve in the yoke 66 - 16 = 50, back and front 100 - 16 = 84 each, at the
# join 2 x (50 + 84) = 268, at the neck 80.


def test_the_percentage_systems_raglan_closes_between_yoke_body_and_sleeves() -> None:
    counts = Counts(
        neck=Sections(36, 36, 4), split=Sections(84, 84, 50), underarm=16, rounds=66, line_to_body=0, line_to_sleeve=0
    )
    assert (counts.cast_on, counts.yoke_total, counts.body, counts.sleeve) == (80, 268, 200, 66)


def test_the_percentage_systems_raglan_needs_one_round_that_is_not_full() -> None:
    # 268 - 80 = 188 is 23 full rounds of 8 and 4 stitches more: a round at the body edges alone.
    made = yoke_of(Sections(36, 36, 4), (24, 24, 23), 66, Options(fewer_edge="late"))
    assert (made.yoke.neck.total(), made.yoke.split.total()) == (80, 268)
    added = [4 * (worked.back + worked.sleeve) for worked in made.increase_rounds]
    assert added == [4] + [8] * 23


def test_a_yoke_of_356_to_a_neck_of_96_says_where_the_odd_four_stitches_go() -> None:
    # K = 276: 260 = 32 full rounds of 8 and 4 more (derived from the printed 356 and 96).
    made = yoke_of(Sections(40, 40, 8), (33, 33, 32), 80, Options())
    assert (made.yoke.neck.total(), made.yoke.split.total()) == (96, 356)
    body_only = [worked.round for worked in made.increase_rounds if not worked.sleeve]
    assert len(body_only) == 1
    told = [values for id, values in told_alone(made.told_by_rounds()) if id == "yoke.rounds_increase"]
    assert [("sleeve" in each["once"], each["more"], each["times"]) for each in told if each["more"] != 8] == [
        (False, 4, 1)
    ]
