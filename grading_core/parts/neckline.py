"""The neck of a top-down raglan: cast-on and markers, front drop, and whether it passes the head.

Working order, right side out: back, line, first sleeve, line, front, line, second sleeve, line. The round starts
before the back, after the last line; a start at the centre back is an option. Markers 1 to 4 follow back, first
sleeve, front and second sleeve: each stands after its section and before the line. Worked from the neck down, the
first sleeve is the wearer's right one; both are alike, so nothing depends on it.

A neck cast on flat has its ends at the centre front. With a front drop the front begins with a few stitches at each
side; rows are worked flat, and the rest of the front is cast on where the round is joined. That a
raglan cast on in one plane sits better with a lower front is said in a published article on raglan fit;
leaving the middle half of the front to be cast on is common practice, no source.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Literal, NamedTuple

from grading_core.codes import ReasonCode, WarningCode
from grading_core.errors import Impossible, Nearest, Path, Remark
from grading_core.fabric import Fabric
from grading_core.fraction import Fraction
from grading_core.parts.short_rows import Way
from grading_core.sections import Sections
from grading_core.sentences import CM, COUNT, TOKEN, Saying, Sentence, alone, run_of, words

Start = Literal["before_back", "centre_back"]
Marker = Literal["start"] | int
Edge = Literal["cast_on", "bind_off", "join"]

SECTIONS = ("back", "first_sleeve", "front", "second_sleeve")
"""In working order; marker m follows the m-th."""

_COUNTED = {"stitches": COUNT, "parts": words("section")}
CAST_ON_JOINED = Saying("neck.cast_on_joined", stitches=COUNT)
CAST_ON_FLAT = Saying("neck.cast_on_flat", stitches=COUNT)
PLACE_MARKERS = Saying("neck.place_markers", way=TOKEN)
MARKER = Saying("neck.marker", **_COUNTED, marker=COUNT)
MARKER_HERE = Saying("neck.marker_here", marker=COUNT)
START_MARKER = Saying("neck.start_marker", **_COUNTED)
START_HERE = Saying("neck.start_here")
REST = Saying("neck.rest", **_COUNTED, way=TOKEN)
DROP = Saying("neck.drop", rows=COUNT, side=TOKEN)
DROP_EDGES = Saying("neck.drop_edges", times=COUNT)
DROP_JOIN = Saying("neck.drop_join", stitches=COUNT, round=COUNT)
TOO_NARROW = Saying("reason.front_too_narrow", front=COUNT, middle=COUNT, sides=COUNT)
DOES_NOT_PASS = Saying("warning.neck_does_not_pass_head", edge=TOKEN, around=CM, stretched=CM, head=CM)
YOUNG_CHILD_NECK = Saying("warning.young_child_neck")


@dataclass(frozen=True, slots=True, kw_only=True)
class FrontDrop:
    """A front that lies lower than the back.

    rows: worked flat in place of as many rounds of the yoke, the last one on the right side. height_cm: of the
    drop. each_side: stitches cast on for the front at each side. edge_increases: at each front edge, one in each
    of the last right-side rows. centre: stitches cast on at the end of the last row.
    """

    rows: int
    height_cm: Fraction
    each_side: int
    edge_increases: int
    centre: int

    @property
    def missing(self) -> tuple[int, ...]:
        """After each row but the last, the stitches of the front that are not on the needles yet."""
        return tuple(
            self.centre + 2 * sum(number > row for number in self.increase_rows) for row in range(1, self.rows)
        )

    @property
    def increase_rows(self) -> tuple[int, ...]:
        """The rows with an increase at each front edge."""
        return tuple(range(self.rows - 2 * (self.edge_increases - 1), self.rows + 1, 2))

    def instructions(self) -> tuple[Sentence, ...]:
        """The drop in sentences, for one size."""
        return tuple(alone(run_drop([self])))


class Gap(NamedTuple):
    """Stitches up to a marker.

    stitches: from the marker before, or from the beginning. parts: what they are, in working order. marker: its
    number, "start" for the start of the round, None at the end of the cast-on.
    """

    stitches: int
    parts: tuple[tuple[str, int], ...]
    marker: Marker | None


@dataclass(frozen=True, slots=True)
class CastOn:
    """The cast-on of one size.

    way: "joined" where it is closed into a round at once, "flat" where its ends lie at the front.
    stitches: cast on. gaps: with the right side facing, from the start of the round or from the flat edge where a
    right-side row begins.
    """

    way: Way
    stitches: int
    gaps: tuple[Gap, ...]

    def instructions(self) -> tuple[Sentence, ...]:
        """The cast-on in sentences, for one size."""
        return tuple(alone(run_cast_on([self])))


@dataclass(frozen=True, slots=True)
class Opening:
    """One edge that the head must pass.

    edge: the cast-on, the bind-off of the band, or the join of a folded band. circumference_cm: unstretched.
    """

    edge: Edge
    circumference_cm: Fraction


@dataclass(frozen=True, slots=True, kw_only=True)
class HeadCheck:
    """Whether the neck passes the head.

    tightest: the smallest opening. stretched_cm: what it gives when stretched as far as allowed. stretch_needed:
    the part of its circumference by which it must stretch, at least 0. remarks: what deserves a word.
    """

    tightest: Opening
    stretched_cm: Fraction
    stretch_needed: Fraction
    passes: bool
    remarks: tuple[Remark, ...]


def cast_on(
    neck: Sections,
    line_stitches: int,
    *,
    start: Start = "before_back",
    way: Way = "joined",
    drop: FrontDrop | None = None,
) -> CastOn:
    """The cast-on with the place of every marker.

    neck: the sections of the round. line_stitches: of each raglan line. start: of the round. way: whether it is joined
    at once. drop: a front drop, which is always cast on flat. An odd back or front that is halved has the extra stitch
    in its later half.

    >>> made = cast_on(Sections(34, 34, 12), 2)
    >>> made.stitches, [(gap.stitches, gap.marker) for gap in made.gaps]
    (100, [(34, 1), (14, 2), (36, 3), (14, 4), (2, None)])
    """
    if drop:
        way, fronts = "flat", (drop.each_side, drop.each_side)
    else:
        fronts = _halves(neck.front)
    backs = (0, neck.back) if start == "before_back" else _halves(neck.back)
    back = "back" if start == "before_back" else "half_back"
    # what a dropped front begins with is no half of it
    front = "front" if way == "joined" or drop else "half_front"
    line, sleeve = ("line", line_stitches), neck.sleeve
    # From the start of the round to the centre front, and on from there to the start.
    first: list[tuple[str, int] | Marker] = [
        (back, backs[1]), 1, line, (SECTIONS[1], sleeve), 2, line, (front, fronts[0]),
    ]  # fmt: skip
    second: list[tuple[str, int] | Marker] = [
        (front, fronts[1]), 3, line, (SECTIONS[3], sleeve), 4, line, (back, backs[0]),
    ]  # fmt: skip
    sequence = [*first, *second] if way == "joined" else [*second, "start", *first]
    gaps = _gaps(sequence)
    return CastOn(way, sum(gap.stitches for gap in gaps), gaps)


def front_drop(front: int, rows: int, gauge: Fabric, centre: int | None = None) -> FrontDrop | Impossible:
    """A front that is cast on in three parts, or why it can't be.

    front: stitches of the front at the neck, all parts together. rows: worked flat; even where the yoke's increases
    fall on even rounds and odd where they fall on odd ones, so that they fall on the right side. gauge: for the height.
    centre: stitches cast on in the middle, of the front's parity; None for half of the front.

    >>> from grading_core.gauge import Gauge
    >>> made = front_drop(34, 8, Gauge.over(Fraction(22), Fraction(31), Fraction(10)))
    >>> made.each_side, made.edge_increases, made.centre, made.increase_rows
    (4, 4, 18, (2, 4, 6, 8))
    """
    middle = front // 2 + (front - front // 2) % 2 if centre is None else centre
    side, odd = divmod(front - middle, 2)
    if side < 1 or odd:
        fitting = front - 2 if side < 1 else middle - 1 if middle else 1
        reason = TOO_NARROW(front=front, middle=middle, sides=front - middle)
        return Impossible(ReasonCode.FRONT_TOO_NARROW, reason, (Nearest(("centre",), fitting),) if front > 2 else ())
    increases = min(side - 1, (rows + 1) // 2)
    return FrontDrop(
        rows=rows, height_cm=gauge.height_cm(rows), each_side=side - increases, edge_increases=increases, centre=middle
    )


def neck_edge_cm(edge: CastOn, gauge: Fabric, drop: FrontDrop | None = None) -> Fraction:
    """The circumference of the neck's edge before a band, in cm.

    edge: the cast-on. gauge: of the yoke's rounds. drop: a front drop, whose middle stitches and two heights count too.

    >>> from grading_core.gauge import Gauge
    >>> neck_edge_cm(cast_on(Sections(34, 34, 12), 2), Gauge(Fraction(2), Fraction(3)))
    Fraction(50, 1)
    """
    if drop is None:
        return gauge.at(1).width_cm(edge.stitches)
    centre_cm = gauge.at(drop.rows + 1).width_cm(drop.centre)
    return gauge.at(1).width_cm(edge.stitches) + centre_cm + 2 * drop.height_cm


def check_head(
    openings: Sequence[Opening],
    head_cm: Fraction,
    stretch: Fraction,
    *,
    young: bool = False,
    size: str | None = None,
    path: Path | None = None,
) -> HeadCheck:
    """Whether the tightest edge of the neck passes the head, with a caution for babies and young children.

    openings: the cast-on edge, the band's bind-off, the join of a folded band; at least one. head_cm: circumference.
    stretch: allowed, as a part of the circumference. young: whether a baby or a child up to 7 years wears it. size,
    path: for the remarks.

    Source of the caution: EN 14682 lets no cord or drawstring be at the hood or neck of clothes for children up
    to 7 years (from memory).

    >>> edges = [Opening("cast_on", Fraction(40)), Opening("bind_off", Fraction(38))]
    >>> check_head(edges, Fraction(56), Fraction(2, 5)).passes
    False
    """
    tightest = min(openings, key=lambda opening: opening.circumference_cm)
    stretched_cm = tightest.circumference_cm * (1 + stretch)
    needed = max(Fraction(0), head_cm / tightest.circumference_cm - 1)
    passes = stretched_cm >= head_cm
    remarks = []
    if not passes:
        message = DOES_NOT_PASS(
            edge=tightest.edge, around=tightest.circumference_cm, stretched=stretched_cm, head=head_cm
        )
        remarks.append(Remark(WarningCode.NECK_DOES_NOT_PASS_HEAD, message, size, path))
    if young:
        remarks.append(Remark(WarningCode.YOUNG_CHILD_NECK, YOUNG_CHILD_NECK(), size, path))
    return HeadCheck(
        tightest=tightest, stretched_cm=stretched_cm, stretch_needed=needed, passes=passes, remarks=tuple(remarks)
    )


def run_cast_on(cast_ons: Sequence[CastOn | None]) -> tuple[Sentence, ...]:
    """The cast-on of every size in sentences with size runs; none where they are worked in different ways.

    cast_ons: one per size, None where the size has none; at least one has.

    >>> [sentence.id for sentence in run_cast_on([cast_on(Sections(34, 34, 12), 2)])]
    ['neck.cast_on_joined', 'neck.place_markers', 'neck.marker', 'neck.marker', 'neck.marker', 'neck.marker', \
'neck.rest']
    """
    known = [each for each in cast_ons if each]
    way = known[0].way
    if len({(each.way, tuple(gap.marker for gap in each.gaps)) for each in known}) > 1:
        return ()
    begin = CAST_ON_JOINED if way == "joined" else CAST_ON_FLAT
    sentences = [begin(stitches=run_of(cast_ons, lambda each: each.stitches)), PLACE_MARKERS(way=way)]
    for place in range(len(known[0].gaps)):
        sentences.append(_gap_sentence([each.gaps[place] if each else None for each in cast_ons], way))
    return tuple(sentences)


def run_drop(drops: Sequence[FrontDrop | None]) -> tuple[Sentence, ...]:
    """The front drop of every size in sentences with size runs; none where no size has one.

    drops: one per size, None where the size has none.
    """
    known = [drop for drop in drops if drop]
    if not known:
        return ()

    odd = {drop.rows % 2 for drop in known}
    side = ("wrong" if odd == {0} else "right") if len(odd) == 1 else "last"
    sentences = [DROP(rows=run_of(drops, lambda drop: drop.rows), side=side)]
    edges = run_of(drops, lambda drop: drop.edge_increases or None)
    if any(edges):
        sentences.append(DROP_EDGES(times=edges))
    joined = DROP_JOIN(
        stitches=run_of(drops, lambda drop: drop.centre), round=run_of(drops, lambda drop: drop.rows + 1)
    )
    return (*sentences, joined)


def _halves(stitches: int) -> tuple[int, int]:
    return stitches // 2, stitches - stitches // 2


def _gaps(sequence: Sequence[tuple[str, int] | Marker]) -> tuple[Gap, ...]:
    """Stretches and markers in order, as the stitches up to each marker."""
    gaps: list[Gap] = []
    parts: list[tuple[str, int]] = []
    for item in (*sequence, None):
        if isinstance(item, tuple):
            if not item[1]:
                continue
            if parts and parts[-1][0] == item[0]:
                # the two halves of a front that isn't cut
                item = (item[0], parts.pop()[1] + item[1])
            parts.append(item)
        elif item is not None or parts:
            gaps.append(Gap(sum([stitches for _, stitches in parts]), tuple(parts), item))
            parts = []
    return tuple(gaps)


def _gap_sentence(gaps: Sequence[Gap | None], way: Way) -> Sentence:
    """The stitches up to one marker in every size, and the marker."""
    known = [gap for gap in gaps if gap]
    marker = known[0].marker
    if not any(gap.stitches for gap in known):
        return START_HERE() if marker == "start" else MARKER_HERE(marker=marker)
    parts = tuple([name for name, _ in max((gap.parts for gap in known), key=len)])
    counted = {"stitches": run_of(gaps, lambda gap: gap.stitches), "parts": parts}
    if marker is None:
        return REST(**counted, way=way)
    return START_MARKER(**counted) if marker == "start" else MARKER(**counted, marker=marker)
