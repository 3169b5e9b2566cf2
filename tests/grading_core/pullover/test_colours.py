"""Which colour each part has, and what of them contradicts itself."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

import pytest

from grading_core.chart.grid import Chart, Colour
from grading_core.pullover.colours import ONE_COLOUR, colour_problems, garment_colours
from grading_core.pullover.request import (
    BandChange,
    BandWishes,
    BodyWishes,
    Changes,
    ChartWishes,
    ColourYarn,
    EdgeWishes,
    SleeveWishes,
    YarnWishes,
)
from grading_core.unknown import unknown
from tests.grading_core.pullover.knitted_pullovers import PLAIN

CHART = ChartWishes(chart=Chart((".#.", "#.#", "..."), {".": Colour("oat"), "#": Colour("rust")}))


def yarn(symbols, **wishes):
    """A yarn of each colour."""
    return YarnWishes(colours={symbol: ColourYarn(metres_per_100g=Fraction(400)) for symbol in symbols}, **wishes)


def edged(hem=None, cuff=None, band=None, **wishes):
    """The plain pullover with edges in colours."""
    return replace(
        PLAIN,
        body=BodyWishes(hem=EdgeWishes(colour=hem)),
        sleeve=SleeveWishes(cuff=EdgeWishes(colour=cuff)),
        band=BandWishes(colour=band),
        **wishes,
    )


def found(request):
    """The places of what is wrong, with their codes."""
    return [(".".join(problem.path), problem.code) for problem in colour_problems(request)]


def parts(request, **options):
    colours = garment_colours(request, **options)
    return colours.plain, colours.hem, colours.cuff, colours.band


@pytest.mark.parametrize(
    ("request_", "expected"),
    [
        (PLAIN, (ONE_COLOUR,) * 4),
        (edged(hem="b", yarn=yarn("ab")), ("a", "b", "a", "a")),
        (edged(hem="b", cuff="c", yarn=yarn("abc", main_colour="c")), ("c", "b", "c", "c")),
        # more of the chart is oat
        (edged(band="#", chart=CHART), (".", ".", ".", "#")),
        (edged(cuff="c", chart=CHART, yarn=yarn(".#c")), (".", ".", "c", ".")),
        (edged(changes=Changes(yarn=yarn("ab", main_colour="b"))), ("b",) * 4),
    ],
)
def test_what_has_no_colour_of_its_own_is_in_the_pullovers(request_, expected):
    assert found(request_) == []
    assert parts(request_) == expected


def test_a_makers_band_is_in_the_makers_colour():
    changed = edged(band="b", yarn=yarn("abc", main_colour="a"), changes=Changes(band=BandChange(colour="c")))
    assert parts(changed)[-1] == "c"
    assert parts(changed, changed=False)[-1] == "b"


def test_nobody_speaks_of_the_only_colour():
    assert garment_colours(edged(yarn=yarn("a"))).told("a") is None
    assert garment_colours(edged(chart=CHART)).told("#") == "rust"


def test_every_colour_that_nothing_has_is_named_at_once():
    changes = Changes(band=BandChange(colour="z"))
    wrong = edged(hem="w", cuff="x", band="y", yarn=yarn("ab", main_colour="v"), changes=changes)
    places = ("body.hem", "sleeve.cuff", "band", "changes.band")
    assert found(wrong) == [
        *((f"{place}.colour", "unknown_symbol") for place in places),
        ("yarn.main_colour", "unknown_symbol"),
    ]


def test_a_hem_that_is_wrong_otherwise_hides_no_wrong_colour():
    wrong = replace(edged(cuff="x", yarn=yarn("a")), body=replace(PLAIN.body, hem=unknown()))
    assert found(wrong) == [("sleeve.cuff.colour", "unknown_symbol")]


@pytest.mark.parametrize(
    ("request_", "expected"),
    [
        (edged(yarn=yarn("ab")), [("yarn.main_colour", "main_colour_missing")]),
        (edged(changes=Changes(yarn=yarn("ab"))), [("changes.yarn.main_colour", "main_colour_missing")]),
        # were the edge's colour right, it could be told
        (edged(hem="x", yarn=yarn("ab")), [("body.hem.colour", "unknown_symbol")]),
        (edged(chart=CHART, yarn=yarn(".#", main_colour=".")), [("yarn.main_colour", "main_colour_beside_chart")]),
        (
            edged(yarn=yarn("ab", main_colour="a"), changes=Changes(yarn=yarn("ab", main_colour="b"))),
            [("changes.yarn.main_colour", "main_colour_changed")],
        ),
        (edged(chart=CHART, yarn=yarn(".")), [("yarn.colours", "colour_without_yarn")]),
        (
            edged(chart=CHART, yarn=yarn(".#"), changes=Changes(yarn=yarn("#"))),
            [("changes.yarn.colours", "colour_without_yarn")],
        ),
        # neither the edge nor all the rest
        (
            edged(hem="b", yarn=yarn("abc", main_colour="a"), changes=Changes(yarn=yarn("c"))),
            [("changes.yarn.colours", "colour_without_yarn")],
        ),
        (edged(hem="x"), [("body.hem.colour", "unknown_symbol")]),
    ],
)
def test_colours_that_contradict_each_other_are_named_where_they_do(request_, expected):
    assert found(request_) == expected
