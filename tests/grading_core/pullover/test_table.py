from dataclasses import replace
from decimal import Decimal
from fractions import Fraction
from typing import get_args

import pint
import pytest

from grading_core.codes import ReasonCode
from grading_core.errors import Impossible
from grading_core.printing import Printing, printed_as
from grading_core.pullover.colours import garment_colours
from grading_core.pullover.grade import grade_pullover
from grading_core.pullover.request import YarnWishes
from grading_core.pullover.result import PART_TITLES, Instructions, Part, TablePart
from grading_core.pullover.table import garment_table, yarn_table
from grading_core.units import CM_PER_INCH
from tests.grading_core.pullover.knitted_pullovers import PLAIN, REQUESTS


@pytest.fixture(scope="module")
def sizes():
    return [size.outcome for size in grade_pullover(PLAIN).sizes]


def keyed(rows):
    return {(row.part, row.item): row for row in rows}


def test_a_row_is_told_by_its_part_and_its_item(sizes):
    rows = garment_table(sizes)
    assert len(keyed(rows)) == len(rows) > 40
    assert [*dict.fromkeys(row.part for row in rows)] == [part for part in get_args(TablePart) if part != "yarn"]


def test_a_row_s_title_is_named_by_part_and_item(sizes):
    assert [row.title.id for row in garment_table(sizes)] == [
        f"title.{row.part}_{row.item}" for row in garment_table(sizes)
    ]


def test_every_part_of_instructions_and_of_the_table_has_a_title():
    assert {part: title.id for part, title in PART_TITLES.items()} == {
        part: f"title.part_{part}" for part in (*get_args(Part), *get_args(TablePart))
    }
    assert Instructions("yoke", ()).title.id == "title.part_yoke"


def test_every_size_has_a_value_in_every_row_but_those_of_parts_that_it_is_without(sizes):
    rows = garment_table([sizes[0], Impossible(ReasonCode.NOTHING_LEFT, "too narrow"), sizes[1]])
    assert {row.values[1] for row in rows} == {None}
    without = {(row.part, row.item) for row in rows if row.values == (None, None, None)}
    assert without == {("neck", "front_drop"), ("body", "bust_dart_rows"), ("finished", "front_extra")}
    assert all(None not in (row.values[0], row.values[2]) for row in rows if (row.part, row.item) not in without)


def test_the_rows_to_fit_are_the_tables_body_and_what_the_garment_measures_beyond_it(sizes):
    # Craft Yarn Council, woman size chart: bust of XS 28 to 30 in; the middle counts.
    rows = keyed(garment_table(sizes))
    bust, ease = rows["to_fit", "bust"].values[0], rows["to_fit", "ease"].values[0]
    assert bust == 29 * CM_PER_INCH
    assert ease == rows["finished", "bust"].values[0] - bust


def test_lengths_are_printed_in_both_units_to_the_steps_that_are_asked(sizes):
    # Printed here to hundredths, so that what is printed is the number itself.
    fine = Printing(cm_step=Fraction(1, 100), inch_step=Fraction(1, 100), decimal_mark=",", missing="none")
    with printed_as(fine):
        rows = garment_table([sizes[0], Impossible(ReasonCode.NOTHING_LEFT, "too narrow")])
    for row in rows:
        value, _ = row.values
        assert row.printed[1] == "none"
        assert (row.printed_inch is None) == (row.unit != "cm")
        if row.unit == "cm" and value is not None:
            cm, inch = (Decimal(printed[0].replace(",", ".")) for printed in (row.printed, row.printed_inch))
            assert abs(Fraction(cm) - value) <= Fraction(1, 200)
            assert abs(Fraction(inch) * CM_PER_INCH - value) <= CM_PER_INCH / 200
        else:
            assert row.printed[0] == ("none" if value is None else str(value))


def test_yarn_is_told_by_colour_in_grams_metres_yards_and_balls():
    # The international yard of 1959 is 0.9144 m; Pint 0.25 turns metres into yards.
    yarn = YarnWishes(metres_per_100g=Fraction(200))
    made = grade_pullover(replace(PLAIN, yarn=yarn))
    rows = keyed(row for row in made.table if row.part == "yarn")
    assert [item for _, item in rows] == ["grams_1", "metres_1", "yards_1", "balls_1"]
    yards = pint.UnitRegistry(non_int_type=Fraction).Quantity
    for place, size in enumerate(made.sizes):
        (need,) = size.outcome.yarn
        values = {item: row.values[place] for (_, item), row in rows.items()}
        assert values["grams_1"] == need.grams.likely
        assert values["metres_1"] == need.metres.likely == need.grams.likely * 2
        assert values["yards_1"] == yards(need.metres.likely, "metre").to("yard").magnitude
        assert values["balls_1"] == need.balls


def test_yarn_of_one_colour_is_told_without_a_name():
    made = grade_pullover(replace(PLAIN, labels=("M",), yarn=YarnWishes(metres_per_100g=Fraction(200))))
    titles = [row.title for row in made.table if row.part == "yarn"]
    assert {title.id for title in titles} == {f"title.yarn_{unit}" for unit in ("grams", "metres", "yards", "balls")}
    assert {title.values["colours"] for title in titles} == {"one"}


def test_yarn_of_several_colours_is_told_with_their_names():
    request = replace(REQUESTS["a chart that runs on"], labels=("M",), yarn=YarnWishes(metres_per_100g=Fraction(200)))
    titles = [row.title.values for row in grade_pullover(request).table if row.item.startswith("grams")]
    assert [(each["colours"], each["colour"]) for each in titles] == [("several", "ground"), ("several", "motif")]


def test_a_colour_that_a_size_has_none_of_stays_in_its_place():
    request = replace(
        REQUESTS["a chart that runs on"], labels=("S", "M"), yarn=YarnWishes(metres_per_100g=Fraction(200))
    )
    small, medium = (size.outcome for size in grade_pullover(request).sizes)
    rows = yarn_table([replace(small, yarn=small.yarn[1:]), medium], garment_colours(request))
    assert [row.item for row in rows if row.unit == "grams"] == ["grams_1", "grams_2"]
    assert rows[0].values[0] is None


def test_a_table_without_yarn_has_no_rows_of_it(sizes):
    assert yarn_table(sizes, garment_colours(PLAIN)) == ()
