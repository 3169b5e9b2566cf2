"""Size grading."""

from fractions import Fraction

from hypothesis import given
from hypothesis import strategies as st

from grading_core.gauge import Gauge
from grading_core.printing import DASH, Printing, printed_as
from grading_core.rounding import CountRule
from grading_core.sizes.request import EvenSteps, SentSize
from tests.grading_core.sizes.sent_sizes import GAUGE, grade, paths, sent

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
    assert (cells["bust"].counted, cells["arm_length"].counted) == (220, 155)


def test_target_finished_and_difference_close():
    [size] = grade(sent("S", bust="84.3"), ease={"bust": Fraction(7)}, count_rules={"bust": CountRule(4)}).sizes
    bust = size.measurements["bust"]
    assert bust.target == Fraction("91.3")
    assert bust.counted == 200  # 91.3 x 2.2 = 200.86
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
    assert size.measurements["bust"].counted == nearest


# Ease


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


# In any order and at any scale


@given(st.permutations(range(5)), st.sampled_from([None, "women"]))
def test_the_order_of_sending_changes_no_size(order, table):
    sizes = [sent(label, bust=80 + 9 * place, hip=90 + 8 * place) for place, label in enumerate("ABCDE")]
    straight = {size.label: size for size in grade(*sizes, body_table=table, ease={"bust": Fraction(6)}).sizes}
    shuffled = grade(*(sizes[place] for place in order), body_table=table, ease={"bust": Fraction(6)}).sizes
    assert [size.label for size in shuffled] == [sizes[place].label for place in order]
    assert all(straight[size.label] == size for size in shuffled)


@given(st.integers(1, 50))
def test_scaling_gauge_and_body_together_changes_no_count(factor):
    larger = Gauge(GAUGE.stitches_per_cm / factor, GAUGE.rows_per_cm / factor)
    counts = [
        {name: cell.counted for name, cell in grading.sizes[0].measurements.items()}
        for grading in (
            grade(sent("S", bust="84.7", arm_length="43.1")),
            grade(sent("S", bust=Fraction("84.7") * factor, arm_length=Fraction("43.1") * factor), gauge=larger),
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
    assert [remark.code for remark in grade(sent("S", bust=84), ease={"bust": Fraction("-10.16")}).remarks] == []
    [remark] = grade(sent("S", bust=84), ease={"bust": Fraction("-10.17")}).remarks
    assert (remark.code, remark.size) == ("ease_below_published_fits", "S")


def test_estimates_are_warned_about_once_a_measurement():
    remarks = grade(body_table="women", labels=("M", "4X", "5X")).remarks
    assert [remark.code for remark in remarks] == ["estimated_body", "estimated_body"]
    assert remarks[0].message.values == {"measure": "wrist", "sizes": ("4X", "5X")}


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
    with printed_as(Printing(cm_step=Fraction("0.1"), decimal_mark=",")):
        assert grade(*sizes).runs["bust"].finished_cm == "84,1 (94,1)"
    # 40.4 in is nearest to 40 1/2 by quarters as by halves, 40.2 in to 40 1/4 and to 40
    fine = {"gauge": Gauge.over(Fraction(100), Fraction(100), Fraction(1))}
    assert grade(sent("S", bust="102.1"), **fine).runs["bust"].finished_inch == "40 1/4"
    with printed_as(Printing(inch_step=Fraction(1, 2))):
        assert grade(sent("S", bust="102.1"), **fine).runs["bust"].finished_inch == "40"
