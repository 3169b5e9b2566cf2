"""What a knitter needs beside needles and yarn, and what the words of a pattern mean: as far as it uses them.

How stitches are worked is the trade's common practice, no source.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from types import MappingProxyType

from grading_core.pullover.result import KnittedSize
from grading_core.sentences import COUNT, COUNTS, TOKEN, Saying, Sentence, throughout

MARKERS = Saying("notions.markers", markers=COUNT)
WASTE_YARN = Saying("notions.waste_yarn")
TAPESTRY_NEEDLE = Saying("notions.tapestry_needle")

_ROWS = frozenset(("neck.short_rows", "neck.drop", "body.darts"))
_INCREASES = frozenset(("yoke.leaning", "body.increases", "neck.drop_edges"))
_DECREASES = frozenset(("body.decreases", "sleeve.decreases"))
_SHORT_ROWS = frozenset(("neck.short_rows", "body.darts"))

STOCKINETTE = Saying("terms.stockinette", rows=TOKEN)
RIB = Saying("terms.rib", knit=COUNT, purl=COUNT)
EVERY = Saying("terms.every", every=COUNT, plain=COUNT)
CYCLE = Saying("terms.cycle", cycle=COUNTS)

_TERMS: Mapping[Saying, frozenset[str]] = MappingProxyType(
    {
        Saying("terms.right_side"): frozenset(
            ("neck.cast_on_joined", "neck.place_markers", "band.pick_up", "band.pick_up_drop")
        ),
        Saying("terms.wrong_side"): _ROWS,
        Saying("terms.make_one"): _INCREASES,
        Saying("terms.lifted"): _INCREASES,
        Saying("terms.slip_slip_knit"): _DECREASES,
        Saying("terms.knit_together"): _DECREASES | {"rib.decrease"},
        Saying("terms.short_row"): _SHORT_ROWS,
        Saying("terms.double_stitch"): _SHORT_ROWS,
        Saying("terms.pick_up"): frozenset(("sleeve.return", "band.pick_up", "band.pick_up_drop")),
        Saying("terms.float"): frozenset(("chart.rows",)),
    }
)
"""Terms by the sentences that use them."""


def notion_words(sizes: Iterable[KnittedSize | None]) -> tuple[Sentence, ...]:
    """What else is needed.

    sizes: None where one can't be knitted; at least one can.
    """
    numbered = max(sum(isinstance(gap.marker, int) for gap in size.neck.cast_on.gaps) for size in sizes if size)
    # and the one for the start of the round
    return MARKERS(markers=numbered + 1), WASTE_YARN(), TAPESTRY_NEEDLE()


def term_words(sentences: Iterable[Sentence]) -> tuple[Sentence, ...]:
    """The terms that a pattern uses, with what they mean.

    sentences: of all its parts.

    >>> from grading_core.yoke.words import LEANING
    >>> [sentence.id for sentence in term_words([LEANING()])][1:]
    ['terms.make_one', 'terms.lifted']
    """
    said = [*throughout(sentences)]
    ids = {sentence.saying.id for sentence in said}
    ribs = dict.fromkeys(
        [(each.values["knit"], each.values["purl"]) for each in said if each.saying.id == "ribbing.knit_purl"]
    )
    every = next((number for each in said for number in _numbers(each, "every") if number > 1), None)
    cycle = next((each.values["cycle"] for each in said if "cycle" in each.values), None)
    told = [STOCKINETTE(rows="some" if ids & _ROWS else "none")]
    told += [RIB(knit=knit, purl=purl) for knit, purl in ribs]
    if every:
        told.append(EVERY(every=every, plain=every - 1))
    if cycle:
        told.append(CYCLE(cycle=cycle))
    return (*told, *(term() for term, used in _TERMS.items() if used & ids))


def _numbers(sentence: Sentence, name: str) -> tuple[int, ...]:
    """What a sentence has by a name: nothing, one number, or those of a run."""
    value = sentence.values.get(name, ())
    return tuple([number for number in value if number]) if isinstance(value, tuple) else (value,)
