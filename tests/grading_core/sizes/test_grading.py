"""Bodies, ease and size grading."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from grading_core.errors import ContradictionError
from grading_core.gauge import Gauge
from grading_core.rounding import CountRule
from grading_core.sizes.bodies import size_bodies
from grading_core.sizes.grading import grade_sizes, spread_ease
from grading_core.sizes.labels import label_ranks
from grading_core.sizes.request import BodiesRequest, EvenSteps, SentSize, SizeGradingRequest
from grading_core.wording import DASH

GAUGE = Gauge.over(Fraction(22), Fraction(31), Fraction(10))
INCH = Fraction("2.54")


def sent(label, **measurements):
    return SentSize(label, {name: Fraction(str(value)) for name, value in measurements.items()})


def grade(*sizes, gauge=GAUGE, **options):
    return grade_sizes(SizeGradingRequest(gauge=gauge, sizes=sizes or None, **options))


def problems(*sizes, **options):
    with pytest.raises(ContradictionError) as refused:
        grade(*sizes, **options)
    return [(problem.path, problem.detail) for problem in refused.value.problems]


def paths(*sizes, **options):
    return [path for path, _ in problems(*sizes, **options)]


# What is answered


def test_with_sizes_alone_only_what_was_sent_is_answered():
    grading = grade(sent("S", bust=84), sent("M", bust=94, wrist=16))
    assert [list(size.measurements) for size in grading.sizes] == [["bust"], ["bust", "wrist"]]


def test_a_standard_table_answers_its_sizes_in_its_order():
    grading = grade(body_table="men")
    assert [size.label for size in grading.sizes] == ["S", "M", "L", "XL", "2X", "3X", "4X", "5X"]


def test_labels_pick_sizes_in_the_order_asked():
    grading = grade(body_table="women", labels=("L", "S"))
    assert [size.label for size in grading.sizes] == ["L", "S"]


def test_lengths_along_are_counted_in_rows_and_widths_in_stitches():
    cells = grade(sent("S", bust=100, arm_length=50)).sizes[0].measurements
    assert (cells["bust"].stitches, cells["arm_length"].rows) == (220, 155)
    assert (cells["bust"].rows, cells["arm_length"].stitches) == (None, None)


def test_target_finished_and_difference_close():
    [size] = grade(
        sent("S", bust="84.3"), ease={"bust": Fraction(7)}, count_rules={"bust": CountRule(4)}
    ).sizes
    bust = size.measurements["bust"]
    assert bust.target == Fraction("91.3")
    assert bust.count == 200  # 91.3 x 2.2 = 200.86
    assert bust.finished == Fraction(200 * 10, 22)
    assert bust.difference == bust.finished - bust.target


@given(
    body=st.fractions(10, 200, max_denominator=100),
    ease=st.fractions(-5, 60, max_denominator=100),
    multiple=st.integers(1, 12),
    plus=st.integers(0, 15),
)
def test_the_count_is_the_nearest_permitted_one_by_trial(body, ease, multiple, plus):
    rules = {"bust": CountRule(multiple, plus)}
    [size] = grade(SentSize("S", {"bust": body}), ease={"bust": ease}, count_rules=rules).sizes
    exact = (body + ease) * 22 / 10
    permitted = range(plus % multiple, 700, multiple)
    nearest = min(permitted, key=lambda count: (abs(count - exact), -count))
    assert size.measurements["bust"].count == nearest


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
        same = SentSize("mine", {"bust": body.values["bust"].cm})
        [again] = size_bodies(BodiesRequest(body_table=table, sizes=(same,), within=within))
        assert {name: value.cm for name, value in again.values.items()} == {
            name: value.cm for name, value in body.values.items()
        }


@given(st.lists(st.fractions(71, 158, max_denominator=50), min_size=2, max_size=9, unique=True))
def test_interpolated_measurements_rise_with_the_bust(busts):
    sizes = tuple(SentSize(f"{place}", {"bust": bust}) for place, bust in enumerate(sorted(busts)))
    bodies = size_bodies(BodiesRequest(body_table="women", sizes=sizes))
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
    sizes = (sent("least", bust=71), sent("most", bust=158))
    bodies = size_bodies(BodiesRequest(body_table="women", sizes=sizes))
    assert bodies[0].values["waist"].cm == 23 * INCH
    assert bodies[1].values["waist"].cm == 50 * INCH


# Ease


def test_ease_may_be_one_number_one_per_size_or_even_steps():
    assert spread_ease(Fraction(5), 3) == (5, 5, 5)
    assert spread_ease((Fraction(1), Fraction(2)), 2) == (1, 2)
    assert spread_ease(EvenSteps(Fraction(20), Fraction(25)), 3) == (20, Fraction("22.5"), 25)


def test_no_ease_is_sent_means_no_ease():
    assert grade(sent("S", bust=84)).sizes[0].measurements["bust"].ease == 0


def test_ease_in_even_steps_follows_the_order_sent():
    sizes = (sent("L", bust=104), sent("S", bust=84))
    grading = grade(*sizes, ease={"bust": EvenSteps(Fraction(4), Fraction(8))})
    assert [size.measurements["bust"].ease for size in grading.sizes] == [4, 8]


def test_a_list_of_ease_of_another_length_is_refused():
    sizes = (sent("S", bust=84), sent("M", bust=94))
    assert paths(*sizes, ease={"bust": (Fraction(1),)}) == [("ease", "bust")]


def test_ease_and_rules_for_a_measurement_that_no_size_has_are_refused():
    wrong = paths(sent("S", bust=84), ease={"wrist": Fraction(5)}, count_rules={"hip": CountRule(4)})
    assert wrong == [("ease", "wrist"), ("count_rules", "hip")]


def test_ease_that_leaves_nothing_is_refused_where_it_stands():
    sizes = (sent("S", bust=84), sent("M", bust=94))
    assert paths(*sizes, ease={"bust": (Fraction(-84), Fraction(0))}) == [("ease", "bust", 0)]


# Sizes must rise


def test_a_measurement_that_falls_names_both_sizes_at_the_later_value():
    [(path, detail)] = problems(
        sent("S", bust=84, upper_arm="28.5"),
        sent("M", bust=94, upper_arm="27.5"),
        sent("L", bust=104, upper_arm=33),
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
    "labels",
    [("S", "M", "L"), ("XL", "2X", "3X"), ("34", "36", "38"), ("6 months", "12 months", "18 months")],
)
def test_a_bust_that_falls_against_the_labels_is_found_in_any_order(labels):
    small, middle, large = (
        sent(label, bust=bust) for label, bust in zip(labels, ("84", "49", "104"), strict=True)
    )
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


@given(st.permutations(range(5)), st.sampled_from([None, "women"]))
def test_the_order_of_sending_changes_no_size(order, table):
    sizes = [sent(label, bust=80 + 9 * place, hip=90 + 8 * place) for place, label in enumerate("ABCDE")]
    straight = {
        size.label: size for size in grade(*sizes, body_table=table, ease={"bust": Fraction(6)}).sizes
    }
    shuffled = grade(*(sizes[place] for place in order), body_table=table, ease={"bust": Fraction(6)}).sizes
    assert [size.label for size in shuffled] == [sizes[place].label for place in order]
    assert all(straight[size.label] == size for size in shuffled)


@given(st.integers(1, 50))
def test_scaling_gauge_and_body_together_changes_no_count(factor):
    larger = Gauge(GAUGE.stitches_per_cm / factor, GAUGE.rows_per_cm / factor)
    counts = [
        {name: cell.count for name, cell in grading.sizes[0].measurements.items()}
        for grading in (
            grade(sent("S", bust="84.7", arm_length="43.1")),
            grade(
                sent("S", bust=Fraction("84.7") * factor, arm_length=Fraction("43.1") * factor), gauge=larger
            ),
        )
    ]
    assert counts[0] == counts[1]


# Other contradictions


def test_a_grading_needs_bodies():
    assert paths() == [()]


def test_labels_beside_sizes_are_refused():
    assert paths(sent("S", bust=84), body_table="women", labels=("S",)) == [("labels",)]


def test_labels_that_the_table_lacks_or_that_are_repeated_are_refused():
    assert paths(body_table="women", labels=("M", "6X", "M")) == [("labels", 1), ("labels", 2)]


def test_two_sizes_of_one_label_are_refused():
    assert ("sizes", 1, "label") in paths(sent("S", bust=84), sent("S", bust=94))


# Fits, warnings and printed runs


def test_the_fit_follows_from_the_ease_at_the_bust():
    grading = grade(sent("S", bust=84), sent("M", bust=94), ease={"bust": (Fraction(0), Fraction(12))})
    assert [size.fit for size in grading.sizes] == ["close fitting", "loose fit"]


def test_ease_below_every_published_fit_is_warned_about():
    assert [
        remark.code for remark in grade(sent("S", bust=84), ease={"bust": Fraction("-10.16")}).remarks
    ] == []
    [remark] = grade(sent("S", bust=84), ease={"bust": Fraction("-10.17")}).remarks
    assert (remark.code, remark.size) == ("ease_below_published_fits", "S")


def test_estimates_are_warned_about_once_a_measurement():
    remarks = grade(body_table="women", labels=("M", "4X", "5X")).remarks
    assert [remark.code for remark in remarks] == ["estimated_body", "estimated_body"]
    assert "wrist of 4X and 5X" in remarks[0].message


def test_a_count_of_nothing_is_warned_about():
    [remark] = grade(sent("S", wrist=15), count_rules={"wrist": CountRule(100)}).remarks
    assert (remark.code, remark.path) == ("nothing_to_knit", ("count_rules", "wrist"))


def test_a_run_has_a_dash_where_a_size_has_no_value():
    runs = grade(sent("S", bust=84), sent("M", bust=94, wrist=16), sent("L", bust=104)).runs
    assert runs["wrist"].stitches == f"{DASH} (35, {DASH})"


def test_runs_are_printed_to_the_steps_asked():
    # 185 / 2.2 = 84.09 cm = 33.11 in, and 207 / 2.2 = 94.09 cm = 37.04 in
    sizes = (sent("S", bust=84), sent("M", bust=94))
    assert grade(*sizes).runs["bust"].finished_cm == "84 (94)"
    assert grade(*sizes, printed_cm_step=Fraction("0.1")).runs["bust"].finished_cm == "84.1 (94.1)"
    # 40.4 in is nearest to 40 1/2 by quarters as by halves, 40.2 in to 40 1/4 and to 40
    fine = {"gauge": Gauge.over(Fraction(100), Fraction(100), Fraction(1))}
    assert grade(sent("S", bust="102.1"), **fine).runs["bust"].finished_inch == "40 1/4"
    inches = grade(sent("S", bust="102.1"), **fine, printed_inch_step="1/2")
    assert inches.runs["bust"].finished_inch == "40"


# Labels


@pytest.mark.parametrize(
    "labels",
    [
        ("XXS", "XS", "S", "M", "L", "XL", "XXL", "3XL"),
        ("xs", "s", "m", "l", "xl", "2x", "3x"),
        ("34", "36", "100"),
        ("3 months", "6 months", "12 months"),
        ("2-4 years", "4-6 years", "6-8 years"),
        ("8.25", "8.5", "10.0"),
    ],
)
def test_labels_rank_as_the_trade_orders_them(labels):
    ranks = label_ranks(labels)
    assert list(ranks) == sorted(set(ranks))


@pytest.mark.parametrize("labels", [("A", "B"), ("M", "38"), ("M tall", "M"), ("XM", "S"), ("#", "#")])
def test_other_labels_tell_no_order(labels):
    assert label_ranks(labels) is None
