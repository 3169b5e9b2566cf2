"""What is done with each colour of a whole pullover, and the yarn for it."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

import pytest

from grading_core.chart.grid import Chart, Colour
from grading_core.errors import ContradictionError
from grading_core.gauge import Gauge
from grading_core.pullover.colours import garment_colours
from grading_core.pullover.grade import grade_pullover
from grading_core.pullover.request import (
    BandWishes,
    BodyWishes,
    Changes,
    ChartWishes,
    ColourYarn,
    EdgeWishes,
    Gauges,
    NeckWishes,
    YarnWishes,
)
from grading_core.pullover.result import KnittedSize
from grading_core.pullover.yarn import colour_work
from grading_core.yarn.request import Strand
from tests.grading_core.pullover.knitted_pullovers import DIAMOND, PLAIN, outcomes, sizes_of, yoke
from tests.oracles.short_row_knitter import NeckStitches, knit, knit_darts

ONE = garment_colours(PLAIN)
"""Of a pullover without a chart: one colour."""


def knit_yoke_stitches(size: KnittedSize) -> int:
    """Round by round; what is still missing of a dropped front is not worked."""
    sections, worked = size.counts.neck, 0
    increases = {each.round: each.increases for each in size.yoke.increase_rounds}
    drop = size.neck.drop
    for number in range(1, size.counts.rounds + 1):
        sections = sections.after(increases.get(number, (0, 0, 0)))
        worked += sections.total(size.counts.line_stitches)
        if drop and number <= drop.rows:
            worked -= drop.centre + 2 * sum(row > number for row in drop.increase_rows)
    return worked


def knit_short_rows(size: KnittedSize) -> int:
    neck, raised = size.counts.neck, size.neck.raised
    if not raised or not raised.turns:
        return 0
    on_needle = NeckStitches(neck.back, neck.front, neck.sleeve, size.counts.line_stitches)
    rows_above, _, _ = knit(on_needle, raised)
    return sum(rows_above.values())


def knit_dart_rows(size: KnittedSize) -> int:
    """What the short rows over the bust add to the round that they belong to."""
    darts = size.body.bust_darts
    if darts is None:
        return 0
    back, front, _, _ = knit_darts(30, darts.front, darts.turns)
    return sum(back) + sum(front) - 30 - darts.front


def test_all_colours_together_are_every_stitch_worked(made):
    for size in sizes_of(made):
        yoke = knit_yoke_stitches(size)
        body, shaping = [size.counts.body], dict(size.body.shaping)
        for number in range(1, size.body.rounds + 1):
            body.append(body[-1] + shaping.get(number, 0))
        sleeve = [size.counts.sleeve]
        for number in range(1, size.sleeve.rounds + 1):
            sleeve.append(sleeve[-1] - 2 * (number in size.sleeve.decrease_rounds))
        fabric = yoke + sum(body[1:]) + 2 * sum(sleeve[1:])
        hem, cuff, band = size.body.hem, size.sleeve.cuff, size.band
        ribs = hem.rounds * hem.stitches + 2 * cuff.rounds * cuff.stitches + band.rounds * band.edge.stitches
        short_rows = knit_short_rows(size) + knit_dart_rows(size)
        (work,) = colour_work(size, None, ONE).values()
        assert work.stitches == fabric + short_rows + ribs
        if size.chart:
            assert sum(size.chart.stitches_by_colour.total.values()) == fabric


def test_a_dropped_front_in_a_chart_without_the_plain_colour_has_fewer_stitches_of_the_others():
    # every round works the chart's one colour, and there are no lines in the plain one
    chart = ChartWishes(chart=Chart(("#",), {".": Colour("ground"), "#": Colour("motif")}), plain_colour=".")
    dropped = replace(PLAIN, neck=NeckWishes(front_drop=Fraction(6)), yoke=yoke(line_stitches=0), chart=chart)
    made = grade_pullover(dropped)
    for size in sizes_of(made):
        (of_one,) = colour_work(size, None, ONE).values()
        works = colour_work(size, made.plan, made.colours)
        assert sum(work.stitches for work in works.values()) == of_one.stitches
        assert works["."].plain == works["."].stranded == 0


def test_a_weighed_swatch_tells_what_the_stitches_take_exactly():
    yarn = YarnWishes(metres_per_100g=Fraction(200), swatch_grams=Fraction(10), swatch_stitches=1000)
    for size in outcomes(grade_pullover(replace(PLAIN, yarn=yarn))):
        (need,) = size.yarn
        # a hundredth of a gram a stitch, and of a rib stitch likely as much; 200 m weigh 100 g
        made = need.metres_for["stitches"] + need.metres_for["ribs"]
        assert (need.basis, made) == ("measured", Fraction(need.stitches, 100) * 2)


def test_edges_and_ends_are_reckoned_by_their_counts():
    (size,) = outcomes(grade_pullover(replace(PLAIN, labels=("M",), yarn=YarnWishes(metres_per_100g=Fraction(200)))))
    (work,) = colour_work(size, None, ONE).values()
    underarms = 2 * size.counts.underarm
    assert work.cast_on == size.neck.cast_on.stitches + underarms
    assert work.picked_up == size.band.picked_up.stitches + underarms
    assert work.bound_off == size.body.hem.stitches + 2 * size.sleeve.cuff.stitches + size.band.edge.stitches
    # yoke and body, each sleeve and the neckband begin and end
    assert work.ends == 8


def test_a_float_takes_yarn_that_its_stitches_dont_say():
    yarn = YarnWishes(metres_per_100g=Fraction(200))
    (size,) = outcomes(grade_pullover(replace(PLAIN, labels=("M",), yarn=yarn, chart=ChartWishes(chart=DIAMOND))))
    # at the gauge of 22 stitches, and a tenth for ease
    for need in size.yarn:
        carried = size.chart.float_stitches_by_colour.total[need.symbol]
        assert need.metres_for["floats"] == Fraction(carried) * 10 / 22 * Fraction(11, 10) / 100


def test_an_edge_takes_its_own_colour_and_the_garment_all_else():
    colours = {
        "A": ColourYarn(metres_per_100g=Fraction(200)),
        "B": ColourYarn(metres_per_100g=Fraction(200), name="kelp"),
    }
    made = grade_pullover(
        replace(
            PLAIN,
            labels=("M",),
            yarn=YarnWishes(colours=colours),
            body=BodyWishes(hem=EdgeWishes(colour="B")),
            band=BandWishes(colour="B"),
        )
    )
    (size,) = outcomes(made)
    own, kelp = size.yarn
    assert (own.symbol, own.yarn, kelp.symbol, kelp.yarn) == ("A", "A", "B", "kelp")
    hem, band = size.body.hem, size.band
    assert kelp.stitches == hem.stitches * hem.rounds + band.edge.stitches * band.rounds
    assert {row.item for row in made.table if row.part == "yarn" and row.colour == "kelp"} == {
        "grams_2", "metres_2", "yards_2", "balls_2"
    }  # fmt: skip


def test_another_yarn_takes_as_many_metres_as_the_designs():
    design = YarnWishes(metres_per_100g=Fraction(200), swatch_grams=Fraction(10), swatch_stitches=1000)
    thicker = Changes(yarn=YarnWishes(metres_per_100g=Fraction(150)))
    (before,) = outcomes(grade_pullover(replace(PLAIN, labels=("M",), yarn=design)))
    made = grade_pullover(replace(PLAIN, labels=("M",), yarn=design, changes=thicker))
    (after,) = outcomes(made)
    assert after.yarn[0].metres == before.yarn[0].metres
    assert after.yarn[0].grams.likely == before.yarn[0].grams.likely * Fraction(200, 150)
    assert {number.item for number in made.changed} == {"grams_1", "balls_1"}


def test_a_makers_weighed_swatch_tells_what_her_own_yarn_takes():
    design = YarnWishes(metres_per_100g=Fraction(200), swatch_grams=Fraction(10), swatch_stitches=1000)
    own = Changes(yarn=YarnWishes(metres_per_100g=Fraction(150), swatch_grams=Fraction(16), swatch_stitches=1000))
    (size,) = outcomes(grade_pullover(replace(PLAIN, labels=("M",), yarn=design, changes=own)))
    (need,) = size.yarn
    # 0.016 g a stitch are 0.024 m at 150 m to 100 g
    assert need.metres_for["stitches"] + need.metres_for["ribs"] == need.stitches * Fraction(24, 1000)


def test_an_estimate_says_what_it_rests_on_and_a_measured_amount_doesnt():
    plain = replace(PLAIN, labels=("S", "M"), yarn=YarnWishes(metres_per_100g=Fraction(200)))
    (remark,) = [each for each in grade_pullover(plain).remarks if each.code == "estimated_yarn"]
    assert (remark.path, remark.message.values) == (("yarn",), {"least": Fraction(38, 10), "most": Fraction(42, 10)})
    weighed = replace(
        plain, yarn=YarnWishes(metres_per_100g=Fraction(200), swatch_grams=Fraction(9), swatch_stitches=900)
    )
    assert "estimated_yarn" not in [each.code for each in grade_pullover(weighed).remarks]


def test_the_designs_swatch_keeps_its_own_gauge_where_a_maker_knits_at_another():
    # 10 g of 200 m to 100 g for 1000 stitches: 2 cm for a stitch of 10/22 cm, and so 2.2 cm for one of a half
    yarn = YarnWishes(metres_per_100g=Fraction(200), swatch_grams=Fraction(10), swatch_stitches=1000)
    looser = Changes(gauges=Gauges(Gauge.over(Fraction(20), Fraction(28), Fraction(10))))
    (size,) = outcomes(grade_pullover(replace(PLAIN, labels=("M",), yarn=yarn, changes=looser)))
    (need,) = size.yarn
    assert need.metres_for["stitches"] + need.metres_for["ribs"] == need.stitches * Fraction(22, 1000)


def problems(request):
    with pytest.raises(ContradictionError) as refused:
        grade_pullover(request)
    return [(problem.path, problem.code) for problem in refused.value.problems]


def test_more_strands_than_one_answer_holds_are_refused_in_all_sizes_and_taken_in_fewer():
    strands = tuple(Strand(tex=Fraction(100)) for _ in range(6))
    colours = {chr(place): ColourYarn(strands=strands) for place in range(ord("A"), ord("T"))}
    yarn = YarnWishes(colours=colours, main_colour="A")
    # 19 colours of 6 strands in 9 sizes are 1026, in 8 of them 912
    assert problems(replace(PLAIN, yarn=yarn)) == [(("yarn",), "too_many_strands")]
    own = replace(PLAIN, yarn=YarnWishes(metres_per_100g=Fraction(200)), changes=Changes(yarn=yarn))
    assert (("changes", "yarn"), "too_many_strands") in problems(own)
    labels = ("XS", "S", "M", "L", "XL", "2X", "3X", "4X")
    assert len(grade_pullover(replace(PLAIN, yarn=yarn, answer_sizes=labels)).sizes) == 8


@pytest.mark.parametrize("table", ["women", "men", "children", "babies"])
@pytest.mark.parametrize("chart", [None, ChartWishes(chart=DIAMOND)], ids=["plain", "charted"])
def test_no_size_takes_less_yarn_of_a_colour_than_a_smaller_one(table, chart):
    yarn = YarnWishes(metres_per_100g=Fraction(200))
    made = outcomes(grade_pullover(replace(PLAIN, body_table=table, yarn=yarn, chart=chart)))
    for needs in zip(*(size.yarn for size in made), strict=True):
        metres = [need.metres.likely for need in needs]
        assert metres == sorted(metres)
