"""The stitches of the body at its levels, chosen over all sizes, so that no hip or hem falls where none is asked to.

Shaping by fours keeps what a body's count leaves when divided by four. Where two sizes leave another remainder, the
counts nearest to one and the same hip can fall from the smaller to the larger.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from fractions import Fraction
from functools import partial
from itertools import groupby, islice, pairwise
from math import lcm

from grading_core.counts.size_chain import Candidate, Chain, cheapest_chain
from grading_core.counts.solver import Solved
from grading_core.errors import Impossible
from grading_core.gauge import Gauge
from grading_core.parts.body import STITCHES_PER_SHAPING, nearest_at_level
from grading_core.pullover.measurements import TargetMeasurements

_NO_WEIGHTS = (0, 0, 0, 0)


def level_stitches(
    rising: Sequence[TargetMeasurements], solved: Sequence[Solved | Impossible], gauge: Gauge
) -> Mapping[str, tuple[int, ...]]:
    """The stitches at every level, by the label of each size that has counts.

    rising: from the smallest size to the largest. solved: their counts, or why there are none. gauge: of the body.

    Of all counts that shaping by fours reaches, and that fall from size to size only where the circumference wanted
    does, those of the least summed squared distance from it.
    """
    sizes = [
        (target.label, size.counts.body, target.levels)
        for target, size in zip(rising, solved, strict=True)
        if isinstance(size, Solved)
    ]
    per_level = (
        _rising_counts([body for _, body, _ in sizes], [level.circumference_cm for level in levels], gauge)
        for levels in zip(*(levels for _, _, levels in sizes), strict=True)
    )
    counts = [*zip(*per_level, strict=True)] or [()] * len(sizes)
    return {label: found for (label, _, _), found in zip(sizes, counts, strict=True)}


def _rising_counts(bodies: Sequence[int], wanted_cm: Sequence[Fraction], gauge: Gauge) -> list[int]:
    """The counts at one level. bodies: the stitches from which they are reached. wanted_cm: around each."""
    # where the circumference wanted falls the count may too: from there on the sizes are a run of their own
    falls = [0]
    for before, after in pairwise(wanted_cm):
        falls.append(falls[-1] + (after < before))
    counts: list[int] = []
    for _, places in groupby(range(len(bodies)), key=falls.__getitem__):
        run = [*places]
        targets = [wanted_cm[place] * gauge.stitches_per_cm for place in run]
        unit = lcm(*(target.denominator for target in targets))
        shelves = [
            partial(_nearest_counts, nearest_at_level(bodies[place], wanted_cm[place], gauge), target, unit)
            for place, target in zip(run, targets, strict=True)
        ]
        chain = cheapest_chain(shelves, _NO_WEIGHTS)
        assert isinstance(chain, Chain)  # a larger count is always there
        counts += [candidate.counts[0] for candidate in chain.candidates]
    return counts


def _nearest_counts(nearest: int, target: Fraction, unit: int, many: int) -> list[Candidate]:
    """So many counts, the nearest to a target first. unit: the cost is in squares of one part of so many."""
    reach = STITCHES_PER_SHAPING * many
    lowest = max(nearest % STITCHES_PER_SHAPING, nearest - reach)
    counts = range(lowest, nearest + reach + 1, STITCHES_PER_SHAPING)
    costs = sorted((int((count - target) * unit) ** 2, -count) for count in counts)
    return [Candidate(cost, (-count, 0, 0), _NO_WEIGHTS) for cost, count in islice(costs, many)]
