"""Bodies: completed from a table, and in the order that their sizes tell."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from grading_core.sizes.bodies import size_bodies
from grading_core.sizes.request import BodiesRequest, SentSize
from tests.grading_core.sizes.sent_sizes import INCH, grade, paths, problems, sent

# Bodies between sizes of a table


def test_a_body_halfway_between_two_sizes_has_measurements_halfway():
    # 35 in lies in the gap that the chart leaves between S (middle 33 in) and M (37 in)
    [size] = grade(sent("mine", bust="88.9"), body_table="women").sizes
    assert size.measurements["upper_arm"].body.cm == Fraction("10.625") * INCH
    assert size.measurements["waist"].body.cm == Fraction("27.375") * INCH


def test_interpolated_measurements_are_marked_and_sent_ones_are_not():
    cells = grade(sent("mine", bust=90, wrist=16), body_table="women").sizes[0].measurements
    assert not cells["bust"].body.interpolated
    assert not cells["wrist"].body.interpolated
    assert cells["wrist"].body.cm == 16
    assert cells["hip"].body.interpolated


@pytest.mark.parametrize(
    ("bust", "origin"),
    [
        ("94", "derived"),  # between M and L, both inside the surveyed chests of 75 to 120 cm
        ("118", "estimated"),  # between XL, inside, and 2X, outside
        ("130", "estimated"),
    ],
)
def test_an_interpolated_measurement_is_as_certain_as_the_less_certain_neighbour(bust, origin):
    cells = grade(sent("mine", bust=bust), body_table="women").sizes[0].measurements
    assert cells["wrist"].body.origin == origin
    assert cells["hip"].body.origin == "published"


@pytest.mark.parametrize("within", ["low", "middle", "high"])
@pytest.mark.parametrize("table", ["women", "men", "children", "babies"])
def test_a_body_that_is_a_size_of_the_table_gets_that_size(table, within):
    for body in size_bodies(BodiesRequest(body_table=table, within=within)):
        mine = SentSize("mine", {"bust": body.values["bust"].cm})
        [again] = size_bodies(BodiesRequest(body_table=table, sizes=(mine,), within=within))
        assert {name: value.cm for name, value in again.values.items()} == {
            name: value.cm for name, value in body.values.items()
        }


@given(st.lists(st.fractions(71, 158, max_denominator=50), min_size=2, max_size=9, unique=True))
def test_interpolated_measurements_rise_with_the_bust(busts):
    sizes = [SentSize(f"bust {bust.numerator} of {bust.denominator}", {"bust": bust}) for bust in sorted(busts)]
    numbered = tuple(SentSize(f"{place}", size.measurements) for place, size in enumerate(sizes))
    bodies = size_bodies(BodiesRequest(body_table="women", sizes=numbered))
    for name in bodies[0].values:
        values = [body.values[name].cm for body in bodies]
        assert values == sorted(values), name


@pytest.mark.parametrize(("bust", "by"), [("70", "1 cm (0.39 in) below"), ("160", "2 cm (0.79 in) above")])
def test_a_body_outside_the_table_is_refused_with_the_size_and_by_how_much(bust, by):
    # the table's ends as published: 28 in beside 71 cm, and 62 in beside 158 cm
    [(path, detail)] = problems(sent("ok", bust=90), sent("mine", bust=bust), body_table="women")
    assert path == ("sizes", 1, "bust")
    assert "'mine'" in detail
    assert by in detail


def test_a_size_without_a_bust_is_not_completed_from_a_table():
    assert paths(sent("mine", hip=100), body_table="women") == [("sizes", 0)]


def test_the_ends_of_the_published_range_are_inside_the_table():
    ends = (sent("least", bust=71), sent("most", bust=158))
    bodies = size_bodies(BodiesRequest(body_table="women", sizes=ends))
    assert bodies[0].values["waist"].cm == 23 * INCH
    assert bodies[1].values["waist"].cm == 50 * INCH


# Sizes must rise


def test_a_measurement_that_falls_names_both_sizes_at_the_later_value():
    [(path, detail)] = problems(
        sent("S", bust=84, upper_arm="28.5"), sent("M", bust=94, upper_arm="27.5"), sent("L", bust=104, upper_arm=33)
    )
    assert path == ("sizes", 1, "upper_arm")
    assert "M has 27.5 cm" in detail
    assert "S, a smaller size, has 28.5 cm" in detail


@pytest.mark.parametrize(
    "name", ["bust", "waist", "hip", "upper_arm", "wrist", "neck", "head", "cross_back", "armhole_depth"]
)
def test_no_girth_nor_the_armhole_may_fall(name):
    smaller, larger = {"bust": 84, name: 50}, {"bust": 94, name: 49}
    assert paths(sent("S", **smaller), sent("M", **larger)) == [("sizes", 1, name)]


@pytest.mark.parametrize("name", ["arm_length", "back_waist_length"])
def test_lengths_of_arm_and_back_may_fall(name):
    grade(sent("S", bust=84, **{name: 50}), sent("M", bust=94, **{name: 49}))


@pytest.mark.parametrize(
    "labels", [("S", "M", "L"), ("XL", "2X", "3X"), ("34", "36", "38"), ("6 months", "12 months", "18 months")]
)
def test_a_bust_that_falls_against_the_labels_is_found_in_any_order(labels):
    small, middle, large = (sent(label, bust=bust) for label, bust in zip(labels, ("84", "49", "104"), strict=True))
    assert paths(small, middle, large) == [("sizes", 1, "bust")]
    assert paths(large, middle, small) == [("sizes", 1, "bust")]


def test_two_sizes_with_one_bust_are_refused_where_labels_rank_them():
    assert paths(sent("S", bust=84), sent("M", bust=84)) == [("sizes", 1, "bust")]
    grade(sent("regular", bust=84, arm_length=43), sent("tall", bust=84, arm_length=46))


def test_sizes_may_be_sent_in_any_order():
    grade(sent("L", bust=104, hip=110), sent("S", bust=84, hip=90), sent("M", bust=94, hip=100))


def test_a_sent_value_that_falls_from_an_interpolated_one_is_found():
    # the women's table has an upper arm of about 28 cm at a bust of 94
    wrong = paths(sent("S", bust=84, upper_arm=35), sent("M", bust=94), body_table="women")
    assert wrong == [("sizes", 0, "upper_arm")]


def test_what_a_table_fills_in_after_a_wrong_bust_is_not_reported_too():
    assert paths(sent("S", bust=94), sent("M", bust=84), body_table="women") == [("sizes", 1, "bust")]
