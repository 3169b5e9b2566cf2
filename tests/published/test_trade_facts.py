"""What every knitter knows and no publication was found for: common practice, no source."""

from fractions import Fraction

import pytest

from grading_core.gauge import Gauge, compare
from grading_core.sections import Sections
from grading_core.yoke.adjustment import adjust
from grading_core.yoke.request import Adjustment, Options, WrittenYoke, Yoke
from grading_core.yoke.result import METHODS, Schedule
from grading_core.yoke.schedule import schedule
from service.language import LANGUAGES
from tests.oracles.knitter import knit, knit_to_split

GAUGE = Gauge.over(Fraction(22), Fraction(31), Fraction(10))
NECK = Sections(31, 31, 11)
DEEP = WrittenYoke(Yoke("M", 64, NECK, NECK.after((28, 28, 20))))


def test_four_raglan_lines_of_three_stitches_with_increases_on_either_side_grow_by_eight() -> None:
    # Common practice, no source.
    made = schedule(Yoke("M", 2, NECK, NECK.after((1, 1, 1))), Options(line_stitches=3), GAUGE)
    assert isinstance(made, Schedule)
    ((_, sections),) = knit(NECK, made.increase_rounds)
    assert sections.total(3) - NECK.total(3) == 8
    # eight edges, two at each of the four lines, whose twelve stitches stay as they are
    assert sections.total(3) - sections.total() == NECK.total(3) - NECK.total() == 12


@pytest.mark.parametrize(("stitches", "needle", "words"), [(24, "larger", "tighter"), (20, "smaller", "looser")])
def test_a_knitter_goes_one_or_two_needle_sizes_up_when_tight_and_down_when_loose(
    stitches: int, needle: str, words: str
) -> None:
    # Common practice, no source.
    compared = compare(Gauge.over(Fraction(stitches), Fraction(31), Fraction(10)), GAUGE)
    assert (compared.needle, compared.fabric) == (needle, words)
    assert f"one or two sizes {needle}" in LANGUAGES["en-US"].text(compared.advice)


def test_only_a_new_swatch_can_tell_whether_the_needle_is_right() -> None:
    # Common practice, no source.
    assert "new swatch" in LANGUAGES["en-US"].text(
        compare(Gauge.over(Fraction(24), Fraction(31), Fraction(10)), GAUGE).advice
    )


def test_a_yoke_too_deep_is_mended_by_doubled_body_increases_and_the_split_keeps_its_counts() -> None:
    # Common practice, no source.
    made = adjust(DEEP, Adjustment(rounds=46), Options(line_stitches=3), GAUGE)
    assert made.recommended == "double_body"
    mended = made.options[METHODS.index("double_body")].schedule
    assert isinstance(mended, Schedule)
    # 23 even rounds for 28 body increases: 5 of them doubled
    assert mended.doubled_rounds == 5
    assert knit_to_split(mended) == DEEP.yoke.split
    assert all(worked.sleeve <= 1 for worked in mended.increase_rounds)


def test_a_yoke_too_shallow_is_mended_by_plain_rounds_before_the_split() -> None:
    # Common practice, no source.
    made = adjust(DEEP, Adjustment(rounds=70), Options(line_stitches=3), GAUGE)
    assert made.recommended == "plain_rounds"
    deeper = made.options[METHODS.index("plain_rounds")].schedule
    assert isinstance(deeper, Schedule)
    assert isinstance(made.before.schedule, Schedule)
    assert deeper.plain_rounds_at_end == made.before.schedule.plain_rounds_at_end + 6
