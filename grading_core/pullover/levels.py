"""The stitches of the body at its levels, chosen over all sizes, so that no hip or hem falls where none is asked to.

Shaping by fours keeps what a body's count leaves when divided by four. Where two sizes leave another remainder, the
counts nearest to one and the same hip can fall from the smaller to the larger.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from itertools import groupby, pairwise
from math import lcm
from typing import NamedTuple

from grading_core.counts.solver import Solved
from grading_core.errors import Impossible
from grading_core.fabric import Fabric
from grading_core.fraction import Fraction
from grading_core.parts.body import STITCHES_PER_SHAPING, Level, gauge_at_level, nearest_at_level
from grading_core.pullover.measurements import TargetMeasurements
from grading_core.yoke.request import Adjustment


class _Way(NamedTuple):
    """The cheapest way to a count of a size, which those before it don't exceed."""

    stitches: int
    cost: int
    before: _Way | None


def level_stitches(
    rising: Sequence[TargetMeasurements],
    solved: Mapping[str, Solved | Impossible],
    adjustment: Adjustment | None,
    rounds: Fabric,
) -> Mapping[str, tuple[int, ...]]:
    """The stitches at every level, by the label of each size that has counts.

    rising: from the smallest size to the largest. solved: by label, the counts or why there are none. adjustment: of
    the yoke, None for none. rounds: of the yoke, and on below it those of the body.

    Of all counts that shaping by fours reaches, and that fall from size to size only where what is wanted does, in
    stitches, those of the least summed squared distance from it.
    """
    sizes = []
    for target in rising:
        size = solved[target.label]
        if isinstance(size, Solved):
            written = size.counts.rounds
            yoke = adjustment.new_rounds(written, rounds) if adjustment else written
            sizes.append((target, size.counts.body, rounds.below(yoke)))
    per_level = (
        _rising_counts([(body, target.levels[place], fabric) for target, body, fabric in sizes])
        for place in range(len(rising[0].levels) if rising else 0)
    )
    counts = [*zip(*per_level, strict=True)] or [()] * len(sizes)
    return {target.label: found for (target, _, _), found in zip(sizes, counts, strict=True)}


def _rising_counts(sizes: Sequence[tuple[int, Level, Fabric]]) -> list[int]:
    """The counts at one level. sizes: the stitches from which it is reached, the level, and the body's rounds."""
    wanted = [level.circumference_cm * gauge_at_level(level, fabric).stitches_per_cm for _, level, fabric in sizes]
    # where what is wanted falls the count may too: from there on the sizes are a run of their own
    falls = [0]
    for before, after in pairwise(wanted):
        falls.append(falls[-1] + (after < before))
    counts: list[int] = []
    for _, places in groupby(range(len(sizes)), key=falls.__getitem__):
        run = [*places]
        counts += nearest_rise([nearest_at_level(*sizes[place]) for place in run], [wanted[place] for place in run])
    return counts


def nearest_rise(nearest: Sequence[int], wanted: Sequence[Fraction]) -> list[int]:
    """Counts that don't fall, of the least summed squared distance from what is wanted; of equals the larger.

    nearest: of each size the permitted count that is nearest to what is wanted; others lie multiples of
    `STITCHES_PER_SHAPING` from it. wanted: exact.

    >>> nearest_rise([202, 200], [Fraction(201), Fraction(201)])
    [202, 204]
    """
    unit, step = lcm(*(each.denominator for each in wanted)), STITCHES_PER_SHAPING
    # between counts beyond all nearest ones no gap is as wide as a step: those behind it would move nearer
    reach = step * len(nearest)
    lowest, highest = min(nearest) - reach, max(nearest) + reach
    ways: list[_Way] = []
    for size, (count, target) in enumerate(zip(nearest, wanted, strict=True)):
        aim, before, behind = int(target * unit), iter(ways), None if size else _Way(0, 0, None)
        following, ways = next(before, None), []
        for each in range(max(count % step, lowest + (count - lowest) % step), highest + 1, step):
            while following is not None and following.stitches <= each:
                if behind is None or following.cost <= behind.cost:
                    behind = following
                following = next(before, None)
            if behind is not None:
                ways.append(_Way(each, behind.cost + (each * unit - aim) ** 2, behind if size else None))
    way: _Way | None = min(ways, key=lambda way: (way.cost, -way.stitches))
    counts = []
    while way is not None:
        counts.append(way.stitches)
        way = way.before
    return counts[::-1]
