"""A ribbed edge: its stitches on the multiple, its rounds, and the round that adjusts to it.

Hem, cuff and neckband share this. A rib in the round comes out even, so its stitches are a multiple of one repeat
(arithmetic of the craft). Where the fabric before it doesn't have the count that the rib
repeats over, the first round of the rib is worked plain and takes or adds the difference evenly. It is
counted among the rib's rounds, so that the height stays what was asked (common practice, no source).
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from typing import Literal

from grading_core.codes import WarningCode
from grading_core.errors import Impossible, Remark
from grading_core.fabric import Fabric
from grading_core.fraction import Fraction
from grading_core.gauge import Gauge
from grading_core.rounding import CountRule
from grading_core.sentences import COUNT, SENTENCE, SENTENCES, TEXT, TOKEN, Saying, Sentence, alone, run_of
from grading_core.shaping_plans import AcrossPlan, Change, across_row

KNIT_PURL = Saying("ribbing.knit_purl", knit=COUNT, purl=COUNT)
ANY_RIB = Saying("ribbing.any")
DECREASE = Saying("rib.decrease", many=COUNT, stitches=COUNT)
INCREASE = Saying("rib.increase", many=COUNT, stitches=COUNT)
SPREAD = Saying("rib.spread", steps=SENTENCES)
WORK = Saying("rib.work", rounds=COUNT, rib=SENTENCE)
BIND_OFF = Saying("rib.bind_off")
COLOUR = Saying("rib.colour", edge=TOKEN, colour=TEXT)

_MORE = {"rounds": COUNT, "needed": COUNT, "more": COUNT}
_LONGER: Mapping[str, tuple[WarningCode, Saying]] = {
    "body": (WarningCode.BODY_LONGER_FOR_CHART, Saying("warning.body_longer_for_chart", **_MORE)),
    "sleeve": (WarningCode.SLEEVE_LONGER_FOR_CHART, Saying("warning.sleeve_longer_for_chart", **_MORE)),
}


@dataclass(frozen=True, slots=True)
class RibRepeat:
    """What a rib repeats in the round: so many knit stitches, then so many purl stitches."""

    knit: int
    purl: int

    @property
    def stitches(self) -> int:
        """Of both kinds."""
        return self.knit + self.purl


@dataclass(frozen=True, slots=True, kw_only=True)
class Rib:
    """How an edge is to be ribbed.

    gauge: of the rib. height_cm: wanted. rule: the multiple that the rib repeats over. repeat: as asked, which goes up
    into the rule's counts; None takes the usual one for them. colour: its name, None where the garment has but one.

    >>> rib = Rib(gauge=Gauge(Fraction(2), Fraction(3)), height_cm=Fraction(5), rule=CountRule(4))
    >>> rib.rounds, rib.nearest(50), rib.for_circumference(Fraction(21))
    (15, 52, 44)
    """

    gauge: Gauge
    height_cm: Fraction
    rule: CountRule
    repeat: RibRepeat | None = None
    colour: str | None = None
    rounds: int = field(init=False)
    """For the height, at least one."""

    def __post_init__(self) -> None:
        """Count the rounds once: they are asked for again and again."""
        object.__setattr__(self, "rounds", max(1, self.gauge.rows(self.height_cm)))

    def nearest(self, stitches: int) -> int:
        """The permitted count for so many stitches, at least one repeat."""
        return self.rule.round_ratio(stitches, 1) or self.rule.multiple

    def for_circumference(self, around_cm: Fraction) -> int:
        """The permitted count for a circumference in cm, at least one repeat."""
        return self.gauge.stitches(around_cm, self.rule) or self.rule.multiple

    def rounds_before(self, length_cm: Fraction, gauge: Fabric) -> int:
        """Rounds of fabric before the rib that make a length together with it, at least none.

        length_cm: of fabric and rib. gauge: of the fabric.
        """
        before_cm = length_cm - self.gauge.height_cm(self.rounds)
        return gauge.rows(before_cm) if before_cm.numerator > 0 else 0

    @property
    def worked(self) -> RibRepeat | None:
        """What it repeats, where it leaves no stitches over in the round: as asked, or as many knit as purl stitches in
        the usual ribs over 2, 4 and 6 stitches, and in all others 1 purl stitch. None where nothing says.

        >>> Rib(gauge=Gauge(Fraction(2), Fraction(3)), height_cm=Fraction(5), rule=CountRule(4)).worked
        RibRepeat(knit=2, purl=2)
        """
        if self.repeat:
            return self.repeat
        multiple = self.rule.multiple
        if multiple == 1 or self.rule.plus % multiple:
            return None
        purl = multiple // 2 if multiple in (2, 4, 6) else 1
        return RibRepeat(multiple - purl, purl)

    def sentence(self) -> Sentence:
        """Its name: knit and purl stitches in turn, or any rib."""
        worked = self.worked
        return KNIT_PURL(knit=worked.knit, purl=worked.purl) if worked else ANY_RIB()


@dataclass(frozen=True, slots=True)
class RibbedEdge:
    """A ribbed edge in numbers.

    rib: how it is worked. before: stitches on the needle before it. stitches: of the rib. rounds: of the edge, the
    adjusting round among them where there is one.
    """

    rib: Rib
    before: int
    stitches: int
    rounds: int

    @property
    def change(self) -> int:
        """Stitches that the adjusting round adds, or takes where it is negative; 0 where there is none."""
        return self.stitches - self.before

    @property
    def ribbed_rounds(self) -> int:
        """Rounds without the adjusting round."""
        return self.rounds - (self.change != 0)

    @property
    def circumference_cm(self) -> Fraction:
        """Round the finished edge, at the gauge of the rib."""
        return self.rib.gauge.width_cm(self.stitches)

    @property
    def height_cm(self) -> Fraction:
        """Of all its rounds, at the gauge of the rib."""
        return self.rib.gauge.height_cm(self.rounds)

    def instructions(self) -> tuple[Sentence, ...]:
        """The edge in sentences, for one size."""
        return tuple(alone(run_edges([self])))


def colour_of(edges: Sequence[RibbedEdge | None]) -> str | None:
    """The name of the colour that the edges of all sizes have, None where the garment has but one.

    edges: one per size, None where the size has none.
    """
    return next((edge.rib.colour for edge in edges if edge), None)


def edge_colour(called: Literal["hem", "cuff"], edges: Sequence[RibbedEdge | None]) -> Iterator[Sentence]:
    """The colour of the edge that a part ends with, where the garment has several.

    called: the edge. edges: as for `colour_of`.

    >>> rib = Rib(gauge=Gauge(Fraction(2), Fraction(3)), height_cm=Fraction(5), rule=CountRule(4), colour="oat")
    >>> [sentence.values["colour"] for sentence in edge_colour("hem", [None, RibbedEdge(rib, 46, 44, 15)])]
    ['oat']
    """
    colour = colour_of(edges)
    if colour is not None:
        yield COLOUR(edge=called, colour=colour)


def run_edges(edges: Sequence[RibbedEdge | None]) -> tuple[Sentence, ...]:
    """The edge of every size in sentences with size runs.

    edges: one per size, None where the size has none; their ribs repeat over the same multiple.

    >>> rib = Rib(gauge=Gauge(Fraction(2), Fraction(3)), height_cm=Fraction(5), rule=CountRule(4))
    >>> adjusting, ribbed = run_edges([RibbedEdge(rib, 46, 44, 15), RibbedEdge(rib, 48, 48, 15)])
    >>> adjusting.id, adjusting.values["many"], ribbed.values["rounds"]
    ('rib.decrease', (2, None), (14, 15))
    """
    known = [edge for edge in edges if edge]
    if not known:
        return ()
    sentences = []
    for saying, sign in ((DECREASE, -1), (INCREASE, 1)):
        changed = [edge if edge and sign * edge.change > 0 else None for edge in edges]
        if any(changed):
            many = run_of(changed, lambda edge: abs(edge.change))
            sentences.append(saying(many=many, stitches=run_of(changed, lambda edge: edge.stitches)))
    if len(edges) == 1:
        sentences += _spread(known[0])
    rounds = run_of(edges, lambda edge: edge.ribbed_rounds or None)
    if any(rounds):
        sentences.append(WORK(rounds=rounds, rib=known[0].rib.sentence()))
    return tuple(sentences)


def _spread(edge: RibbedEdge) -> Iterator[Sentence]:
    """Where the adjusting round of one size gains or loses its stitches, if it can be spread."""
    if not edge.change:
        return
    change: Change = "increase" if edge.change > 0 else "decrease"
    spread = across_row(AcrossPlan(name="", stitches=edge.before, across=abs(edge.change), change=change))
    if not isinstance(spread, Impossible):
        yield SPREAD(steps=spread.steps())


def lengthened(part: Literal["body", "sleeve"], asked: int, minimum: int, size: str | None) -> tuple[Remark, ...]:
    """The remark on a part that its chart makes longer than asked; none where it doesn't.

    part: whose rounds they are. asked, minimum: rounds before the rib. size: the size's label.

    >>> lengthened("body", 60, 64, "S")[0].code.value
    'body_longer_for_chart'
    """
    if asked >= minimum:
        return ()
    code, saying = _LONGER[part]
    return (Remark(code, saying(rounds=asked, needed=minimum, more=minimum - asked), size),)
