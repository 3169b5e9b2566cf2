"""The nearest changes that make an impossible size possible, each tried before it is offered.

The first obstacle in a size's way says what would remove it; behind it there may be others. So every change is applied
to the request and the size is knitted again: where it meets the next obstacle at the same place, that one's value is
tried, and where it meets one elsewhere, both changes are tried together. What is offered makes the size possible as
it stands.

To be quick a change is tried on the size and its neighbours alone, whose counts bound its own, and then confirmed on
all sizes. Both are done so often and no oftener, whatever the request: what is confirmed by then is offered, and the
first that was tried where nothing is.
"""

from __future__ import annotations

from collections.abc import Callable, Collection, Iterator, Mapping, Sequence
from dataclasses import fields, is_dataclass, replace
from typing import Any

from grading_core.answer_sizes import is_answered
from grading_core.errors import ContradictionError, Impossible, Nearest, Path
from grading_core.fraction import Fraction
from grading_core.pullover.garment import Garment, Outcomes
from grading_core.pullover.request import PulloverRequest
from grading_core.pullover.result import KnittedSize

Knit = Callable[[PulloverRequest, Collection[str] | None], Outcomes]
"""Knits a request: all sizes, or only those that are named."""

MOST_TRIALS = 40
"""Of changes to a size and its neighbours, in one request."""

MOST_SIZES_TRIED = 480
"""Sizes of a request, in both versions where a maker changes it, times the trials: what their work grows with."""

FEW_SIZES = 4
"""Of so few a change is tried on all at once."""

MOST_CONFIRMED = 3000
"""The same, times the sizes once more, for changes that are confirmed: 37 in nine sizes, one in forty."""

WRITTEN = 100
"""Parts of a centimetre to which lengths are offered: what is tried is what is read."""

MOST_TOGETHER = 3
"""Changes in one combination."""

MOST_STEPS = 4
"""Values tried at one place, each the next obstacle's."""

_ANYWHERE = (
    Nearest(("body", "count_rule", "multiple"), 1),
    Nearest(("sleeve", "count_rule", "multiple"), 1),
    Nearest(("neck", "count_rule", "multiple"), 1),
    Nearest(("yoke", "step"), 1),
    Nearest(("yoke", "double_body"), "if_needed"),
    Nearest(("yoke", "plain_rounds_at_end"), 0),
)
"""What loosens a rule, tried where no obstacle says what would remove it."""


def with_nearest(request: PulloverRequest, garment: Garment, knit: Knit) -> dict[str, KnittedSize | Impossible]:
    """The sizes, in the order asked, with what would make the impossible ones possible that are answered.

    request: as asked. garment: as knitted; what an impossible size calls nearest removes its first obstacle. knit:
    makes the sizes of a request.
    """
    search = _Search(request, garment.rising, [*garment.outcomes], knit)
    return {
        label: search.improve(label, outcome)
        if isinstance(outcome, Impossible) and is_answered(label, request.answer_sizes)
        else outcome
        for label, outcome in garment.outcomes.items()
    }


def changed(record: Any, path: Path, value: Any) -> Any:
    """A request's record with another value at a place in it.

    record: a part of the request. path: from there, as answers name it: a length's name is without its unit, and what
    options hold stands where they do.

    >>> from fractions import Fraction
    >>> from grading_core.pullover.request import YokeWishes
    >>> changed(YokeWishes(), ("depth",), Fraction(20)).depth, changed(YokeWishes(), ("step",), 1).options.step
    (Fraction(20, 1), 1)
    """
    if not path:
        return value
    name, rest = path[0], path[1:]
    if isinstance(record, tuple):
        index = int(name)
        return (*record[:index], changed(record[index], rest, value), *record[index + 1 :])
    if is_dataclass(record) and not isinstance(record, type):
        here, rest = _attribute(record, path)
        return replace(record, **{here: changed(getattr(record, here), rest, value)})
    return {**(record or {}), name: changed((record or {}).get(name), rest, value)}


def _value_at(record: Any, path: Path) -> Any:
    """What stands at a place in a request, None where nothing does."""
    while path and record is not None:
        name, rest = path[0], path[1:]
        if isinstance(record, tuple):
            record = record[int(name)]
        elif isinstance(record, Mapping):
            record = record.get(name)
        else:
            here, rest = _attribute(record, path)
            record = getattr(record, here)
        path = rest
    return record


def _attribute(record: Any, path: Path) -> tuple[str, Path]:
    """The attribute of a record on the way to a place in it, and what is left of the way."""
    names = {each.name for each in fields(record)}
    here = next((each for each in (str(path[0]), f"{path[0]}_cm") if each in names), None)
    return ("options", path) if here is None else (here, path[1:])


class _Search:
    """The changes that are tried for one request.

    request, knit: as for `with_nearest`. rising: labels from the smallest size to the largest. labels: in the order
    asked.
    """

    def __init__(self, request: PulloverRequest, rising: Sequence[str], labels: Sequence[str], knit: Knit) -> None:
        self._request, self._rising, self._labels, self._knit = request, rising, labels, knit
        work = len(labels) * (2 if request.changes else 1)
        self._trials = min(MOST_TRIALS, MOST_SIZES_TRIED // work)
        self._confirmations = MOST_CONFIRMED // (work * len(labels))
        self._confirmed: dict[tuple[Nearest, ...], frozenset[str]] = {}

    def improve(self, label: str, impossible: Impossible) -> Impossible:
        """Why a size is impossible, with the changes that make it possible."""
        dead_ends: list[tuple[tuple[Nearest, ...], Impossible]] = []
        singles = [*self._singles(label, (), impossible.nearest, dead_ends)]
        if not singles:
            asked = (each for each in _ANYWHERE if self._loosens(each))
            singles = [*self._singles(label, (), asked, dead_ends)]
        if not singles:
            singles = [known for known, possible in self._confirmed.items() if label in possible and len(known) == 1]
        together: tuple[Nearest, ...] = ()
        while not singles and not together and dead_ends and len(dead_ends[0][0]) < MOST_TOGETHER:
            deeper: list[tuple[tuple[Nearest, ...], Impossible]] = []
            for before, obstacle in dead_ends:
                found = next(self._singles(label, before, obstacle.nearest, deeper), None)
                if found:
                    together = found
                    break
            dead_ends = deeper
        confirmed = [changes for changes in singles if changes in self._confirmed]
        offered = confirmed or singles[:1]
        return replace(impossible, nearest=tuple(changes[0] for changes in offered), together=together)

    def _singles(
        self,
        label: str,
        before: tuple[Nearest, ...],
        offers: Sequence[Nearest] | Iterator[Nearest],
        dead_ends: list[tuple[tuple[Nearest, ...], Impossible]],
    ) -> Iterator[tuple[Nearest, ...]]:
        """Changes that make a size possible with one of the offers beside what is changed before.

        dead_ends: gets those that meet an obstacle elsewhere.
        """
        for offer in offers:
            change = self._of_size(offer, label)
            if any(change.path == each.path for each in before):
                continue
            for _ in range(MOST_STEPS):
                changes = (*before, change)
                outcome = self._try(changes, label)
                if outcome is None:
                    break
                if isinstance(outcome, KnittedSize):
                    if self._holds(changes, label):
                        yield changes
                    break
                again = [self._of_size(each, label) for each in outcome.nearest]
                next_values = [each for each in again if each.path == change.path and each.value != change.value]
                if not next_values:
                    dead_ends.append((changes, outcome))
                    break
                change = next_values[0]

    def _try(self, changes: tuple[Nearest, ...], label: str) -> KnittedSize | Impossible | None:
        """A size with changes, its neighbours beside it; None where they contradict the rest, or enough was tried."""
        if not self._trials:
            return None
        self._trials -= 1
        if len(self._rising) <= FEW_SIZES:
            return self._knit_all(changes).get(label)
        place = self._rising.index(label)
        near = self._rising[max(0, place - 1) : place + 2]
        try:
            return self._knit(self._changed(changes), near)[label]
        except ContradictionError:
            return None

    def _holds(self, changes: tuple[Nearest, ...], label: str) -> bool:
        """Whether changes make a size possible among all others; where enough was confirmed, the trial counts."""
        if changes not in self._confirmed:
            if not self._confirmations:
                return True
            self._confirmations -= 1
            self._knit_all(changes)
        return label in self._confirmed[changes]

    def _knit_all(self, changes: tuple[Nearest, ...]) -> Outcomes:
        """All sizes with changes; none where they contradict the rest."""
        try:
            outcomes = self._knit(self._changed(changes), None)
        except ContradictionError:
            outcomes = {}
        possible = (name for name, outcome in outcomes.items() if isinstance(outcome, KnittedSize))
        self._confirmed[changes] = frozenset(possible)
        return outcomes

    def _changed(self, changes: tuple[Nearest, ...]) -> PulloverRequest:
        request = self._request
        for each in changes:
            request = changed(request, each.path, each.value)
        return request

    def _of_size(self, nearest: Nearest, label: str) -> Nearest:
        """The change as it is written, and where lengths are sent for each size: of this one's."""
        if not isinstance(nearest.value, int | str):
            nearest = replace(nearest, value=Fraction(round(nearest.value * WRITTEN), WRITTEN))
        if isinstance(_value_at(self._request, nearest.path), tuple):
            return replace(nearest, path=(*nearest.path, self._labels.index(label)))
        return nearest

    def _loosens(self, nearest: Nearest) -> bool:
        return bool(_value_at(self._request, nearest.path) != nearest.value)
