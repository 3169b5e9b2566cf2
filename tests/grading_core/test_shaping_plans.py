import random
from collections import Counter
from itertools import combinations, pairwise, product

import pytest

from grading_core.errors import ContradictionError, Impossible
from grading_core.shaping import Spacing
from grading_core.shaping_plans import (
    AcrossPlan,
    AcrossSchedule,
    Change,
    Edge,
    RowPlan,
    RowSchedule,
    ShapingRequest,
    Worked,
    across_row,
    along_rows,
    plan_problems,
    shaping_schedules,
)
from tests.oracles.fewest_phases import fewest_phases

SPACINGS: tuple[Spacing, ...] = ("closest_first", "widest_first", "even", "single_then_plain", "plain_then_single")
CHANGES: tuple[Change, ...] = ("increase", "decrease")
FLAT: tuple[tuple[Worked, Edge], ...] = (("flat", "half"), ("flat", "full"))
WAYS: tuple[tuple[Worked, Edge], ...] = (("round", "half"), *FLAT)


def random_plans(seed: int, many: int) -> list[RowPlan]:
    generator = random.Random(seed)
    plans = []
    while len(plans) < many:
        each = generator.choice((1, 2, 2, 4))
        stitches, shapings = generator.randint(10, 90), generator.randint(0, 30)
        to = stitches + each * generator.choice((-shapings, shapings))
        plan = RowPlan(
            name="sleeve",
            stitches=stitches,
            to=to,
            rows=generator.randint(1, 120),
            stitches_per_shaping=each,
            step=generator.choice((1, 2)),
            spacing=generator.choice(SPACINGS),
            plain_before=generator.choice((0, 0, 1, 5)),
            plain_after=generator.choice((0, 0, 2, 7)),
            worked=generator.choice((None, "round", "flat")),
        )
        if to >= 0 and not [*plan_problems([plan])]:
            plans.append(plan)
    return plans


def schedules(seed: int, many: int) -> list[RowSchedule]:
    """The schedules of random plans: seven in ten at least, all but a few with shaping rows."""
    found = [made for made in map(along_rows, random_plans(seed, many)) if isinstance(made, RowSchedule)]
    assert 10 * len(found) >= 7 * many
    assert 10 * sum(bool(made.shaping_rows) for made in found) >= 9 * len(found)
    return found


def enough_rows(plan: RowPlan) -> bool:
    """By counting out the grid."""
    free = range(plan.plain_before + 1, plan.rows - plan.plain_after + 1)
    grid = [row for row in free if (row - plan.plain_before) % plan.step == 0]
    return len(grid) * plan.stitches_per_shaping >= abs(plan.to - plan.stitches)


# Along rows


def test_working_every_shaping_row_arrives_at_the_count_wanted() -> None:
    for made in schedules(1, 300):
        gained = len(made.shaping_rows) * made.plan.stitches_per_shaping
        assert made.plan.stitches + (gained if made.plan.to > made.plan.stitches else -gained) == made.plan.to


def test_shaping_rows_lie_on_the_grid_between_the_rows_kept_plain() -> None:
    for made in schedules(2, 300):
        plan = made.plan
        for row in made.shaping_rows:
            assert plan.plain_before < row <= plan.rows - plan.plain_after
            assert (row - plan.plain_before) % plan.step == 0


def test_plain_rows_and_intervals_make_up_all_rows() -> None:
    for made in schedules(3, 300):
        worked = sum(every * times for every, times in made.intervals)
        assert made.plain_before + worked + made.plain_after == made.plan.rows
        assert sum(times for _, times in made.intervals) == len(made.shaping_rows)


def test_intervals_are_those_between_the_shaping_rows_in_the_order_of_first_use() -> None:
    for made in schedules(4, 300):
        gaps = [after - before for before, after in pairwise((made.plain_before, *made.shaping_rows))]
        assert made.intervals == tuple((gap, gaps.count(gap)) for gap in dict.fromkeys(gaps))


def test_there_are_at_most_two_intervals_one_step_of_the_grid_apart() -> None:
    for made in schedules(5, 300):
        every = [interval for interval, _ in made.intervals]
        most = 2 if made.plan.spacing in SPACINGS[:3] else 1
        assert len(every) <= most
        assert max(every, default=0) - min(every, default=0) in (0, made.plan.step)


def test_two_intervals_leave_fewer_rows_than_one_step_unused() -> None:
    checked = 0
    for made in schedules(6, 300):
        if made.plan.spacing in SPACINGS[:3] and made.shaping_rows:
            assert made.plain_before == made.plan.plain_before
            assert 0 <= made.plain_after - made.plan.plain_after < made.plan.step
            checked += 1
    assert checked >= 100


def test_phases_cover_all_rows_expand_back_to_the_shaping_rows_and_are_the_fewest() -> None:
    for made in schedules(7, 300):
        row, rows = 0, []
        for phase in made.phases:
            assert phase.from_row == row + 1
            for interval, _ in phase.cycle * phase.times:
                row += interval
                rows.append(row)
            row = phase.to_row
        assert row == made.plan.rows
        assert tuple(rows) == made.shaping_rows
        kept_plain = made.plain_before
        events = [(number - kept_plain, "shape") for number in rows]
        least = fewest_phases(events, made.plan.rows - kept_plain)
        starts_plain = bool(kept_plain) and made.phases[0].to_row == kept_plain
        assert len(made.phases) == least + starts_plain


def test_no_two_plain_stretches_follow_one_another() -> None:
    for made in schedules(8, 400):
        for before, after in pairwise(made.phases):
            assert before.times or after.times


def test_the_instructions_read_back_are_the_schedule() -> None:
    for made in schedules(9, 300):
        plan = made.plan
        grows = plan.to > plan.stitches
        count, row, rows = plan.stitches, 0, []
        for sentence in made.instructions():
            told = sentence.values
            if sentence.id == "shaping.right_side":
                continue
            assert (told["first"], told["rows"]) == (row + 1, told["last"] - row)
            if sentence.id != "shaping.plain":
                assert sentence.id.startswith("shaping.increase" if grows else "shaping.decrease")
                for interval in told.get("cycle", (told.get("every"),)) * told["times"]:
                    row += interval
                    rows.append(row)
                    count += told["change"] if grows else -told["change"]
                assert (told["last"], told["stitches"]) == (row, count)
            row = told["last"]
        assert (row, tuple(rows), count) == (plan.rows, made.shaping_rows, plan.to)


def test_right_side_rows_are_said_by_the_side_of_the_first_row() -> None:
    sides: Counter[str] = Counter()
    for made in schedules(12, 300):
        first, *others = made.instructions()
        if made.plan.flat and made.plan.step == 2 and made.shaping_rows:
            # rows alternate: all shaping rows are as far from row 1 as right-side rows are
            side = "right" if all(row % 2 == 1 for row in made.shaping_rows) else "wrong"
            assert (first.id, first.values) == ("shaping.right_side", {"side": side})
            assert len({row % 2 for row in made.shaping_rows}) == 1
            sides[side] += 1
            first = others[0]
        assert all(each.id != "shaping.right_side" for each in (first, *others[1:]))
    assert min(sides["right"], sides["wrong"]) >= 15


@pytest.mark.parametrize(
    ("step", "worked", "told"), [(1, None, "round"), (2, None, "flat"), (1, "flat", "flat"), (2, "round", "round")]
)
def test_rows_or_rounds_are_said_as_they_are_worked(step: int, worked: Worked | None, told: str) -> None:
    made = along_rows(RowPlan(name="side", stitches=40, to=30, rows=20, step=step, worked=worked))
    assert isinstance(made, RowSchedule)
    assert made.instructions()[-1].values["worked"] == told


def test_a_plan_is_impossible_only_where_the_grid_has_too_few_rows() -> None:
    refused = 0
    for plan in random_plans(10, 400):
        assert isinstance(along_rows(plan), RowSchedule) == enough_rows(plan)
        refused += not enough_rows(plan)
    assert refused >= 50


def change_of(plan: RowPlan, field: str, value: object) -> RowPlan:
    return RowPlan(**{name: getattr(plan, name) for name in plan.__slots__} | {field: value})


def test_every_nearest_change_of_a_plan_is_just_enough_and_every_one_that_would_do_is_named() -> None:
    refused = 0
    for plan in random_plans(11, 600):
        made = along_rows(plan)
        if not isinstance(made, Impossible):
            continue
        refused += 1
        expected = {"rows": next(rows for rows in range(500) if enough_rows(change_of(plan, "rows", rows)))}
        if enough_rows(change_of(plan, "step", 1)):
            expected["step"] = 1
        for field in ("plain_before", "plain_after"):
            would_do = [n for n in range(getattr(plan, field)) if enough_rows(change_of(plan, field, n))]
            if would_do:
                expected[field] = max(would_do)
        assert {near.field: near.value for near in made.nearest} == expected, plan
    assert refused > 50


def test_each_plan_that_contradicts_itself_is_named() -> None:
    plans = [
        RowPlan(name="right", stitches=60, to=46, rows=90),
        RowPlan(name="odd difference", stitches=60, to=45, rows=90),
        RowPlan(name="more plain rows than rows", stitches=60, to=46, rows=9, plain_before=5, plain_after=5),
        AcrossPlan(name="nothing left", stitches=20, across=20, change="decrease"),
        AcrossPlan(name="right", stitches=20, across=20, change="increase"),
    ]
    paths = [("plans", 1, "to"), ("plans", 2, "rows"), ("plans", 3, "across")]
    assert [problem.path for problem in plan_problems(plans)] == paths
    with pytest.raises(ContradictionError):
        shaping_schedules(ShapingRequest(tuple(plans)))


def test_schedules_come_back_in_the_order_of_their_plans() -> None:
    plans = (
        AcrossPlan(name="hem", stitches=48, across=6, change="increase"),
        RowPlan(name="sleeve", stitches=60, to=46, rows=90),
        RowPlan(name="none", stitches=60, to=0, rows=3),
    )
    assert tuple(each.plan for each in shaping_schedules(ShapingRequest(plans)).plans) == plans


# Across a row


def all_across(top: int) -> list[AcrossPlan]:
    return [
        AcrossPlan(name="yoke", stitches=stitches, across=across, change=change, worked=worked, edge=edge)
        for stitches in range(1, top)
        for across in range(1, stitches + 1)
        for change, (worked, edge) in product(CHANGES, WAYS)
    ]


def rows_across(top: int) -> list[AcrossSchedule]:
    """Those of all plans that can be worked: six in ten at least, most increases and half of the decreases."""
    plans = all_across(top)
    found = [made for made in map(across_row, plans) if isinstance(made, AcrossSchedule)]
    assert 10 * len(found) >= 6 * len(plans)
    return found


def worked_out(made: AcrossSchedule) -> list[str]:
    """The row stitch by stitch: "k" an old stitch worked, "+" a new one, "2" two old ones worked together."""
    plan, row, done = made.plan, [], 0
    used = 2 if plan.change == "decrease" else 0
    for place in made.after:
        row += ["k"] * (place - used - done) + ["2" if used else "+"]
        assert place - used - done >= 0
        done = place
    return row + ["k"] * (plan.stitches - done)


def test_a_row_worked_stitch_by_stitch_uses_every_stitch_and_ends_with_the_count_said() -> None:
    for made in rows_across(26):
        plan = made.plan
        row = worked_out(made)
        assert row.count("k") + 2 * row.count("2") == plan.stitches
        assert row.count("2") + row.count("+") == plan.across
        assert len(row) == made.result


def can_be_worked(plan: AcrossPlan) -> bool:
    """By trying: one shaping at a place, every stitch in at most one, none at the edges of a flat row."""
    if plan.change == "increase":
        places = plan.stitches - 1 if plan.worked == "flat" else plan.stitches
        return plan.across <= places
    free = plan.stitches - 2 if plan.worked == "flat" else plan.stitches
    starts = range(max(0, free - 1))
    return any(
        all(after - before >= 2 for before, after in pairwise(chosen)) for chosen in combinations(starts, plan.across)
    )


def test_a_row_is_impossible_only_where_no_placing_at_all_would_do() -> None:
    for plan in all_across(13):
        assert isinstance(across_row(plan), AcrossSchedule) == can_be_worked(plan), plan


def test_the_nearest_number_across_a_row_is_the_most_that_can_be_worked() -> None:
    refused = 0
    for plan in all_across(12):
        made = across_row(plan)
        if isinstance(made, Impossible):
            refused += 1
            fits = [
                across
                for across in range(1, plan.across)
                if can_be_worked(
                    AcrossPlan(
                        name="",
                        stitches=plan.stitches,
                        across=across,
                        change=plan.change,
                        worked=plan.worked,
                        edge=plan.edge,
                    )
                )
            ]
            assert [(near.field, near.value) for near in made.nearest] == ([("across", max(fits))] if fits else [])
    assert refused >= 100


@pytest.mark.parametrize("change", CHANGES)
def test_no_shaping_of_a_flat_row_falls_on_an_edge(change: Change) -> None:
    for made in rows_across(30):
        if made.plan.worked == "flat" and made.plan.change == change:
            row = worked_out(made)
            assert row[0] == row[-1] == "k"


def test_the_distances_across_a_row_are_at_most_two_neighbouring_numbers() -> None:
    for made in rows_across(40):
        distances = [distance for distance, _ in made.intervals]
        assert max(distances, default=0) - min(distances, default=0) <= 1
        assert len(distances) <= 2


def test_in_the_round_the_larger_distances_come_first_and_together_are_the_round() -> None:
    for made in rows_across(30):
        plan = made.plan
        if plan.worked == "round":
            distances = [after - before for before, after in pairwise((0, *made.after))]
            assert distances == sorted(distances, reverse=True)
            assert sum(distances) == plan.stitches


def test_the_edge_gaps_of_a_flat_row_are_half_the_others_to_half_a_stitch() -> None:
    for made in rows_across(40):
        plan = made.plan
        share = plan.stitches / plan.across
        if (plan.worked, plan.edge) == ("flat", "half") and share >= 4:
            middle = 1 if plan.change == "decrease" else 0  # a decrease ends one stitch after its middle
            assert abs(made.first - middle - share / 2) <= 0.5
            assert abs(made.last + middle - share / 2) <= 0.5


def test_the_sections_of_a_flat_row_with_full_edges_are_equal_to_a_stitch() -> None:
    for made in rows_across(40):
        plan = made.plan
        if (plan.worked, plan.edge) == ("flat", "full"):
            shaped = "2" if plan.change == "decrease" else "+"
            sections = [len(section) for section in "".join(worked_out(made)).split(shaped)]
            assert max(sections) - min(sections) <= 1


def test_the_first_and_the_last_gap_are_those_of_the_row() -> None:
    for made in rows_across(20):
        plan = made.plan
        assert made.first == (made.after[0] if plan.worked == "flat" else 0)
        assert made.last == plan.stitches - made.after[-1]


def test_the_sentence_for_a_row_read_back_is_the_row() -> None:
    for made in rows_across(24):
        (sentence,) = made.instructions()
        row: list[str] = []
        for step in sentence.values["steps"]:
            told = step.values
            if step.id == "across.work":
                row += ["k"] * told["stitches"]
            else:
                row += [*["k"] * told["gap"], {"across.increase": "+", "across.decrease": "2"}[step.id]] * told["times"]
        assert (row, sentence.values["stitches"]) == (worked_out(made), made.result)
