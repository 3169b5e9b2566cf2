"""A graded pullover in the sentences of its pattern, from its sizes to the last end."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping

from grading_core.chart import words as chart_words
from grading_core.chart.request import ChartRequest
from grading_core.codes import WarningCode
from grading_core.errors import Impossible, Remark
from grading_core.parts import body, neckband, short_rows, sleeve
from grading_core.parts.neckline import Start, run_cast_on, run_drop
from grading_core.parts.underarm import PLACE, any_seams, purled_seams, seam_run, start_place
from grading_core.pullover import own_gauge
from grading_core.pullover.colours import GarmentColours
from grading_core.pullover.front_matter import finished_words, gauge_words, needle_words, size_words, yarn_words
from grading_core.pullover.request import Gauges, YarnWishes
from grading_core.pullover.result import Instructions, KnittedSize, Part, Sizes, each_size
from grading_core.pullover.terms import notion_words, term_words
from grading_core.sentences import COUNT, LENGTH, TEXT, Saying, Sentence, for_size, for_sizes, word
from grading_core.wording import APART
from grading_core.yoke import words as yoke_words

COLOUR = Saying("neck.colour", colour=TEXT)
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
SEAM_PURL = Saying("split.seam_purl", seam=COUNT)
UNDERARM_COLOUR = Saying("split.colour", colour=TEXT)
RETURN = Saying("sleeve.return", held=COUNT, underarm=COUNT, stitches=COUNT)
UNDERARM_GAPS = Saying("finishing.underarms")
ENDS = Saying("finishing.ends")
BLOCK = Saying("finishing.block")
NO_CORDS = Saying("finishing.no_cords")
TOLD_APART = Saying("warning.told_size_by_size", part=word("title"))
SHAPED_APART = Saying("warning.told_size_by_size_shaped", part=word("title"))
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
    colours: GarmentColours,
    yarn: YarnWishes | None = None,
    young: bool = False,
    children: bool = False,
) -> tuple[Instructions, ...]:
    """The pattern's sentences with size runs, part by part; none where no size is possible.

    outcomes: of all sizes by label; for an impossible one stands a dash. Where they are too unlike to be told together,
    each is told by itself. gauges: of the fabrics that are used. start: of the yoke's rounds. chart: as planned, None
    without one. own: the gauges of a maker who keeps the counts, None where there is none. colours: of the parts. yarn:
    what is asked of it, None where nothing is. young: whether a baby or a young child wears any size. children: whether
    any child does, small ones or large.
    """
    sizes = {label: size if isinstance(size, KnittedSize) else None for label, size in outcomes.items()}
    if not any(sizes.values()):
        return ()
    work = _work(sizes, start, chart, colours, young=young, children=children)
    front: dict[Part, tuple[Sentence, ...]] = {
        "finished_measurements": finished_words(sizes),
        "gauge": gauge_words(gauges),
        "own_gauge": own_gauge.run_instructions(sizes, own.plain) if own else (),
        "needles": needle_words(gauges),
        "yarn": yarn_words(sizes, colours, yarn) if yarn else (),
        "notions": notion_words(sizes.values()),
    }
    told = [sentence for sentences in (*front.values(), *work.values()) for sentence in sentences]
    parts: dict[Part, tuple[Sentence, ...]] = {
        "sizes": size_words(sizes, told),
        **front,
        "terms": term_words(told),
        **work,
    }
    return tuple(Instructions(part, sentences) for part, sentences in parts.items() if sentences)


def word_remarks(parts: Iterable[Instructions]) -> Iterator[Remark]:
    """A word for each part that is hard to follow: told size by size, or in more sentences than fit on a page.

    parts: from `instructions`.
    """
    for part in parts:
        if any(sentence.saying is APART for sentence in part.sentences):
            message = TOLD_APART if part.part == "neck" else SHAPED_APART
            yield Remark(WarningCode.TOLD_SIZE_BY_SIZE, message(part=f"part_{part.part}"))
        if len(part.sentences) > MOST_SENTENCES:
            yield Remark(WarningCode.MANY_SENTENCES, MANY(part=f"part_{part.part}", sentences=len(part.sentences)))


def _work(
    sizes: Sizes, start: Start, chart: ChartRequest | None, colours: GarmentColours, *, young: bool, children: bool
) -> dict[Part, tuple[Sentence, ...]]:
    """The knitting itself, part by part."""
    underarms = each_size(sizes, lambda size: size.body.underarm)
    placed = each_size(sizes, lambda size: size.chart)
    charted: tuple[Sentence, ...] = ()
    if chart and any(placed):
        charted = chart_words.run_instructions(
            chart,
            placed,
            before_start=each_size(sizes, lambda size: size.body.underarm.before_start),
            seams=any_seams(underarms),
            short_rows=any(size.neck.raised and size.neck.raised.turns for size in sizes.values() if size),
            drop_rows=each_size(sizes, lambda size: size.neck.drop.rows if size.neck.drop else None),
            for_children=children,
        )
    return {
        "neck": tuple(_neck(sizes, colours)),
        "chart": charted,
        "yoke": tuple(_yoke(sizes)),
        "split": tuple(_split(sizes, start, colours)),
        "body": body.run_instructions(each_size(sizes, lambda size: size.body), [*sizes]),
        "sleeve": tuple(_sleeve(sizes)),
        "band": neckband.run_instructions(each_size(sizes, lambda size: size.band)),
        "finishing": tuple(_finishing(young=young)),
    }


def _each(sizes: Sizes, told: Callable[[KnittedSize], Iterable[Sentence]]) -> Iterator[Sentence]:
    """A part size by size."""
    yield APART()
    for label, size in sizes.items():
        if size:
            yield from for_size(told(size), label)


def _neck(sizes: Sizes, colours: GarmentColours) -> Iterator[Sentence]:
    plain = colours.told(colours.plain)
    if plain is not None:
        yield COLOUR(colour=plain)
    begun = run_cast_on(each_size(sizes, lambda size: size.neck.cast_on))
    if begun:
        yield from begun
        yield from short_rows.run_instructions(each_size(sizes, lambda size: size.neck.raised), [*sizes])
        yield from run_drop(each_size(sizes, lambda size: size.neck.drop))
    else:
        yield from _each(sizes, lambda size: size.neck.instructions())
    whole = {label: None if size and size.neck.drop else size for label, size in sizes.items()}
    if any(whole.values()):
        yield SECTIONS(
            stitches=each_size(whole, lambda size: size.counts.cast_on),
            back=each_size(whole, lambda size: size.counts.neck.back),
            front=each_size(whole, lambda size: size.counts.neck.front),
            sleeve=each_size(whole, lambda size: size.counts.neck.sleeve),
            line=next(size.neck.line_stitches for size in whole.values() if size),
        )
    if any(size.neck.drop for size in sizes.values() if size):
        yield EDGE(length=each_size(sizes, lambda size: size.neck.edge_cm))


def _yoke(sizes: Sizes) -> Iterator[Sentence]:
    yokes = [size.yoke for size in sizes.values() if size]
    told = yoke_words.run_instructions(each_size(sizes, lambda size: size.yoke.told))
    doubled = any(yoke.doubled_rounds for yoke in yokes)
    yield from yoke_words.explained(yokes[0].line_stitches, doubled=doubled)
    rows = each_size(sizes, lambda size: size.neck.drop.rows if size.neck.drop else None)
    if any(rows):
        yield yoke_words.AFTER_DROP(rows=rows)
    if any(_increases_on_wrong_side(size) for size in sizes.values() if size):
        yield yoke_words.WRONG_SIDE()
    yield from told or _each(sizes, lambda size: size.yoke.told_by_rounds())
    yield DEPTH(
        rounds=each_size(sizes, lambda size: size.counts.rounds),
        length=each_size(sizes, lambda size: size.finished.depth),
    )


def _increases_on_wrong_side(size: KnittedSize) -> bool:
    """Whether a row of the front drop, of which the last is a right-side one, increases on the wrong side."""
    if size.neck.drop is None:
        return False
    rows = size.neck.drop.rows
    return any(each.round <= rows and (rows - each.round) % 2 for each in size.yoke.increase_rounds)


def _split(sizes: Sizes, start: Start, colours: GarmentColours) -> Iterator[Sentence]:
    """Where the sleeves are set aside, and where the rounds of the body start.

    A raglan line's first stitches, in working order, go to the section before it. Below the split a round starts where
    `parts.underarm` has it; a start at the centre back stays there.
    """
    held = each_size(sizes, lambda size: size.counts.split.sleeve + 2 * size.counts.line_to_sleeve)
    underarm = each_size(sizes, lambda size: size.counts.underarm)
    yield from _underarm_colour(sizes, colours)
    yield BEGIN(stitches=each_size(sizes, lambda size: size.counts.yoke_total))
    past = next(size.counts.line_to_body for size in sizes.values() if size)
    yield FIRST_SLEEVE(past=past, held=held, underarm=underarm)
    yield FRONT(stitches=each_size(sizes, lambda size: size.counts.split.front + 2 * size.counts.line_to_body))
    yield SECOND_SLEEVE(held=held, underarm=underarm)
    underarms = each_size(sizes, lambda size: size.body.underarm)
    yield START_BACK() if start == "centre_back" else START_UNDERARM(**start_place(underarms))
    yield BODY(stitches=each_size(sizes, lambda size: size.counts.body))
    extra = each_size(sizes, lambda size: size.counts.front_extra or None)
    if any(extra):
        yield FRONT_EXTRA(stitches=extra)
    purled = tuple(purled_seams(SEAM_PURL, underarms))
    yield from purled
    if any_seams(underarms) and not purled:
        yield SEAM(seam=tuple([seam or None for seam in seam_run(underarms)]))


def _underarm_colour(sizes: Sizes, colours: GarmentColours) -> Iterator[Sentence]:
    """What the underarms are cast on in, in sizes where it is another colour than that of the neck."""
    below = colours.told(colours.below)
    if below is None or colours.below == colours.plain:
        return
    known = {place: size for place, size in enumerate(sizes.values()) if size}
    others = [place for place, size in known.items() if colours.underarm(size.chart) == colours.below]
    if others:
        told = UNDERARM_COLOUR(colour=below)
        yield told if len(others) == len(known) else for_sizes(told, [*sizes], others)


def _sleeve(sizes: Sizes) -> Iterator[Sentence]:
    start, *rest = sleeve.run_instructions(each_size(sizes, lambda size: size.sleeve), [*sizes])
    yield start
    yield RETURN(
        held=each_size(sizes, lambda size: size.counts.split.sleeve + 2 * size.counts.line_to_sleeve),
        underarm=each_size(sizes, lambda size: size.counts.underarm),
        stitches=each_size(sizes, lambda size: size.counts.sleeve),
    )
    yield from rest


def _finishing(*, young: bool) -> Iterator[Sentence]:
    yield UNDERARM_GAPS()
    yield ENDS()
    yield BLOCK()
    if young:
        yield NO_CORDS()
