"""The identities of the counts, by hand."""

from dataclasses import replace
from fractions import Fraction

from grading_core.counts.request import QUANTITIES, Targets
from grading_core.counts.result import Counts
from grading_core.sections import Sections

# lines of 3 stitches, one of them to the body and two to the sleeve
COUNTS = Counts(
    neck=Sections(30, 28, 9), split=Sections(80, 80, 47), underarm=11, rounds=58, line_to_body=1, line_to_sleeve=2
)


def test_neck_yoke_body_and_sleeves_have_the_lines_and_underarms_that_are_theirs():
    # 30 + 28 + 18 + 12; 80 + 80 + 94 + 12; 160 + 4 + 22; 47 + 4 + 11
    assert (COUNTS.cast_on, COUNTS.yoke_total, COUNTS.body, COUNTS.sleeve) == (88, 266, 186, 62)


def test_the_front_has_more_than_the_back_by_what_it_has_gained_more():
    wider = replace(COUNTS, split=Sections(76, 84, 47))
    assert (wider.front_extra, wider.body, COUNTS.front_extra) == (8, COUNTS.body, 0)


def test_each_difference_is_the_count_less_the_target_of_its_name():
    targets = (90, 29, 28, "9.5", 186, "60.25", 12, 58)
    sent = Targets(label="M", **dict(zip(QUANTITIES, map(Fraction, targets), strict=True)))
    differences = COUNTS.less(sent)
    assert differences.label == "M"
    assert [getattr(differences, name) for name in QUANTITIES] == [-2, 1, 0, -0.5, 0, 1.75, -1, 0]
