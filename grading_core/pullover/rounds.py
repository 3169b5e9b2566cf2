"""One size of a pullover round by round: what is done in each, and what is on the needles after it.

Rounds that follow one another and are worked alike are told as one, for somebody who ticks them off. What is no round,
such as casting on, is a step between them.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from typing import Literal, NamedTuple

from grading_core.chart.result import BodyRound, SectionStart, SleeveRound, YokeRound
from grading_core.parts import neckband, neckline, ribbing, short_rows, sleeve
from grading_core.parts.ribbing import RibbedEdge
from grading_core.pullover import words
from grading_core.pullover.result import Instructions, KnittedSize, Part, TablePart
from grading_core.sections import IncreaseRound
from grading_core.sentences import COUNT, SENTENCE, TOKEN, Saying, Sentence
from grading_core.sentences import words as words_of

INCREASE = Saying("rounds.increase", edges=TOKEN)
INCREASE_EDGES = Saying("rounds.increase_edges", once=words_of("increased"), twice=words_of("increased"), kind=TOKEN)
ROW = Saying("rounds.row", side=TOKEN)
ROW_INCREASE = Saying("rounds.row_increase", side=TOKEN, work=SENTENCE)
NECK_EDGES = Saying("rounds.neck_edges", work=SENTENCE)
DIVIDE = Saying("rounds.divide")
PICK_UP = Saying("rounds.pick_up")
CHANGE = Saying("rounds.change", way=TOKEN, stitches=COUNT)
FIRST_AND = Saying("rounds.first_and", work=SENTENCE, change=SENTENCE)
EVENLY = Saying("rounds.evenly", way=TOKEN, stitches=COUNT)

MOST_TOGETHER = 40
"""Rounds in one line: as many as are still counted at a glance, ten by ten (a judgement, no source)."""

_EDGES: Mapping[tuple[int, int], str] = {
    (1, 1): "all",
    (1, 0): "body",
    (0, 1): "sleeves",
    (2, 0): "body_twice",
    (2, 1): "body_twice_and_sleeves",
}
"""What gains stitches, by the increases at each edge of the body and of a sleeve."""

_STATED = frozenset(
    (
        words.COLOUR,
        words.SECTIONS,
        words.EDGE,
        words.BODY,
        words.FRONT_EXTRA,
        words.SEAM,
        words.SEAM_PURL,
        words.UNDERARM_COLOUR,
        neckline.PLACE_MARKERS,
        neckline.REST,
        neckline.DROP,
        neckline.DROP_EDGES,
        short_rows.SHORT_ROWS,
        short_rows.METHOD,
        short_rows.RAISED,
        neckband.COLOUR,
        ribbing.COLOUR,
        ribbing.SPREAD,
    )
)
"""What is to be known, and isn't a thing to do by itself."""

_OF_DROP = frozenset((neckline.DROP, neckline.DROP_EDGES))
_AT_SLEEVE = frozenset((sleeve.START, words.RETURN))
_AT_BAND = frozenset((neckband.COLOUR, neckband.PICK_UP, neckband.PICK_UP_DROP))


class ChartStart(NamedTuple):
    """Where a section begins in the chart. plain: stitches before it that stay plain."""

    column: int
    plain: int


class Rounds(NamedTuple):
    """Rounds that follow one another and are worked alike.

    first, last: counted from 1 in their part. does: what is done in each, None where they are plain. sections: stitches
    of back, front and each sleeve after them, none below the split. total: on the needles. chart_rows: the chart's rows
    of the first and the last, None where none is worked. starts: of the sections in the chart, None where one is plain:
    back, front and sleeve in the yoke, back and front in the body, the sleeve's own.
    """

    first: int
    last: int
    does: Sentence | None
    sections: tuple[int, ...]
    total: int
    chart_rows: tuple[int, int] | None = None
    starts: tuple[ChartStart | None, ...] = ()


class Step(NamedTuple):
    """What is no round. done: whether it is a thing to do, and not only to be known."""

    does: Sentence
    done: bool


Line = Rounds | Step


@dataclass(frozen=True, slots=True)
class PartRounds:
    """A part of the garment in the order of work.

    part: which. title: of it, for people. lines: its rounds and steps. times: how often it is worked.
    """

    part: Part | TablePart
    lines: tuple[Line, ...]
    times: Literal[1, 2] = 1


def all_rounds(size: KnittedSize, told: Iterable[Instructions]) -> tuple[PartRounds, ...]:
    """Every round of a size, part by part, from its cast-on to its neckband.

    size: as it is graded. told: the instructions for it alone; of these are the steps between the rounds.
    """
    sentences = {each.part: each.sentences for each in told}
    neck, band = sentences["neck"], sentences["band"]
    of_drop = [each for each in neck if each.saying in _OF_DROP]
    before_yoke = [each for each in neck if each.saying not in (*_OF_DROP, neckline.DROP_JOIN)]
    return (
        PartRounds("neck", tuple(_steps(before_yoke))),
        PartRounds("yoke", (*_steps(of_drop), *_together(_yoke(size)))),
        PartRounds("split", tuple(_steps(sentences["split"]))),
        PartRounds("body", tuple(_together(_body(size)))),
        PartRounds("hem", (*_steps(ribbing.edge_colour("hem", [size.body.hem])), *_together(_edge(size.body.hem)))),
        PartRounds(
            "sleeve",
            (*_steps(each for each in sentences["sleeve"] if each.saying in _AT_SLEEVE), *_together(_sleeve(size))),
            2,
        ),
        PartRounds(
            "cuff", (*_steps(ribbing.edge_colour("cuff", [size.sleeve.cuff])), *_together(_edge(size.sleeve.cuff))), 2
        ),
        PartRounds("band", (*_steps(each for each in band if each.saying in _AT_BAND), *_together(_band(size)))),
    )


def _steps(sentences: Iterable[Sentence]) -> Iterator[Step]:
    for sentence in sentences:
        yield Step(sentence, sentence.saying not in _STATED)


def _yoke(size: KnittedSize) -> Iterator[Line]:
    """A round's stitches are those after its increases; of a front in parts as many as are there."""
    yoke, drop = size.yoke, size.neck.drop
    increases = {each.round: each for each in yoke.increase_rounds}
    sections, joined = yoke.yoke.neck, drop.rows if drop else 0
    for number in range(1, yoke.yoke.rounds + 1):
        increase = increases.get(number)
        does = None
        if increase:
            sections = sections.after(increase.increases)
            does = _increase(increase)
        missing = yoke.missing[number - 1] if number <= len(yoke.missing) else 0
        if drop and number <= joined:
            does = _row("wrong" if (joined - number) % 2 else "right", does)
            if number in drop.increase_rows:
                does = NECK_EDGES(work=does)
        charted = size.chart and size.chart.rounds[number - 1]
        yield Rounds(
            number,
            number,
            does,
            (sections.back, sections.front - missing, sections.sleeve),
            sections.total(yoke.line_stitches) - missing,
            *(_chart(charted, charted.back, charted.front, charted.sleeve) if charted else ()),
        )
        if drop and number == joined:
            yield Step(neckline.DROP_JOIN(stitches=drop.centre, round=joined + 1), done=True)


def _increase(increase: IncreaseRound) -> Sentence:
    """What gains stitches: body and sleeves, or where those of back and front differ each edge by its name."""
    _, back, front, sleeves = increase
    edges = _EDGES.get((back, sleeves)) if back == front else None
    if edges:
        return INCREASE(edges=edges)
    by_edge = (("back", back), ("front", front), ("sleeve", sleeves))
    once, twice = (tuple(edge for edge, many in by_edge if many == wanted) for wanted in (1, 2))
    kind = "both" if once and twice else "twice" if twice else "once"
    return INCREASE_EDGES(once=once, twice=twice, kind=kind)


def _row(side: short_rows.Side, work: Sentence | None) -> Sentence:
    return ROW(side=side) if work is None else ROW_INCREASE(side=side, work=work)


def _body(size: KnittedSize) -> Iterator[Line]:
    made = size.body
    changes, stitches = dict(made.shaping), made.stitches
    for number in range(1, made.rounds + 1):
        if made.bust_darts and number == made.bust_darts.round:
            yield from (Step(each, done=True) for each in made.bust_darts.instructions())
        change = changes.get(number, 0)
        stitches += change
        charted = size.chart and size.chart.body.rounds[number - 1]
        yield Rounds(
            number,
            number,
            _shaped(DIVIDE() if number == 1 else None, change),
            (),
            stitches,
            *(_chart(charted, charted.back, charted.front) if charted else ()),
        )


def _sleeve(size: KnittedSize) -> Iterator[Line]:
    made = size.sleeve
    decreases, stitches = frozenset(made.decrease_rounds), made.stitches
    for number in range(1, made.rounds + 1):
        change = -sleeve.STITCHES_PER_DECREASE if number in decreases else 0
        stitches += change
        charted = size.chart and size.chart.sleeve.rounds[number - 1]
        yield Rounds(
            number,
            number,
            _shaped(PICK_UP() if number == 1 else None, change),
            (),
            stitches,
            *(_chart(charted, charted) if charted else ()),
        )


def _shaped(does: Sentence | None, change: int) -> Sentence | None:
    if not change:
        return does
    shaped = CHANGE(way=_way(change), stitches=abs(change))
    return FIRST_AND(work=does, change=shaped) if does else shaped


def _edge(edge: RibbedEdge) -> Iterator[Line]:
    yield from _ribbed(edge)
    yield Step(ribbing.BIND_OFF(), done=True)


def _ribbed(edge: RibbedEdge) -> Iterator[Line]:
    """The adjusting round, where there is one, and those of the rib."""
    adjusting = edge.rounds - edge.ribbed_rounds
    if adjusting:
        yield from _steps(each for each in edge.instructions() if each.saying is ribbing.SPREAD)
        yield Rounds(1, 1, EVENLY(way=_way(edge.change), stitches=abs(edge.change)), (), edge.stitches)
    yield from _ribs(edge, adjusting + 1, edge.rounds)


def _ribs(edge: RibbedEdge, first: int, last: int) -> Iterator[Line]:
    rib = edge.rib.sentence()
    for number in range(first, last + 1):
        yield Rounds(number, number, rib, (), edge.stitches)


def _band(size: KnittedSize) -> Iterator[Line]:
    band, edge = size.band, size.band.edge
    yield from _ribbed(edge)
    if band.construction == "single":
        yield Step(ribbing.BIND_OFF(), done=True)
        return
    outer = edge.rounds
    if band.construction == "double_with_fold_round":
        outer += 1
        yield Rounds(outer, outer, neckband.FOLD(), (), edge.stitches)
    yield from _ribs(edge, outer + 1, band.rounds)
    yield Step(neckband.JOIN(), done=True)


def _way(change: int) -> str:
    return "more" if change > 0 else "fewer"


def _chart(
    here: YokeRound | BodyRound | SleeveRound, *sections: SectionStart | SleeveRound
) -> tuple[tuple[int, int] | None, tuple[ChartStart | None, ...]]:
    """The chart's row in a round, and where the sections begin in it."""
    if here.chart_row is None:
        return None, (None,) * len(sections)
    return (here.chart_row, here.chart_row), tuple(
        None if each.first_column is None else ChartStart(each.first_column, each.plain_before or 0)
        for each in sections
    )


def _together(lines: Iterable[Line]) -> Iterator[Line]:
    """The lines, those of rounds that are worked alike made one, as long as that isn't too many rounds."""
    held: Rounds | None = None
    for line in lines:
        if held and isinstance(line, Rounds) and _alike(held, line):
            rows = held.chart_rows and line.chart_rows and (held.chart_rows[0], line.chart_rows[1])
            held = held._replace(last=line.last, chart_rows=rows)
            continue
        if held:
            yield held
        held = None
        if isinstance(line, Rounds):
            held = line
        else:
            yield line
    if held:
        yield held


def _alike(held: Rounds, line: Rounds) -> bool:
    """Whether a round goes on like those before it, the chart's next row included."""
    if held[2:5] != line[2:5] or held.starts != line.starts or line.first - held.first >= MOST_TOGETHER:
        return False
    if held.chart_rows is None or line.chart_rows is None:
        return held.chart_rows is line.chart_rows
    return line.chart_rows[0] == held.chart_rows[1] + 1
