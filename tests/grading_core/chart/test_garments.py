"""Whole garments, knitted stitch by stitch in `knitted_charts` and compared with the placement of the same
plan."""

import random
from collections import Counter
from dataclasses import replace
from fractions import Fraction

from grading_core.chart.drawn_rounds import chart_view
from grading_core.chart.front import front_view
from grading_core.chart.grid import Anchor, Chart, Colour
from grading_core.chart.layout import Stretches, lay_out
from grading_core.chart.placement import place_charts
from grading_core.chart.request import (
    BodyShaping,
    ChartPictureRequest,
    ChartRequest,
    ChartSize,
    MinimumWidth,
    SeamStitches,
)
from grading_core.gauge import Gauge
from grading_core.sections import IncreaseRound, Sections
from tests.grading_core.chart.knitted_charts import knit

GAUGE = Gauge.over(Fraction(22), Fraction(31), Fraction(10))
SEEDS = range(250)


def random_plan(seed):
    """A small garment of two sizes with any mix of what the chart may meet."""
    draw = random.Random(seed)
    width, height = draw.randint(1, draw.choice((4, 9, 24))), draw.randint(1, 7)
    symbols = ".#ox"[: draw.choice((1, 2, 2, 2, 3, 4))]
    weights = [6, *[1] * (len(symbols) - 1)]
    rows = tuple("".join(draw.choices(symbols, weights, k=width)) for _ in range(height))
    chart = Chart(
        rows, {s: Colour(s) for s in ".#ox"}, draw.choice(("bottom", "top")), draw.choice(("rows", "rows", "once"))
    )
    shift = draw.random() < 0.3
    back, front, sleeve = (draw.randint(1, 9) for _ in range(3))
    lines = draw.randint(0, 4)
    # Underarms and seams agree in parity unless shifts are accepted.
    seam_parity = draw.choice((None, 0, 1))
    seams = [
        draw.choice((None, draw.randint(0, 2)) if shift else (None, seam_parity, seam_parity))
        for _ in ("body", "sleeve")
    ]
    sizes = []
    for label in ("S", "L"):
        underarm = draw.randint(0, 9)
        if not shift and seam_parity is not None:
            underarm = 2 * (underarm // 2) + seam_parity
        odd = 1 if shift else 0
        neck = Sections(*(n + 2 * draw.randint(0, 3) + draw.randint(0, odd) for n in (back, front, sleeve)))
        sizes.append(random_size(draw, label, neck, underarm))
    anchors = [
        Fraction(draw.choice([t for t in range(2, 2 * width + 2) if shift or t % 2 != n % 2] or [3 - n % 2]), 2)
        for n in (back, front, sleeve)
    ]
    return ChartRequest(
        chart=chart,
        anchor=Anchor(*anchors),
        gauge=GAUGE,
        sizes=sizes,
        first_round=draw.randint(1, 14),
        minimum_width=MinimumWidth(draw.choice((0, draw.randint(0, 25))), draw.choice((0, draw.randint(0, 25)))),
        plain_colour=draw.choice(".#x"),
        line_stitches=lines,
        line_to_body=draw.choice((None, draw.randint(0, lines))),
        below_colour=draw.choice((None, "#", "o")),
        line_colour=draw.choice((None, ".", "o")),
        seam_stitches=SeamStitches(*seams),
        seam_colour=draw.choice((None, ".", "x")),
        half_stitch="shift" if shift else "refuse",
        exchange=draw.choice((None, tuple(draw.sample(".#ox", 2)))),
        partial_motifs=draw.choice(("work", "plain")),
        motif_columns=draw.choice((None, *(n for n in range(1, width + 1) if width % n == 0))),
    )


def random_size(draw, label, neck, underarm):
    rounds, body_rounds, sleeve_rounds = draw.randint(1, 12), draw.randint(0, 12), draw.randint(0, 12)
    increases = [
        IncreaseRound(number, draw.randint(0, 2), draw.randint(0, 2), draw.randint(0, 1))
        for number in range(1, rounds + 1)
        if draw.random() < 0.6
    ]
    draw.shuffle(increases)
    shaping = [
        BodyShaping(number, draw.choice((-4, 4, 8))) for number in range(1, body_rounds + 1) if draw.random() < 0.2
    ]
    widest = neck.sleeve + 2 * sum(step.sleeve for step in increases) + underarm - 3
    decreases = [n for n in range(1, sleeve_rounds + 1) if draw.random() < 0.4][: max(0, (widest - 1) // 2)]
    narrowest = min(neck.back, neck.front) + underarm - 2
    if narrowest - 2 * sum(step.stitches < 0 for step in shaping) < 1:
        shaping = [step for step in shaping if step.stitches > 0]
    if narrowest < 1:
        body_rounds, shaping = 0, []
    if widest < 1:
        sleeve_rounds, decreases = 0, []
    return ChartSize(
        label=label,
        rounds=rounds,
        neck=neck,
        increase_rounds=increases,
        underarm=underarm,
        body_rounds=body_rounds,
        body_shaping=shaping,
        sleeve_rounds=sleeve_rounds,
        sleeve_decrease_rounds=decreases,
    )


PLANS = [random_plan(seed) for seed in SEEDS]
GARMENTS = [
    (plan, placed, knit(plan, size))
    for plan in PLANS
    for size, placed in zip(plan.sizes, place_charts(plan).sizes, strict=True)
]
PARTS = ("yoke", "body", "sleeve")


def every_garment(test):
    """Run a test for each garment in turn; pytest shows the one that fails."""

    def run():
        for plan, placed, garment in GARMENTS:
            test(plan, placed, garment)

    run.__name__ = test.__name__
    run.__doc__ = test.__doc__
    return run


def rounds_of(placed, part):
    return {"yoke": placed.rounds, "body": placed.body.rounds, "sleeve": placed.sleeve.rounds}[part]


def printed(section):
    return (section.stitches, section.first_column, section.last_column, section.plain_before, section.plain_after)


def worked(plan, knitted, section):
    columns = [stitch.column for stitch in knitted if stitch.section == section]
    charted = [place for place, column in enumerate(columns) if column is not None]
    if not charted:
        return (len(columns), None, None, None, None)
    first, last = charted[0], charted[-1]
    plain = (first, len(columns) - last - 1) if plan.partial_motifs == "plain" else (None, None)
    return (len(columns), columns[first], columns[last], *plain)


def test_the_random_garments_cover_every_branch_of_the_craft():
    plans = [plan for plan in PLANS if any(size.body_rounds and size.sleeve_rounds for size in plan.sizes)]
    assert any(plan.half_stitch == "shift" for plan in plans)
    assert any(plan.chart.repeat == "once" for plan in plans)
    assert any(size.body_shaping for plan in plans for size in plan.sizes)
    assert any(size.sleeve_decrease_rounds for plan in plans for size in plan.sizes)
    assert any(lay_out(plan, plan.sizes[0], Stretches(plan, plan.plain_colours())).off_centre for plan in plans)
    cut = [placed for plan, placed, _ in GARMENTS if plan.partial_motifs == "plain" and plan.motif_columns != 1]
    assert any(here.back.plain_before and here.back.plain_after for placed in cut for here in placed.rounds)
    assert any(len(placed.motifs.back) > 2 for placed in cut)
    assert any(each.motifs == 0 for placed in cut for each in placed.sleeve.motifs)
    assert any(plan.below_colour and plan.chart.repeat == "once" for plan in plans)
    assert any(step.back == 2 and step.front == 1 for plan in plans for step in plan.sizes[0].increase_rounds)


@every_garment
def test_every_section_starts_and_ends_where_it_was_knitted(plan, placed, garment):
    for here, knitted in zip(placed.rounds, garment.rounds["yoke"], strict=True):
        assert printed(here.back) == worked(plan, knitted, "back")
        assert printed(here.front) == worked(plan, knitted, "front")
        assert printed(here.sleeve) == worked(plan, knitted, "first_sleeve") == worked(plan, knitted, "second_sleeve")
    for here, knitted in zip(placed.body.rounds, garment.rounds["body"], strict=True):
        assert printed(here.back) == worked(plan, knitted, "back")
        assert printed(here.front) == worked(plan, knitted, "front")
    for here, knitted in zip(placed.sleeve.rounds, garment.rounds["sleeve"], strict=True):
        assert printed(here) == worked(plan, knitted, "sleeve")


@every_garment
def test_chart_rows_run_on_through_the_split(plan, placed, garment):
    for part in PARTS:
        assert [here.chart_row for here in rounds_of(placed, part)] == garment.rows[part]


@every_garment
def test_each_rounds_colours_and_longest_float_are_those_of_the_fabric(plan, placed, garment):
    for part in PARTS:
        assert [here.colours for here in rounds_of(placed, part)] == [len(set(row)) for row in garment.colours(part)]
        assert [here.longest_float for here in rounds_of(placed, part)] == [
            max((length for length, _ in floats), default=0) for floats in garment.floats(part)
        ]


@every_garment
def test_the_longest_float_lies_between_two_stitches_of_its_colour(plan, placed, garment):
    lengths = [length for part in PARTS for floats in garment.floats(part) for length, _ in floats]
    found = placed.longest_float
    if found is None:
        assert max(lengths, default=0) == 0
        return
    assert found.stitches == max(lengths)
    assert (found.stitches, found.colour) in garment.floats(found.part)[found.round - 1]
    strand = [
        (number, stitch)
        for number, knitted in enumerate(garment.rounds[found.part], 1)
        for stitch in knitted
        if number in (found.start.round, found.end.round)
    ]
    ends = (
        (found.start.round, found.start.section, found.start.column, found.colour),
        (found.end.round, found.end.section, found.end.column, found.colour),
    )
    assert any(
        tuple((number, stitch.section, stitch.column, stitch.colour) for number, stitch in (first, last)) == ends
        and all(stitch.colour != found.colour for _, stitch in between)
        for (first, *between, last) in (
            strand[place : place + found.stitches + 2] for place in range(len(strand) - found.stitches - 1)
        )
    )


@every_garment
def test_stitches_of_each_colour_are_counted_exactly(plan, placed, garment):
    counts = placed.stitches_by_colour
    yoke, body, sleeve = (garment.count(part) for part in PARTS)
    assert_counts(plan, counts, yoke, body, sleeve)


@every_garment
def test_the_stitches_behind_which_each_colour_is_carried_are_those_of_its_floats(plan, placed, garment):
    carried = []
    for part in PARTS:
        carried.append(Counter())
        for floats in garment.floats(part):
            for length, colour in floats:
                carried[-1][colour] += length
    assert_counts(plan, placed.float_stitches_by_colour, *carried)


def assert_counts(plan, counts, yoke, body, sleeve):
    for symbol in plan.chart.colours:
        assert counts.yoke[symbol] == yoke[symbol]
        assert counts.body[symbol] == body[symbol]
        assert counts.sleeves[symbol] == 2 * sleeve[symbol]
        assert counts.total[symbol] == yoke[symbol] + body[symbol] + 2 * sleeve[symbol]


@every_garment
def test_changes_name_the_rounds_whose_first_column_differs(plan, placed, garment):
    def changed(part, section):
        starts = [worked(plan, knitted, section)[1] for knitted in garment.rounds[part]]
        return tuple(n for n in range(2, len(starts) + 1) if starts[n - 1] != starts[n - 2])

    assert placed.changes.back == changed("yoke", "back")
    assert placed.changes.front == changed("yoke", "front")
    assert placed.changes.sleeve == changed("yoke", "second_sleeve")
    assert placed.body.changes.back == changed("body", "back")
    assert placed.body.changes.front == changed("body", "front")
    assert placed.sleeve.changes == changed("sleeve", "sleeve")


@every_garment
def test_whole_motifs_are_counted_wherever_their_number_changes(plan, placed, garment):
    if plan.partial_motifs == "work":
        assert placed.motifs is placed.body.motifs is placed.sleeve.motifs is None
        return
    columns = plan.motif_columns or plan.chart.width

    def counted(part, section):
        found, before = [], 0
        for number, (row, knitted) in enumerate(zip(garment.rows[part], garment.rounds[part], strict=True), 1):
            here = sum(stitch.section == section and stitch.column is not None for stitch in knitted) // columns
            if row is not None and here != before:
                found.append((here, number))
                before = here
        return found

    def told(motifs):
        return [(each.motifs, each.from_round) for each in motifs]

    assert told(placed.motifs.back) == counted("yoke", "back")
    assert told(placed.motifs.front) == counted("yoke", "front")
    assert told(placed.motifs.sleeve) == counted("yoke", "first_sleeve")
    assert told(placed.body.motifs.back) == counted("body", "back")
    assert told(placed.body.motifs.front) == counted("body", "front")
    assert told(placed.sleeve.motifs) == counted("sleeve", "sleeve")


@every_garment
def test_the_shortest_body_ends_with_the_charts_last_row(plan, placed, garment):
    """Worked off row by row: rounds below the split until the repeat begun in the yoke, or the first, is
    done."""
    yoke, left, number = garment.rows["yoke"], 0, len(garment.rows["yoke"])
    row = yoke[-1]
    finished_once = plan.chart.repeat == "once" and number >= plan.first_round and row is None
    while not finished_once and row != plan.chart.height:
        number, left = number + 1, left + 1
        row = 1 if number == plan.first_round else None if row is None else row + 1
    assert placed.shortest_body.rounds == placed.shortest_sleeve.rounds == left


@every_garment
def test_the_front_view_shows_the_front_as_it_was_knitted(plan, placed, garment):
    view = front_view(ChartPictureRequest(plan, placed.label))
    for seen, knitted in zip(view.yoke, garment.rounds["yoke"], strict=True):
        ring = "".join(stitch.colour for stitch in knitted)
        names = [stitch.section for stitch in knitted]
        first, second = names.index("first_sleeve"), names.index("second_sleeve")
        half = names.count("first_sleeve") // 2
        # From the middle of the one sleeve to the middle of the other: worn neck up, the work runs to the right.
        shown = ring[first + half : second + names.count("second_sleeve") - half]
        assert seen.first_sleeve + seen.line + seen.front + seen.line + seen.second_sleeve == shown
    for seen, knitted in zip(view.body, garment.rounds["body"], strict=True):
        names = [stitch.section for stitch in knitted]
        start, end = names.index("front"), len(names) - names[::-1].index("front")
        # half of the stitches between back and front at either side, with the middle one
        seam = -(-(len(names) - end) // 2)
        assert view.body_seam == seam
        assert seen == "".join(stitch.colour for stitch in knitted[start - seam : end + seam])
    for first, second, knitted in zip(view.first_sleeve, view.second_sleeve, garment.rounds["sleeve"], strict=True):
        colours = "".join(s.colour for s in knitted if s.section == "sleeve")
        under = "".join(s.colour for s in knitted if s.section == "seam")
        seam = -(-len(under) // 2)
        assert view.sleeve_seam == seam
        assert first == colours[len(colours) // 2 :] + under[:seam]
        assert second == under[len(under) - seam :] + colours[: (len(colours) + 1) // 2]


@every_garment
def test_the_rounds_drawn_start_as_they_were_knitted(plan, placed, garment):
    view = chart_view(ChartPictureRequest(plan, placed.label))
    assert view.rounds or not garment.rounds["yoke"] or plan.first_round > 1
    for drawn in view.rounds:
        starts = {start.section: (start.column, start.before) for start in drawn.starts}
        kinds = ("yoke", "yoke", "yoke") if drawn.part == "yoke" else ("body", "body", "sleeve")
        for part, section in zip(kinds, ("back", "front", "sleeve"), strict=True):
            if drawn.number > len(garment.rounds[part]):
                assert section not in starts
                continue
            knitted = garment.rounds[part][drawn.number - 1]
            stitch_kind = "first_sleeve" if (part, section) == ("yoke", "sleeve") else section
            stitches, column, _, before, _ = worked(plan, knitted, stitch_kind)
            if stitches:
                drawn_as = "body" if section != "sleeve" and "body" in view.sections else section
                assert starts[drawn_as] == (column, before or 0)


@every_garment
def test_colour_counts_sum_to_the_garments_stitches(plan, placed, garment):
    stitches = sum(r.back.stitches + r.front.stitches + 2 * r.sleeve.stitches for r in placed.rounds)
    stitches += 4 * plan.line_stitches * len(placed.rounds)
    assert sum(placed.stitches_by_colour.yoke.values()) == stitches


def test_an_anchor_one_column_further_moves_every_column_by_one():
    for plan in PLANS:
        if plan.partial_motifs == "plain":
            continue  # motifs stand where they are in the chart, so others are cut
        width = plan.chart.width
        moved = Anchor(*(anchor % width + 1 for anchor in (plan.anchor.back, plan.anchor.front, plan.anchor.sleeve)))
        for here, there in zip(place_charts(plan).sizes, place_charts(replace(plan, anchor=moved)).sizes, strict=True):
            for part in PARTS:
                assert columns(rounds_of(there, part)) == [
                    None if column is None else column % width + 1 for column in columns(rounds_of(here, part))
                ]


def columns(rounds):
    """Every first and last column of a part, in one list."""
    sections = [
        getattr(here, name, None) for here in rounds for name in ("back", "front", "sleeve") if hasattr(here, name)
    ]
    return [column for section in sections or rounds for column in (section.first_column, section.last_column)]


def test_a_garment_of_one_colour_has_no_floats():
    for plan in PLANS:
        rows = tuple("." * plan.chart.width for _ in plan.chart.rows)
        one_colour = {"plain_colour": ".", "below_colour": None, "line_colour": None, "seam_colour": None}
        plain = replace(plan, chart=replace(plan.chart, rows=rows), exchange=None, **one_colour)
        for placed in place_charts(plain).sizes:
            assert placed.longest_float is None
            assert {here.longest_float for part in PARTS for here in rounds_of(placed, part)} <= {0}


def test_sizes_sent_in_another_order_get_the_same_answers():
    for plan in PLANS:
        turned = replace(plan, sizes=plan.sizes[::-1])
        assert place_charts(turned).sizes == place_charts(plan).sizes[::-1]
