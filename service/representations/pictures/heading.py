"""What every picture and page of a pullover says of it: its name, sizes, gauge and main counts."""

from __future__ import annotations

from collections.abc import Iterator

from grading_core.errors import Impossible
from grading_core.pullover.front_matter import gauge_words
from grading_core.pullover.pictures import PicturedPullover
from grading_core.pullover.result import Pullover
from grading_core.sentences import COUNT, NAMES, SENTENCE, TEXT, Saying, Sentence, run_of
from service.language import text as said
from service.representations.pictures.sheets import Heading

SIZES = Saying("picture.sizes", sizes=NAMES)
COUNTS = Saying("picture.counts", cast_on=COUNT, rounds=COUNT, body=COUNT, sleeve=COUNT)
NOT_KNITTED = Saying("picture.not_knitted", size=TEXT, reason=SENTENCE)


def title(view: PicturedPullover, kind: Sentence) -> str:
    """The title: the design's name, where it has one, and what is shown.

    kind: what is shown, in words.
    """
    return " · ".join(filter(None, (view.picture.title, said(kind))))


def heading(view: PicturedPullover, kind: Sentence) -> Heading:
    """What stands above every drawing of a pullover.

    kind: as for `title`.
    """
    return Heading(title(view, kind), lines(view))


def lines(view: PicturedPullover) -> list[str]:
    """What stands below the title: sizes, gauges, main counts with size runs, and why a size isn't there."""
    return [said(sentence) for sentence in _told(view)]


def not_knitted(view: PicturedPullover) -> Iterator[Sentence]:
    """Why sizes can't be knitted, a sentence for each that can't."""
    for size in view.pullover.sizes:
        if isinstance(size.outcome, Impossible):
            yield NOT_KNITTED(size=size.label, reason=size.outcome.reason)


def credits(pullover: Pullover) -> list[str]:
    """The lines that the publishers of its body table ask for."""
    sources = pullover.body_table.sources if pullover.body_table else ()
    return [*dict.fromkeys(source.credit for source in sources if source.credit)]


def _told(view: PicturedPullover) -> Iterator[Sentence]:
    sizes = view.pullover.sizes
    yield SIZES(sizes=view.pullover.labels)
    yield from gauge_words(view.pullover.gauges)
    drawn = [None if isinstance(size.outcome, Impossible) else size.outcome for size in sizes]
    if any(drawn):
        yield COUNTS(
            cast_on=run_of(drawn, lambda size: size.neck.cast_on.stitches),
            rounds=run_of(drawn, lambda size: size.counts.rounds),
            body=run_of(drawn, lambda size: size.counts.body),
            sleeve=run_of(drawn, lambda size: size.counts.sleeve),
        )
    yield from not_knitted(view)
