"""The written counts at a maker's own gauge. Lengths by hand: a length is its count over the gauge."""

from dataclasses import replace
from fractions import Fraction

import pytest

from grading_core.errors import ContradictionError, Impossible
from grading_core.gauge import Gauge
from grading_core.pullover.grade import grade_pullover
from grading_core.pullover.own_gauge import run_instructions
from grading_core.pullover.request import BodyWishes, Changes, EdgeWishes, Gauges, NeckWishes, SleeveWishes, YarnWishes
from grading_core.rounding import CountRule
from grading_core.sizes.request import SentSize
from tests.grading_core.pullover.knitted_pullovers import GAUGE, PLAIN, REQUESTS, outcomes, sizes_of, yoke

LOOSER = Gauge.over(Fraction(20), Fraction(28), Fraction(10))
WIDTHS = ("bust", "upper_arm", "neck", "underarm", "hem", "wrist")
HEIGHTS = ("depth", "body_length", "sleeve_length", "total_length")


def kept(request, own: Gauge | Gauges):
    gauges = own if isinstance(own, Gauges) else Gauges(own)
    return grade_pullover(replace(request, changes=Changes(gauges=gauges, keep_counts=True)))


@pytest.fixture(scope="module")
def looser(asked):
    return grade_pullover(asked), kept(asked, LOOSER)


def test_the_design_stays_as_it_is(looser):
    design, made = looser
    assert made.table == design.table
    assert made.cost == design.cost
    assert [replace(size, at_own_gauge=None) for size in sizes_of(made)] == sizes_of(design)
    assert [told for told in made.instructions if told.part != "own_gauge"] == [*design.instructions]


def test_widths_grow_as_stitches_get_wider_and_lengths_as_rounds_get_higher(looser):
    # one gauge for every fabric: 22 stitches are 10 cm, then 11 cm; 31 rounds 10 cm, then 310/28
    for size in sizes_of(looser[1]):
        own, gauges = size.at_own_gauge.finished, size.body.hem.rib.gauge
        for name in WIDTHS:
            assert getattr(own, name) == getattr(size.finished, name) * gauges.stitches_per_cm / 2
        for name in HEIGHTS:
            assert getattr(own, name) == getattr(size.finished, name) * gauges.rows_per_cm / Fraction("2.8")


def test_what_was_asked_for_stays_the_target(looser):
    for size in sizes_of(looser[1]):
        assert size.at_own_gauge.measured("bust").target_cm == size.measured("bust").target_cm
        assert size.at_own_gauge.measured("hem").target_cm is None


def test_the_design_s_own_gauge_changes_nothing():
    made = kept(PLAIN, GAUGE)
    assert not made.changed
    for size in sizes_of(made):
        assert size.at_own_gauge.finished == size.finished
        own = size.at_own_gauge.corrections
        assert (own.yoke, own.body, own.sleeve, own.yoke_method) == (0, 0, 0, "plain_rounds")
    (said,) = [part.sentences for part in made.instructions if part.part == "own_gauge"]
    assert "own_gauge.same" in [sentence.id for sentence in said]


def test_each_fabric_is_measured_at_its_own_gauge():
    # 1 stitch and 2 rounds a cm plain, 4 and 5 in the rib
    own = Gauges(Gauge(Fraction(1), Fraction(2)), rib=Gauge(Fraction(4), Fraction(5)))
    for size in sizes_of(kept(PLAIN, own)):
        made, hem = size.at_own_gauge.finished, size.body.hem
        assert made.bust == size.counts.body
        assert made.hem == Fraction(hem.stitches, 4)
        assert made.body_length == Fraction(size.body.rounds, 2) + Fraction(hem.rounds, 5)
        assert made.depth == Fraction(size.counts.rounds, 2)


def test_what_changed_is_every_finished_measurement_and_nothing_else():
    made = kept(replace(PLAIN, labels=("S", "M")), LOOSER)
    finished = {(row.part, row.item) for row in made.table if row.part == "finished"}
    # front and back are alike at any gauge; the ease is what the garment measures beyond the body
    told = {(each.part, each.item) for each in made.changed}
    assert told == (finished - {("finished", "front_extra")}) | {("to_fit", "ease")}
    assert {each.size for each in made.changed} == {"S", "M"}


# busts of 90, 100 and 110 cm, no ease, 2 stitches a cm: 180, 200 and 220 stitches
THREE = replace(
    PLAIN,
    gauges=Gauges(Gauge(Fraction(2), Fraction(3))),
    body_table="women",
    sizes=tuple(
        SentSize(label, {"bust": Fraction(bust)}) for label, bust in (("small", 90), ("medium", 100), ("large", 110))
    ),
    ease={"bust": Fraction(0)},
)


@pytest.mark.parametrize(
    ("stitches_per_cm", "nearest"),
    [
        # 90, 100, 110 cm
        (Fraction(2), ["small", "medium", "large"]),
        # 80, 88.9, 97.8 cm
        (Fraction(9, 4), ["medium", "large", "large"]),
        # 100, 111.1, 122.2 cm
        (Fraction(9, 5), ["small", "small", "medium"]),
        # 180/1.9 = 94.74, 105.26, 115.79 cm: 100 lies in the middle of the first two, and the larger is taken
        (Fraction(19, 10), ["small", "medium", "medium"]),
    ],
)
def test_the_nearest_size_is_by_its_bust_at_the_maker_s_gauge_and_of_two_the_larger(stitches_per_cm, nearest):
    made = kept(THREE, Gauge(stitches_per_cm, Fraction(3)))
    assert [size.counts.body for size in sizes_of(made)] == [180, 200, 220]
    assert [size.at_own_gauge.nearest_size for size in sizes_of(made)] == nearest


def test_what_is_wanted_is_the_bust_asked_for_not_the_one_that_a_multiple_makes_of_it():
    # multiples of 36: 180, 216 and 216 stitches; at 1.85 to the cm 97.3 and 116.8 cm, where 100 cm is asked of the
    # medium size and its 216 stitches made 108 cm
    made = kept(replace(THREE, body=BodyWishes(count_rule=CountRule(36))), Gauge(Fraction("1.85"), Fraction(3)))
    small, medium, large = sizes_of(made)
    assert [size.counts.body for size in (small, medium, large)] == [180, 216, 216]
    assert medium.at_own_gauge.nearest_size == "small"


def test_corrections_are_the_rounds_that_come_nearest_to_the_written_lengths(looser):
    for size in sizes_of(looser[1]):
        own, written = size.at_own_gauge.corrections, size.finished
        rib = LOOSER.height_cm(size.body.hem.rounds), LOOSER.height_cm(size.sleeve.cuff.rounds)
        for rounds, correction, cm in (
            (size.counts.rounds, own.yoke, written.depth),
            (size.body.rounds, own.body, written.body_length - rib[0]),
            (size.sleeve.rounds, own.sleeve, written.sleeve_length - rib[1]),
        ):
            missed = {change: abs(LOOSER.height_cm(rounds + change) - cm) for change in range(-rounds, 200)}
            assert missed[correction] == min(missed.values())


def test_a_yoke_stays_as_deep_as_its_increases_need_and_says_so():
    # 0.8 rows a cm where 3.1 were meant: three in four rounds too many
    request = replace(PLAIN, labels=("S", "5X"), yoke=yoke(plain_rounds_at_end=0))
    made = kept(request, Gauge(Fraction("2.2"), Fraction("0.8")))
    for label, size in zip(("S", "5X"), sizes_of(made), strict=True):
        back, _, sleeve = size.yoke.yoke.increases
        # the increase rounds in every round, or two body increases in every second one, whichever needs fewer
        fewest = min(len(size.yoke.increase_rounds), 2 * max(-(-back // 2), sleeve))
        assert size.counts.rounds + size.at_own_gauge.corrections.yoke == fewest
        (word,) = [one for one in made.remarks if one.code == "yoke_too_deep_at_own_gauge" and one.size == label]
        assert word.message.values["spare"] == size.counts.rounds - fewest


def test_a_sleeve_keeps_its_decreases_and_its_plain_rounds_and_says_so():
    sleeve = SleeveWishes(length=Fraction(20), plain_before=5, plain_after=3, cuff=EdgeWishes(height=Fraction(3)))
    made = kept(replace(PLAIN, labels=("M",), sleeve=sleeve), Gauge(Fraction("2.2"), Fraction("1")))
    (size,) = sizes_of(made)
    assert size.sleeve.rounds + size.at_own_gauge.corrections.sleeve == 5 + len(size.sleeve.decrease_rounds) + 3
    assert "sleeve_too_long_at_own_gauge" in {remark.code for remark in made.remarks}


def test_a_body_keeps_its_shaping_rounds():
    # 1 round a cm where 3.1 were meant
    made = kept(replace(REQUESTS["a waist"], labels=("M",)), Gauge(Fraction("2.2"), Fraction("0.3")))
    (size,) = sizes_of(made)
    assert size.body.shaping
    assert size.body.rounds + size.at_own_gauge.corrections.body == len(size.body.shaping)
    assert "body_too_long_at_own_gauge" in {remark.code for remark in made.remarks}


def test_a_body_is_not_left_shorter_than_the_chart_that_runs_on_in_it():
    request = replace(REQUESTS["a chart that runs on"], labels=("M",))
    (size,) = sizes_of(kept(request, Gauge(Fraction("2.2"), Fraction("0.1"))))
    own = size.at_own_gauge.corrections
    # rows of 4 rounds from round 3 on: what the last repeat of the shorter yoke lacks
    worked = size.counts.rounds + own.yoke - 2
    assert size.body.rounds + own.body == -worked % 4


def test_the_head_is_tried_at_the_maker_s_gauge():
    # 60 cm of cast-on, 120 stitches of 2 to the cm; at 3.5 to the cm 34.3 cm, stretched by 0.4 48 cm
    request = replace(
        PLAIN,
        gauges=Gauges(Gauge(Fraction(2), Fraction(3))),
        labels=("M",),
        neck=NeckWishes(circumference=Fraction(60), stretch=Fraction(2, 5)),
    )
    made = kept(request, Gauge(Fraction("3.5"), Fraction(3)))
    (size,) = sizes_of(made)
    head = size.at_own_gauge.head
    assert size.neck.head.passes
    assert not head.passes
    assert head.tightest.circumference_cm == min(size.counts.cast_on, size.band.edge.stitches) / Fraction("3.5")
    (word,) = [one for one in made.remarks if one.code == "neck_does_not_pass_head"]
    assert word.size == "M"
    assert word.message.id == "warning.neck_does_not_pass_head_own_gauge"


def test_a_dropped_front_is_as_long_as_its_rows_are_high_there():
    made = kept(replace(REQUESTS["babies with a dropped front"], labels=("6 months",)), Gauge(Fraction(2), Fraction(1)))
    (size,) = sizes_of(made)
    edge = Fraction(size.neck.cast_on.stitches + size.neck.drop.centre, 2) + 2 * size.neck.drop.rows
    join = Fraction(size.band.edge.stitches, 2)
    assert size.at_own_gauge.head.tightest.circumference_cm == min(edge, join)


def test_the_caution_for_a_baby_is_said_once():
    request = replace(PLAIN, body_table="babies", labels=("6 months",), neck=NeckWishes(stretch=Fraction(0)))
    codes = [remark.code for remark in kept(request, GAUGE).remarks]
    assert codes.count("young_child_neck") == 1
    # the design's neck, and the same at the maker's gauge
    assert codes.count("neck_does_not_pass_head") == 2


def test_yarn_at_the_own_gauge_goes_by_the_width_of_its_stitch():
    estimated = replace(PLAIN, labels=("M",), yarn=YarnWishes(metres_per_100g=Fraction(200), ball_grams=Fraction(50)))
    (size,) = sizes_of(kept(estimated, LOOSER))
    (own,), (written,) = size.at_own_gauge.yarn, size.yarn
    assert own.stitches == written.stitches
    # a stitch is 22/20 as wide, and ends are as long as they were
    for purpose in ("stitches", "ribs", "edges"):
        assert own.metres_for[purpose] == written.metres_for[purpose] * Fraction(22, 20)
    assert own.metres_for["ends"] == written.metres_for["ends"]
    weighed = replace(estimated, yarn=replace(estimated.yarn, swatch_grams=Fraction(10), swatch_stitches=1000))
    (size,) = sizes_of(kept(weighed, LOOSER))
    (own,), (written,) = size.at_own_gauge.yarn, size.yarn
    assert own.metres_for["stitches"] == written.metres_for["stitches"] * Fraction(22, 20)


def test_a_gauge_at_which_the_lengths_take_too_many_rounds_is_refused():
    with pytest.raises(ContradictionError) as refused:
        kept(PLAIN, Gauge(Fraction("2.2"), Fraction(100)))
    assert [problem.path for problem in refused.value.problems] == [("changes",)]


def test_a_size_that_can_t_be_knitted_measures_nothing():
    request = replace(PLAIN, labels=("S", "M"), sleeve=SleeveWishes(length=(Fraction(6), Fraction(44)), plain_after=12))
    small, medium = outcomes(kept(request, LOOSER))
    assert isinstance(small, Impossible)
    assert medium.at_own_gauge.nearest_size == "M"


def test_sentences_tell_the_measurements_at_the_maker_s_gauge_and_the_nearest_size():
    told = _told(kept(THREE, Gauge(Fraction(9, 4), Fraction(3))), Gauge(Fraction(9, 4), Fraction(3)))
    assert told["own_gauge.gauge"] == [{"stitches": Fraction(45, 2), "rounds": 30}]
    # 180, 200 and 220 stitches of 4/9 cm
    assert told["own_gauge.bust"] == [{"length": (80, Fraction(800, 9), Fraction(880, 9))}]
    assert told["own_gauge.nearest"] == [
        {"sizes": ("small", "medium", "large"), "nearest": ("medium", "large", "large")}
    ]


def test_no_rounds_are_to_be_changed_where_the_row_gauge_is_the_design_s():
    told = _told(kept(THREE, Gauge(Fraction(9, 4), Fraction(3))), GAUGE)
    assert "own_gauge.same" in told
    assert not {"own_gauge.add", "own_gauge.leave_out"} & set(told)


def test_added_rounds_are_told_part_by_part():
    looser_rows = Gauges(Gauge(Fraction(2), Fraction(3)), rib=Gauge(Fraction(2), Fraction(6)))
    made = kept(THREE, looser_rows)
    # ribs half as high: body and sleeves get as many rounds as that takes, the yoke none
    half = tuple(round(size.body.hem.rounds / 2) for size in sizes_of(made))
    told = _told(made, GAUGE)
    assert [each["part"] for each in told["own_gauge.add"]] == ["body", "sleeve"]
    assert told["own_gauge.add"][0]["rounds"] == half
    assert "own_gauge.leave_out" not in told


def test_a_size_with_nothing_to_leave_out_has_a_dash():
    made = kept(replace(PLAIN, labels=("S", "M")), LOOSER)
    small, medium = sizes_of(made)
    none = replace(small.at_own_gauge, corrections=replace(small.at_own_gauge.corrections, body=0))
    sizes = {"S": replace(small, at_own_gauge=none), "M": medium}
    told = [each.values for each in run_instructions(sizes, GAUGE) if each.id == "own_gauge.leave_out"]
    assert {"part": "body", "rounds": (None, -medium.at_own_gauge.corrections.body)} in told


def test_how_a_yoke_takes_its_correction_names_the_sizes_for_which_it_holds():
    # 28 rows where 31 were meant, and increases in every second round
    made = kept(replace(REQUESTS["a chart that runs on"], labels=("S", "M", "L")), LOOSER)
    methods = {label: size.at_own_gauge.corrections.yoke_method for label, size in _by_label(made).items()}
    told = [
        (each.id.removeprefix("own_gauge."), label)
        for each in run_instructions(_by_label(made), LOOSER)
        for label in each.labels or ()
    ]
    assert len(set(methods.values())) == 2
    assert {label: method for method, label in told} == methods


def _told(made, own):
    """Values of the sentences by id."""
    told: dict[str, list] = {}
    for sentence in run_instructions(_by_label(made), own):
        told.setdefault(sentence.id, []).append(dict(sentence.values))
    return told


def _by_label(made):
    return {size.label: size.outcome for size in made.sizes}
