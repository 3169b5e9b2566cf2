"""The estimated yarn of whole garments, against the amounts that published patterns and tables print.

What a pattern prints is what to buy, so that it lies between the least of the estimate and its most with a margin;
where it doesn't, the garment has another shape or a texture: each test says which.
"""

from __future__ import annotations

from fractions import Fraction
from functools import cache
from itertools import pairwise

import pytest

from grading_core.gauge import Gauge
from grading_core.pullover.grade import grade_pullover
from grading_core.pullover.request import BodyWishes, Gauges, PulloverRequest, YarnWishes
from grading_core.pullover.result import KnittedSize
from grading_core.sizes.request import SentSize
from grading_core.yarn.amounts import ESTIMATED, Widths, Work, lengths_cm
from grading_core.yarn.result import Estimate

INCH = Fraction(254, 100)
YARD = Fraction(9144, 10000)
WORSTED = YarnWishes(metres_per_100g=Fraction(246))


def knitted(request):
    """Each size's outcome, by its label."""
    sizes = {size.label: size.outcome for size in grade_pullover(request).sizes}
    assert all(isinstance(size, KnittedSize) for size in sizes.values())
    return sizes


def pullovers(gauge, busts_cm, ease_cm=Fraction(10), **parts):
    """One pullover for each finished bust; all else is as the body in it has it."""
    bodies = [SentSize(str(place), {"bust": bust - ease_cm}) for place, bust in enumerate(busts_cm)]
    request = PulloverRequest(
        gauges=Gauges(gauge),
        body_table="women",
        sizes=tuple(bodies),
        ease={"bust": ease_cm},
        yarn=WORSTED,
        include=("sizes",),
        **parts,
    )
    return [*knitted(request).values()]


def metres(size) -> Estimate:
    (need,) = size.yarn
    return need.metres


def to_buy(size) -> Fraction:
    """The metres that a pattern prints: the most that a size may take, and a tenth to spare (a handspinner's article
    says 5 to 10 %)."""
    return metres(size).high * Fraction(11, 10)


# A drop-shoulder crew in worsted, 246 m to 100 g: 4.5 stitches and 7 rows to the inch, 45 in round and 23 in long. It
# takes 1180 yards (published pattern).
CREW = Gauge.over(Fraction(9, 2), Fraction(7), INCH)
CREW_METRES = 1180 * YARD


def test_a_published_drop_shoulder_takes_what_the_stitches_of_its_area_take():
    # body: 45 x 23 in; each sleeve, from a teaching article: 8 in at the cuff, 15 at the top, 18 long. No edges, no
    # neck opening.
    area = 45 * 23 + 2 * Fraction(8 + 15, 2) * 18
    width = CREW.width_cm(1)
    made = lengths_cm(Work(plain=int(area * Fraction(9, 2) * 7)), ESTIMATED, Widths(width, width))["stitches"]
    assert made.low / 100 <= CREW_METRES <= made.high / 100


def test_what_the_crew_is_published_with_lies_between_the_least_and_what_to_buy_of_a_raglan_of_its_size():
    # A raglan narrows to the neck: ours has 1368 square inches beside the 1449 above.
    usual = pullovers(CREW, [45 * INCH])[0].finished
    length = usual.body_length - (usual.total_length - 23 * INCH)
    (size,) = pullovers(CREW, [45 * INCH], body=BodyWishes(length=length))
    assert abs(size.finished.total_length - 23 * INCH) < CREW.height_cm(1)
    assert metres(size).low <= CREW_METRES <= to_buy(size)
    square_inches = size.yarn[0].stitches / (Fraction(9, 2) * 7)
    assert round(square_inches) == 1368


# A long pullover in twelve sizes at 20 stitches and 28 rows to 10 cm (published pattern; yards in steps of 50). Its
# lengths are not known here.
LONG = Gauge.over(Fraction(20), Fraction(28), Fraction(10))
LONG_BUSTS = [Fraction(bust) for bust in (84, 89.5, 95, 99.5, 105.5, 110, 115.5, 120, 126, 130, 135, 140)]
LONG_METRES = [1325, 1417, 1508, 1600, 1691, 1791, 1874, 1965, 2011, 2057, 2103, 2276]


def long_pullovers(length_cm, busts):
    return pullovers(LONG, busts, body=BodyWishes(length=length_cm))


@cache
def length_that_fits_the_smallest():
    """The body length at which the smallest size takes what is published, to half a cm."""
    return next(
        length
        for length in (Fraction(half, 2) for half in range(150, 240))
        if metres(long_pullovers(length, LONG_BUSTS[:1])[0]).likely >= LONG_METRES[0]
    )


def test_with_the_body_as_long_as_the_smallest_size_tells_every_other_size_takes_what_is_published():
    # That length is over 90 cm from the underarm, a dress, in plain knit and without a margin: what is published has
    # more than a long pullover of plain knit takes. So this tells how yarn grows with size, not how much a size takes.
    sizes = long_pullovers(length_that_fits_the_smallest(), LONG_BUSTS)
    for size, published in zip(sizes, LONG_METRES, strict=True):
        assert metres(size).low <= published <= metres(size).high
    for smaller, larger in pairwise(sizes):
        assert metres(smaller).likely < metres(larger).likely


# Yards of an adult's sweater by category of the yarn: stitches to the inch, least and most (For Dummies, quoted by two
# sites).
ADULT = {
    1: ((7, 8), (1500, 3200)),
    2: ((6, 7), (1200, 2500)),
    3: ((5, 6), (1000, 2000)),
    4: ((4, 5), (800, 1500)),
    5: ((3, 4), (600, 1200)),
    6: ((Fraction(3, 2), 3), (400, 800)),
}


@pytest.mark.parametrize(
    ("category", "less"),
    # of the thinnest an extra small one, for a bust of 71 to 76 cm, takes less than the table has for any adult
    [(1, ["XS"]), (2, []), (3, []), (4, []), (5, []), (6, [])],
)
def test_womens_sizes_take_the_yards_of_the_table_for_the_yarns_category(category, less):
    (fewest, most), (low, high) = ADULT[category]
    stitches = Fraction(fewest + most) / 2
    # seven rows to five stitches, as at 20 and 28 (an ordinary label)
    gauge = Gauge.over(stitches, stitches * Fraction(7, 5), INCH)
    sizes = knitted(PulloverRequest(gauges=Gauges(gauge), yarn=WORSTED, include=("sizes",)))
    assert [label for label, size in sizes.items() if to_buy(size) < low * YARD] == less
    assert all(metres(size).likely <= high * YARD for size in sizes.values())


def test_a_cabled_pullover_takes_more_than_the_estimate_in_every_size():
    # 17 stitches and 24 rows to 4 in, metres of six sizes (published leaflet): why the estimate says that cables and
    # other textures take more
    busts, published = (37, Fraction(85, 2), 44, 50, Fraction(115, 2), 67), (1070, 1130, 1225, 1310, 1320, 1410)
    gauge = Gauge.over(Fraction(17), Fraction(24), 4 * INCH)
    for size, printed in zip(pullovers(gauge, [bust * INCH for bust in busts], Fraction(15)), published, strict=True):
        assert metres(size).high < printed


@pytest.mark.parametrize("table", ["women", "men", "children"])
def test_the_area_by_which_a_podcast_buys_yarn_is_enough_for_every_size_and_near_in_small_ones(table):
    # one and a half times girth and length, a rule to buy by: sleeves and yoke grow less than the girth does
    request = PulloverRequest(gauges=Gauges(LONG), body_table=table, yarn=WORSTED, include=("sizes",))
    parts = []
    for size in knitted(request).values():
        area = size.yarn[0].stitches * LONG.width_cm(1) * LONG.height_cm(1)
        parts.append(area / (Fraction(3, 2) * size.finished.bust * size.finished.total_length))
    assert all(Fraction(8, 10) < part < 1 for part in parts)
    assert parts[0] > Fraction(9, 10)
