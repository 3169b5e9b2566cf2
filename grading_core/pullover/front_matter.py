"""What a pattern says before the knitting begins: sizes, finished measurements, gauge, needles and yarn."""

from __future__ import annotations

from collections.abc import Iterable
from functools import lru_cache

from grading_core.fraction import Fraction
from grading_core.gauge import Gauge
from grading_core.pullover.colours import GarmentColours
from grading_core.pullover.request import Gauges, YarnWishes
from grading_core.pullover.result import Sizes, each_size
from grading_core.pullover.table import LINES, STRAND, balls_of, by_colour, colour_values, strands_told, yards
from grading_core.rounding import NEAREST
from grading_core.sentences import (
    COUNT,
    LENGTH,
    NAMES,
    NUMBER,
    TEXT,
    TOKEN,
    Saying,
    Sentence,
    has_gap,
    run_of,
    throughout,
)
from grading_core.standards.yarn_weights import YARN_WEIGHTS, YarnCategory
from grading_core.units import CM_PER_INCH

LABELS = Saying("sizes.labels", sizes=TEXT)
TO_FIT = Saying("sizes.to_fit", length=LENGTH)
EASE = Saying("sizes.ease", length=LENGTH, kind=TOKEN)
RUN = Saying("sizes.run", first=TEXT, others=NAMES)
DASH = Saying("sizes.dash", dash=TEXT)
IMPOSSIBLE = Saying("sizes.impossible", sizes=NAMES)

FINISHED = {
    line.item: (Saying(f"finished_measurements.{line.item}", length=LENGTH), line.value)
    for line in LINES
    if line.part == "finished" and line.item not in ("underarm", "band")
}
"""By item; underarm and neckband are left to the table."""

_SWATCH = {"stitches": NUMBER, "rounds": NUMBER}
PLAIN_GAUGE = Saying("gauge.plain", **_SWATCH)
STRANDED_GAUGE = Saying("gauge.stranded", **_SWATCH)
RIB_GAUGE = Saying("gauge.rib", **_SWATCH)

NEEDLES = Saying("needles.range", thinnest=NUMBER, thickest=NUMBER, thinnest_us=TEXT, thickest_us=TEXT)
THICK_NEEDLES = Saying("needles.thick", thinnest=NUMBER, thinnest_us=TEXT)
CHART_NEEDLES = Saying("needles.stranded")
RIB_NEEDLES = Saying("needles.rib", kind=TOKEN)
CIRCULAR = Saying("needles.circular")
DOUBLE_POINTED = Saying("needles.double_pointed")

_WHOSE = {"colours": TOKEN, "colour": TEXT}
AMOUNT = Saying("yarn.amount", **_WHOSE, grams=COUNT, metres=COUNT, yards=COUNT)
BALLS = Saying("yarn.balls", **_WHOSE, **STRAND, balls=COUNT, ball_grams=NUMBER, margin=NUMBER)
BASIS = Saying("yarn.basis", basis=TOKEN)


def size_words(sizes: Sizes, sentences: Iterable[Sentence]) -> tuple[Sentence, ...]:
    """Which sizes there are, whom they fit, and how their numbers are read.

    sizes: by label, None where one can't be knitted; at least one can. sentences: of all other parts.
    """
    labels = tuple(sizes)
    eases = each_size(sizes, lambda size: size.finished.bust - size.to_fit)
    known = [ease for ease in eases if ease is not None]
    if all(ease >= 0 for ease in known):
        kind = "more"
    elif all(ease <= 0 for ease in known):
        kind, eases = "less", tuple([ease if ease is None else -ease for ease in eases])
    else:
        kind = "either"
    told = [
        LABELS(sizes=labels),
        TO_FIT(length=each_size(sizes, lambda size: size.to_fit)),
        EASE(length=eases, kind=kind),
    ]
    if len(labels) > 1:
        told.append(RUN(first=labels[0], others=labels[1:]))
    without = tuple([label for label, size in sizes.items() if not size])
    if without or any(has_gap(sentence) for sentence in throughout(sentences)):
        told.append(DASH(dash=None))
    if without:
        told.append(IMPOSSIBLE(sizes=without))
    return tuple(told)


def finished_words(sizes: Sizes) -> tuple[Sentence, ...]:
    """What the pullover measures when it is done, a sentence for each of `FINISHED` that any size has.

    sizes: as for `size_words`. The front's length is told where darts make it another than that of the body.
    """
    darts = any(size.body.bust_darts for size in sizes.values() if size)
    told = []
    for item, (saying, value) in FINISHED.items():
        lengths = each_size(sizes, value)
        if any(length is not None for length in lengths) and (item != "front_length" or darts):
            told.append(saying(length=lengths))
    return tuple(told)


def swatch(gauge: Gauge) -> dict[str, Fraction]:
    """Stitches and rounds over the usual span, as the trade prints it, 10 cm for 4 in: values of a sentence.

    A gauge that was counted over inches is told by its 4 in, so that a swatch comes back as it was sent.

    >>> swatch(Gauge.over(Fraction(11), Fraction(15), 2 * CM_PER_INCH))
    {'stitches': Fraction(22, 1), 'rounds': Fraction(30, 1)}
    """
    by_inches = (gauge.rows_span_cm / CM_PER_INCH).denominator == 1
    counted = gauge.swatch(4 * CM_PER_INCH if by_inches else Fraction(10))
    return {"stitches": counted.stitches, "rounds": counted.rows}


def gauge_words(gauges: Gauges) -> tuple[Sentence, ...]:
    """The gauge of each fabric.

    gauges: of the fabrics that are used.
    """
    told = ((PLAIN_GAUGE, gauges.plain), (STRANDED_GAUGE, gauges.stranded), (RIB_GAUGE, gauges.rib))
    return tuple(saying(**swatch(gauge)) for saying, gauge in told if gauge)


def category_of(gauge: Gauge) -> YarnCategory:
    """The standard's category for a gauge: the one that has its stitches to 4 in, of two the one in whose middle they
    lie more nearly.

    gauge: of stockinette, its stitches taken to the nearest whole.

    >>> category_of(Gauge.over(Fraction(22), Fraction(31), Fraction(10))).name
    'Light'
    """
    return _category(NEAREST.round(swatch(gauge)["stitches"]))


@lru_cache(256)
def _category(stitches: int) -> YarnCategory:
    """The category of so many stitches to 4 in."""

    def distance(category: YarnCategory) -> tuple[Fraction, Fraction]:
        of = category.stitches_per_4_inches
        low, high = of.low or Fraction(0), of.high or Fraction(0)
        return max(low - stitches, stitches - high, Fraction(0)), abs((low + high) / 2 - stitches)

    return min(YARN_WEIGHTS.categories, key=distance)


def needle_words(gauges: Gauges) -> tuple[Sentence, ...]:
    """Which needles to start with.

    gauges: of the fabrics that are used. The needles are those that the published standard recommends for the category
    of the plain gauge. That ribs take needles one or two sizes thinner, and that narrow rounds take double-pointed
    ones, is common practice, no source.
    """
    category = category_of(gauges.plain)
    of, numbers = category.needle_mm, category.needle_us
    if of.high is None:
        told = [THICK_NEEDLES(thinnest=of.low, thinnest_us=numbers.low)]
    else:
        told = [NEEDLES(thinnest=of.low, thickest=of.high, thinnest_us=numbers.low, thickest_us=numbers.high)]
    if gauges.stranded:
        told.append(CHART_NEEDLES())
    told.append(RIB_NEEDLES(kind="gauge" if gauges.rib else "thinner"))
    return (*told, CIRCULAR(), DOUBLE_POINTED())


def yarn_words(sizes: Sizes, colours: GarmentColours, wishes: YarnWishes) -> tuple[Sentence, ...]:
    """The yarn of each colour: what is knitted of it, and what to buy of each strand.

    sizes: as for `size_words`, with their yarn. colours: of the garment. wishes: for the yarn that is bought.
    """
    told = []
    for colour, own in by_colour(sizes.values(), colours):
        whose = colour_values(colour)
        told.append(
            AMOUNT(
                **whose,
                grams=run_of(own, lambda need: NEAREST.round(need.grams.likely)),
                metres=run_of(own, lambda need: NEAREST.round(need.likely_metres)),
                yards=run_of(own, lambda need: NEAREST.round(yards(need.likely_metres))),
            )
        )
        for place, strand in enumerate(strands_told(colour)):
            balls = run_of(own, balls_of(place))
            ball_grams = colour.strands[place].ball_grams
            told.append(BALLS(**whose, **strand, balls=balls, ball_grams=ball_grams, margin=100 * wishes.margin))
    bases = dict.fromkeys(need.basis for size in sizes.values() if size for need in size.yarn)
    return (*told, *(BASIS(basis=basis) for basis in bases))
