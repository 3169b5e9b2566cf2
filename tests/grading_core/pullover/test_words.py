"""Instructions, knitted as they are told and counted."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

import pytest

from grading_core.chart.grid import Colour
from grading_core.errors import Impossible
from grading_core.gauge import Gauge
from grading_core.pullover.colours import GarmentColours
from grading_core.pullover.grade import grade_pullover
from grading_core.pullover.request import (
    BandWishes,
    BodyWishes,
    ChartWishes,
    ColourYarn,
    EdgeWishes,
    Gauges,
    LevelWish,
    NeckWishes,
    Shares,
    YarnWishes,
    YokeWishes,
)
from grading_core.pullover.words import instructions
from grading_core.yoke.request import Options
from tests.grading_core.pullover.knitted_pullovers import (
    DIAMOND,
    GAUGE,
    PATTERN,
    PLAIN,
    REQUESTS,
    knit_yoke,
    sizes_of,
    told_sizes,
)
from tests.oracles.told import RUNS, DropTold, ids, only, told_alone, work_edge, work_shaping


def test_the_yoke_as_told_leads_to_the_stitches_that_the_split_begins_with(made):
    for size, told in told_sizes(made):
        needle = knit_yoke(size, told["neck"], told["yoke"])
        assert len(needle) == only(told["split"], "split.begin")["stitches"] == size.counts.yoke_total


def test_the_yoke_of_each_size_alone_is_knitted_to_the_same_stitches(made):
    for size, told in told_sizes(made):
        alone = knit_yoke(size, told_alone(size.neck.instructions()), told_alone(size.yoke.instructions()))
        assert alone == knit_yoke(size, told["neck"], told["yoke"])


def test_the_split_as_told_makes_the_body_and_the_sleeves(made):
    for size, told in told_sizes(made):
        needle = knit_yoke(size, told["neck"], told["yoke"])
        split, arm = told["split"], only(told["sleeve"], "sleeve.return")
        first, second = only(split, "split.first_sleeve"), only(split, "split.second_sleeve")
        # marker 1 stands after the back
        back, rest = cut(needle, size.yoke.yoke.split.back + first["past"])
        first_sleeve, rest = cut(rest, first["held"])
        front, rest = cut(rest, only(split, "split.front")["stitches"])
        second_sleeve, end = cut(rest, second["held"])
        body = [*back, *"u" * first["underarm"], *front, *"u" * second["underarm"], *end]
        assert first_sleeve.count("s") == second_sleeve.count("t") == size.counts.split.sleeve
        assert front.count("f") == size.counts.split.front
        assert {*front} <= {"l", "f"}
        assert {*end} <= {"l"}
        assert len(body) == only(split, "split.body")["stitches"] == size.counts.body == size.body.stitches
        assert len(first_sleeve) == len(second_sleeve) == arm["held"]
        assert first["underarm"] == second["underarm"] == arm["underarm"]
        assert arm["held"] + arm["underarm"] == arm["stitches"] == size.counts.sleeve == size.sleeve.stitches


def cut(needle, stitches):
    return needle[:stitches], needle[stitches:]


def test_the_line_stitches_past_marker_1_are_those_of_the_body(made):
    for size, told in told_sizes(made):
        assert only(told["split"], "split.first_sleeve")["past"] == size.counts.line_to_body


def test_body_sleeves_and_ribs_worked_as_told_are_those_of_each_size(made):
    for size, told in told_sizes(made):
        body, sleeve, band = told["body"], told["sleeve"], told["band"]
        shaping, rounds, stitches = work_shaping(body, "body", size.counts.body)
        assert (shaping, rounds) == ([*size.body.shaping], size.body.rounds)
        assert work_edge(body, stitches)[:2] == (size.body.hem.stitches, size.body.hem.rounds)
        decreases, rounds, stitches = work_shaping(sleeve, "sleeve", size.counts.sleeve)
        assert (decreases, rounds) == ([(number, -2) for number in size.sleeve.decrease_rounds], size.sleeve.rounds)
        assert work_edge(sleeve, stitches)[:2] == (size.sleeve.cuff.stitches, size.sleeve.cuff.rounds)
        (picked_up,) = [values["stitches"] for id, values in band if id.startswith("band.pick_up")]
        assert work_edge(band, picked_up)[:2] == (size.band.edge.stitches, size.band.edge.rounds)


def test_the_measurements_told_are_those_of_the_finished_garment(made):
    for size, told in told_sizes(made):
        measured = {
            "yoke.depth": size.finished.depth,
            "body.length": size.finished.body_length,
            "sleeve.length": size.finished.sleeve_length,
            "band.height": size.band.height_cm,
        }
        for id, length_cm in measured.items():
            assert only(told[id.partition(".")[0]], id)["length"] == length_cm


def test_the_edge_of_the_neck_is_told_where_a_front_drop_makes_it_another_than_the_cast_on(made):
    dropped = any(size.neck.drop for size in sizes_of(made))
    for size, told in told_sizes(made):
        edges = [values["length"] for id, values in told["neck"] if id == "neck.edge"]
        assert edges == ([size.neck.edge_cm] if dropped else [])


def test_the_stitches_cast_on_are_those_of_the_sections_that_are_told(made):
    for size, told in told_sizes(made):
        neck = told["neck"]
        begun = only(neck, f"neck.cast_on_{size.neck.cast_on.way}")["stitches"]
        drop = DropTold.of(neck)
        assert begun + (drop.to_come(0) if drop else 0) == size.counts.cast_on
        sections = [values for id, values in neck if id == "neck.sections"]
        assert bool(sections) is (drop is None)
        for each in sections:
            in_all = each["back"] + each["front"] + 2 * each["sleeve"] + 4 * each["line"]
            assert in_all == each["stitches"] == size.counts.cast_on


def test_a_wider_front_is_told_at_the_split_and_counted_on_the_needles():
    made = grade_pullover(REQUESTS["a wider front with darts, and a waist"])
    extras = []
    for size, told in told_sizes(made):
        needle = knit_yoke(size, told["neck"], told["yoke"])
        more = needle.count("f") - needle.count("b")
        extra = [values for id, values in told["split"] if id == "split.front_extra"]
        assert extra == ([{"stitches": more}] if more else [])
        extras.append(more)
    assert extras[0] == 0 < extras[-1]
    assert not any("split.front_extra" in ids(told["split"]) for _, told in told_sizes(grade_pullover(PLAIN)))


def test_the_darts_are_told_with_the_body_and_skipped_by_a_size_without_any():
    made = grade_pullover(REQUESTS["a wider front with darts, and a waist"])
    rows = []
    for size, told in told_sizes(made):
        assert told["body"][0].id == "body.side_markers"
        darts = [values for id, values in told["body"] if id == "body.darts"]
        expected = size.body.bust_darts and {"round": size.body.bust_darts.round, "rows": size.body.bust_darts.rows}
        assert darts == ([expected] if expected else [])
        rows += [values["rows"] for values in darts]
    assert 0 < len(rows) < len(made.sizes)


def chart_values(made, id):
    """The values of the chart's sentences of one id."""
    (sentences,) = [part.sentences for part in made.instructions if part.part == "chart"]
    return [sentence.values for sentence in sentences if sentence.id == id]


@pytest.mark.parametrize(
    ("section", "of", "below"),
    [("back", 0, "chart.body_back"), ("front", 1, "chart.body_front"), ("sleeve", 2, "chart.sleeve_start")],
)
def test_the_columns_as_told_run_straight_from_the_yoke_over_the_underarm(section, of, below):
    made = grade_pullover(REQUESTS["a chart that runs on"])
    (begun,) = [each for each in chart_values(made, "chart.start") if section in each["sections"]]
    (lower,) = chart_values(made, below)
    for place, size in enumerate(sizes_of(made)):
        # every increase after the round in which the chart begins moves the start back
        later = sum(
            worked.increases[of] for worked in size.yoke.increase_rounds if worked.round > begun["round"][place]
        )
        # from where the rounds start the rest of the underarm and one stitch of the raglan line lead to the section
        between = size.counts.underarm - lower["before"][place] + 1
        assert (begun["column"][place] - later - lower["column"][place] - between) % DIAMOND.width == 0


def test_an_impossible_size_has_its_place_in_every_run_and_nothing_in_it():
    # the largest sizes have too few rounds for single increases
    request = replace(
        REQUESTS["a chart that runs on"], labels=("S", "M", "5X"), yoke=YokeWishes(options=Options(double_body="never"))
    )
    made = grade_pullover(request)
    possible = [not isinstance(size.outcome, Impossible) for size in made.sizes]
    assert possible == [True, True, False]
    runs = 0
    for part in (*PATTERN, "chart"):
        (sentences,) = [each.sentences for each in made.instructions if each.part == part]
        for sentence in sentences:
            for name, kind in sentence.saying.values.items():
                run = sentence.values[name]
                if kind.name in RUNS and type(run) is tuple:
                    assert (len(run), run[2]) == (3, None), sentence
                    runs += 1
    assert runs > 50


@pytest.mark.parametrize(
    ("seam_stitches", "underarm", "place", "at"),
    # half of the 12 stitches beside the seam, then the seam; without one, half of all
    [
        (3, 15, {"before": 9, "seams": "all", "seam": 3}, "seam"),
        (None, 16, {"before": 8, "seams": "none", "seam": 0}, "marker"),
    ],
)
def test_split_body_and_sleeve_start_at_one_place_said_in_the_same_way(seam_stitches, underarm, place, at):
    waist = BodyWishes(levels=(LevelWish("waist", Fraction(18)),))
    request = replace(PLAIN, labels=("M",), yoke=YokeWishes(seam_stitches=seam_stitches), body=waist)
    made = grade_pullover(request)
    ((size, told),) = told_sizes(made)
    assert size.counts.underarm == underarm
    assert only(told["split"], "split.start_underarm") == place
    for own in (told["body"], told_alone(size.body.instructions())):
        assert only(own, "body.side_markers") == place
        assert only(own, "body.decreases") == {"at": at}
    for own in (told["sleeve"], told_alone(size.sleeve.instructions())):
        assert only(own, "sleeve.start") == place
        assert only(own, "sleeve.decreases") == {"at": at}
    seams = [values for id, values in told["split"] if id == "split.seam"]
    assert seams == ([{"seam": seam_stitches}] if seam_stitches else [])


@pytest.mark.parametrize("underarm", [6, 7])
@pytest.mark.parametrize("chart", [None, ChartWishes(chart=DIAMOND)])
def test_purled_seams_are_told_at_the_split_and_in_the_sleeve(underarm, chart):
    width = underarm / GAUGE.stitches_per_cm
    request = replace(PLAIN, labels=("M",), chart=chart, yoke=YokeWishes(seam="purl", underarm=width))
    made = grade_pullover(request)
    ((size, told),) = told_sizes(made)
    expected = size.counts.underarm % 2 or 2
    assert only(told["split"], "split.seam_purl") == {"seam": expected}
    assert only(told["sleeve"], "sleeve.seam_purl") == {"seam": expected}
    assert only(told_alone(size.sleeve.instructions()), "sleeve.seam_purl") == {"seam": expected}
    assert "split.seam" not in ids(told["split"])


def coloured(**wishes):
    """A pullover in oat, with edges in other colours."""
    yarns = {
        symbol: ColourYarn(metres_per_100g=Fraction(400), name=name)
        for symbol, name in (("o", "oat"), ("r", "rust"), ("b", "brick"))
    }
    return replace(PLAIN, labels=("M",), yarn=YarnWishes(colours=yarns, main_colour="o"), **wishes)


def test_every_edge_is_told_in_its_colour_whether_it_changes_there_or_not():
    request = coloured(body=BodyWishes(hem=EdgeWishes(colour="r")), band=BandWishes(colour="b"))
    ((size, told),) = told_sizes(grade_pullover(request))
    assert told["neck"][0] == ("neck.colour", {"colour": "oat"})
    assert told["band"][0] == ("band.colour", {"colour": "brick"})
    for own in (told["body"], told_alone(size.body.instructions())):
        assert only(own, "rib.colour") == {"edge": "hem", "colour": "rust"}
        # before the round that adjusts, which is the hem's first
        assert ids(own).index("rib.colour") < min(place for place, id in enumerate(ids(own)) if id in RIB_ROUNDS)
    for own in (told["sleeve"], told_alone(size.sleeve.instructions())):
        assert only(own, "rib.colour") == {"edge": "cuff", "colour": "oat"}


RIB_ROUNDS = ("rib.decrease", "rib.increase", "rib.work")


def test_a_pullover_of_one_colour_is_told_none():
    one = replace(PLAIN, labels=("M",), yarn=YarnWishes(metres_per_100g=Fraction(400)))
    ((_, told),) = told_sizes(grade_pullover(one))
    assert not [id for part in told.values() for id in ids(part) if id.endswith(".colour")]


@pytest.mark.parametrize(("ended", "labels"), [((True, True), None), ((False, True), ("L",)), ((False, False), ())])
def test_underarms_are_told_their_colour_where_it_is_another_than_the_necks(ended, labels):
    made = grade_pullover(replace(PLAIN, labels=("M", "L"), chart=ChartWishes(chart=DIAMOND)))
    sizes = {size.label: size.outcome for size in made.sizes}
    for size, over in zip(sizes.values(), ended, strict=True):
        progress = replace(size.chart.progress, finishing_rounds=0 if over else 1)
        sizes[next(label for label, each in sizes.items() if each is size)] = replace(
            size, chart=replace(size.chart, progress=progress)
        )
    palette = {".": Colour("oat"), "#": Colour("rust")}
    colours = GarmentColours(palette=palette, plain=".", below="#", hem="#", cuff="#", band=".")
    told = instructions(sizes, made.gauges, "before_back", None, colours=colours)
    (split,) = [part.sentences for part in told if part.part == "split"]
    said = [sentence for sentence in split if sentence.id == "split.colour"]
    assert [sentence.labels for sentence in said] == ([] if labels == () else [labels])
    assert all(sentence.values == {"colour": "rust"} for sentence in said)


def test_a_round_that_starts_at_the_centre_back_goes_on_to_start_there():
    made = grade_pullover(REQUESTS["no line, every round, from the centre back"])
    for _, told in told_sizes(made):
        assert "split.start_back" in ids(told["split"])
        assert "split.start_underarm" not in ids(told["split"])
    charted = replace(PLAIN, chart=ChartWishes(chart=DIAMOND), neck=NeckWishes(start="centre_back"))
    assert "chart_starts_before_back" in {remark.code for remark in grade_pullover(charted).remarks}


@pytest.mark.parametrize(("table", "young"), [("babies", True), ("women", False)])
def test_the_caution_about_cords_ends_what_is_told_of_garments_for_young_children(table, young):
    made = grade_pullover(replace(PLAIN, body_table=table))
    assert ("finishing.no_cords" in ids(made.instructions[-1].sentences)) is young


def test_children_of_whom_any_is_young_are_told_the_caution_too():
    made = grade_pullover(replace(PLAIN, body_table="children"))
    assert ids(made.instructions[-1].sentences) == [
        "finishing.underarms",
        "finishing.ends",
        "finishing.block",
        "finishing.no_cords",
    ]
    old = grade_pullover(replace(PLAIN, body_table="children", labels=(made.labels[-1],)))
    assert "finishing.no_cords" not in ids(old.instructions[-1].sentences)


def unlike_yokes():
    """A pullover whose yokes are too unlike to be told together."""
    spread = Options(spacing="even", step=1, double_body="if_needed", double_where="even")
    return grade_pullover(replace(PLAIN, yoke=YokeWishes(options=spread)))


def test_yokes_too_unlike_are_told_size_by_size_under_their_labels():
    made = unlike_yokes()
    (yoke,) = [part.sentences for part in made.instructions if part.part == "yoke"]
    assert "sizes.apart" in ids(yoke)
    assert [*dict.fromkeys(each.labels for each in yoke if each.labels)] == [(label,) for label in made.labels]
    for size, told in told_sizes(made):
        assert len(knit_yoke(size, told["neck"], told["yoke"])) == size.counts.yoke_total


def test_parts_told_size_by_size_are_warned_of():
    codes = {remark.code for remark in unlike_yokes().remarks}
    assert "told_size_by_size" in codes
    assert "told_size_by_size" not in {remark.code for remark in grade_pullover(PLAIN).remarks}


COARSE = Gauges(Gauge.over(Fraction(10), Fraction(15), Fraction(10)))


def test_necks_begun_in_different_ways_are_told_size_by_size():
    # the fronts of the smaller sizes are too narrow to be cast on in parts
    narrow = NeckWishes(lower_front="front_drop", shares=Shares(Fraction(40), Fraction(5), Fraction(15)))
    made = grade_pullover(
        replace(PLAIN, gauges=Gauges(Gauge.over(Fraction(10), Fraction(15), Fraction(10))), neck=narrow)
    )
    (neck,) = [part.sentences for part in made.instructions if part.part == "neck"]
    assert "sizes.apart" in ids(neck)
    assert {size.neck.drop is None for size in sizes_of(made)} == {True, False}
    for size, told in told_sizes(made):
        assert ("neck.sections" in ids(told["neck"])) is (size.neck.drop is None)
        knit_yoke(size, told["neck"], told["yoke"])


@pytest.mark.parametrize("lower_front", ["none", "short_rows", "front_drop", "both"])
@pytest.mark.parametrize("way", ["flat", "joined"])
def test_every_neck_is_joined_into_a_round_exactly_once(way, lower_front):
    # of fronts as narrow as these some are cast on in parts and others are not
    narrow = NeckWishes(way=way, lower_front=lower_front, shares=Shares(Fraction(40), Fraction(5), Fraction(15)))
    made = grade_pullover(
        replace(PLAIN, gauges=Gauges(Gauge.over(Fraction(10), Fraction(15), Fraction(10))), neck=narrow)
    )
    for size, told in told_sizes(made):
        for neck in (told["neck"], told_alone(size.neck.instructions())):
            joins = [id for id, _ in neck if id in ("neck.cast_on_joined", "neck.drop_join")]
            joins += [id for id, values in neck if id == "neck.last_row" and values["kind"] == "flat"]
            assert len(joins) == 1
            # the rows before a drop don't join
            assert ("neck.short_rows" in ids(neck)) is ("neck.last_row" in ids(neck))
