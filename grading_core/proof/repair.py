"""Which numbers are wrong: the smallest set of them whose change makes every relation hold.

Found by trying: of a relation that doesn't hold each number in turn is set to what the others imply, and what then
doesn't hold is mended in the same way. Sets of one number are tried before those of two, and so on.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence

from grading_core.proof.figures import GRAINS, Figure, Figures, Key
from grading_core.proof.relations import Relation, Span

MOST_CHANGED = 3
"""Numbers of one size that are changed at a time: where more are wrong, each relation tells its own tale."""

Changes = Mapping[Key, Figure]


class Trials:
    """How many changes may still be tried, over all sizes: nobody's request may take a worker's second."""

    def __init__(self, left: int = 12_000) -> None:
        self.left = left

    def spend(self) -> bool:
        """Whether one more may be."""
        self.left -= 1
        return self.left >= 0


def smallest_changes(
    figures: Figures, relations: Sequence[Relation], counts: frozenset[Key], trials: Trials
) -> list[Changes]:
    """The smallest sets of changes that make all relations hold; none where it takes more than `MOST_CHANGED`.

    figures: of one size. relations: those between numbers that it has. counts: numbers that are whole. trials: how many
    changes may be tried.
    """
    about: dict[Key, list[Relation]] = {}
    for relation in relations:
        for key in relation.keys:
            about.setdefault(key, []).append(relation)
    broken = [relation for relation in relations if not relation.holds(figures)]
    for most in range(_apart(broken), MOST_CHANGED + 1):
        found = [*_mended(figures, broken, about, counts, {}, most, trials)]
        if found:
            return [*{frozenset(changes): changes for changes in found}.values()]
    return []


def _apart(broken: Sequence[Relation]) -> int:
    """How many relations have no number in common: so many changes it takes at the least."""
    apart, seen = 0, set[Key]()
    for relation in broken:
        if seen.isdisjoint(relation.keys):
            apart += 1
            seen.update(relation.keys)
    return apart


def _mended(
    figures: Figures,
    broken: Sequence[Relation],
    about: Mapping[Key, Sequence[Relation]],
    counts: frozenset[Key],
    changed: Changes,
    most: int,
    trials: Trials,
) -> Iterator[Changes]:
    if not broken:
        yield changed
        return
    if most == 0:
        return
    for key in broken[0].keys:
        if key in changed:
            continue
        for span in _implied(key, broken, figures):
            figure = _within(figures[key], span, whole=key in counts)
            if figure is None or not trials.spend():
                continue
            tried = {**figures, key: figure}
            still = [relation for relation in broken if key not in relation.keys]
            still += [relation for relation in about[key] if not relation.holds(tried)]
            yield from _mended(tried, still, about, counts, {**changed, key: figure}, most - 1, trials)


def _implied(key: Key, broken: Sequence[Relation], figures: Figures) -> Iterable[Span]:
    """What a number may be, going by the broken relations that it stands in; by each of them where they disagree, since
    another number of one may be wrong too."""
    spans = [span for relation in broken if key in relation.keys if (span := relation.implied(key, figures))]
    if not spans:
        return ()
    least = max((span.least for span in spans if span.least is not None), default=None)
    most = min((span.most for span in spans if span.most is not None), default=None)
    return dict.fromkeys(spans) if least is not None and most is not None and least > most else (Span(least, most),)


def _within(figure: Figure, span: Span, *, whole: bool) -> Figure | None:
    """The count from 0 on in a span that is nearest to what is printed, or the length that may lie anywhere in it."""
    least, most = span
    if whole:
        least = 0 if least is None else max(0, -(-least // GRAINS) * GRAINS)
        most = None if most is None else most // GRAINS * GRAINS
        if most is not None and least > most:
            return None
    printed, half = figure
    if whole or least is None or most is None:
        if least is not None and printed + half < least:
            return Figure(least)
        return Figure(most) if most is not None and printed - half > most else figure
    middle = (least + most) // 2
    return Figure(middle, most - middle)
