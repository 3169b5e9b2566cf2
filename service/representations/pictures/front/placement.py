"""The front of one size as it will look, as far as a chart's sizes tell: without neckband, hem and cuffs."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from zlib import crc32

from grading_core.chart.front import FrontView
from grading_core.pullover.front_matter import gauge_words
from grading_core.pullover.request import Gauges
from grading_core.sentences import COUNT, NAMES, TEXT, TOKEN, Saying, Sentence
from service.language import text as said
from service.lengths import LengthWriter
from service.representations.pictures.front.drawing import garment_drawing
from service.representations.pictures.front.legend import Legend
from service.representations.pictures.heading import COUNTS
from service.representations.pictures.sheets import Heading, Picture, picture_file, room

TITLE = Saying("picture.front", size=TEXT)
WITHOUT = Saying("picture.without_bands")
YOKE = Saying("picture.front_described", kind=TOKEN, colours=NAMES, rounds=COUNT, narrow=COUNT, wide=COUNT)
BODY = Saying("picture.body_described", rounds=COUNT, stitches=COUNT)
SEAMS = Saying("picture.seams_described")


def garment_picture(view: FrontView, length: LengthWriter) -> str:
    """The picture as SVG.

    view: what is drawn. length: has the convention of inches.
    """
    key = f"front-{crc32(repr((view.label, view.body, view.yoke, view.seam)).encode()):08x}"
    heading = Heading(said(TITLE(size=view.label)), [said(sentence) for sentence in _heading(view)])
    drawn = garment_drawing(
        view, None, room("single", heading), key, Legend(edges={}, named=True, convention=length.convention)
    )
    picture = Picture(
        key=key,
        heading=heading,
        about=[*described(view, drawn.symbols, named=True)],
        definitions=drawn.definitions,
        drawings=drawn.drawings,
    )
    return picture_file(picture, "single")


def described(view: FrontView, symbols: Iterable[str], *, named: bool) -> Iterator[Sentence]:
    """A front in words.

    view: what is drawn. symbols: of the colours that are seen. named: whether they have names.
    """
    yoke, body = view.yoke, view.body
    names = tuple(view.colours[symbol].name for symbol in symbols)
    kind = "named" if named else "nameless"
    yield YOKE(kind=kind, colours=names, rounds=len(yoke), narrow=len(yoke[0].front), wide=len(yoke[-1].front))
    if body:
        yield BODY(rounds=len(body), stitches=len(body[-1]))
    if view.seam == "purl" and (view.body_seam or view.sleeve_seam):
        yield SEAMS()


def _heading(view: FrontView) -> Iterator[Sentence]:
    yield WITHOUT()
    plain = view.plain_gauge or view.gauge
    yield from gauge_words(Gauges(plain, stranded=view.gauge if view.plain_gauge else None))
    yield COUNTS(cast_on=view.cast_on, rounds=len(view.yoke), body=view.body_stitches, sleeve=view.sleeve_stitches)
