"""A pullover's front as it lies flat."""

from __future__ import annotations

from collections.abc import Iterator
from zlib import crc32

from grading_core.pullover.front import EdgeName, PicturedFront, PulloverFront, RibView
from grading_core.sentences import COUNT, LENGTH, TEXT, TOKEN, Saying, Sentence
from service.lengths import LengthWriter
from service.representations.pictures.front.drawing import garment_drawing
from service.representations.pictures.front.legend import Legend
from service.representations.pictures.front.placement import described
from service.representations.pictures.heading import heading
from service.representations.pictures.sheets import Drawing, Picture, room

TITLE = Saying("picture.whole_front")
RAISED = Saying("picture.raised_described", length=LENGTH)
DROPPED = Saying("picture.dropped_described", rows=COUNT)
EDGE = Saying("picture.edge_described", edge=TOKEN, rounds=COUNT, stitches=COUNT, colours=TOKEN, colour=TEXT)


def front(view: PicturedFront, length: LengthWriter) -> Picture:
    """The picture.

    view: what is drawn. length: has the convention of inches.
    """
    above = heading(view, TITLE())
    seen = view.front
    if seen is None:
        return Picture(key="front", heading=above, about=[], drawings=[_NOTHING])
    key = f"front-{crc32(repr((seen.view.label, seen.view.yoke, seen.view.body)).encode()):08x}"
    drawn = garment_drawing(
        seen.view,
        seen.finish,
        room(view.picture.page, above),
        key,
        Legend(edges=seen.finish.edges, named=seen.named, convention=length.convention),
    )
    return Picture(
        key=key,
        heading=above,
        about=[*described(seen.view, drawn.symbols, named=seen.named), *_finish(seen)],
        definitions=drawn.definitions,
        drawings=drawn.drawings,
    )


_NOTHING = Drawing(width=0, height=0, elements=[])


def _finish(seen: PulloverFront) -> Iterator[Sentence]:
    """Neck and ribs in words."""
    finish = seen.finish
    if finish.raised_cm:
        yield RAISED(length=finish.raised_cm)
    if finish.missing:
        yield DROPPED(rows=len(finish.missing))
    ribs: tuple[tuple[EdgeName, RibView], ...] = (("band", finish.band), ("hem", finish.hem), ("cuff", finish.cuffs[0]))
    for name, rib in ribs:
        yield EDGE(
            edge=name,
            rounds=rib.rounds,
            stitches=len(rib.stitches),
            colours="named" if seen.named else "nameless",
            colour=seen.view.colours[rib.colour].name,
        )
