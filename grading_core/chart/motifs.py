"""How many whole motifs stand side by side in a section, round by round, where motifs that it cuts stay plain."""

from __future__ import annotations

from typing import NamedTuple

from grading_core.chart.layout import Layout, Part, StretchKind
from grading_core.chart.result import Motifs, SectionMotifs


class WholeMotifs(NamedTuple):
    """Of the sections of yoke, body and sleeve."""

    yoke: SectionMotifs
    body: SectionMotifs
    sleeve: tuple[Motifs, ...]


def whole_motifs(layout: Layout, columns: int | None) -> WholeMotifs | None:
    """The rounds from which each section has another number of whole motifs.

    layout: every round of a size. columns: of a motif; None where motifs may be cut, and none are counted.
    """
    if columns is None:
        return None
    yoke = [_counted(layout, "yoke", section, columns) for section in ("back", "front", "first_sleeve")]
    body = [_counted(layout, "body", section, columns) for section in ("back", "front")]
    return WholeMotifs(SectionMotifs(*yoke), SectionMotifs(*body), _counted(layout, "sleeve", "sleeve", columns))


def _counted(layout: Layout, part: Part, section: StretchKind, columns: int) -> tuple[Motifs, ...]:
    found: list[Motifs] = []
    had = 0
    for number, (row, stretch) in enumerate(
        zip(layout.part(part).rows, layout.stretches(part, section), strict=True), 1
    ):
        if row is None:
            continue
        stitches, start, _, before, after = stretch
        motifs = 0 if start is None else (stitches - before - after) // columns
        if motifs != had:
            found.append(Motifs(motifs, number))
            had = motifs
    return tuple(found)
