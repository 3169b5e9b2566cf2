"""A graded pullover in the sentences of its pattern, from the cast-on to the last end."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping
from typing import TypeVar

from grading_core.chart import words as chart_words
from grading_core.chart.request import ChartRequest
from grading_core.codes import WarningCode
from grading_core.errors import Impossible, Remark
from grading_core.parts import body, neckband, short_rows, sleeve
from grading_core.parts.neckline import Start, run_cast_on, run_drop
from grading_core.parts.underarm import PLACE, any_seams, seam_run, start_place
from grading_core.pullover import own_gauge
from grading_core.pullover.request import Gauges
from grading_core.pullover.result import Instructions, KnittedSize, Part
from grading_core.sentences import COUNT, LENGTH, Saying, Sentence, for_size, word
from grading_core.wording import APART
from grading_core.yoke import words as yoke_words

Value = TypeVar("Value")
Sizes = Mapping[str, KnittedSize | None]

SECTIONS = Saying("neck.sections", stitches=COUNT, back=COUNT, front=COUNT, sleeve=COUNT, line=COUNT)
EDGE = Saying("neck.edge", length=LENGTH)
DEPTH = Saying("yoke.depth", rounds=COUNT, length=LENGTH)
BEGIN = Saying("split.begin", stitches=COUNT)
FIRST_SLEEVE = Saying("split.first_sleeve", past=COUNT, held=COUNT, underarm=COUNT)
FRONT = Saying("split.front", stitches=COUNT)
SECOND_SLEEVE = Saying("split.second_sleeve", held=COUNT, underarm=COUNT)
START_BACK = Saying("split.start_back")
START_UNDERARM = Saying("split.start_underarm", **PLACE)
BODY = Saying("split.body", stitches=COUNT)
FRONT_EXTRA = Saying("split.front_extra", stitches=COUNT)
SEAM = Saying("split.seam", seam=COUNT)
RETURN = Saying("sleeve.return", held=COUNT, underarm=COUNT, stitches=COUNT)
UNDERARM_GAPS = Saying("finishing.underarms")
ENDS = Saying("finishing.ends")
BLOCK = Saying("finishing.block", length=LENGTH)
NO_CORDS = Saying("finishing.no_cords")
TOLD_APART = Saying("warning.told_size_by_size", part=word("title"))
MANY = Saying("warning.many_sentences", part=word("title"), sentences=COUNT)

MOST_SENTENCES = 60
"""More than these for a part are hard to follow: about two printed pages (common practice, no source)."""


def instructions(
    outcomes: Mapping[str, KnittedSize | Impossible],
    gauges: Gauges,
    start: Start,
    chart: ChartRequest | None,
    own: Gauges | None = None,
    *,
    young: bool = False,
) -> tuple[Instructions, ...]:
    """The pattern's sentences with size runs, part by part; none where no size is possible.

    outcomes: of all sizes by label; for an impossible one stands a dash. Where they are too unlike to be told together,
    each is told by itself. gauges: of the fabrics that are used. start: of the yoke's rounds. chart: as planned, None
    without one. own: the gauges of a maker who keeps the counts, None where there is none. young: whether a baby or a
    young child wears any size.
    """
    sizes = {label: size if isinstance(size, KnittedSize) else None for label, size in outcomes.items()}
    if not any(sizes.values()):
        return ()
    parts: list[tuple[Part, Iterable[Sentence]]] = [
        ("neck", _neck(sizes)),
        ("yoke", _yoke(sizes)),
        ("split", _split(sizes, start)),
        ("body", body.run_instructions(_run(sizes, lambda size: size.body), [*sizes])),
        ("sleeve", _sleeve(sizes)),
        ("band", neckband.run_instructions(_run(sizes, lambda size: size.band))),
        ("finishing", _finishing(sizes, young=young)),
    ]
    placed = _run(sizes, lambda size: size.chart)
    if chart and any(placed):
        dropped = any(size.neck.drop for size in sizes.values() if size)
        seams = any_seams(_run(sizes, lambda size: size.body.underarm))
        parts.insert(1, ("chart", chart_words.run_instructions(chart, placed, seams=seams, dropped_front=dropped)))
    if own:
        parts.append(("own_gauge", own_gauge.run_instructions(sizes, own.plain)))
    return tuple(Instructions(part, tuple(sentences)) for part, sentences in parts)


def word_remarks(parts: Iterable[Instructions]) -> Iterator[Remark]:
    """A word for each part that is hard to follow: told size by size, or in more sentences than fit on a page.

    parts: from `instructions`.
    """
    for part in parts:
        if any(sentence.saying is APART for sentence in part.sentences):
            yield Remark(WarningCode.TOLD_SIZE_BY_SIZE, TOLD_APART(part=f"part_{part.part}"))
        if len(part.sentences) > MOST_SENTENCES:
            yield Remark(WarningCode.MANY_SENTENCES, MANY(part=f"part_{part.part}", sentences=len(part.sentences)))


def _run(sizes: Sizes, of: Callable[[KnittedSize], Value]) -> tuple[Value | None, ...]:
    """A value of every size, None in an impossible one."""
    return tuple([of(size) if size else None for size in sizes.values()])


def _each(sizes: Sizes, told: Callable[[KnittedSize], Iterable[Sentence]]) -> Iterator[Sentence]:
    """A part size by size."""
    yield APART()
    for label, size in sizes.items():
        if size:
            yield from for_size(told(size), label)


def _neck(sizes: Sizes) -> Iterator[Sentence]:
    begun = run_cast_on(_run(sizes, lambda size: size.neck.cast_on))
    if begun:
        yield from begun
        yield from short_rows.run_instructions(_run(sizes, lambda size: size.neck.raised), [*sizes])
        yield from run_drop(_run(sizes, lambda size: size.neck.drop))
    else:
        yield from _each(sizes, lambda size: size.neck.instructions())
    if not any(size.neck.drop for size in sizes.values() if size):
        yield SECTIONS(
            stitches=_run(sizes, lambda size: size.counts.cast_on),
            back=_run(sizes, lambda size: size.counts.neck.back),
            front=_run(sizes, lambda size: size.counts.neck.front),
            sleeve=_run(sizes, lambda size: size.counts.neck.sleeve),
            line=next(size.neck.line_stitches for size in sizes.values() if size),
        )
    yield EDGE(length=_run(sizes, lambda size: size.neck.edge_cm))


def _yoke(sizes: Sizes) -> Iterator[Sentence]:
    yokes = [size.yoke for size in sizes.values() if size]
    told = yoke_words.run_instructions(_run(sizes, lambda size: size.yoke.told))
    doubled = any(yoke.doubled_rounds for yoke in yokes)
    yield from yoke_words.explained(yokes[0].line_stitches, doubled=doubled)
    rows = _run(sizes, lambda size: size.neck.drop.rows if size.neck.drop else None)
    if any(rows):
        yield yoke_words.AFTER_DROP(rows=rows)
    if any(_increases_on_wrong_side(size) for size in sizes.values() if size):
        yield yoke_words.WRONG_SIDE()
    yield from told or _each(sizes, lambda size: size.yoke.told_by_rounds())
    yield DEPTH(
        rounds=_run(sizes, lambda size: size.counts.rounds), length=_run(sizes, lambda size: size.finished.depth)
    )


def _increases_on_wrong_side(size: KnittedSize) -> bool:
    """Whether a row of the front drop, of which the last is a right-side one, increases on the wrong side."""
    rows = size.neck.drop.rows if size.neck.drop else 0
    return any(each.round <= rows and (rows - each.round) % 2 for each in size.yoke.increase_rounds)


def _split(sizes: Sizes, start: Start) -> Iterator[Sentence]:
    """Where the sleeves are set aside, and where the rounds of the body start.

    A raglan line's first stitches, in working order, go to the section before it. Below the split a round starts where
    `parts.underarm` has it; a start at the centre back stays there.
    """
    held = _run(sizes, lambda size: size.counts.split.sleeve + 2 * size.counts.line_to_sleeve)
    underarm = _run(sizes, lambda size: size.counts.underarm)
    yield BEGIN(stitches=_run(sizes, lambda size: size.counts.yoke_total))
    past = next(size.counts.line_to_body for size in sizes.values() if size)
    yield FIRST_SLEEVE(past=past, held=held, underarm=underarm)
    yield FRONT(stitches=_run(sizes, lambda size: size.counts.split.front + 2 * size.counts.line_to_body))
    yield SECOND_SLEEVE(held=held, underarm=underarm)
    underarms = _run(sizes, lambda size: size.body.underarm)
    yield START_BACK() if start == "centre_back" else START_UNDERARM(**start_place(underarms))
    yield BODY(stitches=_run(sizes, lambda size: size.counts.body))
    extra = _run(sizes, lambda size: size.counts.front_extra or None)
    if any(extra):
        yield FRONT_EXTRA(stitches=extra)
    if any_seams(underarms):
        yield SEAM(seam=tuple([seam or None for seam in seam_run(underarms)]))


def _sleeve(sizes: Sizes) -> Iterator[Sentence]:
    start, *rest = sleeve.run_instructions(_run(sizes, lambda size: size.sleeve), [*sizes])
    yield start
    yield RETURN(
        held=_run(sizes, lambda size: size.counts.split.sleeve + 2 * size.counts.line_to_sleeve),
        underarm=_run(sizes, lambda size: size.counts.underarm),
        stitches=_run(sizes, lambda size: size.counts.sleeve),
    )
    yield from rest


def _finishing(sizes: Sizes, *, young: bool) -> Iterator[Sentence]:
    yield UNDERARM_GAPS()
    yield ENDS()
    yield BLOCK(length=_run(sizes, lambda size: size.finished.bust))
    if young:
        yield NO_CORDS()
